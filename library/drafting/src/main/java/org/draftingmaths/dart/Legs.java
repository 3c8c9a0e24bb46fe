package org.draftingmaths.dart;

import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.LegEnds;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.seam.Ends;

/** The legs of a dart made equal, so that it can be folded and turned. */
public final class Legs {

    private Legs() {}

    /** Which length both legs are to have. */
    public enum Rule {
        /** That of the longer leg: the shorter grows, cloth is added at the seam. */
        LONGER,
        /** That of the shorter leg: the longer is cut back. */
        SHORTER,
        /** The mean of both: one grows, the other is cut back by as much. */
        MEAN
    }

    /**
     * Makes the legs of a dart equal: the end of a leg moves along its leg's line, and the seam beside it is redrawn to it by its last curve.
     * With {@code b, a} the two legs both become {@code max(b, a)}, {@code min(b, a)} or {@code (b + a)/2}.
     *
     * <p>Conserved: the apex, the angle of the dart and so its fold line, every other edge. Changed and told: both legs, the
     * intake, the length of the dart's edge, the net area. To move an end along the seam instead would change the angle.
     *
     * <pre>{@code
     * Reworked trued = Legs.equalise(front, "waist dart", Legs.Rule.MEAN);
     * Reworked moved = Darts.rotate(trued.piece(), "waist dart", Spot.on("side seam", 60), "side dart");
     * }</pre>
     *
     * @param piece the piece
     * @param dart the name of a dart with straight legs
     * @param rule which length both are to have
     * @return the piece and what was done
     * @throws IllegalArgumentException when the piece has no such dart
     * @throws org.draftingmaths.ledger.DraftingException when a leg is curved or cut or ends at a corner, when nothing would be
     *     left to sew before the set-back, or when the redrawn outline would cross itself
     */
    public static Reworked equalise(Piece piece, String dart, Rule rule) {
        double before = Measured.leg(piece, dart, Leg.BEFORE).length();
        double after = Measured.leg(piece, dart, Leg.AFTER).length();
        double length = switch (rule) {
            case LONGER -> Math.max(before, after);
            case SHORTER -> Math.min(before, after);
            case MEAN -> (before + after) / 2;
        };
        CurvePath beforeSeam = LegEnds.seam(piece, dart, Leg.BEFORE);
        CurvePath afterSeam = LegEnds.seam(piece, dart, Leg.AFTER);
        return LegEnds.move(
                piece,
                dart,
                Ends.carried(beforeSeam, end(piece, dart, Leg.BEFORE, length)),
                Ends.carried(afterSeam.reversed(), end(piece, dart, Leg.AFTER, length))
                        .reversed());
    }

    /** Where a leg of a length ends. */
    private static Vector2D end(Piece piece, String dart, Leg leg, double length) {
        CurvePath line = Measured.leg(piece, dart, leg);
        return line.length() == length
                ? line.start()
                : line.end().add(line.end().directionTo(line.start()).multiply(length));
    }
}
