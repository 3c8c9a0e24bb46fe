package org.draftingmaths.finish;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Arc;
import org.draftingmaths.curve.Cubic;
import org.draftingmaths.curve.Curve;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Nearest;
import org.draftingmaths.curve.Straight;
import org.draftingmaths.ledger.Change;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.ledger.Reach;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Edge;
import org.draftingmaths.piece.Notch;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Seam;

/**
 * Facings: copies of an edge that are turned to the inside.
 *
 * <p>A facing is traced last, from the finished edge, with the darts closed and the neighbours laid to it, so that it carries no dart and
 * runs on over the seams. Conserved: the traced edge, along and in shape, with its notches; the direction of the grain. The outer edge is
 * the parallel {@code O(s) = E(s) + f N(s)}, its length {@code L - f K} with {@code K} the angle turned, corners cleaned.
 *
 * <p>The same trace gives the shaped facing of a curved hem: name the hem.
 */
public final class Facings {

    private static final double TOUCH = CurvePath.JOINT;
    private static final String OUTER = "outer edge";

    private Facings() {}

    /**
     * An edge of a piece.
     *
     * @param piece the name of the piece
     * @param edge the name of its edge
     */
    public record On(String piece, String edge) {}

    /**
     * Facings with seams where the garment has seams: one for each piece. Each lies where it lies on its piece, darts closed.
     *
     * <pre>{@code
     * Facing neck = Facings.separate(draft, "neck facing",
     *         List.of(new Facings.On("front", "neckline"), new Facings.On("back", "neckline")), 60);
     * }</pre>
     *
     * @param draft the finished draft
     * @param name the name; each facing is called by its piece and this name
     * @param edges the edges in the order in which they follow each other over the seams of the draft
     * @param width how wide the facing is, in mm
     * @return the facings, and the seams between them
     * @throws IllegalArgumentException when the width is not more than 0, or no edge or an unknown one is named
     * @throws DraftingException when the facing would be deeper than the piece, when the edge bends too sharply for it, when no seam
     *     joins two edges, or when an opening lies at a corner or is not decided
     */
    public static Facing separate(Draft draft, String name, List<On> edges, double width) {
        String asked = asked(name, edges, width);
        Trace trace = Trace.beside(draft, edges, width, asked);
        List<Piece> pieces = new ArrayList<>();
        List<Seam> joins = new ArrayList<>();
        Ledger ledger = Ledger.EMPTY;
        for (int i = 0; i < edges.size(); i++) {
            Trace.Laid laid = trace.laid().get(i);
            String own = edges.get(i).piece() + " " + name;
            CurvePath outer = trace.outer().get(i);
            List<Sides.Side> round = List.of(
                    inner(laid, laid.on().edge()),
                    end(laid, true, outer.end(), asked, false),
                    outer(outer),
                    end(laid, false, outer.start(), asked, true));
            AffineTransformMatrix2D back = laid.by().inverse();
            pieces.add(Sides.piece(
                    own,
                    round.stream().map(side -> side.moved(back)).toList(),
                    laid.sheet().piece(),
                    asked));
            ledger = ledger.then(traced(own, laid, width, outer));
            if (i > 0) {
                joins.add(join(trace, i, name, asked));
            }
        }
        return new Facing(pieces, joins, ledger, List.of());
    }

