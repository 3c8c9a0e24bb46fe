package org.draftingmaths.curve;

import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Bounds2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * The cubic {@code B(t) = (1-t)^3 P0 + 3 (1-t)^2 t P1 + 3 (1-t) t^2 P2 + t^3 P3}.
 *
 * <p>Handles may coincide with their ends or with each other; only a cubic whose four points are all one is refused.
 *
 * @param start P0, mm
 * @param startHandle P1: the curve leaves the start towards it
 * @param endHandle P2: the curve reaches the end from it
 * @param end P3
 */
public record Cubic(Vector2D start, Vector2D startHandle, Vector2D endHandle, Vector2D end) implements Curve {
    /** Relative size below which a derivative is taken to vanish: a few roundings of the control points' differences. */
    private static final double VANISHES = 1e-13;

    /** Checks that all points are finite and not all one. */
    public Cubic {
        Checks.point("start", start);
        Checks.point("start handle", startHandle);
        Checks.point("end handle", endHandle);
        Checks.point("end", end);
        Checks.extent("cubic", around(start, startHandle) + around(startHandle, endHandle) + around(endHandle, end));
    }

    /** The cubic that is the quadratic with one handle: degree elevation, exact but for rounding. */
    public static Cubic quadratic(Vector2D start, Vector2D handle, Vector2D end) {
        Checks.point("start", start);
        Checks.point("handle", handle);
        Checks.point("end", end);
        return new Cubic(start, start.lerp(handle, 2.0 / 3), end.lerp(handle, 2.0 / 3), end);
    }

    /** The length of the control polygon: no length of the curve exceeds it. */
    double polygon() {
        return Plane.distance(start, startHandle)
                + Plane.distance(startHandle, endHandle)
                + Plane.distance(endHandle, end);
    }

    /** The length of the control polygon along the axes: at least its length and at most half as much again. */
    double around() {
        return around(start, startHandle) + around(startHandle, endHandle) + around(endHandle, end);
    }

    private static double around(Vector2D a, Vector2D b) {
        return Math.abs(b.getX() - a.getX()) + Math.abs(b.getY() - a.getY());
    }

    @Override
    public Vector2D at(double t) {
        Checks.parameter(t);
        return Vector2D.of(x(t), y(t));
    }

    double x(double t) {
        return bernstein(start.getX(), startHandle.getX(), endHandle.getX(), end.getX(), t);
    }

    double y(double t) {
        return bernstein(start.getY(), startHandle.getY(), endHandle.getY(), end.getY(), t);
    }

    private static double bernstein(double a, double b, double c, double d, double t) {
        double s = 1 - t;
        return s * s * (s * a + 3 * t * b) + t * t * (3 * s * c + t * d);
    }

    @Override
    public Vector2D derivative(double t) {
        Checks.parameter(t);
        return Vector2D.of(dx(t), dy(t));
    }

    double dx(double t) {
        return hodograph(start.getX(), startHandle.getX(), endHandle.getX(), end.getX(), t);
    }

    double dy(double t) {
        return hodograph(start.getY(), startHandle.getY(), endHandle.getY(), end.getY(), t);
    }

    private static double hodograph(double a, double b, double c, double d, double t) {
        double s = 1 - t;
        return 3 * (s * s * (b - a) + 2 * s * t * (c - b) + t * t * (d - c));
    }

    @Override
    public Vector2D secondDerivative(double t) {
        Checks.parameter(t);
        return Vector2D.of(
                second(start.getX(), startHandle.getX(), endHandle.getX(), end.getX(), t),
                second(start.getY(), startHandle.getY(), endHandle.getY(), end.getY(), t));
    }

    private static double second(double a, double b, double c, double d, double t) {
        return 6 * ((1 - t) * ((c - b) - (b - a)) + t * ((d - c) - (c - b)));
    }

    private Vector2D thirdDerivative() {
        return end.subtract(start).subtract(3, endHandle.subtract(startHandle)).multiply(6);
    }

