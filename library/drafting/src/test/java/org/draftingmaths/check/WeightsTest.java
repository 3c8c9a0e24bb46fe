package org.draftingmaths.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Finding.Kind;
import org.draftingmaths.ledger.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WeightsTest {

    private static Finding finding(Kind kind, double off) {
        return new Finding(kind, "seam 'side'", Quantity.LENGTH, 300 + off, 300, 0.5);
    }

    /** 1/8 in is 3.175 mm. */
    @ParameterizedTest
    @CsvSource({
        "SEAM_LENGTHS_DIFFER, 3.1, SLIGHT",
        "SEAM_LENGTHS_DIFFER, -3.1, SLIGHT",
        "SEAM_LENGTHS_DIFFER, 3.2, FAULT",
        "SEAM_LENGTHS_DIFFER, -3.2, FAULT",
        "LEGS_UNEQUAL, 1, SLIGHT",
        "FOLD_NOT_SQUARE, 0.01, FAULT",
        "OUTLINE_CROSSES, 1, FAULT",
        "DART_WIDE, 40, TO_JUDGE",
        "FULLNESS_UNBOUNDED, 8, TO_JUDGE"
    })
    void aFindingIsWeighed(Kind kind, double off, Severity expected) {
        assertThat(Weights.COMMON.of(finding(kind, off))).isEqualTo(expected);
    }

    @Test
    void theLimitsAreOnesOwn() {
        Finding off = finding(Kind.SEAM_LENGTHS_DIFFER, 2);
        assertThat(Weights.COMMON.slight(1.5).of(off)).isEqualTo(Severity.FAULT);
        Finding line = finding(Kind.LINE_BREAKS, 2);
        assertThat(Weights.COMMON.of(line)).isEqualTo(Severity.FAULT);
        assertThat(Weights.COMMON.judging(Kind.LINE_BREAKS).of(line)).isEqualTo(Severity.TO_JUDGE);
        assertThat(Weights.COMMON.only(List.of(off, line), Severity.SLIGHT)).containsExactly(off);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Weights.COMMON.slight(-1))
                .withMessageContaining("-1.0 mm");
    }
}
