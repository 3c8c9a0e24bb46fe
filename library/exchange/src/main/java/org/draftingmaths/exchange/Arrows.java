package org.draftingmaths.exchange;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;

/** The grain line: an arrow along the warp. */
final class Arrows {

    private static final double LENGTH = 5;
    private static final double HALF_WIDTH = 0.35 * LENGTH;

    private Arrows() {}

    /** With a head at its end, and one at its start unless it points one way. */
    static Mark.Stroke grain(Vector2D from, Vector2D to, boolean oneWay, Pen pen) {
        Vector2D way = from.directionTo(to);
        List<CurvePath> lines = new ArrayList<>(List.of(CurvePath.polyline(from, to), head(to, way.negate(), pen)));
        if (!oneWay) {
            lines.add(head(from, way, pen));
        }
        return new Mark.Stroke(LineKind.GRAIN, lines, false);
    }

    /** Which way a fold is brought. */
    static Mark.Stroke fold(Vector2D from, Vector2D to, Pen pen) {
        List<CurvePath> lines = List.of(
                CurvePath.polyline(from, to), head(to, from.directionTo(to).negate(), pen));
        return new Mark.Stroke(LineKind.LEG, lines, false);
    }

    private static CurvePath head(Vector2D tip, Vector2D back, Pen pen) {
        Vector2D root = tip.add(back.multiply(pen.mm(LENGTH)));
        Vector2D side = Vector2D.of(-back.getY(), back.getX()).multiply(pen.mm(HALF_WIDTH));
        return CurvePath.polyline(root.add(side), tip, root.subtract(side));
    }
}
