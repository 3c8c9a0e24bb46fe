package org.draftingmaths.piece;

import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Straight;

/** Folds and centre lines. */
final class Centre {

    private Centre() {}

    /** Whether a run is part of a fold, or lies straight on x = 0. */
    static boolean isCentre(Piece piece, Run run) {
        if (!(run.border() instanceof Border.OfEdge edge)) {
            return false;
        }
        if (piece.edge(edge.edge()).role() == Role.FOLD) {
            return true;
        }
        CurvePath placed = piece.place(run);
        return placed.curves().stream()
                .allMatch(curve -> curve instanceof Straight
                        && Math.abs(curve.start().getX()) <= Panels.TOUCH
                        && Math.abs(curve.end().getX()) <= Panels.TOUCH);
    }

    /** Whether a line is straight from its one end to its other. */
    static boolean isStraight(CurvePath line) {
        Vector2D way = line.start().directionTo(line.end());
        return line.curves().stream()
                .allMatch(curve -> curve instanceof Straight
                        && Math.abs(way.signedArea(line.start().vectorTo(curve.end()))) <= Panels.TOUCH);
    }
}
