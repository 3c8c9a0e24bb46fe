package org.draftingmaths.finish;

import org.draftingmaths.ledger.Entry;
import org.draftingmaths.unit.Steps;

/**
 * A caution that goes with what was made, to be shown wherever it is shown.
 *
 * @param words what to mind, as whole sentences
 */
public record Caution(String words) implements Entry {

    /** For whatever is worn at the neck or hangs free, when the wearer was not declared an adult. */
    public static final Caution STRAPS = new Caution(
            "Caution: straps, ties, cords and neck loops can strangle a child. Nobody has declared the wearer an adult."
                    + " For children's clothes the limits of EN 14682, ASTM F1816 and the local rules come first, and someone"
                    + " qualified must judge the finished garment.");

    @Override
    public String sentence(Steps steps) {
        return words;
    }
}
