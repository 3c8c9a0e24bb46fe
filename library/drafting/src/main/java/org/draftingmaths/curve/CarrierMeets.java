package org.draftingmaths.curve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * Where a curve, the guest, meets a straight or an arc, the host.
 *
 * <p>The host lies on a carrier, its line or its circle. The guest's signed distance {@code g(t)} from the carrier is
 * monotone between turning points that are found as roots of polynomials of degree at most five, so every stretch with
 * {@code |g| <= tolerance} is found by bracketing. Each such stretch, as far as it lies along the host, is one meet, or
 * an overlap if it is the curves' ends that delimit it.
 */
final class CarrierMeets {
    private static final double[] BINOMIAL_3 = {1, 3, 3, 1};
    private static final double[] BINOMIAL_6 = {1, 6, 15, 20, 15, 6, 1};
    private static final double TURN = 2 * Math.PI;

    private final Curve guest;
    private final Carrier host;
    private final double tolerance;
    private final DoubleUnaryOperator distance;
    private final List<Meet> points = new ArrayList<>();
    private final List<Overlap> overlaps = new ArrayList<>();

    /** Whether all control points lie on one side of the line, by more than the tolerance; with no root to take. */
    private static boolean clear(Straight host, Cubic c, double tolerance) {
        double x = host.start().getX();
        double y = host.start().getY();
        double wx = host.end().getX() - x;
        double wy = host.end().getY() - y;
        double least = tolerance * (Math.abs(wx) + Math.abs(wy));
        double p = Plane.cross(wx, wy, c.start().getX() - x, c.start().getY() - y);
        double q =
                Plane.cross(wx, wy, c.startHandle().getX() - x, c.startHandle().getY() - y);
        double r = Plane.cross(wx, wy, c.endHandle().getX() - x, c.endHandle().getY() - y);
        double s = Plane.cross(wx, wy, c.end().getX() - x, c.end().getY() - y);
        return (p > least && q > least && r > least && s > least)
                || (p < -least && q < -least && r < -least && s < -least);
    }

    private static Meets of(Curve guest, Carrier host, double tolerance) {
        return host.clearOf(guest, tolerance) ? Meets.NONE : new CarrierMeets(guest, host, tolerance).find();
    }

    private CarrierMeets(Curve guest, Carrier host, double tolerance) {
        this.guest = guest;
        this.host = host;
        this.tolerance = tolerance;
        this.distance = host.distanceAlong(guest);
    }

    static Meets of(Curve guest, Straight host, double tolerance) {
        if (guest instanceof Cubic c && clear(host, c, tolerance)) {
            return Meets.NONE;
        }
        return of(guest, new Line(host), tolerance);
    }

    static Meets of(Curve guest, Arc host, double tolerance) {
        return of(guest, new Circle(host), tolerance);
    }

    /** A line or circle with positions along it. */
    private sealed interface Carrier permits Line, Circle {
        /** The signed distance from the carrier. */
        double distance(Vector2D p);

        /** The distance as a function of a guest's parameter. */
        default DoubleUnaryOperator distanceAlong(Curve guest) {
            return t -> distance(guest.at(t));
        }

        /** The host's parameter at the foot of the point on the carrier; outside 0 to 1 past the host's ends. */
        double along(Vector2D p);

        double hostLength();

        /** Where the host starts. */
        Vector2D start();

        /** Where it ends. */
        Vector2D end();

        /** The part of a direction at a point that leads across the carrier. */
        double across(Vector2D p, Vector2D way);

        /** Whether the host is a whole circle, so that {@link #along} jumps at its start. */
        boolean round();

        /** Whether the whole guest is farther than the tolerance from the carrier, if that is cheap to see. */
        boolean clearOf(Curve guest, double tolerance);

        /** Parameters at which a guest on the carrier passes an end of the host, or turns back along it. */
        double[] passing(Curve guest, double low, double high);

        /** Parameters that part a guest into pieces with monotone distance. */
        double[] turning(Curve guest);
    }

    private record Line(Vector2D start, Vector2D end, Vector2D direction, double hostLength) implements Carrier {
        Line(Straight s) {
            this(s.start(), s.end(), Plane.direction(s.start(), s.end()), Plane.distance(s.start(), s.end()));
        }

        @Override
        public double distance(Vector2D p) {
            return direction.getX() * (p.getY() - start.getY()) - direction.getY() * (p.getX() - start.getX());
        }

