package org.draftingmaths.curve;

import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A part of a parallel before it is cleaned up.
 *
 * @param curve where it runs
 * @param edge the curve of the source that it is parallel to, or {@link ParallelOutline#CORNER}
 * @param from the parameter on that curve at which it starts
 * @param to the parameter at which it ends
 * @param swallowed whether it only bridges a stretch that has no parallel
 */
record Strand(Curve curve, int edge, double from, double to, boolean swallowed) {
    static Strand corner(Vector2D from, Vector2D to) {
        return new Strand(new Straight(from, to), ParallelOutline.CORNER, 0, 0, false);
    }

    Strand between(double t0, double t1) {
        double size = to - from;
        Curve part = t0 == 0 && t1 == 1 ? curve : curve.between(t0, t1);
        return new Strand(part, edge, from + t0 * size, from + t1 * size, swallowed);
    }
}
