package org.draftingmaths.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SetLengthTest {

    static Stream<Long> seeds() {
        return LongStream.range(0, 500).boxed();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void hasTheLengthAndKeepsEndsAndDirections(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Cubic first = new Cubic(
                Vector2D.of(0, 0),
                Vector2D.of(random.nextDouble(20, 60), random.nextDouble(-40, 40)),
                Vector2D.of(random.nextDouble(60, 90), random.nextDouble(-40, 40)),
                Vector2D.of(100, 10));
        Straight second = new Straight(Vector2D.of(100, 10), Vector2D.of(130, 30));
        CurvePath path = CurvePath.of(first, second);
        double wanted = path.length() + random.nextDouble(-0.5, 8);
        CurvePath set;
        try {
            set = SetLength.of(path, wanted);
        } catch (IllegalArgumentException refused) {
            boolean tooShort = wanted < chords(path);
            boolean tooLong = wanted > fullest(first).length() + second.length();
            assertThat(tooShort || tooLong).as("seed %d", seed).isTrue();
            return;
        }
        assertThat(set.length()).as("seed %d", seed).isCloseTo(wanted, within(2e-9));
        assertThat(set.start()).isEqualTo(path.start());
        assertThat(set.end()).isEqualTo(path.end());
        assertThat(set.startTangent().distance(path.startTangent())).isLessThan(1e-9);
        assertThat(set.endTangent().distance(path.endTangent())).isLessThan(1e-9);
    }

    /** The cubic with its handles four times as long. */
    private static Cubic fullest(Cubic c) {
        return new Cubic(
                c.start(),
                c.start().add(c.start().vectorTo(c.startHandle()).multiply(4)),
                c.end().add(c.end().vectorTo(c.endHandle()).multiply(4)),
                c.end());
    }

    private static double chords(CurvePath path) {
        return path.curves().stream()
                .mapToDouble(curve -> curve.start().distance(curve.end()))
                .sum();
    }

    @Test
    void aStraightLineHasOnlyOneLength() {
        assertThatThrownBy(() -> SetLength.of(CurvePath.polyline(Vector2D.of(0, 0), Vector2D.of(100, 0)), 103))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(
                        "This line cannot be made 103.000 mm long with its ends and their directions kept: 100.000 to"
                                + " 100.000 mm is possible.");
    }
}
