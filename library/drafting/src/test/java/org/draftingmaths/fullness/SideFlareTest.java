package org.draftingmaths.fullness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.assertj.core.groups.Tuple;
import org.draftingmaths.check.Checks;
import org.draftingmaths.check.DraftLimits;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Panels;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SideFlareTest {

    static Stream<Long> seeds() {
        return LongStream.range(0, 200).boxed();
    }

    /** A skirt half: a straight side up to the hip, then a curve to the waist; the side is drawn upwards or downwards. */
    private static Piece skirt(String name, double hip, double waist, double height, boolean upwards) {
        Drawing drawing = Drawing.of(name);
        if (upwards) {
            return drawing.from(0, 0)
                    .edge("hem", Role.HEM)
                    .line(hip, 0)
                    .edge("side", Role.SEAM)
                    .line(hip, height - 200)
                    .curve(hip, height - 120, hip - 10, height - 60, waist, height)
                    .edge("waist", Role.SEAM)
                    .line(0, height)
                    .edge("centre", Role.FOLD)
                    .line(0, 0)
                    .piece();
        }
        return drawing.from(0, 0)
                .edge("centre", Role.FOLD)
                .line(0, height)
                .edge("waist", Role.SEAM)
                .line(waist, height)
                .edge("side", Role.SEAM)
                .curve(hip - 10, height - 60, hip, height - 120, hip, height - 200)
                .line(hip, 0)
                .edge("hem", Role.HEM)
                .line(0, 0)
                .piece();
    }

    /** The side keeps its length, the hem comes to it square and starts as it did, front and back turn alike and match. */
    @ParameterizedTest
    @MethodSource("seeds")
    void theSideKeepsItsLengthAndTheHemIsSquare(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double hip = random.nextDouble(220, 280);
        double height = random.nextDouble(500, 700);
        double more = random.nextDouble(0, 20);
        Piece front = skirt("front", hip, hip - 50, height, random.nextBoolean());
        Piece back = skirt("back", hip - more, hip - more - 50, height, random.nextBoolean());
        double from = height - 200 + random.nextDouble(-30, 30);
        double blend = random.nextBoolean() ? 0 : random.nextDouble(10, 60);
        SideFlare flare = new SideFlare(from, random.nextDouble(10, 120), blend);
        boolean same = Paper.edge(front, "side").start().getY()
                == Paper.edge(back, "side").start().getY();
        Seam seam = Seam.flat(
                "side",
                Seam.Mate.of("front", "side"),
                same ? Seam.Mate.of("back", "side") : Seam.Mate.backwards("back", "side"));
        Draft draft = new Draft("skirt", List.of(front, back), List.of(seam));
        SideFlare.Both both = flare.atBoth(draft, seam, "hem", "hem");

        for (Reworked done : List.of(both.first(), both.second())) {
            Piece piece = done.piece();
            Piece was = piece.name().equals("front") ? front : back;
            assertThat(Lengths.base(piece, "side"))
                    .as("seed %d", seed)
                    .isCloseTo(was.edge("side").length(), within(1e-9));
            CurvePath side = downwards(Paper.edge(piece, "side"));
            CurvePath hem = outwards(Paper.edge(piece, "hem"));
            assertThat(side.endTangent().dot(hem.endTangent())).isCloseTo(0, within(1e-9));
            assertThat(hem.startTangent().getY()).isCloseTo(0, within(1e-9));
            assertThat(hem.end().getY()).as("the hem's end is raised").isGreaterThan(0);
            assertThat(hem.bounds().getMin().getY()).as("the hem does not dip").isGreaterThan(-1e-9);
            assertThat(piece.edge("waist")).isEqualTo(was.edge("waist"));
            if (blend > 0) {
                assertThat(corners(side)).as("blended").isLessThan(1e-6);
            }
            assertThat(Panels.undo(done).sameCloth(was, 1e-9)).isTrue();
        }
        assertThat(both.firstTurn()).isCloseTo(both.secondTurn(), within(1e-9));
        Draft flared = draft.with(both.first().piece()).with(both.second().piece());
        List<Tuple> now = told(flared);
        double turned = Math.min(
                corners(downwards(Paper.edge(both.first().piece(), "side"))),
                corners(downwards(Paper.edge(both.second().piece(), "side"))));
        assertThat(now.stream().anyMatch(SideFlareTest::isCorner))
                .as("a corner at the hip is told where it is not blended and turns by more than 3 degrees")
                .isEqualTo(blend == 0 && turned > DraftLimits.COMMON.kink());
        now.removeIf(SideFlareTest::isCorner);
        assertThat(now)
                .as("else nothing but what was so before: the waists of these plain panels meet at a peak")
                .isEqualTo(told(draft))
                .containsExactly(
                        tuple(Finding.Kind.LINE_BREAKS, "'waist' of 'front' and 'waist' of 'back' at seam 'side'"));
        assertThat(peak(flared)).as("by the same angle").isCloseTo(peak(draft), within(1e-9));
    }

    private static double peak(Draft draft) {
        return Checks.all(draft, 1e-6).stream()
                .filter(finding -> finding.kind() == Finding.Kind.LINE_BREAKS)
                .findFirst()
                .orElseThrow()
                .excess();
    }

    private static boolean isCorner(Tuple told) {
        return told.toList().get(0) == Finding.Kind.EDGE_CORNER;
    }

    private static List<Tuple> told(Draft draft) {
        return Checks.all(draft, 1e-6).stream()
                .map(finding -> tuple(finding.kind(), finding.where()))
                .collect(Collectors.toCollection(ArrayList::new));
    }

    private static CurvePath downwards(CurvePath side) {
        return side.start().getY() > side.end().getY() ? side : side.reversed();
    }

    private static CurvePath outwards(CurvePath hem) {
        return hem.end().getX() > hem.start().getX() ? hem : hem.reversed();
    }

    private static double corners(CurvePath line) {
        double widest = 0;
        for (int i = 1; i < line.curves().size(); i++) {
            widest = Math.max(
                    widest,
                    line.curves()
                            .get(i - 1)
                            .tangent(1)
                            .distance(line.curves().get(i).tangent(0)));
        }
        return widest;
    }

    /** Without a blend: a straight side turns by atan(x / height), and its end rises by the height less its cosine. */
    @Test
    void theFiguresOfAStraightSide() {
        Piece panel = Drawing.of("panel")
                .from(0, 0)
                .edge("hem", Role.HEM)
                .line(250, 0)
                .edge("side", Role.SEAM)
                .line(250, 600)
                .edge("waist", Role.SEAM)
                .line(0, 600)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .piece();
        Reworked flared = new SideFlare(400, 50, 0).at(panel, "side", "hem");
        double turn = Math.atan(50.0 / 400);
        CurvePath side = Paper.edge(flared.piece(), "side");
        assertThat(side.start().getX()).isCloseTo(250 + 400 * Math.sin(turn), within(1e-9));
        assertThat(side.start().getY()).isCloseTo(400 - 400 * Math.cos(turn), within(1e-9));
        assertThat(flared.ledger().sentences(Steps.DEFAULT).get(0))
                .isEqualTo(
                        "Flare 'side' of 'panel' by 2 in (5.0 cm) at 'hem', straight from 15 3/4 in (40.0 cm) above it,"
                                + " turned by 7.1°; raise the hem's end until the seam is as long as before, and square it there.");
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theFlareForAHemGivesThatHem(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Piece skirt = skirt("skirt", 240, 190, 600, random.nextBoolean());
        double from = random.nextDouble(300, 420);
        double length = 240 + random.nextDouble(5, 150);
        double added = SideFlare.added(skirt, "side", "hem", from, 30, length).value();
        Piece flared = new SideFlare(from, added, 30).at(skirt, "side", "hem").piece();
        assertThat(Lengths.base(flared, "hem")).as("seed %d", seed).isCloseTo(length, within(1e-9));
        assertThat(SideFlare.added(skirt, "side", "hem", from, 30, 200)).isInstanceOf(Answer.None.class);
        assertThat(SideFlare.added(skirt, "side", "hem", from, 30, 900)).isInstanceOf(Answer.None.class);
    }

    @Test
    void badInputIsRefusedInPlainWords() {
        Piece skirt = skirt("skirt", 240, 190, 600, true);
        assertThatThrownBy(() -> new SideFlare(400, 0, 30))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(
                        "Flare begins more than 0 mm above the hem, adds more than 0 mm, and is blended over less than that"
                                + " height: from 400.0 mm, added 0.0 mm, blend 30.0 mm.");
        assertThatThrownBy(() -> new SideFlare(400, 50, 30).at(skirt, "side", "centre"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("'side' does not meet 'centre' in 'skirt'.");
        assertThatThrownBy(() -> new SideFlare(700, 50, 30).at(skirt, "side", "hem"))
                .isInstanceOf(DraftingException.class)
                .hasMessageStartingWith(
                        "Flare 'side': the seam does not reach so far above the hem, and the blend above that");
    }
}
