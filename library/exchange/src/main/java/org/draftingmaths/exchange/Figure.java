package org.draftingmaths.exchange;

import java.util.List;
import java.util.Optional;
import org.draftingmaths.block.Construction;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.finish.FinalPattern;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;

/**
 * One piece on a sheet.
 *
 * @param caption a line of words above it
 * @param piece the piece
 * @param ghost the same piece at an earlier step, drawn faintly beneath it
 * @param construction construction lines drawn over it, with their names
 * @param label lines of words inside it, the first of them in larger letters
 * @param finished the piece with its cut line, marks and labels; then these are drawn, and nothing else
 */
public record Figure(
        String caption,
        Piece piece,
        Optional<Piece> ghost,
        List<Construction> construction,
        List<String> label,
        Optional<FinalPattern> finished) {

    /**
     * Copies the lists.
     *
     * @throws IllegalArgumentException when a finished piece is to be drawn with what belongs to a draft
     */
    public Figure {
        construction = List.copyOf(construction);
        label = List.copyOf(label);
        if (finished.isPresent() && !(ghost.isEmpty() && construction.isEmpty() && label.isEmpty())) {
            throw new IllegalArgumentException(
                    "The finished piece '" + piece.name()
                            + "' has its own marks and labels: draw it without an earlier step, construction lines and a label.");
        }
    }

    /**
     * A piece ready to be cut.
     *
     * @param caption a line of words above it
     * @param pattern the piece with its cut line, marks and labels
     * @return the figure
     */
    public static Figure of(String caption, FinalPattern pattern) {
        return new Figure(caption, pattern.piece(), Optional.empty(), List.of(), List.of(), Optional.of(pattern));
    }

    /**
     * A piece by itself.
     *
     * @param caption a line of words above it
     * @param piece the piece
     * @return the figure
     */
    public static Figure of(String caption, Piece piece) {
        return new Figure(caption, piece, Optional.empty(), List.of(), List.of(), Optional.empty());
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
        return new Figure(caption, piece, Optional.of(ghost), List.of(), List.of(), Optional.empty());
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
                label,
                finished);
    }

    /**
     * The figure with words inside the piece, such as its name, its number, the size and how often it is cut.
     *
     * @param lines the lines, the first of them in larger letters
     * @return the figure
     */
    public Figure labelled(String... lines) {
        return new Figure(caption, piece, ghost, construction, List.of(lines), finished);
    }

    /**
     * What is drawn, in the piece's own coordinates.
     *
     * @param joins where the paper will be joined: words keep off it where there is room
     */
    List<Mark> marks(Pen pen, List<CurvePath> joins) {
        return finished.map(pattern -> FinishedDrawing.of(pattern, pen, joins))
                .orElseGet(() -> PieceDrawing.of(this, pen, joins));
    }

    /** The outline of all its cloth. */
    CurvePath outline() {
        return finished.map(pattern -> pattern.cut().outline()).orElseGet(() -> Paper.outline(piece));
    }
}
