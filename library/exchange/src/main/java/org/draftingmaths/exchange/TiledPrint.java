package org.draftingmaths.exchange;

import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A sheet over many pages: the page to read first, the map, the tiles.
 *
 * @param title the name of the pattern
 * @param scale how large it is printed
 * @param sheet what is printed
 * @param tiles how it is laid out
 * @param care what is said of care
 */
record TiledPrint(String title, Scale scale, Sheet sheet, Tiles tiles, List<String> care) {

    /** The first page and the map. */
    private static final int BEFORE_TILES = 2;

    private static final double CROSS = 4;
    private static final double LINE = Wording.LINES * TextKind.PLAIN.size();

    /** Between the test squares and the words beside them. */
    private static final double BESIDE = 8;

    /** Room for half the width of a line, in mm. */
    private static final double RIM = 1;

    /** On the map lines are drawn this much thinner. */
    private static final double THIN = 0.5;

    /** What the map shows of the pieces. */
    private static final Set<LineKind> ON_MAP =
            EnumSet.of(LineKind.NET, LineKind.CUT, LineKind.FOLD, LineKind.END, LineKind.LEG);

    /** The empty rim at the right and at the top needs no paper. */
    static TiledPrint of(String title, Scale scale, Page page, Sheet sheet, List<String> care) {
        double factor = scale.times();
        Vector2D drawn = Sheet.bounds(sheet.marks()).getMax();
        return new TiledPrint(
                title,
                scale,
                sheet,
                Tiles.covering(drawn.getX() / factor + RIM, drawn.getY() / factor + RIM, page),
                care);
    }

    void into(PdfFile file) throws IOException {
        Page page = tiles.page();
        file.page(page.width(), page.height(), painter -> painter.draw(first(), View.PAPER));
        file.page(page.width(), page.height(), this::map);
        for (Tiles.Tile tile : tiles.inOrder()) {
            file.page(page.width(), page.height(), painter -> tile(tile, painter));
        }
    }

    private int pages() {
        return BEFORE_TILES + tiles.columns() * tiles.rows();
    }

    private List<Mark> first() {
        Page page = tiles.page();
        double left = page.margin();
        double top = page.height() - page.margin();
        double squares = top - 2 * LINE - TestSquares.STACKED_HEIGHT;
        List<Mark> marks = new ArrayList<>(heading("Read this first: page 1 of " + pages()));
        marks.addAll(TestSquares.stacked(left, squares, Pen.PAPER));
        double x = left + TestSquares.STACKED_WIDTH + BESIDE;
        double y = top - 2 * LINE - Lettering.ABOVE * TextKind.PLAIN.size();
        for (String each : whatToDo()) {
            y = paragraph(marks, each, x, y, page.width() - page.margin() - x);
        }
        return marks;
    }

    private List<String> whatToDo() {
        List<String> steps = new ArrayList<>();
        steps.add(TestSquares.INSTRUCTION);
        if (tiles.inOrder().size() > 1) {
            steps.add(
                    "Lay the tiles out as the map on page 2 shows them. Letters name the columns from the left, figures the"
                            + " rows from the top.");
            steps.add(
                    "Where another tile follows to the right or below, cut the margin off at the frame. Lay the tile on its"
                            + " neighbour so that the crosses near their corners meet, and tape it.");
        }
        steps.add(
                "Measure from cross A to cross B: " + Diagonal.words(sheet)
                        + ". If it is off by more than 1 mm in each metre, the print is not true or the tiles are not joined truly.");
        List<String> what = new ArrayList<>(List.of(scale.words()));
        for (int i = 0; i < steps.size(); i++) {
            what.add((i + 1) + ". " + steps.get(i));
        }
        what.addAll(care);
        return what;
    }

    private static double paragraph(List<Mark> marks, String words, double x, double y, double width) {
        double at = y;
        for (String line : Lettering.lines(words, TextKind.PLAIN.size(), width)) {
            marks.add(plain(x, at, line));
            at -= LINE;
        }
        return at - LINE / 2;
    }

    private List<Mark> heading(String what) {
        Page page = tiles.page();
        double y = page.height() - page.margin() - TextKind.CAPTION.size();
        double size = TextKind.CAPTION.size();
        return List.of(
                Mark.Words.level(TextKind.CAPTION, size, Mark.Anchor.START, page.margin(), y, title + ". " + what));
    }

