package org.draftingmaths.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Arc;
import org.draftingmaths.curve.Cubic;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ArcCubicsTest {

    private static final long SEED = 20_24;

    static Stream<Arc> arcs() {
        SplittableRandom random = new SplittableRandom(SEED);
        return Stream.generate(() -> new Arc(
                        Vector2D.of(random.nextDouble(-500, 500), random.nextDouble(-500, 500)),
                        Math.exp(random.nextDouble(Math.log(0.5), Math.log(20_000))),
                        random.nextDouble(-4, 4),
                        (random.nextBoolean() ? 1 : -1) * random.nextDouble(1e-3, 2 * Math.PI)))
                .limit(200);
    }

    /** The cubics run on from each other from end to end, and no point of them is further from the circle than 1e-4 mm. */
    @ParameterizedTest
    @MethodSource("arcs")
    void cubicsKeepToTheArc(Arc arc) {
        List<Cubic> cubics = ArcCubics.of(arc, 1e-4);
        assertThat(cubics.get(0).start().distance(arc.start())).isLessThan(1e-9 + 1e-13 * arc.radius());
        assertThat(cubics.get(cubics.size() - 1).end().distance(arc.end())).isLessThan(1e-9 + 1e-13 * arc.radius());
        for (int i = 0; i < cubics.size(); i++) {
            Cubic cubic = cubics.get(i);
            for (int j = 0; j <= 50; j++) {
                assertThat(cubic.at(j / 50.0).distance(arc.centre())).isCloseTo(arc.radius(), within(1e-4));
            }
            if (i > 0) {
                assertThat(cubic.start().distance(cubics.get(i - 1).end())).isLessThan(1e-9 + 1e-13 * arc.radius());
            }
        }
    }

    /** And they turn the arc's way, by its sweep: their middle lies on the arc's own middle. */
    @ParameterizedTest
    @MethodSource("arcs")
    void cubicsTurnAsTheArcDoes(Arc arc) {
        List<Cubic> cubics = ArcCubics.of(arc, 1e-4);
        for (int i = 0; i < cubics.size(); i++) {
            Vector2D middle = arc.at((i + 0.5) / cubics.size());
            assertThat(cubics.get(i).at(0.5).distance(middle)).isLessThan(1e-4);
        }
    }
}
