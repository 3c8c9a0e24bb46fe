package org.draftingmaths.curve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * Where two cubics meet.
 *
 * <p>Both are halved again and again, and pairs of parts are dropped whose control points lie farther apart than the
 * tolerance along the axes or across the chord of either: a cubic lies in the hull of its control points.
 * What is left is finished in one of two ways.
 *
 * <ul>
 *   <li>The directions of the two parts are disjoint, up to sign. Then they meet at most once, because the chord
 *       between two meets would be a direction of both; Newton's iteration finds the meet if there is one.
 *   <li>Both parts are straight to an eighth of the tolerance. Then their nearest places decide.
 * </ul>
 *
 * <p>Halving makes a part of turning {@code k} and size {@code h} straight to {@code k h^2 / 8}, so the second happens
 * after finitely many steps. Contacts between which the curves stay within the tolerance are told as one meet.
 */
final class CubicMeets {
    /** Halving a thousand kilometres so often leaves less than the least tolerance. */
    private static final int DEEPEST = 140;

    /** Pairs of parts that a search without tangency or overlap seldom exceeds. */
    private static final int FEW = 60;

    private final Cubic first;
    private final Cubic second;
    private final double tolerance;
    private final List<Contact> contacts = new ArrayList<>();

    /** How many more pairs of parts may be looked at. */
    private int left;

    /** Parameters of a place where the two are within the tolerance, and whether it is one of disjoint directions. */
    private record Contact(double s, double t, boolean transversal) {}

    private CubicMeets(Cubic first, Cubic second, double tolerance) {
        this.first = first;
        this.second = second;
        this.tolerance = tolerance;
    }

    static Meets of(Cubic first, Cubic second, double tolerance) {
        CubicMeets meets = new CubicMeets(first, second, tolerance);
        Part a = new Part(first);
        Part b = new Part(second);
        if (meets.apart(a, b)) {
            return Meets.NONE;
        }
        List<Overlap> overlaps = List.of();
        if (!meets.plain(a, b)) {
            meets.contacts.clear();
            meets.left = Integer.MAX_VALUE;
            overlaps = meets.overlaps();
            if (overlaps.isEmpty()) {
                meets.search(a, b, 0);
            } else {
                meets.searchOutside(overlaps);
            }
        }
        return Meets.made(meets.grouped(overlaps), overlaps);
    }

    /** How many pairs of parts the short search looks at; more than {@link #FEW} when it gave up. */
    static int looks(Cubic first, Cubic second, double tolerance) {
        CubicMeets meets = new CubicMeets(first, second, tolerance);
        boolean settled = meets.plain(new Part(first), new Part(second));
        return settled ? FEW - meets.left : FEW + 1;
    }

    /** A part of a cubic: its control points and the parameters of its ends. */
    private static final class Part {
        private final double x0;
        private final double y0;
        private final double x1;
        private final double y1;
        private final double x2;
        private final double y2;
        private final double x3;
        private final double y3;
        private final double from;
        private final double to;

        Part(Cubic c) {
            this(
                    c.start().getX(),
                    c.start().getY(),
                    c.startHandle().getX(),
                    c.startHandle().getY(),
                    c.endHandle().getX(),
                    c.endHandle().getY(),
                    c.end().getX(),
                    c.end().getY(),
                    0,
                    1);
        }

        private Part(
                double x0,
                double y0,
                double x1,
                double y1,
                double x2,
                double y2,
                double x3,
                double y3,
                double from,
                double to) {
            this.x0 = x0;
            this.y0 = y0;
            this.x1 = x1;
            this.y1 = y1;
            this.x2 = x2;
            this.y2 = y2;
            this.x3 = x3;
            this.y3 = y3;
            this.from = from;
            this.to = to;
        }

        double size() {
            return Math.abs(x1 - x0)
                    + Math.abs(y1 - y0)
                    + Math.abs(x2 - x1)
                    + Math.abs(y2 - y1)
                    + Math.abs(x3 - x2)
                    + Math.abs(y3 - y2);
        }

        /** One half. */
        Part half(boolean later) {
            return cut(0.5, later);
        }

