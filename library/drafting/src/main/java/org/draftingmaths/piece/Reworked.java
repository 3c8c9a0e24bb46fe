package org.draftingmaths.piece;

import org.draftingmaths.ledger.Entry;
import org.draftingmaths.ledger.Ledger;

/**
 * A piece after an operation, and what the operation did.
 *
 * @param piece the piece as it is now
 * @param ledger what was done, from which {@link Panels#undo} finds the way back
 */
public record Reworked(Piece piece, Ledger ledger) {

    /**
     * This operation and then one entry more, which has made the piece what it is now.
     *
     * @param next the piece after the entry
     * @param entry what was done
     * @return both
     */
    Reworked then(Piece next, Entry entry) {
        return new Reworked(next, ledger.then(entry));
    }

    /**
     * This operation and then another, done to its piece.
     *
     * @param next the other
     * @return both
     */
    public Reworked then(Reworked next) {
        return new Reworked(next.piece, ledger.then(next.ledger));
    }
}
