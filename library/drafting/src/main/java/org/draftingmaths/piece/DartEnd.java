package org.draftingmaths.piece;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Arc;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Meet;
import org.draftingmaths.curve.Meets;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.ledger.Reach;

/**
 * The shape of a dart's end on the seam.
 *
 * <p>Let T be the sewn tip, {@code g} the sewn angle there, and {@code r(a)} the distance from T of the seam on the side
 * the dart is pressed to, at the angle {@code a} beyond that side's leg. Folded, the underlay lies on that side, so from the
 * leg to the fold the paper's edge is the seam reflected in the leg, {@code 0 <= a <= g/2}; from the fold to the other leg it
 * is the same arc turned about T by {@code g}. The two meet on the fold at {@code r(g/2)}. It is a straight chord only by
 * accident.
 */
public final class DartEnd {

    private DartEnd() {}

    /**
     * The edge of the paper across a dart, from the end of the before leg to the end of the after leg.
     *
     * <p>Where the panel it is pressed to is narrower than the underlay, the underlay follows the panel's own border, as if
     * trimmed flush with it. Where the legs are unequal no fold can make the layers meet, and the chord is drawn: a check
     * reports unequal legs.
     *
     * @param piece the piece
     * @param dart the name of a dart
     * @return the curve
     * @throws DraftingException when the set-back leaves nothing of the dart to be sewn
     */
    public static CurvePath shape(Piece piece, String dart) {
        Use.Dart use = sewn(piece, dart);
        Vector2D before = Measured.leg(piece, dart, Leg.BEFORE).start();
        Vector2D after = Measured.leg(piece, dart, Leg.AFTER).start();
        Vector2D tip = sewnTip(piece, dart);
        if (Math.abs(tip.distance(before) - tip.distance(after)) > Panels.TOUCH) {
            return CurvePath.polyline(before, after);
        }
        boolean toBefore = use.press() == Leg.BEFORE;
        CurvePath underlay = toBefore
                ? underlay(tip, before, after, away(piece, dart, Leg.BEFORE))
                : underlay(tip, after, before, away(piece, dart, Leg.AFTER));
        return toBefore ? underlay : underlay.reversed();
    }

    /**
     * The sewn tip: on the bisector of the dart, set back from the apex towards the mouth.
     *
     * @param piece the piece
     * @param dart the name of a dart
     * @return the point
     * @throws DraftingException when the set-back leaves nothing of the dart to be sewn
     */
    public static Vector2D sewnTip(Piece piece, String dart) {
        double setBack = sewn(piece, dart).setBack();
        Vector2D apex = Measured.tip(piece, dart);
        Vector2D before = Measured.leg(piece, dart, Leg.BEFORE).start();
        Vector2D after = Measured.leg(piece, dart, Leg.AFTER).start();
        if (setBack == 0) {
            return apex;
        }
        Vector2D middle = before.add(after).multiply(0.5);
        double depth = apex.distance(middle);
        if (setBack >= depth) {
            throw new DraftingException(
                    "Set the point of '" + dart + "' back",
                    "nothing of the dart would be left to sew",
                    new Reach(Quantity.LENGTH, setBack, 0, depth));
        }
        Vector2D bisector =
                apex.directionTo(before).add(apex.directionTo(after)).normalize();
        return apex.add(bisector.multiply(setBack));
    }

    /**
     * Where the fold of the underlay ends on the edge of the paper.
     *
     * @param piece the piece
     * @param dart the name of a dart
     * @return the point; the middle of the chord, where the legs are unequal
     */
    public static Vector2D foldEnd(Piece piece, String dart) {
        CurvePath shape = shape(piece, dart);
        Vector2D tip = sewnTip(piece, dart);
        Vector2D middle = shape.start().lerp(shape.end(), 0.5);
        CurvePath fold = CurvePath.polyline(tip, tip.lerp(middle, 1 + shape.length() / tip.distance(middle)));
        return Meets.of(shape, fold).points().stream()
                .map(Meet::point)
                .findFirst()
                .orElse(middle);
    }

