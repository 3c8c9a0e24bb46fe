package org.draftingmaths.seam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.commons.math3.optim.InitialGuess;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.nonlinear.scalar.ObjectiveFunction;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.SimplexOptimizer;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.measure.Ease;
import org.draftingmaths.measure.Measure;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.measure.ProportionRules;
import org.draftingmaths.measure.Wearer;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Panels;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.unit.Length;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Seams trued by the least moves, compared for balance, and eased by shares. */
class SeamTruingTest {

    static Stream<Long> seeds() {
        return LongStream.range(0, 200).boxed();
    }

    /** A skirt panel; its side seam starts at the hem and carries two notches. */
    private static Piece panel(String name, double flare, double height, double first, double second) {
        return Drawing.of(name)
                .from(0, 0)
                .edge("hem", Role.HEM)
                .curve(70, 0, 140, 0, 200 + flare, 8)
                .edge("side seam", Role.SEAM)
                .curve(205 + flare / 2, 150, 215, height - 150, 180, height)
                .edge("waist", Role.SEAM)
                .curve(120, height - 7, 60, height - 10, 0, height - 10)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .notch("side seam", first)
                .notch("side seam", second)
                .grain(60, 100, 60, 400)
                .piece();
    }

    private static final Seam SIDE =
            Seam.flat("side", Seam.Mate.of("front", "side seam"), Seam.Mate.of("back", "side seam"));

    private static Draft draft(SplittableRandom random) {
        double flare = random.nextDouble(0, 40);
        Piece front = panel("front", flare, 600, 200, 420);
        Piece back = panel(
                "back",
                flare + random.nextDouble(-3, 3),
                600 + random.nextDouble(-3, 3),
                200 + random.nextDouble(-3, 3),
                420 + random.nextDouble(-3, 3));
        return new Draft("skirt", List.of(front, back), List.of(SIDE));
    }

    private static SeamTruing.May hem(Seam.Mate side, double weight) {
        return new SeamTruing.AtEnd(side, Seam.End.START, weight);
    }

    private static SeamTruing.May waist(Seam.Mate side, double weight) {
        return new SeamTruing.AtEnd(side, Seam.End.STOP, weight);
    }

    private static SeamTruing.May curve(Seam.Mate side, int interval, double weight) {
        return new SeamTruing.InCurve(side, interval, weight);
    }

    private static SeamTruing.May notch(Seam.Mate side, int notch, double weight) {
        return new SeamTruing.AtNotch(side, notch, weight);
    }

    private static List<SeamTruing.May> all(SplittableRandom random) {
        Seam.Mate one = SIDE.first();
        Seam.Mate other = SIDE.second();
        return List.of(
                hem(one, random.nextDouble(0.5, 4)),
                hem(other, random.nextDouble(0.5, 4)),
                notch(one, 1, random.nextDouble(0.5, 4)),
                notch(other, 1, random.nextDouble(0.5, 4)),
                notch(other, 2, random.nextDouble(0.5, 4)),
                waist(other, random.nextDouble(4, 20)));
    }

    /** Every interval matches, the directions at ends and notches stay, the notches stay on their pieces, and it can be undone. */
    @ParameterizedTest
    @MethodSource("seeds")
    void everyIntervalMatchesAndDirectionsStay(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Draft draft = draft(random);
        SeamTruing.Trued trued = SeamTruing.of(draft, SIDE, all(random), 8);
        assertThat(Walk.of(trued.draft(), SIDE).intervals())
                .allSatisfy(interval -> assertThat(interval.difference()).isCloseTo(0, within(1e-6)));
        for (Piece was : draft.pieces()) {
            CurvePath before = Paper.edge(was, "side seam");
            CurvePath after = Paper.edge(trued.draft().piece(was.name()), "side seam");
            // A longer end goes straight on; a shorter one is the curve as it was, up to there.
            double start = Math.max(0, -atEnd(trued, was, Seam.End.START));
            double stop = before.length() - Math.max(0, -atEnd(trued, was, Seam.End.STOP));
            assertThat(after.startTangent().distance(before.tangentAt(start))).isLessThan(1e-9);
            assertThat(after.endTangent().distance(before.tangentBefore(stop))).isLessThan(1e-9);
            assertThat(trued.draft().piece(was.name()).edge("centre").length())
                    .isCloseTo(was.edge("centre").length(), within(1e-9));
        }
        for (Reworked done : trued.pieces()) {
            assertThat(Panels.undo(done).sameCloth(draft.piece(done.piece().name()), 1e-9))
                    .isTrue();
        }
        assertThat(trued.moves()).isSortedAccordingTo((a, b) -> Double.compare(Math.abs(b.by()), Math.abs(a.by())));
    }

