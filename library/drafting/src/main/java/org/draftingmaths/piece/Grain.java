package org.draftingmaths.piece;

import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * The grain line of a piece, drawn where it lies.
 *
 * @param from one end
 * @param to the other end
 */
public record Grain(Vector2D from, Vector2D to) {

    /** Checks that it has a direction. */
    public Grain {
        if (!(from.isFinite() && to.isFinite() && from.distance(to) > 0)) {
            throw new IllegalArgumentException("A grain line needs two ends apart: " + from + " to " + to + ".");
        }
    }

    /**
     * The direction of the grain.
     *
     * @return a unit vector
     */
    public Vector2D direction() {
        return from.directionTo(to);
    }

    Grain moved(AffineTransformMatrix2D by) {
        return new Grain(by.apply(from), by.apply(to));
    }
}
