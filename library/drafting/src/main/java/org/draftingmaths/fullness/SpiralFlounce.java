package org.draftingmaths.fullness;

import java.util.ArrayList;
import java.util.List;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.ledger.Reach;
import org.draftingmaths.unit.Asked;

/**
 * A flounce cut as a spiral, in one piece without joins; its radius grows along the seam, so that its ratio falls.
 *
 * <p>The inner edge is made of quarter circles that run into one another without a corner: arc {@code i} has the radius
 * {@code r + i g}, and the centres go round the corners of a square of side {@code g}, so that every fourth arc has the same
 * centre and lies {@code 4 g} further out. With {@code 4 g = depth + free} each turn clears the one before it by {@code free}, for the
 * allowances. The outer edge has the same centres and radii larger by the depth. Therefore, exactly:
 *
 * <ul>
 *   <li>the depth is the same everywhere;
 *   <li>the seam is {@code sum of (r + i g) angle i}, the last arc cut where the seam ends;
 *   <li>the ratio on arc {@code i} is {@code 1 + depth / (r + i g)};
 *   <li>with {@code T} the turn from end to end the hem is {@code seam + depth T}.
 * </ul>
 *
 * @param seam the seam in mm, along
 * @param depth the depth in mm
 * @param radius the radius of the first, tightest arc in mm
 * @param free how far in mm one turn clears the next, more than 0
 */
public record SpiralFlounce(double seam, double depth, double radius, double free) {

    private static final double QUARTER = Math.PI / 2;
    private static final int MOST_ARCS = 4000;

    /** An arc shorter than this, in mm, is left to the one before it. */
    private static final double LEAST_ARC = 1e-6;

    /** Checks the figures. */
    public SpiralFlounce {
        Asked.length("The seam of a flounce", seam);
        Asked.length("The depth of a flounce", depth);
        Asked.length("The first radius of a spiral", radius);
        Asked.length("What one turn of a spiral leaves free to the next", free);
        double most = MOST_ARCS * QUARTER * (radius + (MOST_ARCS - 1) / 2.0 * growth(depth, free));
        if (seam > most) {
            throw new IllegalArgumentException("A spiral has at most " + MOST_ARCS + " quarter turns, here " + most
                    + " mm of seam: " + seam + " mm.");
        }
    }

    /**
     * A stretch of constant radius.
     *
     * @param from where it starts, in mm along the seam
     * @param length its length in mm along the seam
     * @param radius the radius of its inner edge in mm
     * @param angle its angle in radians
     * @param ratio its ratio of hem to seam
     */
    public record Interval(double from, double length, double radius, double angle, double ratio) {}

    private static double growth(double depth, double free) {
        return (depth + free) / 4;
    }

    /**
     * By how much the radius grows from one quarter turn to the next.
     *
     * @return {@code (depth + free) / 4}, in mm
     */
    public double growth() {
        return growth(depth, free);
    }

    /**
     * The stretches of constant radius and ratio, tightest first.
     *
     * @return the intervals; their lengths sum to the seam
     */
    public List<Interval> intervals() {
        List<Interval> intervals = new ArrayList<>();
        double from = 0;
        for (int i = 0; seam - from > LEAST_ARC || i == 0; i++) {
            double own = radius + i * growth();
            double rest = seam - from;
            double length = rest - own * QUARTER > LEAST_ARC ? own * QUARTER : rest;
            intervals.add(new Interval(from, length, own, length / own, 1 + depth / own));
            from += length;
        }
        return intervals;
    }

    /**
     * The turn from end to end.
     *
     * @return the angle in radians
     */
    public double turn() {
        return intervals().stream().mapToDouble(Interval::angle).sum();
    }

    /**
     * The hem.
     *
     * @return {@code seam + depth turn}, in mm along
     */
    public double hem() {
        return seam + depth * turn();
    }

    /**
     * The ratio of the whole hem to the whole seam.
     *
     * @return the mean of the intervals' ratios, weighted by their lengths
     */
    public double meanRatio() {
        return hem() / seam;
    }

    /**
     * Which first radius gives this hem. The turn must be {@code T = (hem - seam) / depth}, of {@code m} whole quarters and a rest
     * {@code q}; then the seam is {@code r T + g (m (m - 1) pi / 4 + m q)}, which is solved for {@code r}. A tighter start turns
     * further, so there is one answer or none.
     *
     * @param seam the seam in mm
     * @param depth the depth in mm
     * @param free how far in mm one turn clears the next
     * @param hem the hem wanted, in mm along
     * @return the first radius; none when the hem is no longer than the seam, or longer than a spiral from a point would give
     * @throws IllegalArgumentException when a length is not more than 0
     */
    public static Answer radiusForHem(double seam, double depth, double free, double hem) {
        Asked.length("The seam of a flounce", seam);
        Asked.length("The depth of a flounce", depth);
        Asked.length("What one turn of a spiral leaves free to the next", free);
        Asked.length("The hem of a flounce", hem);
        String asked = "First radius of a spiral flounce for a hem of " + Words.of(hem);
        double most = seam + depth * turnFromPoint(seam, growth(depth, free));
        double turn = (hem - seam) / depth;
        double quarters = Math.floor(turn / QUARTER);
        double rest = turn - quarters * QUARTER;
        double grown = growth(depth, free) * (quarters * (quarters - 1) / 2 * QUARTER + quarters * rest);
        double radius = (seam - grown) / turn;
        if (!(hem > seam && radius > 0)) {
            return new Answer.None(
                    asked,
                    "a hem lies between the seam and that of a spiral from a point",
                    new Reach(Quantity.LENGTH, hem, seam, most));
        }
        return new Answer.Unique(asked, Quantity.LENGTH, radius);
    }

    /** The turn of a spiral that starts with no radius: its first quarter takes no seam. */
    private static double turnFromPoint(double seam, double growth) {
        double left = seam;
        double turn = QUARTER;
        for (int i = 1; left > 0; i++) {
            double own = i * growth;
            turn += Math.min(QUARTER, left / own);
            left -= own * QUARTER;
        }
        return turn;
    }
}
