package org.draftingmaths.finish;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Meets;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.piece.Beside;
import org.draftingmaths.piece.Border;
import org.draftingmaths.piece.Edge;
import org.draftingmaths.piece.Notch;
import org.draftingmaths.piece.Panel;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Regrain;
import org.draftingmaths.piece.Run;

/** A new piece made of sides that were traced, each with its own direction and marks. */
final class Sides {

    private Sides() {}

    /**
     * A side.
     *
     * @param edge the edge, where it lies, in its own direction
     * @param forward whether the round passes it in that direction
     * @param notches arcs along it at which it carries notches
     */
    record Side(Edge edge, boolean forward, List<Notch> notches) {

        CurvePath path() {
            return forward ? edge.base() : edge.base().reversed();
        }

        Side moved(AffineTransformMatrix2D by) {
            return new Side(
                    new Edge(
                            edge.name(),
                            edge.role(),
                            edge.allowance(),
                            edge.base().transformed(by)),
                    forward,
                    notches);
        }
    }

    /** The piece whose outline goes round these sides, either way; the grain lies in a direction given. */
    static Piece piece(String name, List<Side> round, Piece grainOf, String asked) {
        List<Run> ring = new ArrayList<>();
        List<Notch> notches = new ArrayList<>();
        for (Side side : round) {
            ring.add(new Run(
                    new Border.OfEdge(side.edge().name()),
                    0,
                    side.edge().length(),
                    side.forward(),
                    AffineTransformMatrix2D.identity()));
            notches.addAll(side.notches());
        }
        CurvePath outline = new CurvePath(
                round.stream().flatMap(side -> side.path().curves().stream()).toList());
        if (!Meets.selfMeets(outline).isEmpty()) {
            throw new DraftingException(asked, "it would cross itself; make it narrower");
        }
        if (outline.area() < 0) {
            ring = turnedRound(ring);
        }
        Piece bare = new Piece(
                name,
                round.stream().map(Side::edge).toList(),
                List.of(),
                List.of(new Panel(ring, List.of(), List.of())),
                List.of(),
                List.of(),
                notches,
                Optional.empty());
        return grainOf.grain()
                .map(grain -> Regrain.along(bare, grain.direction()))
                .orElse(bare);
    }

    private static List<Run> turnedRound(List<Run> ring) {
        List<Run> turned = new ArrayList<>();
        for (int i = ring.size() - 1; i >= 0; i--) {
            Run run = ring.get(i);
            turned.add(new Run(run.border(), run.from(), run.to(), !run.forward(), run.motion()));
        }
        return turned;
    }

    /** The notches of a garment's edge that lie on a stretch of it, counted from the stretch's start, under another name. */
    static List<Notch> notches(Piece piece, String edge, double from, double to, String name) {
        return piece.notches().stream()
                .filter(notch -> notch.edge().equals(edge) && from <= notch.arc() && notch.arc() <= to)
                .map(notch -> new Notch(name, Math.min(notch.arc() - from, to - from), Beside.BEFORE))
                .distinct()
                .toList();
    }
}
