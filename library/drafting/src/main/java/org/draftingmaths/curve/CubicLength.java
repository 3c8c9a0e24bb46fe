package org.draftingmaths.curve;

/**
 * The arc length of a cubic with a proven bound.
 *
 * <p><b>The integrand.</b> Put {@code u} in [-1, 1] for {@code t = (1 + u) / 2} and read the plane as complex numbers.
 * Half the hodograph is a complex quadratic {@code q(u) = q0 + q1 u + q2 u^2} and the length is the integral of
 * {@code f(u) = |q(u)|}. With {@code q*} the polynomial of conjugate coefficients, {@code f = sqrt(q q*)} for real
 * {@code u}, and this continues analytically to every simply connected region that holds none of the two zeros of
 * {@code q} and none of their conjugates, in particular to the inside of any ellipse with foci -1 and 1 that holds
 * none of the zeros (it is symmetric about the real axis).
 *
 * <p><b>The bound.</b> Let {@code rho} be the sum of the half-axes of the largest such ellipse,
 * {@code A = (rho + 1/rho) / 2} its long half-axis, and {@code M >= |f|} inside it. The Chebyshev series
 * {@code f = sum a_k T_k} has {@code |a_k| <= 2 M rho^-k} (Trefethen, Approximation Theory and Approximation Practice,
 * theorem 8.1). An n-point Gauss rule is exact for {@code k < 2n} and, being symmetric, for odd {@code k}. For even
 * {@code k >= 2n >= 4} it errs on {@code T_k} by at most {@code 2 + 2/(k^2 - 1) <= 32/15}, because its weights are
 * positive with sum 2 and the integral of {@code T_k} is {@code 2/(1 - k^2)}. Summing the geometric series,
 *
 * <pre>{@code |error| <= (64/15) M rho^-2n / (1 - rho^-2)}</pre>
 *
 * <p>which is theorem 19.3 there. Since {@code |u| <= A} in the ellipse and {@code |q*(u)| = |q(conj u)|},
 * {@code M = |q0| + |q1| A + |q2| A^2} serves. A point {@code z} lies on the ellipse with
 * {@code 2 A = |z - 1| + |z + 1|}, so {@code A} is found from the zeros without iteration.
 *
 * <p><b>Zeros near the interval.</b> Moving a zero {@code z} by {@code d = |Im z|} on to the real axis changes
 * {@code f} by at most {@code d |q2| |u - z'| = d |q2 u + q1 + q2 z|}, {@code z'} the other zero. Where twice the
 * integral of that is within an eighth of the accuracy asked, the zero is taken as real: {@code f} is then {@code |u - z|} times a function without
 * that zero, analytic on either side, so the interval is parted there and the zero plays no further role. Both the
 * integral and the rule move by at most that amount. Any other zero that comes too close has the interval parted, at
 * its real part or in the middle, and each part gets half the accuracy. An interval as short as its distance {@code d}
 * from the zeros has {@code rho > 4} and needs no further parting, and {@code d} is at least of the order of the
 * accuracy over the size, so this ends.
 *
 * <p><b>Rounding.</b> The zeros found are those of a quadratic whose coefficients differ by a few roundings, so what is
 * proven for it holds for {@code q} within rounding. In the centred form {@code |q0| + |q1| + |q2|} is at most 3/2 of
 * the control polygon, each coefficient is good to 3 roundings of {@code 2^-53} and Horner's scheme adds 4, the root
 * and the sums at most 30 relative ones: together below {@code 2^-47} of the control polygon. Half of every accuracy is
 * kept for that, so accuracies from {@code 2^-46} of the control polygon are met and smaller ones refused.
 */
final class CubicLength {
    private static final double[] NODES_8 = {
        0.1834346424956498, 0.525532409916329, 0.7966664774136267, 0.9602898564975363
    };
    private static final double[] WEIGHTS_8 = {
        0.362683783378362, 0.31370664587788727, 0.22238103445337448, 0.10122853629037626
    };
    private static final double[] NODES_16 = {
        0.09501250983763744, 0.2816035507792589, 0.45801677765722737, 0.6178762444026438,
        0.755404408355003, 0.8656312023878318, 0.9445750230732326, 0.9894009349916499
    };
    private static final double[] WEIGHTS_16 = {
        0.1894506104550685, 0.18260341504492358, 0.16915651939500254, 0.14959598881657674,
        0.12462897125553388, 0.09515851168249279, 0.062253523938647894, 0.027152459411754096
    };
    private static final double[] NODES_24 = {
        0.06405689286260563, 0.1911188674736163, 0.3150426796961634, 0.4337935076260451,
        0.5454214713888396, 0.6480936519369755, 0.7401241915785544, 0.820001985973903,
        0.8864155270044011, 0.9382745520027328, 0.9747285559713095, 0.9951872199970213
    };
    private static final double[] WEIGHTS_24 = {
        0.12793819534675216, 0.1258374563468283, 0.12167047292780339, 0.1155056680537256,
        0.10744427011596563, 0.09761865210411388, 0.08619016153195327, 0.0733464814110803,
        0.05929858491543678, 0.04427743881741981, 0.028531388628933663, 0.0123412297999872
    };