        /** Linear in the point, so the same Bernstein polynomial in the control points' distances. */
        @Override
        public DoubleUnaryOperator distanceAlong(Curve guest) {
            if (!(guest instanceof Cubic c)) {
                return t -> distance(guest.at(t));
            }
            double p = distance(c.start());
            double q = 3 * distance(c.startHandle());
            double r = 3 * distance(c.endHandle());
            double s = distance(c.end());
            return t -> {
                double u = 1 - t;
                return u * u * (u * p + t * q) + t * t * (u * r + t * s);
            };
        }

        @Override
        public double along(Vector2D p) {
            double dx = p.getX() - start.getX();
            double dy = p.getY() - start.getY();
            return (direction.getX() * dx + direction.getY() * dy) / hostLength;
        }

        @Override
        public double across(Vector2D p, Vector2D way) {
            return direction.getX() * way.getY() - direction.getY() * way.getX();
        }

        @Override
        public boolean round() {
            return false;
        }

        @Override
        public boolean clearOf(Curve guest, double tolerance) {
            if (guest instanceof Cubic c) {
                double a = distance(c.start());
                double b = distance(c.startHandle());
                double d = distance(c.endHandle());
                double e = distance(c.end());
                return Math.min(Math.min(a, b), Math.min(d, e)) > tolerance
                        || Math.max(Math.max(a, b), Math.max(d, e)) < -tolerance;
            }
            if (guest instanceof Arc arc) {
                return Math.abs(distance(arc.centre())) > arc.radius() + tolerance;
            }
            double a = distance(guest.start());
            double b = distance(guest.end());
            return Math.min(a, b) > tolerance || Math.max(a, b) < -tolerance;
        }

        @Override
        public double[] passing(Curve guest, double low, double high) {
            if (!(guest instanceof Cubic c)) {
                return nearestTo(start, end, guest, low, high);
            }
            double[] along = {along(c.start()), along(c.startHandle()), along(c.endHandle()), along(c.end())};
            double[] past = {along[0] - 1, along[1] - 1, along[2] - 1, along[3] - 1};
            return Stream.of(Roots.ofAll(along), Roots.ofAll(past), Roots.turning(along))
                    .flatMapToDouble(Arrays::stream)
                    .toArray();
        }

        @Override
        public double[] turning(Curve guest) {
            return Roots.extrema(guest, -direction.getY(), direction.getX());
        }
    }

    private record Circle(Arc arc) implements Carrier {
        @Override
        public double distance(Vector2D p) {
            return Plane.distance(p, arc.centre()) - arc.radius();
        }

        @Override
        public double along(Vector2D p) {
            Vector2D out = p.subtract(arc.centre());
            double size = Math.abs(arc.sweep());
            double turned = Math.signum(arc.sweep()) * (Math.atan2(out.getY(), out.getX()) - arc.startAngle());
            double least = -0.5 * (TURN - size);
            double wrapped = turned - TURN * Math.floor((turned - least) / TURN);
            return wrapped / size;
        }

        @Override
        public Vector2D start() {
            return arc.start();
        }

        @Override
        public Vector2D end() {
            return arc.end();
        }

        @Override
        public double hostLength() {
            return arc.radius() * Math.abs(arc.sweep());
        }

        @Override
        public double across(Vector2D p, Vector2D way) {
            return p.subtract(arc.centre()).dot(way) / arc.radius();
        }

        @Override
        public boolean round() {
            return Math.abs(arc.sweep()) > TURN - 1e-12;
        }

        @Override
        public boolean clearOf(Curve guest, double tolerance) {
            return false;
        }

        @Override
        public double[] passing(Curve guest, double low, double high) {
            if (!(guest instanceof Arc other)) {
                return nearestTo(arc.start(), arc.end(), guest, low, high);
            }
            double turned = arc.startAngle() - other.startAngle();
            double[] passing = new double[6];
            for (int k = 0; k < 3; k++) {
                double turns = TURN * (k - 1);
                passing[k] = (turned % TURN + turns) / other.sweep();
                passing[3 + k] = ((turned + arc.sweep()) % TURN + turns) / other.sweep();
            }
            return passing;
        }

        @Override
        public double[] turning(Curve guest) {
            Vector2D o = arc.centre();
            if (guest instanceof Arc other) {
                Vector2D apart = other.centre().subtract(o);
                return apart.norm() == 0
                        ? new double[0]
                        : Roots.atAngles(other, Math.atan2(apart.getY(), apart.getX()));
            }
            if (guest instanceof Cubic c) {
                return Roots.turning(squaredDistance(
                        c.start().subtract(o),
                        c.startHandle().subtract(o),
                        c.endHandle().subtract(o),
                        c.end().subtract(o)));
            }
            Vector2D way = guest.end().subtract(guest.start());
            double foot = o.subtract(guest.start()).dot(way) / way.normSq();
            return foot > 0 && foot < 1 ? new double[] {foot} : new double[0];
        }
    }

