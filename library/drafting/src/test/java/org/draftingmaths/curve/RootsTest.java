package org.draftingmaths.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class RootsTest {
    private int looks;

    private double root(DoubleUnaryOperator f) {
        looks = 0;
        DoubleUnaryOperator counted = t -> {
            looks++;
            return f.applyAsDouble(t);
        };
        return Roots.between(counted, 0, f.applyAsDouble(0), 1, f.applyAsDouble(1));
    }

    /** Halving alone would take 53 looks for the last bit; a curve that goes one way needs a few. */
    @Test
    void aPlainRootIsFoundToTheLastBitInFewLooks() {
        Cases.each(random -> {
            double p = -random.nextDouble(1, 100);
            double q = p + random.nextDouble(100);
            double r = q + random.nextDouble(100);
            double s = Math.max(r, 0) + random.nextDouble(1, 100);
            double[] bernstein = {p, q, r, s};
            double root = root(t -> Roots.value(bernstein, t));
            assertThat(looks).isLessThanOrEqualTo(20);
            double bit = 2 * Math.ulp(root);
            assertThat(Roots.value(bernstein, root - bit)).isLessThanOrEqualTo(1e-13);
            assertThat(Roots.value(bernstein, root + bit)).isGreaterThanOrEqualTo(-1e-13);
        });
    }

    /** Where the function is all but level round its root, interpolation is of no use; it still ends, and near. */
    @Test
    void aTripleRootIsFoundToo() {
        Cases.each(random -> {
            double at = random.nextDouble(0.01, 0.99);
            double root = root(t -> (t - at) * (t - at) * (t - at));
            assertThat(root).isCloseTo(at, within(1e-15));
            assertThat(looks).isLessThanOrEqualTo(120);
        });
    }

    @Test
    void rootsOfQuadraticsKeepTheirDigits() {
        // (t - 1e-9)(t - 0.5): the naive formula loses nine digits of the lesser root.
        double[] roots = Roots.quadratic(5e-10, 5e-10 - (0.5 + 1e-9) / 2, 5e-10 - (0.5 + 1e-9) + 1);
        assertThat(roots).hasSize(2);
        assertThat(roots[0]).isCloseTo(1e-9, within(1e-15));
        assertThat(roots[1]).isCloseTo(0.5, within(1e-15));
        assertThat(Roots.quadratic(1, 0.2, 1)).isEmpty();
        // A straight line, and a root on an end, which is not inside.
        assertThat(Roots.quadratic(-1, 0, 1)).containsExactly(0.5);
        assertThat(Roots.quadratic(0, 1, 2)).isEmpty();
    }
}
