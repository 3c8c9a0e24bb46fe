package org.draftingmaths.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Arc;
import org.draftingmaths.curve.Cubic;
import org.draftingmaths.curve.Curve;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Fit;
import org.draftingmaths.curve.Straight;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ellipses, arcs and other curves whose lengths are tabulated or follow from a formula. */
class ClosedFormsTest {
    /** Cubics to a quarter of an ellipse. */
    private static final int PARTS = 32;

    private static Vector2D at(double x, double y) {
        return Vector2D.of(x, y);
    }

    /**
     * A quarter of the ellipse with half-axes a and b by cubics: those of the unit circle with handles
     * {@code 4/3 tan(s/4)}, stretched. The circle's cubics lie outside it by at most {@code 4/27 sin^6(s/4)/cos^2(s/4)}
     * (Goldapp, Approximation of circular arcs by cubic polynomials, Computer Aided Geometric Design 8, 1991, 227-238),
     * the ellipse's by the larger half-axis times that, {@link #deviation}.
     */
    private static CurvePath quarter(double a, double b) {
        return ellipse(a, b, 0, Math.PI / 2);
    }

    /** The part between two angles of the unit circle that is stretched; at most a quarter. */
    private static CurvePath ellipse(double a, double b, double low, double high) {
        Curve[] parts = new Curve[PARTS];
        double sweep = (high - low) / PARTS;
        double handle = 4.0 / 3 * Math.tan(sweep / 4);
        for (int i = 0; i < PARTS; i++) {
            double from = low + i * sweep;
            double to = low + (i + 1) * sweep;
            parts[i] = new Cubic(
                    at(a * Math.cos(from), b * Math.sin(from)),
                    at(a * (Math.cos(from) - handle * Math.sin(from)), b * (Math.sin(from) + handle * Math.cos(from))),
                    at(a * (Math.cos(to) + handle * Math.sin(to)), b * (Math.sin(to) - handle * Math.cos(to))),
                    at(a * Math.cos(to), b * Math.sin(to)));
        }
        return CurvePath.of(parts);
    }

    private static double deviation(double a, double b) {
        double quarterSweep = Math.PI / 8 / PARTS;
        return Math.max(a, b) * 4 / 27 * Math.pow(Math.sin(quarterSweep), 6) / Math.pow(Math.cos(quarterSweep), 2);
    }

    @Test
    void theCubicsDeviateFromTheEllipseAsStated() {
        CurvePath quarter = quarter(1, 1);
        double furthest = 0;
        for (Curve part : quarter.curves()) {
            for (int i = 0; i <= 100; i++) {
                furthest = Math.max(furthest, Math.abs(part.at(i / 100.0).norm() - 1));
            }
        }
        assertThat(furthest).isLessThan(deviation(1, 1) + 1e-15);
    }

    /**
     * Published: the complete elliptic integral E(m) to 100 digits, numberdb/numberdb-data,
     * Complete_elliptic_integral_of_the_second_kind_E/numbers.yaml, commit 27002c23 (first digits kept). It is the
     * quarter of an ellipse with half-axes 1 and sqrt(1 - m). Of two convex outlines, one within a band of width w
     * outside the other, the perimeters differ by at most 2 pi w.
     */
    @ParameterizedTest
    @CsvSource({
        "0, 1.5707963267948966192",
        "0.1, 1.5307576368977632024",
        "0.2, 1.4890350580958529294",
        "0.25, 1.4674622093394271554",
        "0.3, 1.4453630644126652620",
        "0.33333333333333333333, 1.4303152571722197239",
        "0.4, 1.3993921388974322502",
        "0.5, 1.3506438810476755025",
        "0.6, 1.2984280350469131675",
        "0.66666666666666666667, 1.2611859497426054059",
        "0.7, 1.2416705679458227508",
        "0.75, 1.2110560275684595248",
        "0.8, 1.1784899243278385229",
        "0.9, 1.1047747327040733260",
        "0.95, 1.0604737277662782427",
        "1, 1"
    })
    void quarterEllipsesHaveTheTabulatedLength(double m, double length) {
        CurvePath quarter = quarter(1, Math.sqrt(1 - m));
        assertThat(quarter.length(1e-12)).isCloseTo(length, within(1.1e-12 + Math.PI / 2 * deviation(1, 1)));
    }

