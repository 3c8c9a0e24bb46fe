package org.draftingmaths.piece;

/** What becomes of an edge. */
public enum Role {
    /** Sewn to another edge. */
    SEAM,
    /** A straight edge laid on the fold of the cloth; it is not cut. */
    FOLD,
    /** Finished by itself or with a facing, as a neckline or a sleeveless armhole. */
    FINISHED,
    /** Turned up or faced at the bottom. */
    HEM,
    /** A line drawn for the style, not cut yet. */
    STYLE_LINE
}
