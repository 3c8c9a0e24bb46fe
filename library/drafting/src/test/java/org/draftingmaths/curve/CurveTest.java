package org.draftingmaths.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Bounds2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Points, directions, bending, parts and bounds of single curves, and what they refuse. */
class CurveTest {
    private static final double TINY = 1e-12;

    private static Vector2D at(double x, double y) {
        return Vector2D.of(x, y);
    }

    private static void same(Vector2D found, Vector2D expected, double tolerance) {
        assertThat(found.distance(expected)).as("%s is %s", found, expected).isLessThanOrEqualTo(tolerance);
    }

    @Test
    void derivativesAreLimitsOfDifferences() {
        Cases.each(random -> {
            Curve curve = Cases.curve(random);
            double t = random.nextDouble(0.01, 0.99);
            double h = 1e-5;
            Vector2D slope = curve.at(t + h).subtract(curve.at(t - h)).multiply(1 / (2 * h));
            Vector2D bend = curve.at(t + h)
                    .add(curve.at(t - h))
                    .subtract(2, curve.at(t))
                    .multiply(1 / (h * h));
            same(curve.derivative(t), slope, 1e-4);
            same(curve.secondDerivative(t), bend, 0.05);
        });
    }

    @Test
    void partsTraceTheSamePoints() {
        Cases.each(random -> {
            Curve curve = Cases.curve(random);
            double from = random.nextDouble(0, 0.9);
            double to = random.nextDouble(from + 0.01, 1);
            double s = random.nextDouble();
            same(curve.between(from, to).at(s), curve.at(from + s * (to - from)), 1e-11);
        });
    }

    @Test
    void reversingAndMovingCommuteWithEvaluation() {
        Cases.each(random -> {
            Curve curve = Cases.curve(random);
            AffineTransformMatrix2D move = Cases.isometry(random);
            double t = random.nextDouble();
            same(curve.reversed().at(t), curve.at(1 - t), 1e-11);
            same(curve.transformed(move).at(t), move.apply(curve.at(t)), 1e-11);
            if (curve.derivative(t).norm() > 1) {
                double sign = move.determinant();
                assertThat(curve.transformed(move).curvature(t))
                        .isCloseTo(sign * curve.curvature(t), within(1e-9 * (1 + Math.abs(curve.curvature(t)))));
                assertThat(curve.reversed().curvature(1 - t))
                        .isCloseTo(-curve.curvature(t), within(1e-9 * (1 + Math.abs(curve.curvature(t)))));
            }
        });
    }

    @Test
    void boundsHoldTheCurveAndAreTouched() {
        Cases.each(random -> {
            Curve curve = Cases.curve(random);
            Bounds2D bounds = curve.bounds();
            double left = Double.POSITIVE_INFINITY;
            double top = Double.NEGATIVE_INFINITY;
            for (int i = 0; i <= 200; i++) {
                Vector2D p = curve.at(i / 200.0);
                left = Math.min(left, p.getX());
                top = Math.max(top, p.getY());
            }
            assertThat(bounds.getMin().getX()).isLessThanOrEqualTo(left + 1e-9);
            assertThat(bounds.getMax().getY()).isGreaterThanOrEqualTo(top - 1e-9);
            // Two hundred chords miss an extremum by at most |B''| / (8 * 200^2).
            assertThat(bounds.getMin().getX()).isGreaterThan(left - 1.5);
            assertThat(bounds.getMax().getY()).isLessThan(top + 1.5);
        });
    }

    /** The direction's steps between two hundred places, each under a half turn, add up; near a cusp they need not. */
    @Test
    void theDirectionTurnsByTheTurning() {
        Cases.some(10, random -> {
            Curve curve = Cases.curve(random);
            double sum = 0;
            double widest = 0;
            for (int i = 0; i < 1000; i++) {
                Vector2D from = curve.tangent(i / 1000.0);
                Vector2D to = curve.tangent((i + 1) / 1000.0);
                double step = Math.atan2(from.signedArea(to), from.dot(to));
                widest = Math.max(widest, Math.abs(step));
                sum += step;
            }
            if (widest < 1) {
                assertThat(curve.turning()).as("%s", curve).isCloseTo(sum, within(1e-9));
            }
        });
    }

    @Test
    void turningsAddUpAndMirror() {
        Cases.each(random -> {
            Curve curve = random.nextBoolean() ? Cases.arc(random) : Cases.gentle(random);
            double t = random.nextDouble(0.01, 0.99);
            double whole = curve.turning();
            assertThat(curve.between(0, t).turning() + curve.between(t, 1).turning())
                    .isCloseTo(whole, within(1e-9));
            assertThat(curve.reversed().turning()).isCloseTo(-whole, within(1e-9));
            AffineTransformMatrix2D move = Cases.isometry(random);
            assertThat(curve.transformed(move).turning()).isCloseTo(move.determinant() * whole, within(1e-9));
        });
    }

