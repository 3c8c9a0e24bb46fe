package org.draftingmaths.finish;

import java.util.ArrayList;
import java.util.List;
import org.draftingmaths.unit.Asked;

/**
 * Strips cut on the true bias: where to mark them, what a square yields, how to join them.
 *
 * <p>All widths are measured square across the strip, never along the selvage. All strips of one length are cut on the same bias: the two biases
 * of a cloth stretch differently.
 */
public final class BiasStrips {

    private BiasStrips() {}

    /**
     * The distance along the selvage from one strip to the next: {@code w sqrt 2}. The old rule of a third more than the width cuts 5.7 % too narrow.
     *
     * @param width {@code w}: the width of a strip in mm
     * @return the distance in mm
     */
    public static double alongSelvage(double width) {
        return requireWidth(width) * Math.sqrt(2);
    }

    /**
     * The width to be cut for a double binding: four times the finished width, and what the turn round the edge takes.
     *
     * @param finished the finished width in mm
     * @param turn what the turn takes, in mm: about 3 (common practice)
     * @return the width in mm
     */
    public static double doubleBinding(double finished, double turn) {
        requireNotNegative("turn", turn);
        return 4 * requireWidth(finished) + turn;
    }

    /**
     * The most that a piece of cloth can yield: {@code area / width}. No layout passes it.
     *
     * @param area the area in square mm
     * @param width the width of the strip in mm
     * @return the length in mm
     */
    public static double most(double area, double width) {
        requireNotNegative("area", area);
        return area / requireWidth(width);
    }

    /**
     * The side of the square that a length of strip needs at the least: {@code sqrt(length x width)}.
     *
     * @param length the length of strip in mm
     * @param width its width in mm
     * @return the side in mm
     */
    public static double square(double length, double width) {
        requireNotNegative("length", length);
        return Math.sqrt(length * requireWidth(width));
    }

    /**
     * Strips cut from a square.
     *
     * @param lengths each strip's length along its middle, in mm, from the diagonal outwards, the two halves in turn
     * @param joined the length of all of them joined, in mm
     * @param joins how many joins
     */
    public record Yield(List<Double> lengths, double joined, int joins) {
        /** Copies the list. */
        public Yield {
            lengths = List.copyOf(lengths);
        }
    }

    /**
     * The strips that a square yields when it is cut along its diagonal and then in strips from there outwards. With {@code S} the side and {@code w}
     * the width, the strip number {@code k} of either half is {@code S sqrt 2 - (2k + 1) w} long along its middle. A join with seam allowance
     * {@code a} takes {@code 2 a sqrt 2}, because it runs at 45° to the strip.
     *
     * @param side the side of the square in mm
     * @param width the width of the strips in mm
     * @param allowance the seam allowance of the joins in mm
     * @return the strips
     * @throws IllegalArgumentException when the square is too small for one strip
     */
    public static Yield fromSquare(double side, double width, double allowance) {
        requireNotNegative("seam allowance", allowance);
        double diagonal = requireWidth(side) * Math.sqrt(2);
        List<Double> lengths = new ArrayList<>();
        for (int k = 0; 2 * (k + 1) * requireWidth(width) <= diagonal; k++) {
            lengths.add(diagonal - (2 * k + 1) * width);
            lengths.add(diagonal - (2 * k + 1) * width);
        }
        if (lengths.isEmpty()) {
            throw new IllegalArgumentException("A square of " + side + " mm yields no strip of " + width
                    + " mm; allowed are widths up to " + diagonal / 2 + " mm.");
        }
        int joins = lengths.size() - 1;
        double whole = lengths.stream().mapToDouble(Double::doubleValue).sum();
        return new Yield(lengths, whole - joins * joinTakes(allowance), joins);
    }

    /**
     * The length of strip that a join takes: {@code 2 a sqrt 2}.
     *
     * @param allowance {@code a}: the seam allowance in mm, measured square to the join
     * @return the length in mm
     */
    public static double joinTakes(double allowance) {
        requireNotNegative("seam allowance", allowance);
        return 2 * allowance * Math.sqrt(2);
    }

    /**
     * How far the two ends are shifted along the join, so that the <em>stitch lines</em> begin and end where the edges of the strips cross:
     * {@code 2 a}. Laid cut edge to cut edge instead, the joined strip has a step of {@code a sqrt 2} in either edge.
     *
     * @param allowance {@code a}: the seam allowance in mm
     * @return the shift in mm along the cut ends
     */
    public static double endsShifted(double allowance) {
        requireNotNegative("seam allowance", allowance);
        return 2 * allowance;
    }

    /**
     * The width and the length of cloth that a rectangle takes when it lies at 45°: {@code (b + h) / sqrt 2}, both ways alike.
     *
     * @param width {@code b} in mm
     * @param height {@code h} in mm
     * @return the width of cloth in mm
     */
    public static double clothFor(double width, double height) {
        return (requireWidth(width) + requireWidth(height)) / Math.sqrt(2);
    }

    private static double requireWidth(double width) {
        Asked.length("A width", width);
        return width;
    }

    private static void requireNotNegative(String what, double figure) {
        if (!(figure >= 0 && Double.isFinite(figure))) {
            throw new IllegalArgumentException("A " + what + " is 0 or more: " + figure + ".");
        }
    }
}
