package org.draftingmaths.fullness;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Cubic;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Nearest;
import org.draftingmaths.ledger.Change;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.piece.Border;
import org.draftingmaths.piece.Edge;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Panels;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Redraw;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Slash;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.piece.Stay;
import org.draftingmaths.piece.Stretch;
import org.draftingmaths.unit.Length;

/** A piece made longer or shorter at a level line: a parallel spread or lap there, and the edges that cross the line blended. */
public final class Lengthen {

    /** How far on either side of the place a crossing edge is blended, in mm; less where there is not so much of it. */
    private static final double BLENDED = 40;

    /** How near to an edge a level line must end, in mm. */
    private static final double REACHES = 1e-6;

    private Lengthen() {}

    /**
     * Makes a piece longer or shorter at a level line. Everything below the line is shifted square to it by {@code by}, marks with it; all above
     * stays. An edge that crosses the line is blended from 40 mm above the place to 40 mm below it: a slanted one would have a step there.
     *
     * <p>Conserved: every edge that does not cross the line, darts, notches where they lie on the cloth, all directions; a fold stays straight.
     * Changed and told: the crossing edges, by about {@code by} each, and the net area. Mates are to be treated alike, and walked.
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
     * @throws DraftingException when the line is broken or does not reach from edge to edge, when it crosses a dart, or when there is less
     *     cloth below the line than is to be taken out
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
    public static Reworked at(Piece piece, Spot.On from, Spot.On to, Length by) {
        CurvePath line = CurvePath.polyline(place(piece, from), place(piece, to));
        return along(piece, "the line from " + from.words() + " to " + to.words(), line, by);
    }

    private static Vector2D place(Piece piece, Spot.On spot) {
        return Paper.edge(piece, ((Border.OfEdge) spot.border()).edge()).pointAt(spot.arc());
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
        Slash slash =
                new Slash(by.mm() > 0 ? "lengthening" : "shortening", mouth.spot(), end.spot(), Optional.of(line));
        Stay above = Stay.at(mouth.edge(), mouth.above());
        Reworked moved = by.mm() > 0
                ? longer(piece, slash, by.mm(), above)
                : Spread.lap(piece, slash, by.mm(), by.mm(), mouth.falls() ? Leg.AFTER : Leg.BEFORE, above);
        Ledger ledger = moved.ledger();
        Piece now = moved.piece();
        for (Crossed crossed : List.of(mouth, end)) {
            if (piece.edge(crossed.edge()).role() != Role.FOLD) {
                Reworked blended = blended(now, piece.edge(crossed.edge()), crossed);
                now = blended.piece();
                ledger = ledger.then(blended.ledger());
            }
        }
        return new Reworked(
                now, ledger.then(new Change("net area by all this", Quantity.AREA, piece.area(), now.area())));
    }

    private static Reworked longer(Piece piece, Slash slash, double by, Stay above) {
        Reworked open = Spread.parallel(piece, slash, by, above);
        Reworked filled = Panels.fill(open.piece(), slash.name());
        return new Reworked(filled.piece(), open.ledger().then(filled.ledger()));
    }

    private static CurvePath line(Piece piece, String level, String asked) {
        piece.level(level);
        List<Stretch> stretches = piece.panels().stream()
                .flatMap(panel -> panel.lines().stream())
                .filter(stretch -> stretch.line().equals(level))
                .toList();
        if (stretches.size() != 1) {
            throw new DraftingException(asked, "an opening breaks the line; close it, or take another line");
        }
        return piece.place(stretches.get(0));
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
                boolean whole = Redraw.first(piece, edge.name()).length() == edge.length();
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
