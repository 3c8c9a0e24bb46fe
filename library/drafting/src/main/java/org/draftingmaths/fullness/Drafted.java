package org.draftingmaths.fullness;

import java.util.List;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.piece.Draft;

/**
 * Pieces that were drafted for their fullness.
 *
 * @param draft the pieces on the stitch line, and the seams between them
 * @param budget what the fullness costs in cloth, beside straight strips of the same seam and depth
 * @param findings what a patternmaker should look at
 * @param ledger how the pieces were found
 */
public record Drafted(Draft draft, Budget budget, List<Finding> findings, Ledger ledger) {

    /** Copies the list. */
    public Drafted {
        findings = List.copyOf(findings);
    }
}
