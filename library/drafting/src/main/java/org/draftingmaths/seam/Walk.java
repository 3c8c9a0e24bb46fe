package org.draftingmaths.seam;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Seam;

/**
 * The two sides of a seam walked along one another.
 *
 * <p>For each interval between match points {@code difference = (folded length of the first - declared surplus) - folded length of the
 * second}: stitched darts are out, gathers and ease are in until the seam declares them.
 *
 * <p><b>Match points.</b> A side's marks are its notches and, where it is a chain, the joints of its parts; notches at a joint are one
 * mark with it; a notch at an end of its edge, or where an edge is cut into parts, parts nothing and is not counted. Every notch meets a notch or a joint
 * of the other side; a joint meets a notch, or a joint at the same place, or nothing. In order, and otherwise so that
 * partners lie nearest by their share of the way; between two joints equally near, the notch meets the one met first. Where a notch is left over
 * there is one interval, the whole seam.
 *
 * <p>So a waistband that is notched at the side seams and the centre back meets the joints of the skirt's waist there, and a
 * yoke without a notch is walked over the joint of its two panels as if there were none.
 *
 * @param seam the seam
 * @param intervals the intervals in the direction of sewing
 * @param firstNotches how many notches the first side carries
 * @param secondNotches how many the second carries
 * @param partnered whether every notch meets a notch or a joint of the other side
 */
public record Walk(Seam seam, List<Interval> intervals, int firstNotches, int secondNotches, boolean partnered) {

    /**
     * How far in mm apart two joints may lie that are meant to meet: well above what truing mends, and below what seams that
     * are kept apart on purpose are apart (common practice).
     */
    public static final double SAME_PLACE = 10;

    /** Copies the list. */
    public Walk {
        intervals = List.copyOf(intervals);
    }

    /**
     * One notch interval.
     *
     * @param number the interval, counted from 1 in the direction of sewing
     * @param first the folded length of the first side there, in mm
     * @param surplus what is declared to be held in of it
     * @param second the folded length of the second side there, in mm
     * @param firstParts the parts of the first side that lie there
     * @param secondParts the parts of the second
     */
    public record Interval(
            int number,
            double first,
            double surplus,
            double second,
            List<Seam.Part> firstParts,
            List<Seam.Part> secondParts) {

        /** Copies the lists. */
        public Interval {
            firstParts = List.copyOf(firstParts);
            secondParts = List.copyOf(secondParts);
        }

        /**
         * By how much the first side is too long for the second when sewn.
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
        WalkedSide first = WalkedSide.of(draft, seam.first());
        WalkedSide second = WalkedSide.of(draft, seam.second());
        Optional<List<MatchPoints.Pair>> met = MatchPoints.of(first, second);
        List<MatchPoints.Pair> ends = new ArrayList<>(met.orElse(List.of()));
        ends.add(0, new MatchPoints.Pair(-1, -1));
        ends.add(new MatchPoints.Pair(first.marks().size(), second.marks().size()));
        requireIntervals(seam, ends.size() - 1, met.isPresent());
        List<Interval> walked = IntStream.range(1, ends.size())
                .mapToObj(i -> interval(
                        i,
                        met.isPresent() ? surplus(seam, i) : surplus(seam),
                        first,
                        second,
                        ends.get(i - 1),
                        ends.get(i)))
                .toList();
        return new Walk(seam, walked, first.notches(), second.notches(), met.isPresent());
    }

    private static Interval interval(
            int number,
            double surplus,
            WalkedSide first,
            WalkedSide second,
            MatchPoints.Pair from,
            MatchPoints.Pair to) {
        return new Interval(
                number,
                first.length(from.first(), to.first()),
                surplus,
                second.length(from.second(), to.second()),
                first.parts(from.first(), to.first()),
                second.parts(from.second(), to.second()));
    }

    /**
     * How many notch intervals a seam has.
     *
     * @param draft the draft
     * @param seam one of its seams
     * @return the number; empty when some notch has no partner, so that no interval but the whole can be told
     */
    public static OptionalInt intervals(Draft draft, Seam seam) {
        return MatchPoints.of(WalkedSide.of(draft, seam.first()), WalkedSide.of(draft, seam.second()))
                .map(met -> OptionalInt.of(met.size() + 1))
                .orElseGet(OptionalInt::empty);
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
     * By how much the first side is too long for the second over the whole seam.
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
}