    private static double atEnd(SeamTruing.Trued trued, Piece piece, Seam.End end) {
        return trued.moves().stream()
                .filter(move -> move.may().side().piece().equals(piece.name()))
                .filter(move -> move.may() instanceof SeamTruing.AtEnd at && at.end() == end)
                .mapToDouble(SeamTruing.Moved::by)
                .sum();
    }

    /**
     * An optimiser that knows nothing of the formula, and pays dearly for every interval that does not match, finds no smaller weighted sum of squares.
     */
    @ParameterizedTest
    @MethodSource("seeds")
    void noOtherMovesAreLess(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Draft draft = draft(random);
        List<SeamTruing.May> may = all(random);
        double ours = SeamTruing.of(draft, SIDE, may, 8).moves().stream()
                .mapToDouble(move -> move.may().weight() * move.by() * move.by())
                .sum();
        double[] off = Walk.of(draft, SIDE).intervals().stream()
                .mapToDouble(Walk.Interval::difference)
                .toArray();
        double dear = 1e5;
        double least = new SimplexOptimizer(1e-15, 1e-15)
                .optimize(
                        new MaxEval(200_000),
                        new ObjectiveFunction(x -> {
                            // Hem of the first and of the second, notch 1 of either, notch 2 of the second, its waist
                            // end.
                            double one = off[0] + x[0] - x[1] + x[2] - x[3];
                            double two = off[1] - x[2] + x[3] - x[4];
                            double three = off[2] + x[4] - x[5];
                            double cost = dear * (one * one + two * two + three * three);
                            for (int i = 0; i < 6; i++) {
                                cost += may.get(i).weight() * x[i] * x[i];
                            }
                            return cost;
                        }),
                        GoalType.MINIMIZE,
                        new InitialGuess(new double[6]),
                        new NelderMeadSimplex(6))
                .getValue();
        // What it pays short of matching wholly is below the share of its weights in the price.
        assertThat(ours).isLessThanOrEqualTo(least * (1 + 1e-3) + 1e-9);
    }

    /** A bent stretch gives in its curve, its ends and directions as they were; a straight one cannot. */
    @ParameterizedTest
    @MethodSource("seeds")
    void aBentStretchGivesInItsCurve(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double by = random.nextDouble(-3, 3);
        Piece front = plain("front", 600);
        Piece back = Drawing.of("back")
                .from(0, 0)
                .edge("hem", Role.HEM)
                .line(200, 0)
                .edge("side seam", Role.SEAM)
                .curve(260, 150, 260, 450, 200, 600)
                .edge("waist", Role.SEAM)
                .line(0, 600)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .piece();
        double bent = Paper.edge(back, "side seam").length();
        Draft draft = new Draft("skirt", List.of(plain("front", bent + by), back), List.of(SIDE));
        SeamTruing.Trued trued = SeamTruing.of(draft, SIDE, List.of(curve(SIDE.second(), 1, 1)), 6);
        CurvePath after = Paper.edge(trued.draft().piece("back"), "side seam");
        assertThat(after.length()).isCloseTo(bent + by, within(1e-8));
        assertThat(after.startTangent().distance(Paper.edge(back, "side seam").startTangent()))
                .isLessThan(1e-9);
        assertThat(after.end()).isEqualTo(Paper.edge(back, "side seam").end());
        assertThat(front.edge("hem").length()).isEqualTo(200);
    }

    /** A back 4 mm too long, ten times as willing to give at the hem: 40 parts of 11 there. */
    @Test
    void theHemGivesBeforeTheWaist() {
        Piece front = plain("front", 600);
        Piece back = plain("back", 604);
        Draft draft = new Draft("skirt", List.of(front, back), List.of(SIDE));
        SeamTruing.Trued trued =
                SeamTruing.of(draft, SIDE, List.of(hem(SIDE.second(), 1), waist(SIDE.second(), 10)), 6);
        assertThat(trued.moves()).hasSize(2);
        assertThat(trued.moves().get(0).by()).isCloseTo(-40.0 / 11, within(1e-12));
        assertThat(trued.moves().get(1).by()).isCloseTo(-4.0 / 11, within(1e-12));
        assertThat(trued.moves().get(0).sentence(Steps.DEFAULT))
                .isEqualTo("Make 'side seam' of 'back' 3.64 mm shorter at the end where it starts to be sewn.");
    }

