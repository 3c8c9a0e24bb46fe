package org.draftingmaths.curve;

import java.util.function.ToDoubleFunction;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * The place of a curve or path that is nearest to a point.
 *
 * <p>At the nearest place either {@code (B(t) - p) . B'(t) = 0} or the curve ends. All such places are roots of a
 * polynomial of degree at most five, found by bracketing, so the least of them is the least of all; of equally near
 * places the first is taken. The distance is good to 1e-13 of the curve's size.
 *
 * @param at where: the parameter if it is on a curve, the length from the start if it is on a path
 * @param point the place itself, mm
 * @param distance how far the point is from it, mm
 */
public record Nearest(double at, Vector2D point, double distance) {
    private static final double[] NONE = {};

    /** A speed, as a share of the curve's size, below which rounding may show in the twelfth digit. */
    private static final double STILL = 0.05;

    /** How far on either side a slow place is looked at again. */
    private static final double CLOSE = 0.001;

    /** The place of a curve nearest to a point; {@link #at} is its parameter. */
    public static Nearest of(Curve curve, Vector2D point) {
        Checks.point("point", point);
        return within(curve, 0, 1, point);
    }

    /** The nearest place between two parameters of a curve. */
    static Nearest within(Curve curve, double from, double to, Vector2D point) {
        Nearest found = amongStationary(curve, from, to, point);
        return curve instanceof Cubic cubic && slow(cubic, found) ? closer(cubic, from, to, point, found) : found;
    }

    /** Whether the curve all but stands still at an inner place, as at a cusp. */
    private static boolean slow(Cubic c, Nearest found) {
        return found.at > 0 && found.at < 1 && Plane.norm(c.derivative(found.at)) < STILL * c.around();
    }

    /**
     * The same on a stretch of a five-hundredth, whose control points all lie close to the place. The polynomial of the whole
     * sums squares of the curve's size, which near a cusp leaves only half of the digits.
     */
    private static Nearest closer(Cubic c, double from, double to, Vector2D p, Nearest found) {
        double low = Math.max(from, found.at - CLOSE);
        double high = Math.min(to, found.at + CLOSE);
        double[] x = part(coordinates(c, Vector2D::getX, p), low, high);
        double[] y = part(coordinates(c, Vector2D::getY, p), low, high);
        Nearest best = found;
        for (double share : Roots.ofAll(squareSlope(x, y))) {
            best = better(best, candidate(c, low + share * (high - low), p));
        }
        return best;
    }

    /** Bernstein coefficients between two parameters: {@code b(l,l,l), b(l,l,h), b(l,h,h), b(h,h,h)} of the blossom b. */
    private static double[] part(double[] b, double low, double high) {
        return new double[] {
            blossom(b, low, low, low),
            blossom(b, low, low, high),
            blossom(b, low, high, high),
            blossom(b, high, high, high)
        };
    }

    private static double blossom(double[] b, double u, double v, double w) {
        double ab = b[0] + u * (b[1] - b[0]);
        double bc = b[1] + u * (b[2] - b[1]);
        double cd = b[2] + u * (b[3] - b[2]);
        double abc = ab + v * (bc - ab);
        double bcd = bc + v * (cd - bc);
        return abc + w * (bcd - abc);
    }

    private static double[] coordinates(Cubic c, ToDoubleFunction<Vector2D> of, Vector2D p) {
        double from = of.applyAsDouble(p);
        return new double[] {
            of.applyAsDouble(c.start()) - from,
            of.applyAsDouble(c.startHandle()) - from,
            of.applyAsDouble(c.endHandle()) - from,
            of.applyAsDouble(c.end()) - from
        };
    }

    private static Nearest amongStationary(Curve curve, double from, double to, Vector2D point) {
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
        Cubic c = (Cubic) curve;
        return Roots.ofAll(squareSlope(coordinates(c, Vector2D::getX, p), coordinates(c, Vector2D::getY, p)));
    }

    private static double[] inside(double t) {
        return t > 0 && t < 1 ? new double[] {t} : NONE;
    }

    /** Bernstein coefficients of {@code (B(t) - p) . B'(t) / 3}, of degree five; coordinates as seen from p. */
    private static double[] squareSlope(double[] x, double[] y) {
        double ux = x[1] - x[0];
        double uy = y[1] - y[0];
        double vx = x[2] - x[1];
        double vy = y[2] - y[1];
        double wx = x[3] - x[2];
        double wy = y[3] - y[2];
        return new double[] {
            x[0] * ux + y[0] * uy,
            (2 * (x[0] * vx + y[0] * vy) + 3 * (x[1] * ux + y[1] * uy)) / 5,
            (x[0] * wx + y[0] * wy + 6 * (x[1] * vx + y[1] * vy) + 3 * (x[2] * ux + y[2] * uy)) / 10,
            (3 * (x[1] * wx + y[1] * wy) + 6 * (x[2] * vx + y[2] * vy) + x[3] * ux + y[3] * uy) / 10,
            (3 * (x[2] * wx + y[2] * wy) + 2 * (x[3] * vx + y[3] * vy)) / 5,
            x[3] * wx + y[3] * wy
        };
    }
}
