package org.draftingmaths.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import org.draftingmaths.unit.Length;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.api.Test;

class MeasurementsTest {

    private static final Measurements FIGURE = Measurements.of("size 38", Wearer.ADULT)
            .with(Measure.BUST, Length.cm(88))
            .with(Measure.WAIST, Length.cm(72))
            .with(Measure.HIP, Length.cm(97));

    private static final ProportionRule FIXED_NECK =
            new ProportionRule("fixed neck", Measure.NECK, Map.of(), Length.mm(360), "made up for this test");

    @Test
    void with_givesAMeasuredValueAndLeavesTheFirstSetAlone() {
        Measurements more = FIGURE.with(Measure.NECK, Length.cm(37));
        assertThat(more.length(Measure.NECK)).isEqualTo(Length.mm(370));
        assertThat(more.mm(Measure.BUST)).isEqualTo(880);
        assertThat(more.provenance(Measure.NECK)).isEqualTo(Provenance.MEASURED);
        assertThat(more.wearer()).isEqualTo(Wearer.ADULT);
        assertThat(FIGURE.has(Measure.NECK)).isFalse();
    }

    @Test
    void equality_isOfNameWearerAndValues() {
        Measurements inAnotherOrder = Measurements.of("size 38", Wearer.ADULT)
                .with(Measure.HIP, Length.mm(970))
                .with(Measure.WAIST, Length.mm(720))
                .with(Measure.BUST, Length.mm(880));
        assertThat(inAnotherOrder).isEqualTo(FIGURE).hasSameHashCodeAs(FIGURE).hasToString(FIGURE.toString());
        assertThat(FIGURE.with(Measure.BUST, Length.mm(881))).isNotEqualTo(FIGURE);
    }

    @Test
    void entries_cannotBeChangedFromOutside() {
        EnumMap<Measure, Measurements.Entry> mine = new EnumMap<>(FIGURE.entries());
        Measurements copy = new Measurements("size 38", Wearer.ADULT, mine);
        mine.clear();
        assertThat(copy).isEqualTo(FIGURE);
        assertThatThrownBy(() -> copy.entries().clear()).isInstanceOf(RuntimeException.class);
        assertThat(copy).isEqualTo(FIGURE);
    }

    @Test
    void with_implausibleLength_isRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FIGURE.with(Measure.BUST, Length.mm(92)))
                .withMessage("A bust of 92 mm is not plausible: accepted is 600 mm to 1800 mm");
    }

    @Test
    void length_missing_isRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FIGURE.length(Measure.NECK))
                .withMessage("The measurements of [size 38] lack: neck");
        assertThatIllegalArgumentException().isThrownBy(() -> FIGURE.provenance(Measure.NECK));
    }

    @Test
    void require_namesAllThatIsMissing() {
        assertThat(FIGURE.require(EnumSet.of(Measure.BUST, Measure.HIP))).isSameAs(FIGURE);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FIGURE.require(Measure.TORSO_BLOCK))
                .withMessage("The measurements of [size 38] lack: neck, back waist length, front waist length, "
                        + "waist to hip, armhole depth, shoulder length, back width, chest width, "
                        + "neck point to apex, apex to apex, bust dart");
    }

    @Test
    void filledBy_marksWhatItFillsAndWithWhichRule() {
        Measurements filled = FIGURE.filledBy(List.of(FIXED_NECK));
        assertThat(filled.length(Measure.NECK)).isEqualTo(Length.mm(360));
        assertThat(filled.provenance(Measure.NECK)).isEqualTo(new Provenance.Proportioned("fixed neck"));
        assertThat(filled.provenance(Measure.NECK).text()).isEqualTo("proportioned (fixed neck)");
        assertThat(filled.provenance(Measure.BUST).text()).isEqualTo("measured");
    }

    @Test
    void filledBy_neverReplacesAGivenValue() {
        Measurements given = FIGURE.with(Measure.NECK, Length.mm(401));
        assertThat(given.filledBy(List.of(FIXED_NECK))).isEqualTo(given);
    }

    @Test
    void filledBy_takesTheFirstRuleThatCanBeWorked() {
        ProportionRule fromHeight = new ProportionRule(
                "from height", Measure.NECK, Map.of(Measure.HEIGHT, 0.2), Length.ZERO, "made up for this test");
        List<ProportionRule> rules = List.of(fromHeight, FIXED_NECK);
        assertThat(FIGURE.filledBy(rules).mm(Measure.NECK)).isEqualTo(360);
        assertThat(FIGURE.with(Measure.HEIGHT, Length.mm(1700)).filledBy(rules).mm(Measure.NECK))
                .isEqualTo(340);
    }

    @Test
    void filledBy_mayStandOnWhatEarlierRulesFilled_butNotOnLaterOnes() {
        ProportionRule fromNeck = new ProportionRule(
                "from neck", Measure.SHOULDER_LENGTH, Map.of(Measure.NECK, 0.5), Length.ZERO, "made up for this test");
        assertThat(FIGURE.filledBy(List.of(FIXED_NECK, fromNeck)).mm(Measure.SHOULDER_LENGTH))
                .isEqualTo(180);
        assertThat(FIGURE.filledBy(List.of(fromNeck, FIXED_NECK)).has(Measure.SHOULDER_LENGTH))
                .isFalse();
    }

    @Test
    void filledBy_implausibleResult_namesTheRule() {
        ProportionRule wild = new ProportionRule(
                "wild", Measure.NECK, Map.of(Measure.BUST, 2.0), Length.ZERO, "made up for this test");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FIGURE.filledBy(List.of(wild)))
                .withMessage("The rule [wild] fails for [size 38]: "
                        + "A neck of 1760 mm is not plausible: accepted is 260 mm to 650 mm");
    }

    @Test
    void listing_marksWhatWasProportioned() {
        Measurements filled = FIGURE.with(Measure.WAIST_TO_HIP, Length.cm(20.6)).filledBy(List.of(FIXED_NECK));
        assertThat(filled.listing(Steps.DEFAULT)).isEqualTo("""
                size 38, wearer: adult
                bust         34 5/8 in (88.0 cm)   measured
                waist        28 3/8 in (72.0 cm)   measured
                hip          38 1/4 in (97.0 cm)   measured
                neck         14 1/8 in (36.0 cm)   proportioned (fixed neck)
                waist to hip 8 1/8 in (20.6 cm)    measured
                """);
    }

    @Test
    void listing_ofNothing_isTheHeading() {
        assertThat(Measurements.of("empty", Wearer.NOT_DECLARED).listing(Steps.DEFAULT))
                .isEqualTo("empty, wearer: not declared\n");
    }
}