    /** Computed: perimeters 4 a E(1 - b^2/a^2), printed here to 15 figures. */
    @ParameterizedTest
    @CsvSource({
        "2, 1, 9.68844822054768",
        "3, 1, 13.3648932205553",
        "3, 2, 15.8654395892906",
        "4, 3, 22.1034921607095",
        "5, 3, 25.5269988633981",
        "5, 4, 28.3616678889745",
        "10, 5, 48.4422411027384"
    })
    void ellipsesHaveTheirPerimeter(double a, double b, double perimeter) {
        double found = 4 * quarter(a, b).length(1e-12);
        assertThat(found).isCloseTo(perimeter, within(1e-13 * perimeter + 5e-12 + 2 * Math.PI * deviation(a, b)));
    }

    /** Computed, as Abramowitz and Stegun's Table 17.2 has it: E by the modular angle, m = sin^2 of it. */
    @ParameterizedTest
    @CsvSource({
        "15, 1.544150496914673",
        "30, 1.467462209339427",
        "45, 1.350643881047675",
        "60, 1.211056027568459",
        "75, 1.076405113076404"
    })
    void quarterEllipsesHaveTheLengthOfTheirModularAngle(double degrees, double length) {
        assertThat(quarter(1, Math.cos(Math.toRadians(degrees))).length(1e-12))
                .isCloseTo(length, within(1.6e-12 + Math.PI / 2 * deviation(1, 1)));
    }

    /**
     * Published: Maple help, EllipticE (maplesoft.com/support/help, path EllipticE): E(k = 0.3) = 1.534833465 and, from the end of the minor half-axis to
     * z = sin(phi) = 0.2, E(0.2, 0.3) = 0.2012363833.
     */
    @Test
    void ellipsesHaveTheLengthsThatMaplePrints() {
        double b = Math.sqrt(1 - 0.3 * 0.3);
        assertThat(quarter(1, b).length(1e-12)).isCloseTo(1.534833465, within(5.1e-10));
        assertThat(ellipse(1, b, Math.PI / 2 - Math.asin(0.2), Math.PI / 2).length(1e-12))
                .isCloseTo(0.2012363833, within(5.1e-11));
    }

    /** Computed: parts of the ellipse with half-axes 2 and 1, from the end of the longer one. */
    @ParameterizedTest
    @CsvSource({"6, 0.585325466504268", "4, 0.965663744222227", "3, 1.40992791020547"})
    void partsOfAnEllipseHaveTheirLength(int part, double length) {
        assertThat(ellipse(2, 1, 0, Math.PI / part).length(1e-12))
                .isCloseTo(length, within(1.1e-12 + 1e-14 + Math.PI * deviation(2, 1)));
    }

    /**
     * Analytic: a circle of radius 10 and an ellipse that is a straight there and back. Published: x^2 + 2 y^2 = 1 has the
     * circumference 5.4 (GeoGebra manual, Length); computed 5.4025755.
     */
    @Test
    void ellipsesDegenerateAsTheyShould() {
        assertThat(4 * quarter(10, 10).length(1e-12))
                .isCloseTo(20 * Math.PI, within(5e-12 + 2 * Math.PI * deviation(10, 10)));
        assertThat(4 * quarter(10, 0).length(1e-12)).isCloseTo(40, within(5e-12));
        assertThat(4 * quarter(1, Math.sqrt(0.5)).length(1e-12)).isCloseTo(5.4025755, within(5.1e-8));
    }

    /** Analytic: y = x^(3/2) from 0 to 4, (10^(3/2) - 1) 8/27. */
    @Test
    void aLongerSemicubicalParabolaHasItsLengthToo() {
        Cubic cubic = new Cubic(at(0, 0), at(0, 0), at(4.0 / 3, 0), at(4, 8));
        assertThat(cubic.length(1e-12)).isCloseTo(9.07341528938779, within(6.1e-12));
    }

