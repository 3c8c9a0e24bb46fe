package org.draftingmaths.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.block.Block;
import org.draftingmaths.block.TorsoBlock;
import org.draftingmaths.check.Checks;
import org.draftingmaths.curve.Curve;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.measure.Ease;
import org.draftingmaths.measure.Measure;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.measure.ProportionRules;
import org.draftingmaths.measure.Wearer;
import org.draftingmaths.piece.DartEnd;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Girths;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.PaperSide;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.seam.Truing;
import org.draftingmaths.seam.Walk;
import org.draftingmaths.tables.ChartOptions;
import org.draftingmaths.tables.SizeCharts;
import org.draftingmaths.unit.Length;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Our own torso block in every women's size of two published charts; what the charts leave out is proportioned. */
class TorsoBlockSizesTest {

    private static final double GIRTH = 0.5;
    private static final double DEGREES = 0.5;

    static Stream<Measurements> sizes() throws IOException {
        return Stream.of(Stream.of(complete88()), chart("us-figure-types.csv"), chart("german-women.csv"))
                .flatMap(each -> each)
                .map(body -> body.filledBy(ProportionRules.TORSO));
    }

    private static Stream<Measurements> chart(String file) throws IOException {
        try (InputStream in = TorsoBlockSizesTest.class.getResourceAsStream(file)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return SizeCharts.parse(file, text, ChartOptions.DEFAULT.withWearer(Wearer.ADULT)).sizes().stream();
        }
    }

    /**
     * Published: the complete set for bust 88 cm at angelfire.com/empire/radhika/Cool/Patterns.htm, with waist and hip of size
     * 38 of the FWF chart. Its apex measures are proportioned.
     */
    static Measurements complete88() {
        return Measurements.of("88", Wearer.ADULT)
                .with(Measure.BUST, Length.cm(88))
                .with(Measure.WAIST, Length.cm(72))
                .with(Measure.HIP, Length.cm(97))
                .with(Measure.BACK_WAIST_LENGTH, Length.cm(40))
                .with(Measure.WAIST_TO_HIP, Length.cm(20.6))
                .with(Measure.ARMHOLE_DEPTH, Length.cm(21))
                .with(Measure.NECK, Length.cm(37))
                .with(Measure.SHOULDER_LENGTH, Length.cm(12.25))
                .with(Measure.BACK_WIDTH, Length.cm(34.4))
                .with(Measure.CHEST_WIDTH, Length.cm(32.4))
                .with(Measure.BUST_DART, Length.cm(7));
    }

    private static double girth(Draft draft, String level) {
        return 2 * (Girths.closed(draft.piece("front"), level) + Girths.closed(draft.piece("back"), level));
    }

    @ParameterizedTest
    @MethodSource("sizes")
    void girthsAreBodyPlusEase(Measurements body) {
        Draft torso = TorsoBlock.draft(body, Ease.CLOSE_FITTING).draft();
        assertThat(girth(torso, "bust line")).isCloseTo(body.mm(Measure.BUST) + 60, within(GIRTH));
        assertThat(girth(torso, "waist line")).isCloseTo(body.mm(Measure.WAIST) + 20, within(GIRTH));
        assertThat(girth(torso, "hip line")).isCloseTo(body.mm(Measure.HIP) + 40, within(GIRTH));
        Draft bodice = TorsoBlock.bodice(body, Ease.CLOSE_FITTING).draft();
        assertThat(girth(bodice, "bust line")).isCloseTo(body.mm(Measure.BUST) + 60, within(GIRTH));
        assertThat(2 * (Lengths.folded(bodice.piece("front"), "waist") + Lengths.folded(bodice.piece("back"), "waist")))
                .isCloseTo(body.mm(Measure.WAIST) + 20, within(GIRTH));
    }

    @ParameterizedTest
    @MethodSource("sizes")
    void lengthsAreAsMeasured(Measurements body) {
        Draft bodice = TorsoBlock.bodice(body, Ease.CLOSE_FITTING).draft();
        Piece front = bodice.piece("front");
        Piece back = bodice.piece("back");
        assertThat(Lengths.folded(back, "centre back")).isCloseTo(body.mm(Measure.BACK_WAIST_LENGTH), within(1e-6));
        assertThat(Lengths.folded(front, "shoulder")).isCloseTo(body.mm(Measure.SHOULDER_LENGTH), within(1e-6));
        assertThat(Lengths.folded(back, "shoulder")).isCloseTo(body.mm(Measure.SHOULDER_LENGTH), within(1e-6));
        Vector2D apex = Measured.tip(front, "bust dart");
        assertThat(2 * apex.getX()).isCloseTo(body.mm(Measure.APEX_TO_APEX), within(1e-6));
        Vector2D neckPoint = Paper.edge(front, "neckline").start();
        assertThat(apex.distance(neckPoint)).isCloseTo(body.mm(Measure.NECK_POINT_TO_APEX), within(1e-6));
        assertThat(apex.distance(neckPoint) + apex.getY()).isCloseTo(body.mm(Measure.FRONT_WAIST_LENGTH), within(1e-6));
    }

