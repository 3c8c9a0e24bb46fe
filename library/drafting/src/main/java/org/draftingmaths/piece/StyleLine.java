package org.draftingmaths.piece;

import java.util.List;
import java.util.Optional;
import org.draftingmaths.curve.CurvePath;

/**
 * A line along which a piece is to be cut in two: a yoke, a panel seam, any seam for the style.
 *
 * <p>It is drawn as on the table, with the darts that it crosses folded shut: {@code along} lies where the part at {@code from}
 * lies, and whatever comes after a dart is thought of as turned back over the fold.
 *
 * @param name the name of the edge that it becomes on both parts
 * @param from where it starts, on an edge
 * @param to where it ends, on an edge
 * @param along the curve, with the darts folded; straight when empty
 * @param folded the darts it crosses, in order from its start
 * @param marks where match points are set on both parts, in mm along the line from its start
 */
public record StyleLine(
        String name, Spot from, Spot to, Optional<CurvePath> along, List<String> folded, List<Double> marks) {

    /** Checks the name, and that the line starts and ends on edges. */
    public StyleLine {
        Names.require(name, "A style line");
        folded = List.copyOf(folded);
        marks = List.copyOf(marks);
        if (!(from instanceof Spot.On && to instanceof Spot.On)) {
            throw new IllegalArgumentException("Style line '" + name + "' must start and end on an edge.");
        }
    }

    /**
     * A straight line.
     *
     * @param name the name of the edge that it becomes
     * @param from where it starts
     * @param to where it ends
     * @return the line
     */
    public static StyleLine straight(String name, Spot from, Spot to) {
        return new StyleLine(name, from, to, Optional.empty(), List.of(), List.of());
    }

    /**
     * A line of any shape.
     *
     * @param name the name of the edge that it becomes
     * @param from where it starts
     * @param to where it ends
     * @param along the curve from the one to the other, with darts folded
     * @return the line
     */
    public static StyleLine shaped(String name, Spot from, Spot to, CurvePath along) {
        return new StyleLine(name, from, to, Optional.of(along), List.of(), List.of());
    }

    /**
     * The same line across darts.
     *
     * @param darts the names of the darts it crosses, in order from its start
     * @return the line
     */
    public StyleLine folding(String... darts) {
        return new StyleLine(name, from, to, along, List.of(darts), marks);
    }

    /**
     * The same line with match points.
     *
     * @param arcs their places in mm along the line from its start
     * @return the line
     */
    public StyleLine marked(Double... arcs) {
        return new StyleLine(name, from, to, along, folded, List.of(arcs));
    }

    String words() {
        return "Cut along '" + name + "' from " + from.words() + " to " + to.words();
    }
}
