package org.draftingmaths.curve;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What stands at the very limit is accepted; the next number beyond it is refused, and the message names it. */
class ArgumentsTest {

    private static final Straight LINE = new Straight(Vector2D.ZERO, Vector2D.of(100, 0));
    private static final Arc ARC = Arc.circle(Vector2D.ZERO, 10);
    private static final Cubic CUBIC =
            new Cubic(Vector2D.ZERO, Vector2D.of(30, 40), Vector2D.of(70, 40), Vector2D.of(100, 0));
    private static final CurvePath RING = CurvePath.of(ARC);

    private static Arguments limit(String refusal, ThrowingCallable within, ThrowingCallable beyond) {
        return Arguments.of(refusal, within, beyond);
    }

    private static AffineTransformMatrix2D stretched(double x, double y) {
        return AffineTransformMatrix2D.createScale(x, y);
    }

    private static AffineTransformMatrix2D sheared(double by) {
        return AffineTransformMatrix2D.of(1, by, 0, 0, 1, 0);
    }

    static Stream<Arguments> limits() {
        double large = 1e9;
        double larger = Math.nextUp(1e9);
        double past = Math.nextUp(1.0);
        // A coordinate of 2^20 mm is rounded to 2^-48 of it: 2^-28 mm.
        Straight far = new Straight(Vector2D.of(0x1p20, 0), Vector2D.ZERO);
        return Stream.of(
                limit(
                        "start x is",
                        () -> new Straight(Vector2D.of(large, large), Vector2D.ZERO),
                        () -> new Straight(Vector2D.of(larger, 0), Vector2D.ZERO)),
                limit(
                        "end y is",
                        () -> new Straight(Vector2D.ZERO, Vector2D.of(-large, -large)),
                        () -> new Straight(Vector2D.ZERO, Vector2D.of(0, -larger))),
                limit(
                        "radius is",
                        () -> new Arc(Vector2D.ZERO, large, 0, 1),
                        () -> new Arc(Vector2D.ZERO, larger, 0, 1)),
                limit(
                        "straight is a single point",
                        () -> new Straight(Vector2D.ZERO, Vector2D.of(Math.nextUp(1e-100), 0)),
                        () -> new Straight(Vector2D.ZERO, Vector2D.of(1e-100, 0))),
                limit("parameter is -4.9E-324", () -> LINE.at(0), () -> LINE.at(-Double.MIN_VALUE)),
                limit("parameter is " + past, () -> CUBIC.at(1), () -> CUBIC.at(past)),
                limit("parameter is -0.1", () -> CUBIC.between(0, 0.5), () -> CUBIC.between(-0.1, 0.5)),
                limit("parameter is 1.5", () -> ARC.between(0.5, 1), () -> ARC.between(0.5, 1.5)),
                limit("the first must not exceed", () -> LINE.between(0.2, 0.8), () -> LINE.between(0.8, 0.2)),
                limit(
                        "the first must be less",
                        () -> LINE.between(0.5, Math.nextUp(0.5)),
                        () -> LINE.between(0.5, 0.5)),
                limit(
                        "the first must not exceed",
                        () -> LINE.length(0.5, 0.5, 1e-9),
                        () -> LINE.length(Math.nextUp(0.5), 0.5, 1e-9)),
                limit(
                        "tolerance is",
                        () -> Inside.of(RING, Vector2D.ZERO, 1e-12),
                        () -> Inside.of(RING, Vector2D.ZERO, Math.nextDown(1e-12))),
                limit(
                        "tolerance is",
                        () -> Inside.of(RING, Vector2D.ZERO, large),
                        () -> Inside.of(RING, Vector2D.ZERO, larger)),
                limit(
                        "are rounded too coarsely",
                        () -> Meets.of(far, LINE, 0x1p-28),
                        () -> Meets.of(far, LINE, Math.nextDown(0x1p-28))),
                limit("tolerance is 0.0;", () -> Meets.of(LINE, LINE, 1e-9), () -> Meets.of(LINE, LINE, 0)),
                limit("accuracy is 0.0", () -> CUBIC.length(1e-9), () -> CUBIC.length(0)),
                limit("accuracy is -1.0", () -> LINE.length(0, 1, 1e-9), () -> LINE.length(0, 1, -1)),
                limit("length is", () -> LINE.parameterAt(100.5, 0.5), () -> LINE.parameterAt(Math.nextUp(100.5), 0.5)),
                limit("length is", () -> LINE.parameterAt(-0.5, 0.5), () -> LINE.parameterAt(Math.nextDown(-0.5), 0.5)),
                limit(
                        "changes lengths or angles",
                        () -> LINE.transformed(stretched(1 + 4.9e-10, 1 - 4.9e-10)),
                        () -> LINE.transformed(stretched(1 + 5.1e-10, 1))),
                limit(
                        "changes lengths or angles",
                        () -> LINE.transformed(stretched(1, -1)),
                        () -> LINE.transformed(stretched(1, -1 - 5.1e-10))),
                limit(
                        "changes lengths or angles",
                        () -> LINE.transformed(sheared(9.9e-10)),
                        () -> LINE.transformed(sheared(1.01e-9))),
                limit(
                        "direction x is NaN",
                        () -> CUBIC.extrema(Vector2D.of(1, 0)),
                        () -> CUBIC.extrema(Vector2D.of(Double.NaN, 0))),
                limit(
                        "direction is (0, 0)",
                        () -> CUBIC.extrema(Vector2D.of(0, -1e-300)),
                        () -> CUBIC.extrema(Vector2D.ZERO)),
                limit(
                        "point y is Infinity",
                        () -> Nearest.of(RING, Vector2D.of(0, large)),
                        () -> Nearest.of(RING, Vector2D.of(0, Double.POSITIVE_INFINITY))),
                limit(
                        "path is open",
                        () -> Inside.windingNumber(RING, Vector2D.ZERO),
                        () -> Inside.windingNumber(CurvePath.of(LINE), Vector2D.of(0, 5))));
    }