        /** De Casteljau: the part before or after a share of this one. */
        Part cut(double t, boolean later) {
            double ax = x0 + t * (x1 - x0);
            double ay = y0 + t * (y1 - y0);
            double bx = x1 + t * (x2 - x1);
            double by = y1 + t * (y2 - y1);
            double cx = x2 + t * (x3 - x2);
            double cy = y2 + t * (y3 - y2);
            double dx = ax + t * (bx - ax);
            double dy = ay + t * (by - ay);
            double ex = bx + t * (cx - bx);
            double ey = by + t * (cy - by);
            double mx = dx + t * (ex - dx);
            double my = dy + t * (ey - dy);
            double middle = from + t * (to - from);
            return later
                    ? new Part(mx, my, ex, ey, cx, cy, x3, y3, middle, to)
                    : new Part(x0, y0, ax, ay, dx, dy, mx, my, from, middle);
        }

        double low(double ux, double uy) {
            return Math.min(
                    Math.min(ux * x0 + uy * y0, ux * x1 + uy * y1), Math.min(ux * x2 + uy * y2, ux * x3 + uy * y3));
        }

        double high(double ux, double uy) {
            return Math.max(
                    Math.max(ux * x0 + uy * y0, ux * x1 + uy * y1), Math.max(ux * x2 + uy * y2, ux * x3 + uy * y3));
        }

        /**
         * The tangent of the half-angle of a cone about the chord that holds all directions, or infinity if a leg of
         * the control polygon lies more than half a right angle off the chord.
         */
        double spread() {
            double wx = x3 - x0;
            double wy = y3 - y0;
            return Math.max(
                    spread(wx, wy, x1 - x0, y1 - y0),
                    Math.max(spread(wx, wy, x2 - x1, y2 - y1), spread(wx, wy, x3 - x2, y3 - y2)));
        }

        private static double spread(double wx, double wy, double dx, double dy) {
            double across = Math.abs(wx * dy - wy * dx);
            double along = wx * dx + wy * dy;
            if (across == 0 && along >= 0) {
                return 0;
            }
            return along > across ? across / along : Double.POSITIVE_INFINITY;
        }

        /** Whether it lies within a distance of its chord and runs along it without turning back. */
        boolean straight(double within) {
            double wx = x3 - x0;
            double wy = y3 - y0;
            double norm = Math.sqrt(wx * wx + wy * wy);
            if (!(norm > within)) {
                return size() <= within;
            }
            double ux = wx / norm;
            double uy = wy / norm;
            boolean onwards = ux * (x1 - x0) + uy * (y1 - y0) >= 0
                    && ux * (x2 - x1) + uy * (y2 - y1) >= 0
                    && ux * (x3 - x2) + uy * (y3 - y2) >= 0;
            return onwards && high(-uy, ux) - low(-uy, ux) <= within;
        }
    }

    private boolean apart(Part a, Part b) {
        return apart(a, b, 1, 0) || apart(a, b, 0, 1) || apartByChord(a, b) || apartByChord(b, a);
    }

    /** Across the chord of the first, which is where its control points lie close together. */
    private boolean apartByChord(Part a, Part b) {
        double wx = a.x3 - a.x0;
        double wy = a.y3 - a.y0;
        double norm = Math.sqrt(wx * wx + wy * wy);
        return norm > 0 && apart(a, b, -wy / norm, wx / norm);
    }

    private boolean apart(Part a, Part b, double ux, double uy) {
        return a.low(ux, uy) > b.high(ux, uy) + tolerance || b.low(ux, uy) > a.high(ux, uy) + tolerance;
    }

    /** Whether a short search settles it, with transversal meets only: an overlap takes longer or leaves a contact. */
    private boolean plain(Part a, Part b) {
        left = FEW;
        search(a, b, 0);
        return left > 0 && contacts.stream().allMatch(Contact::transversal);
    }

    private void search(Part a, Part b, int depth) {
        if (--left < 0) {
            return;
        }
        if (apart(a, b) || (shareNoDirection(a, b) && converged(a, b))) {
            return;
        }
        boolean aStraight = a.straight(0.125 * tolerance);
        boolean bStraight = b.straight(0.125 * tolerance);
        if ((aStraight && bStraight) || depth >= DEEPEST) {
            contact(a, b);
        } else if (bStraight || (!aStraight && a.size() >= b.size())) {
            search(a.half(false), b, depth + 1);
            search(a.half(true), b, depth + 1);
        } else {
            search(a, b.half(false), depth + 1);
            search(a, b.half(true), depth + 1);
        }
    }

