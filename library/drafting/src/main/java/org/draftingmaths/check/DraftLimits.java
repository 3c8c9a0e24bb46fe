package org.draftingmaths.check;

/**
 * Within which limits a draft is held to be good, beside the lengths of its seams.
 *
 * @param darts the limits of its darts
 * @param square by how much in radians an edge may miss a right angle at a fold; a point that is meant, as in a V neckline, needs a wider limit
 * @param joint by how much in radians a line may turn where it crosses a joined seam
 * @param kink by how much in radians an edge may turn where a dart in it is folded shut
 */
public record DraftLimits(DartLimits darts, double square, double joint, double kink) {

    /**
     * Half a degree at a fold, one degree over a seam (common practice); that a folded dart may leave a corner of three degrees in its edge is our own
     * figure: over a dart 2 cm wide the edge is then half a millimetre off a smooth one.
     */
    public static final DraftLimits COMMON =
            new DraftLimits(DartLimits.COMMON, Math.toRadians(0.5), Math.toRadians(1), Math.toRadians(3));

    /** Checks that every limit is an angle of 0 or more. */
    public DraftLimits {
        require("square", square);
        require("joint", joint);
        require("kink", kink);
    }

    private static void require(String what, double limit) {
        if (!(limit >= 0)) {
            throw new IllegalArgumentException("The limit '" + what + "' is 0 rad or more: " + limit + " rad.");
        }
    }

    /**
     * The same with other limits for darts.
     *
     * @param other the limits
     * @return the limits
     */
    public DraftLimits with(DartLimits other) {
        return new DraftLimits(other, square, joint, kink);
    }
}
