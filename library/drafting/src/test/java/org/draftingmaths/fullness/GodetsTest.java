package org.draftingmaths.fullness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.draftingmaths.check.Checks;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.piece.Seam.End;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class GodetsTest {

    static Stream<Long> seeds() {
        return LongStream.range(0, 200).boxed();
    }

    /** Sides, hem, every point of the hem as far from the point, area of a sector. */
    @ParameterizedTest
    @MethodSource("seeds")
    void aGodetIsASector(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double height = random.nextDouble(50, 700);
        double sweep = random.nextDouble(0.05, Math.PI) * height;
        Drafted godet = Godets.forSeam("godet", height, sweep);
        Piece piece = godet.draft().piece("godet");
        assertThat(Lengths.drawn(piece, "side")).isCloseTo(height, within(1e-9));
        assertThat(Lengths.drawn(piece, "other side")).isCloseTo(height, within(1e-9));
        assertThat(Lengths.drawn(piece, "hem")).isCloseTo(sweep, within(1e-9));
        Vector2D point = Paper.edge(piece, "side").start();
        CurvePath hem = Paper.edge(piece, "hem");
        for (int i = 0; i <= 10; i++) {
            assertThat(hem.pointAt(i * sweep / 10).distance(point)).isCloseTo(height, within(1e-9));
        }
        assertThat(piece.area()).isCloseTo(sweep * height / 2, within(1e-6));
        assertThat(godet.budget().area()).isCloseTo(piece.area(), within(1e-6));
        assertThat(godet.findings()).isEmpty();
        assertThat(Checks.all(godet.draft(), 1e-6)).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void backwardsIsTheInverse(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double height = random.nextDouble(50, 700);
        double sweep = random.nextDouble(0.05, Math.PI) * height;
        double angle = Godets.angleFor(height, sweep).value();
        assertThat(angle).isEqualTo(Godets.angle(height, sweep));
        assertThat(Godets.heightFor(sweep, angle).value()).isCloseTo(height, within(1e-9));
    }

    @Test
    void inASlitTheAllowanceRunsOut() {
        Drafted godet = Godets.forSlit("godet", 220, 180, 10);
        assertThat(godet.findings()).hasSize(1);
        Finding finding = godet.findings().get(0);
        assertThat(finding.kind()).isEqualTo(Finding.Kind.ALLOWANCE_RUNS_OUT);
        assertThat(finding.sentence(Steps.DEFAULT))
                .isEqualTo(
                        "the point of the slit for 'godet': no allowance is left; strengthen the point before cutting; measured"
                                + " 0 in (0.0 cm), expected 3/8 in (1.0 cm), off by -10.00 mm, tolerance 0.00 mm.");
    }

    /** A half skirt whose side bulges by a cubic; the back may be drafted for the same side of the body or for the other. */
    private static Piece half(String name, double bulge, boolean otherSide) {
        int way = otherSide ? -1 : 1;
        return Drawing.of(name)
                .from(0, -600)
                .edge("hem", Role.HEM)
                .line(way * 280.0, -600)
                .edge("side seam", Role.SEAM)
                .curve(way * (280 + bulge), -400, way * (240 + bulge), -100, way * 180.0, 0)
                .edge("waist", Role.SEAM)
                .line(0, 0)
                .edge("centre", Role.FOLD)
                .line(0, -600)
                .piece();
    }

    private static Draft skirt(double bulge, boolean otherSide) {
        return new Draft(
                "skirt",
                List.of(half("front", bulge, false), half("back", bulge, otherSide)),
                List.of(Seam.flat("side", Seam.Mate.of("front", "side seam"), Seam.Mate.of("back", "side seam"))));
    }

    /**
     * Either side lies on the edge it is sewn to, every point of it, when the godet is carried there: what one tape finds from point
     * to point of the edge, it finds on the godet.
     */
    @ParameterizedTest
    @MethodSource("seeds")
    void inACurvedSeamTheSidesCopyTheSeam(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double bulge = random.nextDouble(-20, 40);
        Draft skirt = skirt(bulge, random.nextBoolean());
        double height = random.nextDouble(100, 500);
        double sweep = random.nextDouble(0.5, 1) * height;
        Piece godet = Godets.inSeam("godet", skirt, skirt.seams().get(0), End.START, height, sweep)
                .draft()
                .piece("godet");
        CurvePath seam = Paper.edge(skirt.piece("front"), "side seam");
        assertThat(Lengths.drawn(godet, "hem")).isCloseTo(sweep, within(1e-8));
        for (String side : List.of("side", "other side")) {
            CurvePath own = Paper.edge(godet, side);
            CurvePath fromHem = side.equals("side") ? own.reversed() : own;
            assertThat(own.length()).isCloseTo(height, within(1e-8));
            for (int i = 0; i <= 4; i++) {
                double one = i * height / 4;
                double other = random.nextDouble(0, height);
                assertThat(fromHem.pointAt(one).distance(fromHem.pointAt(other)))
                        .isCloseTo(seam.pointAt(one).distance(seam.pointAt(other)), within(1e-7));
            }
        }
        assertThat(Checks.piece(godet, 1e-6)).isEmpty();
    }

    /** Seen from above, a seam that bulges out of either half presses into the godet from both sides. */
    @Test
    void aSeamThatBulgesOutMakesHollowSides() {
        for (boolean otherSide : new boolean[] {false, true}) {
            Draft skirt = skirt(60, otherSide);
            Piece godet = Godets.inSeam("godet", skirt, skirt.seams().get(0), End.START, 400, 300)
                    .draft()
                    .piece("godet");
            assertThat(godet.area()).isLessThan(300 * 400 / 2.0 - 1000);
            CurvePath side = Paper.edge(godet, "side");
            Vector2D middle = side.pointAt(200);
            Vector2D chord = side.start().lerp(side.end(), 0.5);
            assertThat(middle.getX()).isGreaterThan(chord.getX());
            assertThat(Paper.edge(godet, "other side").pointAt(200).getX()).isCloseTo(-middle.getX(), within(1e-6));
        }
    }

    @Test
    void impossibleGodetsAreRefused() {
        wrong(
                () -> Godets.forSeam("godet", 100, 320),
                "A godet 100.0 mm high adds at most 314.2 mm to the hem, at 180 degrees: 320.0 mm.");
        wrong(() -> Godets.forSeam("godet", 0, 320), "The height of a godet is more than 0 mm: 0.0 mm.");
        wrong(() -> Godets.forSeam("godet", 100, -1), "What a godet adds to the hem is more than 0 mm: -1.0 mm.");
        wrong(() -> Godets.forSlit("godet", 100, 50, 0), "The allowance of a slit is more than 0 mm: 0.0 mm.");
        assertThat(Godets.angleFor(100, 320)).isInstanceOf(Answer.None.class);
        assertThatThrownBy(() -> Godets.heightFor(180, 4).value())
                .isInstanceOf(DraftingException.class)
                .hasMessage(
                        "Height of a godet that adds 7 1/8 in (18.0 cm): a godet has at most half a turn (asked 229.2°,"
                                + " possible 0.0° to 180.0°).");
        Draft skirt = skirt(20, false);
        Seam side = skirt.seams().get(0);
        assertThatThrownBy(() -> Godets.inSeam("godet", skirt, side, End.START, 2000, 100))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining(
                        "Set 'godet' into 'side': 'side seam' of 'front' is shorter than the godet (asked 78 3/4 in"
                                + " (200.0 cm), possible 0 in (0.0 cm) to");
        Draft unlike = new Draft("skirt", List.of(half("front", 60, false), half("back", -60, false)), skirt.seams());
        assertThatThrownBy(() -> Godets.inSeam("godet", unlike, side, End.START, 500, 300))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining("its two edges are not alike");
        assertThatThrownBy(() -> Godets.inSeam("godet", darted(), side, End.START, 500, 300))
                .isInstanceOf(DraftingException.class)
                .hasMessage("Set 'godet' into 'side': an opening breaks 'side seam' of 'front'.");
        Draft round = skirt(400, false);
        assertThatThrownBy(() -> Godets.inSeam("godet", round, side, End.START, 500, 20))
                .isInstanceOf(DraftingException.class)
                .hasMessage("Set 'godet' into 'side': the seam is so curved that the sides of the godet would cross.");
    }

    private static Draft darted() {
        Piece front = Drawing.of("front")
                .from(0, -600)
                .edge("hem", Role.HEM)
                .line(280, -600)
                .edge("side seam", Role.SEAM)
                .line(280, -310)
                .dart("dart", 150, -300, 280, -290, 0, Leg.BEFORE)
                .line(280, 0)
                .edge("waist", Role.SEAM)
                .line(0, 0)
                .edge("centre", Role.FOLD)
                .line(0, -600)
                .piece();
        return new Draft(
                "skirt", List.of(front, half("back", 0, false)), skirt(0, false).seams());
    }

    private static void wrong(ThrowingCallable call, String message) {
        assertThatThrownBy(call).isInstanceOf(IllegalArgumentException.class).hasMessage(message);
    }
}
