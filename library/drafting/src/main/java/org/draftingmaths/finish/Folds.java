package org.draftingmaths.finish;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Flatten;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.PaperSide;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.draftingmaths.unit.Asked;

/** Folds looked at before cloth is laid on them: cloth folds on a straight line only, and shows twice every slant at its ends. */
public final class Folds {

    /** How far from square an edge may arrive at a fold: 1°. A point that is meant, as in a V neckline, is found too. */
    public static final double SQUARE = Math.toRadians(1);

    private static final double STRAIGHT = 1e-6;

    private Folds() {}

    /**
     * Folds that are not straight, and edges that are not square to a fold. With {@code e} the angle by which an edge misses a
     * right angle, the opened piece has a point or a dip of {@code 2 e} there.
     *
     * @param piece the piece
     * @param tolerance by how much in radians an edge may miss a right angle
     * @return the findings, fold by fold
     */
    public static List<Finding> findings(Piece piece, double tolerance) {
        Asked.angleOrNone("A tolerance", tolerance);
        List<Finding> findings = new ArrayList<>();
        List<PaperSide> sides = Paper.sides(piece);
        int n = sides.size();
        for (int i = 0; i < n; i++) {
            PaperSide side = sides.get(i);
            PaperSide before = sides.get((i + n - 1) % n);
            PaperSide after = sides.get((i + 1) % n);
            if (isFold(piece, side)) {
                straight(piece, side, findings);
                if (!before.edge().equals(side.edge())) {
                    square(
                            piece,
                            side,
                            before.edge(),
                            before.path().endTangent(),
                            side.path().startTangent(),
                            tolerance,
                            findings);
                }
                if (!after.edge().equals(side.edge())) {
                    square(
                            piece,
                            side,
                            after.edge(),
                            side.path().endTangent(),
                            after.path().startTangent(),
                            tolerance,
                            findings);
                }
            }
        }
        return List.copyOf(findings);
    }

    private static boolean isFold(Piece piece, PaperSide side) {
        return piece.edge(side.edge()).role() == Role.FOLD;
    }

    private static void straight(Piece piece, PaperSide side, List<Finding> findings) {
        CurvePath path = side.path();
        Vector2D way = path.start().directionTo(path.end());
        double off = Flatten.corners(path, 0.01).stream()
                .mapToDouble(point -> Math.abs(way.signedArea(path.start().vectorTo(point))))
                .max()
                .orElse(0);
        if (off > STRAIGHT) {
            findings.add(new Finding(
                    Finding.Kind.FOLD_NOT_STRAIGHT,
                    "'" + side.edge() + "' of '" + piece.name() + "'",
                    Quantity.LENGTH,
                    off,
                    0,
                    STRAIGHT));
        }
    }

    private static void square(
            Piece piece,
            PaperSide fold,
            String edge,
            Vector2D in,
            Vector2D out,
            double tolerance,
            List<Finding> findings) {
        double angle = Math.PI - Math.atan2(in.signedArea(out), in.dot(out));
        if (Math.abs(angle - Math.PI / 2) > tolerance) {
            findings.add(new Finding(
                    Finding.Kind.FOLD_NOT_SQUARE,
                    "'" + edge + "' at '" + fold.edge() + "' of '" + piece.name() + "'",
                    Quantity.ANGLE,
                    angle,
                    Math.PI / 2,
                    tolerance));
        }
    }
}
