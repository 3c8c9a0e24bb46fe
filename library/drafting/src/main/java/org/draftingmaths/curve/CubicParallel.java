package org.draftingmaths.curve;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * The parallel of a cubic as cubics, to a proven deviation.
 *
 * <p><b>The parallel.</b> With {@code T} the unit tangent, {@code N} the normal to the left and {@code k} the
 * curvature, {@code O(t) = B(t) + d N(t)} and {@code O' = |B'| (1 - d k) T}. Where {@code d k > 1} it runs backwards and
 * every one of its points lies nearer than {@code d} to the cubic: there is no parallel there. The sign of
 * {@code |B'|^3 - d (B' x B'')} is settled on parts by bounds on both terms, and parts where it changes are halved.
 *
 * <p><b>The fit.</b> A cubic {@code C} with the parallel's ends and end tangents has two free handle lengths. They are
 * chosen so that {@code (C - B) . N = d} at two more parameters, which is linear in them; those parameters level the
 * error {@code t^2 (1-t)^2 (t-t1)(t-t2)}. Where the part hardly turns that says little, so {@code (C - B) . T = 0} is
 * asked for as well, with less weight, and both are met by least squares.
 *
 * <p><b>The bound.</b> Write {@code C(t) - B(t) = n N + s T}, where {@code n^2 + s^2} is a polynomial of degree six and
 * {@code s |B'|} one of degree five; their Bernstein coefficients bound them, and the legs of the control polygon along
 * the chord bound {@code |B'|} from below, so {@code |s| <= S} and {@code n0 <= |n| <= n1}. Where {@code n0} is nothing, C may lie on
 * the other side of the curve, and all that is known is {@code n1 + |d|}. Else n keeps the sign that it has at the ends. One bound on the deviation
 * is that to {@code O(t)} itself, {@code max(n1 - |d|, |d| - n0) + S}. A sharper one uses the foot {@code F} of
 * {@code C(t)} on the curve: {@code C(t)} is a point of the parallel at distance {@code p = |C(t) - F|}, and deviates by
 * {@code |p - |d||}. Clearly {@code p <= sqrt(n^2 + s^2)}. And a curve that bends towards the parallel by at most
 * {@code 1/r} stays out of the disc of radius {@code r} that touches it at {@code B(t)} on that side, so
 * {@code p >= r - sqrt(s^2 + (r - n)^2) >= n - s^2 / (2 (r - n))} for {@code n < r}. The foot is near:
 * along the curve the tangential part of {@code B - C(t)} grows at a rate of at least {@code 1 - (n1 + S) / r}, so it
 * vanishes within {@code S / (1 - (n1 + S) / r)} of {@code t}, and {@code r} is taken from a part that is longer by a
 * tenth at both ends.
 */
final class CubicParallel {
    /** Where {@code t^2 (1-t)^2 ((t-1/2)^2 - x^2)} has equal extremes: x = 0.163. */
    private static final double[] INNER = {0.337, 0.663};

    /** A shift along the curve moves the foot, not the distance, but to second order. */
    private static final double ALONG = 0.01;

    /** A part of this size in the parameter is not halved again to tell on which side of a cusp it lies. */
    private static final double LEAST = 1e-7;

    private static final int[] BINOMIAL_2 = {1, 2, 1};
    private static final int[] BINOMIAL_3 = {1, 3, 3, 1};
    private static final int[] BINOMIAL_5 = {1, 5, 10, 10, 5, 1};
    private static final int[] BINOMIAL_6 = {1, 6, 15, 20, 15, 6, 1};

    private final int edge;
    private final double distance;
    private final double deviation;
    private final List<Strand> strands;

    private CubicParallel(int edge, double distance, double deviation, List<Strand> strands) {
        this.edge = edge;
        this.distance = distance;
        this.deviation = deviation;
        this.strands = strands;
    }

    /** Adds the strands of a cubic's parallel; stretches without one are bridged by straights. */
    static void add(Cubic cubic, int edge, double distance, double deviation, List<Strand> strands) {
        new CubicParallel(edge, distance, deviation, strands).add(cubic, 0, 1);
    }

    private void add(Cubic part, double from, double to) {
        double ax = part.startHandle().getX() - part.start().getX();
        double ay = part.startHandle().getY() - part.start().getY();
        double bx = part.endHandle().getX() - part.startHandle().getX();
        double by = part.endHandle().getY() - part.startHandle().getY();
        double cx = part.end().getX() - part.endHandle().getX();
        double cy = part.end().getY() - part.endHandle().getY();
        double slowest = slowest(ax, ay, bx, by, cx, cy);
        double fastest = Math.sqrt(Math.max(ax * ax + ay * ay, Math.max(bx * bx + by * by, cx * cx + cy * cy)));
        // B' x B'' / 18 = (a x b) (1-t)^2 + (a x c) (1-t) t + (b x c) t^2, and |B'|^3 = 27 of the legs' cube.
        double p = ax * by - ay * bx;
        double q = 0.5 * (ax * cy - ay * cx);
        double r = bx * cy - by * cx;
        double scale = 18 * distance / 27;
        double least = Math.min(scale * p, Math.min(scale * q, scale * r));
        double most = Math.max(scale * p, Math.max(scale * q, scale * r));
        if (least > fastest * fastest * fastest) {
            bridge(part, from, to);
        } else if (slowest * slowest * slowest > most && fitted(part, from, to)) {
            return;
        } else if (to - from < LEAST) {
            bridge(part, from, to);
        } else {
            double middle = 0.5 * (from + to);
            add(part.between(0, 0.5), from, middle);
            add(part.between(0.5, 1), middle, to);
        }
    }

    /** A lower bound for |B'| / 3: the legs along the chord. */
    private static double slowest(double ax, double ay, double bx, double by, double cx, double cy) {
        double ux = ax + bx + cx;
        double uy = ay + by + cy;
        double norm = Math.sqrt(ux * ux + uy * uy);
        double least = Math.min(ax * ux + ay * uy, Math.min(bx * ux + by * uy, cx * ux + cy * uy));
        return norm > 0 ? Math.max(0, least / norm) : 0;
    }

    /** Bridges of neighbouring parts are one. */
    private void bridge(Cubic part, double from, double to) {
        Vector2D start = beside(part, 0);
        Vector2D end = beside(part, 1);
        double before = from;
        if (!strands.isEmpty()) {
            Strand last = strands.get(strands.size() - 1);
            if (last.edge() == edge && last.swallowed() && last.to() == from) {
                strands.remove(strands.size() - 1);
                start = last.curve().start();
                before = last.from();
            } else if (last.edge() == edge) {
                start = last.curve().end();
            }
        }
        if (Plane.distance(start, end) > 0) {
            strands.add(new Strand(new Straight(start, end), edge, before, to, true));
        }
    }

    private Vector2D beside(Cubic part, double t) {
        return Plane.beside(part.at(t), part.tangent(t), distance);
    }

    /** Adds one cubic if it keeps the deviation. */
    private boolean fitted(Cubic b, double from, double to) {
        Vector2D first = b.tangent(0);
        Vector2D last = b.tangent(1);
        Vector2D start = Plane.beside(b.start(), first, distance);
        Vector2D end = Plane.beside(b.end(), last, distance);
        double leave = Plane.distance(b.start(), b.startHandle()) * (1 - distance * curvature(b, 0));
        double arrive = Plane.distance(b.endHandle(), b.end()) * (1 - distance * curvature(b, 1));
        double[] handles = handles(b, first, last, start, end);
        boolean sane = handles[0] > 0.25 * leave
                && handles[0] < 4 * leave
                && handles[1] > 0.25 * arrive
                && handles[1] < 4 * arrive;
        Cubic best = sane
                ? new Cubic(start, start.add(handles[0], first), end.subtract(handles[1], last), end)
                : new Cubic(start, start.add(leave, first), end.subtract(arrive, last), end);
        if (!(deviation(b, best) <= deviation)) {
            return false;
        }
        strands.add(new Strand(best, edge, from, to, false));
        return true;
    }

    private static double curvature(Cubic b, double t) {
        double k = b.curvature(t);
        return Double.isInfinite(k) ? 0 : k;
    }

    /**
     * The handle lengths with the least sum of squares of the errors of distance, and of the shifts along the curve
     * with a hundredth of the weight, at the two inner parameters.
     */
    private double[] handles(Cubic b, Vector2D first, Vector2D last, Vector2D start, Vector2D end) {
        double aa = 0;
        double ab = 0;
        double bb = 0;
        double ar = 0;
        double br = 0;
        for (double t : INNER) {
            double s = 1 - t;
            double b1 = 3 * s * s * t;
            double b2 = 3 * s * t * t;
            double dx = b.dx(t);
            double dy = b.dy(t);
            double norm = Math.sqrt(dx * dx + dy * dy);
            double tx = dx / norm;
            double ty = dy / norm;
            double head = s * s * s + b1;
            double tail = t * t * t + b2;
            double x = head * start.getX() + tail * end.getX() - b.x(t);
            double y = head * start.getY() + tail * end.getY() - b.y(t);
            double acrossA = b1 * (tx * first.getY() - ty * first.getX());
            double acrossB = -b2 * (tx * last.getY() - ty * last.getX());
            double across = distance - (tx * y - ty * x);
            double alongA = ALONG * b1 * (tx * first.getX() + ty * first.getY());
            double alongB = -ALONG * b2 * (tx * last.getX() + ty * last.getY());
            double along = -ALONG * (tx * x + ty * y);
            aa += acrossA * acrossA + alongA * alongA;
            ab += acrossA * acrossB + alongA * alongB;
            bb += acrossB * acrossB + alongB * alongB;
            ar += acrossA * across + alongA * along;
            br += acrossB * across + alongB * along;
        }
        double det = aa * bb - ab * ab;
        return new double[] {(ar * bb - br * ab) / det, (br * aa - ar * ab) / det};
    }

    /** The bound on how far a cubic lies off the parallel of another, whatever is asked for. */
    static double deviation(Cubic cubic, double distance, Cubic parallel) {
        return new CubicParallel(0, distance, 0, List.of()).deviation(cubic, parallel);
    }

    /** A bound on how far the fitted cubic lies off the parallel of b; infinite if none can be given. */
    private double deviation(Cubic b, Cubic c) {
        double[] bx = {
            b.start().getX(),
            b.startHandle().getX(),
            b.endHandle().getX(),
            b.end().getX()
        };
        double[] by = {
            b.start().getY(),
            b.startHandle().getY(),
            b.endHandle().getY(),
            b.end().getY()
        };
        double[] ox = {
            c.start().getX() - bx[0],
            c.startHandle().getX() - bx[1],
            c.endHandle().getX() - bx[2],
            c.end().getX() - bx[3]
        };
        double[] oy = {
            c.start().getY() - by[0],
            c.startHandle().getY() - by[1],
            c.endHandle().getY() - by[2],
            c.end().getY() - by[3]
        };
        double[] ex = {bx[1] - bx[0], bx[2] - bx[1], bx[3] - bx[2]};
        double[] ey = {by[1] - by[0], by[2] - by[1], by[3] - by[2]};
        double slowest = slowest(ex[0], ey[0], ex[1], ey[1], ex[2], ey[2]);
        if (!(slowest > 0)) {
            return Double.POSITIVE_INFINITY;
        }
        double along = largest(dot(ox, oy, ex, ey, BINOMIAL_2, BINOMIAL_5)) / slowest;
        double[] square = dot(ox, oy, ox, oy, BINOMIAL_3, BINOMIAL_6);
        double low = square[0];
        double high = square[0];
        for (double v : square) {
            low = Math.min(low, v);
            high = Math.max(high, v);
        }
        double d = Math.abs(distance);
        double most = Math.sqrt(high);
        double squaredLeast = low - along * along;
        if (!(squaredLeast > 0)) {
            // C may cross over the curve; it lies within n of B(t), and that lies within d of O(t).
            return most + d;
        }
        double least = Math.sqrt(squaredLeast);
        double direct = Math.max(most - d, d - least) + along;
        if (direct <= deviation) {
            return direct;
        }
        double bend = bend(ex, ey);
        double room = 1 - bend * (most + along);
        boolean footNear = room > 0 && along / room <= 0.1 * 3 * slowest;
        if (!footNear) {
            return direct;
        }
        double foot = Math.max(most - d, d - least + 0.5 * bend * along * along / (1 - bend * most));
        return Math.min(direct, foot);
    }

    /** The most by which the part, longer by a tenth at both ends, bends towards its parallel. */
    private double bend(double[] ex, double[] ey) {
        double ax = stretched(ex[0], ex[1], ex[2], -0.1, -0.1);
        double ay = stretched(ey[0], ey[1], ey[2], -0.1, -0.1);
        double bx = stretched(ex[0], ex[1], ex[2], -0.1, 1.1);
        double by = stretched(ey[0], ey[1], ey[2], -0.1, 1.1);
        double cx = stretched(ex[0], ex[1], ex[2], 1.1, 1.1);
        double cy = stretched(ey[0], ey[1], ey[2], 1.1, 1.1);
        double slowest = slowest(ax, ay, bx, by, cx, cy);
        if (!(slowest > 0)) {
            return Double.POSITIVE_INFINITY;
        }
        double sign = Math.signum(distance);
        double turning = Math.max(
                sign * (ax * by - ay * bx), Math.max(sign * 0.5 * (ax * cy - ay * cx), sign * (bx * cy - by * cx)));
        // B' x B'' is 18 / 1.2 of the crosses of the stretched legs, |B'| is 3 times the legs.
        return Math.max(0, turning * 18 / (1.2 * 27 * slowest * slowest * slowest));
    }

    /** The blossom of a quadratic with these Bernstein coefficients. */
    private static double stretched(double a, double b, double c, double s, double t) {
        return (1 - s) * ((1 - t) * a + t * b) + s * ((1 - t) * b + t * c);
    }

    /** Bernstein coefficients of the dot product of a cubic and another polynomial. */
    private static double[] dot(double[] px, double[] py, double[] qx, double[] qy, int[] of, int[] product) {
        double[] sum = new double[product.length];
        for (int i = 0; i < px.length; i++) {
            for (int j = 0; j < qx.length; j++) {
                sum[i + j] += BINOMIAL_3[i] * of[j] * (px[i] * qx[j] + py[i] * qy[j]);
            }
        }
        for (int k = 0; k < sum.length; k++) {
            sum[k] /= product[k];
        }
        return sum;
    }

    private static double largest(double[] values) {
        double largest = 0;
        for (double v : values) {
            largest = Math.max(largest, Math.abs(v));
        }
        return largest;
    }
}
