package org.draftingmaths.piece;

import java.util.List;
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
 * @param shape the shape of its four legs, each from the widest place to a point
 */
public record InsideDart(
        String name, Vector2D oneTip, Vector2D otherTip, Vector2D oneSide, Vector2D otherSide, LegShape shape) {

    /** Checks that it has length and width, and that its sides are equal on either half and do not cross. */
    public InsideDart {
        Names.require(name, "A dart");
        if (!(oneTip.distance(otherTip) > Panels.TOUCH && oneSide.distance(otherSide) > Panels.TOUCH)) {
            throw new IllegalArgumentException("Dart '" + name + "' has no width or no length.");
        }
        if (Math.abs(oneTip.distance(oneSide) - oneTip.distance(otherSide)) > Panels.TOUCH
                || Math.abs(otherTip.distance(oneSide) - otherTip.distance(otherSide)) > Panels.TOUCH) {
            throw new IllegalArgumentException("The two sides of dart '" + name + "' differ from point to point.");
        }
        for (Vector2D tip : List.of(oneTip, otherTip)) {
            double clear = shape.clear(tip.distance(oneSide), Math.abs(DartEnd.angle(tip, oneSide, otherSide)) / 2);
            if (clear <= 1) {
                throw new IllegalArgumentException(
                        "The legs of dart '" + name + "' would cross: " + shape.crossing(clear) + ".");
            }
        }
    }

    /**
     * A double-pointed dart with straight legs.
     *
     * @param name the name, unique in its piece
     * @param oneTip one point
     * @param otherTip the other point
     * @param oneSide the widest place on one side
     * @param otherSide the widest place on the other side
     */
    public InsideDart(String name, Vector2D oneTip, Vector2D otherTip, Vector2D oneSide, Vector2D otherSide) {
        this(name, oneTip, otherTip, oneSide, otherSide, LegShape.STRAIGHT);
    }

    /**
     * The same dart with shaped legs.
     *
     * @param other the shape of each of its four legs, from the widest place to a point
     * @return the dart
     * @throws IllegalArgumentException when its legs would cross
     */
    public InsideDart shaped(LegShape other) {
        return new InsideDart(name, oneTip, otherTip, oneSide, otherSide, other);
    }

    /**
     * The stitch line, from one point round to it again.
     *
     * @return a closed curve
     */
    public CurvePath outline() {
        return side(oneSide, otherSide).then(side(otherSide, oneSide).reversed());
    }

    /**
     * The two stitch lines, each from the first point to the other; they are of one length.
     *
     * @return both, on the one side and on the other
     */
    public List<CurvePath> sides() {
        return List.of(side(oneSide, otherSide), side(otherSide, oneSide));
    }

    private CurvePath side(Vector2D widest, Vector2D opposite) {
        CurvePath one = shape.line(widest, oneTip, StitchLines.awayFrom(opposite, widest, oneTip));
        return one.reversed().then(shape.line(widest, otherTip, StitchLines.awayFrom(opposite, widest, otherTip)));
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
