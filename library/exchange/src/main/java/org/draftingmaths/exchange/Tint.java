package org.draftingmaths.exchange;

/** What an area is filled with. */
enum Tint {
    /** The paper. */
    SHEET("sheet", "#ffffff", false),
    /** Cloth that is seen when all is sewn. */
    CLOTH("cloth", "#f6f1e7", false),
    /** Cloth that is taken up by a dart. */
    WEDGE("wedge", "#e3d5bd", false),
    /** A point. */
    POINT("point", Ink.BROWN.colour(), true);

    private final String name;
    private final String colour;
    private final boolean inked;

    Tint(String name, String colour, boolean inked) {
        this.name = name;
        this.colour = colour;
        this.inked = inked;
    }

    String className() {
        return name;
    }

    String colour() {
        return colour;
    }

    /** Whether it is worth its ink: a print leaves out the tints that lines say too. */
    boolean inked() {
        return inked;
    }
}
