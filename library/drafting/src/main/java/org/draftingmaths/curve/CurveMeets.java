package org.draftingmaths.curve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Where one curve meets another, or itself. */
final class CurveMeets {
    private CurveMeets() {}

    static Meets of(Curve a, Curve b, double tolerance) {
        if (b instanceof Straight s) {
            return CarrierMeets.of(a, s, tolerance);
        }
        if (a instanceof Straight s) {
            return swapped(CarrierMeets.of(b, s, tolerance));
        }
        if (b instanceof Arc arc) {
            return CarrierMeets.of(a, arc, tolerance);
        }
        if (a instanceof Arc arc) {
            return swapped(CarrierMeets.of(b, arc, tolerance));
        }
        return CubicMeets.of((Cubic) a, (Cubic) b, tolerance);
    }

    /** The largest coordinate of the control points, or of the circle of an arc. */
    static double size(Curve curve) {
        if (curve instanceof Arc arc) {
            return size(arc.centre()) + arc.radius();
        }
        double ends = Math.max(size(curve.start()), size(curve.end()));
        return curve instanceof Cubic c ? Math.max(ends, Math.max(size(c.startHandle()), size(c.endHandle()))) : ends;
    }

    private static double size(Vector2D p) {
        return Math.max(Math.abs(p.getX()), Math.abs(p.getY()));
    }

    private static Meets swapped(Meets meets) {
        if (meets.isEmpty()) {
            return meets;
        }
        List<Meet> points = new ArrayList<>(meets.points().size());
        for (Meet m : meets.points()) {
            points.add(new Meet(m.onSecond(), m.onFirst(), m.point(), m.kind()));
        }
        points.sort(Comparator.comparingDouble(Meet::onFirst).thenComparingDouble(Meet::onSecond));
        List<Overlap> overlaps = new ArrayList<>();
        for (Overlap o : meets.overlaps()) {
            overlaps.add(
                    o.sameWay()
                            ? new Overlap(o.fromSecond(), o.toSecond(), o.fromFirst(), o.toFirst())
                            : new Overlap(o.toSecond(), o.fromSecond(), o.toFirst(), o.fromFirst()));
        }
        overlaps.sort(Comparator.comparingDouble(Overlap::fromFirst));
        return new Meets(points, overlaps);
    }

    /** Where a curve meets itself: loops, folds, and its ends if they meet. */
    static Meets ofItself(Curve curve, double tolerance) {
        if (curve instanceof Straight) {
            return Meets.NONE;
        }
        List<Meet> points = new ArrayList<>();
        List<Overlap> overlaps = new ArrayList<>();
        boolean closed = Plane.distance(curve.start(), curve.end()) <= tolerance
                && (curve instanceof Cubic || Math.abs(((Arc) curve).sweep()) > Math.PI);
        if (curve instanceof Cubic c) {
            if (collinear(c, tolerance)) {
                folds(c, overlaps);
            } else {
                loop(c, tolerance, points);
            }
        }
        if (closed && points.isEmpty() && overlaps.isEmpty()) {
            points.add(new Meet(0, 1, curve.start(), Meet.Kind.TOUCHING));
        }
        return new Meets(points, overlaps);
    }

    private static boolean collinear(Cubic c, double tolerance) {
        Vector2D far = c.start();
        for (Vector2D p : new Vector2D[] {c.startHandle(), c.endHandle(), c.end()}) {
            if (Plane.distance(p, c.start()) > Plane.distance(far, c.start())) {
                far = p;
            }
        }
        Vector2D way = c.start().directionTo(far);
        for (Vector2D p : new Vector2D[] {c.startHandle(), c.endHandle(), c.end()}) {
            if (Math.abs(way.signedArea(p.subtract(c.start()))) > tolerance) {
                return false;
            }
        }
        return true;
    }