    /** Bernstein coefficients of {@code |B(t)|^2}. */
    private static double[] squaredDistance(Vector2D... control) {
        double[] sum = new double[7];
        for (int i = 0; i < 4; i++) {
            for (int j = 0; j < 4; j++) {
                sum[i + j] += BINOMIAL_3[i] * BINOMIAL_3[j] / BINOMIAL_6[i + j] * control[i].dot(control[j]);
            }
        }
        return sum;
    }

    private Meets find() {
        double[] turning = host.turning(guest);
        int count = turning.length + 2;
        double[] t = new double[count];
        double[] g = new double[count];
        System.arraycopy(turning, 0, t, 1, turning.length);
        t[count - 1] = 1;
        for (int i = 0; i < count; i++) {
            g[i] = distance.applyAsDouble(t[i]);
        }
        collect(t, g);
        return Meets.made(points, overlaps);
    }

    /**
     * A plain crossing: the guest goes through the carrier at an angle of a hundredth or more, and either well inside
     * the host or well off it, so that neither the tolerance nor the host's ends have a say. True if that is so.
     */
    private boolean plain(double from, double atFrom, double to, double atTo) {
        double t = Roots.between(distance, from, atFrom, to, atTo);
        Vector2D p = guest.at(t);
        double s = host.along(p);
        double inside = Math.min(s, 1 - s) * host.hostLength();
        if (Math.abs(inside) < 1e3 * tolerance || host.round()) {
            return false;
        }
        Vector2D way = guest.derivative(t);
        if (!(Math.abs(host.across(p, way)) > 0.01 * Plane.norm(way))) {
            return false;
        }
        if (inside > 0) {
            points.add(new Meet(t, s, p, Meet.Kind.CROSSING));
        }
        return true;
    }

    /** Walks the monotone pieces and closes a stretch whenever the guest leaves the tolerance band. */
    private void collect(double[] t, double[] g) {
        double low = Math.abs(g[0]) <= tolerance ? 0 : Double.NaN;
        double sideBefore = 0;
        for (int i = 0; i + 1 < t.length; i++) {
            double a = g[i];
            double b = g[i + 1];
            boolean aIn = Math.abs(a) <= tolerance;
            boolean bIn = Math.abs(b) <= tolerance;
            if (!aIn && !bIn && (a < 0) != (b < 0) && plain(t[i], a, t[i + 1], b)) {
                continue;
            }
            if (!aIn && (bIn || (a < 0) != (b < 0))) {
                low = level(Math.copySign(tolerance, a), t[i], a, t[i + 1], b);
                sideBefore = a;
            }
            if (!bIn && (aIn || (a < 0) != (b < 0))) {
                double high = level(Math.copySign(tolerance, b), t[i], a, t[i + 1], b);
                stretch(low, high, sideBefore, b);
                low = Double.NaN;
            }
        }
        if (!Double.isNaN(low)) {
            stretch(low, 1, sideBefore, 0);
        }
    }

    private double level(double value, double from, double atFrom, double to, double atTo) {
        return Roots.between(t -> distance.applyAsDouble(t) - value, from, atFrom - value, to, atTo - value);
    }

    private double along(double t) {
        return host.along(guest.at(t));
    }

    /** One stretch of the guest within the tolerance of the carrier: parts of it lie along the host. */
    private void stretch(double low, double high, double sideBefore, double sideAfter) {
        if (endsMeet(low, high)) {
            return;
        }
        double[] cuts = cuts(low, high);
        double slack = tolerance / host.hostLength();
        int told = points.size() + overlaps.size();
        double from = Double.NaN;
        for (int i = 0; i + 1 < cuts.length; i++) {
            double s = along(0.5 * (cuts[i] + cuts[i + 1]));
            boolean on = s >= -slack && s <= 1 + slack;
            if (on && Double.isNaN(from)) {
                from = cuts[i];
            }
            if (!on && !Double.isNaN(from)) {
                keep(from, cuts[i], cuts, false);
                from = Double.NaN;
            }
        }
        if (!Double.isNaN(from)) {
            keep(from, high, cuts, sideBefore * sideAfter < 0 && from == low);
        }
        if (points.size() + overlaps.size() == told) {
            atEnd(low, high, 0);
            atEnd(low, high, 1);
        }
    }

