package org.draftingmaths.exchange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Bounds2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Inside;

/** Words on one piece: where they would best stand, in order of preference; the labels say which of these places is free. */
final class Wording {

    private static final double BESIDE = 1.6;

    /** Two lines of words stand this far apart, as a share of the size of the letters. */
    static final double LINES = 1.35;

    /** Where along its line a name may stand, best first. */
    static final double[] ALONG = {0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.12, 0.88};

    /** The ways in which a label is read: to the right or upwards. */
    static final List<Vector2D> WAYS = List.of(Vector2D.Unit.PLUS_X, Vector2D.Unit.PLUS_Y);

    /** So many places across and down are tried for the label. */
    private static final int TRIED = 40;

    /** Round words that stand beside a piece, as a share of their size. */
    private static final double AIR = 0.5;

    private final CurvePath outline;
    private final CurvePath cloth;
    private final Pen pen;
    private final Labels labels;
    private final List<Mark> marks;

    /**
     * Words on one piece.
     *
     * @param outline within which they are to stand
     * @param cloth the outline of all its cloth, outside of which they stand where there is no room within
     */
    Wording(CurvePath outline, CurvePath cloth, Pen pen, Labels labels, List<Mark> marks) {
        this.outline = outline;
        this.cloth = cloth;
        this.pen = pen;
        this.labels = labels;
        this.marks = marks;
    }

    /**
     * Words to the left of a line: inside, where the line is a side of the piece. A side too short for them has them square to it, and
     * where there is no room inside they stand beside the piece, along the side or square to it.
     */
    void inside(CurvePath side, TextKind kind, String words) {
        Stream<Mark.Words> all = Stream.of(true, false)
                .flatMap(left -> Stream.concat(
                        sizes(kind)
                                .flatMap(size -> DoubleStream.of(ALONG)
                                        .mapToObj(share ->
                                                besideOn(side, share * side.length(), left, kind, size, words))),
                        sizes(kind)
                                .flatMap(size -> DoubleStream.of(ALONG)
                                        .mapToObj(share ->
                                                squareTo(side, share * side.length(), left, kind, size, words)))));
        place(all);
    }

    /** Words along one of several lines, on either side of it; of several wordings the first for which there is room. */
    void beside(List<CurvePath> lines, double[] shares, TextKind kind, String... wordings) {
        place(Stream.of(wordings)
                .flatMap(words -> sizes(kind).flatMap(size -> beside(lines, shares, kind, size, words))));
    }

    /** Where words of a size may stand along lines, best first. */
    Stream<Mark.Words> beside(List<CurvePath> lines, double[] shares, TextKind kind, double size, String words) {
        return lines.stream()
                .flatMap(line -> DoubleStream.of(shares)
                        .boxed()
                        .flatMap(share -> Stream.of(true, false)
                                .map(left -> besideOn(line, share * line.length(), left, kind, size, words))));
    }

    private Stream<Double> sizes(TextKind kind) {
        return Stream.of(pen.size(kind), pen.mm(TextKind.LEAST));
    }

    /** Words at a place of a line, to the left of its direction or to the right, clear of the line where it bends towards them. */
    private Mark.Words besideOn(CurvePath line, double at, boolean left, TextKind kind, double size, String words) {
        Vector2D way = line.tangentAt(at);
        Vector2D aside = left ? left(way) : left(way).negate();
        Vector2D upright = upright(way);
        boolean above = left(upright).dot(aside) > 0;
        double bulge = bulge(line, at, aside, Lettering.width(words, size) / 2);
        double distance = pen.mm(BESIDE) + bulge + (above ? 0 : Lettering.ABOVE * size);
        return new Mark.Words(
                kind, size, Mark.Anchor.MIDDLE, line.pointAt(at).add(aside.multiply(distance)), upright, words);
    }

