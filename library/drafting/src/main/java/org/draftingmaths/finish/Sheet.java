package org.draftingmaths.finish;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Inside;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.piece.Border;
import org.draftingmaths.piece.Edge;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Mouth;
import org.draftingmaths.piece.Opening;
import org.draftingmaths.piece.Panel;
import org.draftingmaths.piece.Panels;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.PaperSide;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Run;
import org.draftingmaths.piece.Slash;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.piece.Use;

/**
 * The panels of a piece laid with its darts closed, as a patternmaker pins them before she traces an edge: first those at the edge, then the
 * others as far as they can be closed at once. Surplus that is eased or gathered is closed too; what hangs free stays open.
 *
 * @param piece the piece
 * @param placed for each panel that was laid, how it came to lie
 * @param anchor the panel from which the others were laid
 * @param edge the edge that is traced
 * @param blocked why a dart could not be slashed to any edge, to stand behind a refusal; empty when all could
 */
record Sheet(Piece piece, Map<Integer, AffineTransformMatrix2D> placed, int anchor, String edge, String blocked) {

    private static final double TOUCH = CurvePath.JOINT;

    /** What a slash is called that lets a dart close. */
    private static final String SLASH = "slash to close ";

    /** Where along a far edge such a slash is tried. */
    private static final double[] SHARES = {0.5, 0.3, 0.7, 0.1, 0.9};

    /** Lays the panels round an edge; the anchor stays where it is. */
    static Sheet closedAt(Piece piece, String edge, String asked) {
        piece.edge(edge);
        List<Opening> own = piece.openings().stream()
                .filter(opening -> mouths(opening).anyMatch(mouth -> isOn(mouth, edge)))
                .toList();
        for (Opening opening : own) {
            if (isUndecided(opening)) {
                throw new DraftingException(
                        asked, "it is not said yet what becomes of '" + opening.name() + "'; say it first");
            }
        }
        if (own.stream().anyMatch(Sheet::hangs) && own.stream().anyMatch(Sheet::closes)) {
            throw new DraftingException(
                    asked, "some of its surplus hangs free and some is closed; trace the parts apart");
        }
        List<String> round = round(piece, edge);
        Slashed done = slashed(piece, round);
        Piece slashed = done.piece();
        int anchor = anchor(slashed, edge);
        Map<Integer, AffineTransformMatrix2D> placed = new TreeMap<>();
        placed.put(anchor, AffineTransformMatrix2D.identity());
        for (String near : round) {
            spread(slashed, placed, openingsOf(slashed, near));
        }
        return new Sheet(slashed, placed, anchor, edge, done.blocked());
    }

    private static List<Opening> openingsOf(Piece piece, String edge) {
        return piece.openings().stream()
                .filter(opening -> mouths(opening).anyMatch(mouth -> isOn(mouth, edge)))
                .toList();
    }

    /** The edges from the traced one outwards: itself, its neighbours, theirs. Darts near it are closed before those far off. */
    private static List<String> round(Piece piece, String edge) {
        List<String> order =
                Paper.sides(piece).stream().map(PaperSide::edge).distinct().toList();
        int at = order.indexOf(edge);
        int n = order.size();
        List<String> round = new ArrayList<>(order);
        round.sort(Comparator.comparingInt(name -> {
            int apart = Math.floorMod(order.indexOf(name) - at, n);
            return Math.min(apart, n - apart);
        }));
        return round;
    }

    /**
     * A dart with the same sheet on both sides cannot be closed flat. The patternmaker slashes the paper from the dart's point to an
     * edge far off and lets it open there; so do we, and what opens is no border.
     */
    private static Slashed slashed(Piece piece, List<String> round) {
        Slashed slashed = new Slashed(piece, "");
        for (String near : round) {
            for (Opening opening : openingsOf(piece, near)) {
                if (closes(opening) && opening.farMouth().isEmpty() && isOnOnePanel(slashed.piece(), opening)) {
                    slashed = slashedFrom(slashed, opening, round);
                }
            }
        }
        return slashed;
    }

    /**
     * A piece with the slashes by which its darts close.
     *
     * @param piece the piece
     * @param blocked why a dart could not be slashed to any edge, to stand behind a refusal; empty when all could
     */
    private record Slashed(Piece piece, String blocked) {}

    private static boolean isOnOnePanel(Piece piece, Opening opening) {
        return IntStream.range(0, piece.panels().size())
                .anyMatch(panel -> legRun(piece, panel, opening, Leg.BEFORE).isPresent()
                        && legRun(piece, panel, opening, Leg.AFTER).isPresent());
    }

    private static Slashed slashedFrom(Slashed before, Opening opening, List<String> round) {
        Piece piece = before.piece();
        String last = "";
        for (int i = round.size() - 1; i > 0; i--) {
            double length = piece.edge(round.get(i)).length();
            for (double share : SHARES) {
                Slash slash = Slash.straight(
                        SLASH + opening.name(), Spot.on(round.get(i), share * length), Spot.tip(opening.name()));
                try {
                    return new Slashed(Panels.cut(piece, slash).piece(), before.blocked());
                } catch (DraftingException blocked) {
                    last = blocked.reason();
                }
            }
        }
        return new Slashed(piece, "; no slash closes '" + opening.name() + "': " + last);
    }

