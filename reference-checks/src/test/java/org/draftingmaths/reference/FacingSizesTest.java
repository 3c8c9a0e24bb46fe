package org.draftingmaths.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.block.TorsoBlock;
import org.draftingmaths.check.Checks;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Nearest;
import org.draftingmaths.finish.Bias;
import org.draftingmaths.finish.BiasWay;
import org.draftingmaths.finish.Combined;
import org.draftingmaths.finish.Facing;
import org.draftingmaths.finish.Facings;
import org.draftingmaths.finish.Give;
import org.draftingmaths.finish.Hems;
import org.draftingmaths.finish.Strap;
import org.draftingmaths.finish.StrapLine;
import org.draftingmaths.finish.StrapMake;
import org.draftingmaths.finish.Straps;
import org.draftingmaths.finish.StretchTest;
import org.draftingmaths.finish.TurnUp;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.measure.Ease;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.measure.Wearer;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Unfold;
import org.draftingmaths.seam.Walk;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Facings, hems, straps and pieces on the bias in every women's size of two published charts. */
class FacingSizesTest {

    private static final double FOLDED = 1e-6;

    private static final List<Facings.On> NECK =
            List.of(new Facings.On("front", "neckline"), new Facings.On("back", "neckline"));

    private static final List<Facings.On> ARM =
            List.of(new Facings.On("back", "armhole"), new Facings.On("front", "armhole"));

    /** Published widths in inches: 1 1/2, 2 and 2 1/2. */
    private static final double[] WIDTHS = {1.5 * 25.4, 2 * 25.4, 2.5 * 25.4};

    static Stream<Measurements> sizes() throws IOException {
        return TorsoBlockSizesTest.sizes();
    }

    private static Draft torso(Measurements body) {
        return TorsoBlock.draft(body, Ease.CLOSE_FITTING).draft();
    }

    private static Draft bodice(Measurements body) {
        return TorsoBlock.bodice(body, Ease.CLOSE_FITTING).draft();
    }