    @Override
    public Vector2D tangent(double t) {
        Checks.parameter(t);
        double x = dx(t);
        double y = dy(t);
        double speed = Plane.norm(x, y);
        double least = VANISHES * around();
        if (speed > least) {
            return Vector2D.of(x / speed, y / speed);
        }
        Vector2D second = secondDerivative(t);
        if (Plane.norm(second) > least) {
            return Plane.unit(t == 1 ? second.negate() : second);
        }
        return Plane.unit(thirdDerivative());
    }

    @Override
    public double curvature(double t) {
        Vector2D first = derivative(t);
        Vector2D second = secondDerivative(t);
        double speed = Plane.norm(first);
        double around = around();
        if (speed > VANISHES * around) {
            return first.signedArea(second) / (speed * speed * speed);
        }
        double turning = second.signedArea(thirdDerivative());
        return Math.abs(turning) > VANISHES * around * around ? Math.copySign(Double.POSITIVE_INFINITY, turning) : 0;
    }

    /**
     * {@inheritDoc} Here {@code arg((z - 1)/z)}, the angle under which the curve's interval is seen, summed over the two complex
     * zeros {@code z} of the derivative.
     */
    @Override
    public double turning() {
        return CubicLength.turning(this);
    }

    @Override
    public double length(double accuracy) {
        return CubicLength.of(this, 0, 1, accuracy);
    }

    @Override
    public double length(double from, double to, double accuracy) {
        Checks.parameters(from, to);
        return CubicLength.of(this, from, to, accuracy);
    }

    @Override
    public double parameterAt(double length, double accuracy) {
        return CubicLength.parameterAt(this, length, accuracy);
    }

    @Override
    public Cubic between(double from, double to) {
        Checks.span(from, to);
        Cubic head = to == 1 ? this : first(to);
        return from == 0 ? head : head.reversed().first(1 - from / to).reversed();
    }

    /** De Casteljau: the part from 0 to t. */
    private Cubic first(double t) {
        Vector2D a = Plane.between(start, startHandle, t);
        Vector2D b = Plane.between(startHandle, endHandle, t);
        Vector2D c = Plane.between(endHandle, end, t);
        Vector2D ab = Plane.between(a, b, t);
        Vector2D bc = Plane.between(b, c, t);
        return new Cubic(start, a, ab, Plane.between(ab, bc, t));
    }

    @Override
    public Cubic reversed() {
        return new Cubic(end, endHandle, startHandle, start);
    }

    @Override
    public Cubic transformed(AffineTransformMatrix2D isometry) {
        Checks.isometry(isometry);
        return new Cubic(
                isometry.apply(start), isometry.apply(startHandle), isometry.apply(endHandle), isometry.apply(end));
    }

    /**
     * {@inheritDoc} Here {@code 3/20 (2 P0xP1 + P0xP2 + P0xP3/3 + P1xP2 + P1xP3 + 2 P2xP3)}, taken about the start
     * for the sake of rounding, plus the triangle of the ends with the origin.
     */
    @Override
    public double area() {
        double x = start.getX();
        double y = start.getY();
        double ax = startHandle.getX() - x;
        double ay = startHandle.getY() - y;
        double bx = endHandle.getX() - x;
        double by = endHandle.getY() - y;
        double cx = end.getX() - x;
        double cy = end.getY() - y;
        double own =
                3 * Plane.cross(ax, ay, bx, by) + 3 * Plane.cross(ax, ay, cx, cy) + 6 * Plane.cross(bx, by, cx, cy);
        return own / 20 + 0.5 * Plane.cross(x, y, cx, cy);
    }

    @Override
    public Bounds2D bounds() {
        Bounds2D.Builder builder = Bounds2D.builder().add(start).add(end);
        if (handlesWithinEnds()) {
            return builder.build();
        }
        for (double t : Roots.extrema(this, 1, 0)) {
            builder.add(at(t));
        }
        for (double t : Roots.extrema(this, 0, 1)) {
            builder.add(at(t));
        }
        return builder.build();
    }

    private boolean handlesWithinEnds() {
        return within(start.getX(), startHandle.getX(), end.getX())
                && within(start.getX(), endHandle.getX(), end.getX())
                && within(start.getY(), startHandle.getY(), end.getY())
                && within(start.getY(), endHandle.getY(), end.getY());
    }

    private static boolean within(double a, double x, double b) {
        return Math.min(a, b) <= x && x <= Math.max(a, b);
    }
}
