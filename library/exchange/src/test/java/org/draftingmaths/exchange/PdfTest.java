package org.draftingmaths.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What stands in the file is read back with PDFBox: operators and their numbers, in points of 1/72 in. */
class PdfTest {

    private static final double MM_PER_POINT = 25.4 / 72;

    /** One operator of a page with its numbers in mm. */
    private record Drawn(String operator, List<Double> mm) {
        Vector2D last() {
            return Vector2D.of(mm.get(mm.size() - 2), mm.get(mm.size() - 1));
        }
    }

    /** Larger than a page, with a straight, a cubic, an arc and a dart. */
    private static Piece front() {
        return Drawing.of("front")
                .from(0, 0)
                .edge("waist", Role.SEAM)
                .line(70, 0)
                .dart("waist dart", 90, 150, 110, 0, 20, Leg.BEFORE)
                .line(310, 0)
                .edge("side seam", Role.SEAM)
                .arc(316, 195, 310, 390)
                .edge("top", Role.SEAM)
                .curve(250, 370, 60, 430, 0, 400)
                .edge("centre front", Role.FOLD)
                .line(0, 0)
                .level("level", 0, 100, 400, 100)
                .notch("waist", 65)
                .grain(20, 40, 20, 180)
                .piece();
    }

    private static List<Figure> figures() {
        return List.of(Figure.of("Front", front()).labelled("front", "piece 1 of 1", "size 38", "cut 1 on the fold"));
    }

    private static List<Drawn> drawn(PDPage page) throws IOException {
        List<Drawn> all = new ArrayList<>();
        List<Double> numbers = new ArrayList<>();
        for (Object token : new PDFStreamParser(page).parse()) {
            if (token instanceof COSNumber number) {
                numbers.add(number.floatValue() * MM_PER_POINT);
            } else if (token instanceof Operator operator) {
                all.add(new Drawn(operator.getName(), List.copyOf(numbers)));
                numbers.clear();
            }
        }
        return all;
    }

    /** Where the pen goes on a page: the ends of every move, straight and cubic. */
    private static List<Vector2D> points(PDPage page) throws IOException {
        return drawn(page).stream()
                .filter(each -> List.of("m", "l", "c").contains(each.operator()))
                .map(Drawn::last)
                .toList();
    }

    private static boolean has(List<Vector2D> points, Vector2D wanted) {
        return points.stream().anyMatch(point -> point.distance(wanted) < 2e-4);
    }

    /** The rectangles on a page: four straights after a move, back to its start. */
    private static List<double[]> squares(PDPage page) throws IOException {
        List<Drawn> all = drawn(page);
        return IntStream.range(0, all.size() - 4)
                .filter(i -> all.get(i).operator().equals("m"))
                .filter(i -> IntStream.range(1, 5)
                        .allMatch(j -> all.get(i + j).operator().equals("l")))
                .filter(i -> all.get(i).last().distance(all.get(i + 4).last()) < 1e-4)
                .mapToObj(i -> new double[] {
                    all.get(i).last().distance(all.get(i + 1).last()),
                    all.get(i + 1).last().distance(all.get(i + 2).last())
                })
                .toList();
    }

    private static PDDocument read(byte[] file) throws IOException {
        return Loader.loadPDF(file);
    }

    @ParameterizedTest
    @EnumSource(Scale.class)
    void firstPageHasATestSquareInEitherUnitWhateverTheScale(Scale scale) throws IOException {
        for (byte[] file : List.of(
                Pdf.tiles("Front", scale, Page.A4, figures()),
                Pdf.tiles("Front", scale, Page.LETTER, figures()),
                Pdf.sheet("Front", scale, figures()))) {
            try (PDDocument document = read(file)) {
                List<double[]> squares = squares(document.getPage(0));
                assertThat(squares).hasSize(2);
                for (int axis = 0; axis < 2; axis++) {
                    assertThat(squares.get(0)[axis]).isCloseTo(100, within(2e-4));
                    assertThat(squares.get(1)[axis]).isCloseTo(4 * 25.4, within(2e-4));
                }
            }
        }
    }

