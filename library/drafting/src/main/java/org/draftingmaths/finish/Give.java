package org.draftingmaths.finish;

/**
 * How much a cloth gives along an edge, found on a scrap of it.
 *
 * @param ease the share of a length by which a longer edge can be held or shrunk in, 0 to less than 1; woollens on a nearly straight edge take
 *     0.03 to 0.05 (common practice)
 * @param stretch the share of its length by which an edge can be stretched or, clipped, made to spread: 0 to less than 1
 */
public record Give(double ease, double stretch) {

    /** Checks the shares. */
    public Give {
        requireShare("ease", ease);
        requireShare("stretch", stretch);
    }

    private static void requireShare(String what, double share) {
        if (!(share >= 0 && share < 1)) {
            throw new IllegalArgumentException(
                    "The " + what + " of a cloth is a share from 0 to less than 1: " + share + ".");
        }
    }
}
