package org.draftingmaths.block;

import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Cubic;

/** Necklines and armholes: one cubic between two given directions, bending one way all along. */
final class Rounded {

    /** For a quarter circle this share of the way to the corner gives the best cubic: 4 (sqrt 2 - 1) / 3. */
    private static final double ROUND = 0.5523;

    private static final double LEAST = 0.4;
    private static final double MOST = 0.98;
    private static final int HALVINGS = 60;

    private Rounded() {}

    /** Where the two directions meet: between the ends the curve stays within that corner and so has no inflection. */
    static Vector2D corner(Vector2D from, Vector2D leaving, Vector2D to, Vector2D arriving) {
        double along = arriving.signedArea(from.vectorTo(to)) / arriving.signedArea(leaving);
        return from.add(leaving.multiply(along));
    }

    /** Whether the directions turn towards one another, so that a curve without inflection exists. */
    static boolean possible(Vector2D from, Vector2D leaving, Vector2D to, Vector2D arriving) {
        Vector2D corner = corner(from, leaving, to, arriving);
        return corner.isFinite()
                && from.vectorTo(corner).dot(leaving) > 0
                && corner.vectorTo(to).dot(arriving) > 0;
    }

    static Cubic quarter(Vector2D from, Vector2D leaving, Vector2D to, Vector2D arriving) {
        return cubic(from, leaving, to, arriving, ROUND, ROUND);
    }

    private static Cubic cubic(
            Vector2D from, Vector2D leaving, Vector2D to, Vector2D arriving, double first, double second) {
        Vector2D corner = corner(from, leaving, to, arriving);
        return new Cubic(from, from.lerp(corner, first), to.lerp(corner, second), to);
    }

    /**
     * The cubic whose least x is as near as can be to a wanted one: the fuller its handles, the nearer it comes to the corner.
     * Handles of less than two fifths of the way would be a straight line with two sharp turns and are not drawn; what is drawn
     * instead is told as a change of the width.
     */
    static Cubic reaching(Vector2D from, Vector2D leaving, Vector2D to, Vector2D arriving, double x) {
        double low = LEAST;
        double high = MOST;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            Cubic tried = cubic(from, leaving, to, arriving, middle, middle);
            if (tried.bounds().getMin().getX() > x) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double share = (low + high) / 2;
        return cubic(from, leaving, to, arriving, share, share);
    }
}
