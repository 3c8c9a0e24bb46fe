package org.draftingmaths.exchange;

import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A sheet over many pages: the page to read first, the map, the tiles.
 *
 * @param title the name of the pattern
 * @param scale how large it is printed
 * @param sheet what is printed
 * @param tiles how it is laid out
 * @param printed the tiles on which something lies
 * @param diagonal what the joined sheet is measured by
 * @param care what is said of care
 */
record TiledPrint(
        String title,
        Scale scale,
        Sheet sheet,
        Tiles tiles,
        List<Tiles.Tile> printed,
        Diagonal diagonal,
        List<String> care) {

    /** The first page and the map. */
    private static final int BEFORE_TILES = 2;

    private static final double CROSS = 4;
    private static final double LINE = Wording.LINES * TextKind.PLAIN.size();

    /** Between the test squares and the words beside them. */
    private static final double BESIDE = 8;

    /** On the map lines are drawn this much thinner. */
    private static final double THIN = 0.5;

    /** What the map shows of the pieces. */
    private static final Set<LineKind> ON_MAP =
            EnumSet.of(LineKind.NET, LineKind.CUT, LineKind.FOLD, LineKind.END, LineKind.LEG);

    static TiledPrint of(String title, Scale scale, Page page, Sheet sheet, List<String> care) {
        double factor = scale.times();
        List<Cover.Laid> all = List.of(new Cover.Laid(Cover.of(sheet.marks(), factor), Vector2D.ZERO));
        Tiles covering = Tiles.covering(sheet.width() / factor, sheet.height() / factor, page);
        Tiles tiles = covering.upTo(Cover.needed(covering, all));
        List<Tiles.Tile> printed = Cover.needed(tiles, all);
        return new TiledPrint(title, scale, sheet, tiles, printed, Diagonal.across(tiles, printed), care);
    }

    void into(PdfFile file) throws IOException {
        Page page = tiles.page();
        file.page(page.width(), page.height(), painter -> painter.draw(first(), View.PAPER));
        file.page(page.width(), page.height(), this::map);
        for (Tiles.Tile tile : printed) {
            file.page(page.width(), page.height(), painter -> tile(tile, painter));
        }
    }

    private int pages() {
        return BEFORE_TILES + printed.size();
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
        if (printed.size() > 1) {
            steps.add(
                    "Lay the tiles out as the map on page 2 shows them. Letters name the columns from the left, figures the"
                            + " rows from the top. Tiles on which nothing lies are left out.");
            steps.add(
                    "Where another tile follows to the right or below, cut the margin off at the frame. Lay the tile on its"
                            + " neighbour so that the crosses near their corners meet, and tape it.");
        }
        steps.add(
                "Measure from cross A to cross B: " + diagonal.words()
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
        List<Mark> words = new ArrayList<>(heading("Map of the tiles: page 2 of " + pages()));
        double top = paragraph(
                words,
                tiles.columns() + " across and " + tiles.rows() + " down on " + page.name() + ". " + leftOut()
                        + scale.words() + " The diagonal from A to B is " + diagonal.words() + ".",
                page.margin(),
                page.height() - page.margin() - 2 * LINE - 1,
                page.frameWidth());
        double shrunk =
                Math.min((page.width() - 2 * page.margin()) / tiles.width(), (top - page.margin()) / tiles.height());
        Vector2D home = Vector2D.of(page.margin(), top - shrunk * tiles.height());
        painter.draw(words, View.PAPER);
        painter.draw(namesOfTiles(shrunk, home), View.PAPER);
        painter.draw(grid(), new View(shrunk, home, THIN));
        painter.draw(onMap(), new View(shrunk / sheet.pen().factor(), home, THIN));
        painter.draw(namesOfPieces(shrunk / sheet.pen().factor(), home), View.PAPER);
    }

    private String leftOut() {
        String blank = tiles.inOrder().stream()
                .filter(tile -> !printed.contains(tile))
                .map(Tiles.Tile::name)
                .collect(Collectors.joining(", "));
        return blank.isEmpty() ? "" : "Left out, because nothing lies on them: " + blank + ". ";
    }

    private List<Mark> onMap() {
        return sheet.marks().stream()
                .filter(mark -> mark instanceof Mark.Stroke stroke && ON_MAP.contains(stroke.kind()))
                .toList();
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
        lines.add(Mark.Stroke.line(LineKind.EARLIER, diagonal.a(), diagonal.b()));
        return lines;
    }

    private List<Mark> namesOfTiles(double shrunk, Vector2D home) {
        double size = Math.min(TextKind.TILE.size(), shrunk * tiles.stepAcross() / 2);
        return printed.stream()
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
        marks.addAll(diagonal.on(tiles, tile));
        marks.addAll(inMargins(tile));
        return marks;
    }

    private List<Mark> inMargins(Tiles.Tile tile) {
        Page page = tiles.page();
        double below = page.margin() - LINE + 0.5;
        double above = page.height() - page.margin() + 1.5;
        int number = BEFORE_TILES + 1 + printed.indexOf(tile);
        String name = tile.name() + ": row " + (tile.row() + 1) + " of " + tiles.rows() + ", column "
                + (tile.column() + 1) + " of " + tiles.columns() + ". Page " + number + " of " + pages();
        List<Mark> marks = new ArrayList<>();
        marks.add(plain(page.margin(), below, name));
        marks.add(plain(page.margin(), above, title + ". " + shortScale()));
        next(tile, 0, -1).ifPresent(next -> marks.add(toTheRight(above, "above: " + next)));
        next(tile, 0, 1).ifPresent(next -> marks.add(toTheRight(below, "below: " + next)));
        double left = page.margin() - 1.5;
        double right = page.width() - page.margin() + LINE - 0.5;
        next(tile, -1, 0).ifPresent(next -> marks.add(sideways(left, page.height() / 2, "to the left: " + next)));
        next(tile, 1, 0).ifPresent(next -> marks.add(sideways(right, page.height() / 2, "to the right: " + next)));
        if (diagonal.startsOn(tiles, tile)) {
            marks.add(sideways(left, page.height() / 4, "A: to B it is " + diagonal.words()));
        }
        if (diagonal.endsOn(tiles, tile)) {
            marks.add(sideways(right, page.height() * 3 / 4, "B: to A it is " + diagonal.words()));
        }
        return marks;
    }

    /** The name of a neighbour, if it is printed. */
    private Optional<String> next(Tiles.Tile tile, int right, int down) {
        Tiles.Tile next = new Tiles.Tile(tile.column() + right, tile.row() + down);
        return printed.contains(next) ? Optional.of(next.name()) : Optional.empty();
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

    private static Mark sideways(double x, double y, String words) {
        return new Mark.Words(
                TextKind.PLAIN,
                TextKind.PLAIN.size(),
                Mark.Anchor.MIDDLE,
                Vector2D.of(x, y),
                Vector2D.Unit.PLUS_Y,
                words);
    }
}
