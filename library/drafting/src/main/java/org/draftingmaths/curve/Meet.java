package org.draftingmaths.curve;

import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A place where two curves or two paths meet.
 *
 * @param onFirst where on the first: its parameter if it is a curve, the length from its start if it is a path
 * @param onSecond where on the second, likewise
 * @param point the place itself, mm
 * @param kind whether the first passes from one side of the second to the other
 */
public record Meet(double onFirst, double onSecond, Vector2D point, Kind kind) {
    /** How two curves meet. */
    public enum Kind {
        /** The first passes from one side of the second to the other, at any angle. */
        CROSSING,
        /** It does not: they are tangent and part again on the same side, or one of them ends there. */
        TOUCHING
    }
}
