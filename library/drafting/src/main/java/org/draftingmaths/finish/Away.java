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

    /** How far in mm a cut line may start off the parallel of the corner itself and still be carried on. */
    private static final double OFF = 1e-5;

    /**
     * A cut line carried on straight past the corner; one whose first stretch is lost in a bend tighter than the allowance, so
     * that it starts elsewhere, cannot be.
     *
     * @param core the cut line from the corner away
     * @param at the corner on the stitch line
     * @param past the direction of the stitch line past the corner
     * @param before how far it is carried on
     */
    static Away straight(double width, CurvePath core, Vector2D at, Vector2D past, double before) {
        double aside = Math.abs(past.signedArea(at.vectorTo(core.start())));
        if (Math.abs(aside - width) > OFF) {
            return new Away(width, core, 0);
        }
        Vector2D far = core.start().add(past.multiply(before));
        return new Away(width, CurvePath.polyline(far, core.start()).then(core), before);
    }

    /** Whether it runs on past the corner. */
    boolean runsOn() {
        return before > 0;
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