    /** Whether no direction of one is, up to sign, a direction of the other. */
    private static boolean shareNoDirection(Part a, Part b) {
        double p = a.spread();
        double q = b.spread();
        if (!(p + q < 1)) {
            return false;
        }
        double ax = a.x3 - a.x0;
        double ay = a.y3 - a.y0;
        double bx = b.x3 - b.x0;
        double by = b.y3 - b.y0;
        // tan of the angle between the chords against tan of the sum of the half-angles, (p + q) / (1 - p q).
        return Math.abs(ax * by - ay * bx) * (1 - p * q) > Math.abs(ax * bx + ay * by) * (p + q);
    }

    /** Newton's iteration from where the chords cross; true if it found the one meet of the pair. */
    private boolean converged(Part a, Part b) {
        double ax = a.x3 - a.x0;
        double ay = a.y3 - a.y0;
        double bx = b.x3 - b.x0;
        double by = b.y3 - b.y0;
        double det = ax * by - ay * bx;
        double dx = b.x0 - a.x0;
        double dy = b.y0 - a.y0;
        double s = a.from + (dx * by - dy * bx) / det * (a.to - a.from);
        double t = b.from + (dx * ay - dy * ax) / det * (b.to - b.from);
        return converged(a, held(a, s), b, held(b, t));
    }

    private static double held(Part part, double t) {
        return Math.min(part.to, Math.max(part.from, t));
    }

    /** Newton's iteration for a(s) = b(t) from a first guess, held to the parts. */
    private boolean converged(Part a, double atFirst, Part b, double atSecond) {
        double s = atFirst;
        double t = atSecond;
        for (int i = 0; i < 10; i++) {
            double fx = first.x(s) - second.x(t);
            double fy = first.y(s) - second.y(t);
            double ax = first.dx(s);
            double ay = first.dy(s);
            double bx = second.dx(t);
            double by = second.dy(t);
            double det = ax * by - ay * bx;
            if (det == 0) {
                return false;
            }
            double nextS = held(a, s - (fx * by - fy * bx) / det);
            double nextT = held(b, t - (fx * ay - fy * ax) / det);
            boolean still = Math.abs(nextS - s) < 1e-15 && Math.abs(nextT - t) < 1e-15;
            s = nextS;
            t = nextT;
            if (still) {
                break;
            }
        }
        if (Plane.norm(first.x(s) - second.x(t), first.y(s) - second.y(t)) > 0.25 * tolerance) {
            return false;
        }
        contacts.add(new Contact(s, t, true));
        return true;
    }

    /** Two parts that are as good as straight: the places nearest to where their chords are nearest. */
    private void contact(Part a, Part b) {
        Vector2D p = Vector2D.of(a.x0, a.y0);
        Vector2D u = Vector2D.of(a.x3 - a.x0, a.y3 - a.y0);
        Vector2D q = Vector2D.of(b.x0, b.y0);
        Vector2D v = Vector2D.of(b.x3 - b.x0, b.y3 - b.y0);
        Vector2D on = nearest(p, u, q, v);
        double t = parameter(second, b, on);
        double s = parameter(first, a, second.at(t));
        Contact near = facing(a, s, b);
        if (miss(near) > tolerance && miss(near) <= 1.5 * tolerance) {
            near = nearest(a, b);
        }
        if (miss(near) > tolerance) {
            return;
        }
        if (!(shareNoDirection(a, b) && converged(a, near.s, b, near.t))) {
            contacts.add(near);
        }
    }

    private Contact facing(Part a, double s, Part b) {
        double held = held(a, s);
        return new Contact(held, parameter(second, b, first.at(held)), false);
    }

    /**
     * The nearest places of two parts that are straight to an eighth of the tolerance: where their chords are nearest they may lie
     * farther apart by half of it. The distance has one dip along parts as short as these; it is halved in on from the deepest of nine.
     */
    private Contact nearest(Part a, Part b) {
        double step = (a.to - a.from) / 8;
        Contact best = facing(a, a.from, b);
        for (int i = 1; i <= 8; i++) {
            best = better(best, facing(a, a.from + i * step, b));
        }
        for (int i = 0; i < 40; i++) {
            step /= 2;
            best = better(better(best, facing(a, best.s - step, b)), facing(a, best.s + step, b));
        }
        return best;
    }

    private Contact better(Contact one, Contact other) {
        return miss(other) < miss(one) ? other : one;
    }

    private static double parameter(Cubic c, Part part, Vector2D point) {
        return Nearest.within(c, part.from, part.to, point).at();
    }

