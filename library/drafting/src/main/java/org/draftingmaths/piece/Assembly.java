package org.draftingmaths.piece;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Curve;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Meet;
import org.draftingmaths.curve.Meets;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Entry;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.unit.Steps;

/** Makes a piece of a drawing: bases of edges, rings, and level lines on them. */
final class Assembly {

    private final Drawing drawing;
    private final List<Edge> edges = new ArrayList<>();
    private final List<Opening> openings = new ArrayList<>();
    private final List<Run> outline = new ArrayList<>();

    Assembly(Drawing drawing) {
        this.drawing = drawing;
    }

    /** Said of an outline that was drawn clockwise. */
    record OutlineTurned(String piece) implements Entry {
        @Override
        public String sentence(Steps steps) {
            return "The outline of '" + piece
                    + "' was drawn clockwise; it is taken anticlockwise, and every edge keeps the"
                    + " direction in which it was drawn.";
        }
    }

    Reworked assemble() {
        for (int i = 0; i < drawing.items().size(); i++) {
            if (drawing.items().get(i) instanceof Drawing.Item.Begin begin) {
                takeEdge(begin, drawing.itemsOf(i));
            }
        }
        requireClosed();
        Piece raw = new Piece(
                drawing.name(),
                edges,
                openings,
                List.of(Panel.bare(outline)),
                drawing.levels(),
                drawing.darts(),
                List.of(),
                drawing.grain());
        boolean clockwise = raw.area() < 0;
        List<Run> ring = clockwise ? turnedRound(outline) : outline;
        List<Panel> panels = partedAtApexes(raw, ring).stream().map(Panel::bare).toList();
        Piece piece = raw.with(panels);
        openings.forEach(opening -> requireDartInside(piece, opening));
        openings.forEach(opening -> DartEnd.sewnTip(piece, opening.name()));
        Piece marked = withDarts(withLevels(piece));
        for (Notch notch : drawing.notches()) {
            marked = marked.notched(notch);
        }
        return new Reworked(marked, clockwise ? Ledger.of(new OutlineTurned(drawing.name())) : Ledger.EMPTY);
    }

    /** Lays the stretches of an edge end to end with its darts closed: that is its base. */
    private void takeEdge(Drawing.Item.Begin begin, List<Drawing.Item> items) {
        List<Curve> base = new ArrayList<>();
        List<Run> runs = new ArrayList<>();
        AffineTransformMatrix2D closing = Isometry.NONE;
        List<Curve> stretch = new ArrayList<>();
        double from = 0;
        Vector2D pen = null;
        for (Drawing.Item item : items) {
            if (item instanceof Drawing.Item.Line line) {
                stretch.addAll(line.path().curves());
                pen = line.path().end();
            } else if (item instanceof Drawing.Item.DartAt dart) {
                from = takeStretch(begin.edge(), base, stretch, closing, runs, from);
                Vector2D mouth = pen == null ? penBefore(begin) : pen;
                takeDart(begin.edge(), dart, mouth, from, runs);
                closing = closing(dart, mouth).premultiply(closing);
                pen = dart.end();
            }
        }
        takeStretch(begin.edge(), base, stretch, closing, runs, from);
        if (base.isEmpty()) {
            throw new IllegalArgumentException(
                    "Edge '" + begin.edge() + "' of '" + drawing.name() + "' has no line drawn.");
        }
        edges.add(new Edge(begin.edge(), begin.role(), begin.allowance(), new CurvePath(base)));
        outline.addAll(ended(runs, edges.get(edges.size() - 1).length()));
    }

    private Vector2D penBefore(Drawing.Item.Begin begin) {
        int at = drawing.items().indexOf(begin);
        return new Drawing(
                        drawing.name(),
                        drawing.start(),
                        drawing.items().subList(0, at),
                        List.of(),
                        List.of(),
                        List.of(),
                        Optional.empty())
                .pen();
    }