    private static boolean isOurSlash(Opening opening) {
        return opening.name().startsWith(SLASH);
    }

    /** Whether the edge has surplus that hangs free. */
    boolean hangsFree() {
        return piece.openings().stream()
                .filter(Sheet::hangs)
                .flatMap(Sheet::mouths)
                .anyMatch(mouth -> isOn(mouth, edge));
    }

    private static boolean hangs(Opening opening) {
        return opening.mouth().use() instanceof Use.Left left && left.kind() == Use.Kind.FLARE;
    }

    private static Stream<Mouth> mouths(Opening opening) {
        return Stream.concat(Stream.of(opening.mouth()), opening.farMouth().stream());
    }

    private static boolean isOn(Mouth mouth, String edge) {
        return mouth.border().equals(new Border.OfEdge(edge));
    }

    private static boolean isUndecided(Opening opening) {
        return opening.mouth().use() instanceof Use.Left left && left.kind() == Use.Kind.SLASH;
    }

    private static boolean closes(Opening opening) {
        return opening.mouth().use() instanceof Use.Dart
                || (opening.mouth().use() instanceof Use.Left left
                        && (left.kind() == Use.Kind.EASE || left.kind() == Use.Kind.GATHERS));
    }

    /** The panel with the edge and the grain; failing that, the one with the longest run of the edge. */
    private static int anchor(Piece piece, String edge) {
        int longest = -1;
        double length = 0;
        for (int i = 0; i < piece.panels().size(); i++) {
            Panel panel = piece.panels().get(i);
            double own = panel.ring().stream()
                    .filter(run -> run.border().equals(new Border.OfEdge(edge)))
                    .mapToDouble(Run::length)
                    .sum();
            if (own > 0 && holdsGrain(piece, panel)) {
                return i;
            }
            if (own > length) {
                longest = i;
                length = own;
            }
        }
        return longest;
    }

    private static boolean holdsGrain(Piece piece, Panel panel) {
        return piece.grain()
                .filter(grain ->
                        Inside.contains(piece.place(panel.ring()), grain.from().lerp(grain.to(), 0.5)))
                .isPresent();
    }

    private static void spread(Piece piece, Map<Integer, AffineTransformMatrix2D> placed, List<Opening> openings) {
        Deque<Integer> next = new ArrayDeque<>(placed.keySet());
        while (!next.isEmpty()) {
            int here = next.remove();
            for (Opening opening : openings) {
                for (Leg leg : Leg.values()) {
                    Optional<Run> own = legRun(piece, here, opening, leg);
                    for (int there = 0;
                            own.isPresent() && there < piece.panels().size();
                            there++) {
                        Optional<Run> opposite = legRun(piece, there, opening, leg.other());
                        if (opposite.isPresent() && !placed.containsKey(there) && !isUndecided(opening)) {
                            placed.put(
                                    there,
                                    hangs(opening)
                                            ? placed.get(here)
                                            : laid(piece, own.get(), opposite.get(), placed.get(here)));
                            next.add(there);
                        }
                    }
                }
            }
        }
    }

    private static Optional<Run> legRun(Piece piece, int panel, Opening opening, Leg leg) {
        return piece.panels().get(panel).ring().stream()
                .filter(run -> run.border().equals(new Border.OfLeg(opening.name(), leg)))
                .findFirst();
    }

    /** How a panel must lie so that its leg lies on a leg that is laid already, from the mouth on. */
    private static AffineTransformMatrix2D laid(Piece piece, Run own, Run opposite, AffineTransformMatrix2D placed) {
        CurvePath to = piece.base(own.border()).transformed(own.motion()).transformed(placed);
        CurvePath from = piece.base(opposite.border()).transformed(opposite.motion());
        return onto(
                from.start(),
                from.start().vectorTo(from.end()),
                to.start(),
                to.start().vectorTo(to.end()));
    }

    /** The turn and shift that carry a point to a point and a direction to a direction. */
    static AffineTransformMatrix2D onto(Vector2D from, Vector2D way, Vector2D to, Vector2D wayTo) {
        double angle = Math.atan2(way.signedArea(wayTo), way.dot(wayTo));
        return AffineTransformMatrix2D.createRotation(from, angle)
                .premultiply(AffineTransformMatrix2D.createTranslation(from.vectorTo(to)));
    }

    /** The sheet moved so that the part with the grain line lies where it lies in the piece. */
    Sheet asTheGrain() {
        for (Map.Entry<Integer, AffineTransformMatrix2D> each : placed.entrySet()) {
            if (holdsGrain(piece, piece.panels().get(each.getKey()))) {
                AffineTransformMatrix2D back = each.getValue().inverse();
                Map<Integer, AffineTransformMatrix2D> moved = new TreeMap<>();
                placed.forEach((panel, by) -> moved.put(panel, by.premultiply(back)));
                return new Sheet(piece, moved, anchor, edge, blocked);
            }
        }
        return this;
    }

