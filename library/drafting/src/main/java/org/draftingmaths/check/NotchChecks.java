package org.draftingmaths.check;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Finding.Kind;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;

/**
 * What is wrong with the notches of one piece by themselves: more than the edge can tell apart, or such that they read the same both ways on an
 * edge that looks the same both ways but is not. That a notch lies on a corner, or is cut too deep, is told of the finished piece.
 */
final class NotchChecks {

    /** One notch to so many mm at most; the closest set that is usual is 40 to 50 mm, beside the apex of a panel seam (common practice). */
    private static final double APART = 40;

    /** Notches that lie off their mirror images by less, in mm, read the same both ways; our own figure. */
    private static final double SYMMETRIC = 3;

    /** An edge that lies off its own mirror image by less, in mm, looks alike both ways; our own figure. */
    private static final double ALIKE = 10;

    /** Corners that differ by no more look alike; our own figure. */
    private static final double CORNERS = Math.toRadians(10);

    private static final int PLACES = 32;

    private NotchChecks() {}

    static List<Finding> of(Piece piece, double tolerance, double joint) {
        List<Finding> found = new ArrayList<>();
        List<Side> ring = Side.of(piece);
        for (int i = 0; i < ring.size(); i++) {
            Side side = ring.get(i);
            tooMany(side, found);
            Role before = ring.get((i + ring.size() - 1) % ring.size()).role();
            Role after = ring.get((i + 1) % ring.size()).role();
            if (before == after) {
                symmetric(side, tolerance, joint, found);
            }
        }
        return found;
    }

    private static void tooMany(Side side, List<Finding> found) {
        double most = 1 + Math.floor(side.length() / APART);
        if (side.notches().size() > most) {
            found.add(new Finding(
                    Kind.NOTCHES_TOO_MANY,
                    side.words(),
                    Quantity.COUNT,
                    side.notches().size(),
                    most,
                    0,
                    "Keep those that the sewing needs: where fullness starts and stops, and where edges must meet."));
        }
    }

    /** Only where the edge itself does not show which way it is sewn, and yet must be sewn one way. */
    private static void symmetric(Side side, double tolerance, double joint, List<Finding> found) {
        List<Double> notches = side.notches();
        if (side.role() != Role.SEAM || notches.size() < 2) {
            return;
        }
        double off = 0;
        for (int i = 0; i < notches.size(); i++) {
            off = Math.max(off, Math.abs(notches.get(i) + notches.get(notches.size() - 1 - i) - side.length()));
        }
        double corners = Math.abs(side.before() - side.after());
        double shape = offItsImage(side.path());
        boolean looksAlike = corners <= CORNERS && shape <= ALIKE;
        boolean isAlike = corners <= joint && shape <= tolerance;
        if (off < SYMMETRIC && looksAlike && !isAlike) {
            found.add(new Finding(
                    Kind.NOTCHES_SYMMETRIC,
                    side.words(),
                    Quantity.LENGTH,
                    off,
                    SYMMETRIC,
                    0,
                    "Move one of them with its partner, or mark the back doubly (Marking.doubled)."));
        }
    }

    /** How far a line strays from itself when it is turned over about the middle of its chord. */
    private static double offItsImage(CurvePath path) {
        Vector2D chord = path.start().vectorTo(path.end());
        if (chord.norm() <= CurvePath.JOINT) {
            return 0;
        }
        Vector2D along = chord.normalize();
        Vector2D middle = path.start().lerp(path.end(), 0.5);
        double off = 0;
        for (int i = 0; i <= PLACES / 2; i++) {
            double arc = path.length() * i / PLACES;
            Vector2D one = middle.vectorTo(path.pointAt(arc));
            Vector2D image = one.subtract(along.multiply(2 * one.dot(along)));
            off = Math.max(off, image.distance(middle.vectorTo(path.pointAt(path.length() - arc))));
        }
        return off;
    }
}
