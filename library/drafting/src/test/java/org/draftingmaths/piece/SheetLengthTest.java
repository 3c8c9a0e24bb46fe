package org.draftingmaths.piece;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.DraftingException;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A sheet made longer or shorter across a line: every point of a dart either stays or moves square to the line by the length asked, no mouth changes its
 * width, and the cloth gained, with the wedges of the darts, is the line times the length.
 */
class SheetLengthTest {

    private static final double SAME = 1e-7;

    private static int drawnInAll;
    private static int dartsCrossed;

    static Stream<Long> seeds() {
        return LongStream.range(0, 40).boxed();
    }

    private static Vector2D mouth(Piece piece, String dart, Leg leg) {
        return Measured.leg(piece, dart, leg).start();
    }

    /** The triangle between the ends and the point of a dart. */
    private static double wedge(Piece piece, String dart) {
        Vector2D tip = Measured.tip(piece, dart);
        return Math.abs(tip.vectorTo(mouth(piece, dart, Leg.BEFORE))
                        .signedArea(tip.vectorTo(mouth(piece, dart, Leg.AFTER))))
                / 2;
    }

    private static double sheet(Piece piece) {
        return piece.area()
                + piece.openings().stream()
                        .mapToDouble(dart -> wedge(piece, dart.name()))
                        .sum();
    }

    /** Whether a point moved with the lower part; anything between is a fault. */
    private static boolean moved(Vector2D was, Vector2D is, Vector2D by) {
        boolean moved = was.add(by).distance(is) < SAME;
        assertThat(moved || was.distance(is) < SAME)
                .as("%s went to %s", was, is)
                .isTrue();
        return moved;
    }

