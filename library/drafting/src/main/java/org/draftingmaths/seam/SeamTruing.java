package org.draftingmaths.seam;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.draftingmaths.ledger.Change;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Entry;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.ledger.Reach;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Redrafted;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.unit.Asked;
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
 * <p><b>Over a dart</b> a side is sewn with the dart closed, so what is walked and moved is the closed edge: its stretches end to end, the mouth a
 * joint between them. {@code d}, {@code A} and {@code x} are as above, with folded lengths. An end moves on the stretch at that end; a curve gives on
 * both sides of the dart by one factor of its handles, and where a stretch is straight, in the others alone; a notch moves over the dart as over any
 * other place. The mouth does not move, nor do the directions of the edge there: so both legs, their ends, the point and the width of the dart stay
 * as they are, and the edge is as smooth over the closed dart as it was. The paper between the legs is drawn anew from the stretches beside it
 * ({@link org.draftingmaths.piece.DartEnd}). Pleats and tucks are treated alike; gathers, slashes and flare are part of the sewn length, and refused.
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
    public record AtEnd(Seam.Mate side, Seam.End end, double weight) implements May {
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
            return "Make " + edge + much + (by > 0 ? " longer " : " shorter ") + where(may) + ".";
        }
    }

    private static String where(May may) {
        if (may instanceof AtNotch at) {
            return "at its notch " + at.notch();
        }
        return may instanceof AtEnd at ? where(at.end()) : "in its curve, notch interval " + ((InCurve) may).interval();
    }

    static String where(Seam.End end) {
        return "at the end where it " + (end == Seam.End.START ? "starts" : "stops") + " to be sewn";
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
     * that did not move; every edge that neither may move nor is beside an end that moves; every dart. Changed and told: each move, the neighbours' lengths.
     *
     * <pre>{@code
     * SeamTruing.Trued side = SeamTruing.of(draft, seam, List.of(
     *         new SeamTruing.AtEnd(seam.first(), Seam.End.START, 1),
     *         new SeamTruing.AtEnd(seam.second(), Seam.End.START, 1)), 6);
     * }</pre>
     *
     * @param draft the draft
     * @param seam one of its seams
     * @param may what may move; of a side with darts too
     * @param limit the longest move in mm that is still truing; more is a fault of the draft, and hiding it is refused
     * @return the trued seam
     * @throws IllegalArgumentException when something that may move is not of the seam, or the limit is no length
     * @throws DraftingException when the notches have no partners, when nothing may move in an interval that does not match, when a move would be
     *     beyond the limit, when a curve cannot give as much, when a fold would slant, when a dart lies over what would move (at the corner, or
     *     where an end is to be cut back), or when an opening in a side is not sewn shut
     */
    public static Trued of(Draft draft, Seam seam, List<May> may, double limit) {
        Asked.lengthOrNone("A limit for truing", limit);
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
        Ledger ledger = Ledger.of(moves.toArray(Entry[]::new));
        for (Seam.Mate side : List.of(seam.first(), seam.second())) {
            List<Moved> own = moves.stream()
                    .filter(move -> move.may().side().equals(side))
                    .toList();
            if (!own.isEmpty()) {
                Reworked done =
                        ClosedSide.of(trued.piece(side.piece()), side, asked).moved(own);
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
        return new Trued(trued, pieces, moves, ledger);
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
            effect[at.end() == Seam.End.START ? 0 : intervals - 1] = sign;
        } else if (may instanceof InCurve in) {
            effect[in.interval() - 1] = sign;
        } else {
            int notch = ((AtNotch) may).notch();
            effect[notch - 1] = sign;
            effect[notch] = -sign;
        }
        return effect;
    }

    /** The moves, the largest first. */
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
        moves.sort(LARGEST);
        if (!moves.isEmpty() && Math.abs(moves.get(0).by()) > limit) {
            Moved most = moves.get(0);
            throw new DraftingException(
                    asked,
                    "'" + most.may().side().edge() + "' of '"
                            + most.may().side().piece() + "' would be moved by more than truing " + where(most.may())
                            + "; look for the fault in the draft",
                    new Reach(Quantity.LENGTH, Math.abs(most.by()), 0, limit));
        }
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
}
