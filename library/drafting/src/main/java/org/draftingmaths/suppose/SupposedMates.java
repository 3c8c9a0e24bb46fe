package org.draftingmaths.suppose;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.draftingmaths.check.Side;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.suppose.Supposition.Figure;

/** Which edges seem to be sewn together. The rules stand at {@link Suppose}. */
final class SupposedMates {

    private static final double LENGTH_GATE = 0.08;
    private static final double NEARLY = 0.02;
    private static final double FREE_ANGLE = Math.toRadians(3);
    private static final double ANGLES = Math.toRadians(20);
    private static final double ENDS_LIKELY = Math.toRadians(15);
    private static final double SHAPE = 0.01;
    private static final double TURNED_OVER = 0.25;
    private static final double ALONE = 4.5;
    private static final double MARGIN = 1;
    private static final double MARGIN_CERTAIN = 2;

    /**
     * Two edges laid on one another.
     *
     * @param first the one
     * @param second the other
     * @param alongside whether both are met in the same direction, anticlockwise, so that one piece is to be turned over
     * @param length by how many mm they differ
     * @param shape how far in mm their shapes stay apart
     * @param common the same over the length that both have
     * @param ends by how much the angles at either end miss a straight line together, the worse of the two, in radians
     * @param notches how many notches have no partner
     * @param cost all of it in one figure
     */
    record Pair(
            int first,
            int second,
            boolean alongside,
            double length,
            double shape,
            double common,
            double ends,
            int notches,
            double cost) {

        boolean has(int side) {
            return first == side || second == side;
        }

        int other(int side) {
            return first == side ? second : first;
        }
    }

    /** A pair that is told. */
    record Mates(Pair pair, Sureness sureness) {}

    private final double tolerance;
    private final List<Side> sides;
    private final List<List<Side>> pieces;
    private final Set<String> twinEdges = new HashSet<>();
    private final List<Supposition> twins = new ArrayList<>();
    private final List<Pair> pairs = new ArrayList<>();

    SupposedMates(Draft draft, double tolerance) {
        this.tolerance = tolerance;
        this.pieces = draft.pieces().stream().map(Side::of).toList();
        Set<String> sewn = new HashSet<>();
        for (Seam seam : draft.seams()) {
            Stream.of(seam.first(), seam.second())
                    .flatMap(mate -> mate.parts().stream())
                    .forEach(part -> sewn.add(part.edge() + "\n" + part.piece()));
        }
        this.sides = pieces.stream()
                .flatMap(List::stream)
                .filter(side -> side.role() == Role.SEAM && !sewn.contains(key(side)))
                .toList();
        findTwins();
        findPairs();
    }

    private static String key(Side side) {
        return side.edge() + "\n" + side.piece().name();
    }

    List<Side> sides() {
        return sides;
    }

    List<Supposition> twins() {
        return twins;
    }

    // ------------------------------------------------------------------------------------------------ twins

    private void findTwins() {
        for (int i = 0; i < pieces.size(); i++) {
            for (int j = i + 1; j < pieces.size(); j++) {
                List<Side> one = pieces.get(i);
                List<Side> other = pieces.get(j);
                Optional<Twins> mirrored = Twins.of(one, other, true, tolerance);
                Optional<Twins> alike = Twins.of(one, other, false, tolerance);
                mirrored.ifPresent(twin -> twins(one, other, twin));
                alike.ifPresent(twin -> twins(one, other, twin));
                alike.map(twin -> told(Supposition.Kind.ALIKE, one, other, twin))
                        .or(() -> mirrored.map(twin -> told(Supposition.Kind.MIRRORED, one, other, twin)))
                        .ifPresent(twins::add);
            }
        }
    }

    private void twins(List<Side> one, List<Side> other, Twins twin) {
        for (int k = 0; k < one.size(); k++) {
            twinEdges.add(key(one.get(k)) + "\n\n" + key(other.get(twin.partner(k, one.size()))));
        }
    }

    private static Supposition told(Supposition.Kind kind, List<Side> one, List<Side> other, Twins twin) {
        return new Supposition(
                kind,
                Sureness.CERTAIN,
                Stream.of(one, other)
                        .map(sides -> sides.get(0).piece())
                        .map(Piece::name)
                        .map(name -> "'" + name + "'")
                        .toList(),
                List.of(new Figure("apart at most", Quantity.LENGTH, twin.apart())));
    }

    private boolean twinned(Side one, Side other) {
        return twinEdges.contains(key(one) + "\n\n" + key(other)) || twinEdges.contains(key(other) + "\n\n" + key(one));
    }

    // ------------------------------------------------------------------------------------------------ pairs

