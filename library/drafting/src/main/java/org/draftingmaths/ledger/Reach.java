package org.draftingmaths.ledger;

import org.draftingmaths.unit.Steps;

/**
 * A figure that was asked, and the range that is possible.
 *
 * @param quantity what kind of figure it is
 * @param asked the figure asked, in the library's own unit
 * @param least the least that is possible
 * @param most the most that is possible; infinite when there is no end to it
 */
public record Reach(Quantity quantity, double asked, double least, double most) {

    /** Lengths nearer than an eighth of an inch, in mm, look alike on a tape. */
    private static final double NEAR = 3.175;

    /**
     * The reach in words.
     *
     * @return for example {@code asked 15.0°, possible 0.0° to 12.8°}
     */
    public String words() {
        return words(Steps.DEFAULT);
    }

    /**
     * The reach in words.
     *
     * @param steps the steps to which lengths are rounded for print
     * @return for example {@code asked 15.0°, possible 0.0° to 12.8°}
     */
    public String words(Steps steps) {
        String upwards = Double.isInfinite(most) ? " or more" : " to " + quantity.print(most, steps);
        return "asked " + quantity.print(asked, steps) + ", possible " + quantity.print(least, steps) + upwards
                + precisely(steps);
    }

    /** A limit is rounded for print, and may be refused when asked as it is printed: near it both figures are told finely. */
    private String precisely(Steps steps) {
        double limit = asked < least ? least : most;
        boolean alike = quantity.print(asked, steps).equals(quantity.print(limit, steps));
        boolean near = quantity == Quantity.LENGTH && Math.abs(asked - limit) < NEAR;
        return asked != limit && Double.isFinite(limit) && (alike || near)
                ? "; precisely, " + quantity.printFinely(asked) + " asked and " + quantity.printFinely(limit)
                        + " possible"
                : "";
    }
}
