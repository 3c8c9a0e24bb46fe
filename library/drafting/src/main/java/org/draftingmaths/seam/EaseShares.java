package org.draftingmaths.seam;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.ledger.Reach;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Seam;

/** Ease shared out over the notch intervals of a seam. */
public final class EaseShares {

    private EaseShares() {}

    /**
     * Shares out the surplus of the first edge over the second by weights, and declares it: {@code surplus of an interval = whole surplus * weight / sum of
     * weights}. An interval of no weight is sewn flat, as the ends of a sleeve's cap under the arm.
     *
     * <pre>{@code
     * Seam eased = EaseShares.declared(draft, seam, List.of(0.0, 2.0, 3.0, 0.0), 0.05, "cap ease");
     * }</pre>
     *
     * @param draft the draft
     * @param seam one of its seams, on which nothing is declared yet
     * @param weights for each notch interval in the direction of sewing its weight, 0 or more
     * @param most which share of its length an interval may be eased by at most
     * @param reason why it is eased
     * @return the seam with what is declared; walked, its whole difference is nothing, and what each interval still misses by is where the notches lie
     *     for other shares
     * @throws IllegalArgumentException when the weights are not one for each interval, negative or all 0, or the most is not a share
     * @throws DraftingException when the first edge is the shorter, or an interval would be eased by more than it may be
     */
    public static Seam declared(Draft draft, Seam seam, List<Double> weights, double most, String reason) {
        Walk walk = Walk.of(draft, new Seam(seam.name(), seam.first(), seam.second(), List.of(), seam.caught()));
        String asked = "Share out the ease of seam '" + seam.name() + "'";
        double sum = weights.stream().mapToDouble(Double::doubleValue).sum();
        if (weights.size() != walk.intervals().size()
                || weights.stream().anyMatch(weight -> !(weight >= 0))
                || !(sum > 0 && Double.isFinite(sum))) {
            throw new IllegalArgumentException("There is one weight of 0 or more for each of the "
                    + walk.intervals().size() + " notch intervals, and not all are 0: " + weights + ".");
        }
        if (!(most > 0 && most < 1)) {
            throw new IllegalArgumentException(
                    "An interval is eased by a share of more than 0 and less than 1: " + most + ".");
        }
        double whole = walk.difference();
        if (!(whole > 0)) {
            throw new DraftingException(
                    asked,
                    "'" + seam.first().edge() + "' is not longer than '"
                            + seam.second().edge() + "' by anything; it is " + Quantity.LENGTH.printFinely(whole)
                            + " longer");
        }
        List<Seam.Held> held = new ArrayList<>();
        IntStream.range(0, weights.size()).filter(i -> weights.get(i) > 0).forEach(i -> {
            double surplus = whole * weights.get(i) / sum;
            double length = walk.intervals().get(i).first();
            if (surplus > most * length) {
                throw new DraftingException(
                        asked,
                        "notch interval " + (i + 1) + " would be eased by more than "
                                + String.format(java.util.Locale.ROOT, "%.1f %%", 100 * most) + " of its length",
                        new Reach(Quantity.LENGTH, surplus, 0, most * length));
            }
            held.add(new Seam.Held(i + 1, surplus, Seam.How.EASE, reason));
        });
        return new Seam(seam.name(), seam.first(), seam.second(), held, seam.caught());
    }
}
