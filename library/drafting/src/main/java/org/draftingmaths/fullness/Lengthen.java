package org.draftingmaths.fullness;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Cubic;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Nearest;
import org.draftingmaths.dart.Legs;
import org.draftingmaths.ledger.Change;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.piece.Border;
import org.draftingmaths.piece.Edge;
import org.draftingmaths.piece.Opening;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Redraw;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.SheetLength;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.piece.Stretch;
import org.draftingmaths.seam.Ends;
import org.draftingmaths.unit.Length;

/** A piece made longer or shorter at a level line: what is below it is shifted, and the edges and darts that cross it are drawn anew. */
public final class Lengthen {

    /** How far on either side of the place a crossing edge is blended, in mm; less where there is not so much of it. */
    private static final double BLENDED = 40;

    /** How near to an edge a level line must end, in mm. */
    private static final double REACHES = 1e-6;

    /** An edge beside the hem must come down at least so steeply, as the sine of its angle. */
    private static final double LEAST_SLOPE = 0.2;

    private static final int HALVINGS = 60;

    private Lengthen() {}

    /**
     * Makes a piece longer or shorter at a level line. Everything below the line is shifted square to it by {@code by}, marks with it; all above, and what
     * lies on the line, stays. An edge that crosses the line is blended from 40 mm above the place to 40 mm below it: a slanted one would have
     * a step there.
     *
     * <p>A dart that crosses the line keeps the width of its mouth; mouth and point go each with its own side of the line, and the legs are drawn straight
     * between them. With {@code w} the width and {@code h} the depth of an upright dart its legs become {@code hypot(w/2, h + by)}, both alike. The mean is
     * taken of the legs of a dart that slants, which would differ. A double-pointed dart keeps its width likewise; at its widest place the half below grows.
     * A dart that is longer takes a smaller angle, so the edge at its mouth has a corner where it is closed: draw it over the folded dart
     * afterwards ({@code Truing.blendDart}).
     *
     * <p>Conserved: every edge that does not cross the line, darts but for the legs of those across it, notches where they lie on the cloth, all directions; a
     * fold stays straight. Changed and told: the crossing edges, by about {@code by} each, the legs and angles of crossing darts, the net area.
     * Mates are to be treated alike, and walked.
     *
     * <pre>{@code
     * Reworked longer = Lengthen.at(front, "waist line", Length.cm(2));
     * }</pre>
     *
     * @param piece the piece
     * @param level the name of the level line, straight from edge to edge
     * @param by how much longer; negative for shorter, not 0
     * @return the piece and what was done
     * @throws IllegalArgumentException when there is no such line, or nothing to do
     * @throws DraftingException when the line is not straight or does not reach from edge to edge, when an opening that is no straight dart crosses it, or a
     *     double-pointed dart that slants to it, or when there is less cloth below the line than is to be taken out
     */
    public static Reworked at(Piece piece, String level, Length by) {
        return along(piece, "'" + level + "'", line(piece, level, asked(piece, "'" + level + "'", by)), by);
    }

    /**
     * Makes a piece longer or shorter at a line of one's own, straight from edge to edge; else as {@link #at(Piece, String, Length)}.
     *
     * @param piece the piece
     * @param from where the line starts
     * @param to where it ends, on another edge
     * @param by how much longer; negative for shorter, not 0
     * @return the piece and what was done
     * @throws IllegalArgumentException when an edge is unknown, a place is past its end, or there is nothing to do
     * @throws DraftingException as {@link #at(Piece, String, Length)}
     */
    public static Reworked at(Piece piece, Spot from, Spot to, Length by) {
        CurvePath line = CurvePath.polyline(place(piece, from), place(piece, to));
        return along(piece, "the line from " + from.words() + " to " + to.words(), line, by);
    }

    /**
     * Makes a piece longer or shorter at its hem. With {@code d} the grain's direction towards the hem, the hem is moved by {@code by d}; the edges
     * at its two ends go on straight until they are as much lower, or are cut back, and the hem's ends are carried to them with their last handles.
     *
     * <p>Conserved: all other edges, every dart and level line, notches where they lie. Changed and told: the hem, the two edges beside it, the
     * net area.
     *
     * <pre>{@code
     * Reworked thigh = Lengthen.atHem(front, "hem", Length.cm(14));
     * }</pre>
     *
     * @param piece the piece
     * @param hem the name of the hem
     * @param by how much longer; negative for shorter, not 0
     * @return the piece and what was done
     * @throws IllegalArgumentException when there is no such edge, or nothing to do
     * @throws DraftingException when an opening breaks the hem, when an edge beside it runs level or is not so long, or when a fold would slant
     */
    public static Reworked atHem(Piece piece, String hem, Length by) {
        String asked = asked(piece, "'" + hem + "'", by);
        CurvePath line = Paper.edge(piece, hem);
        Vector2D down = down(piece, line);
        CurvePath moved = line.transformed(AffineTransformMatrix2D.createTranslation(down.multiply(by.mm())));
        Map<String, CurvePath> lines = new TreeMap<>();
        Map<String, Redraw.Marks> marks = new TreeMap<>();
        for (boolean start : new boolean[] {true, false}) {
            Beside beside = Beside.of(piece, hem, start ? line.start() : line.end(), asked);
            CurvePath drawn = beside.longer(down, by.mm(), asked);
            lines.put(beside.edge(), beside.fromStart() ? drawn.reversed() : drawn);
            marks.put(beside.edge(), beside.fromStart() ? Redraw.Marks.FROM_END : Redraw.Marks.FROM_START);
            moved = start ? Ends.carried(moved.reversed(), drawn.end()).reversed() : Ends.carried(moved, drawn.end());
        }
        lines.put(hem, moved);
        return Redraw.edges(piece, lines, marks);
    }

