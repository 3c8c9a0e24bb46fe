package org.draftingmaths.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Inside;
import org.draftingmaths.curve.Meets;
import org.draftingmaths.finish.Folds;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Finding.Kind;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.piece.Border;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Edge;
import org.draftingmaths.piece.Grain;
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

    private LineChecks() {}

    static List<Finding> of(Draft draft, DraftLimits limits) {
        List<Finding> found = new ArrayList<>();
        for (Piece piece : draft.pieces()) {
            found.addAll(Folds.findings(piece, limits.square()));
            grain(piece, found);
            kinks(piece, limits.kink(), found);
        }
        for (Seam seam : draft.seams()) {
            for (Truing.End end : Truing.End.values()) {
                crossing(draft, seam, end, limits.joint(), found);
            }
        }
        return found;
    }

    /** That there is none is found when the piece is finished: an outline that is only to be walked needs none. */
    private static void grain(Piece piece, List<Finding> found) {
        if (piece.grain().isEmpty()) {
            return;
        }
        Grain grain = piece.grain().get();
        CurvePath outline = Paper.outline(piece);
        CurvePath line = CurvePath.polyline(grain.from(), grain.to());
        double outside = outside(outline, line);
        if (outside > CurvePath.JOINT) {
            found.add(new Finding(
                    Kind.GRAIN_OUTSIDE,
                    "'" + piece.name() + "'",
                    Quantity.LENGTH,
                    outside,
                    0,
                    0,
                    "Move it into the piece, in the same direction."));
        }
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
    private static void crossing(Draft draft, Seam seam, Truing.End end, double limit, List<Finding> found) {
        if (isFaced(draft, seam)) {
            return;
        }
        Seam.Part one = seam.first().atEnd(end == Truing.End.STOP);
        Seam.Part other = seam.second().atEnd(end == Truing.End.STOP);
        Optional<Edge> first = next(draft.piece(one.piece()), one, end);
        Optional<Edge> second = next(draft.piece(other.piece()), other, end);
        if (first.isEmpty() || second.isEmpty() || !isOneLine(first.get(), second.get())) {
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

    /** A facing lies on its piece when it is sewn on: what goes on beside the edge lies on the piece's own, and is no line with it. */
    private static boolean isFaced(Draft draft, Seam seam) {
        return Stream.of(seam.first(), seam.second())
                .flatMap(mate -> mate.parts().stream())
                .anyMatch(part -> draft.piece(part.piece()).edge(part.edge()).role() == Role.FINISHED);
    }

    /** The edge that goes on where a side of a seam ends; none where openings lie at that corner, or where the seam ends partway. */
    private static Optional<Edge> next(Piece piece, Seam.Part part, Truing.End end) {
        if (!part.reachesCorner(end == Truing.End.STOP)) {
            return Optional.empty();
        }
        boolean atStart = (end == Truing.End.START) == part.forward();
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
