package org.draftingmaths.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Arc;
import org.draftingmaths.curve.Cubic;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class SvgTest {

    private static Piece front() {
        return Drawing.of("front & <back>")
                .from(0, 0)
                .edge("waist", Role.SEAM)
                .line(70, 0)
                .dart("waist dart", 90, 150, 110, 0, 20, Leg.BEFORE)
                .line(210, 0)
                .edge("side seam", Role.SEAM)
                .arc(216, 95, 210, 190)
                .edge("top", Role.SEAM)
                .curve(150, 170, 60, 230, 0, 200)
                .edge("centre front", Role.FOLD)
                .line(0, 0)
                .level("level", 0, 100, 300, 100)
                .notch("waist", 65)
                .grain(20, 40, 20, 180)
                .piece();
    }

    private static Document parsed(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
    }

    /** The ends of all moves, straights, cubics and arcs of the net line and the fold, as they are written: y down. */
    private static List<Vector2D> netPoints(Document document) {
        NodeList paths = document.getElementsByTagName("path");
        return IntStream.range(0, paths.getLength())
                .mapToObj(i -> (Element) paths.item(i))
                .filter(path -> List.of("net", "fold").contains(path.getAttribute("class")))
                .flatMap(path -> Pattern.compile("[MLCA]([^MLCAZ]*)")
                        .matcher(path.getAttribute("d"))
                        .results())
                .map(command -> command.group(1).trim().split(" "))
                .map(numbers -> Vector2D.of(
                        Double.parseDouble(numbers[numbers.length - 2]),
                        Double.parseDouble(numbers[numbers.length - 1])))
                .toList();
    }

    /** One user unit is one millimetre: the sheet's size in mm is that of its view box, and every corner lies as it was drafted from the first. */
    @Test
    void isAtTrueScale() throws Exception {
        Document document = parsed(Svg.sheet(Figure.of("Front", front())));
        String width = document.getDocumentElement().getAttribute("width");
        String height = document.getDocumentElement().getAttribute("height");
        assertThat(width).endsWith("mm");
        assertThat(document.getDocumentElement().getAttribute("viewBox"))
                .isEqualTo("0 0 " + width.replace("mm", "") + " " + height.replace("mm", ""));
        List<Vector2D> points = netPoints(document);
        Vector2D home = points.get(0);
        List<Vector2D> corners = new ArrayList<>();
        for (Vector2D point : points) {
            Vector2D corner = Vector2D.of(point.getX() - home.getX(), home.getY() - point.getY());
            if (corners.stream().noneMatch(other -> other.distance(corner) < 1)) {
                corners.add(corner);
            }
        }
        List<Vector2D> drafted = List.of(
                Vector2D.of(0, 0),
                Vector2D.of(70, 0),
                Vector2D.of(110, 0),
                Vector2D.of(210, 0),
                Vector2D.of(210, 190),
                Vector2D.of(0, 200));
        assertThat(corners).hasSameSizeAs(drafted);
        for (int i = 0; i < drafted.size(); i++) {
            assertThat(corners.get(i).distance(drafted.get(i)))
                    .as("written to 1e-4 mm: %s at %s", drafted.get(i), corners.get(i))
                    .isLessThan(2e-4);
        }
    }

    @Test
    void sameBytesInEveryLocaleAndZone() {
        String here = Svg.sheet(Figure.over("Front", front(), front()));
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG"));
            TimeZone.setDefault(TimeZone.getTimeZone("Asia/Tokyo"));
            assertThat(Svg.sheet(Figure.over("Front", front(), front()))).isEqualTo(here);
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    /** By the SVG standard: M, L, C and A with y down; an arc of more than half a turn in two. */
    @Test
    void curvesStayCurves() {
        CurvePath path = CurvePath.of(
                new Cubic(Vector2D.of(0, 0), Vector2D.of(1, 2), Vector2D.of(3, 4), Vector2D.of(5.5, -6.25)),
                Arc.around(Vector2D.of(5.5, 0), Vector2D.of(5.5, -6.25), Vector2D.of(11.75, 0), true));
        assertThat(PathData.open(path)).isEqualTo("M0 0C1 -2 3 -4 5.5 6.25A6.25 6.25 0 0 0 11.75 0");
        assertThat(PathData.open(CurvePath.of(Arc.circle(Vector2D.ZERO, 10))))
                .isEqualTo("M10 0A10 10 0 0 0 -10 0A10 10 0 0 0 10 0");
    }

    @Test
    void namesEverythingAndEscapesIt() throws Exception {
        String svg = Svg.sheet(Figure.of("Front", front()));
        Document document = parsed(svg);
        List<String> texts = IntStream.range(
                        0, document.getElementsByTagName("text").getLength())
                .mapToObj(i -> document.getElementsByTagName("text").item(i).getTextContent())
                .toList();
        assertThat(texts)
                .contains("waist", "side seam", "top", "centre front (fold)", "waist dart", "level")
                .contains("grain of 'front & <back>'");
    }

    @Test
    void anEmptySheetIsRefused() {
        assertThatThrownBy(() -> Svg.sheet(List.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("A sheet needs at least one piece.");
    }
}