    @Test
    void turningOfSomeShapes() {
        assertThat(new Straight(at(0, 0), at(3, 4)).turning()).isZero();
        assertThat(new Arc(at(0, 0), 10, 1, -5).turning()).isEqualTo(-5);
        // A bow, an s, a loop that turns by more than a half, a cusp, one that goes there and back, one with a handle
        // on its start.
        assertThat(new Cubic(at(0, 0), at(10, 0), at(20, 10), at(20, 20)).turning())
                .isCloseTo(Math.PI / 2, within(1e-12));
        assertThat(new Cubic(at(0, 0), at(10, 0), at(0, 10), at(10, 10)).turning())
                .isCloseTo(0, within(1e-12));
        assertThat(new Cubic(at(0, 0), at(20, 10), at(-10, 10), at(10, 0)).turning())
                .isCloseTo(2 * Math.PI - 2 * Math.atan2(10, 20), within(1e-12));
        assertThat(new Cubic(at(0, 0), at(10, 10), at(0, 10), at(10, 0)).turning())
                .isCloseTo(Math.PI / 2, within(1e-12));
        assertThat(new Cubic(at(0, 0), at(30, 0), at(-20, 0), at(10, 0)).turning())
                .isZero();
        assertThat(new Cubic(at(0, 0), at(0, 0), at(10, 0), at(10, 10)).turning())
                .isCloseTo(Math.PI / 2, within(1e-7));
    }

