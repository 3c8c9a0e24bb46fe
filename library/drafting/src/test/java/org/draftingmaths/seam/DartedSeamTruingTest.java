package org.draftingmaths.seam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.block.TorsoBlock;
import org.draftingmaths.check.Checks;
import org.draftingmaths.curve.Cubic;
import org.draftingmaths.curve.Curve;
import org.draftingmaths.curve.CurvePath;
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
import org.draftingmaths.piece.DartEnd;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Edge;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Notch;
import org.draftingmaths.piece.Notches;
import org.draftingmaths.piece.Opening;
import org.draftingmaths.piece.Panels;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.RandomPieces;
import org.draftingmaths.piece.Redraw;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.piece.Use;
import org.draftingmaths.unit.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Seams of edges that darts break, trued on the closed edge: every interval matches, and no leg, point or mouth of any dart is moved in the last
 * bit.
 */
class DartedSeamTruingTest {

    static Stream<Long> seeds() {
        return LongStream.range(0, 100).boxed();
    }

    static Stream<Long> manySeeds() {
        return LongStream.range(0, 400).boxed();
    }

    // ------------------------------------------------------------------------------------------------ material

    private static Measurements body(SplittableRandom random) {
        double bust = random.nextDouble(800, 1200);
        double waist = bust - random.nextDouble(100, 180);
        return Measurements.of("figure", Wearer.ADULT)
                .with(Measure.BUST, Length.mm(bust))
                .with(Measure.WAIST, Length.mm(waist))
                .with(Measure.HIP, Length.mm(waist + random.nextDouble(200, 280)))
                .filledBy(ProportionRules.TORSO);
    }

    private static Piece notched(Piece piece, String edge, double share, double by) {
        return piece.notched(new Notch(edge, share * piece.edge(edge).length() + by, Beside.BEFORE));
    }

    /** A bodice with half the bust dart in the side seam; the back's shoulder and side miss the front's by up to 4 mm, and its notches too. */
    private static Draft bodice(SplittableRandom random) {
        Measurements body = body(random);
        Measurements other = body.with(
                        Measure.ARMHOLE_DEPTH,
                        body.length(Measure.ARMHOLE_DEPTH).plus(Length.mm(random.nextDouble(-4, 4))))
                .with(
                        Measure.SHOULDER_LENGTH,
                        body.length(Measure.SHOULDER_LENGTH).plus(Length.mm(random.nextDouble(-4, 4))));
        Piece front = TorsoBlock.bodice(body, Ease.CLOSE_FITTING).draft().piece("front");
        double at = random.nextDouble(0.45, 0.65) * front.edge("side seam").length();
        front = Darts.rotateShare(front, "bust dart", Spot.on("side seam", at), "side dart", 0.5)
                .piece();
        front = notched(notched(front, "side seam", 0.25, 0), "side seam", 0.85, 0);
        Piece back = TorsoBlock.bodice(other, Ease.CLOSE_FITTING).draft().piece("back");
        back = notched(
                notched(back, "side seam", 0.25, random.nextDouble(-3, 3)),
                "side seam",
                0.85,
                random.nextDouble(-3, 3));
        boolean forward = random.nextBoolean();
        return new Draft(
                "bodice",
                List.of(front, back),
                List.of(
                        new Seam(
                                "side",
                                mate("front", "side seam", forward),
                                mate("back", "side seam", forward),
                                List.of()),
                        Seam.flat("shoulder", Seam.Mate.of("front", "shoulder"), Seam.Mate.of("back", "shoulder"))));
    }

    /** A straight band of a length. */
    private static Piece band(double length) {
        return Drawing.of("band")
                .from(0, 0)
                .edge("seam", Role.SEAM)
                .line(length, 0)
                .edge("end", Role.SEAM)
                .line(length, 35)
                .edge("top", Role.FINISHED)
                .line(0, 35)
                .edge("start", Role.SEAM)
                .line(0, 0)
                .grain(20, 10, 60, 10)
                .piece();
    }

    /** A piece and a band that misses the folded length of one of its edges. */
    private static Draft banded(Piece piece, String edge, boolean forward, double misses) {
        return new Draft(
                "banded",
                List.of(piece, band(Lengths.folded(piece, edge) + misses)),
                List.of(new Seam("seam", mate(piece.name(), edge, forward), Seam.Mate.of("band", "seam"), List.of())));
    }

