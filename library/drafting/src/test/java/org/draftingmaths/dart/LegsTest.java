package org.draftingmaths.dart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.Change;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Edge;
import org.draftingmaths.piece.Flat;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.LegEnds;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Panels;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.SameCloth;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Legs made equal: along the leg's line, never along the seam. */
class LegsTest {

    static Stream<Long> seeds() {
        return LongStream.range(0, 200).boxed();
    }

    /** Two darts on one waist, the first with unequal legs; the waist straight or curved, drawn either way round. */
    private static Piece skirt(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Vector2D apex = Vector2D.of(random.nextDouble(60, 90), random.nextDouble(-150, -110));
        double half = random.nextDouble(6, 14);
        double uneven = random.nextDouble(-6, 6);
        Drawing begun = Drawing.of("skirt").from(200, 0).edge("waist", Role.SEAM);
        Drawing first = bowed(begun, 200, 150, 4, random);
        double leg = Math.hypot(12, 130);
        Drawing second = first.dart("back dart", 138, -126, 126, 4, 15, Leg.AFTER);
        assertThat(leg).isCloseTo(Vector2D.of(138, -126).distance(Vector2D.of(150, 4)), within(1e-9));
        Drawing third = bowed(second, 126, apex.getX() + half, 3 + uneven, random);
        Drawing fourth = third.dart("dart", apex.getX(), apex.getY(), apex.getX() - half, 3, 20, Leg.AFTER);
        return bowed(fourth, apex.getX() - half, 0, 0, random)
                .edge("centre", Role.FOLD)
                .line(0, -400)
                .edge("hem", Role.HEM)
                .line(240, -400)
                .edge("side", Role.SEAM)
                .curve(240, -200, 205, -80, 200, 0)
                .level("hip", 0, -180, 400, -180)
                .level("high", 0, -40, 400, -40)
                .notch("waist", 20)
                .notch("waist", 80)
                .notch("waist", 140)
                .notch("side", 50)
                .piece();
    }

