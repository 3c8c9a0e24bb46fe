package org.draftingmaths.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.apache.commons.math3.analysis.polynomials.PolynomialFunction;
import org.junit.jupiter.api.Test;

/**
 * Two cubics that are graphs of polynomials of x meet where the difference of the polynomials is zero: laid out from chosen
 * zeros, the places, their number and their kinds are known beforehand.
 */
class CubicMeetsTest {

    /** The width of the graphs in mm. */
    private static final double WIDE = 200;

    /** The graph of a polynomial over [from, to], in units of {@link #WIDE}; a parameter is the share of that way. */
    private static Cubic graph(PolynomialFunction f, double from, double to) {
        double h = to - from;
        PolynomialFunction slope = f.polynomialDerivative();
        double[] y = {
            f.value(from), f.value(from) + h / 3 * slope.value(from), f.value(to) - h / 3 * slope.value(to), f.value(to)
        };
        Vector2D[] p = IntStream.range(0, 4)
                .mapToObj(i -> Vector2D.of(WIDE * (from + h * i / 3), WIDE * y[i]))
                .toArray(Vector2D[]::new);
        return new Cubic(p[0], p[1], p[2], p[3]);
    }

    private static PolynomialFunction any(SplittableRandom random) {
        return new PolynomialFunction(new double[] {
            random.nextDouble(-1, 1), random.nextDouble(-1, 1), random.nextDouble(-1, 1), random.nextDouble(-1, 1)
        });
    }

    private static PolynomialFunction withZeros(double factor, double... zeros) {
        PolynomialFunction made = new PolynomialFunction(new double[] {factor});
        for (double zero : zeros) {
            made = made.multiply(new PolynomialFunction(new double[] {-zero, 1}));
        }
        return made;
    }

    private static double factor(SplittableRandom random) {
        return random.nextDouble(0.3, 2) * (random.nextBoolean() ? 1 : -1);
    }

    /** A pair of graphs anywhere in the plane, the second over its own stretch and perhaps drawn backwards. */
    private record Pair(Cubic first, Cubic second, double from, double to) {

        static Pair of(SplittableRandom random, PolynomialFunction difference) {
            PolynomialFunction f = any(random);
            double from = random.nextDouble(-0.3, 0);
            double to = random.nextDouble(1, 1.3);
            boolean backwards = random.nextBoolean();
            AffineTransformMatrix2D moved = Cases.isometry(random);
            Cubic second = graph(f.subtract(difference), from, to).transformed(moved);
            return new Pair(
                    graph(f, 0, 1).transformed(moved),
                    backwards ? second.reversed() : second,
                    backwards ? to : from,
                    backwards ? from : to);
        }

        double onSecond(double x) {
            return (x - from) / (to - from);
        }
    }

    /** Three zeros well apart: three crossings, and Newton's iteration finds them far better than the tolerance asks. */
    @Test
    void threeSimpleZerosAreThreeCrossings() {
        Cases.each(random -> {
            double a = random.nextDouble(0.05, 0.25);
            double b = random.nextDouble(0.4, 0.6);
            double c = random.nextDouble(0.75, 0.95);
            Pair pair = Pair.of(random, withZeros(factor(random) * 4, a, b, c));
            for (Meets meets :
                    new Meets[] {Meets.of(pair.first, pair.second), Meets.of(pair.first, pair.second, 1e-4)}) {
                assertThat(meets.overlaps()).isEmpty();
                assertThat(meets.points()).extracting(Meet::kind).containsOnly(Meet.Kind.CROSSING);
                assertThat(meets.points()).hasSize(3);
                double[] zeros = {a, b, c};
                for (int i = 0; i < 3; i++) {
                    Meet meet = meets.points().get(i);
                    assertThat(meet.onFirst()).isCloseTo(zeros[i], within(1e-11));
                    assertThat(meet.onSecond()).isCloseTo(pair.onSecond(zeros[i]), within(1e-11));
                }
            }
        });
    }

    /** One crossing of a good angle takes a look at a few pairs of parts, not a long halving. */
    @Test
    void oneCrossingIsFoundAtOnce() {
        Cases.each(random -> {
            double zero = random.nextDouble(0.1, 0.9);
            Pair pair = Pair.of(
                    random, withZeros(factor(random), zero).multiply(new PolynomialFunction(new double[] {1, 0, 0.2})));
            assertThat(CubicMeets.looks(pair.first, pair.second, 1e-9)).isLessThanOrEqualTo(60);
        });
    }

    /** A double zero and a simple one: the graphs touch at the one without crossing, and cross at the other. */
    @Test
    void aDoubleZeroTouches() {
        Cases.each(random -> {
            double twice = random.nextDouble(0.1, 0.4);
            double once = random.nextDouble(0.6, 0.9);
            Pair pair = Pair.of(random, withZeros(factor(random) * 4, twice, twice, once));
            Meets meets = Meets.of(pair.first, pair.second);
            assertThat(meets.points()).extracting(Meet::kind).containsExactly(Meet.Kind.TOUCHING, Meet.Kind.CROSSING);
            // Within 1e-9 mm for sqrt(1e-9 / (200 * 4 * 0.3 * 0.2)), and four times that on slanted graphs, of their
            // width.
            assertThat(meets.points().get(0).onFirst()).isCloseTo(twice, within(2e-5));
            assertThat(meets.points().get(1).onFirst()).isCloseTo(once, within(1e-11));
        });
    }

