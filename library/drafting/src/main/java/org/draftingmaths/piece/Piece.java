package org.draftingmaths.piece;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;

/**
 * A pattern piece on the stitch line: named edges, openings between panels, level lines, notches and a grain.
 *
 * <p>A piece is immutable and safe to share between threads. {@code equals} is exact; {@link #sameCloth} asks whether two
 * pieces would cut the same cloth. Make one with {@link Drawing}.
 *
 * @param name the name of the piece
 * @param edges the edges in the order in which they were drawn
 * @param openings the darts, slashes and spreads
 * @param panels the parts of the sheet between the openings
 * @param levels the level lines
 * @param insideDarts the double-pointed darts
 * @param notches the match points
 * @param grain the grain line, if one is drawn
 */
public record Piece(
        String name,
        List<Edge> edges,
        List<Opening> openings,
        List<Panel> panels,
        List<LevelLine> levels,
        List<InsideDart> insideDarts,
        List<Notch> notches,
        Optional<Grain> grain) {

    /** Copies the lists and checks that names are unique. */
    public Piece {
        Names.require(name, "A piece");
        edges = List.copyOf(edges);
        openings = List.copyOf(openings);
        panels = List.copyOf(panels);
        levels = List.copyOf(levels);
        insideDarts = List.copyOf(insideDarts);
        notches = List.copyOf(notches);
        requireUnique(name, "edge", new HashSet<>(), edges, Edge::name);
        Set<String> cuts = new HashSet<>();
        requireUnique(name, "dart or slash", cuts, openings, Opening::name);
        requireUnique(name, "dart or slash", cuts, insideDarts, InsideDart::name);
        requireUnique(name, "level line", new HashSet<>(), levels, LevelLine::name);
    }

    private static <T> void requireUnique(
            String piece, String what, Set<String> seen, List<T> parts, Function<T, String> name) {
        for (T part : parts) {
            if (!seen.add(name.apply(part))) {
                throw new IllegalArgumentException(
                        "Piece '" + piece + "' has more than one " + what + " named '" + name.apply(part) + "'.");
            }
        }
    }

    /**
     * An edge by its name.
     *
     * @param wanted the name
     * @return the edge
     * @throws IllegalArgumentException when the piece has no such edge; the message lists those it has
     */
    public Edge edge(String wanted) {
        for (Edge edge : edges) {
            if (edge.name().equals(wanted)) {
                return edge;
            }
        }
        throw unknown("edge", wanted, edges.stream().map(Edge::name));
    }

    /**
     * A dart, slash or spread by its name.
     *
     * @param wanted the name
     * @return the opening
     * @throws IllegalArgumentException when the piece has no such opening; the message lists those it has
     */
    public Opening opening(String wanted) {
        for (Opening opening : openings) {
            if (opening.name().equals(wanted)) {
                return opening;
            }
        }
        throw unknown("dart or slash", wanted, openings.stream().map(Opening::name));
    }

    private IllegalArgumentException unknown(String what, String wanted, Stream<String> have) {
        return new IllegalArgumentException("Piece '" + name + "' has no " + what + " named '" + wanted + "'; it has "
                + String.join(", ", have.toList()) + ".");
    }

    /**
     * The base curve of a border.
     *
     * @param border an edge or a leg of this piece
     * @return its curve, as it lies with openings closed
     */
    public CurvePath base(Border border) {
        if (border instanceof Border.OfLeg leg) {
            return opening(leg.opening()).base(leg.leg());
        }
        return edge(((Border.OfEdge) border).edge()).base();
    }

    /**
     * A run where it lies, in the direction of its ring.
     *
     * @param run a run of this piece
     * @return the curve
     */
    public CurvePath place(Run run) {
        CurvePath placed = moved(part(base(run.border()), run.from(), run.to()), run.motion());
        return run.forward() ? placed : placed.reversed();
    }

    /**
     * A part of a level line where it lies, in the line's own direction.
     *
     * @param stretch a stretch of this piece
     * @return the curve
     */
    public CurvePath place(Stretch stretch) {
        return moved(part(level(stretch.line()).base(), stretch.from(), stretch.to()), stretch.motion());
    }

    /** What does not move is the base itself, which knows its lengths and its boxes already. */
    private static CurvePath moved(CurvePath base, AffineTransformMatrix2D motion) {
        return motion.equals(Isometry.NONE) ? base : base.transformed(motion);
    }

    private static CurvePath part(CurvePath base, double from, double to) {
        double length = base.length();
        return from <= 0 && to >= length ? base : base.between(from, Math.min(to, length));
    }

    /**
     * The stitch line of an inside dart where it lies.
     *
     * @param laid an inside dart on one of the panels
     * @return a closed curve
     */
    public CurvePath place(Laid laid) {
        return insideDart(laid.dart()).outline().transformed(laid.motion());
    }

    /**
     * A double-pointed dart by its name.
     *
     * @param wanted the name
     * @return the dart
     * @throws IllegalArgumentException when the piece has no such dart; the message lists those it has
     */
    public InsideDart insideDart(String wanted) {
        return insideDarts.stream()
                .filter(dart -> dart.name().equals(wanted))
                .findFirst()
                .orElseThrow(() -> unknown(
                        "double-pointed dart", wanted, insideDarts.stream().map(InsideDart::name)));
    }

    /**
     * A level line by its name.
     *
     * @param wanted the name
     * @return the line
     * @throws IllegalArgumentException when the piece has no such line; the message lists those it has
     */
    public LevelLine level(String wanted) {
        return levels.stream()
                .filter(line -> line.name().equals(wanted))
                .findFirst()
                .orElseThrow(() -> unknown("level line", wanted, levels.stream().map(LevelLine::name)));
    }

    /** A point of a base where a motion carries it. */
    Vector2D point(Border border, double arc, Run run) {
        return run.motion().apply(base(border).pointAt(arc));
    }

    /**
     * A ring as one closed curve, where it lies.
     *
     * @param ring a ring of one of the panels
     * @return the curve
     */
    public CurvePath place(List<Run> ring) {
        List<CurvePath> placed = new ArrayList<>();
        for (Run run : ring) {
            placed.add(place(run));
        }
        return CurvePath.joined(placed);
    }

    /**
     * The net area of cloth: {@code sum over rings of 1/2 * integral of (x dy - y dx)}, wedges and gaps left out.
     *
     * @return the area in square mm; negative for an outline that was drawn crossing itself into the negative
     */
    public double area() {
        return panels.stream()
                .flatMap(panel -> panel.ring().stream())
                .mapToDouble(run -> place(run).area())
                .sum();
    }

    /** The same piece with other panels. */
    Piece with(List<Panel> others) {
        return new Piece(name, edges, openings, others, levels, insideDarts, notches, grain);
    }

    Piece withOpenings(List<Opening> others, List<Panel> otherPanels) {
        return new Piece(name, edges, others, otherPanels, levels, insideDarts, notches, grain);
    }

    Piece withNotches(List<Notch> others) {
        return new Piece(name, edges, openings, panels, levels, insideDarts, others, grain);
    }

    Piece withGrain(Optional<Grain> other) {
        return new Piece(name, edges, openings, panels, levels, insideDarts, notches, other);
    }

    /**
     * The same piece under another name.
     *
     * @param other the name
     * @return the piece
     */
    public Piece named(String other) {
        return new Piece(other, edges, openings, panels, levels, insideDarts, notches, grain);
    }

    /**
     * The same piece with one notch more.
     *
     * @param notch the notch
     * @return the piece
     * @throws IllegalArgumentException when the edge is unknown or shorter than the notch's arc
     */
    public Piece notched(Notch notch) {
        double length = edge(notch.edge()).length();
        if (notch.arc() > length) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "A notch at %.1f mm lies past the end of '%s', which is %.1f mm long.",
                    notch.arc(),
                    notch.edge(),
                    length));
        }
        return withNotches(Stream.concat(notches.stream(), Stream.of(notch)).toList());
    }

    /**
     * The piece without the notches of one edge, where it is to be sewn to something else than it was drafted for.
     *
     * @param edge the name of the edge
     * @return the piece
     * @throws IllegalArgumentException when there is no such edge
     */
    public Piece unnotched(String edge) {
        edge(edge);
        return withNotches(
                notches.stream().filter(notch -> !notch.edge().equals(edge)).toList());
    }

    /**
     * The same piece with another grain line.
     *
     * @param line where it is drawn; that it leaves the piece is for a check to find
     * @return the piece
     */
    public Piece grained(Grain line) {
        return withGrain(Optional.of(line));
    }

    /**
     * The same piece with an opening put to another use at its mouth: a slash left as gathers, or a dart pressed the other
     * way.
     *
     * @param opening the name of the opening
     * @param use what becomes of its surplus
     * @return the piece
     * @throws org.draftingmaths.ledger.DraftingException when a set-back would leave nothing of a dart to be sewn, or its shaped legs would
     *     cross or leave the cloth
     */
    public Piece using(String opening, Use use) {
        Piece used = changed(opening(opening).used(use));
        if (use instanceof Use.Dart) {
            DartEnd.sewnTip(used, opening);
            StitchLines.requireSense(used, opening);
        }
        return used;
    }

    /**
     * The same piece with an opening put to another use at its other end: a spread that is gathered at the waist and hangs free
     * at the hem.
     *
     * @param opening the name of the opening
     * @param use what becomes of its surplus there
     * @return the piece
     * @throws IllegalArgumentException when the use is a dart, which ends at a point
     * @throws org.draftingmaths.ledger.DraftingException when the opening ends at a point inside
     */
    public Piece usingFar(String opening, Use use) {
        if (use instanceof Use.Dart) {
            throw new IllegalArgumentException("A dart is sewn from its mouth, not from its other end.");
        }
        return changed(opening(opening).usedFar(use));
    }

    private Piece changed(Opening other) {
        return withOpenings(
                openings.stream()
                        .map(each -> each.name().equals(other.name()) ? other : each)
                        .toList(),
                panels);
    }

    /**
     * Whether this piece and another would cut the same cloth: the same edges with the same bases, roles and allowances, the
     * same openings, level lines, notches and grain, lying in the same place.
     *
     * @param other the other piece
     * @param tolerance how far in mm corresponding points may lie apart
     * @return true when they would
     */
    public boolean sameCloth(Piece other, double tolerance) {
        return SameCloth.differences(this, other, tolerance).isEmpty();
    }
}