    private static Mark plain(double x, double y, String words) {
        return Mark.Words.level(TextKind.PLAIN, TextKind.PLAIN.size(), Mark.Anchor.START, x, y, words);
    }

    private void map(PdfPainter painter) throws IOException {
        Page page = tiles.page();
        double top = page.height() - page.margin() - 5 * LINE;
        double shrunk =
                Math.min((page.width() - 2 * page.margin()) / tiles.width(), (top - page.margin()) / tiles.height());
        Vector2D home = Vector2D.of(page.margin(), top - shrunk * tiles.height());
        List<Mark> words = new ArrayList<>(heading("Map of the tiles: page 2 of " + pages()));
        paragraph(
                words,
                tiles.columns() + " across and " + tiles.rows() + " down on " + page.name() + ". " + scale.words()
                        + " The long diagonal from A to B is " + Diagonal.words(sheet) + ".",
                page.margin(),
                page.height() - page.margin() - 2 * LINE - 1,
                page.frameWidth());
        painter.draw(words, View.PAPER);
        painter.draw(namesOfTiles(shrunk, home), View.PAPER);
        painter.draw(grid(), new View(shrunk, home, THIN));
        painter.draw(onMap(), new View(shrunk / sheet.pen().factor(), home, THIN));
        painter.draw(namesOfPieces(shrunk / sheet.pen().factor(), home), View.PAPER);
    }

    private List<Mark> onMap() {
        List<Mark> marks = new ArrayList<>(sheet.marks().stream()
                .filter(mark -> mark instanceof Mark.Stroke stroke && ON_MAP.contains(stroke.kind()))
                .toList());
        marks.add(Mark.Stroke.line(LineKind.EARLIER, Diagonal.low(sheet), Diagonal.high(sheet)));
        return marks;
    }

    /** Where a tile ends and the next begins: the middle of their overlap. */
    private List<Mark> grid() {
        List<Mark> lines = new ArrayList<>();
        double half = tiles.page().overlap() / 2;
        lines.add(Mark.Stroke.rectangle(LineKind.DIVISION, 0, 0, tiles.width(), tiles.height()));
        for (int i = 1; i < tiles.columns(); i++) {
            double x = i * tiles.stepAcross() + half;
            lines.add(Mark.Stroke.line(LineKind.DIVISION, Vector2D.of(x, 0), Vector2D.of(x, tiles.height())));
        }
        for (int j = 1; j < tiles.rows(); j++) {
            double y = j * tiles.stepDown() + half;
            lines.add(Mark.Stroke.line(LineKind.DIVISION, Vector2D.of(0, y), Vector2D.of(tiles.width(), y)));
        }
        return lines;
    }

    private List<Mark> namesOfTiles(double shrunk, Vector2D home) {
        double size = Math.min(TextKind.TILE.size(), shrunk * tiles.stepAcross() / 2);
        return tiles.inOrder().stream()
                .map(tile -> (Mark) Mark.Words.level(
                        TextKind.TILE,
                        size,
                        Mark.Anchor.MIDDLE,
                        home.getX() + shrunk * (tiles.left(tile) + tiles.page().frameWidth() / 2),
                        home.getY()
                                + shrunk * (tiles.low(tile) + tiles.page().frameHeight() / 2)
                                - Lettering.ABOVE * size / 2,
                        tile.name()))
                .toList();
    }

    private List<Mark> namesOfPieces(double shrunk, Vector2D home) {
        return sheet.places().stream()
                .map(place -> {
                    Vector2D at = home.add(place.bounds().getCentroid().multiply(shrunk));
                    return (Mark) Mark.Words.level(
                            TextKind.PLAIN,
                            TextKind.PLAIN.size(),
                            Mark.Anchor.MIDDLE,
                            at.getX(),
                            at.getY(),
                            place.name());
                })
                .toList();
    }

    private void tile(Tiles.Tile tile, PdfPainter painter) throws IOException {
        Page page = tiles.page();
        double margin = page.margin();
        painter.draw(beneath(tile), View.PAPER);
        painter.drawWithin(
                margin,
                margin,
                page.frameWidth(),
                page.frameHeight(),
                seenOn(tile),
                View.of(sheet, margin - tiles.left(tile), margin - tiles.low(tile)));
        painter.draw(about(tile), View.PAPER);
    }

