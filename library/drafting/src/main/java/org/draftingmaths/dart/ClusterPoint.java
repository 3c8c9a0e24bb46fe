package org.draftingmaths.dart;

import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.Entry;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.unit.Steps;

/**
 * Where a dart that points beside the apex is sewn to.
 *
 * @param dart the name of the dart
 * @param apart how far its point came apart when it opened, in mm
 * @param setBack how far in mm the sewn point lies from the apex, on the bisector
 * @param aside how far in mm that point lies from the middle of the two places to which the drawn point came apart
 * @param longer by how much the sewn legs are longer than the slash they come from, in mm; negative when shorter
 */
public record ClusterPoint(String dart, double apart, double setBack, double aside, double longer) implements Entry {

    static Optional<ClusterPoint> of(Piece piece, Darts.Part part) {
        return part.point().map(point -> of(piece, part.name()));
    }

    private static ClusterPoint of(Piece piece, String dart) {
        CurvePath before = Measured.leg(piece, dart, Leg.BEFORE);
        CurvePath after = Measured.leg(piece, dart, Leg.AFTER);
        Vector2D one = before.curves().get(0).end();
        Vector2D other = after.curves().get(0).end();
        Vector2D apex = before.end();
        Vector2D bisector = apex.directionTo(before.start().lerp(after.start(), 0.5));
        double setBack = apex.vectorTo(one.lerp(other, 0.5)).dot(bisector);
        Vector2D tip = apex.add(bisector.multiply(setBack));
        return new ClusterPoint(
                dart,
                one.distance(other),
                setBack,
                tip.distance(one.lerp(other, 0.5)),
                tip.distance(before.start()) - before.curves().get(0).length());
    }

    @Override
    public String sentence(Steps steps) {
        return "The point of '" + dart + "' came apart by " + Quantity.LENGTH.printFinely(apart)
                + "; sew to a point " + Quantity.LENGTH.printFinely(aside)
                + " from the middle of the two, where both legs are alike; they differ from the slash by "
                + Quantity.LENGTH.printFinely(longer)
                + ".";
    }
}