    /** Along the grain, or down the sheet where there is none, towards the hem. */
    private static Vector2D down(Piece piece, CurvePath hem) {
        Vector2D grain = piece.grain()
                .<Vector2D>map(drawn -> drawn.from().directionTo(drawn.to()))
                .orElse(Vector2D.of(0, 1));
        Vector2D middle = piece.grain()
                .map(drawn -> drawn.from().lerp(drawn.to(), 0.5))
                .orElse(Paper.outline(piece).bounds().getCentroid());
        return grain.dot(middle.vectorTo(hem.pointAt(hem.length() / 2))) > 0 ? grain : grain.negate();
    }

    /**
     * An edge beside the hem.
     *
     * @param edge its name
     * @param path its stretch that ends at the hem
     * @param fromStart whether it starts there by its own direction
     */
    private record Beside(String edge, CurvePath path, boolean fromStart) {

        static Beside of(Piece piece, String hem, Vector2D corner, String asked) {
            for (Edge edge : piece.edges()) {
                CurvePath first = Redraw.first(piece, edge.name());
                CurvePath last = Redraw.last(piece, edge.name());
                if (!edge.name().equals(hem) && first.start().distance(corner) <= CurvePath.JOINT) {
                    return new Beside(edge.name(), first.reversed(), true);
                }
                if (!edge.name().equals(hem) && last.end().distance(corner) <= CurvePath.JOINT) {
                    return new Beside(edge.name(), last, false);
                }
            }
            throw new DraftingException(asked, "an opening lies at a corner of the hem; close it first");
        }

        CurvePath longer(Vector2D down, double by, String asked) {
            double slope = path.endTangent().dot(down);
            if (!(slope > LEAST_SLOPE)) {
                throw new DraftingException(
                        asked, "'" + edge + "' runs level into the hem, and goes on to no lower one");
            }
            if (by > 0) {
                Vector2D end = path.end();
                return path.then(
                        CurvePath.polyline(end, end.add(path.endTangent().multiply(by / slope))));
            }
            double level = path.end().dot(down) + by;
            double low = 0;
            double high = path.length();
            if (!(path.start().dot(down) < level)) {
                throw new DraftingException(asked, "'" + edge + "' is not so long before its other end or a dart");
            }
            for (int i = 0; i < HALVINGS; i++) {
                double middle = (low + high) / 2;
                boolean above = path.pointAt(middle).dot(down) < level;
                low = above ? middle : low;
                high = above ? high : middle;
            }
            return path.between(0, (low + high) / 2);
        }
    }

    private static Vector2D place(Piece piece, Spot spot) {
        if (spot instanceof Spot.On on && on.border() instanceof Border.OfEdge border) {
            return Paper.edge(piece, border.edge()).pointAt(on.arc());
        }
        throw new IllegalArgumentException(
                "A line to lengthen at runs from edge to edge, not to " + spot.words() + ".");
    }

    private static String asked(Piece piece, String where, Length by) {
        if (by.mm() == 0) {
            throw new IllegalArgumentException("A piece is made longer or shorter by more or less than 0 mm.");
        }
        return (by.mm() > 0 ? "Lengthen '" : "Shorten '") + piece.name() + "' at " + where;
    }

    private static Reworked along(Piece piece, String where, CurvePath line, Length by) {
        String asked = asked(piece, where, by);
        Crossed mouth = Crossed.of(piece, line.start(), asked);
        Crossed end = Crossed.of(piece, line.end(), asked);
        Reworked moved = SheetLength.at(piece, mouth.spot(), end.spot(), by.mm(), asked);
        Ledger ledger = moved.ledger();
        Piece now = moved.piece();
        for (Crossed crossed : List.of(mouth, end)) {
            if (piece.edge(crossed.edge()).role() != Role.FOLD) {
                Reworked blended = blended(now, piece.edge(crossed.edge()), crossed);
                now = blended.piece();
                ledger = ledger.then(blended.ledger());
            }
        }
        Reworked trued = trued(piece, now);
        return new Reworked(
                trued.piece(),
                ledger.then(trued.ledger())
                        .then(new Change(
                                "net area by all this",
                                Quantity.AREA,
                                piece.area(),
                                trued.piece().area())));
    }

