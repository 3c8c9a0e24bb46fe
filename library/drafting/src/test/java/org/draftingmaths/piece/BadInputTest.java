package org.draftingmaths.piece;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.draftingmaths.check.Checks;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.dart.Darts;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.api.Test;

/** What a drafter may get wrong, and the words in which she is told. */
class BadInputTest {

    /** A square of 200 mm with its fold on the left and a dart in the bottom edge. */
    private static Drawing square() {
        return Drawing.of("square")
                .from(0, 0)
                .edge("bottom", Role.SEAM)
                .line(80, 0)
                .dart("dart", 100, 120, 120, 0, 0, Leg.BEFORE)
                .line(200, 0)
                .edge("side", Role.SEAM)
                .line(200, 200)
                .edge("top", Role.SEAM)
                .line(0, 200)
                .edge("fold", Role.FOLD)
                .line(0, 0);
    }

    private static void refused(ThrowingCallable call, String message) {
        assertThatThrownBy(call).isInstanceOf(DraftingException.class).hasMessage(message);
    }

    private static void wrong(ThrowingCallable call, String message) {
        assertThatThrownBy(call).isInstanceOf(IllegalArgumentException.class).hasMessage(message);
    }

    @Test
    void dartLongerThanThePiece() {
        refused(
                () -> Drawing.of("strip")
                        .from(0, 0)
                        .edge("bottom", Role.SEAM)
                        .line(90, 0)
                        .dart("dart", 100, 150, 110, 0, 0, Leg.BEFORE)
                        .line(200, 0)
                        .edge("side", Role.SEAM)
                        .line(200, 60)
                        .edge("top", Role.SEAM)
                        .line(0, 60)
                        .edge("fold", Role.FOLD)
                        .line(0, 0)
                        .piece(),
                "Draw dart 'dart': its leg of 150.3 mm is longer than the piece: it meets 'top' after 60.1 mm, at"
                        + " (94.0, 60.0).");
    }

    @Test
    void slashThatLeavesTheOutline() {
        Piece hollow = Drawing.of("hollow")
                .from(0, 0)
                .edge("bottom", Role.SEAM)
                .line(90, 0)
                .dart("dart", 100, 60, 110, 0, 0, Leg.BEFORE)
                .line(200, 0)
                .edge("side", Role.SEAM)
                .line(200, 200)
                .edge("top", Role.SEAM)
                .line(150, 200)
                .line(150, 80)
                .line(50, 80)
                .line(50, 200)
                .line(0, 200)
                .edge("fold", Role.FOLD)
                .line(0, 0)
                .piece();
        refused(
                () -> Darts.rotate(hollow, "dart", Spot.on("side", 150), "new dart"),
                "Slash 'new dart' from 'side' at 150.0 mm to the point of 'dart': it leaves the cloth where it crosses 'top'"
                        + " at (150.0, 105.0), after 67.3 mm.");
    }

    @Test
    void slashOutsideThePiece() {
        Piece hollow = Drawing.of("hollow")
                .from(0, 0)
                .edge("bottom", Role.SEAM)
                .line(200, 0)
                .edge("side", Role.SEAM)
                .line(200, 200)
                .edge("top", Role.SEAM)
                .line(150, 200)
                .line(100, 100)
                .line(50, 200)
                .line(0, 200)
                .edge("fold", Role.FOLD)
                .line(0, 0)
                .piece();
        refused(
                () -> Panels.cut(hollow, Slash.straight("cut", Spot.on("top", 80), Spot.on("top", 240))),
                "Slash 'cut' from 'top' at 80.0 mm to 'top' at 240.0 mm: it runs outside the cloth, at (100.8, 171.6).");
    }

    @Test
    void moreDartThanThereIs() {
        refused(
                () -> Darts.rotateBy(square().piece(), "dart", Spot.on("side", 100), "new dart", Math.toRadians(30)),
                "Rotate 'dart' to 'side' at 100.0 mm: the dart has no such angle (asked 30.0°, possible 0.0° to 18.9°).");
    }

    @Test
    void dartOnToTheFold() {
        refused(
                () -> Darts.rotate(square().piece(), "dart", Spot.on("fold", 100), "new dart"),
                "Rotate 'dart' to 'fold' at 100.0 mm: 'fold' is a fold, and an opening there would destroy it; make it a"
                        + " seam first.");
    }

    @Test
    void dartIntoTheCornerOfTheFold() {
        refused(
                () -> Darts.rotate(square().piece(), "dart", Spot.on("bottom", 0), "new dart"),
                "Rotate 'dart' to 'bottom' at 0.0 mm: 'fold' is a fold, and an opening there would destroy it; make it a seam"
                        + " first.");
    }

