package org.draftingmaths.finish;

import java.util.List;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Seam;

/**
 * Facings that were traced.
 *
 * @param pieces the facings, one for each piece of the garment or one for all
 * @param joins the seams between facings, where the garment has seams
 * @param ledger what was done
 * @param findings where a facing will be hard to make
 */
public record Facing(List<Piece> pieces, List<Seam> joins, Ledger ledger, List<Finding> findings) {

    /** Copies the lists. */
    public Facing {
        pieces = List.copyOf(pieces);
        joins = List.copyOf(joins);
        findings = List.copyOf(findings);
    }

    /**
     * The only facing.
     *
     * @return the piece
     * @throws IllegalStateException when there are several
     */
    public Piece only() {
        if (pieces.size() != 1) {
            throw new IllegalStateException("There are " + pieces.size() + " facings: "
                    + String.join(", ", pieces.stream().map(Piece::name).toList()) + ".");
        }
        return pieces.get(0);
    }
}
