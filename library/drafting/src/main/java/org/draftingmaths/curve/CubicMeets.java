package org.draftingmaths.curve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * Where two cubics meet.
 *
 * <p>Both are halved again and again; pairs of parts whose control points lie farther apart than the tolerance, along
 * or across the chord of either, are dropped. A pair whose directions share no line meets at most once and is
 * finished by Newton's iteration. A pair that is straight to an eighth of the tolerance and still undecided is a
 * contact. Contacts that hang together are one meet.
 */
final class CubicMeets {
    private static final int DEEPEST = 60;

    private final Cubic first;
    private final Cubic second;
    private final double tolerance;
    private final List<double[]> contacts = new ArrayList<>();

    private CubicMeets(Cubic first, Cubic second, double tolerance) {
        this.first = first;
        this.second = second;
        this.tolerance = tolerance;
    }

    static Meets of(Cubic first, Cubic second, double tolerance) {
        List<Overlap> overlaps = overlaps(first, second, tolerance);
        CubicMeets meets = new CubicMeets(first, second, tolerance);
        double from = 0;
        for (Overlap overlap : overlaps) {
            meets.search(from, overlap.fromFirst());
            from = overlap.toFirst();
        }
        meets.search(from, 1);
        return new Meets(meets.grouped(overlaps), overlaps);
    }

    private void search(double from, double to) {
        if (from < to) {
            search(first.between(from, to), from, to, second, 0, 1, 0);
        }
    }

    /** Two cubics share a stretch only if they are parts of one curve; its ends are then ends of either. */
    private static List<Overlap> overlaps(Cubic a, Cubic b, double tolerance) {
        List<double[]> ends = new ArrayList<>();
        for (int end = 0; end <= 1; end++) {
            Nearest onB = Nearest.of(b, a.at(end));
            if (onB.distance() <= tolerance) {
                ends.add(new double[] {end, onB.at()});
            }
            Nearest onA = Nearest.of(a, b.at(end));
            if (onA.distance() <= tolerance) {
                ends.add(new double[] {onA.at(), end});
            }
        }
        ends.sort(Comparator.comparingDouble(pair -> pair[0]));
        List<Overlap> found = new ArrayList<>();
        for (int i = 0; i + 1 < ends.size(); i++) {
            double[] p = ends.get(i);
            double[] q = ends.get(i + 1);
            if (p[0] < q[0] && p[1] != q[1] && coincide(a, p, b, q, tolerance)) {
                found.add(new Overlap(p[0], q[0], p[1], q[1]));
            }
        }
        return found;
    }

    private static boolean coincide(Cubic a, double[] p, Cubic b, double[] q, double tolerance) {
        // Distinct cubics have at most nine points in common.
        if (a.at(p[0]).distance(a.at(q[0])) + a.at(p[0]).distance(a.at(0.5 * (p[0] + q[0])))
                <= 2 * Math.max(CurvePath.JOINT, 2 * tolerance)) {
            return false;
        }
        Cubic part = b.between(Math.min(p[1], q[1]), Math.max(p[1], q[1]));
        for (int i = 1; i < 16; i++) {
            double t = p[0] + (q[0] - p[0]) * i / 16;
            if (Nearest.of(part, a.at(t)).distance() > tolerance) {
                return false;
            }
        }
        return true;
    }

    private void search(Cubic a, double a0, double a1, Cubic b, double b0, double b1, int depth) {
        if (apart(a, b) || apart(b, a)) {
            return;
        }
        if (sharesNoDirection(a, b) && converged(a0, a1, b0, b1)) {
            return;
        }
        boolean aFlat = flat(a);
        boolean bFlat = flat(b);
        if ((aFlat && bFlat) || depth >= DEEPEST) {
            contact(a0, a1, b0, b1);
            return;
        }
        double am = 0.5 * (a0 + a1);
        double bm = 0.5 * (b0 + b1);
        if (bFlat || (!aFlat && a.polygon() >= b.polygon())) {
            search(a.between(0, 0.5), a0, am, b, b0, b1, depth + 1);
            search(a.between(0.5, 1), am, a1, b, b0, b1, depth + 1);
        } else {
            search(a, a0, a1, b.between(0, 0.5), b0, bm, depth + 1);
            search(a, a0, a1, b.between(0.5, 1), bm, b1, depth + 1);
        }
    }

