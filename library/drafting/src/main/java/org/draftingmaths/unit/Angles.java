package org.draftingmaths.unit;

import java.math.RoundingMode;

/** Angles in text. Inside the library every angle is in radians, anticlockwise positive; degrees live only here. */
public final class Angles {

    private static final int MOST_DECIMALS = 9;

    private Angles() {}

    /**
     * The angle in degrees with one decimal: {@code degrees = 180 radians / pi}.
     *
     * <p>Half a step goes up, on the magnitude, decided in decimal as for lengths. The angle is not reduced to a turn.
     *
     * <pre>{@code
     * Angles.degrees(Math.PI / 14);   // "12.9°"
     * }</pre>
     *
     * @param radians the angle, finite
     * @return text such as {@code 12.8°}, {@code -3.0°} or {@code 0.0°}; never a negative zero
     * @throws IllegalArgumentException if the angle is infinite or not a number, or too large for degrees
     */
    public static String degrees(double radians) {
        return degrees(radians, 1);
    }

    /**
     * The angle in degrees with the given number of decimals.
     *
     * @param radians the angle, finite
     * @param decimals from 0 to 9
     * @return text such as {@code 13°} or {@code 12.82°}; never a negative zero
     * @throws IllegalArgumentException if the angle is infinite or not a number or too large for degrees, or the
     *     decimals are out of range
     */
    public static String degrees(double radians, int decimals) {
        if (decimals < 0 || decimals > MOST_DECIMALS) {
            throw new IllegalArgumentException(
                    "Decimals must be from 0 to " + MOST_DECIMALS + ", but were " + decimals);
        }
        double degrees = Math.toDegrees(radians);
        if (!Double.isFinite(degrees)) {
            throw new IllegalArgumentException("An angle must be finite, but was " + radians + " rad");
        }
        return Decimals.ofFifteenDigits(degrees)
                        .setScale(decimals, RoundingMode.HALF_UP)
                        .toPlainString() + "°";
    }
}