    /** Told at once where an end of the guest lies on an end of the host and the stretch is too short to overlap. */
    private boolean endsMeet(double low, double high) {
        double end = low == 0 ? 0 : 1;
        if ((low > 0 && high < 1) || host.round()) {
            return false;
        }
        Vector2D p = end == 0 ? guest.start() : guest.end();
        Vector2D q = guest.at(end == 0 ? high : low);
        if (Plane.distance(p, q) > CurvePath.JOINT || high - low > 0.01) {
            return false;
        }
        for (int side = 0; side <= 1; side++) {
            if (Plane.distance(p, side == 0 ? host.start() : host.end()) <= tolerance) {
                points.add(new Meet(end, side, p, Meet.Kind.TOUCHING));
                return true;
            }
        }
        return false;
    }

    /** A stretch that lies past the host may still begin or end at the host's end. */
    private void atEnd(double low, double high, double end) {
        Vector2D place = end == 0 ? host.start() : host.end();
        Nearest nearest = Nearest.within(guest, low, high, place);
        if (nearest.distance() <= tolerance) {
            points.add(new Meet(nearest.at(), end, nearest.point(), Meet.Kind.TOUCHING));
        }
    }

    /** The ends of a stretch and where in it the guest passes an end of the host or turns back along it, ascending. */
    private double[] cuts(double low, double high) {
        double[] passing = high - low < 1e-12 ? new double[0] : host.passing(guest, low, high);
        double[] cuts = new double[passing.length + 2];
        cuts[0] = low;
        int count = 1;
        Arrays.sort(passing);
        for (double t : passing) {
            if (t > cuts[count - 1] && t < high) {
                cuts[count++] = t;
            }
        }
        cuts[count++] = high;
        return Arrays.copyOf(cuts, count);
    }

    /** Where a guest is nearest to the ends of a host, seen between two parameters. */
    private static double[] nearestTo(Vector2D start, Vector2D end, Curve guest, double low, double high) {
        return new double[] {
            Nearest.within(guest, low, high, start).at(),
            Nearest.within(guest, low, high, end).at()
        };
    }

    /** Where in a stretch the guest is on the carrier, or nearest to it. */
    private double nearest(double low, double high) {
        double a = distance.applyAsDouble(low);
        double b = distance.applyAsDouble(high);
        if ((a < 0) != (b < 0)) {
            return Roots.between(distance, low, a, high, b);
        }
        double best = Math.abs(a) <= Math.abs(b) ? low : high;
        double least = Math.min(Math.abs(a), Math.abs(b));
        for (double t : host.turning(guest)) {
            double g = Math.abs(distance.applyAsDouble(t));
            if (t > low && t < high && g <= least) {
                best = t;
                least = g;
            }
        }
        return best;
    }

    private void keep(double from, double to, double[] cuts, boolean crosses) {
        boolean endsBefore = from == 0 || from > cuts[0];
        boolean endsAfter = to == 1 || to < cuts[cuts.length - 1];
        double size = Plane.distance(guest.at(from), guest.at(to));
        double apart = Plane.distance(guest.at(0.5 * (from + to)), guest.at(from));
        if (endsBefore && endsAfter && Math.max(size, apart) > Math.max(CurvePath.JOINT, 2 * tolerance)) {
            for (int i = 0; i + 1 < cuts.length; i++) {
                if (cuts[i] >= from && cuts[i + 1] <= to) {
                    overlap(cuts[i], cuts[i + 1]);
                }
            }
            return;
        }
        double t = endsBefore ? from : endsAfter ? to : nearest(from, to);
        double s = clamped(along(t), t, t);
        boolean atHostEnd = Math.min(s, 1 - s) * host.hostLength() <= tolerance;
        if (atHostEnd) {
            s = Math.rint(s);
            if (Plane.distance(guest.at(t), s == 0 ? host.start() : host.end()) > tolerance) {
                // Near the carrier and near the end's foot is not yet near the end.
                atEnd(from, to, s);
                return;
            }
        }
        boolean through = crosses && !endsBefore && !endsAfter && (!atHostEnd || host.round());
        points.add(new Meet(t, s, guest.at(t), through ? Meet.Kind.CROSSING : Meet.Kind.TOUCHING));
    }

    private void overlap(double from, double to) {
        if (Plane.distance(guest.at(from), guest.at(0.5 * (from + to))) > tolerance) {
            overlaps.add(new Overlap(from, to, clamped(along(from), from, to), clamped(along(to), to, from)));
        }
    }

    /** The host's parameter, held to its ends; on a whole circle its start is 0 or 1 as seen from inside the stretch. */
    private double clamped(double s, double t, double other) {
        double held = Math.min(1, Math.max(0, s));
        if (host.round() && other != t && Math.min(held, 1 - held) < 1e-9) {
            return along(0.5 * (t + other)) > 0.5 ? 1 : 0;
        }
        return held;
    }
}
