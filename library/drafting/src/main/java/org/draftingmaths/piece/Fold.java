package org.draftingmaths.piece;

import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;

/**
 * Where a line goes over a dart that is folded shut.
 *
 * @param dart the dart
 * @param near the leg on which the line arrives
 * @param arc how far along the leg from its mouth, on either leg
 * @param after how far along the line
 */
record Fold(String dart, Leg near, double arc, double after) {

    /** The isometry that lays the far leg, and all beyond it, on the near one. */
    AffineTransformMatrix2D shut(Piece piece) {
        return shut(piece, dart, near);
    }

    static AffineTransformMatrix2D shut(Piece piece, String dart, Leg near) {
        AffineTransformMatrix2D afterOnBefore = Measured.closing(piece, dart).matrix();
        return near == Leg.BEFORE ? afterOnBefore : afterOnBefore.inverse();
    }
}
