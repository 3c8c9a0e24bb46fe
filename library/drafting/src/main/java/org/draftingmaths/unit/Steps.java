package org.draftingmaths.unit;

import java.math.BigDecimal;
import java.math.BigInteger;

/**
 * The marks to which lengths are rounded when they are printed: {@code printed = step * floor(|x| / step + 1/2)}, with
 * the sign of {@code x}.
 *
 * <p>Half a step goes up, on the magnitude; ties are decided in decimal (see the package description). Each of the two
 * unit systems is rounded from the true length, never one from the other.
 *
 * <pre>{@code
 * Steps.DEFAULT.inches(Length.inches(2.0625));        // "2 1/8 in"
 * new Steps(16, 0.5).both(Length.mm(66.675));         // "2 5/8 in (6.5 cm)"
 * }</pre>
 *
 * @param inchFraction the inch step is {@code 1 / inchFraction}: one of 1, 2, 4, 8, 16, 32, 64
 * @param cmStep the centimetre step, from 0.001 to 100 with at most three decimals, such as 0.1, 0.25 or 0.5
 */
public record Steps(int inchFraction, double cmStep) {

    /** Eighths of an inch and millimetres: 1/8 in and 0.1 cm. */
    public static final Steps DEFAULT = new Steps(8, 0.1);

    private static final int FINEST_INCH_FRACTION = 64;
    private static final double FINEST_CM = 0.001;
    private static final double COARSEST_CM = 100;
    private static final int MOST_CM_DECIMALS = 3;

    /**
     * Makes a pair of steps.
     *
     * @throws IllegalArgumentException if a step is not one of those allowed
     */
    public Steps {
        if (inchFraction < 1 || inchFraction > FINEST_INCH_FRACTION || Integer.bitCount(inchFraction) != 1) {
            throw new IllegalArgumentException(
                    "The inch fraction must be one of 1, 2, 4, 8, 16, 32, 64, but was " + inchFraction);
        }
        if (!(cmStep >= FINEST_CM && cmStep <= COARSEST_CM)
                || Decimals.readingBack(cmStep).stripTrailingZeros().scale() > MOST_CM_DECIMALS) {
            throw new IllegalArgumentException(
                    "The cm step must be from 0.001 to 100 with at most three decimals, but was " + cmStep);
        }
    }

    /**
     * The length in inches with a fraction in lowest terms, rounded to the nearest inch step.
     *
     * @param length any length
     * @return text such as {@code 2 5/8 in}, {@code 5/8 in}, {@code 3 in}, {@code 0 in} or {@code -1/8 in}; never a
     *     negative zero
     */
    public String inches(Length length) {
        return inchText(inchTicks(length));
    }

    /**
     * The length in centimetres, rounded to the nearest centimetre step, with as many decimals as the step has.
     *
     * @param length any length
     * @return text such as {@code 6.7 cm} or {@code 0.0 cm}; never a negative zero
     */
    public String cm(Length length) {
        return cmText(cmTicks(length));
    }

    /**
     * The length in both systems, each rounded from the true length: inches first, centimetres in parentheses.
     *
     * @param length any length
     * @return text such as {@code 2 5/8 in (6.7 cm)}
     */
    public String both(Length length) {
        return inches(length) + " (" + cm(length) + ")";
    }

    /**
     * The length that {@link #inches(Length)} prints.
     *
     * @param length any length
     * @return the nearest whole multiple of the inch step
     */
    public Length roundedInches(Length length) {
        return inchLength(inchTicks(length));
    }

    /**
     * The length that {@link #cm(Length)} prints.
     *
     * @param length any length
     * @return the nearest whole multiple of the centimetre step
     */
    public Length roundedCm(Length length) {
        return cmLength(cmTicks(length));
    }

    BigInteger inchTicks(Length length) {
        return Decimals.nearestMultiple(length.tieDecimal(), Decimals.MM_PER_INCH, BigDecimal.valueOf(inchFraction));
    }

    BigInteger cmTicks(Length length) {
        return Decimals.nearestMultiple(length.tieDecimal(), cmStepMm(), BigDecimal.ONE);
    }

    String inchText(BigInteger ticks) {
        BigInteger[] parts = ticks.abs().divideAndRemainder(BigInteger.valueOf(inchFraction));
        String sign = ticks.signum() < 0 ? "-" : "";
        if (parts[1].signum() == 0) {
            return sign + parts[0] + " in";
        }
        String whole = parts[0].signum() == 0 ? "" : parts[0] + " ";
        return sign + whole + lowestTerms(parts[1].intValueExact()) + " in";
    }

    String cmText(BigInteger ticks) {
        BigDecimal step = cmStepDecimal();
        return new BigDecimal(ticks)
                        .multiply(step)
                        .setScale(Math.max(0, step.scale()))
                        .toPlainString() + " cm";
    }

    Length inchLength(BigInteger ticks) {
        // The denominator is a power of two up to 64, so the division ends within six decimals.
        return new Length(new BigDecimal(ticks)
                .multiply(Decimals.MM_PER_INCH)
                .divide(BigDecimal.valueOf(inchFraction))
                .doubleValue());
    }

    Length cmLength(BigInteger ticks) {
        return new Length(new BigDecimal(ticks).multiply(cmStepMm()).doubleValue());
    }

    BigDecimal inchStepMm() {
        return Decimals.MM_PER_INCH.divide(BigDecimal.valueOf(inchFraction));
    }

    BigDecimal cmStepMm() {
        return cmStepDecimal().movePointRight(1);
    }

    private BigDecimal cmStepDecimal() {
        return Decimals.readingBack(cmStep).stripTrailingZeros();
    }

    private String lowestTerms(int ticks) {
        int halvings = Integer.numberOfTrailingZeros(ticks);
        return (ticks >> halvings) + "/" + (inchFraction >> halvings);
    }
}
