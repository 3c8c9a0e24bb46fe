package org.draftingmaths.contour;

import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Cubic;
import org.draftingmaths.curve.Curve;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Rounded;
import org.draftingmaths.ledger.Change;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.ledger.Reach;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.unit.Length;

/** Armholes drawn anew over the joined shoulder. */
public final class Armholes {

    private static final double SQUARE = Math.PI / 2;

    /** How near a width that was asked for must be drawn, in mm. */
    private static final double WIDTH = 1e-6;

    private Armholes() {}

    /**
     * What is wanted of an armhole, in mm. A width for which nothing is asked is kept as nearly as a curve without a kink can.
     *
     * @param shoulder by how much the shoulder is to be shorter, alike on front and back; negative for longer
     * @param underarm by how much the underarm is to be lower, along the side seam, alike on both; negative for higher
     * @param acrossFront by how much the half front is to be narrower where the armhole is hollowest; negative for wider
     * @param acrossBack by how much the half back
     */
    public record Wanted(double shoulder, double underarm, Optional<Double> acrossFront, Optional<Double> acrossBack) {

        /** An armhole as it is. */
        public static final Wanted SAME = new Wanted(0, 0, Optional.empty(), Optional.empty());

        /** Checks that the figures are finite. */
        public Wanted {
            if (!(Double.isFinite(shoulder)
                    && Double.isFinite(underarm)
                    && acrossFront.stream().allMatch(Double::isFinite)
                    && acrossBack.stream().allMatch(Double::isFinite))) {
                throw new IllegalArgumentException("An armhole is moved by finite lengths: shoulder " + shoulder
                        + " mm, underarm " + underarm + " mm, across front " + acrossFront + ", across back "
                        + acrossBack
                        + ".");
            }
        }

        /**
         * The shoulder shorter.
         *
         * @param by by how much; negative for longer
         * @return this and that
         */
        public Wanted shoulderIn(Length by) {
            return new Wanted(by.mm(), underarm, acrossFront, acrossBack);
        }

        /**
         * The underarm lower.
         *
         * @param by by how much; negative for higher
         * @return this and that
         */
        public Wanted lower(Length by) {
            return new Wanted(shoulder, by.mm(), acrossFront, acrossBack);
        }

        /**
         * Front and back narrower where the armhole is hollowest.
         *
         * @param front by how much the half front; negative for wider
         * @param back by how much the half back
         * @return this and that
         */
        public Wanted cutAway(Length front, Length back) {
            return new Wanted(shoulder, underarm, Optional.of(front.mm()), Optional.of(back.mm()));
        }
    }

    /**
     * Draws an armhole anew on the joined front and back: square to the shoulder and square to the side seam on both pieces, so that the two
     * angles at the shoulder and the two at the underarm make a straight line. Both pieces move by the same amounts along shoulder and
     * side seam, so that these match as they did. Each half is one curve, bending one way only, as full as the width asked needs.
     *
     * <p>Darts in the armhole are folded shut for it (to the apex), the part at the shoulder lying as it does, and stay in it: their legs are cut or
     * lengthened to the new line, equally; their points and angles stay. Half widths are those of the folded piece.
     *
     * <p>Conserved: darts and all other edges, notches by their distance from the other ends of shoulder and side seam. Changed and told: the lengths of
     * armhole, shoulder and side seam, the half widths asked and drawn.
     *
     * <pre>{@code
     * Crossing arm = Crossing.of("shoulder", "front", "back", "armhole");
     * Recut cut = Armholes.reshape(draft, arm, Armholes.Wanted.SAME.shoulderIn(Length.cm(2)).lower(Length.cm(1)));
     * }</pre>
     *
     * @param draft the draft; in each piece the centre is on x = 0
     * @param arm the armhole
     * @param wanted where it is to run
     * @return the draft and what was done
     * @throws IllegalArgumentException when the seam or an edge is unknown, or they do not meet
     * @throws DraftingException when there is less of the shoulder or the side seam than asked, when no curve without a kink runs so or is
     *     as hollow, when the new armhole passes over the point of a dart or misses it, when an opening that is no dart breaks the armhole, or
     *     when the outline would cross itself
     */
    public static Recut reshape(Draft draft, Crossing arm, Wanted wanted) {
        String asked = "Draw " + arm.words() + " anew";
        AtSeam front = AtSeam.of(draft, arm.seam(), arm.front(), arm.frontEdge(), asked);
        AtSeam back = AtSeam.of(draft, arm.seam(), arm.back(), arm.backEdge(), asked);
        Half one = Half.of(front, wanted, wanted.acrossFront(), asked);
        Half other = Half.of(back, wanted, wanted.acrossBack(), asked);
        Reworked newFront = one.redrawn();
        Reworked newBack = other.redrawn();
        Ledger ledger = Ledger.of(new LineMoved(
                        arm.words(),
                        arm.seam(),
                        wanted.shoulder(),
                        SQUARE,
                        front.far().name(),
                        wanted.underarm(),
                        back.far().name(),
                        wanted.underarm()))
                .then(newFront.ledger().about(arm.front()))
                .then(one.width())
                .then(newBack.ledger().about(arm.back()))
                .then(other.width());
        return new Recut(draft.with(newFront.piece()).with(newBack.piece()), newFront, newBack, ledger);
    }

