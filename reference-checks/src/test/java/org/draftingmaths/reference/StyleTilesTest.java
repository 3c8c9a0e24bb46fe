package org.draftingmaths.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Inside;
import org.draftingmaths.exchange.Page;
import org.draftingmaths.exchange.Pdf;
import org.draftingmaths.exchange.Scale;
import org.draftingmaths.exchange.Style;
import org.draftingmaths.finish.FinalPattern;
import org.draftingmaths.lessons.Pattern;
import org.draftingmaths.lessons.styles.ChoirSmock;
import org.draftingmaths.lessons.styles.FerryDress;
import org.draftingmaths.lessons.styles.FestivalTunic;
import org.draftingmaths.lessons.styles.PottersApron;
import org.draftingmaths.lessons.styles.ReadersBlouse;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.measure.ProportionRules;
import org.draftingmaths.measure.Wearer;
import org.draftingmaths.tables.ChartOptions;
import org.draftingmaths.tables.SizeCharts;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The tiles of whole styles, read back as they are drawn: none is blank but those that are cloth all over, together they show every cut line, and they are few. Each page's frame
 * is laid where its own words say; only what lies in the frame counts.
 */
class StyleTilesTest {

    private static final double MM_PER_POINT = 25.4 / 72;

    /** The distance of looked-at points on a drawn line, and the size of the squares in which they are kept, in mm. */
    private static final double FINE = 0.4;

    private static final double SQUARE = 1;

    /** On how many A4 tiles each was printed in size 38 when pieces stood in rows in their order under their captions and every tile was printed. */
    static Stream<Arguments> styles() throws IOException {
        Measurements body = lessonSize();
        return Stream.of(
                Arguments.of(named("apron", PottersApron::draft), body, 25),
                Arguments.of(named("blouse", ReadersBlouse::draft), body, 35),
                Arguments.of(named("tunic", FestivalTunic::draft), body, 25),
                Arguments.of(named("dress", FerryDress::draft), body, 45),
                Arguments.of(named("smock", ChoirSmock::draft), body, 90));
    }

