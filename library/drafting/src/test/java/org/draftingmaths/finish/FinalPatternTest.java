package org.draftingmaths.finish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Bounds2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.block.Block;
import org.draftingmaths.block.TorsoBlock;
import org.draftingmaths.curve.Curve;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Nearest;
import org.draftingmaths.fullness.Spread;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.measure.Ease;
import org.draftingmaths.measure.Measure;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.measure.ProportionRules;
import org.draftingmaths.measure.Wearer;
import org.draftingmaths.piece.Beside;
import org.draftingmaths.piece.DartEnd;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Flat;
import org.draftingmaths.piece.Laid;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.LegEnds;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Notch;
import org.draftingmaths.piece.Panel;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.RandomPieces;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Slash;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.piece.Unfold;
import org.draftingmaths.piece.Use;
import org.draftingmaths.unit.Length;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** The finished pattern: notches, drill points, grain and labels on the cut piece. */
class FinalPatternTest {

    private static final TitleBlock TITLE =
            new TitleBlock("Tunic", "38", 1, 4, List.of(Cutting.once()), "version 1, 1 May 2024");

    private static final double WIDTH = 10;
    private static final Allowances PLAN = Allowances.of(Length.mm(WIDTH));

    private static Block block(boolean bodice) {
        Measurements body = Measurements.of("figure", Wearer.ADULT)
                .with(Measure.BUST, Length.mm(880))
                .with(Measure.WAIST, Length.mm(720))
                .with(Measure.HIP, Length.mm(970))
                .filledBy(ProportionRules.TORSO);
        return bodice ? TorsoBlock.bodice(body, Ease.CLOSE_FITTING) : TorsoBlock.draft(body, Ease.CLOSE_FITTING);
    }

    private static Piece front() {
        return block(true).draft().piece("front");
    }

    private static FinalPattern pattern(Piece piece) {
        return FinalPattern.of(piece, PLAN, Marking.DEFAULT, TITLE);
    }

    private static List<Snip> snips(FinalPattern pattern, Snip.Kind kind) {
        return pattern.snips().stream().filter(snip -> snip.kind() == kind).toList();
    }

    static Stream<Long> seeds() {
        return LongStream.range(0, 200).boxed();
    }

    /** A notch is carried along the normal: its place on the cut line is nearest to its place on the stitch line, a away. */
    @ParameterizedTest
    @MethodSource("seeds")
    void notchesAreCarriedAlongTheNormal(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double arc = random.nextDouble(20, 150);
        double width = random.nextDouble(6, 15);
        Piece piece = front().notched(new Notch("armhole", arc, Beside.BEFORE));
        FinalPattern pattern = FinalPattern.of(piece, Allowances.of(Length.mm(width)), Marking.DEFAULT, TITLE);
        Snip snip = snips(pattern, Snip.Kind.NOTCH).get(0);
        assertThat(snip.stitch()).isEqualTo(piece.edge("armhole").base().pointAt(arc));
        assertThat(snip.stitch().distance(snip.cut())).isCloseTo(width, within(1e-6));
        assertThat(Nearest.of(pattern.cut().side("armhole").path(), snip.stitch())
                        .point()
                        .distance(snip.cut()))
                .isLessThan(1e-4);
        assertThat(snip.depth()).isCloseTo(3, within(1e-9));
        assertThat(snip.end().distance(snip.stitch())).isCloseTo(width - 3, within(1e-6));
    }

    @Test
    void doubleNotchesStandEitherSideOfTheirPlace() {
        Piece piece = front().notched(new Notch("armhole", 80, Beside.BEFORE));
        FinalPattern pattern = FinalPattern.of(piece, PLAN, Marking.DEFAULT.doubled("armhole"), TITLE);
        assertThat(snips(pattern, Snip.Kind.NOTCH)).isEmpty();
        assertThat(snips(pattern, Snip.Kind.DOUBLE_NOTCH))
                .extracting(Snip::stitch)
                .containsExactly(
                        piece.edge("armhole").base().pointAt(75),
                        piece.edge("armhole").base().pointAt(85));
    }