    private static Drawing bowed(Drawing drawing, double fromX, double x, double y, SplittableRandom random) {
        if (random.nextBoolean()) {
            return drawing.line(x, y);
        }
        double third = (fromX - x) / 3;
        double bend = y + random.nextDouble(-3, 3);
        return drawing.curve(x + 2 * third, bend, x + third, bend, x, y);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void bothLegsGetTheLengthOfTheRule(long seed) {
        Piece piece = skirt(seed);
        double before = Measured.leg(piece, "dart", Leg.BEFORE).length();
        double after = Measured.leg(piece, "dart", Leg.AFTER).length();
        for (Legs.Rule rule : Legs.Rule.values()) {
            double wanted = rule == Legs.Rule.LONGER
                    ? Math.max(before, after)
                    : rule == Legs.Rule.SHORTER ? Math.min(before, after) : (before + after) / 2;
            Reworked trued = Legs.equalise(piece, "dart", rule);
            Piece now = trued.piece();
            for (Leg leg : Leg.values()) {
                CurvePath was = Measured.leg(piece, "dart", leg);
                CurvePath is = Measured.leg(now, "dart", leg);
                assertThat(is.length()).as("seed %d, %s", seed, rule).isCloseTo(wanted, within(1e-9));
                assertThat(is.end().distance(was.end())).isLessThan(1e-9);
                assertThat(is.startTangent().distance(was.startTangent()))
                        .as("along its own line")
                        .isLessThan(1e-9);
            }
            assertThat(Measured.angle(now, "dart")).isCloseTo(Measured.angle(piece, "dart"), within(1e-12));
            assertNothingElseMoved(seed, piece, now);
            assertThat(SameCloth.differences(Panels.undo(trued), piece, 1e-9)).isEmpty();
            Reworked turned = Darts.rotate(now, "dart", Spot.on("side", 60), "side dart");
            assertThat(Lengths.base(turned.piece(), "waist")).isCloseTo(Lengths.base(now, "waist"), within(1e-9));
            assertThat(SameCloth.differences(Panels.undo(turned), now, 1e-9)).isEmpty();
        }
    }

    private static void assertNothingElseMoved(long seed, Piece was, Piece is) {
        for (String edge : List.of("centre", "hem", "side")) {
            assertThat(is.edge(edge)).isEqualTo(was.edge(edge));
        }
        assertThat(Paper.edge(is, "waist")
                        .start()
                        .distance(Paper.edge(was, "waist").start()))
                .isLessThan(1e-9);
        assertThat(Paper.edge(is, "waist")
                        .end()
                        .distance(Paper.edge(was, "waist").end()))
                .isLessThan(1e-9);
        for (Leg leg : Leg.values()) {
            CurvePath before = Measured.leg(was, "back dart", leg);
            CurvePath after = Measured.leg(is, "back dart", leg);
            assertThat(after.start().distance(before.start()))
                    .as("seed %d", seed)
                    .isLessThan(1e-9);
            assertThat(after.end().distance(before.end())).isLessThan(1e-9);
        }
        assertThat(Flat.polygon(Paper.outline(is)).isValid())
                .as("seed %d", seed)
                .isTrue();
        double folded = LegEnds.seam(is, "dart", Leg.BEFORE).length()
                + LegEnds.seam(is, "dart", Leg.AFTER).length()
                + LegEnds.seam(is, "back dart", Leg.BEFORE).length();
        assertThat(Lengths.folded(is, "waist")).isCloseTo(folded, within(1e-8));
    }

    /** A notch keeps its share of the stretch it lies on: ends and legs are the fixed points. */
    @ParameterizedTest
    @MethodSource("seeds")
    void notchesKeepTheirShareBetweenFixedPoints(long seed) {
        Piece piece = skirt(seed);
        Piece now = Legs.equalise(piece, "dart", Legs.Rule.LONGER).piece();
        double mouthWas = piece.opening("dart").mouth().before();
        double mouthIs = now.opening("dart").mouth().before();
        double firstWas = piece.opening("back dart").mouth().after();
        double firstIs = now.opening("back dart").mouth().after();
        for (int i = 0; i < 3; i++) {
            double was = piece.notches().get(i).arc();
            double is = now.notches().get(i).arc();
            double expected = was <= firstWas
                    ? was
                    : was <= mouthWas
                            ? firstIs + (was - firstWas) / (mouthWas - firstWas) * (mouthIs - firstIs)
                            : mouthIs
                                    + (was - mouthWas)
                                            / (piece.edge("waist").length() - mouthWas)
                                            * (now.edge("waist").length() - mouthIs);
            assertThat(is).as("seed %d, notch at %f", seed, was).isCloseTo(expected, within(1e-8));
        }
        assertThat(now.notches().get(3)).isEqualTo(piece.notches().get(3));
    }

    /** Plain geometry: legs of 130 and 120 mm at right angles to a level mouth become 125 each, the angle stays. */
    @Test
    void theLedgerTellsBothLegsAndTheEdge() {
        Piece piece = uneven();
        Reworked trued = Legs.equalise(piece, "dart", Legs.Rule.MEAN);
        assertThat(trued.ledger().only(Change.class))
                .extracting(Change::what)
                .containsExactly(
                        "before leg of 'dart'",
                        "after leg of 'dart'",
                        "length of 'bottom'",
                        "intake of 'dart'",
                        "net area");
        double before = Math.hypot(20, 120);
        double after = Math.hypot(30, 120);
        double mean = (before + after) / 2;
        Change first = trued.ledger().only(Change.class).get(0);
        assertThat(first.before()).isCloseTo(before, within(1e-9));
        assertThat(first.after()).isCloseTo(mean, within(1e-9));
        assertThat(trued.ledger().sentences(Steps.DEFAULT))
                .startsWith(
                        "Move the leg ends of 'dart' along their lines and redraw 'bottom' to them.",
                        "The before leg of 'dart' goes from 4 3/4 in (12.2 cm) to 4 7/8 in (12.3 cm).",
                        "The after leg of 'dart' goes from 4 7/8 in (12.4 cm) to 4 7/8 in (12.3 cm).");
        // by hand: the two straights of 80 and 70 mm end on the legs' lines at the mean
        Vector2D left = Vector2D.of(100, 120).add(Vector2D.of(-20, -120).multiply(mean / before));
        Vector2D right = Vector2D.of(100, 120).add(Vector2D.of(30, -120).multiply(mean / after));
        assertThat(Lengths.base(trued.piece(), "bottom"))
                .isCloseTo(left.norm() + right.distance(Vector2D.of(200, 0)), within(1e-9));
    }

    private static Piece uneven() {
        return Drawing.of("uneven")
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
    }

    /** The refusal prints legs apart that eighths and millimetres would print alike. */
    @Test
    void theRefusalToTurnPrintsFineMillimetres() {
        Piece nearly = Drawing.of("nearly")
                .from(0, 0)
                .edge("bottom", Role.SEAM)
                .line(80, 0)
                .dart("dart", 100, 120, 120, 0.0001, 0, Leg.BEFORE)
                .line(200, 0)
                .edge("rest", Role.SEAM)
                .line(200, 200)
                .line(0, 200)
                .edge("fold", Role.FOLD)
                .line(0, 0)
                .piece();
        assertThatThrownBy(() -> Darts.rotate(nearly, "dart", Spot.on("rest", 100), "new dart"))
                .isInstanceOf(DraftingException.class)
                .hasMessage("Rotate 'dart' to 'rest' at 100.0 mm: its legs are 121.6553 mm and 121.6552 mm long and"
                        + " cannot be laid on one another; make them equal first, with Legs.equalise.");
        Piece trued = Legs.equalise(nearly, "dart", Legs.Rule.LONGER).piece();
        assertThat(Darts.rotate(trued, "dart", Spot.on("rest", 100), "new dart")
                        .piece()
                        .openings())
                .hasSize(1);
    }

    @Test
    void aLegThatEndsAtACornerIsRefused() {
        Piece corner = Drawing.of("corner")
                .from(0, 0)
                .edge("bottom", Role.SEAM)
                .line(80, 0)
                .edge("rest of bottom", Role.SEAM)
                .dart("dart", 100, 120, 130, 0, 0, Leg.BEFORE)
                .line(200, 0)
                .edge("side", Role.SEAM)
                .line(200, 200)
                .line(0, 200)
                .edge("fold", Role.FOLD)
                .line(0, 0)
                .piece();
        assertThatThrownBy(() -> Legs.equalise(corner, "dart", Legs.Rule.LONGER))
                .isInstanceOf(DraftingException.class)
                .hasMessage(
                        "Move the leg ends of 'dart': its before leg ends at a corner or at another opening, where no"
                                + " stretch of 'rest of bottom' can be redrawn to it.");
    }

    @Test
    void wrongStretchesAreRefused() {
        Piece piece = uneven();
        CurvePath after = LegEnds.seam(piece, "dart", Leg.AFTER);
        assertThatThrownBy(() ->
                        LegEnds.move(piece, "dart", CurvePath.polyline(Vector2D.of(0, 0), Vector2D.of(75, 0)), after))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("Move the leg ends of 'dart': the seam must end on the line of the before leg, but ends"
                        + " 4.932 mm beside it, at (75.0, 0.0).");
        assertThatThrownBy(() ->
                        LegEnds.move(piece, "dart", CurvePath.polyline(Vector2D.of(0, 5), Vector2D.of(80, 0)), after))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(
                        "Move the leg ends of 'dart': the stretches must go from (0.0, 0.0) to the dart and from the"
                                + " dart to (200.0, 0.0).");
    }

    @Test
    void undoKnowsThatThePieceWasChangedSince() {
        Piece piece = uneven();
        Reworked trued = Legs.equalise(piece, "dart", Legs.Rule.MEAN);
        Piece later = Legs.equalise(
                        Darts.rotate(trued.piece(), "dart", Spot.on("side", 100), "new")
                                .piece(),
                        "new",
                        Legs.Rule.MEAN)
                .piece();
        assertThatThrownBy(() -> Panels.undo(new Reworked(later, trued.ledger())))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining("the piece was changed since");
        for (Edge edge : piece.edges()) {
            assertThat(Panels.undo(trued).edge(edge.name()).length()).isCloseTo(edge.length(), within(1e-9));
        }
    }
}
