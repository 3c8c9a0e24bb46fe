package org.draftingmaths.lessons;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.StringReader;
import java.util.List;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.check.Checks;
import org.draftingmaths.curve.Arc;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.exchange.Figure;
import org.draftingmaths.ledger.Change;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.piece.Use;
import org.draftingmaths.seam.Walk;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

class ShowTest {

    private static Piece panel(String name, double height) {
        return Drawing.of(name)
                .from(0, 0)
                .edge("hem", Role.HEM)
                .line(120, 0)
                .edge("side", Role.SEAM)
                .line(120, height)
                .edge("top", Role.SEAM)
                .line(0, height)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .piece();
    }

    private static Draft draft(double one, double other) {
        return new Draft(
                "skirt",
                List.of(panel("front", one), panel("back", other)),
                List.of(Seam.flat("side", Seam.Mate.of("front", "side"), Seam.Mate.of("back", "side"))));
    }

    /** 198.2 and 198.6 mm lie on either side of 7 13/16 in: apart they print 7 3/4 and 7 7/8, as mates they print alike. */
    @Test
    void matesThatMatchArePrintedAlike() {
        String table = SeamTable.of(Walk.all(draft(198.2, 198.6)), 0.5);
        assertThat(table).contains("7 3/4 in (19.8 cm)   7 3/4 in (19.8 cm)").contains("-0.40 mm  matches");
        assertThat(SeamTable.of(Walk.all(draft(198.2, 198.8)), 0.5))
                .contains("7 3/4 in (19.8 cm)   7 7/8 in (19.9 cm)")
                .contains("DOES NOT MATCH");
    }

    @Test
    void everythingIsPlainMarkup() {
        Draft draft = draft(200, 204);
        assertThat(Show.seams(draft, 0.5)).startsWith("<table>").contains("<td>-4.00 mm</td><td>does not match</td>");
        assertThat(Show.findings(Checks.all(draft, 0.5))).startsWith("<ul><li>seam 'side'");
        assertThat(Show.findings(List.of()))
                .startsWith("<p>Nothing found. Looked at: outlines on paper; legs, points,")
                .endsWith(
                        "Not looked at: allowances, labels, missing grain lines and seams that nobody declared, which are of the finished style; whether a head goes through; and the fit.</p>");
        assertThat(Show.ledger(Ledger.of(new Change("a < b", Quantity.LENGTH, 10, 10))))
                .isEqualTo("<ol><li>The a &lt; b stays 3/8 in (1.0 cm).</li></ol>");
        assertThat(Show.lengths(panel("front", 200))).contains("<td>side</td><td>7 7/8 in (20.0 cm)</td>");
        assertThat(Show.pieces(Figure.of("Front", panel("front", 200))))
                .startsWith("<svg")
                .contains("viewBox");
    }

    @Test
    void headsOfTablesAreHeads() {
        assertThat(Show.table(List.of("a", "b"), List.of(List.of("1 < 2", "3"))))
                .isEqualTo("<table><thead><tr><th>a</th><th>b</th></tr></thead>"
                        + "<tbody><tr><td>1 &lt; 2</td><td>3</td></tr></tbody></table>");
        assertThat(Show.lengths(panel("front", 200))).startsWith("<table><thead><tr><th>edge</th><th>base</th>");
    }

    /** The panel is 120 by 200 mm, whatever it is drawn over. */
    @Test
    void aReducedPictureSaysTheTrueSize() throws Exception {
        String size = "true size 4 3/4 in (12.0 cm) wide, 7 7/8 in (20.0 cm) high";
        assertThat(texts(Show.piece("Front & more", panel("front", 200)))).contains("Front & more", size);
        assertThat(texts(Show.beforeAndAfter(panel("front", 300), panel("front", 200))))
                .containsSubsequence("Before", "true size 4 3/4 in (12.0 cm) wide, 11 3/4 in (30.0 cm) high")
                .containsSubsequence("After, over what it was", size);
    }

    /** In a half circle of radius 50 mm n chords come to 100 n sin(90 degrees / n): 100, 141.4, 153.1 of 157.1 mm. */
    @Test
    void rulersLieOnTheCurveAndAreSummed() throws Exception {
        CurvePath half = CurvePath.of(new Arc(Vector2D.of(300, -40), 50, 0, Math.PI));
        String svg = Show.chords(half, 1, 2, 4);
        assertThat(texts(svg))
                .containsExactly(
                        "1 ruler: 100.0 of 157.1 mm", "2 rulers: 141.4 of 157.1 mm", "4 rulers: 153.1 of 157.1 mm");
        assertThat(parsed(svg).getElementsByTagName("circle").getLength()).isEqualTo(2 + 3 + 5);
        String[] rulers = points(svg, 3);
        assertThat(rulers).hasSize(3);
        assertThat(distance(rulers[0], rulers[1])).isCloseTo(50 * Math.sqrt(2), within(0.002));
        assertThat(points(svg, 2)).hasSizeGreaterThan(100).startsWith(rulers[0]).endsWith(rulers[2]);
    }

