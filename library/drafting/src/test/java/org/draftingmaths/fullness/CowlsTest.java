package org.draftingmaths.fullness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.block.TorsoBlock;
import org.draftingmaths.check.Checks;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Reach;
import org.draftingmaths.measure.Ease;
import org.draftingmaths.measure.Measure;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.measure.ProportionRules;
import org.draftingmaths.measure.Wearer;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Panels;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.draftingmaths.unit.Length;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CowlsTest {

    static Stream<Long> seeds() {
        return LongStream.range(0, 60).boxed();
    }

    private static Draft bodice(double bust, double waist) {
        Measurements body = Measurements.of("wearer", Wearer.ADULT)
                .with(Measure.BUST, Length.cm(bust))
                .with(Measure.WAIST, Length.cm(waist))
                .with(Measure.HIP, Length.cm(bust + 8))
                .filledBy(ProportionRules.TORSO);
        return TorsoBlock.bodice(body, Ease.CLOSE_FITTING).draft();
    }

    private static Draft bodice(SplittableRandom random) {
        double bust = random.nextDouble(82, 112);
        return bodice(bust, bust - random.nextDouble(14, 22));
    }

    private static CowlLines lines(Piece front, SplittableRandom random) {
        CowlLines lines = CowlLines.closing(front, "centre front", "neckline", "bust dart");
        CowlLines anchored = new CowlLines(
                lines.centre(),
                lines.neckline(),
                lines.anchor() - random.nextDouble(0, 60),
                lines.darts(),
                List.of(),
                lines.apex(),
                lines.fold());
        CowlLines darts = random.nextBoolean() ? anchored : anchored.andClosing("waist dart");
        double armhole = Lengths.base(front, "armhole");
        return random.nextBoolean()
                ? darts
                : darts.hinged(
                        CowlLines.Hinge.on(darts.anchor() + 90, "armhole", random.nextDouble(0.55, 0.7) * armhole),
                        CowlLines.Hinge.on(darts.anchor() + 120, "armhole", random.nextDouble(0.8, 0.95) * armhole));
    }

    /** What can be reached is told by a refusal. */
    private static Reach reach(Piece front, CowlLines lines) {
        return ((Answer.None) Cowls.turnFor(front, lines, 5000)).reachable();
    }

    /**
     * The neck point as far from the fold as asked; the edge square to the fold; shoulder, armhole, side and waist as long as they were,
     * along and by notch interval with their mates; the foot, the fold's line and the grain where they were; undone, the front again.
     */
    @ParameterizedTest
    @MethodSource("seeds")
    void aCowlKeepsItsLaws(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Draft bodice = bodice(random);
        Piece front = bodice.piece("front");
        CowlLines lines = lines(front, random);
        Reach reach = reach(front, lines);
        double length = reach.least() + random.nextDouble(0.1, 0.9) * (reach.most() - reach.least());
        Cowl cowl = Cowls.byLength(front, lines, length, Hang.CATENARY);

        CurvePath edge = Paper.edge(cowl.piece(), "neckline");
        CurvePath fold = Paper.edge(cowl.piece(), "centre front");
        assertThat(edge.start().getX()).isCloseTo(length, within(1e-9));
        assertThat(edge.length()).isCloseTo(length, within(1e-9));
        assertThat(edge.endTangent().dot(fold.startTangent())).isCloseTo(0, within(1e-12));
        assertThat(fold.start().getX()).isCloseTo(0, within(1e-9));
        assertThat(fold.end().distance(Vector2D.ZERO)).isLessThan(1e-9);
        assertThat(cowl.piece().edge("centre front").role()).isEqualTo(Role.FOLD);
        for (String kept : List.of("shoulder", "armhole", "side seam", "waist")) {
            assertThat(Lengths.folded(cowl.piece(), kept))
                    .as(kept)
                    .isCloseTo(Lengths.folded(front, kept), within(1e-8));
        }
        assertThat(Checks.all(bodice.with(cowl.piece()), 1e-6))
                .as(
                        "little may be left of the dart that went into the cowl, and a slash turns the side seam to the grain; both are to judge")
                .extracting(Finding::kind)
                .isSubsetOf(Finding.Kind.DART_SMALL, Finding.Kind.SEAM_UNBALANCED);
        assertThat(cowl.piece()
                        .grain()
                        .orElseThrow()
                        .direction()
                        .distance(front.grain().orElseThrow().direction()))
                .isLessThan(1e-12);
        assertThat(Panels.undo(cowl.drawn()).sameCloth(front, 1e-6)).isTrue();
    }

    /** Surplus as it is measured on the two pieces: the tape down the paper, less the tape down the body from the drop. */
    @ParameterizedTest
    @MethodSource("seeds")
    void theSurplusIsPaperLessBody(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Piece front = bodice(random).piece("front");
        CowlLines lines = lines(front, random);
        Reach reach = reach(front, lines);
        double length = reach.least() + random.nextDouble(0.1, 0.9) * (reach.most() - reach.least());
        Cowl cowl = Cowls.byLength(front, lines, length, Hang.V);
        double neck = Paper.edge(front, "neckline").start().getX();
        double drop = Math.sqrt(length * length - neck * neck);
        double bodyBelow = Paper.edge(front, "neckline").start().getY() - drop;
        assertThat(cowl.drop()).isCloseTo(drop, within(1e-9));
        assertThat(cowl.surplus()).isCloseTo(Lengths.drawn(cowl.piece(), "centre front") - bodyBelow, within(1e-8));
        assertThat(cowl.folds()).isEqualTo((int) Math.max(0, Math.floor(cowl.surplus() / 50)));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void backwardsIsTheInverse(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Piece front = bodice(random).piece("front");
        CowlLines lines = lines(front, random);
        Reach reach = reach(front, lines);
        double length = reach.least() + random.nextDouble() * (reach.most() - reach.least());
        double turn = Cowls.turnFor(front, lines, length).value();
        assertThat(Cowls.lengthFor(front, lines, turn)).isCloseTo(length, within(1e-9));
        double drop = Hang.CATENARY
                .dropFor(Paper.edge(front, "neckline").start().getX(), length)
                .value();
        Cowl byDrop = Cowls.byDrop(front, lines, drop, Hang.CATENARY);
        assertThat(byDrop.edge()).isCloseTo(length, within(1e-9));
        assertThat(byDrop.turn()).isCloseTo(turn, within(1e-9));
    }

    /** The angles: what the cowl opens is what the darts close, and the rest is the hinges'. */
    @Test
    void dartsCloseIntoTheCowlFirst() {
        Piece front = bodice(88, 72).piece("front");
        CowlLines lines = CowlLines.closing(front, "centre front", "neckline", "bust dart")
                .andClosing("waist dart");
        double bust = Measured.angle(front, "bust dart");
        double waist = Measured.angle(front, "waist dart");
        Cowl shallow = Cowls.byLength(front, lines, 110, Hang.CATENARY);
        assertThat(shallow.turn() + Measured.angle(shallow.piece(), "bust dart"))
                .isCloseTo(bust, within(1e-9));
        assertThat(Measured.angle(shallow.piece(), "waist dart")).isCloseTo(waist, within(1e-9));
        Cowl deep = Cowls.byLength(front, lines, 160, Hang.CATENARY);
        assertThat(deep.piece().openings()).hasSize(1);
        assertThat(deep.turn() + Measured.angle(deep.piece(), "waist dart")).isCloseTo(bust + waist, within(1e-9));
    }

    @Test
    void aMirroredFrontGivesTheMirroredCowl() {
        Piece front = bodice(88, 72).piece("front");
        Piece mirrored = Panels.mirror(front, Vector2D.ZERO, Vector2D.of(0, 1)).piece();
        Cowl one = Cowls.byLength(front, belowTheBustLine(front), 120, Hang.V);
        Cowl other = Cowls.byLength(mirrored, belowTheBustLine(mirrored), 120, Hang.V);
        assertThat(Panels.mirror(other.piece(), Vector2D.ZERO, Vector2D.of(0, 1))
                        .piece()
                        .sameCloth(one.piece(), 1e-6))
                .isTrue();
    }

    /** A cut along a level line leaves it on the one side or the other; this one does not run along it. */
    private static CowlLines belowTheBustLine(Piece front) {
        CowlLines lines = CowlLines.closing(front, "centre front", "neckline", "bust dart");
        return new CowlLines(
                lines.centre(),
                lines.neckline(),
                lines.anchor() - 20,
                lines.darts(),
                List.of(),
                lines.apex(),
                lines.fold());
    }

    /** A wide neck: 8.5 cm from the centre, no dart, hinged at the armhole. */
    private static Piece wide() {
        return Drawing.of("front")
                .from(0, 0)
                .edge("waist", Role.SEAM)
                .line(230, 0)
                .edge("side seam", Role.SEAM)
                .line(250, 200)
                .edge("armhole", Role.SEAM)
                .curve(200, 210, 180, 300, 190, 400)
                .edge("shoulder", Role.SEAM)
                .line(85, 430)
                .edge("neckline", Role.FINISHED)
                .curve(80, 380, 50, 360, 0, 360)
                .edge("centre front", Role.FOLD)
                .line(0, 0)
                .grain(40, 40, 40, 280)
                .piece();
    }

    private static CowlLines hinged() {
        return new CowlLines(
                "centre front",
                "neckline",
                150,
                List.of(),
                List.of(
                        CowlLines.Hinge.on(150, "armhole", 60),
                        CowlLines.Hinge.on(230, "armhole", 120),
                        CowlLines.Hinge.on(300, "armhole", 180)),
                Optional.of(Vector2D.of(90, 180)),
                25);
    }

    /** c 8.5, d 12: half the edge 14.7 as a V, 15.6 as a catenary, on a piece with hinges alone. */
    @Test
    void theTradesFigures() {
        assertThat(Cowls.byDrop(wide(), hinged(), 120, Hang.V).edge() / 10).isCloseTo(14.7, within(0.05));
        Cowl cowl = Cowls.byDrop(wide(), hinged(), 120, Hang.CATENARY);
        assertThat(cowl.edge() / 10).isCloseTo(15.6, within(0.05));
        assertThat(cowl.findings()).isEmpty();
        assertThat(cowl.drawn().ledger().sentences(Steps.DEFAULT))
                .contains(
                        "The half edge of the cowl is 6 1/8 in (15.6 cm).",
                        "The drop of the cowl below the neck points is 4 3/4 in (12.0 cm).");
    }

    @Test
    void poorCowlsAreFound() {
        List<Finding> tight =
                Cowls.byLength(wide(), hinged(), 86, Hang.CATENARY).findings();
        assertThat(tight).hasSize(1);
        assertThat(tight.get(0).kind()).isEqualTo(Finding.Kind.NO_SURPLUS);
        CowlLines high = new CowlLines(
                "centre front", "neckline", 150, List.of(), hinged().hinges(), Optional.of(Vector2D.of(90, 310)), 25);
        List<Finding> low = Cowls.byDrop(wide(), high, 125, Hang.V).findings();
        assertThat(low).hasSize(1);
        assertThat(low.get(0).sentence(Steps.DEFAULT))
                .isEqualTo(
                        "'neckline' of 'front': the edge hangs lower than the apex and may expose; measured 4 7/8 in (12.5 cm),"
                                + " expected 4 3/4 in (12.0 cm), off by 5.00 mm, tolerance 0.00 mm.");
    }

    @Test
    void impossibleCowlsAreRefused() {
        Piece front = bodice(88, 72).piece("front");
        CowlLines lines = CowlLines.closing(front, "centre front", "neckline", "bust dart");
        assertThatThrownBy(() -> Cowls.byLength(front, lines, 200, Hang.V))
                .isInstanceOf(DraftingException.class)
                .hasMessage(
                        "Draft a cowl of 7 7/8 in (20.0 cm) on 'front': the neck point swings only so far from the centre"
                                + " (asked 7 7/8 in (20.0 cm), possible 2 5/8 in (6.7 cm) to 5 3/8 in (13.7 cm)).");
        assertThatThrownBy(() -> Cowls.byLength(front, lines, 60, Hang.V))
                .isInstanceOf(DraftingException.class)
                .hasMessageStartingWith(
                        "Drop of an edge of 2 3/8 in (6.0 cm): the edge must reach from point to point");
        assertThatThrownBy(() -> Cowls.lengthFor(front, lines, 1))
                .isInstanceOf(DraftingException.class)
                .hasMessage(
                        "Swing a cowl on 'front': beyond that it comes back to the centre (asked 57.3°, possible 0.0° to"
                                + " 15.7°).");
        assertThatThrownBy(() -> Cowls.byDrop(front, lines, 0, Hang.V))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("The drop of a cowl is more than 0 mm: 0.0 mm.");
        assertThatThrownBy(() -> Cowls.byLength(front, lines, Double.NaN, Hang.V))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("Half the edge of a cowl is more than 0 mm: NaN mm.");
        assertThatThrownBy(() -> new CowlLines("a", "b", 100, List.of(), List.of(), Optional.empty(), 25))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("A cowl needs a dart to close or a hinge to swing about.");
        assertThatThrownBy(() -> CowlLines.closing(front, "centre front", "shoulder", "bust dart"))
                .isInstanceOf(DraftingException.class)
                .hasMessage("Lay out a cowl on 'front': 'shoulder' does not meet 'centre front'.");
        assertThatThrownBy(() -> CowlLines.closing(front, "neckline", "shoulder", "bust dart"))
                .isInstanceOf(DraftingException.class)
                .hasMessage("Lay out a cowl on 'front': 'neckline' is not straight, and a fold is.");
        assertThatThrownBy(() -> Cowls.byLength(twoPoints(), lines.andClosing("other dart"), 120, Hang.V))
                .isInstanceOf(DraftingException.class)
                .hasMessageEndingWith("'other dart' has another point than 'bust dart'; move it first.");
    }

    private static Piece twoPoints() {
        return Drawing.of("front")
                .from(0, 0)
                .edge("waist", Role.SEAM)
                .line(80, 0)
                .dart("bust dart", 90, 150, 100, 0, 0, Leg.BEFORE)
                .line(150, 0)
                .dart("other dart", 160, 120, 170, 0, 0, Leg.BEFORE)
                .line(230, 0)
                .edge("side seam", Role.SEAM)
                .line(250, 400)
                .edge("shoulder", Role.SEAM)
                .line(85, 430)
                .edge("neckline", Role.FINISHED)
                .line(0, 360)
                .edge("centre front", Role.FOLD)
                .line(0, 0)
                .piece();
    }
}
