package org.draftingmaths.piece;

import org.draftingmaths.curve.CurvePath;

/** Widths along level lines with every dart closed. */
public final class Girths {

    private Girths() {}

    /**
     * The closed width of a piece along a level line: the stretches of the line on the cloth, less the widths of the
     * double-pointed darts it crosses. Wedges of open darts are no cloth and are not counted.
     *
     * @param piece the piece
     * @param level the name of the level line
     * @return the width in mm
     */
    public static double closed(Piece piece, String level) {
        piece.level(level);
        return piece.panels().stream()
                .flatMapToDouble(panel -> panel.lines().stream()
                        .filter(stretch -> stretch.line().equals(level))
                        .mapToDouble(stretch -> closed(piece, panel, piece.place(stretch))))
                .sum();
    }

    private static double closed(Piece piece, Panel panel, CurvePath line) {
        double taken = panel.darts().stream()
                .flatMap(dart -> Within.strictly(piece.place(dart), line).stream())
                .mapToDouble(Within::length)
                .sum();
        return line.length() - taken;
    }
}
