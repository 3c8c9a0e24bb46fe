package org.draftingmaths.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Inside;
import org.draftingmaths.curve.Meets;
import org.draftingmaths.curve.Nearest;
import org.draftingmaths.finish.Allowances;
import org.draftingmaths.finish.Cutting;
import org.draftingmaths.finish.FinalPattern;
import org.draftingmaths.finish.Marking;
import org.draftingmaths.finish.TitleBlock;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.draftingmaths.unit.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class FinishedDrawingTest {

    private static final double WIDTH = 10;

    private static Piece piece(Role centre) {
        return Drawing.of("front")
                .from(0, 0)
                .edge("waist", Role.SEAM)
                .line(100, 0)
                .dart("waist dart", 115, 180, 130, 0, 20, Leg.BEFORE)
                .line(310, 0)
                .edge("side seam", Role.SEAM)
                .curve(315, 130, 312, 260, 300, 390)
                .edge("top", Role.SEAM)
                .curve(200, 380, 100, 400, 0, 400)
                .edge("centre front", centre)
                .line(0, 0)
                .level("bust line", 0, 220, 400, 220)
                .notch("side seam", 120)
                .grain(40, 40, 40, 200)
                .piece();
    }

    private static FinalPattern pattern(Role centre) {
        return FinalPattern.of(
                piece(centre),
                Allowances.of(Length.mm(WIDTH)),
                Marking.DEFAULT,
                new TitleBlock("Skirt", "38", 1, 2, List.of(Cutting.once()), ""));
    }

    private static List<CurvePath> strokes(List<Mark> marks, LineKind kind) {
        return marks.stream()
                .filter(mark -> mark instanceof Mark.Stroke stroke && stroke.kind() == kind)
                .flatMap(mark -> ((Mark.Stroke) mark).paths().stream())
                .toList();
    }

    private static double length(List<CurvePath> paths) {
        return paths.stream().mapToDouble(CurvePath::length).sum();
    }

    /** Nobody is told to cut along the fold: cut lines and fold together are the whole outline, and apart from it but for their ends. */
    @Test
    void theFoldIsNotACutLine() {
        FinalPattern pattern = pattern(Role.FOLD);
        List<Mark> marks = FinishedDrawing.of(pattern, Pen.PAPER, List.of());
        List<CurvePath> cut = strokes(marks, LineKind.CUT);
        List<CurvePath> fold = strokes(marks, LineKind.FOLD);
        assertThat(fold).hasSize(1);
        assertThat(cut).hasSize(1);
        assertThat(length(cut) + length(fold)).isCloseTo(pattern.cut().outline().length(), within(1e-6));
        assertThat(Nearest.of(cut.get(0), fold.get(0).pointAt(length(fold) / 2)).distance())
                .isGreaterThan(100);
        assertThat(cut.get(0).start())
                .satisfies(point -> assertThat(point.getX()).isCloseTo(0, within(1e-6)));
        assertThat(cut.get(0).end()).satisfies(point -> assertThat(point.getX()).isCloseTo(0, within(1e-6)));
    }

    @Test
    void withoutAFoldTheWholeOutlineIsCut() {
        FinalPattern pattern = pattern(Role.SEAM);
        List<CurvePath> cut = strokes(FinishedDrawing.of(pattern, Pen.PAPER, List.of()), LineKind.CUT);
        assertThat(length(cut)).isCloseTo(pattern.cut().outline().length(), within(1e-9));
    }

    @Test
    void everySnipAndDrillPointIsDrawn() {
        FinalPattern pattern = pattern(Role.FOLD);
        List<Mark> marks = FinishedDrawing.of(pattern, Pen.PAPER, List.of());
        assertThat(pattern.snips()).hasSizeGreaterThan(4);
        assertThat(strokes(marks, LineKind.NOTCH)).hasSameSizeAs(pattern.snips());
        assertThat(strokes(marks, LineKind.NOTCH))
                .allSatisfy(snip -> assertThat(Nearest.of(pattern.cut().outline(), snip.start())
                                .distance())
                        .isLessThan(1e-6));
        assertThat(strokes(marks, LineKind.DRILL)).hasSize(3 * pattern.drills().size());
        assertThat(pattern.drills()).hasSize(1);
    }

    /** Words stand within the stitch line, clear of it, of darts and of one another, at every scale. */
    @ParameterizedTest
    @EnumSource(Scale.class)
    void wordsStandInsideTheStitchLine(Scale scale) {
        FinalPattern pattern = pattern(Role.FOLD);
        List<Mark> marks = FinishedDrawing.of(pattern, new Pen(scale.times()), List.of());
        List<Mark.Words> words = marks.stream()
                .filter(Mark.Words.class::isInstance)
                .map(Mark.Words.class::cast)
                .toList();
        assertThat(words)
                .extracting(Mark.Words::text)
                .contains(
                        "front, piece 1 of 2", "size 38", "cut 1 on the fold, self", "place on the fold", "bust line");
        for (int i = 0; i < words.size(); i++) {
            CurvePath box = box(words.get(i));
            assertThat(words.get(i).size() / scale.times()).isGreaterThanOrEqualTo(TextKind.LEAST);
            assertThat(words.get(i).box()).allMatch(corner -> Inside.of(pattern.net(), corner) == Inside.Where.INSIDE);
            assertThat(Stream.of(LineKind.STITCH, LineKind.CUT, LineKind.LEG)
                            .flatMap(kind -> strokes(marks, kind).stream()))
                    .allMatch(path -> Meets.of(box, path).isEmpty());
            assertThat(words.subList(0, i))
                    .allMatch(other -> Meets.of(box, box(other)).isEmpty());
        }
    }

    private static CurvePath box(Mark.Words words) {
        List<Vector2D> corners = new ArrayList<>(words.box());
        corners.add(corners.get(0));
        return CurvePath.polyline(corners.toArray(Vector2D[]::new));
    }

    @Test
    void aFinishedPieceIsNotSaidToLackAllowances() throws Exception {
        assertThat(text(Figure.of("Front", pattern(Role.FOLD)))).doesNotContain("no allowances");
        assertThat(text(Figure.of("Front", piece(Role.FOLD)))).contains("no allowances");
    }

    private static String text(Figure figure) throws Exception {
        try (PDDocument document = Loader.loadPDF(Pdf.sheet("Front", Scale.FULL, List.of(figure)))) {
            return new PDFTextStripper().getText(document);
        }
    }

    @Test
    void aFinishedPieceHasItsOwnLabel() {
        Figure finished = Figure.of("Front", pattern(Role.FOLD));
        assertThatThrownBy(() -> finished.labelled("front"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("The finished piece 'front' has its own marks and labels");
    }
}
