package org.draftingmaths.piece;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.dart.Darts;
import org.draftingmaths.ledger.DraftingException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Shaped legs and double-pointed darts: mirrored, of one length, and counted in closed girths. */
class ShapedDartTest {

    static Stream<Long> seeds() {
        return LongStream.range(0, 200).boxed();
    }

    /** A square of 200 with an upright dart of 20 by 120 at its foot; level lines at 0.1, 60 and 110 mm. */
    private static Piece square(Use.Dart use) {
        return Drawing.of("square")
                .from(0, 0)
                .edge("bottom", Role.SEAM)
                .line(90, 0)
                .dart("dart", 100, 120, 110, 0, 0, Leg.BEFORE)
                .line(200, 0)
                .edge("side", Role.SEAM)
                .line(200, 200)
                .edge("top", Role.SEAM)
                .line(0, 200)
                .edge("fold", Role.FOLD)
                .line(0, 0)
                .level("middle", -10, 60, 300, 60)
                .level("high", -10, 110, 300, 110)
                .level("above", -10, 150, 300, 150)
                .piece()
                .using("dart", use);
    }

    private static void refused(ThrowingCallable call, String message) {
        assertThatThrownBy(call).isInstanceOf(DraftingException.class).hasMessage(message);
    }

    private static void wrong(ThrowingCallable call, String message) {
        assertThatThrownBy(call).isInstanceOf(IllegalArgumentException.class).hasMessage(message);
    }

    /** Both stitch lines are mirror images in the fold line and of one length, whatever the shape. */
    @ParameterizedTest
    @MethodSource("seeds")
    void stitchLinesAreMirrorImages(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        LegShape shape = new LegShape(List.of(
                new LegShape.Off(random.nextDouble(0.1, 0.4), random.nextDouble(-1, 4)),
                new LegShape.Off(random.nextDouble(0.5, 0.8), random.nextDouble(-0.3, 4))));
        Piece piece = square(new Use.Dart(random.nextDouble(0, 20), Leg.BEFORE).shaped(shape));
        CurvePath before = StitchLines.of(piece, "dart", Leg.BEFORE);
        CurvePath after = StitchLines.of(piece, "dart", Leg.AFTER);
        assertThat(after.length()).as("seed %d", seed).isCloseTo(before.length(), within(1e-9));
        for (double share : new double[] {0, 0.2, 0.5, 0.9, 1}) {
            Vector2D one = before.pointAt(share * before.length());
            Vector2D other = after.pointAt(share * after.length());
            assertThat(one.getX() + other.getX()).isCloseTo(200, within(1e-6));
            assertThat(one.getY()).isCloseTo(other.getY(), within(1e-6));
        }
        assertThat(before.end().distance(DartEnd.sewnTip(piece, "dart"))).isLessThan(1e-9);
        assertThat(before.start()).isEqualTo(Vector2D.of(90, 0));
    }

    /** One place at the middle gives a parabola: 3 mm at half way is 4 * 3 * 1/4 * 3/4 = 2.25 mm at a quarter. */
    @Test
    void oneBowIsAParabola() {
        Piece piece = square(new Use.Dart(0, Leg.BEFORE).shaped(LegShape.bowed(0.5, 3)));
        Vector2D foot = Vector2D.of(90, 0);
        Vector2D tip = Vector2D.of(100, 120);
        Vector2D out = Vector2D.of(-120, 10).normalize();
        CurvePath line = StitchLines.of(piece, "dart", Leg.BEFORE);
        for (double[] place : new double[][] {{0.25, 2.25}, {0.5, 3}, {0.75, 2.25}}) {
            Vector2D expected = foot.lerp(tip, place[0]).add(out.multiply(place[1]));
            assertThat(org.draftingmaths.curve.Nearest.of(line, expected).distance())
                    .isLessThan(1e-9);
        }
        assertThat(line.curves().get(0).end().distance(foot.lerp(tip, 0.5).add(out.multiply(3))))
                .isLessThan(1e-9);
    }

