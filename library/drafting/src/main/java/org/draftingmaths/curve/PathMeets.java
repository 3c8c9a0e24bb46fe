package org.draftingmaths.curve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Where paths meet each other or themselves: the meets of their curves, told by length, each place once. */
final class PathMeets {
    private final Track first;
    private final Track second;
    private final double tolerance;
    private final double near;

    private PathMeets(Track first, Track second, double tolerance) {
        this.first = first;
        this.second = second;
        this.tolerance = tolerance;
        this.near = 4 * tolerance;
    }

    static Meets of(CurvePath first, CurvePath second, double tolerance) {
        return new PathMeets(Track.of(first, tolerance), Track.of(second, tolerance), tolerance).between();
    }

    static Meets ofItself(CurvePath path, double tolerance) {
        Track track = Track.of(path, tolerance);
        return new PathMeets(track, track, tolerance).within();
    }

    private Meets between() {
        List<Meet> points = new ArrayList<>();
        List<Overlap> overlaps = new ArrayList<>();
        for (Track.Part a : first.parts()) {
            for (Track.Part b : second.parts()) {
                if (!a.box().clearOf(b.box(), tolerance)) {
                    add(CurveMeets.of(a.curve(), b.curve(), tolerance), a, b, points, overlaps);
                }
            }
        }
        return told(points, overlaps);
    }

    private Meets within() {
        List<Meet> points = new ArrayList<>();
        List<Overlap> overlaps = new ArrayList<>();
        for (int i = 0; i < first.parts().size(); i++) {
            Track.Part a = first.parts().get(i);
            if (!OneWay.forward(a.curve(), a.curve().start().vectorTo(a.curve().end()))) {
                add(CurveMeets.ofItself(a.curve(), tolerance), a, a, points, overlaps);
            }
            for (int j = i + 1; j < first.parts().size(); j++) {
                Track.Part b = first.parts().get(j);
                if (!a.box().clearOf(b.box(), tolerance) && !runsOn(i, j)) {
                    add(CurveMeets.of(a.curve(), b.curve(), tolerance), a, b, points, overlaps);
                }
            }
        }
        return told(points, overlaps);
    }

    /** Whether two parts are neighbours that go one way: they can meet at their joint only, and that is no meet. */
    private boolean runsOn(int i, int j) {
        int last = first.parts().size() - 1;
        Curve a = first.parts().get(i).curve();
        Curve b = first.parts().get(j).curve();
        if (onlyBridges(i + 1, j - 1)) {
            return OneWay.runsOn(a, b);
        }
        return first.closed() && onlyBridges(0, i - 1) && onlyBridges(j + 1, last) && OneWay.runsOn(b, a);
    }

    private boolean onlyBridges(int from, int to) {
        for (int k = from; k <= to; k++) {
            if (!first.parts().get(k).bridge()) {
                return false;
            }
        }
        return true;
    }

    private static void add(Meets found, Track.Part a, Track.Part b, List<Meet> points, List<Overlap> overlaps) {
        if (found.isEmpty()) {
            return;
        }
        for (Meet m : found.points()) {
            points.add(new Meet(a.at(m.onFirst()), b.at(m.onSecond()), m.point(), m.kind()));
        }
        if (a.bridge() || b.bridge()) {
            return;
        }
        for (Overlap o : found.overlaps()) {
            overlaps.add(new Overlap(a.at(o.fromFirst()), a.at(o.toFirst()), b.at(o.fromSecond()), b.at(o.toSecond())));
        }
    }

    private Meets told(List<Meet> points, List<Overlap> overlaps) {
        if (points.isEmpty() && overlaps.isEmpty()) {
            return Meets.NONE;
        }
        List<Overlap> joined = joined(overlaps);
        List<Meet> kept = new ArrayList<>();
        for (Meet m : points) {
            Meet meet = atJoint(m);
            if (first == second && first.apart(meet.onFirst(), meet.onSecond()) <= 2 * near) {
                continue;
            }
            if (isNew(meet, joined, kept)) {
                kept.add(meet);
            }
        }
        kept.sort(Comparator.comparingDouble(Meet::onFirst).thenComparingDouble(Meet::onSecond));
        return new Meets(kept, joined);
    }

