package org.draftingmaths.piece;

import org.draftingmaths.curve.CurvePath;

/**
 * A line marked on the cloth: bust, waist, hip or any other. It breaks with the panels and heals when they rejoin.
 *
 * @param name the name, unique in its piece
 * @param base the line as it was drawn
 */
public record LevelLine(String name, CurvePath base) {

    /** Checks the name. */
    public LevelLine {
        Names.require(name, "A level line");
    }
}