    private static double takeStretch(
            String edge,
            List<Curve> base,
            List<Curve> stretch,
            AffineTransformMatrix2D closing,
            List<Run> runs,
            double from) {
        if (stretch.isEmpty()) {
            return from;
        }
        CurvePath drawn = new CurvePath(stretch);
        base.addAll(drawn.transformed(closing).curves());
        stretch.clear();
        double to = new CurvePath(base).length();
        runs.add(new Run(new Border.OfEdge(edge), from, to, true, closing.inverse()));
        return to;
    }

    /** The last run of an edge ends exactly where the base does. */
    private static List<Run> ended(List<Run> runs, double length) {
        return runs.stream()
                .map(run -> Math.abs(run.to() - length) <= Panels.TOUCH && run.border() instanceof Border.OfEdge
                        ? run.part(run.from(), length)
                        : run)
                .toList();
    }

    private void takeDart(String edge, Drawing.Item.DartAt dart, Vector2D mouth, double arc, List<Run> runs) {
        CurvePath before = CurvePath.polyline(mouth, dart.apex());
        CurvePath after = CurvePath.polyline(dart.end(), dart.apex());
        Opening opening = new Opening(
                dart.dart(), new Mouth(new Border.OfEdge(edge), arc, arc, dart.use()), Optional.empty(), before, after);
        openings.add(opening);
        runs.add(new Run(opening.leg(Leg.BEFORE), 0, before.length(), true, Isometry.NONE));
        runs.add(new Run(opening.leg(Leg.AFTER), 0, after.length(), false, Isometry.NONE));
    }

    /** Turns the after leg on to the before leg; where the legs are unequal, the rest is a shift. */
    private static AffineTransformMatrix2D closing(Drawing.Item.DartAt dart, Vector2D mouth) {
        Vector2D after = dart.apex().vectorTo(dart.end());
        Vector2D before = dart.apex().vectorTo(mouth);
        double angle = Math.atan2(after.signedArea(before), after.dot(before));
        AffineTransformMatrix2D turn = AffineTransformMatrix2D.createRotation(dart.apex(), angle);
        return turn.premultiply(
                AffineTransformMatrix2D.createTranslation(turn.apply(dart.end()).vectorTo(mouth)));
    }

