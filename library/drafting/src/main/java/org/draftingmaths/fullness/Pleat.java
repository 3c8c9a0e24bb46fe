package org.draftingmaths.fullness;

import org.draftingmaths.piece.Slash;
import org.draftingmaths.piece.Use;

/**
 * A pleat or tuck to be folded in: where the cloth is slashed for it, and how wide its underlay is at either end.
 *
 * @param slash where it goes, from the edge in which it is held
 * @param underlay the width in mm from a fold that is seen to the one beneath, at the edge in which it is held
 * @param farUnderlay the same at the other end; it differs in a shaped pleat
 * @param under where the underlay lies
 * @param depth how far in mm it is stitched down; 0 when it is held in the seam alone
 */
public record Pleat(Slash slash, double underlay, double farUnderlay, Use.Under under, double depth) {

    /** Checks the widths. */
    public Pleat {
        if (!(underlay > 0 && farUnderlay > 0 && Double.isFinite(underlay + farUnderlay))) {
            throw new IllegalArgumentException(
                    "An underlay is wider than 0 mm at both ends: " + underlay + " and " + farUnderlay + " mm.");
        }
    }

    /**
     * A pleat as wide at either end.
     *
     * @param slash where it goes
     * @param underlay the width of its underlay in mm
     * @param under where the underlay lies
     * @return the pleat
     */
    public static Pleat even(Slash slash, double underlay, Use.Under under) {
        return new Pleat(slash, underlay, underlay, under, 0);
    }

    /** How many layers of underlay there are. */
    int layers() {
        return under == Use.Under.BOTH ? 4 : 2;
    }
}
