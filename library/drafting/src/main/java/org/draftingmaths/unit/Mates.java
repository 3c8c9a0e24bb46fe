package org.draftingmaths.unit;

import java.math.BigDecimal;

/** Lengths of two edges that are sewn together, as they are printed. */
public final class Mates {

    private Mates() {}

    /**
     * What to print for two mates: the mean {@code (a + b) / 2} for both when {@code |a - b| <= tolerance}, else each its
     * own.
     *
     * <p>Two seams of 20.63 mm and 20.65 mm match, yet lie on either side of a tie in eighths and would print as 3/4 in
     * and 7/8 in. Rounding their mean prints both alike:
     *
     * <pre>{@code
     * Mates.Printed mates = Mates.printAlike(Length.mm(20.63), Length.mm(20.65), Length.mm(0.5));
     * Steps.DEFAULT.inches(mates.first());    // "7/8 in"
     * Steps.DEFAULT.inches(mates.second());   // "7/8 in"
     * }</pre>
     *
     * Lengths that differ by exactly the tolerance match; this is decided in decimal.
     *
     * @param a one mate
     * @param b the other
     * @param tolerance the largest difference that counts as matching, not negative
     * @return the two lengths to print, unrounded, in the order given
     * @throws IllegalArgumentException if the tolerance is negative
     */
    public static Printed printAlike(Length a, Length b, Length tolerance) {
        if (tolerance.mm() < 0) {
            throw new IllegalArgumentException("A tolerance must be at least 0 mm, but was " + tolerance);
        }
        BigDecimal difference = a.tieDecimal().subtract(b.tieDecimal()).abs();
        if (difference.compareTo(tolerance.tieDecimal()) > 0) {
            return new Printed(a, b, false);
        }
        BigDecimal mean = a.tieDecimal().add(b.tieDecimal()).divide(BigDecimal.valueOf(2));
        Length both = new Length(mean.doubleValue());
        return new Printed(both, both, true);
    }

    /**
     * The lengths to print for two mates.
     *
     * @param first what to print for the first, not yet rounded
     * @param second what to print for the second, not yet rounded
     * @param alike whether the mates match, so that both lengths are their mean
     */
    public record Printed(Length first, Length second, boolean alike) {}
}
