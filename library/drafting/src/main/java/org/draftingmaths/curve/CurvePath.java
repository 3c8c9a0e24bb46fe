package org.draftingmaths.curve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Bounds2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * Curves end to end: each begins where the one before it ends, within {@link #JOINT}.
 *
 * <p>Positions on a path are arc lengths from its start in mm. Lengths are to {@link Accuracy#DEFAULT} for each curve
 * unless an accuracy is given. The length of a path is the sum of its curves' lengths: the gaps that the joints may
 * have are not counted.
 *
 * <p>Laws: {@code length} and {@link #area()} add up under {@link #then}; {@link #reversed()} keeps the length and
 * negates the area; {@link #between} parts have lengths that add up to the whole.
 *
 * <pre>{@code
 * CurvePath square = CurvePath.polyline(a, b, c, d, a);
 * square.pointAt(25);            // 25 mm along from a
 * square.between(10, 30);        // the part between two lengths
 * }</pre>
 *
 * @param curves at least one, in order
 */
public record CurvePath(List<Curve> curves) {
    /** The widest gap between one curve's end and the next one's start: 1e-6 mm. */
    public static final double JOINT = 1e-6;

    /** Rounding that a position may have past the ends, and the length below which a part is not kept: 1e-9 mm. */
    private static final double SLACK = 1e-9;

    /** Checks that there is a curve and that each begins where the one before ends. */
    public CurvePath {
        curves = CurveList.copyOf(curves);
        if (curves.isEmpty()) {
            throw new IllegalArgumentException("path has no curves; allowed is one or more");
        }
        for (int i = 1; i < curves.size(); i++) {
            Vector2D end = curves.get(i - 1).end();
            Vector2D start = curves.get(i).start();
            if (!(Plane.distance(end, start) <= JOINT)) {
                throw new IllegalArgumentException(String.format(
                        Locale.ROOT,
                        "joint %d is open: curve %d ends at %s, curve %d starts at %s, %s mm apart; allowed is 1e-6 mm",
                        i,
                        i - 1,
                        end,
                        i,
                        start,
                        Plane.distance(end, start)));
            }
        }
    }

    /** The path of these curves in order. */
    public static CurvePath of(Curve... curves) {
        return new CurvePath(Arrays.asList(curves));
    }

    /** The paths end to end: each must start where the one before it ends. Equal to chaining them by {@link #then}. */
    public static CurvePath joined(List<CurvePath> paths) {
        return new CurvePath(CurveList.joined(paths));
    }

    /** The straights from point to point: at least two points, consecutive ones distinct. */
    public static CurvePath polyline(Vector2D... points) {
        if (points.length < 2) {
            throw new IllegalArgumentException("polyline has " + points.length + " points; allowed is two or more");
        }
        List<Curve> straights = new ArrayList<>(points.length - 1);
        for (int i = 1; i < points.length; i++) {
            straights.add(new Straight(points[i - 1], points[i]));
        }
        return new CurvePath(straights);
    }

    /** Where the first curve starts. */
    public Vector2D start() {
        return curves.get(0).start();
    }

    /** Where the last curve ends. */
    public Vector2D end() {
        return curves.get(curves.size() - 1).end();
    }

    /** The direction in which the path leaves its start. */
    public Vector2D startTangent() {
        return curves.get(0).tangent(0);
    }

    /** The direction in which the path arrives at its end. */
    public Vector2D endTangent() {
        return curves.get(curves.size() - 1).tangent(1);
    }

    /** This path and then the next, which must start where this one ends. */
    public CurvePath then(CurvePath next) {
        return joined(List.of(this, next));
    }

    /** The same points, travelled the other way. */
    public CurvePath reversed() {
        Curve[] reversed = new Curve[curves.size()];
        for (int i = 0; i < reversed.length; i++) {
            reversed[reversed.length - 1 - i] = curves.get(i).reversed();
        }
        return of(reversed);
    }

    /** The path moved by a rotation, translation, reflection or any product of them. */
    public CurvePath transformed(AffineTransformMatrix2D isometry) {
        List<Curve> moved = new ArrayList<>(curves.size());
        for (Curve curve : curves) {
            moved.add(curve.transformed(isometry));
        }
        return new CurvePath(moved);
    }

    /** The length in mm, each curve's to {@link Accuracy#DEFAULT}. */
    public double length() {
        return lengths()[curves.size()];
    }

    /** The length in mm, the whole of it to the accuracy. */
    public double length(double accuracy) {
        double sum = 0;
        for (Curve curve : curves) {
            sum += curve.length(accuracy / curves.size());
        }
        return sum;
    }

    /** The length up to the start of each curve, and last the whole length. Not to be modified. */
    double[] lengths() {
        return ((CurveList) curves).lengths();
    }

    /** The point at a length from the start; past the ends is an {@link IllegalArgumentException} with the range. */
    public Vector2D pointAt(double length) {
        Place place = placeAt(length);
        return curves.get(place.index()).at(place.t());
    }

    /** The unit direction at a length; at a joint, of the curve that leaves it. */
    public Vector2D tangentAt(double length) {
        Place place = placeAt(length);
        return curves.get(place.index()).tangent(place.t());
    }

    /** The unit direction at a length; at a joint, of the curve that arrives there. */
    public Vector2D tangentBefore(double length) {
        Place place = placeBefore(length);
        return curves.get(place.index()).tangent(place.t());
    }

    /**
     * The place at a length from the start: at a joint, the start of the curve that leaves it.
     *
     * <p>A length within 1e-9 mm of a joint or an end is taken to be there.
     */
    public Place placeAt(double length) {
        double[] lengths = lengths();
        double whole = lengths[curves.size()];
        Checks.withinLength("length", length, whole, SLACK);
        int index = 0;
        while (index < curves.size() - 1 && length >= lengths[index + 1] - SLACK) {
            index++;
        }
        return place(index, length - lengths[index]);
    }

    private Place placeBefore(double length) {
        double[] lengths = lengths();
        double whole = lengths[curves.size()];
        Checks.withinLength("length", length, whole, SLACK);
        int index = curves.size() - 1;
        while (index > 0 && length <= lengths[index] + SLACK) {
            index--;
        }
        return place(index, length - lengths[index]);
    }

    private Place place(int index, double along) {
        Curve curve = curves.get(index);
        double length = lengths()[index + 1] - lengths()[index];
        if (along <= SLACK) {
            return new Place(index, 0);
        }
        return new Place(index, along >= length - SLACK ? 1 : curve.parameterAt(along, Accuracy.DEFAULT));
    }

    /** The length from the start to a place. */
    public double lengthAt(Place place) {
        if (place.index() >= curves.size()) {
            throw new IllegalArgumentException(
                    "place is on curve " + place.index() + "; the path has curves 0 to " + (curves.size() - 1));
        }
        Curve curve = curves.get(place.index());
        double before = lengths()[place.index()];
        if (place.t() == 0) {
            return before;
        }
        return place.t() == 1 ? lengths()[place.index() + 1] : before + curve.length(0, place.t(), Accuracy.DEFAULT);
    }

    /**
     * The part between two lengths from the start, {@code from < to}.
     *
     * <p>Lengths may lie past the ends by 1e-9 mm of rounding, no more. Parts of curves shorter than 1e-9 mm are not
     * kept, so {@code to - from} must exceed that.
     */
    public CurvePath between(double fromLength, double toLength) {
        double[] lengths = lengths();
        double whole = lengths[curves.size()];
        Checks.withinLength("from", fromLength, whole, SLACK);
        Checks.withinLength("to", toLength, whole, SLACK);
        if (!(toLength - fromLength > SLACK)) {
            throw new IllegalArgumentException(
                    "from is " + fromLength + ", to is " + toLength + "; to must exceed from by more than 1e-9 mm");
        }
        List<Curve> parts = new ArrayList<>();
        for (int i = 0; i < curves.size(); i++) {
            addPart(parts, i, fromLength - lengths[i], toLength - lengths[i], lengths[i + 1] - lengths[i]);
        }
        if (parts.isEmpty()) {
            // Only reached when a joint divides a part of at most 2e-9 mm into two that are both too short to keep.
            throw new IllegalArgumentException("from is " + fromLength + ", to is " + toLength
                    + "; a joint lies between them, so to must exceed from by more than 2e-9 mm");
        }
        return new CurvePath(parts);
    }

    /**
     * The parts of the path between the places at which another meets it, in order; touches part it too, and a stretch in common
     * is a part of its own.
     *
     * <p>Law: the parts, {@link #joined}, are the path. Parts shorter than 1e-6 mm are not made: what meets the path so near to an
     * end or to another meet does not part it there.
     */
    public List<CurvePath> partedBy(CurvePath other) {
        Meets meets = Meets.of(this, other);
        double[] at = DoubleStream.concat(
                        meets.points().stream().mapToDouble(Meet::onFirst),
                        meets.overlaps().stream().flatMapToDouble(o -> DoubleStream.of(o.fromFirst(), o.toFirst())))
                .sorted()
                .toArray();
        List<CurvePath> parts = new ArrayList<>();
        double from = 0;
        double whole = length();
        for (double to : at) {
            if (to - from > JOINT && whole - to > JOINT) {
                parts.add(between(from, to));
                from = to;
            }
        }
        parts.add(between(from, whole));
        return parts;
    }

    private void addPart(List<Curve> parts, int index, double from, double to, double length) {
        if (Math.min(to, length) - Math.max(from, 0) <= SLACK) {
            return;
        }
        Curve curve = curves.get(index);
        double a = from <= SLACK ? 0 : curve.parameterAt(from, Accuracy.DEFAULT);
        double b = to >= length - SLACK ? 1 : curve.parameterAt(to, Accuracy.DEFAULT);
        parts.add(a == 0 && b == 1 ? curve : curve.between(a, b));
    }

    /** {@code 1/2 integral (x dy - y dx)} in mm^2; for a closed path the enclosed area, anticlockwise positive. */
    public double area() {
        // Taken about the start, so that a small piece far from the origin keeps its digits.
        double x = start().getX();
        double y = start().getY();
        double sum = 0;
        for (Curve curve : curves) {
            sum += curve.area() - Plane.triangle(x, y, curve.start(), curve.end());
        }
        return sum + 0.5 * Plane.cross(x, y, end().getX() - x, end().getY() - y);
    }

    /** The smallest upright rectangle around the path. */
    public Bounds2D bounds() {
        Bounds2D.Builder builder = Bounds2D.builder();
        for (Curve curve : curves) {
            builder.add(curve.bounds());
        }
        return builder.build();
    }

    /** Whether the end lies within the tolerance of the start. */
    public boolean closes(double tolerance) {
        return Plane.distance(end(), start()) <= tolerance;
    }
}
