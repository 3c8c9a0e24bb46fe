package org.draftingmaths.curve;

import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Bounds2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * The circular arc {@code B(t) = centre + radius (cos a, sin a)}, {@code a = startAngle + t sweep}.
 *
 * @param centre the centre of the circle, mm
 * @param radius more than 0, at most {@link Accuracy#LARGEST}, mm
 * @param startAngle the direction from the centre to the start, radians anticlockwise from the x axis
 * @param sweep the angle travelled, radians: anticlockwise positive, clockwise negative, at most one full turn
 */
public record Arc(Vector2D centre, double radius, double startAngle, double sweep) implements Curve {
    private static final double TURN = 2 * Math.PI;

    /** Checks that all is finite, the radius positive and the sweep neither zero nor more than a turn. */
    public Arc {
        Checks.point("centre", centre);
        Checks.coordinate("radius", radius);
        Checks.finite("start angle", startAngle);
        Checks.finite("sweep", sweep);
        if (!(radius > 0)) {
            throw new IllegalArgumentException("radius is " + radius + "; allowed is more than 0 (mm)");
        }
        if (!(Math.abs(sweep) > 0 && Math.abs(sweep) <= TURN)) {
            throw new IllegalArgumentException(
                    "sweep is " + sweep + "; allowed is -2 pi to 2 pi, not 0 (radians, anticlockwise positive)");
        }
        Checks.extent("arc", radius * Math.abs(sweep));
    }

    /**
     * The arc from start to end that passes through a third point.
     *
     * <p>With {@code a}, {@code b}, {@code c} the three points, the centre is where the perpendicular bisectors of
     * {@code ab} and {@code bc} cross. Points on one line have none and are refused.
     */
    public static Arc through(Vector2D start, Vector2D on, Vector2D end) {
        Checks.point("start", start);
        Checks.point("on", on);
        Checks.point("end", end);
        Vector2D u = on.subtract(start);
        Vector2D v = end.subtract(start);
        double cross = u.signedArea(v);
        double scale = Math.max(u.normSq(), v.normSq());
        if (!(Math.abs(cross) > 1e-14 * scale)) {
            throw new IllegalArgumentException(
                    "points " + start + ", " + on + ", " + end + " lie on one line; an arc needs three that do not");
        }
        double uu = u.normSq();
        double vv = v.normSq();
        Vector2D toCentre = Vector2D.of(
                (v.getY() * uu - u.getY() * vv) / (2 * cross), (u.getX() * vv - v.getX() * uu) / (2 * cross));
        return around(start.add(toCentre), start, end, cross > 0);
    }

    /**
     * The arc from start to end that stands off its chord by the sagitta: {@code r = s/2 + c^2 / (8 s)}.
     *
     * @param sagitta the height over the middle of the chord, mm; positive makes the arc run anticlockwise, so that
     *     it bulges to the right of the chord's direction, negative clockwise
     */
    public static Arc chordAndSagitta(Vector2D start, Vector2D end, double sagitta) {
        Checks.point("start", start);
        Checks.point("end", end);
        Checks.coordinate("sagitta", sagitta);
        double chord = Plane.distance(start, end);
        Checks.extent("chord", chord);
        double height = Math.abs(sagitta);
        if (!(height > 1e-12 * chord)) {
            throw new IllegalArgumentException("sagitta is " + sagitta + "; allowed is not 0, at least 1e-12 of the"
                    + " chord of " + chord + " mm (a straight has none)");
        }
        double radius = height / 2 + chord * chord / (8 * height);
        double sweep = Math.copySign(4 * Math.atan2(2 * height, chord), sagitta);
        Vector2D middle = start.lerp(end, 0.5);
        Vector2D left = start.directionTo(end).orthogonal();
        Vector2D centre = middle.add(left.multiply(Math.signum(sagitta) * (radius - height)));
        Vector2D out = start.subtract(centre);
        return new Arc(centre, radius, Math.atan2(out.getY(), out.getX()), sweep);
    }

    /** The whole circle, anticlockwise, beginning to the right of the centre. */
    public static Arc circle(Vector2D centre, double radius) {
        return new Arc(centre, radius, 0, TURN);
    }

    /**
     * The arc about a centre from a point to the ray through another.
     *
     * @param anticlockwise which of the two ways round
     */
    public static Arc around(Vector2D centre, Vector2D start, Vector2D end, boolean anticlockwise) {
        Checks.point("centre", centre);
        Checks.point("start", start);
        Checks.point("end", end);
        Vector2D from = start.subtract(centre);
        Vector2D to = end.subtract(centre);
        double turn = Math.atan2(from.signedArea(to), from.dot(to));
        if (anticlockwise && turn <= 0) {
            turn += TURN;
        } else if (!anticlockwise && turn >= 0) {
            turn -= TURN;
        }
        return new Arc(centre, from.norm(), Math.atan2(from.getY(), from.getX()), turn);
    }

    @Override
    public Vector2D start() {
        return point(0);
    }

    @Override
    public Vector2D end() {
        return point(1);
    }

    @Override
    public Vector2D at(double t) {
        Checks.parameter(t);
        return point(t);
    }

    private Vector2D point(double t) {
        double angle = startAngle + t * sweep;
        return Vector2D.of(centre.getX() + radius * Math.cos(angle), centre.getY() + radius * Math.sin(angle));
    }

    @Override
    public Vector2D derivative(double t) {
        Checks.parameter(t);
        double angle = startAngle + t * sweep;
        return Vector2D.of(-radius * sweep * Math.sin(angle), radius * sweep * Math.cos(angle));
    }

    @Override
    public Vector2D secondDerivative(double t) {
        Checks.parameter(t);
        double angle = startAngle + t * sweep;
        double scale = -radius * sweep * sweep;
        return Vector2D.of(scale * Math.cos(angle), scale * Math.sin(angle));
    }

    @Override
    public Vector2D tangent(double t) {
        Checks.parameter(t);
        double angle = startAngle + t * sweep;
        double way = Math.signum(sweep);
        return Vector2D.of(-way * Math.sin(angle), way * Math.cos(angle));
    }

    @Override
    public double curvature(double t) {
        Checks.parameter(t);
        return Math.signum(sweep) / radius;
    }

    /** {@inheritDoc} Here {@code radius |sweep|}. */
    /** {@inheritDoc} Here the sweep. */
    @Override
    public double turning() {
        return sweep;
    }

    @Override
    public double length(double accuracy) {
        double length = radius * Math.abs(sweep);
        Checks.accuracy(accuracy, 0x1p-50 * length);
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

    @Override
    public Arc between(double from, double to) {
        Checks.span(from, to);
        return new Arc(centre, radius, startAngle + from * sweep, (to - from) * sweep);
    }

    @Override
    public Arc reversed() {
        return new Arc(centre, radius, startAngle + sweep, -sweep);
    }

    @Override
    public Arc transformed(AffineTransformMatrix2D isometry) {
        Checks.isometry(isometry);
        Vector2D out = isometry.applyVector(Vector2D.of(Math.cos(startAngle), Math.sin(startAngle)));
        return new Arc(
                isometry.apply(centre),
                radius,
                Math.atan2(out.getY(), out.getX()),
                isometry.determinant() > 0 ? sweep : -sweep);
    }

    /** {@inheritDoc} Here {@code (radius^2 sweep + centre x (end - start)) / 2}. */
    @Override
    public double area() {
        return 0.5 * (radius * radius * sweep + centre.signedArea(end().subtract(start())));
    }

    @Override
    public Bounds2D bounds() {
        Bounds2D.Builder builder = Bounds2D.builder().add(start()).add(end());
        double low = Math.min(startAngle, startAngle + sweep);
        double high = Math.max(startAngle, startAngle + sweep);
        for (double quarter = Math.ceil(low / (Math.PI / 2)); quarter * (Math.PI / 2) <= high; quarter++) {
            int which = (int) Math.floorMod((long) quarter, 4L);
            double dx = which == 0 ? radius : which == 2 ? -radius : 0;
            double dy = which == 1 ? radius : which == 3 ? -radius : 0;
            builder.add(centre.add(Vector2D.of(dx, dy)));
        }
        return builder.build();
    }
}
