package org.draftingmaths.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

class MeetsTest {

    private static final GeometryFactory JTS = new GeometryFactory();

    private static Vector2D at(double x, double y) {
        return Vector2D.of(x, y);
    }

    static Stream<Long> seeds() {
        return LongStream.range(0, Math.min(2000, Cases.COUNT)).boxed();
    }

    private static Curve random(SplittableRandom random) {
        Vector2D a = at(random.nextDouble(0, 100), random.nextDouble(0, 100));
        Vector2D b = at(random.nextDouble(0, 100), random.nextDouble(0, 100));
        Vector2D c = at(random.nextDouble(0, 100), random.nextDouble(0, 100));
        Vector2D d = at(random.nextDouble(0, 100), random.nextDouble(0, 100));
        return switch (random.nextInt(3)) {
            case 0 -> new Straight(a, b);
            case 1 -> new Arc(a, random.nextDouble(5, 60), random.nextDouble(0, 6), random.nextDouble(0.5, 6));
            default -> new Cubic(a, b, c, d);
        };
    }

    /** Every meet lies on both curves, and there are as many as JTS finds on polylines of two thousand parts. */
    @ParameterizedTest
    @MethodSource("seeds")
    void meetsAreConfirmedAndCounted(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Curve one = random(random);
        Curve other = random(random);
        Meets meets = Meets.of(one, other);
        for (Meet meet : meets.points()) {
            assertThat(one.at(meet.onFirst()).distance(other.at(meet.onSecond())))
                    .as("seed %d", seed)
                    .isLessThan(2e-9);
        }
        Geometry judged = flat(one).intersection(flat(other));
        long crossings = meets.points().stream()
                .filter(meet -> meet.kind() == Meet.Kind.CROSSING)
                .count();
        assertThat(judged.getNumGeometries() - (judged.isEmpty() ? judged.getNumGeometries() : 0))
                .as("seed %d", seed)
                .isEqualTo((int) crossings);
    }

    private static Geometry flat(Curve curve) {
        int parts = curve instanceof Straight ? 1 : 2000;
        Coordinate[] points = new Coordinate[parts + 1];
        for (int i = 0; i <= parts; i++) {
            Vector2D point = curve.at((double) i / parts);
            points[i] = new Coordinate(point.getX(), point.getY());
        }
        return JTS.createLineString(points);
    }

    @Test
    void orderOfTheTwoMakesNoDifference() {
        Cubic cubic = new Cubic(at(0, 0), at(30, 60), at(70, -60), at(100, 0));
        Straight line = new Straight(at(-10, 1), at(110, 1));
        Meets one = Meets.of(cubic, line);
        Meets other = Meets.of(line, cubic);
        assertThat(one.points()).hasSize(2);
        for (int i = 0; i < 2; i++) {
            assertThat(other.points().get(i).onSecond())
                    .isCloseTo(one.points().get(i).onFirst(), within(1e-12));
        }
    }

    @Test
    void aCrossingThroughAJointIsToldOnce() {
        CurvePath bent = CurvePath.polyline(at(0, 0), at(50, 0), at(100, 10));
        Meets through = Meets.of(bent, CurvePath.polyline(at(50, -20), at(50, 20)));
        assertThat(through.points())
                .extracting(Meet::onFirst, Meet::kind)
                .containsExactly(tuple(50.0, Meet.Kind.CROSSING));
        Meets against = Meets.of(bent, CurvePath.polyline(at(20, 20), at(50, 0), at(60, 20)));
        assertThat(against.points()).extracting(Meet::kind).containsExactly(Meet.Kind.TOUCHING);
    }

    @Test
    void coincidingStretchesAreOverlaps() {
        Meets meets = Meets.of(new Straight(at(0, 0), at(100, 0)), new Straight(at(130, 0), at(40, 0)));
        assertThat(meets.points()).isEmpty();
        assertThat(meets.overlaps()).hasSize(1);
        Overlap overlap = meets.overlaps().get(0);
        assertThat(overlap.fromFirst()).isCloseTo(0.4, within(1e-12));
        assertThat(overlap.toFirst()).isCloseTo(1, within(1e-12));
        assertThat(overlap.sameWay()).isFalse();
    }

    @Test
    void aLoopingCubicMeetsItself() {
        CurvePath loop = CurvePath.of(new Cubic(at(0, 0), at(120, 100), at(-20, 100), at(100, 0)));
        List<Meet> found = Meets.selfMeets(loop).points();
        assertThat(found).hasSize(1);
        assertThat(found.get(0).point().getX()).as("by symmetry").isCloseTo(50, within(1e-9));
        assertThat(Meets.selfMeets(CurvePath.of(new Cubic(at(0, 0), at(30, 60), at(70, 60), at(100, 0))))
                        .points())
                .isEmpty();
    }

    @Test
    void aSquareDoesNotMeetItselfAndABowTieDoes() {
        assertThat(Meets.selfMeets(CurvePath.polyline(at(0, 0), at(1, 0), at(1, 1), at(0, 1), at(0, 0)))
                        .points())
                .isEmpty();
        List<Meet> crossed = Meets.selfMeets(CurvePath.polyline(at(0, 0), at(2, 2), at(2, 0), at(0, 2), at(0, 0)))
                .points();
        assertThat(crossed).hasSize(1);
        assertThat(crossed.get(0).point().distance(at(1, 1))).isLessThan(1e-12);
    }
}
