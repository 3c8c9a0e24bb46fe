package org.draftingmaths.finish;

import java.util.Collections;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.draftingmaths.unit.Length;

/**
 * How places are marked and texts written.
 *
 * <p>Starting values, all common practice: snips 3 mm deep but never more than half the allowance, the two of a double notch
 * 10 mm apart, drill points 10 mm (6 to 13) before the sewn point, letters 5 mm high on the title and 3.5 mm elsewhere.
 * Single notches mark a front, double ones a back (canvas.santarosa.edu, 7.2 sleeve fundamentals); say which edges have them
 * with {@link #doubled}.
 *
 * <pre>{@code
 * Marking back = Marking.DEFAULT.doubled("armhole").drill(Length.mm(12));
 * }</pre>
 *
 * @param depth how deep notches are cut in mm; left out, 3 mm or half the allowance, whichever is less
 * @param spacing the distance of the two snips of a double notch, in mm along the stitch line
 * @param doubled the edges whose notches are double
 * @param drill how far before the sewn point darts are drilled, in mm: 6 to 13
 * @param oneWay whether the cloth has a nap, so that the grain has an arrow at its head only
 * @param titleHeight the height of the title's letters in mm
 * @param noteHeight the height of other letters in mm
 */
public record Marking(
        OptionalDouble depth,
        double spacing,
        Set<String> doubled,
        double drill,
        boolean oneWay,
        double titleHeight,
        double noteHeight) {

    /** How deep a notch is cut when nothing is said, where the allowance is wide enough: 3 mm. */
    public static final double DEPTH = 3;

    /** The starting values. */
    public static final Marking DEFAULT = new Marking(OptionalDouble.empty(), 10, Set.of(), 10, false, 5, 3.5);

    /** Checks the figures and copies the set. */
    public Marking {
        if (depth.isPresent()) {
            require("The depth of a notch", depth.getAsDouble(), 0, Double.MAX_VALUE);
        }
        require("The spacing of a double notch", spacing, 1, 50);
        require("The distance of a drill point from the sewn point", drill, 6, 13);
        require("The height of the title's letters", titleHeight, 1, 100);
        require("The height of other letters", noteHeight, 1, 100);
        doubled = Collections.unmodifiableSet(new TreeSet<>(doubled));
    }

    private static void require(String what, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            String range = most == Double.MAX_VALUE ? least + " mm or more" : least + " to " + most + " mm";
            throw new IllegalArgumentException(what + " is " + range + ": " + value + " mm.");
        }
    }

    /**
     * Notches of another depth.
     *
     * @param other the depth; where it is more than half an allowance, drawing the pattern is refused
     * @return the marking
     */
    public Marking depth(Length other) {
        return new Marking(OptionalDouble.of(other.mm()), spacing, doubled, drill, oneWay, titleHeight, noteHeight);
    }

    /**
     * Double notches on one edge more.
     *
     * @param edge the name of the edge
     * @return the marking
     */
    public Marking doubled(String edge) {
        Set<String> edges = new TreeSet<>(doubled);
        edges.add(edge);
        return new Marking(depth, spacing, edges, drill, oneWay, titleHeight, noteHeight);
    }

    /**
     * Drill points at another distance.
     *
     * @param other the distance before the sewn point, 6 to 13 mm
     * @return the marking
     */
    public Marking drill(Length other) {
        return new Marking(depth, spacing, doubled, other.mm(), oneWay, titleHeight, noteHeight);
    }

    /**
     * For cloth with a nap.
     *
     * @return the marking with an arrow at the grain's head only
     */
    public Marking napped() {
        return new Marking(depth, spacing, doubled, drill, true, titleHeight, noteHeight);
    }

    /**
     * Letters of another height.
     *
     * @param title the height of the title's letters
     * @param note the height of other letters
     * @return the marking
     */
    public Marking letters(Length title, Length note) {
        return new Marking(depth, spacing, doubled, drill, oneWay, title.mm(), note.mm());
    }
}
