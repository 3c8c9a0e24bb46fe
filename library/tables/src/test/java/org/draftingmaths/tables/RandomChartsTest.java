package org.draftingmaths.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.LongStream;
import org.draftingmaths.measure.Measure;
import org.draftingmaths.tables.SizeChart.MissingCell;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Charts written at random, in every layout, are read back; spoil one cell and its place is named. */
class RandomChartsTest {

    private static final List<String> SPOILT =
            List.of("n/a", "-", "eighty", "88..0", "1e2", "3/0", "0", "99999", "-88", "NaN", "8 8");

    /** A chart as text, and what it says: mm by size and measure, worked here from whole marks of the tape. */
    private record Written(
            String text, ChartOptions options, List<Map<Measure, Double>> sizes, List<MissingCell> missing) {}

    static LongStream seeds() {
        return LongStream.range(0, 150);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void parse_readsWhatWasWritten(long seed) {
        Written written = new Writer(seed, false).write();

        SizeChart chart = SizeCharts.parse("random", written.text(), written.options());

        assertThat(chart.sizes()).as(written.text()).hasSameSizeAs(written.sizes());
        for (int size = 0; size < written.sizes().size(); size++) {
            Map<Measure, Double> expected = written.sizes().get(size);
            var read = chart.sizes().get(size);
            assertThat(read.name()).isEqualTo("T" + size);
            assertThat(read.entries().keySet()).as(written.text()).isEqualTo(expected.keySet());
            expected.forEach((measure, mm) ->
                    assertThat(read.mm(measure)).as(written.text()).isCloseTo(mm, within(1e-9)));
        }
        assertThat(chart.missing()).as(written.text()).containsExactlyInAnyOrderElementsOf(written.missing());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void parse_namesThePlaceOfTheOneSpoiltCell(long seed) {
        Writer writer = new Writer(seed, true);
        Written written = writer.write();
        assertThatIllegalArgumentException()
                .as(written.text())
                .isThrownBy(() -> SizeCharts.parse("random", written.text(), written.options()))
                .withMessageStartingWith("Size chart [random], line " + writer.spoiltLine + ", column "
                        + writer.spoiltColumn + ": size T" + writer.spoiltSize + ", ");
    }

    private static final class Writer {
        private final Random random;
        private final boolean sizesDown;
        private final boolean comma;
        private final char separator;
        private final int unitsStand;
        private final ChartUnit wholeChart;
        private final List<Measure> measures;
        private final int sizeCount;
        private final int spoiltMeasure;
        private final int spoiltSize;
        private int spoiltLine;
        private int spoiltColumn;

        Writer(long seed, boolean spoil) {
            random = new Random(seed);
            sizesDown = random.nextBoolean();
            comma = random.nextBoolean();
            separator = ",;\t".charAt(random.nextInt(3));
            unitsStand = random.nextInt(3);
            wholeChart = unit();
            List<Measure> all = new ArrayList<>(List.of(Measure.values()));
            Collections.shuffle(all, random);
            measures = all.subList(0, 1 + random.nextInt(8));
            sizeCount = 1 + random.nextInt(6);
            spoiltMeasure = spoil ? random.nextInt(measures.size()) : -1;
            spoiltSize = spoil ? random.nextInt(sizeCount) : -1;
        }

        Written write() {
            List<Map<Measure, Double>> sizes = new ArrayList<>();
            for (int size = 0; size < sizeCount; size++) {
                sizes.add(new EnumMap<>(Measure.class));
            }
            List<List<String>> grid = grid(sizes);
            int[] lines = new int[grid.size()];
            String text = lines(grid, lines);
            ChartOptions options = ChartOptions.DEFAULT.withSeparator(separator);
            options = comma ? options.withDecimalComma() : options;
            options = unitsStand == 1 ? options.withUnit(wholeChart) : options;
            return new Written(text, options, sizes, missing(grid, lines));
        }

        private ChartUnit unit() {
            return List.of(ChartUnit.MM, ChartUnit.CM, ChartUnit.INCHES).get(random.nextInt(3));
        }

        /** The cells as they will stand in the file; {@code sizes} is filled with what they say. */
        private List<List<String>> grid(List<Map<Measure, Double>> sizes) {
            List<List<String>> rows = new ArrayList<>();
            List<String> header = new ArrayList<>(List.of(sizesDown ? "size" : "measure"));
            if (unitsStand == 0) {
                header.add("unit");
            }
            for (int size = 0; size < sizeCount; size++) {
                header.add("T" + size);
            }
            rows.add(header);
            for (int row = 0; row < measures.size(); row++) {
                rows.add(row(row, sizes));
            }
            return sizesDown ? turned(rows) : rows;
        }

        private List<String> row(int index, List<Map<Measure, Double>> sizes) {
            Measure measure = measures.get(index);
            ChartUnit ofRow = unitsStand == 1 ? wholeChart : unit();
            List<String> row = new ArrayList<>(List.of(measure.label()));
            if (unitsStand == 0) {
                row.add(ofRow.symbol());
            }
            for (int size = 0; size < sizeCount; size++) {
                ChartUnit unit = unitsStand == 2 ? unit() : ofRow;
                String written = "";
                if (index == spoiltMeasure && size == spoiltSize) {
                    written = SPOILT.get(random.nextInt(SPOILT.size()));
                } else if (random.nextInt(8) == 0) {
                    row.add(List.of("", "NA", "*").get(random.nextInt(3)));
                    continue;
                } else {
                    written = value(measure, unit, sizes.get(size));
                }
                row.add(unitsStand == 2 ? written + " " + unit.symbol() : written);
            }
            return row;
        }

        private String value(Measure measure, ChartUnit unit, Map<Measure, Double> says) {
            double least = measure.range().least().mm();
            double mm = least + (measure.range().greatest().mm() - least) * (0.05 + 0.9 * random.nextDouble());
            switch (unit) {
                case MM -> {
                    long whole = Math.round(mm);
                    says.put(measure, (double) whole);
                    return String.valueOf(whole);
                }
                case CM -> {
                    // Tenths of a centimetre are millimetres, so the written digits are those of a whole number.
                    long tenths = Math.round(mm);
                    says.put(measure, (double) tenths);
                    return tenths / 10 + (comma ? "," : ".") + tenths % 10;
                }
                default -> {
                    long eighths = Math.round(mm / 3.175);
                    says.put(measure, eighths * 3.175);
                    String part = eighths % 8 == 0 ? "" : (random.nextBoolean() ? " " : "-") + eighths % 8 + "/8";
                    return eighths / 8 + part;
                }
            }
        }

        private static List<List<String>> turned(List<List<String>> rows) {
            List<List<String>> turned = new ArrayList<>();
            for (int column = 0; column < rows.get(0).size(); column++) {
                int from = column;
                turned.add(rows.stream().map(row -> row.get(from)).toList());
            }
            return turned;
        }

        /** The file, with comments and blank lines strewn in; {@code numbers} receives the line of each row. */
        private String lines(List<List<String>> grid, int[] numbers) {
            StringBuilder text = new StringBuilder();
            int line = 0;
            for (int row = 0; row < grid.size(); row++) {
                while (random.nextInt(4) == 0) {
                    text.append(random.nextBoolean() ? "\n" : "# a note, with 1,5 and \"quotes\n");
                    line++;
                }
                line++;
                numbers[row] = line;
                text.append(String.join(
                                String.valueOf(separator),
                                grid.get(row).stream().map(this::cell).toList()))
                        .append('\n');
            }
            int firstValue = unitsStand == 0 ? 2 : 1;
            spoiltLine = spoiltSize < 0 ? 0 : numbers[sizesDown ? firstValue + spoiltSize : 1 + spoiltMeasure];
            spoiltColumn = 1 + (sizesDown ? 1 + spoiltMeasure : firstValue + spoiltSize);
            return text.toString();
        }

        private String cell(String text) {
            return text.indexOf(separator) >= 0 || (!text.isEmpty() && random.nextInt(5) == 0)
                    ? "\"" + text + "\""
                    : text;
        }

        private List<MissingCell> missing(List<List<String>> grid, int[] lines) {
            int firstValue = unitsStand == 0 ? 2 : 1;
            List<MissingCell> missing = new ArrayList<>();
            for (int measure = 0; measure < measures.size(); measure++) {
                for (int size = 0; size < sizeCount; size++) {
                    int row = sizesDown ? firstValue + size : 1 + measure;
                    int column = sizesDown ? 1 + measure : firstValue + size;
                    String text = grid.get(row).get(column);
                    if (text.isEmpty() || text.equals("NA") || text.equals("*")) {
                        missing.add(new MissingCell("T" + size, measures.get(measure), lines[row], column + 1, text));
                    }
                }
            }
            return missing;
        }
    }
}
