package org.draftingmaths.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.Shape;
import java.awt.geom.Arc2D;
import java.awt.geom.PathIterator;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.apache.batik.ext.awt.geom.ExtendedGeneralPath;
import org.apache.batik.parser.AWTPathProducer;
import org.apache.batik.parser.AWTTransformProducer;
import org.apache.batik.parser.ParseException;
import org.apache.batik.parser.PathParser;
import org.apache.batik.parser.TransformListParser;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Curve;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Path data and transforms, judged by Apache Batik, which computes in floats, and by closed forms. */
class PathReaderTest {

    /** Of a float at 2000 mm the last bit is 1.2e-4 mm; twenty relative commands add up as many. */
    private static final double FLOAT = 0.01;

    static LongStream seeds() {
        return LongStream.range(0, 500);
    }

    private static Figures figures(String text) {
        Source source = new Source("test.svg", new byte[0], Limits.DEFAULT);
        return new Figures(text, source, at -> "path, " + at);
    }

    private static List<Subpath> read(String data) {
        return PathReader.read(figures(data));
    }

    private static Shape batik(String data) throws IOException {
        return AWTPathProducer.createShape(new StringReader(data), PathIterator.WIND_NON_ZERO);
    }

    /** Every stroke's points are those of Batik, stroke by stroke. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void linesAndCurvesAreWhatBatikReads(long seed) throws IOException {
        String data = new Writer(seed).path("MmLlHhVvCcSsQqTtZz");
        List<Subpath> ours = read(data);
        List<Subpath> theirs = subpaths(batik(data));
        assertThat(ours).as(data).hasSameSizeAs(theirs);
        for (int i = 0; i < ours.size(); i++) {
            assertThat(ours.get(i).closed()).as(data).isEqualTo(theirs.get(i).closed());
            assertThat(ours.get(i).strokes())
                    .as(data)
                    .hasSameSizeAs(theirs.get(i).strokes());
            for (int j = 0; j < ours.get(i).strokes().size(); j++) {
                List<Vector2D> points = points(ours.get(i).strokes().get(j));
                List<Vector2D> expected = points(theirs.get(i).strokes().get(j));
                assertThat(points).as(data).hasSameSizeAs(expected);
                for (int k = 0; k < points.size(); k++) {
                    assertThat(points.get(k).distance(expected.get(k))).as(data).isLessThan(FLOAT);
                }
            }
        }
    }

    /** One arc as Batik reads it: its start, its radii, turn and flags, its end. */
    private record BatikArc(
            double x0, double y0, float rx, float ry, float turn, boolean large, boolean sweep, float x, float y) {

        Vector2D middle() {
            Arc2D arc = ExtendedGeneralPath.computeArc(x0, y0, rx, ry, turn, large, sweep, x, y);
            double angle = Math.toRadians(arc.getAngleStart() + arc.getAngleExtent() / 2);
            Vector2D centre = Vector2D.of(arc.getCenterX(), arc.getCenterY());
            Vector2D upright = centre.add(
                    Vector2D.of(arc.getWidth() / 2 * Math.cos(angle), -arc.getHeight() / 2 * Math.sin(angle)));
            return AffineTransformMatrix2D.createRotation(centre, Math.toRadians(turn))
                    .apply(upright);
        }
    }

    /** Batik's own reader, listening to its arcs. */
    private static final class Arcs extends AWTPathProducer {
        private final List<BatikArc> arcs = new ArrayList<>();

        @Override
        public void arcAbs(float rx, float ry, float turn, boolean large, boolean sweep, float x, float y) {
            arcs.add(new BatikArc(currentX, currentY, rx, ry, turn, large, sweep, x, y));
            super.arcAbs(rx, ry, turn, large, sweep, x, y);
        }

        @Override
        public void arcRel(float rx, float ry, float turn, boolean large, boolean sweep, float x, float y) {
            arcs.add(new BatikArc(currentX, currentY, rx, ry, turn, large, sweep, currentX + x, currentY + y));
            super.arcRel(rx, ry, turn, large, sweep, x, y);
        }
    }

