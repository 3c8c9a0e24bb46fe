package org.draftingmaths.seam;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Arc;
import org.draftingmaths.curve.Cubic;
import org.draftingmaths.curve.Curve;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Straight;

/** Small redrawings at the end of a line, the rest left as it is. */
public final class Ends {

    /** A quarter turn and a hair, so that half of a half circle is not parted again. */
    private static final double QUARTER = Math.PI / 2 * (1 + 1e-9);

    private Ends() {}

    /** The line with its end turned to a direction of arrival: the last handle swings about the end, as long as it was. */
    static CurvePath turned(CurvePath path, Vector2D arriving) {
        if (path.curves().get(path.curves().size() - 1) instanceof Arc arc && Math.abs(arc.sweep()) > QUARTER) {
            return turned(withLast(path, arc, 1 - QUARTER / Math.abs(arc.sweep())), arriving);
        }
        Cubic last = cubic(path.curves().get(path.curves().size() - 1));
        double handle = last.endHandle().distance(last.end());
        double length = handle > 0 ? handle : last.start().distance(last.end()) / 3;
        return withLast(
                path,
                new Cubic(
                        last.start(), last.startHandle(), last.end().subtract(arriving.multiply(length)), last.end()));
    }

    /**
     * The line with its end carried to another point, its last handle with it: a straight swings about its other end, a cubic keeps the
     * direction in which it arrives, an arc becomes another arc.
     *
     * @param path the line
     * @param end where it is to end
     * @return the line; all but its last curve is as it was
     */
    public static CurvePath carried(CurvePath path, Vector2D end) {
        Curve last = path.curves().get(path.curves().size() - 1);
        Vector2D shift = last.end().vectorTo(end);
        if (shift.norm() == 0) {
            return path;
        }
        if (last instanceof Straight straight) {
            return withLast(path, new Straight(straight.start(), end));
        }
        if (last instanceof Arc arc) {
            return withLast(path, Arc.through(arc.start(), arc.at(0.5).add(shift.multiply(0.5)), end));
        }
        Cubic cubic = (Cubic) last;
        return withLast(
                path,
                new Cubic(cubic.start(), cubic.startHandle(), cubic.endHandle().add(shift), end));
    }

    /** The line longer by a straight piece at its end, or shorter by as much of it. */
    static CurvePath lengthened(CurvePath path, double by) {
        if (by > 0) {
            Vector2D end = path.end();
            return path.then(CurvePath.polyline(end, end.add(path.endTangent().multiply(by))));
        }
        return by < 0 ? path.between(0, path.length() + by) : path;
    }

    private static CurvePath withLast(CurvePath path, Curve last) {
        List<Curve> curves = new ArrayList<>(path.curves());
        curves.set(curves.size() - 1, last);
        return new CurvePath(curves);
    }

    /** The line with its last arc in two, so that the piece to be bent is short. */
    private static CurvePath withLast(CurvePath path, Arc last, double at) {
        List<Curve> curves = new ArrayList<>(path.curves());
        curves.set(curves.size() - 1, last.between(0, at));
        curves.add(last.between(at, 1));
        return new CurvePath(curves);
    }

    /**
     * A curve as the cubic that can be bent: exact for straights and cubics, to 0.03 % of the radius for arcs of a quarter turn.
     *
     * @param curve the curve
     * @return the cubic from its start to its end, in its directions there
     */
    public static Cubic cubic(Curve curve) {
        if (curve instanceof Cubic cubic) {
            return cubic;
        }
        double third = curve instanceof Arc arc
                ? 4.0 / 3 * Math.tan(Math.abs(arc.sweep()) / 4) * arc.radius()
                : curve.start().distance(curve.end()) / 3;
        return new Cubic(
                curve.start(),
                curve.start().add(curve.tangent(0).multiply(third)),
                curve.end().subtract(curve.tangent(1).multiply(third)),
                curve.end());
    }
}
