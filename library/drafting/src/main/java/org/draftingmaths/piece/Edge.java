package org.draftingmaths.piece;

import org.draftingmaths.curve.CurvePath;

/**
 * A named edge on the stitch line. Its base is the edge as it lies with its openings closed; its direction is the base's own
 * and does not change when the piece is cut, turned or mirrored.
 *
 * @param name the name, unique in its piece
 * @param role what becomes of it
 * @param allowance the width in mm that will be added outside it, none on a fold
 * @param base its curve, all openings out; only a reported redraw changes it
 */
public record Edge(String name, Role role, double allowance, CurvePath base) {

    /** Checks the name and the allowance. */
    public Edge {
        Names.require(name, "An edge");
        if (!(allowance >= 0 && Double.isFinite(allowance))) {
            throw new IllegalArgumentException(
                    "Allowance of edge '" + name + "' must be 0 mm or more: " + allowance + " mm.");
        }
        if (role == Role.FOLD && allowance > 0) {
            throw new IllegalArgumentException(
                    "Edge '" + name + "' is a fold and carries no allowance: " + allowance + " mm.");
        }
    }

    /**
     * The length of the base.
     *
     * @return the length in mm, to 1e-9 mm
     */
    public double length() {
        return base.length();
    }
}
