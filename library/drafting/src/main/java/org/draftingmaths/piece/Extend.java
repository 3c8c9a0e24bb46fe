package org.draftingmaths.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Ledger;

/**
 * Cloth added beyond an edge in one piece with it: a hem to be turned up, a facing cut in one.
 *
 * <p>Conserved: every other edge with its marks, all openings, level lines, the grain. The edge itself becomes a line marked on
 * the cloth; its notches go with it. A straight
 * edge beside it that goes straight on beyond it, as a fold must, stays one edge and grows.
 */
public final class Extend {

    private Extend() {}

    /**
     * One side of the cloth that is added.
     *
     * @param edge the edge it becomes; where the piece has an edge of this name, that edge goes straight on
     * @param forward whether the outline passes it in the edge's own direction
     * @param notches arcs in mm along the edge at which it carries notches
     */
    public record Side(Edge edge, boolean forward, List<Double> notches) {
        /** Copies the list. */
        public Side {
            notches = List.copyOf(notches);
        }
    }

    /**
     * Adds cloth beyond an edge.
     *
     * @param piece the piece
     * @param edge the name of the edge to go beyond: whole, no opening breaks it
     * @param line the name of the line that marks it from now on
     * @param sides what is added, in the order in which the outline passes it, from the edge's one corner to the other
     * @return the piece and what was done
     * @throws IllegalArgumentException when the sides leave a gap
     * @throws DraftingException when an opening breaks the edge, or the new outline would cross itself
     */
    public static Reworked beyond(Piece piece, String edge, String line, List<Side> sides) {
        String asked = "Go on beyond '" + edge + "' of '" + piece.name() + "'";
        Run run = whole(piece, edge, asked);
        List<Edge> lengthened = new ArrayList<>();
        List<Edge> longer = new ArrayList<>();
        List<Edge> edges = new ArrayList<>();
        List<Notch> notches = new ArrayList<>();
        for (Edge each : piece.edges()) {
            Optional<Side> goesOn = side(sides, each.name());
            goesOn.ifPresent(side -> lengthened.add(each));
            List<Notch> own = notchesOf(piece, each.name());
            if (goesOn.isPresent()) {
                Edge grown = longer(piece, each, goesOn.get(), asked);
                longer.add(grown);
                edges.add(grown);
                boolean atEnd = endsBefore(piece, each, goesOn.get());
                double shift = atEnd ? 0 : grown.length() - each.length();
                own.forEach(notch -> notches.add(new Notch(notch.edge(), notch.arc() + shift, notch.beside())));
            } else if (!each.name().equals(edge)) {
                edges.add(each);
                notches.addAll(own);
            }
        }
        List<Run> added = new ArrayList<>();
        List<String> names = new ArrayList<>();
        for (Side side : sides) {
            String name = side.edge().name();
            if (lengthened.stream().noneMatch(each -> each.name().equals(name))) {
                edges.add(side.edge());
                names.add(name);
                added.add(new Run(new Border.OfEdge(name), 0, side.edge().length(), side.forward(), Isometry.NONE));
                side.notches().forEach(arc -> notches.add(new Notch(name, arc, Beside.BEFORE)));
            }
        }
        LevelLine marked = new LevelLine(line, piece.edge(edge).base());
        List<Panel> panels = piece.panels().stream()
                .map(panel -> panel.with(panel.ring().stream()
                        .flatMap(each -> each.equals(run) ? added.stream() : Stream.of(grown(each, longer)))
                        .toList()))
                .map(panel -> panel.ring().containsAll(added) ? marked(panel, marked, run) : panel)
                .toList();
        Piece extended = new Piece(
                piece.name(),
                edges,
                piece.openings(),
                panels,
                Stream.concat(piece.levels().stream(), Stream.of(marked)).toList(),
                piece.insideDarts(),
                notches,
                piece.grain());
        requireClosed(extended, asked);
        Outlines.requireSimple(extended, asked);
        return new Reworked(
                extended,
                Ledger.of(new Step.Extended(piece.edge(edge), run, line, names, lengthened, piece.notches())));
    }

    private static Run whole(Piece piece, String edge, String asked) {
        return Panels.onlyRun(piece, new Border.OfEdge(edge))
                .filter(only -> only.length() == piece.edge(edge).length())
                .orElseThrow(() -> new DraftingException(asked, "an opening breaks it"));
    }

