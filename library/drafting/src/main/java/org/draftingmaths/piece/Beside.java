package org.draftingmaths.piece;

/** On which side of an opening a place lies, when the opening's mouth is at that very place of the edge. */
public enum Beside {
    /** At the end of the leg that is met first along the edge. */
    BEFORE,
    /** At the end of the leg that is met last along the edge. */
    AFTER
}
