package org.draftingmaths.fullness;

import java.util.OptionalDouble;

/**
 * The gap of a spread slash: an even-legged figure whose legs are the two sides of the slash.
 *
 * <p>With {@code g1, g2} the gaps at the two ends and {@code H} the slash, the sides part by the angle {@code a = 2 asin((g2 - g1) /
 * 2H)}; the paper gains {@code (g1 + g2)/2 H cos(a/2)}. The point in which the sides would meet lies {@code h = g1 H / (g2 - g1)}
 * beyond the near end, and at no finite place when the gaps are equal: no figure here is made from it.
 *
 * <pre>{@code
 * Gap gap = new Gap(20, 60, 600);
 * gap.hinge();   // 300 mm outside the near end
 * gap.angle();   // 0.0667 rad, 3.8 degrees
 * }</pre>
 *
 * @param near the gap at the near end in mm, straight; negative for an overlap
 * @param far the gap at the far end
 * @param length the length of the slash in mm
 */
public record Gap(double near, double far, double length) {

    /** Where the ratio of an arc to its chord is 1 to the last bit. */
    private static final double FLAT = 1e-9;

    /** Checks that there is such a figure. */
    public Gap {
        if (!(length > 0 && Double.isFinite(length) && Double.isFinite(near) && Double.isFinite(far))) {
            throw new IllegalArgumentException("A gap needs finite widths and a slash longer than 0 mm: " + near
                    + " and " + far + " mm, slash " + length + " mm.");
        }
        if (!(Math.abs(far - near) <= 2 * length)) {
            throw new IllegalArgumentException("The gaps at two ends differ by at most twice the slash: " + near
                    + " and " + far + " mm, slash " + length + " mm.");
        }
    }

    /**
     * The gap that a turn about a given hinge makes: the inverse of {@link #hinge} and {@link #angle}.
     *
     * @param beyond how far in mm the hinge lies beyond the near end, on the line of the slash; 0 at the near end
     * @param angle the angle in radians
     * @param length the length of the slash in mm
     * @return the gap
     */
    public static Gap turned(double beyond, double angle, double length) {
        double chord = 2 * Math.sin(angle / 2);
        return new Gap(beyond * chord, (beyond + length) * chord, length);
    }

    /**
     * The angle between the two sides.
     *
     * @return the angle in radians; positive when the far end is the wider
     */
    public double angle() {
        return 2 * Math.asin((far - near) / 2 / length);
    }

    /**
     * How far beyond the near end the sides would meet, on the line of the slash.
     *
     * @return the distance in mm; 0 at the near end; less than {@code -length} beyond the far end; empty when the gaps are equal
     */
    public OptionalDouble hinge() {
        return near == far ? OptionalDouble.empty() : OptionalDouble.of(near * length / (far - near));
    }

    /**
     * The paper gained.
     *
     * @return the area in square mm, negative for an overlap
     */
    public double area() {
        return (near + far) / 2 * length * Math.cos(angle() / 2);
    }

    /**
     * The near gap measured along the arc on which the side swings there.
     *
     * @return {@code near (a/2) / sin(a/2)} in mm
     */
    public double nearAlong() {
        return near * arcToChord();
    }

    /**
     * The far gap measured along the arc on which the side swings there.
     *
     * @return {@code far (a/2) / sin(a/2)} in mm
     */
    public double farAlong() {
        return far * arcToChord();
    }

    private double arcToChord() {
        double half = angle() / 2;
        return Math.abs(half) < FLAT ? 1 : half / Math.sin(half);
    }
}
