package org.draftingmaths.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.Change;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;

/**
 * Edges redrawn: the one step that changes a base, and so always said.
 *
 * <p>Conserved: every other edge, the order of edges, the share of its edge at which a notch lies. Changed and told: the
 * length of each edge redrawn, the arc of each notch on it, the net area.
 */
public final class Redraw {

    private Redraw() {}

    /**
     * Redraws edges. Where an end moves, the neighbour must be redrawn to it in the same call.
     *
     * @param piece the piece
     * @param lines for each edge redrawn its new curve where it is to lie, in the edge's own direction
     * @return the piece and what was done
     * @throws IllegalArgumentException when the new lines leave a gap at a corner; the message says where
     * @throws DraftingException when an edge is broken by an opening, or the new outline would cross itself
     */
    public static Reworked edges(Piece piece, Map<String, CurvePath> lines) {
        Map<String, CurvePath> sorted = new TreeMap<>(lines);
        List<Edge> edges = new ArrayList<>();
        Ledger changes = Ledger.EMPTY;
        for (Edge edge : piece.edges()) {
            Edge drawn = sorted.containsKey(edge.name()) ? redrawn(piece, edge, sorted.get(edge.name())) : edge;
            edges.add(drawn);
            if (!drawn.equals(edge)) {
                changes = changes.then(
                        new Change("length of '" + edge.name() + "'", Quantity.LENGTH, edge.length(), drawn.length()));
            }
        }
        List<Notch> notches = piece.notches().stream()
                .map(notch -> shifted(piece, notch, edges))
                .toList();
        Piece redrawn = new Piece(
                piece.name(),
                edges,
                piece.openings(),
                piece.panels().stream()
                        .map(panel -> lengthened(piece, panel, edges))
                        .toList(),
                piece.levels(),
                piece.insideDarts(),
                notches,
                piece.grain());
        requireClosed(redrawn);
        Outlines.requireSimple(redrawn, "Redraw " + String.join(", ", sorted.keySet()));
        Step step = new Step.Redrawn(piece.edges(), piece.notches(), List.copyOf(sorted.keySet()));
        return new Reworked(redrawn, Ledger.of(step).then(changes));
    }

    private static Edge redrawn(Piece piece, Edge edge, CurvePath line) {
        Run run = onlyRun(piece, edge);
        return new Edge(
                edge.name(),
                edge.role(),
                edge.allowance(),
                line.transformed(run.motion().inverse()));
    }

    private static Run onlyRun(Piece piece, Edge edge) {
        Optional<Run> run = Panels.onlyRun(piece, new Border.OfEdge(edge.name()));
        return run.filter(only -> only.from() == 0 && only.to() == edge.length())
                .orElseThrow(() -> new DraftingException(
                        "Redraw '" + edge.name() + "'", "an opening breaks it; close the opening first"));
    }

    /** The only run of a redrawn edge goes to its new end. */
    private static Panel lengthened(Piece piece, Panel panel, List<Edge> edges) {
        return panel.with(panel.ring().stream()
                .map(run -> edges.stream()
                        .filter(edge -> run.border().equals(new Border.OfEdge(edge.name())))
                        .filter(edge -> !edge.equals(piece.edge(edge.name())))
                        .findFirst()
                        .map(edge -> run.part(0, edge.length()))
                        .orElse(run))
                .toList());
    }

    private static Notch shifted(Piece piece, Notch notch, List<Edge> edges) {
        double before = piece.edge(notch.edge()).length();
        double after = edges.stream()
                .filter(edge -> edge.name().equals(notch.edge()))
                .mapToDouble(Edge::length)
                .findFirst()
                .orElseThrow();
        return before == after ? notch : new Notch(notch.edge(), notch.arc() * (after / before), notch.beside());
    }

    private static void requireClosed(Piece piece) {
        for (Panel panel : piece.panels()) {
            List<Run> ring = panel.ring();
            for (int i = 0; i < ring.size(); i++) {
                Run next = ring.get((i + 1) % ring.size());
                double gap = piece.place(ring.get(i))
                        .end()
                        .distance(piece.place(next).start());
                if (gap > Panels.TOUCH) {
                    throw new IllegalArgumentException(String.format(
                            Locale.ROOT,
                            "The new lines leave a gap of %.3f mm between %s and %s.",
                            gap,
                            ring.get(i).border().words(),
                            next.border().words()));
                }
            }
        }
    }

    static Piece undo(Piece piece, Step.Redrawn step) {
        List<Panel> panels = piece.panels().stream()
                .map(panel -> lengthened(piece, panel, step.edges()))
                .toList();
        return new Piece(
                piece.name(),
                step.edges(),
                piece.openings(),
                panels,
                piece.levels(),
                piece.insideDarts(),
                step.notches(),
                piece.grain());
    }
}
