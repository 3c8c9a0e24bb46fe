package org.draftingmaths.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.block.TorsoBlock;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.dart.Darts;
import org.draftingmaths.ledger.Change;
import org.draftingmaths.ledger.Entry;
import org.draftingmaths.ledger.Fact;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.measure.Ease;
import org.draftingmaths.measure.Measure;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.measure.ProportionRules;
import org.draftingmaths.measure.Wearer;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Redraw;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.unit.Length;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.api.Test;
import org.xml.sax.InputSource;

class StepSheetTest {

    private static final Change AREA = new Change("net area", Quantity.AREA, 10_000, 10_000);
    private static final Change HEM = new Change("length of 'hem'", Quantity.LENGTH, 254, 508);

    private static Entry said(String sentence) {
        return steps -> sentence;
    }

    private static StepSheet sheet() {
        return StepSheet.of("Skirt & more")
                .then(
                        "Spread the hem",
                        Ledger.of(
                                said("Cut along 'slash 1', 12 in (30.5 cm) long."),
                                said("Turn the part."),
                                AREA,
                                said("Cut along 'slash 2', 12 in (30.5 cm) long."),
                                HEM,
                                said("Cut along 'slash 3', 12 in (30.5 cm) long.")))
                .then("Do nothing", Ledger.of(AREA))
                .then("Close it", Ledger.of(said("Close 'dart'."), said("Close 'dart'."), said("Press <it>.")));
    }

    @Test
    void tellsWhatIsDoneWhatHasChangedAndWhatHasNot() {
        assertThat(sheet().markdown(Steps.DEFAULT)).startsWith("""
                # Skirt & more

                Every length is given in inches and, in brackets, in centimetres, each rounded by itself: keep to one of \
                the two from beginning to end.

                ## Before you cut

                Sew a toile in cheap cloth before cutting good cloth.

                A pattern that checks""").endsWith("""
                ## How the pattern is drafted

                ### Spread the hem

                1. Cut along 'slash 1', 'slash 2' and 'slash 3', 12 in (30.5 cm) long, each.
                2. Turn the part.

                Measure what has changed:

                - The length of 'hem' goes from 10 in (25.4 cm) to 20 in (50.8 cm).

                Unchanged: the net area, 15.5 sq in (100.0 sq cm).

                ### Close it

                3. Close 'dart'.
                4. Press \\<it\\>.

                """);
    }

    private static String told(Entry... entries) {
        String page = StepSheet.of("Sheet").then("Do it", Ledger.of(entries)).markdown(Steps.DEFAULT);
        return page.contains("### Do it\n\n") ? page.substring(page.indexOf("### Do it\n\n") + 11) : "";
    }

    /** A list to measure by: one line for a figure that changed twice, none for what a tape cannot show. */
    @Test
    void whatCannotBeMeasuredIsNotInTheListToMeasure() {
        Change again = new Change("length of 'hem'", Quantity.LENGTH, 508, 762);
        assertThat(told(said("Redo."), HEM, again)).isEqualTo("""
                1. Redo.

                Measure what has changed:

                - The length of 'hem' goes from 10 in (25.4 cm) to 30 in (76.2 cm).

                """);
        Change area = new Change("net area", Quantity.AREA, 10_000, 20_000);
        Change little = new Change("length of 'side'", Quantity.LENGTH, 254, 254.02);
        Change summed = new Change("length of 'hem' by the blend", Quantity.LENGTH, 254, 508);
        Change nothing = new Change("angle of 'slash'", Quantity.ANGLE, 0, 0);
        assertThat(told(said("Redo."), area, little, HEM, summed, nothing)).isEqualTo("""
                1. Redo.

                Measure what has changed:

                - The length of 'hem' goes from 10 in (25.4 cm) to 20 in (50.8 cm).

                """);
        Change otherHem = new Change("length of 'hem'", Quantity.LENGTH, 100, 200);
        assertThat(told(said("Redo."), HEM, otherHem)).contains("from 10 in", "from 3 7/8 in (10.0 cm)");
        assertThat(told(AREA, nothing)).isEmpty();
    }