    /**
     * One facing for several pieces, without seams: the neighbours laid to the first, turned over where the seam asks it. It lies on the first
     * piece and has its grain. Its traced edges are called by piece and edge and keep the direction of the garment's.
     *
     * @param draft the finished draft
     * @param name the name of the facing
     * @param edges the edges in the order in which they follow each other over the seams of the draft
     * @param width how wide the facing is, in mm
     * @return the facing
     * @throws IllegalArgumentException as {@link #separate}
     * @throws DraftingException as {@link #separate}
     */
    public static Facing inOnePiece(Draft draft, String name, List<On> edges, double width) {
        String asked = asked(name, edges, width);
        Trace trace = Trace.beside(draft, edges, width, asked);
        List<Sides.Side> round = new ArrayList<>();
        Ledger ledger = Ledger.EMPTY;
        CurvePath outer = null;
        for (int i = 0; i < edges.size(); i++) {
            Trace.Laid laid = trace.laid().get(i);
            round.add(inner(laid, edges.get(i).piece() + " " + edges.get(i).edge()));
            outer = outer == null
                    ? trace.outer().get(i)
                    : outer.then(trace.outer().get(i));
            ledger = ledger.then(traced(name, laid, width, trace.outer().get(i)));
        }
        Trace.Laid last = trace.laid().get(edges.size() - 1);
        Trace.Laid first = trace.laid().get(0);
        Sides.Side end = end(last, true, outer.end(), asked, false);
        Sides.Side start = end(first, false, outer.start(), asked, true);
        boolean alike = end.edge().name().equals(start.edge().name());
        round.add(alike ? called(end, last.on().piece()) : end);
        round.add(outer(outer));
        round.add(alike ? called(start, first.on().piece()) : start);
        Piece piece = Sides.piece(name, round, first.sheet().piece(), asked);
        return new Facing(List.of(piece), List.of(), ledger, List.of());
    }

    private static Sides.Side called(Sides.Side side, String piece) {
        String name = piece + " " + side.edge().name();
        return new Sides.Side(
                new Edge(
                        name,
                        side.edge().role(),
                        side.edge().allowance(),
                        side.edge().base()),
                side.forward(),
                side.notches().stream()
                        .map(notch -> new Notch(name, notch.arc(), notch.beside()))
                        .toList());
    }

    private static String asked(String name, List<On> edges, double width) {
        if (edges.isEmpty()) {
            throw new IllegalArgumentException("A facing needs an edge to be traced.");
        }
        requireWidth(width);
        return "Trace '" + name + "' from "
                + edges.stream()
                        .map(on -> "'" + on.edge() + "' of '" + on.piece() + "'")
                        .collect(Collectors.joining(" and "));
    }

    private static FacingTraced traced(String facing, Trace.Laid laid, double width, CurvePath outer) {
        return new FacingTraced(
                facing, laid.on().piece(), laid.on().edge(), laid.line().length(), width, outer.length());
    }

    /** The traced edge itself, sewn to the garment's. */
    private static Sides.Side inner(Trace.Laid laid, String name) {
        Piece piece = laid.sheet().piece();
        Edge edge = piece.edge(laid.on().edge());
        CurvePath own = laid.sheet().line().transformed(laid.by());
        List<Notch> notches =
                laid.sheet().hangsFree() ? List.of() : Sides.notches(piece, edge.name(), 0, edge.length(), name);
        return new Sides.Side(new Edge(name, Role.SEAM, edge.allowance(), own), laid.ahead(), notches);
    }

    private static Sides.Side outer(CurvePath line) {
        return new Sides.Side(new Edge(OUTER, Role.FINISHED, 0, line), false, List.of());
    }

    /** The part of the neighbour from the traced edge to the outer one. */
    private static Sides.Side end(Trace.Laid laid, boolean atLineEnd, Vector2D to, String asked, boolean inwards) {
        Sheet.Neighbour neighbour = laid.neighbour(atLineEnd, asked);
        double depth = Nearest.of(neighbour.away(), to).at();
        return side(laid.sheet().piece(), neighbour, depth, inwards);
    }

    /** The part of a neighbour up to a depth; inwards when the round comes back along it to the corner. */
    private static Sides.Side side(Piece piece, Sheet.Neighbour neighbour, double depth, boolean inwards) {
        Edge edge = piece.edge(neighbour.name());
        CurvePath part = neighbour.away().between(0, depth);
        double from = neighbour.atStart() ? 0 : edge.length() - depth;
        return new Sides.Side(
                new Edge(edge.name(), edge.role(), edge.allowance(), neighbour.atStart() ? part : part.reversed()),
                neighbour.atStart() != inwards,
                Sides.notches(piece, edge.name(), from, from + depth, edge.name()));
    }

