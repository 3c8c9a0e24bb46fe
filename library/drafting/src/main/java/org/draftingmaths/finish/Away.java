package org.draftingmaths.finish;

import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;

/**
 * A cut line as seen from a corner: the line from the corner away, with a piece before it that carries it on past the corner.
 *
 * @param width the allowance in mm
 * @param line the piece past the corner, then the cut line itself
 * @param before how long that piece is in mm
 */
record Away(double width, CurvePath line, double before) {

    /**
     * A cut line carried on straight.
     *
     * @param past the direction of the stitch line past the corner: where the cut line's first stretch is lost in a tight
     *     bend, it is met by the parallel of the stitch line run on straight, not by its own
     */
    static Away straight(double width, CurvePath core, Vector2D past, double before) {
        Vector2D far = core.start().add(past.multiply(before));
        return new Away(width, CurvePath.polyline(far, core.start()).then(core), before);
    }

    /** Where the cut line itself begins. */
    Vector2D end() {
        return line.pointAt(before);
    }

    /** The direction past the corner. */
    Vector2D past() {
        return line.startTangent().negate();
    }

    /** How much of the cut line itself is cut away by starting at a place of the line. */
    double trimmed(double at) {
        return Math.max(0, at - before);
    }

    /** The piece past the corner from a place of the line to the cut line itself. */
    Optional<CurvePath> carried(double at) {
        return at < before - CornerShape.SAME ? Optional.of(line.between(at, before)) : Optional.empty();
    }
}