    private boolean apart(Cubic a, Cubic b) {
        double wx = a.end().getX() - a.start().getX();
        double wy = a.end().getY() - a.start().getY();
        double norm = Math.sqrt(wx * wx + wy * wy);
        double ux = norm > 0 ? wx / norm : 1;
        double uy = norm > 0 ? wy / norm : 0;
        return apart(a, b, ux, uy) || apart(a, b, -uy, ux);
    }

    private boolean apart(Cubic a, Cubic b, double ux, double uy) {
        double[] p = range(a, ux, uy);
        double[] q = range(b, ux, uy);
        return p[0] > q[1] + tolerance || q[0] > p[1] + tolerance;
    }

    private static double[] range(Cubic c, double ux, double uy) {
        double p = ux * c.start().getX() + uy * c.start().getY();
        double q = ux * c.startHandle().getX() + uy * c.startHandle().getY();
        double r = ux * c.endHandle().getX() + uy * c.endHandle().getY();
        double s = ux * c.end().getX() + uy * c.end().getY();
        return new double[] {Math.min(Math.min(p, q), Math.min(r, s)), Math.max(Math.max(p, q), Math.max(r, s))};
    }

    private boolean flat(Cubic c) {
        double wx = c.end().getX() - c.start().getX();
        double wy = c.end().getY() - c.start().getY();
        double norm = Math.sqrt(wx * wx + wy * wy);
        if (!(norm > 0)) {
            return c.polygon() <= tolerance / 8;
        }
        double[] across = range(c, -wy / norm, wx / norm);
        double[] along = range(c, wx / norm, wy / norm);
        return across[1] - across[0] <= tolerance / 8 && along[1] - along[0] <= norm + tolerance / 8;
    }

    /** Whether no direction of one is, up to sign, a direction of the other: the cones of the hodographs are apart. */
    private static boolean sharesNoDirection(Cubic a, Cubic b) {
        double[] p = cone(a);
        double[] q = cone(b);
        if (p == null || q == null) {
            return false;
        }
        double between = Math.abs(p[0] - q[0]) % Math.PI;
        between = Math.min(between, Math.PI - between);
        return between > p[1] + q[1];
    }

    /** Middle and half-width of the cone of directions, or null if it is wider than a right angle. */
    private static double[] cone(Cubic c) {
        Vector2D whole = c.end().subtract(c.start());
        if (whole.norm() == 0) {
            return null;
        }
        double widest = 0;
        for (Vector2D d : new Vector2D[] {
            c.startHandle().subtract(c.start()),
            c.endHandle().subtract(c.startHandle()),
            c.end().subtract(c.endHandle())
        }) {
            if (d.norm() > 0) {
                widest = Math.max(widest, Math.abs(Math.atan2(whole.signedArea(d), whole.dot(d))));
            }
        }
        return widest < Math.PI / 4 ? new double[] {Math.atan2(whole.getY(), whole.getX()), widest} : null;
    }

    /** Newton's iteration for a(s) = b(t); true if it found the one meet inside the pair. */
    private boolean converged(double a0, double a1, double b0, double b1) {
        double s = 0.5 * (a0 + a1);
        double t = 0.5 * (b0 + b1);
        for (int i = 0; i < 12; i++) {
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
            double ds = (fx * by - fy * bx) / det;
            double dt = (fx * ay - fy * ax) / det;
            s = Math.min(a1, Math.max(a0, s - ds));
            t = Math.min(b1, Math.max(b0, t - dt));
            if (Math.abs(ds) + Math.abs(dt) < 1e-15 * (1 + s + t) || i == 11) {
                break;
            }
        }
        double miss = Math.hypot(first.x(s) - second.x(t), first.y(s) - second.y(t));
        double scale = first.polygon() + second.polygon();
        if (miss > Math.min(1e-2 * tolerance, 1e-13 * scale + 1e-15 * Math.abs(first.x(s)))) {
            return false;
        }
        contacts.add(new double[] {s, s, t, t, 1});
        return true;
    }

