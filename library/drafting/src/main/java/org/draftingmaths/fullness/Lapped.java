package org.draftingmaths.fullness;

import org.draftingmaths.ledger.Entry;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.unit.Steps;

/**
 * A slash that was lapped.
 *
 * @param slash the name of the slash
 * @param mouth where it was slashed from, in words
 * @param end where to, in words
 * @param overlap the overlap at the mouth, in mm
 * @param farOverlap the overlap at the other end
 * @param loses which side lost the cloth
 * @param step the longest step that was left in an edge, in mm
 */
public record Lapped(String slash, String mouth, String end, double overlap, double farOverlap, Leg loses, double step)
        implements Entry {

    @Override
    public String sentence(Steps steps) {
        String left = step == 0
                ? ""
                : "; a step of " + Quantity.LENGTH.printFinely(step) + " is left in the edge, to be blended";
        return "Lap '" + slash + "' by " + Quantity.LENGTH.print(overlap, steps) + " at " + mouth + " and "
                + Quantity.LENGTH.print(farOverlap, steps) + " at " + end + ": the side "
                + (loses == Leg.BEFORE ? "before" : "after") + " it loses the cloth" + left + ".";
    }
}
