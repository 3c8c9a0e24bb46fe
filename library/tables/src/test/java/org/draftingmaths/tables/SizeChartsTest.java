package org.draftingmaths.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.MalformedInputException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.assertj.core.api.Assertions;
import org.draftingmaths.measure.Measure;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.measure.ProportionRules;
import org.draftingmaths.measure.Provenance;
import org.draftingmaths.measure.Wearer;
import org.draftingmaths.tables.SizeChart.MissingCell;
import org.draftingmaths.unit.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SizeChartsTest {

    private static SizeChart parse(String text) {
        return SizeCharts.parse("test", text, ChartOptions.DEFAULT);
    }

    private static void assertRefused(String text, String message) {
        assertRefused(text, ChartOptions.DEFAULT, message);
    }

    private static void assertRefused(String text, ChartOptions options, String message) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SizeCharts.parse("test", text, options))
                .withMessage(message);
    }

    private static Path resource(String name) throws URISyntaxException {
        return Path.of(SizeChartsTest.class.getResource(name).toURI());
    }

    @Test
    void read_measuresDown_inCentimetres() throws IOException, URISyntaxException {
        SizeChart chart = SizeCharts.read(resource("metric-women.csv"), ChartOptions.DEFAULT.withWearer(Wearer.ADULT));
        assertThat(chart.name()).isEqualTo("metric-women.csv");
        assertThat(chart.sizes()).extracting(Measurements::name).containsExactly("38", "40", "42");
        assertThat(chart.size("38"))
                .isEqualTo(Measurements.of("38", Wearer.ADULT)
                        .with(Measure.BUST, Length.mm(880))
                        .with(Measure.WAIST, Length.mm(720))
                        .with(Measure.HIP, Length.mm(970)));
        assertThat(chart.size("42").mm(Measure.HIP)).isEqualTo(1030);
        assertThat(chart.missing()).isEmpty();
    }

    @Test
    void read_sizesDown_inInchesWithFractions() throws IOException, URISyntaxException {
        SizeChart chart = SizeCharts.read(resource("inch-misses.csv"), ChartOptions.DEFAULT);
        assertThat(chart.sizes()).extracting(Measurements::name).containsExactly("12", "14");
        assertThat(chart.size("12").mm(Measure.BUST)).isEqualTo(863.6);
        assertThat(chart.size("12").mm(Measure.WAIST)).isEqualTo(673.1);
        assertThat(chart.size("12").mm(Measure.BACK_WAIST_LENGTH)).isEqualTo(412.75);
        assertThat(chart.size("14").mm(Measure.BACK_WAIST_LENGTH)).isEqualTo(419.1);
        assertThat(chart.size("14").provenance(Measure.BUST)).isEqualTo(Provenance.MEASURED);
        assertThat(chart.size("14").wearer()).isEqualTo(Wearer.NOT_DECLARED);
    }

    @Test
    void parse_unitForTheWholeChart_orInEveryCell() {
        String bare = "size,bust,hip\n38,880,970\n";
        assertThat(SizeCharts.parse("test", bare, ChartOptions.DEFAULT.withUnit(ChartUnit.MM))
                        .size("38")
                        .mm(Measure.HIP))
                .isEqualTo(970);
        SizeChart stated = parse("measure,38,40\nbust,88 cm,\"36 1/4\"\"\"\nhip,97cm,38 1/2\"\n");
        assertThat(stated.size("38").mm(Measure.BUST)).isEqualTo(880);
        assertThat(stated.size("40").mm(Measure.BUST)).isEqualTo(920.75);
        assertThat(stated.size("40").mm(Measure.HIP)).isEqualTo(977.9);
    }

    /** Read as numbers, a column of 84.0 and 88.0 would become one of integers: 84.0 must stay what it is. */
    @Test
    void parse_decimalsThatAreWhole_keepTheirValue() {
        SizeChart chart = parse("measure,unit,36,38\nbust,cm,84.0,88.0\nhip,cm,94.5,97.0\n");
        assertThat(chart.size("36").mm(Measure.BUST)).isEqualTo(840);
        assertThat(chart.size("36").mm(Measure.HIP)).isEqualTo(945);
    }

    @Test
    void parse_commentsBlankLinesByteOrderMarkAndWindowsLineEnds_doNotCount() {
        SizeChart chart = parse("\uFEFF# chart\r\n\r\nmeasure,unit,38\r\n  # note, with commas\r\nbust,cm,88\r\n\r\n");
        assertThat(chart.size("38").mm(Measure.BUST)).isEqualTo(880);
    }

    @Test
    void parse_linesOfErrors_areThoseOfTheFile() {
        assertRefused(
                "# one\n\n# three\nmeasure,unit,38\n# five\nbustline,cm,88\n",
                "Size chart [test], line 6, column 1: There is no measure [bustline]; there are: height, bust, "
                        + "under-bust, waist, hip, neck, back waist length, front waist length, waist to hip, "
                        + "waist to knee, armhole depth, shoulder length, back width, chest width, neck point to apex, "
                        + "apex to apex, bust dart, armhole girth, upper arm, elbow, wrist, arm length, "
                        + "shoulder to elbow");
    }

    @Test
    void parse_sizesDown_placesAreThoseOfTheFileToo() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> parse("size,bust,waistline\nunit,cm,cm\n38,88,72\n"))
                .withMessageStartingWith("Size chart [test], line 1, column 3: There is no measure [waistline]");
        assertRefused(
                "size,bust,waist\nunit,cm,cm\n36,84,68\n38,88,7.2\n",
                "Size chart [test], line 4, column 3: size 38, waist: "
                        + "A waist of 72 mm is not plausible: accepted is 450 mm to 1700 mm");
    }

    @Test
    void parse_missingCells_areMissingMeasuresAndListed() {
        SizeChart chart = parse("measure,unit,36,38,40\nbust,cm,84,NA,92\nwaist,cm,*,72,\nhip,cm,94,97,100\n");
        assertThat(chart.missing())
                .containsExactly(
                        new MissingCell("36", Measure.WAIST, 3, 3, "*"),
                        new MissingCell("38", Measure.BUST, 2, 4, "NA"),
                        new MissingCell("40", Measure.WAIST, 3, 5, ""));
        assertThat(chart.missing().get(1).sentence()).isEqualTo("Size 38 has no bust: line 2, column 4 says [NA].");
        assertThat(chart.size("38").has(Measure.BUST)).isFalse();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> chart.size("38").length(Measure.BUST))
                .withMessage("The measurements of [38] lack: bust");
    }

    @Test
    void filledBy_fillsOnlyWhatIsMissingAndSaysSo() {
        SizeChart chart = parse("measure,unit,36,38\nbust,cm,84,88\nneck,cm,NA,38\n");
        SizeChart filled = chart.filledBy(ProportionRules.TORSO);
        assertThat(filled.size("36").provenance(Measure.NECK)).isEqualTo(new Provenance.Proportioned("neck from bust"));
        assertThat(filled.size("38").provenance(Measure.NECK)).isEqualTo(Provenance.MEASURED);
        assertThat(filled.size("38").mm(Measure.NECK)).isEqualTo(380);
        assertThat(filled.size("38").has(Measure.WAIST)).isFalse();
        assertThat(filled.missing()).isEqualTo(chart.missing());
    }

    @Test
    void parse_decimalComma_isRefusedWithItsPlace() {
        assertRefused(
                "measure;unit;36;38\nbust;cm;84;88,5\n",
                ChartOptions.DEFAULT.withSeparator(';'),
                "Size chart [test], line 2, column 4: size 38, bust: [88,5] has a decimal comma; "
                        + "write a point, or declare that the chart has decimal commas");
        assertRefused(
                "measure,unit,36,38\nbust,cm,84,\"88,5\"\n",
                "Size chart [test], line 2, column 4: size 38, bust: [88,5] has a decimal comma; "
                        + "write a point, or declare that the chart has decimal commas");
    }

    @Test
    void parse_decimalCommaBetweenCommas_isNotTakenForMoreCells() {
        assertRefused(
                "measure,unit,36,38\nbust,cm,84,5,88,5\n",
                "Size chart [test], line 2, column 5: the line has 6 cells, but line 1 has 4; "
                        + "a decimal comma between separators would do that");
        // Here the number of cells comes out right by chance; the values do not.
        assertRefused(
                "measure,unit,36,38,40,42\nbust,cm,84,5,88,5\n",
                "Size chart [test], line 2, column 4: size 38, bust: "
                        + "A bust of 50 mm is not plausible: accepted is 600 mm to 1800 mm");
    }

    @Test
    void parse_declaredDecimalComma_isRead() {
        ChartOptions options = ChartOptions.DEFAULT.withSeparator(';').withDecimalComma();
        SizeChart chart = SizeCharts.parse("test", "measure;unit;36;38\nbust;cm;84;88,5\n", options);
        assertThat(chart.size("38").mm(Measure.BUST)).isEqualTo(885);
        assertRefused(
                "measure;unit;36;38\nbust;cm;84;88.5\n",
                options,
                "Size chart [test], line 2, column 4: size 38, bust: [88.5] has a decimal point in a chart "
                        + "declared to have decimal commas");
    }

    @ParameterizedTest
    @ValueSource(strings = {"de-DE", "ar-EG-u-nu-arab", "tr-TR"})
    void parse_isTheSameInEveryLocale(String tag) {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag(tag));
            SizeChart chart = parse("MEASURE,UNIT,38\nWAIST TO HIP,cm,20.6\n");
            assertThat(chart.size("38").mm(Measure.WAIST_TO_HIP)).isEqualTo(206);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> parse("measure,unit,38\nbust,cm,\"88,5\"\n"))
                    .withMessageContaining("decimal comma");
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void parse_implausibleValue_isRefusedWithItsPlace() {
        assertRefused(
                "measure,unit,40\nbust,mm,92\n",
                "Size chart [test], line 2, column 3: size 40, bust: "
                        + "A bust of 92 mm is not plausible: accepted is 600 mm to 1800 mm");
    }

    @Test
    void parse_units_areNeitherGuessedNorStatedTwice() {
        assertRefused(
                "measure,38\nbust,88\n",
                "Size chart [test], line 2, column 2: size 38, bust: Cannot read [88] as a length: it has no unit; "
                        + "accepted are forms like 2 in, 5/8 in, 2 5/8 in, 2-5/8\", 2.625 in, 6.7 cm, 67 mm");
        assertRefused(
                "measure,unit,38\nbust,inch,36\n",
                "Size chart [test], line 2, column 2: There is no unit [inch]; there are: mm, cm, in");
        assertRefused(
                "measure,unit,38\nbust,,NA\n",
                "Size chart [test], line 2, column 2: There is no unit []; there are: mm, cm, in");
        assertRefused(
                "measure,unit,38\nbust,cm,88 cm\n",
                "Size chart [test], line 2, column 3: size 38, bust: "
                        + "the unit is stated twice, in [88 cm] and as [cm]");
        assertRefused(
                "measure,unit,38\nbust,cm,88\n",
                ChartOptions.DEFAULT.withUnit(ChartUnit.CM),
                "Size chart [test], line 1, column 2: the unit is stated twice, in the chart and in the options");
    }

    @Test
    void parse_otherMarksForMissing_areNotGuessedAt() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> parse("measure,unit,38\nbust,cm,n/a\n"))
                .withMessageStartingWith("Size chart [test], line 2, column 3: size 38, bust: ");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> parse("measure,unit,38\nbust,cm,-\n"))
                .withMessageStartingWith(
                        "Size chart [test], line 2, column 3: size 38, bust: Cannot read [- cm] as a length");
    }

    @Test
    void parse_raggedLines_areRefused() {
        assertRefused(
                "measure,unit,36,38\nbust,cm,84\n",
                "Size chart [test], line 2, column 3: the line has 3 cells, but line 1 has 4");
    }

    @Test
    void parse_namesThatStandTwiceOrAreMissing_areRefused() {
        assertRefused(
                "measure,unit,38,38\nbust,cm,88,92\n",
                "Size chart [test], line 1, column 4: the size [38] stands twice");
        assertRefused(
                "measure,unit,38\nbust,cm,88\nBust,cm,88\n",
                "Size chart [test], line 3, column 1: the measure [bust] stands twice");
        assertRefused(
                "measure,unit,38,\nbust,cm,88,\n",
                "Size chart [test], line 1, column 4: a size needs a name, but the cell is empty");
    }

    @Test
    void parse_notAChart_isRefused() {
        assertRefused("", "Size chart [test] is empty");
        assertRefused("# nothing but a comment\n\n", "Size chart [test] is empty");
        assertRefused(
                "name,38\nbust,88 cm\n",
                "Size chart [test], line 1, column 1: the first cell must be [measure] or [size], but was [name]");
        assertRefused(
                "measure\nbust\n",
                "Size chart [test], line 1, column 1: "
                        + "a chart needs at least one size and one measure; is the separator [,] right?");
        assertRefused(
                "measure,unit,38\n",
                "Size chart [test], line 1, column 1: "
                        + "a chart needs at least one size and one measure; is the separator [,] right?");
        assertRefused(
                "measure;unit;38\nbust;cm;88\n",
                "Size chart [test], line 1, column 1: "
                        + "the first cell must be [measure] or [size], but was [measure;unit;38]");
    }

    @Test
    void parse_lineOrCellBeyondAllUse_isRefusedWithItsPlace() {
        assertRefused(
                "measure,38\nbust" + ",88 cm".repeat(2000) + "\n",
                "Size chart [test], line 2: the line has 12004 characters, but at most 5000 are accepted");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> parse("measure,38\nbust," + "8".repeat(4500) + " cm\n"))
                .withMessageStartingWith("Size chart [test], line 2, column 2: size 38, bust: ")
                .withMessageContaining("more than 400 characters");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> parse(",".repeat(5_000) + "\n"))
                .withMessageStartingWith("Size chart [test], line 1, column 1: the first cell must be");
    }

    /** A tab at the end of a line is an empty cell, not a space to be dropped. */
    @Test
    void parse_tabs_separateEmptyCellsToo() {
        SizeChart chart = SizeCharts.parse(
                "test", "measure\tunit\t38\t40\nbust\tcm\t88\t\n", ChartOptions.DEFAULT.withSeparator('\t'));
        assertThat(chart.missing()).containsExactly(new MissingCell("40", Measure.BUST, 2, 4, ""));
    }

    @Test
    void size_unknown_listsAll() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> parse("measure,unit,36,38\nbust,cm,84,88\n").size("40"))
                .withMessage("The size chart [test] has no size [40]; it has: 36, 38");
    }

    @Test
    void options_separator_isOneOfThree() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ChartOptions.DEFAULT.withSeparator('|'))
                .withMessage("The separator must be a comma, a semicolon or a tab, but was [|]");
    }

    @Test
    void read_fileThatIsNotUtf8_isRefused(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("latin.csv");
        Files.write(file, "# Gr\u00f6\u00dfen\nmeasure,unit,38\nbust,cm,88\n".getBytes(StandardCharsets.ISO_8859_1));
        Assertions.assertThatThrownBy(() -> SizeCharts.read(file, ChartOptions.DEFAULT))
                .isInstanceOf(MalformedInputException.class);
    }
}