    @Test
    void unequalLegs() {
        Piece uneven = Drawing.of("uneven")
                .from(0, 0)
                .edge("bottom", Role.SEAM)
                .line(80, 0)
                .dart("dart", 100, 120, 130, 0, 0, Leg.BEFORE)
                .line(200, 0)
                .edge("side", Role.SEAM)
                .line(200, 200)
                .edge("top", Role.SEAM)
                .line(0, 200)
                .edge("fold", Role.FOLD)
                .line(0, 0)
                .piece();
        refused(
                () -> Darts.rotate(uneven, "dart", Spot.on("side", 100), "new dart"),
                "Rotate 'dart' to 'side' at 100.0 mm: its legs are 121.66 mm and 123.69 mm long and cannot be laid on one"
                        + " another; make them equal first, with Legs.equalise.");
        assertThat(Checks.piece(uneven, 0.5))
                .extracting(finding -> finding.sentence(Steps.DEFAULT))
                .containsExactly(
                        "'dart' of 'uneven': the legs of the dart are unequal; measured 4 7/8 in (12.4 cm), expected"
                                + " 4 3/4 in (12.2 cm), off by 2.04 mm, tolerance 0.50 mm. Make them equal (Legs.equalise).",
                        "'dart' of 'uneven': the dart is wider than one dart should be; measured 23.5°, expected 22.0°,"
                                + " off by 1.50°, tolerance 0.00°. Divide it (Darts.divide).",
                        "'dart' of 'uneven': the point lies off the line square over the middle of the mouth; measured"
                                + " 1/4 in (0.5 cm), expected 0 in (0.0 cm), off by 5.00 mm, tolerance 0.50 mm. Make the"
                                + " legs equal (Legs.equalise).");
    }

    /** A bow-tie is a finding; nothing can be cut from it. */
    @Test
    void bowTie() {
        Reworked drawn = Drawing.of("bow-tie")
                .from(0, 0)
                .edge("one", Role.SEAM)
                .line(200, 100)
                .edge("two", Role.SEAM)
                .line(200, 0)
                .edge("three", Role.SEAM)
                .line(0, 120)
                .edge("four", Role.SEAM)
                .line(0, 0)
                .drawn();
        Piece bowTie = drawn.piece();
        List<Finding> findings = Checks.piece(bowTie, 0.5);
        assertThat(findings)
                .extracting(finding -> finding.sentence(Steps.DEFAULT))
                .containsExactly(
                        "'bow-tie', where 'one' and 'three' meet, at (109.1, 54.5): the outline crosses itself; measured 1,"
                                + " expected 0, off by 1, tolerance 0. Follow the outline from there, and draw these edges again"
                                + " so that each meets the next at their ends only.");
        refused(
                () -> Panels.cut(bowTie, Slash.straight("cut", Spot.on("one", 20), Spot.on("four", 20))),
                "Slash 'cut' from 'one' at 20.0 mm to 'four' at 20.0 mm: the outline of 'bow-tie' crosses itself at"
                        + " (109.1, 54.5); mend the outline first.");
    }

    /** Drawn clockwise: taken anticlockwise, edges keep their direction, and it is said. */
    @Test
    void clockwise() {
        Reworked turned = Drawing.of("square")
                .from(0, 0)
                .edge("fold", Role.FOLD)
                .line(0, 200)
                .edge("top", Role.SEAM)
                .line(200, 200)
                .edge("side", Role.SEAM)
                .line(200, 0)
                .edge("bottom", Role.SEAM)
                .line(0, 0)
                .drawn();
        assertThat(turned.ledger().sentences(Steps.DEFAULT))
                .containsExactly(
                        "The outline of 'square' was drawn clockwise; it is taken anticlockwise, and every edge keeps"
                                + " the direction in which it was drawn.");
        assertThat(turned.piece().area()).isEqualTo(40000);
        assertThat(Paper.edge(turned.piece(), "fold").end().getY()).isEqualTo(200);
    }

    @Test
    void openOutline() {
        wrong(
                () -> Drawing.of("open")
                        .from(0, 0)
                        .edge("bottom", Role.SEAM)
                        .line(200, 0)
                        .edge("side", Role.SEAM)
                        .line(0, 3.5)
                        .piece(),
                "The outline of 'open' is open: it starts at (0.0, 0.0) and ends at (0.0, 3.5), 3.500 mm apart.");
    }

    @Test
    void duplicateEdgeName() {
        wrong(
                () -> Drawing.of("twice")
                        .from(0, 0)
                        .edge("seam", Role.SEAM)
                        .line(200, 0)
                        .edge("seam", Role.SEAM)
                        .line(200, 200)
                        .edge("fold", Role.FOLD)
                        .line(0, 0)
                        .piece(),
                "Piece 'twice' has more than one edge named 'seam'.");
    }

