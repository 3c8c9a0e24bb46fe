package org.draftingmaths.fullness;

import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Straight;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;

/**
 * A piece seen from its centre line.
 *
 * @param foot the end of the centre away from the neckline
 * @param up the direction from there to the neckline
 * @param inwards the direction square to it, to where the cloth lies
 * @param length the length of the centre
 * @param footAtEnd whether the centre's own direction runs down to its foot
 * @param neckAtStart whether the neckline starts at the neck point, its end away from the centre
 */
record CowlFrame(Vector2D foot, Vector2D up, Vector2D inwards, double length, boolean footAtEnd, boolean neckAtStart) {

    static CowlFrame of(Piece piece, String centre, String neckline, String asked) {
        CurvePath line = Paper.edge(piece, centre);
        CurvePath neck = Paper.edge(piece, neckline);
        Vector2D way = line.start().directionTo(line.end());
        boolean straight = line.curves().stream()
                .allMatch(curve -> curve instanceof Straight
                        && Math.abs(way.signedArea(line.start().vectorTo(curve.end()))) <= CurvePath.JOINT);
        if (!straight) {
            throw new DraftingException(asked, "'" + centre + "' is not straight, and a fold is");
        }
        for (boolean footAtEnd : new boolean[] {true, false}) {
            for (boolean neckAtStart : new boolean[] {true, false}) {
                Vector2D top = footAtEnd ? line.start() : line.end();
                Vector2D meets = neckAtStart ? neck.end() : neck.start();
                if (top.distance(meets) <= CurvePath.JOINT) {
                    Vector2D foot = footAtEnd ? line.end() : line.start();
                    Vector2D up = foot.directionTo(top);
                    Vector2D neckPoint = neckAtStart ? neck.start() : neck.end();
                    Vector2D right = Vector2D.of(up.getY(), -up.getX());
                    Vector2D inwards = right.dot(foot.vectorTo(neckPoint)) >= 0 ? right : right.negate();
                    return new CowlFrame(foot, up, inwards, foot.distance(top), footAtEnd, neckAtStart);
                }
            }
        }
        throw new DraftingException(asked, "'" + neckline + "' does not meet '" + centre + "'");
    }

    /** How far up the centre line a point lies. */
    double height(Vector2D point) {
        return up.dot(foot.vectorTo(point));
    }

    /** How far from the centre line a point lies, to where the cloth is. */
    double across(Vector2D point) {
        return inwards.dot(foot.vectorTo(point));
    }

    /** The turn that swings what lies above away from the centre, as a sign: clockwise, when the cloth lies to the right. */
    double sense() {
        return Math.signum(up.signedArea(inwards));
    }

    /** The base arc of the centre that lies so far up. */
    double arc(double height) {
        return footAtEnd ? length - height : height;
    }

    Vector2D neckPoint(Piece piece, String neckline) {
        CurvePath neck = Paper.edge(piece, neckline);
        return neckAtStart ? neck.start() : neck.end();
    }

    /** The point of the centre line beside another. */
    Vector2D beside(Vector2D point) {
        return foot.add(up.multiply(height(point)));
    }
}
