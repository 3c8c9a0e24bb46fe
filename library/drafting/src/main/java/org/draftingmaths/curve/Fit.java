package org.draftingmaths.curve;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/**
 * Curves drawn through points: traced ones, which a curve need only come near, and given ones, which it must pass.
 */
public final class Fit {

    private static final int ROUNDS = 60;
    private static final double HOPELESS = 1e8;
    private static final double[] SHARES = {0.15, 0.33, 0.6};
    private static final double LONGEST_HANDLE = 3;
    private static final double SINGULAR = 1e-12;

    private Fit() {}

    /**
     * A curve and how far it strays from the points it was fitted to.
     *
     * @param path the curve
     * @param deviation the greatest distance in mm of a point from it, found by the exact nearest place of each
     */
    public record Fitted(CurvePath path, double deviation) {}

    /**
     * Cubics near traced points. The ends are the first and the last point exactly, and the curve leaves and arrives in the given
     * directions. One cubic has two unknowns, the lengths {@code a, b} of its handles; they minimise the sum of the
     * squared distances of the points from the curve.
     * Where one cubic strays by more than is allowed, the points are parted at the worst and each part is fitted, tangent to one
     * direction at the joint.
     *
     * @param points at least two points, neighbours apart
     * @param leaving the direction at the first point
     * @param arriving the direction at the last point
     * @param most the greatest deviation allowed, in mm, more than 0
     * @return the curve with its deviation, at most {@code most}
     * @throws IllegalArgumentException when there are fewer than two points, neighbours coincide, a direction has no length or the
     *     allowed deviation is not positive
     */
    public static Fitted traced(List<Vector2D> points, Vector2D leaving, Vector2D arriving, double most) {
        requirePoints(points);
        if (!(most > 0 && Double.isFinite(most))) {
            throw new IllegalArgumentException("The deviation allowed is more than 0 mm: " + most + " mm.");
        }
        List<Curve> curves = new ArrayList<>();
        fit(points, leaving.normalize(), arriving.normalize(), most, curves);
        CurvePath path = new CurvePath(curves);
        return new Fitted(path, deviation(path, points));
    }

    private static void fit(
            List<Vector2D> points, Vector2D leaving, Vector2D arriving, double most, List<Curve> curves) {
        Cubic best = one(points, leaving, arriving);
        int worst = worst(best, points);
        if (points.size() <= 2 || Nearest.of(best, points.get(worst)).distance() <= most) {
            curves.add(best);
            return;
        }
        int part = Math.max(1, Math.min(points.size() - 2, worst));
        Vector2D joint = points.get(part - 1).directionTo(points.get(part + 1));
        fit(points.subList(0, part + 1), leaving, joint, most, curves);
        fit(points.subList(part, points.size()), joint, arriving, most, curves);
    }

    private static int worst(Cubic cubic, List<Vector2D> points) {
        int worst = 0;
        double furthest = -1;
        for (int i = 0; i < points.size(); i++) {
            double distance = Nearest.of(cubic, points.get(i)).distance();
            if (distance > furthest) {
                furthest = distance;
                worst = i;
            }
        }
        return worst;
    }

    private static double deviation(CurvePath path, List<Vector2D> points) {
        return points.stream()
                .mapToDouble(point -> Nearest.of(path, point).distance())
                .max()
                .orElseThrow();
    }

    /**
     * The two handle lengths by Levenberg's and Marquardt's method: with each point's nearest place fixed, only the distance square to
     * the curve counts, and it is linear in the two lengths; the damping grows while a step does not help.
     */
    private static Cubic one(List<Vector2D> points, Vector2D leaving, Vector2D arriving) {
        Cubic best = start(points, leaving, arriving);
        double least = sum(best, points);
        double damping = 1e-3;
        for (int round = 0; round < ROUNDS && damping < HOPELESS && points.size() > 3; round++) {
            Cubic tried = step(points, leaving, arriving, best, damping);
            double there = tried.equals(best) ? least : sum(tried, points);
            if (there < least) {
                best = tried;
                least = there;
                damping /= 10;
            } else {
                damping *= 10;
            }
        }
        return best;
    }

    private static double sum(Cubic cubic, List<Vector2D> points) {
        return points.stream()
                .mapToDouble(point -> Nearest.of(cubic, point).distance())
                .map(distance -> distance * distance)
                .sum();
    }

    /** The best of a few handle lengths, as shares of the way along the points: a hollow may be deep at either end. */
    private static Cubic start(List<Vector2D> points, Vector2D leaving, Vector2D arriving) {
        Vector2D start = points.get(0);
        Vector2D end = points.get(points.size() - 1);
        double way = way(points);
        Cubic best = null;
        double least = Double.POSITIVE_INFINITY;
        for (double first : SHARES) {
            for (double second : SHARES) {
                Cubic tried = new Cubic(
                        start,
                        start.add(leaving.multiply(way * first)),
                        end.subtract(arriving.multiply(way * second)),
                        end);
                double there = sum(tried, points);
                if (there < least) {
                    best = tried;
                    least = there;
                }
            }
        }
        return best;
    }

    private static double way(List<Vector2D> points) {
        double way = 0;
        for (int i = 1; i < points.size(); i++) {
            way += points.get(i - 1).distance(points.get(i));
        }
        return way;
    }

