package org.draftingmaths.check;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Curve;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Finding.Kind;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.piece.Border;
import org.draftingmaths.piece.Edge;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.unit.Steps;

/**
 * Corners within an edge where no opening is, as a dart that was moved away or a hinge leaves them.
 *
 * <p>The base of an edge is the edge with its darts folded, so that a line drawn straight over an open dart of angle {@code a} turns by
 * {@code a} there, and keeps that corner when the dart is moved away.
 */
final class EdgeChecks {

    /** A corner that is wider than any dart was drawn, not left by one. */
    private static final double DRAWN = Math.toRadians(45);

    /** A corner whose neighbours turn by more than this share of it is one of a row that stands for a curve. */
    private static final double IN_A_ROW = 1.0 / 3;

    private EdgeChecks() {}

    static List<Finding> of(Piece piece, DraftLimits limits) {
        List<Finding> found = new ArrayList<>();
        piece.edges().forEach(edge -> corners(piece, edge, limits.kink(), found));
        return found;
    }

    private static void corners(Piece piece, Edge edge, double limit, List<Finding> found) {
        List<Double> mouths = mouths(piece, edge);
        List<Curve> curves = edge.base().curves();
        double arc = 0;
        for (int i = 1; i < curves.size(); i++) {
            arc += curves.get(i - 1).length();
            double at = arc;
            double turn = turnAt(curves, i);
            double beside = Math.max(turnAt(curves, i - 1), turnAt(curves, i + 1));
            boolean alone = turn > limit && turn <= DRAWN && beside < IN_A_ROW * turn;
            if (alone && mouths.stream().noneMatch(mouth -> Math.abs(mouth - at) <= CurvePath.JOINT)) {
                found.add(new Finding(
                        Kind.EDGE_CORNER,
                        "'" + edge.name() + "' of '" + piece.name() + "' " + Quantity.LENGTH.print(at, Steps.DEFAULT)
                                + " along",
                        Quantity.ANGLE,
                        turn,
                        0,
                        limit,
                        "Draw the edge in one curve there (Smooth.edge), or leave it where it is meant."));
            }
        }
    }

    private static double turnAt(List<Curve> curves, int joint) {
        if (joint < 1 || joint >= curves.size()) {
            return 0;
        }
        Vector2D in = curves.get(joint - 1).tangent(1);
        Vector2D out = curves.get(joint).tangent(0);
        return Math.abs(Math.atan2(in.signedArea(out), in.dot(out)));
    }

    /** Where openings lie on an edge; a corner there is told of the opening. */
    private static List<Double> mouths(Piece piece, Edge edge) {
        return piece.openings().stream()
                .flatMap(opening -> Stream.concat(Stream.of(opening.mouth()), opening.farMouth().stream()))
                .filter(mouth -> mouth.border().equals(new Border.OfEdge(edge.name())))
                .flatMap(mouth -> Stream.of(mouth.before(), mouth.after()))
                .toList();
    }
}
