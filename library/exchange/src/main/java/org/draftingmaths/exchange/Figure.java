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
 * @param label lines of words inside it, the first of them in larger letters
 */
public record Figure(
        String caption, Piece piece, Optional<Piece> ghost, List<Construction> construction, List<String> label) {

    /** Copies the lists. */
    public Figure {
        construction = List.copyOf(construction);
        label = List.copyOf(label);
    }

    /**
     * A piece by itself.
     *
     * @param caption a line of words above it
     * @param piece the piece
     * @return the figure
     */
    public static Figure of(String caption, Piece piece) {
        return new Figure(caption, piece, Optional.empty(), List.of(), List.of());
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
        return new Figure(caption, piece, Optional.of(ghost), List.of(), List.of());
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
                lines.stream().filter(line -> line.piece().equals(piece.name())).toList(),
                label);
    }

    /**
     * The figure with words inside the piece, such as its name, its number, the size and how often it is cut.
     *
     * @param lines the lines, the first of them in larger letters
     * @return the figure
     */
    public Figure labelled(String... lines) {
        return new Figure(caption, piece, ghost, construction, List.of(lines));
    }
}
