package org.draftingmaths.curve;

import java.util.Locale;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** What arguments must be, with messages that name the value and the allowed range. */
final class Checks {
    /** No curve may be smaller than this: below it squares underflow and directions are noise. */
    private static final double SMALLEST = 1e-100;

    private Checks() {}

    static double coordinate(String name, double value) {
        if (!(Math.abs(value) <= Accuracy.LARGEST)) {
            throw new IllegalArgumentException(
                    name + " is " + value + "; allowed are finite numbers from -1e9 to 1e9 (mm)");
        }
        return value;
    }

    static void point(String name, Vector2D point) {
        if (point == null) {
            throw new IllegalArgumentException(name + " is missing");
        }
        double x = point.getX();
        double y = point.getY();
        // The names are put together only when there is something to say: curves are made by the million.
        if (!(Math.abs(x) <= Accuracy.LARGEST && Math.abs(y) <= Accuracy.LARGEST)) {
            coordinate(name + " x", x);
            coordinate(name + " y", y);
        }
    }

    static void direction(Vector2D direction) {
        point("direction", direction);
        if (direction.getX() == 0 && direction.getY() == 0) {
            throw new IllegalArgumentException("direction is (0, 0); allowed is any other vector");
        }
    }

    static void finite(String name, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(name + " is " + value + "; allowed are finite numbers");
        }
    }

    static void extent(String what, double extent) {
        if (!(extent > SMALLEST)) {
            throw new IllegalArgumentException(
                    what + " is a single point: its extent is " + extent + " mm; allowed is more than 1e-100 mm");
        }
    }

    static void parameter(double t) {
        if (!(t >= 0 && t <= 1)) {
            throw new IllegalArgumentException("parameter is " + t + "; allowed is 0 to 1");
        }
    }

    static void parameters(double from, double to) {
        parameter(from);
        parameter(to);
        if (!(from <= to)) {
            throw new IllegalArgumentException("parameters run from " + from + " to " + to
                    + "; the first must not exceed the second (reverse the curve instead)");
        }
    }

    static void span(double from, double to) {
        parameters(from, to);
        if (from == to) {
            throw new IllegalArgumentException("parameters run from " + from + " to " + to
                    + "; the first must be less than the second: a curve needs an extent");
        }
    }

    static void tolerance(double tolerance) {
        if (!(tolerance >= 1e-12 && tolerance <= Accuracy.LARGEST)) {
            throw new IllegalArgumentException("tolerance is " + tolerance + "; allowed is 1e-12 to 1e9 (mm)");
        }
    }

    /** Checks a tolerance against the rounding of coordinates as large as the size. */
    static void tolerance(double tolerance, double size) {
        tolerance(tolerance);
        double least = 0x1p-48 * size;
        if (tolerance < least) {
            throw new IllegalArgumentException("tolerance is " + tolerance + " mm, but coordinates up to " + size
                    + " mm are rounded too coarsely for less than " + least + " mm; allowed is that or more");
        }
    }

    /** Checks that the accuracy is positive and not below what rounding allows. */
    static void accuracy(double accuracy, double reachable) {
        if (!(accuracy > 0)) {
            throw new IllegalArgumentException("accuracy is " + accuracy + "; allowed is a positive number (mm)");
        }
        if (accuracy < reachable) {
            throw new IllegalArgumentException("accuracy is " + accuracy + " mm, but rounding limits this curve to "
                    + reachable + " mm; allowed is that or more");
        }
    }

    static void withinLength(String name, double value, double length, double slack) {
        if (!(value >= -slack && value <= length + slack)) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "%s is %s mm; reachable is 0 to %s mm", name, value, length));
        }
    }

    /** Checks M^T M = I to 1e-9: rotations, translations and reflections pass, scaling and shear do not. */
    static void isometry(AffineTransformMatrix2D transform) {
        double[] m = transform.toArray();
        double xx = m[0] * m[0] + m[3] * m[3];
        double yy = m[1] * m[1] + m[4] * m[4];
        double xy = m[0] * m[1] + m[3] * m[4];
        if (!(Math.abs(xx - 1) <= 1e-9 && Math.abs(yy - 1) <= 1e-9 && Math.abs(xy) <= 1e-9)) {
            throw new IllegalArgumentException("transform " + transform
                    + " changes lengths or angles; allowed are rotations, translations and reflections");
        }
    }
}
