package org.draftingmaths.piece;

import java.util.List;

/**
 * The pieces of a style and how they are sewn together.
 *
 * @param name the name of the style
 * @param pieces its pieces
 * @param seams its seams, in order of make
 */
public record Draft(String name, List<Piece> pieces, List<Seam> seams) {

    /** Copies the lists, and checks that every seam joins edges that are there. */
    public Draft {
        Names.require(name, "A draft");
        pieces = List.copyOf(pieces);
        seams = List.copyOf(seams);
        requireUnique("piece", pieces.stream().map(Piece::name).toList());
        requireUnique("seam", seams.stream().map(Seam::name).toList());
        for (Seam seam : seams) {
            for (Seam.Mate mate : List.of(seam.first(), seam.second())) {
                piece(pieces, mate.piece()).edge(mate.edge());
            }
        }
    }

    private static void requireUnique(String what, List<String> names) {
        for (int i = 0; i < names.size(); i++) {
            if (names.indexOf(names.get(i)) < i) {
                throw new IllegalArgumentException(
                        "The draft has more than one " + what + " named '" + names.get(i) + "'.");
            }
        }
    }

    /**
     * A piece by its name.
     *
     * @param wanted the name
     * @return the piece
     * @throws IllegalArgumentException when there is none; the message lists those there are
     */
    public Piece piece(String wanted) {
        return piece(pieces, wanted);
    }

    private static Piece piece(List<Piece> pieces, String wanted) {
        return pieces.stream()
                .filter(piece -> piece.name().equals(wanted))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("There is no piece named '" + wanted + "'; there are "
                        + String.join(", ", pieces.stream().map(Piece::name).toList()) + "."));
    }

    /**
     * The draft with one piece in place of the piece of the same name.
     *
     * @param piece the new piece
     * @return the draft
     */
    public Draft with(Piece piece) {
        piece(piece.name());
        return new Draft(
                name,
                pieces.stream()
                        .map(each -> each.name().equals(piece.name()) ? piece : each)
                        .toList(),
                seams);
    }
}
