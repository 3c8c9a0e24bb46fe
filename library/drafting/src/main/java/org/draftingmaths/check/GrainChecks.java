package org.draftingmaths.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Inside;
import org.draftingmaths.curve.Meets;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Finding.Kind;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.piece.Grain;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.PaperSide;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;

/**
 * Grain lines: inside their piece, and along or across its fold. That there is none is found when the piece is finished: an outline that is
 * only to be walked needs none.
 */
final class GrainChecks {

    private static final double SQUARE = Math.PI / 2;

    private GrainChecks() {}

    static List<Finding> of(Piece piece, DraftLimits limits) {
        List<Finding> found = new ArrayList<>();
        piece.grain().ifPresent(grain -> {
            outside(piece, grain).ifPresent(found::add);
            fold(piece).flatMap(fold -> turned(piece, grain, fold, limits)).ifPresent(found::add);
        });
        return found;
    }

    private static Optional<Finding> outside(Piece piece, Grain grain) {
        double outside = outside(Paper.outline(piece), CurvePath.polyline(grain.from(), grain.to()));
        return outside <= CurvePath.JOINT
                ? Optional.empty()
                : Optional.of(new Finding(
                        Kind.GRAIN_OUTSIDE,
                        "'" + piece.name() + "'",
                        Quantity.LENGTH,
                        outside,
                        0,
                        0,
                        "Move it into the piece, in the same direction."));
    }

    /** How much of a straight line lies outside an outline. */
    private static double outside(CurvePath outline, CurvePath line) {
        List<Double> cuts = new ArrayList<>(List.of(0.0, line.length()));
        Meets.of(line, outline).points().forEach(meet -> cuts.add(meet.onFirst()));
        cuts.sort(null);
        double outside = 0;
        for (int i = 1; i < cuts.size(); i++) {
            double from = cuts.get(i - 1);
            double to = cuts.get(i);
            if (to - from > CurvePath.JOINT && !Inside.contains(outline, line.pointAt((from + to) / 2))) {
                outside += to - from;
            }
        }
        return outside;
    }

    private static Optional<PaperSide> fold(Piece piece) {
        return Paper.sides(piece).stream()
                .filter(side -> piece.edge(side.edge()).role() == Role.FOLD)
                .max(Comparator.comparingDouble(side -> side.path().length()));
    }

    /** Along or across; half way between the two it is a piece on the bias, which is cut single. */
    private static Optional<Finding> turned(Piece piece, Grain grain, PaperSide fold, DraftLimits limits) {
        Vector2D way = fold.path().start().directionTo(fold.path().end());
        Vector2D threads = grain.from().directionTo(grain.to());
        double angle = Math.abs(Math.atan2(way.signedArea(threads), way.dot(threads)));
        double nearest = Math.rint(angle / SQUARE) * SQUARE;
        if (Math.abs(angle - nearest) <= limits.square()) {
            return Optional.empty();
        }
        boolean bias = Math.abs(Math.abs(angle - nearest) - SQUARE / 2) <= limits.square();
        return Optional.of(new Finding(
                bias ? Kind.FOLD_ON_BIAS : Kind.GRAIN_TURNED,
                "'" + piece.name() + "', grain to '" + fold.edge() + "'",
                Quantity.ANGLE,
                angle,
                nearest,
                limits.square(),
                bias
                        ? "Open the piece out (Unfold.at) and cut it from a single layer: a fold on the bias creeps."
                        : "The grain belongs to the part that stays (Stay): turn the line back, not the cloth."));
    }
}
