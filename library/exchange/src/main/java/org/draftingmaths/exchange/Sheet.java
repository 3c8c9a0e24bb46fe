package org.draftingmaths.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Bounds2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;

/**
 * What stands on one sheet: marks in millimetres of the pattern, from the sheet's lower left corner, y up.
 *
 * @param width the width of the sheet
 * @param height its height
 * @param pen the size of lines and letters
 * @param marks what is drawn, the lowest first
 * @param places what each figure takes up, for a map
 */
record Sheet(double width, double height, Pen pen, List<Mark> marks, List<Place> places) {

    /** The distance between pieces, and from them to the edge of the sheet, on paper in mm. */
    static final double GAP = 15;

    /** Between the words over a piece and the piece. */
    private static final double UNDER_WORDS = 4;

    Sheet {
        marks = List.copyOf(marks);
        places = List.copyOf(places);
    }

    /**
     * Where a figure lies.
     *
     * @param name the name of its piece
     * @param bounds what it takes up
     */
    record Place(String name, Bounds2D bounds) {
        Place shifted(Vector2D by) {
            return new Place(
                    name, Bounds2D.from(bounds.getMin().add(by), bounds.getMax().add(by)));
        }
    }

    /**
     * One figure drawn, its words above it, its lower left corner at the origin.
     *
     * @param home what carried it there
     */
    record Cell(double width, double height, Vector2D home, List<Mark> marks, Place place) {}

    /**
     * Figures side by side, in as many rows as they need: a row is ended before it would be wider than the sheet may be. A figure that is
     * wider by itself gets a row and a wider sheet. In a row they stand on one line.
     */
    static Sheet of(List<Figure> figures, Pen pen, double widest, Function<Figure, List<String>> notes) {
        requireSome(figures);
        List<Cell> cells = figures.stream()
                .map(figure -> captioned(figure, figure.marks(pen, List.of()), pen, notes.apply(figure)))
                .toList();
        return stacked(rows(cells, pen, widest), pen);
    }

    static void requireSome(List<Figure> figures) {
        if (figures.isEmpty()) {
            throw new IllegalArgumentException("A sheet needs at least one piece.");
        }
    }

    /** A figure under its caption and notes. */
    static Cell captioned(Figure figure, List<Mark> drawn, Pen pen, List<String> notes) {
        Cell bare = bare(figure, drawn);
        List<Mark.Words> words = words(figure.caption(), notes, bare.height() + pen.mm(UNDER_WORDS), pen);
        List<Mark> marks = new ArrayList<>(words);
        marks.addAll(bare.marks());
        double width = words.stream()
                .mapToDouble(each -> Lettering.WIDER * each.width())
                .reduce(bare.width(), Math::max);
        double height = words.get(0).at().getY() + words.get(0).size();
        return new Cell(width, height, bare.home(), marks, bare.place());
    }

    /** A figure without words above it. */
    static Cell bare(Figure figure, List<Mark> drawn) {
        Bounds2D bounds = bounds(drawn);
        Vector2D home = bounds.getMin().negate();
        Vector2D size = bounds.getDiagonal();
        return new Cell(
                size.getX(),
                size.getY(),
                home,
                drawn.stream().map(mark -> mark.shifted(home)).toList(),
                new Place(figure.piece().name(), Bounds2D.from(Vector2D.ZERO, size)));
    }

    /** A caption over its notes over a place, the caption first, as it is read. */
    private static List<Mark.Words> words(String caption, List<String> notes, double low, Pen pen) {
        double note = pen.label();
        double line = Wording.LINES * note;
        List<Mark.Words> words = new ArrayList<>();
        words.add(Mark.Words.level(
                TextKind.CAPTION,
                pen.size(TextKind.CAPTION),
                Mark.Anchor.START,
                0,
                low + notes.size() * line,
                caption));
        for (int i = 0; i < notes.size(); i++) {
            double y = low + (notes.size() - 1 - i) * line;
            words.add(Mark.Words.level(TextKind.PLAIN, note, Mark.Anchor.START, 0, y, notes.get(i)));
        }
        return words;
    }

    static CurvePath shifted(CurvePath path, Vector2D by) {
        return path.transformed(AffineTransformMatrix2D.createTranslation(by));
    }

    static Bounds2D bounds(List<Mark> marks) {
        Bounds2D.Builder all = Bounds2D.builder();
        marks.forEach(mark -> all.add(mark.bounds()));
        return all.build();
    }

    private static List<List<Cell>> rows(List<Cell> cells, Pen pen, double widest) {
        List<List<Cell>> rows = new ArrayList<>();
        double x = 0;
        for (Cell cell : cells) {
            if (rows.isEmpty() || x + cell.width() + pen.mm(GAP) > widest) {
                rows.add(new ArrayList<>());
                x = pen.mm(GAP);
            }
            rows.get(rows.size() - 1).add(cell);
            x += cell.width() + pen.mm(GAP);
        }
        return rows;
    }

    /** The last row stands lowest. */
    private static Sheet stacked(List<List<Cell>> rows, Pen pen) {
        List<Mark> marks = new ArrayList<>();
        List<Place> places = new ArrayList<>();
        double gap = pen.mm(GAP);
        double width = 0;
        double y = gap;
        for (int i = rows.size() - 1; i >= 0; i--) {
            double x = gap;
            for (Cell cell : rows.get(i)) {
                Vector2D to = Vector2D.of(x, y);
                cell.marks().forEach(mark -> marks.add(mark.shifted(to)));
                places.add(cell.place().shifted(to));
                x += cell.width() + gap;
            }
            width = Math.max(width, x);
            y += rows.get(i).stream().mapToDouble(Cell::height).max().orElseThrow() + gap;
        }
        return new Sheet(width, y, pen, marks, places);
    }

    /** The sheet over a foot with the test squares and words, wider if need be. */
    Sheet withFoot(List<String> words) {
        double gap = pen.mm(GAP);
        double full = Math.max(width, pen.mm(TestSquares.WIDTH) + 2 * gap);
        double size = pen.label();
        List<String> lines = words.stream()
                .flatMap(each -> Lettering.lines(each, size, (full - 2 * gap) / Lettering.WIDER).stream())
                .toList();
        double squares = pen.mm(TestSquares.HEIGHT);
        double foot = gap + squares + pen.mm(UNDER_WORDS) + lines.size() * Wording.LINES * size;
        List<Mark> all = new ArrayList<>(TestSquares.sideBySide(gap, gap, pen));
        for (int i = 0; i < lines.size(); i++) {
            double y = foot - (i + 1) * Wording.LINES * size + (1 - Lettering.ABOVE) * size;
            all.add(Mark.Words.level(TextKind.PLAIN, size, Mark.Anchor.START, gap, y, lines.get(i)));
        }
        Vector2D up = Vector2D.of(0, foot);
        marks.forEach(mark -> all.add(mark.shifted(up)));
        return new Sheet(
                full,
                height + foot,
                pen,
                all,
                places.stream().map(place -> place.shifted(up)).toList());
    }
}