    private static SeamTruing.May end(Seam.Mate side, Seam.End end, double weight) {
        return new SeamTruing.AtEnd(side, end, weight);
    }

    private static List<SeamTruing.May> ends(Seam seam, SplittableRandom random) {
        return Stream.of(seam.first(), seam.second())
                .flatMap(side -> Stream.of(Seam.End.values())
                        .<SeamTruing.May>map(end -> end(side, end, random.nextDouble(0.5, 4))))
                .toList();
    }

    // ------------------------------------------------------------------------------------------------ laws

    private static double by(SeamTruing.Trued trued, Seam.Mate side, Seam.End end) {
        return trued.moves().stream()
                .filter(move -> move.may().side().equals(side))
                .filter(move -> move.may() instanceof SeamTruing.AtEnd at && at.end() == end)
                .mapToDouble(SeamTruing.Moved::by)
                .sum();
    }

    private static void requireLaws(Draft was, Seam seam, SeamTruing.Trued trued) {
        assertThat(Walk.of(trued.draft(), seam).intervals())
                .allSatisfy(interval -> assertThat(interval.difference()).isCloseTo(0, within(1e-6)));
        assertThat(trued.moves()).isSortedAccordingTo((a, b) -> Double.compare(Math.abs(b.by()), Math.abs(a.by())));
        for (Seam.Mate side : List.of(seam.first(), seam.second())) {
            Piece before = was.piece(side.piece());
            Piece after = trued.draft().piece(side.piece());
            requireDarts(before, after);
            requireDirections(before, after, side, trued);
            requireRest(before, after, side, trued);
        }
        for (Reworked done : trued.pieces()) {
            Piece before = was.piece(done.piece().name());
            Piece undone = Panels.undo(done);
            assertThat(undone.sameCloth(before, 1e-9)).isTrue();
            assertThat(undone.edges()).isEqualTo(before.edges());
            assertThat(undone.notches()).isEqualTo(before.notches());
        }
    }

    /** Legs, points and so widths, in the last bit; what is new is only what is drawn across. */
    private static void requireDarts(Piece before, Piece after) {
        for (Opening opening : before.openings()) {
            String dart = opening.name();
            for (Leg leg : Leg.values()) {
                assertThat(Measured.leg(after, dart, leg)).isEqualTo(Measured.leg(before, dart, leg));
            }
            assertThat(Measured.leg(after, dart, Leg.BEFORE).length())
                    .isCloseTo(Measured.leg(after, dart, Leg.AFTER).length(), within(1e-6));
            assertThat(Measured.tip(after, dart)).isEqualTo(Measured.tip(before, dart));
            assertThat(Measured.intake(after, dart)).isEqualTo(Measured.intake(before, dart));
        }
    }

    private static void requireDirections(Piece before, Piece after, Seam.Mate side, SeamTruing.Trued trued) {
        List<CurvePath> were = Redraw.stretches(before, side.edge());
        List<CurvePath> are = Redraw.stretches(after, side.edge());
        assertThat(are).hasSameSizeAs(were);
        Seam.End start = side.forward() ? Seam.End.START : Seam.End.STOP;
        Seam.End stop = side.forward() ? Seam.End.STOP : Seam.End.START;
        for (int i = 0; i < were.size(); i++) {
            CurvePath line = were.get(i);
            double from = i == 0 ? Math.max(0, -by(trued, side, start)) : 0;
            double to = line.length() - (i == were.size() - 1 ? Math.max(0, -by(trued, side, stop)) : 0);
            boolean bent = trued.moves().stream().anyMatch(move -> move.may() instanceof SeamTruing.InCurve);
            if (from == 0 || !bent) {
                assertThat(are.get(i).startTangent().distance(line.tangentAt(from)))
                        .isLessThan(1e-9);
            }
            if (to == line.length() || !bent) {
                assertThat(are.get(i).endTangent().distance(line.tangentBefore(to)))
                        .isLessThan(1e-9);
            }
        }
    }

