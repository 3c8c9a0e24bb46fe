package org.draftingmaths.fullness;

import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Cubic;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Meets;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.ledger.Reach;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Redrafted;
import org.draftingmaths.piece.Redraw;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.unit.Steps;

/**
 * Flare added at a side seam or at any seam of two panels: from a point of it a straight line to the hem, which is set out there by
 * {@code x}, blended into the curve above; the hem's end is raised along that line until the seam is as long as before, and the hem
 * comes to it at a right angle.
 *
 * @param from how far in mm above the hem, along the seam, the straight line begins: at the hip point
 * @param added how far in mm the hem's end is set out, along the hem
 * @param blend from how far in mm before that point to how far after it the corner is blended; 0 leaves the corner
 */
public record SideFlare(double from, double added, double blend) {

    /** Checks the figures. */
    public SideFlare {
        boolean finite = Double.isFinite(from) && Double.isFinite(added) && Double.isFinite(blend);
        if (!(finite && from > 0 && added > 0 && blend >= 0 && blend < from)) {
            throw new IllegalArgumentException("Flare begins more than 0 mm above the hem, adds more than 0 mm, and is"
                    + " blended over less than that height: from " + from + " mm, added " + added + " mm, blend "
                    + blend
                    + " mm.");
        }
    }

    /**
     * A draft with two pieces flared at the seam between them.
     *
     * @param draft the draft with both pieces as they are now
     * @param first the seam's first piece and what was done to it
     * @param second the second piece and what was done to it
     * @param firstTurn the angle in radians between the old line of the first seam, from the hip point to the hem, and its new one
     * @param secondTurn the same of the second
     */
    public record Both(Draft draft, Reworked first, Reworked second, double firstTurn, double secondTurn)
            implements Redrafted {
        @Override
        public Ledger ledger() {
            return Redrafted.told(first, second);
        }
    }

    /**
     * Flares one piece at one seam.
     *
     * <p>Conserved: the length of the seam, every other edge. Changed and told: the hem, the area.
     *
     * <pre>{@code
     * Reworked flared = new SideFlare(400, 50, 40).at(skirt, "side seam", "hem");
     * }</pre>
     *
     * @param piece the piece
     * @param seam the edge to be flared
     * @param hem the edge that meets it at its lower end
     * @return the piece and what was done
     * @throws IllegalArgumentException when the two do not meet
     * @throws DraftingException when the seam is not so long, or an opening breaks one of the edges
     */
    public Reworked at(Piece piece, String seam, String hem) {
        Corner corner = Corner.of(piece, seam, hem);
        CurvePath down = line(corner);
        CurvePath across = level(corner, down);
        Reworked redrawn = Redraw.edges(
                piece,
                Map.of(
                        seam,
                        corner.seamDown() ? down : down.reversed(),
                        hem,
                        corner.hemOut() ? across : across.reversed()),
                Map.of(seam, corner.seamDown() ? Redraw.Marks.FROM_START : Redraw.Marks.FROM_END));
        Ledger told = Ledger.of(new Flared(piece.name(), seam, hem, from, added, turn(corner, down)));
        return new Reworked(redrawn.piece(), told.then(redrawn.ledger()));
    }

    /**
     * Flares both pieces that share a seam by the same figures, so that the seam stays balanced.
     *
     * @param draft the draft
     * @param seam one of its seams
     * @param firstHem the hem of the seam's first piece
     * @param secondHem the hem of its second piece
     * @return both pieces; where the seams were alike the two turns are equal
     * @throws DraftingException as {@link #at}
     */
    public Both atBoth(Draft draft, Seam seam, String firstHem, String secondHem) {
        Piece one = draft.piece(seam.first().piece());
        Piece other = draft.piece(seam.second().piece());
        Reworked first = at(one, seam.first().edge(), firstHem);
        Reworked second = at(other, seam.second().edge(), secondHem);
        return new Both(
                draft.with(first.piece()).with(second.piece()),
                first,
                second,
                first.ledger().only(Flared.class).get(0).turn(),
                second.ledger().only(Flared.class).get(0).turn());
    }

    /**
     * How far the hem's end must be set out for the hem to become so long: the inverse of {@link #at}.
     *
     * @param piece the piece
     * @param seam the edge to be flared
     * @param hem the edge that meets it at its lower end
     * @param from how far in mm above the hem the straight line begins
     * @param blend over how far in mm the corner is blended
     * @param length the length of hem wanted, in mm, along
     * @return what is to be added in mm, or the lengths that can be had by adding up to as much as the flare is high
     */
    public static Answer added(Piece piece, String seam, String hem, double from, double blend, double length) {
        Corner corner = Corner.of(piece, seam, hem);
        double least = new SideFlare(from, Math.ulp(from), blend).hem(corner);
        double most = new SideFlare(from, from, blend).hem(corner);
        String asked = "Flare for " + Quantity.LENGTH.print(length, Steps.DEFAULT) + " along '" + hem + "'";
        return length > least && length <= most
                ? new Answer.Unique(
                        asked,
                        Quantity.LENGTH,
                        Sweep.rising(x -> new SideFlare(from, x, blend).hem(corner), Math.ulp(from), from, length))
                : new Answer.None(
                        asked,
                        "a flare at the seam sets the hem out by no more than its own height",
                        new Reach(Quantity.LENGTH, length, least, most));
    }

