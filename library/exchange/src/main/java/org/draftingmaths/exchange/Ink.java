package org.draftingmaths.exchange;

/** The colours that lines and words share: what belongs together is drawn in one. */
enum Ink {
    /** The piece itself and what is said of it. */
    DARK("#2b2440"),
    /** What is taken up: darts, slashes, folds. */
    BROWN("#7a3e1d"),
    /** The levels of the body. */
    GREEN("#3f6b5c"),
    /** How a draft was constructed. */
    BLUE("#5a5fa8"),
    /** What only divides, or was before. */
    GREY("#8f8778"),
    /** Beneath everything that is drawn. */
    PALE("#d5cfc4");

    private final String colour;

    Ink(String colour) {
        this.colour = colour;
    }

    String colour() {
        return colour;
    }
}