    /** Words square to a line, from it to the left or to the right. */
    private Mark.Words squareTo(CurvePath line, double at, boolean left, TextKind kind, double size, String words) {
        Vector2D aside =
                left ? left(line.tangentAt(at)) : left(line.tangentAt(at)).negate();
        Vector2D way = upright(aside);
        double half = Lettering.width(words, size) * Lettering.WIDER / 2;
        Vector2D middle = line.pointAt(at).add(aside.multiply(pen.mm(BESIDE) + half));
        Vector2D foot = middle.subtract(left(way).multiply(Lettering.ABOVE * size / 2));
        return new Mark.Words(kind, size, Mark.Anchor.MIDDLE, foot, way, words);
    }

    /** How far the line comes towards the words under their ends. */
    private static double bulge(CurvePath path, double middle, Vector2D aside, double half) {
        double from = Math.max(0, middle - half);
        double to = Math.min(path.length(), middle + half);
        Vector2D at = path.pointAt(middle);
        return Math.max(
                0,
                Math.max(
                        at.vectorTo(path.pointAt(from)).dot(aside),
                        at.vectorTo(path.pointAt(to)).dot(aside)));
    }

    private void place(Stream<Mark.Words> candidates) {
        marks.addAll(placed(candidates.map(List::of).toList()));
    }

    /**
     * Places on the piece come before places off it, and these before any other beside it, the nearest first; between its stitch line and
     * its cut line nothing is written.
     */
    List<Mark.Words> placed(List<List<Mark.Words>> candidates) {
        List<List<Mark.Words>> on = candidates.stream()
                .filter(words -> Inside.contains(outline, middle(words.get(0))))
                .toList();
        return labels.take(labels.free(on)
                .or(() -> labels.free(candidates.stream()
                        .filter(words -> !Inside.contains(cloth, middle(words.get(0))))
                        .toList()))
                .or(() -> labels.free(near(candidates.get(0)), AIR))
                .orElseGet(() -> labels.leastCrossed(candidates)));
    }

    /** Beside the cloth, the nearest place to a wanted one first. */
    private List<List<Mark.Words>> near(List<Mark.Words> wanted) {
        Vector2D place = middle(wanted.get(0));
        return outside(pen.mm(TextKind.LEAST), (size, middle, way) -> level(wanted, size, middle)).stream()
                .sorted(Comparator.comparingDouble(words -> middle(words.get(0)).distance(place)))
                .toList();
    }

    private static List<Mark.Words> level(List<Mark.Words> block, double size, Vector2D middle) {
        List<Mark.Words> level = new ArrayList<>();
        for (int i = 0; i < block.size(); i++) {
            Vector2D at = middle.add(Vector2D.of(
                    0, ((block.size() - 1) / 2.0 - i) * LINES * size - Lettering.ABOVE * size / 2));
            level.add(new Mark.Words(
                    block.get(i).kind(),
                    size,
                    Mark.Anchor.MIDDLE,
                    at,
                    Vector2D.Unit.PLUS_X,
                    block.get(i).text()));
        }
        return level;
    }

    private static Vector2D middle(Mark.Words words) {
        return words.box().get(0).lerp(words.box().get(2), 0.5);
    }

    /**
     * The label stands upright as near to the middle of the piece as there is room, in smaller letters if need be, or turned; a piece
     * too narrow for it has it beside it.
     */
    void label(List<String> lines) {
        label(sizes(TextKind.PLAIN).toList(), WAYS, (size, middle, way) -> block(lines, middle, way, size));
    }

    /** Lines of words in letters of a size about a middle. */
    interface Block {
        List<Mark.Words> about(double size, Vector2D middle, Vector2D way);
    }

    private void label(List<Double> sizes, List<Vector2D> ways, Block block) {
        List<List<Mark.Words>> on = sizes.stream()
                .flatMap(size -> within(size, ways, block).stream())
                .toList();
        marks.addAll(labels.take(labels.free(on)
                .or(() -> labels.free(
                        sizes.stream()
                                .flatMap(size -> outside(size, block).stream())
                                .toList(),
                        AIR))
                .orElseGet(() -> labels.leastCrossed(on))));
    }

