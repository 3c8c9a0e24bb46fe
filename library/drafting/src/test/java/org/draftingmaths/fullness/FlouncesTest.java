package org.draftingmaths.fullness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.check.Checks;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Inside;
import org.draftingmaths.curve.Nearest;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.piece.Flat;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FlouncesTest {

    static Stream<Long> seeds() {
        return LongStream.range(0, 200).boxed();
    }

    private static double sum(Drafted drafted, String edge) {
        return drafted.draft().pieces().stream()
                .mapToDouble(piece -> Lengths.drawn(piece, edge))
                .sum();
    }

    /** Inner edges are the seam, hems the hem; every ring leaves its gap; joins walk; areas. */
    @ParameterizedTest
    @MethodSource("seeds")
    void ringsCloseAndCoverTheSeam(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double seam = random.nextDouble(200, 4000);
        double depth = random.nextDouble(30, 500);
        double ratio = random.nextDouble(1.1, 4);
        double free = random.nextDouble(5, 40);
        Flounce flounce = new Flounce(seam, depth, seam * ratio, free);
        Drafted drafted = Flounces.draft("flounce", flounce);

        assertThat(sum(drafted, "seam")).isCloseTo(seam, within(1e-8));
        assertThat(sum(drafted, "hem")).isCloseTo(seam * ratio, within(1e-8));
        assertThat(Checks.all(drafted.draft(), 1e-6)).isEmpty();
        double area = 0;
        for (Piece piece : drafted.draft().pieces()) {
            double circle = 2 * Math.PI * depth / (ratio - 1);
            assertThat(circle - Lengths.drawn(piece, "seam")).isGreaterThan(free - 1e-6);
            assertThat(Lengths.drawn(piece, "end")).isCloseTo(depth, within(1e-9));
            area += piece.area();
            assertThat(Inside.of(
                            Paper.outline(piece), piece.grain().orElseThrow().to(), 1e-6))
                    .isEqualTo(Inside.Where.INSIDE);
        }
        assertThat(drafted.budget().area()).isCloseTo(area - seam * depth, within(1e-9 * area));
        int rings = drafted.draft().pieces().size();
        if (rings > 1) {
            assertThat(seam / (rings - 1))
                    .as("one ring fewer leaves less")
                    .isGreaterThan(2 * Math.PI * depth / (ratio - 1) - free);
        }
        assertThat(drafted.draft().seams()).hasSize(rings - 1);
    }

    /** On either side of every join the grain lies at the same angle to it. */
    @ParameterizedTest
    @MethodSource("seeds")
    void joinsLieAlikeToTheGrain(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Drafted drafted = Flounces.draft(
                "flounce", Flounce.byRatio(random.nextDouble(1000, 4000), 100, random.nextDouble(1.5, 3)));
        Piece piece = drafted.draft().pieces().get(0);
        Vector2D grain = piece.grain().orElseThrow().direction();
        double end = Paper.edge(piece, "end").startTangent().dot(grain);
        double other = Paper.edge(piece, "other end").reversed().startTangent().dot(grain);
        assertThat(end).isCloseTo(other, within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void backwardsIsTheInverse(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double seam = random.nextDouble(200, 4000);
        double depth = random.nextDouble(30, 500);
        double ratio = random.nextDouble(1.1, 4);
        Flounce flounce = Flounce.byRatio(seam, depth, ratio);
        assertThat(Flounces.depthForHem(seam, flounce.radius(), flounce.hem()).value())
                .isCloseTo(depth, within(1e-9));
        assertThat(Flounces.ringsForRatio(seam, depth, ratio, Flounce.FREE).value())
                .isEqualTo(Flounces.draft("flounce", flounce).draft().pieces().size());
        RingSector between =
                RingSector.between(flounce.ring().top(), flounce.ring().bottom(), depth);
        assertThat(between.radius()).isCloseTo(flounce.radius(), within(1e-8));
        double fullest = Flounces.fullest(seam, depth, 3, Flounce.FREE);
        assertThat(Flounces.ringsForRatio(seam, depth, fullest * (1 + 1e-9), Flounce.FREE)
                        .value())
                .isEqualTo(4);
        assertThat(Flounces.ringsForRatio(seam, depth, fullest * (1 - 1e-9), Flounce.FREE)
                        .value())
                .isLessThanOrEqualTo(3);
    }

    @Test
    void oneRingForALongSeamCollapses() {
        assertThat(Flounces.fullest(3000, 200, 1, 20)).isCloseTo(1.416, within(0.001));
        assertThat(Flounces.fullest(3000, 200, 5, 20)).isCloseTo(3.027, within(0.001));
    }

    // ------------------------------------------------------------------------------------------------ spiral

    /** The seam exactly; the depth wherever it is measured; no corner; each turn clears the one before it; the area by JTS. */
    @ParameterizedTest
    @MethodSource("seeds")
    void aSpiralKeepsItsLaws(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        SpiralFlounce flounce = new SpiralFlounce(
                random.nextDouble(100, 6000),
                random.nextDouble(30, 300),
                random.nextDouble(10, 200),
                random.nextDouble(5, 30));
        Piece piece = Flounces.draft("spiral", flounce).draft().pieces().get(0);
        CurvePath inner = Paper.edge(piece, "seam");
        CurvePath outer = Paper.edge(piece, "hem");

        assertThat(inner.length()).isCloseTo(flounce.seam(), within(1e-8));
        assertThat(Inside.of(Paper.outline(piece), piece.grain().orElseThrow().to(), 1e-6))
                .isEqualTo(Inside.Where.INSIDE);
        assertThat(outer.length()).isCloseTo(flounce.hem(), within(1e-8));
        assertThat(Checks.piece(piece, 1e-6)).isEmpty();
        assertThat(Flat.polygon(Paper.outline(piece)).isSimple()).isTrue();
        assertThat(Flounces.draft("spiral", flounce).budget().area())
                .isCloseTo(piece.area() - flounce.seam() * flounce.depth(), within(1e-6 * piece.area()));
        for (int i = 0; i < 10; i++) {
            Vector2D on = outer.pointAt(random.nextDouble(0, outer.length()));
            assertThat(inner.curves().stream()
                            .mapToDouble(arc -> Math.abs(on.distance(((org.draftingmaths.curve.Arc) arc).centre())
                                    - ((org.draftingmaths.curve.Arc) arc).radius()
                                    - flounce.depth()))
                            .min()
                            .orElseThrow())
                    .isLessThan(1e-9);
        }
        for (int i = 0; i + 1 < inner.curves().size(); i++) {
            Vector2D before = inner.curves().get(i).tangent(1);
            assertThat(before.distance(inner.curves().get(i + 1).tangent(0))).isLessThan(1e-9);
        }
        List<SpiralFlounce.Interval> intervals = flounce.intervals();
        if (intervals.size() > 4) {
            double oneTurnOn = intervals.get(4).from() + intervals.get(4).length() / 2;
            Vector2D on = inner.pointAt(flounce.seam() - oneTurnOn);
            assertThat(Nearest.of(outer, on).distance()).isCloseTo(flounce.free(), within(1e-6));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aSpiralBackwardsIsTheInverse(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        SpiralFlounce flounce = new SpiralFlounce(
                random.nextDouble(100, 6000),
                random.nextDouble(30, 300),
                random.nextDouble(10, 200),
                random.nextDouble(5, 30));
        Answer answer = SpiralFlounce.radiusForHem(flounce.seam(), flounce.depth(), flounce.free(), flounce.hem());
        assertThat(answer.value()).isCloseTo(flounce.radius(), within(1e-8));
    }

    @Test
    void aSpiralTellsTheRatioOfEachInterval() {
        Drafted spiral = Flounces.draft("spiral", new SpiralFlounce(400, 80, 60, 20));
        assertThat(spiral.ledger().sentences(Steps.DEFAULT))
                .contains(
                        "Interval 1, from 0 in (0.0 cm) to 3 3/4 in (9.4 cm) along the seam, has the ratio 2.33.",
                        "Interval 3, from 9 in (22.8 cm) to 15 3/4 in (40.0 cm) along the seam, has the ratio 1.73.");
        assertThat(spiral.draft().pieces().get(0).notches()).hasSize(4);
    }

    @Test
    void whatCannotBeReachedIsNone() {
        assertThatThrownBy(() -> SpiralFlounce.radiusForHem(1000, 100, 20, 900).value())
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining(
                        "First radius of a spiral flounce for a hem of 35 3/8 in (90.0 cm): a hem lies between the"
                                + " seam and that of a spiral from a point (asked 35 3/8 in (90.0 cm), possible 39 3/8 in (100.0 cm) to");
        assertThat(SpiralFlounce.radiusForHem(1000, 100, 20, 3000)).isInstanceOf(Answer.None.class);
        assertThat(Flounces.depthForHem(1000, 200, 1000)).isInstanceOf(Answer.None.class);
        assertThat(Flounces.ringsForRatio(1000, 200, 1, 20)).isInstanceOf(Answer.None.class);
        assertThat(Flounces.ringsForRatio(1000, 200, 1000, 20)).isInstanceOf(Answer.None.class);
    }

    @Test
    void badInputIsRefused() {
        wrong(() -> Flounce.byHem(0, 100, 200), "The seam of a flounce is more than 0 mm: 0.0 mm.");
        wrong(() -> Flounce.byHem(100, 0, 200), "The depth of a flounce is more than 0 mm: 0.0 mm.");
        wrong(() -> Flounce.byHem(100, 50, 100), "The hem of a flounce is more than its seam of 100.0 mm: 100.0 mm.");
        wrong(() -> Flounce.byRatio(100, 50, 1), "The ratio of a flounce is more than 1: 1.0.");
        assertThatThrownBy(() -> Flounce.byRatio(100, 50, 20))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("allowed is a hem less than 1670.79");
        wrong(() -> new SpiralFlounce(100, 50, 0, 20), "The first radius of a spiral is more than 0 mm: 0.0 mm.");
        wrong(
                () -> new SpiralFlounce(100, 50, 20, 0),
                "What one turn of a spiral leaves free to the next is more than 0 mm: 0.0 mm.");
        wrong(
                () -> new RingSector(10, 10, 7),
                "The angle of a ring is more than 0 and at most 2 pi (a full turn): 7.0 rad.");
        wrong(() -> RingSector.between(100, 90, 10), "The bottom of a ring is more than its top of 100.0 mm: 90.0 mm.");
    }

    private static void wrong(org.assertj.core.api.ThrowableAssert.ThrowingCallable call, String message) {
        assertThatThrownBy(call).isInstanceOf(IllegalArgumentException.class).hasMessage(message);
    }
}
