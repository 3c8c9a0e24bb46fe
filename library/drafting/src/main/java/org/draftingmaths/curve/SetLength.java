package org.draftingmaths.curve;

import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;

/**
 * A curve changed to a wanted length, its ends and the directions at its ends kept.
 *
 * <p>Every handle of every cubic is made longer or shorter by one factor {@code k}; the joints stay. The length is a continuous
 * function of {@code k}: at {@code k = 0} it is that of the polygon through the joints, and it grows without bound. The factor
 * nearest to 1 that gives the wanted length is taken, so the change is the least of its kind. Straights and arcs have no
 * handles and keep their lengths.
 */
public final class SetLength {

    private static final double LONGEST = 4;
    private static final int STEPS = 64;
    private static final int HALVINGS = 200;

    private SetLength() {}

    /**
     * The path with its handles scaled until it has the wanted length.
     *
     * @param path the path
     * @param length the wanted length in mm
     * @return the path of that length, to 1e-9 mm, with the same ends, joints and directions there
     * @throws IllegalArgumentException when no factor from 0 to 4 gives that length; the message gives the range that can be had
     */
    public static CurvePath of(CurvePath path, double length) {
        Checks.finite("length", length);
        DoubleFunction<CurvePath> scaled = k -> scaled(path, k);
        double now = path.length();
        if (Math.abs(now - length) <= Accuracy.DEFAULT) {
            return path;
        }
        boolean longer = length > now;
        double near = 1;
        for (int i = 1; i <= STEPS; i++) {
            double far = longer ? 1 + (LONGEST - 1) * i / STEPS : 1 - (double) i / STEPS;
            double there = scaled.apply(far).length();
            if (longer ? there >= length : there <= length) {
                return scaled.apply(between(path, near, far, length));
            }
            near = far;
        }
        throw new IllegalArgumentException(String.format(
                Locale.ROOT,
                "This line cannot be made %.3f mm long with its ends and their directions kept: %.3f to %.3f mm is possible.",
                length,
                scaled.apply(0).length(),
                scaled.apply(LONGEST).length()));
    }

    private static double between(CurvePath path, double one, double other, double length) {
        double low = Math.min(one, other);
        double high = Math.max(one, other);
        boolean rising = scaled(path, high).length() > scaled(path, low).length();
        for (int i = 0; i < HALVINGS && high - low > Math.ulp(high); i++) {
            double middle = (low + high) / 2;
            if ((scaled(path, middle).length() < length) == rising) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    private static CurvePath scaled(CurvePath path, double k) {
        List<Curve> curves = path.curves().stream()
                .map(curve -> curve instanceof Cubic cubic ? scaled(cubic, k) : curve)
                .toList();
        return new CurvePath(curves);
    }

    private static Curve scaled(Cubic cubic, double k) {
        return new Cubic(
                cubic.start(),
                cubic.start().lerp(cubic.startHandle(), k),
                cubic.end().lerp(cubic.endHandle(), k),
                cubic.end());
    }
}