    @ParameterizedTest
    @MethodSource("limits")
    void theLimitIsAcceptedAndTheNextNumberRefused(String refusal, ThrowingCallable within, ThrowingCallable beyond) {
        assertThatCode(within).doesNotThrowAnyException();
        assertThatIllegalArgumentException().isThrownBy(beyond).withMessageContaining(refusal);
    }

    /** The relative bound of rounding that the accuracy is judged by is printed, and is accepted itself. */
    @Test
    void theReachableAccuracyIsItselfAccepted() {
        double reachable = 0x1p-46 * (50 + 40 + 50);
        assertThatCode(() -> CUBIC.length(reachable)).doesNotThrowAnyException();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CUBIC.length(Math.nextDown(reachable)))
                .withMessageContaining("rounding limits this curve to " + reachable);
    }

    private static final Vector2D NOWHERE = Vector2D.of(0, Double.NaN);

    static Stream<Arguments> unnamed() {
        Vector2D a = Vector2D.ZERO;
        Vector2D b = Vector2D.of(10, 0);
        Vector2D c = Vector2D.of(10, 10);
        return Stream.of(
                refused("start y is NaN", () -> new Straight(NOWHERE, a)),
                refused("end y is NaN", () -> new Straight(a, NOWHERE)),
                refused("start y is NaN", () -> new Cubic(NOWHERE, a, b, c)),
                refused("start handle y is NaN", () -> new Cubic(a, NOWHERE, b, c)),
                refused("end handle y is NaN", () -> new Cubic(a, b, NOWHERE, c)),
                refused("end y is NaN", () -> new Cubic(a, b, c, NOWHERE)),
                refused("start y is NaN", () -> Cubic.quadratic(NOWHERE, b, c)),
                refused("handle y is NaN", () -> Cubic.quadratic(a, NOWHERE, c)),
                refused("end y is NaN", () -> Cubic.quadratic(a, b, NOWHERE)),
                refused("start y is NaN", () -> Arc.through(NOWHERE, b, c)),
                refused("on y is NaN", () -> Arc.through(a, NOWHERE, c)),
                refused("end y is NaN", () -> Arc.through(a, b, NOWHERE)),
                refused("lie on one line", () -> Arc.through(a, b, Vector2D.of(20, 1e-14))),
                refused("centre y is NaN", () -> Arc.around(NOWHERE, b, c, true)),
                refused("start y is NaN", () -> Arc.around(a, NOWHERE, c, true)),
                refused("end y is NaN", () -> Arc.around(a, b, NOWHERE, true)),
                refused("start y is NaN", () -> Arc.chordAndSagitta(NOWHERE, b, 1)),
                refused("end y is NaN", () -> Arc.chordAndSagitta(a, NOWHERE, 1)),
                refused("chord is a single point", () -> Arc.chordAndSagitta(a, a, 1)),
                refused("sagitta is 9.0E-12", () -> Arc.chordAndSagitta(a, b, 9e-12)),
                refused("sweep is NaN", () -> new Arc(a, 10, 0, Double.NaN)),
                refused("arc is a single point", () -> new Arc(a, 1e-60, 0, 1e-60)),
                refused("from is -1.0 mm", () -> CurvePath.of(LINE).between(-1, 50)),
                refused("to is 101.0 mm", () -> CurvePath.of(LINE).between(1, 101)),
                refused("length is 101.0 mm", () -> CurvePath.of(LINE).tangentBefore(101)));
    }

    private static Arguments refused(String message, ThrowingCallable request) {
        return Arguments.of(message, request);
    }

    /** Every argument that is none is called by its own name. */
    @ParameterizedTest
    @MethodSource("unnamed")
    void whatIsRefusedIsNamed(String message, ThrowingCallable request) {
        assertThatIllegalArgumentException().isThrownBy(request).withMessageContaining(message);
    }
}