    private static Piece plain(String name, double height) {
        return Drawing.of(name)
                .from(0, 0)
                .edge("hem", Role.HEM)
                .line(200, 0)
                .edge("side seam", Role.SEAM)
                .line(200, height)
                .edge("waist", Role.SEAM)
                .line(0, height)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .grain(60, 100, 60, 400)
                .piece();
    }

    @Test
    void whatIsNoTruingIsRefused() {
        Draft draft = new Draft("skirt", List.of(plain("front", 600), plain("back", 620)), List.of(SIDE));
        assertThatThrownBy(() -> SeamTruing.of(draft, SIDE, List.of(hem(SIDE.second(), 1)), 6))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining(
                        "would be moved by more than truing at the end where it starts to be sewn; look for"
                                + " the fault in the draft")
                .hasMessageContaining("asked 3/4 in (2.0 cm)");
        assertThatThrownBy(() -> SeamTruing.of(draft, SIDE, List.of(), 60))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining(
                        "notch interval 1 is off by -20.00 mm, and nothing that may move can mend all of it");
        assertThatThrownBy(() -> SeamTruing.of(draft, SIDE, List.of(curve(SIDE.first(), 2, 1)), 60))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("Seam 'side' has 1 notch intervals, not 2.");
        assertThatThrownBy(() -> SeamTruing.of(draft, SIDE, List.of(curve(SIDE.first(), 1, 1)), 60))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining("cannot be made");
        assertThatThrownBy(() -> SeamTruing.of(draft, SIDE, List.of(notch(SIDE.first(), 1, 1)), 60))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("Seam 'side' has 0 notches on each edge, not 1.");
        assertThatThrownBy(() -> hem(SIDE.first(), 0)).isInstanceOf(IllegalArgumentException.class);
    }

    // ------------------------------------------------------------------------------------------------ balance

    /** A seam that leans by a known angle more on one piece than on the other, of one length: only the balance tells. */
    @Test
    void aSlantOfOneSideIsFound() {
        double lean = Math.toRadians(3);
        Piece upright = plain("front", 600);
        double out = 600 * Math.sin(lean);
        Piece slanted = Drawing.of("back")
                .from(0, 0)
                .edge("hem", Role.HEM)
                .line(200 + out, 0)
                .edge("side seam", Role.SEAM)
                .line(200, 600 * Math.cos(lean))
                .edge("waist", Role.SEAM)
                .line(0, 600 * Math.cos(lean))
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .grain(60, 100, 60, 400)
                .piece();
        Draft draft = new Draft("skirt", List.of(upright, slanted), List.of(SIDE));
        assertThat(Walk.of(draft, SIDE).difference()).isCloseTo(0, within(1e-9));
        Balance balance = Balance.of(draft, SIDE);
        assertThat(balance.apart()).isCloseTo(0, within(1e-9));
        List<Finding> found = balance.findings(Balance.ANGLE, 2);
        assertThat(found).extracting(Finding::kind).containsOnly(Finding.Kind.SEAM_UNBALANCED);
        assertThat(found).hasSize(2);
        assertThat(Math.abs(found.get(0).excess())).isCloseTo(lean, within(1e-12));
        assertThat(balance.findings(Math.toRadians(3.01), 2)).isEmpty();
    }

    /** One edge bowed by a known sagitta, the other straight, both of one chord: they stray by the sagitta. */
    @Test
    void aBowOfOneSideIsFound() {
        Piece straight = plain("front", 600);
        Piece bowed = Drawing.of("back")
                .from(0, 0)
                .edge("hem", Role.HEM)
                .line(200, 0)
                .edge("side seam", Role.SEAM)
                .arc(207, 300, 200, 600)
                .edge("waist", Role.SEAM)
                .line(0, 600)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .grain(60, 100, 60, 400)
                .piece();
        Balance balance = Balance.of(new Draft("skirt", List.of(straight, bowed), List.of(SIDE)), SIDE);
        assertThat(balance.apart()).isCloseTo(7, within(1e-6));
        assertThat(balance.findings(Math.PI, 6.9)).hasSize(1);
        assertThat(balance.findings(Math.PI, 7.1)).isEmpty();
    }

