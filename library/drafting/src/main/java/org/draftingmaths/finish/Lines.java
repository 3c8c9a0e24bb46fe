package org.draftingmaths.finish;

import java.util.ArrayList;
import java.util.List;
import java.util.PriorityQueue;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Curve;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Meet;
import org.draftingmaths.curve.Meets;
import org.draftingmaths.curve.Nearest;
import org.draftingmaths.curve.Parallel;
import org.draftingmaths.curve.Straight;

/** Lines beside lines: parallels of open paths, and how near two paths come. */
final class Lines {

    /** A corner between two parallels that is nearer than this, in mm, is none. */
    private static final double TOUCH = CurvePath.JOINT;

    /** The narrowest place is found to this, in mm. */
    private static final double NARROWEST = 1e-6;

    private Lines() {}

    /**
     * The parallel of a path, cleaned at its corners: where the parallels of two neighbours part, they go on straight until they
     * meet; where they cross, what lies beyond goes.
     *
     * @param left the distance in mm to the left of the path; negative to the right
     * @throws IllegalArgumentException when the path bends more tightly than the distance
     */
    static CurvePath parallel(CurvePath path, double left) {
        List<Curve> made = new ArrayList<>();
        for (Curve curve : path.curves()) {
            CurvePath next = Parallel.of(curve, left, Parallel.FINEST);
            if (made.isEmpty()) {
                made.addAll(next.curves());
                continue;
            }
            CurvePath before = new CurvePath(made);
            if (before.end().distance(next.start()) <= TOUCH) {
                made.addAll(next.curves());
                continue;
            }
            double turn = before.endTangent().signedArea(next.startTangent());
            made = new ArrayList<>(
                    turn * left < 0
                            ? mitred(before, next).curves()
                            : crossed(before, next).curves());
        }
        return new CurvePath(made);
    }

    private static CurvePath mitred(CurvePath one, CurvePath other) {
        Vector2D gap = one.end().vectorTo(other.start());
        double turn = one.endTangent().signedArea(other.startTangent());
        double on = gap.signedArea(other.startTangent()) / turn;
        Vector2D tip = one.end().add(one.endTangent().multiply(on));
        List<Curve> curves = new ArrayList<>(one.curves());
        addStraight(curves, one.end(), tip);
        addStraight(curves, tip, other.start());
        curves.addAll(other.curves());
        return new CurvePath(curves);
    }

    private static void addStraight(List<Curve> curves, Vector2D from, Vector2D to) {
        if (from.distance(to) > TOUCH) {
            curves.add(new Straight(from, to));
        }
    }

    private static CurvePath crossed(CurvePath one, CurvePath other) {
        Meet meet = Meets.of(one, other).points().stream()
                .max((a, b) -> Double.compare(a.onFirst(), b.onFirst()))
                .orElseThrow(() -> new IllegalArgumentException(
                        "the path turns so sharply that its parallel has no room at " + one.end()));
        return one.between(0, meet.onFirst()).then(other.between(meet.onSecond(), other.length()));
    }

    /** A path that goes on straight at both ends. */
    static CurvePath lengthened(CurvePath path, double by) {
        List<Curve> curves = new ArrayList<>();
        Vector2D start = path.start();
        curves.add(new Straight(start.subtract(path.startTangent().multiply(by)), start));
        curves.addAll(path.curves());
        curves.add(new Straight(path.end(), path.end().add(path.endTangent().multiply(by))));
        return new CurvePath(curves);
    }

    /**
     * The least distance between two paths. The distance from a moving point to a path changes by no more than the point moves, so
     * an interval of length {@code l} about a point at distance {@code d} holds nothing nearer than {@code d - l/2}: intervals are
     * halved until no more can be gained.
     */
    static double narrowest(CurvePath one, CurvePath other) {
        record Part(double from, double to, double least) {}
        double length = one.length();
        double best = Nearest.of(other, one.start()).distance();
        PriorityQueue<Part> parts = new PriorityQueue<>((a, b) -> Double.compare(a.least(), b.least()));
        parts.add(new Part(0, length, 0));
        while (!parts.isEmpty() && parts.peek().least() < best - NARROWEST) {
            Part part = parts.remove();
            double middle = (part.from() + part.to()) / 2;
            double here = Nearest.of(other, one.pointAt(middle)).distance();
            best = Math.min(best, here);
            double half = (part.to() - part.from()) / 2;
            parts.add(new Part(part.from(), middle, here - half));
            parts.add(new Part(middle, part.to(), here - half));
        }
        return best;
    }
}
