package org.draftingmaths.piece;

/**
 * Where an opening opens, and what becomes of the surplus there. A spread from waist to hem may be gathered at the one and
 * hang free at the other.
 *
 * @param border the edge that owns the mouth; at a corner, the one the caller named
 * @param before that border's base arc in mm at the end of the opening's before leg
 * @param after the base arc in mm at the end of its after leg; it differs only where cloth was taken out
 * @param use what becomes of the surplus
 */
public record Mouth(Border border, double before, double after, Use use) {

    /**
     * The mouth of a slash at one place of an edge, its use not decided.
     *
     * @param border the edge that owns it
     * @param arc the base arc in mm
     * @return the mouth
     */
    static Mouth undecided(Border border, double arc) {
        return new Mouth(border, arc, arc, Use.SLASH);
    }

    Mouth used(Use other) {
        return new Mouth(border, before, after, other);
    }
}
