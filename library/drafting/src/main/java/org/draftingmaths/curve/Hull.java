package org.draftingmaths.curve;

import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** What the control points of a curve, or the circle of an arc, tell at a glance. */
final class Hull {
    private final double left;
    private final double right;
    private final double low;
    private final double high;

    /** The legs of the control polygon, or null for an arc. */
    private final Vector2D[] legs;

    private Hull(double left, double right, double low, double high, Vector2D... legs) {
        this.left = left;
        this.right = right;
        this.low = low;
        this.high = high;
        this.legs = legs.length == 0 ? null : legs;
    }

    static Hull around(Curve curve) {
        if (curve instanceof Arc arc) {
            double r = arc.radius();
            double x = arc.centre().getX();
            double y = arc.centre().getY();
            return new Hull(x - r, x + r, y - r, y + r);
        }
        Vector2D a = curve.start();
        Vector2D d = curve.end();
        if (!(curve instanceof Cubic c)) {
            return new Hull(
                    Math.min(a.getX(), d.getX()),
                    Math.max(a.getX(), d.getX()),
                    Math.min(a.getY(), d.getY()),
                    Math.max(a.getY(), d.getY()),
                    d.subtract(a));
        }
        Vector2D b = c.startHandle();
        Vector2D e = c.endHandle();
        return new Hull(
                Math.min(Math.min(a.getX(), b.getX()), Math.min(e.getX(), d.getX())),
                Math.max(Math.max(a.getX(), b.getX()), Math.max(e.getX(), d.getX())),
                Math.min(Math.min(a.getY(), b.getY()), Math.min(e.getY(), d.getY())),
                Math.max(Math.max(a.getY(), b.getY()), Math.max(e.getY(), d.getY())),
                b.subtract(a),
                e.subtract(b),
                d.subtract(e));
    }

    boolean clearOf(Hull other, double tolerance) {
        return left > other.right + tolerance
                || other.left > right + tolerance
                || low > other.high + tolerance
                || other.low > high + tolerance;
    }

    /**
     * Whether two neighbours meet at their joint only: all legs of both have a direction in common along which they
     * advance, so the two together pass no place twice.
     */
    boolean runsOnInto(Hull next) {
        if (legs == null || next.legs == null) {
            return false;
        }
        Vector2D sum = Vector2D.ZERO;
        for (Vector2D leg : legs) {
            sum = sum.add(unit(leg));
        }
        for (Vector2D leg : next.legs) {
            sum = sum.add(unit(leg));
        }
        return advance(legs, sum) && advance(next.legs, sum);
    }

    private static Vector2D unit(Vector2D leg) {
        double norm = leg.norm();
        return norm > 0 ? leg.multiply(1 / norm) : leg;
    }

    private static boolean advance(Vector2D[] legs, Vector2D way) {
        for (Vector2D leg : legs) {
            if (!(leg.dot(way) > 1e-3 * leg.norm()) && leg.norm() > 0) {
                return false;
            }
        }
        return true;
    }
}
