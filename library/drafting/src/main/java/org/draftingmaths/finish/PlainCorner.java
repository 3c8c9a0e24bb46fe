package org.draftingmaths.finish;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Curve;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Meet;
import org.draftingmaths.curve.Meets;
import org.draftingmaths.curve.Nearest;
import org.draftingmaths.curve.Straight;
import org.draftingmaths.ledger.DraftingException;

/** Corners at which both cut lines are treated alike: plain, blunted, stepped. */
final class PlainCorner {

    /** A turn in radians below which the outline runs on straight. */
    private static final double STRAIGHT_ON = 1e-6;

    /** How near in mm the end of a cut line lies to another that it was cleaned up against: half a joint. */
    private static final double TOUCH = 5e-7;

    private PlainCorner() {}

    /**
     * Mitred; blunted where the tip lies too far off, or where the corner is pointed and nothing was asked; stepped where unlike
     * widths would meet too far off.
     */
    static CornerShape.Cut of(NetCorner net, Away a, Away b, boolean byDefault) {
        if (net.turn() < -STRAIGHT_ON || a.end().distance(b.end()) <= CornerShape.SAME) {
            return stepped(a, b).as(CornerCut.PLAIN);
        }
        double limit = CutLine.SPIKE * Math.max(a.width(), b.width());
        Optional<Vector2D> tip = tip(a, b);
        if (tip.isPresent()) {
            boolean pointed = byDefault && !net.fold() && net.angle() < CutLine.POINTED;
            return pointed || net.at().distance(tip.get()) > limit * (1 + 1e-12)
                    ? squaredOff(net, a, b, tip.get(), pointed ? 1 : CutLine.SPIKE)
                    : mitred(a, b, tip.get());
        }
        return touching(a, b)
                .or(() -> touching(b, a).map(CornerShape.Cut::swapped))
                .orElseGet(() -> crossing(net, a, b, limit));
    }

    /** The start of a line that does not run on may lie on the other already. */
    private static Optional<CornerShape.Cut> touching(Away line, Away ends) {
        Nearest nearest = Nearest.of(line.line(), ends.end());
        return !ends.runsOn() && nearest.distance() < TOUCH
                ? Optional.of(
                        new CornerShape.Cut(line, nearest.at(), Optional.empty(), ends, ends.before(), CornerCut.PLAIN))
                : Optional.empty();
    }

    private static CornerShape.Cut crossing(NetCorner net, Away a, Away b, double limit) {
        return Meets.of(a.line(), b.line()).points().stream()
                .min(Comparator.comparingDouble(meet -> meet.point().distance(net.at())))
                .filter(meet -> net.fold() || meet.point().distance(net.at()) <= limit)
                .map(meet -> meeting(a, b, meet))
                .orElseGet(() -> a.runsOn() && b.runsOn() ? stepped(a, b) : cleaned(net, a, b));
    }

    /** Where a cut line is lost towards the corner, it is cut as the clean parallel runs. */
    private static CornerShape.Cut cleaned(NetCorner net, Away a, Away b) {
        return new CornerShape.Cut(a, a.before(), net.cleaned(), b, b.before(), CornerCut.PLAIN);
    }

    static CornerShape.Cut blunted(NetCorner net, Away a, Away b) {
        Vector2D tip = tip(a, b)
                .filter(each -> !net.fold() && net.turn() > STRAIGHT_ON)
                .orElseThrow(() -> new DraftingException(net.asked(), "there is no tip to be blunted"));
        return squaredOff(net, a, b, tip, 1);
    }

    static CornerShape.Cut stepped(Away a, Away b) {
        boolean apart = a.end().distance(b.end()) > CornerShape.SAME;
        return new CornerShape.Cut(
                a,
                a.before(),
                apart ? Optional.of(CurvePath.polyline(a.end(), b.end())) : Optional.empty(),
                b,
                b.before(),
                CornerCut.STEPPED);
    }

    /** Where both lines meet when they run on straight past the corner, if they do. */
    private static Optional<Vector2D> tip(Away a, Away b) {
        if (!a.runsOn() || !b.runsOn()) {
            return Optional.empty();
        }
        Vector2D gap = a.end().vectorTo(b.end());
        double turn = b.past().signedArea(a.past());
        if (Math.abs(turn) <= STRAIGHT_ON) {
            return Optional.empty();
        }
        // a.end + s a.past = b.end + t b.past
        double s = b.past().signedArea(gap) / turn;
        double t = a.past().signedArea(gap) / turn;
        return s >= 0 && t >= 0 ? Optional.of(a.end().add(a.past().multiply(s))) : Optional.empty();
    }

    private static CornerShape.Cut mitred(Away a, Away b, Vector2D tip) {
        return new CornerShape.Cut(a, a.before(), through(a.end(), tip, b.end()), b, b.before(), CornerCut.PLAIN);
    }

    private static CornerShape.Cut meeting(Away a, Away b, Meet meet) {
        return new CornerShape.Cut(a, meet.onFirst(), Optional.empty(), b, meet.onSecond(), CornerCut.PLAIN);
    }

    /** Square across the line from the corner to the tip, never behind the cut lines' own ends. */
    private static CornerShape.Cut squaredOff(NetCorner net, Away a, Away b, Vector2D tip, double share) {
        Vector2D out = net.at().directionTo(tip);
        double reach = share * Math.max(a.width(), b.width());
        return new CornerShape.Cut(
                a,
                a.before(),
                through(a.end(), along(net, a, out, reach), along(net, b, out, reach), b.end()),
                b,
                b.before(),
                CornerCut.BLUNTED);
    }

    private static Vector2D along(NetCorner net, Away line, Vector2D out, double reach) {
        double rest = reach - net.at().vectorTo(line.end()).dot(out);
        return rest > 0 ? line.end().add(line.past().multiply(rest / line.past().dot(out))) : line.end();
    }

    private static Optional<CurvePath> through(Vector2D... points) {
        List<Curve> straights = new ArrayList<>();
        Vector2D from = points[0];
        for (Vector2D to : points) {
            if (from.distance(to) > CornerShape.SAME) {
                straights.add(new Straight(from, to));
                from = to;
            }
        }
        return straights.isEmpty() ? Optional.empty() : Optional.of(new CurvePath(straights));
    }
}