    /** Edges away from the moved ends, in the last bit; notches that may not move, on paper. */
    private static void requireRest(Piece before, Piece after, Seam.Mate side, SeamTruing.Trued trued) {
        CurvePath own = Paper.edge(before, side.edge());
        CurvePath sewn = side.forward() ? own : own.reversed();
        for (Edge edge : before.edges()) {
            boolean atStart = by(trued, side, Seam.End.START) != 0 && meets(before, edge, sewn.start());
            boolean atStop = by(trued, side, Seam.End.STOP) != 0 && meets(before, edge, sewn.end());
            if (!edge.name().equals(side.edge()) && !atStart && !atStop) {
                assertThat(after.edge(edge.name())).isEqualTo(edge);
            } else if (!edge.name().equals(side.edge())) {
                requireArrivals(before, after, edge.name());
            }
        }
        boolean notchesStay = trued.moves().stream().noneMatch(move -> move.may() instanceof SeamTruing.AtNotch);
        for (int i = 0; i < before.notches().size(); i++) {
            if (notchesStay && before.notches().get(i).edge().equals(side.edge())) {
                assertThat(Notches.where(after, after.notches().get(i))
                                .point()
                                .distance(Notches.where(before, before.notches().get(i))
                                        .point()))
                        .isLessThan(1e-8);
            }
        }
    }

    /** A neighbour that is carried leaves and arrives as it did, wherever it ends in a curve: squares at its corners stay squares. */
    private static void requireArrivals(Piece before, Piece after, String edge) {
        CurvePath first = Redraw.first(before, edge);
        CurvePath last = Redraw.last(before, edge);
        if (first.curves().get(0) instanceof Cubic) {
            assertThat(Redraw.first(after, edge).startTangent().distance(first.startTangent()))
                    .isLessThan(1e-9);
        }
        if (last.curves().get(last.curves().size() - 1) instanceof Cubic) {
            assertThat(Redraw.last(after, edge).endTangent().distance(last.endTangent()))
                    .isLessThan(1e-9);
        }
    }

    private static boolean meets(Piece piece, Edge edge, Vector2D corner) {
        CurvePath line = Paper.edge(piece, edge.name());
        return line.start().distance(corner) < 1e-6 || line.end().distance(corner) < 1e-6;
    }

    /** Of ways to mend one interval by random moves, none has a smaller weighted sum of squares. */
    private static void requireLeast(
            Draft draft, Seam seam, List<SeamTruing.May> may, SeamTruing.Trued trued, SplittableRandom random) {
        double off = Walk.of(draft, seam).difference();
        double ours = trued.moves().stream()
                .mapToDouble(move -> move.may().weight() * move.by() * move.by())
                .sum();
        for (int i = 0; i < 2000; i++) {
            double left = -off;
            double sum = 0;
            double reach = random.nextDouble(0, Math.abs(off) + 0.1);
            for (int k = 0; k < may.size(); k++) {
                double sign = may.get(k).side().equals(seam.first()) ? 1 : -1;
                double move = k == may.size() - 1 ? sign * left : random.nextDouble(-reach, reach);
                left -= sign * move;
                sum += may.get(k).weight() * move * move;
            }
            assertThat(left).isCloseTo(0, within(1e-9));
            assertThat(sum).isGreaterThanOrEqualTo(ours - 1e-9);
        }
    }

    // ------------------------------------------------------------------------------------------------ properties

    /** A side seam with a bust dart between its notches, to a back without. */
    @ParameterizedTest
    @MethodSource("seeds")
    void aSideSeamWithABustDart(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Draft draft = bodice(random);
        Seam side = draft.seams().get(0);
        List<SeamTruing.May> may = new ArrayList<>(ends(side, random));
        for (int notch = 1; notch <= 2; notch++) {
            may.add(new SeamTruing.AtNotch(side.second(), notch, random.nextDouble(0.5, 4)));
        }
        assertThat(Math.abs(Walk.of(draft, side).worst().difference())).isGreaterThan(0.01);
        SeamTruing.Trued trued = SeamTruing.of(draft, side, may, 10);
        requireLaws(draft, side, trued);
        requireFolds(trued.draft().piece("front"), "side dart");
    }

