package org.draftingmaths.seam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.draftingmaths.check.Checks;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.piece.Beside;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Notch;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.api.Test;

class WalkTest {

    /** A panel 300 mm high whose right edge runs upwards. */
    private static Piece left() {
        return panel("left", 300).notched(new Notch("seam", 100, Beside.BEFORE));
    }

    private static Piece panel(String name, double height) {
        return Drawing.of(name)
                .from(0, 0)
                .edge("hem", Role.HEM)
                .line(120, 0)
                .edge("seam", Role.SEAM)
                .line(120, height)
                .edge("top", Role.SEAM)
                .line(0, height)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .piece();
    }

    private static Draft draft(Piece one, Piece other, Seam seam) {
        return new Draft("skirt", List.of(one, other), List.of(seam));
    }

    private static Seam flat() {
        return Seam.flat("side", Seam.Mate.of("left", "seam"), Seam.Mate.of("right", "seam"));
    }

    @Test
    void totalsMayAgreeWhereIntervalsDoNot() {
        Piece right = panel("right", 300).notched(new Notch("seam", 106, Beside.BEFORE));
        Walk walk = Walk.of(draft(left(), right, flat()), flat());

        assertThat(walk.difference()).isZero();
        assertThat(walk.intervals()).extracting(Walk.Interval::difference).containsExactly(-6.0, 6.0);
        assertThat(Checks.all(draft(left(), right, flat()), 0.5))
                .extracting(Finding::where)
                .containsExactly(
                        "seam 'side', 'seam' of 'left' on 'seam' of 'right', notch interval 1 of 2",
                        "seam 'side', 'seam' of 'left' on 'seam' of 'right', notch interval 2 of 2");
    }

    @Test
    void backwardsIsWalkedFromTheOtherEnd() {
        Piece right = panel("right", 300).notched(new Notch("seam", 200, Beside.BEFORE));
        Seam seam = Seam.flat("side", Seam.Mate.of("left", "seam"), Seam.Mate.backwards("right", "seam"));
        assertThat(Walk.of(draft(left(), right, seam), seam).intervals())
                .extracting(Walk.Interval::second)
                .containsExactly(100.0, 200.0);
    }

    @Test
    void declaredEaseIsNoFault() {
        Piece right = panel("right", 292).notched(new Notch("seam", 100, Beside.BEFORE));
        Seam eased = new Seam(
                "side",
                Seam.Mate.of("left", "seam"),
                Seam.Mate.of("right", "seam"),
                List.of(new Seam.Held(2, 8, Seam.How.EASE, "room over the hip")));
        assertThat(Checks.all(draft(left(), right, eased), 0.5)).isEmpty();
        assertThat(Checks.all(draft(left(), right, flat()), 0.5))
                .extracting(Finding::excess)
                .containsExactly(8.0);
    }

    @Test
    void notchWithoutPartnerIsFound() {
        assertThat(Checks.all(draft(left(), panel("right", 300), flat()), 0.5))
                .extracting(finding -> finding.sentence(Steps.DEFAULT))
                .containsExactly(
                        "seam 'side', 'seam' of 'left' on 'seam' of 'right': the notches have no partners; measured 1, expected"
                                + " 0, off by 1, tolerance 0. Give every notch its partner at the same distance, or take it away.");
    }

    @Test
    void stitchedDartIsFoldedOut() {
        Piece darted = Drawing.of("right")
                .from(0, 0)
                .edge("hem", Role.HEM)
                .line(120, 0)
                .edge("seam", Role.SEAM)
                .line(120, 150)
                .dart("dart", 40, 160, 120, 170, 0, Leg.BEFORE)
                .line(120, 320)
                .edge("top", Role.SEAM)
                .line(0, 320)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .piece();
        Walk walk = Walk.of(draft(panel("left", 300), darted, flat()), flat());
        assertThat(walk.worst().second()).isCloseTo(300, within(1e-9));
    }

    @Test
    void easeForAnIntervalThatIsNotThereIsRefused() {
        Piece right = panel("right", 300).notched(new Notch("seam", 100, Beside.BEFORE));
        Seam seam = new Seam(
                "side",
                Seam.Mate.of("left", "seam"),
                Seam.Mate.of("right", "seam"),
                List.of(new Seam.Held(3, 8, Seam.How.EASE, "none")));
        assertThatThrownBy(() -> Walk.of(draft(left(), right, seam), seam))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("Seam 'side' declares ease for interval 3 but has 2.");
    }
}