    /**
     * Each arc's ends and middle are those of Batik. The ends are a thousandth of a mm off in floats; the nearer the chord comes to the
     * diameter or to nothing, and the narrower the ellipse, the more the middle hangs on that.
     */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void arcsAreWhatBatikReads(long seed) {
        String data = new Writer(seed).path("MmLlAaAaAaZz");
        Arcs theirs = new Arcs();
        PathParser parser = new PathParser();
        parser.setPathHandler(theirs);
        parser.parse(data);
        List<Stroke.Elliptic> ours = read(data).stream()
                .flatMap(subpath -> subpath.strokes().stream())
                .filter(Stroke.Elliptic.class::isInstance)
                .map(Stroke.Elliptic.class::cast)
                .toList();
        assertThat(ours).as(data).hasSameSizeAs(theirs.arcs);
        for (int i = 0; i < ours.size(); i++) {
            Stroke.Elliptic arc = ours.get(i);
            BatikArc expected = theirs.arcs.get(i);
            double angle = arc.start() + arc.sweep() / 2;
            Vector2D middle = arc.centre()
                    .add(arc.u().multiply(Math.cos(angle)))
                    .add(arc.v().multiply(Math.sin(angle)));
            double off = Math.abs(Math.cos(arc.sweep() / 2));
            double wide = Math.max(arc.u().norm(), arc.v().norm());
            double narrow = Math.min(arc.u().norm(), arc.v().norm());
            double chord = arc.from().distance(arc.to());
            double hangs = wide / narrow * Math.min(0.03 * narrow, FLOAT / 10 / off)
                    + wide / narrow * FLOAT / 1000 * 2 * wide / chord;
            assertThat(arc.from().distance(Vector2D.of(expected.x0(), expected.y0())))
                    .as(data)
                    .isLessThan(FLOAT);
            assertThat(arc.to().distance(Vector2D.of(expected.x(), expected.y())))
                    .as(data)
                    .isLessThan(FLOAT);
            assertThat(middle.distance(expected.middle()))
                    .as(data + " arc " + i)
                    .isLessThan(FLOAT + hangs);
        }
    }

