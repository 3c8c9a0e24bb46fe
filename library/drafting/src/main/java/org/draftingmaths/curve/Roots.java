package org.draftingmaths.curve;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Real roots of polynomials on the unit interval, and of any function on an interval where its sign changes. */
final class Roots {
    private static final double[] NONE = {};

    private static final int[][] BINOMIAL = {
        {1}, {1, 1}, {1, 2, 1}, {1, 3, 3, 1}, {1, 4, 6, 4, 1}, {1, 5, 10, 10, 5, 1}, {1, 6, 15, 20, 15, 6, 1}
    };

    private Roots() {}

    /** The parameters inside (0, 1) where the derivative of a cubic with these Bernstein coefficients vanishes. */
    static double[] ofDerivative(double a, double b, double c, double d) {
        boolean rises = b >= a && c >= b && d >= c;
        boolean falls = b <= a && c <= b && d <= c;
        return rises || falls ? NONE : quadratic(b - a, c - b, d - c);
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
        // Descartes: no more roots than changes of sign of the coefficients, and an even number fewer.
        int changes = 0;
        double last = 0;
        for (double b : bernstein) {
            if (b != 0) {
                changes += last * b < 0 ? 1 : 0;
                last = b;
            }
        }
        if (changes == 0) {
            return NONE;
        }
        boolean one = changes == 1 && bernstein[0] != 0 && last == bernstein[bernstein.length - 1];
        return signChanges(bernstein, one ? NONE : turning(bernstein));
    }

    /** The parameters inside (0, 1) where a curve turns from going along a direction to going against it or back, ascending. */
    static double[] extrema(Curve curve, double dx, double dy) {
        if (curve instanceof Cubic c) {
            return ofDerivative(
                    along(c.start(), dx, dy),
                    along(c.startHandle(), dx, dy),
                    along(c.endHandle(), dx, dy),
                    along(c.end(), dx, dy));
        }
        return curve instanceof Arc arc ? atAngles(arc, Math.atan2(dy, dx)) : NONE;
    }

    private static double along(Vector2D p, double dx, double dy) {
        return dx * p.getX() + dy * p.getY();
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
            if (from > 0 && atFrom == 0) {
                roots[count++] = from;
            } else if (atFrom != 0 && (atFrom < 0) != (atTo < 0)) {
                double root = between(t -> value(bernstein, t), from, atFrom, to, atTo);
                if (root > 0 && root < 1) {
                    roots[count++] = root;
                }
            }
            from = to;
            atFrom = atTo;
        }
        return Arrays.copyOf(roots, count);
    }

    /** The polynomial's value, by Horner's scheme in the ratio of t and 1 - t that is at most 1. */
    static double value(double[] bernstein, double t) {
        int n = bernstein.length - 1;
        int[] binomial = BINOMIAL[n];
        double s = 1 - t;
        double power = 1;
        if (t <= 0.5) {
            double ratio = t / s;
            double sum = bernstein[n];
            for (int i = n - 1; i >= 0; i--) {
                sum = sum * ratio + binomial[i] * bernstein[i];
                power *= s;
            }
            return sum * power;
        }
        double ratio = s / t;
        double sum = bernstein[0];
        for (int i = 1; i <= n; i++) {
            sum = sum * ratio + binomial[i] * bernstein[i];
            power *= t;
        }
        return sum * power;
    }

    /**
     * The root of a function between two places at which its signs differ, to the last bits: inverse quadratic
     * interpolation where the last three values promise that it works, halving elsewhere (Chandrupatla, A new hybrid
     * quadratic/bisection algorithm for finding the zero of a nonlinear function, Advances in Engineering Software 28,
     * 1997, 145-149), so that it always ends.
     */
    static double between(DoubleUnaryOperator f, double low, double atLow, double high, double atHigh) {
        double a = low;
        double fa = atLow;
        double b = high;
        double fb = atHigh;
        double share = fa / (fa - fb);
        while (true) {
            double best = Math.abs(fa) < Math.abs(fb) ? a : b;
            // The least step is the last bit: half of it would round to no step at all, and nothing would be learnt.
            double least = Math.ulp(best) / Math.abs(b - a);
            if (least > 0.5 || fa == 0 || fb == 0) {
                return best;
            }
            double x = a + Math.min(1 - least, Math.max(least, share)) * (b - a);
            double fx = f.applyAsDouble(x);
            double c;
            double fc;
            if ((fx < 0) == (fa < 0)) {
                c = a;
                fc = fa;
            } else {
                c = b;
                fc = fb;
                b = a;
                fb = fa;
            }
            a = x;
            fa = fx;
            double xi = (a - b) / (c - b);
            double phi = (fa - fb) / (fc - fb);
            boolean smooth = phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi;
            share = smooth
                    ? fa / (fb - fa) * fc / (fb - fc) + (c - a) / (b - a) * fa / (fc - fa) * fb / (fc - fb)
                    : 0.5;
        }
    }
}
