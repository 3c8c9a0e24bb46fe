package org.draftingmaths.exchange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Bounds2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Flatten;

/**
 * Finds a free place for words. Every line that is drawn, and all words that have their place, stand in the way; of several places
 * the first that is free is taken, one that no join of the paper crosses before all others, and where none is free the one that is
 * crossed least.
 */
final class Labels {

    /** How finely curves are looked at, in mm. */
    private static final double FINE = 0.3;

    /** The room kept round words, as a share of their size. */
    private static final double AROUND = 0.12;

    private final List<Segment> inTheWay = new ArrayList<>();
    private final List<Segment> joins = new ArrayList<>();

    private record Segment(Vector2D from, Vector2D to) {}

    /** A rectangle of words: its middle, its direction, half its width and half its height. */
    private record Box(Vector2D middle, Vector2D way, double halfWidth, double halfHeight) {

        /** About all lines of a block: no line may run between two of them either. */
        static Box about(List<Mark.Words> block, double air) {
            Vector2D way = block.get(0).way();
            double size = block.stream().mapToDouble(Mark.Words::size).max().orElseThrow();
            Bounds2D.Builder turned = Bounds2D.builder();
            block.forEach(words ->
                    words.box().forEach(corner -> turned.add(Vector2D.of(corner.dot(way), way.signedArea(corner)))));
            Bounds2D bounds = turned.build();
            Vector2D centre = bounds.getCentroid();
            return new Box(
                    way.multiply(centre.getX()).add(Wording.left(way).multiply(centre.getY())),
                    way,
                    bounds.getDiagonal().getX() * Lettering.WIDER / 2 + air * size,
                    bounds.getDiagonal().getY() / 2 + air * size);
        }

        /** By parting the segment at the sides of the box (Liang and Barsky's way). */
        boolean isCrossedBy(Segment segment) {
            Vector2D from = inBox(segment.from());
            Vector2D to = inBox(segment.to());
            double[] part = {0, 1};
            return clipped(from.getX(), to.getX() - from.getX(), halfWidth, part)
                    && clipped(from.getY(), to.getY() - from.getY(), halfHeight, part);
        }

        private Vector2D inBox(Vector2D point) {
            Vector2D from = middle.vectorTo(point);
            return Vector2D.of(from.dot(way), way.signedArea(from));
        }

        private static boolean clipped(double from, double run, double half, double[] part) {
            if (run == 0) {
                return Math.abs(from) < half;
            }
            double one = (-half - from) / run;
            double other = (half - from) / run;
            part[0] = Math.max(part[0], Math.min(one, other));
            part[1] = Math.min(part[1], Math.max(one, other));
            return part[0] < part[1];
        }

        /** Its sides and its middle line: no words can lie on it without touching one. */
        Stream<Segment> segments() {
            Vector2D along = way.multiply(halfWidth);
            Vector2D up = Vector2D.of(-way.getY(), way.getX()).multiply(halfHeight);
            Vector2D a = middle.subtract(along).subtract(up);
            Vector2D b = middle.add(along).subtract(up);
            Vector2D c = middle.add(along).add(up);
            Vector2D d = middle.subtract(along).add(up);
            return Stream.of(
                    new Segment(a, b),
                    new Segment(b, c),
                    new Segment(c, d),
                    new Segment(d, a),
                    new Segment(middle.subtract(along), middle.add(along)));
        }
    }

    void avoid(Mark.Stroke stroke) {
        stroke.paths().forEach(this::avoid);
    }

    void avoid(CurvePath path) {
        List<Vector2D> corners = Flatten.corners(path, FINE);
        for (int i = 1; i < corners.size(); i++) {
            inTheWay.add(new Segment(corners.get(i - 1), corners.get(i)));
        }
    }

    /** Where the paper will be joined: it stands in the way only where there is room beside it. */
    void divide(CurvePath join) {
        joins.add(new Segment(join.start(), join.end()));
    }

    /** From now on the words stand in the way of others. */
    List<Mark.Words> take(List<Mark.Words> block) {
        block.forEach(words -> Box.about(List.of(words), AROUND).segments().forEach(inTheWay::add));
        return block;
    }

    /** The first place that is free and off the joins, or else the first that is free; each place is for lines of words that stand together. */
    Optional<List<Mark.Words>> free(List<List<Mark.Words>> places) {
        return free(places, AROUND);
    }

    /** The same with more air round the words, as a share of their size. */
    Optional<List<Mark.Words>> free(List<List<Mark.Words>> places, double air) {
        Optional<List<Mark.Words>> joined = Optional.empty();
        for (List<Mark.Words> words : places) {
            if (crossings(words, air, inTheWay) == 0) {
                if (crossings(words, AROUND, joins) == 0) {
                    return Optional.of(words);
                }
                joined = joined.isPresent() ? joined : Optional.of(words);
            }
        }
        return joined;
    }

    List<Mark.Words> leastCrossed(List<List<Mark.Words>> places) {
        return places.stream()
                .min(Comparator.comparingLong(words -> crossings(words, AROUND, inTheWay)))
                .orElseThrow();
    }

    /** How many lines run through the words. */
    private static long crossings(List<Mark.Words> block, double air, List<Segment> lines) {
        Box box = Box.about(block, air);
        return lines.stream().filter(box::isCrossedBy).count();
    }
}
