package org.draftingmaths.curve;

import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Bounds2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * The straight {@code B(t) = (1 - t) start + t end}.
 *
 * <p>Its two ends must differ: a single point has no direction.
 *
 * @param start where it begins, mm
 * @param end where it ends, mm
 */
public record Straight(Vector2D start, Vector2D end) implements Curve {
    /** Checks that both ends are finite and differ. */
    public Straight {
        Checks.point("start", start);
        Checks.point("end", end);
        Checks.extent("straight", Plane.distance(start, end));
    }

    @Override
    public Vector2D at(double t) {
        Checks.parameter(t);
        return point(t);
    }

    private Vector2D point(double t) {
        double s = 1 - t;
        return Vector2D.of(s * start.getX() + t * end.getX(), s * start.getY() + t * end.getY());
    }

    @Override
    public Vector2D derivative(double t) {
        Checks.parameter(t);
        return end.subtract(start);
    }

    @Override
    public Vector2D secondDerivative(double t) {
        Checks.parameter(t);
        return Vector2D.ZERO;
    }

    @Override
    public Vector2D tangent(double t) {
        Checks.parameter(t);
        return Plane.direction(start, end);
    }

    @Override
    public double curvature(double t) {
        Checks.parameter(t);
        return 0;
    }

    /** {@inheritDoc} Here 0. */
    @Override
    public double turning() {
        return 0;
    }

    @Override
    public double length(double accuracy) {
        double length = Plane.distance(start, end);
        Checks.accuracy(accuracy, reachable(length));
        return length;
    }

    @Override
    public double length(double from, double to, double accuracy) {
        Checks.parameters(from, to);
        return (to - from) * length(accuracy);
    }

    @Override
    public double parameterAt(double length, double accuracy) {
        double whole = length(accuracy);
        Checks.withinLength("length", length, whole, accuracy);
        return Math.min(1, Math.max(0, length / whole));
    }

    /** Two roundings of the coordinate differences and one of the root: under 4 units in the last place. */
    private static double reachable(double length) {
        return 0x1p-50 * length;
    }

    @Override
    public Straight between(double from, double to) {
        Checks.span(from, to);
        return new Straight(point(from), point(to));
    }

    @Override
    public Straight reversed() {
        return new Straight(end, start);
    }

    @Override
    public Straight transformed(AffineTransformMatrix2D isometry) {
        Checks.isometry(isometry);
        return new Straight(isometry.apply(start), isometry.apply(end));
    }

    @Override
    public double area() {
        return Plane.triangle(start.getX(), start.getY(), start, end);
    }

    @Override
    public Bounds2D bounds() {
        return Bounds2D.from(start, end);
    }
}
