package org.draftingmaths.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Cubic;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.piece.Edge;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SvgOutlinesTest {

    private static final String HEAD =
            "<svg xmlns='http://www.w3.org/2000/svg' width='400mm' height='300mm' viewBox='0 0 400 300'>\n";

    private static Traced traced(String body) {
        return traced(body, SvgOptions.DEFAULT);
    }

    private static Traced traced(String body, SvgOptions options) {
        return SvgOutlines.parse("test.svg", HEAD + body + "\n</svg>\n", options, Limits.DEFAULT);
    }

    private static Piece only(Traced traced) {
        assertThat(traced.draft().pieces()).hasSize(1);
        return traced.draft().pieces().get(0);
    }

    private static List<String> edges(Piece piece) {
        return piece.edges().stream().map(Edge::name).toList();
    }

    @Test
    void aClosedShapeIsAPieceCutAtItsCorners() {
        Traced traced = traced("<path id='pocket' d='M10 10 h100 v60 C110 90 90 110 60 110 S10 90 10 70 z'/>");
        Piece pocket = only(traced);
        assertThat(traced.draft().name()).isEqualTo("test");
        assertThat(pocket.name()).isEqualTo("pocket");
        assertThat(edges(pocket)).containsExactly("edge 1", "edge 2");
        assertThat(traced.findings()).isEmpty();
        assertThat(Paper.outline(pocket).area()).isPositive();
        assertThat(pocket.edges()).extracting(Edge::role).containsOnly(Role.SEAM);
        Piece finer = only(traced(
                "<path id='p' d='M10 10 h100 v60 L 90 100 L60 110 L 30 100 L10 70 z'/>",
                SvgOptions.DEFAULT.withCorner(Math.toRadians(10))));
        assertThat(finer.edges()).hasSize(7);
    }

    /** Drawn with y down and taken with y up: what is seen does not change. */
    @Test
    void upStaysUp() {
        Piece piece = only(traced("<polygon id='a' points='0,0 100,0 0,50'/>"));
        assertThat(piece.area()).isCloseTo(2500, within(1e-9));
        assertThat(Paper.outline(piece).bounds().getMin()).isEqualTo(Vector2D.of(0, -50));
    }

    @Test
    void theOpenShapesOfAGroupAreTheEdgesOfAPiece() {
        Piece front = only(traced("""
                <g id='front'>
                  <line id='hem' class='hem' x1='10' y1='200' x2='210' y2='200'/>
                  <path id='centre front' class='fold' d='M10 200 V20'/>
                  <polyline id='side seam' points='210 200, 190 100, 195 60'/>
                  <path id='waist' class='thick style-line' d='M 10 20 Q 100 20 195 60'/>
                  <line id='straight grain' class='grain' x1='60' y1='180' x2='60' y2='60'/>
                </g>
                """));
        assertThat(front.name()).isEqualTo("front");
        assertThat(edges(front)).containsExactly("hem", "side seam", "waist", "centre front");
        assertThat(front.edges())
                .extracting(Edge::role)
                .containsExactly(Role.HEM, Role.SEAM, Role.STYLE_LINE, Role.FOLD);
        assertThat(front.grain().orElseThrow().direction().distance(Vector2D.of(0, 1)))
                .isLessThan(1e-12);
        Cubic waist = (Cubic) front.edge("waist").base().curves().get(0);
        assertThat(waist.startHandle().distance(waist.start().lerp(Vector2D.of(100, -20), 2.0 / 3)))
                .isLessThan(1e-12);
    }

    /** A line with corners in it gives numbered edges; what has no id is numbered round the piece. */
    @Test
    void cornersAndMissingIdsGetNumbers() {
        Piece piece = only(traced("<g id='a'><polyline id='top' points='100,30 50,30 50,0 0,0'/>"
                + "<polyline points='100,30 100,90 0,90'/><line x1='0' y1='90' x2='0' y2='0'/></g>"));
        assertThat(edges(piece)).containsExactly("top 1", "top 2", "top 3", "edge 4", "edge 5", "edge 6");
    }

    @Test
    void gapsAreClosedWithinTheToleranceOrReported() {
        String body = "<g id='a'><polyline id='one' points='0,0 0,90 100,90'/>"
                + "<polyline id='two' points='100.05,90 100,0 0,0'/></g>";
        Traced closed = traced(body);
        assertThat(closed.findings()).isEmpty();
        assertThat(closed.notes())
                .containsExactly("Closed a gap of 0.050 mm of 'a' at (100.1, -90.0), between 'one' and 'two'.");
        assertThat(Paper.outline(only(closed)).closes(1e-6)).isTrue();
        Traced open = traced(body, SvgOptions.DEFAULT.withGap(0.01));
        assertThat(open.draft().pieces()).isEmpty();
        assertThat(open.findings()).hasSize(1);
        Finding finding = open.findings().get(0);
        assertThat(finding.kind()).isEqualTo(Finding.Kind.OUTLINE_OPEN);
        assertThat(finding.measured()).isCloseTo(0.05, within(1e-12));
        assertThat(finding.tolerance()).isEqualTo(0.01);
        assertThat(finding.where()).contains("'a'").contains("'one'").contains("'two'");
    }

    @Test
    void aSecondRingIsReportedAndTheLargestTaken() {
        Traced traced = traced("<path id='a' d='M40 40h20v20h-20z M0 0h100v100h-100z'/>"
                + "<rect id='b' x='200' y='0' width='10' height='10'/>");
        assertThat(traced.draft().pieces()).extracting(Piece::name).containsExactly("a", "b");
        assertThat(traced.draft().piece("a").area()).isCloseTo(10_000, within(1e-9));
        assertThat(traced.findings()).extracting(Finding::kind).containsExactly(Finding.Kind.SECOND_RING);
        assertThat(traced.findings().get(0).measured()).isEqualTo(2);
    }

    /** Closed forms: the circle's length and the ellipse's area, under a turn and a scale. */
    @Test
    void roundShapesKeepTheirSize() {
        Piece circle = only(traced("<circle id='c' cx='100' cy='100' r='50'/>"));
        assertThat(edges(circle)).containsExactly("edge 1");
        assertThat(Paper.outline(circle).length()).isCloseTo(100 * Math.PI, within(1e-6));
        Piece ellipse = only(traced("<g transform='rotate(20 5 5)'><g transform='scale(2 1)'>"
                + "<ellipse id='e' cx='50' cy='100' rx='10' ry='30' transform='translate(3,4)'/></g></g>"));
        assertThat(ellipse.area()).isCloseTo(Math.PI * 20 * 30, within(1e-3));
        Piece rounded = only(traced("<rect id='r' x='1' y='1' width='60' height='40' rx='10' ry='5'/>"));
        assertThat(rounded.area()).isCloseTo(60 * 40 - (4 - Math.PI) * 10 * 5, within(1e-3));
    }

    /** A square of 100 user units, and how many mm its side is. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            width='200mm' viewBox='0 0 200 100'                       | 100
            width='20cm' viewBox='0 0 200 100'                        | 100
            width='8in' viewBox='0 0 200 100'                         | 101.6
            width='720pt' height='360pt' viewBox='0 0 200 100'        | 127
            width='40pc' viewBox='0 0 200 100'                        | 84.66666666666667
            width='400Q' viewBox='0 0 200 100'                        | 50
            height='50mm' viewBox='-10 -10 200 100'                   | 50
            width='200mm' height='60mm' viewBox='0 0 200 100'         | 60
            width='200mm' height='60mm' viewBox='0 0 200 100' preserveAspectRatio='xMinYMin slice' | 100
            width='300mm' height='200mm'                              | 26.458333333333332
            """)
    void theScaleIsWhatTheFileStates(String root, double side) {
        String file =
                "<svg xmlns='http://www.w3.org/2000/svg' " + root + "><rect id='r' width='100' height='100'/></svg>";
        Piece piece = only(SvgOutlines.parse("t.svg", file, SvgOptions.DEFAULT, Limits.DEFAULT));
        assertThat(piece.edges().get(0).length()).isCloseTo(side, within(1e-9));
        Piece told = only(SvgOutlines.parse("t.svg", file, SvgOptions.DEFAULT.withUnit(0.5), Limits.DEFAULT));
        assertThat(told.edges().get(0).length()).isCloseTo(50, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "viewBox='0 0 200 100'",
                "width='200'",
                "width='200px' height='100px'",
                "width='100%'",
                "width='-3mm'"
            })
    void aScaleThatIsNotStatedIsAskedFor(String root) {
        String file =
                "<svg xmlns='http://www.w3.org/2000/svg' " + root + "><rect id='r' width='100' height='100'/></svg>";
        assertThatThrownBy(() -> SvgOutlines.parse("t.svg", file, SvgOptions.DEFAULT, Limits.DEFAULT))
                .isInstanceOf(FileException.class)
                .hasMessageContaining("the file does not state its scale")
                .hasMessageContaining("25.4/96");
    }

    /** Lengths inside a drawing: a px is a user unit, and 96 of them are an inch. */
    @Test
    void lengthsHaveUnits() {
        Piece piece = only(traced("<rect id='r' width='1in' height='48px' x='2.54cm'/>"));
        assertThat(piece.area()).isCloseTo(96 * 48, within(1e-9));
    }

    @Test
    void whatIsNotOfTheDrawingIsLeftOut() {
        Traced traced = traced("<defs><path id='x' d='M0 0h1v1z'/></defs><text>front</text><text>back</text>"
                + "<g display='none'><rect id='h' width='9' height='9'/></g><rect style='fill:red; display: none' width='9' height='9'/>"
                + "<symbol><rect width='9' height='9'/></symbol><use href='#x'/>"
                + "<other xmlns='urn:other'><rect width='9' height='9'/></other>"
                + "<rect id='r' width='9' height='9'/>");
        assertThat(only(traced).name()).isEqualTo("r");
        assertThat(traced.notes())
                .containsExactly("Left out: 2 of the element 'text'.", "Left out: 1 of the element 'use'.");
    }

    @Test
    void sameResultInEveryLocale() {
        String body = "<path id='pocket' d='M10.5 10 h100 v60 C110 90 90 110 60 110 S10 90 10 70 z'/>";
        Traced here = traced(body);
        Locale locale = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertThat(traced(body)).isEqualTo(here);
        } finally {
            Locale.setDefault(locale);
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            <path id='a' d='M0 0 L 9'/>                                  | line 2, column 28, attribute d, character 9: a number is needed here, but there is the end
            <rect id='a' width='9' height='9'/><rect id='a' width='9' height='9'/> | line 2, column 71: the name 'a' stands twice
            <g id='a'><line id='b' x2='9'/><line id='b' x1='9' y2='9'/><line y2='9' x2='0'/></g> | the name 'b' stands twice in one outline
            <rect id='a' width='9em' height='9'/>                        | attribute width: the unit of [9em] is not read here
            <rect id='a' width='9' height='9' transform='turn(3)'/>      | attribute transform, character 8: there is no transform 'turn' of 1 numbers
            <rect id='a' width='9' height='9' style='transform:scale(2)'/> | a transform in a style is not read
            <svg><rect width='9' height='9'/></svg>                      | an svg inside another is not read
            <text>nothing</text>                                         | there is no outline in the file
            <rect width='9' height='9'                                   | it is not well-formed XML
            <rect width='9' height='&size;'/>                            | it is not well-formed XML: The entity "size" was referenced, but not declared.
            <rect width='NaN' height='9'/>                               | [NaN] is not a length
            <rect width='9e9' height='9'/>                               | allowed are finite numbers from -1e9 to 1e9
            """)
    void saysWhereAndWhatIsWrong(String body, String said) {
        assertThatThrownBy(() -> traced(body))
                .isInstanceOf(FileException.class)
                .hasMessageStartingWith("test.svg")
                .hasMessageContaining(said);
    }

    /** A file that declares entities, to swell or to fetch, is refused where it does. */
    @Test
    void entitiesAreNeitherExpandedNorFetched() {
        StringBuilder swelling = new StringBuilder("<!DOCTYPE svg [<!ENTITY a0 'ha'>");
        for (int i = 1; i < 40; i++) {
            swelling.append("<!ENTITY a")
                    .append(i)
                    .append(" '")
                    .append(("&a" + (i - 1) + ";").repeat(10))
                    .append("'>");
        }
        swelling.append("]>").append(HEAD).append("<rect id='&a39;' width='9' height='9'/></svg>");
        String fetching = "<!DOCTYPE svg [<!ENTITY x SYSTEM 'file:///etc/hostname'>]>" + HEAD
                + "<rect id='&x;' width='9' height='9'/></svg>";
        String parameter = "<!DOCTYPE svg [<!ENTITY % x SYSTEM 'file:///nowhere'> %x;]>" + HEAD
                + "<rect id='&y;' width='9' height='9'/></svg>";
        for (String declaring : List.of(swelling.toString(), fetching, parameter)) {
            String file = "<?xml version='1.0'?>\n" + declaring;
            assertThatThrownBy(() -> SvgOutlines.parse("t.svg", file, SvgOptions.DEFAULT, Limits.DEFAULT))
                    .isInstanceOf(FileException.class)
                    .hasMessage(
                            "t.svg, line 2: a document type with declarations of its own is not read; save the drawing"
                                    + " as plain SVG");
        }
        String plain =
                "<?xml version='1.0'?><!-- [ --><!DOCTYPE svg PUBLIC '-//W3C//DTD SVG 1.1//EN' 'http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd'>"
                        + HEAD + "<rect id='r' width='9' height='9'/></svg>";
        assertThat(only(SvgOutlines.parse("t.svg", plain, SvgOptions.DEFAULT, Limits.DEFAULT))
                        .name())
                .isEqualTo("r");
    }

    @Test
    void limitsHold() {
        Limits usual = Limits.DEFAULT;
        String deep = "<g>".repeat(100_000);
        assertThatThrownBy(() -> traced(deep)).hasMessageContaining("nested more than the 100 deep");
        assertThatThrownBy(() -> traced("<defs>" + deep)).hasMessageContaining("nested more than the 100 deep");
        String points = "<polygon id='a' points='" + "1 2 ".repeat(600_000) + "'/>";
        assertThatThrownBy(() -> traced(points)).hasMessageContaining("holds more than the 1000000 values");
        String many = "<rect width='9' height='9'/>".repeat(3_000);
        assertThatThrownBy(() -> traced(many)).hasMessageContaining("at most 2000 are read");
        assertThatThrownBy(() -> SvgOutlines.parse(
                        "t.svg",
                        HEAD + "<rect width='9' height='9'/></svg>",
                        SvgOptions.DEFAULT,
                        usual.within(Duration.ofNanos(1))))
                .hasMessageContaining("reading took longer");
    }

    @Test
    void optionsAreJudged() {
        assertThatThrownBy(() -> SvgOptions.DEFAULT.withUnit(0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("A user unit is 0.0; allowed is more than 0, at most 1e6 mm.");
        assertThatThrownBy(() -> SvgOptions.DEFAULT.withCorner(Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SvgOptions.DEFAULT.withGap(-1)).isInstanceOf(IllegalArgumentException.class);
    }
}