    private static Measurements lessonSize() throws IOException {
        try (InputStream in = Pattern.class.getResourceAsStream("sizes.csv")) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return SizeCharts.parse("sizes.csv", text, ChartOptions.DEFAULT.withWearer(Wearer.ADULT))
                    .size("38")
                    .filledBy(ProportionRules.TORSO);
        }
    }

    private static Named<Function<Measurements, Style>> named(String name, Function<Measurements, Style> style) {
        return Named.of(name, style);
    }

    /** The corners of a tile's frame on the joined sheet, what is seen in it, and where lines begin, seen or not. */
    private record Tile(List<Vector2D> corners, List<Vector2D> seen, List<Vector2D> starts) {}

    @ParameterizedTest(name = "{0}")
    @MethodSource("styles")
    void tilesAreFewAndShowEveryCutLine(Function<Measurements, Style> make, Measurements body, int before)
            throws IOException {
        Style style = make.apply(body);
        Page page = Page.A4;
        List<Tile> tiles = tiles(Pdf.tiles("Tiles", Scale.FULL, page, style.figures()), page);
        assertThat((double) tiles.size() / before).isLessThan(0.75);
        Set<Vector2D> ink = new HashSet<>();
        tiles.forEach(tile -> tile.seen().forEach(point -> ink.add(square(point))));
        List<Vector2D> starts =
                tiles.stream().flatMap(tile -> tile.starts().stream()).toList();
        List<CurvePath> pieces = new ArrayList<>();
        for (FinalPattern pattern : style.patterns()) {
            Optional<CurvePath> shown = shown(pattern.cut().outline(), starts, ink);
            assertThat(shown).as(pattern.piece().name()).isPresent();
            pieces.add(shown.get());
        }
        for (Tile tile : tiles) {
            boolean cloth = pieces.stream()
                    .anyMatch(piece -> tile.corners().stream().allMatch(corner -> Inside.contains(piece, corner)));
            assertThat(cloth || !tile.seen().isEmpty())
                    .as(
                            "ink on the tile at %s, or cloth all over it",
                            tile.corners().get(0))
                    .isTrue();
        }
    }

    private static Vector2D square(Vector2D point) {
        return Vector2D.of(Math.rint(point.getX() / SQUARE), Math.rint(point.getY() / SQUARE));
    }

    /** The outline carried so that some of its joints lies where some line begins, and it lies on ink all round. */
    private static Optional<CurvePath> shown(CurvePath outline, List<Vector2D> starts, Set<Vector2D> ink) {
        return outline.curves().stream()
                .map(curve -> curve.start())
                .flatMap(joint -> starts.stream().map(joint::vectorTo))
                .filter(shift -> isOnInk(outline, shift, ink))
                .map(shift -> outline.transformed(AffineTransformMatrix2D.createTranslation(shift)))
                .findFirst();
    }

    private static boolean isOnInk(CurvePath outline, Vector2D shift, Set<Vector2D> ink) {
        int places = 400;
        for (int i = 0; i < places; i++) {
            Vector2D place = outline.pointAt(outline.length() * i / places).add(shift);
            if (!isNearInk(place, ink)) {
                return false;
            }
        }
        return true;
    }

    private static boolean isNearInk(Vector2D place, Set<Vector2D> ink) {
        Vector2D at = square(place);
        for (int i = -1; i <= 1; i++) {
            for (int j = -1; j <= 1; j++) {
                if (ink.contains(at.add(Vector2D.of(i, j)))) {
                    return true;
                }
            }
        }
        return false;
    }

    private static List<Tile> tiles(byte[] file, Page page) throws IOException {
        List<Tile> tiles = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(file)) {
            for (int i = 2; i < document.getNumberOfPages(); i++) {
                tiles.add(tile(document, i, page));
            }
        }
        return tiles;
    }

    private static Tile tile(PDDocument document, int index, Page page) throws IOException {
        PDFTextStripper text = new PDFTextStripper();
        text.setStartPage(index + 1);
        text.setEndPage(index + 1);
        Matcher place = java.util.regex.Pattern.compile("row (\\d+) of (\\d+), column (\\d+) of")
                .matcher(text.getText(document));
        assertThat(place.find()).isTrue();
        double width = page.width() - 2 * page.margin();
        double height = page.height() - 2 * page.margin();
        Vector2D low = Vector2D.of(
                (Integer.parseInt(place.group(3)) - 1) * (width - page.overlap()),
                (Integer.parseInt(place.group(2)) - Integer.parseInt(place.group(1))) * (height - page.overlap()));
        Vector2D toSheet = low.subtract(Vector2D.of(page.margin(), page.margin()));
        List<Vector2D> seen = new ArrayList<>();
        List<Vector2D> starts = new ArrayList<>();
        List<Double> mm = new ArrayList<>();
        boolean clipped = false;
        Vector2D pen = Vector2D.ZERO;
        Vector2D start = Vector2D.ZERO;
        for (Object token : new PDFStreamParser(document.getPage(index)).parse()) {
            if (token instanceof COSNumber number) {
                mm.add(number.floatValue() * MM_PER_POINT);
            } else if (token instanceof Operator operator) {
                String name = operator.getName();
                clipped = name.equals("W") || (clipped && !name.equals("Q"));
                int n = mm.size();
                if (clipped && List.of("m", "l", "c").contains(name)) {
                    Vector2D to = Vector2D.of(mm.get(n - 2), mm.get(n - 1)).add(toSheet);
                    if (name.equals("m")) {
                        starts.add(to);
                        start = to;
                    } else if (name.equals("l")) {
                        straight(pen, to, seen);
                    } else {
                        Vector2D one = Vector2D.of(mm.get(0), mm.get(1)).add(toSheet);
                        Vector2D other = Vector2D.of(mm.get(2), mm.get(3)).add(toSheet);
                        cubic(pen, one, other, to, seen);
                    }
                    pen = to;
                } else if (clipped && name.equals("h")) {
                    straight(pen, start, seen);
                    pen = start;
                }
                mm.clear();
            }
        }
        seen.removeIf(point -> point.getX() < low.getX()
                || point.getY() < low.getY()
                || point.getX() > low.getX() + width
                || point.getY() > low.getY() + height);
        Vector2D across = Vector2D.of(width, 0);
        Vector2D up = Vector2D.of(0, height);
        return new Tile(List.of(low, low.add(across), low.add(across).add(up), low.add(up)), seen, starts);
    }

    private static void straight(Vector2D from, Vector2D to, List<Vector2D> seen) {
        int parts = (int) Math.ceil(from.distance(to) / FINE) + 1;
        for (int i = 0; i <= parts; i++) {
            seen.add(from.lerp(to, (double) i / parts));
        }
    }

    private static void cubic(Vector2D from, Vector2D one, Vector2D other, Vector2D to, List<Vector2D> seen) {
        double most = from.distance(one) + one.distance(other) + other.distance(to);
        int parts = (int) Math.ceil(most / FINE) + 1;
        for (int i = 0; i <= parts; i++) {
            double t = (double) i / parts;
            double s = 1 - t;
            seen.add(from.multiply(s * s * s)
                    .add(one.multiply(3 * s * s * t))
                    .add(other.multiply(3 * s * t * t))
                    .add(to.multiply(t * t * t)));
        }
    }
}