    /**
     * One piece's half of a new armhole.
     *
     * @param at the piece
     * @param sewn the shoulder from its new end on
     * @param side the side seam from its new end on
     * @param centre the direction to the centre line
     * @param reach how near to the centre the curve is to come, along that direction
     */
    private record Half(AtSeam at, CurvePath sewn, CurvePath side, Vector2D centre, double reach) {

        static Half of(AtSeam at, Wanted wanted, Optional<Double> narrower, String asked) {
            Vector2D centre = Vector2D.of(-Math.signum(at.line().end().getX()), 0);
            double now = at.line().curves().stream()
                    .mapToDouble(curve -> Rounded.reach(curve, centre))
                    .max()
                    .orElseThrow();
            Half half = new Half(
                    at,
                    at.seam().from(wanted.shoulder(), asked),
                    at.far().from(wanted.underarm(), asked),
                    centre,
                    now + narrower.orElse(0.0));
            if (!Rounded.possible(half.sewn.start(), half.leaving(), half.side.start(), half.arriving())) {
                throw new DraftingException(
                        asked,
                        "no curve without a kink runs square from the shoulder and square to the side seam of '"
                                + at.piece().name() + "'; take less off the shoulder, or lower the underarm");
            }
            if (narrower.isPresent()) {
                half.requireReach(now, asked);
            }
            return half;
        }

        /** A width that was asked for is drawn or refused. */
        private void requireReach(double now, String asked) {
            if (Math.abs(reached(reach) - reach) > WIDTH) {
                throw new DraftingException(
                        asked,
                        "no curve without a kink makes '" + at.piece().name()
                                + "' narrower by as much between this shoulder and this underarm",
                        new Reach(
                                Quantity.LENGTH,
                                reach - now,
                                reached(Double.NEGATIVE_INFINITY) - now,
                                reached(Double.POSITIVE_INFINITY) - now));
            }
        }

        private double reached(double wanted) {
            return Rounded.reach(
                    Rounded.reaching(sewn.start(), leaving(), side.start(), arriving(), centre, wanted), centre);
        }

        private Vector2D leaving() {
            return at.leaving(sewn, SQUARE);
        }

        private Vector2D arriving() {
            return at.arrivingSquare(side);
        }

        private Cubic curve() {
            return Rounded.reaching(sewn.start(), leaving(), side.start(), arriving(), centre, reach);
        }

        Reworked redrawn() {
            return at.redrawn(CurvePath.of((Curve) curve()), sewn, side);
        }

        Change width() {
            return new Change(
                    "half width of '" + at.piece().name() + "' at the armhole, asked and drawn",
                    Quantity.LENGTH,
                    -reach,
                    -Rounded.reach(curve(), centre));
        }
    }
}