    /** The seam between two facings is the garment's. */
    private static Seam join(Trace trace, int i, String name, String asked) {
        On before = trace.laid().get(i - 1).on();
        On on = trace.laid().get(i).on();
        Sheet.Neighbour one = trace.laid().get(i - 1).neighbour(true, asked);
        Sheet.Neighbour other = trace.laid().get(i).neighbour(false, asked);
        return Seam.flat(
                name + " at '" + one.name() + "'",
                mate(before.piece() + " " + name, one),
                mate(on.piece() + " " + name, other));
    }

    private static Seam.Mate mate(String facing, Sheet.Neighbour edge) {
        return edge.atStart() ? Seam.Mate.of(facing, edge.name()) : Seam.Mate.backwards(facing, edge.name());
    }

    /**
     * A facing for neck and armhole in one. Its lower edge leaves the centre and the side square. The shoulder is trimmed at each
     * end, and the two traced edges draw in to it in proportion along their way: that much they are no copies, and the ledger says what it does to
     * their lengths.
     *
     * @param piece the finished piece
     * @param name the name of the facing
     * @param combined what it is to be
     * @return the facing; a finding when the strap between neck and armhole is narrower than {@link Combined#TURN_THROUGH}
     * @throws DraftingException when it would be deeper than the piece, or the two edges do not meet over one shoulder
     */
    public static Facing combined(Piece piece, String name, Combined combined) {
        String asked = "Trace '" + name + "' from '" + combined.neckline() + "' and '" + combined.armhole() + "' of '"
                + piece.name() + "'";
        Sheet sheet = Sheet.closedAt(piece, combined.neckline(), asked).asTheGrain();
        boolean neckEnds = shoulderIsAtEnd(sheet, combined.neckline(), combined.armhole(), asked);
        Sheet.Neighbour shoulder = sheet.neighbour(combined.neckline(), neckEnds, asked);
        boolean armEnds = shoulderIsAtEnd(sheet, combined.armhole(), combined.neckline(), asked);
        Sheet.Neighbour centre = sheet.neighbour(combined.neckline(), !neckEnds, asked);
        Sheet.Neighbour side = sheet.neighbour(combined.armhole(), !armEnds, asked);
        double width = shoulder.away().length();
        if (width <= 2 * combined.trim() + TOUCH) {
            throw new DraftingException(
                    asked,
                    "nothing of the shoulder would be left",
                    new Reach(Quantity.LENGTH, combined.trim(), 0, width / 2));
        }
        CurvePath trimmed = shoulder.away().between(combined.trim(), width - combined.trim());
        CurvePath neck = drawnIn(sheet.line(combined.neckline()), neckEnds, trimmed.start());
        CurvePath arm = drawnIn(sheet.line(combined.armhole()), armEnds, trimmed.end());
        Sides.Side atCentre = side(piece, centre, depth(centre, combined.atCentre(), asked), false);
        Sides.Side atSide = side(piece, side, depth(side, combined.atSide(), asked), true);
        CurvePath lower = across(atCentre.path(), atSide.path());
        Trace.requireInside(
                sheet, AffineTransformMatrix2D.identity(), lower, combined.neckline(), combined.atCentre(), asked);
        Edge seam = piece.edge(shoulder.name());
        List<Sides.Side> round = List.of(
                drawn(piece, combined.armhole(), arm, armEnds),
                new Sides.Side(
                        new Edge(
                                seam.name(),
                                seam.role(),
                                seam.allowance(),
                                shoulder.atStart() ? trimmed : trimmed.reversed()),
                        !shoulder.atStart(),
                        List.of()),
                drawn(piece, combined.neckline(), neck, !neckEnds),
                atCentre,
                new Sides.Side(new Edge(OUTER, Role.FINISHED, 0, lower), true, List.of()),
                atSide);
        Piece facing = Sides.piece(name, round, piece, asked);
        Ledger ledger = Ledger.of(
                length(combined.neckline(), piece.edge(combined.neckline()).length(), neck),
                length(combined.armhole(), piece.edge(combined.armhole()).length(), arm),
                length(shoulder.name(), width, trimmed));
        return new Facing(List.of(facing), List.of(), ledger, turnThrough(name, neck, arm));
    }

