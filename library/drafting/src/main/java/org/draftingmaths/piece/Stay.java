package org.draftingmaths.piece;

import java.util.Optional;

/**
 * Which part of the sheet stays where it is while others move.
 *
 * @param at a place on the edge of the part that stays; empty for the part with the fold or centre line, or failing that
 *     the longer part of the grain line
 */
public record Stay(Optional<Spot.On> at) {

    /** The part with the fold or centre line; failing that, the one with the longer part of the grain line. */
    public static final Stay CENTRE = new Stay(Optional.empty());

    /**
     * The part that has a certain place on its edge.
     *
     * @param edge the edge
     * @param arc the base arc in mm from the edge's own start
     * @return the choice
     */
    public static Stay at(String edge, double arc) {
        return new Stay(Optional.of(new Spot.On(new Border.OfEdge(edge), arc, Optional.empty())));
    }
}