    /** The point of the segment p + [0, 1] u that is nearest to the segment q + [0, 1] v. */
    private static Vector2D nearest(Vector2D p, Vector2D u, Vector2D q, Vector2D v) {
        double det = u.signedArea(v);
        Vector2D d = q.subtract(p);
        double s = d.signedArea(v) / det;
        double t = d.signedArea(u) / det;
        if (s >= 0 && s <= 1 && t >= 0 && t <= 1) {
            return p.add(s, u);
        }
        Vector2D best = p;
        double least = Double.POSITIVE_INFINITY;
        Vector2D[] places = {p, p.add(u), foot(p, u, q), foot(p, u, q.add(v))};
        for (Vector2D place : places) {
            double distance = Plane.distance(foot(q, v, place), place);
            if (distance < least) {
                least = distance;
                best = place;
            }
        }
        return best;
    }

    private static Vector2D foot(Vector2D p, Vector2D u, Vector2D from) {
        double uu = u.normSq();
        return uu > 0 ? p.add(Math.min(1, Math.max(0, from.subtract(p).dot(u) / uu)), u) : p;
    }

    /** Two cubics share a stretch only if they are parts of one curve; its ends are then ends of either. */
    private List<Overlap> overlaps() {
        List<Contact> ends = new ArrayList<>();
        for (int end = 0; end <= 1; end++) {
            Nearest onSecond = Nearest.of(second, first.at(end));
            if (onSecond.distance() <= tolerance) {
                ends.add(new Contact(end, onSecond.at(), false));
            }
            Nearest onFirst = Nearest.of(first, second.at(end));
            if (onFirst.distance() <= tolerance) {
                ends.add(new Contact(onFirst.at(), end, false));
            }
        }
        ends.sort(Comparator.comparingDouble(Contact::s));
        List<Overlap> found = new ArrayList<>();
        for (int i = 0; i + 1 < ends.size(); i++) {
            Contact p = ends.get(i);
            Contact q = ends.get(i + 1);
            if (p.s < q.s && p.t != q.t && coincide(p, q)) {
                found.add(new Overlap(p.s, q.s, p.t, q.t));
            }
        }
        return found;
    }

    /** Distinct cubics have at most nine points in common: fifteen between the ends decide. */
    private boolean coincide(Contact p, Contact q) {
        double least = Math.max(CurvePath.JOINT, 2 * tolerance);
        Vector2D from = first.at(p.s);
        double reach = Math.max(Plane.distance(from, first.at(q.s)), Plane.distance(from, first.at(0.5 * (p.s + q.s))));
        if (reach <= least) {
            return false;
        }
        for (int i = 1; i < 16; i++) {
            if (distance(second, p.t, q.t, first.at(p.s + (q.s - p.s) * i / 16)) > tolerance) {
                return false;
            }
        }
        return true;
    }

    /** Every part of the first against every part of the second, but not an overlap with itself. */
    private void searchOutside(List<Overlap> overlaps) {
        List<Double> cutsFirst = cuts(overlaps, true);
        List<Double> cutsSecond = cuts(overlaps, false);
        for (int i = 0; i + 1 < cutsFirst.size(); i++) {
            for (int k = 0; k + 1 < cutsSecond.size(); k++) {
                double s = 0.5 * (cutsFirst.get(i) + cutsFirst.get(i + 1));
                double t = 0.5 * (cutsSecond.get(k) + cutsSecond.get(k + 1));
                boolean extent = cutsFirst.get(i + 1) - cutsFirst.get(i) > 1e-12
                        && cutsSecond.get(k + 1) - cutsSecond.get(k) > 1e-12;
                if (extent && overlaps.stream().noneMatch(o -> holds(o, s, t))) {
                    search(
                            part(first, cutsFirst.get(i), cutsFirst.get(i + 1)),
                            part(second, cutsSecond.get(k), cutsSecond.get(k + 1)),
                            0);
                }
            }
        }
    }

    private static Part part(Cubic c, double from, double to) {
        Part head = to == 1 ? new Part(c) : new Part(c).cut(to, false);
        return from == 0 ? head : head.cut(from / to, true);
    }

    private static List<Double> cuts(List<Overlap> overlaps, boolean ofFirst) {
        List<Double> cuts = new ArrayList<>(List.of(0.0, 1.0));
        for (Overlap o : overlaps) {
            cuts.add(ofFirst ? o.fromFirst() : o.fromSecond());
            cuts.add(ofFirst ? o.toFirst() : o.toSecond());
        }
        return cuts.stream().sorted().distinct().toList();
    }

