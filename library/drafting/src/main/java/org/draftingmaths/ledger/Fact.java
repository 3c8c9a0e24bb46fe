package org.draftingmaths.ledger;

import org.draftingmaths.unit.Steps;

/**
 * A figure that an operation found or used.
 *
 * @param what what it is, for example {@code radius to the stitch line}
 * @param quantity what kind of figure it is
 * @param value the figure in the library's own unit
 */
public record Fact(String what, Quantity quantity, double value) implements Entry {

    @Override
    public String sentence(Steps steps) {
        return "The " + what + " is " + quantity.print(value, steps) + ".";
    }
}
