package org.draftingmaths.ledger;

import org.draftingmaths.unit.Steps;

/**
 * What is to be done at the sewing table and follows from no figure: how a facing is pressed, where a pocket is stitched down.
 *
 * @param words what to do, as whole sentences
 */
public record Instruction(String words) implements Entry {

    @Override
    public String sentence(Steps steps) {
        return words;
    }
}