    private void contact(double a0, double a1, double b0, double b1) {
        if (!converged(a0, a1, b0, b1)) {
            double s = 0.5 * (a0 + a1);
            Nearest near = Nearest.of(second.between(b0, b1), first.at(s));
            Nearest back = Nearest.of(first.between(a0, a1), near.point());
            if (back.distance() <= tolerance) {
                double onFirst = a0 + back.at() * (a1 - a0);
                double onSecond = b0 + near.at() * (b1 - b0);
                contacts.add(new double[] {onFirst, onFirst, onSecond, onSecond, 0});
            }
        }
    }

    /** Contacts between which the curves stay within the tolerance are one meet. */
    private List<Meet> grouped(List<Overlap> overlaps) {
        contacts.sort(Comparator.comparingDouble(c -> c[0]));
        List<List<double[]>> groups = new ArrayList<>();
        for (double[] contact : contacts) {
            if (overlaps.stream().anyMatch(o -> touches(o, contact))) {
                continue;
            }
            List<double[]> home = null;
            for (List<double[]> group : groups) {
                if (hangTogether(group.get(group.size() - 1), contact)) {
                    home = group;
                }
            }
            if (home == null) {
                home = new ArrayList<>();
                groups.add(home);
            }
            home.add(contact);
        }
        List<Meet> meets = new ArrayList<>();
        for (List<double[]> group : groups) {
            meets.add(meet(group));
        }
        return meets;
    }

    private boolean touches(Overlap o, double[] contact) {
        double slack = Math.max(2 * tolerance, CurvePath.JOINT);
        for (double[] end : new double[][] {{o.fromFirst(), o.fromSecond()}, {o.toFirst(), o.toSecond()}}) {
            if (first.at(end[0]).distance(first.at(contact[0])) <= slack
                    && second.at(end[1]).distance(second.at(contact[2])) <= slack) {
                return true;
            }
        }
        return false;
    }

    private boolean hangTogether(double[] p, double[] q) {
        for (int i = 1; i < 4; i++) {
            Vector2D a = first.at(p[0] + (q[0] - p[0]) * i / 4);
            Vector2D b = second.at(p[2] + (q[2] - p[2]) * i / 4);
            double apart = a.distance(b);
            if (apart > tolerance) {
                Vector2D way = second.tangent(p[2] + (q[2] - p[2]) * i / 4);
                if (Math.abs(way.signedArea(a.subtract(b))) > tolerance || apart > 1e3 * tolerance) {
                    return false;
                }
            }
        }
        return true;
    }

    private Meet meet(List<double[]> group) {
        double[] low = group.get(0);
        double[] high = group.get(group.size() - 1);
        double[] best = group.stream()
                .min(Comparator.comparingDouble(c -> first.at(c[0]).distance(second.at(c[2]))))
                .orElseThrow();
        for (double[] c : group) {
            for (int end = 0; end <= 1; end++) {
                if (first.at(end).distance(second.at(c[2])) <= tolerance) {
                    return new Meet(end, c[2], first.at(end), Meet.Kind.TOUCHING);
                }
                if (second.at(end).distance(first.at(c[0])) <= tolerance) {
                    return new Meet(c[0], end, first.at(c[0]), Meet.Kind.TOUCHING);
                }
            }
        }
        return new Meet(
                best[0], best[2], first.at(best[0]), crosses(low, high) ? Meet.Kind.CROSSING : Meet.Kind.TOUCHING);
    }

    /** Whether the first is on different sides of the second before and after. */
    private boolean crosses(double[] low, double[] high) {
        if (low[4] == 1 && low[0] == high[0]) {
            Vector2D a = first.tangent(low[0]);
            Vector2D b = second.tangent(low[2]);
            if (Math.abs(a.signedArea(b)) > 1e-6) {
                return true;
            }
        }
        double step = 1e-4;
        double before = Math.max(0, low[0] - step);
        double after = Math.min(1, high[0] + step);
        return side(before) * side(after) < 0;
    }

    private double side(double t) {
        Vector2D p = first.at(t);
        Nearest near = Nearest.of(second, p);
        return second.tangent(near.at()).signedArea(p.subtract(near.point()));
    }
}
