package org.draftingmaths.seam;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Nearest;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.piece.Border;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.PaperSide;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Run;
import org.draftingmaths.piece.Seam;

/**
 * How alike the two edges of a seam are: a side seam hangs straight only where both run alike to the threads. Length alone does not say so.
 *
 * <p>Angles are those between the edge, in the direction of sewing, and the grain upwards, seen with the cloth to the left, so that two mirrored edges
 * have one angle; darts in the edges are folded. The shape is the farthest that one edge strays from the other when they are laid on one another start on start and chord on
 * chord, the one turned over if need be.
 *
 * @param seam the name of the seam
 * @param firstLength the folded length of the first edge in mm
 * @param secondLength that of the second
 * @param firstStart the angle to the grain in radians where the first edge starts to be sewn
 * @param secondStart that of the second
 * @param firstStop the angle where the first edge stops
 * @param secondStop that of the second
 * @param apart how far the shapes stray from one another, in mm
 */
public record Balance(
        String seam,
        double firstLength,
        double secondLength,
        double firstStart,
        double secondStart,
        double firstStop,
        double secondStop,
        double apart) {

    /** By how much the angles of mates may differ: one degree (common practice). */
    public static final double ANGLE = Math.toRadians(1);

    private static final int PLACES = 100;

    /**
     * Compares the two edges of a seam.
     *
     * @param draft the draft
     * @param seam one of its seams
     * @return the comparison
     * @throws DraftingException when a piece has no grain line
     */
    public static Balance of(Draft draft, Seam seam) {
        Side first = Side.of(draft.piece(seam.first().piece()), seam.first());
        Side second = Side.of(draft.piece(seam.second().piece()), seam.second());
        return new Balance(
                seam.name(),
                Lengths.folded(draft.piece(seam.first().piece()), seam.first().edge()),
                Lengths.folded(draft.piece(seam.second().piece()), seam.second().edge()),
                first.angle(first.line().startTangent()),
                second.angle(second.line().startTangent()),
                first.angle(first.line().endTangent()),
                second.angle(second.line().endTangent()),
                Math.max(apart(first, second), apart(second, first)));
    }

    /**
     * One edge of the seam.
     *
     * @param line the edge in the direction of sewing
     * @param grain the direction of the grain, upwards
     * @param left whether the cloth lies to its left
     */
    private record Side(CurvePath line, Vector2D grain, boolean left) {

        static Side of(Piece piece, Seam.Mate mate) {
            CurvePath own = closed(piece, mate.edge());
            boolean forward = Paper.sides(piece).stream()
                    .filter(side -> side.edge().equals(mate.edge()))
                    .allMatch(PaperSide::forward);
            Vector2D grain = piece.grain()
                    .<Vector2D>map(drawn -> drawn.from().directionTo(drawn.to()))
                    .orElseThrow(() -> new DraftingException(
                            "Compare '" + mate.edge() + "' of '" + piece.name() + "' with its mate",
                            "the piece has no grain line"));
            return new Side(mate.forward() ? own : own.reversed(), grain, forward == mate.forward());
        }

        /** The edge with its darts folded, where the longest stretch of it lies. */
        private static CurvePath closed(Piece piece, String edge) {
            Run longest = piece.panels().stream()
                    .flatMap(panel -> panel.ring().stream())
                    .filter(run -> run.border().equals(new Border.OfEdge(edge)))
                    .max(Comparator.comparingDouble(Run::length))
                    .orElseThrow();
            return piece.edge(edge).base().transformed(longest.motion());
        }

        double angle(Vector2D way) {
            double angle = Math.atan2(grain.signedArea(way), grain.dot(way));
            return left ? angle : -angle;
        }

        /** Laid with its start on the origin and its end to the right, its cloth above. */
        CurvePath laid() {
            Vector2D chord = line.start().vectorTo(line.end());
            AffineTransformMatrix2D level = AffineTransformMatrix2D.createTranslation(
                            line.start().negate())
                    .rotate(-Math.atan2(chord.getY(), chord.getX()));
            return line.transformed(left ? level : level.scale(1, -1));
        }
    }

    private static double apart(Side one, Side other) {
        CurvePath host = other.laid();
        CurvePath guest = one.laid();
        double most = 0;
        for (int i = 0; i <= PLACES; i++) {
            most = Math.max(
                    most,
                    Nearest.of(host, guest.pointAt(guest.length() * i / PLACES)).distance());
        }
        return most;
    }

    /**
     * What is out of balance.
     *
     * @param angle by how much the angles to the grain may differ, in radians, for example {@link #ANGLE}
     * @param shape how far the shapes may stray from one another, in mm
     * @return the findings
     */
    public List<Finding> findings(double angle, double shape) {
        List<Finding> findings = new ArrayList<>();
        compare(findings, "where it starts", firstStart, secondStart, angle);
        compare(findings, "where it stops", firstStop, secondStop, angle);
        if (apart > shape) {
            findings.add(new Finding(
                    Finding.Kind.SEAM_UNBALANCED,
                    "seam '" + seam + "', the shape of its edges",
                    Quantity.LENGTH,
                    apart,
                    0,
                    shape,
                    "Lay the two edges on one another and share out what lies between."));
        }
        return List.copyOf(findings);
    }

    private void compare(List<Finding> findings, String where, double first, double second, double tolerance) {
        double off = Math.IEEEremainder(first - second, 2 * Math.PI);
        if (Math.abs(off) > tolerance) {
            findings.add(
                    new Finding(
                            Finding.Kind.SEAM_UNBALANCED,
                            "seam '" + seam + "' " + where,
                            Quantity.ANGLE,
                            second + off,
                            second,
                            tolerance,
                            "Give both edges the same slope to the grain: average the two, and leave the sum of both widths as it is."));
        }
    }
}