    private boolean isNew(Meet meet, List<Overlap> overlaps, List<Meet> kept) {
        for (Overlap overlap : overlaps) {
            if (covers(overlap, meet)) {
                return false;
            }
        }
        for (Meet other : kept) {
            if (same(other, meet)) {
                return false;
            }
        }
        return true;
    }

    private boolean same(Meet a, Meet b) {
        boolean here =
                first.apart(a.onFirst(), b.onFirst()) <= near && second.apart(a.onSecond(), b.onSecond()) <= near;
        boolean mirrored = first == second
                && first.apart(a.onFirst(), b.onSecond()) <= near
                && first.apart(a.onSecond(), b.onFirst()) <= near;
        return here || mirrored;
    }

    private boolean covers(Overlap o, Meet m) {
        double low = Math.min(o.fromSecond(), o.toSecond());
        double high = Math.max(o.fromSecond(), o.toSecond());
        boolean here =
                covers(first, o.fromFirst(), o.toFirst(), m.onFirst()) && covers(second, low, high, m.onSecond());
        boolean mirrored = first == second
                && covers(first, o.fromFirst(), o.toFirst(), m.onSecond())
                && covers(first, low, high, m.onFirst());
        return here || mirrored;
    }

    private boolean covers(Track track, double low, double high, double at) {
        boolean within = at >= low && at <= high;
        return within || track.apart(at, low) <= near || track.apart(at, high) <= near;
    }

    /** Overlaps that continue each other through a joint are one. */
    private List<Overlap> joined(List<Overlap> overlaps) {
        List<Overlap> sorted = new ArrayList<>(overlaps);
        sorted.sort(Comparator.comparingDouble(Overlap::fromFirst));
        List<Overlap> joined = new ArrayList<>();
        for (Overlap next : sorted) {
            int i = 0;
            while (i < joined.size() && !continues(joined.get(i), next)) {
                i++;
            }
            if (i == joined.size()) {
                joined.add(next);
            } else {
                Overlap before = joined.get(i);
                joined.set(i, new Overlap(before.fromFirst(), next.toFirst(), before.fromSecond(), next.toSecond()));
            }
        }
        return joined;
    }

    private boolean continues(Overlap before, Overlap next) {
        return before.sameWay() == next.sameWay()
                && Math.abs(before.toFirst() - next.fromFirst()) <= near
                && Math.abs(before.toSecond() - next.fromSecond()) <= near;
    }

    private Meet atJoint(Meet m) {
        double a = first.snapped(m.onFirst(), near);
        double b = second.snapped(m.onSecond(), near + first.looseness(a));
        a = first.snapped(a, near + second.looseness(b));
        if (first == second && a > b) {
            double swap = a;
            a = b;
            b = swap;
        }
        Meet.Kind kind = m.kind();
        if (first.isEnd(a) || second.isEnd(b)) {
            kind = Meet.Kind.TOUCHING;
        } else if (first.isJoint(a) || second.isJoint(b)) {
            kind = crosses(a, b, m.point()) ? Meet.Kind.CROSSING : Meet.Kind.TOUCHING;
        }
        return new Meet(a, b, m.point(), kind);
    }

    /** Whether the first goes from one of the two regions beside the second to the other, as seen on a small circle. */
    private boolean crosses(double a, double b, Vector2D point) {
        double room = 0.25 * Math.min(first.room(a), second.room(b));
        for (double r = Math.min(room, 1e-3); r <= room; r *= 8) {
            double out = angle(point, second.point(b + r));
            double in = turn(out, angle(point, second.point(b - r)));
            double before = turn(out, angle(point, first.point(a - r)));
            double after = turn(out, angle(point, first.point(a + r)));
            if (distinct(before, in) && distinct(after, in)) {
                return (before < in) != (after < in);
            }
        }
        return false;
    }

    private static boolean distinct(double angle, double in) {
        return Math.abs(angle - in) > 1e-7 && angle > 1e-7 && angle < 2 * Math.PI - 1e-7;
    }

    private static double angle(Vector2D from, Vector2D to) {
        return Math.atan2(to.getY() - from.getY(), to.getX() - from.getX());
    }

    private static double turn(double from, double to) {
        return to >= from ? to - from : to - from + 2 * Math.PI;
    }
}