    /**
     * Published widths of neck facings: 1 1/2 to 2 in
     * ({@code dresspatternmaking.com/patternmaking-basics/garment-elements/facings/armhole-and-neckline-facing},
     * {@code mymeasuringtape.com/2010/09/drafting-part-iv-necklines-facings-and.html}) and 2 1/2 in
     * ({@code theclosethistorian.blogspot.com/2017/08/how-to-draft-neckline-and-armscye.html}). At each of them the facing's edge is the
     * neckline, its seams are those of the garment and its centre is as deep as it is wide.
     */
    @ParameterizedTest
    @MethodSource("sizes")
    void neckFacings(Measurements body) {
        for (Draft draft : List.of(torso(body), bodice(body))) {
            for (double width : WIDTHS) {
                Facing facing = Facings.separate(draft, "neck facing", NECK, width);
                for (int i = 0; i < 2; i++) {
                    Piece garment = draft.piece(NECK.get(i).piece());
                    Piece made = facing.pieces().get(i);
                    assertThat(Lengths.base(made, "neckline"))
                            .isCloseTo(Lengths.base(garment, "neckline"), within(FOLDED));
                    assertThat(Lengths.base(made, "centre " + garment.name())).isCloseTo(width, within(FOLDED));
                    assertThat(made.openings()).isEmpty();
                    assertThat(Checks.piece(made, FOLDED)).isEmpty();
                }
                assertThat(Walk.all(new Draft("facings", facing.pieces(), facing.joins())))
                        .allSatisfy(walk -> assertThat(walk.difference()).isCloseTo(0, within(FOLDED)));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("sizes")
    void armholeFacingsInOnePiece(Measurements body) {
        for (Draft draft : List.of(torso(body), bodice(body))) {
            Piece made = Facings.inOnePiece(draft, "arm facing", ARM, 45).only();
            for (Facings.On on : ARM) {
                assertThat(Lengths.base(made, on.piece() + " armhole"))
                        .isCloseTo(Lengths.base(draft.piece(on.piece()), "armhole"), within(FOLDED));
            }
            assertThat(made.openings()).isEmpty();
            assertThat(Checks.piece(made, FOLDED)).isEmpty();
        }
    }

    /**
     * Published: an all-in-one facing of 6 cm at the side, 10 cm at the centre front and 18 cm at the centre back
     * ({@code emmakespatterns.com/all-in-one-facing}).
     */
    @ParameterizedTest
    @MethodSource("sizes")
    void facingsForNeckAndArmhole(Measurements body) {
        for (Draft draft : List.of(torso(body), bodice(body))) {
            Facing front = Facings.combined(
                    draft.piece("front"), "front facing", new Combined("neckline", "armhole", 100, 60, Combined.TRIM));
            Facing back = Facings.combined(
                    draft.piece("back"), "back facing", new Combined("neckline", "armhole", 180, 60, Combined.TRIM));
            for (Facing each : List.of(front, back)) {
                assertThat(each.findings()).isEmpty();
                assertThat(Checks.piece(each.only(), FOLDED)).isEmpty();
                assertThat(Lengths.base(each.only(), "side seam")).isCloseTo(60, within(FOLDED));
                assertThat(each.only().openings()).isEmpty();
            }
            assertThat(Lengths.base(front.only(), "centre front")).isCloseTo(100, within(FOLDED));
            assertThat(Lengths.base(back.only(), "centre back")).isCloseTo(180, within(FOLDED));
            assertThat(Lengths.base(front.only(), "shoulder"))
                    .as("the two shoulders are sewn together")
                    .isCloseTo(Lengths.base(back.only(), "shoulder"), within(FOLDED));
        }
    }

    /** The hip-length hem folded up: the side seams coincide, and the whole piece opens out at its fold. */
    @ParameterizedTest
    @MethodSource("sizes")
    void straightHems(Measurements body) {
        Draft draft = torso(body);
        for (Piece piece : draft.pieces()) {
            TurnUp made = Hems.turnUp(piece, "hem", 40, new Give(0, 0));
            CurvePath hem = Paper.edge(piece, "hem");
            double level = hem.start().getY();
            AffineTransformMatrix2D fold = AffineTransformMatrix2D.createScale(1, -1)
                    .premultiply(AffineTransformMatrix2D.createTranslation(0, 2 * level));
            CurvePath folded = Paper.edge(made.piece(), "side seam turned").transformed(fold);
            CurvePath side = Paper.edge(made.piece(), "side seam");
            for (int i = 0; i <= 20; i++) {
                assertThat(Nearest.of(side, folded.pointAt(folded.length() * i / 20))
                                .distance())
                        .isLessThan(FOLDED);
            }
            assertThat(Lengths.base(made.piece(), "centre " + piece.name()))
                    .isCloseTo(piece.edge("centre " + piece.name()).length() + 40, within(FOLDED));
            Piece whole = Unfold.at(made.piece(), "centre " + piece.name()).piece();
            assertThat(Checks.piece(whole, FOLDED))
                    .as("the bust darts of the largest sizes are really wide")
                    .allMatch(finding -> finding.kind() == Finding.Kind.DART_WIDE);
        }
    }

    /** Braces from the front waist over the shoulder to the back waist, between the centre and the darts. */
    @ParameterizedTest
    @MethodSource("sizes")
    void strapsOverTheShoulder(Measurements body) {
        Draft draft = bodice(body);
        double near = Lengths.base(draft.piece("front"), "shoulder") * 0.8;
        Strap strap = Straps.strap(
                draft,
                "strap",
                List.of(
                        StrapLine.straight(draft.piece("front"), "waist", 30, "shoulder", near),
                        StrapLine.straight(draft.piece("back"), "shoulder", near, "waist", 30)),
                new StrapMake(25, 0.04, 10, 10),
                Wearer.ADULT);
        assertThat(strap.stitched() * 1.04).isCloseTo(strap.path(), within(1e-9));
        assertThat(Checks.piece(strap.piece(), FOLDED)).isEmpty();
        assertThat(strap.ledger().sentences(Steps.DEFAULT)).hasSize(1);
    }

    /** Opened out and put on the bias, the front keeps its outline; hung by the model, it is longer at the centre and narrower at the hem. */
    @ParameterizedTest
    @MethodSource("sizes")
    void frontsOnTheBias(Measurements body) {
        StretchTest test = new StretchTest("crepe", 100, 0.5, 400, 420, 24);
        Piece whole = Unfold.at(torso(body).piece("front"), "centre front").piece();
        Piece put = Bias.put(whole, BiasWay.RIGHT).piece();
        assertThat(put.panels()).isEqualTo(whole.panels());
        Bias.Hanging hung = Bias.hang(put, test, Vector2D.of(0, -1));
        assertThat(hung.lengthwise()).isCloseTo(1.05, within(1e-9));
        assertThat(hung.edge("hem").hung())
                .isCloseTo(whole.edge("hem").length() * Math.sqrt(2 - 1.05 * 1.05), within(1e-6));
        assertThat(hung.edge("side seam").hung())
                .isBetween(
                        whole.edge("side seam").length(),
                        whole.edge("side seam").length() * 1.05 + 1e-6);
    }
}
