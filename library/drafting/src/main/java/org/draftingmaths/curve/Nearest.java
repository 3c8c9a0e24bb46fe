package org.draftingmaths.curve;

import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * The place of a curve or path that is nearest to a point.
 *
 * <p>At the nearest place either {@code (B(t) - p) . B'(t) = 0} or the curve ends. All such places are roots of a
 * polynomial of degree at most five, found by bracketing, so the least of them is the least of all; of equally near
 * places the first is taken. The distance is good to rounding.
 *
 * @param at where: the parameter if it is on a curve, the length from the start if it is on a path
 * @param point the place itself, mm
 * @param distance how far the point is from it, mm
 */
public record Nearest(double at, Vector2D point, double distance) {
    private static final double[] NONE = {};

    /** The place of a curve nearest to a point; {@link #at} is its parameter. */
    public static Nearest of(Curve curve, Vector2D point) {
        Checks.point("point", point);
        return within(curve, 0, 1, point);
    }

    /** The nearest place between two parameters of a curve. */
    static Nearest within(Curve curve, double from, double to, Vector2D point) {
        Nearest best = candidate(curve, from, point);
        for (double t : stationary(curve, point)) {
            if (t > from && t < to) {
                best = better(best, candidate(curve, t, point));
            }
        }
        return better(best, candidate(curve, to, point));
    }

    /** The place of a path nearest to a point; {@link #at} is the length from the path's start. */
    public static Nearest of(CurvePath path, Vector2D point) {
        Checks.point("point", point);
        int index = 0;
        double[] least = new double[path.curves().size()];
        for (int i = 0; i < least.length; i++) {
            least[i] = Box.around(path.curves().get(i)).distance(point);
            index = least[i] < least[index] ? i : index;
        }
        // The curve in the nearest box first: it spares most of the others.
        Nearest best = within(path.curves().get(index), 0, 1, point);
        int first = index;
        for (int i = 0; i < least.length; i++) {
            if (i == first || least[i] > best.distance) {
                continue;
            }
            Nearest here = within(path.curves().get(i), 0, 1, point);
            if (here.distance < best.distance || (here.distance == best.distance && i < index)) {
                best = here;
                index = i;
            }
        }
        return new Nearest(path.lengthAt(new Place(index, best.at)), best.point, best.distance);
    }

    private static Nearest candidate(Curve curve, double t, Vector2D point) {
        Vector2D at = t == 0 ? curve.start() : t == 1 ? curve.end() : curve.at(t);
        return new Nearest(t, at, Plane.distance(at, point));
    }

    private static Nearest better(Nearest a, Nearest b) {
        return b.distance < a.distance ? b : a;
    }

    private static double[] stationary(Curve curve, Vector2D p) {
        if (curve instanceof Straight s) {
            Vector2D way = s.end().subtract(s.start());
            return inside(p.subtract(s.start()).dot(way) / way.normSq());
        }
        if (curve instanceof Arc arc) {
            Vector2D out = p.subtract(arc.centre());
            double turned = (Math.atan2(out.getY(), out.getX()) - arc.startAngle()) * Math.signum(arc.sweep());
            double wrapped = turned - 2 * Math.PI * Math.floor(turned / (2 * Math.PI));
            return inside(wrapped / Math.abs(arc.sweep()));
        }
        return Roots.ofAll(squareSlope((Cubic) curve, p));
    }

    private static double[] inside(double t) {
        return t > 0 && t < 1 ? new double[] {t} : NONE;
    }

    /** Bernstein coefficients of {@code (B(t) - p) . B'(t) / 3}, of degree five. */
    private static double[] squareSlope(Cubic c, Vector2D p) {
        double px = p.getX();
        double py = p.getY();
        double ax = c.start().getX() - px;
        double ay = c.start().getY() - py;
        double bx = c.startHandle().getX() - px;
        double by = c.startHandle().getY() - py;
        double dx = c.endHandle().getX() - px;
        double dy = c.endHandle().getY() - py;
        double ex = c.end().getX() - px;
        double ey = c.end().getY() - py;
        double ux = bx - ax;
        double uy = by - ay;
        double vx = dx - bx;
        double vy = dy - by;
        double wx = ex - dx;
        double wy = ey - dy;
        return new double[] {
            ax * ux + ay * uy,
            (2 * (ax * vx + ay * vy) + 3 * (bx * ux + by * uy)) / 5,
            (ax * wx + ay * wy + 6 * (bx * vx + by * vy) + 3 * (dx * ux + dy * uy)) / 10,
            (3 * (bx * wx + by * wy) + 6 * (dx * vx + dy * vy) + ex * ux + ey * uy) / 10,
            (3 * (dx * wx + dy * wy) + 2 * (ex * vx + ey * vy)) / 5,
            ex * wx + ey * wy
        };
    }
}