    private static Optional<Side> side(List<Side> sides, String name) {
        return sides.stream().filter(side -> side.edge().name().equals(name)).findFirst();
    }

    private static List<Notch> notchesOf(Piece piece, String edge) {
        return piece.notches().stream()
                .filter(notch -> notch.edge().equals(edge))
                .toList();
    }

    /** Whether what is added to an edge goes on from its end, not from its start. */
    private static boolean endsBefore(Piece piece, Edge edge, Side side) {
        CurvePath own = Paper.edge(piece, edge.name());
        CurvePath more = side.edge().base();
        return Math.min(own.end().distance(more.start()), own.end().distance(more.end())) <= Panels.TOUCH;
    }

    /** The edge with what goes on beyond its end: one straight. */
    private static Edge longer(Piece piece, Edge edge, Side side, String asked) {
        Run run = whole(piece, edge.name(), asked);
        CurvePath own = Paper.edge(piece, edge.name());
        CurvePath more = side.edge().base();
        boolean atEnd = endsBefore(piece, edge, side);
        CurvePath both = atEnd
                ? CurvePath.polyline(own.start(), far(more, own.end()))
                : CurvePath.polyline(far(more, own.start()), own.end());
        return new Edge(
                edge.name(),
                edge.role(),
                edge.allowance(),
                both.transformed(run.motion().inverse()));
    }

    private static Vector2D far(CurvePath line, Vector2D near) {
        return line.start().distance(near) <= Panels.TOUCH ? line.end() : line.start();
    }

    private static Run grown(Run run, List<Edge> edges) {
        return edges.stream()
                .filter(edge -> run.border().equals(new Border.OfEdge(edge.name())))
                .findFirst()
                .map(edge -> run.part(0, edge.length()))
                .orElse(run);
    }

    private static Panel marked(Panel panel, LevelLine line, Run run) {
        Stretch stretch = new Stretch(line.name(), 0, line.base().length(), run.motion());
        return new Panel(
                panel.ring(),
                Stream.concat(panel.lines().stream(), Stream.of(stretch)).toList(),
                panel.darts());
    }

    private static void requireClosed(Piece piece, String asked) {
        for (Panel panel : piece.panels()) {
            List<Run> ring = panel.ring();
            for (int i = 0; i < ring.size(); i++) {
                Run next = ring.get((i + 1) % ring.size());
                double gap = piece.place(ring.get(i))
                        .end()
                        .distance(piece.place(next).start());
                if (gap > Panels.TOUCH) {
                    throw new IllegalArgumentException(asked + ": a gap of " + gap + " mm lies between "
                            + ring.get(i).border().words() + " and "
                            + next.border().words() + ".");
                }
            }
        }
    }

    /** What was added goes, and the line is an edge again. */
    static Piece undo(Piece piece, Step.Extended step) {
        List<Border> added =
                step.added().stream().<Border>map(Border.OfEdge::new).toList();
        List<Edge> edges = Stream.concat(
                        piece.edges().stream()
                                .filter(edge -> !step.added().contains(edge.name()))
                                .map(edge -> step.lengthened().stream()
                                        .filter(was -> was.name().equals(edge.name()))
                                        .findFirst()
                                        .orElse(edge)),
                        Stream.of(step.edge()))
                .toList();
        List<Panel> panels = piece.panels().stream()
                .map(panel -> panel.ring().stream().anyMatch(run -> added.contains(run.border()))
                        ? without(panel, added, step)
                        : panel)
                .map(panel -> panel.with(panel.ring().stream()
                        .map(run -> grown(run, step.lengthened()))
                        .toList()))
                .toList();
        return new Piece(
                piece.name(),
                edges,
                piece.openings(),
                panels,
                piece.levels().stream()
                        .filter(line -> !line.name().equals(step.line()))
                        .toList(),
                piece.insideDarts(),
                step.notches(),
                piece.grain());
    }

    private static Panel without(Panel panel, List<Border> added, Step.Extended step) {
        List<Run> ring = new ArrayList<>();
        boolean put = false;
        for (Run run : panel.ring()) {
            if (!added.contains(run.border())) {
                ring.add(run);
            } else if (!put) {
                ring.add(step.run());
                put = true;
            }
        }
        return new Panel(
                ring,
                panel.lines().stream()
                        .filter(line -> !line.line().equals(step.line()))
                        .toList(),
                panel.darts());
    }
}
