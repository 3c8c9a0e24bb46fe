package org.draftingmaths.finish;

import java.util.ArrayList;
import java.util.List;
import org.draftingmaths.piece.Piece;

/**
 * What is written on a pattern piece.
 *
 * @param style the name of the style
 * @param size the size, or whose measures
 * @param number which piece it is, counted from 1
 * @param of of how many
 * @param cuttings how often it is cut of which cloth
 * @param version the version or date of the pattern, as it is to be printed; nothing is added by a clock
 */
public record TitleBlock(String style, String size, int number, int of, List<Cutting> cuttings, String version) {

    /** Copies the list and checks the numbers. */
    public TitleBlock {
        cuttings = List.copyOf(cuttings);
        if (number < 1 || number > of) {
            throw new IllegalArgumentException("Piece " + number + " of " + of + "; pieces count from 1 to the last.");
        }
        if (cuttings.isEmpty()) {
            throw new IllegalArgumentException("A piece is cut of something: no cutting is given.");
        }
    }

    /**
     * The lines, top first; lines with nothing to say are left out.
     *
     * @param piece the piece
     * @return for example {@code Tunic; front, piece 1 of 4; size 38; cut 1 on the fold, self; version 2}
     */
    public List<String> lines(Piece piece) {
        List<String> lines = new ArrayList<>();
        lines.add(style);
        lines.add(piece.name() + ", piece " + number + " of " + of);
        lines.add("size " + size);
        cuttings.forEach(cutting -> lines.add(cutting.words(piece)));
        lines.add(version);
        lines.removeIf(String::isBlank);
        return List.copyOf(lines);
    }
}