    /** Analytic: y = x^(3/2) from 0 to 4/3 is exactly 56/27 long; as a cubic its start handle lies on its start. */
    @Test
    void theSemicubicalParabolaHasARationalLength() {
        double x = 4.0 / 3;
        double y = Math.pow(x, 1.5);
        Cubic cubic = new Cubic(at(0, 0), at(0, 0), at(x / 3, 0), at(x, y));
        assertThat(cubic.length(1e-12)).isCloseTo(56.0 / 27, within(1.1e-12));
    }

    /** Computed to 40 digits and rounded. */
    @ParameterizedTest
    @CsvSource({
        "100, 25, 10, 90, 110, 100, 132, 192, 202.201189719841",
        "0, 0, 1, 0, 0, 1, 1, 1, 1.676542627420286",
        "1, 0, 1, 0.5522847498307934, 0.5522847498307934, 1, 0, 1, 1.571016698073856"
    })
    void someCubicsHaveComputedLengths(
            double x0, double y0, double x1, double y1, double x2, double y2, double x3, double y3, double length) {
        Cubic cubic = new Cubic(at(x0, y0), at(x1, y1), at(x2, y2), at(x3, y3));
        assertThat(cubic.length(1e-11)).isCloseTo(length, within(1e-11 + 5e-15 * length));
    }

    /** Computed from points that are common in examples of length: a quadratic. */
    @Test
    void aQuadraticHasItsComputedLength() {
        Cubic cubic = Cubic.quadratic(at(150, 40), at(80, 30), at(105, 150));
        assertThat(cubic.length(1e-11)).isCloseTo(144.79561403359523, within(1.1e-11 + 1e-12));
    }

    /** Analytic: chords of y = x^2 from 0 to 1 are sqrt 2 long for one and come to 1.478197397 for ten. */
    @ParameterizedTest
    @CsvSource({"1, 1.414213562", "10, 1.478197397"})
    void chordsOfAParabolaComeToLess(int parts, double length) {
        Vector2D[] points = new Vector2D[parts + 1];
        for (int i = 0; i <= parts; i++) {
            double x = (double) i / parts;
            points[i] = at(x, x * x);
        }
        assertThat(CurvePath.polyline(points).length()).isCloseTo(length, within(1e-9));
    }

    /** The usual quarter circle by one cubic lies up to 0.02725 per cent outside: Goldapp's bound for a right angle. */
    @Test
    void oneCubicForAQuarterCircleIsOffAsTabulated() {
        double k = 4 * (Math.sqrt(2) - 1) / 3;
        Cubic cubic = new Cubic(at(1, 0), at(1, k), at(k, 1), at(0, 1));
        double furthest = 0;
        for (int i = 0; i <= 10_000; i++) {
            furthest = Math.max(furthest, cubic.at(i / 10_000.0).norm() - 1);
        }
        assertThat(furthest).isCloseTo(0.0002725, within(5e-8));
    }

    /** Analytic: curves that are no cubics, as splines through 400 of their points, to a millionth. */
    @Test
    void splinesThroughPointsHaveTheLengthOfTheCurve() {
        // y = cosh x from 0 to 1: sinh 1.
        assertThat(spline(400, 0, 1, t -> at(t, Math.cosh(t))).length()).isCloseTo(Math.sinh(1), within(1e-6));
        // One arch of the cycloid of radius 1, without its cusps: 8 sin^2 between quarter turns.
        double from = Math.PI / 2;
        double to = 3 * Math.PI / 2;
        double expected = 4 * (Math.cos(from / 2) - Math.cos(to / 2));
        assertThat(spline(400, from, to, t -> at(t - Math.sin(t), 1 - Math.cos(t)))
                        .length())
                .isCloseTo(expected, within(1e-6));
        // The spiral r = t from 0 to 2 pi: (t sqrt(1 + t^2) + asinh t) / 2.
        double turn = 2 * Math.PI;
        double spiral = 0.5 * (turn * Math.sqrt(1 + turn * turn) + Math.log(turn + Math.sqrt(1 + turn * turn)));
        assertThat(spiral).isCloseTo(21.2562941482091, within(1e-12));
        assertThat(spline(400, 0, turn, t -> at(t * Math.cos(t), t * Math.sin(t)))
                        .length())
                .isCloseTo(spiral, within(1e-5));
    }

