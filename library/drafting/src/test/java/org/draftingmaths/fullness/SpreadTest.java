package org.draftingmaths.fullness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.assertj.core.api.ThrowableAssert;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.piece.Border;
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
import org.draftingmaths.piece.Run;
import org.draftingmaths.piece.Slash;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.piece.Stay;
import org.draftingmaths.piece.Step;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
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

    /** Both gaps, the turn, the paper gained and the way back, for gaps equal, nearly equal and unequal to either side. */
    @ParameterizedTest
    @MethodSource("seeds")
    void unequalKeepsItsLaws(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Piece panel = panel(random.nextDouble(100, 300), random.nextDouble(200, 700));
        double gap = random.nextDouble(5, 80);
        double[] others = {gap, gap + random.nextDouble(-1e-9, 1e-9), random.nextDouble(5, 80), 0};
        double far = others[random.nextInt(others.length)];
        Reworked spread = Spread.unequal(panel, slash(panel, random), gap, far);
        CurvePath before = Measured.leg(spread.piece(), "flare", Leg.BEFORE);
        CurvePath after = Measured.leg(spread.piece(), "flare", Leg.AFTER);
        double chord = before.length();
        double turn = 2 * Math.asin((gap - far) / 2 / chord);

        assertThat(before.start().distance(after.start())).as("seed %d", seed).isCloseTo(gap, within(1e-9));
        assertThat(before.end().distance(after.end())).isCloseTo(far, within(1e-9));
        assertThat(Measured.angle(spread.piece(), "flare")).isCloseTo(turn, within(1e-12));
        assertThat(Lengths.folded(spread.piece(), "waist"))
                .isCloseTo(Lengths.folded(panel, "waist") + far, within(1e-9));
        assertThat(paperArea(spread.piece()) - paperArea(panel))
                .isCloseTo((gap + far) / 2 * chord * Math.cos(turn / 2), within(1e-6));
        Vector2D middle = before.start()
                .vectorTo(before.end())
                .normalize()
                .add(after.start().vectorTo(after.end()).normalize());
        assertThat(before.start().vectorTo(after.start()).dot(middle))
                .as("even legs")
                .isCloseTo(0, within(1e-9));
        assertThat(Panels.undo(spread).sameCloth(panel, 1e-9)).isTrue();
    }

    /** Each part turns by the sum of what opens between it and the part that stays; many at once are as one after the other. */
    @ParameterizedTest
    @MethodSource("seeds")
    void manyInOneMove(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Piece panel = panel(random.nextDouble(200, 300), random.nextDouble(300, 700));
        int count = random.nextInt(1, 6);
        List<Spread.Opened> all = new ArrayList<>();
        for (Slash slash : Spread.even(panel, "flare", "hem", "waist", count)) {
            all.add(new Spread.Opened(slash, random.nextDouble(2, 40), random.nextInt(2) * random.nextDouble(0, 20)));
        }
        Reworked spread = Spread.all(panel, all, Stay.CENTRE);
        Piece after = panel;
        double turn = 0;
        double gain = 0;
        for (Spread.Opened each : all) {
            after = Spread.all(after, List.of(each), Stay.CENTRE).piece();
            Gap gap = new Gap(each.farGap(), each.gap(), height(panel, each));
            turn += gap.angle();
            gain += gap.area();
        }
        assertThat(spread.piece().sameCloth(after, 1e-6)).as("seed %d", seed).isTrue();
        Vector2D side = Paper.edge(spread.piece(), "side").startTangent();
        assertThat(Math.atan2(-side.getX(), side.getY()))
                .as("the turn of the last part")
                .isCloseTo(turn, within(1e-9));
        assertThat(paperArea(spread.piece()) - paperArea(panel)).isCloseTo(gain, within(1e-4));
        assertThat(Panels.undo(spread).sameCloth(panel, 1e-9)).isTrue();
    }

    private static double height(Piece panel, Spread.Opened each) {
        return Measured.leg(
                        Panels.cut(panel, each.slash()).piece(), each.slash().name(), Leg.BEFORE)
                .length();
    }

    /** Sweep wanted, gaps found, sweep measured: forward and backward are each other's inverse. */
    @ParameterizedTest
    @MethodSource("seeds")
    void theGapsForASweepGiveThatSweep(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Piece panel = panel(random.nextDouble(200, 300), random.nextDouble(300, 700));
        List<Slash> slashes = Spread.even(panel, "flare", "hem", "waist", random.nextInt(1, 6));
        List<Double> shares =
                slashes.stream().map(slash -> random.nextDouble(0.5, 2)).toList();
        double sweep = panel.edge("hem").length() + random.nextDouble(1, 300);
        Answer answer = Sweep.gap(panel, "hem", slashes, shares, sweep);
        List<Spread.Opened> opened = Sweep.hinged(slashes, shares, answer.value());

        assertThat(answer).isInstanceOf(Answer.Unique.class);
        assertThat(Sweep.along(panel, "hem", opened)).as("seed %d", seed).isCloseTo(sweep, within(1e-9));
        Piece spread = Spread.all(panel, opened, Stay.CENTRE).piece();
        double arcs = panel.edge("hem").length();
        for (Slash slash : slashes) {
            arcs += Measured.angle(spread, slash.name())
                    * Measured.leg(spread, slash.name(), Leg.BEFORE).length();
        }
        assertThat(arcs).as("along, from the angles measured").isCloseTo(sweep, within(1e-9));
        for (int i = 0; i < slashes.size(); i++) {
            assertThat(Measured.intake(spread, slashes.get(i).name()) / shares.get(i))
                    .as("graded as asked")
                    .isCloseTo(Measured.intake(spread, slashes.get(0).name()) / shares.get(0), within(1e-9));
        }
    }

    @Test
    void aSweepThatCannotBeHadIsToldWithTheRange() {
        List<Slash> slashes = Spread.even(panel(255, 600), "flare", "hem", "waist", 3);
        Answer answer = Sweep.gap(panel(255, 600), "hem", slashes, 200);
        assertThat(answer.sentence(Steps.DEFAULT))
                .isEqualTo(
                        "Gaps for a sweep of 7 7/8 in (20.0 cm) along 'hem': none, for hinged slashes only lengthen an edge,"
                                + " up to a half turn at one of them (asked 7 7/8 in (20.0 cm), possible 10 in (25.5 cm) to"
                                + " 232 5/8 in (591.0 cm)).");
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aGapAndItsHingeAreEachOthersInverse(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Gap gap = new Gap(random.nextDouble(0, 80), random.nextDouble(0, 80), random.nextDouble(100, 900));
        Gap again = Gap.turned(gap.hinge().orElseThrow(), gap.angle(), gap.length());
        assertThat(again.near()).as("seed %d", seed).isCloseTo(gap.near(), within(1e-9));
        assertThat(again.far()).isCloseTo(gap.far(), within(1e-9));
        assertThat(new Gap(40, 40, 500).hinge()).isEmpty();
        assertThat(new Gap(40, 40, 500).area()).isEqualTo(20000);
    }

    /** A lap loses what its gaps say; the hinge's edge keeps its length, or both edges lose. */
    @ParameterizedTest
    @MethodSource("seeds")
    void aLapIsASpreadBackwards(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Piece panel = panel(random.nextDouble(200, 300), random.nextDouble(300, 700));
        double gap = -random.nextDouble(2, 25);
        double far = random.nextBoolean() ? 0 : -random.nextDouble(2, 25);
        Leg loses = random.nextBoolean() ? Leg.BEFORE : Leg.AFTER;
        Slash slash = slash(panel, random);
        Reworked lapped = Spread.lap(panel, slash, gap, far, loses, Stay.CENTRE);
        Piece piece = lapped.piece();

        assertThat(piece.panels()).as("seed %d", seed).hasSize(1);
        assertThat(piece.openings()).isEmpty();
        double chord = Measured.leg(Panels.cut(panel, slash).piece(), "flare", Leg.BEFORE)
                .length();
        double turn = 2 * Math.asin((gap - far) / 2 / chord);
        Vector2D side = Paper.edge(piece, "side").startTangent();
        assertThat(Math.atan2(-side.getX(), side.getY())).isCloseTo(turn, within(1e-9));
        if (far == 0) {
            assertThat(Lengths.base(piece, "waist"))
                    .isCloseTo(panel.edge("waist").length(), within(1e-9));
        }
        Step.TakenOut out = lapped.ledger().only(Step.TakenOut.class).get(0);
        double lost = out.lost().ring().stream()
                .filter(run -> run.border() instanceof Border.OfEdge)
                .mapToDouble(Run::length)
                .sum();
        double step = lapped.ledger().only(Lapped.class).get(0).step();
        double shorter = Stream.of("hem", "waist")
                .mapToDouble(edge -> panel.edge(edge).length() - Lengths.base(piece, edge))
                .sum();
        assertThat(shorter).as("lost along the edges, less the steps").isBetween(lost - 2 * step - 1e-9, lost + 1e-9);
        assertThat(Panels.undo(lapped).sameCloth(panel, 1e-9)).isTrue();
    }

    @Test
    void aLapSquareToItsEdgesLosesJustItsGaps() {
        Slash slash = Slash.straight("lap", Spot.on("hem", 100), Spot.on("waist", 200));
        Reworked lapped = Spread.lap(panel(300, 600), slash, -20, -20, Leg.AFTER, Stay.CENTRE);
        assertThat(lapped.piece().area()).isEqualTo(280 * 600, within(1e-6));
        assertThat(lapped.ledger().sentences(Steps.DEFAULT))
                .startsWith(
                        "Lap 'lap' by 3/4 in (2.0 cm) at 'hem' at 100.0 mm and 3/4 in (2.0 cm) at 'waist' at 200.0 mm:"
                                + " the side after it loses the cloth.");
    }

    @Test
    void poorSpreadsAreFound() {
        Piece near = Spread.hinged(
                        panel(300, 600), Slash.straight("flare", Spot.on("hem", 150), Spot.on("waist", 6)), 170)
                .piece();
        assertThat(Spread.findings(near, Spread.Limits.DEFAULT))
                .extracting(finding -> finding.sentence(Steps.DEFAULT))
                .containsExactly(
                        "'flare' of 'panel' on 'waist': the hinge lies too near a corner; measured 1/4 in (0.6 cm), expected"
                                + " 3/8 in (1.0 cm), off by -4.00 mm, tolerance 0.00 mm.",
                        "'flare' of 'panel': the slash opens too wide; use more slashes; measured 15.8°, expected 15.0°, off"
                                + " by 0.84°, tolerance 0.00°.");
        assertThat(Spread.findings(near, new Spread.Limits(5, Math.toRadians(20))))
                .isEmpty();
    }

    @Test
    void crossingSlashesAreRefused() {
        Slash one = Slash.straight("one", Spot.on("hem", 100), Spot.on("waist", 100));
        Slash other = Slash.straight("other", Spot.on("hem", 200), Spot.on("waist", 200));
        assertThatThrownBy(() -> Spread.all(
                        panel(300, 600),
                        List.of(Spread.Opened.hinged(one, 20), Spread.Opened.hinged(other, 20)),
                        Stay.CENTRE))
                .isInstanceOf(DraftingException.class)
                .hasMessage("Spread 'one', 'other': 'one' and 'other' cross at (150.0, 300.0).");
    }

    /** What a drafter may get wrong, and the words in which she is told. */
    static Stream<Arguments> badInput() {
        Slash slash = Slash.straight("flare", Spot.on("hem", 100), Spot.on("waist", 200));
        Piece panel = panel(300, 600);
        return Stream.of(
                Arguments.of(
                        call(() -> Spread.unequal(panel, slash, -5, 0)),
                        "The gaps of 'flare' are 0 mm or more and one of them is more: -5.0 and 0.0 mm. An overlap takes cloth"
                                + " out, and is a lap."),
                Arguments.of(
                        call(() -> Spread.unequal(panel, slash, 0, 0)),
                        "The gaps of 'flare' are 0 mm or more and one of them is more: 0.0 and 0.0 mm. An overlap takes cloth"
                                + " out, and is a lap."),
                Arguments.of(
                        call(() -> Spread.lap(panel, slash, 5, -5, Leg.AFTER, Stay.CENTRE)),
                        "The gaps of a lap are 0 mm or less and one of them is less: 5.0 and -5.0 mm."),
                Arguments.of(call(() -> Spread.all(panel, List.of(), Stay.CENTRE)), "There is no slash to spread."),
                Arguments.of(
                        call(() -> Spread.even(panel, "flare", "hem", "waist", 0)), "There is at least 1 slash: 0."),
                Arguments.of(
                        call(() -> new Gap(10, 20, 0)),
                        "A gap needs finite widths and a slash longer than 0 mm: 10.0 and 20.0 mm, slash 0.0 mm."),
                Arguments.of(
                        call(() -> new Gap(0, 300, 100)),
                        "The gaps at two ends differ by at most twice the slash: 0.0 and 300.0 mm, slash 100.0 mm."),
                Arguments.of(
                        call(() -> Sweep.gap(panel, "hem", List.of(slash), List.of(), 500)),
                        "There is at least one slash, and for each a share of more than 0: 1 slashes, shares []."),
                Arguments.of(
                        call(() -> new Spread.Limits(-1, 1)),
                        "Limits are 0 mm or more from a corner and an angle up to 180°: -1.0 mm, 1.0 rad."));
    }

    private static ThrowableAssert.ThrowingCallable call(ThrowableAssert.ThrowingCallable call) {
        return call;
    }

    @ParameterizedTest
    @MethodSource("badInput")
    void badInputIsRefusedInPlainWords(ThrowableAssert.ThrowingCallable call, String message) {
        assertThatThrownBy(call).isInstanceOf(IllegalArgumentException.class).hasMessage(message);
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
                        "Spread 'flare' by 2 in (5.0 cm) at 'hem', 3 7/8 in (10.0 cm) along, hinged at 'waist', 7 7/8 in (20.0 cm)"
                                + " along, which keeps its length.");
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
                .hasMessage("Spread 'flare': a slash cannot open wider at one end than at the other by more than"
                        + " twice its length (asked 51 1/8 in (130.0 cm),"
                        + " possible 0 in (0.0 cm) to 47 1/4 in (120.0 cm)).");
        for (double gap : new double[] {0, -5, Double.NaN}) {
            assertThatThrownBy(() -> Spread.parallel(panel(300, 600), slash, gap))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage("A gap is more than 0 mm: " + gap + " mm.");
        }
    }
}
