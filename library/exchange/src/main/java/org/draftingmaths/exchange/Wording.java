package org.draftingmaths.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
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

    /** So many places across and down are tried for the label. */
    private static final int TRIED = 40;

    private final CurvePath outline;
    private final Pen pen;
    private final Labels labels;
    private final List<Mark> marks;

    Wording(CurvePath outline, Pen pen, Labels labels, List<Mark> marks) {
        this.outline = outline;
        this.pen = pen;
        this.labels = labels;
        this.marks = marks;
    }

    /** Words to the left of a line: inside, where the line is a side of the piece; a side too short for them has them square to it. */
    void inside(CurvePath side, TextKind kind, String words) {
        Stream<Mark.Words> along = sizes(kind)
                .flatMap(size -> DoubleStream.of(ALONG)
                        .mapToObj(share -> besideOn(side, share * side.length(), true, kind, size, words)));
        Stream<Mark.Words> square = sizes(kind)
                .flatMap(size -> DoubleStream.of(ALONG)
                        .mapToObj(share -> squareTo(side, share * side.length(), kind, size, words)));
        place(Stream.concat(along, square));
    }

    /** Words along one of several lines, on either side of it; of several wordings the first for which there is room. */
    void beside(List<CurvePath> lines, double[] shares, TextKind kind, String... wordings) {
        place(Stream.of(wordings)
                .flatMap(words -> sizes(kind)
                        .flatMap(size -> lines.stream()
                                .flatMap(line -> DoubleStream.of(shares)
                                        .boxed()
                                        .flatMap(share -> Stream.of(true, false)
                                                .map(left -> besideOn(
                                                        line, share * line.length(), left, kind, size, words)))))));
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

    /** Words square to a line, from it to the left. */
    private Mark.Words squareTo(CurvePath line, double at, TextKind kind, double size, String words) {
        Vector2D inwards = left(line.tangentAt(at));
        Vector2D way = upright(inwards);
        double half = Lettering.width(words, size) * Lettering.WIDER / 2;
        Vector2D middle = line.pointAt(at).add(inwards.multiply(pen.mm(BESIDE) + half));
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

    /** Places on the piece come before places off it. */
    private void place(Stream<Mark.Words> candidates) {
        Map<Boolean, List<Mark.Words>> on =
                candidates.collect(Collectors.partitioningBy(words -> Inside.contains(outline, middle(words))));
        marks.add(labels.place(
                Stream.concat(on.get(true).stream(), on.get(false).stream()).toList()));
    }

    private static Vector2D middle(Mark.Words words) {
        return words.box().get(0).lerp(words.box().get(2), 0.5);
    }

    /** The label stands upright as near to the middle of the piece as there is room; in a narrow piece along its grain. */
    void label(List<String> lines) {
        Bounds2D box = outline.bounds();
        List<List<Mark.Words>> places = new ArrayList<>();
        for (double size : sizes(TextKind.PLAIN).toList()) {
            for (Vector2D way : List.of(Vector2D.Unit.PLUS_X, Vector2D.Unit.PLUS_Y)) {
                middles(box).forEach(middle -> places.add(block(lines, middle, way, size)));
            }
        }
        marks.addAll(labels.placeTogether(places));
    }

    private List<Vector2D> middles(Bounds2D box) {
        Vector2D centre = box.getCentroid();
        Vector2D size = box.getDiagonal();
        List<Vector2D> middles = new ArrayList<>();
        for (int i = 1; i < TRIED; i++) {
            for (int j = 1; j < TRIED; j++) {
                middles.add(box.getMin().add(Vector2D.of(size.getX() * i / TRIED, size.getY() * j / TRIED)));
            }
        }
        return middles.stream()
                .filter(middle -> Inside.contains(outline, middle))
                .sorted((a, b) -> Double.compare(a.distance(centre), b.distance(centre)))
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