    private void findPairs() {
        for (int i = 0; i < sides.size(); i++) {
            for (int j = i + 1; j < sides.size(); j++) {
                Side one = sides.get(i);
                Side other = sides.get(j);
                double apart = Math.abs(one.length() - other.length());
                if (apart <= Math.max(tolerance, LENGTH_GATE * Math.max(one.length(), other.length()))) {
                    Pair onwards = pair(i, j, false);
                    Pair alongside = pair(i, j, true);
                    Pair better = alongside.cost() < onwards.cost() ? alongside : onwards;
                    if (better.cost() < ALONE) {
                        pairs.add(better);
                    }
                }
            }
        }
    }

    private Pair pair(int i, int j, boolean alongside) {
        Side one = sides.get(i);
        Side other = sides.get(j);
        double longer = Math.max(one.length(), other.length());
        double length = Math.abs(one.length() - other.length());
        CurvePath path = alongside ? other.path() : other.path().reversed();
        double shape = Math.min(Laying.apart(one.path(), path, false), Laying.apart(one.path(), path, true));
        double common = length <= tolerance ? shape : common(one, other, alongside);
        double ends = Math.max(
                missing(one.before(), alongside ? other.before() : other.after()),
                missing(one.after(), alongside ? other.after() : other.before()));
        int notches = unpartnered(one, other, alongside);
        double cost = (length <= tolerance ? 0 : 0.5 + length / longer / 0.03)
                + (common <= tolerance ? 0 : Math.min(2, 0.25 + common / longer / SHAPE))
                + corner(missing(one.before(), alongside ? other.before() : other.after()))
                + corner(missing(one.after(), alongside ? other.after() : other.before()))
                + (notches > 0 ? 1 : 0)
                + (alongside ? TURNED_OVER : 0)
                + (one.piece().equals(other.piece()) || twinned(one, other) ? 2 : 0);
        return new Pair(i, j, alongside, length, shape, common, ends, notches, cost);
    }

    private static double common(Side one, Side other, boolean alongside) {
        CurvePath path = alongside ? other.path() : other.path().reversed();
        double best = Double.POSITIVE_INFINITY;
        for (boolean over : new boolean[] {false, true}) {
            best = Math.min(best, Laying.apartFromStart(one.path(), path, over));
            best = Math.min(best, Laying.apartFromStart(one.path().reversed(), path.reversed(), over));
        }
        return best;
    }

    private static double missing(double one, double other) {
        return Math.abs(one + other - Math.PI);
    }

    private static double corner(double missing) {
        return missing <= FREE_ANGLE ? 0 : Math.min(1, missing / ANGLES);
    }

    private int unpartnered(Side one, Side other, boolean alongside) {
        List<Double> its = other.notches().stream()
                .map(at -> alongside ? at : other.length() - at)
                .toList();
        double reach = tolerance + Math.abs(one.length() - other.length());
        long mine = one.notches().stream()
                .filter(at -> its.stream().noneMatch(to -> Math.abs(at - to) <= reach))
                .count();
        long theirs = its.stream()
                .filter(at -> one.notches().stream().noneMatch(to -> Math.abs(at - to) <= reach))
                .count();
        return (int) Math.max(mine, theirs);
    }

    // ------------------------------------------------------------------------------------------------ matching

    /** The pairs that are told, in the order of the sides. */
    List<Mates> mates() {
        List<Pair> matched = matched();
        List<Mates> told = new ArrayList<>();
        Set<Integer> settled = new HashSet<>();
        for (Pair pair : matched) {
            if (certain(pair)) {
                told.add(new Mates(pair, Sureness.CERTAIN));
                settled.addAll(List.of(pair.first(), pair.second()));
            }
        }
        List<Pair> open = pairs.stream()
                .filter(pair -> !settled.contains(pair.first()) && !settled.contains(pair.second()))
                .toList();
        for (Pair pair : open) {
            if (matched.contains(pair) && likely(pair, open)) {
                told.add(new Mates(pair, Sureness.LIKELY));
            } else if (matched.contains(pair) || tied(pair, open)) {
                told.add(new Mates(pair, Sureness.POSSIBLE));
            }
        }
        told.sort(Comparator.comparing((Mates mates) -> mates.pair().first())
                .thenComparing(mates -> mates.pair().second()));
        return told;
    }

    /** A neighbour on the same piece with which a side is as long as some other side of another piece. */
    record Chain(int first, int second, int mate) {}

    /** The sides without a candidate that fit one together with the next or the last side of their piece. */
    List<Chain> chains() {
        List<Chain> chains = new ArrayList<>();
        for (int i = 0; i < sides.size(); i++) {
            int next = next(i);
            if (next >= 0 && !(matches(i) && matches(next))) {
                mate(i, next).ifPresent(chains::add);
            }
        }
        return chains;
    }

