package org.draftingmaths.exchange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Flatten;

/**
 * Finds a free place for words. Every line that is drawn, and all words that have their place, stand in the way; of several places
 * the first that is free is taken, and where none is free the one that is crossed least.
 */
final class Labels {

    /** How finely curves are looked at, in mm. */
    private static final double FINE = 0.3;

    /** The room kept round words, as a share of their size. */
    private static final double AROUND = 0.12;

    private final List<Segment> inTheWay = new ArrayList<>();

    private record Segment(Vector2D from, Vector2D to) {}

    /** A rectangle of words: its middle, its direction, half its width and half its height. */
    private record Box(Vector2D middle, Vector2D way, double halfWidth, double halfHeight) {

        static Box about(Mark.Words words) {
            List<Vector2D> corners = words.box();
            double width = corners.get(0).distance(corners.get(1));
            double height = corners.get(1).distance(corners.get(2));
            return new Box(
                    corners.get(0).lerp(corners.get(2), 0.5),
                    words.way(),
                    width * Lettering.WIDER / 2 + AROUND * words.size(),
                    height / 2 + AROUND * words.size());
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

    /** Gives words their place; from now on they stand in the way of others. */
    Mark.Words place(List<Mark.Words> candidates) {
        return placeTogether(candidates.stream().map(List::of).toList()).get(0);
    }

    /** Gives several lines of words their place together. */
    List<Mark.Words> placeTogether(List<List<Mark.Words>> candidates) {
        List<Mark.Words> placed = candidates.stream()
                .filter(words -> crossings(words) == 0)
                .findFirst()
                .orElseGet(() -> candidates.stream()
                        .min(Comparator.comparingLong(this::crossings))
                        .orElseThrow());
        placed.forEach(words -> Box.about(words).segments().forEach(inTheWay::add));
        return placed;
    }

    /** How many lines run through the words. */
    long crossings(List<Mark.Words> words) {
        return words.stream()
                .map(Box::about)
                .mapToLong(box -> inTheWay.stream().filter(box::isCrossedBy).count())
                .sum();
    }
}
