package org.draftingmaths.piece;

import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Ledger;

/** The grain line given another direction. The outline, its edges and their marks stay. */
public final class Regrain {

    private Regrain() {}

    /**
     * Turns the grain line and draws it where it lies inside the piece.
     *
     * @param piece the piece
     * @param angle by how much in radians, anticlockwise
     * @return the piece with its new grain, and the step, which can be undone
     * @throws IllegalArgumentException when the angle is not a number
     * @throws DraftingException when the piece has no grain line
     */
    public static Reworked turned(Piece piece, double angle) {
        if (!Double.isFinite(angle)) {
            throw new IllegalArgumentException("A grain line is turned by a finite angle: " + angle + " rad.");
        }
        Grain before = piece.grain()
                .orElseThrow(() -> new DraftingException(
                        "Turn the grain of '" + piece.name() + "'", "no grain line is drawn on it; draw one first"));
        Vector2D way = AffineTransformMatrix2D.createRotation(angle).apply(before.direction());
        Piece turned = along(piece, way);
        return new Reworked(
                turned, Ledger.of(new Step.GrainTurned(before, turned.grain().orElseThrow(), angle)));
    }

    /**
     * Draws a grain line of a given direction inside the piece, in place of the one it may have, where there is most room for it.
     *
     * @param piece the piece
     * @param direction the direction of the warp
     * @return the piece with that grain
     */
    public static Piece along(Piece piece, Vector2D direction) {
        return piece.withGrain(Optional.of(Grains.longest(piece, direction.normalize())));
    }
}
