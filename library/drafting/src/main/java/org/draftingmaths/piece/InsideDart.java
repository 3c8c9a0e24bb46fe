package org.draftingmaths.piece;

import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;

/**
 * A double-pointed dart inside a piece: two triangles on one width. It is a mark on the cloth, not an opening: no part of the
 * sheet can turn about its points, because its mouth is nowhere on the edge. Cut the piece through its widest place and each
 * half is a dart that can be moved.
 *
 * @param name the name, unique in its piece
 * @param oneTip one point
 * @param otherTip the other point
 * @param oneSide the widest place on one side
 * @param otherSide the widest place on the other side
 */
public record InsideDart(String name, Vector2D oneTip, Vector2D otherTip, Vector2D oneSide, Vector2D otherSide) {

    /** Checks that it has length and width, and that its sides are equal on either half. */
    public InsideDart {
        Names.require(name, "A dart");
        if (!(oneTip.distance(otherTip) > Panels.TOUCH && oneSide.distance(otherSide) > Panels.TOUCH)) {
            throw new IllegalArgumentException("Dart '" + name + "' has no width or no length.");
        }
        if (Math.abs(oneTip.distance(oneSide) - oneTip.distance(otherSide)) > Panels.TOUCH
                || Math.abs(otherTip.distance(oneSide) - otherTip.distance(otherSide)) > Panels.TOUCH) {
            throw new IllegalArgumentException("The two sides of dart '" + name + "' differ from point to point.");
        }
    }

    /**
     * The stitch line, from one point round to it again.
     *
     * @return a closed curve
     */
    public CurvePath outline() {
        return CurvePath.polyline(oneTip, oneSide, otherTip, otherSide, oneTip);
    }

    /**
     * The width at its widest place.
     *
     * @return the intake in mm
     */
    public double intake() {
        return oneSide.distance(otherSide);
    }
}