    private static Optional<Reworked> attempt(Piece piece, Spot from, Spot to, double by) {
        try {
            return Optional.of(SheetLength.at(piece, from, to, by, "Lengthen"));
        } catch (DraftingException refused) {
            assertThat(refused.reason())
                    .containsAnyOf(
                            "leaves the cloth",
                            "less cloth",
                            "fold",
                            "slants across",
                            "no part above",
                            "crosses itself",
                            "does not reach",
                            "lie inside");
            return Optional.empty();
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyPointStaysOrMovesByTheLength(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Piece piece = RandomPieces.piece(seed);
        List<Edge> whole = piece.edges().stream()
                .filter(edge -> Redraw.isWhole(piece, edge.name()) && edge.role() != Role.FOLD)
                .toList();
        for (int i = 0; i < 12 && whole.size() > 1; i++) {
            Edge one = whole.get(random.nextInt(whole.size()));
            Edge other = whole.get(random.nextInt(whole.size()));
            Spot.On from = (Spot.On) Spot.on(one.name(), one.length() * random.nextDouble(0.05, 0.95));
            Spot.On to = (Spot.On) Spot.on(other.name(), other.length() * random.nextDouble(0.05, 0.95));
            double by = random.nextDouble(2, 25) * (i % 3 == 0 ? -1 : 1);
            if (one.equals(other)) {
                continue;
            }
            attempt(piece, from, to, by).ifPresent(done -> require(piece, from, to, by, done));
        }
    }

    /** A dart from below and one from above, both slanting, their points wherever the seed puts them; the line slants between slanting sides. */
    private static Piece darted(SplittableRandom random) {
        Vector2D low = Vector2D.of(random.nextDouble(80, 150), random.nextDouble(70, 150));
        Vector2D high = Vector2D.of(random.nextDouble(150, 220), random.nextDouble(60, 150));
        Vector2D lowMouth = Vector2D.of(random.nextDouble(90, 140), random.nextDouble(-10, 10));
        Vector2D highMouth = Vector2D.of(random.nextDouble(170, 210), random.nextDouble(190, 210));
        Vector2D lowEnd = turned(lowMouth, low, random.nextDouble(0.05, 0.3));
        Vector2D highEnd = turned(highMouth, high, random.nextDouble(0.05, 0.3));
        return Drawing.of("piece")
                .from(0, 0)
                .edge("edge 1", Role.SEAM)
                .line(lowMouth.getX(), lowMouth.getY())
                .dart("dart 1", low.getX(), low.getY(), lowEnd.getX(), lowEnd.getY(), 3, Leg.AFTER)
                .curve(260, -10, 280, 5, 300, 0)
                .edge("right", Role.SEAM)
                .curve(310, 60, 280, 120, random.nextDouble(285, 320), 200)
                .edge("edge 2", Role.SEAM)
                .line(highMouth.getX(), highMouth.getY())
                .dart("dart 2", high.getX(), high.getY(), highEnd.getX(), highEnd.getY(), 0, Leg.BEFORE)
                .line(10, 200)
                .edge("left", Role.SEAM)
                .curve(-10, 120, 10, 60, 0, 0)
                .notch("edge 1", 20)
                .notch("edge 1", 200)
                .notch("left", 150)
                .piece();
    }

    private static Vector2D turned(Vector2D mouth, Vector2D point, double angle) {
        return AffineTransformMatrix2D.createRotation(point, angle).apply(mouth);
    }

    @ParameterizedTest
    @MethodSource("dartedSeeds")
    void dartsAcrossTheLineKeepTheirMouths(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Piece piece = darted(random);
        Spot.On from = (Spot.On) Spot.on("left", random.nextDouble(60, 150));
        Spot.On to = (Spot.On) Spot.on("right", random.nextDouble(60, 150));
        double by = random.nextDouble(-15, 30);
        attempt(piece, from, to, by).ifPresent(done -> require(piece, from, to, by, done));
    }

    static Stream<Long> dartedSeeds() {
        return LongStream.range(0, 300).boxed();
    }

    /** Two upright darts in one waist: the new base is the waist with both closed, for their legs lie on one another in it. */
    @Test
    void twoDartsInOneEdgeCloseInItsBase() {
        Piece piece = Drawing.of("front")
                .from(0, 0)
                .edge("waist", Role.SEAM)
                .line(60, 0)
                .dart("inner dart", 70, 110, 80, 0, 10, Leg.BEFORE)
                .line(140, 3)
                .dart("outer dart", 147, 90, 154, 3, 0, Leg.AFTER)
                .line(260, 8)
                .edge("side", Role.SEAM)
                .line(270, 240)
                .edge("top", Role.FINISHED)
                .line(0, 240)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .notch("waist", 100)
                .piece();
        Reworked done = SheetLength.at(
                piece, Spot.on("centre", 190), Spot.on("side", 42 * Math.hypot(10, 232) / 232), 30, "Lengthen");
        Piece now = done.piece();
        CurvePath closed = ClosedEdge.of(now, "waist").line();
        assertThat(closed.start().distance(Vector2D.of(0, -30))).isLessThan(SAME);
        assertThat(closed.length()).isCloseTo(now.edge("waist").length(), within(SAME));
        assertThat(now.edge("waist").length()).isCloseTo(piece.edge("waist").length(), within(SAME));
        assertThat(Measured.leg(now, "inner dart", Leg.BEFORE).length()).isCloseTo(Math.hypot(10, 140), within(SAME));
        assertThat(Measured.leg(now, "outer dart", Leg.AFTER).length()).isCloseTo(Math.hypot(7, 117), within(SAME));
        assertThat(Notches.where(now, now.notches().get(0))
                        .point()
                        .distance(Notches.where(piece, piece.notches().get(0))
                                .point()
                                .subtract(Vector2D.of(0, 30))))
                .isLessThan(SAME);
        assertThat(Panels.undo(done)).isEqualTo(piece);
    }

    private static void require(Piece piece, Spot from, Spot to, double by, Reworked done) {
        drawnInAll++;
        Piece now = done.piece();
        Vector2D a = Measured.at(piece, from);
        Vector2D way = a.directionTo(Measured.at(piece, to));
        Vector2D square = Vector2D.of(-way.getY(), way.getX());
        Vector2D shift = (square.getY() < 0 ? square : square.negate()).multiply(by);
        for (Opening opening : piece.openings()) {
            String dart = opening.name();
            boolean tip = moved(Measured.tip(piece, dart), Measured.tip(now, dart), shift);
            boolean before = moved(mouth(piece, dart, Leg.BEFORE), mouth(now, dart, Leg.BEFORE), shift);
            boolean after = moved(mouth(piece, dart, Leg.AFTER), mouth(now, dart, Leg.AFTER), shift);
            assertThat(before).isEqualTo(after);
            dartsCrossed += tip != before ? 1 : 0;
            assertThat(Measured.intake(now, dart)).isCloseTo(Measured.intake(piece, dart), within(SAME));
            if (tip == before) {
                assertThat(Measured.angle(now, dart)).isCloseTo(Measured.angle(piece, dart), within(1e-9));
            }
            requireBase(now, opening);
        }
        if (by > 0) {
            double line = a.distance(Measured.at(piece, to));
            assertThat(sheet(now)).isCloseTo(sheet(piece) + by * line, within(1e-6));
        }
        assertThat(Panels.undo(done)).isEqualTo(piece);
    }

    /** What follows a dart on its edge, turned and slid until its legs lie along one another, goes on from what comes before: that is the base. */
    private static void requireBase(Piece piece, Opening dart) {
        String edge = dart.name().replace("dart", "edge");
        CurvePath first = Redraw.first(piece, edge);
        CurvePath last = Redraw.last(piece, edge);
        double at = piece.opening(dart.name()).mouth().before();
        CurvePath base = piece.edge(edge).base();
        assertThat(at).isCloseTo(first.length(), within(SAME));
        assertThat(base.length()).isCloseTo(first.length() + last.length(), within(SAME));
        double inPlace = turn(first.endTangent(), last.startTangent());
        double closed = turn(base.tangentBefore(at), base.tangentAt(at));
        double legs = turn(
                Measured.leg(piece, dart.name(), Leg.BEFORE).startTangent(),
                Measured.leg(piece, dart.name(), Leg.AFTER).startTangent());
        assertThat(Math.cos(inPlace - legs)).isCloseTo(Math.cos(closed), within(1e-9));
        assertThat(Math.sin(inPlace - legs)).isCloseTo(Math.sin(closed), within(1e-9));
    }

    private static double turn(Vector2D in, Vector2D out) {
        return Math.atan2(in.signedArea(out), in.dot(out));
    }

    @AfterAll
    static void manyWereDrawn() {
        assertThat(drawnInAll).isGreaterThan(250);
        assertThat(dartsCrossed).isGreaterThan(200);
    }

    /** A skirt front: waist dart, double-pointed dart, level lines, notches on the side. */
    private static Piece skirt() {
        return Drawing.of("front")
                .from(0, 0)
                .edge("hem", Role.HEM)
                .line(250, 0)
                .edge("side", Role.SEAM)
                .line(250, 200)
                .line(240, 400)
                .edge("waist", Role.SEAM)
                .line(130, 400)
                .dart("waist dart", 120, 300, 110, 400, 5, Leg.AFTER)
                .line(0, 400)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .insideDart("inner dart", 200, 380, 200, 220, 0.5, 12)
                .level("high", 0, 350, 400, 350)
                .level("middle", 0, 300, 400, 300)
                .level("low", 0, 150, 400, 150)
                .notch("side", 150)
                .notch("side", 300)
                .grain(30, 50, 30, 370)
                .piece();
    }

    private static Reworked shifted(double height, double by) {
        return SheetLength.at(
                skirt(),
                Spot.on("centre", 400 - height),
                Spot.on("side", height <= 200 ? height : 200 + (height - 200) * Math.hypot(10, 200) / 200),
                by,
                "Lengthen 'front'");
    }

    @Test
    void aDartFromAboveReachesDownWithItsPoint() {
        Piece now = shifted(350, 30).piece();
        assertThat(Measured.tip(now, "waist dart").distance(Vector2D.of(120, 270)))
                .isLessThan(SAME);
        for (Leg leg : Leg.values()) {
            assertThat(Measured.leg(now, "waist dart", leg).length()).isCloseTo(Math.hypot(10, 130), within(SAME));
        }
        InsideDart inner = now.insideDart("inner dart");
        assertThat(inner.oneTip().distance(Vector2D.of(200, 380))).isLessThan(SAME);
        assertThat(inner.otherTip().distance(Vector2D.of(200, 190))).isLessThan(SAME);
        assertThat(inner.intake()).isCloseTo(12, within(SAME));
        assertThat(inner.oneSide().getY()).isCloseTo(270, within(SAME));
        assertThat(now.grain().orElseThrow().from().distance(Vector2D.of(30, 20)))
                .isLessThan(SAME);
        assertThat(now.grain().orElseThrow().to().distance(Vector2D.of(30, 370)))
                .isLessThan(SAME);
    }

    private static List<CurvePath> levels(Piece piece, String level) {
        return piece.panels().stream()
                .flatMap(panel -> panel.lines().stream())
                .filter(line -> line.line().equals(level))
                .map(piece::place)
                .toList();
    }

    /** A level line at which the sheet is made longer stays above, and ends on the dart's new legs; those below move. */
    @Test
    void levelLinesGoWithTheirSide() {
        Piece now = shifted(350, 30).piece();
        List<CurvePath> high = levels(now, "high");
        assertThat(high).hasSize(2);
        double half = 10.0 * 80 / 130;
        assertThat(high.get(0).start().distance(Vector2D.of(0, 350))).isLessThan(SAME);
        assertThat(high.get(0).end().distance(Vector2D.of(120 - half, 350))).isLessThan(SAME);
        assertThat(high.get(1).start().distance(Vector2D.of(120 + half, 350))).isLessThan(SAME);
        assertThat(levels(now, "low").get(0).start().distance(Vector2D.of(0, 120)))
                .isLessThan(SAME);
        assertThat(levels(now, "middle").get(0).start().distance(Vector2D.of(0, 270)))
                .isLessThan(SAME);
    }

    /** What is shortened gives its level line back: one on the line, one within what is taken out, one just below it. */
    @Test
    void levelLinesComeBack() {
        for (double by : new double[] {-20, -49, -50, -60}) {
            if (by > -50) {
                Reworked done = shifted(350, by);
                assertThat(levels(done.piece(), "high")).hasSize(2);
                assertThat(levels(done.piece(), "middle")).hasSize(1);
                assertThat(Panels.undo(done)).isEqualTo(skirt());
            }
            Reworked low = shifted(200, by);
            assertThat(levels(low.piece(), "low")).hasSize(by < -50 ? 0 : 1);
            assertThat(Panels.undo(low)).isEqualTo(skirt());
        }
    }

    @Test
    void notchesLieOnTheirCloth() {
        Piece now = shifted(200, 25).piece();
        assertThat(now.notches().get(0).arc()).isCloseTo(150, within(SAME));
        assertThat(now.notches().get(1).arc()).isCloseTo(325, within(SAME));
        Piece shorter = shifted(180, -50).piece();
        assertThat(shorter.notches().get(0).arc()).as("taken out: at the joint").isCloseTo(130, within(SAME));
        assertThat(shorter.notches().get(1).arc()).isCloseTo(250, within(SAME));
    }

    /** A line is found by where it meets the edges, and lies a rounding off its notch: front and back must not tell the notch to two sides. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 1e-9, -1e-9, 4e-7, -4e-7})
    void aNotchOnTheLineStaysAbove(double off) {
        assertThat(shifted(150 + off, 25).piece().notches().get(0).arc()).isCloseTo(175, within(1e-6));
        assertThat(shifted(150 + off, -25).piece().notches().get(0).arc()).isCloseTo(125, within(1e-6));
    }

    @Test
    void whatIsImpossibleIsRefused() {
        assertThatThrownBy(() -> shifted(350, -60))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining("less cloth below the line, before the next edge or the point or mouth of a dart")
                .hasMessageContaining("possible 0");
        Piece gathered = skirt().using("waist dart", new Use.Left(Use.Kind.GATHERS));
        assertThatThrownBy(() -> SheetLength.at(gathered, Spot.on("centre", 50), Spot.on("side", 350), 10, "Lengthen"))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining("the line crosses 'waist dart', which is no dart with straight legs");
        assertThatThrownBy(() -> SheetLength.at(skirt(), Spot.on("centre", 200), Spot.on("side", 150), 10, "Lengthen"))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining("'centre' is a fold and must be straight");
        assertThatThrownBy(() -> SheetLength.at(skirt(), Spot.on("centre", 60), Spot.on("centre", 90), 10, "Lengthen"))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining("the line ends on the edge on which it starts");
    }
}
