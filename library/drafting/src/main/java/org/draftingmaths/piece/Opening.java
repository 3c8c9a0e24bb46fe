package org.draftingmaths.piece;

import java.util.Optional;
import org.draftingmaths.curve.CurvePath;

/**
 * A place where two panels, or a panel and itself, part company: a dart, a slash, a spread, a closed gape before it is
 * joined. Its two legs are curves from the mouth to the tip, or to the far mouth when it goes from edge to edge. The legs
 * can be laid on one another by a turn or a shift: the shaping of a curved dart is part of its use, not of its legs.
 *
 * @param name the name, unique in its piece
 * @param mouth where it opens
 * @param farMouth where it opens at its other end, if that lies on an edge too
 * @param before the base of the leg met first along the mouth's edge, from the mouth inwards
 * @param after the base of the leg met last, from the mouth inwards
 */
public record Opening(String name, Mouth mouth, Optional<Mouth> farMouth, CurvePath before, CurvePath after) {

    /** Checks the name. */
    public Opening {
        Names.require(name, "An opening");
    }

    /**
     * The base of one leg.
     *
     * @param leg which
     * @return its curve from the mouth inwards
     */
    public CurvePath base(Leg leg) {
        return leg == Leg.BEFORE ? before : after;
    }

    /**
     * The same opening put to another use at its mouth.
     *
     * @param use the use
     * @return the opening
     */
    public Opening used(Use use) {
        return new Opening(name, mouth.used(use), farMouth, before, after);
    }

    /**
     * The same opening put to another use at its other end.
     *
     * @param use the use
     * @return the opening
     * @throws org.draftingmaths.ledger.DraftingException when it ends at a point inside
     */
    public Opening usedFar(Use use) {
        if (farMouth.isEmpty()) {
            throw new org.draftingmaths.ledger.DraftingException(
                    "Use '" + name + "' at its other end", "it ends at a point inside the piece");
        }
        return new Opening(name, mouth, farMouth.map(far -> far.used(use)), before, after);
    }

    Border leg(Leg leg) {
        return new Border.OfLeg(name, leg);
    }
}
