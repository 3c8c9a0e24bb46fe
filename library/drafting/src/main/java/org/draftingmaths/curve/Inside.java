package org.draftingmaths.curve;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** On which side of a closed path a point lies. */
public final class Inside {
    /** Where a point is. */
    public enum Where {
        /** The path winds round it. */
        INSIDE,
        /** It is within the tolerance of the path. */
        BOUNDARY,
        /** The path does not wind round it. */
        OUTSIDE
    }

    private Inside() {}

    /** Where the point is, the boundary being {@link Accuracy#DEFAULT} wide. */
    public static Where of(CurvePath closed, Vector2D point) {
        return of(closed, point, Accuracy.DEFAULT);
    }

    /** Where the point is; it is on the boundary if it lies within the tolerance of the path. */
    public static Where of(CurvePath closed, Vector2D point, double tolerance) {
        Checks.tolerance(tolerance);
        checkClosed(closed);
        if (Nearest.of(closed, point).distance() <= tolerance) {
            return Where.BOUNDARY;
        }
        return winding(closed, point) != 0 ? Where.INSIDE : Where.OUTSIDE;
    }

    /** Whether the point is inside the closed path or on its boundary. */
    public static boolean contains(CurvePath closed, Vector2D point) {
        return of(closed, point) != Where.OUTSIDE;
    }

    /**
     * How often the closed path winds round the point, anticlockwise positive.
     *
     * <p>A point within {@link Accuracy#DEFAULT} of the path has no winding number: {@link IllegalArgumentException}.
     */
    public static int windingNumber(CurvePath closed, Vector2D point) {
        checkClosed(closed);
        if (Nearest.of(closed, point).distance() <= Accuracy.DEFAULT) {
            throw new IllegalArgumentException(
                    "point " + point + " is on the path; a winding number needs a point at least 1e-9 mm off it");
        }
        return winding(closed, point);
    }

    private static void checkClosed(CurvePath path) {
        if (!path.closes(CurvePath.JOINT)) {
            throw new IllegalArgumentException("path is open: it starts at " + path.start() + " and ends at "
                    + path.end() + "; allowed are ends within 1e-6 mm");
        }
    }

    /** Counts the signed crossings of the ray from the point to the right. */
    private static int winding(CurvePath closed, Vector2D p) {
        List<Curve> curves = closed.curves();
        int winding = 0;
        for (int i = 0; i < curves.size(); i++) {
            // The next curve's start stands for this one's end, so that a gap at a joint hides no crossing.
            Vector2D end = curves.get((i + 1) % curves.size()).start();
            winding += crossings(curves.get(i), end, p);
        }
        return winding;
    }

    static int crossings(Curve curve, Vector2D end, Vector2D p) {
        Vector2D a = curve.start();
        Box box = Box.around(curve);
        double y = p.getY();
        if (box.right() < p.getX() || (box.low() > y && end.getY() > y) || (box.high() <= y && end.getY() <= y)) {
            return 0;
        }
        if (box.left() > p.getX() && end.getX() > p.getX()) {
            return (end.getY() > y ? 1 : 0) - (a.getY() > y ? 1 : 0);
        }
        int sum = 0;
        double from = 0;
        for (double t : Roots.extrema(curve, 0, 1)) {
            Vector2D b = curve.at(t);
            sum += crossing(curve, from, a, t, b, p);
            from = t;
            a = b;
        }
        return sum + crossing(curve, from, a, 1, end, p);
    }

    /** The crossing of a piece that rises or falls throughout: its lower end counts, its upper end does not. */
    private static int crossing(Curve curve, double from, Vector2D a, double to, Vector2D b, Vector2D p) {
        boolean aAbove = a.getY() > p.getY();
        boolean bAbove = b.getY() > p.getY();
        if (aAbove == bAbove) {
            return 0;
        }
        int way = bAbove ? 1 : -1;
        double low = curve.at(from).getY() - p.getY();
        double high = curve.at(to).getY() - p.getY();
        double t;
        if ((low > 0) == (high > 0)) {
            t = Math.abs(low) < Math.abs(high) ? from : to;
        } else {
            t = Roots.between(x -> curve.at(x).getY() - p.getY(), from, low, to, high);
        }
        return curve.at(t).getX() > p.getX() ? way : 0;
    }
}