    /** Figures are no steps; what an edge redrawn is drawn by stands with it and is not told again. */
    @Test
    void figuresAndRedrawnEdges() {
        assertThat(told(new Fact("bust", Quantity.LENGTH, 920), new Fact("waist", Quantity.LENGTH, 740)))
                .isEqualTo("Figures: bust 36 1/4 in (92.0 cm); waist 29 1/8 in (74.0 cm).\n\n");
        Piece square = Drawing.of("square")
                .from(0, 0)
                .edge("hem", Role.HEM)
                .line(254, 0)
                .edge("side", Role.SEAM)
                .line(254, 254)
                .edge("top", Role.SEAM)
                .line(0, 254)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .piece();
        Ledger longer = Redraw.edges(
                        square,
                        Map.of(
                                "hem",
                                CurvePath.polyline(Vector2D.of(0, -127), Vector2D.of(254, -127)),
                                "side",
                                CurvePath.polyline(Vector2D.of(254, -127), Vector2D.of(254, 254)),
                                "centre",
                                CurvePath.polyline(Vector2D.of(0, 254), Vector2D.of(0, -127))))
                .ledger();
        assertThat(told(longer.entries().toArray(Entry[]::new)))
                .isEqualTo("1. Redraw on 'square': 'centre' to 15 in (38.1 cm), before 10 in (25.4 cm);"
                        + " 'hem', 10 in (25.4 cm) as before; 'side' to 15 in (38.1 cm), before 10 in (25.4 cm).\n\n");
    }

    @Test
    void aPageOfItsOwnThatLoadsNothing() throws Exception {
        String html = sheet().html(Steps.DEFAULT);
        assertThat(html)
                .startsWith("<!DOCTYPE html>")
                .contains("<section>\n<h3>Spread the hem</h3>\n<ol start=\"1\">\n<li>Cut along")
                .contains("<ol start=\"3\">\n<li>Close 'dart'.</li>\n<li>Press &lt;it&gt;.</li>")
                .contains("<title>Skirt &amp; more</title>")
                .doesNotContain("http", "src=", "@import", "url(");
        DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(
                        new StringReader(html.replace("<meta charset=\"utf-8\">", "<meta charset=\"utf-8\"/>"))));
    }

    @Test
    void sentencesThatDifferInMoreThanOneNameOrInFiguresStayApart() {
        assertThat(Alike.grouped(List.of(
                        "Walk 'a' on 'b'.",
                        "Walk 'c' on 'd'.",
                        "Walk 'a' on 'e'.",
                        "Cut 'a', 1 in.",
                        "Cut 'b', 2 in.")))
                .containsExactly("Walk 'a' on 'b' and 'e'.", "Walk 'c' on 'd'.", "Cut 'a', 1 in.", "Cut 'b', 2 in.");
    }

    /** A dart moved, as the library tells it: instructions first, no figure in one unit alone. */
    @Test
    void aMovedDartReadsAsInstructions() {
        Measurements body = Measurements.of("38", Wearer.ADULT)
                .with(Measure.BUST, Length.cm(88))
                .with(Measure.WAIST, Length.cm(72))
                .with(Measure.HIP, Length.cm(97))
                .filledBy(ProportionRules.TORSO);
        Piece front = TorsoBlock.bodice(body, Ease.CLOSE_FITTING).draft().piece("front");
        String page = StepSheet.of("Bodice")
                .then(
                        "Move the bust dart",
                        Darts.rotate(front, "bust dart", Spot.on("side seam", 120), "side dart")
                                .ledger())
                .markdown(Steps.DEFAULT);
        assertThat(page).contains("""
                        ### Move the bust dart

                        Turn 15.7° of 'bust dart' about its apex into 'side dart': nothing of it is left; its mouth was \
                        2 5/8 in (6.6 cm) wide, the new one is 1 5/8 in (4.0 cm).

                        1. Cut along 'side dart', 5 3/4 in (14.6 cm) long.
                        2. Turn the part with 'armhole' between 'bust dart' and 'side dart' by 15.7° anticlockwise.
                        3. Close 'bust dart'.
                        4. Press 'side dart' downwards.

                        Unchanged: the net area, 119.1 sq in (768.7 sq cm).
                        """);
    }

    @Test
    void sameTextInEveryLocale() {
        String here = sheet().html(Steps.DEFAULT);
        Locale locale = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG"));
            assertThat(sheet().html(Steps.DEFAULT)).isEqualTo(here);
        } finally {
            Locale.setDefault(locale);
        }
    }
}
