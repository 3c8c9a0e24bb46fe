package org.draftingmaths.seam;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.SetLength;
import org.draftingmaths.ledger.Change;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Entry;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.ledger.Reach;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Redrafted;
import org.draftingmaths.piece.Redraw;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.unit.Steps;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/**
 * A seam trued notch interval by notch interval, by the least moves of what may move.
 *
 * <p>With {@code d} the differences that the intervals show when they are walked, {@code x} the moves, {@code W} their weights, and {@code A} what each move
 * changes in each interval ({@code 1} on the first edge, {@code -1} on the second; a notch that moves along makes one interval longer and the next
 * shorter), the moves are those with {@code A x = -d} and the least {@code x' W x}: {@code x = W^-1 A' m} with {@code (A W^-1 A') m = -d}.
 *
 * <p>A heavier weight moves less: give the neckline's end ten times the weight of the hem's, and the hem takes ten parts of eleven.
 */
public final class SeamTruing {

    /** What a walk shows beyond this, in mm, is a difference. */
    private static final double MATCHES = 1e-9;

    /** How well the seam must match afterwards, in mm. */
    private static final double TRUED = 1e-6;

    private SeamTruing() {}

    /** Something that may move. */
    public sealed interface May {
        /** The side of the seam. */
        Seam.Mate side();

        /** How much it is to be spared: with twice the weight it moves half as much. */
        double weight();
    }

    /**
     * One end of a side, along its own line; the neighbour there is carried with its last handle.
     *
     * @param side the side of the seam
     * @param end which end, by the direction of sewing
     * @param weight how much it is to be spared
     */
    public record AtEnd(Seam.Mate side, Truing.End end, double weight) implements May {
        /** Checks the weight. */
        public AtEnd {
            requireWeight(weight);
        }
    }

    /**
     * The curve of one notch interval of a side: its ends and the directions there stay, its handles give.
     *
     * @param side the side of the seam
     * @param interval the interval, counted from 1 in the direction of sewing
     * @param weight how much it is to be spared
     */
    public record InCurve(Seam.Mate side, int interval, double weight) implements May {
        /** Checks the weight. */
        public InCurve {
            requireWeight(weight);
        }
    }

    /**
     * A notch of a side, along its edge; the edge stays as it is.
     *
     * @param side the side of the seam
     * @param notch which notch, counted from 1 in the direction of sewing
     * @param weight how much it is to be spared
     */
    public record AtNotch(Seam.Mate side, int notch, double weight) implements May {
        /** Checks the weight. */
        public AtNotch {
            requireWeight(weight);
        }
    }

    private static void requireWeight(double weight) {
        if (!(weight > 0 && Double.isFinite(weight))) {
            throw new IllegalArgumentException("A weight is more than 0: " + weight + ".");
        }
    }

    /**
     * One move.
     *
     * @param may what moved
     * @param by by how many mm: that side became longer, or the notch went on in the direction of sewing; negative for shorter and back
     */
    public record Moved(May may, double by) implements Entry {
        @Override
        public String sentence(Steps steps) {
            String much = Quantity.LENGTH.printFinely(Math.abs(by));
            String edge = "'" + may.side().edge() + "' of '" + may.side().piece() + "' ";
            if (may instanceof AtNotch at) {
                return "Move notch " + at.notch() + " of " + edge + much + (by > 0 ? " on" : " back")
                        + ", as it is sewn.";
            }
            String where = may instanceof AtEnd at
                    ? "at the end where it " + (at.end() == Truing.End.START ? "starts" : "stops") + " to be sewn"
                    : "in its curve, notch interval " + ((InCurve) may).interval();
            return "Make " + edge + much + (by > 0 ? " longer " : " shorter ") + where + ".";
        }
    }

    /**
     * A seam that matches.
     *
     * @param draft the draft with the changed pieces
     * @param pieces the changed pieces and what was done to each, from which each can be undone
     * @param moves every move, the largest first
     * @param ledger all of it in words and figures
     */
    public record Trued(Draft draft, List<Reworked> pieces, List<Moved> moves, Ledger ledger) implements Redrafted {
        /** Copies the lists. */
        public Trued {
            pieces = List.copyOf(pieces);
            moves = List.copyOf(moves);
        }
    }

