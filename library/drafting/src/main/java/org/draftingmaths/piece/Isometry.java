package org.draftingmaths.piece;

import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Small questions about isometries as matrices. */
public final class Isometry {

    static final AffineTransformMatrix2D NONE = AffineTransformMatrix2D.identity();

    private Isometry() {}

    /** The angle in radians by which a proper isometry turns, anticlockwise. */
    static double angle(AffineTransformMatrix2D motion) {
        double[] m = motion.toArray();
        return Math.atan2(m[3], m[0]);
    }

    /**
     * The reflection in a line: what a fold does to the layer that is turned over.
     *
     * @param point a point on the line
     * @param direction the direction of the line
     * @return the isometry
     */
    public static AffineTransformMatrix2D reflection(Vector2D point, Vector2D direction) {
        Vector2D unit = direction.normalize();
        double c = unit.getX() * unit.getX() - unit.getY() * unit.getY();
        double s = 2 * unit.getX() * unit.getY();
        AffineTransformMatrix2D about = AffineTransformMatrix2D.of(c, s, 0, s, -c, 0);
        Vector2D shift = point.subtract(about.apply(point));
        return AffineTransformMatrix2D.of(c, s, shift.getX(), s, -c, shift.getY());
    }

    /** How far apart two isometries carry the given points at the most. */
    static double apart(AffineTransformMatrix2D one, AffineTransformMatrix2D other, Vector2D... points) {
        double widest = 0;
        for (Vector2D point : points) {
            widest = Math.max(widest, one.apply(point).distance(other.apply(point)));
        }
        return widest;
    }
}