    /**
     * Published: notches are cut 2 to 3 mm deep, and a snip stays at least 1/8 in (3.175 mm) from the stitch line (reference pages on
     * notches). Of the usual widths, 1/4 in and more keep both; below 6.175 mm half the allowance is the rule.
     */
    @Test
    void usualWidthsKeepTheSnipOffTheStitchLine() {
        Piece piece = front().notched(new Notch("armhole", 80, Beside.BEFORE));
        for (String width : List.of("1/4 in", "3/8 in", "1/2 in", "5/8 in", "3/4 in", "1 in")) {
            FinalPattern pattern = FinalPattern.of(piece, Allowances.of(Length.parse(width)), Marking.DEFAULT, TITLE);
            Snip snip = snips(pattern, Snip.Kind.NOTCH).get(0);
            assertThat(snip.depth()).isCloseTo(3, within(1e-9));
            assertThat(snip.end().distance(snip.stitch())).isGreaterThanOrEqualTo(3.175);
        }
        FinalPattern narrow = FinalPattern.of(piece, Allowances.of(Length.mm(5)), Marking.DEFAULT, TITLE);
        assertThat(snips(narrow, Snip.Kind.NOTCH).get(0).depth()).isCloseTo(2.5, within(1e-9));
    }

    @Test
    void aNotchAtACornerIsFound() {
        double length = front().edge("armhole").length();
        for (double arc : new double[] {0, 1, length - 2, length}) {
            Piece piece = front().notched(new Notch("armhole", arc, Beside.BEFORE));
            assertThat(pattern(piece).findings())
                    .as("%s", arc)
                    .extracting(Finding::kind)
                    .containsExactly(Finding.Kind.NOTCH_AT_CORNER);
        }
        Piece clear = front().notched(new Notch("armhole", 30, Beside.BEFORE));
        assertThat(pattern(clear).findings()).isEmpty();
    }

    /**
     * Both legs of a dart are marked where its stitch lines run on to the cut line; folded, the two marks are one where the cut line of
     * the dart's end meets both, as at the shoulder. A waist that is smooth with the dart closed at its apex meets the two legs to the sewn point at angles {@code p, q} that differ a little, and the marks lie
     * {@code w / sin p - w / sin q} apart, but for what the curve leaves its tangent.
     */
    @Test
    void dartLegsAreMarkedOnTheCutLine() {
        FinalPattern pattern = pattern(front());
        for (String dart : List.of("waist dart", "bust dart")) {
            List<Snip> legs = snips(pattern, Snip.Kind.DART_LEG).stream()
                    .filter(snip -> snip.of().equals(dart))
                    .toList();
            assertThat(legs).hasSize(2);
            Vector2D tip = DartEnd.sewnTip(front(), dart);
            Vector2D fold = tip.directionTo(DartEnd.foldEnd(front(), dart));
            Vector2D turned = Reflections.in(tip, fold).apply(legs.get(0).cut());
            double apart = turned.distance(legs.get(1).cut());
            if (dart.equals("bust dart")) {
                assertThat(apart).isLessThan(1e-6);
            } else {
                Met before = Met.of(dart, Leg.BEFORE);
                Met after = Met.of(dart, Leg.AFTER);
                assertThat(apart)
                        .isCloseTo(Math.abs(before.out() - after.out()), within(1e-6 + before.bend() + after.bend()));
            }
            for (Leg leg : Leg.values()) {
                Vector2D end = Measured.leg(front(), dart, leg).start();
                assertThat(legs)
                        .anySatisfy(snip -> assertThat(tip.directionTo(end).signedArea(tip.vectorTo(snip.cut())))
                                .isCloseTo(0, within(1e-6)));
            }
            legs.forEach(snip -> assertThat(
                            Nearest.of(pattern.cut().outline(), snip.cut()).distance())
                    .isLessThan(1e-6));
        }
    }

