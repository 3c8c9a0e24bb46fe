package org.draftingmaths.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.block.Block;
import org.draftingmaths.block.TorsoBlock;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Inside;
import org.draftingmaths.curve.Meets;
import org.draftingmaths.dart.Darts;
import org.draftingmaths.measure.Ease;
import org.draftingmaths.measure.Measure;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.measure.ProportionRules;
import org.draftingmaths.measure.Wearer;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.unit.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** No line runs through words, no words over others, and what is said of a piece stands on it. Judged by where curves meet. */
class WordsTest {

    private static final String[] LABEL = {"front", "piece 1 of 2", "size 38", "cut 1 on the fold"};

    static Stream<Arguments> figures() {
        return Stream.of(80, 88, 104, 122)
                .flatMap(bust -> Stream.of(Scale.values())
                        .flatMap(scale -> figures(bust).map(figure -> Arguments.of(bust, scale, figure))));
    }

    private static Stream<Figure> figures(double bust) {
        Measurements body = Measurements.of("size", Wearer.ADULT)
                .with(Measure.BUST, Length.cm(bust))
                .with(Measure.WAIST, Length.cm(bust - 16))
                .with(Measure.HIP, Length.cm(bust + 9))
                .filledBy(ProportionRules.TORSO);
        Block bodice = TorsoBlock.bodice(body, Ease.CLOSE_FITTING);
        Block torso = TorsoBlock.draft(body, Ease.CLOSE_FITTING);
        Piece front = bodice.draft().piece("front");
        Piece moved = Darts.rotate(front, "bust dart", Spot.on("side seam", 120), "side dart")
                .piece();
        return Stream.of(
                Figure.of("Front", front).labelled(LABEL),
                Figure.over("Front, its dart moved", moved, front).labelled(LABEL),
                Figure.of("Back", bodice.draft().piece("back")).labelled(LABEL),
                Figure.of("Front", torso.draft().piece("front")).labelled(LABEL),
                Figure.of("Back", torso.draft().piece("back")).labelled(LABEL));
    }

    @ParameterizedTest(name = "bust {0}, {1}")
    @MethodSource("figures")
    void nothingRunsThroughWords(double bust, Scale scale, Figure figure) {
        List<Mark> marks = PieceDrawing.of(figure, new Pen(scale.times()));
        List<Mark.Words> words = words(marks);
        assertThat(words).hasSizeGreaterThan(8);
        for (int i = 0; i < words.size(); i++) {
            Mark.Words each = words.get(i);
            CurvePath box = box(each);
            for (Mark mark : marks) {
                if (mark instanceof Mark.Stroke stroke) {
                    stroke.paths()
                            .forEach(path -> assertThat(Meets.of(box, path).isEmpty())
                                    .as(
                                            "'%s' clear of a %s line",
                                            each.text(), stroke.kind().className())
                                    .isTrue());
                }
            }
            for (Mark.Words before : words.subList(0, i)) {
                assertThat(Meets.of(box, box(before)).isEmpty()
                                && !Inside.contains(box, before.start())
                                && !Inside.contains(box(before), each.start()))
                        .as("'%s' clear of '%s'", each.text(), before.text())
                        .isTrue();
            }
        }
    }

    @ParameterizedTest(name = "bust {0}, {1}")
    @MethodSource("figures")
    void wordsStandOnThePiece(double bust, Scale scale, Figure figure) {
        CurvePath outline = Paper.outline(figure.piece());
        for (Mark.Words each : words(PieceDrawing.of(figure, new Pen(scale.times())))) {
            assertThat(each.box())
                    .as("'%s'", each.text())
                    .allMatch(corner -> Inside.of(outline, corner) == Inside.Where.INSIDE);
        }
    }

    private static List<Mark.Words> words(List<Mark> marks) {
        return marks.stream()
                .filter(Mark.Words.class::isInstance)
                .map(Mark.Words.class::cast)
                .toList();
    }

    private static CurvePath box(Mark.Words words) {
        List<Vector2D> corners = new ArrayList<>(words.box());
        corners.add(corners.get(0));
        return CurvePath.polyline(corners.toArray(Vector2D[]::new));
    }

    @ParameterizedTest
    @EnumSource(LineKind.class)
    void noLineIsTooThinToPrint(LineKind kind) {
        assertThat(kind.width()).isGreaterThanOrEqualTo(LineKind.LEAST).isLessThan(1);
        assertThat(LineKind.LEAST).isEqualTo(0.3);
    }

    @ParameterizedTest(name = "bust {0}, {1}")
    @MethodSource("figures")
    void noLettersAreTooSmallToRead(double bust, Scale scale, Figure figure) {
        words(PieceDrawing.of(figure, new Pen(scale.times())))
                .forEach(each -> assertThat(each.size() / scale.times()).isGreaterThanOrEqualTo(2.6));
    }

    /** The widths that Adobe publishes for Helvetica, in thousandths: a 556, m 833, i 222, space 278 (Core 14 AFM files, version 002.000). */
    @Test
    void lettersAreAsWideAsHelvetica() {
        assertThat(Lettering.width("a", 1000)).isBetween(555.0, 557.0);
        assertThat(Lettering.width("mi ", 1000)).isBetween(832.0 + 221 + 277, 834.0 + 223 + 279);
    }

    @Test
    void longWordsAreBrokenBetweenWords() {
        List<String> lines = Lettering.lines("Measure both squares, across and up", 4, 30);
        assertThat(String.join(" ", lines)).isEqualTo("Measure both squares, across and up");
        assertThat(lines).hasSizeGreaterThan(2).allMatch(line -> Lettering.width(line, 4) <= 30);
    }
}
