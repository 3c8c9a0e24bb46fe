package org.draftingmaths.fullness;

import org.draftingmaths.piece.Beside;
import org.draftingmaths.piece.Notch;
import org.draftingmaths.piece.Piece;

/** Match points on edges that nothing opens. */
final class Notched {

    private Notched() {}

    static Piece middle(Piece piece, String edge) {
        return at(piece, edge, piece.edge(edge).length() / 2);
    }

    static Piece at(Piece piece, String edge, double arc) {
        return piece.notched(new Notch(edge, arc, Beside.BEFORE));
    }
}