    /** What reaches into a tile's frame; the rest would be cut off anyway. */
    private List<Mark> seenOn(Tiles.Tile tile) {
        double factor = sheet.pen().factor();
        double slack = sheet.pen().mm(2);
        double left = tiles.left(tile) * factor - slack;
        double low = tiles.low(tile) * factor - slack;
        double right = left + tiles.page().frameWidth() * factor + 2 * slack;
        double high = low + tiles.page().frameHeight() * factor + 2 * slack;
        return sheet.marks().stream()
                .filter(mark -> mark.bounds().getMax().getX() >= left
                        && mark.bounds().getMax().getY() >= low
                        && mark.bounds().getMin().getX() <= right
                        && mark.bounds().getMin().getY() <= high)
                .toList();
    }

    private List<Mark> beneath(Tiles.Tile tile) {
        Page page = tiles.page();
        double size = TextKind.TILE.size();
        return List.of(Mark.Words.level(
                TextKind.TILE,
                size,
                Mark.Anchor.MIDDLE,
                page.width() / 2,
                page.height() / 2 - Lettering.ABOVE * size / 2,
                tile.name()));
    }

    /** The frame, the crosses and, in the margins where no piece can be, the words. */
    private List<Mark> about(Tiles.Tile tile) {
        Page page = tiles.page();
        List<Mark> marks = new ArrayList<>();
        marks.add(Mark.Stroke.rectangle(
                LineKind.DIVISION, page.margin(), page.margin(), page.frameWidth(), page.frameHeight()));
        double in = page.margin() + page.overlap() / 2;
        double arm = Math.min(CROSS, page.overlap() / 2);
        for (double x : new double[] {in, page.width() - in}) {
            for (double y : new double[] {in, page.height() - in}) {
                marks.add(Mark.Stroke.cross(LineKind.RULE, Vector2D.of(x, y), arm));
            }
        }
        marks.addAll(inMargins(tile));
        return marks;
    }

    private List<Mark> inMargins(Tiles.Tile tile) {
        Page page = tiles.page();
        double below = page.margin() - LINE + 0.5;
        double above = page.height() - page.margin() + 1.5;
        int number = BEFORE_TILES + 1 + tiles.inOrder().indexOf(tile);
        String name = tile.name() + ": row " + (tile.row() + 1) + " of " + tiles.rows() + ", column "
                + (tile.column() + 1) + " of " + tiles.columns() + ". Page " + number + " of " + pages();
        List<Mark> marks = new ArrayList<>();
        marks.add(plain(page.margin(), below, name));
        marks.add(plain(page.margin(), above, title + ". " + shortScale()));
        if (tile.row() > 0) {
            marks.add(toTheRight(above, "above: " + new Tiles.Tile(tile.column(), tile.row() - 1).name()));
        }
        if (tile.row() < tiles.rows() - 1) {
            marks.add(toTheRight(below, "below: " + new Tiles.Tile(tile.column(), tile.row() + 1).name()));
        }
        if (tile.column() > 0) {
            marks.add(sideways(
                    page.margin() - 1.5, "to the left: " + new Tiles.Tile(tile.column() - 1, tile.row()).name()));
        }
        if (tile.column() < tiles.columns() - 1) {
            marks.add(sideways(
                    page.width() - page.margin() + LINE - 0.5,
                    "to the right: " + new Tiles.Tile(tile.column() + 1, tile.row()).name()));
        }
        return marks;
    }

    private String shortScale() {
        return scale == Scale.FULL
                ? scale.words()
                : scale.words().substring(0, scale.words().indexOf('.') + 1);
    }

    private Mark toTheRight(double y, String words) {
        double width = Lettering.width(words, TextKind.PLAIN.size());
        return plain(tiles.page().width() - tiles.page().margin() - width, y, words);
    }

    private Mark sideways(double x, String words) {
        return new Mark.Words(
                TextKind.PLAIN,
                TextKind.PLAIN.size(),
                Mark.Anchor.MIDDLE,
                Vector2D.of(x, tiles.page().height() / 2),
                Vector2D.Unit.PLUS_Y,
                words);
    }
}
