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

    /** In radians: over a metre it opens a millionth of a millimetre. */
    private static final double ROUNDING = 1e-9;

    @Override
    public String sentence(Steps steps) {
        return "Turn " + Quantity.ANGLE.print(angle, steps) + " of '" + from + "' about its apex into '" + to + "': "
                + rest(steps) + "; its mouth was " + Quantity.LENGTH.print(intakeBefore, steps)
                + " wide, the new one is "
                + Quantity.LENGTH.print(intakeAfter, steps) + ".";
    }

    /** What is left by rounding alone is nothing; what is too little for one decimal is told finely. */
    private String rest(Steps steps) {
        if (Math.abs(left) < ROUNDING) {
            return "nothing of it is left";
        }
        String degrees = Quantity.ANGLE.print(left, steps);
        boolean tooLittle = degrees.equals(Quantity.ANGLE.print(0, steps));
        return (tooLittle ? Quantity.ANGLE.printFinely(left) : degrees) + " of it are left";
    }
}
