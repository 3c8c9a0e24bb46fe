package org.draftingmaths.fullness;

import org.draftingmaths.ledger.Entry;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.unit.Steps;

/**
 * A slash that was spread.
 *
 * @param slash the name of the opening
 * @param mouth where it was slashed from, in words
 * @param end where to, in words
 * @param gap the width at the mouth, in mm
 * @param farGap the width at the other end; 0 where it is hinged
 */
public record Spreading(String slash, String mouth, String end, double gap, double farGap) implements Entry {

    @Override
    public String sentence(Steps steps) {
        String how = farGap == 0
                ? "hinged at " + end + ", which keeps its length"
                : "and by " + Quantity.LENGTH.print(farGap, steps) + " at " + end;
        return "Spread '" + slash + "' by " + Quantity.LENGTH.print(gap, steps) + " at " + mouth + ", " + how + ".";
    }
}