    private static Change length(String edge, double before, CurvePath after) {
        return new Change("length of '" + edge + "' on the facing", Quantity.LENGTH, before, after.length());
    }

    private static List<Finding> turnThrough(String name, CurvePath neck, CurvePath arm) {
        double room = Lines.narrowest(neck, arm);
        return room >= Combined.TURN_THROUGH
                ? List.of()
                : List.of(new Finding(
                        Finding.Kind.TOO_NARROW_TO_TURN,
                        "'" + name + "'",
                        Quantity.LENGTH,
                        room,
                        Combined.TURN_THROUGH,
                        0));
    }

    private static boolean shoulderIsAtEnd(Sheet sheet, String edge, String other, String asked) {
        for (boolean atEnd : new boolean[] {true, false}) {
            Sheet.Neighbour next = sheet.neighbour(edge, atEnd, asked);
            Vector2D far = next.away().end();
            CurvePath line = sheet.line(other);
            if (line.start().distance(far) <= TOUCH || line.end().distance(far) <= TOUCH) {
                return atEnd;
            }
        }
        throw new DraftingException(asked, "the two edges do not meet over one edge between them");
    }

    static double depth(Sheet.Neighbour neighbour, double depth, String asked) {
        double most = neighbour.away().length();
        if (depth >= most) {
            throw new DraftingException(
                    asked,
                    "it would be deeper than '" + neighbour.name() + "' is long",
                    new Reach(Quantity.LENGTH, depth, 0, most));
        }
        return depth;
    }

    private static Sides.Side drawn(Piece piece, String edge, CurvePath line, boolean forward) {
        Edge own = piece.edge(edge);
        double share = line.length() / own.length();
        List<Notch> notches = Sides.notches(piece, edge, 0, own.length(), edge).stream()
                .map(notch -> new Notch(edge, Math.min(notch.arc() * share, line.length()), notch.beside()))
                .toList();
        return new Sides.Side(new Edge(edge, Role.SEAM, own.allowance(), line), forward, notches);
    }

    /** From the end of the one line to the start of the other, square to both. */
    static CurvePath across(CurvePath centre, CurvePath side) {
        Vector2D from = centre.end();
        Vector2D to = side.start();
        double third = from.distance(to) / 3;
        Vector2D leaving = square(centre.endTangent(), from.vectorTo(to));
        Vector2D arriving = square(side.startTangent(), from.vectorTo(to));
        return CurvePath.of(
                new Cubic(from, from.add(leaving.multiply(third)), to.subtract(arriving.multiply(third)), to));
    }

    private static Vector2D square(Vector2D line, Vector2D towards) {
        Vector2D across = Vector2D.of(-line.getY(), line.getX()).normalize();
        return across.dot(towards) >= 0 ? across : across.negate();
    }

    /** A line with one end carried to a point, all between in proportion to the way along it; the other end stays. */
    private static CurvePath drawnIn(CurvePath line, boolean end, Vector2D to) {
        if (!end) {
            return drawnIn(line.reversed(), true, to).reversed();
        }
        Vector2D shift = line.end().vectorTo(to);
        double length = line.length();
        List<Curve> curves = new ArrayList<>();
        double from = 0;
        for (Curve curve : line.curves()) {
            double upTo = from + curve.length();
            curves.addAll(drawnIn(curve, shift.multiply(from / length), shift.multiply(upTo / length)));
            from = upTo;
        }
        return new CurvePath(curves);
    }

    private static List<Curve> drawnIn(Curve curve, Vector2D first, Vector2D last) {
        if (curve instanceof Straight) {
            return List.of(new Straight(curve.start().add(first), curve.end().add(last)));
        }
        if (curve instanceof Arc arc) {
            return drawnIn(cubic(arc), first, last);
        }
        Cubic cubic = (Cubic) curve;
        return List.of(new Cubic(
                cubic.start().add(first),
                cubic.startHandle().add(first.lerp(last, 1.0 / 3)),
                cubic.endHandle().add(first.lerp(last, 2.0 / 3)),
                cubic.end().add(last)));
    }

