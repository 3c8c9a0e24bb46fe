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
 * @param remedy what can be done about it, as whole sentences; empty where that is plain or for the patternmaker to judge
 */
public record Finding(
        Kind kind, String where, Quantity quantity, double measured, double expected, double tolerance, String remedy) {

    /**
     * A finding without a remedy.
     *
     * @param kind what kind of fault it is
     * @param where the piece, edge or dart, in words
     * @param quantity what kind of figure was measured
     * @param measured what was measured, in the library's own unit
     * @param expected what was expected
     * @param tolerance how far the two may lie apart
     */
    public Finding(Kind kind, String where, Quantity quantity, double measured, double expected, double tolerance) {
        this(kind, where, quantity, measured, expected, tolerance, "");
    }

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
        /** The sewn point of a dart lies nearer to one leg's end than to the other's. */
        POINT_OFF_BISECTOR("the point lies off the line square over the middle of the mouth"),
        /** The set-back of a dart leaves nothing to be sewn. */
        TIP_BEYOND_LEG("the point is set back beyond the mouth"),
        /** A dart wider than one dart should be. */
        DART_WIDE("the dart is wider than one dart should be"),
        /** A seam line passes too far from a dart's point to shape it. */
        LINE_TOO_FAR("the line passes too far from the dart's point for a seam to shape it"),
        /** A dart so narrow that it is better eased in. */
        DART_SMALL("the dart is too small to be worth sewing"),
        /** The shaped legs of a dart cross on its fold line. */
        STITCH_LINES_CROSS("the shaped stitch lines of the dart cross"),
        /** Hardly any cloth is left between two darts of one apex. */
        SLIVER("the cloth between the darts is a sliver"),
        /** The underlay of a dart reaches past the panel it is pressed to. */
        UNDERLAY_OVERRUNS("the underlay reaches past the panel it is pressed to"),
        /** The underlay of a dart stands out far over its mouth. */
        UNDERLAY_LONG("the underlay is very long, because the seam runs nearly along the leg"),
        /** Part of a dart is accounted for nowhere, or twice. */
        DART_LOST("the angles at the apex no longer come to the whole"),
        /** A seam declares ease for a notch interval that it does not have. */
        EASE_NOWHERE("ease is declared for a notch interval that the seam does not have"),
        /** Ease is declared for a seam that has no notches between which it could lie. */
        FULLNESS_UNBOUNDED("ease is declared without notches where it starts and stops"),
        /** The end of a dart does not lie on its edge when the dart is folded. */
        DART_END_UNTRUE("the end of the dart does not lie on the edge when it is folded"),
        /** An edge that is nothing else by its shape fits no other edge. */
        MATE_MISSING("no edge fits it; the nearest in length is expected"),
        /** Two edges that are sewn together differ in sewn length. */
        SEAM_LENGTHS_DIFFER("the seam lengths do not match"),
        /** Two edges that are sewn together run unlike to the grain, or are unlike in shape. */
        SEAM_UNBALANCED("the edges of the seam are unlike"),
        /** Two edges that are sewn together carry different numbers of notches. */
        NOTCHES_UNPARTNERED("the notches have no partners"),
        /** Two edges that are sewn together carry different allowances, and no difference was declared. */
        ALLOWANCES_DIFFER("the allowances of the mates differ"),
        /** The allowance is too wide for a hollow, so that a stretch of the edge has no cut line of its own. */
        ALLOWANCE_SWALLOWED("the allowance is too wide for the hollow"),
        /** A notch would be cut at a corner of the cut line, or does not reach the cut line of its own edge. */
        NOTCH_AT_CORNER("a notch lies at a corner of the cut line"),
        /** An edge to be laid on the fold of the cloth is not straight. */
        FOLD_NOT_STRAIGHT("the fold is not straight"),
        /** An edge does not arrive square at a fold, so that it shows a point or a dip when opened out. */
        FOLD_NOT_SQUARE("the edge is not square to the fold"),
        /** A piece without a grain line. */
        GRAIN_MISSING("the piece has no grain line"),
        /** A grain line that does not lie inside its piece. */
        GRAIN_OUTSIDE("the grain line does not lie inside the piece"),
        /** A grain line that runs neither along nor across the fold. */
        GRAIN_TURNED("the grain runs neither along nor across the fold"),
        /** A piece on a fold whose grain lies at 45 degrees to it. */
        FOLD_ON_BIAS("the piece lies on the bias and on a fold"),
        /** An edge with a corner where no dart is. */
        EDGE_CORNER("the edge has a corner"),
        /** An edge with a corner where a dart in it is folded shut. */
        EDGE_KINKS("the edge has a corner where the dart is folded shut"),
        /** A line with a peak or a hollow where it crosses a joined seam. */
        LINE_BREAKS("the line has a peak or a hollow where it crosses the seam"),
        /** A closed girth that is not the body's with the ease that was declared. */
        GIRTH_OFF("the closed girth is not that of the body with its ease"),
        /** A text finds no clear place inside the stitch line. */
        TEXT_TOO_LARGE("the text does not fit inside the stitch line"),
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
        /** An opening without a fastening is smaller than what must go through it. */
        OPENING_TOO_SMALL("the opening is too small for the head"),
        /** A facing leaves too little room to be turned through. */
        TOO_NARROW_TO_TURN("the strap is too narrow to be turned through"),
        /** The notches of an edge that looks the same both ways lie the same both ways. */
        NOTCHES_SYMMETRIC("the notches read the same both ways, and the edge looks alike both ways but is not"),
        /** An edge carries more notches than can be told apart. */
        NOTCHES_TOO_MANY("there are too many notches"),
        /** A label without style, size or version. */
        LABEL_SILENT("the labels do not say it"),
        /** A piece of the draft that is not among those that are cut. */
        PIECE_UNCUT("the piece is not among those that are cut"),
        /** An edge of a whole style that is to be sewn, and that no seam takes. */
        EDGE_UNSEWN("no seam takes the edge"),
        /** Edges that are sewn together of which one is there more often than the other when all is cut. */
        MATES_UNCUT("what is sewn together is not cut equally often"),
        /** A figure in inches and the one beside it in centimetres cannot be one length. */
        UNITS_CONTRADICT("the two units contradict each other"),
        /** A figure has a finer fraction than was promised. */
        UNITS_TOO_FINE("the figure is finer than the steps promised");

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
     * @return one sentence with place, measured, expected and tolerance, and then the remedy where there is one
     */
    public String sentence(Steps steps) {
        return where + ": " + kind.words() + "; measured " + quantity.print(measured, steps) + ", expected "
                + quantity.print(expected, steps) + ", off by " + quantity.printFinely(excess()) + ", tolerance "
                + quantity.printFinely(tolerance) + "." + (remedy.isEmpty() ? "" : " " + remedy);
    }
}
