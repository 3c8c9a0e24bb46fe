package org.draftingmaths.fullness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.draftingmaths.check.Checks;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class TiersTest {

    static Stream<Long> seeds() {
        return LongStream.range(0, 200).boxed();
    }

    /** Each strip is its ratio times the one above; every seam walks with its gathers, quarter by quarter; areas add up. */
    @ParameterizedTest
    @MethodSource("seeds")
    void theChainHoldsTierByTier(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double top = random.nextDouble(500, 1200);
        List<Tiers.Tier> tiers = new ArrayList<>();
        int count = random.nextInt(1, 6);
        for (int i = 0; i < count; i++) {
            tiers.add(new Tiers.Tier(random.nextDouble(80, 300), random.nextDouble(1, 2.5)));
        }
        Drafted drafted = Tiers.draft("tier", top, tiers);
        double above = top;
        double area = 0;
        double down = 0;
        for (int i = 0; i < count; i++) {
            Piece strip = drafted.draft().pieces().get(i);
            double length = Lengths.drawn(strip, "top");
            assertThat(length / above).isCloseTo(tiers.get(i).ratio(), within(1e-12));
            assertThat(Lengths.drawn(strip, "bottom")).isCloseTo(length, within(1e-9));
            assertThat(Lengths.drawn(strip, "end")).isCloseTo(tiers.get(i).depth(), within(1e-9));
            area += strip.area();
            down += tiers.get(i).depth();
            assertThat(drafted.budget().edges().get(strip.name())).isCloseTo(length - top, within(1e-9));
            above = length;
        }
        assertThat(drafted.budget().area()).isCloseTo(area - top * down, within(1e-9 * area));
        assertThat(Checks.all(drafted.draft(), 1e-6)).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void backwardsIsTheInverse(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double top = random.nextDouble(500, 1200);
        int count = random.nextInt(1, 6);
        double ratio = random.nextDouble(1, 2.5);
        List<Tiers.Link> chain = Tiers.chain(top, Tiers.even(900, count, ratio));
        double hem = chain.get(count - 1).length();
        assertThat(Tiers.ratioForHem(top, count, hem).value()).isCloseTo(ratio, within(1e-9));
    }

    @Test
    void itIsTold() {
        Drafted skirt = Tiers.draft("tier", 720, Tiers.even(600, 2, 1.5));
        assertThat(skirt.ledger().sentences(Steps.DEFAULT))
                .startsWith(
                        "Tier 1, 11 3/4 in (30.0 cm) deep: 42 1/2 in (108.0 cm) gathered to 28 3/8 in (72.0 cm), ratio 1.50.",
                        "Tier 2, 11 3/4 in (30.0 cm) deep: 63 3/4 in (162.0 cm) gathered to 42 1/2 in (108.0 cm), ratio"
                                + " 1.50.");
    }

    @Test
    void badInputIsRefused() {
        assertThatThrownBy(() -> new Tiers.Tier(100, 0.9)).hasMessage("The ratio of a tier is from 1 to 10: 0.9.");
        assertThatThrownBy(() -> new Tiers.Tier(0, 2)).hasMessage("The depth of a tier is more than 0 mm: 0.0 mm.");
        assertThatThrownBy(() -> Tiers.chain(720, List.of())).hasMessage("Tiers are from 1 to 30: 0.");
        assertThatThrownBy(() -> Tiers.chain(0, Tiers.even(600, 2, 2)))
                .hasMessage("The seam at the top of the tiers is more than 0 mm: 0.0 mm.");
        assertThat(Tiers.ratioForHem(720, 3, 700)).isInstanceOf(Answer.None.class);
        assertThat(Tiers.ratioForHem(720, 1, 7201)).isInstanceOf(Answer.None.class);
    }
}