    /** Beyond this the ellipse is so large that the 8-node rule is exact to rounding; keeps powers in range. */
    private static final double FAR = 1e3;

    private final double x0;
    private final double x1;
    private final double x2;
    private final double y0;
    private final double y1;
    private final double y2;

    /** The two zeros; a zero at infinity has an infinite real part. */
    private double zeroRe;

    private double zeroIm;
    private double otherRe;
    private double otherIm;

    private CubicLength(Cubic c) {
        double ax = c.startHandle().getX() - c.start().getX();
        double ay = c.startHandle().getY() - c.start().getY();
        double bx = c.endHandle().getX() - c.startHandle().getX();
        double by = c.endHandle().getY() - c.startHandle().getY();
        double dx = c.end().getX() - c.endHandle().getX();
        double dy = c.end().getY() - c.endHandle().getY();
        x0 = 0.375 * (ax + 2 * bx + dx);
        y0 = 0.375 * (ay + 2 * by + dy);
        x1 = 0.75 * (dx - ax);
        y1 = 0.75 * (dy - ay);
        x2 = 0.375 * (ax - 2 * bx + dx);
        y2 = 0.375 * (ay - 2 * by + dy);
        findZeros();
    }

    static double of(Cubic cubic, double from, double to, double accuracy) {
        double polygon = cubic.polygon();
        Checks.accuracy(accuracy, reachable(polygon));
        return new CubicLength(cubic).integral(2 * from - 1, 2 * to - 1, 0.5 * accuracy);
    }

    private static double reachable(double polygon) {
        return 0x1p-46 * polygon;
    }

    /**
     * Newton's iteration on {@code length(0, t) = length}, kept inside a bracket that is halved when a step leaves it
     * and at every eighth step, so that it always ends.
     */
    static double parameterAt(Cubic cubic, double length, double accuracy) {
        double polygon = cubic.polygon();
        // A quarter is for the length's own error; one rounding of t moves the length by far less than another.
        Checks.accuracy(accuracy, 4 * reachable(polygon));
        double share = 0.25 * accuracy;
        CubicLength along = new CubicLength(cubic);
        double whole = along.integral(-1, 1, 0.5 * share);
        Checks.withinLength("length", length, whole, accuracy);
        if (length <= 0 || length >= whole) {
            return length <= 0 ? 0 : 1;
        }
        double low = -1;
        double high = 1;
        double u = 2 * (length / whole) - 1;
        for (int step = 1; ; step++) {
            double miss = along.integral(-1, u, 0.5 * share) - length;
            if (Math.abs(miss) <= 2 * share) {
                return Math.min(1, Math.max(0, 0.5 * (1 + u)));
            }
            if (miss < 0) {
                low = u;
            } else {
                high = u;
            }
            double next = u - miss / along.speed(u);
            if (!(next > low && next < high) || step % 8 == 0) {
                next = 0.5 * (low + high);
            }
            u = next;
        }
    }

    private double speed(double u) {
        double x = x0 + u * (x1 + u * x2);
        double y = y0 + u * (y1 + u * y2);
        return Math.sqrt(x * x + y * y);
    }

    /** Solves q2 u^2 + q1 u + q0 = 0 without cancellation: w = -(q1 + s) / 2 with s towards q1, u = w/q2 and q0/w. */
    private void findZeros() {
        double dRe = x1 * x1 - y1 * y1 - 4 * (x2 * x0 - y2 * y0);
        double dIm = 2 * x1 * y1 - 4 * (x2 * y0 + y2 * x0);
        double modulus = Math.hypot(dRe, dIm);
        double sRe;
        double sIm;
        if (dRe >= 0) {
            sRe = Math.sqrt(0.5 * (modulus + dRe));
            sIm = sRe == 0 ? 0 : 0.5 * dIm / sRe;
        } else {
            sIm = Math.copySign(Math.sqrt(0.5 * (modulus - dRe)), dIm);
            sRe = 0.5 * dIm / sIm;
        }
        double sign = x1 * sRe + y1 * sIm < 0 ? -1 : 1;
        double wRe = -0.5 * (x1 + sign * sRe);
        double wIm = -0.5 * (y1 + sign * sIm);
        double q2 = x2 * x2 + y2 * y2;
        double w = wRe * wRe + wIm * wIm;
        zeroRe = q2 == 0 ? Double.POSITIVE_INFINITY : (wRe * x2 + wIm * y2) / q2;
        zeroIm = q2 == 0 ? 0 : (wIm * x2 - wRe * y2) / q2;
        if (w == 0) {
            // q1 = 0 and q2 q0 = 0: a double zero at 0, or the constant speed |q0|.
            otherRe = zeroRe;
            otherIm = zeroIm;
        } else {
            otherRe = (x0 * wRe + y0 * wIm) / w;
            otherIm = (y0 * wRe - x0 * wIm) / w;
        }
    }

