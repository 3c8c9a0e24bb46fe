package org.draftingmaths.fullness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.ledger.Reach;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.api.Test;

class AnswerTest {

    @Test
    void theOnlyAnswerIsTold() {
        Answer answer = new Answer.Unique("Length for a width of 140 cm", Quantity.LENGTH, 508);
        assertThat(answer.value()).isEqualTo(508);
        assertThat(answer.sentence(Steps.DEFAULT)).isEqualTo("Length for a width of 140 cm: 20 in (50.8 cm).");
    }

    @Test
    void noAnswerTellsWhatCanBeReached() {
        Answer bounded = new Answer.None("Turn", "the dart is no wider", new Reach(Quantity.ANGLE, 0.3, 0, 0.2));
        assertThat(bounded.sentence(Steps.DEFAULT))
                .isEqualTo("Turn: none, for the dart is no wider (asked 17.2°, possible 0.0° to 11.5°).");
        Answer endless =
                new Answer.None("Ratio", "it is tight", new Reach(Quantity.RATIO, 0.5, 1, Double.POSITIVE_INFINITY));
        assertThatThrownBy(endless::value)
                .isInstanceOf(DraftingException.class)
                .hasMessage("Ratio: it is tight (asked 0.50, possible 1.00 or more).");
    }

    @Test
    void ofSeveralOneIsTaken() {
        Answer answer = new Answer.Several(
                "Share", Quantity.RATIO, List.of(0.5, 1.25), 0, "the smaller is taken, for it needs less cloth");
        assertThat(answer.value()).isEqualTo(0.5);
        assertThat(answer.sentence(Steps.DEFAULT))
                .isEqualTo("Share: 0.50 or 1.25; the smaller is taken, for it needs less cloth.");
    }

    @Test
    void severalAreAtLeastTwoAndOneIsTaken() {
        assertThatThrownBy(() -> new Answer.Several("Share", Quantity.RATIO, List.of(1.0), 0, "rule"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("Several answers are two or more, one of them taken: [1.0], taken 0.");
        assertThatThrownBy(() -> new Answer.Several("Share", Quantity.RATIO, List.of(1.0, 2.0), 2, "rule"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("Several answers are two or more, one of them taken: [1.0, 2.0], taken 2.");
    }
}
