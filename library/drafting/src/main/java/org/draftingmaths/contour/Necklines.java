package org.draftingmaths.contour;

import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Rounded;
import org.draftingmaths.ledger.Change;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.unit.Length;
import org.draftingmaths.unit.Steps;

/** Necklines drawn anew over the joined shoulder, and whether a head goes through them. */
public final class Necklines {

    /** The nearer of a curve's ends must lie so far from the corner of its directions, as a share of the chord, or it turns too sharply. */
    private static final double ROOM = 0.08;

    /** How far, in degrees, a line may lean from square to the shoulder. */
    private static final int MOST_LEANING = 75;

    /** The length of a slit is told in steps of so many mm, upwards. */
    private static final double STEP = 5;

    private Necklines() {}

    /** How the front runs. */
    public enum Front {
        /** In one curve, square to the centre line. */
        ROUND,
        /** Straight to the centre, where it makes a point. */
        V
    }

    /**
     * What is wanted of a neckline.
     *
     * @param along by how much wider it is to be, in mm along the shoulder, alike on front and back; negative for narrower
     * @param front by how much lower it is to be at the centre front, in mm; negative for higher
     * @param back by how much lower at the centre back
     * @param shape how the front runs
     */
    public record Wanted(double along, double front, double back, Front shape) {

        /** Checks that the figures are finite. */
        public Wanted {
            if (!(Double.isFinite(along) && Double.isFinite(front) && Double.isFinite(back))) {
                throw new IllegalArgumentException("A neckline is moved by finite lengths: " + along
                        + " mm along the shoulder, " + front + " mm at the front, " + back + " mm at the back.");
            }
        }

        /**
         * A round neckline.
         *
         * @param along by how much wider along the shoulder
         * @param front by how much lower at the centre front
         * @param back by how much lower at the centre back
         * @return what is wanted
         */
        public static Wanted round(Length along, Length front, Length back) {
            return new Wanted(along.mm(), front.mm(), back.mm(), Front.ROUND);
        }

        /**
         * A neckline that comes to a point at the centre front.
         *
         * @param along by how much wider along the shoulder
         * @param front by how much lower at the centre front
         * @param back by how much lower at the centre back
         * @return what is wanted
         */
        public static Wanted v(Length along, Length front, Length back) {
            return new Wanted(along.mm(), front.mm(), back.mm(), Front.V);
        }
    }

    /**
     * Draws a neckline anew on the joined front and back. With {@code a} the angle at which it leaves the shoulder on the front, measured
     * through the cloth, it leaves it at {@code pi - a} on the back: joined, the line runs on over the shoulder without a corner. Of all such
     * angles the one nearest to a right angle is taken at which both curves bend one way only. Both end square at the centre lines; a V
     * runs straight to the centre front instead.
     *
     * <p>Darts in the neckline are folded shut for it (to the apex) and stay in it: their legs are cut or lengthened to the new line, equally; their
     * points and angles stay.
     *
     * <p>Both pieces move by the same amount along the shoulder, so what is left of it is as equal as it was. Conserved: darts and all other
     * edges, notches by their distance from the shoulder's and the centre's other ends. Changed and told: the lengths of neckline,
     * shoulder and centre.
     *
     * <pre>{@code
     * Crossing neck = Crossing.of("shoulder", "front", "back", "neckline");
     * Recut scooped = Necklines.reshape(draft, neck, Necklines.Wanted.round(Length.cm(2), Length.cm(6), Length.cm(1)));
     * Draft tunic = scooped.draft();
     * }</pre>
     *
     * @param draft the draft, its pieces halves with the centre on a line
     * @param neck the neckline
     * @param wanted where it is to run
     * @return the draft and what was done
     * @throws IllegalArgumentException when the seam or an edge is unknown, or they do not meet
     * @throws DraftingException when there is less of the shoulder or of the centre than asked, when no curve without a kink runs so,
     *     when the new neckline passes over the point of a dart or misses it, when an opening that is no dart breaks the neckline, or when the
     *     outline would cross itself
     */
    public static Recut reshape(Draft draft, Crossing neck, Wanted wanted) {
        String asked = "Draw " + neck.words() + " anew";
        AtSeam front = AtSeam.of(draft, neck.seam(), neck.front(), neck.frontEdge(), asked);
        AtSeam back = AtSeam.of(draft, neck.seam(), neck.back(), neck.backEdge(), asked);
        Half one = Half.of(front, wanted.along(), wanted.front(), asked);
        Half other = Half.of(back, wanted.along(), wanted.back(), asked);
        double angle = wanted.shape() == Front.V ? requireBack(one, other, asked) : angle(one, other, asked);
        Reworked newFront =
                front.redrawn(wanted.shape() == Front.V ? one.straight() : one.round(angle), one.sewn(), one.centre());
        Reworked newBack = back.redrawn(other.round(Math.PI - angle), other.sewn(), other.centre());
        Draft drawn = draft.with(newFront.piece()).with(newBack.piece());
        Ledger ledger = Ledger.of(new LineMoved(
                        neck.words(),
                        neck.seam(),
                        wanted.along(),
                        angle,
                        front.far().name(),
                        wanted.front(),
                        back.far().name(),
                        wanted.back()))
                .then(newFront.ledger().about(neck.front()))
                .then(newBack.ledger().about(neck.back()))
                .then(new Change("whole opening", Quantity.LENGTH, opening(draft, neck), opening(drawn, neck)));
        return new Recut(drawn, newFront, newBack, ledger);
    }