    private static Use.Dart sewn(Piece piece, String dart) {
        if (piece.opening(dart).mouth().use() instanceof Use.Dart use) {
            return use;
        }
        throw new IllegalArgumentException("'" + dart + "' is not sewn as a dart.");
    }

    private static CurvePath underlay(Vector2D tip, Vector2D leg, Vector2D otherLeg, CurvePath seam) {
        double angle = angle(tip, leg, otherLeg);
        CurvePath layer = upTo(seam, tip, leg, -angle / 2);
        CurvePath upper = layer.transformed(Isometry.reflection(tip, tip.vectorTo(leg)));
        CurvePath lower = layer.transformed(AffineTransformMatrix2D.createRotation(tip, angle));
        return upper.then(lower.reversed());
    }

    private static double angle(Vector2D tip, Vector2D from, Vector2D to) {
        Vector2D a = tip.vectorTo(from);
        Vector2D b = tip.vectorTo(to);
        return Math.atan2(a.signedArea(b), a.dot(b));
    }

    /** The seam from the leg to the ray that the fold lies on when folded down. */
    private static CurvePath upTo(CurvePath seam, Vector2D tip, Vector2D leg, double angle) {
        AffineTransformMatrix2D turn = AffineTransformMatrix2D.createRotation(tip, angle);
        double reach = tip.distance(leg) + seam.length();
        CurvePath ray =
                CurvePath.polyline(tip, tip.add(tip.directionTo(turn.apply(leg)).multiply(reach)));
        return Meets.of(seam, ray).points().stream()
                .map(Meet::onFirst)
                .filter(arc -> arc > Panels.TOUCH)
                .min(Double::compare)
                .map(arc -> seam.between(0, arc))
                .orElseGet(() -> carriedOn(seam, tip, leg, angle));
    }

    /** Where another opening ends the cloth before the fold, the underlay goes on at the same distance from the tip. */
    private static CurvePath carriedOn(CurvePath seam, Vector2D tip, Vector2D leg, double angle) {
        double sweep = angle - angle(tip, leg, seam.end());
        Vector2D from = tip.vectorTo(seam.end());
        return seam.then(CurvePath.of(new Arc(
                tip, from.norm(), Math.atan2(from.getY(), from.getX()), Math.IEEEremainder(sweep, 2 * Math.PI))));
    }

    /** The border of the cloth beside a dart, from the end of a leg away from the dart, as far as the next opening. */
    static CurvePath away(Piece piece, String opening, Leg leg) {
        Border border = piece.opening(opening).leg(leg);
        for (Panel panel : piece.panels()) {
            List<Run> ring = panel.ring();
            for (int i = 0; i < ring.size(); i++) {
                Run run = ring.get(i);
                if (run.border().equals(border) && run.from() == 0) {
                    CurvePath found = run.forward() ? backFrom(piece, ring, i) : onFrom(piece, ring, i);
                    return found;
                }
            }
        }
        throw new IllegalStateException("Opening '" + opening + "' lies on no panel.");
    }

    private static CurvePath onFrom(Piece piece, List<Run> ring, int leg) {
        List<Run> runs = new ArrayList<>();
        for (int i = (leg + 1) % ring.size();
                ring.get(i).border() instanceof Border.OfEdge;
                i = (i + 1) % ring.size()) {
            runs.add(ring.get(i));
        }
        return piece.place(runs);
    }

    private static CurvePath backFrom(Piece piece, List<Run> ring, int leg) {
        List<Run> runs = new ArrayList<>();
        int n = ring.size();
        for (int i = (leg + n - 1) % n; ring.get(i).border() instanceof Border.OfEdge; i = (i + n - 1) % n) {
            runs.add(0, ring.get(i));
        }
        return piece.place(runs).reversed();
    }
}
