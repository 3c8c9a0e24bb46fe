package org.draftingmaths.ledger;

import org.draftingmaths.unit.Steps;

/**
 * A figure before and after.
 *
 * @param what what was measured, for example {@code base length of 'waist'}
 * @param quantity what kind of figure it is
 * @param before the figure before, in the library's own unit
 * @param after the figure after
 */
public record Change(String what, Quantity quantity, double before, double after) implements Entry {

    /** How far two figures may lie apart by rounding alone, as a share of the larger. */
    private static final double ROUNDING = 1e-11;

    /** An eighth of an inch in mm, one step of a tape. */
    private static final double TAPE = 3.175;

    /**
     * Whether the figure is the same but for rounding.
     *
     * @return true when before and after differ by no more than a share of 1e-11
     */
    public boolean conserved() {
        return Math.abs(after - before) <= ROUNDING * Math.max(1, Math.max(Math.abs(before), Math.abs(after)));
    }

    @Override
    public String sentence(Steps steps) {
        String then = quantity.print(before, steps);
        String now = quantity.print(after, steps);
        if (conserved()) {
            return "The " + what + " stays " + now + ".";
        }
        if (isNothing(before)) {
            return "The " + what + " is now " + small(after, now) + "; there was none before.";
        }
        if (isNothing(after)) {
            return "The " + what + " was " + small(before, then) + "; nothing of it is left.";
        }
        if (!then.equals(now)) {
            return "The " + what + " goes from " + then + " to " + now + ".";
        }
        String fine = quantity.printFinely(Math.abs(after - before));
        return fine.equals(quantity.printFinely(0))
                ? "The " + what + " stays " + now + ", as near as can be drawn."
                : "The " + what + " stays near " + now + ", " + fine + (after > before ? " more." : " less.");
    }

    /** A length that a tape would show as nothing or next to it is told finely. */
    private String small(double figure, String printed) {
        return quantity == Quantity.LENGTH && Math.abs(figure) < TAPE ? quantity.printFinely(figure) : printed;
    }

    private static boolean isNothing(double figure) {
        return Math.abs(figure) <= ROUNDING;
    }
}
