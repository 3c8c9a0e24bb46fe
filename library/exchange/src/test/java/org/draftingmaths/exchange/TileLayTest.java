package org.draftingmaths.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Bounds2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.block.TorsoBlock;
import org.draftingmaths.finish.Allowances;
import org.draftingmaths.finish.Cutting;
import org.draftingmaths.finish.FinalPattern;
import org.draftingmaths.finish.Marking;
import org.draftingmaths.finish.TitleBlock;
import org.draftingmaths.measure.Ease;
import org.draftingmaths.measure.Measure;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.measure.ProportionRules;
import org.draftingmaths.measure.Wearer;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.draftingmaths.unit.Length;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class TileLayTest {

    static LongStream seeds() {
        return LongStream.range(0, 20);
    }

    private static Piece rectangle(String name, double width, double height) {
        return Drawing.of(name)
                .from(0, 0)
                .edge("low", Role.SEAM)
                .line(width, 0)
                .edge("right", Role.SEAM)
                .line(width, height)
                .edge("top", Role.SEAM)
                .line(0, height)
                .edge("left", Role.SEAM)
                .line(0, 0)
                .grain(width / 2, height / 4, width / 2, height * 3 / 4)
                .piece();
    }

    /** Pieces lie apart and none is turned; together they need no more tiles than each by itself. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void piecesLieApartAndNeedNoMoreTilesThanEachAlone(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Figure> figures = new ArrayList<>();
        for (int i = 0; i < 2 + random.nextInt(9); i++) {
            figures.add(Figure.of("P" + i, rectangle("p" + i, 60 + random.nextInt(600), 60 + random.nextInt(800))));
        }
        Page page = random.nextBoolean() ? Page.A4 : Page.LETTER;
        Sheet sheet = TileLay.of(figures, Pen.PAPER, page);
        assertThat(sheet.places()).hasSameSizeAs(figures);
        for (int i = 0; i < figures.size(); i++) {
            Sheet.Place place = sheet.places().get(i);
            Bounds2D drawn = figures.get(i).outline().bounds();
            assertThat(place.name()).isEqualTo("p" + i);
            assertThat(place.bounds().getDiagonal().distance(drawn.getDiagonal()))
                    .isLessThan(1e-9);
            for (Sheet.Place other : sheet.places().subList(0, i)) {
                assertThat(gap(place.bounds(), other.bounds())).isGreaterThan(5.9);
            }
        }
        int alone = figures.stream()
                .mapToInt(figure -> needed(TileLay.of(List.of(figure), Pen.PAPER, page), page))
                .sum();
        assertThat(needed(sheet, page)).isLessThanOrEqualTo(alone);
        TiledPrint print = TiledPrint.of("lay", Scale.FULL, page, sheet, List.of());
        assertThat(print.printed()).extracting(Tiles.Tile::row).contains(0);
        assertThat(print.printed())
                .extracting(Tiles.Tile::column)
                .contains(print.tiles().columns() - 1);
    }

    private static int needed(Sheet sheet, Page page) {
        return TiledPrint.of("lay", Scale.FULL, page, sheet, List.of())
                .printed()
                .size();
    }

    private static double gap(Bounds2D one, Bounds2D other) {
        return Math.max(
                Math.max(
                        one.getMin().getX() - other.getMax().getX(),
                        other.getMin().getX() - one.getMax().getX()),
                Math.max(
                        one.getMin().getY() - other.getMax().getY(),
                        other.getMin().getY() - one.getMax().getY()));
    }

    /** On a torso there is room everywhere: no side of a frame runs through any words, at no scale. */
    @ParameterizedTest(name = "bust {0}")
    @ValueSource(doubles = {80, 88, 104, 122})
    void wordsStandOffTheJoins(double bust) {
        Measurements body = Measurements.of("size", Wearer.ADULT)
                .with(Measure.BUST, Length.cm(bust))
                .with(Measure.WAIST, Length.cm(bust - 16))
                .with(Measure.HIP, Length.cm(bust + 9))
                .filledBy(ProportionRules.TORSO);
        List<Figure> figures = Stream.of("front", "back")
                .map(name -> TorsoBlock.draft(body, Ease.CLOSE_FITTING).draft().piece(name))
                .map(piece -> Figure.of(
                        "caption",
                        FinalPattern.of(
                                piece,
                                Allowances.of(Length.mm(10)),
                                Marking.DEFAULT,
                                new TitleBlock("Torso", "38", 1, 2, List.of(Cutting.once()), "version 1"))))
                .toList();
        List<Page> pages = List.of(Page.A4, Page.LETTER, new Page("narrow", 200, 260, 15, 18));
        for (Page page : pages) {
            List<Mark.Words> words = words(TileLay.of(figures, Pen.PAPER, page).marks());
            assertThat(words).hasSizeGreaterThan(15);
            assertThat(words).noneMatch(each -> isJoined(each, page));
        }
        // Where the same words stand on pieces that are printed whole, some would be crossed.
        assertThat(words(Sheet.of(figures, Pen.PAPER, 5000, figure -> List.of()).marks()))
                .anyMatch(each -> pages.stream().anyMatch(page -> isJoined(each, page)));
    }

    private static List<Mark.Words> words(List<Mark> marks) {
        return marks.stream()
                .filter(Mark.Words.class::isInstance)
                .map(Mark.Words.class::cast)
                .toList();
    }

    private static boolean isJoined(Mark.Words words, Page page) {
        Bounds2D box = Bounds2D.from(words.box());
        Vector2D min = box.getMin();
        Vector2D max = box.getMax();
        return isCut(min.getX(), max.getX(), page.frameWidth(), page.overlap())
                || isCut(min.getY(), max.getY(), page.frameHeight(), page.overlap());
    }

    /** Whether the left or the right side of any frame lies between two places. */
    private static boolean isCut(double from, double to, double frame, double overlap) {
        double step = frame - overlap;
        return Math.floor(from / step) != Math.floor(to / step)
                || Math.floor((from - overlap) / step) != Math.floor((to - overlap) / step);
    }
}
