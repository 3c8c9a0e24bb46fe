package org.draftingmaths.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Curves and paths that share an end, a stretch, or run back over themselves, laid out so that what they share is known. */
class SharedPlacesTest {

    private static Vector2D at(double x, double y) {
        return Vector2D.of(x, y);
    }

    /** Curves that leave the origin into the upper half plane and stay there. */
    private static List<Curve> upwards() {
        return List.of(
                new Straight(at(0, 0), at(30, 40)),
                Arc.through(at(0, 0), at(10, 30), at(40, 50)),
                new Cubic(at(0, 0), at(5, 15), at(20, 30), at(40, 35)));
    }

    static Stream<Arguments> pairs() {
        // The same, turned by half a turn and a little, stay below the level line.
        AffineTransformMatrix2D down = AffineTransformMatrix2D.createRotation(Math.PI + 0.3);
        return upwards().stream()
                .flatMap(up -> upwards().stream().map(other -> Arguments.of(up, other.transformed(down))));
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void aSharedEndTouchesOnce(Curve up, Curve down) {
        for (boolean upStarts : new boolean[] {true, false}) {
            for (boolean downStarts : new boolean[] {true, false}) {
                Meets meets = Meets.of(upStarts ? up : up.reversed(), downStarts ? down : down.reversed());
                assertThat(meets.overlaps()).isEmpty();
                assertThat(meets.points()).hasSize(1);
                Meet meet = meets.points().get(0);
                assertThat(meet.kind()).isEqualTo(Meet.Kind.TOUCHING);
                assertThat(meet.onFirst()).isEqualTo(upStarts ? 0 : 1);
                assertThat(meet.onSecond()).isEqualTo(downStarts ? 0 : 1);
                assertThat(meet.point().norm()).isLessThan(1e-9);
            }
        }
    }

    /** {@code 4 h t (1 - t)} along a line: out to h and back to where it began. */
    @Test
    void aCubicOnALineRunsBackOverItself() {
        for (Vector2D way : new Vector2D[] {at(1, 0), at(0.6, -0.8), at(-0.8, -0.6)}) {
            Cubic there = new Cubic(at(5, 7), at(5, 7).add(way.multiply(40)), at(5, 7).add(way.multiply(40)), at(5, 7));
            Meets self = CurveMeets.ofItself(there, 1e-9);
            assertThat(self.points()).isEmpty();
            assertThat(self.overlaps()).hasSize(1);
            Overlap overlap = self.overlaps().get(0);
            assertThat(Math.min(overlap.fromFirst(), overlap.toFirst())).isCloseTo(0, within(1e-7));
            assertThat(Math.max(overlap.fromFirst(), overlap.toFirst())).isCloseTo(0.5, within(1e-7));
            assertThat(Math.min(overlap.fromSecond(), overlap.toSecond())).isCloseTo(0.5, within(1e-7));
            assertThat(Math.max(overlap.fromSecond(), overlap.toSecond())).isCloseTo(1, within(1e-7));
            assertThat(overlap.sameWay()).isFalse();
        }
    }

    /** {@code x = 40 (3 t - 10.5 t^2 + 9 t^3)}: up, back past where it began, and up again; three stretches, each over the others. */
    @Test
    void aCubicThatTurnsTwiceLiesThreefold() {
        // Bernstein coefficients of 3 t - 10.5 t^2 + 9 t^3: 0, 1, -1.5, 1.5.
        Cubic thrice = new Cubic(at(0, 2), at(40, 2), at(-60, 2), at(60, 2));
        Meets self = CurveMeets.ofItself(thrice, 1e-9);
        assertThat(self.overlaps()).hasSize(3);
        for (Overlap overlap : self.overlaps()) {
            assertThat(thrice.at(overlap.fromFirst()).distance(thrice.at(overlap.fromSecond())))
                    .isLessThan(1e-7);
            assertThat(thrice.at(overlap.toFirst()).distance(thrice.at(overlap.toSecond())))
                    .isLessThan(1e-7);
            assertThat(Math.max(overlap.fromFirst(), overlap.toFirst()))
                    .isLessThanOrEqualTo(Math.min(overlap.fromSecond(), overlap.toSecond()) + 1e-12);
        }
    }

    @Test
    void whatEndsWhereItBeganTouchesItselfThere() {
        Cubic drop = new Cubic(at(0, 0), at(60, 80), at(-60, 80), at(0, 0));
        for (Curve closed : new Curve[] {drop, Arc.circle(at(3, 4), 25)}) {
            Meets self = CurveMeets.ofItself(closed, 1e-9);
            assertThat(self.overlaps()).isEmpty();
            assertThat(self.points()).hasSize(1);
            assertThat(self.points().get(0).kind()).isEqualTo(Meet.Kind.TOUCHING);
            assertThat(self.points().get(0).onFirst()).isZero();
            assertThat(self.points().get(0).onSecond()).isEqualTo(1);
        }
        assertThat(CurveMeets.ofItself(new Arc(at(3, 4), 25, 0, 6.2), 1e-9).isEmpty())
                .isTrue();
        // Short arcs end near where they began without going round.
        assertThat(CurveMeets.ofItself(new Arc(at(3, 4), 25, 0, 1e-5), 1e-3).isEmpty())
                .isTrue();
        // As paths both are simple: they go through the joint that closes them.
        assertThat(Meets.selfMeets(CurvePath.of(Arc.circle(at(3, 4), 25))).isEmpty())
                .isTrue();
        assertThat(Meets.selfMeets(CurvePath.of(drop)).isEmpty()).isTrue();
    }

    /** Cut off where it crosses itself, a loop begins on itself: a touch, no crossing. */
    @Test
    void aLoopCutAtItsCrossingTouchesItself() {
        Cubic loop = new Cubic(at(0, 0), at(120, 100), at(-20, 100), at(100, 0));
        Meet crossing = CurveMeets.ofItself(loop, 1e-9).points().get(0);
        assertThat(crossing.kind()).isEqualTo(Meet.Kind.CROSSING);
        assertThat(crossing.onFirst() + crossing.onSecond()).as("by symmetry").isCloseTo(1, within(1e-12));
        Meet begun = CurveMeets.ofItself(loop.between(crossing.onFirst(), 1), 1e-9)
                .points()
                .get(0);
        assertThat(begun.kind()).isEqualTo(Meet.Kind.TOUCHING);
        assertThat(begun.onFirst()).isZero();
        Meet ended = CurveMeets.ofItself(loop.between(0, crossing.onSecond()), 1e-9)
                .points()
                .get(0);
        assertThat(ended.kind()).isEqualTo(Meet.Kind.TOUCHING);
        assertThat(ended.onSecond()).isEqualTo(1);
    }

    @Test
    void aStretchSharedRoundCornersIsOne() {
        CurvePath steps = CurvePath.polyline(at(0, 0), at(10, 0), at(10, 10), at(20, 10));
        CurvePath other = CurvePath.polyline(at(2, 0), at(10, 0), at(10, 10), at(15, 10), at(15, 20));
        Meets meets = Meets.of(steps, other);
        assertThat(meets.points()).isEmpty();
        assertThat(meets.overlaps()).hasSize(1);
        requireOverlap(meets.overlaps().get(0), 2, 25, 0, 23);
        Meets backwards = Meets.of(steps, other.reversed());
        assertThat(backwards.overlaps()).hasSize(1);
        requireOverlap(backwards.overlaps().get(0), 2, 25, 33, 10);
        assertThat(backwards.overlaps().get(0).sameWay()).isFalse();
        Meets swapped = Meets.of(other, steps);
        assertThat(swapped.overlaps()).hasSize(1);
        requireOverlap(swapped.overlaps().get(0), 0, 23, 2, 25);
    }

    private static void requireOverlap(Overlap o, double from, double to, double fromSecond, double toSecond) {
        assertThat(o.fromFirst()).isCloseTo(from, within(1e-9));
        assertThat(o.toFirst()).isCloseTo(to, within(1e-9));
        assertThat(o.fromSecond()).isCloseTo(fromSecond, within(1e-9));
        assertThat(o.toSecond()).isCloseTo(toSecond, within(1e-9));
    }

    /** Two stretches that a gap parts stay two; one that leaves the other path between is not made one with the next. */
    @Test
    void stretchesApartStayApart() {
        CurvePath level = CurvePath.polyline(at(0, 0), at(50, 0));
        CurvePath comb = CurvePath.polyline(at(5, 0), at(15, 0), at(20, 8), at(25, 0), at(40, 0), at(45, -5));
        Meets meets = Meets.of(level, comb);
        assertThat(meets.points()).isEmpty();
        assertThat(meets.overlaps()).hasSize(2);
        requireOverlap(meets.overlaps().get(0), 5, 15, 0, 10);
        double slope = Math.sqrt(25 + 64);
        requireOverlap(meets.overlaps().get(1), 25, 40, 10 + 2 * slope, 25 + 2 * slope);
    }

    @Test
    void aPathThatTurnsBackLiesOnItself() {
        CurvePath back = CurvePath.polyline(at(0, 0), at(10, 0), at(6, 0), at(6, 5));
        Meets self = Meets.selfMeets(back);
        assertThat(self.overlaps()).hasSize(1);
        Overlap overlap = self.overlaps().get(0);
        assertThat(Math.min(overlap.fromFirst(), overlap.toFirst())).isCloseTo(6, within(1e-9));
        assertThat(Math.max(overlap.fromFirst(), overlap.toFirst())).isCloseTo(10, within(1e-9));
        assertThat(Math.max(overlap.fromSecond(), overlap.toSecond())).isCloseTo(14, within(1e-9));
    }

    /** {@code 1/2 integral (x dy - y dx)} of an open path keeps the origin, though it is taken about the start. */
    @Test
    void theAreaOfAnOpenPathIsSeenFromTheOrigin() {
        // Triangles with the origin: (100,100)-(110,100) gives -500, (110,100)-(110,110) gives 550.
        assertThat(CurvePath.polyline(at(100, 100), at(110, 100), at(110, 110)).area())
                .isCloseTo(50, within(1e-9));
        // An arc about the origin sweeps the sector, and back to the origin nothing is added.
        CurvePath sector = CurvePath.of(new Arc(Vector2D.ZERO, 30, 0.4, 1.1));
        assertThat(sector.area()).isCloseTo(0.5 * 30 * 30 * 1.1, within(1e-9));
    }
}
