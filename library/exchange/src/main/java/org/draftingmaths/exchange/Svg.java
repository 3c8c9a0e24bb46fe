package org.draftingmaths.exchange;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Bounds2D;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;

/**
 * True-scale pictures of pieces: one user unit is one millimetre.
 *
 * <pre>{@code
 * Files.writeString(Path.of("front.svg"), Svg.sheet(Figure.of("Front", front)));
 * }</pre>
 */
public final class Svg {

    private static final double MARGIN = 15;
    private static final double CAPTION = 12;
    private static final double FOOT = 22;

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
        if (figures.isEmpty()) {
            throw new IllegalArgumentException("A sheet needs at least one piece.");
        }
        double height = figures.stream().mapToDouble(Svg::height).max().orElseThrow();
        StringBuilder body = new StringBuilder();
        double x = MARGIN;
        for (Figure figure : figures) {
            Bounds2D bounds = bounds(figure);
            double left = x - bounds.getMin().getX();
            double down = MARGIN + CAPTION + height + bounds.getMin().getY();
            body.append("<g transform=\"translate(")
                    .append(PathData.number(left))
                    .append(' ')
                    .append(PathData.number(down))
                    .append(")\">\n")
                    .append(PieceDrawing.of(figure))
                    .append("</g>\n");
            body.append(caption(figure, x, MARGIN + 5));
            x += Math.max(width(figure), Ink.textWidth(figure.caption(), Ink.CAPTION)) + MARGIN;
        }
        double total = MARGIN + CAPTION + height + FOOT;
        body.append(Rule.at(MARGIN, MARGIN + CAPTION + height + 10));
        return document(Math.max(x, Rule.WIDTH + 2 * MARGIN), total, body);
    }

    private static String document(double width, double height, CharSequence body) {
        String w = PathData.number(width);
        String h = PathData.number(height);
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + w + "mm\" height=\"" + h + "mm\" viewBox=\"0 0 "
                + w
                + " " + h + "\">\n" + Ink.STYLE + "<rect class=\"sheet\" width=\"" + w + "\" height=\"" + h + "\"/>\n"
                + body
                + "</svg>\n";
    }

    private static String caption(Figure figure, double x, double y) {
        return "<text class=\"caption\" x=\"" + PathData.number(x) + "\" y=\"" + PathData.number(y) + "\">"
                + Ink.escaped(figure.caption()) + "</text>\n";
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
