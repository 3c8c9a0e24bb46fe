package org.draftingmaths.curve;

import java.util.List;

/**
 * All places where two curves or two paths meet, in the order of the first.
 *
 * <p>A place counts where the two come within the tolerance of each other. Places between which they stay within it
 * are one: a sliver thinner than the tolerance is a touch, not two crossings. A stretch along which they lie on each
 * other, and which only their ends delimit, is an {@link Overlap}; its ends are not listed as points.
 *
 * <p>With the default tolerance of {@link Accuracy#DEFAULT} the point of each meet lies within 1e-9 mm of both. A
 * larger tolerance judges what is tangent: two curves that pass at 0.004 mm touch to a tolerance of 0.01 mm.
 *
 * @param points the places, each once
 * @param overlaps the stretches in common
 */
public record Meets(List<Meet> points, List<Overlap> overlaps) {
    static final Meets NONE = new Meets(List.of(), List.of());

    static Meets made(List<Meet> points, List<Overlap> overlaps) {
        return points.isEmpty() && overlaps.isEmpty() ? NONE : new Meets(points, overlaps);
    }

    /** Keeps copies. */
    public Meets {
        points = List.copyOf(points);
        overlaps = List.copyOf(overlaps);
    }

    /** Where two curves meet, to {@link Accuracy#DEFAULT}; positions are parameters. */
    public static Meets of(Curve first, Curve second) {
        return of(first, second, Accuracy.DEFAULT);
    }

    /** Where two curves meet, to the tolerance; positions are parameters. */
    public static Meets of(Curve first, Curve second, double tolerance) {
        Checks.tolerance(tolerance, Math.max(CurveMeets.size(first), CurveMeets.size(second)));
        return CurveMeets.of(first, second, tolerance);
    }

    /** Where two paths meet, to {@link Accuracy#DEFAULT}; positions are lengths from the starts. */
    public static Meets of(CurvePath first, CurvePath second) {
        return of(first, second, Accuracy.DEFAULT);
    }

    /**
     * Where two paths meet, to the tolerance; positions are lengths from the starts.
     *
     * <p>A meet at a joint is listed once, at the joint, and its kind is that of the paths: a path that goes through
     * a corner of another is {@link Meet.Kind#CROSSING} it. No path slips through the gap of a joint.
     */
    public static Meets of(CurvePath first, CurvePath second, double tolerance) {
        return PathMeets.of(first, second, tolerance);
    }

    /** Where a path meets itself, to {@link Accuracy#DEFAULT}. */
    public static Meets selfMeets(CurvePath path) {
        return selfMeets(path, Accuracy.DEFAULT);
    }

    /**
     * Where a path meets itself other than by going through its joints, the closing one included; positions are
     * lengths from the start, {@code onFirst < onSecond}. None means that the path is simple.
     */
    public static Meets selfMeets(CurvePath path, double tolerance) {
        return PathMeets.ofItself(path, tolerance);
    }

    /** Whether the two do not meet at all. */
    public boolean isEmpty() {
        return points.isEmpty() && overlaps.isEmpty();
    }
}
