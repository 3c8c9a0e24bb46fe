package org.draftingmaths.exchange;

import java.util.List;
import org.draftingmaths.finish.Allowances;
import org.draftingmaths.finish.Cutting;
import org.draftingmaths.finish.Marking;
import org.draftingmaths.unit.Length;

/**
 * How one piece of a style is to be finished and cut.
 *
 * @param piece the name of the piece
 * @param allowances its allowances
 * @param marking how places are marked on it
 * @param cuttings how often it is cut of which cloth
 */
public record ToCut(String piece, Allowances allowances, Marking marking, List<Cutting> cuttings) {

    /** Copies the list. */
    public ToCut {
        cuttings = List.copyOf(cuttings);
    }

    /**
     * A piece with the usual marks.
     *
     * @param piece the name of the piece
     * @param allowances its allowances
     * @param cuttings how often it is cut of which cloth
     * @return how it is cut
     */
    public static ToCut of(String piece, Allowances allowances, Cutting... cuttings) {
        return new ToCut(piece, allowances, Marking.DEFAULT, List.of(cuttings));
    }

    /**
     * The same in smaller letters, 3.5 and 2.5 mm high, for a small or narrow piece.
     *
     * @return how it is cut
     */
    public ToCut small() {
        return new ToCut(piece, allowances, marking.letters(Length.mm(3.5), Length.mm(2.5)), cuttings);
    }

    /**
     * The same with the notches of an edge marked doubly, as on a back and on the facing traced from it.
     *
     * @param edge the name of the edge
     * @return how it is cut
     */
    public ToCut doubled(String edge) {
        return new ToCut(piece, allowances, marking.doubled(edge), cuttings);
    }
}