    /**
     * Trues a seam.
     *
     * <p>Conserved: the directions of all lines at their ends, so squares and blends stay; notches at their distance from the last interval's end
     * that did not move; every edge that neither may move nor is beside an end that moves. Changed and told: each move, the neighbours' lengths.
     *
     * <pre>{@code
     * SeamTruing.Trued side = SeamTruing.of(draft, seam, List.of(
     *         new SeamTruing.AtEnd(seam.first(), Truing.End.START, 1),
     *         new SeamTruing.AtEnd(seam.second(), Truing.End.START, 1)), 6);
     * }</pre>
     *
     * @param draft the draft
     * @param seam one of its seams
     * @param may what may move
     * @param limit the longest move in mm that is still truing; more is a fault of the draft, and hiding it is refused
     * @return the trued seam
     * @throws IllegalArgumentException when something that may move is not of the seam, or the limit is no length
     * @throws DraftingException when the notches have no partners, when nothing may move in an interval that does not match, when a move would be
     *     beyond the limit, when a curve cannot give as much, when a fold would slant, or when an opening breaks a line to be redrawn
     */
    public static Trued of(Draft draft, Seam seam, List<May> may, double limit) {
        if (!(limit >= 0 && Double.isFinite(limit))) {
            throw new IllegalArgumentException("A limit for truing is 0 mm or more: " + limit + " mm.");
        }
        String asked = "True seam '" + seam.name() + "'";
        Walk walk = Walk.of(draft, seam);
        if (!walk.partnered()) {
            throw new DraftingException(
                    asked,
                    "its edges carry " + walk.firstNotches() + " and " + walk.secondNotches()
                            + " notches; give every notch its partner first");
        }
        may.forEach(each -> requireOf(seam, each, walk));
        List<Moved> moves = moves(seam, walk, may, limit, asked);
        Draft trued = draft;
        List<Reworked> pieces = new ArrayList<>();
        Ledger ledger = Ledger.of(moves.stream().sorted(LARGEST).toArray(Entry[]::new));
        for (Seam.Mate side : List.of(seam.first(), seam.second())) {
            List<Moved> own = moves.stream()
                    .filter(move -> move.may().side().equals(side))
                    .toList();
            if (!own.isEmpty()) {
                Reworked done = redrawn(trued.piece(side.piece()), side, own, asked);
                trued = trued.with(done.piece());
                pieces.add(done);
                ledger = ledger.then(done.ledger().about(side.piece()));
            }
        }
        Walk again = Walk.of(trued, seam);
        if (Math.abs(again.worst().difference()) > TRUED) {
            throw new DraftingException(
                    asked, "redrawing the neighbours changed the seam itself; move its ends one after the other");
        }
        ledger = ledger.then(new Change(
                "worst difference along '" + seam.name() + "'",
                Quantity.LENGTH,
                walk.worst().difference(),
                again.worst().difference()));
        return new Trued(trued, pieces, moves.stream().sorted(LARGEST).toList(), ledger);
    }

    private static final Comparator<Moved> LARGEST = Comparator.comparingDouble((Moved move) -> -Math.abs(move.by()));

    private static void requireOf(Seam seam, May may, Walk walk) {
        if (!may.side().equals(seam.first()) && !may.side().equals(seam.second())) {
            throw new IllegalArgumentException("'" + may.side().edge() + "' of '"
                    + may.side().piece() + "' is not a side of seam '" + seam.name() + "'.");
        }
        int intervals = walk.intervals().size();
        if (may instanceof InCurve in && !(in.interval() >= 1 && in.interval() <= intervals)) {
            throw new IllegalArgumentException(
                    "Seam '" + seam.name() + "' has " + intervals + " notch intervals, not " + in.interval() + ".");
        }
        if (may instanceof AtNotch at && !(at.notch() >= 1 && at.notch() < intervals)) {
            throw new IllegalArgumentException("Seam '" + seam.name() + "' has " + (intervals - 1)
                    + " notches on each edge, not " + at.notch() + ".");
        }
    }

