package org.draftingmaths.finish;

import org.draftingmaths.ledger.Entry;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.unit.Steps;

/**
 * An edge traced for a facing.
 *
 * @param facing the name of the facing
 * @param piece the piece of the garment
 * @param edge its edge, darts closed
 * @param along its length in mm, which the facing's edge has too
 * @param width how wide the facing is, in mm
 * @param outer the length of the facing's outer edge, in mm
 */
public record FacingTraced(String facing, String piece, String edge, double along, double width, double outer)
        implements Entry {

    @Override
    public String sentence(Steps steps) {
        return "Trace '" + edge + "' of '" + piece + "' with its darts closed, " + Quantity.LENGTH.print(along, steps)
                + " along, for '" + facing + "', " + Quantity.LENGTH.print(width, steps)
                + " wide; its outer edge is " + Quantity.LENGTH.print(outer, steps) + " long.";
    }
}
