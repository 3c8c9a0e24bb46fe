package org.draftingmaths.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\'',
            value = {
                "2 in        | 50.8",
                "2in         | 50.8",
                "2\"         | 50.8",
                "0 in        | 0",
                "5/8 in      | 15.875",
                "2 5/8 in    | 66.675",
                "2  5/8 in   | 66.675",
                "2-5/8\"     | 66.675",
                "2-5/8 in    | 66.675",
                "2\u215d in     | 66.675",
                "2 \u215d in    | 66.675",
                "2-\u215d\"     | 66.675",
                "\u00bd in      | 12.7",
                "1\u00bc in     | 31.75",
                "10\u00be\"     | 273.05",
                "\u215b in      | 3.175",
                "\u215c in      | 9.525",
                "\u215e in      | 22.225",
                "2 10/16 in  | 66.675",
                "2.625 in    | 66.675",
                "2.0625 in   | 52.3875",
                "1.28 in     | 32.512",
                "63/64 in    | 25.003125",
                "2/3 in      | 16.933333333333334",
                "6.7 cm      | 67",
                "67 mm       | 67",
                "0.05 mm     | 0.05",
                "007 mm      | 7",
                "12.25 cm    | 122.5"
            })
    void parse_acceptedForm_givesMillimetres(String text, double mm) {
        assertThat(Length.parse(text).mm()).isEqualTo(mm);
    }

    @Test
    void parse_spacesAround_areIgnored() {
        assertThat(Length.parse("  6.7 cm ")).isEqualTo(Length.mm(67));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1,5         | decimal comma",
                "1,5 cm      | decimal comma",
                "1,234 mm    | decimal comma",
                "2 38 in     | a mixed number needs a fraction, as in 2 3/8 in",
                "2-38 in     | a mixed number needs a fraction, as in 2 3/8 in",
                "-2 in       | without a sign",
                "-5/8 in     | without a sign",
                "+2 in       | without a sign",
                "\u22122 in  | without a sign",
                "NaN         | not a number with a unit",
                "NaN mm      | not a number with a unit",
                "Infinity mm | not a number with a unit",
                "1e9 mm      | an exponent",
                "67          | no unit",
                "5/8         | no unit",
                "2 5/8       | no unit",
                "1\u00bd        | no unit",
                "1\u00bd cm     | fractions are read in inches only",
                "1\u2154 in     | only halves, quarters and eighths are read",
                "1.5\u00bd in   | not a number with a unit",
                "6 1/2 cm    | fractions are read in inches only",
                ".5 in       | digits on both sides",
                "2. in       | digits on both sides",
                "9/8 in      | above zero and below one",
                "2 8/8 in    | above zero and below one",
                "0/8 in      | above zero and below one",
                "5/0 in      | denominator of a fraction must be from 2 to 64",
                "5/128 in    | denominator of a fraction must be from 2 to 64",
                "2 5/8 IN    | not a number with a unit",
                "2 inches    | not a number with a unit",
                "2 ft        | not a number with a unit",
                "2 - 5/8 in  | not a number with a unit",
                "2.5 5/8 in  | not a number with a unit",
                "2 5/8.5 in  | not a number with a unit",
                "\u0666 mm   | not a number with a unit",
                "2\u00a05/8 in | not a number with a unit",
                "6.7 cm 1 mm | not a number with a unit",
                "mm          | not a number with a unit"
            })
    void parse_anyOtherForm_saysWhatWasReadAndWhy(String text, String reason) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.parse(text))
                .withMessageStartingWith("Cannot read [" + text + "] as a length: ")
                .withMessageContaining(reason)
                .withMessageEndingWith(
                        "; accepted are forms like 2 in, 5/8 in, 2 5/8 in, 2-5/8\", 2.625 in, 6.7 cm, 67 mm");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "   "})
    void parse_blank_isRefused(String text) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.parse(text))
                .withMessageContaining("it is empty");
    }

    @Test
    void parse_tooLarge_isRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.parse("9".repeat(310) + " mm"))
                .withMessageContaining("it is too large");
    }

    @Test
    void parse_tooLong_isRefusedWithoutRepeatingAllOfIt() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.parse("1".repeat(5000) + " mm"))
                .withMessageContaining("more than 400 characters")
                .satisfies(refusal -> assertThat(refusal.getMessage()).hasSizeLessThan(250));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void factories_notFinite_areRefused(double value) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.mm(value))
                .withMessage("A length must be a finite number of millimetres, but was " + value);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.cm(value))
                .withMessage("A length must be a finite number of centimetres, but was " + value);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.inches(value))
                .withMessage("A length must be a finite number of inches, but was " + value);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.mm(1).times(value))
                .withMessage("A factor of a length must be finite, but was " + value);
    }

    @Test
    void factories_tooLargeForMillimetres_areRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> Length.inches(1e308));
        assertThatIllegalArgumentException().isThrownBy(() -> Length.cm(1e308));
    }

    @Test
    void factories_areExactInDecimal() {
        assertThat(Length.inches(0.8125)).isEqualTo(Length.mm(20.6375));
        assertThat(Length.inches(2.0625)).isEqualTo(Length.mm(52.3875));
        assertThat(Length.cm(6.7)).isEqualTo(Length.mm(67));
        assertThat(Length.cm(0.07)).isEqualTo(Length.mm(0.7));
        assertThat(Length.inches(-1)).isEqualTo(Length.mm(-25.4));
        assertThat(Length.mm(52.3875).inches()).isEqualTo(2.0625);
        assertThat(Length.mm(0.7).cm()).isEqualTo(0.07);
    }

    @Test
    void arithmetic_isOnTheFullValue() {
        Length a = Length.mm(67.25);
        Length b = Length.mm(70);
        assertThat(a.plus(b)).isEqualTo(Length.mm(137.25));
        assertThat(a.minus(b)).isEqualTo(Length.mm(-2.75));
        assertThat(a.minus(b).abs()).isEqualTo(Length.mm(2.75));
        assertThat(a.negated()).isEqualTo(Length.mm(-67.25));
        assertThat(a.times(-2)).isEqualTo(Length.mm(-134.5));
        assertThat(a).isLessThan(b);
        assertThat(a.minus(b)).isLessThan(Length.ZERO);
    }

    @Test
    void arithmetic_overflow_isRefused() {
        Length huge = Length.mm(1e308);
        assertThatIllegalArgumentException().isThrownBy(() -> huge.plus(huge));
        assertThatIllegalArgumentException().isThrownBy(() -> huge.negated().minus(huge));
        assertThatIllegalArgumentException().isThrownBy(() -> huge.times(2));
    }

    @Test
    void negativeZero_isZero() {
        assertThat(Length.mm(-0.0)).isEqualTo(Length.ZERO).hasToString("0 mm");
        assertThat(Length.ZERO.negated()).isEqualTo(Length.ZERO);
    }

    @ParameterizedTest
    @CsvSource({
        "67, 67 mm",
        "66.675, 66.675 mm",
        "0.1, 0.1 mm",
        "-3.175, -3.175 mm",
        "1e9, 1000000000 mm",
        "1e-7, 0.0000001 mm",
        "100, 100 mm",
        "0.30000000000000004, 0.30000000000000004 mm"
    })
    void toString_isPlainDigits(double mm, String text) {
        assertThat(Length.mm(mm)).hasToString(text);
    }

    @Test
    void toString_isReadBackToTheSameLength() {
        long seed = 20240611L;
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 20_000; i++) {
            double mm = Double.longBitsToDouble(random.nextLong() & Long.MAX_VALUE);
            if (Double.isFinite(mm)) {
                Length length = Length.mm(mm);
                assertThat(Length.parse(length.toString()))
                        .as("seed %d, draw %d", seed, i)
                        .isEqualTo(length);
            }
        }
    }

    @Test
    void toString_ofTheSmallestAndTheLargest_isReadBack() {
        assertThat(Length.parse(Length.mm(Double.MIN_VALUE).toString()).mm()).isEqualTo(Double.MIN_VALUE);
        assertThat(Length.parse(Length.mm(Double.MAX_VALUE).toString()).mm()).isEqualTo(Double.MAX_VALUE);
    }
}
