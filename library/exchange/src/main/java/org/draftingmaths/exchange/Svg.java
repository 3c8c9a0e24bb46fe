package org.draftingmaths.exchange;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Bounds2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.unit.Length;
import org.draftingmaths.unit.Steps;

/**
 * True-scale pictures of pieces: one user unit is one millimetre.
 *
 * <pre>{@code
 * Files.writeString(Path.of("front.svg"), Svg.sheet(Figure.of("Front", front)));
 * }</pre>
 */
public final class Svg {

    /** The width that a piece gets on a screen, in pixels. */
    private static final double ON_SCREEN = 400;

    /** The height of letters on a screen, in pixels. */
    private static final double LETTERS = 11.5;

    private Svg() {}

    /**
     * A sheet with pieces side by side, at full size, over test squares in centimetres and inches to measure a print by.
     *
     * @param figures the pieces, left to right
     * @return the SVG document
     */
    public static String sheet(Figure... figures) {
        return sheet(List.of(figures));
    }

    /**
     * A sheet with pieces side by side, at full size, over test squares in centimetres and inches to measure a print by.
     *
     * @param figures the pieces, left to right
     * @return the SVG document
     */
    public static String sheet(List<Figure> figures) {
        Sheet sheet = Sheet.of(figures, Pen.PAPER, Double.MAX_VALUE, figure -> List.of())
                .withFoot(Care.foot(Scale.FULL, figures));
        return SvgWriter.write(
                sheet,
                " width=\"" + PathData.number(sheet.width()) + "mm\" height=\"" + PathData.number(sheet.height())
                        + "mm\"");
    }

    /**
     * A picture of pieces side by side for a screen: as wide as there is room, lines and letters large enough to be read. It is
     * not at full size and carries no test squares; under each caption stands the true size of the piece.
     *
     * @param figures the pieces, left to right
     * @return the SVG document
     */
    public static String sketch(Figure... figures) {
        double pixels = ON_SCREEN * figures.length;
        return written(laid(List.of(figures), Double.MAX_VALUE, pixels), pixels);
    }

    /** A picture of many pieces, half as wide as one row of them, in as many rows as show them largest where it may be half as high as it is wide. */
    static String overview(List<Figure> figures) {
        int half = (figures.size() + 1) / 2;
        double pixels = ON_SCREEN * half;
        double all = sketch(figures, Pen.PAPER, Double.MAX_VALUE).width();
        Sheet best = laid(figures, Double.MAX_VALUE, pixels);
        for (int rows = 2; rows <= 4; rows++) {
            Sheet next = laid(figures, 1.1 * all / rows, pixels);
            best = Math.max(next.width(), 2 * next.height()) < Math.max(best.width(), 2 * best.height()) ? next : best;
        }
        return written(best, pixels);
    }

    /** Letters as large as they can be read at this many pixels; a row is no wider than that, unless by one piece. */
    private static Sheet laid(List<Figure> figures, double widest, double pixels) {
        double perPixel = sketch(figures, Pen.PAPER, widest).width() / pixels;
        return sketch(figures, new Pen(perPixel * LETTERS / Pen.PAPER.label()), widest);
    }

    private static String written(Sheet sheet, double pixels) {
        return SvgWriter.write(
                sheet, " width=\"" + PathData.number(pixels) + "\" style=\"max-width:100%;height:auto\"");
    }

    private static Sheet sketch(List<Figure> figures, Pen pen, double widest) {
        return Sheet.of(figures, pen, widest, figure -> List.of(trueSize(figure)));
    }

    /** The size of the piece itself, whatever it was before. */
    private static String trueSize(Figure figure) {
        Bounds2D bounds = figure.outline().bounds();
        Vector2D size = bounds.getDiagonal();
        return "true size " + Steps.DEFAULT.both(Length.mm(size.getX())) + " wide, "
                + Steps.DEFAULT.both(Length.mm(size.getY())) + " high";
    }
}
