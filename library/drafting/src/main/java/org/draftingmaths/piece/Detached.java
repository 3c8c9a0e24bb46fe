package org.draftingmaths.piece;

import org.draftingmaths.ledger.Ledger;

/**
 * A piece cut in two along a line.
 *
 * @param before the part at the end of the line's edge that is met first: where the line starts on an edge, the stretch of that
 *     edge which leads up to it
 * @param after the other part
 * @param ledger what was done, from which {@link Detach#attach} finds the way back
 */
public record Detached(Piece before, Piece after, Ledger ledger) {

    /**
     * The part that has a certain edge, or a part of it.
     *
     * @param edge the name of an edge that only one of the two has
     * @return the part
     * @throws IllegalArgumentException when neither or both have it
     */
    public Piece with(String edge) {
        boolean one = has(before, edge);
        if (one == has(after, edge)) {
            throw new IllegalArgumentException(
                    (one ? "Both parts have" : "Neither part has") + " an edge named '" + edge + "'.");
        }
        return one ? before : after;
    }

    private static boolean has(Piece piece, String edge) {
        return piece.edges().stream().anyMatch(each -> each.name().equals(edge));
    }

    /**
     * The seam that sews the two together again, flat.
     *
     * @param line the name of the line
     * @return the seam
     */
    public Seam seam(String line) {
        return Seam.flat(line, Seam.Mate.of(before.name(), line), Seam.Mate.of(after.name(), line));
    }
}
