package org.draftingmaths.fullness;

import java.util.Map;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.ledger.Reach;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Motion;
import org.draftingmaths.piece.Panels;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Slash;
import org.draftingmaths.piece.Stay;

/**
 * Slash and spread. The gap stays in the edge: its use is undecided until the opening is put to one, and its ends are joined by
 * chords until the edge is redrawn.
 */
public final class Spread {

    private Spread() {}

    /**
     * Spreads a slash at its mouth, hinged at its other end.
     *
     * <p>With {@code R} the slash's chord and {@code g} the gap, the part that moves turns by {@code a = 2 asin(g / 2R)} about
     * the hinge. Conserved: the base length of every edge, the whole length of the hinge's edge, the net area. Gained: the
     * mouth's edge {@code g}, the paper {@code g/2 R cos(a/2)}.
     *
     * <pre>{@code
     * Reworked flared = Spread.hinged(skirt, Slash.straight("flare", Spot.on("hem", 120), Spot.on("waist", 90)), 50);
     * }</pre>
     *
     * @param piece the piece
     * @param slash where to slash: from the edge that gains to the edge that keeps its length
     * @param gap the width of the mouth in mm, straight
     * @return the piece and what was done
     * @throws IllegalArgumentException when the gap is not more than 0
     * @throws DraftingException when the gap is wider than a half turn gives, when the slash leaves the cloth, when it ends at a
     *     point inside and nothing closes there, or when parts would lie over one another
     */
    public static Reworked hinged(Piece piece, Slash slash, double gap) {
        return hinged(piece, slash, gap, Stay.CENTRE);
    }

    /**
     * Spreads a slash at its mouth, hinged at its other end, and says which part stays where it is.
     *
     * @param piece the piece
     * @param slash where to slash: from the edge that gains to the edge that keeps its length
     * @param gap the width of the mouth in mm, straight
     * @param stay which part stays
     * @return the piece and what was done
     * @throws IllegalArgumentException when the gap is not more than 0
     * @throws DraftingException as {@link #hinged(Piece, Slash, double)}
     */
    public static Reworked hinged(Piece piece, Slash slash, double gap, Stay stay) {
        requireGap(gap);
        Reworked cut = Panels.cut(piece, slash);
        CurvePath leg = Measured.leg(cut.piece(), slash.name(), Leg.BEFORE);
        double chord = leg.start().distance(leg.end());
        if (gap > 2 * chord) {
            throw new DraftingException(
                    asked(slash),
                    "a slash cannot open wider than twice its length",
                    new Reach(Quantity.LENGTH, gap, 0, 2 * chord));
        }
        double angle = 2 * Math.asin(gap / 2 / chord);
        return opened(slash, stay, gap, 0, cut, Measured.widen(cut.piece(), slash.name(), leg.end(), angle));
    }

    /**
     * Spreads a slash by an equal gap all along.
     *
     * <p>The part that moves is shifted square to the slash's chord by the gap. Conserved: the base length of every edge, the
     * net area, every direction. Gained: both edges {@code g} straight, the paper {@code g} times the chord.
     *
     * @param piece the piece
     * @param slash where to slash, from edge to edge
     * @param gap the width in mm
     * @return the piece and what was done
     * @throws IllegalArgumentException when the gap is not more than 0
     * @throws DraftingException when the slash leaves the cloth or ends at a point inside, or when parts would lie over one another
     */
    public static Reworked parallel(Piece piece, Slash slash, double gap) {
        return parallel(piece, slash, gap, Stay.CENTRE);
    }

    /**
     * Spreads a slash by an equal gap all along, and says which part stays where it is.
     *
     * @param piece the piece
     * @param slash where to slash, from edge to edge
     * @param gap the width in mm
     * @param stay which part stays
     * @return the piece and what was done
     * @throws IllegalArgumentException when the gap is not more than 0
     * @throws DraftingException as {@link #parallel(Piece, Slash, double)}
     */
    public static Reworked parallel(Piece piece, Slash slash, double gap, Stay stay) {
        requireGap(gap);
        Reworked cut = Panels.cut(piece, slash);
        return opened(slash, stay, gap, gap, cut, Measured.apart(cut.piece(), slash.name(), gap));
    }

    private static Reworked opened(Slash slash, Stay stay, double gap, double farGap, Reworked cut, Motion motion) {
        Reworked open = Panels.open(cut.piece(), Map.of(slash.name(), motion), stay, asked(slash));
        Spreading told =
                new Spreading(slash.name(), slash.mouth().words(), slash.end().words(), gap, farGap);
        return new Reworked(open.piece(), Ledger.of(told).then(cut.ledger()).then(open.ledger()));
    }

    private static void requireGap(double gap) {
        if (!(gap > 0 && Double.isFinite(gap))) {
            throw new IllegalArgumentException("A gap is more than 0 mm: " + gap + " mm.");
        }
    }

    private static String asked(Slash slash) {
        return "Spread '" + slash.name() + "'";
    }
}
