package org.draftingmaths.fullness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.assertj.core.api.ThrowableAssert;
import org.draftingmaths.check.Checks;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Nearest;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.FoldEnd;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Panels;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Slash;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.piece.Stay;
import org.draftingmaths.piece.Use;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class PleatsTest {

    private static final List<Use.Under> UNDER = List.of(Use.Under.BEFORE, Use.Under.AFTER, Use.Under.BOTH);
    private static final List<PleatPlan.Kind> KINDS =
            List.of(PleatPlan.Kind.KNIFE, PleatPlan.Kind.BOX, PleatPlan.Kind.INVERTED);

    static Stream<Long> seeds() {
        return LongStream.range(0, 200).boxed();
    }

    /** A skirt panel whose waist is curved, so that the shape of a pleat's end can be seen. */
    private static Piece skirt(double width, double height, double sag) {
        return Drawing.of("skirt")
                .from(0, 0)
                .edge("hem", Role.HEM)
                .line(width, 0)
                .edge("side", Role.SEAM)
                .line(width, height)
                .edge("waist", Role.SEAM)
                .curve(width * 0.7, height - sag, width * 0.3, height - sag - 8, 0, height - 10)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .piece();
    }

    private static List<Slash> placements(int count, double width, double waist) {
        List<Slash> slashes = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            double share = (double) i / (count + 1);
            slashes.add(
                    Slash.straight("pleat " + i, Spot.on("waist", share * waist), Spot.on("hem", (1 - share) * width)));
        }
        return slashes;
    }

    /**
     * The fold itself: reflect the first layer in the fold that is seen, bring the second to where its own leg comes; both end on the
     * edge of the cloth above them to 1e-6 mm. Every motion here is made from the drawn legs alone.
     */
    @ParameterizedTest
    @MethodSource("seeds")
    void foldedTheLayersCoincide(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double width = random.nextDouble(300, 400);
        Piece skirt = skirt(width, random.nextDouble(400, 700), random.nextDouble(0, 20));
        Slash slash = placements(1, width, skirt.edge("waist").length()).get(0);
        Use.Under under = UNDER.get(random.nextInt(3));
        double underlay = random.nextDouble(10, under == Use.Under.BOTH ? 30 : 60);
        double far = random.nextBoolean() ? underlay : random.nextDouble(10, 60);
        Reworked done = Pleats.fold(skirt, List.of(new Pleat(slash, underlay, far, under, 0)), Stay.CENTRE);
        Piece piece = done.piece();

        CurvePath before = Measured.leg(piece, "pleat 1", Leg.BEFORE);
        CurvePath after = Measured.leg(piece, "pleat 1", Leg.AFTER);
        CurvePath shape = FoldEnd.shape(piece, "pleat 1", true);
        CurvePath edge = Paper.edge(piece, "waist");
        double at = run(piece, before.start());
        CurvePath upTo = edge.between(0, at);
        CurvePath from = edge.between(at + shape.length(), edge.length());
        assertThat(shape.start().distance(before.start())).isLessThan(1e-9);
        assertThat(shape.end().distance(after.start())).isLessThan(1e-9);
        for (int i = 0; i <= 60; i++) {
            Vector2D point = shape.pointAt(shape.length() * i / 60);
            double miss = under == Use.Under.BOTH
                    ? inverted(point, before, after, upTo, from)
                    : under == Use.Under.BEFORE ? knife(point, before, after, upTo) : knife(point, after, before, from);
            assertThat(miss).as("seed %d, %s, point %d", seed, under, i).isLessThan(1e-6);
        }
        assertThat(Lengths.folded(piece, "waist")).isCloseTo(skirt.edge("waist").length(), within(1e-9));
        assertThat(Lengths.folded(piece, "hem")).isCloseTo(width, within(1e-9));
        assertThat(piece.area()).isCloseTo(skirt.area(), within(1e-6));
        assertThat(Panels.undo(done).sameCloth(skirt, 1e-9)).isTrue();
    }

    private static double run(Piece piece, Vector2D start) {
        CurvePath edge = Paper.edge(piece, "waist");
        return Nearest.of(edge, start).at();
    }

    /** A point beyond the middle line lies on the second layer. */
    private static double knife(Vector2D point, CurvePath seen, CurvePath other, CurvePath cloth) {
        Vector2D hem = seen.end().lerp(other.end(), 0.5);
        Vector2D waist = seen.start().lerp(other.start(), 0.5);
        boolean first = Math.signum(cross(hem, waist, point)) == Math.signum(cross(hem, waist, seen.start()));
        Vector2D folded = first
                ? reflected(point, seen.start(), seen.end())
                : carried(point, other.start(), other.end(), seen.start(), seen.end());
        return distance(cloth, folded);
    }

    /** Half of the underlay to either side of the centre line, each folded as a knife pleat whose legs are the fold and the centre line. */
    private static double inverted(Vector2D point, CurvePath before, CurvePath after, CurvePath upTo, CurvePath from) {
        Vector2D hem = before.end().lerp(after.end(), 0.5);
        Vector2D waist = before.start().lerp(after.start(), 0.5);
        Vector2D centre = centre(before, after, true);
        Vector2D centreHem = centre(before, after, false);
        CurvePath middle = CurvePath.polyline(centre, centreHem);
        boolean first = Math.signum(cross(hem, waist, point)) == Math.signum(cross(hem, waist, before.start()));
        return first ? knife(point, before, middle, upTo) : knife(point, after, middle, from);
    }

    /** The point of the centre line as far from where the legs would meet as their ends are. */
    private static Vector2D centre(CurvePath before, CurvePath after, boolean start) {
        Vector2D a = start ? before.start() : before.end();
        Vector2D b = start ? after.start() : after.end();
        double w = before.start().distance(after.start());
        double h = before.end().distance(after.end());
        if (Math.abs(w - h) < 1e-9) {
            return a.lerp(b, 0.5);
        }
        // The legs would meet where the gap comes to nothing.
        double share = w / (w - h);
        Vector2D hinge =
                before.start().add(before.start().vectorTo(before.end()).multiply(share));
        double radius = hinge.distance(a);
        return hinge.add(hinge.directionTo(a.lerp(b, 0.5)).multiply(radius));
    }

    private static double cross(Vector2D from, Vector2D to, Vector2D point) {
        return from.vectorTo(to).signedArea(from.vectorTo(point));
    }

    private static Vector2D reflected(Vector2D point, Vector2D on, Vector2D along) {
        Vector2D way = on.directionTo(along);
        Vector2D from = on.vectorTo(point);
        return on.add(way.multiply(2 * from.dot(way)).subtract(from));
    }

    private static Vector2D carried(Vector2D point, Vector2D a, Vector2D aEnd, Vector2D b, Vector2D bEnd) {
        Vector2D one = a.vectorTo(aEnd);
        Vector2D other = b.vectorTo(bEnd);
        double turn = Math.atan2(one.signedArea(other), one.dot(other));
        return AffineTransformMatrix2D.createRotation(a, turn).apply(point).add(a.vectorTo(b));
    }

    private static double distance(CurvePath path, Vector2D point) {
        return Nearest.of(path, point).distance();
    }

    /** A row of knife pleats with full cover: the edge beneath goes on over the folds beside it, and nothing overlaps. */
    @Test
    void aRowOfKnifePleatsIsCutFolded() {
        Piece skirt = skirt(400, 600, 12);
        double waist = skirt.edge("waist").length();
        double pitch = waist / 5;
        List<Pleat> pleats = placements(4, 400, waist).stream()
                .map(slash -> Pleat.even(slash, pitch - 1, Use.Under.AFTER))
                .toList();
        Piece piece = Pleats.fold(skirt, pleats, Stay.CENTRE).piece();
        assertThat(Lengths.folded(piece, "waist")).isCloseTo(waist, within(1e-9));
        assertThat(Pleats.findings(piece, 0)).isEmpty();
        // The waist is curved: straight chords across the pleats would miss the layers above.
        CurvePath shape = FoldEnd.shape(piece, "pleat 2", true);
        assertThat(shape.length()).isGreaterThan(shape.start().distance(shape.end()) + 0.01);
        assertThat(shape.curves().size()).isGreaterThanOrEqualTo(2);

        List<Pleat> wide = placements(4, 400, waist).stream()
                .map(slash -> Pleat.even(slash, pitch + 2, Use.Under.AFTER))
                .toList();
        assertThat(Pleats.findings(Pleats.fold(skirt, wide, Stay.CENTRE).piece(), 0))
                .extracting(Finding::kind)
                .containsOnly(Finding.Kind.UNDERLAYS_OVERLAP)
                .hasSize(6);
    }

    /** Where an underlay reaches beyond the next fold, it ends as the cloth does that is brought up to that fold. */
    @Test
    void beneathTheNextFoldTheEdgeGoesOnFolded() {
        Piece skirt = skirt(400, 600, 14);
        double waist = skirt.edge("waist").length();
        double pitch = waist / 5;
        List<Pleat> wide = placements(4, 400, waist).stream()
                .map(slash -> Pleat.even(slash, 1.3 * pitch, Use.Under.AFTER))
                .toList();
        Piece piece = Pleats.fold(skirt, wide, Stay.CENTRE).piece();
        CurvePath seen = Measured.leg(piece, "pleat 1", Leg.AFTER);
        CurvePath shape = FoldEnd.shape(piece, "pleat 1", true).reversed();
        CurvePath edge = Paper.edge(piece, "waist");
        CurvePath first = between(
                edge, seen.start(), Measured.leg(piece, "pleat 2", Leg.BEFORE).start());
        CurvePath second = between(
                edge,
                Measured.leg(piece, "pleat 2", Leg.AFTER).start(),
                Measured.leg(piece, "pleat 3", Leg.BEFORE).start());
        CurvePath to = Measured.leg(piece, "pleat 2", Leg.BEFORE);
        CurvePath from = Measured.leg(piece, "pleat 2", Leg.AFTER);
        Vector2D shift = from.start().vectorTo(to.start());
        CurvePath closed = first.then(second.transformed(AffineTransformMatrix2D.createTranslation(shift)));
        int beyond = 0;
        for (int i = 0; i <= 50; i++) {
            Vector2D point = shape.pointAt(shape.length() / 2 * i / 50);
            Vector2D folded = reflected(point, seen.start(), seen.end());
            if (Math.abs(folded.getX() - seen.start().getX()) > 1.3 * pitch - 1e-3) {
                continue;
            }
            assertThat(distance(closed, folded)).as("point %d", i).isLessThan(1e-6);
            beyond += distance(first, folded) > 1 ? 1 : 0;
        }
        assertThat(beyond).as("points beneath the next fold").isGreaterThan(5);
    }

    private static CurvePath between(CurvePath edge, Vector2D from, Vector2D to) {
        return edge.between(Nearest.of(edge, from).at(), Nearest.of(edge, to).at());
    }

    /** Box pleats: two underlays beneath one face overlap as soon as each is wider than half of it. */
    @Test
    void boxPleatsOverlapBeyondHalfTheirFace() {
        Piece skirt = skirt(400, 600, 0);
        double waist = skirt.edge("waist").length();
        Slash one = Slash.straight("one", Spot.on("waist", waist / 2 - 40), Spot.on("hem", 240));
        Slash other = Slash.straight("other", Spot.on("waist", waist / 2 + 40), Spot.on("hem", 160));
        Piece clear =
                Pleats.fold(skirt, Pleats.box(one, other, 39), Stay.CENTRE).piece();
        assertThat(Pleats.findings(clear, 0)).isEmpty();
        Piece over = Pleats.fold(skirt, Pleats.box(one, other, 41), Stay.CENTRE).piece();
        assertThat(Checks.all(new Draft("skirt", List.of(over), List.of()), 0.5))
                .extracting(Finding::kind)
                .contains(Finding.Kind.UNDERLAYS_OVERLAP);
        assertThat(Pleats.findings(over, 0))
                .extracting(finding -> finding.sentence(Steps.DEFAULT))
                .containsExactly(
                        "'other' and 'one' of 'skirt' on 'hem': the underlays overlap; measured 3 1/4 in (8.2 cm), expected"
                                + " 3 1/8 in (8.0 cm), off by 2.00 mm, tolerance 0.00 mm.",
                        "'one' and 'other' of 'skirt' on 'waist': the underlays overlap; measured 3 1/4 in (8.2 cm), expected"
                                + " 3 1/8 in (8.0 cm), off by 2.00 mm, tolerance 0.00 mm.");
        assertThat(Paper.outline(clear).area() - Paper.outline(skirt).area())
                .as("four underlays of 39 mm, 600 mm long but for the curve of the waist")
                .isCloseTo(4 * 39 * 590, within(4 * 39 * 12.0));
    }

    /** A dart stitched down part of its way and released: the edge is shaped as for a dart, and the point is kept clear. */
    @Test
    void aDartBecomesATuck() {
        Piece front = Drawing.of("front")
                .from(0, 0)
                .edge("waist", Role.SEAM)
                .line(80, 0)
                .dart("dart", 100, 150, 120, 0, 0, Leg.BEFORE)
                .line(220, 0)
                .edge("side", Role.SEAM)
                .line(220, 250)
                .edge("top", Role.SEAM)
                .line(0, 250)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .piece();
        CurvePath asDart = Paper.edge(front, "waist");
        Reworked tuck = Pleats.dartTuck(front, "dart", Use.Under.BEFORE, 60, Use.Stitched.LEGS);
        assertThat(Paper.edge(tuck.piece(), "waist").length()).isCloseTo(asDart.length(), within(1e-9));
        assertThat(Lengths.folded(tuck.piece(), "waist")).isCloseTo(180, within(1e-9));
        assertThat(Pleats.findings(tuck.piece(), 25)).isEmpty();
        assertThat(tuck.ledger().sentences(Steps.DEFAULT))
                .containsExactly(
                        "Fold 'dart' with an underlay of 3/4 in (2.0 cm), running out at its point, beneath the cloth"
                                + " before it, stitched down for 2 3/8 in (6.0 cm) and released from there.");
        // Stitched square to the mouth the tuck takes as much all along: its end is a straight chord on a straight
        // edge.
        Piece parallel = Pleats.dartTuck(front, "dart", Use.Under.BEFORE, 60, Use.Stitched.PARALLEL)
                .piece();
        CurvePath chord = FoldEnd.shape(parallel, "dart", true);
        assertThat(chord.length()).isCloseTo(40, within(1e-9));
        Piece late = Pleats.dartTuck(front, "dart", Use.Under.BEFORE, 140, Use.Stitched.LEGS)
                .piece();
        assertThat(Pleats.findings(late, 25))
                .extracting(finding -> finding.sentence(Steps.DEFAULT))
                .containsExactly(
                        "'dart' of 'front': the stitching ends too near the point; measured 1/2 in (1.1 cm), expected"
                                + " 1 in (2.5 cm), off by -13.67 mm, tolerance 0.00 mm.");
        assertThatThrownBy(() -> Pleats.dartTuck(front, "dart", Use.Under.BEFORE, 160, Use.Stitched.LEGS))
                .isInstanceOf(DraftingException.class)
                .hasMessageStartingWith("Tuck 'dart': the stitching would run past its point");
    }

    @Test
    void foldReturnAndPlacementLines() {
        Piece skirt = skirt(400, 600, 0);
        Slash slash = placements(1, 400, skirt.edge("waist").length()).get(0);
        Piece knife = Pleats.fold(skirt, List.of(Pleat.even(slash, 30, Use.Under.BEFORE)), Stay.CENTRE)
                .piece();
        FoldEnd.Lines lines = FoldEnd.lines(knife, "pleat 1");
        assertThat(lines.seen()).containsExactly(Measured.leg(knife, "pleat 1", Leg.BEFORE));
        assertThat(lines.placement()).isEqualTo(Measured.leg(knife, "pleat 1", Leg.AFTER));
        assertThat(lines.hidden().get(0).end().distance(lines.seen().get(0).end()))
                .isCloseTo(30, within(1e-9));
        Piece inverted = Pleats.fold(skirt, List.of(Pleats.inverted(slash, 30)), Stay.CENTRE)
                .piece();
        FoldEnd.Lines both = FoldEnd.lines(inverted, "pleat 1");
        assertThat(both.seen()).hasSize(2);
        assertThat(both.hidden()).hasSize(2);
        Vector2D hem = both.placement().end();
        assertThat(both.hidden())
                .allSatisfy(line -> assertThat(line.end().distance(hem)).isCloseTo(30, within(1e-9)));
        assertThat(both.seen())
                .allSatisfy(line -> assertThat(line.end().distance(hem)).isCloseTo(60, within(1e-9)));
    }

    /** Forward and backward are each other's inverse. */
    @ParameterizedTest
    @MethodSource("seeds")
    void plansAndTheirInverses(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        PleatPlan.Kind kind = KINDS.get(random.nextInt(3));
        PleatPlan plan =
                new PleatPlan(kind, random.nextInt(1, 40), random.nextDouble(10, 100), random.nextDouble(0, 80));
        assertThat(PleatPlan.underlay(kind, plan.count(), plan.face(), plan.flat())
                        .value())
                .as("seed %d", seed)
                .isCloseTo(plan.underlay(), within(1e-9));
        assertThat(PleatPlan.count(plan.finished(), plan.face()).value()).isEqualTo(plan.count());
        TuckPlan tucks = new TuckPlan(random.nextInt(1, 40), random.nextDouble(1, 20), 10);
        assertThat(TuckPlan.depth(tucks.count(), 500, tucks.cut(500)).value()).isCloseTo(tucks.depth(), within(1e-9));
        double waist = random.nextDouble(600, 900);
        double hip = waist * random.nextDouble(1, 2.5);
        double widest = ShapedPleats.widestUnderlay(plan.count(), waist, hip).value();
        assertThat(new ShapedPleats(plan.count(), waist, hip, widest).findings())
                .isEmpty();
        assertThat(new ShapedPleats(plan.count(), waist, hip, widest + 1).findings())
                .isNotEmpty();
        ShapedPleats shaped = new ShapedPleats(plan.count(), waist, hip, plan.underlay());
        assertThat(shaped.atWaist().flat())
                .as("straight cloth")
                .isCloseTo(shaped.atHip().flat(), within(1e-9));
        double ratio = random.nextDouble(1, 4);
        assertThat(Gathers.ratio(waist, Gathers.flat(waist, ratio)).value()).isCloseTo(ratio, within(1e-12));
    }

    @Test
    void answersThatAreSeveralOrNone() {
        assertThat(PleatPlan.count(720, 40))
                .isEqualTo(new Answer.Unique("Pleats of 1 5/8 in (4.0 cm) in 28 3/8 in (72.0 cm)", Quantity.COUNT, 18));
        assertThat(PleatPlan.count(920, 50).sentence(Steps.DEFAULT))
                .isEqualTo(
                        "Pleats of 2 in (5.0 cm) in 36 1/4 in (92.0 cm): 18 or 19; the one whose face is nearer to what was"
                                + " wanted is taken.");
        assertThat(PleatPlan.underlay(PleatPlan.Kind.KNIFE, 10, 50, 400)).isInstanceOf(Answer.None.class);
        assertThat(TuckPlan.depth(4, 500, 480)).isInstanceOf(Answer.None.class);
        assertThat(Gathers.ratio(500, 400)).isInstanceOf(Answer.None.class);
        assertThat(ShapedPleats.widestUnderlay(16, 300, 1072)).isInstanceOf(Answer.None.class);
    }

    /** A depth rounded to an eighth is wrong 2 n times over. */
    @Test
    void tucksAreOfFourKindsAndTheirPrintedDepthsMayMiss() {
        assertThat(new TuckPlan(4, 2, 10).kind(3)).isEqualTo(TuckPlan.Kind.PIN);
        assertThat(new TuckPlan(4, 10, 25).kind(3)).isEqualTo(TuckPlan.Kind.SPACED);
        assertThat(new TuckPlan(4, 10, 10).kind(3)).isEqualTo(TuckPlan.Kind.BLIND);
        assertThat(new TuckPlan(4, 10, 8).kind(3)).isEqualTo(TuckPlan.Kind.OVERLAPPING);
        assertThat(new TuckPlan(16, 5, 20).findings(Steps.DEFAULT, 5))
                .extracting(finding -> finding.sentence(Steps.DEFAULT))
                .containsExactly(
                        "16 tucks 1/4 in (0.5 cm) deep: the printed parts do not come to the whole; measured 8 in"
                                + " (20.3 cm), expected 6 1/4 in (16.0 cm), off by 43.20 mm, tolerance 5.00 mm.");
        assertThat(new TuckPlan(16, 5, 4).findings(new Steps(64, 0.1), 10))
                .extracting(Finding::kind)
                .containsExactly(Finding.Kind.UNDERLAYS_OVERLAP);
    }

    static Stream<Arguments> badInput() {
        Piece skirt = skirt(400, 600, 0);
        Slash slash = placements(1, 400, 400).get(0);
        return Stream.of(
                Arguments.of(
                        call(() -> Pleat.even(slash, 0, Use.Under.BOTH)),
                        "An underlay is wider than 0 mm at both ends: 0.0 and 0.0 mm."),
                Arguments.of(call(() -> Pleats.fold(skirt, List.of(), Stay.CENTRE)), "There is no slash to spread."),
                Arguments.of(
                        call(() -> new PleatPlan(PleatPlan.Kind.KNIFE, 0, 10, 10)),
                        "Pleats are 1 or more, their face wider than 0 mm, their underlay 0 mm or more: 0 pleats, face 10.0"
                                + " mm, underlay 10.0 mm."),
                Arguments.of(
                        call(() -> new ShapedPleats(4, 700, 600, 10)),
                        "Shaped pleats are 1 or more, the waist more than 0 mm, the hip no smaller, the underlay 0 mm or more:"
                                + " 4, 700.0, 600.0, 10.0 mm."),
                Arguments.of(
                        call(() -> new TuckPlan(3, Double.NaN, 5)),
                        "Tucks are 1 or more, depth and spacing more than 0 mm: 3, depth NaN mm, spacing 5.0 mm."),
                Arguments.of(
                        call(() -> Gathers.flat(500, 0.9)),
                        "Gathers have a finished length of more than 0 mm and a ratio of 1 or more: 500.0 mm, ratio 0.9."),
                Arguments.of(
                        call(() -> PleatPlan.each(100, 80, 2, 30)),
                        "Of 2 pleats 1 are given, and -10.0 mm are left for the others."),
                Arguments.of(
                        call(() -> new Use.Folded(Use.Under.BOTH, -1, Use.Stitched.LEGS)),
                        "A fold is stitched down for 0 mm or more from the edge: -1.0 mm."),
                Arguments.of(
                        call(() -> FoldEnd.lines(skirt(400, 600, 0), "pleat")),
                        "Piece 'skirt' has no dart or slash named" + " 'pleat'; it has ."));
    }

    private static ThrowableAssert.ThrowingCallable call(ThrowableAssert.ThrowingCallable call) {
        return call;
    }

    @ParameterizedTest
    @MethodSource("badInput")
    void badInputIsRefusedInPlainWords(ThrowableAssert.ThrowingCallable call, String message) {
        assertThatThrownBy(call).isInstanceOf(IllegalArgumentException.class).hasMessage(message);
    }
}
