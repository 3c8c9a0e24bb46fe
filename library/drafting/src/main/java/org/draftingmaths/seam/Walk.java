package org.draftingmaths.seam;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Notch;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Seam;

/**
 * Two edges walked along one another.
 *
 * <p>A notch at an end of its edge parts nothing and is not counted. For each notch interval {@code difference = (folded length of the first - declared surplus) - folded length of the
 * second}: stitched darts are out, gathers and ease are in until the seam declares them. Where the two edges carry unlike
 * numbers of notches there is one interval, the whole seam.
 *
 * @param seam the seam
 * @param intervals the intervals in the direction of sewing
 * @param firstNotches how many notches the first edge carries
 * @param secondNotches how many the second carries
 */
public record Walk(Seam seam, List<Interval> intervals, int firstNotches, int secondNotches) {

    /** A notch so near to an end of its edge, in mm, lies at that end. */
    private static final double AT_END = 1e-6;

    /** Copies the list. */
    public Walk {
        intervals = List.copyOf(intervals);
    }

    /**
     * One notch interval.
     *
     * @param number the interval, counted from 1 in the direction of sewing
     * @param first the folded length of the first edge there, in mm
     * @param surplus what is declared to be held in of it
     * @param second the folded length of the second edge there, in mm
     */
    public record Interval(int number, double first, double surplus, double second) {

        /**
         * By how much the first edge is too long for the second when sewn.
         *
         * @return the difference in mm; negative when it is too short
         */
        public double difference() {
            return first - surplus - second;
        }
    }

    /**
     * Walks one seam of a draft.
     *
     * @param draft the draft
     * @param seam one of its seams
     * @return the walk
     * @throws IllegalArgumentException when the seam declares ease for an interval it does not have
     */
    public static Walk of(Draft draft, Seam seam) {
        List<Double> first = intervals(draft, seam.first());
        List<Double> second = intervals(draft, seam.second());
        boolean partnered = first.size() == second.size();
        List<Double> one = partnered ? first : List.of(sum(first));
        List<Double> other = partnered ? second : List.of(sum(second));
        requireIntervals(seam, one.size(), partnered);
        List<Interval> walked = IntStream.range(0, one.size())
                .mapToObj(i ->
                        new Interval(i + 1, one.get(i), partnered ? surplus(seam, i + 1) : surplus(seam), other.get(i)))
                .toList();
        return new Walk(seam, walked, first.size() - 1, second.size() - 1);
    }

    /**
     * Walks every seam of a draft.
     *
     * @param draft the draft
     * @return the walks, in order of make
     */
    public static List<Walk> all(Draft draft) {
        return draft.seams().stream().map(seam -> of(draft, seam)).toList();
    }

    /**
     * Whether both edges carry the same number of notches.
     *
     * @return true when they do
     */
    public boolean partnered() {
        return firstNotches == secondNotches;
    }

    /**
     * By how much the first edge is too long for the second over the whole seam.
     *
     * @return the difference in mm; negative when it is too short
     */
    public double difference() {
        return intervals.stream().mapToDouble(Interval::difference).sum();
    }

    /**
     * The interval that misses by most.
     *
     * @return the interval
     */
    public Interval worst() {
        return intervals.stream()
                .max(Comparator.comparingDouble(interval -> Math.abs(interval.difference())))
                .orElseThrow();
    }

    private static void requireIntervals(Seam seam, int count, boolean partnered) {
        for (Seam.Held held : seam.held()) {
            if (partnered && held.interval() > count) {
                throw new IllegalArgumentException("Seam '" + seam.name() + "' declares ease for interval "
                        + held.interval() + " but has " + count + ".");
            }
        }
    }

    private static double surplus(Seam seam, int interval) {
        return seam.held().stream()
                .filter(held -> held.interval() == interval)
                .mapToDouble(Seam.Held::surplus)
                .sum();
    }

    private static double surplus(Seam seam) {
        return seam.held().stream().mapToDouble(Seam.Held::surplus).sum();
    }

    /** Folded lengths between the notches of one edge, in the direction of sewing. */
    private static List<Double> intervals(Draft draft, Seam.Mate mate) {
        Piece piece = draft.piece(mate.piece());
        List<Notch> marks = Stream.of(
                        Stream.of(Lengths.start(mate.edge())),
                        piece.notches().stream()
                                .filter(notch -> notch.edge().equals(mate.edge()) && parts(piece, notch))
                                .sorted(Comparator.comparingDouble(Notch::arc).thenComparing(Notch::beside)),
                        Stream.of(Lengths.end(piece, mate.edge())))
                .flatMap(each -> each)
                .toList();
        List<Double> lengths = new ArrayList<>();
        for (int i = 1; i < marks.size(); i++) {
            lengths.add(Lengths.folded(piece, marks.get(i - 1), marks.get(i)));
        }
        if (!mate.forward()) {
            Collections.reverse(lengths);
        }
        return lengths;
    }

    /** A notch at an end of its edge, as at a centre that was opened out, parts nothing. */
    private static boolean parts(Piece piece, Notch notch) {
        return notch.arc() > AT_END && notch.arc() < piece.edge(notch.edge()).length() - AT_END;
    }

    private static double sum(List<Double> lengths) {
        return lengths.stream().mapToDouble(Double::doubleValue).sum();
    }
}
