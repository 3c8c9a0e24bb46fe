package org.draftingmaths.seam;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * Which marks of one side of a seam meet which of the other, in the direction of sewing.
 *
 * <p>Every notch must meet a notch or a joint of the other side; a joint need not meet anything. Of all ways to do so in order, the one
 * is taken in which the partners lie nearest to each other, each by its share of its side's length. Joints that are left
 * and lie at the same place between two match points, to {@link Walk#SAME_PLACE}, meet as well.
 */
final class MatchPoints {

    /** Two ways whose partners lie apart by shares as alike as this are alike; the earlier partner is taken. */
    private static final double ALIKE = 1e-9;

    private final WalkedSide first;
    private final WalkedSide second;

    private MatchPoints(WalkedSide first, WalkedSide second) {
        this.first = first;
        this.second = second;
    }

    /**
     * Two marks that meet.
     *
     * @param first the number of the mark on the first side, from 0
     * @param second the number of the mark on the second
     */
    record Pair(int first, int second) {}

    /** The pairs in the direction of sewing; nothing when some notch has no partner. */
    static Optional<List<Pair>> of(WalkedSide first, WalkedSide second) {
        MatchPoints match = new MatchPoints(first, second);
        return match.notches().map(match::withJoints);
    }

    /** How the best way up to two marks goes on to them. */
    private enum Move {
        MEET,
        PASS_FIRST,
        PASS_SECOND
    }

    private Optional<List<Pair>> notches() {
        int rows = first.marks().size();
        int columns = second.marks().size();
        double[][] apart = new double[rows + 1][columns + 1];
        Move[][] moves = new Move[rows + 1][columns + 1];
        for (int i = 0; i <= rows; i++) {
            for (int j = 0; j <= columns; j++) {
                apart[i][j] = i + j == 0 ? 0 : Double.POSITIVE_INFINITY;
                if (i > 0 && j > 0 && (first.isNotch(i - 1) || second.isNotch(j - 1))) {
                    double gap = Math.abs(first.share(i - 1) - second.share(j - 1));
                    take(apart, moves, i, j, Move.MEET, apart[i - 1][j - 1] + gap);
                }
                if (i > 0 && !first.isNotch(i - 1)) {
                    take(apart, moves, i, j, Move.PASS_FIRST, apart[i - 1][j]);
                }
                if (j > 0 && !second.isNotch(j - 1)) {
                    take(apart, moves, i, j, Move.PASS_SECOND, apart[i][j - 1]);
                }
            }
        }
        return Double.isFinite(apart[rows][columns]) ? Optional.of(back(moves, rows, columns)) : Optional.empty();
    }

    private static void take(double[][] apart, Move[][] moves, int i, int j, Move move, double sum) {
        if (sum < apart[i][j] - ALIKE) {
            apart[i][j] = sum;
            moves[i][j] = move;
        }
    }

    private static List<Pair> back(Move[][] moves, int rows, int columns) {
        List<Pair> pairs = new ArrayList<>();
        int i = rows;
        int j = columns;
        while (i + j > 0) {
            Move move = moves[i][j];
            i -= move == Move.PASS_SECOND ? 0 : 1;
            j -= move == Move.PASS_FIRST ? 0 : 1;
            if (move == Move.MEET) {
                pairs.add(new Pair(i, j));
            }
        }
        Collections.reverse(pairs);
        return pairs;
    }

    /** The pairs, and between each two of them the joints of both sides that lie at one place. */
    private List<Pair> withJoints(List<Pair> pairs) {
        List<Pair> all = new ArrayList<>();
        Pair last = new Pair(-1, -1);
        Pair end = new Pair(first.marks().size(), second.marks().size());
        for (int i = 0; i <= pairs.size(); i++) {
            Pair next = i < pairs.size() ? pairs.get(i) : end;
            joints(last, next, all);
            if (i < pairs.size()) {
                all.add(next);
            }
            last = next;
        }
        return all;
    }

    private void joints(Pair from, Pair to, List<Pair> all) {
        double one = first.length(from.first(), to.first());
        double other = second.length(from.second(), to.second());
        int i = from.first() + 1;
        int j = from.second() + 1;
        while (i < to.first() && j < to.second()) {
            double here = first.length(from.first(), i) / one * other;
            double there = second.length(from.second(), j);
            if (Math.abs(here - there) <= Walk.SAME_PLACE) {
                all.add(new Pair(i, j));
                i++;
                j++;
            } else if (here < there) {
                i++;
            } else {
                j++;
            }
        }
    }
}
