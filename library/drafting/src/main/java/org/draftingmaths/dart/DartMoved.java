package org.draftingmaths.dart;

import org.draftingmaths.ledger.Entry;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.unit.Steps;

/**
 * A dart, or part of it, moved from one place to another about its apex.
 *
 * @param from the dart it was taken from
 * @param to the dart it became
 * @param angle the angle moved, in radians
 * @param left the angle that the old dart keeps
 * @param intakeBefore the width of the old dart's mouth before, in mm
 * @param intakeAfter the width of the new dart's mouth, in mm
 */
public record DartMoved(String from, String to, double angle, double left, double intakeBefore, double intakeAfter)
        implements Entry {

    @Override
    public String sentence(Steps steps) {
        String rest = left == 0 ? "nothing of it is left" : Quantity.ANGLE.print(left, steps) + " of it are left";
        return "Turn " + Quantity.ANGLE.print(angle, steps) + " of '" + from + "' about its apex into '" + to + "': "
                + rest + "; its mouth was " + Quantity.LENGTH.print(intakeBefore, steps) + " wide, the new one is "
                + Quantity.LENGTH.print(intakeAfter, steps) + ".";
    }
}
