package org.draftingmaths.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.block.Block;
import org.draftingmaths.block.TorsoBlock;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Inside;
import org.draftingmaths.curve.Meets;
import org.draftingmaths.dart.Darts;
import org.draftingmaths.finish.Allowances;
import org.draftingmaths.finish.Cutting;
import org.draftingmaths.finish.Facings;
import org.draftingmaths.finish.FinalPattern;
import org.draftingmaths.finish.Give;
import org.draftingmaths.finish.Hems;
import org.draftingmaths.finish.Marking;
import org.draftingmaths.finish.TitleBlock;
import org.draftingmaths.measure.Ease;
import org.draftingmaths.measure.Measure;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.measure.ProportionRules;
import org.draftingmaths.measure.Wearer;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
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
        List<Mark> marks = PieceDrawing.of(figure, new Pen(scale.times()), List.of());
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
        for (Mark.Words each : words(PieceDrawing.of(figure, new Pen(scale.times()), List.of()))) {
            assertThat(each.box())
                    .as("'%s'", each.text())
                    .allMatch(corner -> Inside.of(outline, corner) == Inside.Where.INSIDE);
        }
    }

    /** Narrow pieces: facings of 45 and 60 mm and what is turned up, net and finished, reduced as sketches are. */
    static Stream<Arguments> narrow() {
        return Stream.of(80, 104, 122)
                .flatMap(bust -> DoubleStream.of(1, 1.5, 2, 2.5, 3.2, 4)
                        .boxed()
                        .flatMap(factor -> narrow(bust).stream().map(piece -> Arguments.of(bust, factor, piece))));
    }

    private static List<Piece> narrow(double bust) {
        Measurements body = Measurements.of("size", Wearer.ADULT)
                .with(Measure.BUST, Length.cm(bust))
                .with(Measure.WAIST, Length.cm(bust - 16))
                .with(Measure.HIP, Length.cm(bust + 9))
                .filledBy(ProportionRules.TORSO);
        Draft draft = TorsoBlock.draft(body, Ease.CLOSE_FITTING).draft();
        List<Piece> pieces = new ArrayList<>();
        for (String edge : List.of("neckline", "armhole")) {
            List<Facings.On> edges = List.of(new Facings.On("front", edge), new Facings.On("back", edge));
            pieces.addAll(Facings.separate(draft, edge + " facing", edges, edge.equals("armhole") ? 45 : 60)
                    .pieces());
        }
        pieces.add(strip(60));
        pieces.add(strip(35));
        pieces.add(Hems.turnUp(draft.piece("front"), "hem", 30, new Give(0.04, 0.04))
                .piece());
        return pieces;
    }

    /** A tie with the line on which it is folded lengthwise. */
    private static Piece strip(double width) {
        return Drawing.of("tie")
                .from(0, 0)
                .edge("end", Role.SEAM)
                .line(width, 0)
                .edge("one side", Role.SEAM)
                .line(width, 768)
                .edge("other end", Role.SEAM)
                .line(0, 768)
                .edge("other side", Role.SEAM)
                .line(0, 0)
                .level("fold line", width / 2, -10, width / 2, 800)
                .grain(width * 0.75, 120, width * 0.75, 650)
                .piece();
    }

    /** What has no room on a narrow piece stands beside it, whole; nothing runs through it, nor between its lines. */
    @ParameterizedTest(name = "bust {0}, {1}")
    @MethodSource("narrow")
    void wordsStandWhollyOnANarrowPieceOrBesideIt(double bust, double factor, Piece piece) {
        Pen pen = new Pen(factor);
        whole(
                PieceDrawing.of(Figure.of("net", piece), pen, List.of()),
                Paper.outline(piece),
                Paper.outline(piece),
                pen);
        FinalPattern pattern = FinalPattern.of(
                piece,
                Allowances.of(Length.mm(10)),
                Marking.DEFAULT.letters(Length.mm(3.5), Length.mm(2.6)),
                new TitleBlock("Festival tunic", "38", 1, 6, List.of(Cutting.once()), "version 1"));
        if (factor > 1) {
            List<Mark> marks = FinishedDrawing.of(pattern, pen, List.of());
            whole(marks, pattern.net(), pattern.cut().outline(), pen);
            List<Mark.Words> title = words(marks).stream()
                    .filter(each -> each.kind() == TextKind.CAPTION || each.kind() == TextKind.PLAIN)
                    .filter(each -> !each.text().equals("place on the fold"))
                    .toList();
            assertThat(title).hasSize(5);
            for (int i = 1; i < title.size(); i++) {
                Vector2D[] between = {
                    middle(title.get(i - 1)), middle(title.get(i)),
                };
                assertThat(strokes(marks))
                        .allMatch(line ->
                                Meets.of(CurvePath.polyline(between), line).isEmpty());
            }
        }
    }

    private static void whole(List<Mark> marks, CurvePath net, CurvePath cut, Pen pen) {
        List<Mark.Words> words = words(marks);
        assertThat(words).isNotEmpty();
        for (int i = 0; i < words.size(); i++) {
            Mark.Words each = words.get(i);
            CurvePath box = box(each);
            assertThat(each.box().stream().allMatch(corner -> Inside.of(net, corner) == Inside.Where.INSIDE)
                            || each.box().stream().allMatch(corner -> Inside.of(cut, corner) == Inside.Where.OUTSIDE))
                    .as("'%s' on the piece or beside it", each.text())
                    .isTrue();
            assertThat(strokes(marks))
                    .as("lines clear of '%s'", each.text())
                    .allMatch(line -> Meets.of(box, line).isEmpty());
            assertThat(words.subList(0, i))
                    .as("words clear of '%s'", each.text())
                    .allMatch(other -> Meets.of(box, box(other)).isEmpty());
            assertThat(each.size()).isGreaterThanOrEqualTo(pen.mm(TextKind.LEAST) - 1e-9);
        }
    }

    private static List<CurvePath> strokes(List<Mark> marks) {
        return marks.stream()
                .filter(Mark.Stroke.class::isInstance)
                .flatMap(mark -> ((Mark.Stroke) mark).paths().stream())
                .toList();
    }

    private static Vector2D middle(Mark.Words words) {
        return words.box().get(0).lerp(words.box().get(2), 0.5);
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
        words(PieceDrawing.of(figure, new Pen(scale.times()), List.of()))
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
