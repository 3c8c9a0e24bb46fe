package org.draftingmaths.finish;

import java.util.List;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.piece.Piece;

/**
 * A strap.
 *
 * @param piece the strap on its stitch line, its length upright; what goes into the garment is the allowance of its ends
 * @param path the way over the body, along, in mm
 * @param stitched its length between the two seams, in mm
 * @param cut its length with what goes into the garment, along its middle, in mm
 * @param cautions what to mind, to be shown with it
 * @param ledger what was done
 */
public record Strap(Piece piece, double path, double stitched, double cut, List<Caution> cautions, Ledger ledger) {

    /** Copies the list. */
    public Strap {
        cautions = List.copyOf(cautions);
    }
}
