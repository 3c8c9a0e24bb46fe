package org.draftingmaths.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Arrays;
import java.util.Locale;
import org.draftingmaths.unit.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class MeasureTest {

    @Test
    void definition_saysFromToAndHow() {
        assertThat(Measure.BACK_WAIST_LENGTH.definition())
                .isEqualTo("Back waist length: along the body from nape to waist level, "
                        + "down the middle of the back, following the spine.");
        assertThat(Measure.BUST.definition())
                .isEqualTo("Bust: round the figure at the bust level, "
                        + "over the apexes and level across the back, the arms hanging.");
        assertThat(Measure.APEX_TO_APEX.definition()).isEqualTo("Apex to apex: straight from apex to other apex.");
    }

    @ParameterizedTest
    @EnumSource(Measure.class)
    void everyMeasure_isDefined(Measure measure) {
        assertThat(measure.from() == measure.to())
                .as("a girth begins and ends at one line, and nothing else does")
                .isEqualTo(measure.path() == Measure.Path.ROUND);
        assertThat(measure.from().description()).isNotBlank();
        assertThat(measure.range().basis()).isNotBlank();
        assertThat(measure.range().least()).isGreaterThan(Length.ZERO);
    }

    @Test
    void labels_areDistinct() {
        assertThat(Arrays.stream(Measure.values()).map(Measure::label)).doesNotHaveDuplicates();
    }

    /** A Turkish small i has no dot when it comes from I: names must not depend on that. */
    @Test
    void named_findsLabelsInAnyCaseAndLocale() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr-TR"));
            assertThat(Measure.named(" WAIST TO HIP ")).isEqualTo(Measure.WAIST_TO_HIP);
            assertThat(Measure.named("bust")).isEqualTo(Measure.BUST);
            assertThat(Measure.WAIST_TO_HIP.definition()).startsWith("Waist to hip: ");
            assertThat(Landmark.HIP_LEVEL.label()).isEqualTo("hip level");
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void named_unknown_listsAllNames() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Measure.named("bustline"))
                .withMessageStartingWith(
                        "There is no measure [bustline]; there are: height, bust, under-bust, waist, hip, ")
                .withMessageEndingWith("shoulder to elbow");
    }

    @ParameterizedTest
    @CsvSource({
        "BUST, 92, A bust of 92 mm is not plausible: accepted is 600 mm to 1800 mm",
        "BUST, 9200, A bust of 9200 mm is not plausible: accepted is 600 mm to 1800 mm",
        "BUST, -920, A bust of -920 mm is not plausible: accepted is 600 mm to 1800 mm",
        "HIP, 1e9, A hip of 1000000000 mm is not plausible: accepted is 600 mm to 1900 mm",
        "NECK_POINT_TO_APEX, 25.7, " + "A neck point to apex of 25.7 mm is not plausible: accepted is 150 mm to 480 mm"
    })
    void requirePlausible_slipOfUnitOrDigit_isRefused(Measure measure, double mm, String message) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> measure.requirePlausible(Length.mm(mm)))
                .withMessage(message);
    }

    @Test
    void requirePlausible_limits_areIncluded() {
        assertThat(Measure.BUST.requirePlausible(Length.mm(600))).isEqualTo(Length.mm(600));
        assertThat(Measure.BUST.requirePlausible(Length.mm(1800))).isEqualTo(Length.mm(1800));
        assertThatIllegalArgumentException().isThrownBy(() -> Measure.BUST.requirePlausible(Length.mm(599.999)));
        assertThatIllegalArgumentException().isThrownBy(() -> Measure.BUST.requirePlausible(Length.mm(1800.001)));
    }

    /** Figures that were published for women must pass. Sources stand with the ranges. */
    @ParameterizedTest
    @CsvSource({
        "BUST, 774.7",
        "BUST, 1371.6",
        "WAIST, 579",
        "WAIST, 1244.6",
        "HIP, 788",
        "HIP, 1422.4",
        "UNDER_BUST, 654",
        "NECK, 336.5",
        "NECK, 370",
        "BACK_WAIST_LENGTH, 368.3",
        "BACK_WAIST_LENGTH, 457.2",
        "WAIST_TO_HIP, 127",
        "WAIST_TO_HIP, 228.6",
        "ARMHOLE_DEPTH, 177.8",
        "ARMHOLE_DEPTH, 210",
        "SHOULDER_LENGTH, 107.95",
        "BACK_WIDTH, 344",
        "CHEST_WIDTH, 279.4",
        "NECK_POINT_TO_APEX, 241.3",
        "APEX_TO_APEX, 177.8",
        "BUST_DART, 70",
        "UPPER_ARM, 224",
        "UPPER_ARM, 403",
        "WRIST, 130",
        "WRIST, 182",
        "ARM_LENGTH, 584.2",
        "HEIGHT, 1472",
        "HEIGHT, 1829"
    })
    void requirePlausible_publishedFigures_pass(Measure measure, double mm) {
        assertThat(measure.requirePlausible(Length.mm(mm))).isEqualTo(Length.mm(mm));
    }

    @Test
    void range_upsideDown_isRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PlausibleRange(Length.mm(2), Length.mm(1), "common practice"))
                .withMessage("The least value of a range must not exceed the greatest, but was 2 mm > 1 mm");
    }
}