    /** One damped step: {@code (J^T J + damping diag(J^T J)) d = -J^T r}, rows square to the curve at each point's place. */
    private static Cubic step(List<Vector2D> points, Vector2D leaving, Vector2D arriving, Cubic now, double damping) {
        DMatrixRMaj normal = new DMatrixRMaj(2, 2);
        DMatrixRMaj right = new DMatrixRMaj(2, 1);
        for (Vector2D point : points.subList(1, points.size() - 1)) {
            double t = Nearest.of(now, point).at();
            Vector2D way = now.tangent(t);
            Vector2D square = Vector2D.of(-way.getY(), way.getX());
            double first = square.dot(leaving) * 3 * (1 - t) * (1 - t) * t;
            double second = -square.dot(arriving) * 3 * (1 - t) * t * t;
            double off = square.dot(now.at(t).vectorTo(point));
            normal.add(0, 0, first * first);
            normal.add(0, 1, first * second);
            normal.add(1, 0, first * second);
            normal.add(1, 1, second * second);
            right.add(0, 0, first * off);
            right.add(1, 0, second * off);
        }
        normal.add(0, 0, damping * normal.get(0, 0));
        normal.add(1, 1, damping * normal.get(1, 1));
        DMatrixRMaj change = new DMatrixRMaj(2, 1);
        LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.linear(2);
        if (!solver.setA(normal) || solver.quality() < SINGULAR) {
            return now;
        }
        solver.solve(right, change);
        double a = now.start().distance(now.startHandle()) + change.get(0, 0);
        double b = now.end().distance(now.endHandle()) + change.get(1, 0);
        double longest = LONGEST_HANDLE * way(points);
        if (!(a > 0 && b > 0 && a < longest && b < longest)) {
            return now;
        }
        return new Cubic(
                now.start(), now.start().add(leaving.multiply(a)), now.end().subtract(arriving.multiply(b)), now.end());
    }

    /**
     * A smooth curve through given points: the cubic spline over chord lengths whose speed and bend run on at every point, with the
     * given directions at its ends at the speed of the chords. Its speeds {@code v_i} solve
     * {@code h_i v_(i-1) + 2 (h_(i-1) + h_i) v_i + h_(i-1) v_(i+1) = 3 (h_i s_(i-1) + h_(i-1) s_i)} with chord lengths {@code h}
     * and chord directions {@code s}.
     *
     * @param points at least two points, neighbours apart
     * @param leaving the direction at the first point
     * @param arriving the direction at the last point
     * @return the curve, one cubic from each point to the next
     * @throws IllegalArgumentException when there are fewer than two points, neighbours coincide or a direction has no length
     */
    public static CurvePath through(List<Vector2D> points, Vector2D leaving, Vector2D arriving) {
        requirePoints(points);
        int n = points.size();
        double[] h = new double[n - 1];
        Vector2D[] s = new Vector2D[n - 1];
        for (int i = 0; i < n - 1; i++) {
            h[i] = points.get(i).distance(points.get(i + 1));
            s[i] = points.get(i).directionTo(points.get(i + 1));
        }
        DMatrixRMaj matrix = new DMatrixRMaj(n, n);
        DMatrixRMaj right = new DMatrixRMaj(n, 2);
        row(matrix, right, 0, 1, 0, 0, leaving.normalize());
        for (int i = 1; i < n - 1; i++) {
            Vector2D mean = s[i - 1].multiply(3 * h[i]).add(s[i].multiply(3 * h[i - 1]));
            row(matrix, right, i, 2 * (h[i - 1] + h[i]), h[i], h[i - 1], mean);
        }
        row(matrix, right, n - 1, 1, 0, 0, arriving.normalize());
        DMatrixRMaj speeds = new DMatrixRMaj(n, 2);
        LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.linear(n);
        if (!solver.setA(matrix)) {
            throw new IllegalArgumentException("No smooth curve passes these points: " + points + ".");
        }
        solver.solve(right, speeds);
        List<Curve> curves = new ArrayList<>();
        for (int i = 0; i < n - 1; i++) {
            Vector2D from = Vector2D.of(speeds.get(i, 0), speeds.get(i, 1)).multiply(h[i] / 3);
            Vector2D to =
                    Vector2D.of(speeds.get(i + 1, 0), speeds.get(i + 1, 1)).multiply(h[i] / 3);
            Vector2D a = points.get(i);
            Vector2D b = points.get(i + 1);
            curves.add(new Cubic(a, a.add(from), b.subtract(to), b));
        }
        return new CurvePath(curves);
    }

    private static void row(
            DMatrixRMaj matrix, DMatrixRMaj right, int i, double own, double before, double after, Vector2D value) {
        matrix.set(i, i, own);
        if (before != 0) {
            matrix.set(i, i - 1, before);
        }
        if (after != 0) {
            matrix.set(i, i + 1, after);
        }
        right.set(i, 0, value.getX());
        right.set(i, 1, value.getY());
    }

    private static void requirePoints(List<Vector2D> points) {
        if (points.size() < 2) {
            throw new IllegalArgumentException("A curve needs at least two points: " + points.size() + ".");
        }
        for (int i = 0; i + 1 < points.size(); i++) {
            Checks.point("point " + i, points.get(i));
            if (!(points.get(i).distance(points.get(i + 1)) > Accuracy.DEFAULT)) {
                throw new IllegalArgumentException(
                        String.format(Locale.ROOT, "Points %d and %d coincide; neighbours must lie apart.", i, i + 1));
            }
        }
    }
}