    /** Where a straight seam's cut line would be met on the line of its leg, and what a curved one leaves it by then. */
    private record Met(double out, double bend) {
        static Met of(String dart, Leg leg) {
            CurvePath seam = LegEnds.seam(front(), dart, leg);
            Vector2D end = Measured.leg(front(), dart, leg).start();
            Vector2D way = DartEnd.sewnTip(front(), dart).directionTo(end);
            int at = leg == Leg.BEFORE ? 1 : 0;
            Curve beside = seam.curves().get(at * (seam.curves().size() - 1));
            double sine = Math.abs(beside.tangent(at).signedArea(way));
            double along = WIDTH * beside.tangent(at).dot(way) / sine;
            return new Met(WIDTH / sine, Math.abs(beside.curvature(at)) * along * along / 2);
        }
    }

    @Test
    void foldEndsLevelsAndHemTurnsAreMarked() {
        Piece piece = block(false).draft().piece("back");
        FinalPattern pattern = FinalPattern.of(piece, PLAN.on("hem", Length.mm(40)), Marking.DEFAULT, TITLE);
        double hem = -piece.edge("side seam").base().start().getY();
        assertThat(snips(pattern, Snip.Kind.FOLD_END))
                .extracting(Snip::cut)
                .hasSize(2)
                .allSatisfy(place -> assertThat(place.getX()).isCloseTo(0, within(1e-9)))
                .anySatisfy(place -> assertThat(place.getY()).isCloseTo(-hem - 40, within(1e-6)));
        assertThat(snips(pattern, Snip.Kind.HEM_TURN))
                .hasSize(1)
                .allSatisfy(snip -> assertThat(snip.cut().getY()).isCloseTo(-hem, within(1e-9)))
                .allSatisfy(snip ->
                        assertThat(snip.cut().getX() - snip.stitch().getX()).isCloseTo(10, within(1e-6)));
        assertThat(snips(pattern, Snip.Kind.LEVEL_END)).extracting(Snip::of).containsExactly("bust line");
        Snip level = snips(pattern, Snip.Kind.LEVEL_END).get(0);
        assertThat(level.stitch().distance(level.cut())).isCloseTo(10, within(1e-6));
        assertThat(pattern.findings()).isEmpty();
    }

    @Test
    void gathersAreMarkedWhereTheyBeginAndStop() {
        Piece skirt = Drawing.of("skirt")
                .from(0, 0)
                .edge("hem", Role.HEM)
                .line(300, 0)
                .edge("side", Role.SEAM)
                .line(300, 600)
                .edge("waist", Role.SEAM)
                .line(0, 600)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .grain(150, 100, 150, 500)
                .piece();
        Piece spread = Spread.parallel(
                        skirt, Slash.straight("fullness", Spot.on("waist", 150), Spot.on("hem", 150)), 60)
                .piece()
                .using("fullness", new Use.Left(Use.Kind.GATHERS));
        List<Snip> ends = snips(pattern(spread), Snip.Kind.FULLNESS_END);
        assertThat(ends).hasSize(2);
        assertThat(ends.get(0).stitch().distance(ends.get(1).stitch())).isCloseTo(60, within(1e-9));
        assertThat(ends).allSatisfy(end -> assertThat(end.cut().getY()).isCloseTo(610, within(1e-6)));
    }

    /** Drilled on the dart's fold line, 6 to 13 mm before the sewn point, never at it. */
    @Test
    void dartsAreDrilledBeforeTheirPoint() {
        FinalPattern bodice = FinalPattern.of(front(), PLAN, Marking.DEFAULT.drill(Length.mm(12)), TITLE);
        assertThat(bodice.drills()).hasSize(2);
        for (Drill drill : bodice.drills()) {
            assertThat(drill.tip()).isEqualTo(DartEnd.sewnTip(front(), drill.dart()));
            assertThat(drill.point().distance(drill.tip())).isCloseTo(12, within(1e-9));
            Vector2D mouth = Measured.leg(front(), drill.dart(), Leg.BEFORE).start();
            Vector2D other = Measured.leg(front(), drill.dart(), Leg.AFTER).start();
            assertThat(drill.point().distance(mouth)).isCloseTo(drill.point().distance(other), within(1e-9));
            assertThat(drill.point().distance(mouth)).isLessThan(drill.tip().distance(mouth));
        }
        FinalPattern torso = pattern(block(false).draft().piece("back"));
        assertThat(torso.drills()).extracting(Drill::dart).containsExactly("shoulder dart", "waist dart", "waist dart");
    }

