package org.draftingmaths.unit;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * A length, held in millimetres: {@code 1 in = 25.4 mm} exactly, {@code 1 cm = 10 mm}.
 *
 * <p>Any finite value is allowed; a negative one is a difference. What is plausible for a body or a garment is not
 * decided here. Arithmetic is done on the full value and never rounds to a tape's marks; for that see {@link Steps}.
 *
 * <pre>{@code
 * Length hem = Length.parse("2 5/8 in");
 * hem.mm();                      // 66.675
 * Steps.DEFAULT.both(hem);       // "2 5/8 in (6.7 cm)"
 * }</pre>
 *
 * <p>{@code equals} is exact. Negative zero is stored as zero, so that equal lengths print alike.
 *
 * @param mm the length in millimetres, finite
 */
public record Length(double mm) implements Comparable<Length> {

    /** No length. */
    public static final Length ZERO = new Length(0);

    /**
     * Makes a length of the given millimetres.
     *
     * @throws IllegalArgumentException if {@code mm} is infinite or not a number
     */
    public Length {
        if (!Double.isFinite(mm)) {
            throw new IllegalArgumentException("A length must be a finite number of millimetres, but was " + mm);
        }
        mm += 0.0; // -0.0 becomes 0.0
    }

    /**
     * A length in millimetres.
     *
     * @param mm millimetres, finite
     * @return the length
     * @throws IllegalArgumentException if {@code mm} is infinite or not a number
     */
    public static Length mm(double mm) {
        return new Length(mm);
    }

    /**
     * A length in centimetres: {@code mm = 10 cm}, worked out in decimal, so that {@code cm(6.7)} is exactly
     * {@code mm(67)}.
     *
     * @param cm centimetres, finite
     * @return the length
     * @throws IllegalArgumentException if {@code cm} is infinite or not a number, or too large for millimetres
     */
    public static Length cm(double cm) {
        requireFinite(cm, "centimetres");
        return new Length(Decimals.readingBack(cm).movePointRight(1).doubleValue());
    }

    /**
     * A length in inches: {@code mm = 25.4 in}, worked out in decimal, so that {@code inches(0.8125)} is exactly
     * {@code mm(20.6375)}.
     *
     * @param inches inches, finite
     * @return the length
     * @throws IllegalArgumentException if {@code inches} is infinite or not a number, or too large for millimetres
     */
    public static Length inches(double inches) {
        requireFinite(inches, "inches");
        return new Length(
                Decimals.readingBack(inches).multiply(Decimals.MM_PER_INCH).doubleValue());
    }

    /**
     * Reads a written length.
     *
     * <p>Accepted, and nothing else: whole inches {@code 2 in}; a fraction below one {@code 5/8 in}; a mixed number with
     * a space or a hyphen {@code 2 5/8 in}, {@code 2-5/8 in}; decimal inches {@code 2.625 in}; and whole or decimal
     * centimetres and millimetres {@code 6.7 cm}, {@code 67 mm}. The inch is written {@code in} or {@code "}. The unit is
     * always required, the space before it is not. A fraction has a numerator of at least 1 and a denominator from 2
     * to 64, in lowest terms or not. Numbers are unsigned, written with the digits 0 to 9 and a decimal point that has
     * digits on both sides: what a person measures is not negative, and an exponent, a decimal comma or a thousands mark
     * is never guessed at.
     *
     * <pre>{@code
     * Length.parse("2-5/8\"").mm();   // 66.675
     * Length.parse("1,5 cm");         // IllegalArgumentException: ... decimal comma ...
     * }</pre>
     *
     * @param text the written length; spaces around it do not count
     * @return the length, the double nearest to the exact value
     * @throws IllegalArgumentException if the text has any other form, or is too large for millimetres; the message
     *     shows what was read, why it was refused, and what would be accepted
     * @throws NullPointerException if {@code text} is null
     */
    public static Length parse(String text) {
        return LengthReader.read(text);
    }

    /**
     * The length in centimetres: {@code cm = mm / 10}.
     *
     * @return centimetres, not rounded to any mark
     */
    public double cm() {
        return Decimals.readingBack(mm).movePointLeft(1).doubleValue();
    }

    /**
     * The length in inches: {@code in = mm / 25.4}.
     *
     * @return inches, not rounded to any mark
     */
    public double inches() {
        return Decimals.readingBack(mm)
                .divide(Decimals.MM_PER_INCH, MathContext.DECIMAL128)
                .doubleValue();
    }

    /**
     * The sum {@code this + other}.
     *
     * @param other the length to add
     * @return the sum
     * @throws IllegalArgumentException if the sum is not finite
     */
    public Length plus(Length other) {
        return new Length(mm + other.mm);
    }

    /**
     * The difference {@code this - other}, negative when the other is longer.
     *
     * @param other the length to take away
     * @return the difference
     * @throws IllegalArgumentException if the difference is not finite
     */
    public Length minus(Length other) {
        return new Length(mm - other.mm);
    }

    /**
     * The product {@code this * factor}.
     *
     * @param factor a finite number
     * @return the product
     * @throws IllegalArgumentException if the factor or the product is not finite
     */
    public Length times(double factor) {
        if (!Double.isFinite(factor)) {
            throw new IllegalArgumentException("A factor of a length must be finite, but was " + factor);
        }
        return new Length(mm * factor);
    }

    /**
     * The same length with the opposite sign.
     *
     * @return {@code -this}
     */
    public Length negated() {
        return new Length(-mm);
    }

    /**
     * The magnitude.
     *
     * @return {@code |this|}
     */
    public Length abs() {
        return new Length(Math.abs(mm));
    }

    /**
     * Compares by size, signed: a negative length comes before zero.
     *
     * @param other the length to compare with
     * @return negative, zero or positive as this is shorter, equal or longer
     */
    @Override
    public int compareTo(Length other) {
        return Double.compare(mm, other.mm);
    }

    /**
     * The canonical text: all digits of the value in millimetres, without an exponent, such as {@code 67 mm}.
     *
     * <p>{@link #parse} reads it back to an equal length if it is not negative; a negative length is a result and is
     * never read.
     *
     * @return the canonical text, the same in every locale
     */
    @Override
    public String toString() {
        return Decimals.plain(decimal()) + " mm";
    }

    /** All digits of the value. */
    BigDecimal decimal() {
        return Decimals.readingBack(mm);
    }

    /** The decimal that decides ties. */
    BigDecimal tieDecimal() {
        return Decimals.ofFifteenDigits(mm);
    }

    private static void requireFinite(double value, String unit) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("A length must be a finite number of " + unit + ", but was " + value);
        }
    }
}