    private void requireClosed() {
        if (edges.isEmpty()) {
            throw new IllegalArgumentException("The outline of '" + drawing.name() + "' has no edge.");
        }
        Vector2D start = drawing.start().orElseThrow();
        double gap = drawing.pen().distance(start);
        if (gap > CurvePath.JOINT) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "The outline of '%s' is open: it starts at %s and ends at %s, %.3f mm apart.",
                    drawing.name(),
                    Outlines.words(start),
                    Outlines.words(drawing.pen()),
                    gap));
        }
    }

    private static List<Run> turnedRound(List<Run> ring) {
        List<Run> turned = new ArrayList<>(ring.stream().map(Run::turnedRound).toList());
        Collections.reverse(turned);
        return turned;
    }

    /** Darts at one apex part the sheet: each part becomes a ring of its own, and none touches itself. */
    private static List<List<Run>> partedAtApexes(Piece piece, List<Run> ring) {
        List<Integer> tips = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            Run run = ring.get(i);
            if (run.border() instanceof Border.OfLeg && run.entry() > 0) {
                tips.add(i);
            }
        }
        for (int a = 0; a < tips.size(); a++) {
            for (int b = a + 1; b < tips.size(); b++) {
                if (tip(piece, ring, tips.get(a)).distance(tip(piece, ring, tips.get(b))) <= Panels.TOUCH) {
                    return parted(piece, ring, tips.get(a), tips.get(b));
                }
            }
        }
        return List.of(ring);
    }

    private static Vector2D tip(Piece piece, List<Run> ring, int corner) {
        return piece.place(ring.get(corner)).start();
    }

    private static List<List<Run>> parted(Piece piece, List<Run> ring, int one, int other) {
        List<Run> rest = new ArrayList<>(ring.subList(other, ring.size()));
        rest.addAll(ring.subList(0, one));
        List<List<Run>> parts = new ArrayList<>(partedAtApexes(piece, List.copyOf(ring.subList(one, other))));
        parts.addAll(partedAtApexes(piece, rest));
        return parts;
    }

    private static void requireDartInside(Piece piece, Opening dart) {
        double angle = Measured.angle(piece, dart.name());
        if (angle <= 0) {
            throw new DraftingException(
                    "Draw dart '" + dart.name() + "'",
                    "its point at " + Outlines.words(Measured.tip(piece, dart.name()))
                            + " lies outside the cloth, or its mouth is drawn backwards along the edge");
        }
        for (Leg leg : Leg.values()) {
            CurvePath line = Measured.leg(piece, dart.name(), leg);
            for (Panel panel : piece.panels()) {
                for (Run run : panel.ring()) {
                    if (!run.border().equals(dart.leg(leg))) {
                        requireClear(piece, dart, line, run);
                    }
                }
            }
        }
    }

    private static void requireClear(Piece piece, Opening dart, CurvePath leg, Run run) {
        for (Meet meet : Meets.of(leg, piece.place(run)).points()) {
            boolean atMouth = meet.onFirst() <= Panels.TOUCH;
            boolean atTip = leg.length() - meet.onFirst() <= Panels.TOUCH && run.border() instanceof Border.OfLeg;
            if (!atMouth && !atTip) {
                throw new DraftingException(
                        "Draw dart '" + dart.name() + "'",
                        String.format(
                                Locale.ROOT,
                                "its leg of %.1f mm is longer than the piece: it meets %s after %.1f mm, at %s",
                                leg.length(),
                                run.border().words(),
                                meet.onFirst(),
                                Outlines.words(meet.point())));
            }
        }
    }

    private static Piece withLevels(Piece piece) {
        List<Panel> panels = new ArrayList<>();
        for (Panel panel : piece.panels()) {
            CurvePath border = piece.place(panel.ring());
            List<Stretch> lines = piece.levels().stream()
                    .flatMap(line -> Within.of(border, line.base()).stream()
                            .map(within -> new Stretch(line.name(), within.from(), within.to(), Isometry.NONE)))
                    .toList();
            panels.add(new Panel(panel.ring(), lines, List.of()));
        }
        Piece marked = piece.with(panels);
        for (LevelLine line : piece.levels()) {
            if (panels.stream()
                    .flatMap(panel -> panel.lines().stream())
                    .noneMatch(part -> part.line().equals(line.name()))) {
                throw new DraftingException(
                        "Mark level line '" + line.name() + "'", "no part of it lies on '" + piece.name() + "'");
            }
        }
        return marked;
    }

    private static Piece withDarts(Piece piece) {
        Piece marked = piece;
        for (InsideDart dart : piece.insideDarts()) {
            marked = marked.with(marked.panels().stream()
                    .map(panel -> Within.holds(marked(piece, panel), dart.outline())
                            ? new Panel(
                                    panel.ring(),
                                    panel.lines(),
                                    with(panel.darts(), new Laid(dart.name(), Isometry.NONE)))
                            : panel)
                    .toList());
            if (marked.panels().stream()
                    .flatMap(panel -> panel.darts().stream())
                    .noneMatch(laid -> laid.dart().equals(dart.name()))) {
                throw new DraftingException(
                        "Draw dart '" + dart.name() + "'", "it does not lie inside '" + piece.name() + "'");
            }
        }
        return marked;
    }

    private static CurvePath marked(Piece piece, Panel panel) {
        return piece.place(panel.ring());
    }

    private static <T> List<T> with(List<T> list, T last) {
        List<T> more = new ArrayList<>(list);
        more.add(last);
        return more;
    }
}
