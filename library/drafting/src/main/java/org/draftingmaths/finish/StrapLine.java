package org.draftingmaths.finish;

import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.piece.Beside;
import org.draftingmaths.piece.Notch;
import org.draftingmaths.piece.Notches;
import org.draftingmaths.piece.Piece;

/**
 * The part of a strap's way that lies over one piece of the body or its block.
 *
 * @param piece the name of the piece
 * @param line where the middle of the strap runs, from edge to edge
 * @param from the place where it enters the piece
 * @param to the place where it leaves it
 */
public record StrapLine(String piece, CurvePath line, Notch from, Notch to) {

    /** Places are given by arcs good to rounding; a line that misses one by more than this, in mm, is another line. */
    private static final double MEETS = 1e-3;

    /**
     * A straight way between two places.
     *
     * @param piece the piece
     * @param from the edge where it enters
     * @param fromArc the arc in mm along that edge, darts out
     * @param to the edge where it leaves
     * @param toArc the arc in mm along that edge, darts out
     * @return the line
     */
    public static StrapLine straight(Piece piece, String from, double fromArc, String to, double toArc) {
        Notch first = new Notch(from, fromArc, Beside.BEFORE);
        Notch last = new Notch(to, toArc, Beside.BEFORE);
        return new StrapLine(
                piece.name(),
                CurvePath.polyline(
                        Notches.where(piece, first).point(),
                        Notches.where(piece, last).point()),
                first,
                last);
    }

    /**
     * A way along a curve that begins and ends at two places.
     *
     * @param piece the piece
     * @param line the curve
     * @param from the edge where it enters
     * @param fromArc the arc in mm along that edge, darts out
     * @param to the edge where it leaves
     * @param toArc the arc in mm along that edge, darts out
     * @return the line
     * @throws IllegalArgumentException when the curve begins or ends somewhere else
     */
    public static StrapLine along(Piece piece, CurvePath line, String from, double fromArc, String to, double toArc) {
        StrapLine straight = straight(piece, from, fromArc, to, toArc);
        double misses = Math.max(
                line.start().distance(straight.line().start()),
                line.end().distance(straight.line().end()));
        if (misses > MEETS) {
            throw new IllegalArgumentException("The strap's line on '" + piece.name()
                    + "' misses its place on the edge by " + misses + " mm; allowed is 0.001 mm.");
        }
        return new StrapLine(piece.name(), line, straight.from(), straight.to());
    }
}