    /** A shoulder with a dart on either piece: both sides are sewn closed. */
    @ParameterizedTest
    @MethodSource("seeds")
    void aShoulderWithADartOnEitherPiece(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Draft draft = bodice(random);
        Seam shoulder = draft.seams().get(1);
        List<SeamTruing.May> may = ends(shoulder, random);
        SeamTruing.Trued trued = SeamTruing.of(draft, shoulder, may, 10);
        requireLaws(draft, shoulder, trued);
        requireLeast(draft, shoulder, may, trued, random);
    }

    /**
     * A waist with its dart, too short for a straight band: the curve gives on both sides of the dart, the side end and the band the rest. (As nearly
     * flat as it is between centre, dart and side, it could not become shorter by as much.)
     */
    @ParameterizedTest
    @MethodSource("seeds")
    void aWaistWithItsDart(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Piece front =
                TorsoBlock.bodice(body(random), Ease.CLOSE_FITTING).draft().piece("front");
        boolean forward = random.nextBoolean();
        Draft draft = banded(front, "waist", forward, random.nextDouble(0.2, 3));
        Seam seam = draft.seams().get(0);
        List<SeamTruing.May> may = List.of(
                new SeamTruing.InCurve(seam.first(), 1, random.nextDouble(8, 20)),
                end(seam.first(), forward ? Seam.End.STOP : Seam.End.START, 1),
                end(seam.second(), Seam.End.STOP, random.nextDouble(0.5, 4)));
        SeamTruing.Trued trued = SeamTruing.of(draft, seam, may, 6);
        assertThat(trued.moves()).hasSize(3);
        requireLaws(draft, seam, trued);
        requireLeast(draft, seam, may, trued, random);
        requireFolds(trued.draft().piece("front"), "waist dart");
    }

    /** Folded in its leg, the edge of the underlay next to the leg lies on the seam beside it, new or old. */
    private static void requireFolds(Piece piece, String dart) {
        Leg leg = ((Use.Dart) piece.opening(dart).mouth().use()).press().orElseThrow();
        CurvePath half = DartEnd.half(piece, dart, leg);
        Vector2D tip = DartEnd.sewnTip(piece, dart);
        Vector2D way = tip.directionTo(Measured.leg(piece, dart, leg).start());
        Vector2D drawn = half.pointAt(Math.min(3, half.length() / 2));
        Vector2D from = tip.vectorTo(drawn);
        Vector2D folded = tip.add(way.multiply(2 * from.dot(way)).subtract(from));
        double nearest = Redraw.stretches(piece, edge(piece, dart)).stream()
                .mapToDouble(line -> Nearest.of(line, folded).distance())
                .min()
                .orElseThrow();
        assertThat(nearest).isLessThan(1e-6);
    }

    private static String edge(Piece piece, String dart) {
        return piece.edges().stream()
                .map(Edge::name)
                .filter(name -> Redraw.stretches(piece, name).stream()
                        .anyMatch(line -> line.end()
                                        .distance(Measured.leg(piece, dart, Leg.BEFORE)
                                                .start())
                                < 1e-6))
                .findFirst()
                .orElseThrow();
    }

    /** Pieces of any shape, turned over or not, with darts in slanted and bent edges: trued, or refused in words that say why. */
    @ParameterizedTest
    @MethodSource("manySeeds")
    void anyDartedEdge(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Case made = Case.of(random, RandomPieces.piece(seed));
        SeamTruing.Trued trued;
        try {
            trued = SeamTruing.of(made.draft(), made.seam(), made.may(), 6);
        } catch (DraftingException refused) {
            assertThat(refused.getMessage()).containsPattern(REFUSED);
            return;
        }
        requireLaws(made.draft(), made.seam(), trued);
        requireLeast(made.draft(), made.seam(), made.may(), trued, random);
    }

    private static final String REFUSED = "cannot be made .* nor the mouth of 'dart .' moved|"
            + "cannot be cut back so far at the end|would be slanted; move the other end|cross";

