package org.draftingmaths.piece;

import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;

/**
 * A stretch of a panel's ring: part of a border's base, carried to where it lies now.
 *
 * @param border the edge or leg it lies along
 * @param from the lower base arc in mm, from the border's own start
 * @param to the upper base arc in mm
 * @param forward whether the ring passes it in the border's own direction
 * @param motion the isometry from the base to its place
 */
public record Run(Border border, double from, double to, boolean forward, AffineTransformMatrix2D motion) {

    /** Checks the arcs. */
    public Run {
        if (!(from < to)) {
            throw new IllegalArgumentException(
                    "A run goes from a lower to an upper arc: " + from + " to " + to + " mm.");
        }
    }

    /**
     * The length.
     *
     * @return the length in mm
     */
    public double length() {
        return to - from;
    }

    /** The base arc at which the ring enters the run. */
    double entry() {
        return forward ? from : to;
    }

    /** The base arc at which the ring leaves the run. */
    double exit() {
        return forward ? to : from;
    }

    /** The run carried along. */
    Run moved(AffineTransformMatrix2D by) {
        return new Run(border, from, to, forward, motion.premultiply(by));
    }

    Run part(double lower, double upper) {
        return new Run(border, lower, upper, forward, motion);
    }

    Run turnedRound() {
        return new Run(border, from, to, !forward, motion);
    }

    Run along(Border other) {
        return new Run(other, from, to, forward, motion);
    }
}
