package org.draftingmaths.piece;

import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;

/** What can be measured at an opening. */
public final class Measured {

    private Measured() {}

    /**
     * The angle of a dart or slash: from the before leg to the after leg as seen from the tip, positive when open.
     * For a dart of leg {@code L} and intake {@code w}: {@code angle = 2 asin(w / 2L)}.
     *
     * @param piece the piece
     * @param opening the name of the opening
     * @return the angle in radians, between -pi and pi
     */
    public static double angle(Piece piece, String opening) {
        Vector2D before = inwards(leg(piece, opening, Leg.BEFORE)).negate();
        Vector2D after = inwards(leg(piece, opening, Leg.AFTER)).negate();
        return wayRound(piece, opening) * Math.atan2(before.signedArea(after), before.dot(after));
    }

    /**
     * The intake of a dart or slash, measured straight from the end of the one leg to the end of the other.
     *
     * @param piece the piece
     * @param opening the name of the opening
     * @return the width of the mouth in mm
     */
    public static double intake(Piece piece, String opening) {
        return leg(piece, opening, Leg.BEFORE)
                .start()
                .distance(leg(piece, opening, Leg.AFTER).start());
    }

    /**
     * The tip of a dart, where its two legs meet.
     *
     * @param piece the piece
     * @param opening the name of the opening
     * @return the point; the before leg's, when the legs do not meet
     */
    public static Vector2D tip(Piece piece, String opening) {
        return leg(piece, opening, Leg.BEFORE).end();
    }

    /**
     * One leg where it lies.
     *
     * @param piece the piece
     * @param opening the name of the opening
     * @param leg which leg
     * @return its curve, from the mouth inwards
     */
    public static CurvePath leg(Piece piece, String opening, Leg leg) {
        Run run = run(piece, opening, leg);
        return piece.base(run.border()).transformed(run.motion());
    }

    private static Run run(Piece piece, String opening, Leg leg) {
        Border border = piece.opening(opening).leg(leg);
        return piece.panels().stream()
                .flatMap(panel -> panel.ring().stream())
                .filter(each -> each.border().equals(border))
                .max((a, b) -> Double.compare(a.to(), b.to()))
                .orElseThrow();
    }

    /**
     * Where a place lies.
     *
     * @param piece the piece
     * @param spot a place on an edge or a leg, or the tip of an opening
     * @return the point
     * @throws org.draftingmaths.ledger.DraftingException when an opening lies just there and the place does not say which side of
     *     it is meant
     */
    public static Vector2D at(Piece piece, Spot spot) {
        if (spot instanceof Spot.Tip tip) {
            return tip(piece, tip.opening());
        }
        return Corners.point(piece, (Spot.On) spot);
    }

    /**
     * The motion of the after side as seen from the before side that lays the one leg on the other: a turn about the inner end of
     * the after leg by the angle between the chords, then the shift from there to the inner end of the before leg.
     *
     * @param piece the piece
     * @param opening the name of the opening
     * @return the relative motion that closes it
     */
    public static Motion closing(Piece piece, String opening) {
        CurvePath before = leg(piece, opening, Leg.BEFORE);
        CurvePath after = leg(piece, opening, Leg.AFTER);
        return new Motion(
                after.end(),
                -wayRound(piece, opening) * angle(piece, opening),
                after.end().vectorTo(before.end()));
    }

    /** The chord of a leg, from the mouth inwards. */
    private static Vector2D inwards(CurvePath leg) {
        return leg.start().vectorTo(leg.end());
    }

    /** 1 when the after leg lies anticlockwise of the before leg as seen from the tip, else -1. */
    static int wayRound(Piece piece, String opening) {
        return run(piece, opening, Leg.BEFORE).forward() ? 1 : -1;
    }

    /**
     * The motion of the after side as seen from the before side that widens an opening at its mouth by an angle about a
     * point.
     *
     * @param piece the piece
     * @param opening the name of the opening
     * @param about the point turned about
     * @param angle by how much to widen it, in radians; negative to narrow it
     * @return the relative motion
     */
    public static Motion widen(Piece piece, String opening, Vector2D about, double angle) {
        return Motion.turn(about, wayRound(piece, opening) * angle);
    }

    /**
     * The motion of the after side as seen from the before side that parts the two ends of an opening by given gaps, both square to
     * the line half way between its legs. With {@code H} the chord of the legs, it turns by {@code a = 2 asin((gap - farGap) / 2H)} and
     * shifts the inner end by {@code farGap}. It is made from the ends of the slash, never from the point where the legs would
     * meet, so that equal gaps are no exception.
     *
     * @param piece the piece
     * @param opening the name of the opening
     * @param gap by how much to part it at its mouth, in mm, straight; negative to close it
     * @param farGap by how much to part it at its other end
     * @return the relative motion
     * @throws IllegalArgumentException when the two differ by more than twice the chord
     */
    public static Motion apart(Piece piece, String opening, double gap, double farGap) {
        CurvePath leg = leg(piece, opening, Leg.BEFORE);
        double chord = leg.start().distance(leg.end());
        double sine = (gap - farGap) / 2 / chord;
        if (!(Math.abs(sine) <= 1)) {
            throw new IllegalArgumentException("Gaps of " + gap + " and " + farGap
                    + " mm differ by more than twice the length of '" + opening + "', which is " + chord + " mm.");
        }
        int way = wayRound(piece, opening);
        double half = way * Math.asin(sine);
        Vector2D inwards = inwards(leg).normalize();
        Vector2D right = Vector2D.of(inwards.getY(), -inwards.getX()).multiply(way * farGap);
        Vector2D shift = Vector2D.of(
                right.getX() * Math.cos(half) - right.getY() * Math.sin(half),
                right.getX() * Math.sin(half) + right.getY() * Math.cos(half));
        return new Motion(leg.end(), 2 * half, shift);
    }
}
