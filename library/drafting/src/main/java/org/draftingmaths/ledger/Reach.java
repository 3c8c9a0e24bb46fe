package org.draftingmaths.ledger;

import org.draftingmaths.unit.Steps;

/**
 * A figure that was asked, and the range that is possible.
 *
 * @param quantity what kind of figure it is
 * @param asked the figure asked, in the library's own unit
 * @param least the least that is possible
 * @param most the most that is possible
 */
public record Reach(Quantity quantity, double asked, double least, double most) {

    /**
     * The reach in words.
     *
     * @return for example {@code asked 15.0°, possible 0.0° to 12.8°}
     */
    public String words() {
        return "asked " + quantity.print(asked, Steps.DEFAULT) + ", possible " + quantity.print(least, Steps.DEFAULT)
                + " to " + quantity.print(most, Steps.DEFAULT);
    }
}