    /** Every corner of the piece stands on the sheet where it should, relative to its first, at 1, 1/2, 1/4. */
    @ParameterizedTest
    @EnumSource(Scale.class)
    void pieceIsAtItsScale(Scale scale) throws IOException {
        double times = Map.of(Scale.FULL, 1, Scale.HALF, 2, Scale.QUARTER, 4).get(scale);
        try (PDDocument document = read(Pdf.sheet("Front", scale, figures()))) {
            List<Vector2D> points = points(document.getPage(0));
            List<Vector2D> corners = List.of(
                    Vector2D.of(0, 0),
                    Vector2D.of(70, 0),
                    Vector2D.of(310, 0),
                    Vector2D.of(310, 390),
                    Vector2D.of(0, 400));
            List<Vector2D> home = points.stream()
                    .filter(origin ->
                            corners.stream().allMatch(corner -> has(points, origin.add(corner.multiply(1 / times)))))
                    .toList();
            assertThat(home).isNotEmpty();
        }
    }

    /** The one cubic of the piece is one cubic on paper, with its own handles: nothing is flattened. */
    @Test
    void curvesAreCurves() throws IOException {
        try (PDDocument document = read(Pdf.sheet("Front", Scale.FULL, figures()))) {
            List<Drawn> all = drawn(document.getPage(0));
            assertThat(IntStream.range(1, all.size()).filter(i -> isTheTop(all.get(i - 1), all.get(i))))
                    .hasSize(1);
        }
    }

    private static boolean isTheTop(Drawn before, Drawn curve) {
        if (!curve.operator().equals("c") || before.mm().size() < 2) {
            return false;
        }
        Vector2D home = before.last().subtract(Vector2D.of(310, 390));
        List<Double> mm = curve.mm();
        return home.add(Vector2D.of(250, 370)).distance(Vector2D.of(mm.get(0), mm.get(1))) < 2e-4
                && home.add(Vector2D.of(60, 430)).distance(Vector2D.of(mm.get(2), mm.get(3))) < 2e-4
                && home.add(Vector2D.of(0, 400)).distance(curve.last()) < 2e-4;
    }

    static Stream<Page> pages() {
        return Stream.of(Page.A4, Page.LETTER, new Page("narrow", 200, 260, 15, 18));
    }

    /** A tile page as its place in the joined sheet says: what is added to its points, from its own words "row r of n, column c of m". */
    private record TilePage(List<Drawn> drawn, Vector2D toSheet, int rows, int columns) {
        private static final Pattern PLACE = Pattern.compile("row (\\d+) of (\\d+), column (\\d+) of (\\d+)");

        static TilePage of(PDDocument document, int index, Page page) throws IOException {
            Matcher place = PLACE.matcher(text(document, index));
            assertThat(place.find()).isTrue();
            int row = Integer.parseInt(place.group(1));
            int rows = Integer.parseInt(place.group(2));
            int column = Integer.parseInt(place.group(3));
            Vector2D toSheet = Vector2D.of(
                    (column - 1) * (page.width() - 2 * page.margin() - page.overlap()) - page.margin(),
                    (rows - row) * (page.height() - 2 * page.margin() - page.overlap()) - page.margin());
            return new TilePage(
                    PdfTest.drawn(document.getPage(index)), toSheet, rows, Integer.parseInt(place.group(4)));
        }

        /** Where the cubic begins, on the joined sheet. */
        Stream<Vector2D> starts() {
            return IntStream.range(1, drawn.size())
                    .filter(i -> isTheTop(drawn.get(i - 1), drawn.get(i)))
                    .mapToObj(i -> drawn.get(i - 1).last().add(toSheet));
        }

        /** The middles of crosses 8 mm wide, on the joined sheet. */
        Stream<Vector2D> crosses() {
            return IntStream.range(0, drawn.size() - 3)
                    .filter(this::isCross)
                    .mapToObj(i -> drawn.get(i)
                            .last()
                            .lerp(drawn.get(i + 1).last(), 0.5)
                            .add(toSheet));
        }

        /** Those of them about which a ring of 2.5 mm is drawn. */
        Stream<Vector2D> ringedCrosses() {
            return crosses()
                    .filter(middle -> drawn.stream()
                                    .filter(each -> each.operator().equals("c"))
                                    .map(each -> each.last().add(toSheet).distance(middle))
                                    .filter(radius -> Math.abs(radius - 2.5) < 1e-3)
                                    .count()
                            >= 2);
        }

        private boolean isCross(int i) {
            String operators =
                    drawn.subList(i, i + 4).stream().map(Drawn::operator).collect(Collectors.joining());
            if (!operators.equals("mlml")) {
                return false;
            }
            Vector2D across = drawn.get(i).last().vectorTo(drawn.get(i + 1).last());
            Vector2D up = drawn.get(i + 2).last().vectorTo(drawn.get(i + 3).last());
            return across.distance(Vector2D.of(8, 0)) < 1e-3 && up.distance(Vector2D.of(0, 8)) < 1e-3;
        }
    }

