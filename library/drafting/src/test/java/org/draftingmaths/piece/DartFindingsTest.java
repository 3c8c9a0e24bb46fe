package org.draftingmaths.piece;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.block.TorsoBlock;
import org.draftingmaths.check.Checks;
import org.draftingmaths.check.DartLimits;
import org.draftingmaths.dart.Darts;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Finding.Kind;
import org.draftingmaths.measure.Ease;
import org.draftingmaths.measure.Measure;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.measure.ProportionRules;
import org.draftingmaths.measure.Wearer;
import org.draftingmaths.unit.Length;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** What a check finds at darts, and that it finds instead of throwing. */
class DartFindingsTest {

    static Stream<Long> seeds() {
        return LongStream.range(0, 400).boxed();
    }

    /** A piece 200 wide and 300 high with one dart from the foot; x of both leg ends, apex, set-back. */
    private static Piece piece(String edge, double from, double to, double apexX, double depth, double setBack) {
        return Drawing.of("front")
                .from(0, 0)
                .edge(edge, Role.SEAM)
                .line(from, 0)
                .dart("dart", apexX, depth, to, 0, setBack, Leg.BEFORE)
                .line(200, 0)
                .edge("side seam", Role.SEAM)
                .line(200, 300)
                .edge("top", Role.SEAM)
                .line(0, 300)
                .edge("centre front", Role.FOLD)
                .line(0, 0)
                .piece();
    }

    private static List<String> sentences(Piece piece) {
        return Checks.piece(piece, 0.5).stream()
                .map(finding -> finding.sentence(Steps.DEFAULT))
                .toList();
    }

    @Test
    void aSoundDartIsNotFound() {
        assertThat(Checks.piece(piece("waist", 90, 120, 105, 140, 20), 0.5)).isEmpty();
    }

    @Test
    void aDartWiderThanOneShouldBe() {
        assertThat(sentences(piece("waist", 80, 130, 105, 220, 0)))
                .containsExactly(
                        "'dart' of 'front': the dart is wider than one dart should be; measured 2 in (5.0 cm), expected 1 3/4 in"
                                + " (4.5 cm), off by 5.00 mm, tolerance 0.00 mm. Divide it (Darts.divide).");
        assertThat(sentences(piece("hem", 80, 130, 105, 220, 0)))
                .as("the limit of width is the waist's")
                .isEmpty();
        assertThat(sentences(piece("hem", 85, 125, 105, 100, 0)))
                .containsExactly(
                        "'dart' of 'front': the dart is wider than one dart should be; measured 22.6°, expected 22.0°,"
                                + " off by 0.62°, tolerance 0.00°. Divide it (Darts.divide).");
    }

