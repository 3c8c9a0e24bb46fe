package org.draftingmaths.curve;

import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * Whether curves go forward along one direction all the way. The derivative of a cubic is a mean of the legs of its control polygon,
 * that of an arc of less than half a turn lies between those at its ends: where these all have a positive part along a direction, so
 * has the derivative everywhere, and the curve never comes back.
 */
final class OneWay {

    private OneWay() {}

    /**
     * Whether a curve and the next, which begins where it ends, go forward along one direction. Then all of the first lies behind their
     * joint and all of the second before it: they meet nowhere else.
     */
    static boolean runsOn(Curve first, Curve second) {
        if (first.start().equals(first.end()) || second.start().equals(second.end())) {
            return false;
        }
        Vector2D along = first.tangent(1).add(second.tangent(0));
        return forward(first, along) && forward(second, along);
    }

    /**
     * Whether a curve and the next meet at their joint only, as far as is cheap to see: they run on, or one is a straight and all of
     * the other's control points but the one at the joint lie on one side of its line.
     */
    static boolean meetAtJointOnly(Curve first, Curve second) {
        if (first instanceof Straight s && second instanceof Cubic c) {
            return runsOn(first, second) || oneSide(s, c.startHandle(), c.endHandle(), c.end());
        }
        if (first instanceof Cubic c && second instanceof Straight s) {
            return runsOn(first, second) || oneSide(s, c.start(), c.startHandle(), c.endHandle());
        }
        return (first instanceof Straight && second instanceof Straight s && oneSide(s, first.start()))
                || runsOn(first, second);
    }

    private static boolean oneSide(Straight s, Vector2D... points) {
        double ax = s.start().getX();
        double ay = s.start().getY();
        double wx = s.end().getX() - ax;
        double wy = s.end().getY() - ay;
        double least = CurvePath.JOINT * Plane.norm(wx, wy);
        boolean left = true;
        boolean right = true;
        for (Vector2D p : points) {
            double across = wx * (p.getY() - ay) - wy * (p.getX() - ax);
            left &= across > least;
            right &= across < -least;
        }
        return left || right;
    }

    static boolean forward(Curve curve, Vector2D along) {
        if (curve instanceof Cubic c) {
            double one = c.start().vectorTo(c.startHandle()).dot(along);
            double two = c.startHandle().vectorTo(c.endHandle()).dot(along);
            double three = c.endHandle().vectorTo(c.end()).dot(along);
            return one >= 0 && two >= 0 && three >= 0 && one + two + three > 0;
        }
        if (curve instanceof Arc arc) {
            return Math.abs(arc.sweep()) < Math.PI
                    && arc.tangent(0).dot(along) > 0
                    && arc.tangent(1).dot(along) > 0;
        }
        return curve.start().vectorTo(curve.end()).dot(along) > 0;
    }
}
