package org.draftingmaths.piece;

import java.util.Optional;

/**
 * One opening of the line along which a piece comes apart.
 *
 * @param opening its name
 * @param inwards whether the line passes it from the mouth inwards
 * @param over the folded dart that the line crosses just before it, if it does
 */
record Link(String opening, boolean inwards, Optional<Fold> over) {}
