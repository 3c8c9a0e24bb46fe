package org.draftingmaths.dart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.draftingmaths.block.TorsoBlock;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.measure.Ease;
import org.draftingmaths.measure.Measure;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.measure.ProportionRules;
import org.draftingmaths.measure.Wearer;
import org.draftingmaths.piece.Girths;
import org.draftingmaths.piece.Panels;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Use;
import org.draftingmaths.unit.Length;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Darts left unsewn, and sewn again. */
class LeaveTest {

    private static final Piece FRONT = TorsoBlock.draft(
                    Measurements.of("figure", Wearer.ADULT)
                            .with(Measure.BUST, Length.cm(92))
                            .with(Measure.WAIST, Length.cm(74))
                            .with(Measure.HIP, Length.cm(98))
                            .filledBy(ProportionRules.TORSO),
                    Ease.CLOSE_FITTING)
            .draft()
            .piece("front");

    @ParameterizedTest
    @EnumSource(Use.Kind.class)
    void whatIsLeftIsSewnAgain(Use.Kind kind) {
        Reworked left = Darts.leave(FRONT, "bust dart", kind);
        assertThat(left.piece().opening("bust dart").mouth().use()).isEqualTo(new Use.Left(kind));
        assertThat(Panels.undo(left)).isEqualTo(FRONT);
        assertThat(left.ledger().sentences(Steps.DEFAULT).get(0)).startsWith("Leave 'bust dart' unsewn: ");
    }

    /** At its own level a double-pointed dart gives back all it took in; elsewhere nothing changes. */
    @Test
    void aMarkIsLeftAndMarkedAgain() {
        Reworked left = Darts.leave(FRONT, "waist dart", Use.Kind.FLARE);
        double intake = FRONT.insideDart("waist dart").intake();
        assertThat(Girths.closed(left.piece(), "waist line") - Girths.closed(FRONT, "waist line"))
                .isCloseTo(intake, org.assertj.core.api.Assertions.within(1e-6));
        assertThat(Girths.closed(left.piece(), "hip line")).isEqualTo(Girths.closed(FRONT, "hip line"));
        assertThat(left.piece().edges()).isEqualTo(FRONT.edges());
        assertThat(left.piece().insideDarts()).isEmpty();
        assertThat(Panels.undo(left)).isEqualTo(FRONT);
    }

    @Test
    void whatWasUsedOtherwiseSinceIsNotSewnAgain() {
        Reworked left = Darts.leave(FRONT, "bust dart", Use.Kind.EASE);
        Piece since = left.piece().using("bust dart", new Use.Left(Use.Kind.GATHERS));
        assertThatThrownBy(() -> Panels.undo(new Reworked(since, left.ledger())))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining("Undo the use of 'bust dart': the piece was changed since");
    }
}
