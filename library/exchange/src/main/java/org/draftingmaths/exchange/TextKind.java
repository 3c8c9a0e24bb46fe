package org.draftingmaths.exchange;

/** The kinds of words, each with its colour and, on paper at full size, the size of its letters in millimetres. */
enum TextKind {
    /** Over a piece or a page. */
    CAPTION("caption", Ink.DARK, 5),
    /** Everything that is said on or beside a piece. */
    PLAIN("plain", Ink.DARK, 3.6),
    /** The name of a dart. */
    DART("dartname", Ink.BROWN, 3.6),
    /** The name of a level line. */
    LEVEL("levelname", Ink.GREEN, 3.6),
    /** The name of a construction line. */
    CONSTRUCTION("constructionname", Ink.BLUE, 3.6),
    /** The name of a tile, large and pale beneath what is drawn. */
    TILE("tilename", Ink.PALE, 20);

    /** Letters of the least size, in mm: to this they are reduced where there is no room for more. */
    static final double LEAST = 2.6;

    private final String name;
    private final Ink ink;
    private final double size;

    TextKind(String name, Ink ink, double size) {
        this.name = name;
        this.ink = ink;
        this.size = size;
    }

    String className() {
        return name;
    }

    String colour() {
        return ink.colour();
    }

    /** The size of the letters on paper at full size, in mm. */
    double size() {
        return size;
    }
}