    /** By how much one mm of a move makes each interval of the first edge longer than that of the second. */
    private static double[] effect(Seam seam, May may, int intervals) {
        double[] effect = new double[intervals];
        double sign = may.side().equals(seam.first()) ? 1 : -1;
        if (may instanceof AtEnd at) {
            effect[at.end() == Truing.End.START ? 0 : intervals - 1] = sign;
        } else if (may instanceof InCurve in) {
            effect[in.interval() - 1] = sign;
        } else {
            int notch = ((AtNotch) may).notch();
            effect[notch - 1] = sign;
            effect[notch] = -sign;
        }
        return effect;
    }

    private static List<Moved> moves(Seam seam, Walk walk, List<May> may, double limit, String asked) {
        int intervals = walk.intervals().size();
        double[] missing = walk.intervals().stream()
                .mapToDouble(interval -> -interval.difference())
                .toArray();
        double[] least = least(seam, may, missing);
        List<Moved> moves = new ArrayList<>();
        double[] left = missing.clone();
        for (int i = 0; i < may.size(); i++) {
            double[] effect = effect(seam, may.get(i), intervals);
            for (int k = 0; k < intervals; k++) {
                left[k] -= effect[k] * least[i];
            }
            if (Math.abs(least[i]) > MATCHES) {
                moves.add(new Moved(may.get(i), least[i]));
            }
        }
        for (int k = 0; k < intervals; k++) {
            if (Math.abs(left[k]) > TRUED) {
                throw new DraftingException(
                        asked,
                        "notch interval " + (k + 1) + " is off by "
                                + Quantity.LENGTH.printFinely(-missing[k])
                                + ", and nothing that may move can mend all of it");
            }
        }
        moves.stream().filter(move -> Math.abs(move.by()) > limit).findFirst().ifPresent(move -> {
            throw new DraftingException(
                    asked,
                    "'" + move.may().side().edge() + "' of '"
                            + move.may().side().piece()
                            + "' would be moved by more than truing; look for the fault in the draft",
                    new Reach(Quantity.LENGTH, Math.abs(move.by()), 0, limit));
        });
        return moves;
    }

    /** The moves of least weighted squares; of intervals that nothing can mend the nearest that can be had. */
    private static double[] least(Seam seam, List<May> may, double[] missing) {
        int n = missing.length;
        DMatrixRMaj normal = new DMatrixRMaj(n, n);
        for (May each : may) {
            double[] effect = effect(seam, each, n);
            for (int i = 0; i < n; i++) {
                for (int k = 0; k < n; k++) {
                    normal.add(i, k, effect[i] * effect[k] / each.weight());
                }
            }
        }
        DMatrixRMaj multipliers = new DMatrixRMaj(n, 1);
        LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.pseudoInverse(true);
        if (!may.isEmpty() && solver.setA(normal)) {
            solver.solve(new DMatrixRMaj(n, 1, true, missing), multipliers);
        }
        double[] moves = new double[may.size()];
        for (int m = 0; m < moves.length; m++) {
            double[] effect = effect(seam, may.get(m), n);
            for (int k = 0; k < n; k++) {
                moves[m] += effect[k] * multipliers.get(k) / may.get(m).weight();
            }
        }
        return moves;
    }

    /** One side with its moves: interval by interval in the direction of sewing, then both ends. */
    private static Reworked redrawn(Piece piece, Seam.Mate side, List<Moved> moves, String asked) {
        CurvePath own = Paper.edge(piece, side.edge());
        CurvePath sewn = side.forward() ? own : own.reversed();
        List<Double> cuts = cuts(piece, side, own.length());
        List<CurvePath> parts = new ArrayList<>();
        for (int i = 1; i < cuts.size(); i++) {
            parts.add(curved(sewn.between(cuts.get(i - 1), cuts.get(i)), i, moves, asked));
        }
        double start = at(moves, Truing.End.START);
        double stop = at(moves, Truing.End.STOP);
        int last = parts.size() - 1;
        parts.set(0, Ends.lengthened(parts.get(0).reversed(), start).reversed());
        parts.set(last, Ends.lengthened(parts.get(last), stop));
        CurvePath drawn = CurvePath.joined(parts);
        Map<String, CurvePath> lines = new TreeMap<>();
        lines.put(side.edge(), side.forward() ? drawn : drawn.reversed());
        if (start != 0) {
            carry(piece, side, sewn.start(), drawn.start(), lines, asked);
        }
        if (stop != 0) {
            carry(piece, side, sewn.end(), drawn.end(), lines, asked);
        }
        List<Double> arcs = arcs(parts, moves, side.forward());
        requireInOrder(arcs, drawn.length(), side, asked);
        return Redraw.edges(piece, lines, Map.of(), Map.of(side.edge(), arcs));
    }