    /** The limits are arguments. */
    @Test
    void limitsAreTheCallers() {
        DartLimits mine = new DartLimits(Math.toRadians(30), Map.of("hem", 10.0), 100, 2, 0, 5);
        Piece wide = piece("waist", 80, 130, 105, 100, 0);
        assertThat(Checks.piece(wide, 0.5, mine)).isEmpty();
        assertThat(Checks.piece(piece("hem", 99, 111, 105, 100, 0), 0.5, mine))
                .extracting(Finding::kind)
                .containsExactly(Kind.DART_WIDE);
        assertThatThrownBy(() -> new DartLimits(-1, Map.of(), 0, 0, 0, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("The widest angle is 0 rad or more: -1.0 rad.");
        assertThatThrownBy(() -> new DartLimits(1, Map.of("waist", Double.NaN), 0, 0, 0, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("The widest intake at 'waist' is 0 mm or more: NaN mm.");
    }

    @Test
    void aDartTooSmallToSew() {
        assertThat(sentences(piece("waist", 100, 105, 102.5, 140, 0)))
                .containsExactly(
                        "'dart' of 'front': the dart is too small to be worth sewing; measured 1/4 in (0.5 cm), expected 1/4 in"
                                + " (0.6 cm), off by -1.00 mm, tolerance 0.00 mm. Ease so little in (Darts.leave).");
    }

    @Test
    void aPointOffTheBisector() {
        // the legs differ by 0.4 mm, less than the tolerance; the narrow dart's point is 3 mm off all the same
        Piece piece = piece("waist", 96, 104, 103, 60, 0);
        assertThat(Math.hypot(7, 60) - Math.hypot(1, 60)).isLessThan(0.4);
        List<Finding> found = Checks.piece(piece, 0.5);
        assertThat(found).extracting(Finding::kind).containsExactly(Kind.POINT_OFF_BISECTOR);
        assertThat(found.get(0).measured())
                .as("from the middle of the mouth at 100 to 103")
                .isCloseTo(3, within(1e-9));
    }

    /** A dart that another hand has set back by more than it is deep: no drawing would make it, a file may hold it. */
    @Test
    void aPointSetBackBeyondTheMouth() {
        Piece sound = piece("waist", 90, 120, 105, 140, 20);
        Opening dart = sound.opening("dart").used(new Use.Dart(150, Leg.BEFORE));
        Piece beyond = sound.withOpenings(List.of(dart), sound.panels());
        assertThat(sentences(beyond))
                .containsExactly(
                        "'dart' of 'front': the point is set back beyond the mouth; measured 5 7/8 in (15.0 cm), expected 5 1/2 in"
                                + " (14.0 cm), off by 10.00 mm, tolerance 0.00 mm. Set the point back by less.");
        assertThat(Lengths.drawn(beyond, "waist")).as("the chord is drawn").isCloseTo(200, within(1e-9));
    }

    @Test
    void aSliverBetweenTwoDarts() {
        Piece front = Drawing.of("front")
                .from(0, 0)
                .edge("waist", Role.SEAM)
                .line(60, 0)
                .dart("one", 100, 150, 80, 0, 0, Leg.BEFORE)
                .line(98, 0)
                .dart("two", 100, 150, 118, 0, 0, Leg.AFTER)
                .line(200, 0)
                .edge("rest", Role.SEAM)
                .line(200, 300)
                .line(0, 300)
                .edge("centre front", Role.FOLD)
                .line(0, 0)
                .piece();
        double sector = Math.atan(20.0 / 150) - Math.atan(2.0 / 150);
        assertThat(Checks.piece(front, 50))
                .filteredOn(finding -> finding.kind() == Kind.SLIVER)
                .hasSize(1)
                .allSatisfy(finding -> {
                    assertThat(finding.measured()).isCloseTo(sector, within(1e-9));
                    assertThat(finding.sentence(Steps.DEFAULT))
                            .isEqualTo(
                                    "between 'one' and 'two' of 'front': the cloth between the darts is a sliver; measured"
                                            + " 6.8°, expected 8.0°, off by -1.17°, tolerance 0.00°. Put the darts 8° apart or more.");
                });
    }

    @Test
    void shapedLegsThatCrossOnceTheDartIsNarrower() {
        Piece shaped = piece("waist", 90, 120, 105, 140, 0)
                .using("dart", new Use.Dart(0, Leg.BEFORE).shaped(LegShape.bowed(0.5, -3)));
        assertThat(Checks.piece(shaped, 0.5)).isEmpty();
        Piece narrow = Darts.rotateShare(
                        shaped.using("dart", new Use.Dart(0, Leg.BEFORE)),
                        "dart",
                        Spot.on("side seam", 150),
                        "new",
                        0.5)
                .piece();
        List<Opening> openings = new ArrayList<>();
        for (Opening each : narrow.openings()) {
            openings.add(
                    each.name().equals("dart")
                            ? each.used(shaped.opening("dart").mouth().use())
                            : each);
        }
        Piece crossing = new Piece(
                "front", narrow.edges(), openings, narrow.panels(), List.of(), List.of(), List.of(), Optional.empty());
        assertThat(Checks.piece(crossing, 0.5)).extracting(Finding::kind).containsExactly(Kind.STITCH_LINES_CROSS);
    }

    // ---------------------------------------------------------------------------------------------- underlay

    /** Close to the side: the underlay of 15 reaches 5 past the side seam, which is 10 away. Pressed the other way it has room. */
    @Test
    void anUnderlayPastTheSideSeam() {
        Piece piece = piece("waist", 160, 190, 175, 140, 0).using("dart", new Use.Dart(0, Leg.AFTER));
        List<Underlay.Overrun> overruns = Underlay.overruns(piece, "dart");
        assertThat(overruns).hasSize(1);
        // by hand: folded, the fold lies at the whole angle g beyond upright, as far from the point as the corner at
        // (200, 0)
        double past = Math.hypot(25, 140) * Math.sin(2 * Math.atan(15.0 / 140)) - 25;
        assertThat(overruns.get(0).by()).isCloseTo(past, within(1e-9));
        assertThat(overruns.get(0).past()).isEqualTo(new Border.OfEdge("side seam"));
        assertThat(sentences(piece))
                .singleElement()
                .asString()
                .startsWith(
                        "'dart' of 'front', past 'side seam': the underlay reaches past the panel it is pressed to; measured")
                .endsWith(
                        "Trim the underlay flush with 'side seam'. Or press the dart the other way (Piece.using): there it has"
                                + " room, and its fold ends 3.3 mm outside the mouth.");
        assertThat(Underlay.overrun(piece, "dart", Leg.BEFORE)).isEmpty();
        assertThat(Checks.piece(piece.using("dart", new Use.Dart(0, Leg.BEFORE)), 0.5))
                .isEmpty();
        assertThat(Underlay.overruns(piece.using("dart", new Use.Dart(0, Leg.BEFORE).pressedOpen()), "dart"))
                .as("pressed open, one half still has no room")
                .extracting(Underlay.Overrun::side)
                .containsExactly(Leg.AFTER);
    }

    /** Beside the fold of the piece the underlay would run past the centre. */
    @Test
    void anUnderlayPastTheCentre() {
        Piece piece = piece("waist", 8, 40, 24, 140, 0);
        assertThat(Underlay.overruns(piece, "dart"))
                .extracting(Underlay.Overrun::past)
                .containsExactly(new Border.OfEdge("centre front"));
        Piece narrow = Drawing.of("strip")
                .from(0, 0)
                .edge("waist", Role.SEAM)
                .line(8, 0)
                .dart("dart", 24, 140, 40, 0, 0, Leg.BEFORE)
                .line(48, 0)
                .edge("side seam", Role.SEAM)
                .line(48, 300)
                .line(0, 300)
                .edge("centre front", Role.FOLD)
                .line(0, 0)
                .piece();
        assertThat(sentences(narrow))
                .singleElement()
                .asString()
                .contains("past 'centre front'")
                .contains("Or press the dart the other way (Piece.using), though there it reaches past by");
    }

    /** Between two darts the panel may be narrower than the underlay: it reaches past the other dart's leg. */
    @Test
    void anUnderlayPastTheNextDart() {
        Piece piece = Drawing.of("skirt")
                .from(0, 0)
                .edge("waist", Role.SEAM)
                .line(100, 0)
                .dart("one", 115, 140, 130, 0, 0, Leg.AFTER)
                .line(138, 0)
                .dart("two", 150, 130, 162, 0, 0, Leg.AFTER)
                .line(260, 0)
                .edge("rest", Role.SEAM)
                .line(260, 300)
                .line(0, 300)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .piece();
        assertThat(Underlay.overruns(piece, "one"))
                .extracting(Underlay.Overrun::past)
                .containsExactly(new Border.OfLeg("two", Leg.BEFORE));
        assertThat(Underlay.overruns(piece, "two")).isEmpty();
    }

    private static Measurements body(double bust, double waist, double hip) {
        return Measurements.of("figure", Wearer.ADULT)
                .with(Measure.BUST, Length.mm(bust))
                .with(Measure.WAIST, Length.mm(waist))
                .with(Measure.HIP, Length.mm(hip))
                .filledBy(ProportionRules.TORSO);
    }

    /** In the armhole the seam may run nearly along the leg: the underlay becomes very long; near its foot it reaches past the side. */
    @Test
    void anArmholeDartHasALongUnderlay() {
        Piece front = TorsoBlock.bodice(body(880, 720, 970), Ease.CLOSE_FITTING)
                .draft()
                .piece("front");
        double armhole = front.edge("armhole").length();
        Piece half = Darts.rotate(front, "bust dart", Spot.on("armhole", 0.5 * armhole), "armhole dart")
                .piece();
        assertThat(Checks.piece(half, 0.5))
                .extracting(Finding::kind, Finding::where)
                .containsExactly(tuple(Kind.UNDERLAY_LONG, "'armhole dart' of 'front'"));
        Piece low = Darts.rotate(front, "bust dart", Spot.on("armhole", 0.1 * armhole), "armhole dart")
                .piece();
        assertThat(Checks.piece(low, 0.5))
                .extracting(Finding::kind, Finding::where)
                .containsExactly(tuple(Kind.UNDERLAY_OVERRUNS, "'armhole dart' of 'front', past 'side seam'"));
        Piece lower = Darts.rotate(front, "bust dart", Spot.on("armhole", 0.4 * armhole), "armhole dart")
                .piece();
        assertThat(sentences(lower))
                .singleElement()
                .asString()
                .startsWith(
                        "'armhole dart' of 'front': the underlay is very long, because the seam runs nearly along the leg;")
                .contains(
                        "Trim the underlay to a seam allowance beside the stitch line. Or press the dart the other way"
                                + " (Piece.using): there it has room")
                .endsWith("Or move the dart to where the seam crosses it more nearly square (Darts.rotate).");
        Use.Dart use = (Use.Dart) lower.opening("armhole dart").mouth().use();
        Piece other = lower.using(
                "armhole dart", use.pressed(use.press().orElseThrow().other()));
        assertThat(Checks.piece(other, 0.5)).as("the remedy is one").isEmpty();
    }

    /** The bodice in many sizes, its bust dart in many places, pressed either way and open: a check and JTS agree on the paper. */
    @ParameterizedTest
    @ValueSource(doubles = {760, 820, 880, 940, 1000, 1060, 1120, 1180})
    void theChecksAgreeWithJts(double bust) {
        Piece front = TorsoBlock.bodice(body(bust, bust - 160, bust + 90), Ease.CLOSE_FITTING)
                .draft()
                .piece("front");
        int sound = 0;
        for (String edge : List.of("side seam", "armhole", "neckline", "shoulder", "waist")) {
            for (double share : new double[] {0.15, 0.5, 0.85}) {
                double arc = share * front.edge(edge).length();
                Piece moved = movedOr(front, "bust dart", Spot.on(edge, arc));
                for (Opening dart : moved.openings()) {
                    Use.Dart use = (Use.Dart) dart.mouth().use();
                    for (Use each : List.of(use.pressed(Leg.BEFORE), use.pressed(Leg.AFTER), use.pressedOpen())) {
                        Piece piece = moved.using(dart.name(), each);
                        boolean crosses = Checks.piece(piece, 0.5).stream()
                                .anyMatch(finding -> finding.kind() == Kind.OUTLINE_CROSSES);
                        assertThat(Flat.polygon(Paper.outline(piece)).isValid())
                                .as("bust %.0f, %s at %.2f, '%s' %s", bust, edge, share, dart.name(), each)
                                .isEqualTo(!crosses);
                        sound += crosses ? 0 : 1;
                    }
                }
            }
        }
        assertThat(sound).as("drafts whose outline is sound").isGreaterThan(60);
    }

    /** Where the part would not clear, the front as it was. */
    private static Piece movedOr(Piece front, String dart, Spot to) {
        try {
            return Darts.rotate(front, dart, to, "moved dart").piece();
        } catch (DraftingException refused) {
            return front;
        }
    }

    // ---------------------------------------------------------------------------------------------- never throws

    /** Two darts that share a leg end: no seam lies between them, and both ends are drawn and checked all the same. */
    @Test
    void twoDartsMayShareALegEnd() {
        Drawing begun = Drawing.of("front").from(0, 0).edge("waist", Role.SEAM).line(60, 0);
        Piece piece = begun.dart("one", 70, 150, 80, 0, 0, Leg.AFTER)
                .dart("two", 90, 150, 100, 0, 0, Leg.BEFORE)
                .line(200, 0)
                .edge("rest", Role.SEAM)
                .line(200, 300)
                .line(0, 300)
                .edge("centre front", Role.FOLD)
                .line(0, 0)
                .piece();
        assertThat(Checks.piece(piece, 0.5))
                .extracting(Finding::kind)
                .containsExactly(Kind.UNDERLAY_OVERRUNS, Kind.UNDERLAY_OVERRUNS);
        Piece eased = piece.using("one", new Use.Left(Use.Kind.EASE)).using("two", new Use.Left(Use.Kind.GATHERS));
        assertThat(Checks.piece(eased, 0.5)).isEmpty();
        assertThat(Flat.polygon(Paper.outline(eased)).isValid()).isTrue();
        assertThat(Checks.piece(piece.using("two", new Use.Dart(0, Leg.AFTER).pressedOpen()), 0.5))
                .isNotEmpty();
    }

    /** Poor drafts of every kind: whatever a drawing accepts, a check reports and does not throw. */
    @Test
    void poorDraftsAreData() {
        int checked = 0;
        for (long seed = 0; seed < 2000; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            Optional<Piece> drawn = poor(random);
            if (drawn.isPresent()) {
                Piece piece = drawn.get();
                for (Opening opening : piece.openings()) {
                    piece = spoiled(piece, opening, random);
                }
                assertChecked(seed, piece, random.nextDouble(0, 1));
                checked++;
            }
        }
        assertThat(checked).as("drafts that were drawn").isGreaterThan(800);
    }

    private static void assertChecked(long seed, Piece piece, double tolerance) {
        assertThat(Checks.piece(piece, tolerance))
                .as("seed %d", seed)
                .allSatisfy(finding -> assertThat(finding.sentence(Steps.DEFAULT))
                        .contains("measured")
                        .endsWith("."));
        Draft draft = new Draft(
                "poor",
                List.of(piece, piece.named("other")),
                List.of(new Seam(
                        "seam",
                        Seam.Mate.of("poor", "edge 0"),
                        Seam.Mate.of("other", "edge 1"),
                        List.of(new Seam.Held(3, 2, Seam.How.EASE, "none")))));
        assertThat(Checks.all(draft, tolerance))
                .as("seed %d", seed)
                .extracting(Finding::kind)
                .contains(Kind.EASE_NOWHERE);
        Draft flat = new Draft(
                "poor",
                draft.pieces(),
                List.of(Seam.flat("seam", Seam.Mate.of("poor", "edge 0"), Seam.Mate.of("other", "edge 1"))));
        assertThat(Checks.all(flat, tolerance))
                .as("seed %d", seed)
                .extracting(Finding::kind)
                .doesNotContain(Kind.EASE_NOWHERE);
    }

    /** Corners on rays, sometimes so uneven that edges cross; darts at corners, back to back, with unequal legs. */
    private static Optional<Piece> poor(SplittableRandom random) {
        int n = random.nextInt(3, 7);
        List<Vector2D> corners = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double angle = 2 * Math.PI * (i + random.nextDouble(-0.5, 0.5)) / n;
            corners.add(Vector2D.of(Math.cos(angle), Math.sin(angle)).multiply(random.nextDouble(150, 300)));
        }
        Drawing drawing =
                Drawing.of("poor").from(corners.get(0).getX(), corners.get(0).getY());
        for (int i = 0; i < n; i++) {
            Vector2D from = corners.get(i);
            Vector2D to = corners.get((i + 1) % n);
            drawing = drawing.edge("edge " + i, Role.SEAM);
            double at = random.nextBoolean() ? 0 : random.nextDouble(0.1, 0.5);
            if (at > 0) {
                Vector2D point = from.lerp(to, at);
                drawing = drawing.line(point.getX(), point.getY());
            }
            int darts = random.nextInt(0, 3);
            for (int k = 0; k < darts; k++) {
                double end = Math.min(0.95, at + random.nextDouble(0.005, 0.2));
                Vector2D point = from.lerp(to, end);
                Vector2D apex = from.lerp(to, (at + end) / 2 + random.nextDouble(-0.02, 0.02))
                        .multiply(random.nextDouble(0.3, 0.9));
                Leg press = random.nextBoolean() ? Leg.BEFORE : Leg.AFTER;
                drawing = drawing.dart("dart " + i + k, apex.getX(), apex.getY(), point.getX(), point.getY(), 0, press);
                at = end;
            }
            drawing = drawing.line(to.getX(), to.getY());
        }
        try {
            return Optional.of(drawing.piece());
        } catch (DraftingException refused) {
            return Optional.empty();
        }
    }

    private static Piece spoiled(Piece piece, Opening opening, SplittableRandom random) {
        Use use = switch (random.nextInt(5)) {
            case 0 -> new Use.Left(List.of(Use.Kind.values()).get(random.nextInt(4)));
            case 1 -> new Use.Dart(random.nextDouble(0, 200), Leg.BEFORE);
            case 2 -> new Use.Dart(0, Leg.AFTER).pressedOpen();
            case 3 -> new Use.Dart(0, Leg.BEFORE).shaped(LegShape.bowed(0.5, random.nextDouble(-40, 40)));
            default -> opening.mouth().use();
        };
        return piece.withOpenings(
                piece.openings().stream()
                        .map(each -> each.equals(opening) ? each.used(use) : each)
                        .toList(),
                piece.panels());
    }

    /** Random sound pieces: a dart that does not overrun, folded, keeps its fold inside the piece, judged point by point. */
    @ParameterizedTest
    @MethodSource("seeds")
    void underlaysWithRoomLieOnThePiece(long seed) {
        Piece piece = RandomPieces.piece(seed);
        for (Opening dart : piece.openings()) {
            Leg press = ((Use.Dart) dart.mouth().use()).press().orElseThrow();
            boolean room = Underlay.overruns(piece, dart.name()).isEmpty();
            Vector2D tip = DartEnd.sewnTip(piece, dart.name());
            Vector2D leg = dart.base(press).start();
            Vector2D end = DartEnd.foldEnd(piece, dart.name());
            Vector2D way = tip.directionTo(leg);
            Vector2D off = tip.vectorTo(end);
            Vector2D folded = tip.add(way.multiply(2 * off.dot(way)).subtract(off));
            Geometry paper = Flat.polygon(Paper.outline(piece));
            double outside =
                    paper.distance(new GeometryFactory().createPoint(new Coordinate(folded.getX(), folded.getY())));
            if (room) {
                assertThat(outside).as("seed %d, %s", seed, dart.name()).isLessThan(0.05);
            }
        }
    }

    @Test
    void nothingFoundSaysWhatWasLookedAt() {
        assertThat(Checks.LOOKED_AT)
                .startsWith("Looked at: outlines on paper; legs, points, widths, slivers and underlays");
        assertThat(Checks.LOOKED_AT).contains("Not looked at: allowances, labels, missing grain lines");
    }
}
