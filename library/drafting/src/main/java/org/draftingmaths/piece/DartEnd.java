package org.draftingmaths.piece;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
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
 *
 * <p>Pressed open, each half lies on its own side, and its edge is that side's seam reflected in that side's leg. The two
 * halves end on the fold at {@code r_before(g/2)} and {@code r_after(g/2)}; where these differ, the edge takes a step along
 * the fold line.
 *
 * <p>The shape is that of the straight legs, whatever the shape of the stitch lines between mouth and point.
 */
public final class DartEnd {

    private DartEnd() {}

    /**
     * The edge of the paper across a dart, from the end of the before leg to the end of the after leg.
     *
     * <p>Where the panel it is pressed to is narrower than the underlay, the underlay follows the panel's own border, as if
     * trimmed flush with it. Where the legs are unequal no fold can make the layers meet, and where the set-back leaves
     * nothing to be sewn there is no fold: then the chord is drawn, and a check reports it.
     *
     * @param piece the piece
     * @param dart the name of a dart
     * @return the curve
     */
    public static CurvePath shape(Piece piece, String dart) {
        return halves(piece, dart)
                .map(Halves::joined)
                .orElseGet(() -> CurvePath.polyline(end(piece, dart, Leg.BEFORE), end(piece, dart, Leg.AFTER)));
    }

    /**
     * The two halves of an underlay's edge.
     *
     * @param before from the before leg to the fold
     * @param after from the after leg to the fold
     */
    private record Halves(CurvePath before, CurvePath after) {

        CurvePath joined() {
            CurvePath back = after.reversed();
            return before.end().distance(after.end()) <= CurvePath.JOINT
                    ? before.then(back)
                    : before.then(CurvePath.polyline(before.end(), after.end())).then(back);
        }
    }

    /**
     * The edge of one half of the underlay: from a leg to the fold, or of a dart that cannot be folded, half of the chord.
     *
     * @param piece the piece
     * @param dart the name of a dart
     * @param leg which half: that beside the before leg or that beside the after leg
     * @return the curve, from the leg inwards to the fold
     */
    public static CurvePath half(Piece piece, String dart, Leg leg) {
        Vector2D own = end(piece, dart, leg);
        return halves(piece, dart)
                .map(halves -> leg == Leg.BEFORE ? halves.before() : halves.after())
                .orElseGet(() -> CurvePath.polyline(own, own.lerp(end(piece, dart, leg.other()), 0.5)));
    }

    /** None where the dart cannot be folded. */
    private static Optional<Halves> halves(Piece piece, String dart) {
        Use.Dart use = sewn(piece, dart);
        Vector2D before = end(piece, dart, Leg.BEFORE);
        Vector2D after = end(piece, dart, Leg.AFTER);
        if (use.setBack() >= depth(piece, dart) || before.distance(after) <= Panels.TOUCH) {
            return Optional.empty();
        }
        Vector2D tip = sewnTip(piece, dart);
        if (Math.abs(tip.distance(before) - tip.distance(after)) > Panels.TOUCH) {
            return Optional.empty();
        }
        double angle = angle(tip, before, after);
        if (use.press().isEmpty()) {
            return Optional.of(new Halves(
                    mirrored(layer(piece, dart, Leg.BEFORE, -angle / 2), tip, before),
                    mirrored(layer(piece, dart, Leg.AFTER, angle / 2), tip, after)));
        }
        boolean toBefore = use.press().get() == Leg.BEFORE;
        double turn = toBefore ? angle : -angle;
        CurvePath layer = layer(piece, dart, use.press().get(), -turn / 2);
        CurvePath upper = mirrored(layer, tip, toBefore ? before : after);
        CurvePath lower = layer.transformed(AffineTransformMatrix2D.createRotation(tip, turn));
        return Optional.of(toBefore ? new Halves(upper, lower) : new Halves(lower, upper));
    }

    private static CurvePath mirrored(CurvePath layer, Vector2D tip, Vector2D leg) {
        return layer.transformed(Isometry.reflection(tip, tip.vectorTo(leg)));
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
        if (setBack == 0) {
            return apex;
        }
        double depth = depth(piece, dart);
        if (setBack >= depth) {
            throw new DraftingException(
                    "Set the point of '" + dart + "' back",
                    "nothing of the dart would be left to sew",
                    new Reach(Quantity.LENGTH, setBack, 0, depth));
        }
        Vector2D bisector = apex.directionTo(end(piece, dart, Leg.BEFORE))
                .add(apex.directionTo(end(piece, dart, Leg.AFTER)))
                .normalize();
        return apex.add(bisector.multiply(setBack));
    }

    /**
     * How deep a dart is: from its apex to the middle of its mouth, {@code L cos(a/2)} for equal legs {@code L}. Its set-back
     * must be less.
     *
     * @param piece the piece
     * @param dart the name of a dart
     * @return the depth in mm
     */
    public static double depth(Piece piece, String dart) {
        Vector2D middle = end(piece, dart, Leg.BEFORE).lerp(end(piece, dart, Leg.AFTER), 0.5);
        return Measured.tip(piece, dart).distance(middle);
    }

