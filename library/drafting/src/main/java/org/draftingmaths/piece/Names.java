package org.draftingmaths.piece;

/** Names of edges, openings and lines. */
final class Names {

    private Names() {}

    static void require(String name, String what) {
        if (name == null || name.isBlank()) {
            throw new IllegalArgumentException(what + " needs a name.");
        }
    }
}
