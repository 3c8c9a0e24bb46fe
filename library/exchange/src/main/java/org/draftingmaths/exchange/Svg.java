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
        List<Figure> all = List.of(figures);
        double pixels = ON_SCREEN * all.size();
        double perPixel = sketch(all, Pen.PAPER).width() / pixels;
        Sheet sheet = sketch(all, new Pen(perPixel * LETTERS / Pen.PAPER.label()));
        return SvgWriter.write(
                sheet, " width=\"" + PathData.number(pixels) + "\" style=\"max-width:100%;height:auto\"");
    }

    private static Sheet sketch(List<Figure> figures, Pen pen) {
        return Sheet.of(figures, pen, Double.MAX_VALUE, figure -> List.of(trueSize(figure)));
    }

    /** The size of the piece itself, whatever it was before. */
    private static String trueSize(Figure figure) {
        Bounds2D bounds = figure.outline().bounds();
        Vector2D size = bounds.getDiagonal();
        return "true size " + Steps.DEFAULT.both(Length.mm(size.getX())) + " wide, "
                + Steps.DEFAULT.both(Length.mm(size.getY())) + " high";
    }
}
