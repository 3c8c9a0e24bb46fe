package org.draftingmaths.fullness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.draftingmaths.ledger.DraftingException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class HangTest {

    static Stream<Long> seeds() {
        return LongStream.range(0, 300).boxed();
    }

    /**
     * Commons Math finds {@code k} in {@code d = k (cosh(c/k) - 1)} and adds up the length of the curve
     * {@code y = k cosh(x/k)} from its slope.
     */
    @ParameterizedTest
    @MethodSource("seeds")
    void theCatenaryIsThatOfCommonsMath(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double half = random.nextDouble(40, 200);
        double drop = random.nextDouble(0.05, 3) * half;
        double k = new BrentSolver(1e-15, 1e-13)
                .solve(1000, x -> x * (Math.cosh(half / x) - 1) - drop, half / 20, half * 1000);
        double length = new IterativeLegendreGaussIntegrator(20, 1e-14, 1e-12)
                .integrate(100000, x -> Math.sqrt(1 + Math.pow(Math.sinh(x / k), 2)), 0, half);
        assertThat(Hang.CATENARY.lengthFor(half, drop)).isCloseTo(length, within(1e-8));
    }

    /** The least drop there is between a straight line and a V: {@code c < V < catenary}, and both laws of the catenary. */
    @ParameterizedTest
    @MethodSource("seeds")
    void theVIsTheShortest(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double half = random.nextDouble(1, 1000);
        double drop = random.nextDouble(0.001, 10) * half;
        assertThat(Hang.V.lengthFor(half, drop)).isCloseTo(Math.sqrt(half * half + drop * drop), within(1e-9));
        assertThat(Hang.CATENARY.lengthFor(half, drop)).isGreaterThan(Hang.V.lengthFor(half, drop));
        assertThat(Hang.CATENARY.lengthFor(half, drop)).isLessThan(half + drop);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void backwardsIsTheInverse(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double half = random.nextDouble(1, 1000);
        double drop = Math.pow(10, random.nextDouble(-1, 1)) * half;
        for (Hang hang : Hang.values()) {
            double length = hang.lengthFor(half, drop);
            assertThat(hang.dropFor(half, length).value()).isCloseTo(drop, within(1e-9));
        }
    }

    /** A nearly straight cord has {@code l - c = 2 d^2 / (3 c)} to first order; the drop keeps its digits there. */
    @Test
    void aNearlyStraightCordKeepsItsDigits() {
        double surplus = 1e-7;
        double drop = Hang.CATENARY.dropFor(100, 100 + surplus).value();
        double exact = (100 + surplus) - 100;
        assertThat(drop).isCloseTo(Math.sqrt(1.5 * 100 * exact), within(1e-9));
        assertThat(Hang.CATENARY.lengthFor(100, 0)).isEqualTo(100);
        assertThat(Hang.CATENARY.dropFor(100, 100).value()).isZero();
        assertThat(Hang.V.dropFor(100, 100).value()).isZero();
    }

    @Test
    void badInputIsRefused() {
        assertThatThrownBy(() -> Hang.V.lengthFor(0, 10))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("Half the distance between the two points is more than 0 mm: 0.0 mm.");
        assertThatThrownBy(() -> Hang.CATENARY.lengthFor(80, -1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("The drop of an edge is 0 mm or more: -1.0 mm.");
        assertThatThrownBy(() -> Hang.CATENARY.dropFor(85, 80).value())
                .isInstanceOf(DraftingException.class)
                .hasMessage(
                        "Drop of an edge of 3 1/8 in (8.0 cm): the edge must reach from point to point (asked 3 1/8 in (8.0"
                                + " cm), possible 3 3/8 in (8.5 cm) or more).");
    }
}