    @ParameterizedTest
    @MethodSource("sizes")
    void seamsMatch(Measurements body) {
        for (Block block :
                new Block[] {TorsoBlock.draft(body, Ease.CLOSE_FITTING), TorsoBlock.bodice(body, Ease.CLOSE_FITTING)}) {
            boolean wide = Measured.angle(block.draft().piece("front"), "bust dart") > Math.toRadians(22);
            assertThat(Checks.all(block.draft(), 0.1))
                    .as("the largest sizes ask for a bust dart that is better divided")
                    .extracting(Finding::kind)
                    .containsExactlyElementsOf(wide ? List.of(Finding.Kind.DART_WIDE) : List.of());
            assertThat(Walk.all(block.draft()))
                    .allSatisfy(walk -> assertThat(walk.worst().difference()).isCloseTo(0, within(0.1)));
        }
    }

    /** Shoulders and sides butted, neckline and armhole run on smoothly, bending the same way on both sides of the joint. */
    @ParameterizedTest
    @MethodSource("sizes")
    void joinedCurvesAreSmooth(Measurements body) {
        Draft torso = TorsoBlock.draft(body, Ease.CLOSE_FITTING).draft();
        Piece front = torso.piece("front");
        Piece back = torso.piece("back");
        assertThat(inside(front, "shoulder", "neckline") + inside(back, "shoulder", "neckline"))
                .isCloseTo(180, within(DEGREES));
        assertThat(inside(front, "armhole", "shoulder") + inside(back, "armhole", "shoulder"))
                .isCloseTo(180, within(DEGREES));
        assertThat(inside(front, "side seam", "armhole") + inside(back, "side seam", "armhole"))
                .isCloseTo(180, within(DEGREES));
        for (Piece piece : torso.pieces()) {
            assertThat(bendsOneWay(Paper.edge(piece, "neckline"))).isTrue();
            assertThat(bendsOneWay(Paper.edge(piece, "armhole"))).isTrue();
        }
    }

    @ParameterizedTest
    @MethodSource("sizes")
    void centresAreSquare(Measurements body) {
        Draft torso = TorsoBlock.draft(body, Ease.CLOSE_FITTING).draft();
        Draft bodice = TorsoBlock.bodice(body, Ease.CLOSE_FITTING).draft();
        assertThat(inside(torso.piece("front"), "neckline", "centre front")).isCloseTo(90, within(DEGREES));
        assertThat(inside(torso.piece("front"), "centre front", "hem")).isCloseTo(90, within(DEGREES));
        assertThat(inside(torso.piece("back"), "neckline", "centre back")).isCloseTo(90, within(DEGREES));
        assertThat(inside(torso.piece("back"), "centre back", "hem")).isCloseTo(90, within(DEGREES));
        assertThat(inside(bodice.piece("front"), "centre front", "waist")).isCloseTo(90, within(DEGREES));
        assertThat(inside(bodice.piece("back"), "centre back", "waist")).isCloseTo(90, within(DEGREES));
    }

    /** Folded on its dart, the waist is one curve of the length asked, square to the centre line and smooth over the side seam. */
    @ParameterizedTest
    @MethodSource("sizes")
    void waistIsSmoothWithItsDartFolded(Measurements body) {
        Draft bodice = TorsoBlock.bodice(body, Ease.CLOSE_FITTING).draft();
        Draft torso = TorsoBlock.draft(body, Ease.CLOSE_FITTING).draft();
        for (Piece piece : bodice.pieces()) {
            List<CurvePath> folded = folded(piece, "waist", Measured.tip(piece, "waist dart"));
            assertThat(kink(folded)).isCloseTo(0, within(1e-6));
            assertThat(folded).allSatisfy(path -> assertThat(bendsOneWay(path)).isTrue());
            assertThat(Math.toDegrees(Math.abs(folded.get(0).startTangent().getY())))
                    .isLessThan(DEGREES);
            double extra = piece.name().equals("front") ? 5 : -5;
            assertThat(folded.stream().mapToDouble(CurvePath::length).sum())
                    .isCloseTo((body.mm(Measure.WAIST) + 20) / 4 + extra, within(1e-6));
            String centre = "centre " + piece.name();
            assertThat(Lengths.folded(piece, centre))
                    .isCloseTo(
                            Lengths.folded(torso.piece(piece.name()), centre) - body.mm(Measure.WAIST_TO_HIP),
                            within(1e-6));
            assertThat(Measured.leg(piece, "waist dart", Leg.BEFORE).length())
                    .isCloseTo(Measured.leg(piece, "waist dart", Leg.AFTER).length(), within(1e-6));
        }
        assertThat(inside(bodice.piece("front"), "waist", "side seam")
                        + inside(bodice.piece("back"), "waist", "side seam"))
                .isCloseTo(180, within(DEGREES));
    }