    private static Polygon polygon(List<Vector2D> corners) {
        Coordinate[] all = new Coordinate[corners.size() + 1];
        for (int i = 0; i < all.length; i++) {
            Vector2D corner = corners.get(i % corners.size());
            all[i] = new Coordinate(corner.getX(), corner.getY());
        }
        return new GeometryFactory().createPolygon(all);
    }

    private static void assertTextsInside(FinalPattern pattern, String as) {
        Polygon net = Flat.polygon(pattern.net());
        for (Label label : pattern.labels()) {
            Polygon box = polygon(label.corners());
            assertThat(net.contains(box)).as("%s %s inside", as, label).isTrue();
            for (Panel panel : pattern.piece().panels()) {
                Geometry on = box.intersection(Flat.polygon(pattern.piece().place(panel.ring())));
                assertThat(on.getArea())
                        .as("%s %s on one panel", as, label)
                        .satisfiesAnyOf(
                                area -> assertThat(area).isLessThan(1e-9),
                                area -> assertThat(area).isCloseTo(box.getArea(), within(1e-6)));
                for (Laid laid : panel.darts()) {
                    assertThat(box.intersects(Flat.polygon(pattern.piece().place(laid))))
                            .as("%s %s in a dart", as, label)
                            .isFalse();
                }
            }
            for (Label other : pattern.labels()) {
                if (!other.equals(label)) {
                    assertThat(box.intersects(polygon(other.corners())))
                            .as("%s %s", as, label)
                            .isFalse();
                }
            }
        }
        pattern.grain().ifPresent(grain -> {
            Geometry line = new GeometryFactory().createLineString(new Coordinate[] {
                new Coordinate(grain.from().getX(), grain.from().getY()),
                new Coordinate(grain.to().getX(), grain.to().getY())
            });
            assertThat(net.contains(line)).as("%s grain", as).isTrue();
            for (Label label : pattern.labels()) {
                assertThat(polygon(label.corners()).intersects(line))
                        .as("%s %s over the grain line", as, label)
                        .isFalse();
            }
        });
    }

