package org.draftingmaths.finish;

/**
 * What a facing for neck and armhole in one is to be.
 *
 * @param neckline the name of the edge at the neck
 * @param armhole the name of the edge at the arm; it meets the neckline over one edge, the shoulder
 * @param atCentre how deep in mm the facing is at the other end of the neckline
 * @param atSide how deep in mm it is at the other end of the armhole
 * @param trim by how much in mm the shoulder is trimmed at each end, so that the facing cannot peep out: 2 to 3 (common practice)
 */
public record Combined(String neckline, String armhole, double atCentre, double atSide, double trim) {

    /** The usual trim of the shoulder, in mm (common practice). */
    public static final double TRIM = 2.5;

    /** The narrowest strap that can be turned through, in mm (common practice). */
    public static final double TURN_THROUGH = 25;

    /** Checks the figures. */
    public Combined {
        if (!(atCentre > 0 && atSide > 0 && Double.isFinite(atCentre) && Double.isFinite(atSide))) {
            throw new IllegalArgumentException(
                    "A facing is deeper than 0 mm: " + atCentre + " mm at the centre, " + atSide + " mm at the side.");
        }
        if (!(trim >= 0 && trim <= 5)) {
            throw new IllegalArgumentException("A shoulder is trimmed by 0 to 5 mm at each end: " + trim + " mm.");
        }
    }
}
