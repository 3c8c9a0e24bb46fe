package org.draftingmaths.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Nearest;
import org.draftingmaths.ledger.Change;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;

/**
 * Edges redrawn: the one step that changes a base, and so always said.
 *
 * <p>Conserved: every other edge, the order of edges, what the
 * caller says of each notch. Changed and told: the length of each edge redrawn, the arc of each notch that moved, the net area.
 * Level lines go on to the new edges.
 */
public final class Redraw {

    private Redraw() {}

    /** What the notches of a redrawn edge keep. */
    public enum Marks {
        /** Their share of the edge: for an edge drawn anew. */
        SHARE,
        /** Their distance from the edge's start: for an edge whose other end moved. */
        FROM_START,
        /** Their distance from the edge's end: for an edge whose start moved. */
        FROM_END
    }

    /**
     * Redraws edges; notches keep their share of the edge. Where an end moves, the neighbour must be redrawn to it in the same call.
     *
     * @param piece the piece
     * @param lines for each edge redrawn its new curve where it is to lie, in the edge's own direction
     * @return the piece and what was done
     * @throws IllegalArgumentException when an edge is unknown, or the new lines leave a gap at a corner; the message says where
     * @throws DraftingException when an edge is broken by an opening, a fold would not be straight, a double-pointed dart would lie
     *     outside, or the new outline would cross itself
     */
    public static Reworked edges(Piece piece, Map<String, CurvePath> lines) {
        return edges(piece, lines, Map.of());
    }

    /**
     * Redraws edges, and says what the notches of each keep.
     *
     * @param piece the piece
     * @param lines for each edge redrawn its new curve where it is to lie, in the edge's own direction
     * @param marks for each edge what its notches keep; their share, where none is named
     * @return the piece and what was done
     * @throws IllegalArgumentException as {@link #edges(Piece, Map)}
     * @throws DraftingException as {@link #edges(Piece, Map)}, or when a notch would lie past the end of its edge
     */
    public static Reworked edges(Piece piece, Map<String, CurvePath> lines, Map<String, Marks> marks) {
        Map<String, CurvePath> sorted = new TreeMap<>(lines);
        sorted.keySet().forEach(piece::edge);
        List<Edge> edges = piece.edges().stream()
                .map(edge -> sorted.containsKey(edge.name()) ? redrawn(piece, edge, sorted.get(edge.name())) : edge)
                .toList();
        List<Notch> notches = piece.notches().stream()
                .map(notch -> shifted(piece, notch, edges, marks.getOrDefault(notch.edge(), Marks.SHARE)))
                .toList();
        Piece redrawn = with(piece, edges, notches);
        requireClosed(redrawn);
        String asked = "Redraw " + String.join(", ", sorted.keySet());
        Outlines.simpleRings(redrawn, () -> asked);
        requireSense(redrawn, sorted, asked);
        Step step = new Step.Redrawn(piece.edges(), piece.notches(), edges, notches, List.copyOf(sorted.keySet()));
        return new Reworked(redrawn, told(piece, redrawn, Ledger.of(step)));
    }

    private static Ledger told(Piece before, Piece after, Ledger done) {
        Ledger ledger = done;
        for (Edge edge : before.edges()) {
            Edge now = after.edge(edge.name());
            if (!now.equals(edge)) {
                ledger = ledger.then(
                        new Change("length of '" + edge.name() + "'", Quantity.LENGTH, edge.length(), now.length()));
            }
        }
        for (int i = 0; i < before.notches().size(); i++) {
            Notch then = before.notches().get(i);
            Notch now = after.notches().get(i);
            if (then.arc() != now.arc()) {
                ledger = ledger.then(new Change(
                        "place of the notch along '" + then.edge() + "'", Quantity.LENGTH, then.arc(), now.arc()));
            }
        }
        return ledger.then(new Change("net area", Quantity.AREA, before.area(), after.area()));
    }

