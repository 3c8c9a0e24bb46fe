package org.draftingmaths.piece;

import java.util.Optional;

/** A place on the ring of a panel, told by what never moves: a border and an arc on it, or the tip of an opening. */
public sealed interface Spot {

    /**
     * The place in words.
     *
     * @return for example {@code 'waist' at 120.0 mm}
     */
    String words();

    /**
     * A place on an edge or a leg.
     *
     * @param border the edge or leg
     * @param arc the base arc in mm from its own start
     * @param beside which side of the opening is meant, when there is one at that place; empty when there is none
     */
    record On(Border border, double arc, Optional<Beside> beside) implements Spot {
        @Override
        public String words() {
            return border.words() + String.format(java.util.Locale.ROOT, " at %.1f mm", arc);
        }
    }

    /**
     * The tip of an opening.
     *
     * @param opening its name
     */
    record Tip(String opening) implements Spot {
        @Override
        public String words() {
            return "the point of '" + opening + "'";
        }
    }

    /**
     * A place on an edge.
     *
     * @param edge the name of the edge; at a corner, the edge that is to own what is cut there
     * @param arc the base arc in mm from the edge's own start
     * @return the place
     */
    static Spot on(String edge, double arc) {
        return new On(new Border.OfEdge(edge), arc, Optional.empty());
    }

    /**
     * A place on an edge where an opening lies.
     *
     * @param edge the name of the edge
     * @param arc the base arc in mm from the edge's own start
     * @param beside which side of that opening is meant
     * @return the place
     */
    static Spot on(String edge, double arc, Beside beside) {
        return new On(new Border.OfEdge(edge), arc, Optional.of(beside));
    }

    /**
     * The tip of an opening.
     *
     * @param opening its name
     * @return the place
     */
    static Spot tip(String opening) {
        return new Tip(opening);
    }
}
