package org.draftingmaths.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.api.Test;

class PrintedPairTest {

    /** 2 3/8 in are 60.325 mm, and 5.5 cm are 55. */
    @Test
    void unitsThatContradictAreFound() {
        List<Finding> found =
                Checks.printed(List.of(new PrintedPair("the strap", "2 3/8 in", "5.5 cm")), Steps.DEFAULT);
        assertThat(found).hasSize(1);
        assertThat(found.get(0).sentence(Steps.DEFAULT))
                .startsWith("the strap: the two units contradict each other")
                .contains("off by 5.33 mm", "tolerance 2.09 mm")
                .endsWith("2 3/8 in is 6.0 cm, 5.5 cm is 2 1/8 in: print both from the one true length.");
    }

    /** 5/8 in and 1.5 cm are two names for one allowance. */
    @Test
    void namesForOneLengthAreSilent() {
        assertThat(Checks.printed(
                        List.of(
                                new PrintedPair("allowance", "5/8 in", "1.5 cm"),
                                new PrintedPair("hem", "1 1/4 in", "3.2 cm")),
                        Steps.DEFAULT))
                .isEmpty();
    }

    @Test
    void aFigureFinerThanPromisedIsFound() {
        assertThat(Checks.printed(List.of(new PrintedPair("strap", "7/16 in", "1.1 cm")), Steps.DEFAULT))
                .extracting(Finding::kind)
                .containsExactly(Finding.Kind.UNITS_TOO_FINE);
        assertThat(Checks.printed(List.of(new PrintedPair("strap", "7/16 in", "1.1 cm")), new Steps(16, 0.1)))
                .isEmpty();
    }

    @Test
    void aFigureThatCannotBeReadIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () -> Checks.printed(List.of(new PrintedPair("strap", "1.1 cm", "7/16 in")), Steps.DEFAULT));
    }
}
