package org.draftingmaths.block;

import java.util.List;
import org.draftingmaths.piece.Draft;

/**
 * A drafted block.
 *
 * @param draft its pieces and seams
 * @param construction its construction lines
 */
public record Block(Draft draft, List<Construction> construction) {

    /** Copies the list. */
    public Block {
        construction = List.copyOf(construction);
    }
}
