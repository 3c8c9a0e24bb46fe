package org.draftingmaths.curve;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * Curves as polylines, for outputs that know nothing else.
 *
 * <p>The polyline's corners lie on the curve. Between two corners {@code h} apart in the parameter a curve strays from its chord by
 * at most {@code h^2/8 max|B''|}; for a cubic the second derivative is linear, so its greatest value is at an end. An arc of
 * radius {@code r} parted into pieces of sweep {@code s} strays by {@code r (1 - cos(s/2))} exactly. The parts are chosen so that
 * these bounds keep the tolerance; nothing is sampled.
 */
public final class Flatten {

    private static final int MOST = 1 << 20;

    private Flatten() {}

    /**
     * The corners of a polyline that strays from a path by no more than a tolerance.
     *
     * @param path the path
     * @param tolerance the greatest distance in mm between path and polyline, more than 0
     * @return the corners, ends included; a closed path gives its first point again at the end
     * @throws IllegalArgumentException when the tolerance is not positive, or so small that a curve would need over a million
     *     parts
     */
    public static List<Vector2D> corners(CurvePath path, double tolerance) {
        if (!(tolerance > 0 && Double.isFinite(tolerance))) {
            throw new IllegalArgumentException("A tolerance for flattening is more than 0 mm: " + tolerance + " mm.");
        }
        List<Vector2D> corners = new ArrayList<>();
        corners.add(path.start());
        for (Curve curve : path.curves()) {
            int parts = parts(curve, tolerance);
            for (int i = 1; i < parts; i++) {
                corners.add(curve.at((double) i / parts));
            }
            corners.add(curve.end());
        }
        return corners;
    }

    private static int parts(Curve curve, double tolerance) {
        double parts = 1;
        if (curve instanceof Arc arc) {
            double half = tolerance >= arc.radius() ? Math.PI / 2 : Math.acos(1 - tolerance / arc.radius());
            parts = Math.ceil(Math.abs(arc.sweep()) / 2 / half);
        } else if (curve instanceof Cubic cubic) {
            double bend = Math.max(
                    cubic.secondDerivative(0).norm(), cubic.secondDerivative(1).norm());
            parts = Math.ceil(Math.sqrt(bend / 8 / tolerance));
        }
        if (parts > MOST) {
            throw new IllegalArgumentException("A tolerance of " + tolerance + " mm would need " + parts
                    + " parts; at most " + MOST + " are made.");
        }
        return Math.max(1, (int) parts);
    }
}
