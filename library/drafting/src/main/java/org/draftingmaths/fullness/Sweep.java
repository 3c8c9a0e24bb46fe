package org.draftingmaths.fullness;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.ledger.Reach;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Panels;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Slash;
import org.draftingmaths.unit.Steps;

/**
 * How long an edge becomes when slashes that start on it are spread, and how far they must be spread for it to become so long.
 *
 * <p>A sweep is measured along: each gap counts as the arc on which its side swings, {@code g (a/2) / sin(a/2)}, not as its chord.
 * {@code n} equal hinged gaps of a strip of width {@code w} and height {@code H} then come to {@code w + H f} for a whole turn of
 * {@code f}, as in a ring sector, while their chords come to {@code 2 n H sin(f / 2n)}.
 */
public final class Sweep {

    private static final int HALVINGS = 200;

    private Sweep() {}

    /**
     * The sweep that spreading will give, along the edge.
     *
     * @param piece the piece
     * @param edge the edge on which the slashes start
     * @param slashes the slashes with their gaps
     * @return the length in mm
     */
    public static double along(Piece piece, String edge, List<Spread.Opened> slashes) {
        double sum = Lengths.folded(piece, edge);
        for (Spread.Opened each : slashes) {
            sum += new Gap(each.farGap(), each.gap(), length(piece, each.slash())).farAlong();
        }
        return sum;
    }

    /**
     * The equal hinged gaps that give a sweep: {@code sum of 2 R_i asin(g / 2 R_i) = sweep - length now}, which grows with {@code g}.
     *
     * <pre>{@code
     * List<Slash> slashes = Spread.even(skirt, "flare", "hem", "waist", 3);
     * double gap = Sweep.gap(skirt, "hem", slashes, 450).value();
     * Reworked spread = Spread.all(skirt, Sweep.hinged(slashes, gap), Stay.CENTRE);
     * }</pre>
     *
     * @param piece the piece
     * @param edge the edge on which the slashes start
     * @param slashes the slashes, from the edge that gains to the edge that keeps its length
     * @param sweep the length wanted in mm, along
     * @return the gap in mm at each slash, straight; or the sweeps that can be had
     */
    public static Answer gap(Piece piece, String edge, List<Slash> slashes, double sweep) {
        return gap(piece, edge, slashes, slashes.stream().map(slash -> 1.0).toList(), sweep);
    }

    /**
     * The graded hinged gaps that give a sweep: gap {@code i} is {@code k f_i} with one figure {@code k}.
     *
     * @param piece the piece
     * @param edge the edge on which the slashes start
     * @param slashes the slashes, from the edge that gains to the edge that keeps its length
     * @param shares how the gaps are to one another, each more than 0
     * @param sweep the length wanted in mm, along
     * @return the figure {@code k} in mm, the gap of a slash whose share is 1; or the sweeps that can be had
     * @throws IllegalArgumentException when there is no slash, or not one share for each
     */
    public static Answer gap(Piece piece, String edge, List<Slash> slashes, List<Double> shares, double sweep) {
        requireShares(slashes, shares);
        List<Double> lengths =
                slashes.stream().map(slash -> length(piece, slash)).toList();
        double now = Lengths.folded(piece, edge);
        double widest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < lengths.size(); i++) {
            widest = Math.min(widest, 2 * lengths.get(i) / shares.get(i));
        }
        DoubleUnaryOperator reached = factor -> {
            double sum = now;
            for (int i = 0; i < lengths.size(); i++) {
                double gap = Math.min(factor * shares.get(i), 2 * lengths.get(i));
                sum += new Gap(0, gap, lengths.get(i)).farAlong();
            }
            return sum;
        };
        double most = reached.applyAsDouble(widest);
        String asked = "Gaps for a sweep of " + Quantity.LENGTH.print(sweep, Steps.DEFAULT) + " along '" + edge + "'";
        return sweep > now && sweep <= most
                ? new Answer.Unique(asked, Quantity.LENGTH, rising(reached, 0, widest, sweep))
                : new Answer.None(
                        asked,
                        "hinged slashes only lengthen an edge, up to a half turn at one of them",
                        new Reach(Quantity.LENGTH, sweep, now, most));
    }

    /**
     * Slashes hinged where they end, with equal gaps.
     *
     * @param slashes the slashes
     * @param gap the gap in mm where each starts
     * @return the slashes with their gaps
     */
    public static List<Spread.Opened> hinged(List<Slash> slashes, double gap) {
        return hinged(slashes, slashes.stream().map(slash -> 1.0).toList(), gap);
    }

    /**
     * Slashes hinged where they end, with graded gaps.
     *
     * @param slashes the slashes
     * @param shares how the gaps are to one another, each more than 0
     * @param gap the gap in mm of a slash whose share is 1
     * @return the slashes with their gaps
     */
    public static List<Spread.Opened> hinged(List<Slash> slashes, List<Double> shares, double gap) {
        requireShares(slashes, shares);
        List<Spread.Opened> opened = new ArrayList<>();
        for (int i = 0; i < slashes.size(); i++) {
            opened.add(new Spread.Opened(slashes.get(i), gap * shares.get(i), 0));
        }
        return opened;
    }

    private static void requireShares(List<Slash> slashes, List<Double> shares) {
        if (slashes.isEmpty()
                || slashes.size() != shares.size()
                || !shares.stream().allMatch(each -> each > 0)) {
            throw new IllegalArgumentException("There is at least one slash, and for each a share of more than 0: "
                    + slashes.size() + " slashes, shares " + shares + ".");
        }
    }

    /** Where a rising function has a value. */
    static double rising(DoubleUnaryOperator function, double least, double most, double value) {
        double low = least;
        double high = most;
        for (int i = 0; i < HALVINGS && high - low > Math.ulp(high); i++) {
            double middle = (low + high) / 2;
            if (function.applyAsDouble(middle) < value) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    private static double length(Piece piece, Slash slash) {
        CurvePath leg = Measured.leg(Panels.cut(piece, slash).piece(), slash.name(), Leg.BEFORE);
        return leg.start().distance(leg.end());
    }
}
