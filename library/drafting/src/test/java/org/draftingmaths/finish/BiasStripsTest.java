package org.draftingmaths.finish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.piece.Isometry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class BiasStripsTest {

    static Stream<Long> seeds() {
        return LongStream.range(0, 200).boxed();
    }

    /** Two marks on the selvage and the width between the 45 degree lines through them. */
    @Test
    void marksOnTheSelvage() {
        double step = BiasStrips.alongSelvage(30);
        Vector2D way = Vector2D.of(1, 1).normalize();
        assertThat(Math.abs(Vector2D.of(0, step).signedArea(way))).isCloseTo(30, within(1e-12));
        assertThat(BiasStrips.doubleBinding(12.7, 0)).isCloseTo(50.8, within(1e-12));
        assertThat(BiasStrips.doubleBinding(10, 3)).isEqualTo(43);
    }

    /** The trade's figures: a square of 40 cm yields about 5.3 m of strip 3 cm wide; a panel of 48 x 66 cm takes 80.6 cm of cloth. */
    @Test
    void tradeFigures() {
        assertThat(BiasStrips.most(400 * 400, 30)).isCloseTo(5333, within(1.0));
        assertThat(BiasStrips.clothFor(480, 660)).isCloseTo(806, within(0.5));
        // The box turned by 45 degrees, corner by corner.
        AffineTransformMatrix2D turn = AffineTransformMatrix2D.createRotation(Math.PI / 4);
        double width = turn.apply(Vector2D.of(480, 0)).getX()
                - turn.apply(Vector2D.of(0, 660)).getX();
        assertThat(BiasStrips.clothFor(480, 660)).isCloseTo(width, within(1e-9));
    }

    /** No layout passes area / width; each strip fits into its half of the square; the joined length is what is left after the joins. */
    @ParameterizedTest
    @MethodSource("seeds")
    void noYieldPassesTheArea(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double side = random.nextDouble(150, 1000);
        double width = random.nextDouble(10, 80);
        double allowance = random.nextDouble(0, 8);
        BiasStrips.Yield yield = BiasStrips.fromSquare(side, width, allowance);
        double most = BiasStrips.most(side * side, width);
        assertThat(yield.joined()).as("seed %d", seed).isLessThanOrEqualTo(most + 1e-6);
        assertThat(yield.joins()).isEqualTo(yield.lengths().size() - 1);
        double area =
                yield.lengths().stream().mapToDouble(length -> length * width).sum();
        assertThat(area).isLessThanOrEqualTo(side * side + 1e-6);
        // What is left over is two corners, each less than one strip: triangles of height less than w, so less than w^2
        // each.
        assertThat(side * side - area).isLessThan(2 * width * width);
        assertThat(BiasStrips.square(most, width)).isCloseTo(side, within(1e-9));
    }

    /**
     * A join is proved by sewing it: two strips laid face to face, crossing at a right angle, sewn and opened out by reflection in the stitch line.
     * With the ends shifted by twice the allowance the edges run on; with the cut ends laid flush they do not.
     */
    @ParameterizedTest
    @ValueSource(doubles = {3, 6, 10})
    void stitchLinesMeetAndEdgesRunOn(double allowance) {
        assertThat(step(allowance, BiasStrips.endsShifted(allowance))).isLessThan(1e-9);
        assertThat(step(allowance, 0)).isCloseTo(allowance * Math.sqrt(2), within(1e-9));
    }

    /**
     * By how much the lower edge steps at the join. The one strip lies along x and to the left of its end, which is cut from (0, 0) in the
     * direction (1, 1); its lower edge is y = 0.
     */
    private static double step(double allowance, double shift) {
        Vector2D end = Vector2D.of(1, 1).normalize();
        Vector2D into = Vector2D.of(-1, 1).normalize();
        AffineTransformMatrix2D open = Isometry.reflection(into.multiply(allowance), end);
        // The other strip lies on it face to face, its end on the same line but shifted along it, and crosses it
        // upright.
        Vector2D corner = end.multiply(-shift);
        Vector2D edge = open.apply(corner);
        Vector2D further = open.apply(corner.add(Vector2D.of(0, 1)));
        assertThat(Math.abs(edge.getY() - further.getY()))
                .as("opened out it lies along")
                .isLessThan(1e-12);
        return Math.abs(edge.getY());
    }

    /** A join takes 2 a sqrt 2: the stitch line lies a inside each end, and the strip crosses both at 45 degrees. */
    @Test
    void whatAJoinTakes() {
        assertThat(BiasStrips.joinTakes(6)).isCloseTo(2 * 6 / Math.sin(Math.PI / 4), within(1e-12));
        BiasStrips.Yield none = BiasStrips.fromSquare(400, 30, 0);
        BiasStrips.Yield six = BiasStrips.fromSquare(400, 30, 6);
        assertThat(none.joined() - six.joined()).isCloseTo(six.joins() * 16.97, within(0.05));
    }

    @Test
    void badFiguresAreRefused() {
        for (double width : new double[] {0, -3, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> BiasStrips.alongSelvage(width)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> BiasStrips.most(100, width)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> BiasStrips.clothFor(width, 10)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> BiasStrips.fromSquare(300, width, 5)).isInstanceOf(IllegalArgumentException.class);
        }
        assertThatThrownBy(() -> BiasStrips.joinTakes(-1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> BiasStrips.endsShifted(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> BiasStrips.fromSquare(30, 40, 5))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("A square of 30.0 mm yields no strip of 40.0 mm; allowed are widths up to 21.2");
    }
}
