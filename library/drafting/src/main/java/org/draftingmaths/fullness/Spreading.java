package org.draftingmaths.fullness;

import org.draftingmaths.ledger.Entry;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.unit.Steps;

/**
 * A slash that was spread.
 *
 * @param slash the name of the opening
 * @param mouth where it was slashed from
 * @param end where to
 * @param gap the width at the mouth, in mm
 * @param farGap the width at the other end; 0 where it is hinged
 */
public record Spreading(String slash, Spot mouth, Spot end, double gap, double farGap) implements Entry {

    @Override
    public String sentence(Steps steps) {
        String how = farGap == 0
                ? "hinged at " + at(end, steps) + ", which keeps its length"
                : "and by " + Quantity.LENGTH.print(farGap, steps) + " at " + at(end, steps);
        return "Spread '" + slash + "' by " + Quantity.LENGTH.print(gap, steps) + " at " + at(mouth, steps) + ", " + how
                + ".";
    }

    private static String at(Spot spot, Steps steps) {
        return spot instanceof Spot.On on
                ? on.border().words() + ", " + Quantity.LENGTH.print(on.arc(), steps) + " along"
                : spot.words();
    }
}
