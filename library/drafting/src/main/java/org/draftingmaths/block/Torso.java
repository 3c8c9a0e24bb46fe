package org.draftingmaths.block;

import java.util.Locale;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Cubic;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.measure.Ease;
import org.draftingmaths.measure.Measure;
import org.draftingmaths.measure.Measurements;

/**
 * What front and back have in common: levels, half widths and the side seam.
 *
 * @param body the body measures
 * @param ease the ease at bust, waist and hip
 */
record Torso(Measurements body, Ease ease) {

    static final double SET_BACK = 20;
    private static final double FRONT_EXTRA = 5;
    private static final double SIDE_SHARE = 0.4;
    private static final double SMALLEST_DART = 6;
    private static final double ARMHOLE_EXTRA = 5;

    /** An armhole that runs so little below the underarm, in mm, is drawn level by hand; a figure of our own. */
    private static final double LEVEL = 2;

    Torso {
        body.require(Measure.TORSO_BLOCK);
        double bust = body.mm(Measure.FRONT_WAIST_LENGTH) - body.mm(Measure.NECK_POINT_TO_APEX);
        double armhole = body.mm(Measure.BACK_WAIST_LENGTH) - body.mm(Measure.ARMHOLE_DEPTH) - ARMHOLE_EXTRA;
        if (!(bust > 40 && bust <= armhole)) {
            throw new DraftingException(
                    "Draft a torso block for '" + body.name() + "'",
                    String.format(
                            Locale.ROOT,
                            "front waist length less neck point to apex puts the apex %.0f mm above the waist; it must lie"
                                    + " between 40 mm and the armhole level at %.0f mm",
                            bust,
                            armhole));
        }
    }

    double mm(Measure measure) {
        return body.mm(measure);
    }

    double finished(Ease.Level level) {
        return ease.finishedGirth(level, body).mm();
    }

    /** By how much the front half is wider than a quarter; the back is narrower by as much. */
    double frontExtra() {
        return FRONT_EXTRA;
    }

    double bustLevel() {
        return mm(Measure.FRONT_WAIST_LENGTH) - mm(Measure.NECK_POINT_TO_APEX);
    }

    double armholeLevel() {
        return mm(Measure.BACK_WAIST_LENGTH) - mm(Measure.ARMHOLE_DEPTH) - ARMHOLE_EXTRA;
    }

    double hipDepth() {
        return mm(Measure.WAIST_TO_HIP);
    }

    double bustWidth(double extra) {
        return finished(Ease.Level.BUST) / 4 + extra;
    }

    double hipWidth(double extra) {
        return finished(Ease.Level.HIP) / 4 + extra;
    }

    /** What either half must lose from bust to waist. */
    private double suppression() {
        return (finished(Ease.Level.BUST) - finished(Ease.Level.WAIST)) / 4;
    }

    boolean hasWaistDart() {
        return (1 - SIDE_SHARE) * suppression() >= SMALLEST_DART;
    }

    double waistDart() {
        return hasWaistDart() ? (1 - SIDE_SHARE) * suppression() : 0;
    }

    double sideAtWaist(double extra) {
        return bustWidth(extra) - suppression() + waistDart();
    }

    /** The bodice's waist, of a quarter of the finished girth and the extra when its dart is closed. */
    ClosedWaist closedWaist(double extra, Vector2D dartPoint) {
        double side = sideAtWaist(extra);
        return ClosedWaist.of(dartPoint, side, side - waistDart());
    }

    Vector2D underarm(double extra) {
        double share = armholeLevel() / bustLevel();
        double in = bustWidth(extra) - sideAtWaist(extra);
        return Vector2D.of(sideAtWaist(extra) + in * share * share, armholeLevel());
    }

    /** The parabola {@code x = waist + (bust - waist) (y / bust level)^2}: upright at the waist. */
    CurvePath sideAboveWaist(double extra) {
        double x = sideAtWaist(extra);
        return CurvePath.of(Cubic.quadratic(Vector2D.of(x, 0), Vector2D.of(x, armholeLevel() / 2), underarm(extra)));
    }

    double sideBelowWaistLength(double extra) {
        double depth = hipDepth();
        double hip = hipWidth(extra);
        double waist = sideAtWaist(extra);
        return new Cubic(
                        Vector2D.of(hip, -depth),
                        Vector2D.of(hip, -0.65 * depth),
                        Vector2D.of(waist, -0.4 * depth),
                        Vector2D.of(waist, 0))
                .length();
    }

    /** The direction square to the side seam at the underarm, into the armhole. */
    Vector2D squareToSide(double extra) {
        Vector2D up = sideAboveWaist(extra).endTangent();
        return Vector2D.of(-up.getY(), up.getX());
    }

    /** Where the waist is much wider than the bust the side slopes outwards, and a line square to it leads down into the side. */
    void requireAboveUnderarm(CurvePath armhole) {
        double below = armhole.start().getY() - armhole.bounds().getMin().getY();
        if (below > LEVEL) {
            throw refused(String.format(
                    Locale.ROOT,
                    "the waist of %.1f cm is so wide for the bust of %.1f cm that the armhole would run %.0f mm below the"
                            + " underarm; this close-fitting block is for a waist that is not wider than the bust",
                    body.mm(Measure.WAIST) / 10,
                    body.mm(Measure.BUST) / 10,
                    below));
        }
    }

    DraftingException refused(String reason) {
        return new DraftingException("Draft a torso block for '" + body.name() + "'", reason);
    }
}
