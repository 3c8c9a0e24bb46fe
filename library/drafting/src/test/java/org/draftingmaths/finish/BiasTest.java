package org.draftingmaths.finish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Nearest;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Flat;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Panels;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Unfold;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BiasTest {

    private static final Vector2D DOWN = Vector2D.of(0, -1);

    static Stream<Long> seeds() {
        return LongStream.range(0, 120).boxed();
    }

    private static StretchTest stretch(double share) {
        return new StretchTest("crepe", 100, 0.5, 400, 400 * (1 + share), 24);
    }

    /** A panel with its grain along its length. */
    private static Piece panel(double width, double height) {
        return Drawing.of("panel")
                .from(0, 0)
                .edge("hem", Role.HEM)
                .line(width, 0)
                .edge("side", Role.SEAM)
                .line(width, height)
                .edge("waist", Role.SEAM)
                .line(0, height)
                .edge("other side", Role.SEAM)
                .line(0, 0)
                .grain(width / 2, height * 0.2, width / 2, height * 0.8)
                .piece();
    }

    // ------------------------------------------------------------------------------------------------ grain

    /** The outline and all marks stay to the bit; the grain turns by 45 degrees and lies on the cloth; undone, all is as it was. */
    @ParameterizedTest
    @MethodSource("seeds")
    void puttingOnTheBiasTurnsTheGrainOnly(long seed) {
        Draft draft = FacingsTest.bodice(new SplittableRandom(seed));
        Piece front = draft.piece("front");
        Piece whole = Unfold.at(front, "centre front").piece();
        for (BiasWay way : BiasWay.values()) {
            Reworked put = Bias.put(whole, way);
            assertThat(put.piece().panels()).isEqualTo(whole.panels());
            assertThat(put.piece().edges()).isEqualTo(whole.edges());
            assertThat(put.piece().notches()).isEqualTo(whole.notches());
            Vector2D before = whole.grain().orElseThrow().direction();
            Vector2D after = put.piece().grain().orElseThrow().direction();
            assertThat(before.signedArea(after))
                    .as("seed %d: sine of 45 degrees, signed", seed)
                    .isCloseTo((way == BiasWay.LEFT ? 1 : -1) * Math.sqrt(0.5), within(1e-12));
            assertThat(before.dot(after)).isCloseTo(Math.sqrt(0.5), within(1e-12));
            Vector2D middle = put.piece()
                    .grain()
                    .orElseThrow()
                    .from()
                    .lerp(put.piece().grain().orElseThrow().to(), 0.5);
            assertThat(Flat.polygon(Paper.outline(whole))
                            .contains(new org.locationtech.jts.geom.GeometryFactory()
                                    .createPoint(
                                            new org.locationtech.jts.geom.Coordinate(middle.getX(), middle.getY()))))
                    .isTrue();
            assertThat(Panels.undo(put)).isEqualTo(whole);
            assertThat(put.ledger().only(Caution.class)).hasSize(1);
        }
        assertThatThrownBy(() -> Bias.put(front, BiasWay.LEFT))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining("'centre front' is a fold, and a fold along the bias creeps");
    }

    /** Of a pair cut on folded cloth the one lies on the other bias than the other: the two differ. */
    @Test
    void theMirrorImageLiesOnTheOtherBias() {
        Piece left = Bias.put(panel(200, 500), BiasWay.LEFT).piece();
        Piece mirrored = Panels.mirror(left, Vector2D.ZERO, Vector2D.of(0, 1)).piece();
        Piece right = Bias.put(
                        Panels.mirror(panel(200, 500), Vector2D.ZERO, Vector2D.of(0, 1))
                                .piece(),
                        BiasWay.LEFT.mirrored())
                .piece();
        Vector2D one = mirrored.grain().orElseThrow().direction();
        assertThat(Math.abs(one.signedArea(right.grain().orElseThrow().direction())))
                .isLessThan(1e-12);
        assertThat(one.signedArea(left.grain().orElseThrow().direction()))
                .as("a quarter turn apart")
                .isCloseTo(1, within(1e-12));
    }

    // ------------------------------------------------------------------------------------------------ thread angles

    @Test
    void threadAnglesAreToldAlongTheEdge() {
        Piece panel = HemsTest.flared(200, 500, Math.PI / 2);
        List<Bias.ThreadAngle> hem = Bias.threadAngles(panel, "hem", 3);
        // A quarter of a circle from straight below to the right: level, on the bias, upright. The warp is upright.
        assertThat(hem)
                .extracting(at -> Math.toDegrees(at.offThread()))
                .satisfiesExactly(
                        first -> assertThat(first).isCloseTo(0, within(1e-9)),
                        second -> assertThat(second).isCloseTo(45, within(1e-9)),
                        third -> assertThat(third).isCloseTo(0, within(1e-9)));
        assertThat(Math.toDegrees(hem.get(0).toWarp())).isCloseTo(90, within(1e-9));
        assertThat(hem.get(1).arc()).isCloseTo(700 * Math.PI / 4, within(1e-9));
        Piece turned = Bias.put(panel(200, 500), BiasWay.RIGHT).piece();
        for (String edge : List.of("hem", "side", "waist", "other side")) {
            assertThat(Bias.threadAngles(turned, edge, 5))
                    .allSatisfy(at -> assertThat(at.offThread()).isCloseTo(Math.PI / 4, within(1e-12)));
        }
        assertThatThrownBy(() -> Bias.threadAngles(panel, "hem", 1)).isInstanceOf(IllegalArgumentException.class);
    }

    // ------------------------------------------------------------------------------------------------ model

    /** The trade's figures: 5 % longer is 0.947 as wide, 10 % longer is 11.1 % narrower; on the true bias l^2 + w^2 = 2. */
    @Test
    void widthPaysForLength() {
        Shear five = Shear.of(stretch(0.05));
        assertThat(five.along(Math.PI / 4)).isCloseTo(1.05, within(1e-12));
        assertThat(five.widthSquare(Math.PI / 4)).isCloseTo(0.947, within(0.0005));
        assertThat(Shear.of(stretch(0.10)).widthSquare(Math.PI / 4)).isCloseTo(1 - 0.111, within(0.0005));
    }

    /** The formulas against threads laid by hand: a parallelogram of unit threads whose angle closes. */
    @ParameterizedTest
    @MethodSource("seeds")
    void theModelIsThreadsOfFixedLength(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double closing = random.nextDouble(0, 1.2);
        Shear shear = new Shear(closing);
        Vector2D warp = Vector2D.of(1, 0);
        Vector2D weft = Vector2D.of(Math.sin(closing), Math.cos(closing));
        double beta = random.nextDouble(0, Math.PI);
        Vector2D along = warp.multiply(Math.cos(beta)).add(weft.multiply(Math.sin(beta)));
        Vector2D across = warp.multiply(-Math.sin(beta)).add(weft.multiply(Math.cos(beta)));
        assertThat(shear.along(beta)).as("seed %d", seed).isCloseTo(along.norm(), within(1e-12));
        assertThat(shear.acrossLine(beta)).isCloseTo(across.norm(), within(1e-12));
        assertThat(shear.widthSquare(beta)).isCloseTo(Math.abs(along.normalize().signedArea(across)), within(1e-12));
        double l = shear.along(Math.PI / 4);
        double w = shear.widthSquare(Math.PI / 4);
        assertThat(l * l + w * w).isCloseTo(2, within(1e-12));
        assertThat(shear.acrossLine(Math.PI / 4)).isCloseTo(w, within(1e-12));
        // The map carries the same lines to the same lengths, and the threads keep theirs.
        AffineTransformMatrix2D map = shear.map();
        assertThat(map.applyVector(Vector2D.of(Math.cos(beta), Math.sin(beta))).norm())
                .isCloseTo(along.norm(), within(1e-12));
        assertThat(map.applyVector(warp).norm()).isCloseTo(1, within(1e-12));
        assertThat(map.applyVector(Vector2D.of(0, 1)).norm()).isCloseTo(1, within(1e-12));
    }

    /** Off the true bias the two widths are two figures. */
    @Test
    void offTheTrueBiasThereAreTwoWidths() {
        Shear shear = Shear.of(stretch(0.08));
        double beta = Math.toRadians(30);
        assertThat(shear.acrossLine(beta) - shear.widthSquare(beta)).isGreaterThan(0.003);
    }

    @Test
    void onlyATestThatThreadsAllowIsTaken() {
        assertThatThrownBy(() -> stretch(0.6))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(
                        "A strip of 400.0 mm that hangs to 640.0 mm stretches by 60.0 %; allowed is 0 to less than 41.4 %, which threads of"
                                + " fixed length cannot pass. Measure again, or the cloth is no plain weave.");
        assertThatThrownBy(() -> stretch(-0.01)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> stretch(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new StretchTest("crepe", 0, 1, 400, 410, 24))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new StretchTest("crepe", 100, -1, 400, 410, 24))
                .isInstanceOf(IllegalArgumentException.class);
        for (double angle : new double[] {-0.1, Math.PI / 2, Double.NaN}) {
            assertThatThrownBy(() -> new Shear(angle)).isInstanceOf(IllegalArgumentException.class);
        }
        assertThat(stretch(0.05).sentence(Steps.DEFAULT))
                .isEqualTo(
                        "Tested: a strip of 'crepe' 3 7/8 in (10.0 cm) wide, under 0.5 N for 24 h, went from 15 3/4 in (40.0 cm) to 16 1/2 in"
                                + " (42.0 cm): 5.0 %.");
        assertThat(StretchTest.howTo()).hasSize(5);
    }

    // ------------------------------------------------------------------------------------------------ hanging

    /** A bias panel hangs longer and narrower; cut by the correction and hung, every edge has the length drawn. */
    @ParameterizedTest
    @MethodSource("seeds")
    void correctionsAreMadeEdgeByEdge(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double share = random.nextDouble(0.005, 0.12);
        BiasWay way = random.nextBoolean() ? BiasWay.LEFT : BiasWay.RIGHT;
        Piece piece = Bias.put(panel(200, 500), way).piece();
        Bias.Hanging hung = Bias.hang(piece, stretch(share), DOWN);
        double narrower = Math.sqrt(2 - (1 + share) * (1 + share));
        assertThat(hung.edge("side").hung()).as("seed %d", seed).isCloseTo(500 * (1 + share), within(1e-9));
        assertThat(hung.edge("side").cut()).isCloseTo(500 / (1 + share), within(1e-9));
        assertThat(hung.edge("hem").hung()).isCloseTo(200 * narrower, within(1e-9));
        assertThat(hung.edge("hem").cut()).isCloseTo(200 / narrower, within(1e-9));
        assertThat(hung.edge("side").correction()).isNegative();
        assertThat(hung.edge("hem").correction()).isPositive();
        assertThat(hung.lengthwise()).isCloseTo(1 + share, within(1e-9));
        assertThat(hung.widthSquare()).isCloseTo(narrower, within(1e-9));
        assertThat(hung.ledger().only(Caution.class)).hasSize(1);
        assertThat(hung.ledger().only(Caution.class).get(0).words()).startsWith("This is a model");
        assertThat(hung.ledger().only(StretchTest.class)).containsExactly(stretch(share));
    }

    /**
     * Edges along the threads keep their lengths whatever hangs; a slanted seam is neither the one nor the other. Cut to the shape told and hung, the
     * piece has the shape drawn: on the true bias that is every height divided by the length's multiple and every width by the width's.
     */
    @Test
    void noOneShareFitsAllEdges() {
        Piece diamond = Drawing.of("diamond")
                .from(0, 0)
                .edge("along the warp", Role.SEAM)
                .line(200, 200)
                .edge("along the weft", Role.SEAM)
                .line(0, 400)
                .edge("slanted", Role.SEAM)
                .line(-100, 200)
                .edge("steep", Role.SEAM)
                .line(0, 0)
                .grain(-20, 180, 60, 260)
                .piece();
        Bias.Hanging hung = Bias.hang(diamond, stretch(0.08), DOWN);
        assertThat(hung.edge("along the warp").hung()).isCloseTo(200 * Math.sqrt(2), within(1e-9));
        assertThat(hung.edge("along the weft").hung()).isCloseTo(200 * Math.sqrt(2), within(1e-9));
        double narrower = Math.sqrt(2 - 1.08 * 1.08);
        assertThat(hung.edge("along the warp").cut()).isCloseTo(Math.hypot(200 / narrower, 200 / 1.08), within(1e-9));
        assertThat(hung.edge("steep").cut()).isCloseTo(Math.hypot(100 / narrower, 200 / 1.08), within(1e-9));
        assertThat(hung.edge("steep").correction()).isNegative();
        assertThat(hung.edge("steep").hung())
                .isBetween(hung.edge("steep").drawn() * 1.02, hung.edge("steep").drawn() * 1.08);
    }

    /** A curved edge is summed by its own directions: against many short straights. */
    @Test
    void curvesAreSummedByTheirThreads() {
        Piece panel = HemsTest.flared(200, 500, 1.2);
        Piece piece = Bias.put(unfoldable(panel), BiasWay.LEFT).piece();
        Bias.Hanging hung = Bias.hang(piece, stretch(0.06), DOWN);
        CurvePath hem = Paper.edge(piece, "hem");
        Shear shear = Shear.of(stretch(0.06));
        Vector2D warp = piece.grain().orElseThrow().direction();
        double sum = 0;
        int parts = 20000;
        for (int i = 0; i < parts; i++) {
            double here = hem.length() * (i + 0.5) / parts;
            Vector2D way = hem.tangentAt(here);
            double beta = Math.atan2(warp.signedArea(way), warp.dot(way));
            double down = Math.atan2(warp.signedArea(DOWN), warp.dot(DOWN));
            sum += shear.along(Math.sin(2 * down) > 0 ? beta : -beta) * hem.length() / parts;
        }
        assertThat(hung.edge("hem").hung()).isCloseTo(sum, within(1e-5));
    }

    private static Piece unfoldable(Piece panel) {
        return Unfold.at(panel, "centre").piece();
    }

    @Test
    void alongTheThreadsThereIsNothingToCorrect() {
        assertThatThrownBy(() -> Bias.hang(panel(200, 500), stretch(0.05), DOWN))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining("it hangs along its threads");
        Bias.Hanging hung = Bias.hang(Bias.put(panel(200, 500), BiasWay.LEFT).piece(), stretch(0.05), DOWN);
        assertThatThrownBy(() -> hung.edge("cuff"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("there are hem, side, waist, other side");
    }

    // ------------------------------------------------------------------------------------------------ deduction

    /** What grew is taken off where it grew, and the sides end where the hem does. */
    @ParameterizedTest
    @MethodSource("seeds")
    void theHemIsRaisedByWhatItGrew(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Piece piece = Bias.put(panel(200, 500), BiasWay.LEFT).piece();
        List<Bias.Grown> grown = List.of(
                new Bias.Grown(0, random.nextDouble(0, 10)),
                new Bias.Grown(60, random.nextDouble(0, 25)),
                new Bias.Grown(130, random.nextDouble(0, 25)),
                new Bias.Grown(200, random.nextDouble(0, 10)));
        Reworked raised = Bias.deduct(piece, "hem", grown);
        CurvePath hem = Paper.edge(raised.piece(), "hem");
        for (Bias.Grown place : grown) {
            assertThat(Nearest.of(hem, Vector2D.of(place.arc(), place.mm())).distance())
                    .as("seed %d", seed)
                    .isLessThan(1e-9);
        }
        assertThat(Lengths.base(raised.piece(), "side"))
                .isCloseTo(500 - grown.get(3).mm(), within(1e-9));
        assertThat(Lengths.base(raised.piece(), "other side"))
                .isCloseTo(500 - grown.get(0).mm(), within(1e-9));
        assertThat(Panels.undo(raised).sameCloth(piece, 1e-9)).isTrue();
    }

    /** Round a skirt "up" is towards its centre: raised by one figure all along, the hem is a circle of that much less. */
    @Test
    void aRoundHemIsRaisedTowardsItsCentre() {
        Piece quarter = HemsTest.flared(180, 620, 1.2);
        double hem = 800 * 1.2;
        List<Bias.Grown> grown = IntStream.rangeClosed(0, 8)
                .mapToObj(i -> new Bias.Grown(hem * i / 8, 12))
                .toList();
        Piece raised = Bias.deduct(quarter, "hem", grown).piece();
        CurvePath line = Paper.edge(raised, "hem");
        for (int i = 0; i <= 40; i++) {
            assertThat(line.pointAt(line.length() * i / 40).norm()).isCloseTo(788, within(0.01));
        }
        assertThat(Lengths.base(raised, "side")).isCloseTo(608, within(1e-9));
        assertThat(Lengths.base(raised, "centre")).isCloseTo(608, within(1e-9));
    }

    @Test
    void impossibleDeductionsAreRefused() {
        Piece piece = Bias.put(panel(200, 500), BiasWay.LEFT).piece();
        assertThatThrownBy(() -> new Bias.Grown(10, -1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Bias.Grown(10, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Bias.deduct(piece, "hem", List.of(new Bias.Grown(0, 5), new Bias.Grown(90, 5))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("What a hem grew is told in order along it, from 0 to its end at 200.0 mm");
        assertThatThrownBy(() -> Bias.deduct(piece, "hem", List.of(new Bias.Grown(0, 600), new Bias.Grown(200, 5))))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining("'other side' does not rise so far");
    }

    // ------------------------------------------------------------------------------------------------ hem drop

    /** Round a quarter skirt the hem drops most half way, and not at all along the threads. */
    @Test
    void theHemDropsMostOnTheBias() {
        Piece quarter = HemsTest.flared(180, 620, Math.PI / 2);
        List<Bias.Drop> drops = Bias.hemDrop(quarter, "hem", "waist", stretch(0.04), 9);
        assertThat(drops.get(0).drop()).isCloseTo(0, within(1e-9));
        assertThat(drops.get(8).drop()).isCloseTo(0, within(1e-9));
        // By hand: 620 mm x 4 % x sin 90 degrees.
        assertThat(drops.get(4).drop()).isCloseTo(24.8, within(1e-9));
        assertThat(drops.get(2).drop()).isCloseTo(24.8 * Math.sqrt(0.5), within(1e-9));
        assertThat(drops).allSatisfy(drop -> assertThat(drop.length()).isCloseTo(620, within(2e-3)));
        for (int i = 1; i <= 4; i++) {
            assertThat(drops.get(i).drop()).isGreaterThan(drops.get(i - 1).drop());
            assertThat(drops.get(i).drop()).isCloseTo(drops.get(8 - i).drop(), within(1e-6));
        }
        assertThatThrownBy(() -> Bias.hemDrop(quarter, "hem", "side", stretch(0.04), 3))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining("a line square to it does not reach 'side'");
    }
}
