package org.draftingmaths.seam;

import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.Change;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.ledger.Reach;
import org.draftingmaths.piece.DartEnd;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.LegEnds;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.PaperSide;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Redrafted;
import org.draftingmaths.piece.Redraw;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.unit.Asked;

/**
 * Truing: a seam brought to the length of its mate, lines blended over a joined seam, lines squared at a centre line. Each is a
 * redraw, small, separate and reported; walk the seams again after it.
 */
public final class Truing {

    /** A corner turned by less than this, in radians, needs no redrawing. */
    private static final double SETTLED = 1e-12;

    private Truing() {}

    /**
     * Brings one edge of a seam to the sewn length of its mate by moving one of its ends along its own line, the least move
     * there is: {@code move = mate's sewn length - own sewn length}. A longer edge goes on straight, a shorter one is cut
     * back; the neighbour at that corner is carried to the new corner with its last handle. Darts in the edge stay as they are.
     *
     * <pre>{@code
     * Reworked trued = Truing.moveEnd(draft, seam, seam.second(), Seam.End.START, 6);
     * Draft mended = draft.with(trued.piece());
     * }</pre>
     *
     * @param draft the draft
     * @param seam one of its seams
     * @param mate the side of it that is to change
     * @param end the end that may move
     * @param limit the longest move in mm that is still truing; more is a drafting fault
     * @return the changed piece and what was done
     * @throws IllegalArgumentException when the mate is not of the seam
     * @throws DraftingException when more than the limit would have to be moved, when a dart or a notch lies where the end would be cut back,
     *     when an opening lies at the corner or is not sewn shut, or when a fold would slant
     */
    public static Reworked moveEnd(Draft draft, Seam seam, Seam.Mate mate, Seam.End end, double limit) {
        double move = missing(draft, seam, mate);
        requireWithin(mate, move, limit);
        Seam.End sewn = mate.forward() ? end : end == Seam.End.START ? Seam.End.STOP : Seam.End.START;
        return ClosedSide.of(draft.piece(mate.piece()), mate, asked(mate))
                .moved(List.of(new SeamTruing.Moved(new SeamTruing.AtEnd(mate, sewn, 1), move)));
    }

    /**
     * Brings one edge of a seam to the sewn length of its mate by its curve alone: its ends and the directions there stay, and
     * its handles are made longer or shorter by the factor nearest to 1 that does it. A dart's mouth stays, with its legs, and so do the directions
     * there; notches keep their share of their stretch.
     *
     * @param draft the draft
     * @param seam one of its seams
     * @param mate the side of it that is to change
     * @param limit the largest change of length in mm that is still truing; more is a drafting fault
     * @return the changed piece and what was done
     * @throws IllegalArgumentException when the mate is not of the seam
     * @throws DraftingException when more than the limit would be needed, when the edge has no curve that could give as much, or
     *     when an opening in it is not sewn shut
     */
    public static Reworked reshape(Draft draft, Seam seam, Seam.Mate mate, double limit) {
        double change = missing(draft, seam, mate);
        requireWithin(mate, change, limit);
        return ClosedSide.of(draft.piece(mate.piece()), mate, asked(mate)).curved(change);
    }

    private static String asked(Seam.Mate mate) {
        return "True '" + mate.edge() + "' of '" + mate.piece() + "' to its mate";
    }

    private static void requireWithin(Seam.Mate mate, double change, double limit) {
        Asked.lengthOrNone("A limit for truing", limit);
        if (Math.abs(change) > limit) {
            throw new DraftingException(
                    asked(mate),
                    "more than truing would be needed; look for the fault in the draft",
                    new Reach(Quantity.LENGTH, Math.abs(change), 0, limit));
        }
    }

    /** By how much the sewn length of a side falls short of its mate's. */
    private static double missing(Draft draft, Seam seam, Seam.Mate mate) {
        double difference = Walk.of(draft, seam).difference();
        if (mate.equals(seam.first())) {
            return -difference;
        }
        if (mate.equals(seam.second())) {
            return difference;
        }
        throw new IllegalArgumentException(
                "'" + mate.edge() + "' of '" + mate.piece() + "' is not a side of seam '" + seam.name() + "'.");
    }

