package org.draftingmaths.finish;

import org.draftingmaths.ledger.Entry;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.unit.Steps;

/**
 * A stretch of a hem that bends one way. Turned up by {@code d}, the raw edge is {@code L + d phi} long and lies on a line of
 * {@code L - d phi}: it is too long by {@code 2 d phi}, and too short by as much where the hem is hollow.
 *
 * @param from where it begins, as an arc in mm along the hem
 * @param to where it ends
 * @param turning {@code phi}: the angle turned in radians, positive where the hem is convex, negative where it is hollow
 * @param depth {@code d}: how deep the hem is turned up, in mm
 */
public record HemPart(double from, double to, double turning, double depth) implements Entry {

    /** A surplus of less, in mm, needs no easing; it would print as nothing. */
    private static final double FLAT = 0.5;

    /**
     * By how much the raw edge is too long for the line it is sewn to: {@code 2 d phi}.
     *
     * @return the surplus in mm; negative when it is too short
     */
    public double surplus() {
        return 2 * depth * turning;
    }

    /**
     * The length of the raw edge: {@code L + d phi}.
     *
     * @return the length in mm
     */
    public double raw() {
        return to - from + depth * turning;
    }

    /**
     * The length of the line it is sewn to: {@code L - d phi}.
     *
     * @return the length in mm
     */
    public double sewnTo() {
        return to - from - depth * turning;
    }

    /**
     * The share that the cloth has to give: of the sewn line where the raw edge is eased, of the raw edge where it is stretched.
     *
     * @return the surplus as a share, not signed; infinite when nothing is left of the line it is a share of
     */
    public double share() {
        double of = turning >= 0 ? sewnTo() : raw();
        return of > 0 ? Math.abs(surplus()) / of : Double.POSITIVE_INFINITY;
    }

    /**
     * The deepest turn-up that this stretch takes: with {@code e} the ease or the stretch, {@code e L / ((2 + e) |phi|)}.
     *
     * @param give how much the cloth gives
     * @return the depth in mm; infinite where the hem is straight
     */
    public double deepest(Give give) {
        double share = turning >= 0 ? give.ease() : give.stretch();
        return turning == 0 ? Double.POSITIVE_INFINITY : share * (to - from) / ((2 + share) * Math.abs(turning));
    }

    @Override
    public String sentence(Steps steps) {
        String where = "From " + Quantity.LENGTH.print(from, steps) + " to " + Quantity.LENGTH.print(to, steps)
                + " along, the hem ";
        if (turning == 0) {
            return where + "is straight: the turn-up lies flat.";
        }
        String turns = Quantity.ANGLE.print(Math.abs(turning), steps);
        if (Math.abs(surplus()) < FLAT) {
            return where + "turns by " + turns
                    + " only: the turn-up lies flat, its raw edge off by less than half a millimetre.";
        }
        return where + (turning > 0 ? "is convex" : "is hollow") + " and turns by " + turns + ": the raw edge is "
                + Quantity.LENGTH.print(Math.abs(surplus()), steps)
                + (turning > 0 ? " too long; ease it in." : " too short; stretch or clip it.");
    }
}