    /** The places of a block within the piece, the nearest to its middle first. */
    List<List<Mark.Words>> within(double size, List<Vector2D> ways, Block block) {
        return ways.stream()
                .flatMap(way -> middles(outline.bounds()).stream().map(middle -> block.about(size, middle, way)))
                .toList();
    }

    /** The places of a level block beside the cloth or below it: those in its hollows first, then those that need the least paper more. */
    private List<List<Mark.Words>> outside(double size, Block block) {
        Bounds2D box = cloth.bounds();
        List<Mark.Words> pattern = block.about(size, Vector2D.ZERO, Vector2D.Unit.PLUS_X);
        double air = 2 * AIR * pattern.get(0).size();
        // So far off that the outermost places but one of the grid are clear of the cloth.
        Vector2D room = bounds(pattern)
                .getDiagonal()
                .multiply(Lettering.WIDER / 2)
                .add(Vector2D.of(air, air))
                .add(box.getDiagonal().multiply(2.0 / TRIED))
                .multiply(1 / (1 - 4.0 / TRIED));
        Bounds2D about = Bounds2D.from(box.getMin().subtract(room), box.getMax().add(room));
        return grid(about)
                .filter(middle -> !Inside.contains(cloth, middle))
                .map(middle -> block.about(size, middle, Vector2D.Unit.PLUS_X))
                .filter(words -> bounds(words).getMax().getY() <= box.getMax().getY())
                .sorted(Comparator.<List<Mark.Words>>comparingDouble(words -> area(box, bounds(words)))
                        .thenComparingDouble(
                                words -> bounds(words).getCentroid().distance(box.getCentroid())))
                .toList();
    }

    private static double area(Bounds2D one, Bounds2D other) {
        Vector2D all = Bounds2D.builder().add(one).add(other).build().getDiagonal();
        return all.getX() * all.getY();
    }

    private static Bounds2D bounds(List<Mark.Words> words) {
        return Sheet.bounds(List.copyOf(words));
    }

    private static Stream<Vector2D> grid(Bounds2D box) {
        Vector2D size = box.getDiagonal();
        return IntStream.range(1, TRIED)
                .boxed()
                .flatMap(i -> IntStream.range(1, TRIED)
                        .mapToObj(
                                j -> box.getMin().add(Vector2D.of(size.getX() * i / TRIED, size.getY() * j / TRIED))));
    }

    private List<Vector2D> middles(Bounds2D box) {
        Vector2D centre = box.getCentroid();
        return grid(box)
                .filter(middle -> Inside.contains(outline, middle))
                .sorted(Comparator.comparingDouble(centre::distance))
                .toList();
    }

    /** Lines of words about a middle. */
    private static List<Mark.Words> block(List<String> lines, Vector2D middle, Vector2D way, double size) {
        Vector2D down = left(way).negate();
        double first = size * TextKind.CAPTION.size() / TextKind.PLAIN.size();
        double step = LINES * size;
        Vector2D at = middle.add(down.multiply(-step * (lines.size() - 1) / 2));
        List<Mark.Words> block = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            TextKind kind = i == 0 ? TextKind.CAPTION : TextKind.PLAIN;
            Vector2D place = at.add(down.multiply(i * step));
            block.add(new Mark.Words(kind, i == 0 ? first : size, Mark.Anchor.MIDDLE, place, way, lines.get(i)));
        }
        return block;
    }

    static Vector2D left(Vector2D way) {
        return Vector2D.of(-way.getY(), way.getX());
    }

    /** The direction in which letters are read: to the right, and upwards on an upright line. */
    private static Vector2D upright(Vector2D way) {
        boolean leftwards = way.getX() < -1e-9;
        boolean down = Math.abs(way.getX()) <= 1e-9 && way.getY() < 0;
        return leftwards || down ? way.negate() : way;
    }
}
