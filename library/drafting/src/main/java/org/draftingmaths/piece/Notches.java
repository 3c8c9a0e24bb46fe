package org.draftingmaths.piece;

import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;

/** Where notches lie. */
public final class Notches {

    private Notches() {}

    /**
     * A notch where it is drawn.
     *
     * @param point the point on the stitch line
     * @param inwards the unit vector square to the stitch line, into the cloth
     */
    public record Drawn(Vector2D point, Vector2D inwards) {}

    /**
     * Where a notch lies.
     *
     * @param piece the piece
     * @param notch a notch on one of its edges
     * @return its point and the direction into the cloth
     */
    public static Drawn where(Piece piece, Notch notch) {
        Border border = new Border.OfEdge(notch.edge());
        Run run = piece.panels().stream()
                .flatMap(panel -> panel.ring().stream())
                .filter(each -> each.border().equals(border) && (holds(each, notch) || atAnEnd(piece, each, notch)))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("The cloth at " + notch + " was taken out."));
        CurvePath base = piece.base(border);
        double arc = Math.min(notch.arc(), base.length());
        AffineTransformMatrix2D motion = run.motion();
        Vector2D way = motion.applyVector(base.tangentAt(arc));
        Vector2D round = run.forward() ? way : way.negate();
        return new Drawn(motion.apply(base.pointAt(arc)), Vector2D.of(-round.getY(), round.getX()));
    }

    /** Whether a notch lies on a run; one just at the run's end lies on it when it is on that side of the opening there. */
    static boolean holds(Run run, Notch notch) {
        double arc = notch.arc();
        return (run.from() < arc && arc < run.to())
                || (arc == run.to() && notch.beside() == Beside.BEFORE)
                || (arc == run.from() && notch.beside() == Beside.AFTER);
    }

    /** At the ends of an edge there is only one side. */
    private static boolean atAnEnd(Piece piece, Run run, Notch notch) {
        double length = piece.edge(notch.edge()).length();
        return (notch.arc() == 0 && run.from() == 0) || (notch.arc() == length && run.to() == length);
    }
}
