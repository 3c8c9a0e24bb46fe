package org.draftingmaths.fullness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Flat;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Panels;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Slash;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SpreadTest {

    static Stream<Long> seeds() {
        return LongStream.range(0, 300).boxed();
    }

    private static Piece panel(double width, double height) {
        return Drawing.of("panel")
                .from(0, 0)
                .edge("hem", Role.HEM)
                .line(width, 0)
                .edge("side", Role.SEAM)
                .line(width, height)
                .edge("waist", Role.SEAM)
                .line(0, height)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .piece();
    }

    private static double paperArea(Piece piece) {
        return Flat.polygon(Paper.outline(piece)).getArea();
    }

    /** Gap, base lengths, whole length of the hinge's edge, gain of paper by its formula (JTS measures it), undo. */
    @ParameterizedTest
    @MethodSource("seeds")
    void hingedKeepsItsLaws(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Piece panel = panel(random.nextDouble(100, 300), random.nextDouble(200, 700));
        double gap = random.nextDouble(5, 80);
        Slash slash = slash(panel, random);
        Reworked spread = Spread.hinged(panel, slash, gap);
        double chord = Measured.leg(spread.piece(), "flare", Leg.BEFORE).length();
        double angle = 2 * Math.asin(gap / 2 / chord);

        assertThat(Measured.intake(spread.piece(), "flare")).isCloseTo(gap, within(1e-9));
        assertThat(Lengths.drawn(spread.piece(), "waist")).isCloseTo(Lengths.drawn(panel, "waist"), within(1e-9));
        assertThat(Lengths.folded(spread.piece(), "hem")).isCloseTo(Lengths.folded(panel, "hem") + gap, within(1e-9));
        assertThat(spread.piece().area()).isCloseTo(panel.area(), within(1e-6));
        assertThat(paperArea(spread.piece()) - paperArea(panel))
                .isCloseTo(gap / 2 * chord * Math.cos(angle / 2), within(1e-6));
        assertThat(Panels.undo(spread).sameCloth(panel, 1e-9)).isTrue();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void parallelKeepsItsLaws(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Piece panel = panel(random.nextDouble(100, 300), random.nextDouble(200, 700));
        double gap = random.nextDouble(5, 80);
        Reworked spread = Spread.parallel(panel, slash(panel, random), gap);
        double chord = Measured.leg(spread.piece(), "flare", Leg.BEFORE).length();

        assertThat(Lengths.folded(spread.piece(), "hem")).isCloseTo(Lengths.folded(panel, "hem") + gap, within(1e-9));
        assertThat(Lengths.folded(spread.piece(), "waist"))
                .isCloseTo(Lengths.folded(panel, "waist") + gap, within(1e-9));
        assertThat(paperArea(spread.piece()) - paperArea(panel)).isCloseTo(gap * chord, within(1e-6));
        assertThat(Panels.undo(spread).sameCloth(panel, 1e-9)).isTrue();
    }

    private static Slash slash(Piece panel, SplittableRandom random) {
        double hem = random.nextDouble(0.2, 0.8) * panel.edge("hem").length();
        double waist = random.nextDouble(0.2, 0.8) * panel.edge("waist").length();
        return Slash.straight("flare", Spot.on("hem", hem), Spot.on("waist", waist));
    }

    /**
     * Published: three slashes of 2 in, hinged at the waist, add 6 in of flare and leave the waist as it was
     * ({@code madalynne.com/how-to-slash-and-open}).
     */
    @Test
    void threeSlashesOfTwoInchesAddSix() {
        Piece skirt = panel(300, 600);
        Piece spread = skirt;
        for (int i = 1; i <= 3; i++) {
            spread = Spread.hinged(
                            spread,
                            Slash.straight("flare " + i, Spot.on("hem", 75 * i), Spot.on("waist", 300 - 75 * i)),
                            50.8)
                    .piece();
        }
        assertThat(Lengths.folded(spread, "hem") - Lengths.folded(skirt, "hem")).isCloseTo(152.4, within(1e-9));
        assertThat(Lengths.drawn(spread, "waist")).isCloseTo(300, within(1e-9));
    }

    @Test
    void itIsTold() {
        Slash slash = Slash.straight("flare", Spot.on("hem", 100), Spot.on("waist", 200));
        assertThat(Spread.hinged(panel(300, 600), slash, 50).ledger().sentences(Steps.DEFAULT))
                .startsWith(
                        "Spread 'flare' by 2 in (5.0 cm) at 'hem' at 100.0 mm, hinged at 'waist' at 200.0 mm, which keeps"
                                + " its length.");
    }

    @Test
    void impossibleSpreadsAreRefused() {
        Piece darted = Drawing.of("darted")
                .from(0, 0)
                .edge("hem", Role.HEM)
                .line(300, 0)
                .edge("side", Role.SEAM)
                .line(300, 600)
                .edge("waist", Role.SEAM)
                .line(160, 600)
                .dart("dart", 150, 480, 140, 600, 0, Leg.AFTER)
                .line(0, 600)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .piece();
        assertThatThrownBy(
                        () -> Spread.hinged(darted, Slash.straight("flare", Spot.on("hem", 150), Spot.tip("dart")), 50))
                .isInstanceOf(DraftingException.class)
                .hasMessage(
                        "Spread 'flare': a flat sheet cannot open at 'flare' unless as much closes at the same point; 6.0°"
                                + " are left over.");
        Slash slash = Slash.straight("flare", Spot.on("hem", 100), Spot.on("waist", 200));
        assertThatThrownBy(() -> Spread.hinged(panel(300, 600), slash, 1300))
                .isInstanceOf(DraftingException.class)
                .hasMessage(
                        "Spread 'flare': a slash cannot open wider than twice its length (asked 51 1/8 in (130.0 cm),"
                                + " possible 0 in (0.0 cm) to 47 1/4 in (120.0 cm)).");
        for (double gap : new double[] {0, -5, Double.NaN}) {
            assertThatThrownBy(() -> Spread.parallel(panel(300, 600), slash, gap))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage("A gap is more than 0 mm: " + gap + " mm.");
        }
    }
}