    /** A dart that slants to the line has legs of two lengths when only one end of it has moved: they are made equal. */
    private static Reworked trued(Piece was, Piece now) {
        Reworked trued = new Reworked(now, Ledger.EMPTY);
        for (Opening opening : now.openings()) {
            if (!opening.before().equals(was.opening(opening.name()).before())
                    && Math.abs(opening.before().length() - opening.after().length()) > CurvePath.JOINT) {
                Reworked next = Legs.equalise(trued.piece(), opening.name(), Legs.Rule.MEAN);
                trued = new Reworked(next.piece(), trued.ledger().then(next.ledger()));
            }
        }
        return trued;
    }

    /** A level line from its one end to its other, over the darts that break it. */
    private static CurvePath line(Piece piece, String level, String asked) {
        piece.level(level);
        List<Stretch> stretches = piece.panels().stream()
                .flatMap(panel -> panel.lines().stream())
                .filter(stretch -> stretch.line().equals(level))
                .sorted(Comparator.comparingDouble(Stretch::from))
                .toList();
        List<CurvePath> placed = stretches.stream().map(piece::place).toList();
        if (placed.isEmpty()) {
            throw new DraftingException(asked, "the line lies on no part of the piece any more");
        }
        Vector2D start = placed.get(0).start();
        Vector2D end = placed.get(placed.size() - 1).end();
        Vector2D along = start.directionTo(end);
        boolean straight = placed.stream()
                .flatMap(path -> Stream.of(path.start(), path.pointAt(path.length() / 2), path.end()))
                .allMatch(point -> Math.abs(along.signedArea(start.vectorTo(point))) <= REACHES);
        if (!straight) {
            throw new DraftingException(
                    asked,
                    "the line is not straight from edge to edge, as an opening has turned a part of it; take another line");
        }
        return CurvePath.polyline(start, end);
    }

    /**
     * Where a level line ends on an edge.
     *
     * @param edge the name of the edge
     * @param arc the base arc in mm
     * @param above a base arc above the line
     */
    private record Crossed(String edge, double arc, double above) {

        static Crossed of(Piece piece, Vector2D end, String asked) {
            for (Edge edge : piece.edges()) {
                CurvePath path = Paper.edge(piece, edge.name());
                Nearest nearest = Nearest.of(path, end);
                boolean whole = Redraw.isWhole(piece, edge.name());
                if (whole && nearest.distance() <= REACHES && nearest.at() > 0 && nearest.at() < edge.length()) {
                    double step = Math.min(1, Math.min(nearest.at(), edge.length() - nearest.at()) / 2);
                    boolean falls = path.tangentAt(nearest.at()).getY() < 0;
                    return new Crossed(edge.name(), nearest.at(), nearest.at() + (falls ? -step : step));
                }
            }
            throw new DraftingException(
                    asked,
                    "the line does not run from edge to edge of the piece, or ends on an edge that an opening breaks");
        }

        Spot spot() {
            return Spot.on(edge, arc);
        }

        /** Whether the edge runs downwards across the line. */
        boolean falls() {
            return above < arc;
        }
    }

    /** From a little above the place to a little below it in one curve, tangent to what is left. */
    private static Reworked blended(Piece piece, Edge was, Crossed crossed) {
        CurvePath line = Paper.edge(piece, was.name());
        double gained = line.length() - was.length();
        double upper = crossed.falls() ? crossed.arc() : crossed.arc() + Math.min(0, gained);
        double start = Math.max(0, Math.min(upper, crossed.arc() + Math.min(0, gained)) - BLENDED);
        double stop = Math.min(line.length(), Math.max(upper, crossed.arc() + Math.max(0, gained)) + BLENDED);
        Vector2D from = line.pointAt(start);
        Vector2D to = line.pointAt(stop);
        double third = from.distance(to) / 3;
        Cubic bridge = new Cubic(
                from,
                from.add(line.tangentAt(start).multiply(third)),
                to.subtract(line.tangentBefore(stop).multiply(third)),
                to);
        List<CurvePath> parts = new ArrayList<>();
        if (start > 0) {
            parts.add(line.between(0, start));
        }
        parts.add(CurvePath.of(bridge));
        if (stop < line.length()) {
            parts.add(line.between(stop, line.length()));
        }
        return Redraw.edges(piece, Map.of(was.name(), CurvePath.joined(parts)));
    }
}