    /** The integral of f from a to b with a truncation error of at most the budget. */
    private double integral(double a, double b, double budget) {
        if (!(a < b)) {
            return 0;
        }
        double h = 0.5 * (b - a);
        double m = 0.5 * (a + b);
        double p0x = x0 + m * (x1 + m * x2);
        double p0y = y0 + m * (y1 + m * y2);
        double p1x = h * (x1 + 2 * m * x2);
        double p1y = h * (y1 + 2 * m * y2);
        double p2x = h * h * x2;
        double p2y = h * h * y2;
        double m0 = Math.abs(p0x) + Math.abs(p0y);
        double m1 = Math.abs(p1x) + Math.abs(p1y);
        double m2 = Math.abs(p2x) + Math.abs(p2y);
        double uRe = (zeroRe - m) / h;
        double uIm = zeroIm / h;
        double vRe = (otherRe - m) / h;
        double vIm = otherIm / h;
        boolean uReal = onAxis(uRe, uIm, m1, m2, h, budget);
        boolean vReal = onAxis(vRe, vIm, m1, m2, h, budget);
        if (uReal && Math.abs(uRe) < 1 && inside(zeroRe, a, b)) {
            return parted(a, zeroRe, b, budget);
        }
        if (vReal && Math.abs(vRe) < 1 && inside(otherRe, a, b)) {
            return parted(a, otherRe, b, budget);
        }
        double uAxis = uReal ? FAR : axis(uRe, uIm);
        double vAxis = vReal ? FAR : axis(vRe, vIm);
        double axis = Math.min(FAR, Math.min(uAxis, vAxis));
        double rho = axis + Math.sqrt(axis * axis - 1);
        double r2 = 1 / (rho * rho);
        double bound = h * (64.0 / 15) * (m0 + axis * (m1 + axis * m2)) / (1 - r2);
        double allowed = (uReal || vReal) ? 0.5 * budget : budget;
        double r4 = r2 * r2;
        double r8 = r4 * r4;
        double r16 = r8 * r8;
        if (bound * r16 <= allowed || 2 * h * (m0 + m1 + m2) <= allowed) {
            return h * gauss(NODES_8, WEIGHTS_8, p0x, p0y, p1x, p1y, p2x, p2y);
        }
        double r32 = r16 * r16;
        if (bound * r32 <= allowed) {
            return h * gauss(NODES_16, WEIGHTS_16, p0x, p0y, p1x, p1y, p2x, p2y);
        }
        if (bound * r32 * r16 <= allowed) {
            return h * gauss(NODES_24, WEIGHTS_24, p0x, p0y, p1x, p1y, p2x, p2y);
        }
        double near = uAxis < vAxis ? uRe : vRe;
        return parted(a, Math.abs(near) < 0.9 ? m + h * near : m, b, budget);
    }

    private double parted(double a, double at, double b, double budget) {
        return integral(a, at, 0.5 * budget) + integral(at, b, 0.5 * budget);
    }

    private static boolean inside(double x, double a, double b) {
        return x > a && x < b;
    }

    /** Whether a zero may be moved on to the real axis: it changes integral and rule by an eighth of the budget. */
    private static boolean onAxis(double re, double im, double m1, double m2, double h, double budget) {
        double d = Math.abs(im);
        if (d == 0) {
            return true;
        }
        // q2 (u - z') = q2 u + q1 + q2 z, and |u| <= 1, |z| <= 3.
        return Math.abs(re) <= 2 && d <= 1 && 4 * h * d * (m1 + 4 * m2) <= 0.125 * budget;
    }

    /** Half the sum of the distances to the foci. */
    private static double axis(double re, double im) {
        double left = re + 1;
        double right = re - 1;
        double ii = im * im;
        return Math.max(1, 0.5 * (Math.sqrt(left * left + ii) + Math.sqrt(right * right + ii)));
    }

    private static double gauss(
            double[] nodes, double[] weights, double p0x, double p0y, double p1x, double p1y, double p2x, double p2y) {
        double sum = 0;
        for (int i = 0; i < nodes.length; i++) {
            double u = nodes[i];
            double uu = u * u;
            double ex = p0x + uu * p2x;
            double ey = p0y + uu * p2y;
            double ox = u * p1x;
            double oy = u * p1y;
            double ax = ex + ox;
            double ay = ey + oy;
            double bx = ex - ox;
            double by = ey - oy;
            sum += weights[i] * (Math.sqrt(ax * ax + ay * ay) + Math.sqrt(bx * bx + by * by));
        }
        return sum;
    }
}
