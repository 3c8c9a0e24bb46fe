package org.draftingmaths.curve;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * Parallel curves: {@code O(t) = B(t) + d N(t)} with {@code N} the unit normal.
 *
 * <p>The parallel of a straight or an arc is one again, exactly. That of a cubic is no cubic; it is given by cubics whose
 * deviation from the true parallel is bounded by a proof, not by samples: every point of the result lies within the
 * deviation of the true parallel and the other way round, ends and end tangents are exact. A parallel is not the curve
 * moved sideways: its length is {@code L - d K} with {@code K} the angle turned, so an allowance outside a bend is longer
 * than the seam.
 *
 * <p>In a hollow of a radius less than the distance there is no parallel. Such stretches are left out and reported as
 * {@link Swallowed}, as is all that the parallels of other edges cut off.
 */
public final class Parallel {
    /** The finest deviation that may be asked for: 1e-6 mm, below which a gap counts as none. */
    public static final double FINEST = CurvePath.JOINT;

    private Parallel() {}

    /**
     * The parallel of a curve, positive distances to its left.
     *
     * @param curve any curve
     * @param distance mm, not 0
     * @param deviation the largest deviation from the true parallel, {@link #FINEST} or more, mm
     * @return the parallel, in the direction of the curve
     * @throws IllegalArgumentException if the curve bends towards the parallel so tightly that somewhere there is none;
     *     {@link #outline} cleans such places up
     */
    public static CurvePath of(Curve curve, double distance, double deviation) {
        check(deviation);
        List<Strand> strands = new ArrayList<>();
        add(curve, 0, signed(distance), deviation, strands);
        for (Strand strand : strands) {
            if (strand.swallowed()) {
                throw new IllegalArgumentException("distance is " + distance + " mm, but from t = " + strand.from()
                        + " to " + strand.to() + " the curve bends more tightly than that; allowed are distances less"
                        + " than its radius there");
            }
        }
        if (strands.isEmpty()) {
            throw new IllegalArgumentException("distance is " + distance
                    + " mm, but the arc bends more tightly than that; allowed are distances less than its radius");
        }
        return new CurvePath(strands.stream().map(Strand::curve).toList());
    }

    /**
     * The parallel outside a closed outline, the same distance all round.
     *
     * @param closed a closed, simple, anticlockwise path
     * @param distance outwards positive, mm
     * @param corner how corners are filled
     * @param deviation the largest deviation from the true parallel, mm
     * @return the outline, with what it swallowed
     */
    public static ParallelOutline outline(CurvePath closed, double distance, Corner corner, double deviation) {
        int n = closed.curves().size();
        return outline(closed, Collections.nCopies(n, distance), Collections.nCopies(n, corner), deviation);
    }

    /**
     * The parallel outside a closed outline with a distance for each of its curves.
     *
     * <p>The strands and corners are joined to a ring, which is cut wherever it meets itself. Of it those parts remain
     * that have the region it winds round (winding number 1 or more) on their left and none on their right.
     *
     * @param closed a closed, simple, anticlockwise path; simplicity is a precondition ({@link Meets#selfMeets} tells)
     * @param distances for each curve, outwards positive, mm; 0 keeps the curve
     * @param corners for each curve, how the corner at its end is filled
     * @param deviation the largest deviation from the true parallel, {@link #FINEST} or more, mm
     * @return the outline, with what it swallowed
     * @throws IllegalArgumentException if the path is open or clockwise, the lists do not fit it, or nothing is left
     */
    public static ParallelOutline outline(
            CurvePath closed, List<Double> distances, List<Corner> corners, double deviation) {
        check(deviation);
        int n = closed.curves().size();
        if (distances.size() != n || corners.size() != n) {
            throw new IllegalArgumentException("path has " + n + " curves, but there are " + distances.size()
                    + " distances and " + corners.size() + " corners; allowed is one each for every curve");
        }
        if (!closed.closes(CurvePath.JOINT)) {
            throw new IllegalArgumentException("path is open: it starts at " + closed.start() + " and ends at "
                    + closed.end() + "; allowed are ends within 1e-6 mm");
        }
        if (!(closed.area() > 0)) {
            throw new IllegalArgumentException(
                    "path runs clockwise: its area is " + closed.area() + " mm^2; allowed is anticlockwise");
        }
        return Ring.of(closed, strands(closed, distances, corners, deviation));
    }

