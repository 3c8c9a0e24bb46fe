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
        /** The two legs of a dart differ in length. */
        LEGS_UNEQUAL("the legs of the dart are unequal"),
        /** Two edges that are sewn together differ in sewn length. */
        SEAM_LENGTHS_DIFFER("the seam lengths do not match"),
        /** Two edges that are sewn together carry different numbers of notches. */
        NOTCHES_UNPARTNERED("the notches have no partners"),
        /** A slash is hinged so near a corner that the allowance cannot follow. */
        HINGE_NEAR_CORNER("the hinge lies too near a corner"),
        /** A slash opens by more than one slash should. */
        SLASH_TOO_WIDE("the slash opens too wide; use more slashes"),
        /** The underlays of two folds lie over one another. */
        UNDERLAYS_OVERLAP("the underlays overlap"),
        /** A folded tuck or pleat is released too near the point of its opening. */
        RELEASED_TOO_LATE("the stitching ends too near the point"),
        /** Equal parts as they are printed do not come to the whole. */
        PRINTED_PARTS_MISS("the printed parts do not come to the whole"),
        /** A gathered stretch has so little fullness that it looks like a mistake. */
        GATHERS_TOO_FEW("the gathers are so few that they look like a mistake"),
        /** Two measures, each plausible, hardly belong to one body. */
        MEASURES_UNLIKELY("the measures hardly belong to one body"),
        /** A seam runs to a point at which no allowance is left. */
        ALLOWANCE_RUNS_OUT("no allowance is left; strengthen the point before cutting"),
        /** The centre of a cowl is too little longer on paper than on the body. */
        NO_SURPLUS("the centre has too little surplus for a fold, and the edge lies tight"),
        /** A cowl hangs lower than the apex. */
        LOWER_THAN_APEX("the edge hangs lower than the apex and may expose"),
        /** A facing leaves too little room to be turned through. */
        TOO_NARROW_TO_TURN("the strap is too narrow to be turned through");

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
