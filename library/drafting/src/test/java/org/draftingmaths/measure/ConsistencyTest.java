package org.draftingmaths.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.unit.Length;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConsistencyTest {

    private static Measurements girths(double bust, double waist, double hip) {
        return Measurements.of("test", Wearer.ADULT)
                .with(Measure.BUST, Length.mm(bust))
                .with(Measure.WAIST, Length.mm(waist))
                .with(Measure.HIP, Length.mm(hip));
    }

    /** The complete set printed with the bodice block for bust 88 cm, angelfire.com/empire/radhika/Cool/Patterns.htm. */
    @Test
    void publishedFigure_isConsistent() {
        Measurements figure = girths(880, 720, 970)
                .with(Measure.BACK_WAIST_LENGTH, Length.mm(400))
                .with(Measure.WAIST_TO_HIP, Length.mm(206))
                .with(Measure.ARMHOLE_DEPTH, Length.mm(210))
                .with(Measure.BACK_WIDTH, Length.mm(344))
                .with(Measure.CHEST_WIDTH, Length.mm(324))
                .filledBy(ProportionRules.TORSO);
        assertThat(Consistency.check(figure)).isEmpty();
    }

    /** Smallest and largest of the US and German charts: misses 6, women 50, German sizes 34 and 48. */
    @ParameterizedTest
    @CsvSource({"774.7, 584.2, 825.5", "1371.6, 1244.6, 1422.4", "800, 640, 910", "1080, 920, 1110"})
    void sizesOfCharts_proportioned_areConsistent(double bust, double waist, double hip) {
        assertThat(Consistency.check(girths(bust, waist, hip).filledBy(ProportionRules.TORSO)))
                .isEmpty();
    }

    @Test
    void exchangedColumns_areFound() {
        // The waist's and the hip's columns exchanged.
        Measurements figure = girths(880, 970, 720);
        assertThat(Consistency.check(figure))
                .containsExactly(new Finding(
                        Finding.Kind.MEASURES_UNLIKELY,
                        "measurements 'test', hip beside waist",
                        Quantity.LENGTH,
                        720,
                        770,
                        0));
        assertThat(Consistency.check(figure).get(0).sentence(Steps.DEFAULT))
                .isEqualTo("measurements 'test', hip beside waist: the measures hardly belong to one body; "
                        + "measured 28 3/8 in (72.0 cm), expected 30 3/8 in (77.0 cm), off by -50.00 mm, "
                        + "tolerance 0.00 mm.");
    }

    @Test
    void limits_areIncluded() {
        assertThat(Consistency.check(girths(900, 1100, 1000))).isEmpty();
        assertThat(Consistency.check(girths(900, 1100.5, 1000)))
                .extracting(Finding::where, Finding::expected)
                .containsExactly(
                        org.assertj.core.api.Assertions.tuple("measurements 'test', waist beside bust", 1100.0));
    }

    @Test
    void eachPair_isCompared() {
        Measurements odd = girths(1000, 1250, 1650)
                .with(Measure.UNDER_BUST, Length.mm(1001))
                .with(Measure.CHEST_WIDTH, Length.mm(300))
                .with(Measure.BACK_WIDTH, Length.mm(421))
                .with(Measure.APEX_TO_APEX, Length.mm(281))
                .with(Measure.BACK_WAIST_LENGTH, Length.mm(400))
                .with(Measure.FRONT_WAIST_LENGTH, Length.mm(359))
                .with(Measure.NECK_POINT_TO_APEX, Length.mm(300))
                .with(Measure.ARMHOLE_DEPTH, Length.mm(341))
                .with(Measure.ARM_LENGTH, Length.mm(500))
                .with(Measure.SHOULDER_TO_ELBOW, Length.mm(381))
                .with(Measure.ELBOW, Length.mm(200))
                .with(Measure.WRIST, Length.mm(191));
        List<Finding> findings = Consistency.check(odd);
        assertThat(findings)
                .extracting(finding -> finding.where().replace("measurements 'test', ", ""))
                .containsExactly(
                        "waist beside bust",
                        "hip beside bust",
                        "under-bust beside bust",
                        "back width beside chest width",
                        "apex to apex beside chest width",
                        "neck point to apex beside front waist length",
                        "armhole depth beside back waist length",
                        "front waist length beside back waist length",
                        "shoulder to elbow beside arm length",
                        "wrist beside elbow");
        assertThat(findings)
                .extracting(Finding::excess)
                .containsExactly(50.0, 200.0, 1.0, 1.0, 1.0, 1.0, 1.0, -1.0, 1.0, 1.0);
    }

    @Test
    void missingMeasures_arePassedOver() {
        assertThat(Consistency.check(Measurements.of("test", Wearer.ADULT).with(Measure.BUST, Length.mm(880))))
                .isEmpty();
    }
}
