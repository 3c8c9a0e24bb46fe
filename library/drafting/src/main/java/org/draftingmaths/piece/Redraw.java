package org.draftingmaths.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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
 *
 * <p>An edge that openings break is redrawn at its ends only: what is given is its first stretch, up to the first opening, or its last. The rest
 * of it, openings and all, stays where it lies; only its arcs count on from the new stretch.
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
     * @param lines for each edge redrawn its new curve where it is to lie, in the edge's own direction; of an edge that openings break its
     *     first stretch ({@link #first}) or its last ({@link #last})
     * @return the piece and what was done
     * @throws IllegalArgumentException when an edge is unknown, or the new lines leave a gap at a corner; the message says where
     * @throws DraftingException when an edge is broken by an opening that the new line does not join, a fold would not be straight, a
     *     double-pointed dart would lie outside, or the new outline would cross itself
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
        return edges(piece, lines, marks, Map.of());
    }

    /**
     * Redraws edges, and says where the notches of some of them go.
     *
     * @param piece the piece
     * @param lines for each edge redrawn its new curve where it is to lie, in the edge's own direction
     * @param marks for each edge what its notches keep; their share, where none is named
     * @param places for some edges the new base arcs in mm of the notches inside them, ascending; notches at their ends stay there
     * @return the piece and what was done
     * @throws IllegalArgumentException as {@link #edges(Piece, Map)}, or when there are not as many places as notches
     * @throws DraftingException as {@link #edges(Piece, Map, Map)}
     */
    public static Reworked edges(
            Piece piece, Map<String, CurvePath> lines, Map<String, Marks> marks, Map<String, List<Double>> places) {
        Map<String, CurvePath> sorted = new TreeMap<>(lines);
        sorted.keySet().forEach(piece::edge);
        List<Drawn> drawn = new ArrayList<>();
        sorted.forEach((name, line) -> drawn.add(Drawn.of(piece, piece.edge(name), line)));
        List<Edge> edges = piece.edges().stream()
                .map(edge -> drawn.stream()
                        .filter(each -> each.edge().name().equals(edge.name()))
                        .map(Drawn::edge)
                        .findFirst()
                        .orElse(edge))
                .toList();
        List<Step.Span> spans = drawn.stream().map(Drawn::span).toList();
        List<Notch> notches = piece.notches().stream()
                .map(notch -> places.containsKey(notch.edge())
                        ? placed(piece, notch, spans, places.get(notch.edge()))
                        : shifted(notch, spans, marks.getOrDefault(notch.edge(), Marks.SHARE)))
                .toList();
        Piece redrawn = with(piece, edges, notches, spans);
        requireClosed(redrawn);
        String asked = "Redraw " + String.join(", ", sorted.keySet());
        Outlines.simpleRings(redrawn, () -> asked);
        requireSense(redrawn, sorted, asked);
        Step step = new Step.Redrawn(piece.name(), piece.edges(), piece.notches(), edges, notches, spans);
        return new Reworked(redrawn, told(piece, redrawn, Ledger.of(step)));
    }

    /**
     * The stretch of an edge from its start to its first opening; all of it where none breaks it.
     *
     * @param piece the piece
     * @param edge the name of the edge
     * @return the curve where it lies, in the edge's own direction
     */
    public static CurvePath first(Piece piece, String edge) {
        return along(piece, end(piece, piece.edge(edge), false));
    }

    /**
     * The stretch of an edge from its last opening to its end; all of it where none breaks it.
     *
     * @param piece the piece
     * @param edge the name of the edge
     * @return the curve where it lies, in the edge's own direction
     */
    public static CurvePath last(Piece piece, String edge) {
        return along(piece, end(piece, piece.edge(edge), true));
    }

    /**
     * Whether no opening breaks an edge.
     *
     * @param piece the piece
     * @param edge the name of the edge
     * @return true when its first stretch is all of it
     */
    public static boolean isWhole(Piece piece, String edge) {
        return end(piece, piece.edge(edge), false).equals(end(piece, piece.edge(edge), true));
    }

    private static CurvePath along(Piece piece, Run run) {
        CurvePath placed = piece.place(run);
        return run.forward() ? placed : placed.reversed();
    }

    /** The run that holds an end of an edge. */
    private static Run end(Piece piece, Edge edge, boolean stop) {
        return piece.panels().stream()
                .flatMap(panel -> panel.ring().stream())
                .filter(run -> run.border().equals(new Border.OfEdge(edge.name())))
                .filter(run -> stop ? run.to() == edge.length() : run.from() == 0)
                .findFirst()
                .orElseThrow(() -> new DraftingException(
                        "Redraw '" + edge.name() + "'", "its end was lost with cloth taken out of the piece"));
    }

    /**
     * An edge redrawn.
     *
     * @param edge the edge as it is now
     * @param span which stretch of the old base became which of the new
     */
    private record Drawn(Edge edge, Step.Span span) {

        static Drawn of(Piece piece, Edge edge, CurvePath line) {
            Run first = end(piece, edge, false);
            Run last = end(piece, edge, true);
            CurvePath base = edge.base();
            if (first.equals(last)) {
                return new Drawn(edge, line.transformed(first.motion().inverse()), 0, edge.length());
            }
            if (along(piece, first).end().distance(line.end()) <= Panels.TOUCH) {
                CurvePath own = line.transformed(first.motion().inverse());
                return new Drawn(edge, own.then(base.between(first.to(), edge.length())), 0, first.to());
            }
            if (along(piece, last).start().distance(line.start()) <= Panels.TOUCH) {
                CurvePath own = line.transformed(last.motion().inverse());
                return new Drawn(edge, base.between(0, last.from()).then(own), last.from(), edge.length());
            }
            throw new DraftingException(
                    "Redraw '" + edge.name() + "'",
                    "an opening breaks it, and the new line joins the edge neither before the first opening nor after the"
                            + " last; close the opening, or give the stretch beside it");
        }

        private Drawn(Edge edge, CurvePath base, double from, double to) {
            this(
                    new Edge(edge.name(), edge.role(), edge.allowance(), base),
                    new Step.Span(
                            edge.name(), from, to, base.length() - (edge.length() - to), edge.length(), base.length()));
        }
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

    /** The piece with other bases: rings go to the new ends, mouths to the new arcs, and level lines to where they meet the new edges. */
    private static Piece with(Piece piece, List<Edge> edges, List<Notch> notches, List<Step.Span> spans) {
        Piece bare = new Piece(
                piece.name(),
                edges,
                piece.openings().stream()
                        .map(opening -> shifted(opening, spans))
                        .toList(),
                piece.panels().stream()
                        .map(panel -> panel.with(panel.ring().stream()
                                .map(run -> run.part(
                                        arc(spans, run.border(), run.from()), arc(spans, run.border(), run.to())))
                                .toList()))
                        .toList(),
                piece.levels(),
                piece.insideDarts(),
                notches,
                piece.grain());
        return withLevels(piece, bare);
    }

    private static Opening shifted(Opening opening, List<Step.Span> spans) {
        return new Opening(
                opening.name(),
                shifted(opening.mouth(), spans),
                opening.farMouth().map(mouth -> shifted(mouth, spans)),
                opening.before(),
                opening.after());
    }

    private static Mouth shifted(Mouth mouth, List<Step.Span> spans) {
        return new Mouth(
                mouth.border(),
                arc(spans, mouth.border(), mouth.before()),
                arc(spans, mouth.border(), mouth.after()),
                mouth.use());
    }

    /** Where an arc lies after the redrawing; the ends of a redrawn stretch go to its new ends. */
    private static double arc(List<Step.Span> spans, Border border, double arc) {
        for (Step.Span span : spans) {
            if (border.equals(new Border.OfEdge(span.edge()))) {
                return span.moved(arc);
            }
        }
        return arc;
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

    private static Notch placed(Piece piece, Notch notch, List<Step.Span> spans, List<Double> places) {
        double length = piece.edge(notch.edge()).length();
        List<Double> inside = piece.notches().stream()
                .filter(each -> each.edge().equals(notch.edge()) && each.arc() > Panels.TOUCH)
                .map(Notch::arc)
                .filter(arc -> arc < length - Panels.TOUCH)
                .sorted()
                .toList();
        if (inside.size() != places.size()) {
            throw new IllegalArgumentException("'" + notch.edge() + "' carries " + inside.size()
                    + " notches between its ends; " + places.size() + " places were given.");
        }
        int index = inside.indexOf(notch.arc());
        double arc = index >= 0
                ? places.get(index)
                : shifted(notch, spans, Marks.SHARE).arc();
        return new Notch(notch.edge(), arc, notch.beside());
    }

    private static Notch shifted(Notch notch, List<Step.Span> spans, Marks marks) {
        for (Step.Span span : spans) {
            if (notch.edge().equals(span.edge()) && notch.arc() > span.from()) {
                return new Notch(notch.edge(), shifted(notch.arc(), span, marks), notch.beside());
            }
        }
        return notch;
    }

    private static double shifted(double arc, Step.Span span, Marks marks) {
        if (arc >= span.to()) {
            return span.moved(arc);
        }
        double along = arc - span.from();
        double kept = switch (marks) {
            case SHARE -> along * ((span.newTo() - span.from()) / (span.to() - span.from()));
            case FROM_START -> along;
            case FROM_END -> along + span.newTo() - span.to();
        };
        if (!(kept >= 0 && span.from() + kept <= span.newTo())) {
            throw new DraftingException(
                    "Redraw '" + span.edge() + "'", "its notch at " + arc + " mm would lie past the end");
        }
        return span.from() + kept;
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
        return with(
                piece,
                step.edges(),
                step.notches(),
                step.spans().stream().map(Step.Span::back).toList());
    }
}
