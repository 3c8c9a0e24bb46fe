package org.draftingmaths.lessons;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.exchange.Figure;
import org.draftingmaths.piece.DartEnd;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.LegEnds;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Use;

/**
 * A picture of a dart that is folded shut, as if the cloth were clear: its two panels meet at the stitch line, the underlay lies on one of
 * them or on both. One user unit is one millimetre; on the page it is three pixels.
 */
final class FoldedDart {

    private static final double PIXELS = 3;
    private static final double MARGIN = 6;
    private static final double HEAD = 10;

    /** How far along the seam and along the leg the picture reaches, in mm. */
    private static final double REACH = 42;

    private static final int PARTS = 60;
    private static final String CLOTH = "#ede6d6";
    private static final String UNDERLAY = "#b4552a";
    private static final String EDGE = "#2b2440";
    private static final String SHORT = "#c0392b";

    private FoldedDart() {}

    static String of(String dart, Figure... figures) {
        if (figures.length == 0) {
            throw new IllegalArgumentException("Name 1 piece or more to be shown folded.");
        }
        List<Cell> cells =
                Arrays.stream(figures).map(figure -> new Cell(figure, dart)).toList();
        double width = MARGIN;
        double height = 0;
        StringBuilder all = new StringBuilder();
        for (Cell cell : cells) {
            all.append(cell.at(width));
            width += cell.width() + MARGIN;
            height = Math.max(height, cell.height());
        }
        return String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%.0f\" style=\"max-width:100%%;height:auto\""
                        + " viewBox=\"0 0 %.2f %.2f\">\n<rect width=\"100%%\" height=\"100%%\" fill=\"#ffffff\"/>\n%s</svg>\n",
                PIXELS * width,
                width,
                height + HEAD + 2 * MARGIN,
                all);
    }

    /**
     * One piece with its dart folded. The panel of the before leg stays where it lies on paper; the other is turned about the sewn point
     * until the legs meet.
     */
    private static final class Cell {
        private final String caption;
        private final StringBuilder lines = new StringBuilder();
        private final List<Vector2D> seen = new ArrayList<>();
        private final AffineTransformMatrix2D frame;

        Cell(Figure figure, String dart) {
            caption = figure.caption();
            Piece piece = figure.piece();
            Use.Dart use = (Use.Dart) piece.opening(dart).mouth().use();
            Leg stays = use.press().orElse(Leg.BEFORE);
            Vector2D tip = DartEnd.sewnTip(piece, dart);
            Vector2D leg = Measured.leg(piece, dart, stays).start();
            Vector2D other = Measured.leg(piece, dart, stays.other()).start();
            AffineTransformMatrix2D close = AffineTransformMatrix2D.createRotation(tip, angle(tip, other, leg));
            AffineTransformMatrix2D over = reflection(tip, leg);
            frame = stays == Leg.BEFORE ? AffineTransformMatrix2D.identity() : close.inverse();
            CurvePath own = seam(piece, dart, stays);
            CurvePath its = seam(piece, dart, stays.other()).transformed(close);
            panel(tip, own);
            panel(tip, its);
            CurvePath half = DartEnd.half(piece, dart, stays).transformed(over);
            CurvePath upper = DartEnd.half(piece, dart, stays.other()).transformed(close);
            CurvePath otherHalf = use.press().isPresent() ? upper : upper.transformed(over);
            underlay(tip, half);
            underlay(tip, otherHalf);
            stroke(points(CurvePath.polyline(tip, leg)), EDGE, 0.5, "2 1.4");
            Vector2D middle = leg.lerp(other, 0.5);
            dashed(CurvePath.polyline(over.apply(leg), over.apply(middle)));
            CurvePath back = CurvePath.polyline(close.apply(other), close.apply(middle));
            dashed(use.press().isPresent() ? back : back.transformed(over));
            seen.add(frame.apply(leg.lerp(tip, REACH / leg.distance(tip))));
        }

        private static CurvePath seam(Piece piece, String dart, Leg leg) {
            CurvePath line = LegEnds.seam(piece, dart, leg);
            CurvePath away = leg == Leg.BEFORE ? line.reversed() : line;
            return away.between(0, Math.min(REACH, away.length()));
        }

        private static double angle(Vector2D tip, Vector2D from, Vector2D to) {
            Vector2D a = tip.vectorTo(from);
            Vector2D b = tip.vectorTo(to);
            return Math.atan2(a.signedArea(b), a.dot(b));
        }

        private static AffineTransformMatrix2D reflection(Vector2D tip, Vector2D leg) {
            double turn =
                    2 * Math.atan2(tip.vectorTo(leg).getY(), tip.vectorTo(leg).getX());
            return AffineTransformMatrix2D.createTranslation(tip.negate())
                    .premultiply(AffineTransformMatrix2D.createScale(1, -1))
                    .premultiply(AffineTransformMatrix2D.createRotation(turn))
                    .premultiply(AffineTransformMatrix2D.createTranslation(tip));
        }

        private void panel(Vector2D tip, CurvePath seam) {
            List<Vector2D> points = points(seam);
            fill(tip, points, CLOTH, 1);
            stroke(points, EDGE, 0.9, "");
            seen.addAll(points);
        }

        private void underlay(Vector2D tip, CurvePath half) {
            List<Vector2D> points = points(half);
            fill(tip, points, UNDERLAY, 0.22);
            stroke(points, UNDERLAY, 0.6, "");
            stroke(points(CurvePath.polyline(tip, half.end())), UNDERLAY, 0.4, "");
            seen.addAll(points);
        }

        /** Where half of a straight end would come to lie. */
        private void dashed(CurvePath chord) {
            stroke(points(chord), SHORT, 0.4, "1 0.8");
        }

        private List<Vector2D> points(CurvePath drawn) {
            CurvePath path = drawn.transformed(frame);
            double length = path.length();
            return IntStream.rangeClosed(0, PARTS)
                    .mapToObj(i -> path.pointAt(i == PARTS ? length : length * i / PARTS))
                    .toList();
        }

        private void fill(Vector2D tip, List<Vector2D> edge, String colour, double opacity) {
            List<Vector2D> corners = new ArrayList<>(edge);
            corners.add(tip);
            lines.append(String.format(
                    Locale.ROOT,
                    "<polygon points=\"%s\" fill=\"%s\" fill-opacity=\"%.2f\"/>\n",
                    words(corners),
                    colour,
                    opacity));
        }

        private void stroke(List<Vector2D> points, String colour, double width, String dashes) {
            lines.append(String.format(
                    Locale.ROOT,
                    "<polyline points=\"%s\" fill=\"none\" stroke=\"%s\" stroke-width=\"%.1f\"%s/>\n",
                    words(points),
                    colour,
                    width,
                    dashes.isEmpty() ? "" : " stroke-dasharray=\"" + dashes + "\""));
        }

        private static String words(List<Vector2D> points) {
            return points.stream()
                    .map(point -> String.format(Locale.ROOT, "%.3f,%.3f", point.getX(), -point.getY()))
                    .collect(Collectors.joining(" "));
        }

        private double left() {
            return seen.stream().mapToDouble(Vector2D::getX).min().orElseThrow() - 2;
        }

        private double top() {
            return seen.stream().mapToDouble(point -> -point.getY()).min().orElseThrow() - 2;
        }

        double width() {
            return seen.stream().mapToDouble(Vector2D::getX).max().orElseThrow() + 2 - left();
        }

        double height() {
            return seen.stream().mapToDouble(point -> -point.getY()).max().orElseThrow() + 2 - top();
        }

        String at(double x) {
            return String.format(
                    Locale.ROOT,
                    """
                    <text x="%.2f" y="%.2f" font-family="sans-serif" font-size="4.6" fill="%s">%s</text>
                    <svg x="%.2f" y="%.2f" width="%.2f" height="%.2f" viewBox="%.2f %.2f %.2f %.2f">
                    %s</svg>
                    """,
                    x,
                    MARGIN + 4,
                    EDGE,
                    caption.replace("&", "&amp;").replace("<", "&lt;"),
                    x,
                    HEAD + MARGIN,
                    width(),
                    height(),
                    left(),
                    top(),
                    width(),
                    height(),
                    lines);
        }
    }
}
