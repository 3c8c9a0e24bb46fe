package org.draftingmaths.piece;

/** The two legs of an opening, named along the edge its mouth lies on; mirroring does not swap them. */
public enum Leg {
    /** The leg that ends at the mouth's lower arc: the one met first along the edge. */
    BEFORE,
    /** The leg that ends at the mouth's upper arc: the one met last along the edge. */
    AFTER;

    /**
     * The opposite leg.
     *
     * @return the other of the two
     */
    public Leg other() {
        return this == BEFORE ? AFTER : BEFORE;
    }
}
