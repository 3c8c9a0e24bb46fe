package org.draftingmaths.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.List;
import java.util.Locale;
import javax.xml.parsers.DocumentBuilderFactory;
import org.draftingmaths.block.TorsoBlock;
import org.draftingmaths.dart.Darts;
import org.draftingmaths.ledger.Change;
import org.draftingmaths.ledger.Entry;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.measure.Ease;
import org.draftingmaths.measure.Measure;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.measure.ProportionRules;
import org.draftingmaths.measure.Wearer;
import org.draftingmaths.piece.Piece;
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

                ## Spread the hem

                1. Cut along 'slash 1', 'slash 2' and 'slash 3', 12 in (30.5 cm) long, each.
                2. Turn the part.

                Measure what has changed:

                - The length of 'hem' goes from 10 in (25.4 cm) to 20 in (50.8 cm).

                Unchanged: the net area, 15.5 sq in (100.0 sq cm).

                ## Close it

                3. Close 'dart'.
                4. Press \\<it\\>.

                ## Before you cut

                Sew a toile""");
    }

    @Test
    void aPageOfItsOwnThatLoadsNothing() throws Exception {
        String html = sheet().html(Steps.DEFAULT);
        assertThat(html)
                .startsWith("<!DOCTYPE html>")
                .contains("<h2>Spread the hem</h2>\n<ol start=\"1\">\n<li>Cut along")
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
                        ## Move the bust dart

                        Turn 15.7° of 'bust dart' about its apex into 'side dart': nothing of it is left; its mouth was \
                        2 5/8 in (6.6 cm) wide, the new one is 1 5/8 in (4.0 cm).

                        1. Cut along 'side dart', 5 3/4 in (14.6 cm) long.
                        2. Turn the part with 'armhole' between 'bust dart' and 'side dart' by 15.7° anticlockwise.
                        3. Close 'bust dart'.
                        4. Press 'side dart' downwards.

                        Unchanged: the net area, 119.1 sq in (768.7 sq cm).

                        ## Before you cut
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
