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
 * {@code 2 A = |z - 1| + |z + 1|}, squared {@code 2 A^2 - 1 = |z|^2 + |z^2 - 1|}, and
 * {@code rho^2 = s + sqrt(s^2 - 1)} with {@code s = 2 A^2 - 1}: so one root for each zero and one more give the bound
 * for every n, and the smallest of a few rules that keeps it is taken. The zeros themselves are two roots away.
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
 * the control polygon, each coefficient is good to 3 roundings of {@code 2^-53} and evaluation adds 4, each twice over
 * for the interval's length of 2; the roots and the sums add at most 20 relative ones of the length: together below
 * {@code 2^-47} of the control polygon. Half of every accuracy is kept for that, so accuracies from {@code 2^-46} of the
 * control polygon are met and smaller ones refused.
 */
final class CubicLength {
    private static final double[] NODES_8 = {
        0.1834346424956498, 0.525532409916329, 0.7966664774136267, 0.9602898564975363
    };
    private static final double[] WEIGHTS_8 = {
        0.362683783378362, 0.31370664587788727, 0.22238103445337448, 0.10122853629037626
    };
    private static final double[] NODES_16 = {
        0.09501250983763744,
        0.2816035507792589,
        0.45801677765722737,
        0.6178762444026438,
        0.755404408355003,
        0.8656312023878318,
        0.9445750230732326,
        0.9894009349916499
    };
    private static final double[] WEIGHTS_16 = {
        0.1894506104550685,
        0.18260341504492358,
        0.16915651939500254,
        0.14959598881657674,
        0.12462897125553388,
        0.09515851168249279,
        0.062253523938647894,
        0.027152459411754096
    };
    private static final double[] NODES_24 = {
        0.06405689286260563,
        0.1911188674736163,
        0.3150426796961634,
        0.4337935076260451,
        0.5454214713888396,
        0.6480936519369755,
        0.7401241915785544,
        0.820001985973903,
        0.8864155270044011,
        0.9382745520027328,
        0.9747285559713095,
        0.9951872199970213
    };
    private static final double[] WEIGHTS_24 = {
        0.12793819534675216,
        0.1258374563468283,
        0.12167047292780339,
        0.1155056680537256,
        0.10744427011596563,
        0.09761865210411388,
        0.08619016153195327,
        0.0733464814110803,
        0.05929858491543678,
        0.04427743881741981,
        0.028531388628933663,
        0.0123412297999872
    };
    private static final double[] NODES_32 = {
        0.04830766568773832,
        0.1444719615827965,
        0.23928736225213706,
        0.33186860228212767,
        0.42135127613063533,
        0.5068999089322294,
        0.5877157572407623,
        0.6630442669302152,
        0.7321821187402897,
        0.7944837959679424,
        0.84936761373257,
        0.8963211557660521,
        0.9349060759377397,
        0.9647622555875064,
        0.9856115115452684,
        0.9972638618494816
    };
    private static final double[] WEIGHTS_32 = {
        0.0965400885147278,
        0.09563872007927486,
        0.09384439908080457,
        0.09117387869576389,
        0.08765209300440381,
        0.08331192422694675,
        0.07819389578707031,
        0.0723457941088485,
        0.06582222277636185,
        0.058684093478535544,
        0.050998059262376175,
        0.04283589802222668,
        0.03427386291302143,
        0.02539206530926206,
        0.01627439473090567,
        0.007018610009470096
    };

    /** Beyond this the ellipse is so large that the 8-node rule is exact to rounding; keeps powers in range. */
    private static final double FAR = 1e6;

    /** Above this share of the size an accuracy is mostly met by 16 nodes, below by 24: the guess costs no promise. */
    private static final double COARSE = 1e-10;