    /** An arc that is written by its centre is read to that centre: every point lies on the ellipse, in order, on the right side. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void arcsLieOnTheirEllipse(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double rx = random.nextDouble(1, 300);
        double ry = random.nextDouble(1, 300);
        double turn = random.nextDouble(-3, 3);
        double first = random.nextDouble(-3, 3);
        double angle = random.nextDouble(0.01, 6.2) * (random.nextBoolean() ? 1 : -1);
        Vector2D centre = Vector2D.of(random.nextDouble(-500, 500), random.nextDouble(-500, 500));
        AffineTransformMatrix2D toEllipse =
                AffineTransformMatrix2D.createScale(rx, ry).rotate(turn).translate(centre);
        Vector2D from = toEllipse.apply(Vector2D.of(Math.cos(first), Math.sin(first)));
        Vector2D to = toEllipse.apply(Vector2D.of(Math.cos(first + angle), Math.sin(first + angle)));
        String data = "M" + from.getX() + " " + from.getY() + "A" + rx + " " + ry + " " + Math.toDegrees(turn)
                + (Math.abs(angle) > Math.PI ? " 1 " : " 0 ") + (angle > 0 ? "1 " : "0 ") + to.getX() + " " + to.getY();
        double bound = Math.pow(10, -random.nextInt(2, 7));
        List<Curve> curves = read(data).get(0).strokes().get(0).curves(bound);
        assertThat(curves.get(0).start()).isEqualTo(from);
        assertThat(curves.get(curves.size() - 1).end()).isEqualTo(to);
        AffineTransformMatrix2D back = toEllipse.inverse();
        double travelled = 0;
        double before = first;
        for (Curve curve : curves) {
            for (int i = 0; i <= 40; i++) {
                Vector2D on = back.apply(curve.at(i / 40.0));
                double here = Math.atan2(on.getY(), on.getX());
                assertThat(Math.abs(on.norm() - 1) * Math.min(rx, ry)).as(data).isLessThan(bound + 1e-9 * (rx + ry));
                travelled += Math.IEEEremainder(here - before, 2 * Math.PI);
                before = here;
            }
        }
        assertThat(travelled).as(data).isCloseTo(angle, within(1e-5));
    }

    /** What one of the two refuses the other does too. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void brokenDataIsRefusedAsBatikDoes(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        StringBuilder data = new StringBuilder(new Writer(seed).path("MmLlHhVvCcSsQqTtAaZz"));
        data.setCharAt(random.nextInt(data.length()), "xMLZA,-.1 ".charAt(random.nextInt(10)));
        assertThat(accepted(() -> read(data.toString())))
                .as(data.toString())
                .isEqualTo(accepted(() -> batik(data.toString())));
    }

    private interface Reading {
        Object read() throws IOException;
    }

    private static boolean accepted(Reading reading) {
        try {
            reading.read();
            return true;
        } catch (FileException | ParseException refused) {
            return false;
        } catch (IOException impossible) {
            throw new java.io.UncheckedIOException(impossible);
        }
    }

    /** The first five coordinates are exact in floats. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "translate(10 20)",
                "translate(7)",
                "scale(2, 3) translate(1 2)",
                "rotate(30)",
                "rotate(-45, 10, 20),scale(0.5)",
                "matrix(1 2 3 4 5 6) skewX(20)",
                "skewY(-30) rotate(200 3 4)",
                "''"
            })
    void transformsAreThoseOfBatik(String text) {
        AWTTransformProducer theirs = new AWTTransformProducer();
        TransformListParser parser = new TransformListParser();
        parser.setTransformListHandler(theirs);
        parser.parse(text);
        AffineTransformMatrix2D ours = Transforms.read(figures(text));
        for (Vector2D point : List.of(Vector2D.ZERO, Vector2D.of(100, 0), Vector2D.of(0, 100), Vector2D.of(-37, 81))) {
            double[] xy = {point.getX(), point.getY()};
            theirs.getAffineTransform().transform(xy, 0, xy, 0, 1);
            assertThat(ours.apply(point).distance(Vector2D.of(xy[0], xy[1])))
                    .as(text)
                    .isLessThan(1e-3);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "L 1 2|test.svg, path, character 1: path data begins with M or m, but here is 'L'",
                "M 1 2 B 3|test.svg, path, character 7: there is no path command 'B'",
                "M 1 2 L 3|test.svg, path, character 10: a number is needed here, but there is the end",
                "M 1 2 L 3,,4|test.svg, path, character 11: a number is needed after the comma, but there is ','",
                "M 1 1e999|test.svg, path, character 5: the number is too large",
                "M 1 2 A 3 3 0 2 1 5 5|test.svg, path, character 15: a flag, 0 or 1, is needed here, but there is '2'",
                "M 1 2 L NaN 3|test.svg, path, character 9: a number is needed here, but there is 'N'"
            })
    void saysWhatIsWrongAndWhere(String data, String message) {
        assertThatThrownBy(() -> read(data)).isInstanceOf(FileException.class).hasMessage(message);
    }

    /** From section 8.3.6 and 8.3.7 of the standard: without a curve of its kind before it the handle is the current point. */
    @ParameterizedTest
    @CsvSource({
        "M1 1Q5 5 9 1S20 5 30 0",
        "M9 1zM0 0L9 1S20 5 30 0",
        "M9 1C1 1 2 2 3 3ZS20 5 30 0",
        "M0 0L9 1T20 5",
        "M9 1C1 1 2 2 3 3ZT20 5"
    })
    void aSmoothCurveContinuesItsOwnKindOnly(String data) {
        List<Subpath> subpaths = read(data);
        List<Stroke> strokes = subpaths.get(subpaths.size() - 1).strokes();
        Stroke.Bezier last = (Stroke.Bezier) strokes.get(strokes.size() - 1);
        assertThat(last.from()).isEqualTo(Vector2D.of(9, 1));
        assertThat(last.fromHandle().distance(Vector2D.of(9, 1))).isLessThan(1e-12);
    }

    /** From appendix F.6 of the standard: radii too small grow, a radius of none is a line, no way is no arc. */
    @Test
    void oddArcs() {
        assertThat(read("M0 0A1 1 0 0 1 10 0").get(0).strokes().get(0).curves(1e-6))
                .allSatisfy(curve ->
                        assertThat(Vector2D.of(5, 0).distance(curve.at(0.3))).isCloseTo(5, within(1e-5)));
        assertThat(read("M0 0A0 4 0 0 1 10 0").get(0).strokes())
                .containsExactly(new Stroke.Line(Vector2D.ZERO, Vector2D.of(10, 0)));
        assertThat(read("M3 4A5 5 0 1 1 3 4")).isEmpty();
        assertThat(read("M0 0A5 5 0 0110 0").get(0).strokes().get(0).to()).isEqualTo(Vector2D.of(10, 0));
    }

    private static List<Vector2D> points(Stroke stroke) {
        if (stroke instanceof Stroke.Bezier bezier) {
            return List.of(bezier.from(), bezier.fromHandle(), bezier.toHandle(), bezier.to());
        }
        return List.of(stroke.from(), stroke.to());
    }

