package org.draftingmaths.piece;

import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;

/**
 * How a folded mouth is folded: along straight lines from the ends of its two legs inwards, which are brought on to one another.
 *
 * @param before the end of the before leg
 * @param beforeWay the unit direction of its line, inwards
 * @param after the end of the after leg
 * @param afterWay the unit direction of its line, inwards
 */
record Folding(Vector2D before, Vector2D beforeWay, Vector2D after, Vector2D afterWay) {

    static Folding at(Piece piece, Opening opening, boolean atMouth) {
        CurvePath one = inwards(piece, opening, Leg.BEFORE, atMouth);
        CurvePath other = inwards(piece, opening, Leg.AFTER, atMouth);
        Vector2D oneWay = one.start().directionTo(one.end());
        Vector2D otherWay = other.start().directionTo(other.end());
        Mouth mouth = atMouth ? opening.mouth() : opening.farMouth().orElse(opening.mouth());
        if (mouth.use() instanceof Use.Folded folded && folded.lines() == Use.Stitched.PARALLEL) {
            Vector2D middle = oneWay.add(otherWay).normalize();
            return new Folding(one.start(), middle, other.start(), middle);
        }
        return new Folding(one.start(), oneWay, other.start(), otherWay);
    }

    private static CurvePath inwards(Piece piece, Opening opening, Leg leg, boolean atMouth) {
        CurvePath placed = Measured.leg(piece, opening.name(), leg);
        return atMouth ? placed : placed.reversed();
    }

    /** The motion that brings the cloth on the other side of the mouth up to the given leg. */
    AffineTransformMatrix2D closing(Leg to) {
        return to == Leg.BEFORE ? frame(after, afterWay, before, beforeWay) : frame(before, beforeWay, after, afterWay);
    }

    /** The direction of the line half way between the two. */
    Vector2D middleWay() {
        return beforeWay.add(afterWay).normalize();
    }

    /**
     * The point on the middle line as far from where the two lines meet as their ends: with {@code w} the width and {@code a} the angle
     * between them, it lies {@code w/2 tan(a/4)} outside the middle of the mouth.
     */
    Vector2D middle() {
        Vector2D chord = before.vectorTo(after);
        double half = Math.asin(Math.max(-1, Math.min(1, beforeWay.dot(chord.normalize()))));
        double outside = chord.norm() / 2 * Math.tan(half / 2);
        return before.lerp(after, 0.5).subtract(middleWay().multiply(outside));
    }

    /** Whether the two lines lie evenly about the middle one, so that a fold there brings the one on to the other. */
    boolean even() {
        Vector2D chord = before.vectorTo(after);
        return Math.abs(middleWay().dot(chord)) <= Panels.TOUCH;
    }

    /** The proper motion that carries a point with a direction on to another. */
    static AffineTransformMatrix2D frame(Vector2D from, Vector2D fromWay, Vector2D to, Vector2D toWay) {
        double angle = Math.atan2(fromWay.signedArea(toWay), fromWay.dot(toWay));
        return AffineTransformMatrix2D.createRotation(from, angle)
                .premultiply(AffineTransformMatrix2D.createTranslation(from.vectorTo(to)));
    }
}
