package org.draftingmaths.fullness;

import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.unit.Steps;

/** Lengths in a question or a refusal. */
final class Words {

    private Words() {}

    static String of(double mm) {
        return Quantity.LENGTH.print(mm, Steps.DEFAULT);
    }
}
