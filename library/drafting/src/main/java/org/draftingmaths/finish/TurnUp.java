package org.draftingmaths.finish;

import java.util.List;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.piece.Piece;

/**
 * A piece with cloth for its hem to be turned up.
 *
 * @param piece the piece; the hem is now a line marked on it
 * @param parts the stretches of the hem, each convex, hollow or straight
 * @param ledger what was done; {@code Panels.undo} takes it back
 */
public record TurnUp(Piece piece, List<HemPart> parts, Ledger ledger) {

    /** Copies the list. */
    public TurnUp {
        parts = List.copyOf(parts);
    }

    /**
     * What is too long in all convex stretches.
     *
     * @return the surplus in mm
     */
    public double toEase() {
        return parts.stream().mapToDouble(part -> Math.max(0, part.surplus())).sum();
    }

    /**
     * What is too short in all hollow stretches; it is never set off against what is too long elsewhere.
     *
     * @return the shortage in mm, not negative
     */
    public double toStretch() {
        return parts.stream().mapToDouble(part -> Math.max(0, -part.surplus())).sum();
    }
}
