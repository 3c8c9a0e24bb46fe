package org.draftingmaths.unit;

import java.math.BigDecimal;
import java.util.Objects;

/**
 * Judges a published pair of an inch value and a metric value that claim to be the same length.
 *
 * <p>With {@code d = |inches - metric|} in mm, {@code p} the inch step and {@code q} the centimetre step in mm:
 *
 * <ul>
 *   <li>{@link Verdict#CONTRADICTS} when {@code d > p/2 + q/2}: no length rounds to both, the closed intervals of the
 *       two roundings do not meet;
 *   <li>{@link Verdict#NOMINAL} when they meet but {@code d > max(p, q) / 4}: the two are names for one length rather
 *       than conversions of each other;
 *   <li>{@link Verdict#AGREES} otherwise.
 * </ul>
 *
 * Everything is decided in decimal. At 1/8 in and 0.1 cm the limits are 2.0875 mm and 0.79375 mm.
 *
 * <pre>{@code
 * PairCheck.check("5/8 in", "1.5 cm", Steps.DEFAULT).verdict();     // NOMINAL
 * PairCheck.check("2 3/8 in", "5.5 cm", Steps.DEFAULT).verdict();   // CONTRADICTS
 * }</pre>
 *
 * @param inches the true length of the inch value
 * @param metric the true length of the metric value
 * @param steps the steps to which the two values were rounded when they were printed
 */
public record PairCheck(Length inches, Length metric, Steps steps) {

    /** How the two values of a pair stand to each other. */
    public enum Verdict {
        /** Each is a fair conversion of the other. */
        AGREES,
        /** Some length rounds to both, but neither is a fair conversion of the other. */
        NOMINAL,
        /** No length rounds to both: one of the two is wrong. */
        CONTRADICTS
    }

    /** Makes a check of two lengths. */
    public PairCheck {
        Objects.requireNonNull(inches, "inches");
        Objects.requireNonNull(metric, "metric");
        Objects.requireNonNull(steps, "steps");
    }

    /**
     * Checks two lengths.
     *
     * @param inches the inch value
     * @param metric the metric value
     * @param steps the steps to which they were rounded
     * @return the check
     */
    public static PairCheck check(Length inches, Length metric, Steps steps) {
        return new PairCheck(inches, metric, steps);
    }

    /**
     * Checks two written lengths.
     *
     * @param inches the inch value, in a form that {@link Length#parse} accepts
     * @param metric the value in centimetres or millimetres, likewise
     * @param steps the steps to which they were rounded
     * @return the check
     * @throws IllegalArgumentException if a text cannot be read or is in the other unit system
     */
    public static PairCheck check(String inches, String metric, Steps steps) {
        return new PairCheck(LengthReader.readInches(inches), LengthReader.readMetric(metric), steps);
    }

    /**
     * The verdict, by the rule above.
     *
     * @return one of three
     */
    public Verdict verdict() {
        BigDecimal distance = decimalDifference().abs();
        BigDecimal reach = steps.inchStepMm().add(steps.cmStepMm()).divide(BigDecimal.valueOf(2));
        if (distance.compareTo(reach) > 0) {
            return Verdict.CONTRADICTS;
        }
        BigDecimal quarter = steps.inchStepMm().max(steps.cmStepMm()).divide(BigDecimal.valueOf(4));
        return distance.compareTo(quarter) > 0 ? Verdict.NOMINAL : Verdict.AGREES;
    }

    /**
     * The signed difference of the two values.
     *
     * @return {@code inches - metric}, positive when the inch value is the longer
     */
    public Length difference() {
        return new Length(decimalDifference().doubleValue());
    }

    /**
     * The verdict in plain words, with both true values.
     *
     * @return a sentence such as {@code 5/8 in is 15.875 mm and 1.5 cm is 15 mm, 0.875 mm apart: nominal, ...}; inches
     *     are written as a fraction where the value is a whole number of 1/64 in, else as a decimal
     */
    public String sentence() {
        return inchName() + " is " + inches + " and " + metricName() + " is " + metric + ", "
                + difference().abs() + " apart: " + meaning();
    }

    private String meaning() {
        return switch (verdict()) {
            case AGREES -> "they agree within a quarter of the coarser step.";
            case NOMINAL -> "nominal, one length could have been rounded to both, but neither converts into the other.";
            case CONTRADICTS -> "they contradict each other, no length rounds to both.";
        };
    }

    private String inchName() {
        Steps finest = new Steps(64, 0.001);
        return finest.roundedInches(inches).equals(inches)
                ? finest.inches(inches)
                : Decimals.plain(Decimals.ofFifteenDigits(inches.inches())) + " in";
    }

    private String metricName() {
        return Decimals.plain(metric.decimal().movePointLeft(1)) + " cm";
    }

    private BigDecimal decimalDifference() {
        return inches.tieDecimal().subtract(metric.tieDecimal());
    }
}
