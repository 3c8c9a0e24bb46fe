package org.draftingmaths.exchange;

import java.util.List;
import java.util.function.Function;
import org.apache.commons.geometry.euclidean.twod.Bounds2D;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
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

    private static final double MARGIN = 15;
    private static final double CAPTION = 13;
    private static final double FOOT = 22;

    /** The width that a piece gets on a screen, in pixels. */
    private static final double ON_SCREEN = 400;

    /** The height of letters on a screen, in pixels. */
    private static final double LETTERS = 11.5;

    private Svg() {}

    /**
     * A sheet with pieces side by side, at full size, over a rule in centimetres and inches to measure a print by.
     *
     * @param figures the pieces, left to right
     * @return the SVG document
     */
    public static String sheet(Figure... figures) {
        return sheet(List.of(figures));
    }

    /**
     * A sheet with pieces side by side, at full size, over a rule in centimetres and inches to measure a print by.
     *
     * @param figures the pieces, left to right
     * @return the SVG document
     */
    public static String sheet(List<Figure> figures) {
        StringBuilder body = new StringBuilder();
        double width = row(figures, Pen.PAPER, figure -> "", body);
        double height = top(Pen.PAPER) + height(figures);
        body.append(Rule.at(MARGIN, height + 12));
        double fullWidth = Math.max(width, Rule.WIDTH + 2 * MARGIN);
        double fullHeight = height + FOOT;
        String size =
                " width=\"" + PathData.number(fullWidth) + "mm\" height=\"" + PathData.number(fullHeight) + "mm\"";
        return document(size, fullWidth, fullHeight, Pen.PAPER, body);
    }

    /**
     * A picture of pieces side by side for a screen: as wide as there is room, lines and letters large enough to be read. It is
     * not at full size and carries no rule; under each caption stands the true size of the piece.
     *
     * @param figures the pieces, left to right
     * @return the SVG document
     */
    public static String sketch(Figure... figures) {
        List<Figure> all = List.of(figures);
        double pixels = ON_SCREEN * all.size();
        double perPixel = row(all, Pen.PAPER, Svg::trueSize, new StringBuilder()) / pixels;
        Pen pen = new Pen(perPixel * LETTERS / Pen.PAPER.label());
        StringBuilder body = new StringBuilder();
        double width = row(all, pen, Svg::trueSize, body);
        double height = top(pen) + height(all) + pen.mm(5);
        String size = " width=\"" + PathData.number(pixels) + "\" style=\"max-width:100%;height:auto\"";
        return document(size, width, height, pen, body);
    }

    /** Draws the figures in a row, a note under each caption, and gives its width. */
    private static double row(List<Figure> figures, Pen pen, Function<Figure, String> note, StringBuilder body) {
        if (figures.isEmpty()) {
            throw new IllegalArgumentException("A sheet needs at least one piece.");
        }
        double height = height(figures);
        double gap = pen.mm(MARGIN);
        double x = gap;
        for (Figure figure : figures) {
            Bounds2D bounds = bounds(figure);
            body.append("<g transform=\"translate(")
                    .append(PathData.number(x - bounds.getMin().getX()))
                    .append(' ')
                    .append(PathData.number(top(pen) + height + bounds.getMin().getY()))
                    .append(")\">\n")
                    .append(PieceDrawing.of(figure, pen))
                    .append("</g>\n")
                    .append(text("caption", figure.caption(), x, pen.mm(MARGIN + 5)))
                    .append(text("size", note.apply(figure), x, pen.mm(MARGIN + 9.5)));
            double words = Math.max(
                    Pen.textWidth(figure.caption(), pen.caption()), Pen.textWidth(note.apply(figure), pen.label()));
            x += Math.max(width(figure), words) + gap;
        }
        return x;
    }

    private static double top(Pen pen) {
        return pen.mm(MARGIN + CAPTION);
    }

    private static double height(List<Figure> figures) {
        return figures.stream().mapToDouble(Svg::height).max().orElseThrow();
    }

    private static String document(String size, double width, double height, Pen pen, CharSequence body) {
        String w = PathData.number(width);
        String h = PathData.number(height);
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"pattern\"" + size + " viewBox=\"0 0 " + w + " " + h
                + "\">\n" + pen.style() + "<rect class=\"sheet\" width=\"" + w + "\" height=\"" + h + "\"/>\n" + body
                + "</svg>\n";
    }

    private static String text(String kind, String words, double x, double y) {
        return words.isEmpty()
                ? ""
                : "<text class=\"" + kind + "\" x=\"" + PathData.number(x) + "\" y=\"" + PathData.number(y) + "\">"
                        + Pen.escaped(words) + "</text>\n";
    }

    /** The size of the piece itself, whatever it was before. */
    private static String trueSize(Figure figure) {
        Bounds2D bounds = bounds(figure.piece());
        double width = bounds.getMax().getX() - bounds.getMin().getX();
        double height = bounds.getMax().getY() - bounds.getMin().getY();
        return "true size " + Steps.DEFAULT.both(Length.mm(width)) + " wide, " + Steps.DEFAULT.both(Length.mm(height))
                + " high";
    }

    private static double width(Figure figure) {
        Bounds2D bounds = bounds(figure);
        return bounds.getMax().getX() - bounds.getMin().getX();
    }

    private static double height(Figure figure) {
        Bounds2D bounds = bounds(figure);
        return bounds.getMax().getY() - bounds.getMin().getY();
    }

    private static Bounds2D bounds(Figure figure) {
        Bounds2D.Builder all = Bounds2D.builder().add(bounds(figure.piece()));
        figure.ghost().ifPresent(ghost -> all.add(bounds(ghost)));
        return all.build();
    }

    private static Bounds2D bounds(Piece piece) {
        return Paper.outline(piece).bounds();
    }
}