    private static List<Strand> strands(
            CurvePath closed, List<Double> distances, List<Corner> corners, double deviation) {
        List<Curve> curves = closed.curves();
        List<Strand> strands = new ArrayList<>();
        Vector2D[] starts = new Vector2D[curves.size()];
        Vector2D[] ends = new Vector2D[curves.size()];
        for (int i = 0; i < curves.size(); i++) {
            double left = -Checks.coordinate("distance", distances.get(i));
            starts[i] = beside(curves.get(i), 0, left);
            ends[i] = beside(curves.get(i), 1, left);
        }
        for (int i = 0; i < curves.size(); i++) {
            int next = (i + 1) % curves.size();
            if (distances.get(i) == 0) {
                strands.add(new Strand(curves.get(i), i, 0, 1, false));
            } else {
                add(curves.get(i), i, -distances.get(i), deviation, strands);
            }
            addCorner(
                    strands,
                    new Tip(curves.get(i).end(), ends[i], curves.get(i).tangent(1), distances.get(i)),
                    new Tip(
                            curves.get(next).start(),
                            starts[next],
                            curves.get(next).tangent(0),
                            distances.get(next)),
                    corners.get(i));
        }
        return strands;
    }

    /** The end of an edge, of its parallel, the direction there and the distance. */
    private record Tip(Vector2D net, Vector2D at, Vector2D way, double distance) {}

    private static void addCorner(List<Strand> strands, Tip a, Tip b, Corner corner) {
        if (Plane.distance(a.at, b.at) <= CurvePath.JOINT) {
            return;
        }
        double turn = a.way.signedArea(b.way);
        Vector2D gap = b.at.subtract(a.at);
        // a.at + s a.way = b.at - t b.way
        double s = gap.signedArea(b.way) / turn;
        double t = a.way.signedArea(gap) / turn;
        boolean outside = Math.abs(turn) > 1e-9 && s >= 0 && t >= 0;
        if (corner.limit() == 0 || !outside) {
            strands.add(Strand.corner(a.at, b.at));
            return;
        }
        Vector2D tip = a.at.add(s, a.way);
        double reach = corner.limit() * Math.max(Math.abs(a.distance), Math.abs(b.distance));
        if (Plane.distance(a.net, tip) <= reach * (1 + 1e-12)) {
            line(strands, a.at, tip);
            line(strands, tip, b.at);
            return;
        }
        // Square across the line from the corner to the tip, at the reach; never behind the parallels' own ends.
        Vector2D out = a.net.directionTo(tip);
        double cutA = (reach - a.at.subtract(a.net).dot(out)) / a.way.dot(out);
        double cutB = (reach - b.at.subtract(b.net).dot(out)) / -b.way.dot(out);
        Vector2D first = cutA > 0 && cutA < s ? a.at.add(cutA, a.way) : a.at;
        Vector2D last = cutB > 0 && cutB < t ? b.at.subtract(cutB, b.way) : b.at;
        line(strands, a.at, first);
        line(strands, first, last);
        line(strands, last, b.at);
    }

    private static void line(List<Strand> strands, Vector2D from, Vector2D to) {
        if (Plane.distance(from, to) > CurvePath.JOINT) {
            strands.add(Strand.corner(from, to));
        }
    }

    private static Vector2D beside(Curve curve, double t, double left) {
        return Plane.beside(curve.at(t), curve.tangent(t), left);
    }

    private static void add(Curve curve, int edge, double left, double deviation, List<Strand> strands) {
        if (curve instanceof Straight) {
            strands.add(new Strand(new Straight(beside(curve, 0, left), beside(curve, 1, left)), edge, 0, 1, false));
        } else if (curve instanceof Arc arc) {
            double radius = arc.radius() - Math.signum(arc.sweep()) * left;
            if (radius > 1e-9) {
                strands.add(
                        new Strand(new Arc(arc.centre(), radius, arc.startAngle(), arc.sweep()), edge, 0, 1, false));
            } else if (Plane.distance(beside(arc, 0, left), beside(arc, 1, left)) > CurvePath.JOINT) {
                strands.add(new Strand(new Straight(beside(arc, 0, left), beside(arc, 1, left)), edge, 0, 1, true));
            }
        } else {
            CubicParallel.add((Cubic) curve, edge, left, deviation, strands);
        }
    }

    private static double signed(double distance) {
        Checks.coordinate("distance", distance);
        if (distance == 0) {
            throw new IllegalArgumentException(
                    "distance is 0; allowed is any other (mm): the curve is its own parallel");
        }
        return distance;
    }

    private static void check(double deviation) {
        if (!(deviation >= FINEST && deviation <= Accuracy.LARGEST)) {
            throw new IllegalArgumentException("deviation is " + deviation + "; allowed is 1e-6 to 1e9 (mm)");
        }
    }
}
