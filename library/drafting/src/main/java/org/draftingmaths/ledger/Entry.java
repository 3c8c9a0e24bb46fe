package org.draftingmaths.ledger;

import org.draftingmaths.unit.Steps;

/** One thing that an operation did. Entries are immutable; rooms add kinds of their own. */
public interface Entry {

    /**
     * The sentence a teacher would say.
     *
     * @param steps the steps to which lengths are rounded for print
     * @return one sentence with its full stop, lengths in both unit systems
     */
    String sentence(Steps steps);
}
