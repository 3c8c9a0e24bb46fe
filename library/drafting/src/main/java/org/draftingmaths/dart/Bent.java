package org.draftingmaths.dart;

import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.Entry;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.unit.Steps;

/**
 * Said where an edge, drawn across a dart that is left unsewn, bends much to come from the one side to the other: a hump in a hollow edge.
 *
 * @param edge the edge
 * @param dart the dart that is left
 * @param bend the larger angle in radians between the edge beside the mouth and the straight across it
 */
record Bent(String edge, String dart, double bend) implements Entry {

    /** An edge that bends by less runs on well enough: a figure of our own. */
    private static final double WELL = Math.toRadians(10);

    @Override
    public String sentence(Steps steps) {
        return "Across '" + dart + "' the '" + edge + "' bends by " + Quantity.ANGLE.print(bend, steps)
                + " out of its run; draw it anew as one line (Smooth.edge), and walk its seam again.";
    }

    /** What is to be said of the line drawn across a dart that is left. */
    static Ledger across(Piece left, String dart) {
        return Paper.sides(left).stream()
                .filter(side -> side.opening().filter(dart::equals).isPresent())
                .map(side -> new Bent(side.edge(), dart, bend(side.path())))
                .filter(bent -> bent.bend() > WELL)
                .map(Ledger::of)
                .findFirst()
                .orElse(Ledger.EMPTY);
    }

    private static double bend(CurvePath across) {
        Vector2D chord = across.start().vectorTo(across.end());
        return Math.max(between(across.startTangent(), chord), between(chord, across.endTangent()));
    }

    private static double between(Vector2D one, Vector2D other) {
        return Math.abs(Math.atan2(one.signedArea(other), one.dot(other)));
    }
}