    private static boolean holds(Overlap o, double s, double t) {
        return s > o.fromFirst()
                && s < o.toFirst()
                && t > Math.min(o.fromSecond(), o.toSecond())
                && t < Math.max(o.fromSecond(), o.toSecond());
    }

    private List<Meet> grouped(List<Overlap> overlaps) {
        if (contacts.isEmpty()) {
            return List.of();
        }
        if (contacts.size() == 1 && overlaps.isEmpty()) {
            return List.of(meet(contacts));
        }
        contacts.sort(Comparator.comparingDouble(Contact::s).thenComparingDouble(Contact::t));
        List<List<Contact>> groups = new ArrayList<>();
        for (Contact contact : contacts) {
            if (overlaps.stream().noneMatch(o -> ends(o, contact))) {
                home(groups, contact).add(contact);
            }
        }
        List<Meet> meets = new ArrayList<>();
        for (List<Contact> group : groups) {
            meets.add(meet(group));
        }
        return meets;
    }

    private List<Contact> home(List<List<Contact>> groups, Contact contact) {
        for (List<Contact> group : groups) {
            if (hangTogether(group.get(group.size() - 1), contact)) {
                return group;
            }
        }
        List<Contact> group = new ArrayList<>();
        groups.add(group);
        return group;
    }

    private boolean ends(Overlap o, Contact contact) {
        return near(o.fromFirst(), o.fromSecond(), contact) || near(o.toFirst(), o.toSecond(), contact);
    }

    private boolean near(double s, double t, Contact contact) {
        double slack = Math.max(2 * tolerance, CurvePath.JOINT);
        return Plane.distance(first.at(s), first.at(contact.s)) <= slack
                && Plane.distance(second.at(t), second.at(contact.t)) <= slack;
    }

    /** Whether the curves stay within the tolerance of each other between two contacts, give or take rounding. */
    private boolean hangTogether(Contact p, Contact q) {
        double within = 1.01 * tolerance;
        for (int i = 1; i < 4; i++) {
            double s = p.s + (q.s - p.s) * i / 4;
            double t = p.t + (q.t - p.t) * i / 4;
            if (distance(second, p.t, q.t, first.at(s)) > within || distance(first, p.s, q.s, second.at(t)) > within) {
                return false;
            }
        }
        return true;
    }

    private static double distance(Cubic c, double one, double other, Vector2D point) {
        return Nearest.within(c, Math.min(one, other), Math.max(one, other), point)
                .distance();
    }

    private Meet meet(List<Contact> group) {
        for (Contact c : group) {
            double s = atEnd(first, c.s, second.at(c.t));
            double t = atEnd(second, c.t, first.at(s));
            if (s == 0 || s == 1 || t == 0 || t == 1) {
                return new Meet(s, t, first.at(s), Meet.Kind.TOUCHING);
            }
        }
        Contact best = group.get(0);
        for (Contact c : group) {
            best = better(best, c);
        }
        boolean crosses = (group.size() == 1 && best.transversal) || crosses(group.get(0), group.get(group.size() - 1));
        return new Meet(best.s, best.t, first.at(best.s), crosses ? Meet.Kind.CROSSING : Meet.Kind.TOUCHING);
    }

    /** The end of a cubic if the other comes within the tolerance of it, else the parameter itself. */
    private double atEnd(Cubic c, double at, Vector2D other) {
        for (int end = 0; end <= 1; end++) {
            if (Plane.distance(c.at(end), other) <= tolerance) {
                return end;
            }
        }
        return at;
    }

    private double miss(Contact c) {
        return Plane.distance(first.at(c.s), second.at(c.t));
    }

    /** Whether the first is on different sides of the second before and after, as near as that can be told. */
    private boolean crosses(Contact low, Contact high) {
        for (double step = 1e-6; step < 0.1; step *= 4) {
            double before = side(low.s - step, low.t, step);
            double after = side(high.s + step, high.t, step);
            if (Math.abs(before) > 2 * tolerance && Math.abs(after) > 2 * tolerance) {
                return before * after < 0;
            }
        }
        return false;
    }

    /** How far left of the second a place of the first lies, seen near a parameter of the second. */
    private double side(double s, double near, double step) {
        if (s < 0 || s > 1) {
            return 0;
        }
        Vector2D p = first.at(s);
        double reach = Math.max(1e-3, 16 * step);
        Nearest nearest = Nearest.within(second, Math.max(0, near - reach), Math.min(1, near + reach), p);
        Vector2D way = second.tangent(nearest.at());
        return way.signedArea(p.subtract(nearest.point()));
    }
}
