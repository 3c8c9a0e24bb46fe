package org.draftingmaths.dart;

import org.draftingmaths.ledger.Entry;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.unit.Asked;
import org.draftingmaths.unit.Steps;

/**
 * A dart, or part of it, taken into a seam: the style line passes the apex, and the two edges along it are no longer alike by this angle.
 * An operation that makes a dart a seam puts it into its ledger; {@link DartAccount} reads it there.
 *
 * @param dart the dart it was taken from
 * @param angle the angle taken into the seam, in radians
 */
public record IntoSeam(String dart, double angle) implements Entry {

    /** Checks the angle. */
    public IntoSeam {
        Asked.angle("An angle taken into a seam", angle);
    }

    @Override
    public String sentence(Steps steps) {
        return "Take " + Quantity.ANGLE.print(angle, steps) + " of '" + dart + "' into the seam.";
    }
}
