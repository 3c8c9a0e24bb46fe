package org.draftingmaths.suppose;

import java.util.List;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Seam;

/**
 * A draft with what its shapes seem to say.
 *
 * @param draft the draft with the supposed darts laid in, and with its own seams and those that are certain or likely
 * @param possible the seams that are only possible; they are not in the draft, and an edge may stand in several
 * @param suppositions all that was supposed: darts, mates, folds, then pieces that mirror one another
 * @param findings what is wrong if it is so
 */
public record Supposed(Draft draft, List<Seam> possible, List<Supposition> suppositions, List<Finding> findings) {

    /** Copies the lists. */
    public Supposed {
        possible = List.copyOf(possible);
        suppositions = List.copyOf(suppositions);
        findings = List.copyOf(findings);
    }
}
