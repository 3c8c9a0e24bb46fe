package org.draftingmaths.fullness;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Piece;

/**
 * How far the neck point comes from the centre when the upper part is swung. Closing darts turns it about their point {@code P}; what is
 * more is shared by the hinges {@code H1 ... Hm}, the lowest first, each {@code a}: {@code N -> R1(R2(... Rm(N)))}. The distance rises
 * with the turn until it is greatest; beyond that the same distances come again with the part hanging over, which nobody wants.
 *
 * @param frame the piece seen from its centre
 * @param neck the neck point
 * @param point the point of the darts; the neck point itself when there is none
 * @param darts the angles of the darts, in the order of closing
 * @param hinges where the hinges lie when the darts are as they are now, the lowest first
 */
record Swing(CowlFrame frame, Vector2D neck, Vector2D point, List<Double> darts, List<Vector2D> hinges) {

    /** Each hinge turns by at most a quarter turn. */
    private static final double MOST = Math.PI / 2;

    private static final int STEPS = 180;
    private static final double ONE_POINT = 1e-6;

    static Swing of(Piece piece, CowlLines lines, String asked) {
        CowlFrame frame = CowlFrame.of(piece, lines.centre(), lines.neckline(), asked);
        List<Double> angles = new ArrayList<>();
        Vector2D point = null;
        for (String dart : lines.darts()) {
            Vector2D tip = Measured.tip(piece, dart);
            if (point != null && point.distance(tip) > ONE_POINT) {
                throw new DraftingException(
                        asked,
                        "'" + dart + "' has another point than '"
                                + lines.darts().get(0) + "'; move it first");
            }
            point = tip;
            angles.add(Measured.angle(piece, dart));
        }
        Vector2D neck = frame.neckPoint(piece, lines.neckline());
        return new Swing(frame, neck, point == null ? neck : point, angles, List.of());
    }

    private Vector2D turned(Vector2D about, double angle, Vector2D what) {
        return AffineTransformMatrix2D.createRotation(about, frame.sense() * angle)
                .apply(what);
    }

    double dartsWhole() {
        return darts.stream().mapToDouble(Double::doubleValue).sum();
    }

    /** How much of the darts' angle still carries the neck point away from the centre. */
    double dartsUseful() {
        Vector2D arm = point.vectorTo(neck);
        double leaning = Math.atan2(frame.inwards().dot(arm), frame.up().dot(arm));
        return Math.min(dartsWhole(), Math.max(0, Math.PI / 2 - leaning));
    }

    /** The distance when the darts are closed by an angle. */
    double acrossByDarts(double angle) {
        return frame.across(turned(point, angle, neck));
    }

    /** The distance when each hinge is opened by an angle. */
    double acrossByHinges(double angle) {
        Vector2D carried = neck;
        for (int i = hinges.size() - 1; i >= 0; i--) {
            carried = turned(hinges.get(i), angle, carried);
        }
        return frame.across(carried);
    }

    /** The angle of each hinge at which the distance is greatest. */
    double hingesUseful() {
        if (hinges.isEmpty()) {
            return 0;
        }
        double step = MOST / STEPS;
        int top = 0;
        while (top < STEPS && acrossByHinges((top + 1) * step) > acrossByHinges(top * step)) {
            top++;
        }
        double low = Math.max(0, (top - 1) * step);
        double high = Math.min(MOST, (top + 1) * step);
        for (int i = 0; i < 100; i++) {
            double one = low + (high - low) / 3;
            double other = high - (high - low) / 3;
            if (acrossByHinges(one) < acrossByHinges(other)) {
                low = one;
            } else {
                high = other;
            }
        }
        return (low + high) / 2;
    }
}
