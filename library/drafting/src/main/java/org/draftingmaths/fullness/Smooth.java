package org.draftingmaths.fullness;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Arc;
import org.draftingmaths.curve.Cubic;
import org.draftingmaths.curve.Curve;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Fit;
import org.draftingmaths.curve.SetLength;
import org.draftingmaths.ledger.Change;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.piece.Border;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Mouth;
import org.draftingmaths.piece.Opening;
import org.draftingmaths.piece.Panels;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.PaperSide;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Redraw;
import org.draftingmaths.piece.Reworked;

/**
 * An edge that spreading has left with corners, drawn as one smooth line: a step of its own, reported, after which seams are walked
 * again.
 *
 * <p>A blend changes the length. With stretches of equal length {@code s} that turn by {@code a} at each corner, a fair curve through
 * the corners is longer than the stretches by the share {@code a^2/24}, one that touches them in their middles is shorter by {@code
 * a^2/12}, and a corner rounded off from {@code t} before it to {@code t} after it loses {@code t a^2/6}.
 */
public final class Smooth {

    /** A corner turned by less than this, in radians, is none. */
    private static final double CORNER = 1e-9;

    private Smooth() {}

    /** How an edge is blended. */
    public sealed interface Blend {

        /** One curve from end to end in the directions at its ends: the fairest, and a new line. */
        record OneCurve() implements Blend {}

        /** A fair curve through the corners: the hollows between them are filled. */
        record ThroughCorners() implements Blend {}

        /** A fair curve that touches the stretches in their middles, the first and the last at their ends: the corners are cut off. */
        record AlongStretches() implements Blend {}

        /**
         * The corners rounded off, the stretches between left as they are.
         *
         * @param from how far in mm before and after a corner
         */
        record Rounded(double from) implements Blend {
            /** Checks the distance. */
            public Rounded {
                if (!(from > 0 && Double.isFinite(from))) {
                    throw new IllegalArgumentException(
                            "A corner is rounded from more than 0 mm before it: " + from + " mm.");
                }
            }
        }
    }

    /** In which direction a blended edge leaves its ends. */
    public enum Ends {
        /** As the edge does now. */
        AS_DRAWN,
        /** Square to the neighbouring edges, as a hem at its seams and its fold. */
        SQUARE
    }

    /**
     * Blends an edge and leaves it as long as it comes out. Openings of the edge that are left open are filled first.
     *
     * @param piece the piece
     * @param edge the edge
     * @param blend how
     * @param ends in which direction it leaves its ends
     * @return the piece and what was done: the length before and after
     * @throws DraftingException when an opening of the edge is stitched or folded, or the new line would cross the outline
     */
    public static Reworked edge(Piece piece, String edge, Blend blend, Ends ends) {
        double before = Lengths.drawn(piece, edge);
        Reworked filled = filled(piece, edge);
        CurvePath line = blended(filled.piece(), edge, blend, ends);
        Reworked redrawn = Redraw.edges(filled.piece(), Map.of(edge, line));
        return new Reworked(
                redrawn.piece(),
                filled.ledger()
                        .then(redrawn.ledger())
                        .then(new Change(
                                "length of '" + edge + "' by the blend", Quantity.LENGTH, before, line.length())));
    }

    /**
     * Blends an edge and then sets it to a length by the handles of its curves, their ends and directions kept: both changes are
     * told, that of the blend and that of the setting.
     *
     * <pre>{@code
     * Reworked hem = Smooth.edgeTo(skirt, "hem", new Smooth.Blend.OneCurve(), Smooth.Ends.SQUARE, 450);
     * }</pre>
     *
     * @param piece the piece
     * @param edge the edge
     * @param blend how
     * @param ends in which direction it leaves its ends
     * @param length the length wanted in mm
     * @return the piece and what was done
     * @throws DraftingException as {@link #edge}, or when the blended line cannot be made so long or short
     */
    public static Reworked edgeTo(Piece piece, String edge, Blend blend, Ends ends, double length) {
        double before = Lengths.drawn(piece, edge);
        Reworked filled = filled(piece, edge);
        CurvePath line = blended(filled.piece(), edge, blend, ends);
        Reworked redrawn = Redraw.edges(filled.piece(), Map.of(edge, set(edge, line, length)));
        Ledger ledger = filled.ledger()
                .then(redrawn.ledger())
                .then(new Change("length of '" + edge + "' by the blend", Quantity.LENGTH, before, line.length()))
                .then(new Change("length of '" + edge + "' by setting it", Quantity.LENGTH, line.length(), length));
        return new Reworked(redrawn.piece(), ledger);
    }

    private static CurvePath set(String edge, CurvePath line, double length) {
        try {
            return SetLength.of(line, length);
        } catch (IllegalArgumentException cannot) {
            throw new DraftingException(
                    "Set '" + edge + "' to its length", cannot.getMessage().replaceAll("\\.$", ""));
        }
    }

    /** The piece with every opening of the edge filled. */
    static Reworked filled(Piece piece, String edge) {
        Border border = new Border.OfEdge(edge);
        Reworked done = new Reworked(piece, Ledger.EMPTY);
        for (Opening opening : piece.openings()) {
            if (breaks(opening.mouth(), border)
                    || opening.farMouth().filter(far -> breaks(far, border)).isPresent()) {
                Reworked next = Panels.fill(done.piece(), opening.name());
                done = new Reworked(next.piece(), done.ledger().then(next.ledger()));
            }
        }
        return done;
    }

    private static boolean breaks(Mouth mouth, Border border) {
        return mouth.border().equals(border);
    }

