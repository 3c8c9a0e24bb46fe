package org.draftingmaths.finish;

import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A short cut into the allowance that shows a place of the stitch line. It lies on the line from the place on the stitch line
 * to the cut line, and is cut inwards from there. On an edge without allowance nothing is cut: the end is the cut line itself
 * and the place is marked by other means.
 *
 * @param kind what it marks
 * @param of the edge, dart or line that it marks a place of
 * @param stitch the place on the stitch line
 * @param cut where the snip begins, on the cut line
 * @param end where it ends, between the two
 */
public record Snip(Kind kind, String of, Vector2D stitch, Vector2D cut, Vector2D end) {

    /** What a snip marks. */
    public enum Kind {
        /** A match point. */
        NOTCH,
        /** One of the two snips of a double notch. */
        DOUBLE_NOTCH,
        /** The end of a dart's leg. */
        DART_LEG,
        /** Where ease or gathers begin or stop. */
        FULLNESS_END,
        /** The end of a fold or centre line. */
        FOLD_END,
        /** The end of a bust, waist or other level line. */
        LEVEL_END,
        /** The end of the line at which a hem is turned up. */
        HEM_TURN
    }

    /**
     * How deep it is cut.
     *
     * @return the depth in mm
     */
    public double depth() {
        return cut.distance(end);
    }
}
