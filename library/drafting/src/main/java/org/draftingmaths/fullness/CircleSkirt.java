package org.draftingmaths.fullness;

import org.draftingmaths.unit.Asked;

/**
 * A skirt cut from part of a circle: with {@code W} the waist, {@code t} the stretch of its edge, {@code k} the part of a circle
 * and {@code l} the length,
 *
 * <pre>
 *   radius to the stitch line   r = W / ((1 + t) 2 pi k)
 *   hem                         2 pi k (r + l)
 *   error of the waist          2 pi k e, when the radius is e wrong
 * </pre>
 *
 * <p>An edge cut round runs over the bias and grows; it is cut shorter by what a tested strip of the same cloth grew.
 *
 * @param waist the waist seam in mm, sewn
 * @param length from waist to hem in mm
 * @param share the part of a circle: 1 for a full circle, 0.5 for half, more than 1 for more; up to 8
 * @param stretch by what share of its length the cut waist edge was found to grow; 0 when it was not tested, less than 0.5
 */
public record CircleSkirt(double waist, double length, double share, double stretch) {

    /** More than this many circles is no skirt but a mistake in units. */
    static final double MOST_SHARE = 8;

    private static final double MOST_STRETCH = 0.5;

    /** Checks the figures. */
    public CircleSkirt {
        Asked.length("The waist of a circle skirt", waist);
        Asked.length("The length of a circle skirt", length);
        requireShare(share);
        if (!(stretch >= 0 && stretch < MOST_STRETCH)) {
            throw new IllegalArgumentException(
                    "The stretch of a waist edge is a share of its length from 0 to less than 0.5: " + stretch + ".");
        }
    }

    static void requireShare(double share) {
        if (!(share > 0 && share <= MOST_SHARE)) {
            throw new IllegalArgumentException(
                    "A circle skirt is cut from more than 0 and at most 8 circles: " + share + ".");
        }
    }

    /**
     * A skirt whose waist edge is not expected to grow.
     *
     * @param waist the waist seam in mm
     * @param length from waist to hem in mm
     * @param share the part of a circle
     * @return the skirt
     */
    public static CircleSkirt of(double waist, double length, double share) {
        return new CircleSkirt(waist, length, share, 0);
    }

    /**
     * The angle of the whole skirt.
     *
     * @return {@code 2 pi k}, in radians
     */
    public double angle() {
        return 2 * Math.PI * share;
    }

    /**
     * The waist as it is cut.
     *
     * @return the length in mm of the inner arc, before it grows
     */
    public double cutWaist() {
        return waist / (1 + stretch);
    }

    /**
     * The radius to the stitch line. The cutting line lies an allowance nearer the centre; allowances are never taken out of
     * the arc.
     *
     * @return the radius in mm
     */
    public double radius() {
        return cutWaist() / angle();
    }

    /**
     * The hem.
     *
     * @return its length in mm, along
     */
    public double sweep() {
        return angle() * (radius() + length);
    }

    /**
     * What an error of the radius does to the waist: it is multiplied by the angle.
     *
     * @param error how wrong the radius is, in mm
     * @return how wrong the waist comes out, in mm
     */
    public double waistError(double error) {
        return angle() * error;
    }
}
