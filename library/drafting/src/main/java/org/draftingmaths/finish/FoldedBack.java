package org.draftingmaths.finish;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Meet;
import org.draftingmaths.curve.Meets;
import org.draftingmaths.curve.Nearest;
import org.draftingmaths.curve.Straight;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.piece.Edge;
import org.draftingmaths.piece.Extend;
import org.draftingmaths.piece.Isometry;
import org.draftingmaths.piece.Notch;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Role;

/** Cloth beyond an edge that will be folded back on to the piece: its ends are what it will lie on, reflected. */
final class FoldedBack {

    static final String FREE = "free edge of ";
    static final String OUTER = "outer edge of ";
    static final String TURNED = " turned";

    private static final double TOUCH = CurvePath.JOINT;

    private FoldedBack() {}

    /** Whether an edge is straight from end to end on the paper. */
    static boolean isStraight(Piece piece, String edge) {
        CurvePath line = Paper.edge(piece, edge);
        Vector2D way = line.start().directionTo(line.end());
        return line.curves().stream()
                .allMatch(curve -> curve instanceof Straight
                        && Math.abs(way.signedArea(line.start().vectorTo(curve.end()))) <= TOUCH);
    }

    /** The piece gone on beyond a straight edge by the reflection of its own strip there; the free edge is called by its edge and what it is. */
    static Reworked straight(Piece piece, String edge, double depth, String free, String asked) {
        Trace trace = Trace.beside(Facings.alone(piece), List.of(new Facings.On(piece.name(), edge)), depth, asked);
        return reflected(piece, trace.laid().get(0), trace.outer().get(0), free, asked);
    }

    /**
     * The piece gone on beyond a straight edge by the reflection of what lies between it and a line across the piece, square to the neighbours at
     * both ends and so far along each of them.
     */
    static Reworked shaped(Piece piece, String edge, double atStart, double atEnd, String free, String asked) {
        Sheet sheet = Sheet.closedAt(piece, edge, asked).asTheGrain();
        Trace.Laid laid =
                new Trace.Laid(new Facings.On(piece.name(), edge), sheet, AffineTransformMatrix2D.identity(), true);
        CurvePath from = upTo(laid.neighbour(false, asked), atStart, asked);
        CurvePath to = upTo(laid.neighbour(true, asked), atEnd, asked);
        CurvePath outer = Facings.across(from, to.reversed());
        Trace.requireInside(sheet, laid.by(), outer, edge, Math.max(atStart, atEnd), asked);
        return reflected(piece, laid, outer, free, asked);
    }

    private static CurvePath upTo(Sheet.Neighbour neighbour, double depth, String asked) {
        return neighbour.away().between(0, Facings.depth(neighbour, depth, asked));
    }

    private static Reworked reflected(Piece piece, Trace.Laid laid, CurvePath outer, String free, String asked) {
        CurvePath line = laid.line();
        AffineTransformMatrix2D over =
                Isometry.reflection(line.start(), line.start().vectorTo(line.end()));
        AffineTransformMatrix2D place = place(piece, laid);
        Ends ends = new Ends(
                end(piece, laid.neighbour(false, asked), outer.start(), over),
                end(piece, laid.neighbour(true, asked), outer.end(), over));
        return extended(piece, laid, ends.moved(place), outer.transformed(over).transformed(place), free, asked);
    }

    /** The piece gone on beyond a curved edge: a line beside it outside, the neighbours reflected in the edge's direction at its corners. */
    static Reworked curved(Piece piece, String edge, double depth, String asked) {
        Trace.Laid laid = new Trace.Laid(
                new Facings.On(piece.name(), edge),
                Sheet.closedAt(piece, edge, asked),
                AffineTransformMatrix2D.identity(),
                true);
        CurvePath line = laid.line();
        CurvePath outside = Trace.parallel(line, -laid.clothSide() * depth, asked);
        CurvePath beyond = Lines.lengthened(outside, Trace.REACH * depth);
        AffineTransformMatrix2D atStart = Isometry.reflection(line.start(), line.startTangent());
        AffineTransformMatrix2D atEnd = Isometry.reflection(line.end(), line.endTangent());
        Sheet.Neighbour first = laid.neighbour(false, asked);
        Sheet.Neighbour last = laid.neighbour(true, asked);
        Meet from = meet(beyond, first.away().transformed(atStart), first.name(), asked);
        Meet to = meet(beyond, last.away().transformed(atEnd), last.name(), asked);
        Ends ends = new Ends(
                end(piece, first, atStart.apply(from.point()), atStart),
                end(piece, last, atEnd.apply(to.point()), atEnd));
        return extended(piece, laid, ends, beyond.between(from.onFirst(), to.onFirst()), FREE, asked);
    }

