package org.draftingmaths.curve;

import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** An upright rectangle around a curve, found from its control points or its circle. */
record Box(double left, double right, double low, double high) {
    static Box around(Curve curve) {
        if (curve instanceof Arc arc) {
            double r = arc.radius();
            double x = arc.centre().getX();
            double y = arc.centre().getY();
            return new Box(x - r, x + r, y - r, y + r);
        }
        double ax = curve.start().getX();
        double ay = curve.start().getY();
        double bx = curve.end().getX();
        double by = curve.end().getY();
        Box ends = new Box(Math.min(ax, bx), Math.max(ax, bx), Math.min(ay, by), Math.max(ay, by));
        return curve instanceof Cubic c ? ends.with(c.startHandle()).with(c.endHandle()) : ends;
    }

    private Box with(Vector2D p) {
        double x = p.getX();
        double y = p.getY();
        return new Box(Math.min(left, x), Math.max(right, x), Math.min(low, y), Math.max(high, y));
    }

    /** A lower bound of the distance from a point to the curve inside, good to rounding. */
    double distance(Vector2D p) {
        double x = Math.max(0, Math.max(left - p.getX(), p.getX() - right));
        double y = Math.max(0, Math.max(low - p.getY(), p.getY() - high));
        return Plane.norm(x, y);
    }

    boolean clearOf(Box other, double tolerance) {
        return left > other.right + tolerance
                || other.left > right + tolerance
                || low > other.high + tolerance
                || other.low > high + tolerance;
    }
}
