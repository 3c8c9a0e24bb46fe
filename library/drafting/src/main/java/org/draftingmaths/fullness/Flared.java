package org.draftingmaths.fullness;

import org.draftingmaths.ledger.Entry;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.unit.Steps;

/**
 * A seam that was flared.
 *
 * @param piece the name of the piece
 * @param seam the name of the seam
 * @param hem the name of the hem
 * @param from how far in mm above the hem it begins
 * @param added how far in mm the hem's end was set out
 * @param turn the angle in radians between the old line and the new
 */
public record Flared(String piece, String seam, String hem, double from, double added, double turn) implements Entry {

    @Override
    public String sentence(Steps steps) {
        return "Flare '" + seam + "' of '" + piece + "' by " + Quantity.LENGTH.print(added, steps) + " at '" + hem
                + "', straight from " + Quantity.LENGTH.print(from, steps) + " above it, turned by "
                + Quantity.ANGLE.print(turn, steps)
                + "; raise the hem's end until the seam is as long as before, and square it there.";
    }
}
