package org.draftingmaths.finish;

import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Folding over a line. */
final class Reflections {

    private Reflections() {}

    /** The reflection in the line through a point with a unit direction. */
    static AffineTransformMatrix2D in(Vector2D point, Vector2D direction) {
        double c = direction.getX() * direction.getX() - direction.getY() * direction.getY();
        double s = 2 * direction.getX() * direction.getY();
        double x = point.getX() - (c * point.getX() + s * point.getY());
        double y = point.getY() - (s * point.getX() - c * point.getY());
        return AffineTransformMatrix2D.of(c, s, x, s, -c, y);
    }
}
