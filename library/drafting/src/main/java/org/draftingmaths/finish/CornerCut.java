package org.draftingmaths.finish;

/**
 * How the allowance is cut at a corner between two edges.
 *
 * <p>Let V be the corner on the stitch line, {@code a} the width on the <em>seam</em> (the edge named first: the one sewn, or
 * folded, before the other) and {@code b} the width on the <em>crossing</em> edge. Let Q be the place where the seam's stitch
 * line, run on past V, meets the crossing edge's cut line: {@code |VQ| = b / sin(angle)}. Right for one way of making, every
 * shape but {@link #PLAIN} is wrong for another: which seam is sewn first and how it is pressed decides.
 */
public enum CornerCut {
    /**
     * Mitred: both cut lines run on straight until they meet. A tip farther than twice the wider allowance from V is squared
     * off there. Where cut lines of unlike widths would meet farther off than that, one of them would be cut short for too
     * long, and they are {@link #STEPPED}. Where a cut line is lost in a bend before it comes to the corner, the other runs
     * on to what is left of it.
     */
    PLAIN("plain"),
    /**
     * Squared: from Q square to the seam, over its whole allowance. Mates squared at one Q have ends that lie edge to edge
     * when sewn, whatever the angle at which the other edge crosses.
     */
    SQUARED("squared"),
    /**
     * Turned back: the seam's allowance ends on the crossing edge's cut line reflected in the seam, so that it lies on that
     * cut line when it is pressed back over the piece: for a seam pressed open, for the own allowance of the side to which a
     * seam is pressed, and for a turned-up hem. Where the seam is curved it is reflected in its tangent at V.
     */
    TURNED_BACK("turned back"),
    /**
     * Carried on: the crossing edge's cut line runs on over the seam's allowance with the curvature it has at its end. For
     * the layer that is pressed away from its own piece and lies on its mate, whose cut line is the continuation.
     */
    CARRIED_ON("carried on"),
    /** Blunted: as plain, but squared off at the wider allowance from V, so that the tip is out of the way when walking. */
    BLUNTED("blunted"),
    /** Stepped: straight from the end of the one cut line to the start of the other, each as wide as it is up to V. */
    STEPPED("stepped");

    private final String words;

    CornerCut(String words) {
        this.words = words;
    }

    /**
     * The shape in words.
     *
     * @return for example {@code turned back}
     */
    public String words() {
        return words;
    }
}
