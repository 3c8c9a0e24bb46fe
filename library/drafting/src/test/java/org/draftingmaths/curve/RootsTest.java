package org.draftingmaths.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
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
    void valuesOfABernsteinPolynomialAreThoseOfItsSum() {
        Cases.each(random -> {
            int degree = random.nextInt(1, 7);
            double[] bernstein = new double[degree + 1];
            double t = random.nextDouble();
            double sum = 0;
            double binomial = 1;
            for (int i = 0; i <= degree; i++) {
                bernstein[i] = random.nextDouble(-1, 1);
                sum += binomial * bernstein[i] * Math.pow(t, i) * Math.pow(1 - t, degree - i);
                binomial = binomial * (degree - i) / (i + 1);
            }
            assertThat(Roots.value(bernstein, t)).isCloseTo(sum, within(1e-14));
        });
    }

    /** Products of linear factors have the roots that they were made of. */
    @Test
    void everyChangeOfSignIsFound() {
        Cases.each(random -> {
            int degree = random.nextInt(1, 6);
            double[] roots = new double[degree];
            for (int i = 0; i < degree; i++) {
                roots[i] = (i + random.nextDouble(0.2, 0.8)) / degree;
            }
            double[] bernstein = {1};
            for (double root : roots) {
                bernstein = times(bernstein, -root, 1 - root);
            }
            assertThat(Roots.ofAll(bernstein)).containsExactly(roots, within(1e-9));
        });
        // A triple root may be told more than once.
        assertThat(Roots.ofAll(new double[] {-1, 1, -1, 1}))
                .isNotEmpty()
                .satisfies(all -> assertThat(Arrays.stream(all)).allMatch(t -> Math.abs(t - 0.5) < 1e-5));
        assertThat(Roots.ofAll(new double[] {1, 2, 1})).isEmpty();
        assertThat(Roots.ofAll(new double[] {0, 1, 2})).isEmpty();
    }

    /** The Bernstein coefficients of the product with {@code a (1 - t) + b t}. */
    private static double[] times(double[] p, double a, double b) {
        int n = p.length;
        double[] product = new double[n + 1];
        for (int i = 0; i < n; i++) {
            product[i] += a * p[i] * (n - i) / n;
            product[i + 1] += b * p[i] * (i + 1) / n;
        }
        return product;
    }

    @Test
    void rootsOfQuadraticsKeepTheirDigits() {
        // (t - 1e-9)(t - 0.5): the naive formula loses nine digits of the lesser root.
        double[] roots = Roots.quadratic(5e-10, 5e-10 - (0.5 + 1e-9) / 2, 5e-10 - (0.5 + 1e-9) + 1);
        assertThat(roots).hasSize(2);
        assertThat(roots[0]).isCloseTo(1e-9, within(1e-15));
        assertThat(roots[1]).isCloseTo(0.5, within(1e-15));
        assertThat(Roots.quadratic(1, 0.2, 1)).isEmpty();
        // (t - 1)(t + 1), t (t - 2) and (2t - 1)^2 (scaled): roots on an end and a double one.
        assertThat(Roots.quadratic(-1, -1, 0)).isEmpty();
        assertThat(Roots.quadratic(0, -1, -1)).isEmpty();
        assertThat(Roots.quadratic(1, -1, 1)).containsExactly(0.5);
        // A straight line, and a root on an end, which is not inside.
        assertThat(Roots.quadratic(-1, 0, 1)).containsExactly(0.5);
        assertThat(Roots.quadratic(0, 1, 2)).isEmpty();
    }
}
