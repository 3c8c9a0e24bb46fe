package org.draftingmaths.piece;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
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
 * <p>An edge that openings break is redrawn stretch by stretch ({@link #stretches(Piece, Map, Map, Map)}): every stretch goes on meeting the leg
 * ends where they lie, so no opening changes, and what is drawn across a mouth follows the stretches beside it. With {@code l} and {@code n} the
 * lengths of a stretch before and now, an arc of the closed edge beyond it counts on by {@code n - l}. Where only the first stretch changes, or only
 * the last, that line alone is enough. Over its darts, whose legs are then cut or lengthened, it is redrawn as a whole by {@link ClosedEdge}.
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
        return redrawn(piece, drawn(piece, lines), List.of(), marks, Map.of());
    }

    /**
     * Redraws edges stretch by stretch, and says where the notches of some of them go.
     *
     * <p>Conserved: the legs and points of all openings, every stretch that is given as it lies, to the last bit.
     *
     * <pre>{@code
     * List<CurvePath> waist = new ArrayList<>(Redraw.stretches(front, "waist"));
     * waist.set(1, SetLength.of(waist.get(1), waist.get(1).length() + 2));
     * Reworked fuller = Redraw.stretches(front, Map.of("waist", waist), Map.of(), Map.of());
     * }</pre>
     *
     * @param piece the piece
     * @param lines for each edge redrawn all its stretches where they are to lie, as {@link #stretches(Piece, String)} gives them; beside an
     *     opening each stays at the leg's end
     * @param marks for each edge what its notches keep between the ends of each stretch; their share, where none is named
     * @param places for some edges the new base arcs in mm of the notches inside them, by their arcs and before an opening first; notches at
     *     the edge's ends stay there
     * @return the piece and what was done
     * @throws IllegalArgumentException as {@link #edges(Piece, Map)}, when there are not as many stretches or places as the edge has stretches or
     *     notches, or when a stretch leaves its leg's end
     * @throws DraftingException as {@link #edges(Piece, Map, Map)}
     */
    public static Reworked stretches(
            Piece piece,
            Map<String, List<CurvePath>> lines,
            Map<String, Marks> marks,
            Map<String, List<Double>> places) {
        Map<String, List<CurvePath>> sorted = new TreeMap<>(lines);
        sorted.keySet().forEach(piece::edge);
        List<Drawn> drawn = new ArrayList<>();
        sorted.forEach((name, each) -> drawn.add(Drawn.of(piece, piece.edge(name), each)));
        return redrawn(piece, drawn, List.of(), marks, places);
    }

    /** The edges that are given, each with its new base. */
    static List<Drawn> drawn(Piece piece, Map<String, CurvePath> lines) {
        Map<String, CurvePath> sorted = new TreeMap<>(lines);
        sorted.keySet().forEach(piece::edge);
        List<Drawn> drawn = new ArrayList<>();
        sorted.forEach((name, line) -> drawn.add(Drawn.of(piece, piece.edge(name), withEnd(piece, name, line))));
        return drawn;
    }

    /** The piece with edges redrawn, and the legs of the darts over which it was done. */
    static Reworked redrawn(
            Piece piece,
            List<Drawn> drawn,
            List<Step.LegsCut> darts,
            Map<String, Marks> marks,
            Map<String, List<Double>> places) {
        List<Edge> edges = piece.edges().stream()
                .map(edge -> drawn.stream()
                        .map(Drawn::edge)
                        .filter(each -> each.name().equals(edge.name()))
                        .findFirst()
                        .orElse(edge))
                .toList();
        List<Step.Span> spans = drawn.stream().map(Drawn::span).toList();
        List<Notch> notches = piece.notches().stream()
                .map(notch -> places.containsKey(notch.edge())
                        ? placed(piece, notch, spans, places.get(notch.edge()))
                        : shifted(notch, spans, marks.getOrDefault(notch.edge(), Marks.SHARE)))
                .toList();
        Piece redrawn = with(piece, edges, notches, spans, darts);
        requireClosed(redrawn);
        String asked =
                "Redraw " + drawn.stream().map(each -> each.edge().name()).collect(Collectors.joining(", "));
        Outlines.simpleRings(redrawn, () -> asked);
        requireSense(redrawn, drawn, asked);
        Step step = new Step.Redrawn(
                piece.name(), piece.edges(), piece.notches(), edges, notches, spans, darts, lines(piece, redrawn));
        return new Reworked(redrawn, told(piece, redrawn, Ledger.of(step), darts));
    }

    /**
     * The stretches of an edge between its openings; all of it where none breaks it.
     *
     * @param piece the piece
     * @param edge the name of the edge
     * @return the curves where they lie, in the edge's own direction and order
     * @throws DraftingException when an end of the edge was lost with cloth taken out
     */
    public static List<CurvePath> stretches(Piece piece, String edge) {
        return runs(piece, piece.edge(edge)).stream()
                .map(run -> along(piece, run))
                .toList();
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
    static Run end(Piece piece, Edge edge, boolean stop) {
        return piece.panels().stream()
                .flatMap(panel -> panel.ring().stream())
                .filter(run -> run.border().equals(new Border.OfEdge(edge.name())))
                .filter(run -> stop ? run.to() == edge.length() : run.from() == 0)
                .findFirst()
                .orElseThrow(() -> new DraftingException(
                        "Redraw '" + edge.name() + "'", "its end was lost with cloth taken out of the piece"));
    }

    /** The runs of an edge in its own order. */
    private static List<Run> runs(Piece piece, Edge edge) {
        end(piece, edge, false);
        end(piece, edge, true);
        return piece.panels().stream()
                .flatMap(panel -> panel.ring().stream())
                .filter(run -> run.border().equals(new Border.OfEdge(edge.name())))
                .sorted(Comparator.comparingDouble(Run::from))
                .toList();
    }

    /** The stretches of an edge with the first or the last drawn anew, whichever the line joins. */
    private static List<CurvePath> withEnd(Piece piece, String edge, CurvePath line) {
        List<CurvePath> stretches = new ArrayList<>(stretches(piece, edge));
        int last = stretches.size() - 1;
        if (last == 0 || stretches.get(0).end().distance(line.end()) <= Panels.TOUCH) {
            stretches.set(0, line);
        } else if (stretches.get(last).start().distance(line.start()) <= Panels.TOUCH) {
            stretches.set(last, line);
        } else {
            throw new DraftingException(
                    "Redraw '" + edge + "'",
                    "an opening breaks it, and the new line joins the edge neither before the first opening nor after the"
                            + " last; give the stretch beside it, or draw the edge over its darts (ClosedEdge)");
        }
        return stretches;
    }

    /**
     * An edge redrawn.
     *
     * @param edge the edge as it is now
     * @param span which stretches of the old base became which of the new
     */
    record Drawn(Edge edge, Step.Span span) {

        /** A stretch that is given as it lies stays to the last bit. */
        static Drawn of(Piece piece, Edge edge, List<CurvePath> lines) {
            List<Run> runs = runs(piece, edge);
            if (lines.size() != runs.size()) {
                throw new IllegalArgumentException("Openings leave " + runs.size() + " stretches of '" + edge.name()
                        + "'; " + lines.size() + " were given.");
            }
            List<CurvePath> base = new ArrayList<>();
            List<Step.Span.Drawn> parts = new ArrayList<>();
            double kept = 0;
            double now = 0;
            for (int i = 0; i < runs.size(); i++) {
                Run run = runs.get(i);
                CurvePath was = along(piece, run);
                if (runs.size() > 1 && lines.get(i).equals(was)) {
                    continue;
                }
                requireAtLegs(edge, i, i > 0 ? was.start().distance(lines.get(i).start()) : 0);
                requireAtLegs(
                        edge,
                        i,
                        i < runs.size() - 1 ? was.end().distance(lines.get(i).end()) : 0);
                if (run.from() > kept) {
                    base.add(edge.base().between(kept, run.from()));
                    now += run.from() - kept;
                }
                CurvePath own = lines.get(i).transformed(run.motion().inverse());
                base.add(own);
                parts.add(new Step.Span.Drawn(run.from(), run.to(), now, now + own.length()));
                now += own.length();
                kept = run.to();
            }
            if (kept < edge.length()) {
                base.add(kept == 0 ? edge.base() : edge.base().between(kept, edge.length()));
            }
            return fitted(edge, CurvePath.joined(base), parts, kept);
        }

        /** The last part's end by the whole length, so that it meets what lies behind it to the last bit. */
        private static Drawn fitted(Edge edge, CurvePath base, List<Step.Span.Drawn> parts, double kept) {
            List<Step.Span.Drawn> fitted = new ArrayList<>(parts);
            if (!fitted.isEmpty()) {
                Step.Span.Drawn last = fitted.remove(fitted.size() - 1);
                double end = base.length() - (edge.length() - kept);
                fitted.add(new Step.Span.Drawn(last.from(), last.to(), last.newFrom(), end));
            }
            return new Drawn(edge, base, fitted);
        }

        private static void requireAtLegs(Edge edge, int index, double gap) {
            if (gap > Panels.TOUCH) {
                throw new IllegalArgumentException(String.format(
                        Locale.ROOT,
                        "Stretch %d of '%s' must stay at the ends of the legs beside it; it leaves one by %.3f mm.",
                        index + 1,
                        edge.name(),
                        gap));
            }
        }

        Drawn(Edge edge, CurvePath base, List<Step.Span.Drawn> parts) {
            this(
                    new Edge(edge.name(), edge.role(), edge.allowance(), base),
                    new Step.Span(edge.name(), parts, edge.length(), base.length()));
        }
    }

    private static Ledger told(Piece before, Piece after, Ledger done, List<Step.LegsCut> darts) {
        Ledger ledger = done;
        for (Edge edge : before.edges()) {
            Edge now = after.edge(edge.name());
            if (!now.equals(edge)) {
                ledger = ledger.then(
                        new Change("length of '" + edge.name() + "'", Quantity.LENGTH, edge.length(), now.length()));
            }
        }
        for (Step.LegsCut dart : darts) {
            String name = "'" + dart.dart() + "'";
            ledger = ledger.then(Ledger.of(
                    new Change(
                            "length of the legs of " + name,
                            Quantity.LENGTH,
                            dart.before().length(),
                            dart.newBefore().length()),
                    new Change(
                            "intake of " + name,
                            Quantity.LENGTH,
                            Measured.intake(before, dart.dart()),
                            Measured.intake(after, dart.dart()))));
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
    private static Piece with(
            Piece piece, List<Edge> edges, List<Notch> notches, List<Step.Span> spans, List<Step.LegsCut> darts) {
        List<Opening> openings = piece.openings().stream()
                .map(opening -> recut(shifted(opening, spans), darts))
                .toList();
        Piece bare = new Piece(
                piece.name(),
                edges,
                openings,
                piece.panels(),
                piece.levels(),
                piece.insideDarts(),
                notches,
                piece.grain());
        List<Panel> panels = piece.panels().stream()
                .map(panel -> panel.with(panel.ring().stream()
                        .map(run -> isLeg(run, darts)
                                ? run.part(0, bare.base(run.border()).length())
                                : run.part(arc(spans, run.border(), run.from()), arc(spans, run.border(), run.to())))
                        .toList()))
                .toList();
        return withLevels(piece, bare.with(panels));
    }

    private static boolean isLeg(Run run, List<Step.LegsCut> darts) {
        return run.border() instanceof Border.OfLeg leg
                && darts.stream().anyMatch(dart -> dart.dart().equals(leg.opening()));
    }

    private static Opening recut(Opening opening, List<Step.LegsCut> darts) {
        return darts.stream()
                .filter(dart -> dart.dart().equals(opening.name()))
                .findFirst()
                .map(dart -> dart.of(opening))
                .orElse(opening);
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
    static Stream<Stretch> refitted(Piece piece, Stretch stretch, List<CurvePath> was, CurvePath now) {
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

    private static void requireSense(Piece piece, List<Drawn> drawn, String asked) {
        for (Drawn each : drawn) {
            Edge edge = each.edge();
            if (edge.role() == Role.FOLD && !Centre.isStraight(edge.base())) {
                throw new DraftingException(asked, "'" + edge.name() + "' is a fold and must be straight");
            }
        }
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
        List<Notch> inside = piece.notches().stream()
                .filter(each -> each.edge().equals(notch.edge()) && each.arc() > Panels.TOUCH)
                .filter(each -> each.arc() < length - Panels.TOUCH)
                .sorted(Comparator.comparingDouble(Notch::arc).thenComparing(Notch::beside))
                .toList();
        if (inside.size() != places.size()) {
            throw new IllegalArgumentException("'" + notch.edge() + "' carries " + inside.size()
                    + " notches between its ends; " + places.size() + " places were given.");
        }
        int index = inside.indexOf(notch);
        double arc = index >= 0
                ? places.get(index)
                : shifted(notch, spans, Marks.SHARE).arc();
        return new Notch(notch.edge(), arc, notch.beside());
    }

    private static Notch shifted(Notch notch, List<Step.Span> spans, Marks marks) {
        for (Step.Span span : spans) {
            if (notch.edge().equals(span.edge())) {
                double arc = span.around(notch.arc())
                        .map(part -> kept(notch, part, marks))
                        .orElseGet(() -> span.moved(notch.arc()));
                return new Notch(notch.edge(), arc, notch.beside());
            }
        }
        return notch;
    }

    private static double kept(Notch notch, Step.Span.Drawn part, Marks marks) {
        double along = notch.arc() - part.from();
        double kept = switch (marks) {
            case SHARE -> along * ((part.newTo() - part.newFrom()) / (part.to() - part.from()));
            case FROM_START -> along;
            case FROM_END -> along + part.newTo() - part.to() - (part.newFrom() - part.from());
        };
        if (!(kept >= 0 && part.newFrom() + kept <= part.newTo())) {
            throw new DraftingException(
                    "Redraw '" + notch.edge() + "'", "its notch at " + notch.arc() + " mm would lie past the end");
        }
        return part.newFrom() + kept;
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
        if (!piece.edges().equals(step.edgesAfter())
                || !piece.notches().equals(step.notchesAfter())
                || !step.darts().stream().allMatch(dart -> dart.holds(piece))) {
            throw Panels.changedSince("Undo the redrawing of " + String.join(", ", step.redrawn()));
        }
        Piece back = with(
                piece,
                step.edges(),
                step.notches(),
                step.spans().stream().map(Step.Span::back).toList(),
                step.darts().stream().map(Step.LegsCut::back).toList());
        List<Panel> panels = new ArrayList<>(back.panels());
        for (Step.Lines lines : step.lines()) {
            int index = Panels.panelOf(piece, (Spot.On) lines.witness());
            panels.set(
                    index,
                    new Panel(
                            panels.get(index).ring(),
                            lines.stretches(),
                            panels.get(index).darts()));
        }
        return back.with(panels);
    }

    /** How the level lines lay on panels where they lie otherwise now: a stretch that was cut away is found nowhere else. */
    private static List<Step.Lines> lines(Piece before, Piece after) {
        List<Step.Lines> changed = new ArrayList<>();
        for (int i = 0; i < before.panels().size(); i++) {
            List<Stretch> was = before.panels().get(i).lines();
            Panel now = after.panels().get(i);
            if (!was.equals(now.lines())) {
                changed.add(new Step.Lines(Panels.witness(now), was));
            }
        }
        return changed;
    }
}
