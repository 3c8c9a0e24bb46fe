package org.draftingmaths.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.draftingmaths.unit.PairCheck.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PairCheckTest {

    @ParameterizedTest
    @CsvSource({
        "5/8 in,   1.5 cm, NOMINAL,     0.875",
        "2 3/8 in, 5.5 cm, CONTRADICTS, 5.325",
        "5/8 in,   1.6 cm, AGREES,      -0.125",
        "2 5/8 in, 6.7 cm, AGREES,      -0.325",
        "2 5/8 in, 67 mm,  AGREES,      -0.325",
        "1 in,     2.5 cm, AGREES,      0.4",
        "4 in,     10 cm,  NOMINAL,     1.6",
        "1/4 in,   6 mm,   AGREES,      0.35",
        "1/4 in,   1 cm,   CONTRADICTS, -3.65"
    })
    void check_atEighthsAndMillimetres(String inches, String metric, Verdict verdict, double difference) {
        PairCheck check = PairCheck.check(inches, metric, Steps.DEFAULT);
        assertThat(check.verdict()).isEqualTo(verdict);
        assertThat(check.difference()).isEqualTo(Length.mm(difference));
    }

    /** Limits at 1/8 in and 0.1 cm: 3.175/2 + 1/2 = 2.0875 mm and 3.175/4 = 0.79375 mm, both closed. */
    @ParameterizedTest
    @CsvSource({
        "100.79375,  100, AGREES",
        "100.793751, 100, NOMINAL",
        "102.0875,   100, NOMINAL",
        "102.087501, 100, CONTRADICTS",
        "97.9125,    100, NOMINAL",
        "97.912499,  100, CONTRADICTS"
    })
    void check_atTheLimits_isClosed(double inchMm, double metricMm, Verdict verdict) {
        assertThat(PairCheck.check(Length.mm(inchMm), Length.mm(metricMm), Steps.DEFAULT)
                        .verdict())
                .isEqualTo(verdict);
    }

    /** At 1/16 in and 0.5 cm the centimetre step is the coarser: limits 3.29375 mm and 1.25 mm. */
    @ParameterizedTest
    @CsvSource({"101.25, AGREES", "101.26, NOMINAL", "103.29375, NOMINAL", "103.3, CONTRADICTS"})
    void check_coarserCentimetreStep_setsTheQuarter(double inchMm, Verdict verdict) {
        assertThat(PairCheck.check(Length.mm(inchMm), Length.mm(100), new Steps(16, 0.5))
                        .verdict())
                .isEqualTo(verdict);
    }

    @Test
    void sentence_givesBothTrueValues() {
        assertThat(PairCheck.check("5/8 in", "1.5 cm", Steps.DEFAULT).sentence())
                .isEqualTo("5/8 in is 15.875 mm and 1.5 cm is 15 mm, 0.875 mm apart: "
                        + "nominal, one length could have been rounded to both, but neither converts into the other.");
        assertThat(PairCheck.check("2 3/8 in", "5.5 cm", Steps.DEFAULT).sentence())
                .isEqualTo("2 3/8 in is 60.325 mm and 5.5 cm is 55 mm, 5.325 mm apart: "
                        + "they contradict each other, no length rounds to both.");
        assertThat(PairCheck.check("1.28 in", "32.5 mm", Steps.DEFAULT).sentence())
                .isEqualTo("1.28 in is 32.512 mm and 3.25 cm is 32.5 mm, 0.012 mm apart: "
                        + "they agree within a quarter of the coarser step.");
    }

    @Test
    void check_valuesInTheWrongSystem_areRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PairCheck.check("1.5 cm", "5/8 in", Steps.DEFAULT))
                .withMessageContaining("[1.5 cm]")
                .withMessageContaining("an inch value was expected here");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PairCheck.check("5/8 in", "5/8 in", Steps.DEFAULT))
                .withMessageContaining("a value in cm or mm was expected here");
    }
}
