package org.draftingmaths.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.check.Checks;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Inside;
import org.draftingmaths.curve.Nearest;
import org.draftingmaths.exchange.Style;
import org.draftingmaths.finish.CutSide;
import org.draftingmaths.finish.FinalPattern;
import org.draftingmaths.finish.Label;
import org.draftingmaths.finish.Snip;
import org.draftingmaths.lessons.styles.ChoirSmock;
import org.draftingmaths.lessons.styles.FerryDress;
import org.draftingmaths.lessons.styles.FestivalTunic;
import org.draftingmaths.lessons.styles.PottersApron;
import org.draftingmaths.lessons.styles.ReadersBlouse;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.seam.Walk;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The whole styles in every women's size of two published charts: nothing is found, every seam walks, what is folded lies on what it was copied
 * from, every cut line is as far off as its allowance says, and every piece says what it is.
 */
class StyleSizesTest {

    static Stream<Arguments> styles() throws IOException {
        List<Named<Function<Measurements, Style>>> styles = List.of(
                Named.of("tunic", FestivalTunic::draft),
                Named.of("blouse", ReadersBlouse::draft),
                Named.of("apron", PottersApron::draft),
                Named.of("dress", FerryDress::draft),
                Named.of("smock", ChoirSmock::draft));
        return TorsoBlockSizesTest.sizes().flatMap(body -> styles.stream().map(style -> Arguments.of(style, body)));
    }

    @ParameterizedTest
    @MethodSource("styles")
    void nothingIsFoundAndEverySeamWalks(Function<Measurements, Style> make, Measurements body) {
        Style style = make.apply(body);
        assertThat(style.findings())
                .extracting(finding -> finding.sentence(Steps.DEFAULT))
                .isEmpty();
        assertThat(Walk.all(style.draft())).isNotEmpty().allSatisfy(walk -> {
            assertThat(walk.partnered()).as(walk.seam().name()).isTrue();
            assertThat(Math.abs(walk.worst().difference()))
                    .as(walk.seam().name())
                    .isLessThan(Checks.SEAM_TOLERANCE);
        });
    }

    /** Net and cut line: every place of a side lies its width from the edge; every piece is inside its cut line, labelled, with a grain line. */
    @ParameterizedTest
    @MethodSource("styles")
    void everyPieceCanBeCut(Function<Measurements, Style> make, Measurements body) {
        Style style = make.apply(body);
        int number = 1;
        for (FinalPattern pattern : style.patterns()) {
            for (CutSide side : pattern.cut().sides()) {
                CurvePath edge = Paper.edge(pattern.piece(), side.edge());
                for (int i = 1; i < 20; i++) {
                    Vector2D place = side.path().pointAt(side.path().length() * i / 20);
                    Nearest nearest = Nearest.of(edge, place);
                    if (nearest.at() > 1e-6 && nearest.at() < edge.length() - 1e-6) {
                        assertThat(nearest.distance())
                                .as("%s of %s", side.edge(), pattern.piece().name())
                                .isGreaterThan(side.width() - 1e-4);
                    }
                }
            }
            for (Snip snip : pattern.snips()) {
                assertThat(Inside.of(pattern.net(), snip.end(), 1e-9))
                        .as("a snip ends before the stitch line")
                        .isNotEqualTo(Inside.Where.INSIDE);
            }
            Label title = pattern.labels().stream()
                    .filter(label -> label.kind() == Label.Kind.TITLE)
                    .findFirst()
                    .orElseThrow();
            assertThat(title.lines().get(1))
                    .isEqualTo(pattern.piece().name() + ", piece " + number++ + " of "
                            + style.patterns().size());
            assertThat(title.lines()).contains("size " + body.name(), "version 1");
            assertThat(pattern.grain()).isPresent();
        }
    }

    /** How many edges of each style are faced with nothing held in or trimmed off. */
    private static final Map<String, Integer> FACED =
            Map.of("Festival tunic", 0, "Reader's blouse", 8, "Potter's apron", 4, "Ferry dress", 2, "Choir smock", 2);

    /** A facing is as long as the edge it faces, measured on the finished garment. */
    @ParameterizedTest
    @MethodSource("styles")
    void facingsAreAsLongAsTheirEdges(Function<Measurements, Style> make, Measurements body) {
        Style style = make.apply(body);
        List<Walk> faced = Walk.all(style.draft()).stream()
                .filter(walk -> isFacing(walk.seam().second())
                        && !isFacing(walk.seam().first())
                        && walk.seam().held().isEmpty())
                .toList();
        assertThat(faced)
                .hasSize(FACED.get(style.title()))
                .allSatisfy(walk ->
                        assertThat(walk.difference()).as(walk.seam().name()).isCloseTo(0, within(1e-6)));
    }

    private static boolean isFacing(Seam.Mate side) {
        return side.parts().stream().allMatch(part -> part.piece().endsWith(" facing"));
    }

    /** The tunic and the blouse go over a head of 58 cm (adults' lie between 56 and 60 cm, common practice). */
    @ParameterizedTest
    @MethodSource("org.draftingmaths.reference.TorsoBlockSizesTest#sizes")
    void aHeadGoesThrough(Measurements body) {
        Style tunic = FestivalTunic.draft(body);
        double opening = 2
                * (Lengths.folded(tunic.draft().piece("front"), "neckline")
                        + Lengths.folded(tunic.draft().piece("back"), "neckline"));
        assertThat(opening).isGreaterThan(590);
        Style blouse = ReadersBlouse.draft(body);
        Piece front = blouse.draft().piece("front");
        double fold = front.panels().stream()
                .flatMap(panel -> panel.lines().stream())
                .filter(line -> line.line().equals("neckline"))
                .mapToDouble(line -> front.place(line).length())
                .sum();
        double back = Lengths.folded(blouse.draft().piece("back neck facing"), "neckline");
        assertThat(fold + 2 * back).isGreaterThan(580);
    }

    /** Folded back over the cowl's edge, the turned end of the facing lies on the shoulder. */
    @ParameterizedTest
    @MethodSource("org.draftingmaths.reference.TorsoBlockSizesTest#sizes")
    void theCowlsFacingFoldsOnTheShoulder(Measurements body) {
        Piece front = ReadersBlouse.draft(body).draft().piece("front");
        CurvePath shoulder = Paper.edge(front, "shoulder");
        CurvePath turned = Paper.edge(front, "shoulder turned");
        double level = shoulder.start().distance(turned.end()) < 1e-6
                        || shoulder.start().distance(turned.start()) < 1e-6
                ? shoulder.start().getY()
                : shoulder.end().getY();
        AffineTransformMatrix2D over =
                AffineTransformMatrix2D.createScale(1, -1).translate(0, 2 * level);
        CurvePath folded = turned.transformed(over);
        for (int i = 0; i <= 20; i++) {
            assertThat(Nearest.of(shoulder, folded.pointAt(folded.length() * i / 20))
                            .distance())
                    .isLessThan(1e-6);
        }
    }
}
