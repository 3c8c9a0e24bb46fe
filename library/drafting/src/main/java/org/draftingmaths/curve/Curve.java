package org.draftingmaths.curve;

import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Bounds2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A directed plane curve {@code B(t)}, {@code 0 <= t <= 1}: a {@link Straight}, an {@link Arc} or a {@link Cubic}.
 *
 * <p>Coordinates are millimetres, y up; turning is positive anticlockwise. Curves are immutable. A parameter outside
 * 0 to 1, a length past the ends and an accuracy that rounding cannot keep are {@link IllegalArgumentException}s that
 * give the value and the allowed range.
 *
 * <p>Laws: {@code between(0, t)} and {@code between(t, 1)} trace the same points as the curve, their lengths,
 * {@link #area() areas} and {@link #turning() turnings} add up to the whole; {@link #reversed()} keeps the length and negates area, curvature
 * and turning;
 * {@link #transformed} by an isometry keeps lengths.
 */
public sealed interface Curve permits Straight, Arc, Cubic {
    /** {@code B(0)}, exactly as given where the curve was made from it. */
    Vector2D start();

    /** {@code B(1)}, exactly as given where the curve was made from it. */
    Vector2D end();

    /** {@code B(t)}. */
    Vector2D at(double t);

    /** {@code B'(t)}, in mm per unit of parameter. */
    Vector2D derivative(double t);

    /** {@code B''(t)}. */
    Vector2D secondDerivative(double t);

    /**
     * {@code B'(t) / |B'(t)|}: the unit direction of travel.
     *
     * <p>Where the derivative vanishes (a handle that coincides with its end, a cusp) it is the limit from within the
     * curve: of the part that leaves, and at {@code t = 1} of the part that arrives.
     */
    Vector2D tangent(double t);

    /**
     * {@code B' x B'' / |B'|^3}, in 1/mm, positive where the curve turns anticlockwise.
     *
     * <p>Where the derivative vanishes the curvature is infinite, with the sign of the turning, or 0 where the curve
     * is straight there.
     */
    double curvature(double t);

    /**
     * {@code integral of curvature ds}: the angle in radians by which the direction turns from start to end, anticlockwise
     * positive. It adds up under splitting; it is more than a half turn for a curve that loops.
     *
     * <p>A closed form, good to rounding. A cusp, where the direction is reversed at one point to neither side, counts as
     * no turn, and so does a bend or loop of less than 1e-13 of the curve's size.
     */
    double turning();

    /**
     * The parameters inside (0, 1), ascending, at which the curve turns from going along a direction to going against it or
     * back, {@code B'(t) . direction = 0}: its highest and lowest places if the direction is up.
     *
     * <p>A curve that is level throughout has none.
     *
     * @param direction any vector but zero
     */
    default double[] extrema(Vector2D direction) {
        Checks.direction(direction);
        return Roots.extrema(this, direction.getX(), direction.getY());
    }

    /** The length in mm, to the accuracy. */
    double length(double accuracy);

    /** The length in mm, to {@link Accuracy#DEFAULT}. */
    default double length() {
        return length(Accuracy.DEFAULT);
    }

    /** The length in mm between two parameters, {@code from <= to}, to the accuracy. */
    double length(double from, double to, double accuracy);

    /**
     * The parameter {@code t} with {@code |length(0, t) - length| <= accuracy}.
     *
     * <p>A length that lies past an end by no more than the accuracy is that end; any other length past the ends is
     * an {@link IllegalArgumentException} that gives the reachable range.
     */
    double parameterAt(double length, double accuracy);

    /** The part of the curve from one parameter to another, {@code from < to}, as a curve of its own. */
    Curve between(double from, double to);

    /** The same points, travelled the other way. */
    Curve reversed();

    /** The curve moved by an isometry: a rotation, translation, reflection or any product of them. */
    Curve transformed(AffineTransformMatrix2D isometry);

    /**
     * {@code 1/2 integral (x dy - y dx)} along the curve, in mm^2: the area swept by the ray from the origin,
     * anticlockwise positive.
     *
     * <p>Summed round a closed path it is the enclosed area (Green's theorem). It takes no accuracy because it is a
     * closed form, exact but for rounding.
     */
    double area();

    /** The smallest upright rectangle around the curve: ends and extrema, not handles. */
    Bounds2D bounds();
}