    @Test
    void noRulersAreRefused() {
        CurvePath line = CurvePath.polyline(Vector2D.of(0, 0), Vector2D.of(10, 0));
        assertThatThrownBy(() -> Show.chords(line, 2, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("Lay 1 ruler or more along a curve: [2, 0].");
        assertThatThrownBy(() -> Show.chords(line)).isInstanceOf(IllegalArgumentException.class);
    }

    /** The two halves of the underlay lie on one another and on the seam; the straight end does not reach it, by plain geometry. */
    @Test
    void aFoldedDartShowsItsLayers() throws Exception {
        Piece piece = Drawing.of("piece")
                .from(0, 0)
                .edge("seam", Role.SEAM)
                .line(184, 0)
                .dart("dart", 200, 139, 216, 0, 0, Leg.BEFORE)
                .line(400, 0)
                .edge("rest", Role.SEAM)
                .line(400, 300)
                .line(0, 300)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .piece();
        Piece open = piece.using("dart", new Use.Dart(0, Leg.BEFORE).pressedOpen());
        String svg = Show.folded("dart", Figure.of("to the left", piece), Figure.of("open", open));
        assertThat(texts(svg)).containsExactly("to the left", "open");
        assertThat(points(svg, 2)).isEqualTo(points(svg, 4));
        for (String onSeam : points(svg, 2)) {
            assertThat(point(onSeam).getY()).isCloseTo(0, within(0.001));
        }
        String[] straight = points(svg, 7);
        double half = Math.atan(16.0 / 139);
        double fromTip = 139;
        double up = 139 - fromTip * Math.cos(2 * half);
        assertThat(-point(straight[straight.length - 1]).getY()).isCloseTo(up, within(0.001));
        assertThat(points(svg, 9 + 2)).as("open, the halves lie apart").isNotEqualTo(points(svg, 9 + 4));
        assertThatThrownBy(() -> Show.folded("dart"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("Name 1 piece or more to be shown folded.");
    }

    /** A half circle of 50 mm beside one of 60 mm: every rung is 10 mm long, and 120 mm fill the cell. */
    @Test
    void sketchesShareAScaleAndSayWhatTheirLinesAre() throws Exception {
        CurvePath seam = CurvePath.of(new Arc(Vector2D.of(300, -40), 50, 0, Math.PI));
        CurvePath cut = CurvePath.of(new Arc(Vector2D.of(300, -40), 60, 0, Math.PI));
        Sketch large =
                Sketch.of("Large").seam("seam < cut", seam).cut("cut line", cut).rungs(seam, cut, 5);
        String svg = Show.sketches(
                Sketch.of("Small").seam("seam", seam).lost("lost", seam).lost("lost", seam), large);
        assertThat(texts(svg)).containsExactly("Small", "seam", "lost", "Large", "seam < cut", "cut line");
        String[] outer = points(svg, 4);
        double scale = 120 / distance(outer[0], outer[outer.length - 1]);
        assertThat(distance(outer[0], outer[outer.length - 1])).isCloseTo(352, within(0.02));
        String[] small = points(svg, 0);
        assertThat(distance(small[0], small[small.length - 1]) * scale).isCloseTo(100, within(0.01));
        for (int rung = 5; rung < 10; rung++) {
            String[] ends = points(svg, rung);
            assertThat(ends).hasSize(2);
            assertThat(distance(ends[0], ends[1]) * scale).isCloseTo(10, within(0.01));
        }
        assertThat(parsed(svg).getElementsByTagName("polyline").getLength()).isEqualTo(10);
        assertThat(point(outer[outer.length / 2]).getY())
                .isLessThan(point(outer[0]).getY());
    }

    @Test
    void emptySketchesAreRefused() {
        assertThatThrownBy(() -> Show.sketches()).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Show.sketches(Sketch.of("nothing")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("Show 1 sketch or more, each with a line in it.");
        CurvePath line = CurvePath.polyline(Vector2D.of(0, 0), Vector2D.of(10, 0));
        assertThatThrownBy(() -> Sketch.of("one").rungs(line, line, 1)).hasMessage("Draw 2 rungs or more: 1.");
    }

    private static Document parsed(String svg) throws Exception {
        DocumentBuilder builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
        return builder.parse(new InputSource(new StringReader(svg)));
    }

    private static List<String> texts(String svg) throws Exception {
        var nodes = parsed(svg).getElementsByTagName("text");
        return IntStream.range(0, nodes.getLength())
                .mapToObj(i -> nodes.item(i).getTextContent())
                .toList();
    }

    private static String[] points(String svg, int line) throws Exception {
        var lines = parsed(svg).getElementsByTagName("polyline");
        return lines.item(line)
                .getAttributes()
                .getNamedItem("points")
                .getNodeValue()
                .split(" ", -1);
    }

    private static double distance(String one, String other) {
        return point(one).distance(point(other));
    }

    private static Vector2D point(String text) {
        int comma = text.indexOf(',');
        return Vector2D.of(Double.parseDouble(text.substring(0, comma)), Double.parseDouble(text.substring(comma + 1)));
    }
}
