package org.draftingmaths.fullness;

import java.util.List;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Reworked;

/**
 * A piece with a cowl.
 *
 * @param spread the piece swung open, before the centre and the edge were drawn anew
 * @param drawn the finished piece and all that was done, which {@code Panels.undo} undoes
 * @param edge half the cowl's edge in mm, from the neck point to the centre
 * @param drop how far in mm its lowest point hangs below the neck points
 * @param turn by how much the upper part was swung, in radians, darts and hinges together
 * @param surplus how much longer the centre is on paper than on the body, up to where the edge hangs, in mm
 * @param folds how many folds of the wanted depth the surplus makes
 * @param budget what the cowl costs in cloth
 * @param findings what a patternmaker should look at
 */
public record Cowl(
        Piece spread,
        Reworked drawn,
        double edge,
        double drop,
        double turn,
        double surplus,
        int folds,
        Budget budget,
        List<Finding> findings) {

    /** Copies the list. */
    public Cowl {
        findings = List.copyOf(findings);
    }

    /**
     * The finished piece.
     *
     * @return the piece
     */
    public Piece piece() {
        return drawn.piece();
    }
}