    /**
     * A draft after a blend.
     *
     * @param draft the draft with both pieces as they are now
     * @param first the first piece and what was done to it
     * @param second the second piece and what was done to it
     * @param turn the angle in radians by which the joined line turned at the seam before
     */
    public record Blended(Draft draft, Reworked first, Reworked second, double turn) implements Redrafted {
        @Override
        public Ledger ledger() {
            return Redrafted.told(first, second);
        }
    }

    /**
     * Blends a line over a joined seam: the two edges that meet at one end of it run on without a corner. Laid seam to seam, the
     * line turns there by some angle; either side's end is turned by half of it. The corner points stay, so the seam keeps its
     * length; the two edges change and are reported. Of an edge that darts break only the stretch beside the seam is bent.
     *
     * @param draft the draft
     * @param seam the seam that is joined
     * @param end at which end of the seam the line crosses, by the direction of sewing
     * @param first the edge of the seam's first piece that meets it there; of a chain, of the piece at that end of it
     * @param second the edge of the seam's second piece that meets it there
     * @return both pieces
     * @throws IllegalArgumentException when an edge does not meet the seam there
     * @throws DraftingException when the seam ends partway along an edge, or as {@link Redraw#edges}
     */
    public static Blended blend(Draft draft, Seam seam, Seam.End end, String first, String second) {
        double turn = turn(draft, seam, end, first, second);
        Joint a = Joint.of(draft, seam.first(), end, first);
        Joint b = Joint.of(draft, seam.second(), end, second);
        Reworked one = a.turnedBy(turn / 2);
        Reworked other = b.turnedBy(turn / 2);
        return new Blended(draft.with(one.piece()).with(other.piece()), one, other, turn);
    }

    /**
     * By what angle a line turns where it crosses a joined seam: half a turn less the angles inside both pieces; nothing where it runs on,
     * positive for a hollow, negative for a peak.
     *
     * @param draft the draft
     * @param seam the seam that is joined
     * @param end at which end of the seam the line crosses, by the direction of sewing
     * @param first the edge of the seam's first piece that meets it there
     * @param second the edge of the seam's second piece that meets it there
     * @return the angle in radians
     * @throws IllegalArgumentException when an edge does not meet the seam there
     * @throws DraftingException when the seam ends partway along an edge
     */
    public static double turn(Draft draft, Seam seam, Seam.End end, String first, String second) {
        Joint a = Joint.of(draft, seam.first(), end, first);
        Joint b = Joint.of(draft, seam.second(), end, second);
        return Math.PI - (a.inside() + b.inside());
    }

    /**
     * Blends an edge over a dart as it is sewn: folded about its sewn point, from leg end on leg end, the edge turns there by some angle; its
     * stretch on either side is turned by half of it at the leg end. It is what is done with a dart that was drawn in a straight edge, or
     * set back after its edge was drawn.
     *
     * <p>Conserved: the ends, lengths and angle of the legs, every other edge. Changed and told: the length of the edge, the turn.
     *
     * <pre>{@code
     * Reworked trued = Truing.blendDart(front, "waist dart");
     * }</pre>
     *
     * @param piece the piece
     * @param dart the name of a dart with legs of one length, sewn as a dart
     * @return the piece and what was done
     * @throws DraftingException when the legs differ, or as {@link LegEnds#move}
     */
    public static Reworked blendDart(Piece piece, String dart) {
        CurvePath before = LegEnds.seam(piece, dart, Leg.BEFORE);
        CurvePath after = LegEnds.seam(piece, dart, Leg.AFTER);
        Vector2D tip = DartEnd.sewnTip(piece, dart);
        Vector2D from = tip.vectorTo(after.start());
        Vector2D to = tip.vectorTo(before.end());
        if (Math.abs(from.norm() - to.norm()) > CurvePath.JOINT) {
            throw new DraftingException(
                    "Blend over '" + dart + "'",
                    "its legs differ and do not fold on one another; make them equal first, with Legs.equalise");
        }
        Vector2D in = before.endTangent();
        Vector2D out = rotated(after.startTangent(), Math.atan2(from.signedArea(to), from.dot(to)));
        double turn = Math.atan2(in.signedArea(out), in.dot(out));
        Change told =
                new Change("turn of the edge over '" + dart + "' as it is sewn", Quantity.ANGLE, Math.abs(turn), 0);
        if (Math.abs(turn) < SETTLED) {
            return new Reworked(piece, Ledger.of(told));
        }
        CurvePath arriving = Ends.turned(before, rotated(in, turn / 2));
        Vector2D leaving = rotated(after.startTangent(), -turn / 2);
        CurvePath onwards = Ends.turned(after.reversed(), leaving.negate()).reversed();
        Reworked moved = LegEnds.move(piece, dart, arriving, onwards);
        return new Reworked(moved.piece(), moved.ledger().then(told));
    }