    @Test
    void textsOfTheBlocksLieInside() {
        for (boolean bodice : new boolean[] {true, false}) {
            for (Piece piece : block(bodice).draft().pieces()) {
                FinalPattern pattern = pattern(piece);
                assertTextsInside(pattern, piece.name());
                assertThat(pattern.findings()).isEmpty();
                assertThat(pattern.labels()).extracting(Label::kind).contains(Label.Kind.TITLE, Label.Kind.FOLD);
                assertThat(pattern.labels().stream()
                                .filter(label -> label.kind() == Label.Kind.LEVEL)
                                .count())
                        .isEqualTo(piece.levels().size());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void textsOfRandomPiecesLieInside(long seed) {
        Piece piece = RandomPieces.piece(seed);
        try {
            FinalPattern pattern = FinalPattern.of(piece, Allowances.of(Length.mm(5)), Marking.DEFAULT, TITLE);
            assertTextsInside(pattern, "seed " + seed);
            boolean titled = pattern.labels().stream().anyMatch(label -> label.kind() == Label.Kind.TITLE);
            boolean found = pattern.findings().stream()
                    .anyMatch(finding -> finding.kind() == Finding.Kind.TEXT_TOO_LARGE
                            && finding.where().startsWith("title"));
            assertThat(titled).isNotEqualTo(found);
        } catch (DraftingException refused) {
            assertThat(refused).hasMessageMatching("(Add allowances to|Drill) .*");
        }
    }

    /** The place found for a box is as roomy as the best of a fine grid, to the stated hundredth. */
    @ParameterizedTest
    @MethodSource("seeds")
    void theTitleStandsWhereThereIsMostRoom(long seed) {
        Piece piece = RandomPieces.piece(seed);
        ClearCloth cloth = ClearCloth.of(piece);
        Vector2D right = Vector2D.of(1, 0);
        ClearCloth.Place place = cloth.largest(right, 60, 25);
        Bounds2D bounds = piece.place(piece.panels().get(0).ring()).bounds();
        Polygon panel = Flat.polygon(piece.place(piece.panels().get(0).ring()));
        Vector2D size = bounds.getDiagonal();
        for (int i = 1; i < 25; i++) {
            for (int k = 1; k < 25; k++) {
                Vector2D centre = bounds.getMin().add(Vector2D.of(size.getX() * i / 25, size.getY() * k / 25));
                double more = place.share() + 0.011;
                Polygon box = polygon(List.of(
                        centre.add(Vector2D.of(-30 * more, -12.5 * more)),
                        centre.add(Vector2D.of(30 * more, -12.5 * more)),
                        centre.add(Vector2D.of(30 * more, 12.5 * more)),
                        centre.add(Vector2D.of(-30 * more, 12.5 * more))));
                assertThat(place.share() > 0 && panel.contains(box))
                        .as("seed %s", seed)
                        .isFalse();
            }
        }
    }

    @Test
    void aTextThatDoesNotFitIsFound() {
        Piece strip = Drawing.of("strap")
                .from(0, 0)
                .edge("lower", Role.SEAM)
                .line(300, 0)
                .edge("end", Role.SEAM)
                .line(300, 12)
                .edge("upper", Role.SEAM)
                .line(0, 12)
                .edge("other end", Role.SEAM)
                .line(0, 0)
                .grain(20, 6, 280, 6)
                .piece();
        FinalPattern pattern = FinalPattern.of(strip, PLAN, Marking.DEFAULT, TITLE);
        assertThat(pattern.labels()).isEmpty();
        assertThat(pattern.findings()).hasSize(1);
        assertThat(pattern.findings().get(0).kind()).isEqualTo(Finding.Kind.TEXT_TOO_LARGE);
        assertThat(pattern.findings().get(0).sentence(Steps.DEFAULT))
                .startsWith("title on 'strap': the text does not fit inside the stitch line; measured ");
        FinalPattern smaller =
                FinalPattern.of(strip, PLAN, Marking.DEFAULT.letters(Length.mm(1.4), Length.mm(1.4)), TITLE);
        assertThat(smaller.findings()).isEmpty();
    }

    /** Where the drawn grain line leaves the cloth it is drawn anew inside, in the same direction; a piece without one is found. */
    @Test
    void theGrainLineLiesInside() {
        Drawing square = Drawing.of("square")
                .from(0, 0)
                .edge("a", Role.SEAM)
                .line(200, 0)
                .edge("b", Role.SEAM)
                .line(200, 200)
                .edge("c", Role.SEAM)
                .line(0, 200)
                .edge("d", Role.SEAM)
                .line(0, 0);
        GrainLine kept = pattern(square.grain(50, 20, 50, 180).piece()).grain().orElseThrow();
        assertThat(kept).isEqualTo(new GrainLine(Vector2D.of(50, 20), Vector2D.of(50, 180), false));
        GrainLine anew = FinalPattern.of(
                        square.grain(150, 150, 260, 260).piece(), PLAN, Marking.DEFAULT.napped(), TITLE)
                .grain()
                .orElseThrow();
        assertThat(anew.oneWay()).isTrue();
        assertThat(anew.from().directionTo(anew.to()).distance(Vector2D.of(1, 1).normalize()))
                .isLessThan(1e-12);
        assertThat(anew.from().distance(anew.to())).isGreaterThan(200);
        assertThat(polygon(List.of(Vector2D.ZERO, Vector2D.of(200, 0), Vector2D.of(200, 200), Vector2D.of(0, 200)))
                        .contains(new GeometryFactory()
                                .createPoint(new Coordinate(
                                        anew.to().getX(), anew.to().getY()))))
                .isTrue();
        FinalPattern without = pattern(square.piece());
        assertThat(without.grain()).isEqualTo(Optional.empty());
        assertThat(without.findings()).extracting(Finding::kind).containsExactly(Finding.Kind.GRAIN_MISSING);
    }

    /** The label follows the piece, so an opened piece cannot still say it lies on the fold. */
    @Test
    void onlyAPieceWithAFoldIsPlacedOnTheFold() {
        FinalPattern half = pattern(front());
        FinalPattern whole = pattern(Unfold.at(front(), "centre front").piece());
        assertThat(half.onFold()).isTrue();
        assertThat(texts(half))
                .anyMatch(line -> line.equals("cut 1 on the fold, self"))
                .contains("place on the fold");
        assertThat(whole.onFold()).isFalse();
        assertThat(texts(whole)).noneMatch(line -> line.contains("fold")).contains("cut 1, self");
        assertThat(whole.lines()).noneMatch(line -> line.kind() == MarkedLine.Kind.FOLD);
        assertThat(whole.cut().outline().area())
                .isCloseTo(2 * half.cut().outline().area(), within(1e-2));
        double foldLength = half.cut().outline().length()
                - half.cut().side("centre front").path().length()
                - 2 * 10;
        assertThat(whole.cut().outline().length()).isCloseTo(2 * foldLength, within(1e-3));
        TitleBlock pairs = new TitleBlock("Tunic", "38", 1, 4, List.of(Cutting.pair()), "");
        assertThatThrownBy(() -> FinalPattern.of(front(), PLAN, Marking.DEFAULT, pairs))
                .isInstanceOf(DraftingException.class)
                .hasMessage(
                        "Cut 'front' in pairs: it lies on the fold, so that left and right are one; open it out, or make"
                                + " its fold a seam.");
    }

    private static List<String> texts(FinalPattern pattern) {
        return pattern.labels().stream()
                .flatMap(label -> label.lines().stream())
                .toList();
    }

    /** The notches at the centre of an opened piece stand on both halves at one place; they are cut once. */
    @Test
    void centreNotchesAreCutOnce() {
        FinalPattern whole = pattern(Unfold.at(front(), "centre front").piece());
        assertThat(snips(whole, Snip.Kind.NOTCH)).hasSize(2);
        assertThat(whole.findings()).isEmpty();
    }

    @Test
    void foldsAreLookedAt() {
        Drawing begun = Drawing.of("half").from(0, 0).edge("hem", Role.HEM).line(200, 10);
        Piece slanted = begun.edge("side", Role.SEAM)
                .line(200, 300)
                .edge("top", Role.SEAM)
                .line(0, 300)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .grain(50, 50, 50, 250)
                .piece();
        assertThat(Folds.findings(slanted, Folds.SQUARE))
                .extracting(finding -> finding.sentence(Steps.DEFAULT))
                .containsExactly(
                        "'hem' at 'centre' of 'half': the edge is not square to the fold; measured 87.1°, expected"
                                + " 90.0°, off by -2.86°, tolerance 1.00°.");
        assertThat(Folds.findings(slanted, Math.toRadians(3))).isEmpty();
        Piece bent = begun.edge("side", Role.SEAM)
                .line(200, 300)
                .edge("top", Role.SEAM)
                .line(0, 300)
                .edge("centre", Role.FOLD)
                .arc(3, 150, 0, 0)
                .piece();
        assertThat(Folds.findings(bent, Math.toRadians(10)))
                .extracting(Finding::kind)
                .containsExactly(Finding.Kind.FOLD_NOT_STRAIGHT);
        assertThatThrownBy(() -> Folds.findings(bent, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void whatCannotBeMarkedIsRefused() {
        Piece piece = front().notched(new Notch("armhole", 80, Beside.BEFORE));
        assertThatThrownBy(() -> FinalPattern.of(piece, PLAN, Marking.DEFAULT.depth(Length.mm(5.5)), TITLE))
                .isInstanceOf(DraftingException.class)
                .hasMessage(
                        "Notch 'armhole' of 'front': a notch deeper than half the allowance weakens the seam (asked 1/4 in"
                                + " (0.6 cm), possible 0 in (0.0 cm) to 1/4 in (0.5 cm); precisely, 5.50 mm asked and 5.00 mm possible).")
                .satisfies(refused -> assertThat(((DraftingException) refused)
                                .reach()
                                .orElseThrow()
                                .most())
                        .isEqualTo(5));
        assertThatThrownBy(() -> Marking.DEFAULT.drill(Length.mm(0)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("The distance of a drill point from the sewn point is 6.0 to 13.0 mm: 0.0 mm.");
        assertThatThrownBy(() -> Marking.DEFAULT.depth(Length.mm(-1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("The depth of a notch is 0.0 mm or more: -1.0 mm.");
        assertThatThrownBy(() -> FinalPattern.of(piece, PLAN, Marking.DEFAULT.doubled("collar"), TITLE))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Cutting(3, true, Cutting.Cloth.SELF)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Cutting(0, false, Cutting.Cloth.SELF))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new TitleBlock("Tunic", "38", 5, 4, List.of(Cutting.once()), ""))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("Piece 5 of 4; pieces count from 1 to the last.");
        assertThatThrownBy(() -> new TitleBlock("Tunic", "38", 1, 4, List.of(), ""))
                .isInstanceOf(IllegalArgumentException.class);
        Piece shortDart = Drawing.of("short")
                .from(0, 0)
                .edge("hem", Role.HEM)
                .line(100, 0)
                .dart("dart", 103, 9, 106, 0, 0, Leg.AFTER)
                .line(200, 0)
                .edge("side", Role.SEAM)
                .line(200, 200)
                .edge("top", Role.SEAM)
                .line(0, 0)
                .piece();
        assertThatThrownBy(() -> pattern(shortDart))
                .isInstanceOf(DraftingException.class)
                .hasMessageStartingWith("Drill 'dart' before its point: the dart is shorter than that");
    }

    /** The same piece gives the same pattern, and what is said of cutting reads as the trade writes it. */
    @Test
    void itIsTheSameEveryTime() {
        assertThat(pattern(front())).isEqualTo(pattern(front()));
        TitleBlock title = new TitleBlock(
                "Tunic",
                "38",
                2,
                4,
                List.of(
                        Cutting.pair(),
                        new Cutting(4, true, Cutting.Cloth.LINING),
                        new Cutting(1, false, Cutting.Cloth.INTERFACING)),
                " ");
        Piece sleeve = Drawing.of("sleeve")
                .from(0, 0)
                .edge("hem", Role.HEM)
                .line(100, 0)
                .edge("seam", Role.SEAM)
                .line(50, 200)
                .line(0, 0)
                .grain(50, 20, 50, 120)
                .piece();
        assertThat(title.lines(sleeve))
                .containsExactly(
                        "Tunic",
                        "sleeve, piece 2 of 4",
                        "size 38",
                        "cut 2, a pair, self",
                        "cut 4, 2 pairs, lining",
                        "cut 1, interfacing");
        assertThat(Cutting.once().words(sleeve)).isEqualTo("cut 1, self");
        Piece onBias = Bias.put(sleeve, BiasWay.LEFT).piece();
        assertThat(Cutting.once().words(onBias)).isEqualTo("cut 1, single layer, face up, self");
        assertThat(Cutting.pair().words(onBias)).isEqualTo("cut 2, a pair, self");
        assertThat(Cutting.once().words(front())).isEqualTo("cut 1 on the fold, self");
    }

    /** The lines that are drawn close the stitch line, and every dart has its two legs and its fold. */
    @Test
    void allLinesAreThere() {
        FinalPattern pattern = pattern(front());
        double stitched = 0;
        for (MarkedLine line : pattern.lines()) {
            if (line.kind() == MarkedLine.Kind.STITCH || line.kind() == MarkedLine.Kind.FOLD) {
                stitched += line.path().length();
            }
        }
        assertThat(stitched).isCloseTo(pattern.net().length(), within(1e-9));
        assertThat(kinds(pattern, MarkedLine.Kind.DART_LEG)).isEqualTo(4);
        assertThat(kinds(pattern, MarkedLine.Kind.DART_CENTRE)).isEqualTo(2);
        assertThat(kinds(pattern, MarkedLine.Kind.FOLD)).isEqualTo(1);
    }

    private static long kinds(FinalPattern pattern, MarkedLine.Kind kind) {
        return pattern.lines().stream().filter(line -> line.kind() == kind).count();
    }
}