    /** An arc as a cubic, to 0.03 % of its radius up to a quarter turn: enough for a line that is drawn anew anyway. */
    private static Cubic cubic(Arc arc) {
        double handle = 4.0 / 3 * Math.tan(Math.abs(arc.sweep()) / 4) * arc.radius();
        return new Cubic(
                arc.start(),
                arc.start().add(arc.tangent(0).multiply(handle)),
                arc.end().subtract(arc.tangent(1).multiply(handle)),
                arc.end());
    }

    /**
     * A facing cut in one with the piece: with {@code R} the reflection in a straight edge, the piece is the piece and {@code R} of its own strip
     * of a given width along that edge. The ends are the neighbours' own lines reflected, so that folded they lie on them and are caught in the
     * same seams.
     *
     * @param piece the finished piece
     * @param edge the name of the edge to fold at: straight, and no fold already
     * @param width how wide the facing is, in mm
     * @return the piece with its facing, the edge now a line marked on it; undone by {@code Panels.undo}
     * @throws IllegalArgumentException when the width is not more than 0
     * @throws DraftingException when the edge is curved or a fold, when the strip would be deeper than the piece, or when a fold beside it is not
     *     square to it
     */
    public static Reworked cutInOne(Piece piece, String edge, double width) {
        requireWidth(width);
        return FoldedBack.straight(piece, edge, width, FoldedBack.OUTER, foldable(piece, edge));
    }

    /**
     * A facing cut in one with the piece that is not equally deep everywhere, as at a cowl: deep at the centre, where it falls into the folds, and
     * as deep at the shoulder as the facing of the back neck that it is joined to. Its outer edge leaves both neighbours square and is a curve
     * between; all else is as with the facing of one width.
     *
     * <pre>{@code
     * Reworked faced = Facings.cutInOne(front, "neckline", 40, 100);   // 40 mm down the shoulder, 100 mm down the centre front
     * }</pre>
     *
     * @param piece the finished piece
     * @param edge the name of the edge to fold at: straight, and no fold already
     * @param atStart how deep it is at the edge's start, in mm along the edge that meets it there
     * @param atEnd how deep it is at the edge's end, in mm along the edge that meets it there
     * @return the piece with its facing, the edge now a line marked on it; undone by {@code Panels.undo}
     * @throws IllegalArgumentException when a depth is not more than 0
     * @throws DraftingException as with the facing of one width, and when a depth is more than its neighbour's length
     */
    public static Reworked cutInOne(Piece piece, String edge, double atStart, double atEnd) {
        requireWidth(atStart);
        requireWidth(atEnd);
        return FoldedBack.shaped(piece, edge, atStart, atEnd, FoldedBack.OUTER, foldable(piece, edge));
    }

    /** The request in words, for an edge at which cloth can be folded. */
    private static String foldable(Piece piece, String edge) {
        String asked = "Cut a facing in one at '" + edge + "' of '" + piece.name() + "'";
        if (!FoldedBack.isStraight(piece, edge)) {
            throw new DraftingException(
                    asked, "it is curved, and cloth folds on a straight line only; trace a separate facing");
        }
        if (piece.edge(edge).role() == Role.FOLD) {
            throw new DraftingException(
                    asked, "it is cut on the fold of the cloth already; make it a finished edge first");
        }
        return asked;
    }

    private static void requireWidth(double width) {
        if (!(width > 0 && Double.isFinite(width))) {
            throw new IllegalArgumentException("A facing is wider than 0 mm: " + width + " mm.");
        }
    }

    /**
     * Whether an edge is the outer one of a facing cut in one, which hangs free.
     *
     * @param edge its name
     * @return true when it is
     */
    public static boolean isOuterEdgeInOne(String edge) {
        return edge.contains(FoldedBack.OUTER);
    }

    /**
     * Whether an edge is the outer one of a facing, which no seam takes.
     *
     * @param edge its name
     * @return true when it is
     */
    public static boolean isOuterEdge(String edge) {
        return edge.equals(OUTER);
    }

    static Draft alone(Piece piece) {
        return new Draft(piece.name(), List.of(piece), List.of());
    }
}