    /**
     * By hand: a leg rises from {@code (half, 0)} to {@code (0, height)} with the offset {@code 4 o s (1 - s)} outwards, square to
     * it. Where it is at a level, found by halving, it stands half the width of what the dart takes in there from the fold line.
     */
    private static double halfWidth(double half, double height, double out, double level) {
        double leg = Math.hypot(half, height);
        double low = 0;
        double high = 1;
        for (int i = 0; i < 60; i++) {
            double s = (low + high) / 2;
            double y = height * s + 4 * out * s * (1 - s) * half / leg;
            if (y < level) {
                low = s;
            } else {
                high = s;
            }
        }
        return half * (1 - low) + 4 * out * low * (1 - low) * height / leg;
    }

    /** A straight dart of 20 takes in 10 half way up; bowed outwards it takes in more, bowed inwards less. */
    @Test
    void outwardsTightensAndInwardsLoosens() {
        for (double out : new double[] {-2, 0, 2, 5}) {
            Piece piece = square(new Use.Dart(0, Leg.BEFORE).shaped(LegShape.bowed(0.5, out)));
            double takenIn = 2 * halfWidth(10, 120, out, 60);
            assertThat(takenIn).isCloseTo(10 + 2 * out, within(0.05));
            assertThat(Girths.closed(piece, "middle")).isCloseTo(200 - takenIn, within(1e-6));
        }
    }

    /** Between apex and sewn tip nothing is stitched: set back 30 of 120, the line 10 below the apex crosses whole cloth. */
    @Test
    void whatIsNotStitchedStaysIn() {
        Piece back = square(new Use.Dart(30, Leg.BEFORE));
        assertThat(Girths.closed(back, "high")).isCloseTo(200, within(1e-9));
        assertThat(Girths.closed(back, "above")).isCloseTo(200, within(1e-9));
        // by hand: the sewn dart is 90 deep and 20 wide, 30 below its point it is 20 * 30 / 90 wide
        assertThat(Girths.closed(back, "middle")).isCloseTo(200 - 20 * 30.0 / 90, within(1e-9));
        Piece open = Darts.leave(back, "dart", Use.Kind.GATHERS).piece();
        assertThat(Girths.closed(open, "middle")).as("gathers stay in").isCloseTo(200, within(1e-9));
    }

    @Test
    void shapesThatCannotBeAreRefused() {
        refused(
                () -> square(new Use.Dart(0, Leg.BEFORE).shaped(LegShape.bowed(0.5, -6))),
                "Shape the legs of 'dart': the two would meet on the fold line (asked -6.00 mm outwards, possible more than"
                        + " -2.51 mm).");
        refused(
                () -> square(new Use.Dart(0, Leg.BEFORE).shaped(LegShape.bowed(0.5, 120))),
                "Shape the legs of 'dart': the stitch line would leave the cloth at (0.0, 39.2), where it meets 'fold' 98.4 mm"
                        + " from the mouth.");
        wrong(
                () -> LegShape.bowed(1, 3),
                "A dart's leg is shaped between mouth and point, at a share of more than 0 and less than 1: 1.0.");
        wrong(() -> LegShape.bowed(0.5, Double.NaN), "An offset of a dart's leg is finite: NaN mm.");
        wrong(
                () -> new LegShape(List.of(new LegShape.Off(0.5, 1), new LegShape.Off(0.4, 1))),
                "The places of a dart's shape go from the mouth to the point: share 0.4 follows 0.5.");
        refused(
                () -> Darts.rotate(
                        square(new Use.Dart(0, Leg.BEFORE).shaped(LegShape.bowed(0.5, 3))),
                        "dart",
                        Spot.on("side", 100),
                        "new"),
                "Rotate 'dart' to 'side' at 100.0 mm: its legs are shaped for where they lie, and nothing turns about a curve;"
                        + " give it straight legs first, with Piece.using.");
    }

    /** A set-back keeps the shape, pressing keeps it too. */
    @Test
    void theShapeIsPartOfTheUse() {
        Piece piece = square(new Use.Dart(0, Leg.BEFORE).shaped(LegShape.bowed(0.5, 3)));
        Use.Dart use = (Use.Dart)
                Darts.setBack(piece, "dart", 20).piece().opening("dart").mouth().use();
        assertThat(use.shape()).isEqualTo(LegShape.bowed(0.5, 3));
        assertThat(use.pressedOpen().pressed(Leg.AFTER).shape()).isEqualTo(LegShape.bowed(0.5, 3));
        assertThat(use.setBack()).isEqualTo(20);
    }