    private Optional<Chain> mate(int first, int second) {
        double length = sides.get(first).length() + sides.get(second).length();
        for (int k = 0; k < sides.size(); k++) {
            Side other = sides.get(k);
            if (!other.piece().equals(sides.get(first).piece()) && Math.abs(other.length() - length) <= tolerance) {
                return Optional.of(new Chain(first, second, k));
            }
        }
        return Optional.empty();
    }

    /** The side that follows on its piece, if it is free as well. */
    private int next(int side) {
        Side own = sides.get(side);
        List<Side> ring =
                pieces.stream().filter(each -> each.contains(own)).findFirst().orElseThrow();
        return sides.indexOf(ring.get((ring.indexOf(own) + 1) % ring.size()));
    }

    boolean matches(int side) {
        return pairs.stream().anyMatch(pair -> pair.has(side));
    }

    private boolean certain(Pair pair) {
        Side one = sides.get(pair.first());
        Side other = sides.get(pair.second());
        double bow = Math.max(10 * tolerance, 0.01 * one.length());
        return pair.length() <= tolerance
                && pair.shape() <= tolerance
                && Math.min(Math.abs(one.bow()), Math.abs(other.bow())) > bow
                && pair.ends() <= FREE_ANGLE
                && pair.notches() == 0
                && !one.piece().equals(other.piece())
                && !twinned(one, other)
                && margin(pair, pairs) >= MARGIN_CERTAIN;
    }

    private boolean likely(Pair pair, List<Pair> open) {
        Side one = sides.get(pair.first());
        Side other = sides.get(pair.second());
        boolean fits = pair.length() <= tolerance && pair.ends() <= ENDS_LIKELY;
        boolean shaped = pair.length() <= NEARLY * Math.max(one.length(), other.length())
                && pair.common() <= tolerance
                && Math.min(Math.abs(one.bow()), Math.abs(other.bow())) > 4 * tolerance;
        return (fits || shaped)
                && !one.plain(tolerance)
                && !other.plain(tolerance)
                && !twinned(one, other)
                && margin(pair, open) >= MARGIN;
    }

    /** By how much the next best pair of either edge is worse. */
    private static double margin(Pair pair, List<Pair> among) {
        return among.stream()
                        .filter(other -> !other.equals(pair))
                        .filter(other -> other.has(pair.first()) || other.has(pair.second()))
                        .mapToDouble(Pair::cost)
                        .min()
                        .orElse(Double.POSITIVE_INFINITY)
                - pair.cost();
    }

    private static boolean tied(Pair pair, List<Pair> among) {
        return Stream.of(pair.first(), pair.second())
                .allMatch(side -> among.stream()
                        .filter(other -> other.has(side))
                        .allMatch(other -> pair.cost() < other.cost() + MARGIN));
    }

    /**
     * The pairs of the assignment of least cost, in which an edge may stay alone. Each group of edges that are candidates of one another
     * is assigned by itself.
     */
    private List<Pair> matched() {
        List<Pair> matched = new ArrayList<>();
        Set<Integer> seen = new HashSet<>();
        for (int side = 0; side < sides.size(); side++) {
            if (matches(side) && !seen.contains(side)) {
                List<Integer> group = group(side);
                seen.addAll(group);
                matched.addAll(matched(group));
            }
        }
        return matched;
    }

    private List<Integer> group(int side) {
        List<Integer> group = new ArrayList<>(List.of(side));
        for (int at = 0; at < group.size(); at++) {
            int from = group.get(at);
            for (Pair pair : pairs) {
                if (pair.has(from) && !group.contains(pair.other(from))) {
                    group.add(pair.other(from));
                }
            }
        }
        return group;
    }

    /** Edges that are assigned to one another; where the assignment goes round three or more, none of them is. */
    private List<Pair> matched(List<Integer> group) {
        int n = group.size();
        double[][] cost = new double[n][n];
        for (double[] row : cost) {
            Arrays.fill(row, 1e6);
        }
        for (int i = 0; i < n; i++) {
            cost[i][i] = ALONE;
        }
        List<Pair> own =
                pairs.stream().filter(pair -> group.contains(pair.first())).toList();
        for (Pair pair : own) {
            int i = group.indexOf(pair.first());
            int j = group.indexOf(pair.second());
            cost[i][j] = pair.cost();
            cost[j][i] = pair.cost();
        }
        int[] to = Assignment.of(cost);
        return own.stream()
                .filter(pair -> {
                    int i = group.indexOf(pair.first());
                    int j = group.indexOf(pair.second());
                    return to[i] == j && to[j] == i;
                })
                .toList();
    }
}