    /**
     * {@code (B(s) - B(t)) / (s - t) = c3 (s^2 + s t + t^2) + c2 (s + t) + c1 = 0} is linear in
     * {@code s^2 + s t + t^2} and {@code s + t}; their values give s and t as the roots of a quadratic.
     */
    private static void loop(Cubic c, double tolerance, List<Meet> points) {
        Vector2D c1 = c.startHandle().subtract(c.start()).multiply(3);
        Vector2D c2 = c.endHandle()
                .subtract(c.startHandle())
                .subtract(c.startHandle().subtract(c.start()))
                .multiply(3);
        Vector2D c3 = c.end().subtract(c.start()).subtract(3, c.endHandle().subtract(c.startHandle()));
        double det = c3.signedArea(c2);
        double squares = -c1.signedArea(c2) / det;
        double sum = -c3.signedArea(c1) / det;
        double root = Math.sqrt(4 * squares - 3 * sum * sum);
        double s = held(0.5 * (sum - root));
        double t = held(0.5 * (sum + root));
        if (s < t && Plane.distance(c.at(s), c.at(t)) <= tolerance && apart(c, s, t, tolerance)) {
            boolean ends = s == 0 || t == 1;
            points.add(new Meet(s, t, c.at(s), ends ? Meet.Kind.TOUCHING : Meet.Kind.CROSSING));
        }
    }

    /** Rounding must not lose a loop that closes just at an end. */
    private static double held(double t) {
        return t > -1e-9 && t < 1e-12 ? 0 : t < 1 + 1e-9 && t > 1 - 1e-12 ? 1 : t >= 0 && t <= 1 ? t : Double.NaN;
    }

    private static boolean apart(Cubic c, double s, double t, double tolerance) {
        return Plane.distance(c.at(0.5 * (s + t)), c.at(s)) > tolerance;
    }

    /** A cubic on a line runs back over itself wherever it turns. */
    private static void folds(Cubic c, List<Overlap> overlaps) {
        Vector2D way = axis(c);
        double[] x = {way.dot(c.start()), way.dot(c.startHandle()), way.dot(c.endHandle()), way.dot(c.end())};
        double[] turning = Roots.turning(x);
        double[] t = new double[turning.length + 2];
        System.arraycopy(turning, 0, t, 1, turning.length);
        t[t.length - 1] = 1;
        for (int i = 0; i + 1 < t.length; i++) {
            for (int j = i + 1; j + 1 < t.length; j++) {
                fold(x, t[i], t[i + 1], t[j], t[j + 1], overlaps);
            }
        }
    }

    private static Vector2D axis(Cubic c) {
        Vector2D best = c.end().subtract(c.start());
        for (Vector2D p : new Vector2D[] {c.startHandle(), c.endHandle()}) {
            Vector2D way = p.subtract(c.start());
            best = way.norm() > best.norm() ? way : best;
        }
        return best.normalize();
    }

    private static void fold(double[] x, double a0, double a1, double b0, double b1, List<Overlap> overlaps) {
        double[] a = {Roots.value(x, a0), Roots.value(x, a1)};
        double[] b = {Roots.value(x, b0), Roots.value(x, b1)};
        double low = Math.max(Math.min(a[0], a[1]), Math.min(b[0], b[1]));
        double high = Math.min(Math.max(a[0], a[1]), Math.max(b[0], b[1]));
        if (high - low > CurvePath.JOINT) {
            double from = a[0] < a[1] ? low : high;
            double to = a[0] < a[1] ? high : low;
            overlaps.add(new Overlap(
                    level(x, a0, a1, from), level(x, a0, a1, to), level(x, b0, b1, from), level(x, b0, b1, to)));
        }
    }

    private static double level(double[] x, double from, double to, double value) {
        double a = Roots.value(x, from) - value;
        double b = Roots.value(x, to) - value;
        if ((a < 0) == (b < 0)) {
            return Math.abs(a) <= Math.abs(b) ? from : to;
        }
        return Roots.between(t -> Roots.value(x, t) - value, from, a, to, b);
    }
}