    /** Where the notches part the side, in the direction of sewing, its ends first and last. */
    private static List<Double> cuts(Piece piece, Seam.Mate side, double length) {
        List<Double> cuts = new ArrayList<>(List.of(0.0, length));
        piece.notches().stream()
                .filter(notch -> notch.edge().equals(side.edge()))
                .map(notch -> side.forward() ? notch.arc() : length - notch.arc())
                .filter(arc -> arc > CurvePath.JOINT && arc < length - CurvePath.JOINT)
                .forEach(cuts::add);
        return cuts.stream().sorted().toList();
    }

    private static CurvePath curved(CurvePath part, int interval, List<Moved> moves, String asked) {
        double by = moves.stream()
                .filter(move -> move.may() instanceof InCurve in && in.interval() == interval)
                .mapToDouble(Moved::by)
                .sum();
        try {
            return by == 0 ? part : SetLength.of(part, part.length() + by);
        } catch (IllegalArgumentException cannot) {
            throw new DraftingException(asked, cannot.getMessage().replaceAll("\\.$", ""));
        }
    }

    private static double at(List<Moved> moves, Truing.End end) {
        return moves.stream()
                .filter(move -> move.may() instanceof AtEnd at && at.end() == end)
                .mapToDouble(Moved::by)
                .sum();
    }

    /** The new arcs of the inner notches along the edge's own direction. */
    private static List<Double> arcs(List<CurvePath> parts, List<Moved> moves, boolean forward) {
        List<Double> arcs = new ArrayList<>();
        double whole = parts.stream().mapToDouble(CurvePath::length).sum();
        double along = 0;
        for (int i = 1; i < parts.size(); i++) {
            int notch = i;
            along += parts.get(i - 1).length();
            double moved = along
                    + moves.stream()
                            .filter(move -> move.may() instanceof AtNotch at && at.notch() == notch)
                            .mapToDouble(Moved::by)
                            .sum();
            arcs.add(forward ? moved : whole - moved);
        }
        if (!forward) {
            Collections.reverse(arcs);
        }
        return arcs;
    }

    private static void requireInOrder(List<Double> arcs, double length, Seam.Mate side, String asked) {
        double before = 0;
        for (double arc : arcs) {
            if (!(arc > before && arc < length)) {
                throw new DraftingException(
                        asked,
                        "a notch of '" + side.edge() + "' of '" + side.piece()
                                + "' would pass its neighbour or an end");
            }
            before = arc;
        }
    }

    private static void carry(
            Piece piece, Seam.Mate side, Vector2D corner, Vector2D to, Map<String, CurvePath> lines, String asked) {
        String next = piece.edges().stream()
                .map(each -> each.name())
                .filter(name -> !name.equals(side.edge()))
                .filter(name -> Redraw.first(piece, name).start().distance(corner) <= CurvePath.JOINT
                        || Redraw.last(piece, name).end().distance(corner) <= CurvePath.JOINT)
                .findFirst()
                .orElseThrow(() -> new DraftingException(asked, "an opening lies at the corner; close it first"));
        CurvePath first = Redraw.first(piece, next);
        boolean starts = first.start().distance(corner) <= CurvePath.JOINT;
        CurvePath line = starts ? first.reversed() : Redraw.last(piece, next);
        Vector2D way = line.start().directionTo(line.end());
        if (piece.edge(next).role() == Role.FOLD
                && Math.abs(way.signedArea(line.end().vectorTo(to))) > CurvePath.JOINT) {
            throw new DraftingException(asked, "its end lies on the fold '" + next + "', which would be slanted");
        }
        CurvePath carried = Ends.carried(line, to);
        lines.put(next, starts ? carried.reversed() : carried);
    }
}