    private static String text(PDDocument document, int index) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(index + 1);
        stripper.setEndPage(index + 1);
        return stripper.getText(document);
    }

    private static List<TilePage> tiles(PDDocument document, Page page) throws IOException {
        List<TilePage> tiles = new ArrayList<>();
        for (int i = 2; i < document.getNumberOfPages(); i++) {
            tiles.add(TilePage.of(document, i, page));
        }
        return tiles;
    }

    private static List<Vector2D> apart(Stream<Vector2D> points) {
        List<Vector2D> apart = new ArrayList<>();
        points.filter(point -> !has(apart, point)).forEachOrdered(apart::add);
        return apart;
    }

    /** Laid by frames and overlap, all tiles that show the curve show it at one place; each is cut off at its frame. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("pages")
    void tilesLaidTogetherAreOneSheet(Page page) throws IOException {
        try (PDDocument document = read(Pdf.tiles("Front", Scale.FULL, page, figures()))) {
            List<TilePage> tiles = tiles(document, page);
            TilePage any = tiles.get(0);
            assertThat(tiles).hasSize(any.rows() * any.columns()).hasSizeGreaterThan(3);
            assertThat(tiles.stream().filter(tile -> tile.starts().count() == 1))
                    .hasSizeGreaterThan(1);
            assertThat(apart(tiles.stream().flatMap(TilePage::starts))).hasSize(1);
            for (TilePage tile : tiles) {
                List<Double> frame = tile.drawn().stream()
                        .filter(each -> each.operator().equals("re"))
                        .map(Drawn::mm)
                        .findFirst()
                        .orElseThrow();
                assertThat(frame.get(0)).isCloseTo(page.margin(), within(1e-4));
                assertThat(frame.get(1)).isCloseTo(page.margin(), within(1e-4));
                assertThat(frame.get(2)).isCloseTo(page.width() - 2 * page.margin(), within(1e-4));
                assertThat(frame.get(3)).isCloseTo(page.height() - 2 * page.margin(), within(1e-4));
            }
        }
    }

    /**
     * Every tile shows four crosses by which it is joined, and neighbours show the same ones: n by m tiles have (n + 1)(m + 1) in
     * all. Two more, in rings, mark the ends of the long diagonal, and lie as far apart as is printed beside them.
     */
    @ParameterizedTest(name = "{0}")
    @MethodSource("pages")
    void neighboursShareTheirCrosses(Page page) throws IOException {
        try (PDDocument document = read(Pdf.tiles("Front", Scale.FULL, page, figures()))) {
            List<TilePage> tiles = tiles(document, page);
            int corners = (tiles.get(0).rows() + 1) * (tiles.get(0).columns() + 1);
            List<Vector2D> all = apart(tiles.stream().flatMap(TilePage::crosses));
            assertThat(all).hasSize(corners + 2);
            Matcher said =
                    Pattern.compile("A: to B it is .*?\\(([0-9.]+) cm\\)").matcher(allText(document));
            assertThat(said.find()).isTrue();
            double cm = Double.parseDouble(said.group(1));
            List<Vector2D> ringed = apart(tiles.stream().flatMap(TilePage::ringedCrosses));
            assertThat(ringed).hasSize(2);
            Vector2D span = ringed.get(0).vectorTo(ringed.get(1));
            assertThat(span.getX() * span.getY())
                    .as("from a lower corner to the upper opposite")
                    .isPositive();
            assertThat(span.norm()).as("printed to the millimetre").isCloseTo(10 * cm, within(0.5));
        }
    }

    private static String allText(PDDocument document) throws IOException {
        return new PDFTextStripper().getText(document);
    }

    @Test
    void saysWhatToDoAndWarns() throws IOException {
        try (PDDocument document = read(Pdf.tiles("Front", Scale.FULL, Page.A4, figures()))) {
            assertThat(text(document, 0).replaceAll("\\s+", " "))
                    .contains("Measure both squares, across and up")
                    .contains("Sew a toile")
                    .contains("can strangle")
                    .contains("no allowances are drawn");
            assertThat(text(document, 1)).contains("Map").contains("A1").contains("B2");
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = Scale.class,
            names = {"HALF", "QUARTER"})
    void aReducedPrintSaysSoOnEveryPage(Scale scale) throws IOException {
        try (PDDocument document = read(Pdf.tiles("Front", scale, Page.A4, figures()))) {
            for (int i = 0; i < document.getNumberOfPages(); i++) {
                assertThat(text(document, i)).contains(scale + " SCALE, for the classroom");
            }
        }
    }

    @Test
    void asksNotToBeScaledEmbedsItsLettersAndHoldsNoDate() throws IOException {
        try (PDDocument document = read(Pdf.tiles("Front", Scale.FULL, Page.A4, figures()))) {
            assertThat(document.getDocumentCatalog().getViewerPreferences().getPrintScaling())
                    .isEqualTo("None");
            assertThat(document.getDocumentInformation().getCreationDate()).isNull();
            assertThat(document.getDocumentInformation().getModificationDate()).isNull();
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    assertThat(page.getResources().getFont(name).isEmbedded()).isTrue();
                }
            }
        }
    }

    @Test
    void sameBytesInEveryLocaleAndZone() {
        byte[] here = Pdf.tiles("Front", Scale.FULL, Page.A4, figures());
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG"));
            TimeZone.setDefault(TimeZone.getTimeZone("Asia/Tokyo"));
            assertThat(Pdf.tiles("Front", Scale.FULL, Page.A4, figures())).isEqualTo(here);
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    static Stream<Arguments> badPages() {
        return Stream.of(
                Arguments.of(20, 297, 12, 10, "a width of 20.0 mm"),
                Arguments.of(210, 24, 12, 10, "a height of 24.0 mm"),
                Arguments.of(0, 297, 12, 10, "a width of 0.0 mm"),
                Arguments.of(-210, 297, 12, 10, "a width of -210.0 mm"),
                Arguments.of(Double.NaN, 297, 12, 10, "a width of NaN mm"),
                Arguments.of(Double.POSITIVE_INFINITY, 297, 12, 10, "a width of Infinity mm"),
                Arguments.of(210, Double.NaN, 12, 10, "a height of NaN mm"),
                Arguments.of(210, 297, 0, 10, "margins of 0.0 mm"),
                Arguments.of(210, 297, Double.NaN, 10, "margins of NaN mm"),
                Arguments.of(210, 297, 12, 0, "an overlap of 0.0 mm"),
                Arguments.of(210, 297, 12, Double.NaN, "an overlap of NaN mm"),
                Arguments.of(210, 297, 12, 200, "an overlap of 200.0 mm"));
    }

    @ParameterizedTest(name = "{4}")
    @MethodSource("badPages")
    void aPageThatCannotBeIsRefusedWithTheRange(
            double width, double height, double margin, double overlap, String what) {
        assertThatThrownBy(() -> new Page("odd", width, height, margin, overlap))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("Page 'odd' has " + what + "; allowed");
    }

    @Test
    void aPageSmallerThanItsMarginsNamesTheRange() {
        assertThatThrownBy(() -> new Page("card", 20, 297, 12, 10))
                .hasMessage(
                        "Page 'card' has a width of 20.0 mm; allowed with the test squares and its margins is 194.0 to"
                                + " 5080.0 mm.");
    }

    @Test
    void aSheetLargerThanAPdfPageIsRefused() {
        Piece sail = Drawing.of("sail")
                .from(0, 0)
                .edge("foot", Role.SEAM)
                .line(6000, 0)
                .edge("luff", Role.SEAM)
                .line(6000, 100)
                .edge("leech", Role.SEAM)
                .line(0, 0)
                .piece();
        assertThatThrownBy(() -> Pdf.sheet("Sail", Scale.FULL, List.of(Figure.of("Sail", sail))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("sides of at most 5080.0 mm");
        assertThat(Pdf.sheet("Sail", Scale.HALF, List.of(Figure.of("Sail", sail))))
                .isNotEmpty();
    }

    @Test
    void lettersOfManyTonguesArePrintedAndOthersRefused() throws IOException {
        byte[] file = Pdf.sheet("Ärmel, рукав", Scale.FULL, List.of(Figure.of("Ärmel, рукав, μανίκι", front())));
        try (PDDocument document = read(file)) {
            assertThat(text(document, 0)).contains("Ärmel, рукав, μανίκι");
        }
        assertThatThrownBy(() -> Pdf.sheet("Sleeve", Scale.FULL, List.of(Figure.of("\u8896", front()))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("CJK UNIFIED IDEOGRAPHS 8896");
    }

    @Test
    void anEmptySheetIsRefused() {
        assertThatThrownBy(() -> Pdf.sheet("Nothing", Scale.FULL, List.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("A sheet needs at least one piece.");
    }
}
