package org.draftingmaths.block;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Cubic;
import org.draftingmaths.curve.CurvePath;

/**
 * The waist of a bodice, drawn on the closed dart and opened afterwards.
 *
 * <p>With a dart of angle {@code θ} closed, the straight waist of the open pattern turns down by {@code θ} at the dart. In its place stands
 * the parabola that leaves the centre line square, arrives square to the side seam and has its corner where the straight waist turned:
 * without inflection, below the corner, so that both legs become longer by one amount. It is shorter than the way over the corner, and
 * {@code θ} is the angle with which the closed waist has the length asked. Centre line and side seam keep their ends.
 *
 * @param point the dart's apex
 * @param side how far the side seam stands from the centre line at the waist, dart open
 * @param angle the dart's angle
 */
record ClosedWaist(Vector2D point, double side, double angle) {

    private static final int HALVINGS = 60;

    /**
     * The waist that is of the wanted length when its dart is folded.
     *
     * @param point the dart's apex
     * @param side how far the side seam stands from the centre line at the waist, dart open
     * @param length the length with the dart closed, less than {@code side}
     */
    static ClosedWaist of(Vector2D point, double side, double length) {
        double low = 0;
        double high = 2 * Math.atan((side - length) / 2 / point.getY());
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (new ClosedWaist(point, side, middle).closed().length() > length) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return new ClosedWaist(point, side, (low + high) / 2);
    }

    /** The whole waist with the dart closed on to its leg next to the centre line. */
    CurvePath closed() {
        Vector2D end = opening().inverse().apply(Vector2D.of(side, 0));
        return CurvePath.of(Cubic.quadratic(Vector2D.ZERO, corner(), end));
    }

    /** From the centre line to the dart. */
    CurvePath beforeDart() {
        return parts().get(0);
    }

    /** From the dart, open, to the side seam. */
    CurvePath afterDart() {
        return parts().get(1).transformed(opening());
    }

    private List<CurvePath> parts() {
        Vector2D beyond = point.lerp(corner(), 2);
        return closed().partedBy(CurvePath.polyline(point, beyond));
    }

    private Vector2D corner() {
        return Vector2D.of(point.getX() - point.getY() * Math.tan(angle / 2), 0);
    }

    private AffineTransformMatrix2D opening() {
        return AffineTransformMatrix2D.createRotation(point, angle);
    }
}