    private static CurvePath blended(Piece piece, String edge, Blend blend, Ends ends) {
        CurvePath line = Paper.edge(piece, edge);
        Vector2D leaving = ends == Ends.SQUARE ? square(piece, edge, line, true) : line.startTangent();
        Vector2D arriving = ends == Ends.SQUARE ? square(piece, edge, line, false) : line.endTangent();
        if (blend instanceof Blend.OneCurve) {
            return CurvePath.of(oneCurve(line.start(), leaving, line.end(), arriving));
        }
        if (blend instanceof Blend.Rounded rounded) {
            return rounded(edge, line, rounded.from());
        }
        List<CurvePath> stretches = stretches(line);
        List<Vector2D> points = new ArrayList<>(List.of(line.start()));
        for (int i = 1; i < stretches.size(); i++) {
            CurvePath stretch = stretches.get(i);
            if (blend instanceof Blend.ThroughCorners) {
                points.add(stretch.start());
            } else if (i < stretches.size() - 1) {
                points.add(stretch.pointAt(stretch.length() / 2));
            }
        }
        points.add(line.end());
        return Fit.through(points, leaving, arriving);
    }

    /** The direction square to the neighbour, on the side to which the edge runs. */
    private static Vector2D square(Piece piece, String edge, CurvePath line, boolean start) {
        Vector2D corner = start ? line.start() : line.end();
        Vector2D own = start ? line.startTangent() : line.endTangent();
        Vector2D away = neighbour(piece, edge, corner);
        Vector2D square = Vector2D.of(-away.getY(), away.getX());
        return square.dot(own) > 0 ? square : square.negate();
    }

    /** The direction in which the outline's other side at a corner runs. */
    private static Vector2D neighbour(Piece piece, String edge, Vector2D corner) {
        return Paper.sides(piece).stream()
                .filter(side -> !side.edge().equals(edge))
                .map(PaperSide::path)
                .filter(path -> path.start().distance(corner) <= CurvePath.JOINT
                        || path.end().distance(corner) <= CurvePath.JOINT)
                .map(path -> path.start().distance(corner) <= CurvePath.JOINT ? path.startTangent() : path.endTangent())
                .findFirst()
                .orElseThrow(() -> new DraftingException("Blend '" + edge + "'", "no other edge meets it at its end"));
    }

    /**
     * One cubic whose handles are those of a circular arc of the same turn: {@code h = c / (3 cos^2(turn/4))} with chord {@code c}.
     */
    static Cubic oneCurve(Vector2D from, Vector2D leaving, Vector2D to, Vector2D arriving) {
        double turn = Math.atan2(leaving.signedArea(arriving), leaving.dot(arriving));
        double cosine = Math.cos(turn / 4);
        double handle = from.distance(to) / 3 / cosine / cosine;
        return new Cubic(from, from.add(leaving.multiply(handle)), to.subtract(arriving.multiply(handle)), to);
    }

    /** The stretches of a line between its corners. */
    private static List<CurvePath> stretches(CurvePath line) {
        List<CurvePath> stretches = new ArrayList<>();
        List<Curve> curves = new ArrayList<>();
        for (Curve curve : line.curves()) {
            if (!curves.isEmpty() && turn(curves.get(curves.size() - 1), curve) > CORNER) {
                stretches.add(new CurvePath(curves));
                curves = new ArrayList<>();
            }
            curves.add(curve);
        }
        stretches.add(new CurvePath(curves));
        return stretches;
    }

    private static double turn(Curve one, Curve next) {
        Vector2D in = one.tangent(1);
        Vector2D out = next.tangent(0);
        return Math.abs(Math.atan2(in.signedArea(out), in.dot(out)));
    }

    /** Each corner replaced by a curve from some way before it to as far after it. */
    private static CurvePath rounded(String edge, CurvePath line, double from) {
        List<CurvePath> stretches = stretches(line);
        List<Curve> curves = new ArrayList<>();
        for (int i = 0; i < stretches.size(); i++) {
            CurvePath stretch = stretches.get(i);
            double start = i == 0 ? 0 : from;
            double stop = stretch.length() - (i == stretches.size() - 1 ? 0 : from);
            if (!(stop > start)) {
                throw new DraftingException(
                        "Blend '" + edge + "'",
                        String.format(
                                java.util.Locale.ROOT,
                                "a stretch of %.1f mm between two corners is too short to round them from %.1f mm",
                                stretch.length(),
                                from));
            }
            CurvePath kept = stretch.between(start, stop);
            if (i > 0) {
                curves.add(corner(stretches.get(i - 1), stretch, from));
            }
            curves.addAll(kept.curves());
        }
        return new CurvePath(curves);
    }

    private static Curve corner(CurvePath before, CurvePath after, double from) {
        double at = before.length() - from;
        Vector2D start = before.pointAt(at);
        Vector2D end = after.pointAt(from);
        Vector2D leaving = before.tangentAt(at);
        Vector2D arriving = after.tangentAt(from);
        Cubic cubic = oneCurve(start, leaving, end, arriving);
        double turn = Math.atan2(leaving.signedArea(arriving), leaving.dot(arriving));
        double evenly = Math.abs(leaving.dot(start.vectorTo(end)) - arriving.dot(start.vectorTo(end)));
        return Math.abs(turn) > CORNER && evenly <= CORNER ? arc(start, leaving, end, turn) : cubic;
    }

    /** Between straight stretches a corner is rounded by a circular arc exactly. */
    private static Curve arc(Vector2D start, Vector2D leaving, Vector2D end, double turn) {
        double radius = start.distance(end) / 2 / Math.sin(Math.abs(turn) / 2);
        Vector2D left = Vector2D.of(-leaving.getY(), leaving.getX()).multiply(Math.signum(turn) * radius);
        Vector2D middle = AffineTransformMatrix2D.createRotation(start.add(left), turn / 2)
                .apply(start);
        return Arc.through(start, middle, end);
    }
}
