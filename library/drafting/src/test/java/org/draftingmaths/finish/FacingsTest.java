package org.draftingmaths.finish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.block.TorsoBlock;
import org.draftingmaths.check.Checks;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Inside;
import org.draftingmaths.curve.Nearest;
import org.draftingmaths.dart.Darts;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.measure.Ease;
import org.draftingmaths.measure.Measure;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.measure.ProportionRules;
import org.draftingmaths.measure.Wearer;
import org.draftingmaths.piece.Beside;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Flat;
import org.draftingmaths.piece.Isometry;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Notch;
import org.draftingmaths.piece.Panels;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.piece.Use;
import org.draftingmaths.seam.Walk;
import org.draftingmaths.unit.Length;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FacingsTest {

    private static final double FOLDED = 1e-6;

    private static final List<Facings.On> NECK =
            List.of(new Facings.On("front", "neckline"), new Facings.On("back", "neckline"));

    private static final List<Facings.On> ARM =
            List.of(new Facings.On("back", "armhole"), new Facings.On("front", "armhole"));

    static Stream<Long> seeds() {
        return LongStream.range(0, 60).boxed();
    }

    /** A bodice for a plausible body. */
    static Draft bodice(SplittableRandom random) {
        double bust = random.nextDouble(800, 1100);
        Measurements body = Measurements.of("figure", Wearer.ADULT)
                .with(Measure.BUST, Length.mm(bust))
                .with(Measure.WAIST, Length.mm(bust - random.nextDouble(120, 220)))
                .with(Measure.HIP, Length.mm(bust + random.nextDouble(20, 100)))
                .filledBy(ProportionRules.TORSO);
        return TorsoBlock.bodice(body, Ease.CLOSE_FITTING).draft();
    }

    private static Draft bodice() {
        return bodice(new SplittableRandom(1));
    }

    /** Distances between places of a line are what no laying of it changes. */
    private static void assertSameShape(CurvePath one, CurvePath other, String what) {
        assertThat(one.length()).as(what).isCloseTo(other.length(), within(FOLDED));
        double length = Math.min(one.length(), other.length());
        for (int i = 0; i <= 12; i++) {
            for (int k = 0; k < i; k++) {
                double here = one.pointAt(length * i / 12).distance(one.pointAt(length * k / 12));
                double there = other.pointAt(length * i / 12).distance(other.pointAt(length * k / 12));
                assertThat(here).as("%s, places %d and %d", what, i, k).isCloseTo(there, within(FOLDED));
            }
        }
    }

    /** Traced edge, seams between facings, grain, no darts, and a place inside the garment (JTS is the judge). */
    @ParameterizedTest
    @MethodSource("seeds")
    void facingsWithSeamsKeepTheirLaws(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Draft draft = bodice(random);
        double width = random.nextDouble(25, 50);
        Facing facing = Facings.separate(draft, "neck facing", NECK, width);
        assertThat(facing.pieces()).extracting(Piece::name).containsExactly("front neck facing", "back neck facing");
        for (int i = 0; i < 2; i++) {
            Piece garment = draft.piece(NECK.get(i).piece());
            Piece made = facing.pieces().get(i);
            assertSameShape(
                    Paper.edge(made, "neckline"), garment.edge("neckline").base(), "seed " + seed);
            assertThat(made.openings()).isEmpty();
            assertThat(made.grain()
                            .orElseThrow()
                            .direction()
                            .dot(garment.grain().orElseThrow().direction()))
                    .isCloseTo(1, within(1e-12));
            assertThat(Flat.polygon(Paper.outline(garment)).buffer(0.01).contains(Flat.polygon(Paper.outline(made))))
                    .as("seed %d: it lies where it is sewn", seed)
                    .isTrue();
            assertThat(Lengths.base(made, i == 0 ? "centre front" : "centre back"))
                    .isCloseTo(width, within(FOLDED));
            assertThat(Checks.piece(made, 1e-6)).isEmpty();
        }
        Draft facings = new Draft("facings", facing.pieces(), facing.joins());
        assertThat(Walk.all(facings))
                .hasSize(1)
                .allSatisfy(walk -> assertThat(walk.difference()).isCloseTo(0, within(FOLDED)));
        assertThat(facing.joins().get(0).first().edge()).isEqualTo("shoulder");
    }

    /** Every place of the outer edge is as far from the traced edges as was asked. */
    @ParameterizedTest
    @MethodSource("seeds")
    void theOuterEdgeIsParallel(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Draft draft = bodice(random);
        double width = random.nextDouble(25, 55);
        for (List<Facings.On> edges : List.of(NECK, ARM)) {
            Piece made = Facings.inOnePiece(draft, "facing", edges, width).only();
            CurvePath outer = Paper.edge(made, "outer edge");
            double least = width;
            for (int i = 0; i <= 40; i++) {
                Vector2D point = outer.pointAt(outer.length() * i / 40);
                double nearest = edges.stream()
                        .mapToDouble(on ->
                                Nearest.of(goingOn(made, on, edges), point).distance())
                        .min()
                        .orElseThrow();
                assertThat(nearest).as("seed %d", seed).isLessThan(width + 1e-5);
                least = Math.min(least, nearest);
            }
            assertThat(least).as("seed %d", seed).isGreaterThan(width - 1e-5);
            for (Facings.On on : edges) {
                assertSameShape(
                        Paper.edge(made, on.piece() + " " + on.edge()),
                        draft.piece(on.piece()).edge(on.edge()).base(),
                        "seed " + seed);
            }
            assertThat(Flat.polygon(Paper.outline(made)).isValid()).isTrue();
        }
    }

    /** Past its ends a line beside the edge goes on straight, as the edge would; the neighbours may bend away. */
    private static CurvePath goingOn(Piece made, Facings.On on, List<Facings.On> all) {
        CurvePath edge = Paper.edge(made, on.piece() + " " + on.edge());
        CurvePath going = edge;
        if (!isJoined(made, on, all, edge.start())) {
            going = CurvePath.polyline(edge.start().subtract(edge.startTangent().multiply(9)), edge.start())
                    .then(going);
        }
        if (!isJoined(made, on, all, edge.end())) {
            going = going.then(CurvePath.polyline(
                    edge.end(), edge.end().add(edge.endTangent().multiply(9))));
        }
        return going;
    }

    private static boolean isJoined(Piece made, Facings.On on, List<Facings.On> all, Vector2D end) {
        return all.stream()
                .filter(other -> !other.equals(on))
                .map(other -> Paper.edge(made, other.piece() + " " + other.edge()))
                .anyMatch(line -> Nearest.of(line, end).distance() < 1e-5);
    }

    /** A dart is no part of a facing: wherever it was moved, also into the traced edge, the facing is the same. */
    @ParameterizedTest
    @MethodSource("seeds")
    void aMovedDartChangesNothing(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Draft draft = bodice(random);
        Piece front = draft.piece("front");
        double width = random.nextDouble(25, 50);
        Piece before =
                Facings.separate(draft, "neck facing", NECK, width).pieces().get(0);
        String edge = random.nextBoolean() ? "neckline" : "armhole";
        double share = random.nextDouble(0.3, 0.7);
        Piece moved = Darts.rotate(
                        front,
                        "bust dart",
                        Spot.on(edge, share * front.edge(edge).length()),
                        "moved dart")
                .piece();
        Piece after = Facings.separate(draft.with(moved), "neck facing", NECK, width)
                .pieces()
                .get(0);
        assertThat(after.sameCloth(before, 1e-6)).as("seed %d, %s", seed, edge).isTrue();
    }

    /** An armhole facing across the bust dart that was moved to the armhole is the one from before, too. */
    @Test
    void theArmholeIsTracedClosed() {
        Draft draft = bodice();
        Piece front = draft.piece("front");
        Piece before = Facings.inOnePiece(draft, "arm facing", ARM, 45).only();
        Piece moved = Darts.rotate(front, "bust dart", Spot.on("armhole", 60), "arm dart")
                .piece();
        Piece after =
                Facings.inOnePiece(draft.with(moved), "arm facing", ARM, 45).only();
        assertSameShape(Paper.edge(after, "front armhole"), Paper.edge(before, "front armhole"), "front armhole");
        assertSameShape(Paper.edge(after, "outer edge"), Paper.edge(before, "outer edge"), "outer edge");
        assertThat(after.openings()).isEmpty();
        assertThat(after.area()).isCloseTo(before.area(), within(1e-4));
    }

    @Test
    void notchesAreCarried() {
        Draft draft = bodice();
        Piece front = draft.piece("front").notched(new Notch("neckline", 33, Beside.BEFORE));
        Piece facing = Facings.separate(draft.with(front), "neck facing", NECK, 45)
                .pieces()
                .get(0);
        assertThat(facing.notches()).extracting(Notch::edge).contains("neckline");
        assertThat(facing.notches()).anySatisfy(notch -> assertThat(notch.arc()).isCloseTo(33, within(1e-9)));
        Draft both = new Draft(
                "both",
                List.of(front, facing),
                List.of(Seam.flat(
                        "neck", Seam.Mate.of("front", "neckline"), Seam.Mate.of("front neck facing", "neckline"))));
        assertThat(Walk.all(both).get(0).intervals())
                .hasSize(2)
                .allSatisfy(interval -> assertThat(interval.difference()).isCloseTo(0, within(FOLDED)));
    }

    /** Gathers are drawn in before tracing, flare hangs on: the facing of a flared hem follows the drawn line. */
    @Test
    void surplusThatIsSewnInIsNotTraced() {
        Draft draft = bodice();
        Piece gathered = Darts.leave(draft.piece("front"), "waist dart", Use.Kind.GATHERS)
                .piece();
        Piece flared =
                Darts.leave(draft.piece("front"), "waist dart", Use.Kind.FLARE).piece();
        List<Facings.On> waist = List.of(new Facings.On("front", "waist"));
        double sewn = Lengths.base(draft.piece("front"), "waist");
        Piece drawnIn =
                Facings.separate(draft.with(gathered), "facing", waist, 40).only();
        Piece free = Facings.separate(draft.with(flared), "facing", waist, 40).only();
        assertThat(Paper.edge(drawnIn, "waist").length()).isCloseTo(sewn, within(FOLDED));
        assertThat(Paper.edge(free, "waist").length())
                .isCloseTo(Lengths.drawn(flared, "waist"), within(FOLDED))
                .isGreaterThan(sewn + 5);
    }

    @Test
    void cornersAreCleaned() {
        Piece square = Drawing.of("front")
                .from(0, 0)
                .edge("waist", Role.SEAM)
                .line(220, 0)
                .edge("side", Role.SEAM)
                .line(220, 300)
                .edge("shoulder", Role.SEAM)
                .line(90, 320)
                .edge("neckline", Role.FINISHED)
                .line(90, 220)
                .line(0, 220)
                .edge("centre front", Role.FOLD)
                .line(0, 0)
                .grain(20, 20, 20, 200)
                .piece();
        Piece facing = Facings.separate(
                        new Draft("square", List.of(square), List.of()),
                        "facing",
                        List.of(new Facings.On("front", "neckline")),
                        50)
                .only();
        CurvePath outer = Paper.edge(facing, "outer edge");
        assertThat(Nearest.of(outer, Vector2D.of(140, 170)).distance())
                .as("the corner is whole")
                .isCloseTo(0, within(1e-9));
        assertThat(outer.end().distance(Vector2D.of(0, 170))).isLessThan(1e-9);
        // By hand: 50 x 50 at the corner, 90 x 50 below the neck, and beside it 100 x 50 with the shoulder's slope of 2
        // in 13 over 50.
        assertThat(facing.area()).isCloseTo(50 * 50 + 90 * 50 + 100 * 50 - 50 * 50 * 2 / 13.0 / 2, within(1e-6));
    }

    // ------------------------------------------------------------------------------------------------ combined

    @ParameterizedTest
    @MethodSource("seeds")
    void neckAndArmholeInOne(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Draft draft = bodice(random);
        for (String name : List.of("front", "back")) {
            Piece garment = draft.piece(name);
            Combined what = new Combined("neckline", "armhole", 60, 45, Combined.TRIM);
            Facing facing = Facings.combined(garment, name + " facing", what);
            Piece made = facing.only();
            double shoulder = Lengths.base(garment, "shoulder");
            assertThat(made.openings()).isEmpty();
            assertThat(Lengths.base(made, "shoulder")).isCloseTo(shoulder - 5, within(FOLDED));
            assertThat(Lengths.base(made, "side seam")).isCloseTo(45, within(FOLDED));
            assertThat(Lengths.base(made, "centre " + name)).isCloseTo(60, within(FOLDED));
            assertThat(facing.findings()).as("seed %d", seed).isEmpty();
            assertThat(Flat.polygon(Paper.outline(made)).isValid()).isTrue();
            // Trimmed inwards only: where the darts closed, the facing lies nowhere outside the garment.
            assertThat(Math.abs(Paper.edge(made, "neckline").length()
                            - garment.edge("neckline").length()))
                    .isLessThan(4);
            Vector2D lower = Paper.edge(made, "outer edge").startTangent();
            assertThat(Math.abs(lower.getY())).as("square to the centre").isLessThan(1e-9);
        }
    }

    @Test
    void aStrapTooNarrowToTurnIsFound() {
        Facing facing = Facings.combined(strappy(26), "facing", new Combined("neckline", "armhole", 60, 40, 2.5));
        assertThat(facing.findings()).hasSize(1);
        Finding finding = facing.findings().get(0);
        assertThat(finding.kind()).isEqualTo(Finding.Kind.TOO_NARROW_TO_TURN);
        assertThat(finding.measured()).isCloseTo(21, within(1e-6));
        assertThat(finding.expected()).isEqualTo(25);
        assertThat(Facings.combined(strappy(30), "facing", new Combined("neckline", "armhole", 60, 40, 2.5))
                        .findings())
                .isEmpty();
        assertThatThrownBy(
                        () -> Facings.combined(strappy(4), "facing", new Combined("neckline", "armhole", 60, 40, 2.5)))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining("nothing of the shoulder would be left")
                .hasMessageContaining("possible 0 in (0.0 cm) to 1/8 in (0.2 cm)");
    }

    /** A front with upright edges beside its strap, so that the room to turn is the shoulder's width. */
    private static Piece strappy(double strap) {
        return Drawing.of("front")
                .from(0, 0)
                .edge("waist", Role.SEAM)
                .line(220, 0)
                .edge("side seam", Role.SEAM)
                .line(220, 200)
                .edge("armhole", Role.FINISHED)
                .curve(180, 200, 90 + strap, 230, 90 + strap, 280)
                .line(90 + strap, 350)
                .edge("shoulder", Role.SEAM)
                .line(90, 350)
                .edge("neckline", Role.FINISHED)
                .line(90, 280)
                .curve(90, 240, 60, 220, 0, 220)
                .edge("centre front", Role.FOLD)
                .line(0, 0)
                .grain(20, 20, 20, 180)
                .piece();
    }

    // ------------------------------------------------------------------------------------------------ cut in one

    /** A front that opens at its centre: a straight front edge between a slanted neckline and a slanted hem. */
    private static Piece opening(SplittableRandom random) {
        double neck = random.nextDouble(300, 340);
        double hem = random.nextDouble(-30, 30);
        return Drawing.of("front")
                .from(0, hem)
                .edge("hem", Role.HEM)
                .line(220, random.nextDouble(-10, 10))
                .edge("side", Role.SEAM)
                .line(230, 220)
                .edge("armhole", Role.SEAM)
                .curve(190, 215, 180, 260, 190, 370)
                .edge("shoulder", Role.SEAM)
                .line(80, 400)
                .edge("neckline", Role.FINISHED)
                .curve(75, 360, 50, neck + random.nextDouble(-10, 20), 0, neck)
                .edge("front edge", Role.FINISHED)
                .line(0, hem)
                .notch("hem", 20)
                .grain(60, 40, 60, 300)
                .piece();
    }

    /** Folded back, the facing lies on the front: outline on outline, notch on notch; and undone, the front is the front. */
    @ParameterizedTest
    @MethodSource("seeds")
    void aFacingCutInOneFoldsOnToThePiece(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Piece plain = opening(random);
        Piece front = plain.notched(new Notch("neckline", plain.edge("neckline").length() - 15, Beside.BEFORE));
        double width = random.nextDouble(30, 75);
        Reworked done = Facings.cutInOne(front, "front edge", width);
        Piece made = done.piece();
        AffineTransformMatrix2D fold = Isometry.reflection(Vector2D.ZERO, Vector2D.of(0, 1));
        for (String edge : List.of("neckline", "hem")) {
            CurvePath folded = Paper.edge(made, edge + " turned").transformed(fold);
            CurvePath own = Paper.edge(made, edge);
            for (int i = 0; i <= 30; i++) {
                Vector2D point = folded.pointAt(folded.length() * i / 30);
                assertThat(Nearest.of(own, point).distance())
                        .as("seed %d, %s", seed, edge)
                        .isLessThan(FOLDED);
            }
        }
        CurvePath free = Paper.edge(made, "outer edge of front edge");
        assertThat(free.bounds().getMin().getX()).isCloseTo(-width, within(1e-9));
        assertThat(free.bounds().getMax().getX()).isCloseTo(-width, within(1e-9));
        assertThat(made.levels()).extracting(line -> line.name()).containsExactly("front edge line");
        assertThat(made.notches().stream().filter(notch -> notch.edge().endsWith(" turned")))
                .hasSize(2);
        // The strip's area, by cutting the front there with JTS.
        double strip = Flat.polygon(Paper.outline(front))
                .intersection(new org.locationtech.jts.geom.GeometryFactory()
                        .toGeometry(new org.locationtech.jts.geom.Envelope(0, width, -100, 500)))
                .getArea();
        assertThat(made.area() - front.area()).isCloseTo(strip, within(0.5));
        assertThat(Flat.polygon(Paper.outline(made)).isValid()).isTrue();
        assertThat(Panels.undo(done).sameCloth(front, 1e-9)).as("seed %d", seed).isTrue();
    }

    @Test
    void itIsTold() {
        Facing facing = Facings.separate(bodice(), "neck facing", NECK, 50);
        assertThat(facing.ledger().sentences(Steps.DEFAULT).get(0))
                .startsWith("Trace 'neckline' of 'front' with its darts closed, ")
                .contains(" for 'front neck facing', 2 in (5.0 cm) wide; its outer edge is ");
        assertThat(Facings.cutInOne(opening(new SplittableRandom(3)), "front edge", 60)
                        .ledger()
                        .sentences(Steps.DEFAULT))
                .containsExactly(
                        "Draw the piece on beyond 'front edge', and mark where that was as the line 'front edge line'.");
    }

    /**
     * Deep at one end and narrow at the other: folded back its ends lie on the neighbours, each as far along as was asked; its outer edge leaves them
     * square and lies on the cloth; undone, the front is the front.
     */
    @ParameterizedTest
    @MethodSource("seeds")
    void aFacingCutInOneMayBeDeeperAtOneEnd(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Piece front = opening(random);
        double atNeck = random.nextDouble(30, 75);
        double atHem = random.nextDouble(30, 150);
        Reworked done = Facings.cutInOne(front, "front edge", atNeck, atHem);
        Piece made = done.piece();
        assertThat(Lengths.base(made, "neckline turned")).as("seed %d", seed).isCloseTo(atNeck, within(1e-6));
        assertThat(Lengths.base(made, "hem turned")).as("seed %d", seed).isCloseTo(atHem, within(1e-6));
        AffineTransformMatrix2D fold = Isometry.reflection(Vector2D.ZERO, Vector2D.of(0, 1));
        for (String edge : List.of("neckline", "hem")) {
            CurvePath folded = Paper.edge(made, edge + " turned").transformed(fold);
            for (int i = 0; i <= 30; i++) {
                assertThat(Nearest.of(Paper.edge(made, edge), folded.pointAt(folded.length() * i / 30))
                                .distance())
                        .as("seed %d, %s", seed, edge)
                        .isLessThan(FOLDED);
            }
        }
        CurvePath outer = Paper.edge(made, "outer edge of front edge").transformed(fold);
        CurvePath outline = Paper.outline(front);
        for (int i = 1; i < 20; i++) {
            assertThat(Inside.of(outline, outer.pointAt(outer.length() * i / 20), 1e-6))
                    .as("seed %d", seed)
                    .isEqualTo(Inside.Where.INSIDE);
        }
        for (boolean end : new boolean[] {false, true}) {
            Vector2D corner = end ? outer.end() : outer.start();
            Vector2D way = end ? outer.endTangent() : outer.startTangent();
            CurvePath neighbour = Stream.of("neckline", "hem")
                    .map(edge -> Paper.edge(front, edge))
                    .min((a, b) -> Double.compare(
                            Nearest.of(a, corner).distance(),
                            Nearest.of(b, corner).distance()))
                    .orElseThrow();
            Vector2D along = neighbour.tangentAt(Nearest.of(neighbour, corner).at());
            assertThat(way.dot(along)).as("seed %d", seed).isCloseTo(0, within(1e-5));
        }
        assertThat(made.edge("outer edge of front edge").role()).isEqualTo(Role.FINISHED);
        assertThat(Facings.isOuterEdgeInOne("outer edge of front edge")).isTrue();
        assertThat(Hems.isFreeEdge("outer edge of front edge")).isFalse();
        assertThat(Checks.piece(made, 1e-6)).isEmpty();
        assertThat(Panels.undo(done).sameCloth(front, 1e-6)).isTrue();
    }

    // ------------------------------------------------------------------------------------------------ refused

    @Test
    void impossibleFacingsAreRefused() {
        Draft draft = bodice();
        assertThatThrownBy(() -> Facings.separate(draft, "facing", NECK, 900))
                .isInstanceOf(DraftingException.class)
                .hasMessageStartingWith(
                        "Trace 'facing' from 'neckline' of 'front' and 'neckline' of 'back': it would be deeper than");
        assertThatThrownBy(() -> Facings.separate(draft, "facing", List.of(new Facings.On("front", "neckline")), 300))
                .isInstanceOfSatisfying(
                        DraftingException.class,
                        refused ->
                                assertThat(refused.reach().orElseThrow().most()).isBetween(100.0, 200.0));
        assertThatThrownBy(() -> Facings.separate(
                        draft,
                        "facing",
                        List.of(new Facings.On("front", "neckline"), new Facings.On("back", "waist")),
                        50))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining("no seam of the draft joins 'neckline' of 'front' and 'waist' of 'back'");
        for (double width : new double[] {0, -5, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> Facings.separate(draft, "facing", NECK, width))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage("A facing is wider than 0 mm: " + width + " mm.");
            assertThatThrownBy(() -> Facings.cutInOne(draft.piece("front"), "waist", width))
                    .isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> Facings.cutInOne(draft.piece("front"), "waist", 40, width))
                    .isInstanceOf(IllegalArgumentException.class);
        }
        assertThatThrownBy(() -> Facings.separate(draft, "facing", List.of(), 50))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Facings.cutInOne(draft.piece("front"), "neckline", 40))
                .isInstanceOf(DraftingException.class)
                .hasMessage(
                        "Cut a facing in one at 'neckline' of 'front': it is curved, and cloth folds on a straight line only; trace a"
                                + " separate facing.");
        assertThatThrownBy(() -> Facings.cutInOne(draft.piece("front"), "centre front", 40))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining("it is cut on the fold of the cloth already");
        assertThatThrownBy(() -> Facings.cutInOne(opening(new SplittableRandom(4)), "front edge", 400))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining("it would be deeper than 'front' at");
        assertThatThrownBy(() -> Facings.cutInOne(opening(new SplittableRandom(4)), "front edge", 30, 400))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining("it would be deeper than 'hem' is long");
        assertThatThrownBy(() -> new Combined("neckline", "armhole", Double.NaN, 40, 2))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Combined("neckline", "armhole", 40, 40, 9))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Facings.combined(
                        draft.piece("front"), "facing", new Combined("neckline", "armhole", 900, 40, 2)))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining("it would be deeper than 'centre front' is long");
        assertThatThrownBy(() -> Facings.combined(
                        draft.piece("front"), "facing", new Combined("neckline", "side seam", 60, 40, 2)))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining("the two edges do not meet over one edge between them");
    }
}
