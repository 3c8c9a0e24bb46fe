package org.draftingmaths.exchange;

import java.util.ArrayList;
import java.util.List;

/**
 * A square of ten centimetres and one of four inches, to measure a print by on both axes: a printer may stretch one and not the other. They
 * are this large on paper whatever the scale of the pattern.
 */
final class TestSquares {

    static final double CM = 100;
    static final double INCH = 4 * 25.4;

    /** Between the two. */
    private static final double GAP = 10;

    static final double WIDTH = CM + GAP + INCH;
    static final double HEIGHT = INCH;

    static final double STACKED_WIDTH = INCH;
    static final double STACKED_HEIGHT = CM + GAP + INCH;

    /** What to do with them. */
    static final String INSTRUCTION =
            "Measure both squares, across and up, before you cut: one is 10 cm, the other 4 in."
                    + " If a side is off by more than 0.5 mm, print again at 100 % (actual size), without fitting to the page.";

    private TestSquares() {}

    static List<Mark> sideBySide(double x, double y, Pen pen) {
        return both(x, y, x + pen.mm(CM + GAP), y, pen);
    }

    static List<Mark> stacked(double x, double y, Pen pen) {
        return both(x, y + pen.mm(INCH + GAP), x, y, pen);
    }

    private static List<Mark> both(double cmX, double cmY, double inchX, double inchY, Pen pen) {
        List<Mark> marks = new ArrayList<>(square(cmX, cmY, pen.mm(CM), "10 cm", pen));
        marks.addAll(square(inchX, inchY, pen.mm(INCH), "4 in", pen));
        return marks;
    }

    private static List<Mark> square(double x, double y, double side, String words, Pen pen) {
        double middle = x + side / 2;
        double size = pen.label();
        return List.of(
                Mark.Stroke.rectangle(LineKind.RULE, x, y, side, side),
                Mark.Words.level(
                        TextKind.CAPTION,
                        pen.size(TextKind.CAPTION),
                        Mark.Anchor.MIDDLE,
                        middle,
                        y + side / 2,
                        words + " × " + words),
                Mark.Words.level(
                        TextKind.PLAIN,
                        size,
                        Mark.Anchor.MIDDLE,
                        middle,
                        y + side / 2 - Wording.LINES * size,
                        "measure across and up"));
    }
}
