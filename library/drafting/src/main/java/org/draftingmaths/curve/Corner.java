package org.draftingmaths.curve;

/**
 * How the parallels of two edges are joined outside a corner.
 *
 * <p>{@code limit} says how far from the corner the tip may lie, as a multiple of the larger of the two distances: with
 * 1 the tip is squared off across the line to it at the distance itself, with 2 spikes reach twice the distance. Tips
 * that lie nearer are left whole. A limit of 0 joins the two ends by a straight.
 *
 * @param limit 0, or 1 and more
 */
public record Corner(double limit) {
    /** A straight from the end of one parallel to the start of the next. */
    public static final Corner CUT_OFF = new Corner(0);

    /** Both parallels run on straight and are squared off at their distance from the corner. */
    public static final Corner SQUARE = new Corner(1);

    /** Checks the limit. */
    public Corner {
        if (!(limit == 0 || (limit >= 1 && limit <= 1000))) {
            throw new IllegalArgumentException("limit is " + limit + "; allowed is 0, or 1 to 1000");
        }
    }

    /** Both parallels run on straight until they meet, or are squared off at the limit. */
    public static Corner mitre(double limit) {
        return new Corner(limit);
    }
}
