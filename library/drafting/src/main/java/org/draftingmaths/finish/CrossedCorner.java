package org.draftingmaths.finish;

import java.util.Comparator;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Arc;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Meet;
import org.draftingmaths.curve.Meets;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.ledger.Reach;
import org.draftingmaths.piece.Isometry;
import org.draftingmaths.unit.Steps;

/**
 * Corners at which one edge, the seam, is sewn or folded before the other crosses it: squared, turned back, carried on.
 *
 * <p>V is the corner, Q the place where the seam's own line meets the crossing cut line past V.
 */
final class CrossedCorner {

    /** A curvature in 1/mm below which a cut line is carried on straight: a radius of 100 m. */
    private static final double FLAT = 1e-5;

    /** How far, in wider allowances, an end that follows a strongly curved cut line may flare out. */
    private static final double FLARE = 4;

    private final NetCorner net;
    private final Away seam;
    private final Away crossing;
    private final Allowances.AtCorner choice;
    private final Vector2D past;

    private CrossedCorner(NetCorner net, Away seam, Away crossing, Allowances.AtCorner choice, Vector2D past) {
        this.net = net;
        this.seam = seam;
        this.crossing = crossing;
        this.choice = choice;
        this.past = past;
    }

    /**
     * Cuts a corner.
     *
     * @param past the direction in which the seam's stitch line runs on past the corner
     */
    static CornerShape.Cut of(NetCorner net, Away seam, Away crossing, Allowances.AtCorner choice, Vector2D past) {
        CrossedCorner corner = new CrossedCorner(net, seam, crossing, choice, past);
        corner.requireCorner();
        return switch (choice.cut()) {
            case SQUARED -> corner.squared();
            case TURNED_BACK -> corner.turnedBack();
            default -> corner.carriedOn();
        };
    }

    private void requireCorner() {
        if (net.fold()) {
            throw refused("a fold meets its neighbours plainly: what is cut there is cut through both layers");
        }
        if (!(net.turn() > 0)) {
            throw refused("the outline turns inwards there, where the two cut lines simply meet");
        }
        if (seam.width() == 0) {
            throw refused("'" + choice.seam() + "' has no allowance to be shaped");
        }
        if (!seam.runsOn()) {
            throw refused("the cut line of '" + choice.seam() + "' is lost in a bend there");
        }
        requireNoSpike();
    }

    private CornerShape.Cut squared() {
        Meet q = crossed();
        Vector2D out = seamOut();
        CurvePath square = CurvePath.polyline(q.point(), q.point().add(out.multiply(seam.before())));
        Meet end = nearest(Meets.of(square, seam.line()), q.point(), "the square line does not reach the cut line");
        return cut(end.onSecond(), square.between(0, end.onFirst()), q);
    }

    private CornerShape.Cut turnedBack() {
        Meet q = crossed();
        CurvePath cutLine =
                crossing.line().between(q.onSecond(), crossing.line().length());
        CurvePath turned = cutLine.transformed(Isometry.reflection(net.at(), past));
        Meet end = Meets.of(turned, seam.line()).points().stream()
                .min(Comparator.comparingDouble(Meet::onFirst))
                .orElseThrow(() -> refused(
                        "'" + choice.crossing() + "' is too short to be turned back over '" + choice.seam() + "'"));
        return cut(end.onSecond(), turned.between(0, end.onFirst()), q);
    }

    /** From the seam's cut line to Q, then the crossing cut line. */
    private CornerShape.Cut cut(double onSeam, CurvePath fromQ, Meet q) {
        requireNear(fromQ.end().distance(net.at()), FLARE);
        return new CornerShape.Cut(seam, onSeam, Optional.of(fromQ.reversed()), crossing, q.onSecond(), choice.cut());
    }

    private CornerShape.Cut carriedOn() {
        Away on = curvedOn();
        Meet end = nearest(Meets.of(seam.line(), on.line()), net.at(), "the cut lines do not meet");
        requireNear(end.point().distance(net.at()), FLARE);
        return new CornerShape.Cut(seam, end.onFirst(), Optional.empty(), on, end.onSecond(), CornerCut.CARRIED_ON);
    }

    /** The crossing cut line with a quarter turn of its last circle before it, or the straight. */
    private Away curvedOn() {
        CurvePath core =
                crossing.line().between(crossing.before(), crossing.line().length());
        double bend = core.curves().get(0).curvature(0);
        if (!(Math.abs(bend) > FLAT && crossing.runsOn())) {
            return crossing;
        }
        double radius = 1 / Math.abs(bend);
        Vector2D way = core.startTangent();
        Vector2D toCentre = Vector2D.of(-way.getY(), way.getX()).multiply(1 / bend);
        Vector2D centre = core.start().add(toCentre);
        Vector2D outwards = centre.vectorTo(core.start());
        double sweep = Math.signum(bend) * Math.min(Math.PI / 2, crossing.before() / radius);
        Arc arc = new Arc(centre, radius, Math.atan2(outwards.getY(), outwards.getX()) - sweep, sweep);
        return new Away(crossing.width(), CurvePath.of(arc).then(core), radius * Math.abs(sweep));
    }

    private Meet crossed() {
        CurvePath onwards = CurvePath.polyline(net.at(), net.at().add(past.multiply(seam.before())));
        return nearest(
                Meets.of(onwards, crossing.line()),
                net.at(),
                "the stitch line of '" + choice.seam() + "' runs on without meeting the cut line of '"
                        + choice.crossing() + "'");
    }

    private Meet nearest(Meets meets, Vector2D to, String otherwise) {
        return meets.points().stream()
                .min(Comparator.comparingDouble(meet -> meet.point().distance(to)))
                .orElseThrow(() -> refused(otherwise));
    }

    private Vector2D seamOut() {
        Vector2D out = net.at().vectorTo(seam.end());
        return out.normalize();
    }

    /** With straight lines the tip lies {@code a} out from the seam and so far past V. */
    private void requireNoSpike() {
        double sine = Math.sin(net.angle());
        double q = crossing.width() / sine;
        double turned = choice.cut() == CornerCut.SQUARED ? 0 : seam.width() * Math.cos(net.angle()) / sine;
        double tip = choice.cut() == CornerCut.CARRIED_ON ? q + turned : q - turned;
        requireNear(Math.max(Math.abs(q), Math.hypot(tip, seam.width())), CutLine.SPIKE);
    }

    private void requireNear(double off, double share) {
        double most = share * Math.max(seam.width(), crossing.width());
        if (off > most * (1 + 1e-12)) {
            throw new DraftingException(
                    asked(),
                    "at " + Quantity.ANGLE.print(net.angle(), Steps.DEFAULT) + " its tip would stand off like a spike",
                    new Reach(Quantity.LENGTH, off, 0, most));
        }
    }

    private DraftingException refused(String reason) {
        return new DraftingException(asked(), reason);
    }

    private String asked() {
        return net.asked() + ", " + choice.cut().words();
    }
}