    /** A threefold zero: no angle between the two, and yet they cross. */
    @Test
    void aThreefoldZeroCrosses() {
        Cases.each(random -> {
            double zero = random.nextDouble(0.2, 0.8);
            Pair pair = Pair.of(random, withZeros(factor(random) * 4, zero, zero, zero));
            Meets meets = Meets.of(pair.first, pair.second);
            assertThat(meets.points()).extracting(Meet::kind).containsExactly(Meet.Kind.CROSSING);
            assertThat(meets.overlaps()).isEmpty();
            // The third root of 1e-9 / (200 * 4 * 0.3), and some for slanted graphs.
            assertThat(meets.points().get(0).onFirst()).isCloseTo(zero, within(1e-3));
        });
    }

    /** Two that leave one place and end in one, bent differently between: two touches at the ends, nothing shared. */
    @Test
    void aLensSharesItsEndsOnly() {
        Cases.each(random -> {
            PolynomialFunction f = any(random);
            Cubic first = graph(f, 0, 1);
            Cubic second = graph(f.subtract(withZeros(factor(random), 0, 1)), 0, 1);
            boolean backwards = random.nextBoolean();
            Meets meets = Meets.of(first, backwards ? second.reversed() : second);
            assertThat(meets.overlaps()).isEmpty();
            assertThat(meets.points()).extracting(Meet::kind).containsOnly(Meet.Kind.TOUCHING);
            assertThat(meets.points()).extracting(Meet::onFirst).containsExactly(0.0, 1.0);
            assertThat(meets.points())
                    .extracting(Meet::onSecond)
                    .containsExactly(backwards ? 1.0 : 0.0, backwards ? 0.0 : 1.0);
        });
    }

    /** No zero, however near the two come: nothing below the gap, one touch above it. */
    @Test
    void aGapIsJudgedByTheTolerance() {
        Cases.some(10, random -> {
            double near = random.nextDouble(0.2, 0.8);
            double gap = Math.pow(10, random.nextDouble(-8, -3));
            PolynomialFunction f = new PolynomialFunction(new double[] {0.1, 0.3, -0.3 / (2 * near)});
            // The first is level at the narrowest place, so the gap is what lies between the two there.
            PolynomialFunction difference = withZeros(random.nextDouble(1, 3), near, near)
                    .add(new PolynomialFunction(new double[] {gap / WIDE}));
            Cubic first = graph(f, 0, 1);
            Cubic second = graph(f.subtract(difference), 0, 1);
            assertThat(Meets.of(first, second, 0.98 * gap).isEmpty()).isTrue();
            Meets touch = Meets.of(first, second, 1.02 * gap);
            assertThat(touch.overlaps()).isEmpty();
            assertThat(touch.points()).extracting(Meet::kind).containsExactly(Meet.Kind.TOUCHING);
            assertThat(touch.points().get(0).onFirst()).isCloseTo(near, within(0.02));
        });
    }

    /** Parts of one graph, shifted across by less or by more than the tolerance. */
    @Test
    void aShiftedStretchIsSharedWithinTheTolerance() {
        Cases.some(10, random -> {
            PolynomialFunction f = new PolynomialFunction(new double[] {0, 0.1, random.nextDouble(-0.2, 0.2), 0.1});
            double low = random.nextDouble(0.1, 0.4);
            double high = random.nextDouble(0.6, 0.9);
            Cubic first = graph(f, 0, high);
            Cubic second = graph(f, low, 1);
            Vector2D up = Vector2D.of(0, 1e-3);
            AffineTransformMatrix2D shift = AffineTransformMatrix2D.createTranslation(up);
            Meets shared = Meets.of(first, second.transformed(shift), 1.5e-3);
            assertThat(shared.points()).isEmpty();
            assertThat(shared.overlaps()).hasSize(1);
            Overlap overlap = shared.overlaps().get(0);
            assertThat(overlap.sameWay()).isTrue();
            // Its ends are ends of either; the foot of a place is off by less than the shift.
            assertThat(first.at(overlap.fromFirst()).distance(second.start())).isLessThan(2e-3);
            assertThat(overlap.toFirst()).isCloseTo(1, within(1e-12));
            assertThat(overlap.fromSecond()).isCloseTo(0, within(1e-12));
            assertThat(second.at(overlap.toSecond()).distance(first.end())).isLessThan(2e-3);
            // The steepest slope is below 0.8, so across the graph they are more than 0.75 of the shift apart.
            assertThat(Meets.of(first, second.transformed(shift), 7e-4).isEmpty())
                    .isTrue();
        });
    }
}
