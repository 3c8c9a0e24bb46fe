package org.draftingmaths.block;

import org.draftingmaths.ledger.Entry;
import org.draftingmaths.unit.Steps;

/** Said of a block whose waist is nearly as wide as its bust, so that a waist dart would be too small to be sewn. */
record NoWaistDart() implements Entry {
    @Override
    public String sentence(Steps steps) {
        return "The waist is nearly as wide as the bust: no waist dart is drawn, the side seams take in all there is.";
    }
}
