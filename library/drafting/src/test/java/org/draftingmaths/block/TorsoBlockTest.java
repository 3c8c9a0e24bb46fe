package org.draftingmaths.block;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.draftingmaths.check.Checks;
import org.draftingmaths.measure.Ease;
import org.draftingmaths.measure.Measure;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.measure.ProportionRules;
import org.draftingmaths.measure.Wearer;
import org.draftingmaths.piece.Girths;
import org.draftingmaths.unit.Length;
import org.junit.jupiter.api.Test;

class TorsoBlockTest {

    static Measurements body(double bust, double waist, double hip) {
        return Measurements.of("figure", Wearer.ADULT)
                .with(Measure.BUST, Length.mm(bust))
                .with(Measure.WAIST, Length.mm(waist))
                .with(Measure.HIP, Length.mm(hip))
                .filledBy(ProportionRules.TORSO);
    }

    @Test
    void closedGirthsAreBodyPlusEase() {
        Block block = TorsoBlock.draft(body(880, 720, 970), Ease.CLOSE_FITTING);
        assertThat(Checks.all(block.draft(), 0.1)).isEmpty();
        double bust = Girths.closed(block.draft().piece("front"), "bust line")
                + Girths.closed(block.draft().piece("back"), "bust line");
        assertThat(2 * bust).isCloseTo(940, within(0.5));
    }
}
