package org.draftingmaths.exchange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.finish.Label;

/**
 * Lays pieces on a sheet so that few tiles show them. None is turned: the grain lies as it was drawn. Several ways of standing them on shelves are
 * tried, in several orders and widths, and the first that needs the fewest tiles is taken. Then words are moved off the joins of the paper
 * where there is room.
 */
final class TileLay {

    /** Shelves are tried in widths from what the widest piece needs up to so many tiles more. */
    private static final int WIDER = 12;

    private final Pen pen;
    private final Page page;
    private final List<Figure> figures;
    private final List<Sheet.Cell> cells;
    private final List<Cover> covers;

    private TileLay(List<Figure> figures, Pen pen, Page page) {
        this.pen = pen;
        this.page = page;
        this.figures = figures;
        this.cells = figures.stream().map(figure -> cell(figure, List.of())).toList();
        this.covers =
                cells.stream().map(cell -> Cover.of(cell.marks(), pen.factor())).toList();
    }

    /** Where the corners of the pieces lie, in mm of paper, and what that needs. */
    private record Lay(List<Vector2D> places, Tiles tiles, int needed) {}

    static Sheet of(List<Figure> figures, Pen pen, Page page) {
        Sheet.requireSome(figures);
        TileLay lay = new TileLay(figures, pen, page);
        return lay.sheet(lay.best());
    }

    /** A finished piece says itself what it is: a line of words over it would cost a row of tiles. */
    private Sheet.Cell cell(Figure figure, List<CurvePath> joins) {
        boolean titled = figure.finished().stream()
                .flatMap(pattern -> pattern.labels().stream())
                .anyMatch(label -> label.kind() == Label.Kind.TITLE);
        List<Mark> drawn = figure.marks(pen, joins);
        return titled ? Sheet.bare(figure, drawn) : Sheet.captioned(figure, drawn, pen, List.of());
    }

    private double width(Sheet.Cell cell) {
        return cell.width() / pen.factor();
    }

    private double height(Sheet.Cell cell) {
        return cell.height() / pen.factor();
    }

    private Lay best() {
        double widest = cells.stream().mapToDouble(this::width).max().orElseThrow();
        int least = Tiles.covering(widest + 2 * Shelves.RIM, 0, page).columns();
        List<Lay> lays = new ArrayList<>();
        for (boolean snapped : new boolean[] {false, true}) {
            for (List<Integer> order : orders()) {
                for (int columns = least; columns <= least + WIDER; columns++) {
                    double room = new Tiles(page, columns, 1).width();
                    lays.add(lay(order, new Shelves(page, room, snapped)));
                }
            }
        }
        return lays.stream()
                .min(Comparator.comparingInt(Lay::needed)
                        .thenComparingInt(
                                lay -> lay.tiles().columns() * lay.tiles().rows()))
                .orElseThrow();
    }

    /** As they are given, the highest first, the widest first. */
    private List<List<Integer>> orders() {
        List<Integer> given = IntStream.range(0, cells.size()).boxed().toList();
        return List.of(
                given,
                given.stream()
                        .sorted(Comparator.comparingDouble(i -> -cells.get(i).height()))
                        .toList(),
                given.stream()
                        .sorted(Comparator.comparingDouble(i -> -cells.get(i).width()))
                        .toList());
    }

    private Lay lay(List<Integer> order, Shelves shelves) {
        Vector2D[] places = new Vector2D[cells.size()];
        double right = 0;
        double top = 0;
        for (int i : order) {
            double width = width(cells.get(i));
            double height = height(cells.get(i));
            places[i] = shelves.next(width, height);
            right = Math.max(right, places[i].getX() + width);
            top = Math.max(top, places[i].getY() + height);
        }
        Tiles tiles = Tiles.covering(right + Shelves.RIM, top + Shelves.RIM, page);
        List<Cover.Laid> laid = IntStream.range(0, places.length)
                .mapToObj(i -> new Cover.Laid(covers.get(i), places[i]))
                .toList();
        return new Lay(List.of(places), tiles, Cover.needed(tiles, laid).size());
    }

    private Sheet sheet(Lay lay) {
        List<CurvePath> joins = joins(lay.tiles());
        List<Mark> marks = new ArrayList<>();
        List<Sheet.Place> places = new ArrayList<>();
        double right = 0;
        double top = 0;
        for (int i = 0; i < cells.size(); i++) {
            Vector2D at = lay.places().get(i).multiply(pen.factor());
            Sheet.Cell cell = offTheJoins(i, joins, at);
            cell.marks().forEach(mark -> marks.add(mark.shifted(at)));
            places.add(cell.place().shifted(at));
            right = Math.max(right, at.getX() + cell.width());
            top = Math.max(top, at.getY() + cell.height());
        }
        double rim = pen.mm(Shelves.RIM);
        return new Sheet(right + rim, top + rim, pen, marks, places);
    }

    /** The piece with its words off the joins, unless it would need another place for that. */
    private Sheet.Cell offTheJoins(int i, List<CurvePath> joins, Vector2D at) {
        Sheet.Cell cell = cells.get(i);
        Vector2D toPiece = at.add(cell.home()).negate();
        Sheet.Cell again = cell(
                figures.get(i),
                joins.stream().map(join -> Sheet.shifted(join, toPiece)).toList());
        boolean same = again.home().distance(cell.home()) < CurvePath.JOINT
                && Math.abs(again.width() - cell.width()) < CurvePath.JOINT
                && Math.abs(again.height() - cell.height()) < CurvePath.JOINT;
        return same ? again : cell;
    }

    /** The sides of all frames, in mm of the pattern. */
    private List<CurvePath> joins(Tiles tiles) {
        List<CurvePath> joins = new ArrayList<>();
        for (int column = 0; column < tiles.columns(); column++) {
            double left = column * tiles.stepAcross();
            for (double x : new double[] {left, left + page.frameWidth()}) {
                joins.add(line(x, 0, x, tiles.height()));
            }
        }
        for (int row = 0; row < tiles.rows(); row++) {
            double low = row * tiles.stepDown();
            for (double y : new double[] {low, low + page.frameHeight()}) {
                joins.add(line(0, y, tiles.width(), y));
            }
        }
        return joins;
    }

    private CurvePath line(double x, double y, double toX, double toY) {
        return CurvePath.polyline(
                Vector2D.of(x, y).multiply(pen.factor()), Vector2D.of(toX, toY).multiply(pen.factor()));
    }
}