    @Test
    void notANumber() {
        wrong(
                () -> Drawing.of("nan").from(0, 0).edge("bottom", Role.SEAM).line(Double.NaN, 0),
                "A point needs finite coordinates: (NaN, 0.0).");
        wrong(
                () -> Drawing.of("nan").from(0, 0).edge("bottom", Role.SEAM).line(Double.POSITIVE_INFINITY, 0),
                "A point needs finite coordinates: (Infinity, 0.0).");
    }

    @Test
    void namesThatAreNotThere() {
        wrong(
                () -> square().piece().edge("hem"),
                "Piece 'square' has no edge named 'hem'; it has bottom, side, top, fold.");
        wrong(
                () -> Darts.rotate(square().piece(), "bust dart", Spot.on("side", 100), "new"),
                "Piece 'square' has no dart or slash named 'bust dart'; it has dart.");
        wrong(
                () -> Darts.rotate(square().piece(), "dart", Spot.on("side", 250), "new"),
                "'side' at 250.0 mm lies past the end: 0 to 200.0 mm is possible.");
    }

    /** A flat sheet slit from two sides to a dart's point cannot open at one of them alone. */
    @Test
    void nothingOpensUnlessAsMuchCloses() {
        Reworked cut = Panels.cut(square().piece(), Slash.straight("slash", Spot.on("side", 100), Spot.tip("dart")));
        refused(
                () -> Panels.open(
                        cut.piece(),
                        Map.of(
                                "slash",
                                Measured.widen(cut.piece(), "slash", Measured.tip(cut.piece(), "dart"), 0.1),
                                "dart",
                                Measured.widen(cut.piece(), "dart", Measured.tip(cut.piece(), "dart"), -0.05)),
                        Stay.CENTRE,
                        "Open 'slash'"),
                "Open 'slash': a flat sheet cannot open at 'slash' unless as much closes at the same point; 2.9° are left"
                        + " over.");
    }

    /** Closing more than there is would lay one part over the other; the largest angle that clears is named. */
    @Test
    void partsLieOverOneAnother() {
        Reworked cut = Panels.cut(square().piece(), Slash.straight("slash", Spot.on("side", 100), Spot.tip("dart")));
        double whole = 2 * Math.atan(20.0 / 120);
        assertThatThrownBy(() -> Panels.open(
                        cut.piece(),
                        Map.of(
                                "slash",
                                Measured.widen(cut.piece(), "slash", Measured.tip(cut.piece(), "dart"), 0.5),
                                "dart",
                                Measured.widen(cut.piece(), "dart", Measured.tip(cut.piece(), "dart"), -0.5)),
                        Stay.CENTRE,
                        "Open 'slash'"))
                .isInstanceOfSatisfying(DraftingException.class, refusal -> {
                    assertThat(refusal.reason())
                            .isEqualTo(
                                    "the part with 'side' between 'dart' and 'slash' would lie over the part with 'top' between 'dart' and 'slash'");
                    assertThat(refusal.reach().orElseThrow().most()).isCloseTo(whole, within(1e-6));
                });
    }

    @Test
    void nothingLeftToSew() {
        refused(
                () -> square().piece().using("dart", new Use.Dart(130, Leg.BEFORE)),
                "Set the point of 'dart' back: nothing of the dart would be left to sew (asked 5 1/8 in (13.0 cm), possible"
                        + " 0 in (0.0 cm) to 4 3/4 in (12.0 cm)).");
    }

    /** A piece without fold, centre line or grain: the caller says what stays. */
    @Test
    void whichPartStaysMustBeTold() {
        Piece adrift = Drawing.of("adrift")
                .from(10, 0)
                .edge("bottom", Role.SEAM)
                .line(80, 0)
                .dart("dart", 100, 120, 120, 0, 0, Leg.BEFORE)
                .line(200, 0)
                .edge("side", Role.SEAM)
                .line(200, 200)
                .edge("rest", Role.SEAM)
                .line(10, 200)
                .line(10, 0)
                .piece();
        refused(
                () -> Darts.rotate(adrift, "dart", Spot.on("side", 100), "new dart"),
                "Rotate 'dart' to 'side' at 100.0 mm: neither fold, centre line nor grain tells which part stays; say which"
                        + " one.");
        double whole = Measured.angle(adrift, "dart");
        Piece moved = Darts.rotateBy(adrift, "dart", Spot.on("side", 100), "new dart", whole, Stay.at("side", 20))
                .piece();
        assertThat(Paper.edge(moved, "side").start())
                .isEqualTo(Paper.edge(adrift, "side").start());
        wrong(
                () -> Darts.rotateBy(adrift, "dart", Spot.on("side", 100), "new dart", Double.NaN),
                "An angle to be moved is more than 0: NaN rad.");
    }

