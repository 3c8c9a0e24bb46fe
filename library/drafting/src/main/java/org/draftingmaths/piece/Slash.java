package org.draftingmaths.piece;

import java.util.Optional;
import org.draftingmaths.curve.CurvePath;

/**
 * A line to cut along.
 *
 * @param name the name of the opening it makes, unique in the piece
 * @param mouth where it starts: a place on an edge
 * @param end where it ends: a place on the same panel's ring, or the tip of an opening
 * @param along the curve to cut along, from mouth to end; straight when empty
 */
public record Slash(String name, Spot mouth, Spot end, Optional<CurvePath> along) {

    /** Checks name and mouth. */
    public Slash {
        Names.require(name, "A slash");
        if (mouth instanceof Spot.Tip) {
            throw new IllegalArgumentException("Slash '" + name + "' must start on an edge; it may end at a point.");
        }
    }

    /**
     * A straight slash.
     *
     * @param name the name of the opening it makes
     * @param mouth where it starts
     * @param end where it ends
     * @return the slash
     */
    public static Slash straight(String name, Spot mouth, Spot end) {
        return new Slash(name, mouth, end, Optional.empty());
    }

    String words() {
        return "Slash '" + name + "' from " + mouth.words() + " to " + end.words();
    }
}