    /** Nine in ten random pieces are trued. */
    @Test
    void mostDartedEdgesAreTrued() {
        long trued = manySeeds()
                .filter(seed -> {
                    Case made = Case.of(new SplittableRandom(seed), RandomPieces.piece(seed));
                    try {
                        return !SeamTruing.of(made.draft(), made.seam(), made.may(), 6)
                                .moves()
                                .isEmpty();
                    } catch (DraftingException refused) {
                        return false;
                    }
                })
                .count();
        assertThat(trued).isGreaterThan(360);
    }

    /** The first darted edge of a random piece against a band; its far end, the band's end and, where it has a bent stretch, its curve may move. */
    private record Case(Draft draft, Seam seam, List<SeamTruing.May> may) {

        static Case of(SplittableRandom random, Piece drawn) {
            Piece piece = random.nextBoolean()
                    ? drawn
                    : Panels.mirror(drawn, Vector2D.ZERO, Vector2D.of(random.nextDouble(-1, 1), 1))
                            .piece();
            boolean forward = random.nextBoolean();
            Piece bare = new Piece(
                    piece.name(),
                    piece.edges(),
                    piece.openings(),
                    piece.panels(),
                    piece.levels(),
                    piece.insideDarts(),
                    List.of(),
                    piece.grain());
            Draft draft = banded(bare, "edge 1", forward, random.nextDouble(-2, 2));
            Seam seam = draft.seams().get(0);
            List<SeamTruing.May> may = new ArrayList<>(List.of(
                    end(seam.first(), forward ? Seam.End.STOP : Seam.End.START, random.nextDouble(0.5, 4)),
                    end(seam.second(), Seam.End.START, random.nextDouble(0.5, 4))));
            if (bare.edge("edge 1").base().curves().stream().anyMatch(Cubic.class::isInstance)) {
                may.add(new SeamTruing.InCurve(seam.first(), 1, random.nextDouble(2, 9)));
            }
            return new Case(draft, seam, may);
        }
    }

    // ------------------------------------------------------------------------------------------------ by hand

    /** A side from hem to armhole, bent on both sides of a level dart whose closed edge is smooth. */
    private static Piece bent(Leg press) {
        Vector2D apex = Vector2D.of(90, 310);
        CurvePath closed = CurvePath.of(
                new Cubic(Vector2D.of(200, 0), Vector2D.of(215, 100), Vector2D.of(220, 200), Vector2D.of(220, 300)),
                new Cubic(Vector2D.of(220, 300), Vector2D.of(220, 370), Vector2D.of(212, 440), Vector2D.of(200, 500)));
        CurvePath opened = CurvePath.of(closed.curves().get(1))
                .transformed(AffineTransformMatrix2D.createRotation(apex, Math.toRadians(9)));
        Drawing drawing = Drawing.of("front")
                .from(0, 0)
                .edge("hem", Role.HEM)
                .line(200, 0)
                .edge("side seam", Role.SEAM)
                .along(CurvePath.of(closed.curves().get(0)))
                .dart(
                        "dart",
                        apex.getX(),
                        apex.getY(),
                        opened.start().getX(),
                        opened.start().getY(),
                        25,
                        press)
                .along(opened);
        return drawing.edge("top", Role.SEAM)
                .line(0, 520)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .grain(60, 100, 60, 400)
                .piece();
    }