    /** The length the hem will have. */
    private double hem(Corner corner) {
        return level(corner, line(corner)).length(1e-10);
    }

    /**
     * The hem to its new end. Carried on straight it stays as it is up to as far before the meet with its new end direction as the end lies beyond that
     * meet, and curves up from there; where there is no such place, it is one curve.
     */
    private static CurvePath level(Corner corner, CurvePath down) {
        CurvePath hem = corner.hem();
        Vector2D end = down.end();
        Vector2D arriving = square(down.endTangent(), hem.endTangent());
        double reach = hem.length() + hem.end().distance(end);
        CurvePath on = hem.then(
                CurvePath.polyline(hem.end(), hem.end().add(hem.endTangent().multiply(reach))));
        CurvePath back = CurvePath.polyline(end.subtract(arriving.multiply(reach)), end);
        return Meets.of(on, back).points().stream()
                .filter(meet -> meet.onFirst() > meet.point().distance(end) + CurvePath.JOINT)
                .min((one, other) -> Double.compare(other.onFirst(), one.onFirst()))
                .map(meet -> on.between(0, meet.onFirst() - meet.point().distance(end)))
                .map(kept -> kept.then(CurvePath.of(Smooth.oneCurve(kept.end(), kept.endTangent(), end, arriving))))
                .orElseGet(() -> CurvePath.of(Smooth.oneCurve(hem.start(), hem.startTangent(), end, arriving)));
    }

    /** The seam from above to its new end, as long as it was. */
    private CurvePath line(Corner corner) {
        CurvePath seam = corner.seam();
        double above = seam.length() - from;
        if (above < 0 || (above > CurvePath.JOINT && above <= blend)) {
            throw new DraftingException(
                    "Flare '" + corner.name() + "'",
                    "the seam does not reach so far above the hem, and the blend above that",
                    new Reach(Quantity.LENGTH, from + blend, 0, seam.length()));
        }
        boolean whole = above <= CurvePath.JOINT;
        Vector2D hip = seam.pointAt(Math.max(0, above));
        Vector2D out = seam.end().add(corner.hem().endTangent().multiply(added));
        Vector2D way = hip.directionTo(out);
        if (whole || blend == 0) {
            CurvePath straight = CurvePath.polyline(hip, hip.add(way.multiply(whole ? seam.length() : from)));
            return whole ? straight : seam.between(0, above).then(straight);
        }
        CurvePath kept = seam.between(0, above - blend);
        Vector2D begins = hip.add(way.multiply(blend));
        Cubic bend = Smooth.oneCurve(kept.end(), seam.tangentBefore(above - blend), begins, way);
        double left = seam.length() - kept.length() - bend.length(1e-10);
        return kept.then(CurvePath.of(bend)).then(CurvePath.polyline(begins, begins.add(way.multiply(left))));
    }

    private double turn(Corner corner, CurvePath down) {
        Vector2D hip = corner.seam().pointAt(Math.max(0, corner.seam().length() - from));
        Vector2D then = hip.vectorTo(corner.seam().end());
        Vector2D now = down.endTangent();
        return Math.abs(Math.atan2(then.signedArea(now), then.dot(now)));
    }

    /** The direction square to a line, on the side to which another runs. */
    private static Vector2D square(Vector2D way, Vector2D towards) {
        Vector2D square = Vector2D.of(-way.getY(), way.getX());
        return square.dot(towards) > 0 ? square : square.negate();
    }

    /**
     * Where a seam comes down to a hem.
     *
     * @param name the name of the seam
     * @param seam the seam, downwards to the corner
     * @param hem the hem, outwards to the corner
     * @param seamDown whether the seam's own direction is downwards
     * @param hemOut whether the hem's own direction is outwards
     */
    private record Corner(String name, CurvePath seam, CurvePath hem, boolean seamDown, boolean hemOut) {

        static Corner of(Piece piece, String seam, String hem) {
            CurvePath one = Paper.edge(piece, seam);
            CurvePath other = Paper.edge(piece, hem);
            for (boolean down : List.of(true, false)) {
                for (boolean out : List.of(true, false)) {
                    CurvePath line = down ? one : one.reversed();
                    CurvePath level = out ? other : other.reversed();
                    if (line.end().distance(level.end()) <= CurvePath.JOINT) {
                        return new Corner(seam, line, level, down, out);
                    }
                }
            }
            throw new IllegalArgumentException("'" + seam + "' does not meet '" + hem + "' in '" + piece.name() + "'.");
        }
    }
}
