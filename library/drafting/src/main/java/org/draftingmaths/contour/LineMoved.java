package org.draftingmaths.contour;

import org.draftingmaths.ledger.Entry;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.unit.Steps;

/**
 * Where a line over a joined seam begins and ends now.
 *
 * @param line the line in words
 * @param seam the seam it runs over
 * @param along by how much it meets the seam farther along it, in mm, alike on both pieces
 * @param frontAngle at what angle in radians it leaves the seam on the front, measured through the cloth; on the back at the rest of half a turn
 * @param frontFar the edge at which it ends on the front
 * @param front by how much it ends farther along that edge, in mm
 * @param backFar the edge at which it ends on the back
 * @param back by how much it ends farther along that edge
 */
record LineMoved(
        String line,
        String seam,
        double along,
        double frontAngle,
        String frontFar,
        double front,
        String backFar,
        double back)
        implements Entry {

    @Override
    public String sentence(Steps steps) {
        return "Join front and back at '" + seam + "' and draw " + line + " anew: it meets '" + seam + "' "
                + by(along, steps) + " on both, '" + frontFar + "' of the front " + by(front, steps) + " and '"
                + backFar
                + "' of the back " + by(back, steps) + ". It leaves '" + seam + "' at "
                + Quantity.ANGLE.print(frontAngle, steps) + " on the front and "
                + Quantity.ANGLE.print(Math.PI - frontAngle, steps) + " on the back, and so runs straight on.";
    }

    private static String by(double along, Steps steps) {
        if (along == 0) {
            return "where it did";
        }
        return Quantity.LENGTH.print(Math.abs(along), steps) + (along > 0 ? " farther in" : " farther out");
    }
}
