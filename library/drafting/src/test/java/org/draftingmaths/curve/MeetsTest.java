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

    /** The parts of a loop from either side share a stretch of it and cross where the loop crosses itself. */
    @Test
    void partsOfALoopOverlapAndCross() {
        int tried = 0;
        for (long seed = 0; seed < 400; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            Cubic whole = new Cubic(
                    Cases.point(random, 100),
                    Cases.point(random, 100),
                    Cases.point(random, 100),
                    Cases.point(random, 100));
            CurvePath path = CurvePath.of(whole);
            Meets loop = Meets.selfMeets(path);
            if (loop.points().size() != 1) {
                continue;
            }
            Meet self = loop.points().get(0);
            double s = path.placeAt(self.onFirst()).t();
            double t = path.placeAt(self.onSecond()).t();
            if (t - s < 0.1 || s < 0.05 || t > 0.95) {
                continue;
            }
            double from = s + 0.3 * (t - s);
            double to = s + 0.7 * (t - s);
            Cubic one = whole.between(0, to);
            Cubic other = random.nextBoolean()
                    ? whole.between(from, 1)
                    : whole.between(from, 1).reversed();
            Meets meets = Meets.of(one, other);
            assertThat(meets.overlaps()).as("seed %d", seed).hasSize(1);
            Overlap overlap = meets.overlaps().get(0);
            assertThat(one.at(overlap.fromFirst()).distance(whole.at(from)))
                    .as("seed %d", seed)
                    .isLessThan(1e-8);
            assertThat(one.at(overlap.toFirst()).distance(whole.at(to)))
                    .as("seed %d", seed)
                    .isLessThan(1e-8);
            assertThat(meets.points())
                    .as("seed %d", seed)
                    .extracting(Meet::kind)
                    .containsExactly(Meet.Kind.CROSSING);
            assertThat(meets.points().get(0).point().distance(self.point()))
                    .as("seed %d", seed)
                    .isLessThan(1e-8);
            tried++;
        }
        assertThat(tried).isGreaterThan(10);
    }

    /** A host that is a whole circle starts somewhere; an arc that lies on it there is told in two stretches. */
    @Test
    void anArcOverlapsACircleAcrossItsStart() {
        Arc circle = new Arc(at(10, 20), 50, 0.5, 2 * Math.PI);
        Arc arc = new Arc(at(10, 20), 50, 0.1, 1);
        for (boolean forward : new boolean[] {true, false}) {
            Meets meets = Meets.of(forward ? arc : arc.reversed(), circle);
            assertThat(meets.overlaps()).hasSize(2);
            double turn = 2 * Math.PI;
            Overlap one = meets.overlaps().get(forward ? 0 : 1);
            Overlap two = meets.overlaps().get(forward ? 1 : 0);
            // From 0.1 to 0.5 on the last of the circle, from 0.5 to 1.1 on its first.
            double last = 1 - 0.4 / turn;
            double first = 0.6 / turn;
            assertThat(forward ? one.fromSecond() : one.toSecond()).isCloseTo(last, within(1e-9));
            assertThat(forward ? one.toSecond() : one.fromSecond()).isCloseTo(1, within(1e-9));
            assertThat(forward ? two.fromSecond() : two.toSecond()).isCloseTo(0, within(1e-9));
            assertThat(forward ? two.toSecond() : two.fromSecond()).isCloseTo(first, within(1e-9));
            assertThat(one.sameWay()).isEqualTo(forward);
        }
    }

    /** What goes by an end of a straight at less than the tolerance touches it, though its foot lies past the end. */
    @Test
    void goingByAnEndTouchesIt() {
        Straight host = new Straight(at(-10, 0), at(0, 0));
        for (double off : new double[] {1.05e-9, 1.6e-9}) {
            // At half a right angle it passes the end at 0.71 of that: 0.74e-9 and 1.13e-9 mm.
            Straight guest = new Straight(at(off - 5, -5), at(off + 5, 5));
            Meets forward = Meets.of(guest, host);
            Meets backward = Meets.of(guest, host.reversed());
            if (off > 1.5e-9) {
                assertThat(forward.isEmpty()).isTrue();
                assertThat(backward.isEmpty()).isTrue();
            } else {
                assertThat(forward.points())
                        .extracting(Meet::onSecond, Meet::kind)
                        .containsExactly(tuple(1.0, Meet.Kind.TOUCHING));
                assertThat(backward.points())
                        .extracting(Meet::onSecond, Meet::kind)
                        .containsExactly(tuple(0.0, Meet.Kind.TOUCHING));
            }
        }
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
