package org.draftingmaths.piece;

import java.util.Locale;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Meet;
import org.draftingmaths.curve.Meets;
import org.draftingmaths.ledger.DraftingException;

/**
 * Where a dart is stitched: from the end of each leg to the sewn tip, along the straight or in the dart's shape. The two lines are mirror
 * images of each other in the fold line and so of one length.
 */
public final class StitchLines {

    private StitchLines() {}

    /**
     * One stitch line of a dart where it lies.
     *
     * @param piece the piece
     * @param dart the name of a dart
     * @param leg which leg
     * @return its curve, from the mouth to the sewn tip
     * @throws DraftingException when the set-back leaves nothing of the dart to be sewn
     */
    public static CurvePath of(Piece piece, String dart, Leg leg) {
        Vector2D mouth = Measured.leg(piece, dart, leg).start();
        Vector2D other = Measured.leg(piece, dart, leg.other()).start();
        Vector2D tip = DartEnd.sewnTip(piece, dart);
        return shape(piece, dart).line(mouth, tip, awayFrom(other, mouth, tip));
    }

    /**
     * The cloth that a dart takes in: between its stitch lines and the edge of the paper across its mouth.
     *
     * @param piece the piece
     * @param dart the name of a dart
     * @return a closed curve
     * @throws DraftingException when the set-back leaves nothing of the dart to be sewn
     */
    public static CurvePath takenIn(Piece piece, String dart) {
        return of(piece, dart, Leg.BEFORE)
                .then(of(piece, dart, Leg.AFTER).reversed())
                .then(DartEnd.shape(piece, dart).reversed());
    }

    /**
     * By what factor the offsets of a dart's shape could grow before its two stitch lines meet on the fold line.
     *
     * @param piece the piece
     * @param dart the name of a dart
     * @return the factor; 1 or less when they meet as it is, infinite when no offset lies inwards
     * @throws DraftingException when the set-back leaves nothing of the dart to be sewn
     */
    public static double room(Piece piece, String dart) {
        Vector2D before = Measured.leg(piece, dart, Leg.BEFORE).start();
        Vector2D after = Measured.leg(piece, dart, Leg.AFTER).start();
        Vector2D tip = DartEnd.sewnTip(piece, dart);
        return shape(piece, dart).clear(tip.distance(before), Math.abs(DartEnd.angle(tip, before, after)) / 2);
    }

    private static LegShape shape(Piece piece, String dart) {
        if (piece.opening(dart).mouth().use() instanceof Use.Dart use) {
            return use.shape();
        }
        throw new IllegalArgumentException("'" + dart + "' is not sewn as a dart.");
    }

    /** The unit vector square to a line, away from a point beside it. */
    static Vector2D awayFrom(Vector2D point, Vector2D from, Vector2D to) {
        Vector2D way = from.directionTo(to);
        Vector2D left = Vector2D.of(-way.getY(), way.getX());
        return left.dot(from.vectorTo(point)) > 0 ? left.negate() : left;
    }

    /** Refuses stitch lines that would cross the fold line or leave the cloth. */
    static void requireSense(Piece piece, String dart) {
        LegShape shape = shape(piece, dart);
        if (shape.isStraight()) {
            return;
        }
        String asked = "Shape the legs of '" + dart + "'";
        double clear = room(piece, dart);
        if (clear <= 1) {
            throw new DraftingException(asked, shape.crossing(clear));
        }
        for (Leg leg : Leg.values()) {
            requireInside(piece, dart, of(piece, dart, leg), asked);
        }
    }

    private static void requireInside(Piece piece, String dart, CurvePath line, String asked) {
        for (Panel panel : piece.panels()) {
            for (Run run : panel.ring()) {
                if (run.border() instanceof Border.OfLeg leg && leg.opening().equals(dart)) {
                    continue;
                }
                for (Meet meet : Meets.of(line, piece.place(run)).points()) {
                    if (meet.onFirst() > Panels.TOUCH && meet.onFirst() < line.length() - Panels.TOUCH) {
                        throw new DraftingException(
                                asked,
                                String.format(
                                        Locale.ROOT,
                                        "the stitch line would leave the cloth at %s, where it meets %s %.1f mm from the mouth",
                                        Outlines.words(meet.point()),
                                        run.border().words(),
                                        meet.onFirst()));
                    }
                }
            }
        }
    }
}
