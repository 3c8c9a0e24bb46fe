package org.draftingmaths.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.draftingmaths.unit.Length;
import org.junit.jupiter.api.Test;

class EaseTest {

    private static final Ease EASE = new Ease(Length.mm(80), Length.mm(48), Length.mm(40));

    @Test
    void finishedGirth_isBodyPlusEaseAtEachLevel() {
        Measurements body = Measurements.of("size 38", Wearer.ADULT)
                .with(Measure.BUST, Length.mm(880))
                .with(Measure.WAIST, Length.mm(720))
                .with(Measure.HIP, Length.mm(970));
        assertThat(EASE.finishedGirth(Ease.Level.BUST, body)).isEqualTo(Length.mm(960));
        assertThat(EASE.finishedGirth(Ease.Level.WAIST, body)).isEqualTo(Length.mm(768));
        assertThat(EASE.finishedGirth(Ease.Level.HIP, body)).isEqualTo(Length.mm(1010));
    }

    @Test
    void finishedGirth_withoutTheGirth_isRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> EASE.finishedGirth(Ease.Level.HIP, Measurements.of("empty", Wearer.ADULT)))
                .withMessage("The measurements of [empty] lack: hip");
    }

    @Test
    void ease_mayBeNegativeForStretch() {
        assertThat(new Ease(Length.mm(-300), Length.mm(-50), Length.ZERO).at(Ease.Level.WAIST))
                .isEqualTo(Length.mm(-50));
    }

    @Test
    void ease_implausible_namesTheLevel() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Ease(Length.mm(60), Length.mm(1001), Length.mm(40)))
                .withMessage("An ease of 1001 mm at the waist is not plausible: accepted is -300 mm to 1000 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Ease(Length.mm(-301), Length.ZERO, Length.ZERO))
                .withMessageContaining("at the bust");
    }
}
