package org.draftingmaths.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.finish.Folds;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Finding.Kind;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.piece.Border;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Edge;
import org.draftingmaths.piece.Opening;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Redraw;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.piece.Use;
import org.draftingmaths.seam.Truing;

/** Folds, grain lines, edges over folded darts, and lines that cross seams. */
final class LineChecks {

    /** How far beside a dart's mouth the edge's direction is taken, in mm. */
    private static final double BESIDE = 1e-5;

    /** What is no more than rounding, of a length in mm and of a sine. */
    private static final double STRAIGHT = 1e-6;

    private LineChecks() {}

    static List<Finding> of(Draft draft, DraftLimits limits) {
        List<Finding> found = new ArrayList<>();
        for (Piece piece : draft.pieces()) {
            found.addAll(Folds.findings(piece, limits.square()));
            found.addAll(GrainChecks.of(piece, limits));
            found.addAll(EdgeChecks.of(piece, limits));
            kinks(piece, limits.kink(), found);
        }
        for (Seam seam : draft.seams()) {
            found.addAll(SideBalance.of(draft, seam, limits));
            for (Seam.End end : Seam.End.values()) {
                crossing(draft, seam, end, limits.joint(), found);
            }
        }
        return found;
    }

    /** An edge's base is the edge with its darts folded: a corner in it beside a dart is the corner that is sewn. */
    private static void kinks(Piece piece, double limit, List<Finding> found) {
        for (Opening opening : piece.openings()) {
            boolean shut =
                    opening.mouth().use() instanceof Use.Dart || opening.mouth().use() instanceof Use.Folded;
            if (!shut || !(opening.mouth().border() instanceof Border.OfEdge border)) {
                continue;
            }
            CurvePath base = piece.edge(border.edge()).base();
            double arc = opening.mouth().before();
            if (arc > 2 * BESIDE && arc < base.length() - 2 * BESIDE) {
                Vector2D in = base.tangentAt(arc - BESIDE);
                Vector2D out = base.tangentAt(arc + BESIDE);
                double turn = Math.atan2(in.signedArea(out), in.dot(out));
                if (Math.abs(turn) > limit) {
                    found.add(new Finding(
                            Kind.EDGE_KINKS,
                            "'" + border.edge() + "' of '" + piece.name() + "' at '" + opening.name() + "'",
                            Quantity.ANGLE,
                            turn,
                            0,
                            limit,
                            "Fold the dart, draw the edge in one curve across it, and open it again (LegEnds.move)."));
                }
            }
        }
    }

    /** Where two finished edges, or two hems, meet at the end of a seam, they are one line. */
    private static void crossing(Draft draft, Seam seam, Seam.End end, double limit, List<Finding> found) {
        if (isFaced(draft, seam)) {
            return;
        }
        Seam.Part one = seam.first().atEnd(end);
        Seam.Part other = seam.second().atEnd(end);
        Optional<Edge> first = next(draft.piece(one.piece()), one, end);
        Optional<Edge> second = next(draft.piece(other.piece()), other, end);
        if (first.isEmpty()
                || second.isEmpty()
                || !isOneLine(first.get(), second.get())
                || isDraped(draft.piece(one.piece()), first.get())
                || isDraped(draft.piece(other.piece()), second.get())) {
            return;
        }
        double turn =
                Truing.turn(draft, seam, end, first.get().name(), second.get().name());
        // Half a turn and more together: no line across, but the seam itself going on, as in a hem that is turned up.
        boolean across = turn > -Math.PI / 2;
        if (across && Math.abs(turn) > limit) {
            found.add(new Finding(
                    Kind.LINE_BREAKS,
                    "'" + first.get().name() + "' of '" + one.piece() + "' and '"
                            + second.get().name() + "' of '" + other.piece() + "' at seam '" + seam.name()
                            + "'",
                    Quantity.ANGLE,
                    Math.PI - turn,
                    Math.PI,
                    limit,
                    String.format(
                            Locale.ROOT,
                            "Join the pieces at the seam and blend the line over it (Truing.blend): it has a %s.",
                            turn > 0 ? "hollow" : "peak")));
        }
    }

    /** Two finished edges or two hems; of edges that are to be sewn only those of one name, such as the two parts of an armhole. */
    private static boolean isOneLine(Edge first, Edge second) {
        return first.role() == second.role()
                && (first.role() == Role.FINISHED
                        || first.role() == Role.HEM
                        || (first.role() == Role.SEAM && first.name().equals(second.name())));
    }

    /** A straight edge from a fold to the seam hangs as a cowl: it is drawn square to the fold, and not as the neck goes round the body. */
    private static boolean isDraped(Piece piece, Edge edge) {
        if (edge.role() != Role.FINISHED || !Redraw.isWhole(piece, edge.name())) {
            return false;
        }
        CurvePath line = Paper.edge(piece, edge.name());
        Vector2D way = line.start().directionTo(line.end());
        boolean straight = Math.abs(line.length() - line.start().distance(line.end())) <= STRAIGHT;
        return straight
                && Paper.sides(piece).stream()
                        .filter(side -> piece.edge(side.edge()).role() == Role.FOLD)
                        .anyMatch(side -> isSquare(side.path(), line, way));
    }

    private static boolean isSquare(CurvePath fold, CurvePath line, Vector2D way) {
        boolean meets = Stream.of(fold.start(), fold.end())
                .anyMatch(end ->
                        end.distance(line.start()) <= CurvePath.JOINT || end.distance(line.end()) <= CurvePath.JOINT);
        return meets && Math.abs(fold.start().directionTo(fold.end()).dot(way)) <= STRAIGHT;
    }

    /** A facing lies on its piece when it is sewn on: what goes on beside the edge lies on the piece's own, and is no line with it. */
    private static boolean isFaced(Draft draft, Seam seam) {
        return Stream.of(seam.first(), seam.second())
                .flatMap(mate -> mate.parts().stream())
                .anyMatch(part -> draft.piece(part.piece()).edge(part.edge()).role() == Role.FINISHED);
    }

    /** The edge that goes on where a side of a seam ends; none where openings lie at that corner, or where the seam ends partway. */
    private static Optional<Edge> next(Piece piece, Seam.Part part, Seam.End end) {
        if (!part.reachesCorner(end)) {
            return Optional.empty();
        }
        boolean atStart = (end == Seam.End.START) == part.forward();
        Vector2D corner = atStart
                ? Redraw.first(piece, part.edge()).start()
                : Redraw.last(piece, part.edge()).end();
        return piece.edges().stream()
                .filter(edge -> !edge.name().equals(part.edge()))
                .filter(edge -> Redraw.first(piece, edge.name()).start().distance(corner) <= CurvePath.JOINT
                        || Redraw.last(piece, edge.name()).end().distance(corner) <= CurvePath.JOINT)
                .findFirst();
    }
}