    /** The traced edge, closed, in its own direction. */
    CurvePath line() {
        return hangsFree() ? Paper.edge(piece, edge) : line(edge);
    }

    /** Any edge of which a part was laid, closed, in its own direction, as the part lies that was laid first. */
    CurvePath line(String name) {
        Border border = new Border.OfEdge(name);
        for (int panel : inOrder()) {
            for (Run run : piece.panels().get(panel).ring()) {
                if (run.border().equals(border)) {
                    return piece.base(border).transformed(run.motion()).transformed(placed.get(panel));
                }
            }
        }
        throw new DraftingException(
                "Trace '" + edge + "' of '" + piece.name() + "'",
                "'" + name + "' cannot be laid to it with the darts closed" + blocked);
    }

    /** The anchor first, so that an edge of several runs lies as its run there. */
    private List<Integer> inOrder() {
        List<Integer> order = new ArrayList<>(List.of(anchor));
        placed.keySet().stream().filter(panel -> panel != anchor).forEach(order::add);
        return order;
    }

    /** Whether the outline passes an edge in its own direction. */
    boolean forward(String name) {
        return piece.panels().stream()
                .flatMap(panel -> panel.ring().stream())
                .filter(run -> run.border().equals(new Border.OfEdge(name)))
                .findFirst()
                .orElseThrow()
                .forward();
    }

    /**
     * The edge next to one end of an edge.
     *
     * @param name the neighbour
     * @param atStart whether its own start lies at the corner
     * @param away its line from the corner away
     */
    record Neighbour(String name, boolean atStart, CurvePath away) {}

    /** The neighbour at an end of an edge; refused when an opening lies at the corner. */
    Neighbour neighbour(String of, boolean atEnd, String asked) {
        CurvePath line = of.equals(edge) ? line() : line(of);
        Vector2D corner = atEnd ? line.end() : line.start();
        double arc = atEnd ? piece.edge(of).length() : 0;
        Border border = new Border.OfEdge(of);
        for (int panel : inOrder()) {
            List<Run> ring = piece.panels().get(panel).ring();
            for (int i = 0; i < ring.size(); i++) {
                Run run = ring.get(i);
                boolean isEnd = run.border().equals(border) && (atEnd ? run.to() == arc : run.from() == 0);
                if (isEnd) {
                    int step = run.forward() == atEnd ? 1 : ring.size() - 1;
                    return neighbour(of, ring.get((i + step) % ring.size()), panel, corner, asked);
                }
            }
        }
        throw new DraftingException(asked, "an end of '" + of + "' cannot be laid with the darts closed" + blocked);
    }

    private Neighbour neighbour(String of, Run next, int panel, Vector2D corner, String asked) {
        if (!(next.border() instanceof Border.OfEdge other)) {
            throw new DraftingException(asked, "an opening lies at the corner of '" + of + "'; move or close it first");
        }
        Edge found = piece.edge(other.edge());
        CurvePath own = found.base().transformed(next.motion()).transformed(placed.get(panel));
        boolean atStart = own.start().distance(corner) <= own.end().distance(corner);
        CurvePath away = atStart ? own : own.reversed();
        if (away.start().distance(corner) > TOUCH) {
            throw new DraftingException(
                    asked,
                    "with the darts closed '" + of + "' and '" + found.name() + "' do not meet at their corner"
                            + blocked);
        }
        return new Neighbour(found.name(), atStart, away);
    }

    /** What bounds the cloth that was laid: edges, and the legs of openings that could not be closed. */
    List<Bound> bounds() {
        List<Bound> bounds = new ArrayList<>();
        placed.forEach((panel, by) -> piece.panels().get(panel).ring().stream()
                .filter(run -> isBound(run, panel))
                .forEach(run ->
                        bounds.add(new Bound(run.border(), piece.place(run).transformed(by)))));
        return bounds;
    }

    /**
     * A part of the border of what was laid.
     *
     * @param border what it lies along
     * @param line where it lies
     */
    record Bound(Border border, CurvePath line) {}

    /** A leg bounds the cloth unless the opposite leg lies on it, or the opening is cloth too because it hangs free. */
    private boolean isBound(Run run, int panel) {
        if (!(run.border() instanceof Border.OfLeg leg)) {
            return true;
        }
        Opening opening = piece.opening(leg.opening());
        if (hangs(opening) || isOurSlash(opening)) {
            return false;
        }
        CurvePath own = piece.base(run.border()).transformed(run.motion()).transformed(placed.get(panel));
        return placed.keySet().stream()
                .flatMap(there -> legRun(piece, there, opening, leg.leg().other())
                        .map(opposite -> piece.base(opposite.border())
                                .transformed(opposite.motion())
                                .transformed(placed.get(there)))
                        .stream())
                .noneMatch(other -> other.start().distance(own.start()) <= 1e-3
                        && other.end().distance(own.end()) <= 1e-3);
    }
}
