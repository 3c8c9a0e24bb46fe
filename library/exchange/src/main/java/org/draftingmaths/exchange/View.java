package org.draftingmaths.exchange;

import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * How marks come to a page: {@code paper = scale * mark + shift}, in mm from the page's lower left corner.
 *
 * @param scale how large a millimetre of the marks is on paper
 * @param shift where the marks' origin lies on the page
 * @param lines by what factor lines are drawn thinner than in their style, never thinner than the thinnest
 */
record View(double scale, Vector2D shift, double lines) {

    private static final double POINTS = 72 / 25.4;

    /** Marks that are given in millimetres of paper. */
    static final View PAPER = new View(1, Vector2D.ZERO, 1);

    /** A sheet of a scale with its lower left corner at a place of the page. */
    static View of(Sheet sheet, double x, double y) {
        return new View(1 / sheet.pen().factor(), Vector2D.of(x, y), 1);
    }

    static float points(double mm) {
        return (float) (mm * POINTS);
    }

    float x(Vector2D mark) {
        return points(mark.getX() * scale + shift.getX());
    }

    float y(Vector2D mark) {
        return points(mark.getY() * scale + shift.getY());
    }

    float length(double mm) {
        return points(mm * scale);
    }

    /** The width of a line of a kind, in points. */
    float width(LineKind kind) {
        return points(Math.max(LineKind.LEAST, kind.width() * lines));
    }
}
