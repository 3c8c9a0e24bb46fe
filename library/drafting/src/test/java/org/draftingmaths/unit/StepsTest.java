package org.draftingmaths.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class StepsTest {

    @ParameterizedTest
    @CsvSource({
        // Round-half cases worked by hand from the rule: nearest eighth, half up.
        "2.0625,    2 1/8 in",
        "3.98214,   4 in",
        "0.64,      5/8 in",
        "1.28,      1 1/4 in",
        "1.04,      1 in",
        "2.142857,  2 1/8 in",
        "0,         0 in",
        "0.0624,    0 in",
        "0.0625,    1/8 in",
        "-0.0624,   0 in",
        "-0.0625,   -1/8 in",
        "-0.125,    -1/8 in",
        "-2.0625,   -2 1/8 in",
        "2.5,       2 1/2 in",
        "2.75,      2 3/4 in",
        "2.9375,    3 in"
    })
    void inches_toEighths(double inches, String text) {
        assertThat(Steps.DEFAULT.inches(Length.inches(inches))).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({
        "1,  2.5,     3 in",
        "2,  2.75,    3 in",
        "4,  2.62,    2 1/2 in",
        "16, 6.5651,  6 9/16 in",
        "32, 0.03125, 1/32 in",
        "64, 0.984375, 63/64 in",
        "64, 0.5,     1/2 in"
    })
    void inches_toOtherSteps(int fraction, double inches, String text) {
        assertThat(new Steps(fraction, 0.1).inches(Length.inches(inches))).isEqualTo(text);
    }

    /** 20.6375 mm is 6.5 eighths; as a binary number it lies just below, so binary rounding would give 3/4 in. */
    @Test
    void inches_tieInEighths_isDecidedInDecimal() {
        assertThat(Steps.DEFAULT.inches(Length.mm(20.6375))).isEqualTo("7/8 in");
        assertThat(Steps.DEFAULT.inches(Length.mm(20.637499999))).isEqualTo("3/4 in");
        assertThat(Steps.DEFAULT.inches(Length.mm(-20.6375))).isEqualTo("-7/8 in");
    }

    @Test
    void inches_everyTieInEighthsTo200Inches_goesUp() {
        for (int sixteenths = 1; sixteenths <= 3200; sixteenths += 2) {
            Length tie = Length.inches(sixteenths / 16.0);
            assertThat(Steps.DEFAULT.roundedInches(tie).inches())
                    .as("%d/16 in", sixteenths)
                    .isEqualTo((sixteenths + 1) / 16.0);
        }
    }

    /** 0.1 + 0.2 is not the double 0.3: noise of that size must not unmake a tie. */
    @Test
    void inches_tieWithNoiseInTheLastBit_isStillATie() {
        double justBelow = Math.nextDown(20.6375);
        assertThat(Steps.DEFAULT.inches(Length.mm(justBelow))).isEqualTo("7/8 in");
    }

    @ParameterizedTest
    @CsvSource({
        "66.675,  6.7 cm",
        "67,      6.7 cm",
        "66.5,    6.7 cm",
        "66.4999, 6.6 cm",
        "0.5,     0.1 cm",
        "-0.5,    -0.1 cm",
        "-0.4,    0.0 cm",
        "0,       0.0 cm",
        "70,      7.0 cm",
        "1005,    100.5 cm"
    })
    void cm_toMillimetres(double mm, String text) {
        assertThat(Steps.DEFAULT.cm(Length.mm(mm))).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({
        "0.5,   66.675, 6.5 cm",
        "0.5,   67.5,   7.0 cm",
        "0.25,  66.25,  6.75 cm",
        "1,     65,     7 cm",
        "10,    149.9,  10 cm",
        "10,    150,    20 cm",
        "0.001, 66.675, 6.668 cm"
    })
    void cm_toOtherSteps(double step, double mm, String text) {
        assertThat(new Steps(8, step).cm(Length.mm(mm))).isEqualTo(text);
    }

    @Test
    void both_roundsEachFromTheTrueLength() {
        // 66.675 mm is 2 5/8 in and 6.6675 cm. Rounding 2 5/8 in to 3 in first would give 7.6 cm.
        assertThat(Steps.DEFAULT.both(Length.mm(66.675))).isEqualTo("2 5/8 in (6.7 cm)");
        assertThat(new Steps(1, 0.1).both(Length.mm(66.675))).isEqualTo("3 in (6.7 cm)");
    }

    /** A million metres is no garment, but it prints all its digits; refusing it is for those who know the subject. */
    @Test
    void both_huge_printsAllDigits() {
        assertThat(Steps.DEFAULT.both(Length.mm(1e9))).isEqualTo("39370078 3/4 in (100000000.0 cm)");
    }

    @Test
    void rounded_isTheLengthThatIsPrinted() {
        assertThat(Steps.DEFAULT.roundedInches(Length.mm(66))).isEqualTo(Length.mm(66.675));
        assertThat(Steps.DEFAULT.roundedCm(Length.mm(66.675))).isEqualTo(Length.mm(67));
    }

    @Test
    void inches_everySixtyFourthTo200Inches_readsBackExactly() {
        Steps finest = new Steps(64, 0.1);
        for (int ticks = 0; ticks <= 200 * 64; ticks++) {
            Length length = Length.inches(ticks / 64.0);
            assertThat(Length.parse(finest.inches(length)))
                    .as("%d/64 in", ticks)
                    .isEqualTo(length);
            assertThat(length.inches()).as("%d/64 in", ticks).isEqualTo(ticks / 64.0);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {0, -8, 3, 12, 128, Integer.MIN_VALUE})
    void inchFraction_notAPowerOfTwoTo64_isRefused(int fraction) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Steps(fraction, 0.1))
                .withMessage("The inch fraction must be one of 1, 2, 4, 8, 16, 32, 64, but was " + fraction);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.1, Double.NaN, Double.POSITIVE_INFINITY, 100.5, 0.0005, 0.12345, 1 / 3.0})
    void cmStep_outOfRangeOrWithManyDecimals_isRefused(double step) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Steps(8, step))
                .withMessage("The cm step must be from 0.001 to 100 with at most three decimals, but was " + step);
    }
}