    /**
     * One piece's half of a new neckline.
     *
     * @param at the piece
     * @param sewn the shoulder from its new end on
     * @param centre the centre line from its new end on
     */
    private record Half(AtSeam at, CurvePath sewn, CurvePath centre) {

        static Half of(AtSeam at, double along, double down, String asked) {
            return new Half(at, at.seam().from(along, asked), at.far().from(down, asked));
        }

        double room(double angle) {
            return Rounded.least(sewn.start(), at.leaving(sewn, angle), centre.start(), at.arrivingSquare(centre));
        }

        CurvePath round(double angle) {
            return CurvePath.of(
                    Rounded.quarter(sewn.start(), at.leaving(sewn, angle), centre.start(), at.arrivingSquare(centre)));
        }

        CurvePath straight() {
            return CurvePath.polyline(sewn.start(), centre.start());
        }

        double straightAngle() {
            Vector2D way = sewn.start().directionTo(centre.start());
            Vector2D along = sewn.startTangent();
            return at.way() * Math.atan2(along.signedArea(way), along.dot(way));
        }
    }

    /** The angle nearest to a right angle at which both halves bend one way only. */
    private static double angle(Half front, Half back, String asked) {
        for (int lean = 0; lean <= MOST_LEANING; lean++) {
            for (int way = 1; way >= -1; way -= 2) {
                double angle = Math.PI / 2 + Math.toRadians(way * lean);
                if (front.room(angle) > ROOM && back.room(Math.PI - angle) > ROOM) {
                    return angle;
                }
            }
        }
        throw new DraftingException(
                asked,
                "no line without a kink runs over the shoulder and arrives square at both centre lines; lower the centre back, or"
                        + " make it less wide");
    }

    private static double requireBack(Half front, Half back, String asked) {
        double angle = front.straightAngle();
        if (!(back.room(Math.PI - angle) > ROOM)) {
            throw new DraftingException(
                    asked,
                    "straight to the centre front it leaves the shoulder at "
                            + Quantity.ANGLE.print(angle, Steps.DEFAULT)
                            + ", and no back neckline without a kink goes on from there; lower the centre back, or"
                            + " make it less wide");
        }
        return angle;
    }

    /**
     * The girth of the opening of two half pieces: {@code 2 (front + back)}, each as it is with its openings closed.
     *
     * @param draft the draft, its pieces halves
     * @param neck the neckline
     * @return the girth in mm
     */
    public static double opening(Draft draft, Crossing neck) {
        return 2
                * (Lengths.folded(draft.piece(neck.front()), neck.frontEdge())
                        + Lengths.folded(draft.piece(neck.back()), neck.backEdge()));
    }

    /**
     * Whether a head goes through an opening without a fastening. A slit of length {@code s} widens it by {@code 2 s}, so the least slit
     * that lets the head through is half of what is missing.
     *
     * @param draft the draft, its pieces halves
     * @param neck the neckline
     * @param head the girth of the head; of adults about 56 to 60 cm (common practice): measure the wearer's
     * @return the finding when the opening is smaller than the head
     */
    public static Optional<Finding> headFits(Draft draft, Crossing neck, Length head) {
        double opening = opening(draft, neck);
        if (opening >= head.mm()) {
            return Optional.empty();
        }
        double missing = (head.mm() - opening) / 2;
        String slit = Quantity.LENGTH.print(STEP * Math.ceil(missing / STEP), Steps.DEFAULT);
        return Optional.of(new Finding(
                Finding.Kind.OPENING_TOO_SMALL,
                neck.words() + " of '" + neck.front() + "' and '" + neck.back() + "'",
                Quantity.LENGTH,
                opening,
                head.mm(),
                0,
                "Widen or lower it, or give it a slit or fastening at least " + slit + " long."));
    }
}
