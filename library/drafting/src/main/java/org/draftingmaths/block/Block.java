package org.draftingmaths.block;

import java.util.List;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.piece.Draft;

/**
 * A drafted block.
 *
 * @param draft its pieces and seams
 * @param construction its construction lines
 * @param ledger where a measure could not be met in full: what was asked and what was drawn
 */
public record Block(Draft draft, List<Construction> construction, Ledger ledger) {

    /** Copies the list. */
    public Block {
        construction = List.copyOf(construction);
    }
}
