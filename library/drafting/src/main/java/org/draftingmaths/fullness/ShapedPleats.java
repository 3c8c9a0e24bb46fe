package org.draftingmaths.fullness;

import java.util.List;
import java.util.stream.Stream;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.ledger.Reach;
import org.draftingmaths.unit.Steps;

/**
 * Knife pleats that are taken in from hip to waist: the cloth is straight, so what the face loses the underlay gains. With pitches
 * {@code p_w, p_h} the underlay grows from {@code u} at the hip to {@code u + (p_h - p_w)/2} at the waist, and the cloth is {@code n
 * (p + 2u)} at both. The stitched edge leaves the straight fold at the hip; below it the folds run parallel.
 *
 * @param count how many pleats
 * @param waist the finished waist in mm
 * @param hip the finished hip in mm
 * @param underlay the underlay at the hip in mm
 */
public record ShapedPleats(int count, double waist, double hip, double underlay) {

    /** Checks the figures. */
    public ShapedPleats {
        if (count < 1 || !(waist > 0 && hip >= waist && underlay >= 0 && Double.isFinite(hip + underlay))) {
            throw new IllegalArgumentException(
                    "Shaped pleats are 1 or more, the waist more than 0 mm, the hip no smaller,"
                            + " the underlay 0 mm or more: " + count + ", " + waist + ", " + hip + ", " + underlay
                            + " mm.");
        }
    }

    /**
     * The pleats at the hip.
     *
     * @return their plan there
     */
    public PleatPlan atHip() {
        return new PleatPlan(PleatPlan.Kind.KNIFE, count, hip / count, underlay);
    }

    /**
     * The pleats at the waist: narrower faces, wider underlays.
     *
     * @return their plan there
     */
    public PleatPlan atWaist() {
        return new PleatPlan(PleatPlan.Kind.KNIFE, count, waist / count, underlay + (hip - waist) / 2 / count);
    }

    /**
     * What is poor: underlays that overlap at the hip or, clear there, at the waist.
     *
     * @return the findings, hip first
     */
    public List<Finding> findings() {
        return Stream.of(named(atHip(), "at the hip"), named(atWaist(), "at the waist"))
                .flatMap(List::stream)
                .toList();
    }

    private static List<Finding> named(PleatPlan plan, String where) {
        return plan.findings().stream()
                .map(each -> new Finding(
                        each.kind(),
                        each.where() + " " + where,
                        each.quantity(),
                        each.measured(),
                        each.expected(),
                        each.tolerance()))
                .toList();
    }

    /**
     * The widest underlay at the hip that is still clear at the waist: {@code p_w - (p_h - p_w)/2}.
     *
     * @param count how many pleats
     * @param waist the finished waist in mm
     * @param hip the finished hip in mm
     * @return the underlay at the hip in mm; none when the underlays overlap at the waist whatever it is, with the hips for which
     *     it is possible
     */
    public static Answer widestUnderlay(int count, double waist, double hip) {
        ShapedPleats bare = new ShapedPleats(count, waist, hip, 0);
        String asked = "Widest underlay clear at a waist of " + Quantity.LENGTH.print(waist, Steps.DEFAULT);
        double widest = bare.atWaist().face() - bare.atWaist().underlay();
        return widest >= 0
                ? new Answer.Unique(asked, Quantity.LENGTH, widest)
                : new Answer.None(
                        asked,
                        "what is taken in at the waist alone overlaps there",
                        new Reach(Quantity.LENGTH, hip, waist, 3 * waist));
    }
}
