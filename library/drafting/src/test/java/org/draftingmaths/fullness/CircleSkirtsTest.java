package org.draftingmaths.fullness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Bounds2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.check.Checks;
import org.draftingmaths.curve.Inside;
import org.draftingmaths.fullness.CircleSkirts.Lay;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class CircleSkirtsTest {

    static Stream<Long> seeds() {
        return LongStream.range(0, 200).boxed();
    }

    /** How often the drawn piece goes into its panel. */
    private static int times(Lay lay) {
        return switch (lay) {
            case TWO_FOLDS -> 4;
            case ON_FOLD -> 2;
            case OPEN, END_ON_GRAIN -> 1;
        };
    }

    /** Waist and hem of all panels, measured along the pieces; depth everywhere; area by the mean of the arcs; checks. */
    @ParameterizedTest
    @MethodSource("seeds")
    void waistAndHemAreWhatWasAsked(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double waist = random.nextDouble(450, 1300);
        double length = random.nextDouble(150, 1200);
        double share = random.nextDouble(0.05, 3.5);
        double stretch = random.nextDouble(0, 0.1);
        CircleSkirt skirt = new CircleSkirt(waist, length, share, stretch);
        int panels = (int) Math.ceil(share) + random.nextInt(3);
        Lay lay = new Lay[] {Lay.ON_FOLD, Lay.OPEN, Lay.END_ON_GRAIN}[random.nextInt(3)];
        Drafted drafted = CircleSkirts.draft("skirt", skirt, panels, lay);

        double waists = 0;
        double hems = 0;
        double area = 0;
        for (Piece piece : drafted.draft().pieces()) {
            waists += times(lay) * Lengths.drawn(piece, "waist");
            hems += times(lay) * Lengths.drawn(piece, "hem");
            area += times(lay) * piece.area();
            assertThat(Inside.of(
                            Paper.outline(piece), piece.grain().orElseThrow().from(), 1e-6))
                    .isEqualTo(Inside.Where.INSIDE);
            assertThat(Inside.of(
                            Paper.outline(piece), piece.grain().orElseThrow().to(), 1e-6))
                    .isEqualTo(Inside.Where.INSIDE);
        }
        assertThat(waists * (1 + stretch)).isCloseTo(waist, within(1e-9));
        assertThat(hems - waists).isCloseTo(2 * Math.PI * share * length, within(1e-8));
        assertThat(area).isCloseTo(length * (waists + hems) / 2, within(1e-9 * area));
        assertThat(drafted.budget().area()).isCloseTo(area - waists * length, within(1e-9 * area));
        assertThat(drafted.budget().edges().get("hem")).isCloseTo(hems - waists, within(1e-8));
        assertThat(Checks.all(drafted.draft(), 1e-6)).isEmpty();
    }

    /** Every piece lies in the width of cloth that is said to do, and touches both its edges. */
    @ParameterizedTest
    @MethodSource("seeds")
    void clothWidthIsThatOfThePiece(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        CircleSkirt skirt = CircleSkirt.of(
                random.nextDouble(500, 1200), random.nextDouble(200, 1000), random.nextDouble(0.05, 0.99));
        for (Lay lay : new Lay[] {Lay.OPEN, Lay.END_ON_GRAIN}) {
            Piece piece =
                    CircleSkirts.draft("skirt", skirt, 1, lay).draft().pieces().get(0);
            assertThat(piece.grain().orElseThrow().direction().distance(Vector2D.of(0, -1)))
                    .isLessThan(1e-12);
            Bounds2D bounds = Paper.outline(piece).bounds();
            assertThat(CircleSkirts.clothWidth(skirt, 1, lay))
                    .isCloseTo(bounds.getMax().getX() - bounds.getMin().getX(), within(1e-9));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void backwardsIsTheInverse(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double waist = random.nextDouble(450, 1300);
        double length = random.nextDouble(150, 1200);
        double share = random.nextDouble(0.05, 3.5);
        CircleSkirt skirt = CircleSkirt.of(waist, length, share);
        assertThat(CircleSkirts.shareForSweep(waist, length, skirt.sweep()).value())
                .isCloseTo(share, within(1e-9));
        assertThat(CircleSkirts.lengthForSweep(waist, share, skirt.sweep()).value())
                .isCloseTo(length, within(1e-9));
        int panels = (int) Math.ceil(share);
        for (Lay lay : new Lay[] {Lay.ON_FOLD, Lay.OPEN, Lay.END_ON_GRAIN}) {
            double width = CircleSkirts.clothWidth(skirt, panels, lay);
            assertThat(CircleSkirts.lengthForCloth(waist, share, panels, lay, width)
                            .value())
                    .isCloseTo(length, within(1e-9));
        }
    }

    @Test
    void aFullCircleIsAQuarterOnTwoFoldsOrAHalfOnOne() {
        CircleSkirt full = CircleSkirt.of(720, 600, 1);
        Piece quarter = CircleSkirts.draft("skirt", full, 1, Lay.TWO_FOLDS)
                .draft()
                .pieces()
                .get(0);
        assertThat(quarter.edge("centre front").role()).isEqualTo(Role.FOLD);
        assertThat(quarter.edge("side").role()).isEqualTo(Role.FOLD);
        assertThat(Lengths.drawn(quarter, "waist")).isCloseTo(180, within(1e-9));
        Piece half = CircleSkirts.draft("skirt", full).draft().pieces().get(0);
        assertThat(half.edge("centre").role()).isEqualTo(Role.FOLD);
        assertThat(half.edge("centre back").role()).isEqualTo(Role.SEAM);
        assertThat(Lengths.drawn(half, "waist")).isCloseTo(360, within(1e-9));
    }

    @Test
    void moreThanACircleComesInSeveralPieces() {
        Drafted skirt = CircleSkirts.draft("skirt", CircleSkirt.of(720, 600, 1.5));
        assertThat(skirt.draft().pieces()).extracting(Piece::name).containsExactly("skirt 1", "skirt 2");
        assertThat(skirt.draft().seams()).hasSize(1);
    }

    /** The waist measured along, when the radius is drawn 1 mm too long, is 2 pi k mm too long. */
    @ParameterizedTest
    @CsvSource({"0.25", "0.5", "1"})
    void anErrorOfTheRadiusGrows(double share) {
        CircleSkirt skirt = CircleSkirt.of(720, 600, share);
        RingSector wrong = new RingSector(skirt.radius() + 1, 600, skirt.angle());
        assertThat(skirt.waistError(1)).isCloseTo(wrong.top() - 720, within(1e-9));
    }

    @Test
    void itIsTold() {
        assertThat(CircleSkirts.draft("skirt", new CircleSkirt(720, 600, 1, 0.02))
                        .ledger()
                        .sentences(Steps.DEFAULT))
                .containsExactly(
                        "The radius to the stitch line is 4 3/8 in (11.2 cm).",
                        "The length of the waist as cut is 27 3/4 in (70.6 cm).",
                        "The length of the hem is 176 1/4 in (447.6 cm).",
                        "A radius that is 1 mm wrong makes the waist 6.3 mm wrong: rounded to the nearest 1/8 in it may be"
                                + " 1.59 mm wrong, and the waist 9.97 mm. Measure the waist along before cutting.",
                        "The fullness takes 1753.0 sq in (11309.7 sq cm) of cloth, 37 1/8 in (94.2 cm) at '25 % of the depth', 74"
                                + " 1/4 in (188.5 cm) at '50 % of the depth', 111 3/8 in (282.7 cm) at '75 % of the depth', 148 3/8"
                                + " in (377.0 cm) along 'hem'.");
    }

    @Test
    void whatCannotBeReachedIsNone() {
        assertThatThrownBy(() -> CircleSkirts.shareForSweep(720, 600, 700).value())
                .isInstanceOf(DraftingException.class)
                .hasMessage(
                        "Part of a circle for a hem of 27 1/2 in (70.0 cm): the hem is longer than the waist, and that of 8"
                                + " circles is the longest (asked 27 1/2 in (70.0 cm), possible 28 3/8 in (72.0 cm) to 1215 3/4 in"
                                + " (3087.9 cm)).");
        assertThat(CircleSkirts.lengthForSweep(720, 1, 720)).isInstanceOf(Answer.None.class);
        assertThat(CircleSkirts.lengthForCloth(720, 0.5, 1, Lay.OPEN, 400)).isInstanceOf(Answer.None.class);
    }

    @Test
    void badInputIsRefused() {
        wrong(() -> CircleSkirt.of(0, 600, 1), "The waist of a circle skirt is more than 0 mm: 0.0 mm.");
        wrong(() -> CircleSkirt.of(720, -1, 1), "The length of a circle skirt is more than 0 mm: -1.0 mm.");
        wrong(() -> CircleSkirt.of(720, 600, 0), "A circle skirt is cut from more than 0 and at most 8 circles: 0.0.");
        wrong(() -> CircleSkirt.of(720, 600, 9), "A circle skirt is cut from more than 0 and at most 8 circles: 9.0.");
        wrong(
                () -> new CircleSkirt(720, 600, 1, 0.5),
                "The stretch of a waist edge is a share of its length from 0 to less than 0.5: 0.5.");
        CircleSkirt full = CircleSkirt.of(720, 600, 1);
        wrong(
                () -> CircleSkirts.draft("skirt", full, 0, Lay.OPEN),
                "The panels of a circle skirt are from 1 to 24: 0.");
        wrong(
                () -> CircleSkirts.draft("skirt", full, 1, Lay.OPEN),
                "A panel drawn whole has less than 360 degrees, or it would touch itself, but it was asked for 1 panel(s) of"
                        + " 360.0 degrees.");
        wrong(
                () -> CircleSkirts.draft("skirt", CircleSkirt.of(720, 600, 1.5), 1, Lay.ON_FOLD),
                "A panel on a fold has at most 360 degrees, but it was asked for 1 panel(s) of 540.0 degrees.");
        wrong(
                () -> CircleSkirts.draft("skirt", CircleSkirt.of(720, 600, 0.5), 1, Lay.TWO_FOLDS),
                "A quarter on two folds, which lie square to one another, is for one panel of 360 degrees, but it was asked"
                        + " for 1 panel(s) of 180.0 degrees.");
        wrong(
                () -> CircleSkirts.shareForSweep(Double.NaN, 600, 3000),
                "The waist of a circle skirt is more than 0 mm: NaN mm.");
    }

    private static void wrong(org.assertj.core.api.ThrowableAssert.ThrowingCallable call, String message) {
        assertThatThrownBy(call).isInstanceOf(IllegalArgumentException.class).hasMessage(message);
    }
}
