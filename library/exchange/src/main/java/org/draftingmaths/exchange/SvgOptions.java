package org.draftingmaths.exchange;

import java.util.OptionalDouble;

/**
 * How outlines are taken from an SVG file.
 *
 * @param unit how many mm one user unit is; empty to take what the file states
 * @param corner the angle in radians, more than which two curves must turn where they meet to make a corner
 * @param gap how far in mm ends may lie apart and still be joined
 * @param arcs how far in mm the cubics that stand for an elliptic arc may stray from it
 */
public record SvgOptions(OptionalDouble unit, double corner, double gap, double arcs) {

    /** The scale that the file states; corners from 30 degrees; gaps closed up to 0.1 mm; arcs to 1e-6 mm. */
    public static final SvgOptions DEFAULT = new SvgOptions(OptionalDouble.empty(), Math.toRadians(30), 0.1, 1e-6);

    /** Checks the figures. */
    public SvgOptions {
        unit.ifPresent(mm -> require("A user unit", mm, mm > 0 && mm <= 1e6, "more than 0, at most 1e6 mm"));
        require("A corner", corner, corner > 0 && corner < Math.PI, "between 0 and pi (radians)");
        require("A gap to be closed", gap, gap >= 0 && gap <= 100, "0 to 100 mm");
        require("The bound of arcs", arcs, arcs >= 1e-9 && arcs <= 1, "1e-9 to 1 mm");
    }

    private static void require(String what, double value, boolean allowed, String range) {
        if (!allowed) {
            throw new IllegalArgumentException(what + " is " + value + "; allowed is " + range + ".");
        }
    }

    /**
     * The same with the scale stated.
     *
     * @param mm how many mm one user unit is
     * @return the options
     */
    public SvgOptions withUnit(double mm) {
        return new SvgOptions(OptionalDouble.of(mm), corner, gap, arcs);
    }

    /**
     * The same with another corner angle.
     *
     * @param radians the angle, more than which makes a corner
     * @return the options
     */
    public SvgOptions withCorner(double radians) {
        return new SvgOptions(unit, radians, gap, arcs);
    }

    /**
     * The same with other gaps closed.
     *
     * @param mm how far ends may lie apart and still be joined
     * @return the options
     */
    public SvgOptions withGap(double mm) {
        return new SvgOptions(unit, corner, mm, arcs);
    }
}
