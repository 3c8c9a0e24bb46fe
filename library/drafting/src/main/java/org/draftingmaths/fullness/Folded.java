package org.draftingmaths.fullness;

import org.draftingmaths.ledger.Entry;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.piece.Use;
import org.draftingmaths.unit.Steps;

/**
 * A pleat or tuck that was folded in.
 *
 * @param name its name
 * @param under where the underlay lies
 * @param underlay the width of each underlay in mm at the edge in which it is held
 * @param farUnderlay the same at its other end; 0 where it ends at a point
 * @param depth how far in mm it is stitched down
 */
public record Folded(String name, Use.Under under, double underlay, double farUnderlay, double depth) implements Entry {

    @Override
    public String sentence(Steps steps) {
        String where = switch (under) {
            case BEFORE -> "beneath the cloth before it";
            case AFTER -> "beneath the cloth after it";
            case BOTH -> "half beneath either side";
        };
        String far = farUnderlay == underlay
                ? ""
                : farUnderlay == 0
                        ? ", running out at its point"
                        : ", " + Quantity.LENGTH.print(farUnderlay, steps) + " at its other end";
        String held = depth == 0
                ? "held in the seam"
                : "stitched down for " + Quantity.LENGTH.print(depth, steps) + " and released from there";
        return "Fold '" + name + "' with an underlay of " + Quantity.LENGTH.print(underlay, steps) + far + ", " + where
                + ", " + held + ".";
    }
}