    /** The piece with other bases: rings go to the new ends, and level lines to where they meet the new edges. */
    private static Piece with(Piece piece, List<Edge> edges, List<Notch> notches) {
        Piece bare = new Piece(
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
        return withLevels(piece, bare);
    }

    /** A redrawn piece whose level lines still lie as they did: they go on to the new border. */
    static Piece withLevels(Piece piece, Piece bare) {
        List<Panel> panels = new ArrayList<>();
        for (int i = 0; i < bare.panels().size(); i++) {
            List<Run> ring = piece.panels().get(i).ring();
            CurvePath was = piece.place(ring);
            List<CurvePath> moved = ring.stream()
                    .filter(run -> isRedrawn(piece, bare.edges(), run))
                    .map(piece::place)
                    .toList();
            Panel panel = bare.panels().get(i);
            CurvePath now = bare.place(panel.ring());
            panels.add(
                    was.equals(now)
                            ? panel
                            : new Panel(
                                    panel.ring(),
                                    panel.lines().stream()
                                            .flatMap(line -> refitted(piece, line, moved, now))
                                            .toList(),
                                    panel.darts()));
        }
        return bare.with(panels);
    }

    private static boolean isRedrawn(Piece piece, List<Edge> edges, Run run) {
        return run.border() instanceof Border.OfEdge border && !edges.contains(piece.edge(border.edge()));
    }

    /** A stretch that ended on a redrawn edge goes on to the new one; any other end stays, as at the point of a dart. */
    private static Stream<Stretch> refitted(Piece piece, Stretch stretch, List<CurvePath> was, CurvePath now) {
        CurvePath line = piece.level(stretch.line()).base().transformed(stretch.motion());
        boolean fromBorder = onBorder(was, line, stretch.from());
        boolean toBorder = onBorder(was, line, stretch.to());
        return Within.of(now, line).stream()
                .filter(within -> within.from() < stretch.to() && stretch.from() < within.to())
                .map(within -> new Stretch(
                        stretch.line(),
                        fromBorder ? within.from() : stretch.from(),
                        toBorder ? within.to() : stretch.to(),
                        stretch.motion()))
                .filter(each -> each.from() < each.to());
    }

    private static boolean onBorder(List<CurvePath> borders, CurvePath line, double arc) {
        double at = Math.min(arc, line.length());
        return at <= 0
                || at >= line.length()
                || borders.stream()
                        .anyMatch(border -> Nearest.of(border, line.pointAt(at)).distance() <= Panels.TOUCH);
    }

    private static void requireSense(Piece piece, Map<String, CurvePath> lines, String asked) {
        lines.forEach((name, line) -> {
            if (piece.edge(name).role() == Role.FOLD && !Centre.isStraight(line)) {
                throw new DraftingException(asked, "'" + name + "' is a fold and must be straight");
            }
        });
        for (Panel panel : piece.panels()) {
            CurvePath border = piece.place(panel.ring());
            for (Laid dart : panel.darts()) {
                if (!Within.holds(border, piece.place(dart))) {
                    throw new DraftingException(asked, "the dart '" + dart.dart() + "' would not lie inside");
                }
            }
        }
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

    private static Notch shifted(Piece piece, Notch notch, List<Edge> edges, Marks marks) {
        double before = piece.edge(notch.edge()).length();
        double after = edges.stream()
                .filter(edge -> edge.name().equals(notch.edge()))
                .mapToDouble(Edge::length)
                .findFirst()
                .orElseThrow();
        if (before == after || notch.arc() == 0) {
            return notch;
        }
        double arc = switch (marks) {
            case SHARE -> notch.arc() * (after / before);
            case FROM_START -> notch.arc();
            case FROM_END -> notch.arc() + after - before;
        };
        double kept = notch.arc() == before ? after : arc;
        if (!(kept >= 0 && kept <= after)) {
            throw new DraftingException(
                    "Redraw '" + notch.edge() + "'", "its notch at " + notch.arc() + " mm would lie past the end");
        }
        return new Notch(notch.edge(), kept, notch.beside());
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
        if (!piece.edges().equals(step.edgesAfter()) || !piece.notches().equals(step.notchesAfter())) {
            throw Panels.changedSince("Undo the redrawing of " + String.join(", ", step.redrawn()));
        }
        return with(piece, step.edges(), step.notches());
    }
}
