package org.draftingmaths.piece;

/**
 * A match point on an edge. No cut, turn or mirror changes it.
 *
 * @param edge the edge
 * @param arc the base arc in mm from the edge's own start
 * @param beside which side of an opening it lies on, should one open at that very place
 */
public record Notch(String edge, double arc, Beside beside) {

    /** Checks the arc. */
    public Notch {
        if (!(arc >= 0 && Double.isFinite(arc))) {
            throw new IllegalArgumentException("A notch on '" + edge + "' lies 0 mm or more along it: " + arc + " mm.");
        }
    }
}
