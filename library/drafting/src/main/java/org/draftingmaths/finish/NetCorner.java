package org.draftingmaths.finish;

import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;

/**
 * A corner of the stitch line.
 *
 * @param at where it is
 * @param in the direction in which the outline arrives
 * @param out the direction in which it leaves
 * @param fold whether one of the two edges is a fold
 * @param cleaned what the clean parallel of the whole outline has between the cut lines of the two edges
 * @param asked what was asked, for a refusal
 */
record NetCorner(Vector2D at, Vector2D in, Vector2D out, boolean fold, Optional<CurvePath> cleaned, String asked) {

    /** By how much the outline turns to the left, in radians. */
    double turn() {
        return Math.atan2(in.signedArea(out), in.dot(out));
    }

    /** The angle inside the piece, in radians. */
    double angle() {
        return Math.PI - turn();
    }
}
