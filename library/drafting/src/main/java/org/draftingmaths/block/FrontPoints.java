package org.draftingmaths.block;

import java.util.List;
import java.util.Locale;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Rounded;
import org.draftingmaths.ledger.Change;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.measure.Measure;

/**
 * The points of the front, in the order in which they are found.
 *
 * @param torso what front and back have in common
 */
record FrontPoints(Torso torso) {

    private static final double CLOSED_SLOPE = Math.toRadians(16);
    private static final Vector2D TO_CENTRE = Vector2D.of(-1, 0);

    Vector2D apex() {
        return Vector2D.of(torso.mm(Measure.APEX_TO_APEX) / 2, torso.bustLevel());
    }

    double dartAngle() {
        return 2 * Math.asin(torso.mm(Measure.BUST_DART) / 2 / torso.mm(Measure.NECK_POINT_TO_APEX));
    }

    /** {@code neck/5 - 7} from the centre, at its distance from the apex. */
    Vector2D neckPoint() {
        double x = torso.mm(Measure.NECK) / 5 - 7;
        double across = apex().getX() - x;
        double leg = torso.mm(Measure.NECK_POINT_TO_APEX);
        return Vector2D.of(x, apex().getY() + Math.sqrt(leg * leg - across * across));
    }

    Vector2D neckDepth() {
        return Vector2D.of(0, neckPoint().getY() - (torso.mm(Measure.NECK) / 5 - 2));
    }

    /** The direction of the shoulder with the dart closed, from the neck outwards. */
    private static Vector2D closedShoulder() {
        return Vector2D.of(Math.cos(CLOSED_SLOPE), -Math.sin(CLOSED_SLOPE));
    }

    private AffineTransformMatrix2D opening() {
        return AffineTransformMatrix2D.createRotation(apex(), -dartAngle());
    }

    Vector2D dartInnerEnd() {
        return neckPoint().add(closedShoulder().multiply(torso.mm(Measure.SHOULDER_LENGTH) / 2));
    }

    Vector2D dartOuterEnd() {
        return opening().apply(dartInnerEnd());
    }

    Vector2D shoulderEnd() {
        return opening().apply(neckPoint().add(closedShoulder().multiply(torso.mm(Measure.SHOULDER_LENGTH))));
    }

    /** The level at which the chest is measured: half way between shoulder end and armhole level. */
    private double chestLevel() {
        return (shoulderEnd().getY() + torso.armholeLevel()) / 2;
    }

    /** Half the chest, with what the open dart adds at that level. */
    double chestX() {
        double open =
                torso.mm(Measure.BUST_DART) * (chestLevel() - apex().getY()) / torso.mm(Measure.NECK_POINT_TO_APEX);
        return torso.mm(Measure.CHEST_WIDTH) / 2 + open;
    }

    CurvePath neckline() {
        Vector2D leaving = square(closedShoulder());
        return CurvePath.of(Rounded.quarter(neckPoint(), leaving, neckDepth(), TO_CENTRE));
    }

    CurvePath armhole() {
        Vector2D arriving = square(opening().applyVector(closedShoulder())).negate();
        Vector2D leaving = torso.squareToSide(torso.frontExtra());
        return CurvePath.of(Rounded.reaching(
                torso.underarm(torso.frontExtra()), leaving, shoulderEnd(), arriving, TO_CENTRE, -chestX()));
    }

    /** The half chest width asked, with what the open dart adds, and the one drawn. */
    Change chestWidth() {
        double drawn = armhole().bounds().getMin().getX();
        return new Change("half chest width of the front, dart open", Quantity.LENGTH, chestX(), drawn);
    }

    /** Square to the shoulder, into the piece. */
    private static Vector2D square(Vector2D outwards) {
        return Vector2D.of(outwards.getY(), -outwards.getX());
    }

    void requireSense() {
        Vector2D underarm = torso.underarm(torso.frontExtra());
        Vector2D arriving = square(opening().applyVector(closedShoulder())).negate();
        if (!Rounded.possible(underarm, torso.squareToSide(torso.frontExtra()), shoulderEnd(), arriving)) {
            throw torso.refused("the front shoulder end and the underarm leave no room for an armhole");
        }
        torso.requireAboveUnderarm(armhole());
        if (neckDepth().getY() <= apex().getY()) {
            throw torso.refused("the neck comes down to the apex");
        }
        double half = torso.waistDart() / 2;
        if (apex().getX() - half <= 0 || apex().getX() + half >= torso.sideAtWaist(torso.frontExtra())) {
            throw torso.refused(String.format(
                    Locale.ROOT, "a front waist dart of %.0f mm under the apex has no room at the waist", 2 * half));
        }
    }

    List<Construction> construction() {
        double width = torso.bustWidth(torso.frontExtra());
        return List.of(
                line(
                        "bust level",
                        "front waist length less neck point to apex, above the waist",
                        0,
                        torso.bustLevel(),
                        width),
                line("armhole level", "armhole depth + 5 below the nape", 0, torso.armholeLevel(), width),
                line("waist level", "y = 0", 0, 0, width),
                line("chest level", "half way between shoulder end and armhole level", 0, chestLevel(), chestX()),
                new Construction("front", "neck point to apex", "as measured", CurvePath.polyline(neckPoint(), apex())),
                new Construction(
                        "front",
                        "closed shoulder",
                        "shoulder length, sloping 16 degrees with the dart closed",
                        CurvePath.polyline(
                                neckPoint(),
                                neckPoint().add(closedShoulder().multiply(torso.mm(Measure.SHOULDER_LENGTH))))));
    }

    private static Construction line(String name, String rule, double x, double y, double to) {
        return new Construction("front", name, rule, CurvePath.polyline(Vector2D.of(x, y), Vector2D.of(to, y)));
    }
}
