package org.draftingmaths.curve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Bounds2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * Where two curves or two paths meet: the places where they cross or touch, and the stretches along which one lies on the
 * other.
 *
 * <p>Two points nearer than {@link Accuracy#DEFAULT} are one. A place on a curve is told by its parameter, a place on a path
 * by the length from the path's start.
 *
 * @param points the places, in order along the first
 * @param overlaps the stretches, in order along the first
 */
public record Meets(List<Meet> points, List<Overlap> overlaps) {

    static final Meets NONE = new Meets(List.of(), List.of());

    /** Meets this near along both paths, in mm, are one meet found on two neighbouring curves. */
    private static final double SAME = 1e-8;

    /** Copies the lists. */
    public Meets {
        points = List.copyOf(points);
        overlaps = List.copyOf(overlaps);
    }

    /**
     * Where two curves meet.
     *
     * @param first a curve
     * @param second another
     * @return their meets, places as parameters
     */
    public static Meets of(Curve first, Curve second) {
        if (!near(first.bounds(), second.bounds())) {
            return NONE;
        }
        if (second instanceof Straight straight) {
            return CarrierMeets.of(first, straight, Accuracy.DEFAULT);
        }
        if (second instanceof Arc arc && !(first instanceof Straight)) {
            return CarrierMeets.of(first, arc, Accuracy.DEFAULT);
        }
        if (first instanceof Cubic one && second instanceof Cubic other) {
            return CubicMeets.of(one, other, Accuracy.DEFAULT);
        }
        return of(second, first).swapped();
    }

    /**
     * Where two paths meet. A meet at a joint is told once.
     *
     * @param first a path
     * @param second another
     * @return their meets, places as lengths from the start of each
     */
    public static Meets of(CurvePath first, CurvePath second) {
        List<Meet> points = new ArrayList<>();
        List<Overlap> overlaps = new ArrayList<>();
        for (int i = 0; i < first.curves().size(); i++) {
            for (int k = 0; k < second.curves().size(); k++) {
                Meets here = of(first.curves().get(i), second.curves().get(k)).along(first, i, second, k);
                points.addAll(here.points);
                overlaps.addAll(here.overlaps);
            }
        }
        return new Meets(once(points, first, second), sorted(overlaps));
    }

    /**
     * Where a path meets itself, other than where one of its curves ends and the next begins. A cubic that loops meets itself.
     *
     * @param path a path, open or closed
     * @return the meets, the place nearer the start as the first
     */
    public static Meets selfMeets(CurvePath path) {
        List<Meet> points = new ArrayList<>();
        List<Overlap> overlaps = new ArrayList<>();
        int n = path.curves().size();
        for (int i = 0; i < n; i++) {
            points.addAll(loops(path, i));
            for (int k = i + 1; k < n; k++) {
                Meets here = of(path.curves().get(i), path.curves().get(k)).along(path, i, path, k);
                boolean next = k == i + 1;
                boolean round = i == 0 && k == n - 1 && path.closes(CurvePath.JOINT);
                Vector2D joint = path.curves().get(i).end();
                Vector2D closing = path.curves().get(k).end();
                here.points.stream()
                        .filter(meet -> !(next && meet.point().distance(joint) <= CurvePath.JOINT))
                        .filter(meet -> !(round && meet.point().distance(closing) <= CurvePath.JOINT))
                        .forEach(points::add);
                overlaps.addAll(here.overlaps);
            }
        }
        return new Meets(once(points, path, path), sorted(overlaps));
    }

    /** The meets of the second with the first. */
    private Meets swapped() {
        return new Meets(
                points.stream()
                        .map(Meets::swapped)
                        .sorted(Comparator.comparingDouble(Meet::onFirst))
                        .toList(),
                sorted(overlaps.stream().map(Meets::swapped).toList()));
    }

    private static Meet swapped(Meet meet) {
        double first = meet.onSecond();
        double second = meet.onFirst();
        return new Meet(first, second, meet.point(), meet.kind());
    }

    private static Overlap swapped(Overlap overlap) {
        double from = overlap.fromSecond();
        double to = overlap.toSecond();
        double fromOther = overlap.fromFirst();
        double toOther = overlap.toFirst();
        return overlap.sameWay()
                ? new Overlap(from, to, fromOther, toOther)
                : new Overlap(to, from, toOther, fromOther);
    }

    /** Parameters on two curves of two paths, as lengths along the paths. */
    private Meets along(CurvePath first, int i, CurvePath second, int k) {
        if (points.isEmpty() && overlaps.isEmpty()) {
            return NONE;
        }
        return new Meets(
                points.stream()
                        .map(meet -> new Meet(
                                first.lengthAt(new Place(i, meet.onFirst())),
                                second.lengthAt(new Place(k, meet.onSecond())),
                                meet.point(),
                                meet.kind()))
                        .toList(),
                overlaps.stream()
                        .map(both -> new Overlap(
                                first.lengthAt(new Place(i, both.fromFirst())),
                                first.lengthAt(new Place(i, both.toFirst())),
                                second.lengthAt(new Place(k, both.fromSecond())),
                                second.lengthAt(new Place(k, both.toSecond()))))
                        .toList());
    }

    /** A meet at a joint is found on both its curves: told once, as a crossing if the paths change sides there. */
    private static List<Meet> once(List<Meet> found, CurvePath first, CurvePath second) {
        List<Meet> kept = new ArrayList<>();
        for (Meet meet :
                found.stream().sorted(Comparator.comparingDouble(Meet::onFirst)).toList()) {
            boolean told = kept.stream()
                    .anyMatch(other -> same(other.onFirst(), meet.onFirst(), first)
                            && same(other.onSecond(), meet.onSecond(), second));
            if (!told) {
                kept.add(meet);
            }
        }
        return kept.stream().map(meet -> judged(meet, first, second)).toList();
    }

    /** Equal lengths, or the two ends of a closed path. */
    private static boolean same(double one, double other, CurvePath path) {
        double apart = Math.abs(one - other);
        return apart <= SAME || (path.closes(CurvePath.JOINT) && path.length() - apart <= SAME);
    }

    /** Where a meet lies on a joint, the four directions there tell whether the paths change sides. */
    private static Meet judged(Meet meet, CurvePath first, CurvePath second) {
        if (!atJoint(meet.onFirst(), first) && !atJoint(meet.onSecond(), second)) {
            return meet;
        }
        if (atOpenEnd(meet.onFirst(), first) || atOpenEnd(meet.onSecond(), second)) {
            return new Meet(meet.onFirst(), meet.onSecond(), meet.point(), Meet.Kind.TOUCHING);
        }
        Vector2D in = before(first, meet.onFirst()).negate();
        Vector2D out = after(first, meet.onFirst());
        boolean one = between(in, out, before(second, meet.onSecond()).negate());
        boolean other = between(in, out, after(second, meet.onSecond()));
        return new Meet(
                meet.onFirst(), meet.onSecond(), meet.point(), one == other ? Meet.Kind.TOUCHING : Meet.Kind.CROSSING);
    }

    private static boolean atJoint(double length, CurvePath path) {
        double t = path.placeAt(Math.min(length, path.length())).t();
        return t <= SAME || t >= 1 - SAME;
    }

    private static boolean atOpenEnd(double length, CurvePath path) {
        return !path.closes(CurvePath.JOINT) && (length <= SAME || path.length() - length <= SAME);
    }

    private static Vector2D before(CurvePath path, double length) {
        return length <= SAME ? path.endTangent() : path.tangentBefore(Math.min(length, path.length()));
    }

    private static Vector2D after(CurvePath path, double length) {
        return path.length() - length <= SAME ? path.startTangent() : path.tangentAt(length);
    }

    /** Whether a direction lies in the sector from one direction anticlockwise to another. */
    private static boolean between(Vector2D from, Vector2D to, Vector2D direction) {
        return turn(from, direction) < turn(from, to);
    }

    private static double turn(Vector2D from, Vector2D to) {
        double angle = Math.atan2(from.signedArea(to), from.dot(to));
        return angle < 0 ? angle + 2 * Math.PI : angle;
    }

    /** A cubic is parted where it is level or upright: no part can loop, so its parts tell of its loop. */
    private static List<Meet> loops(CurvePath path, int index) {
        if (!(path.curves().get(index) instanceof Cubic cubic)) {
            return List.of();
        }
        double[] cuts = cuts(cubic);
        List<Meet> found = new ArrayList<>();
        for (int i = 0; i + 1 < cuts.length; i++) {
            for (int k = i + 1; k + 1 < cuts.length; k++) {
                Cubic one = cubic.between(cuts[i], cuts[i + 1]);
                Cubic other = cubic.between(cuts[k], cuts[k + 1]);
                for (Meet meet : of(one, other).points()) {
                    double first = cuts[i] + meet.onFirst() * (cuts[i + 1] - cuts[i]);
                    double second = cuts[k] + meet.onSecond() * (cuts[k + 1] - cuts[k]);
                    double from = path.lengthAt(new Place(index, first));
                    double to = path.lengthAt(new Place(index, second));
                    boolean wholeLoop = index == 0
                            && path.curves().size() == 1
                            && path.closes(CurvePath.JOINT)
                            && path.length() - (to - from) <= SAME;
                    if (to - from > SAME && !wholeLoop) {
                        found.add(new Meet(from, to, meet.point(), meet.kind()));
                    }
                }
            }
        }
        return found;
    }

    private static double[] cuts(Cubic c) {
        double[] level = Roots.ofDerivative(
                c.start().getY(),
                c.startHandle().getY(),
                c.endHandle().getY(),
                c.end().getY());
        double[] upright = Roots.ofDerivative(
                c.start().getX(),
                c.startHandle().getX(),
                c.endHandle().getX(),
                c.end().getX());
        return Stream.of(new double[] {0, 1}, level, upright)
                .flatMapToDouble(Arrays::stream)
                .sorted()
                .distinct()
                .toArray();
    }

    private static List<Overlap> sorted(List<Overlap> overlaps) {
        return overlaps.stream()
                .sorted(Comparator.comparingDouble(Overlap::fromFirst))
                .toList();
    }

    private static boolean near(Bounds2D one, Bounds2D other) {
        double slack = Accuracy.DEFAULT;
        return one.getMin().getX() <= other.getMax().getX() + slack
                && other.getMin().getX() <= one.getMax().getX() + slack
                && one.getMin().getY() <= other.getMax().getY() + slack
                && other.getMin().getY() <= one.getMax().getY() + slack;
    }
}