    /** Nearer to the interval a zero is taken to lie on it: a double one is known to half of the digits only. */
    private static final double CUSP = 1e-7;

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
        this(
                0.375
                        * (c.end().getX()
                                - c.start().getX()
                                + c.endHandle().getX()
                                - c.startHandle().getX()),
                0.375
                        * (c.end().getY()
                                - c.start().getY()
                                + c.endHandle().getY()
                                - c.startHandle().getY()),
                0.75
                        * (c.end().getX()
                                - c.endHandle().getX()
                                - (c.startHandle().getX() - c.start().getX())),
                0.75
                        * (c.end().getY()
                                - c.endHandle().getY()
                                - (c.startHandle().getY() - c.start().getY())),
                0.375
                        * (c.end().getX()
                                - c.start().getX()
                                - 3 * (c.endHandle().getX() - c.startHandle().getX())),
                0.375
                        * (c.end().getY()
                                - c.start().getY()
                                - 3 * (c.endHandle().getY() - c.startHandle().getY())));
    }

    private CubicLength(double x0, double y0, double x1, double y1, double x2, double y2) {
        this.x0 = x0;
        this.y0 = y0;
        this.x1 = x1;
        this.y1 = y1;
        this.x2 = x2;
        this.y2 = y2;
        findZeros();
    }

    static double of(Cubic cubic, double from, double to, double accuracy) {
        double ax = cubic.startHandle().getX() - cubic.start().getX();
        double ay = cubic.startHandle().getY() - cubic.start().getY();
        double bx = cubic.endHandle().getX() - cubic.startHandle().getX();
        double by = cubic.endHandle().getY() - cubic.startHandle().getY();
        double cx = cubic.end().getX() - cubic.endHandle().getX();
        double cy = cubic.end().getY() - cubic.endHandle().getY();
        double around = Math.abs(ax) + Math.abs(ay) + Math.abs(bx) + Math.abs(by) + Math.abs(cx) + Math.abs(cy);
        if (!(accuracy >= reachable(around))) {
            Checks.accuracy(accuracy, reachable(cubic.polygon()));
        }
        double x0 = 0.375 * (ax + 2 * bx + cx);
        double y0 = 0.375 * (ay + 2 * by + cy);
        double x1 = 0.75 * (cx - ax);
        double y1 = 0.75 * (cy - ay);
        double x2 = 0.375 * (ax - 2 * bx + cx);
        double y2 = 0.375 * (ay - 2 * by + cy);
        if (from == 0 && to == 1) {
            return whole(x0, y0, x1, y1, x2, y2, 0.5 * accuracy);
        }
        if (!(from < to)) {
            return 0;
        }
        double h = to - from;
        double m = from + to - 1;
        return whole(
                h * (x0 + m * (x1 + m * x2)),
                h * (y0 + m * (y1 + m * y2)),
                h * h * (x1 + 2 * m * x2),
                h * h * (y1 + 2 * m * y2),
                h * h * h * x2,
                h * h * h * y2,
                0.5 * accuracy);
    }

    /**
     * {@code B' = 2 q2 (u - z)(u - z')}, and the argument of {@code u - z} grows from -1 to 1 by the angle under which the interval
     * is seen from {@code z}.
     */
    static double turning(Cubic cubic) {
        CubicLength along = new CubicLength(cubic);
        return seen(along.zeroRe, along.zeroIm) + seen(along.otherRe, along.otherIm);
    }

    private static double seen(double re, double im) {
        boolean on = Math.abs(im) < CUSP && Math.abs(re) < 1 + CUSP;
        return on || Double.isInfinite(re) ? 0 : Math.atan2(2 * im, re * re + im * im - 1);
    }

    private static double reachable(double polygon) {
        return 0x1p-46 * polygon;
    }

    /** The integral from -1 to 1: by one rule where the zeros are far enough, else in parts. */
    private static double whole(double x0, double y0, double x1, double y1, double x2, double y2, double budget) {
        // w and the zeros w/q2 and q0/w as in findZeros, without its care for what is degenerate: NaN fails each test.
        double dRe = x1 * x1 - y1 * y1 - 4 * (x2 * x0 - y2 * y0);
        double dIm = 2 * x1 * y1 - 4 * (x2 * y0 + y2 * x0);
        double modulus = Math.sqrt(dRe * dRe + dIm * dIm);
        double large = Math.sqrt(0.5 * (modulus + Math.abs(dRe)));
        double small = 0.5 * dIm / large;
        double sRe = dRe >= 0 ? large : small;
        double sIm = dRe >= 0 ? small : large;
        double sign = x1 * sRe + y1 * sIm >= 0 ? 0.5 : -0.5;
        double wRe = 0.5 * x1 + sign * sRe;
        double wIm = 0.5 * y1 + sign * sIm;
        double ww = wRe * wRe + wIm * wIm;
        double ratio =
                Math.min(span(wRe, wIm, x2, y2, ww, x2 * x2 + y2 * y2), span(x0, y0, wRe, wIm, x0 * x0 + y0 * y0, ww));
        double r2 = shrink(ratio);
        double m0 = Math.abs(x0) + Math.abs(y0);
        double m1 = Math.abs(x1) + Math.abs(y1);
        double m2 = Math.abs(x2) + Math.abs(y2);
        double bound = bound(m0, m1, m2, ratio);
        double allowed = budget * (1 - r2);
        double r4 = r2 * r2;
        double r8 = r4 * r4;
        double r16 = r8 * r8;
        double error = bound * r16 * r16;
        if (budget > COARSE * (m0 + m1 + m2) && error <= allowed) {
            return gauss(NODES_16, WEIGHTS_16, x0, y0, x1, y1, x2, y2);
        }
        if (error * r16 <= allowed) {
            return gauss(NODES_24, WEIGHTS_24, x0, y0, x1, y1, x2, y2);
        }
        if (error * r16 * r16 <= allowed) {
            return gauss(NODES_32, WEIGHTS_32, x0, y0, x1, y1, x2, y2);
        }
        return new CubicLength(x0, y0, x1, y1, x2, y2).integral(-1, 1, budget);
    }

    /** {@code 2 A^2 - 1 = |z|^2 + |z^2 - 1|} for {@code z = a/b}, given |a|^2 and |b|^2. */
    private static double span(double aRe, double aIm, double bRe, double bIm, double aa, double bb) {
        double re = aRe * aRe - aIm * aIm - (bRe * bRe - bIm * bIm);
        double im = 2 * (aRe * aIm - bRe * bIm);
        return (aa + Math.sqrt(re * re + im * im)) / bb;
    }

    /** {@code rho^-2} from {@code 2 A^2 - 1 = (rho^2 + rho^-2) / 2}. */
    private static double shrink(double span) {
        double s = Math.min(FAR, span);
        return s - Math.sqrt(s * s - 1);
    }

    /** {@code (64/15) M}, with {@code A <= (1 + A^2) / 2} to spare a root. */
    private static double bound(double m0, double m1, double m2, double span) {
        double aa = 0.5 * (1 + Math.min(FAR, span));
        return (64.0 / 15) * (m0 + 0.5 * m1 + aa * (0.5 * m1 + m2));
    }

    /**
     * Halley's iteration on {@code length(0, t) = length}, kept inside a bracket that is halved when a step leaves it
     * and at every eighth step, so that it always ends.
     *
     * <p>A quarter of the accuracy is for the truncation of the lengths, a quarter for their rounding, and the rest
     * for the miss at which the iteration ends. The length to the next place is that to the last one and the piece
     * between; after eight such pieces it is found anew.
     */
    static double parameterAt(Cubic cubic, double length, double accuracy) {
        Checks.accuracy(accuracy, 4 * reachable(cubic.polygon()));
        double share = 0.25 * accuracy;
        CubicLength along = new CubicLength(cubic);
        // No curve is shorter than its chord: up to there the whole need not be known.
        double whole = Double.NaN;
        if (!(length > 0 && length < Plane.distance(cubic.start(), cubic.end()) - accuracy)) {
            whole = along.integral(-1, 1, 0.5 * share);
            Checks.withinLength("length", length, whole, accuracy);
            if (length <= 0 || length >= whole) {
                return length <= 0 ? 0 : 1;
            }
        }
        double low = -1;
        double high = 1;
        double u = along.guess(length, whole);
        double reached = along.integral(-1, u, 0.5 * share);
        for (int step = 1; ; step++) {
            double miss = reached - length;
            if (Math.abs(miss) <= 2 * share) {
                return Math.min(1, Math.max(0, 0.5 * (1 + u)));
            }
            if (miss < 0) {
                low = u;
            } else {
                high = u;
            }
            double next = along.halley(u, miss);
            if (!(next > low && next < high) || step % 8 == 0) {
                next = 0.5 * (low + high);
            }
            reached = step % 8 == 0 ? along.integral(-1, next, 0.5 * share) : reached + along.step(u, next, share / 16);
            u = next;
        }
    }

    /** The length from one place to another, negative backwards: a short step by the speed, whose slope is bounded. */
    private double step(double from, double to, double budget) {
        double size = to - from;
        double slope = Plane.norm(x1, y1) + 2 * Plane.norm(x2, y2);
        if (0.5 * slope * size * size <= budget) {
            return size * speed(from);
        }
        return size > 0 ? integral(from, to, budget) : -integral(to, from, budget);
    }

    /** Where the parabola through the speeds at both ends and the middle has its share of the whole length. */
    private double guess(double length, double known) {
        double a = speed(-1);
        double b = speed(0);
        double c = speed(1);
        double slope = 0.5 * (c - a);
        double bend = 0.5 * (a + c) - b;
        double whole = 2 * (b + bend / 3);
        double share = Math.min(1, length / (known > 0 ? known : whole));
        double u = 2 * share - 1;
        for (int i = 0; i < 2; i++) {
            double sum = b * (u + 1) + 0.5 * slope * (u * u - 1) + bend / 3 * (u * u * u + 1);
            double next = u - (sum - share * whole) / (b + u * (slope + u * bend));
            u = next > -1 && next < 1 ? next : u;
        }
        return u;
    }

    private double halley(double u, double miss) {
        double x = x0 + u * (x1 + u * x2);
        double y = y0 + u * (y1 + u * y2);
        double speed = Math.sqrt(x * x + y * y);
        double gain = (x * (x1 + 2 * u * x2) + y * (y1 + 2 * u * y2)) / speed;
        return u - miss / (speed - 0.5 * miss * gain / speed);
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
        double modulus = Math.sqrt(dRe * dRe + dIm * dIm);
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
        double scale = 1 / h;
        double uRe = (zeroRe - m) * scale;
        double uIm = zeroIm * scale;
        double vRe = (otherRe - m) * scale;
        double vIm = otherIm * scale;
        boolean uReal = onAxis(uRe, uIm, m1, m2, h, budget);
        boolean vReal = onAxis(vRe, vIm, m1, m2, h, budget);
        if (uReal && Math.abs(uRe) < 1 && inside(zeroRe, a, b)) {
            return parted(a, zeroRe, b, budget);
        }
        if (vReal && Math.abs(vRe) < 1 && inside(otherRe, a, b)) {
            return parted(a, otherRe, b, budget);
        }
        double uSpan = uReal ? FAR : span(uRe, uIm, 1, 0, uRe * uRe + uIm * uIm, 1);
        double vSpan = vReal ? FAR : span(vRe, vIm, 1, 0, vRe * vRe + vIm * vIm, 1);
        double span = Math.max(1, Math.min(uSpan, vSpan));
        double allowed = (uReal || vReal) ? 0.5 * budget : budget;
        double r2 = shrink(span);
        double r4 = r2 * r2;
        double r8 = r4 * r4;
        double r16 = r8 * r8;
        double error = h * bound(m0, m1, m2, span) * r16;
        double least = allowed * (1 - r2);
        if (error <= least || 2 * h * (m0 + m1 + m2) <= allowed) {
            return h * gauss(NODES_8, WEIGHTS_8, p0x, p0y, p1x, p1y, p2x, p2y);
        }
        if (error * r16 <= least) {
            return h * gauss(NODES_16, WEIGHTS_16, p0x, p0y, p1x, p1y, p2x, p2y);
        }
        if (error * r16 * r16 <= least) {
            return h * gauss(NODES_24, WEIGHTS_24, p0x, p0y, p1x, p1y, p2x, p2y);
        }
        double near = uSpan < vSpan ? uRe : vRe;
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

    /** The rule's value for |q0 + q1 u + q2 u^2|; the roots fill an array first, so that they are taken abreast. */
    private static double gauss(
            double[] nodes, double[] weights, double x0, double y0, double x1, double y1, double x2, double y2) {
        int pairs = nodes.length;
        double[] terms = new double[pairs];
        for (int i = 0; i < pairs; i++) {
            double u = nodes[i];
            double uu = u * u;
            double evenX = x0 + uu * x2;
            double evenY = y0 + uu * y2;
            double oddX = u * x1;
            double oddY = u * y1;
            double rightX = evenX + oddX;
            double rightY = evenY + oddY;
            double leftX = evenX - oddX;
            double leftY = evenY - oddY;
            terms[i] = weights[i]
                    * (Math.sqrt(rightX * rightX + rightY * rightY) + Math.sqrt(leftX * leftX + leftY * leftY));
        }
        double a = 0;
        double b = 0;
        double c = 0;
        double d = 0;
        for (int i = 0; i < pairs; i += 4) {
            a += terms[i];
            b += terms[i + 1];
            c += terms[i + 2];
            d += terms[i + 3];
        }
        return (a + b) + (c + d);
    }
}
