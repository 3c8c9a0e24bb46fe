package org.draftingmaths.piece;

/** What a stretch of a panel's ring lies along: a named edge, or one leg of an opening. */
public sealed interface Border {

    /**
     * The border in words.
     *
     * @return for example {@code 'waist'} or {@code a leg of 'bust dart'}
     */
    String words();

    /**
     * A named edge.
     *
     * @param edge the name of the edge
     */
    record OfEdge(String edge) implements Border {
        @Override
        public String words() {
            return "'" + edge + "'";
        }
    }

    /**
     * One leg of an opening.
     *
     * @param opening the name of the opening
     * @param leg which of its legs
     */
    record OfLeg(String opening, Leg leg) implements Border {
        @Override
        public String words() {
            return "a leg of '" + opening + "'";
        }
    }
}