    /**
     * Where the fold of the underlay ends on the edge of the paper; of a step along the fold, the nearer end.
     *
     * @param piece the piece
     * @param dart the name of a dart
     * @return the point; the middle of the chord, where the dart cannot be folded
     */
    public static Vector2D foldEnd(Piece piece, String dart) {
        return halves(piece, dart)
                .map(halves -> Stream.of(halves.before().end(), halves.after().end())
                        .min(Comparator.comparingDouble(sewnTip(piece, dart)::distance))
                        .orElseThrow())
                .orElseGet(() -> end(piece, dart, Leg.BEFORE).lerp(end(piece, dart, Leg.AFTER), 0.5));
    }

    static Use.Dart sewn(Piece piece, String dart) {
        if (piece.opening(dart).mouth().use() instanceof Use.Dart use) {
            return use;
        }
        throw new IllegalArgumentException("'" + dart + "' is not sewn as a dart.");
    }

    private static Vector2D end(Piece piece, String dart, Leg leg) {
        return Measured.leg(piece, dart, leg).start();
    }

    /** The angle from the one leg to the other as seen from the tip, anticlockwise. */
    static double angle(Vector2D tip, Vector2D from, Vector2D to) {
        Vector2D a = tip.vectorTo(from);
        Vector2D b = tip.vectorTo(to);
        return Math.atan2(a.signedArea(b), a.dot(b));
    }

    /** The border beside a leg, from the leg to the ray that the fold lies on when folded down. */
    static CurvePath layer(Piece piece, String dart, Leg side, double angle) {
        Vector2D tip = sewnTip(piece, dart);
        Vector2D leg = end(piece, dart, side);
        return away(piece, dart, side)
                .map(seam -> upTo(seam, tip, leg, angle))
                .orElseGet(() -> CurvePath.of(about(tip, leg, angle)));
    }

    private static CurvePath upTo(CurvePath seam, Vector2D tip, Vector2D leg, double angle) {
        CurvePath ray = ray(tip, leg, angle, tip.distance(leg) + seam.length());
        return Meets.of(seam, ray).points().stream()
                .map(Meet::onFirst)
                .filter(arc -> arc > Panels.TOUCH)
                .min(Double::compare)
                .map(arc -> seam.between(0, arc))
                .orElseGet(() -> carriedOn(seam, tip, leg, angle));
    }

    /** From the tip, at an angle beyond a leg. */
    static CurvePath ray(Vector2D tip, Vector2D leg, double angle, double reach) {
        Vector2D way = AffineTransformMatrix2D.createRotation(angle).apply(tip.directionTo(leg));
        return CurvePath.polyline(tip, tip.add(way.multiply(reach)));
    }

    /** Where another opening ends the cloth before the fold, the underlay goes on at the same distance from the tip. */
    private static CurvePath carriedOn(CurvePath seam, Vector2D tip, Vector2D leg, double angle) {
        double sweep = Math.IEEEremainder(angle - angle(tip, leg, seam.end()), 2 * Math.PI);
        return sweep == 0 ? seam : seam.then(CurvePath.of(about(tip, seam.end(), sweep)));
    }

    private static Arc about(Vector2D tip, Vector2D start, double sweep) {
        Vector2D from = tip.vectorTo(start);
        return new Arc(tip, from.norm(), Math.atan2(from.getY(), from.getX()), sweep);
    }

    /**
     * The border of the cloth beside a dart, from the end of a leg away from the dart, as far as the next opening; none where
     * that lies just there.
     */
    static Optional<CurvePath> away(Piece piece, String opening, Leg leg) {
        return awayRuns(piece, opening, leg).stream().map(Side::line).reduce(CurvePath::then);
    }

    /**
     * A run beside a dart.
     *
     * @param border what it lies along
     * @param line where it lies, away from the dart
     */
    record Side(Border border, CurvePath line) {}

    /** The runs of edges beside a dart, from the end of a leg away from the dart, as far as the next opening. */
    static List<Side> awayRuns(Piece piece, String opening, Leg leg) {
        Border border = piece.opening(opening).leg(leg);
        for (Panel panel : piece.panels()) {
            List<Run> ring = panel.ring();
            for (int i = 0; i < ring.size(); i++) {
                if (ring.get(i).border().equals(border) && ring.get(i).from() == 0) {
                    return awayRuns(piece, ring, i);
                }
            }
        }
        throw new IllegalStateException("Opening '" + opening + "' lies on no panel.");
    }

    /** The ring comes to a leg that it passes from the mouth inwards, and leaves one that it passes outwards. */
    private static List<Side> awayRuns(Piece piece, List<Run> ring, int leg) {
        List<Run> turned = new ArrayList<>(ring);
        Collections.rotate(turned, -leg);
        boolean back = turned.remove(0).forward();
        if (back) {
            Collections.reverse(turned);
        }
        List<Side> sides = new ArrayList<>();
        for (Run run : turned) {
            if (run.border() instanceof Border.OfLeg) {
                break;
            }
            CurvePath line = piece.place(run);
            sides.add(new Side(run.border(), back ? line.reversed() : line));
        }
        return sides;
    }
}
