package org.draftingmaths.unit;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;

/** Doubles as the decimals that people mean by them. */
final class Decimals {

    static final BigDecimal MM_PER_INCH = new BigDecimal("25.4");

    /** Every decimal of up to 15 digits survives the way into a double and back. */
    private static final int SAFE_DIGITS = 15;

    /** Every double survives the way into a decimal of 17 digits and back. */
    private static final int EXACT_DIGITS = 17;

    private Decimals() {}

    /** The decimal of at most 15 significant digits nearest to the value: the one that decides ties. */
    static BigDecimal ofFifteenDigits(double value) {
        return rounded(value, SAFE_DIGITS);
    }

    /** The shortest decimal, from 15 digits upwards, that reads back as the same double. */
    static BigDecimal readingBack(double value) {
        // Double.toString is not used: before Java 19 it does not always give the shortest digits.
        for (int digits = SAFE_DIGITS; digits < EXACT_DIGITS; digits++) {
            BigDecimal decimal = rounded(value, digits);
            if (decimal.doubleValue() == value) {
                return decimal;
            }
        }
        return rounded(value, EXACT_DIGITS);
    }

    /** The whole number nearest to {@code value * denominator / numerator}; halfway goes away from zero. */
    static BigInteger nearestMultiple(BigDecimal value, BigDecimal numerator, BigDecimal denominator) {
        return value.multiply(denominator)
                .divide(numerator, 0, RoundingMode.HALF_UP)
                .toBigIntegerExact();
    }

    /** Plain digits without an exponent and without trailing zeros. */
    static String plain(BigDecimal value) {
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }

    private static BigDecimal rounded(double value, int digits) {
        return new BigDecimal(value).round(new MathContext(digits, RoundingMode.HALF_EVEN));
    }
}
