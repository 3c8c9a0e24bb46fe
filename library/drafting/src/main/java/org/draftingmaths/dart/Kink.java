package org.draftingmaths.dart;

import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.Entry;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.piece.Border;
import org.draftingmaths.piece.Mouth;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.unit.Steps;

/**
 * Said where a dart was closed and its edge does not run on smoothly: it was not drawn on the folded dart.
 *
 * @param edge the edge
 * @param dart the dart that was closed
 * @param turn by how much the edge turns there, in radians
 */
record Kink(String edge, String dart, double turn) implements Entry {

    /** What turns by less is drawn smooth by hand: half a degree (common practice). */
    private static final double SMOOTH = Math.toRadians(0.5);

    @Override
    public String sentence(Steps steps) {
        return "'" + edge + "' turns by " + Quantity.ANGLE.print(turn, steps) + " where '" + dart
                + "' is closed; blend it there (Smooth.edge), and walk its seam again.";
    }

    /** What is to be said when a dart of the piece as it still is comes to be closed. */
    static Ledger at(Piece piece, String dart) {
        return of(piece, dart).map(Ledger::of).orElse(Ledger.EMPTY);
    }

    private static Optional<Entry> of(Piece piece, String dart) {
        Mouth mouth = piece.opening(dart).mouth();
        if (!(mouth.border() instanceof Border.OfEdge edge)) {
            return Optional.empty();
        }
        CurvePath base = piece.base(edge);
        double last = base.length() - CurvePath.JOINT;
        if (mouth.before() <= CurvePath.JOINT || mouth.after() >= last) {
            return Optional.empty();
        }
        Vector2D in = base.tangentBefore(mouth.before());
        Vector2D out = base.tangentAt(mouth.after());
        double turn = Math.abs(Math.atan2(in.signedArea(out), in.dot(out)));
        return turn > SMOOTH ? Optional.of(new Kink(edge.edge(), dart, turn)) : Optional.empty();
    }
}