    /** Analytic: curves with cusps, as splines from cusp to cusp: a cycloid's arch, an astroid, a cardioid. */
    @Test
    void splinesFromCuspToCuspHaveTheLengthOfTheCurve() {
        assertThat(spline(400, 0, Math.PI, t -> at(t, Math.sin(t))).length()).isCloseTo(3.82019778902771, within(1e-6));
        assertThat(cusped(0, 2 * Math.PI, at(0, 1), at(0, -1), t -> at(t - Math.sin(t), 1 - Math.cos(t))))
                .isCloseTo(8, within(1e-4));
        assertThat(4
                        * cusped(
                                0,
                                Math.PI / 2,
                                at(-1, 0),
                                at(0, 1),
                                t -> at(Math.pow(Math.cos(t), 3), Math.pow(Math.sin(t), 3))))
                .isCloseTo(6, within(1e-4));
        assertThat(2
                        * cusped(
                                0,
                                Math.PI,
                                at(0, 1),
                                at(1, 0),
                                t -> at((1 + Math.cos(t)) * Math.cos(t), (1 + Math.cos(t)) * Math.sin(t))))
                .isCloseTo(8, within(1e-4));
    }

    private static double cusped(double from, double to, Vector2D leaving, Vector2D arriving, Traced traced) {
        List<Vector2D> points = new ArrayList<>();
        for (int i = 0; i <= 400; i++) {
            points.add(traced.at(from + (to - from) * i / 400));
        }
        return Fit.through(points, leaving, arriving).length();
    }

    private interface Traced {
        Vector2D at(double t);
    }

    private static CurvePath spline(int parts, double from, double to, Traced traced) {
        Vector2D[] points = new Vector2D[parts + 1];
        for (int i = 0; i <= parts; i++) {
            points[i] = traced.at(from + (to - from) * i / parts);
        }
        double h = 1e-5;
        Vector2D leaving = traced.at(from + h).subtract(traced.at(from - h));
        Vector2D arriving = traced.at(to + h).subtract(traced.at(to - h));
        return Fit.through(List.of(points), leaving, arriving);
    }

    /**
     * Published: chord and sagitta. bit1024.com Arc-Height-Sagitta-Calculator (r 10, half chord 6: s = 2; r 15, half
     * chord 10: 3.82); calculator.7search.cc chord-to-radius-calculator (chord 10, height 3: r = 5.67; chord 8, height 2:
     * r = 5).
     */
    @ParameterizedTest
    @CsvSource({"12, 2, 10, 0.005", "20, 3.82, 15, 0.005", "10, 3, 5.67, 0.005", "8, 2, 5, 1e-12"})
    void radiusFollowsFromChordAndSagitta(double chord, double sagitta, double radius, double step) {
        Arc arc = Arc.chordAndSagitta(at(0, 0), at(chord, 0), sagitta);
        assertThat(arc.radius()).isCloseTo(radius, within(step));
    }

    /** Published: a sector of radius 7 and 30 degrees has area 12.83 (Machinery's Handbook, 31st ed., p. 50). */
    @Test
    void theSectorHasTheHandbooksArea() {
        Arc arc = new Arc(at(0, 0), 7, 0, Math.toRadians(30));
        CurvePath sector = CurvePath.of(new Straight(at(0, 0), arc.start()), arc, new Straight(arc.end(), at(0, 0)));
        assertThat(sector.area()).isCloseTo(12.83, within(0.005));
    }
}
