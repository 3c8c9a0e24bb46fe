package org.draftingmaths.piece;

import org.draftingmaths.ledger.Ledger;

/** A draft of which more than one piece was changed in one move. */
public interface Redrafted {

    /**
     * The draft.
     *
     * @return the draft with all its pieces as they are now
     */
    Draft draft();

    /**
     * What was done.
     *
     * @return all of it in words and figures, for a step sheet
     */
    Ledger ledger();

    /**
     * What was done to two pieces, each by its name.
     *
     * @param first the one
     * @param second the other
     * @return both ledgers, one after the other
     */
    static Ledger told(Reworked first, Reworked second) {
        return first.ledger()
                .about(first.piece().name())
                .then(second.ledger().about(second.piece().name()));
    }
}
