package org.draftingmaths.finish;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.piece.DartEnd;
import org.draftingmaths.piece.Laid;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Opening;
import org.draftingmaths.piece.Panel;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.PaperSide;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Stretch;
import org.draftingmaths.piece.Use;

/** The lines drawn inside the cut line. */
final class MarkedLines {

    private MarkedLines() {}

    static List<MarkedLine> of(Piece piece) {
        List<MarkedLine> lines = new ArrayList<>();
        for (PaperSide side : Paper.sides(piece)) {
            boolean fold = piece.edge(side.edge()).role() == Role.FOLD;
            lines.add(new MarkedLine(fold ? MarkedLine.Kind.FOLD : MarkedLine.Kind.STITCH, side.edge(), side.path()));
        }
        for (Opening opening : piece.openings()) {
            if (opening.mouth().use() instanceof Use.Dart) {
                addDart(lines, piece, opening.name());
            }
        }
        for (Panel panel : piece.panels()) {
            for (Laid laid : panel.darts()) {
                lines.add(new MarkedLine(MarkedLine.Kind.INSIDE_DART, laid.dart(), piece.place(laid)));
            }
            for (Stretch stretch : panel.lines()) {
                lines.add(new MarkedLine(MarkedLine.Kind.LEVEL, stretch.line(), piece.place(stretch)));
            }
        }
        return List.copyOf(lines);
    }

    private static void addDart(List<MarkedLine> lines, Piece piece, String dart) {
        Vector2D tip = DartEnd.sewnTip(piece, dart);
        for (Leg leg : Leg.values()) {
            Vector2D end = Measured.leg(piece, dart, leg).start();
            lines.add(new MarkedLine(MarkedLine.Kind.DART_LEG, dart, CurvePath.polyline(end, tip)));
        }
        lines.add(new MarkedLine(
                MarkedLine.Kind.DART_CENTRE, dart, CurvePath.polyline(DartEnd.foldEnd(piece, dart), tip)));
    }
}
