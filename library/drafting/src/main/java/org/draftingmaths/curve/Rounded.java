package org.draftingmaths.curve;

import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * One cubic between two ends with given directions, bending one way all along: {@code P1 = A + f (C - A)}, {@code P2 = B + g (C - B)} with
 * C the corner where the two directions meet. Handles that stay within the corner make no inflection.
 */
public final class Rounded {

    /** For a quarter circle this share of the way to the corner gives the best cubic: 4 (sqrt 2 - 1) / 3. */
    private static final double ROUND = 0.5523;

    private static final double LEAST = 0.4;
    private static final double MOST = 0.98;
    private static final int HALVINGS = 60;

    private Rounded() {}

    /** Where the two directions meet. */
    private static Vector2D corner(Vector2D from, Vector2D leaving, Vector2D to, Vector2D arriving) {
        double along = arriving.signedArea(from.vectorTo(to)) / arriving.signedArea(leaving);
        return from.add(leaving.multiply(along));
    }

    /**
     * Whether the directions turn towards one another, so that a curve without inflection exists: the corner lies ahead of the one end
     * and behind the other.
     *
     * @param from where it starts
     * @param leaving the direction there
     * @param to where it ends
     * @param arriving the direction there
     * @return true when {@link #quarter} draws it
     */
    public static boolean possible(Vector2D from, Vector2D leaving, Vector2D to, Vector2D arriving) {
        return least(from, leaving, to, arriving) > 0;
    }

    /**
     * How far the corner lies from the nearer of the two ends, as a share of the chord: below nothing where no curve without inflection
     * exists, small where one end would turn sharply.
     *
     * @param from where it starts
     * @param leaving the unit direction there
     * @param to where it ends
     * @param arriving the unit direction there
     * @return the share; negative infinity for parallel directions
     */
    public static double least(Vector2D from, Vector2D leaving, Vector2D to, Vector2D arriving) {
        Vector2D corner = corner(from, leaving, to, arriving);
        return corner.isFinite()
                ? Math.min(
                                from.vectorTo(corner).dot(leaving),
                                corner.vectorTo(to).dot(arriving))
                        / from.distance(to)
                : Double.NEGATIVE_INFINITY;
    }

    /**
     * The curve as round as a quarter of a circle or an ellipse: both handles 0.5523 of the way to the corner.
     *
     * @param from where it starts
     * @param leaving the direction there
     * @param to where it ends
     * @param arriving the direction there
     * @return the cubic
     */
    public static Cubic quarter(Vector2D from, Vector2D leaving, Vector2D to, Vector2D arriving) {
        return cubic(from, leaving, to, arriving, ROUND);
    }

    private static Cubic cubic(Vector2D from, Vector2D leaving, Vector2D to, Vector2D arriving, double share) {
        Vector2D corner = corner(from, leaving, to, arriving);
        return new Cubic(from, from.lerp(corner, share), to.lerp(corner, share), to);
    }

    /**
     * The cubic that reaches as near as can be to a wanted distance in a direction: the fuller its handles, the nearer it comes to the corner.
     * Handles of less than two fifths of the way would be a straight line with two sharp turns and are not drawn, nor is the corner itself;
     * the caller tells what was reached instead.
     *
     * @param from where it starts
     * @param leaving the direction there
     * @param to where it ends
     * @param arriving the direction there
     * @param way the unit direction in which it is to reach out
     * @param reach how far it is to reach, in mm from the origin along the direction
     * @return the cubic
     */
    public static Cubic reaching(
            Vector2D from, Vector2D leaving, Vector2D to, Vector2D arriving, Vector2D way, double reach) {
        double low = LEAST;
        double high = MOST;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (reach(cubic(from, leaving, to, arriving, middle), way) < reach) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return cubic(from, leaving, to, arriving, (low + high) / 2);
    }

    /**
     * How far a curve reaches in a direction.
     *
     * @param curve the curve
     * @param way the unit direction
     * @return the most of {@code B(t) . way}, in mm
     */
    public static double reach(Curve curve, Vector2D way) {
        double most = Math.max(curve.start().dot(way), curve.end().dot(way));
        for (double t : curve.extrema(way)) {
            most = Math.max(most, curve.at(t).dot(way));
        }
        return most;
    }
}
