package org.draftingmaths.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Arc;
import org.draftingmaths.curve.Cubic;
import org.draftingmaths.curve.CurvePath;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Lengths of curves against closed forms and against quadrature to sixty digits. */
class CurveLengthTest {

    /** Rounding the coordinates to double limits any routine to about 2e-13 mm at these sizes. */
    private static final double ROUNDING = 1e-12;

    private record Row(Cubic cubic, double length) {}

    private static List<Row> rows() throws IOException {
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(
                CurveLengthTest.class.getResourceAsStream("cubic-lengths.csv"), StandardCharsets.UTF_8))) {
            return reader.lines()
                    .filter(line -> !line.startsWith("#") && !line.startsWith("x0"))
                    .map(CurveLengthTest::row)
                    .toList();
        }
    }

    private static Row row(String line) {
        double[] v = Stream.of(line.split(",", -1))
                .limit(9)
                .mapToDouble(Double::parseDouble)
                .toArray();
        Cubic cubic = new Cubic(
                Vector2D.of(v[0], v[1]), Vector2D.of(v[2], v[3]), Vector2D.of(v[4], v[5]), Vector2D.of(v[6], v[7]));
        return new Row(cubic, v[8]);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-1, 1e-2, 1e-3, 1e-4, 1e-5, 1e-6, 1e-7, 1e-8, 1e-9, 1e-10})
    void everyCubicKeepsTheAccuracyAsked(double accuracy) throws IOException {
        List<Row> rows = rows();
        assertThat(rows).hasSize(515);
        assertThat(rows)
                .allSatisfy(row ->
                        assertThat(row.cubic().length(accuracy)).isCloseTo(row.length(), within(accuracy + ROUNDING)));
    }

    /** At 1e-11 mm rounding sets in: curves with more than 0.7 m of control polygon are refused, the others keep it. */
    @Test
    void theFinestAccuracyIsKeptOrRefused() throws IOException {
        int refused = 0;
        for (Row row : rows()) {
            try {
                assertThat(row.cubic().length(1e-11)).isCloseTo(row.length(), within(1e-11 + ROUNDING));
            } catch (IllegalArgumentException tooFine) {
                assertThat(tooFine).hasMessageContaining("rounding limits this curve to");
                refused++;
            }
        }
        assertThat(refused).isEqualTo(12);
    }

    @Test
    void thePointAtALengthIsThatFarAlong() throws IOException {
        assertThat(rows()).allSatisfy(row -> {
            double half = row.length() / 2;
            double t = row.cubic().parameterAt(half, 1e-9);
            assertThat(row.cubic().length(0, t, 1e-10)).isCloseTo(half, within(1.2e-9));
        });
    }

    static Stream<Arguments> closedForms() {
        return Stream.of(
                // Analytic: sqrt5/2 + ln(2 + sqrt5)/4; printed at math.techqa.club 2453548 as 1.4789428575445.
                Arguments.of("y = x^2 from 0 to 1", cubic(0, 0, 0.5, 0, 1, 1), 1.4789428575446),
                // Analytic: (sqrt2 + ln(1 + sqrt2)) / 2.
                Arguments.of("y = x^2/2 from 0 to 1", cubic(0, 0, 0.5, 0, 1, 0.5), 1.14779357469632),
                // Analytic: the universal parabolic constant, planetmath.org/arclengthofparabola.
                Arguments.of("y = x^2/4 from 0 to 2", cubic(0, 0, 1, 0, 2, 1), 2.29558714939264),
                // Analytic: sqrt5 + asinh(2)/2, printed as about 2.96 at socratic.org question 306545 (which misprints
                // the
                // interval as 0 to 1).
                Arguments.of("y = x^2/2 from 0 to 2", cubic(0, 0, 1, 0, 2, 2), 2.95788571508919),
                // Analytic: [u sqrt(1+u^2) + asinh u]/4 with u = 4, planetmath.org/arclengthofparabola.
                Arguments.of("y = x^2 from 0 to 2", cubic(0, 0, 1, 0, 2, 4), 4.64678376243294),
                // Analytic: 200 times the length of y = x^2 from 0 to 1.
                Arguments.of("quadratic to (200, 0)", cubic(0, 0, 100, 200, 200, 0), 295.7885715089195));
    }

    private static Cubic cubic(double x0, double y0, double x1, double y1, double x2, double y2) {
        return Cubic.quadratic(Vector2D.of(x0, y0), Vector2D.of(x1, y1), Vector2D.of(x2, y2));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("closedForms")
    void parabolasHaveTheirClosedForm(String name, Cubic cubic, double length) {
        assertThat(cubic.length(1e-11)).as(name).isCloseTo(length, within(1.1e-11));
    }

    /** Analytic: the cubic (0,0) (0,1) (1,1) (1,0) is exactly 2 long. */
    @Test
    void theSquareHandledCubicIsTwoLong() {
        Cubic cubic = new Cubic(Vector2D.of(0, 0), Vector2D.of(0, 1), Vector2D.of(1, 1), Vector2D.of(1, 0));
        assertThat(cubic.length(1e-12)).isCloseTo(2, within(2e-12));
    }

    /** Analytic, the classical table of circular segments for radius 1: angle, arc, chord, sagitta, segment area. */
    @ParameterizedTest
    @CsvSource({
        "10, 0.17453293, 0.17431149, 0.00380530, 0.00044237",
        "20, 0.34906585, 0.34729636, 0.01519225, 0.00352285",
        "30, 0.52359878, 0.51763809, 0.03407417, 0.01179939",
        "45, 0.78539816, 0.76536686, 0.07612047, 0.03914569",
        "60, 1.04719755, 1.00000000, 0.13397460, 0.09058607",
        "90, 1.57079633, 1.41421356, 0.29289322, 0.28539816",
        "120, 2.09439510, 1.73205081, 0.50000000, 0.61418485",
        "180, 3.14159265, 2.00000000, 1.00000000, 1.57079633"
    })
    void arcsAreThoseOfTheTable(double degrees, double length, double chord, double sagitta, double area) {
        Arc arc = new Arc(Vector2D.ZERO, 1, 0, Math.toRadians(degrees));
        CurvePath segment = CurvePath.of(arc).then(CurvePath.polyline(arc.end(), arc.start()));
        assertThat(arc.length()).isCloseTo(length, within(5e-9));
        assertThat(arc.start().distance(arc.end())).isCloseTo(chord, within(5e-9));
        assertThat(arc.at(0.5).distance(arc.start().lerp(arc.end(), 0.5))).isCloseTo(sagitta, within(5e-9));
        assertThat(segment.area()).isCloseTo(area, within(5e-9));
    }

    /**
     * Published: Machinery's Handbook, 31st ed., p. 50: radius 12, depth 2 give chord 13.27 and arc 14.06. Its printed angle
     * of 67.13 degrees carries rounding; the exact one is 67.11.
     */
    @Test
    void chordAndDepthGiveTheHandbooksArc() {
        double chord = 2 * Math.sqrt(2 * 12 * 2 - 2 * 2);
        assertThat(chord).isCloseTo(13.27, within(0.005));
        Arc arc = Arc.chordAndSagitta(Vector2D.of(0, 0), Vector2D.of(chord, 0), 2);
        assertThat(arc.radius()).isCloseTo(12, within(1e-12));
        assertThat(arc.length()).isCloseTo(14.06, within(0.005));
        assertThat(CurvePath.of(arc)
                        .then(CurvePath.polyline(arc.end(), arc.start()))
                        .area())
                .isCloseTo(18.01, within(0.005));
        double degrees = Math.toDegrees(Math.abs(arc.sweep()));
        assertThat(degrees).isCloseTo(Math.toDegrees(2 * Math.acos(10.0 / 12)), within(1e-12));
        assertThat(degrees).isNotCloseTo(67.13, within(0.005));
    }
}
