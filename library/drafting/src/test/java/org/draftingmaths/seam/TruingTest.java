package org.draftingmaths.seam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.block.TorsoBlock;
import org.draftingmaths.check.Checks;
import org.draftingmaths.contour.SideSeams;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.Change;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.measure.Ease;
import org.draftingmaths.measure.Measure;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.measure.ProportionRules;
import org.draftingmaths.measure.Wearer;
import org.draftingmaths.piece.DartEnd;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Girths;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Panels;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Redraw;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.unit.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class TruingTest {

    private static final Measurements BODY = Measurements.of("92", Wearer.ADULT)
            .with(Measure.BUST, Length.cm(92))
            .with(Measure.WAIST, Length.cm(74))
            .with(Measure.HIP, Length.cm(100))
            .filledBy(ProportionRules.TORSO);

    static Stream<Long> seeds() {
        return LongStream.range(0, 200).boxed();
    }

    /** A skirt panel whose side seam is a curve from the hem up and whose hem and waist are curved. */
    private static Piece panel(String name, double flare, double height, double sag) {
        return Drawing.of(name)
                .from(0, 0)
                .edge("hem", Role.HEM)
                .curve(70, 0, 140, sag, 200 + flare, 8 + sag)
                .edge("side seam", Role.SEAM)
                .curve(205 + flare / 2, 150, 215, height - 150, 180, height)
                .edge("waist", Role.SEAM)
                .curve(120, height - 7, 60, height - 10, 0, height - 10)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .notch("side seam", 200)
                .piece();
    }

    private static Draft draft(Piece front, Piece back) {
        return new Draft("skirt", List.of(front, back), List.of(side()));
    }

    private static Seam side() {
        return Seam.flat("side", Seam.Mate.of("front", "side seam"), Seam.Mate.of("back", "side seam"));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theSeamMatchesAfterMovingItsHemEnd(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Piece front = panel("front", random.nextDouble(0, 60), 600, random.nextDouble(-3, 3));
        Piece back = panel("back", random.nextDouble(0, 60), 600 + random.nextDouble(-5, 5), 0);
        Draft draft = draft(front, back);
        double missing = Lengths.folded(front, "side seam") - Lengths.folded(back, "side seam");

        Reworked trued = Truing.moveEnd(draft, side(), side().second(), Seam.End.START, 30);

        assertThat(Lengths.folded(trued.piece(), "side seam"))
                .as("seed %d", seed)
                .isCloseTo(Lengths.folded(front, "side seam"), within(1e-6));
        Vector2D before = Paper.edge(back, "side seam").start();
        Vector2D after = Paper.edge(trued.piece(), "side seam").start();
        assertThat(before.distance(after)).as("the least move").isLessThanOrEqualTo(Math.abs(missing) + 1e-6);
        assertThat(Paper.edge(trued.piece(), "hem").end().distance(after)).isLessThan(1e-6);
        assertThat(trued.piece().edge("waist")).isEqualTo(back.edge("waist"));
        assertThat(Lengths.base(trued.piece(), "side seam")
                        - trued.piece().notches().get(0).arc())
                .as("the notch stays as far from the end that stayed")
                .isCloseTo(Lengths.base(back, "side seam") - 200, within(1e-9));
        assertThat(Panels.undo(trued).sameCloth(back, 1e-9)).isTrue();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theSeamMatchesAfterReshapingItsCurve(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Piece front = panel("front", 30, 600, 0);
        Piece back = panel("back", 30 + random.nextDouble(-4, 4), 600, 0);
        Reworked trued = Truing.reshape(draft(front, back), side(), side().second(), 6);

        assertThat(Lengths.folded(trued.piece(), "side seam"))
                .as("seed %d", seed)
                .isCloseTo(Lengths.folded(front, "side seam"), within(1e-8));
        CurvePath before = Paper.edge(back, "side seam");
        CurvePath after = Paper.edge(trued.piece(), "side seam");
        assertThat(after.start().distance(before.start())).isLessThan(1e-9);
        assertThat(after.end().distance(before.end())).isLessThan(1e-9);
        assertThat(after.startTangent().distance(before.startTangent())).isLessThan(1e-9);
        assertThat(trued.piece().edge("hem")).isEqualTo(back.edge("hem"));
        assertThat(Panels.undo(trued).sameCloth(back, 1e-9)).isTrue();
    }

    @Test
    void moreThanTruingIsRefused() {
        Draft draft = draft(panel("front", 0, 600, 0), panel("back", 0, 620, 0));
        assertThatThrownBy(() -> Truing.moveEnd(draft, side(), side().second(), Seam.End.START, 6))
                .isInstanceOf(DraftingException.class)
                .hasMessageStartingWith(
                        "True 'side seam' of 'back' to its mate: more than truing would be needed; look for"
                                + " the fault in the draft (asked 3/4 in (2.0 cm), possible 0 in (0.0 cm) to 1/4 in (0.6 cm)).");
    }

    /** Front and back laid side seam to side seam: the hem runs on without a corner, each side turned by half. */
    @ParameterizedTest
    @MethodSource("seeds")
    void theHemRunsOnOverTheSide(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Piece front = panel("front", random.nextDouble(0, 40), 600, random.nextDouble(-4, 4));
        Piece back = panel("back", random.nextDouble(0, 40), 600, random.nextDouble(-4, 4));
        double before = corner(front) + corner(back);

        Truing.Blended blended = Truing.blend(draft(front, back), side(), Seam.End.START, "hem", "hem");

        assertThat(blended.turn()).isCloseTo(Math.PI - before, within(1e-12));
        assertThat(corner(blended.first().piece()) + corner(blended.second().piece()))
                .isCloseTo(Math.PI, within(1e-9));
        assertThat(corner(blended.first().piece()) - corner(front)).isCloseTo(blended.turn() / 2, within(1e-9));
        assertThat(blended.first().piece().edge("side seam")).isEqualTo(front.edge("side seam"));
        assertThat(Panels.undo(blended.second()).sameCloth(back, 1e-9)).isTrue();
    }

    /** A waist with a dart in it: only the stretch beside the side seam is bent, and the dart stays as it is. */
    @ParameterizedTest
    @ValueSource(doubles = {3, 8, -4})
    void aLineThatADartBreaksRunsOnOverTheSide(double takenIn) {
        Draft bodice = TorsoBlock.bodice(BODY, Ease.CLOSE_FITTING).draft();
        Draft draft = SideSeams.takeIn(bodice, "side", Length.mm(0), Length.mm(takenIn))
                .draft();
        Seam side = draft.seams().get(1);
        double turn = Truing.turn(draft, side, Seam.End.START, "waist", "waist");
        assertThat(Math.abs(turn)).isGreaterThan(0.01);

        Truing.Blended blended = Truing.blend(draft, side, Seam.End.START, "waist", "waist");

        assertThat(Truing.turn(blended.draft(), side, Seam.End.START, "waist", "waist"))
                .isCloseTo(0, within(1e-9));
        for (String name : List.of("front", "back")) {
            Piece was = draft.piece(name);
            Piece now = blended.draft().piece(name);
            assertThat(Measured.tip(now, "waist dart")).isEqualTo(Measured.tip(was, "waist dart"));
            for (Leg leg : Leg.values()) {
                assertThat(Measured.leg(now, "waist dart", leg).length())
                        .isCloseTo(Measured.leg(was, "waist dart", leg).length(), within(1e-9));
            }
            assertThat(Redraw.first(now, "waist").length())
                    .as("the stretch at the centre")
                    .isCloseTo(Redraw.first(was, "waist").length(), within(1e-9));
            assertThat(now.edge("side seam")).isEqualTo(was.edge("side seam"));
        }
        assertThat(Panels.undo(blended.first()).sameCloth(draft.piece("front"), 1e-9))
                .isTrue();
    }

    /** The angle inside the piece between hem and side seam. */
    private static double corner(Piece piece) {
        Vector2D in = Paper.edge(piece, "hem").endTangent().negate();
        Vector2D out = Paper.edge(piece, "side seam").startTangent();
        return Math.acos(in.dot(out));
    }

    /** A dart in a straight or curved waist, set back or not: folded as it is sewn, the waist runs on without a corner. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 20, 45})
    void anEdgeRunsOnOverASewnDart(double setBack) {
        Piece front = Drawing.of("front")
                .from(0, 0)
                .edge("waist", Role.SEAM)
                .line(70, 0)
                .dart("waist dart", 85, 150, 100, 0, setBack, Leg.BEFORE)
                .curve(140, -4, 170, 2, 210, 6)
                .edge("side seam", Role.SEAM)
                .line(230, 190)
                .edge("rest", Role.SEAM)
                .line(0, 190)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .notch("waist", 30)
                .piece();
        assertThat(Math.abs(sewnTurn(front))).isGreaterThan(Math.toRadians(5));
        Reworked trued = Truing.blendDart(front, "waist dart");
        assertThat(sewnTurn(trued.piece())).isCloseTo(0, within(1e-9));
        for (Leg leg : Leg.values()) {
            assertThat(Measured.leg(trued.piece(), "waist dart", leg).start())
                    .isEqualTo(Measured.leg(front, "waist dart", leg).start());
        }
        assertThat(trued.piece().edge("side seam")).isEqualTo(front.edge("side seam"));
        assertThat(Paper.edge(trued.piece(), "waist").start().distance(Vector2D.ZERO))
                .isLessThan(1e-12);
        assertThat(trued.ledger().only(Change.class))
                .last()
                .satisfies(change -> assertThat(change.before()).isCloseTo(Math.abs(sewnTurn(front)), within(1e-12)));
        assertThat(Panels.undo(trued).sameCloth(front, 1e-9)).isTrue();
        assertThat(sewnTurn(Truing.blendDart(trued.piece(), "waist dart").piece()))
                .isCloseTo(0, within(1e-9));
    }

    /** By how much the waist turns at the dart when the paper beyond it is turned about the sewn point on to the near leg. */
    private static double sewnTurn(Piece piece) {
        Vector2D tip = DartEnd.sewnTip(piece, "waist dart");
        List<CurvePath> sides = Paper.sides(piece).stream()
                .filter(side -> side.edge().equals("waist") && side.opening().isEmpty())
                .map(side -> side.path())
                .toList();
        Vector2D from = tip.directionTo(sides.get(1).start());
        Vector2D to = tip.directionTo(sides.get(0).end());
        Vector2D in = sides.get(0).endTangent();
        Vector2D out = sides.get(1).startTangent();
        double unturned = Math.atan2(in.signedArea(out), in.dot(out));
        return unturned + Math.atan2(from.signedArea(to), from.dot(to));
    }

    @Test
    void aLineIsSquaredAtTheCentre() {
        Piece slanted = Drawing.of("front")
                .from(0, 0)
                .edge("hem", Role.HEM)
                .curve(70, -15, 140, 0, 200, 10)
                .edge("side seam", Role.SEAM)
                .line(200, 600)
                .edge("waist", Role.SEAM)
                .line(0, 600)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .piece();
        Reworked squared = Truing.square(slanted, "hem", "centre");
        CurvePath hem = Paper.edge(squared.piece(), "hem");
        assertThat(hem.startTangent().distance(Vector2D.of(1, 0))).isLessThan(1e-9);
        assertThat(hem.start()).isEqualTo(Paper.edge(slanted, "hem").start());
        assertThat(squared.ledger().only(Change.class)).hasSize(2);
        assertThat(Checks.piece(squared.piece(), 0.5)).isEmpty();
        assertThat(Panels.undo(squared).sameCloth(slanted, 1e-9)).isTrue();
    }

    /** The fault lies just at the end that is moved: afterwards every interval matches. */
    @Test
    void everyIntervalMatchesAfterMovingTheEndAtFault() {
        Piece front = straight("front", 120, 300, 100);
        Piece back = straight("back", 120, 306, 106);
        Reworked trued = Truing.moveEnd(draft(front, back), side(), side().second(), Seam.End.START, 10);
        Draft mended = draft(front, back).with(trued.piece());
        assertThat(Walk.of(mended, side()).intervals())
                .allSatisfy(interval -> assertThat(interval.difference()).isCloseTo(0, within(1e-6)));
    }

    private static Piece straight(String name, double width, double height, double notch) {
        return Drawing.of(name)
                .from(0, 0)
                .edge("hem", Role.HEM)
                .line(width, 0)
                .edge("side seam", Role.SEAM)
                .line(width, height)
                .edge("waist", Role.SEAM)
                .line(0, height)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .level("low", 0, 50, 400, 50)
                .notch("side seam", notch)
                .piece();
    }

    /** Level lines go on to a redrawn edge, and back again when it is undone. */
    @Test
    void aLevelLineReachesTheNewEdge() {
        Piece piece = straight("front", 120, 300, 100);
        Reworked wide = Redraw.edges(
                piece,
                Map.of(
                        "hem", CurvePath.polyline(Vector2D.of(0, 0), Vector2D.of(140, 0)),
                        "side seam", CurvePath.polyline(Vector2D.of(140, 0), Vector2D.of(140, 300)),
                        "waist", CurvePath.polyline(Vector2D.of(140, 300), Vector2D.of(0, 300))));
        assertThat(Girths.closed(wide.piece(), "low")).isCloseTo(140, within(1e-6));
        assertThat(Girths.closed(Panels.undo(wide), "low")).isCloseTo(120, within(1e-6));
        assertThatThrownBy(() ->
                        Redraw.edges(piece, Map.of("bottum", CurvePath.polyline(Vector2D.ZERO, Vector2D.of(1, 0)))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("Piece 'front' has no edge named 'bottum'");
        Reworked later = Redraw.edges(
                wide.piece(),
                Map.of("waist", CurvePath.polyline(Vector2D.of(140, 300), Vector2D.of(70, 303), Vector2D.of(0, 300))));
        assertThatThrownBy(() -> Panels.undo(new Reworked(later.piece(), wide.ledger())))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining("the piece was changed since");
    }

    @Test
    void aFoldIsNotSlanted() {
        Seam waist = Seam.flat("waist", Seam.Mate.of("front", "waist"), Seam.Mate.of("back", "waist"));
        Draft draft = new Draft(
                "skirt", List.of(straight("front", 120, 300, 100), straight("back", 126, 300, 100)), List.of(waist));
        assertThatThrownBy(() -> Truing.moveEnd(draft, waist, waist.first(), Seam.End.STOP, 10))
                .isInstanceOf(DraftingException.class)
                .hasMessage(
                        "True 'waist' of 'front' to its mate: its end lies on the fold 'centre', which would be slanted;"
                                + " move the other end.");
        assertThatThrownBy(() -> Truing.moveEnd(draft, waist, waist.first(), Seam.End.START, Double.NaN))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("A limit for truing is 0 mm or more: NaN mm.");
    }

    /** A half circle that is square already stays as it is. */
    @Test
    void whatIsSquareIsNotRedrawn() {
        Piece half = Drawing.of("half")
                .from(0, -100)
                .edge("hem", Role.HEM)
                .arc(100, 0, 0, 100)
                .edge("centre", Role.FOLD)
                .line(0, -100)
                .piece();
        Reworked squared = Truing.square(half, "hem", "centre");
        assertThat(Lengths.base(squared.piece(), "hem")).isCloseTo(Math.PI * 100, within(0.01));
    }

    @Test
    void edgesThatDoNotMeetAreRefused() {
        assertThatThrownBy(() -> Truing.square(panel("front", 0, 600, 0), "side seam", "centre"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("'side seam' does not meet 'centre' at that end of it in 'front'.");
    }
}
