package org.draftingmaths.unit;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import java.util.function.Function;

/**
 * A printed total beside its printed parts: {@code total = round(sum of true parts)}, which is not always
 * {@code sum of round(part)}.
 *
 * <p>The total is worked out from the true lengths and rounded once. Where the printed parts add up to something else,
 * the text says so, because whoever adds them on the tape would meet the difference.
 *
 * <pre>{@code
 * PrintedSum sum = new PrintedSum(List.of(Length.inches(1.0625), Length.inches(1.0625)), Steps.DEFAULT);
 * sum.inches();   // "2 1/8 in (the printed parts add up to 2 1/4 in)"
 * sum.cm();       // "5.4 cm"
 * }</pre>
 *
 * @param parts the true lengths of the parts, at least one
 * @param steps the steps to print in
 */
public record PrintedSum(List<Length> parts, Steps steps) {

    /**
     * Makes a sum of the given parts.
     *
     * @throws IllegalArgumentException if there is no part, or the total is too large
     */
    public PrintedSum {
        parts = List.copyOf(parts);
        if (parts.isEmpty()) {
            throw new IllegalArgumentException("A printed sum needs at least one part, but there was none");
        }
        total(parts);
    }

    /**
     * The true total.
     *
     * @return the sum of the parts, added in decimal and not rounded to any mark
     */
    public Length total() {
        return total(parts);
    }

    /**
     * How far the printed inch parts miss the printed inch total.
     *
     * @return {@code sum of round(part) - round(total)}, positive when the printed parts add up to more; a whole multiple
     *     of the inch step, zero when they agree
     */
    public Length missInches() {
        return steps.inchLength(ticksOfParts(steps::inchTicks).subtract(steps.inchTicks(total())));
    }

    /**
     * How far the printed centimetre parts miss the printed centimetre total.
     *
     * @return {@code sum of round(part) - round(total)}, positive when the printed parts add up to more; a whole multiple
     *     of the centimetre step, zero when they agree
     */
    public Length missCm() {
        return steps.cmLength(ticksOfParts(steps::cmTicks).subtract(steps.cmTicks(total())));
    }

    /**
     * The total in inches, with a remark where the printed parts miss it.
     *
     * @return text such as {@code 2 1/8 in} or {@code 2 1/8 in (the printed parts add up to 2 1/4 in)}
     */
    public String inches() {
        return withRemark(steps.inches(total()), steps.inchText(ticksOfParts(steps::inchTicks)));
    }

    /**
     * The total in centimetres, with a remark where the printed parts miss it.
     *
     * @return text such as {@code 5.4 cm} or {@code 5.4 cm (the printed parts add up to 5.5 cm)}
     */
    public String cm() {
        return withRemark(steps.cm(total()), steps.cmText(ticksOfParts(steps::cmTicks)));
    }

    private BigInteger ticksOfParts(Function<Length, BigInteger> ticks) {
        return parts.stream().map(ticks).reduce(BigInteger.ZERO, BigInteger::add);
    }

    private static Length total(List<Length> parts) {
        BigDecimal total = parts.stream().map(Length::decimal).reduce(BigDecimal.ZERO, BigDecimal::add);
        return new Length(total.doubleValue());
    }

    private static String withRemark(String total, String ofParts) {
        return total.equals(ofParts) ? total : total + " (the printed parts add up to " + ofParts + ")";
    }
}
