package org.draftingmaths.exchange;

/** The kinds of words, each with its colour and, on paper at full size, the size of its letters in millimetres. */
enum TextKind {
    /** Over a piece or a page. */
    CAPTION("caption", "#2b2440", 5),
    /** Everything that is said on or beside a piece. */
    PLAIN("plain", "#2b2440", 3.6),
    /** The name of a dart. */
    DART("dartname", "#7a3e1d", 3.6),
    /** The name of a level line. */
    LEVEL("levelname", "#3f6b5c", 3.6),
    /** The name of a construction line. */
    CONSTRUCTION("constructionname", "#5a5fa8", 3.6),
    /** The name of a tile, large and pale beneath what is drawn. */
    TILE("tilename", "#d5cfc4", 20);

    /** Letters of the least size, in mm: to this they are reduced where there is no room for more. */
    static final double LEAST = 2.6;

    private final String name;
    private final String colour;
    private final double size;

    TextKind(String name, String colour, double size) {
        this.name = name;
        this.colour = colour;
        this.size = size;
    }

    String className() {
        return name;
    }

    String colour() {
        return colour;
    }

    /** The size of the letters on paper at full size, in mm. */
    double size() {
        return size;
    }
}
