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
 * The points of the back, in the order in which they are found.
 *
 * @param torso what front and back have in common
 */
record BackPoints(Torso torso) {

    private static final double NECK_RISE = 15;
    private static final double DART_WIDTH = 10;
    private static final double DART_DEPTH = 70;
    private static final Vector2D TO_CENTRE = Vector2D.of(-1, 0);

    Vector2D nape() {
        return Vector2D.of(0, torso.mm(Measure.BACK_WAIST_LENGTH));
    }

    Vector2D neckPoint() {
        return Vector2D.of(torso.mm(Measure.NECK) / 5 - 2, nape().getY() + NECK_RISE);
    }

    private double extra() {
        return -torso.frontExtra();
    }

    private double shoulder() {
        return torso.mm(Measure.SHOULDER_LENGTH);
    }

    /** How far the shoulder end lies below the neck point. */
    private double drop() {
        return NECK_RISE + torso.mm(Measure.ARMHOLE_DEPTH) / 5 - 7;
    }

    /**
     * The shoulder is laid out level, its dart opened, and the whole turned about the neck point until its end lies on its
     * level: with the dart closed it is straight.
     */
    private AffineTransformMatrix2D slope() {
        Vector2D end = levelOpening().apply(Vector2D.of(shoulder(), 0));
        double angle = Math.asin(-drop() / end.norm()) - Math.atan2(end.getY(), end.getX());
        return AffineTransformMatrix2D.createRotation(Vector2D.ZERO, angle)
                .premultiply(AffineTransformMatrix2D.createTranslation(neckPoint()));
    }

    private AffineTransformMatrix2D levelOpening() {
        double angle = 2 * Math.asin(DART_WIDTH / 2 / DART_DEPTH);
        return AffineTransformMatrix2D.createRotation(Vector2D.of(shoulder() / 2, -DART_DEPTH), -angle);
    }

    Vector2D dartInnerEnd() {
        return slope().apply(Vector2D.of(shoulder() / 2, 0));
    }

    Vector2D dartPoint() {
        return slope().apply(Vector2D.of(shoulder() / 2, -DART_DEPTH));
    }

    Vector2D dartOuterEnd() {
        return slope().apply(levelOpening().apply(Vector2D.of(shoulder() / 2, 0)));
    }

    Vector2D shoulderEnd() {
        return slope().apply(levelOpening().apply(Vector2D.of(shoulder(), 0)));
    }

    /** The direction of the shoulder's outer half, from the neck outwards. */
    private Vector2D outerShoulder() {
        return dartOuterEnd().directionTo(shoulderEnd());
    }

    double backX() {
        return torso.mm(Measure.BACK_WIDTH) / 2 + 5;
    }

    double waistDartX() {
        return torso.mm(Measure.BACK_WIDTH) / 4;
    }

    Vector2D waistDartPoint() {
        return Vector2D.of(waistDartX(), torso.bustLevel());
    }

    CurvePath neckline() {
        Vector2D inner = neckPoint().directionTo(dartInnerEnd());
        return CurvePath.of(Rounded.quarter(neckPoint(), square(inner), nape(), TO_CENTRE));
    }

    CurvePath armhole() {
        return CurvePath.of(Rounded.reaching(
                torso.underarm(extra()),
                torso.squareToSide(extra()),
                shoulderEnd(),
                square(outerShoulder()).negate(),
                TO_CENTRE,
                -backX()));
    }

    /** The half back width asked, with its ease, and the one drawn. */
    Change backWidth() {
        return new Change(
                "half back width",
                Quantity.LENGTH,
                backX(),
                armhole().bounds().getMin().getX());
    }

    /** Square to the shoulder, into the piece. */
    private static Vector2D square(Vector2D outwards) {
        return Vector2D.of(outwards.getY(), -outwards.getX());
    }

    void requireSense() {
        if (!Rounded.possible(
                torso.underarm(extra()),
                torso.squareToSide(extra()),
                shoulderEnd(),
                square(outerShoulder()).negate())) {
            throw torso.refused("the back shoulder end and the underarm leave no room for an armhole");
        }
        torso.requireAboveUnderarm(armhole());
        double half = torso.waistDart() / 2;
        if (waistDartX() - half <= 0 || waistDartX() + half >= torso.sideAtWaist(extra())) {
            throw torso.refused(
                    String.format(Locale.ROOT, "a back waist dart of %.0f mm has no room at the waist", 2 * half));
        }
    }

    List<Construction> construction() {
        double width = torso.bustWidth(extra());
        double level = neckPoint().getY() - drop();
        return List.of(
                line("bust level", "the apex's level", torso.bustLevel(), width),
                line("armhole level", "armhole depth + 5 below the nape", torso.armholeLevel(), width),
                line("waist level", "y = 0", 0, width),
                line(
                        "shoulder level",
                        "armhole depth / 5 - 7 below the nape",
                        level,
                        shoulderEnd().getX()),
                new Construction(
                        "back",
                        "back width",
                        "half the back width + 5",
                        CurvePath.polyline(Vector2D.of(backX(), torso.armholeLevel()), Vector2D.of(backX(), level))));
    }

    private static Construction line(String name, String rule, double y, double to) {
        return new Construction("back", name, rule, CurvePath.polyline(Vector2D.of(0, y), Vector2D.of(to, y)));
    }
}