    @Test
    void betweenExtremaACurveGoesOneWay() {
        Cases.each(random -> {
            Curve curve = Cases.curve(random);
            Vector2D up = Cases.point(random, 1);
            double[] extrema = curve.extrema(up);
            double[] ends = new double[extrema.length + 2];
            System.arraycopy(extrema, 0, ends, 1, extrema.length);
            ends[ends.length - 1] = 1;
            for (int i = 0; i + 1 < ends.length; i++) {
                double from = ends[i];
                double to = ends[i + 1];
                assertThat(to).isGreaterThanOrEqualTo(from);
                double rise = curve.at(to).subtract(curve.at(from)).dot(up);
                double last = curve.at(from).dot(up);
                for (int k = 1; k <= 10; k++) {
                    double next =
                            curve.at(Math.min(1, from + (to - from) * k / 10)).dot(up);
                    assertThat((next - last) * Math.signum(rise)).isGreaterThan(-1e-9);
                    last = next;
                }
            }
            for (double t : extrema) {
                assertThat(Math.abs(curve.derivative(t).dot(up))).isLessThan(1e-6);
            }
        });
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Straight(at(0, 0), at(1, 0)).extrema(Vector2D.ZERO))
                .withMessageStartingWith("direction is (0, 0)");
        assertThat(new Arc(at(5, 5), 10, 0, Math.PI).extrema(at(0, 1))).containsExactly(0.5);
    }

    @Test
    void areaOfACircleAndOfACubicAgainstItsPolyline() {
        assertThat(Arc.circle(at(70, -30), 10).area()).isCloseTo(100 * Math.PI, within(1e-11));
        Cases.some(10, random -> {
            Curve curve = Cases.curve(random);
            double sum = 0;
            int parts = 2000;
            for (int i = 0; i < parts; i++) {
                sum += 0.5 * curve.at((double) i / parts).signedArea(curve.at((i + 1.0) / parts));
            }
            // Chords miss max |B' x B''| / (12 n^2) at most: |B'| < 2600 and |B''| < 10200 for cubics in this square.
            assertThat(curve.area()).isCloseTo(sum, within(0.6));
        });
    }

    @Test
    void tangentAtCoincidentHandlesIsTheLimit() {
        Cubic bothIn = new Cubic(at(0, 0), at(0, 0), at(3, 4), at(3, 4));
        same(bothIn.tangent(0), at(0.6, 0.8), TINY);
        same(bothIn.tangent(1), at(0.6, 0.8), TINY);
        Cubic startIn = new Cubic(at(0, 0), at(0, 0), at(0, 5), at(10, 5));
        same(startIn.tangent(0), at(0, 1), TINY);
        Cubic endIn = new Cubic(at(0, 0), at(0, 5), at(10, 5), at(10, 5));
        same(endIn.tangent(1), at(1, 0), TINY);
        Cubic threeIn = new Cubic(at(0, 0), at(0, 0), at(0, 0), at(10, 0));
        same(threeIn.tangent(0), at(1, 0), TINY);
        Cubic threeLast = new Cubic(at(0, 0), at(10, 0), at(10, 0), at(10, 0));
        same(threeLast.tangent(1), at(1, 0), TINY);
    }

    @Test
    void atACuspTheDirectionIsOfThePartThatLeaves() {
        Cubic cusp = new Cubic(at(0, 0), at(10, 10), at(0, 10), at(10, 0));
        assertThat(cusp.derivative(0.5).norm()).isZero();
        same(cusp.tangent(0.5), cusp.tangent(0.5 + 1e-7), 1e-6);
        assertThat(cusp.curvature(0.5)).isInfinite();
    }

    @Test
    void curvatureIsPositiveAnticlockwise() {
        assertThat(new Arc(at(0, 0), 50, 1, 2).curvature(0.3)).isEqualTo(0.02);
        assertThat(new Arc(at(0, 0), 50, 1, -2).curvature(0.3)).isEqualTo(-0.02);
        assertThat(new Cubic(at(0, 0), at(10, 0), at(20, 10), at(20, 20)).curvature(0.5))
                .isPositive();
        // y = x^2 / 2 bends by 1 at its vertex.
        assertThat(Cubic.quadratic(at(0, 0), at(0.5, 0), at(1, 0.5)).curvature(0))
                .isCloseTo(1, within(TINY));
    }

    @Test
    void aCoincidentHandleBendsEndlesslyUnlessStraight() {
        assertThat(new Cubic(at(0, 0), at(0, 0), at(5, 5), at(0, 10)).curvature(0))
                .isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(new Cubic(at(0, 0), at(0, 0), at(5, 5), at(10, 10)).curvature(0))
                .isZero();
    }

    @Test
    void arcsByThreePointsPassThroughThem() {
        Cases.each(random -> {
            Vector2D a = Cases.point(random, 100);
            Vector2D b = Cases.point(random, 100);
            Vector2D c = Cases.point(random, 100);
            double height = Math.abs(b.subtract(a).signedArea(c.subtract(a)));
            if (height < 50) {
                return;
            }
            Arc arc = Arc.through(a, b, c);
            double slack = 1e-12 * (1 + arc.radius() * arc.radius());
            same(arc.start(), a, slack);
            same(arc.end(), c, slack);
            assertThat(Nearest.of(arc, b).distance()).isLessThan(slack);
        });
    }

    @Test
    void aPositiveSagittaBulgesToTheRightOfTheChord() {
        Arc arc = Arc.chordAndSagitta(at(0, 0), at(8, 0), 2);
        assertThat(arc.radius()).isCloseTo(5, within(TINY));
        same(arc.at(0.5), at(4, -2), TINY);
        same(arc.end(), at(8, 0), TINY);
        same(Arc.chordAndSagitta(at(0, 0), at(8, 0), -2).at(0.5), at(4, 2), TINY);
        Arc more = Arc.chordAndSagitta(at(0, 0), at(8, 0), 10);
        same(more.at(0.5), at(4, -10), 1e-11);
        assertThat(more.sweep()).isGreaterThan(Math.PI);
    }

    @Test
    void aroundTakesTheWayAsked() {
        assertThat(Arc.around(at(0, 0), at(1, 0), at(0, 1), true).sweep()).isCloseTo(Math.PI / 2, within(TINY));
        assertThat(Arc.around(at(0, 0), at(1, 0), at(0, 1), false).sweep()).isCloseTo(-1.5 * Math.PI, within(TINY));
        assertThat(Arc.around(at(0, 0), at(1, 0), at(1, 0), true).sweep()).isEqualTo(2 * Math.PI);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, 1.0000001e9, -1e300})
    void whatIsNoPlaceIsRefusedByName(double bad) {
        Vector2D o = at(0, 0);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Straight(o, at(1, bad)))
                .withMessage("end y is " + bad + "; allowed are finite numbers from -1e9 to 1e9 (mm)");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Cubic(o, at(bad, 1), o, o))
                .withMessageStartingWith("start handle x is " + bad);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Cubic(o, o, at(bad, 1), o))
                .withMessageStartingWith("end handle x is " + bad);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Arc(at(bad, 0), 1, 0, 1))
                .withMessageStartingWith("centre x is " + bad);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Arc(o, bad, 0, 1))
                .withMessageStartingWith("radius is " + bad);
    }

    @Test
    void curvesWithoutExtentAreRefused() {
        Vector2D p = at(3, 4);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Straight(p, p))
                .withMessageStartingWith("straight is a single point");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Cubic(p, p, p, p))
                .withMessageStartingWith("cubic is a single point");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Arc(p, 0, 0, 1))
                .withMessage("radius is 0.0; allowed is more than 0 (mm)");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Arc(p, 1, 0, 0))
                .withMessageStartingWith("sweep is 0.0; allowed is -2 pi to 2 pi, not 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Arc(p, 1, 0, 6.2832))
                .withMessageStartingWith("sweep is 6.2832");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Arc(p, 1, Double.NaN, 1))
                .withMessageStartingWith("start angle is NaN");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Arc.through(at(0, 0), at(1, 1), at(3, 3)))
                .withMessageContaining("lie on one line");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Arc.chordAndSagitta(at(0, 0), at(1, 1), 0))
                .withMessageStartingWith("sagitta is 0.0");
    }

    @Test
    void parametersOutsideTheCurveAreRefused() {
        Curve[] curves = {
            new Straight(at(0, 0), at(1, 0)),
            new Arc(at(0, 0), 1, 0, 1),
            new Cubic(at(0, 0), at(1, 1), at(2, 1), at(3, 0))
        };
        for (Curve curve : curves) {
            for (double t : new double[] {-1e-9, 1.000001, Double.NaN}) {
                assertThatIllegalArgumentException()
                        .isThrownBy(() -> curve.at(t))
                        .withMessage("parameter is " + t + "; allowed is 0 to 1");
                assertThatIllegalArgumentException().isThrownBy(() -> curve.derivative(t));
                assertThatIllegalArgumentException().isThrownBy(() -> curve.secondDerivative(t));
                assertThatIllegalArgumentException().isThrownBy(() -> curve.tangent(t));
                assertThatIllegalArgumentException().isThrownBy(() -> curve.curvature(t));
                assertThatIllegalArgumentException().isThrownBy(() -> curve.length(0, t, 1e-9));
            }
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> curve.length(0.6, 0.5, 1e-9))
                    .withMessageStartingWith("parameters run from 0.6 to 0.5");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> curve.between(0.5, 0.5))
                    .withMessageStartingWith("parameters run from 0.5 to 0.5");
            assertThat(curve.length(0.5, 0.5, 1e-9)).isZero();
        }
    }

    @Test
    void lengthsPastTheEndsAreRefusedWithTheRange() {
        Curve[] curves = {new Straight(at(0, 0), at(10, 0)), new Arc(at(0, 0), 10, 0, -1), cubicOfLengthTen()};
        for (Curve curve : curves) {
            for (double length : new double[] {-1e-6, 10 + 1e-6, Double.NaN}) {
                assertThatIllegalArgumentException()
                        .isThrownBy(() -> curve.parameterAt(length, 1e-9))
                        .withMessageContaining("reachable is 0 to 10");
            }
            assertThat(curve.parameterAt(-5e-10, 1e-9)).isZero();
            assertThat(curve.parameterAt(10 + 5e-10, 1e-9)).isEqualTo(1);
        }
    }

    private static Cubic cubicOfLengthTen() {
        return new Cubic(at(0, 0), at(1, 0), at(8, 0), at(10, 0));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, 1e-13, 1e-300})
    void anAccuracyThatCannotBeKeptIsRefused(double accuracy) {
        Cubic cubic = new Cubic(at(0, 0), at(100, 100), at(200, 100), at(300, 0));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> cubic.length(accuracy))
                .withMessageStartingWith("accuracy is " + accuracy);
        assertThatIllegalArgumentException().isThrownBy(() -> cubic.parameterAt(1, accuracy));
        assertThatIllegalArgumentException().isThrownBy(() -> new Straight(at(0, 0), at(1e6, 0)).length(accuracy));
        assertThatIllegalArgumentException().isThrownBy(() -> new Arc(at(0, 0), 1e6, 0, 1).length(accuracy));
    }

    @Test
    void theLargestCurvesDoNotOverflow() {
        double far = Accuracy.LARGEST;
        Cubic huge = new Cubic(at(-far, -far), at(far, far), at(-far, far), at(far, -far));
        assertThat(huge.length(1)).isBetween(2 * far, 8 * far);
        assertThat(huge.area()).isFinite();
        assertThat(Nearest.of(huge, at(0, 0)).distance()).isFinite();
    }

    @Test
    void onlyIsometriesMoveCurves() {
        Curve[] curves = {
            new Straight(at(0, 0), at(1, 0)),
            new Arc(at(0, 0), 1, 0, 1),
            new Cubic(at(0, 0), at(1, 1), at(2, 1), at(3, 0))
        };
        for (Curve curve : curves) {
            for (AffineTransformMatrix2D bad : new AffineTransformMatrix2D[] {
                AffineTransformMatrix2D.createScale(1.000001),
                AffineTransformMatrix2D.createScale(1, 2),
                AffineTransformMatrix2D.createShear(0.1, 0)
            }) {
                assertThatIllegalArgumentException()
                        .isThrownBy(() -> curve.transformed(bad))
                        .withMessageContaining("allowed are rotations, translations and reflections");
            }
        }
    }
}
