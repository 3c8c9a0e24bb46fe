package org.draftingmaths.contour;

import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.ledger.Reach;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Redraw;
import org.draftingmaths.piece.Redraw.Marks;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Seam;

/**
 * One piece's part of a line that runs over a seam, seen from the corner where the two meet.
 *
 * @param piece the piece
 * @param edge the name of the edge
 * @param line the edge, from the corner at the seam to its far end
 * @param seam the edge that is sewn, seen from the corner
 * @param far the edge that goes on from the far end, seen from there
 */
record AtSeam(Piece piece, String edge, CurvePath line, Neighbour seam, Neighbour far) {

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
                        "there is not so much of '" + name + "' before its other end or a dart",
                        new Reach(Quantity.LENGTH, along, 0, path.length() - LEFT));
            }
            if (along >= 0) {
                return along == 0 ? path : path.between(along, path.length());
            }
            Vector2D start = path.start().add(path.startTangent().multiply(along));
            return CurvePath.polyline(start, path.start()).then(path);
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
        CurvePath own = Paper.edge(piece, edge);
        if (!Redraw.isWhole(piece, edge)) {
            throw new DraftingException(asked, "an opening breaks '" + edge + "'; close it or move it elsewhere first");
        }
        Vector2D seamStart = Redraw.first(piece, sewn).start();
        Vector2D seamEnd = Redraw.last(piece, sewn).end();
        boolean starts = touch(own.start(), seamStart) || touch(own.start(), seamEnd);
        if (!starts && !touch(own.end(), seamStart) && !touch(own.end(), seamEnd)) {
            throw new IllegalArgumentException(
                    "'" + edge + "' does not meet '" + sewn + "' in '" + piece.name() + "'.");
        }
        CurvePath line = starts ? own : own.reversed();
        String next = piece.edges().stream()
                .map(each -> each.name())
                .filter(name -> !name.equals(edge) && !name.equals(sewn))
                .filter(name -> touch(Redraw.first(piece, name).start(), line.end())
                        || touch(Redraw.last(piece, name).end(), line.end()))
                .findFirst()
                .orElseThrow(() -> new DraftingException(
                        asked, "no other edge goes on from the far end of '" + edge + "' in '" + piece.name() + "'"));
        return new AtSeam(
                piece, edge, line, Neighbour.of(piece, sewn, line.start()), Neighbour.of(piece, next, line.end()));
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

    /** The piece with the line drawn anew, from a seam and to an edge that begin elsewhere now. */
    Reworked redrawn(CurvePath drawn, CurvePath sewn, CurvePath next) {
        boolean starts = touch(Paper.edge(piece, edge).start(), line.start());
        return Redraw.edges(
                piece,
                Map.of(
                        edge,
                        starts ? drawn : drawn.reversed(),
                        seam.name(),
                        seam.ownWay(sewn),
                        far.name(),
                        far.ownWay(next)),
                Map.of(seam.name(), seam.marks(), far.name(), far.marks()));
    }
}
