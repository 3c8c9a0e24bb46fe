package org.draftingmaths.piece;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Inside;
import org.draftingmaths.curve.Nearest;

/** Widths along level lines, with every dart closed or as they are drawn. */
public final class Girths {

    private Girths() {}

    /**
     * The closed width of a piece along a level line: the line on the cloth, less what darts take in of it between their stitch
     * lines. With {@code w} the straight width of a dart there and {@code o} the offset of its shaped legs, square to the line, a
     * dart takes in {@code w + 2 o}. What lies between a dart's apex and its sewn tip stays in, and so does the width of whatever
     * is neither stitched nor folded: ease, gathers, flare, slashes, gaps filled with cloth. A pleat or tuck counts as folded all along.
     *
     * @param piece the piece
     * @param level the name of the level line
     * @return the width in mm
     */
    public static double closed(Piece piece, String level) {
        piece.level(level);
        List<CurvePath> onCloth = piece.panels().stream()
                .flatMap(panel -> panel.lines().stream())
                .filter(stretch -> stretch.line().equals(level))
                .map(piece::place)
                .toList();
        double whole = onCloth.stream().mapToDouble(CurvePath::length).sum();
        double inside = piece.panels().stream()
                .flatMap(panel -> panel.darts().stream())
                .mapToDouble(dart -> takenIn(piece.place(dart), onCloth))
                .sum();
        double open = piece.openings().stream()
                .mapToDouble(opening -> left(piece, opening, onCloth))
                .sum();
        double filled = piece.panels().stream()
                .mapToDouble(panel -> filled(piece, panel, level))
                .sum();
        return whole - inside + open + filled;
    }

    /**
     * The width of a piece along a level line as it is drawn: the line on the cloth and over every opening, as it goes on when the gap is filled with
     * cloth, tangent to both its ends, or straight where it cannot go on smoothly. Filling a gap therefore does not change it.
     *
     * @param piece the piece
     * @param level the name of the level line
     * @return the width in mm
     */
    public static double drawn(Piece piece, String level) {
        piece.level(level);
        List<Stretch> stretches = piece.panels().stream()
                .flatMap(panel -> panel.lines().stream())
                .filter(stretch -> stretch.line().equals(level))
                .sorted(Comparator.comparingDouble(Stretch::from))
                .toList();
        double width = 0;
        for (int i = 0; i < stretches.size(); i++) {
            Stretch stretch = stretches.get(i);
            width += stretch.to() - stretch.from();
            if (i > 0 && stretches.get(i - 1).to() == stretch.from()) {
                width += between(piece.place(stretches.get(i - 1)), piece.place(stretch));
            }
        }
        return width;
    }

    private static double between(CurvePath line, CurvePath next) {
        End from = new End(line.end(), line.endTangent());
        End to = new End(next.start(), next.startTangent().negate());
        return from.at().distance(to.at()) > Panels.TOUCH ? over(from, to).length() : 0;
    }

    /** Where a gap was filled with cloth the line is broken: from the end of one stretch straight to the next, over cloth. */
    private static double filled(Piece piece, Panel panel, String level) {
        List<Stretch> stretches = panel.lines().stream()
                .filter(stretch -> stretch.line().equals(level))
                .sorted(Comparator.comparingDouble(Stretch::from))
                .toList();
        CurvePath ring = piece.place(panel.ring());
        return IntStream.range(1, stretches.size())
                .mapToObj(i -> CurvePath.polyline(
                        piece.place(stretches.get(i - 1)).end(),
                        piece.place(stretches.get(i)).start()))
                .filter(gap -> gap.length() > Panels.TOUCH)
                .filter(gap -> Inside.of(ring, gap.pointAt(gap.length() / 2), Panels.TOUCH) == Inside.Where.INSIDE)
                .mapToDouble(CurvePath::length)
                .sum();
    }

    private static double takenIn(CurvePath region, List<CurvePath> lines) {
        return lines.stream()
                .flatMap(line -> Within.strictly(region, line).stream())
                .mapToDouble(Within::length)
                .sum();
    }

    /** What an opening leaves in of the line: that across it which is not stitched, less what is stitched beside it. */
    private static double left(Piece piece, Opening opening, List<CurvePath> onCloth) {
        if (opening.mouth().use() instanceof Use.Folded) {
            return 0;
        }
        List<CurvePath> across = across(piece, opening, onCloth);
        double open = across.stream().mapToDouble(CurvePath::length).sum();
        if (!(opening.mouth().use() instanceof Use.Dart)) {
            return open;
        }
        CurvePath region = StitchLines.takenIn(piece, opening.name());
        double stitched = across.stream()
                .flatMap(line -> Within.of(region, line).stream())
                .mapToDouble(Within::length)
                .sum();
        return open - stitched - takenIn(region, onCloth);
    }

    /**
     * Over an opening from where the line ends on its one leg to where it goes on from the other: as it will go on when the gap is filled with
     * cloth, straight where it cannot go on smoothly and over a dart.
     */
    private static List<CurvePath> across(Piece piece, Opening opening, List<CurvePath> onCloth) {
        List<End> before = ends(Measured.leg(piece, opening.name(), Leg.BEFORE), onCloth);
        List<End> after = ends(Measured.leg(piece, opening.name(), Leg.AFTER), onCloth);
        if (before.size() != after.size()) {
            return List.of();
        }
        boolean stitched = opening.mouth().use() instanceof Use.Dart;
        return IntStream.range(0, before.size())
                .filter(i -> before.get(i).at().distance(after.get(i).at()) > Panels.TOUCH)
                .mapToObj(i -> stitched
                        ? CurvePath.polyline(before.get(i).at(), after.get(i).at())
                        : over(before.get(i), after.get(i)))
                .toList();
    }

    private static CurvePath over(End from, End to) {
        return LineGap.across(from.at(), from.out(), to.at(), to.out().negate())
                .orElseGet(() -> CurvePath.polyline(from.at(), to.at()));
    }

    /** The end of a line and the direction in which it leaves the cloth. */
    private record End(Vector2D at, Vector2D out) {}

    /** Where lines end on a leg, from its mouth inwards. */
    private static List<End> ends(CurvePath leg, List<CurvePath> lines) {
        return lines.stream()
                .flatMap(line -> Stream.of(
                        new End(line.start(), line.startTangent().negate()), new End(line.end(), line.endTangent())))
                .filter(end -> Nearest.of(leg, end.at()).distance() <= Panels.TOUCH)
                .sorted(Comparator.comparingDouble(
                        end -> Nearest.of(leg, end.at()).at()))
                .toList();
    }
}