    /** A double-pointed dart 200 long and 30 wide at a third of the way, from (150, 250) down to (150, 50). */
    private static Piece fishEye(LegShape shape) {
        return Drawing.of("back")
                .from(0, 0)
                .edge("hem", Role.HEM)
                .line(300, 0)
                .edge("side", Role.SEAM)
                .line(300, 300)
                .edge("top", Role.SEAM)
                .line(0, 300)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .insideDart("waist dart", 150, 250, 150, 50, 0.4, 30, shape)
                .level("waist", -10, 170, 400, 170)
                .level("half way up", -10, 210, 400, 210)
                .level("half way down", -10, 110, 400, 110)
                .piece();
    }

    /** Plain geometry: 30 at the waist, 15 half way to either point; both sides are of one length. */
    @Test
    void doublePointedDartsTakeInTheirWidth() {
        Piece piece = fishEye(LegShape.STRAIGHT);
        assertThat(Girths.closed(piece, "waist")).isCloseTo(270, within(1e-9));
        assertThat(Girths.closed(piece, "half way up")).isCloseTo(285, within(1e-9));
        assertThat(Girths.closed(piece, "half way down")).isCloseTo(285, within(1e-9));
        List<CurvePath> sides = piece.insideDart("waist dart").sides();
        assertThat(sides.get(0).length()).isCloseTo(Math.hypot(80, 15) + Math.hypot(120, 15), within(1e-9));
        assertThat(sides.get(1).length()).isCloseTo(sides.get(0).length(), within(1e-9));
        for (CurvePath side : sides) {
            assertThat(side.start()).isEqualTo(Vector2D.of(150, 250));
            assertThat(side.end()).isEqualTo(Vector2D.of(150, 50));
        }
    }

    /** Shaped, the waist keeps what the intake says; half way it is tighter or looser by twice the offset. */
    @Test
    void shapedDoublePointedDartsKeepTheirWaist() {
        for (double out : new double[] {-2, 3}) {
            Piece piece = fishEye(LegShape.bowed(0.5, out));
            assertThat(Girths.closed(piece, "waist")).isCloseTo(270, within(1e-6));
            assertThat(Girths.closed(piece, "half way up"))
                    .isCloseTo(300 - 2 * halfWidth(15, 80, out, 40), within(1e-6));
            assertThat(Girths.closed(piece, "half way down"))
                    .isCloseTo(300 - 2 * halfWidth(15, 120, out, 60), within(1e-6));
            List<CurvePath> sides = piece.insideDart("waist dart").sides();
            assertThat(sides.get(1).length()).isCloseTo(sides.get(0).length(), within(1e-9));
        }
        wrong(
                () -> fishEye(LegShape.bowed(0.5, -9)),
                "The legs of dart 'waist dart' would cross: the two would meet on the fold line (asked -9.00 mm outwards,"
                        + " possible more than -3.82 mm).");
    }

    /** Carried along by a turn and mirrored, a shaped dart takes in as much. */
    @Test
    void aShapedDartMovesWithItsPanel() {
        Piece piece = fishEye(LegShape.bowed(0.5, 3));
        Piece mirrored =
                Panels.mirror(piece, Vector2D.of(20, 30), Vector2D.of(1, 2)).piece();
        assertThat(Girths.closed(mirrored, "half way up")).isCloseTo(Girths.closed(piece, "half way up"), within(1e-6));
    }

    @Test
    void aDoublePointedDartIsNotTurnedWhole() {
        refused(
                () -> Darts.rotate(fishEye(LegShape.STRAIGHT), "waist dart", Spot.on("side", 100), "new"),
                "Rotate 'waist dart' to 'side' at 100.0 mm: it is double-pointed, and no part can turn about its points; cut the"
                        + " piece through its widest place first.");
    }
}
