package org.draftingmaths.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;

/** Laws of length: what must hold between the lengths of related curves, each good to its accuracy. */
class LengthPropertiesTest {
    private static final double ACCURACY = 1e-9;

    @Test
    void partsAddUpToTheWhole() {
        Cases.each(random -> {
            Curve curve = Cases.curve(random);
            double t = random.nextDouble(0.001, 0.999);
            double whole = curve.length(ACCURACY);
            assertThat(curve.length(0, t, ACCURACY) + curve.length(t, 1, ACCURACY))
                    .isCloseTo(whole, within(3 * ACCURACY));
            assertThat(curve.between(0, t).length(ACCURACY)
                            + curve.between(t, 1).length(ACCURACY))
                    .isCloseTo(whole, within(3 * ACCURACY));
        });
    }

    @Test
    void isometriesKeepIt() {
        Cases.each(random -> {
            Curve curve = Cases.curve(random);
            Curve moved = curve.transformed(Cases.isometry(random));
            assertThat(moved.length(ACCURACY)).isCloseTo(curve.length(ACCURACY), within(2.1 * ACCURACY));
        });
    }

    @Test
    void reversingKeepsIt() {
        Cases.each(random -> {
            Curve curve = Cases.curve(random);
            double t = random.nextDouble();
            assertThat(curve.reversed().length(ACCURACY)).isCloseTo(curve.length(ACCURACY), within(2 * ACCURACY));
            assertThat(curve.reversed().length(0, 1 - t, ACCURACY))
                    .isCloseTo(curve.length(t, 1, ACCURACY), within(2.1 * ACCURACY));
        });
    }

    @Test
    void elevatedStraightsAndQuadraticsKeepTheirClosedForm() {
        Cases.each(random -> {
            Vector2D a = Cases.point(random, 300);
            Vector2D b = Cases.point(random, 300);
            Vector2D c = Cases.point(random, 300);
            assertThat(Cubic.quadratic(a, a.lerp(b, 0.5), b).length(ACCURACY))
                    .isCloseTo(a.distance(b), within(1.1 * ACCURACY));
            assertThat(Cubic.quadratic(a, b, c).length(ACCURACY))
                    .isCloseTo(parabola(a, b, c), within(1.1 * ACCURACY + 1e-10));
        });
    }

    /** The primitive of |2 (A t + B)| with A = a - 2b + c, B = b - a, by completing the square. */
    private static double parabola(Vector2D a, Vector2D b, Vector2D c) {
        Vector2D second = a.add(c).subtract(2, b);
        Vector2D first = b.subtract(a);
        double k = second.norm();
        double middle = -first.dot(second) / (k * k);
        double off = Math.abs(first.signedArea(second)) / (k * k);
        return 2 * k * (primitive(1 - middle, off) - primitive(-middle, off));
    }

    /** Integral of sqrt(x^2 + off^2). */
    private static double primitive(double x, double off) {
        double root = Math.hypot(x, off);
        return 0.5 * (x * root + off * off * Math.copySign(Math.log((Math.abs(x) + root) / off), x));
    }

    @Test
    void thePointAtALengthIsThatFarAlong() {
        Cases.each(random -> {
            Curve curve = Cases.curve(random);
            double whole = curve.length(1e-10);
            double length = random.nextDouble() * whole;
            double t = curve.parameterAt(length, ACCURACY);
            assertThat(curve.length(0, t, 1e-10)).isCloseTo(length, within(1.1 * ACCURACY));
        });
    }

    /** Commons Math as a judge, on curves whose speed is smooth enough for it; its own error is the wider. */
    @Test
    void anotherLibraryAgrees() {
        Cases.some(20, random -> {
            Cubic cubic = Cases.gentle(random);
            double judged = new IterativeLegendreGaussIntegrator(24, 1e-12, 1e-12, 1, 20)
                    .integrate(1_000_000, t -> cubic.derivative(t).norm(), 0, 1);
            assertThat(cubic.length(ACCURACY)).isCloseTo(judged, within(2 * ACCURACY));
        });
    }

    @Test
    void chordAndPolygonEncloseIt() {
        Cases.each(random -> {
            Cubic cubic = Cases.cubic(random);
            double polygon = cubic.start().distance(cubic.startHandle())
                    + cubic.startHandle().distance(cubic.endHandle())
                    + cubic.endHandle().distance(cubic.end());
            double length = cubic.length(ACCURACY);
            assertThat(length).isBetween(cubic.start().distance(cubic.end()) - ACCURACY, polygon + ACCURACY);
        });
    }
}
