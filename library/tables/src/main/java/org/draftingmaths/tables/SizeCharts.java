package org.draftingmaths.tables;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import org.draftingmaths.measure.Measure;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.tables.SizeChart.MissingCell;
import org.draftingmaths.unit.Length;

/** Reads size charts. The package description says what a chart looks like. */
public final class SizeCharts {

    private static final Set<String> MISSING_MARKS = Set.of("", "NA", "*");
    private static final String MEASURES_DOWN = "measure";
    private static final String SIZES_DOWN = "size";
    private static final String UNIT = "unit";
    private static final Pattern ENDS_IN_A_UNIT = Pattern.compile(".*[0-9] *(?:mm|cm|in|\")");

    private SizeCharts() {}

    /**
     * Reads a chart from a file in UTF-8. The chart is named after the file.
     *
     * @param file the file
     * @param options how the chart is written
     * @return the chart
     * @throws IOException if the file cannot be read or is not UTF-8
     * @throws IllegalArgumentException if the chart says something that cannot be; the message gives chart, line and
     *     column
     */
    public static SizeChart read(Path file, ChartOptions options) throws IOException {
        return parse(file.getFileName().toString(), Files.readString(file, StandardCharsets.UTF_8), options);
    }

    /**
     * Reads a chart from text.
     *
     * <pre>{@code
     * SizeChart chart = SizeCharts.parse("two sizes", "measure,unit,36,38\nbust,cm,84,88\n", ChartOptions.DEFAULT);
     * chart.size("38").length(Measure.BUST);   // 880 mm
     * }</pre>
     *
     * @param name the name of the chart
     * @param text its lines
     * @param options how the chart is written
     * @return the chart
     * @throws IllegalArgumentException if the chart says something that cannot be; the message gives chart, line and
     *     column
     */
    public static SizeChart parse(String name, String text, ChartOptions options) {
        return new Reading(name, options).chart(measuresDown(name, ChartCells.rows(name, text, options.separator())));
    }

    /** Turns the cells so that each row is a measure. Cells know where they stood. */
    private static List<List<ChartCell>> measuresDown(String name, List<List<ChartCell>> rows) {
        ChartCell corner = rows.get(0).get(0);
        String layout = corner.text().toLowerCase(Locale.ROOT);
        if (layout.equals(MEASURES_DOWN)) {
            return rows;
        }
        if (!layout.equals(SIZES_DOWN)) {
            throw corner.refused(name, "the first cell must be [measure] or [size], but was [" + corner.text() + "]");
        }
        List<List<ChartCell>> turned = new ArrayList<>();
        for (int column = 0; column < rows.get(0).size(); column++) {
            int from = column;
            turned.add(rows.stream().map(row -> row.get(from)).toList());
        }
        return turned;
    }

    /** One row of a chart in which measures go down: the measure, its unit or nothing, and a cell for each size. */
    private record Row(Measure measure, String unit, List<ChartCell> values) {}

    /** One reading of one chart. */
    private record Reading(String name, ChartOptions options) {

        SizeChart chart(List<List<ChartCell>> cells) {
            List<ChartCell> header = cells.get(0);
            boolean withUnits = header.size() > 1 && header.get(1).text().equalsIgnoreCase(UNIT);
            if (withUnits && options.unit().isPresent()) {
                throw header.get(1).refused(name, "the unit is stated twice, in the chart and in the options");
            }
            int firstSize = withUnits ? 2 : 1;
            if (header.size() <= firstSize || cells.size() < 2) {
                throw header.get(0)
                        .refused(
                                name,
                                "a chart needs at least one size and one measure; is the separator ["
                                        + options.separator() + "] right?");
            }
            List<String> names = sizeNames(header.subList(firstSize, header.size()));
            List<Row> rows = rows(cells.subList(1, cells.size()), firstSize);
            List<Measurements> sizes = new ArrayList<>();
            List<MissingCell> missing = new ArrayList<>();
            for (int size = 0; size < names.size(); size++) {
                sizes.add(size(names.get(size), size, rows, missing));
            }
            return new SizeChart(name, sizes, missing);
        }

        /** The measurements of one size; cells without a value are added to the list of missing ones. */
        private Measurements size(String size, int index, List<Row> rows, List<MissingCell> missing) {
            Measurements measurements = Measurements.of(size, options.wearer());
            for (Row row : rows) {
                ChartCell cell = row.values().get(index);
                if (MISSING_MARKS.contains(cell.text())) {
                    missing.add(new MissingCell(size, row.measure(), cell.line(), cell.column(), cell.text()));
                } else {
                    measurements = with(measurements, row, cell);
                }
            }
            return measurements;
        }

        private List<Row> rows(List<List<ChartCell>> lines, int firstSize) {
            List<Row> rows = new ArrayList<>();
            Set<Measure> seen = EnumSet.noneOf(Measure.class);
            for (List<ChartCell> line : lines) {
                ChartCell first = line.get(0);
                Measure measure = first.placed(name, () -> Measure.named(first.text()));
                if (!seen.add(measure)) {
                    throw first.refused(name, "the measure [" + measure.label() + "] stands twice");
                }
                String unit = firstSize == 2
                        ? statedUnit(line.get(1))
                        : options.unit().map(ChartUnit::symbol).orElse("");
                rows.add(new Row(measure, unit, line.subList(firstSize, line.size())));
            }
            return rows;
        }

        private String statedUnit(ChartCell cell) {
            return cell.placed(name, () -> ChartUnit.ofSymbol(cell.text())).symbol();
        }

        private List<String> sizeNames(List<ChartCell> cells) {
            Set<String> seen = new HashSet<>();
            for (ChartCell cell : cells) {
                if (cell.text().isEmpty()) {
                    throw cell.refused(name, "a size needs a name, but the cell is empty");
                }
                if (!seen.add(cell.text())) {
                    throw cell.refused(name, "the size [" + cell.text() + "] stands twice");
                }
            }
            return cells.stream().map(ChartCell::text).toList();
        }

        private Measurements with(Measurements measurements, Row row, ChartCell cell) {
            String subject =
                    "size " + measurements.name() + ", " + row.measure().label() + ": ";
            String text = withPoint(cell, subject);
            if (!row.unit().isEmpty() && ENDS_IN_A_UNIT.matcher(text).matches()) {
                throw cell.refused(
                        name, subject + "the unit is stated twice, in [" + text + "] and as [" + row.unit() + "]");
            }
            try {
                return measurements.with(row.measure(), Length.parse((text + " " + row.unit()).strip()));
            } catch (IllegalArgumentException refusal) {
                throw cell.refused(name, subject + refusal.getMessage());
            }
        }

        private String withPoint(ChartCell cell, String subject) {
            String text = cell.text();
            if (options.decimalComma() && text.contains(".")) {
                throw cell.refused(
                        name,
                        subject + "[" + text + "] has a decimal point in a chart declared to have decimal commas");
            }
            if (!options.decimalComma() && text.contains(",")) {
                throw cell.refused(
                        name,
                        subject + "[" + text + "] has a decimal comma; write a point, or declare that the chart has "
                                + "decimal commas");
            }
            return text.replace(',', '.');
        }
    }
}
