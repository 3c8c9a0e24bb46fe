package org.draftingmaths.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FitTest {

    static Stream<Long> seeds() {
        return LongStream.range(0, 200).boxed();
    }

    private static Cubic armhole(SplittableRandom random) {
        return new Cubic(
                Vector2D.of(240, 180),
                Vector2D.of(random.nextDouble(170, 215), random.nextDouble(180, 195)),
                Vector2D.of(random.nextDouble(150, 190), random.nextDouble(240, 300)),
                Vector2D.of(random.nextDouble(185, 220), 350));
    }

    private static List<Vector2D> traced(Cubic cubic, int count, double noise, SplittableRandom random) {
        CurvePath path = CurvePath.of(cubic);
        double length = path.length();
        List<Vector2D> points = new ArrayList<>();
        for (int i = 0; i <= count; i++) {
            Vector2D exact = path.pointAt(length * i / count);
            points.add(
                    i == 0 || i == count
                            ? exact
                            : exact.add(Vector2D.of(random.nextDouble(-1, 1), random.nextDouble(-1, 1))
                                    .multiply(noise)));
        }
        return points;
    }

    /**
     * Points of one cubic give one cubic, and that very one in all but a few cases: the least-squares problem has a second, shallower
     * hollow, into which three in two hundred fall; those keep the deviation allowed all the same.
     */
    @Test
    void findsTheCubicThatWasTraced() {
        int found = 0;
        for (long seed = 0; seed < 200; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            Cubic cubic = armhole(random);
            Fit.Fitted fitted = Fit.traced(traced(cubic, 30, 1e-9, random), cubic.tangent(0), cubic.tangent(1), 0.5);
            assertThat(fitted.path().curves()).as("seed %d", seed).hasSize(1);
            assertThat(fitted.deviation()).as("seed %d", seed).isLessThanOrEqualTo(0.5);
            found += fitted.deviation() < 1e-3 ? 1 : 0;
        }
        assertThat(found).isGreaterThanOrEqualTo(195);
    }

    /** A shaky hand: the curve keeps within the allowed deviation of every point, its ends and directions. */
    @ParameterizedTest
    @MethodSource("seeds")
    void keepsTheDeviationAllowed(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Cubic cubic = armhole(random);
        List<Vector2D> points = traced(cubic, 40, 0.4, random);
        double most = random.nextDouble(0.3, 1);
        Fit.Fitted fitted = Fit.traced(points, cubic.tangent(0), cubic.tangent(1), most);
        assertThat(points)
                .allSatisfy(point -> assertThat(Nearest.of(fitted.path(), point).distance())
                        .as("seed %d", seed)
                        .isLessThanOrEqualTo(most + 1e-9));
        assertThat(fitted.path().start()).isEqualTo(points.get(0));
        assertThat(fitted.path().end()).isEqualTo(points.get(points.size() - 1));
        // A very short handle tells its direction to rounding over its length.
        assertThat(fitted.path().startTangent().distance(cubic.tangent(0))).isLessThan(1e-6);
        assertThat(fitted.path().endTangent().distance(cubic.tangent(1))).isLessThan(1e-6);
    }

    /** The spline passes every point; direction and bend run on there (curvature to rounding). */
    @ParameterizedTest
    @MethodSource("seeds")
    void passesEveryPointSmoothly(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Vector2D> points = IntStream.range(0, 8)
                .mapToObj(i -> Vector2D.of(i * 40 + random.nextDouble(-8, 8), random.nextDouble(0, 60)))
                .toList();
        CurvePath path = Fit.through(points, Vector2D.of(1, 0), Vector2D.of(1, 0));
        assertThat(path.curves()).hasSize(7);
        for (int i = 1; i < 7; i++) {
            Curve before = path.curves().get(i - 1);
            Curve after = path.curves().get(i);
            assertThat(before.end()).isEqualTo(points.get(i));
            assertThat(before.tangent(1).distance(after.tangent(0)))
                    .as("seed %d", seed)
                    .isLessThan(1e-9);
            assertThat(before.curvature(1)).isCloseTo(after.curvature(0), within(1e-8));
        }
        assertThat(path.startTangent().distance(Vector2D.of(1, 0))).isLessThan(1e-9);
    }

    @Test
    void badPointsAreRefused() {
        Vector2D x = Vector2D.of(1, 0);
        assertThatThrownBy(() -> Fit.through(List.of(x), x, x))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("A curve needs at least two points: 1.");
        assertThatThrownBy(() -> Fit.through(List.of(x, x), x, x))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("Points 0 and 1 coincide; neighbours must lie apart.");
        assertThatThrownBy(() -> Fit.traced(List.of(x, Vector2D.ZERO), x, x, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("The deviation allowed is more than 0 mm: 0.0 mm.");
    }

    /** The polyline keeps its tolerance at dense samples, and JTS-like lengths come from below. */
    @ParameterizedTest
    @MethodSource("seeds")
    void flattensWithinItsTolerance(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Curve curve = random.nextBoolean()
                ? armhole(random)
                : new Arc(Vector2D.ZERO, random.nextDouble(5, 400), random.nextDouble(0, 6), random.nextDouble(0.1, 6));
        double tolerance = Math.pow(10, -random.nextDouble(0, 4));
        CurvePath polyline = CurvePath.polyline(
                Flatten.corners(CurvePath.of(curve), tolerance).toArray(Vector2D[]::new));
        for (int i = 0; i <= 500; i++) {
            assertThat(Nearest.of(polyline, curve.at(i / 500.0)).distance())
                    .as("seed %d", seed)
                    .isLessThanOrEqualTo(tolerance * (1 + 1e-9));
        }
        assertThat(polyline.length()).isLessThanOrEqualTo(curve.length() + 1e-9);
    }

    @Test
    void flatteningToNothingIsRefused() {
        CurvePath path = CurvePath.of(Arc.circle(Vector2D.ZERO, 100));
        assertThatThrownBy(() -> Flatten.corners(path, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("A tolerance for flattening is more than 0 mm: 0.0 mm.");
        assertThatThrownBy(() -> Flatten.corners(path, 1e-12)).isInstanceOf(IllegalArgumentException.class);
    }
}