    private static Vector2D rotated(Vector2D way, double angle) {
        return AffineTransformMatrix2D.createRotation(Vector2D.ZERO, angle).apply(way);
    }

    /**
     * Squares a line at a centre line or fold: its end is turned until it meets the centre line at a right angle. The corner
     * stays; the edge's length changes and is reported.
     *
     * @param piece the piece
     * @param edge the edge to be squared
     * @param centre the straight edge it is squared to
     * @return the piece and what was done
     * @throws IllegalArgumentException when the two do not meet
     * @throws DraftingException as {@link Redraw#edges}
     */
    public static Reworked square(Piece piece, String edge, String centre) {
        Joint joint = Joint.at(piece, edge, centre);
        return joint.turnedBy(Math.PI / 2 - joint.inside());
    }

    /**
     * The corner of a piece where a line meets another.
     *
     * @param piece the piece
     * @param edge the line that may be turned
     * @param line where it lies, arriving at the corner
     * @param forward whether that is the edge's own direction
     * @param away the direction in which the other line leaves the corner
     */
    private record Joint(Piece piece, String edge, CurvePath line, boolean forward, Vector2D away) {

        /** The corner at one end of a side of a seam: of a chain, on the piece where it really ends. */
        static Joint of(Draft draft, Seam.Mate mate, Seam.End end, String edge) {
            Seam.Part part = mate.atEnd(end);
            if (!part.reachesCorner(end)) {
                throw new DraftingException(
                        "Blend '" + edge + "' over a seam", "the seam ends partway along " + part.words());
            }
            Piece piece = draft.piece(part.piece());
            CurvePath seam = Paper.edge(piece, part.edge());
            CurvePath sewn = part.forward() ? seam : seam.reversed();
            CurvePath leaving = end == Seam.End.START ? sewn : sewn.reversed();
            return between(piece, edge, part.edge(), leaving);
        }

        static Joint at(Piece piece, String edge, String centre) {
            CurvePath line = Paper.edge(piece, centre);
            CurvePath own = Paper.edge(piece, edge);
            boolean starts = own.start().distance(line.start()) <= CurvePath.JOINT
                    || own.end().distance(line.start()) <= CurvePath.JOINT;
            return between(piece, edge, centre, starts ? line : line.reversed());
        }

        /** Of an edge that darts break, the stretch beside the corner. */
        private static Joint between(Piece piece, String edge, String other, CurvePath leaving) {
            CurvePath last = Redraw.last(piece, edge);
            if (last.end().distance(leaving.start()) <= CurvePath.JOINT) {
                return new Joint(piece, edge, last, true, leaving.startTangent());
            }
            CurvePath first = Redraw.first(piece, edge);
            if (first.start().distance(leaving.start()) <= CurvePath.JOINT) {
                return new Joint(piece, edge, first.reversed(), false, leaving.startTangent());
            }
            throw new IllegalArgumentException(
                    "'" + edge + "' does not meet '" + other + "' at that end of it in '" + piece.name() + "'.");
        }

        /** The angle between the two lines on the side where the cloth is, from 0 to a whole turn. */
        double inside() {
            Vector2D in = line.endTangent();
            double turn = Math.atan2(in.signedArea(away), in.dot(away));
            return Math.PI - way() * turn;
        }

        /** 1 where the outline comes along the line and goes on along the other, else -1. */
        private int way() {
            boolean outlineOwnWay = Paper.sides(piece).stream()
                    .filter(side -> side.edge().equals(edge))
                    .anyMatch(PaperSide::forward);
            return forward == outlineOwnWay ? 1 : -1;
        }

        /** The line turned at the corner until the angle is wider by so much. */
        Reworked turnedBy(double wider) {
            Vector2D arriving =
                    AffineTransformMatrix2D.createRotation(way() * wider).apply(line.endTangent());
            CurvePath turned = Math.abs(wider) < SETTLED ? line : Ends.turned(line, arriving);
            return Redraw.edges(piece, Map.of(edge, forward ? turned : turned.reversed()));
        }
    }
}
