package org.draftingmaths.fullness;

import org.draftingmaths.unit.Asked;

/**
 * A flounce cut from rings: with {@code s} the seam it is sewn to, {@code h} its depth and {@code b} its hem,
 *
 * <pre>
 *   radius         r = s h / (b - s)
 *   ratio          1 + h / r = b / s
 *   turn, in all   s / r = (b - s) / h
 * </pre>
 *
 * <p>The ratio fixes the radius, however long the seam is: a longer seam needs more rings, not larger ones. The rings are alike, and
 * each leaves some of its inner circle free, so that there is cloth for the allowances at its two ends.
 *
 * @param seam the seam in mm, along
 * @param depth the depth in mm
 * @param hem the hem in mm, along, longer than the seam
 * @param free how much of the inner circle each ring leaves free at least, in mm, more than 0
 */
public record Flounce(double seam, double depth, double hem, double free) {

    /** Two allowances of 10 mm (common practice). */
    public static final double FREE = 20;

    /** Checks the figures. */
    public Flounce {
        Asked.length("The seam of a flounce", seam);
        Asked.length("The depth of a flounce", depth);
        Asked.longer("The hem of a flounce", hem, "its seam", seam);
        Asked.length("What a ring leaves free", free);
        double radius = seam * depth / (hem - seam);
        if (!(2 * Math.PI * radius > free)) {
            throw new IllegalArgumentException("A flounce of this hem has an inner circle of " + 2 * Math.PI * radius
                    + " mm, and " + free + " mm of it are to stay free; allowed is a hem less than "
                    + (seam + 2 * Math.PI * seam * depth / free) + " mm.");
        }
    }

    /**
     * A flounce by its hem.
     *
     * @param seam the seam in mm
     * @param depth the depth in mm
     * @param hem the hem in mm, longer than the seam
     * @return the flounce
     */
    public static Flounce byHem(double seam, double depth, double hem) {
        return new Flounce(seam, depth, hem, FREE);
    }

    /**
     * A flounce by its ratio of hem to seam.
     *
     * @param seam the seam in mm
     * @param depth the depth in mm
     * @param ratio the ratio, more than 1
     * @return the flounce
     */
    public static Flounce byRatio(double seam, double depth, double ratio) {
        Asked.ratio("The ratio of a flounce", ratio);
        return byHem(seam, depth, seam * ratio);
    }

    /**
     * The radius of the inner edge.
     *
     * @return the radius in mm, of every ring
     */
    public double radius() {
        return seam * depth / (hem - seam);
    }

    /**
     * The fullness ratio.
     *
     * @return hem to seam
     */
    public double ratio() {
        return hem / seam;
    }

    /**
     * The angle of all rings together.
     *
     * @return the angle in radians; it may be many turns
     */
    public double turn() {
        return (hem - seam) / depth;
    }

    /**
     * The fewest rings of which each leaves that much of its inner circle free: {@code s / n <= 2 pi r - free}.
     *
     * @return how many rings
     */
    public int rings() {
        return (int) Math.max(1, Math.ceil(seam / (2 * Math.PI * radius() - free)));
    }

    /**
     * One of the rings.
     *
     * @return the ring sector
     */
    public RingSector ring() {
        return new RingSector(radius(), depth, turn() / rings());
    }
}
