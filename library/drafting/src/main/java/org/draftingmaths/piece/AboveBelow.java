package org.draftingmaths.piece;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Inside;
import org.draftingmaths.curve.Meets;
import org.draftingmaths.ledger.DraftingException;

/**
 * A sheet seen as two parts, above and below a straight line from one edge to another. What lies on the line itself is above.
 *
 * @param piece the piece
 * @param from where the line starts
 * @param to where it ends
 * @param down the direction square to the line, downwards
 * @param lower the border of the part below
 */
record AboveBelow(Piece piece, Place from, Place to, Vector2D down, CurvePath lower) {

    /**
     * A place on an edge that no opening breaks.
     *
     * @param edge the name of the edge
     * @param arc the base arc in mm
     * @param run all of the edge
     * @param point where it lies
     */
    record Place(String edge, double arc, Run run, Vector2D point) {

        static Place of(Piece piece, Spot spot, String asked) {
            if (!(spot instanceof Spot.On on && on.border() instanceof Border.OfEdge border)) {
                throw new IllegalArgumentException(
                        asked + ": a line runs from edge to edge, not to " + spot.words() + ".");
            }
            Run run = Panels.onlyRun(piece, border)
                    .orElseThrow(() -> new DraftingException(
                            asked, "the line ends on " + border.words() + ", which an opening breaks"));
            return new Place(
                    border.edge(),
                    on.arc(),
                    run,
                    run.motion().apply(piece.base(border).pointAt(on.arc())));
        }
    }

    static AboveBelow of(Piece piece, Spot from, Spot to, String asked) {
        Place one = Place.of(piece, from, asked);
        Place other = Place.of(piece, to, asked);
        if (one.edge().equals(other.edge())) {
            throw new DraftingException(asked, "the line ends on the edge on which it starts, '" + one.edge() + "'");
        }
        requireInside(piece, one, other, asked);
        Vector2D way = one.point().directionTo(other.point());
        Vector2D square = Vector2D.of(-way.getY(), way.getX());
        Vector2D down = square.getY() < 0 || (square.getY() == 0 && square.getX() > 0) ? square : square.negate();
        return new AboveBelow(piece, one, other, down, lower(piece, one, other, down, asked));
    }

    private static void requireInside(Piece piece, Place from, Place to, String asked) {
        CurvePath line = CurvePath.polyline(from.point(), to.point());
        List<PaperSide> sides = Paper.sides(piece);
        for (PaperSide side : sides) {
            boolean leaves = Meets.of(line, side.path()).points().stream()
                    .anyMatch(meet -> meet.onFirst() > Panels.TOUCH && meet.onFirst() < line.length() - Panels.TOUCH);
            if (leaves) {
                throw new DraftingException(asked, "the line leaves the cloth at '" + side.edge() + "'");
            }
        }
        CurvePath outline = CurvePath.joined(sides.stream().map(PaperSide::path).toList());
        if (Inside.of(outline, line.pointAt(line.length() / 2), Panels.TOUCH) != Inside.Where.INSIDE) {
            throw new DraftingException(asked, "the line leaves the cloth at '" + from.edge() + "'");
        }
    }

    /** Round the part below: down the one edge from the line, along the outline, up the other to the line and back. */
    private static CurvePath lower(Piece piece, Place from, Place to, Vector2D down, String asked) {
        List<PaperSide> sides = Paper.sides(piece);
        int one = indexOf(sides, from.edge());
        int other = indexOf(sides, to.edge());
        boolean falls = along(sides.get(one), from).dot(down) > 0;
        if (falls == along(sides.get(other), to).dot(down) > 0) {
            throw new DraftingException(asked, "the line has no part above and part below it where it ends");
        }
        int first = falls ? one : other;
        int last = falls ? other : one;
        CurvePath begins = sides.get(first).path();
        CurvePath ends = sides.get(last).path();
        List<CurvePath> round = new ArrayList<>();
        round.add(begins.between(arc(sides.get(first), falls ? from : to), begins.length()));
        for (int i = (first + 1) % sides.size(); i != last; i = (i + 1) % sides.size()) {
            round.add(sides.get(i).path());
        }
        round.add(ends.between(0, arc(sides.get(last), falls ? to : from)));
        round.add(CurvePath.polyline((falls ? to : from).point(), (falls ? from : to).point()));
        return CurvePath.joined(round);
    }

    private static int indexOf(List<PaperSide> sides, String edge) {
        for (int i = 0; i < sides.size(); i++) {
            if (sides.get(i).edge().equals(edge) && sides.get(i).opening().isEmpty()) {
                return i;
            }
        }
        throw new IllegalStateException("'" + edge + "' is not on the outline.");
    }

    private static double arc(PaperSide side, Place place) {
        return side.forward() ? place.arc() : side.path().length() - place.arc();
    }

    private static Vector2D along(PaperSide side, Place place) {
        return side.path().tangentAt(arc(side, place));
    }

    /** How far below the line a point lies, in mm. */
    double depth(Vector2D point) {
        return from.point().vectorTo(point).dot(down);
    }

    /** Whether a point belongs to the part below. */
    boolean below(Vector2D point) {
        Inside.Where where = Inside.of(lower, point, Panels.TOUCH);
        return where == Inside.Where.INSIDE
                || (where == Inside.Where.BOUNDARY && Math.abs(depth(point)) > Panels.TOUCH);
    }

    /** Whether a line that does not cross belongs to the part below. */
    boolean below(CurvePath line) {
        return below(line.pointAt(line.length() / 2));
    }

    boolean ends(String edge) {
        return from.edge().equals(edge) || to.edge().equals(edge);
    }

    Place place(String edge) {
        return from.edge().equals(edge) ? from : to;
    }
}
