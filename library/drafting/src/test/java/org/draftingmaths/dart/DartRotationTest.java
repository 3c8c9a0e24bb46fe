package org.draftingmaths.dart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.check.Checks;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Edge;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Panels;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.SameCloth;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.piece.Use;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DartRotationTest {

    private static final double APEX_LEVEL = Math.sqrt(170 * 170 - 19 * 19);

    /** A waist dart whose two legs are both 151.3275 mm long. */
    private static Drawing front() {
        return Drawing.of("front")
                .from(0, 0)
                .edge("waist", Role.SEAM)
                .line(70, 0)
                .dart("waist dart", 90, 150, 110, 0, 20, Leg.BEFORE)
                .line(210, 0)
                .edge("side seam", Role.SEAM)
                .line(230, 190)
                .edge("armhole", Role.FINISHED)
                .curve(190, 190, 170, 260, 180, 350)
                .edge("shoulder", Role.SEAM)
                .line(70, 390)
                .edge("neckline", Role.FINISHED)
                .curve(70, 340, 40, 320, 0, 320)
                .edge("centre front", Role.FOLD)
                .line(0, 0)
                .level("bust line", 0, 190, 230, 190)
                .notch("side seam", 60)
                .grain(20, 40, 20, 280);
    }

    @Test
    void opensTheAngleThatItCloses() {
        Piece front = front().piece();
        double angle = 2 * Math.asin(20 / Math.hypot(20, 150));
        assertThat(Measured.angle(front, "waist dart")).isCloseTo(angle, within(1e-12));

        Reworked moved = Darts.rotate(front, "waist dart", Spot.on("side seam", 60), "side dart");

        assertThat(moved.piece().openings()).hasSize(1);
        assertThat(Measured.angle(moved.piece(), "side dart")).isCloseTo(angle, within(1e-12));
        assertThat(moved.piece().area()).isCloseTo(front.area(), within(1e-7));
        assertThat(Lengths.folded(moved.piece(), "side seam")).isCloseTo(Math.hypot(20, 190), within(1e-9));
        assertThat(moved.ledger().sentences(Steps.DEFAULT))
                .containsExactly(
                        "Turn 15.2° of 'waist dart' about its apex into 'side dart': nothing of it is left; its mouth was"
                                + " 1 5/8 in (4.0 cm) wide, the new one is 1 5/8 in (4.1 cm).",
                        "Cut along 'side dart', 6 1/8 in (15.5 cm) long.",
                        "Turn the part with 'waist' between 'waist dart' and 'side dart' by 15.2° clockwise.",
                        "Close 'waist dart'.",
                        "The angle of 'side dart' is now 15.2°; there was none before.",
                        "The angle of 'waist dart' was 15.2°; nothing of it is left.",
                        "The net area stays 107.5 sq in (693.5 sq cm).",
                        "Press 'side dart' downwards.",
                        "'waist' turns by 15.2° where 'waist dart' is closed; blend it there (Smooth.edge), and walk its seam"
                                + " again.");
        assertThat(SameCloth.differences(Panels.undo(moved), front, 1e-9)).isEmpty();
    }

    /** 151.3275 mm legs, intake 40 mm: the depth is 150 mm. Asked just above, both figures would print alike. */
    @Test
    void alikeFiguresAreToldFinely() {
        assertThatThrownBy(() -> Darts.setBack(front().piece(), "waist dart", 150.3))
                .isInstanceOf(DraftingException.class)
                .hasMessage(
                        "Set the point of 'waist dart' back: nothing of the dart would be left to sew (asked 5 7/8 in"
                                + " (15.0 cm), possible 0 in (0.0 cm) to 5 7/8 in (15.0 cm); precisely, 150.30 mm asked and 150.00 mm"
                                + " possible).");
    }

    @Test
    void refusesMoreDartThanThereIs() {
        Piece front = front().piece();
        assertThatThrownBy(() ->
                        Darts.rotateBy(front, "waist dart", Spot.on("side seam", 60), "side dart", Math.toRadians(20)))
                .isInstanceOf(DraftingException.class)
                .hasMessage("Rotate 'waist dart' to 'side seam' at 60.0 mm: the dart has no such angle (asked 20.0°, "
                        + "possible 0.0° to 15.2°).");
    }

    /** Rotating out and combining back is the drawn piece again: the angles add up, and what was undone is undone. */
    @Test
    void aPartIsLaidBackIntoItsDart() {
        Piece front = front().piece();
        double angle = Measured.angle(front, "waist dart");
        Piece divided = Darts.rotateShare(front, "waist dart", Spot.on("side seam", 60), "side dart", 0.25)
                .piece();
        Reworked some = Darts.combineBy(divided, "side dart", "waist dart", angle / 8);
        assertThat(Measured.angle(some.piece(), "waist dart")).isCloseTo(angle * 7 / 8, within(1e-12));
        assertThat(Measured.angle(some.piece(), "side dart")).isCloseTo(angle / 8, within(1e-12));
        assertThat(SameCloth.differences(Panels.undo(some), divided, 1e-9)).isEmpty();

        Reworked all = Darts.combine(some.piece(), "side dart", "waist dart");
        assertThat(SameCloth.differences(all.piece(), front, 1e-9)).isEmpty();
        assertThat(SameCloth.differences(Panels.undo(all), some.piece(), 1e-9)).isEmpty();
    }

    @Test
    void onlyDartsOfOnePointCombine() {
        Piece two = Drawing.of("back")
                .from(0, 0)
                .edge("waist", Role.SEAM)
                .line(60, 0)
                .dart("first", 70, 120, 80, 0, 0, Leg.BEFORE)
                .line(120, 0)
                .dart("second", 130, 150, 140, 0, 0, Leg.BEFORE)
                .line(200, 0)
                .edge("side", Role.SEAM)
                .line(200, 200)
                .edge("top", Role.SEAM)
                .line(0, 200)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .piece();
        assertThatThrownBy(() -> Darts.combine(two, "first", "second"))
                .isInstanceOf(DraftingException.class)
                .hasMessageStartingWith(
                        "Combine 'first' with 'second': they do not end at one point, and a part can turn"
                                + " about one point only (asked ");
    }

    /** The way back into the dart's own mouth is named, not left to be found. */
    @Test
    void aPlaceWhereTheDartOpensIsRefusedWithTheWayOut() {
        Piece front = front().piece();
        assertThatThrownBy(() -> Darts.rotateShare(front, "waist dart", Spot.on("waist", 70), "again", 0.5))
                .isInstanceOf(DraftingException.class)
                .hasMessage(
                        "Rotate 'waist dart' to 'waist' at 70.0 mm: 'waist dart' opens just there from the same point;"
                                + " combine the two, or name another place.");
        assertThatThrownBy(() -> Darts.combine(front, "waist dart", "waist dart"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("'waist dart' cannot be combined with itself.");
    }

    /**
     * Plain geometry: a dart of 38 mm on a leg of 170 mm has 12.83 degrees; on 250 mm it is 55.9 mm wide and on 145 mm
     * 32.4 mm. Half of it on 250 mm is 28.0 mm.
     */
    @Test
    void theWidthGrowsWithTheLeg() {
        Piece piece = fan();
        assertThat(Math.toDegrees(Measured.angle(piece, "dart"))).isCloseTo(12.83, within(0.005));
        Piece shoulder =
                Darts.rotate(piece, "dart", Spot.on("right", APEX_LEVEL), "new").piece();
        assertThat(Measured.intake(shoulder, "new")).isCloseTo(55.88, within(0.005));
        Piece half = Darts.rotateShare(piece, "dart", Spot.on("right", APEX_LEVEL), "new", 0.5)
                .piece();
        assertThat(Measured.intake(half, "new")).isCloseTo(27.985, within(0.0005));
        assertThat(Measured.angle(half, "new")).isCloseTo(Measured.angle(half, "dart"), within(1e-12));
    }

    @Test
    void aWantedIntakeIsGivenOrRefused() {
        Piece piece = fan();
        Piece part = Darts.rotateToIntake(piece, "dart", Spot.on("right", APEX_LEVEL), "new", 30)
                .piece();
        assertThat(Measured.intake(part, "new")).isCloseTo(30, within(1e-9));
        assertThatThrownBy(() -> Darts.rotateToIntake(piece, "dart", Spot.on("right", APEX_LEVEL), "new", 60))
                .isInstanceOf(DraftingException.class)
                .hasMessage(
                        "Rotate 'dart' to 'right' at 168.9 mm: the dart has not so much intake there (asked 2 3/8 in"
                                + " (6.0 cm), possible 0 in (0.0 cm) to 2 1/4 in (5.6 cm)).");
        assertThatThrownBy(() -> Darts.rotateShare(piece, "dart", Spot.on("right", APEX_LEVEL), "new", 1.5))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("A share of a dart is more than 0 and at most 1: 1.5.");
    }

    /** The apex lies 170 mm from the mouth of a 38 mm dart and 250 mm from the right edge's middle. */
    private static Piece fan() {
        double depth = Math.sqrt(170 * 170 - 19 * 19);
        return Drawing.of("fan")
                .from(-200, 0)
                .edge("bottom", Role.SEAM)
                .line(-19, 0)
                .dart("dart", 0, depth, 19, 0, 0, Leg.BEFORE)
                .line(250, 0)
                .edge("right", Role.SEAM)
                .line(250, depth - 100)
                .line(250, depth + 100)
                .edge("top", Role.SEAM)
                .line(-200, depth + 100)
                .edge("centre", Role.FOLD)
                .line(-200, 0)
                .piece();
    }

    /** To three places at once, in any shares and any order: the angles add up, the edges keep their lengths, undo is exact. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void isDividedAmongSeveralPlaces(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Piece front = front().piece();
        double whole = Measured.angle(front, "waist dart");
        double a = random.nextDouble(0.1, 0.4);
        double b = random.nextDouble(0.1, 0.4);
        double c = seed % 2 == 0 ? 1 - a - b : 0.15;
        List<Darts.Part> parts = List.of(
                new Darts.Part(Spot.on("shoulder", random.nextDouble(10, 100)), "shoulder dart", a),
                new Darts.Part(Spot.on("side seam", random.nextDouble(40, 150)), "side dart", b),
                new Darts.Part(Spot.on("neckline", random.nextDouble(10, 60)), "neck dart", c));
        Reworked divided = Darts.divide(front, "waist dart", parts);
        Piece piece = divided.piece();
        assertThat(Measured.angle(piece, "shoulder dart")).isCloseTo(a * whole, within(1e-12));
        assertThat(Measured.angle(piece, "side dart")).isCloseTo(b * whole, within(1e-12));
        assertThat(Measured.angle(piece, "neck dart")).isCloseTo(c * whole, within(1e-12));
        if (seed % 2 == 0) {
            assertThat(piece.openings()).hasSize(3);
        } else {
            assertThat(Measured.angle(piece, "waist dart")).isCloseTo((1 - a - b - c) * whole, within(1e-12));
        }
        for (Edge edge : front.edges()) {
            assertThat(Lengths.folded(piece, edge.name())).isCloseTo(Lengths.folded(front, edge.name()), within(1e-9));
        }
        assertThat(piece.area()).isCloseTo(front.area(), within(1e-7));
        assertThat(Checks.piece(piece, 1e-6))
                .as("small shares may leave small darts and slivers; the drawing itself is sound")
                .extracting(Finding::kind)
                .isSubsetOf(Finding.Kind.DART_SMALL, Finding.Kind.SLIVER, Finding.Kind.UNDERLAY_OVERRUNS);
        assertThat(SameCloth.differences(Panels.undo(divided), front, 1e-9)).isEmpty();
    }

    @Test
    void moreSharesThanTheWholeAreRefused() {
        List<Darts.Part> parts = List.of(
                new Darts.Part(Spot.on("shoulder", 60), "one", 0.6),
                new Darts.Part(Spot.on("side seam", 90), "two", 0.6));
        assertThatThrownBy(() -> Darts.divide(front().piece(), "waist dart", parts))
                .isInstanceOf(DraftingException.class)
                .hasMessage(
                        "Divide 'waist dart': the shares come to more than the dart has (asked 18.2°, possible 0.0° to"
                                + " 15.2°).");
    }

    /** Plain geometry: a dart of 14 degrees with legs of 150 mm, set back 25 mm, is sewn at 16.8 degrees. */
    @Test
    void theSewnAngleGrowsWithTheSetBack() {
        double half = 150 * Math.sin(Math.toRadians(7));
        double depth = 150 * Math.cos(Math.toRadians(7));
        Piece piece = Drawing.of("piece")
                .from(-100, 0)
                .edge("waist", Role.SEAM)
                .line(-half, 0)
                .dart("dart", 0, depth, half, 0, 0, Leg.BEFORE)
                .line(100, 0)
                .edge("rest", Role.SEAM)
                .line(100, 300)
                .line(-100, 300)
                .edge("centre", Role.FOLD)
                .line(-100, 0)
                .piece();
        Reworked set = Darts.setBack(piece, "dart", 25);
        assertThat(Math.toDegrees(Darts.sewnAngle(set.piece(), "dart"))).isCloseTo(16.8, within(0.05));
        assertThat(Measured.angle(set.piece(), "dart")).isEqualTo(Measured.angle(piece, "dart"));
        assertThat(set.ledger().sentences(Steps.DEFAULT))
                .containsExactly("The sewn angle of 'dart' goes from 14.0° to 16.8°.");
    }

    @Test
    void aDartLeftAsGathersStaysInTheEdge() {
        Piece front = front().piece();
        Reworked left = Darts.leave(front, "waist dart", Use.Kind.GATHERS);
        assertThat(Lengths.folded(left.piece(), "waist") - Lengths.folded(front, "waist"))
                .isGreaterThan(40 - 1e-9);
        assertThat(Measured.angle(left.piece(), "waist dart")).isEqualTo(Measured.angle(front, "waist dart"));
        assertThatThrownBy(() -> Darts.leave(left.piece(), "waist dart", Use.Kind.EASE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("'waist dart' is not sewn as a dart.");
    }

    /** A third to the shoulder, a third to the side seam, and the last third between the two, to the armhole. */
    @Test
    void aThirdDartGoesBetweenTwoOthers() {
        Piece front = front().piece();
        double whole = Measured.angle(front, "waist dart");
        Reworked one = Darts.rotateBy(front, "waist dart", Spot.on("shoulder", 60), "one", whole / 3);
        Reworked two = Darts.rotateBy(one.piece(), "waist dart", Spot.on("side seam", 60), "two", whole / 3);
        Reworked three = Darts.rotate(two.piece(), "waist dart", Spot.on("armhole", 80), "three");
        for (String dart : List.of("one", "two", "three")) {
            assertThat(Measured.angle(three.piece(), dart)).isCloseTo(whole / 3, within(1e-12));
        }
        assertThat(three.piece().area()).isCloseTo(front.area(), within(1e-7));
        assertThat(SameCloth.differences(Panels.undo(three), two.piece(), 1e-9)).isEmpty();
    }

    /** Whatever way an edge was drawn: a side dart is pressed down, a shoulder dart to the centre. */
    @Test
    void movedDartsArePressedAsTheTradeDoes() {
        Piece front = front().piece();
        Piece side = Darts.rotate(front, "waist dart", Spot.on("side seam", 60), "new")
                .piece();
        Piece shoulder = Darts.rotate(front, "waist dart", Spot.on("shoulder", 60), "new")
                .piece();
        assertThat(pressedLeg(side).getY()).isLessThan(otherLeg(side).getY());
        assertThat(pressedLeg(shoulder).getX()).isLessThan(otherLeg(shoulder).getX());
    }

    private static Vector2D pressedLeg(Piece piece) {
        return Measured.leg(
                        piece,
                        "new",
                        ((Use.Dart) piece.opening("new").mouth().use()).press().orElseThrow())
                .start();
    }

    private static Vector2D otherLeg(Piece piece) {
        return Measured.leg(
                        piece,
                        "new",
                        ((Use.Dart) piece.opening("new").mouth().use())
                                .press()
                                .orElseThrow()
                                .other())
                .start();
    }
}