    /** Sewn to a point short of the apex the dart takes more angle than it has; the blend over it takes the difference away. */
    @ParameterizedTest
    @MethodSource("sizes")
    void waistIsSmoothAsSewnOnceBlended(Measurements body) {
        for (Piece piece : TorsoBlock.bodice(body, Ease.CLOSE_FITTING).draft().pieces()) {
            double before = kink(folded(piece, "waist", DartEnd.sewnTip(piece, "waist dart")));
            assertThat(Math.abs(before)).isBetween(1.2, 2.0);
            Piece blended = Truing.blendDart(piece, "waist dart").piece();
            assertThat(kink(folded(blended, "waist", DartEnd.sewnTip(blended, "waist dart"))))
                    .isCloseTo(0, within(1e-6));
            assertThat(Lengths.folded(blended, "waist"))
                    .as("the girth is that of the body still")
                    .isCloseTo(Lengths.folded(piece, "waist"), within(GIRTH / 4));
            assertThat(Checks.piece(blended, 0.5)).isEqualTo(Checks.piece(piece, 0.5));
        }
    }

    @ParameterizedTest
    @MethodSource("sizes")
    void shouldersAreStraightWithTheirDartsFolded(Measurements body) {
        Draft bodice = TorsoBlock.bodice(body, Ease.CLOSE_FITTING).draft();
        for (Piece piece : bodice.pieces()) {
            String dart = piece.name().equals("front") ? "bust dart" : "shoulder dart";
            List<CurvePath> folded = folded(piece, "shoulder", Measured.tip(piece, dart));
            assertThat(kink(folded)).isCloseTo(0, within(1e-6));
            assertThat(folded)
                    .allSatisfy(path ->
                            assertThat(path.length()).isCloseTo(path.start().distance(path.end()), within(1e-9)));
        }
    }

    /** The two stretches of a darted edge as they lie on paper, the second turned about a dart's point on to the first. */
    private static List<CurvePath> folded(Piece piece, String edge, Vector2D tip) {
        List<CurvePath> drawn = Paper.sides(piece).stream()
                .filter(side -> side.edge().equals(edge) && side.opening().isEmpty())
                .map(PaperSide::path)
                .toList();
        assertThat(drawn).hasSize(2);
        Vector2D from = tip.vectorTo(drawn.get(1).start());
        Vector2D to = tip.vectorTo(drawn.get(0).end());
        double turn = Math.atan2(from.signedArea(to), from.dot(to));
        CurvePath second = drawn.get(1).transformed(AffineTransformMatrix2D.createRotation(tip, turn));
        assertThat(second.start().distance(drawn.get(0).end())).isLessThan(1e-6);
        return List.of(drawn.get(0), second);
    }

    /** By how many degrees the folded edge turns at the dart. */
    private static double kink(List<CurvePath> folded) {
        Vector2D in = folded.get(0).endTangent();
        Vector2D out = folded.get(1).startTangent();
        return Math.toDegrees(Math.atan2(in.signedArea(out), in.dot(out)));
    }

    /** The angle inside the piece at the corner where one edge gives way to the next. */
    private static double inside(Piece piece, String edge, String next) {
        Vector2D in = Paper.edge(piece, edge).endTangent();
        Vector2D out = Paper.edge(piece, next).startTangent();
        return 180 - Math.toDegrees(Math.atan2(in.signedArea(out), in.dot(out)));
    }

    /** Outlines run anticlockwise, so a hollow bends clockwise: at no place the other way. */
    private static boolean bendsOneWay(CurvePath path) {
        for (Curve curve : path.curves()) {
            for (int i = 0; i <= 50; i++) {
                if (curve.curvature(i / 50.0) > 1e-9) {
                    return false;
                }
            }
        }
        return true;
    }
}
