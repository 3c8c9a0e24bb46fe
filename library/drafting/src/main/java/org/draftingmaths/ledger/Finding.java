package org.draftingmaths.ledger;

import org.draftingmaths.unit.Steps;

/**
 * Something a check found. A poor draft is data, never an exception.
 *
 * @param kind what kind of fault it is
 * @param where the piece, edge or dart, in words
 * @param quantity what kind of figure was measured
 * @param measured what was measured, in the library's own unit
 * @param expected what was expected
 * @param tolerance how far the two may lie apart
 */
public record Finding(Kind kind, String where, Quantity quantity, double measured, double expected, double tolerance) {

    /** The kinds of fault that checks look for. */
    public enum Kind {
        /** The outline on paper crosses or touches itself. */
        OUTLINE_CROSSES("the outline crosses itself"),
        /** The lines of an outline do not meet. */
        OUTLINE_OPEN("the outline is open"),
        /** An outline has another ring, inside it or beside it. */
        SECOND_RING("the piece has more than one ring, and the largest is taken"),
        /** The two legs of a dart differ in length. */
        LEGS_UNEQUAL("the legs of the dart are unequal"),
        /** Two edges that are sewn together differ in sewn length. */
        SEAM_LENGTHS_DIFFER("the seam lengths do not match"),
        /** Two edges that are sewn together carry different numbers of notches. */
        NOTCHES_UNPARTNERED("the notches have no partners"),
        /** Two measures, each plausible, hardly belong to one body. */
        MEASURES_UNLIKELY("the measures hardly belong to one body");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /**
         * The fault in plain words.
         *
         * @return for example {@code the seam lengths do not match}
         */
        public String words() {
            return words;
        }
    }

    /**
     * By how much the measured figure misses the expected one.
     *
     * @return measured less expected
     */
    public double excess() {
        return measured - expected;
    }

    /**
     * The finding as a plain sentence.
     *
     * @param steps the steps to which lengths are rounded for print
     * @return one sentence with place, measured, expected and tolerance
     */
    public String sentence(Steps steps) {
        return where + ": " + kind.words() + "; measured " + quantity.print(measured, steps) + ", expected "
                + quantity.print(expected, steps) + ", off by " + quantity.printFinely(excess()) + ", tolerance "
                + quantity.printFinely(tolerance) + ".";
    }
}
