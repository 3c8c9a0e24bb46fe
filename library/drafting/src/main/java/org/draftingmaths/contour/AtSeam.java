package org.draftingmaths.contour;

import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.ledger.Reach;
import org.draftingmaths.piece.ClosedEdge;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Edge;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Redraw;
import org.draftingmaths.piece.Redraw.Marks;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Seam;

/**
 * One piece's part of a line that runs over a seam, seen from the corner where the two meet. Darts in the line are folded shut: the
 * stretch at the seam lies as it does, what follows a dart is brought up to it.
 *
 * @param piece the piece
 * @param closed the edge with its darts folded shut
 * @param edge the name of the edge
 * @param line the edge as it lies closed, from the corner at the seam to its far end
 * @param seam the edge that is sewn, seen from the corner
 * @param far the edge that goes on from the far end, seen from there, as it lies when the darts are closed
 * @param closing how the far end is carried when they are closed
 */
record AtSeam(
        Piece piece,
        ClosedEdge closed,
        String edge,
        CurvePath line,
        Neighbour seam,
        Neighbour far,
        AffineTransformMatrix2D closing) {

    /** How much of a neighbouring edge must be left, in mm. */
    private static final double LEFT = 5;

    /**
     * An edge as seen from one of its ends.
     *
     * @param name its name
     * @param path its stretch from that end to its first opening, or all of it
     * @param fromStart whether that end is its own start
     */
    record Neighbour(String name, CurvePath path, boolean fromStart) {

        static Neighbour of(Piece piece, String name, Vector2D corner) {
            CurvePath first = Redraw.first(piece, name);
            return first.start().distance(corner) <= CurvePath.JOINT
                    ? new Neighbour(name, first, true)
                    : new Neighbour(name, Redraw.last(piece, name).reversed(), false);
        }

        /** The edge with its end so far along it; before it, on the straight that goes on from it. */
        CurvePath from(double along, String asked) {
            if (along > path.length() - LEFT) {
                throw new DraftingException(
                        asked,
                        "there is not so much of '" + name
                                + "' before its other end or a dart; for more, move the dart first",
                        new Reach(Quantity.LENGTH, along, 0, path.length() - LEFT));
            }
            if (along >= 0) {
                return along == 0 ? path : path.between(along, path.length());
            }
            Vector2D start = path.start().add(path.startTangent().multiply(along));
            return CurvePath.polyline(start, path.start()).then(path);
        }

        Neighbour carried(AffineTransformMatrix2D by) {
            return new Neighbour(name, path.transformed(by), fromStart);
        }

        CurvePath ownWay(CurvePath seen) {
            return fromStart ? seen : seen.reversed();
        }

        /** What its notches keep: their distance from the end that stays. */
        Marks marks() {
            return fromStart ? Marks.FROM_END : Marks.FROM_START;
        }
    }

    static AtSeam of(Draft draft, String seam, String piece, String edge, String asked) {
        Seam sewn = draft.seams().stream()
                .filter(each -> each.name().equals(seam))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("There is no seam named '" + seam + "'; there are "
                        + String.join(
                                ", ", draft.seams().stream().map(Seam::name).toList()) + "."));
        Seam.Mate mate = List.of(sewn.first(), sewn.second()).stream()
                .filter(each -> each.piece().equals(piece))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("Seam '" + seam + "' does not join '" + piece + "'."));
        return of(draft.piece(piece), mate.edge(), edge, asked);
    }

    private static AtSeam of(Piece piece, String sewn, String edge, String asked) {
        ClosedEdge closed = ClosedEdge.of(piece, edge);
        Vector2D start = Redraw.first(piece, edge).start();
        Vector2D end = Redraw.last(piece, edge).end();
        boolean starts = touches(piece, sewn, start);
        if (!starts && !touches(piece, sewn, end)) {
            throw new IllegalArgumentException(
                    "'" + edge + "' does not meet '" + sewn + "' in '" + piece.name() + "'.");
        }
        Vector2D corner = starts ? end : start;
        String next = piece.edges().stream()
                .map(Edge::name)
                .filter(name -> !name.equals(edge) && !name.equals(sewn))
                .filter(name -> touches(piece, name, corner))
                .findFirst()
                .orElseThrow(() -> new DraftingException(
                        asked, "no other edge goes on from the far end of '" + edge + "' in '" + piece.name() + "'"));
        AffineTransformMatrix2D closing =
                starts ? closed.closing() : closed.closing().inverse();
        return new AtSeam(
                piece,
                closed,
                edge,
                starts ? closed.line() : closed.line().reversed().transformed(closing),
                Neighbour.of(piece, sewn, starts ? start : end),
                Neighbour.of(piece, next, corner).carried(closing),
                closing);
    }

    /** Whether an edge ends at a corner. */
    private static boolean touches(Piece piece, String edge, Vector2D corner) {
        return touch(Redraw.first(piece, edge).start(), corner)
                || touch(Redraw.last(piece, edge).end(), corner);
    }

    private static boolean touch(Vector2D one, Vector2D other) {
        return one.distance(other) <= CurvePath.JOINT;
    }

    /** 1 when the line lies anticlockwise of the seam, seen from the corner, else -1. */
    int way() {
        return seam.path().startTangent().signedArea(line.startTangent()) > 0 ? 1 : -1;
    }

    /** The direction in which a line leaves a seam at an angle, measured through the cloth. */
    Vector2D leaving(CurvePath sewn, double angle) {
        return AffineTransformMatrix2D.createRotation(way() * angle).apply(sewn.startTangent());
    }

    /** The direction in which a line arrives square at the edge that goes on from it. */
    Vector2D arrivingSquare(CurvePath next) {
        return AffineTransformMatrix2D.createRotation(way() * Math.PI / 2).apply(next.startTangent());
    }

    /** The piece with the line drawn anew over its darts, from a seam and to an edge that begin elsewhere now. */
    Reworked redrawn(CurvePath drawn, CurvePath sewn, CurvePath next) {
        boolean starts = line.start().equals(closed.line().start());
        AffineTransformMatrix2D opening = closing.inverse();
        return closed.redrawn(
                starts ? drawn : drawn.reversed().transformed(opening),
                Map.of(seam.name(), seam.ownWay(sewn), far.name(), far.ownWay(next.transformed(opening))),
                Map.of(seam.name(), seam.marks(), far.name(), far.marks()));
    }
}
