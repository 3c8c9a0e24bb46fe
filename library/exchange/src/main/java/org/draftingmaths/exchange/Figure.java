package org.draftingmaths.exchange;

import java.util.Optional;
import org.draftingmaths.piece.Piece;

/**
 * One piece on a sheet.
 *
 * @param caption a line of words above it
 * @param piece the piece
 * @param ghost the same piece at an earlier step, drawn faintly beneath it
 */
public record Figure(String caption, Piece piece, Optional<Piece> ghost) {

    /**
     * A piece by itself.
     *
     * @param caption a line of words above it
     * @param piece the piece
     * @return the figure
     */
    public static Figure of(String caption, Piece piece) {
        return new Figure(caption, piece, Optional.empty());
    }

    /**
     * A piece over what it was before.
     *
     * @param caption a line of words above it
     * @param piece the piece
     * @param ghost the same piece at an earlier step
     * @return the figure
     */
    public static Figure over(String caption, Piece piece, Piece ghost) {
        return new Figure(caption, piece, Optional.of(ghost));
    }
}
