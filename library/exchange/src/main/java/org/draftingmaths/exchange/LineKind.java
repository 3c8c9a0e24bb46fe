package org.draftingmaths.exchange;

import java.util.List;

/**
 * The kinds of line, each with its colour and, on paper at full size, its width and dashes in millimetres. No line is thinner
 * than {@link #LEAST}, and each kind can be told from the others in black and white by its dashes, its width or its ends.
 */
enum LineKind {
    /** A piece's outline where it carries no allowance. */
    NET("net", Ink.DARK, 0.6),
    /** The line to cut along. */
    CUT("cut", Ink.DARK, 0.7),
    /** The line to sew along, within a cut line. */
    STITCH("stitch", Ink.DARK, 0.4),
    /** The fold of the cloth. */
    FOLD("fold", Ink.DARK, 0.6),
    /** The end of a dart, shaped for the way it is pressed. */
    END("end", Ink.BROWN, 0.6),
    /** A leg of a dart or of a slash. */
    LEG("leg", Ink.BROWN, 0.4),
    /** The line that a dart is folded on. */
    BISECTOR("bisector", Ink.BROWN, 0.3),
    /** Where to drill or to mark with a thread. */
    DRILL("drill", Ink.BROWN, 0.4),
    /** A level of the body. */
    LEVEL("level", Ink.GREEN, 0.35),
    /** The direction of the warp. */
    GRAIN("grain", Ink.DARK, 0.35),
    /** Where two edges meet when they are sewn. */
    NOTCH("notch", Ink.DARK, 0.6),
    /** What the piece was at an earlier step. */
    EARLIER("earlier", Ink.GREY, 0.4),
    /** How a draft was constructed. */
    CONSTRUCTION("construction", Ink.BLUE, 0.3),
    /** The test squares, and what joins the tiles. */
    RULE("rule", Ink.DARK, 0.3),
    /** A line that only divides the page. */
    DIVISION("division", Ink.GREY, 0.3);

    /** The width of the thinnest line on paper, in mm. */
    static final double LEAST = 0.3;

    private final String name;
    private final Ink ink;
    private final double width;

    LineKind(String name, Ink ink, double width) {
        this.name = name;
        this.ink = ink;
        this.width = width;
    }

    String className() {
        return name;
    }

    String colour() {
        return ink.colour();
    }

    /** The width on paper at full size, in mm. */
    double width() {
        return width;
    }

    /** Line, gap, line, gap and so on, in mm; empty for an unbroken line. */
    List<Double> dashes() {
        return switch (this) {
            case STITCH -> List.of(4.0, 2.0);
            case FOLD -> List.of(8.0, 2.0, 1.0, 2.0);
            case BISECTOR -> List.of(3.0, 2.0);
            case LEVEL -> List.of(5.0, 2.0);
            case EARLIER -> List.of(2.0, 1.5);
            case NET, CUT, END, LEG, DRILL, GRAIN, NOTCH, CONSTRUCTION, RULE, DIVISION -> List.of();
        };
    }
}
