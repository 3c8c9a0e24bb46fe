package org.draftingmaths.curve;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/** Real roots of polynomials on the unit interval, and of any function on an interval where its sign changes. */
final class Roots {
    private static final double[] NONE = {};

    private Roots() {}

    /** The parameters inside (0, 1) where the derivative of a cubic with these Bernstein coefficients vanishes. */
    static double[] ofDerivative(double a, double b, double c, double d) {
        return quadratic(b - a, c - b, d - c);
    }

    /** Roots strictly inside (0, 1) of {@code p (1-t)^2 + 2 q (1-t) t + r t^2}, ascending. */
    static double[] quadratic(double p, double q, double r) {
        double a = (r - q) - (q - p);
        double halfB = q - p;
        double discriminant = halfB * halfB - a * p;
        if (!(discriminant >= 0)) {
            return NONE;
        }
        // Citardauq: the sum below never cancels, so both roots keep their digits.
        double w = -(halfB + Math.copySign(Math.sqrt(discriminant), halfB));
        double one = w / a;
        double two = p / w;
        boolean oneIn = one > 0 && one < 1;
        boolean twoIn = two > 0 && two < 1 && two != one;
        if (oneIn && twoIn) {
            return one < two ? new double[] {one, two} : new double[] {two, one};
        }
        return oneIn ? new double[] {one} : twoIn ? new double[] {two} : NONE;
    }

    /**
     * The parameters inside (0, 1) that part the interval into pieces on which the polynomial with these Bernstein
     * coefficients is monotone.
     */
    static double[] turning(double[] bernstein) {
        int degree = bernstein.length - 1;
        if (degree < 2) {
            return NONE;
        }
        double[] differences = new double[degree];
        boolean rises = false;
        boolean falls = false;
        for (int i = 0; i < degree; i++) {
            differences[i] = bernstein[i + 1] - bernstein[i];
            rises |= differences[i] > 0;
            falls |= differences[i] < 0;
        }
        if (!(rises && falls)) {
            return NONE;
        }
        return degree == 3
                ? quadratic(differences[0], differences[1], differences[2])
                : signChanges(differences, turning(differences));
    }

    /** All parameters inside (0, 1) where the polynomial changes sign. */
    static double[] ofAll(double[] bernstein) {
        return signChanges(bernstein, turning(bernstein));
    }

    /** The parameters inside (0, 1) where a curve turns from rising to falling or back, ascending. */
    static double[] levels(Curve curve) {
        if (curve instanceof Cubic c) {
            return ofDerivative(
                    c.start().getY(),
                    c.startHandle().getY(),
                    c.endHandle().getY(),
                    c.end().getY());
        }
        return curve instanceof Arc arc ? atAngles(arc, Math.PI / 2) : NONE;
    }

    /** The parameters of an arc inside (0, 1) at an angle and opposite to it, ascending. */
    static double[] atAngles(Arc arc, double angle) {
        double low = Math.min(arc.startAngle(), arc.startAngle() + arc.sweep());
        double high = Math.max(arc.startAngle(), arc.startAngle() + arc.sweep());
        double[] found = new double[4];
        int count = 0;
        for (double k = Math.ceil((low - angle) / Math.PI); angle + k * Math.PI <= high; k++) {
            double t = (angle + k * Math.PI - arc.startAngle()) / arc.sweep();
            if (t > 0 && t < 1) {
                found[count++] = t;
            }
        }
        double[] ascending = Arrays.copyOf(found, count);
        Arrays.sort(ascending);
        return ascending;
    }

    /** The sign changes of a polynomial between consecutive turning points. */
    private static double[] signChanges(double[] bernstein, double[] turning) {
        double[] roots = new double[turning.length + 1];
        int count = 0;
        double from = 0;
        double atFrom = bernstein[0];
        for (int i = 0; i <= turning.length; i++) {
            double to = i < turning.length ? turning[i] : 1;
            double atTo = value(bernstein, to);
            if (atFrom == 0 || (atFrom < 0) != (atTo < 0)) {
                double root = atFrom == 0 ? from : between(t -> value(bernstein, t), from, atFrom, to, atTo);
                if (root > 0 && root < 1) {
                    roots[count++] = root;
                }
            }
            from = to;
            atFrom = atTo;
        }
        return Arrays.copyOf(roots, count);
    }

    /** The polynomial's value by de Casteljau's scheme, which is stable on the unit interval. */
    static double value(double[] bernstein, double t) {
        if (t <= 0) {
            return bernstein[0];
        }
        int degree = bernstein.length - 1;
        if (t >= 1) {
            return bernstein[degree];
        }
        double[] b = bernstein.clone();
        for (int level = degree; level > 0; level--) {
            for (int i = 0; i < level; i++) {
                b[i] += t * (b[i + 1] - b[i]);
            }
        }
        return b[0];
    }

    /**
     * The root of a function between two places at which its signs differ: regula falsi with the Illinois
     * correction, bisected whenever it does not halve the bracket in three steps, so that it always ends.
     */
    static double between(DoubleUnaryOperator f, double low, double atLow, double high, double atHigh) {
        double a = low;
        double b = high;
        double fa = atLow;
        double fb = atHigh;
        double width = b - a;
        for (int step = 1; ; step++) {
            if (fa == 0) {
                return a;
            }
            if (fb == 0) {
                return b;
            }
            double c = (a * fb - b * fa) / (fb - fa);
            if (step % 3 == 0) {
                if (b - a > 0.5 * width) {
                    c = 0.5 * (a + b);
                }
                width = b - a;
            }
            if (!(c > a && c < b)) {
                c = 0.5 * (a + b);
            }
            if (!(c > a && c < b)) {
                return Math.abs(fa) <= Math.abs(fb) ? a : b;
            }
            double fc = f.applyAsDouble(c);
            if ((fc < 0) == (fb < 0)) {
                b = c;
                fb = fc;
                fa *= (step % 3 == 0) ? 1 : 0.5;
            } else {
                a = c;
                fa = fc;
                fb *= (step % 3 == 0) ? 1 : 0.5;
            }
        }
    }
}