    /** An apex below the waist would add cloth instead of taking it; so would a mouth drawn backwards. */
    @Test
    void dartTurnedInsideOut() {
        for (double[] dart : new double[][] {{80, 100, -120, 120}, {120, 100, 120, 80}}) {
            refused(
                    () -> Drawing.of("square")
                            .from(0, 0)
                            .edge("bottom", Role.SEAM)
                            .line(dart[0], 0)
                            .dart("dart", dart[1], dart[2], dart[3], 0, 0, Leg.BEFORE)
                            .line(200, 0)
                            .edge("side", Role.SEAM)
                            .line(200, 200)
                            .edge("top", Role.SEAM)
                            .line(0, 200)
                            .edge("fold", Role.FOLD)
                            .line(0, 0)
                            .piece(),
                    "Draw dart 'dart': its point at (100.0, " + dart[2]
                            + ") lies outside the cloth, or its mouth is drawn" + " backwards along the edge.");
        }
    }

    private static Piece plain() {
        return Drawing.of("plain")
                .from(0, 0)
                .edge("bottom", Role.SEAM)
                .line(200, 0)
                .edge("side", Role.SEAM)
                .line(200, 200)
                .edge("top", Role.SEAM)
                .line(0, 200)
                .edge("fold", Role.FOLD)
                .line(0, 0)
                .level("middle", 0, 100, 200, 100)
                .piece();
    }

    /** Two parts that come to lie wholly on one another have no border inside the other. */
    @Test
    void partsThatLieExactlyOnOneAnother() {
        Piece halves = Panels.cut(plain(), Slash.straight("cut", Spot.on("bottom", 100), Spot.on("top", 100)))
                .piece();
        refused(
                () -> Panels.open(halves, Map.of("cut", Motion.shift(Vector2D.of(-100, 0))), Stay.CENTRE, "Fold over"),
                "Fold over: the part with 'bottom', 'side' and 'top' would lie over the part with 'top', 'fold' and 'bottom'"
                        + " (asked 3 7/8 in (10.0 cm), possible 0 in (0.0 cm) to 0 in (0.0 cm)).");
    }

    @Test
    void cutThatCrossesItself() {
        CurvePath loop = CurvePath.polyline(
                Vector2D.of(100, 0),
                Vector2D.of(100, 120),
                Vector2D.of(60, 60),
                Vector2D.of(140, 60),
                Vector2D.of(100, 200));
        refused(
                () -> Panels.cut(
                        plain(), new Slash("cut", Spot.on("bottom", 100), Spot.on("top", 100), Optional.of(loop))),
                "Slash 'cut' from 'bottom' at 100.0 mm to 'top' at 100.0 mm: the line crosses itself at (100.0, 60.0).");
    }

    /** Turns by one angle about two points leave a distance, not an angle. */
    @Test
    void turnsAboutDifferentPoints() {
        Piece cut = Panels.cut(square().piece(), Slash.straight("new", Spot.on("side", 100), Spot.tip("dart")))
                .piece();
        Vector2D apex = Vector2D.of(100, 120);
        Vector2D beside = Vector2D.of(110, 120);
        refused(
                () -> Panels.open(
                        cut,
                        Map.of(
                                "dart", Measured.widen(cut, "dart", apex, -0.1),
                                "new", Measured.widen(cut, "new", beside, 0.1)),
                        Stay.CENTRE,
                        "Turn"),
                "Turn: a flat sheet cannot open at 'new' unless as much closes at the same point; the angles agree but not"
                        + " the points they turn about, and its sides would miss one another by 1.000 mm.");
    }

    /** A level line that a cut runs along for a while is broken where they part. */
    @Test
    void cutThatRunsAlongALevelLine() {
        CurvePath along = CurvePath.polyline(
                Vector2D.of(60, 0), Vector2D.of(60, 100), Vector2D.of(140, 100), Vector2D.of(140, 200));
        Piece cut = Panels.cut(plain(), new Slash("cut", Spot.on("bottom", 60), Spot.on("top", 60), Optional.of(along)))
                .piece();
        Piece apart = Panels.open(cut, Map.of("cut", Motion.shift(Vector2D.of(50, 0))), Stay.CENTRE, "Spread")
                .piece();
        List<Double> starts = apart.panels().stream()
                .flatMap(panel -> panel.lines().stream())
                .map(stretch -> apart.place(stretch).start().getX())
                .sorted()
                .toList();
        assertThat(starts).hasSize(3);
        assertThat(starts.get(0)).isCloseTo(0, within(1e-9));
        assertThat(starts.get(2)).isCloseTo(190, within(1e-9));
        assertThat(starts.get(1))
                .satisfiesAnyOf(
                        x -> assertThat(x).isCloseTo(60, within(1e-9)),
                        x -> assertThat(x).isCloseTo(110, within(1e-9)));
    }
}