    /** Mirrored mates are in balance whatever way either is drawn or lies. */
    @ParameterizedTest
    @MethodSource("seeds")
    void mirroredMatesAreBalanced(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Piece front = panel("front", random.nextDouble(0, 40), 600, 200, 420);
        Piece back = Panels.mirror(
                        front.named("back"),
                        org.apache.commons.geometry.euclidean.twod.Vector2D.ZERO,
                        org.apache.commons.geometry.euclidean.twod.Vector2D.of(
                                random.nextDouble(-1, 1), random.nextDouble(-1, 1)))
                .piece();
        Balance balance = Balance.of(new Draft("skirt", List.of(front, back), List.of(SIDE)), SIDE);
        assertThat(balance.findings(1e-9, 1e-6)).isEmpty();
    }

    /** A dart moved into one side seam turns its upper part on paper; sewn, the seam is as balanced as before. */
    @Test
    void aDartInTheSeamIsFolded() {
        Draft bodice = org.draftingmaths.block.TorsoBlock.bodice(
                        Measurements.of("figure", Wearer.ADULT)
                                .with(Measure.BUST, Length.cm(92))
                                .with(Measure.WAIST, Length.cm(74))
                                .with(Measure.HIP, Length.cm(98))
                                .filledBy(ProportionRules.TORSO),
                        Ease.CLOSE_FITTING)
                .draft();
        Piece front = org.draftingmaths.dart.Darts.rotate(
                        bodice.piece("front"), "bust dart", Spot.on("side seam", 120), "side dart")
                .piece();
        Balance balance = Balance.of(bodice.with(front), bodice.seams().get(1));
        assertThat(balance.findings(1e-9, 1e-6)).isEmpty();
    }

    // ------------------------------------------------------------------------------------------------ ease

    @ParameterizedTest
    @MethodSource("seeds")
    void easeIsSharedByWeights(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double surplus = random.nextDouble(2, 12);
        Piece cap = panel("front", 20, 600 + surplus, 200, 420);
        Piece hole = panel("back", 20, 600, 200, 420);
        Draft draft = new Draft("skirt", List.of(cap, hole), List.of(SIDE));
        List<Double> weights = List.of(0.0, random.nextDouble(1, 3), random.nextDouble(1, 3));
        Seam eased = EaseShares.declared(draft, SIDE, weights, 0.2, "to try");
        assertThat(eased.held()).extracting(Seam.Held::interval).containsExactly(2, 3);
        double whole = eased.held().stream().mapToDouble(Seam.Held::surplus).sum();
        assertThat(whole).isCloseTo(Walk.of(draft, SIDE).difference(), within(1e-9));
        assertThat(eased.held().get(0).surplus() * weights.get(2))
                .isCloseTo(eased.held().get(1).surplus() * weights.get(1), within(1e-9));
        assertThat(Walk.of(draft, eased).difference()).isCloseTo(0, within(1e-9));
    }

    @Test
    void easeThatCannotBeHeldIsRefused() {
        Draft draft = new Draft("skirt", List.of(plain("front", 660), plain("back", 600)), List.of(SIDE));
        assertThatThrownBy(() -> EaseShares.declared(draft, SIDE, List.of(1.0), 0.05, "to try"))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining("would be eased by more than 5.0 % of its length")
                .hasMessageContaining("asked 2 3/8 in (6.0 cm), possible 0 in (0.0 cm) to 1 1/4 in (3.3 cm)");
        assertThatThrownBy(() -> EaseShares.declared(draft, SIDE, List.of(1.0, 1.0), 0.05, "to try"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("one weight of 0 or more for each of the 1 notch intervals");
        Draft other = new Draft("skirt", List.of(plain("front", 590), plain("back", 600)), List.of(SIDE));
        assertThatThrownBy(() -> EaseShares.declared(other, SIDE, List.of(1.0), 0.05, "to try"))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining("it is -10.00 mm longer");
    }
}