    /** All handles on either side of the dart grow by one factor, and the factor is that of the closed edge. */
    @ParameterizedTest
    @MethodSource("seeds")
    void bothSidesOfTheDartGiveByOneFactor(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Piece front = bent(random.nextBoolean() ? Leg.BEFORE : Leg.AFTER);
        Draft draft = banded(front, "side seam", random.nextBoolean(), random.nextDouble(-0.3, 3));
        Seam seam = draft.seams().get(0);
        SeamTruing.Trued trued = SeamTruing.of(draft, seam, List.of(new SeamTruing.InCurve(seam.first(), 1, 1)), 6);
        requireLaws(draft, seam, trued);
        Piece after = trued.draft().piece("front");
        List<Double> factors = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            Cubic was = only(Redraw.stretches(front, "side seam").get(i));
            Cubic now = only(Redraw.stretches(after, "side seam").get(i));
            assertThat(now.start().distance(was.start())).isLessThan(1e-9);
            assertThat(now.end().distance(was.end())).isLessThan(1e-9);
            factors.add(now.start().distance(now.startHandle()) / was.start().distance(was.startHandle()));
            factors.add(now.end().distance(now.endHandle()) / was.end().distance(was.endHandle()));
        }
        assertThat(factors)
                .allSatisfy(factor -> assertThat(factor).isCloseTo(factors.get(0), within(1e-9)))
                .noneSatisfy(factor -> assertThat(factor).isEqualTo(1));
        requireFolds(after, "dart");
        assertThat(Checks.piece(after, 0.5)).extracting(Finding::kind).doesNotContain(Finding.Kind.OUTLINE_CROSSES);
    }

    /** The curve alone, all of the edge at once: as the least moves have it, with a notch at its share of the stretch. */
    @Test
    void theCurveOfADartedEdgeGives() {
        Piece front = bent(Leg.BEFORE);
        Draft draft = banded(front, "side seam", false, 2);
        Seam seam = draft.seams().get(0);
        Piece least = SeamTruing.of(draft, seam, List.of(new SeamTruing.InCurve(seam.first(), 1, 1)), 6)
                .draft()
                .piece("front");
        double below = Redraw.first(front, "side seam").length();
        Draft marked = draft.with(front.notched(new Notch("side seam", below / 4, Beside.BEFORE)));
        Piece after = Truing.reshape(marked, seam, seam.first(), 6).piece();
        assertThat(Walk.of(marked.with(after), seam).difference()).isCloseTo(0, within(1e-6));
        assertThat(after.edge("side seam")).isEqualTo(least.edge("side seam"));
        assertThat(after.notches().get(0).arc())
                .isCloseTo(Redraw.first(after, "side seam").length() / 4, within(1e-9));
        requireDarts(front, after);
    }

    private static Cubic only(CurvePath line) {
        List<Curve> curves = line.curves();
        assertThat(curves).hasSize(1);
        return (Cubic) curves.get(0);
    }

    /** A straight side of 300 mm, its dart 100 mm above the hem with its point level with the mouth's middle. */
    private static Piece straight(double below) {
        return Drawing.of("front")
                .from(0, 0)
                .edge("hem", Role.HEM)
                .line(200, 0)
                .edge("side seam", Role.SEAM)
                .line(200, below)
                .dart("dart", 100, below + 10, 200, below + 20, 0, Leg.BEFORE)
                .line(200, 320)
                .edge("top", Role.SEAM)
                .line(0, 320)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .grain(60, 100, 60, 200)
                .piece();
    }

    /** 4 mm too long with the dart closed, ten times as willing to give at the hem: 40 parts of 11 there, 4 at the top. */
    @Test
    void theHemGivesBeforeTheTop() {
        Draft draft = banded(straight(100), "side seam", true, -4);
        Seam seam = draft.seams().get(0);
        assertThat(Walk.of(draft, seam).difference()).isCloseTo(4, within(1e-9));
        SeamTruing.Trued trued = SeamTruing.of(
                draft, seam, List.of(end(seam.first(), Seam.End.START, 1), end(seam.first(), Seam.End.STOP, 10)), 6);
        Piece after = trued.draft().piece("front");
        List<CurvePath> stretches = Redraw.stretches(after, "side seam");
        assertThat(stretches.get(0).start().getY()).isCloseTo(40.0 / 11, within(1e-9));
        assertThat(stretches.get(0).end()).isEqualTo(Vector2D.of(200, 100));
        assertThat(stretches.get(1).end().getY()).isCloseTo(320 - 4.0 / 11, within(1e-9));
        assertThat(Paper.edge(after, "hem").end().getY()).isCloseTo(40.0 / 11, within(1e-9));
        assertThat(after.area())
                .as("two slivers of 200 mm come off, triangles that end in the fold")
                .isCloseTo(straight(100).area() - 200 * 4 / 2, within(1e-6));
        requireLaws(draft, seam, trued);
    }

    /** The one end alone, by the edge's own direction, whichever way the edge is sewn. */
    @Test
    void oneEndOfADartedEdgeMoves() {
        for (boolean forward : new boolean[] {true, false}) {
            Draft draft = banded(straight(100), "side seam", forward, -4);
            Seam seam = draft.seams().get(0);
            Piece after =
                    Truing.moveEnd(draft, seam, seam.first(), Seam.End.START, 6).piece();
            assertThat(Redraw.first(after, "side seam").start().getY()).isCloseTo(4, within(1e-9));
            assertThat(Walk.of(draft.with(after), seam).difference()).isCloseTo(0, within(1e-6));
        }
    }

    /** A notch moves along the closed edge, over the dart as over any other place; of the outline nothing moves. */
    @Test
    void aNotchMovesOverTheDart() {
        Piece front = straight(100).notched(new Notch("side seam", 98, Beside.BEFORE));
        Piece band = band(Lengths.folded(front, "side seam")).notched(new Notch("seam", 103, Beside.BEFORE));
        Seam seam = Seam.flat("seam", Seam.Mate.of("front", "side seam"), Seam.Mate.of("band", "seam"));
        Draft draft = new Draft("banded", List.of(front, band), List.of(seam));
        SeamTruing.Trued trued = SeamTruing.of(draft, seam, List.of(new SeamTruing.AtNotch(seam.first(), 1, 1)), 6);
        Piece after = trued.draft().piece("front");
        assertThat(Notches.where(after, after.notches().get(0)).point().distance(Vector2D.of(200, 123)))
                .as("3 mm past the after leg")
                .isLessThan(1e-9);
        assertThat(after.edges()).isEqualTo(front.edges());
        assertThat(after.area()).isEqualTo(front.area());
        requireDarts(front, after);
    }

    /** Notches at both leg ends are two places on paper and one on the closed edge: each keeps its own. */
    @Test
    void notchesAtTheLegEndsStayThere() {
        Piece front = straight(100)
                .notched(new Notch("side seam", 100, Beside.AFTER))
                .notched(new Notch("side seam", 100, Beside.BEFORE));
        Piece band =
                band(304).notched(new Notch("seam", 102, Beside.BEFORE)).notched(new Notch("seam", 102, Beside.AFTER));
        Seam seam = Seam.flat("seam", Seam.Mate.of("front", "side seam"), Seam.Mate.of("band", "seam"));
        Draft draft = new Draft("banded", List.of(front, band), List.of(seam));
        SeamTruing.Trued trued = SeamTruing.of(
                draft, seam, List.of(end(seam.first(), Seam.End.START, 1), end(seam.first(), Seam.End.STOP, 1)), 6);
        requireLaws(draft, seam, trued);
        Piece after = trued.draft().piece("front");
        assertThat(after.notches()).extracting(Notch::beside).containsExactly(Beside.AFTER, Beside.BEFORE);
        assertThat(Redraw.first(after, "side seam").start().getY()).isCloseTo(-2, within(1e-9));
        SeamTruing.Trued other = SeamTruing.of(
                draft, seam, List.of(end(seam.second(), Seam.End.START, 1), end(seam.second(), Seam.End.STOP, 1)), 6);
        requireLaws(draft, seam, other);
        Draft apart = draft.with(band(304)
                .notched(new Notch("seam", 102, Beside.BEFORE))
                .notched(new Notch("seam", 103, Beside.BEFORE)));
        assertRefused(
                apart,
                new SeamTruing.InCurve(seam.first(), 2, 1),
                6,
                "notch interval 1 is off by -2.00 mm, and nothing that may move can mend all of it");
        assertThatThrownBy(() -> SeamTruing.of(
                        apart,
                        seam,
                        List.of(
                                end(seam.first(), Seam.End.START, 1),
                                end(seam.first(), Seam.End.STOP, 1),
                                new SeamTruing.InCurve(seam.first(), 2, 1)),
                        6))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining("notch interval 2 of 'side seam' of 'front' lies all within the mouth of a dart");
    }

    // ------------------------------------------------------------------------------------------------ refused

    private static void assertRefused(Draft draft, SeamTruing.May may, double limit, String message) {
        assertThatThrownBy(() -> SeamTruing.of(draft, draft.seams().get(0), List.of(may), limit))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining(message);
    }

    @Test
    void whatADartLiesOverIsRefused() {
        Draft close = banded(straight(3), "side seam", true, -5);
        Seam.Mate side = close.seams().get(0).first();
        assertRefused(
                close,
                end(side, Seam.End.START, 1),
                6,
                "True seam 'seam': 'side seam' of 'front' cannot be cut back so far at the end where it starts to be sewn:"
                        + " 'dart' lies there (asked 1/4 in (0.5 cm), possible 0 in (0.0 cm) to 1/8 in (0.3 cm)");
        assertRefused(
                close,
                end(side, Seam.End.START, 1),
                4,
                "'side seam' of 'front' would be moved by more than truing at the end where it starts to be sewn; look for"
                        + " the fault in the draft (asked 1/4 in (0.5 cm), possible 0 in (0.0 cm) to 1/8 in (0.4 cm)");
        assertRefused(close, new SeamTruing.InCurve(side, 1, 1), 6, "is possible, nor the mouth of 'dart' moved");
        assertThat(SeamTruing.of(close, close.seams().get(0), List.of(end(side, Seam.End.STOP, 1)), 6)
                        .moves())
                .hasSize(1);
    }

    @Test
    void aDartAtTheCornerIsRefused() {
        Piece front = Drawing.of("front")
                .from(0, 0)
                .edge("hem", Role.HEM)
                .line(200, 0)
                .edge("side seam", Role.SEAM)
                .dart("dart", 100, 10, 200, 20, 0, Leg.AFTER)
                .line(200, 320)
                .edge("top", Role.SEAM)
                .line(0, 320)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .piece();
        Draft draft = banded(front, "side seam", true, 3);
        Seam.Mate side = draft.seams().get(0).first();
        assertRefused(
                draft,
                end(side, Seam.End.START, 1),
                6,
                "'side seam' of 'front' cannot be moved at the end where it starts to be sewn: 'dart' opens at the corner there;"
                        + " close it or move it elsewhere first, or move the other end");
        assertThat(SeamTruing.of(draft, draft.seams().get(0), List.of(end(side, Seam.End.STOP, 1)), 6)
                        .moves())
                .hasSize(1);
    }

    @Test
    void whatIsNotSewnShutIsRefused() {
        Piece gathered = Darts.leave(straight(100), "dart", Use.Kind.GATHERS).piece();
        Draft draft = banded(gathered, "side seam", true, 3);
        assertRefused(
                draft,
                end(draft.seams().get(0).first(), Seam.End.STOP, 1),
                6,
                "'dart' in 'side seam' of 'front' is not sewn shut; sew it as a dart or a fold, or fill it first");
        assertThat(SeamTruing.of(
                                draft,
                                draft.seams().get(0),
                                List.of(end(draft.seams().get(0).second(), Seam.End.STOP, 1)),
                                6)
                        .moves())
                .hasSize(1);
    }

    @Test
    void aFoldIsNotSlanted() {
        SplittableRandom random = new SplittableRandom(1);
        Piece front =
                TorsoBlock.bodice(body(random), Ease.CLOSE_FITTING).draft().piece("front");
        Draft draft = banded(front, "waist", true, 2);
        assertRefused(
                draft,
                end(draft.seams().get(0).first(), Seam.End.START, 1),
                6,
                "its end lies on the fold 'centre front', which would be slanted; move the other end");
    }

    /** Stretches must be as many as there are, and stay at the legs. */
    @Test
    void aStretchStaysAtItsLeg() {
        Piece front = straight(100);
        List<CurvePath> stretches = Redraw.stretches(front, "side seam");
        assertThatThrownBy(
                        () -> Redraw.stretches(front, Map.of("side seam", stretches.subList(0, 1)), Map.of(), Map.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("Openings leave 2 stretches of 'side seam'; 1 were given.");
        List<CurvePath> shorter =
                List.of(CurvePath.polyline(stretches.get(0).start(), Vector2D.of(200, 97)), stretches.get(1));
        assertThatThrownBy(() -> Redraw.stretches(front, Map.of("side seam", shorter), Map.of(), Map.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(
                        "Stretch 1 of 'side seam' must stay at the ends of the legs beside it; it leaves one by 3.000 mm.");
    }

    private static Seam.Mate mate(String piece, String edge, boolean forward) {
        return forward ? Seam.Mate.of(piece, edge) : Seam.Mate.backwards(piece, edge);
    }
}
