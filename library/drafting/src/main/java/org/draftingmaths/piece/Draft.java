package org.draftingmaths.piece;

import java.util.List;
import java.util.stream.Stream;
import org.draftingmaths.ledger.DraftingException;

/**
 * The pieces of a style and how they are sewn together.
 *
 * @param name the name of the style
 * @param pieces its pieces
 * @param seams its seams, in order of make
 */
public record Draft(String name, List<Piece> pieces, List<Seam> seams) {

    /** Copies the lists, and checks that every seam joins edges that are there, and none joins cloth that another has. */
    public Draft {
        Names.require(name, "A draft");
        pieces = List.copyOf(pieces);
        seams = List.copyOf(seams);
        requireUnique("piece", pieces.stream().map(Piece::name).toList());
        requireUnique("seam", seams.stream().map(Seam::name).toList());
        SeamPlaces.require(pieces, seams);
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

    static Piece piece(List<Piece> pieces, String wanted) {
        return pieces.stream()
                .filter(piece -> piece.name().equals(wanted))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("There is no piece named '" + wanted + "'; there are "
                        + String.join(", ", pieces.stream().map(Piece::name).toList()) + "."));
    }

    /**
     * The draft with one piece in place of the piece of the same name. Where an edge was redrawn, a seam that begins or stops at one of its
     * notches goes with the notch.
     *
     * @param piece the new piece
     * @return the draft
     * @throws DraftingException when an edge was redrawn and a seam begins or stops partway along it where no notch is
     */
    public Draft with(Piece piece) {
        Piece was = piece(piece.name());
        return new Draft(
                name,
                pieces.stream()
                        .map(each -> each.name().equals(piece.name()) ? piece : each)
                        .toList(),
                SeamPlaces.carried(was, piece, seams));
    }

    /**
     * The draft with a piece cut in two: the parts in its place, and every seam of the piece sewn to the part that has the edge now, or to
     * both one after the other. The seam of the line itself comes before the first of these, for panels are joined first (common practice).
     *
     * <pre>{@code
     * Detached panels = StyleLines.through(
     *         front, "waist dart", Spot.on("shoulder", 60), "panel seam", List.of(45.0), "side front", "front");
     * Draft cut = draft.parted("front", panels);
     * }</pre>
     *
     * @param piece the name of the piece that was cut
     * @param parted its two parts
     * @return the draft
     * @throws IllegalArgumentException when there is no such piece, or the parts are not of it
     * @throws DraftingException when a seam sews only part of an edge that was cut
     */
    public Draft parted(String piece, Detached parted) {
        PartedSeams seamsNow = PartedSeams.of(piece(piece), parted);
        List<Piece> all = pieces.stream()
                .flatMap(each ->
                        each.name().equals(piece) ? Stream.of(parted.after(), parted.before()) : Stream.of(each))
                .toList();
        return new Draft(name, all, seamsNow.in(seams));
    }
}
