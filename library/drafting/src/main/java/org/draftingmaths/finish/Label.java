package org.draftingmaths.finish;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A text with the box that is kept for it, inside the stitch line.
 *
 * <p>The box is as wide as its longest line at {@link #LETTER} of the height per letter, which is more than usual sans-serif
 * letters need, and {@link #SPACING} of the height high for every line. A drawing whose letters are wider has to condense
 * them.
 *
 * @param kind what it says
 * @param lines the lines of text, top first
 * @param centre the middle of the box
 * @param along the unit direction in which the lines are read
 * @param height the height of the letters in mm
 */
public record Label(Kind kind, List<String> lines, Vector2D centre, Vector2D along, double height) {

    /** The width of a letter as a share of its height. */
    public static final double LETTER = 0.6;

    /** The distance from line to line as a multiple of the letters' height. */
    public static final double SPACING = 1.4;

    /** What a label says. */
    public enum Kind {
        /** What the piece is and how it is cut. */
        TITLE,
        /** That an edge is to be laid on the fold. */
        FOLD,
        /** The name of a level line. */
        LEVEL
    }

    /** Copies the lines and checks that there is something to be read. */
    public Label {
        lines = List.copyOf(lines);
        if (lines.isEmpty() || !(height > 0 && Double.isFinite(height))) {
            throw new IllegalArgumentException(
                    "A label has one line or more, in letters of more than 0 mm: " + lines + ", " + height + " mm.");
        }
    }

    /**
     * The width of the box.
     *
     * @return mm
     */
    public double boxWidth() {
        return width(lines, height);
    }

    /**
     * The height of the box.
     *
     * @return mm
     */
    public double boxHeight() {
        return SPACING * height * lines.size();
    }

    static double width(List<String> lines, double height) {
        return LETTER * height * lines.stream().mapToInt(String::length).max().orElse(0);
    }

    /**
     * The corners of the box, anticlockwise from where reading begins at the bottom line.
     *
     * @return four points
     */
    public List<Vector2D> corners() {
        Vector2D right = along.multiply(boxWidth() / 2);
        Vector2D up = Vector2D.of(-along.getY(), along.getX()).multiply(boxHeight() / 2);
        return List.of(
                centre.subtract(right).subtract(up),
                centre.add(right).subtract(up),
                centre.add(right).add(up),
                centre.subtract(right).add(up));
    }
}
