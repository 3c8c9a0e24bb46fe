package org.draftingmaths.finish;

/**
 * A stretch of an edge that has no cut line of its own, because its allowance lies within that of its neighbours: beside a
 * corner that turns inwards, or in a hollow tighter than the allowance.
 *
 * @param edge the name of the edge
 * @param from where it begins, in mm along the edge as drawn on paper, in the edge's own direction
 * @param to where it ends
 */
public record Lost(String edge, double from, double to) {

    /**
     * How long it is.
     *
     * @return the length in mm
     */
    public double length() {
        return to - from;
    }
}