    private static Meet meet(CurvePath beyond, CurvePath end, String edge, String asked) {
        return Meets.of(beyond, end).points().stream()
                .filter(meet -> meet.onSecond() > TOUCH)
                .min((a, b) -> Double.compare(a.onSecond(), b.onSecond()))
                .orElseThrow(() -> new DraftingException(asked, "it would be deeper than '" + edge + "' is long"));
    }

    /** From where the sheet was laid back to where the edge lies on the paper. */
    private static AffineTransformMatrix2D place(Piece piece, Trace.Laid laid) {
        CurvePath paper = Paper.edge(piece, laid.on().edge());
        CurvePath line = laid.sheet().line();
        return Sheet.onto(
                line.start(),
                line.start().vectorTo(line.end()),
                paper.start(),
                paper.start().vectorTo(paper.end()));
    }

    /**
     * A neighbour's stretch reflected.
     *
     * @param neighbour the neighbour
     * @param path from the corner to the free edge, where it lies beyond
     * @param notches arcs from the corner at which it carries notches
     */
    private record End(Sheet.Neighbour neighbour, CurvePath path, List<Double> notches) {}

    private record Ends(End start, End stop) {
        Ends moved(AffineTransformMatrix2D by) {
            return new Ends(moved(start, by), moved(stop, by));
        }

        private static End moved(End end, AffineTransformMatrix2D by) {
            Sheet.Neighbour own = end.neighbour();
            return new End(
                    new Sheet.Neighbour(own.name(), own.atStart(), own.away().transformed(by)),
                    end.path().transformed(by),
                    end.notches());
        }
    }

    private static End end(Piece piece, Sheet.Neighbour neighbour, Vector2D to, AffineTransformMatrix2D over) {
        double depth = Nearest.of(neighbour.away(), to).at();
        double length = piece.edge(neighbour.name()).length();
        List<Double> notches = new ArrayList<>();
        for (Notch notch : piece.notches()) {
            double arc = neighbour.atStart() ? notch.arc() : length - notch.arc();
            if (notch.edge().equals(neighbour.name()) && arc > TOUCH && arc < depth) {
                notches.add(arc);
            }
        }
        return new End(neighbour, neighbour.away().between(0, depth).transformed(over), notches);
    }

    private static Reworked extended(
            Piece piece, Trace.Laid laid, Ends ends, CurvePath outer, String free, String asked) {
        boolean forward = laid.sheet().forward(laid.on().edge());
        String name = laid.on().edge();
        List<Extend.Side> sides = new ArrayList<>(List.of(
                side(piece, ends.start(), true, asked),
                new Extend.Side(new Edge(free + name, Role.FINISHED, 0, outer), true, List.of()),
                side(piece, ends.stop(), false, asked)));
        if (!forward) {
            Collections.reverse(sides);
            sides.replaceAll(side -> new Extend.Side(side.edge(), !side.forward(), side.notches()));
        }
        return Extend.beyond(piece, name, name.endsWith("line") ? name : name + " line", sides);
    }

    /**
     * An end as an edge of its own. What goes straight on from a fold, a hem or a finished edge is one edge with it, and a fold must go on so; a
     * seam keeps its length and its name to itself, because its mate may not go straight on.
     */
    private static Extend.Side side(Piece piece, End end, boolean outwards, String asked) {
        Edge edge = piece.edge(end.neighbour().name());
        boolean goesOn = edge.role() != Role.SEAM
                && isStraight(piece, edge.name())
                && isUnbroken(piece, edge)
                && goesStraightOn(end);
        if (edge.role() == Role.FOLD && !goesOn) {
            throw new DraftingException(
                    asked, "folded back, it would not lie on the fold '" + edge.name() + "'; square the corner first");
        }
        String name = goesOn ? edge.name() : free(piece, edge.name() + TURNED);
        return new Extend.Side(
                new Edge(name, edge.role(), edge.allowance(), end.path()),
                outwards,
                goesOn ? List.of() : end.notches());
    }

    private static boolean goesStraightOn(End end) {
        Vector2D way = end.neighbour().away().startTangent();
        Vector2D on = end.path().start().vectorTo(end.path().end());
        return Math.abs(way.signedArea(on)) <= TOUCH && way.dot(on) < 0;
    }

    private static boolean isUnbroken(Piece piece, Edge edge) {
        return Paper.sides(piece).stream()
                        .filter(side -> side.edge().equals(edge.name()))
                        .count()
                == 1;
    }

    /** A name that no edge of the piece has yet. */
    private static String free(Piece piece, String wanted) {
        String name = wanted;
        for (int i = 2; has(piece, name); i++) {
            name = wanted + " " + i;
        }
        return name;
    }

    private static boolean has(Piece piece, String name) {
        return piece.edges().stream().anyMatch(edge -> edge.name().equals(name));
    }
}
