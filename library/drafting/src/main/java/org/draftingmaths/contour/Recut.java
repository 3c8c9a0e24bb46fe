package org.draftingmaths.contour;

import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Redrafted;
import org.draftingmaths.piece.Reworked;

/**
 * A draft with edges drawn anew on two pieces.
 *
 * @param draft the draft with both pieces as they are now
 * @param front the front piece and what was done to it, from which {@link org.draftingmaths.piece.Panels#undo} finds the way back
 * @param back the back piece and what was done to it
 * @param ledger all of it in words and figures, for a step sheet
 */
public record Recut(Draft draft, Reworked front, Reworked back, Ledger ledger) implements Redrafted {}
