package org.draftingmaths.exchange;

import java.util.List;
import java.util.Optional;
import org.draftingmaths.block.Construction;
import org.draftingmaths.piece.Piece;

/**
 * One piece on a sheet.
 *
 * @param caption a line of words above it
 * @param piece the piece
 * @param ghost the same piece at an earlier step, drawn faintly beneath it
 * @param construction construction lines drawn over it, with their names
 */
public record Figure(String caption, Piece piece, Optional<Piece> ghost, List<Construction> construction) {

    /** Copies the list. */
    public Figure {
        construction = List.copyOf(construction);
    }

    /**
     * A piece by itself.
     *
     * @param caption a line of words above it
     * @param piece the piece
     * @return the figure
     */
    public static Figure of(String caption, Piece piece) {
        return new Figure(caption, piece, Optional.empty(), List.of());
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
        return new Figure(caption, piece, Optional.of(ghost), List.of());
    }

    /**
     * The figure with the construction lines of its piece.
     *
     * @param lines construction lines, also of other pieces, which are left out
     * @return the figure
     */
    public Figure with(List<Construction> lines) {
        return new Figure(
                caption,
                piece,
                ghost,
                lines.stream().filter(line -> line.piece().equals(piece.name())).toList());
    }
}