    /** Batik's shape as strokes: quadratics raised to cubics. */
    private static List<Subpath> subpaths(Shape shape) {
        List<Subpath> all = new ArrayList<>();
        List<Stroke> strokes = new ArrayList<>();
        Vector2D start = Vector2D.ZERO;
        Vector2D pen = Vector2D.ZERO;
        for (PathIterator it = shape.getPathIterator(null); !it.isDone(); it.next()) {
            double[] xy = new double[6];
            int kind = it.currentSegment(xy);
            Vector2D[] p = {Vector2D.of(xy[0], xy[1]), Vector2D.of(xy[2], xy[3]), Vector2D.of(xy[4], xy[5])};
            if (kind == PathIterator.SEG_MOVETO || kind == PathIterator.SEG_CLOSE) {
                if (!strokes.isEmpty()) {
                    all.add(new Subpath(strokes, kind == PathIterator.SEG_CLOSE));
                }
                strokes.clear();
                start = kind == PathIterator.SEG_MOVETO ? p[0] : start;
                pen = start;
            } else {
                Stroke stroke = kind == PathIterator.SEG_LINETO
                        ? new Stroke.Line(pen, p[0])
                        : kind == PathIterator.SEG_QUADTO
                                ? Stroke.Bezier.quadratic(pen, p[0], p[1])
                                : new Stroke.Bezier(pen, p[0], p[1], p[2]);
                strokes.add(stroke);
                pen = stroke.to();
            }
        }
        if (!strokes.isEmpty()) {
            all.add(new Subpath(strokes, false));
        }
        return all;
    }

    /** Writes path data in every style that the grammar allows. */
    private static final class Writer {

        private final SplittableRandom random;
        private final StringBuilder data = new StringBuilder();
        private boolean afterNumber;
        private char last = 'M';

        Writer(long seed) {
            random = new SplittableRandom(seed);
        }

        String path(String commands) {
            command(random.nextBoolean() ? 'M' : 'm');
            int count = random.nextInt(1, 20);
            for (int i = 0; i < count; i++) {
                command(comparable(commands.charAt(random.nextInt(commands.length()))));
            }
            return data.toString();
        }

        /**
         * After a curve of the other kind, or a Z, a smooth curve starts from the current point by the standard, but Batik continues the
         * curve: a line is drawn instead.
         */
        private char comparable(char letter) {
            String others = switch (Character.toUpperCase(letter)) {
                case 'S' -> "QTZ";
                case 'T' -> "CSZ";
                default -> "";
            };
            return others.indexOf(Character.toUpperCase(last)) >= 0 ? 'l' : letter;
        }

        private void command(char letter) {
            last = letter;
            data.append(pick("", " ", "\n")).append(letter);
            afterNumber = false;
            int repeats = letter == 'Z' || letter == 'z' ? 1 : random.nextInt(1, 3);
            for (int i = 0; i < repeats; i++) {
                numbers(Character.toUpperCase(letter));
            }
        }

        private void numbers(char letter) {
            switch (letter) {
                case 'Z' -> {}
                case 'H', 'V' -> number();
                case 'M', 'L', 'T' -> numbers(2);
                case 'S', 'Q' -> numbers(4);
                case 'C' -> numbers(6);
                default -> {
                    radius();
                    radius();
                    number();
                    flag();
                    flag();
                    numbers(2);
                }
            }
        }

        private void numbers(int count) {
            for (int i = 0; i < count; i++) {
                number();
            }
        }

        private void radius() {
            separate(false);
            data.append(String.format(Locale.ROOT, "%.3f", random.nextDouble(15, 300)));
            afterNumber = true;
        }

        private void flag() {
            separate(false);
            data.append(random.nextBoolean() ? '0' : '1');
            afterNumber = true;
        }

        private void number() {
            double value = random.nextDouble(-100, 100);
            String text = switch (random.nextInt(4)) {
                case 0 -> String.format(Locale.ROOT, "%.0f", value);
                case 1 -> String.format(Locale.ROOT, "%.4f", value);
                case 2 -> String.format(Locale.ROOT, "%.4e", value);
                default -> String.format(Locale.ROOT, "%.3f", value / 200).replace("0.", ".");
            };
            separate(text.startsWith("-"));
            data.append(text);
            afterNumber = true;
        }

        private void separate(boolean signed) {
            if (!afterNumber) {
                data.append(pick("", " ", "  "));
            } else {
                data.append(signed ? pick("", " ", ",") : pick(" ", ",", " , "));
            }
        }

        private String pick(String... choices) {
            return Arrays.asList(choices).get(random.nextInt(choices.length));
        }
    }
}
