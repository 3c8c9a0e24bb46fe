package org.draftingmaths.exchange;

import java.util.List;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.piece.Draft;

/**
 * Outlines taken from a drawing.
 *
 * @param draft the pieces, without seams
 * @param findings what is wrong with the outlines: those left open, those of more than one ring
 * @param notes what was done to them, in sentences: gaps closed, what was left out
 */
public record Traced(Draft draft, List<Finding> findings, List<String> notes) {

    /** Copies the lists. */
    public Traced {
        findings = List.copyOf(findings);
        notes = List.copyOf(notes);
    }
}
