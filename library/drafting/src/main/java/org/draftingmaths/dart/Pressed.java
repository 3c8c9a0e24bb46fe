package org.draftingmaths.dart;

import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.ledger.Entry;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.unit.Steps;

/**
 * To which side a dart is pressed, in words that hold on the body: upright darts to the centre, level darts down (Practical Dress Design,
 * p. 42, {@code issuu.com/betokalima}; common practice). The centre line lies on x = 0 and y runs up.
 *
 * @param dart the name of the dart
 * @param leg the leg whose panel the underlay lies on
 * @param way where to, in words
 */
public record Pressed(String dart, Leg leg, String way) implements Entry {

    /**
     * As the trade presses a dart of this direction.
     *
     * @param piece the piece
     * @param dart the name of a dart
     * @return the side
     */
    static Pressed byCustom(Piece piece, String dart) {
        Vector2D before = Measured.leg(piece, dart, Leg.BEFORE).start();
        Vector2D after = Measured.leg(piece, dart, Leg.AFTER).start();
        Vector2D way = Measured.tip(piece, dart).vectorTo(before.lerp(after, 0.5));
        boolean upright = Math.abs(way.getY()) > Math.abs(way.getX());
        boolean towardsBefore =
                upright ? Math.abs(before.getX()) < Math.abs(after.getX()) : before.getY() < after.getY();
        return new Pressed(dart, towardsBefore ? Leg.BEFORE : Leg.AFTER, upright ? "towards the centre" : "downwards");
    }

    @Override
    public String sentence(Steps steps) {
        return "Press '" + dart + "' " + way + ".";
    }
}
