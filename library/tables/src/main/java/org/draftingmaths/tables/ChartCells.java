package org.draftingmaths.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import tech.tablesaw.api.ColumnType;
import tech.tablesaw.api.Table;
import tech.tablesaw.io.csv.CsvReadOptions;

/** Splits a chart into cells with Tablesaw, keeping every cell as text and its place in the file. */
final class ChartCells {

    /** Tablesaw turns NA, * and others into nothing unless it is given other marks: this one cannot be typed. */
    private static final String NO_MISSING_MARK = "\u0000";

    private static final String BYTE_ORDER_MARK = "\uFEFF";

    /** Tablesaw stops at 10000 cells in a line; with this the chart is refused before, and with its place. */
    private static final int LONGEST_LINE = 5_000;

    private ChartCells() {}

    /** All rows that are neither comments nor blank; all have as many cells as the first, and there is at least one. */
    static List<List<ChartCell>> rows(String chart, String text, char separator) {
        List<List<ChartCell>> rows = new ArrayList<>();
        List<String> lines = withoutMark(text).lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i).strip();
            if (!line.isEmpty() && !line.startsWith("#")) {
                requireUsualLength(chart, line, i + 1);
                List<ChartCell> row = row(lines.get(i), i + 1, separator);
                requireSameLength(chart, rows.isEmpty() ? row : rows.get(0), row);
                rows.add(row);
            }
        }
        if (rows.isEmpty()) {
            throw new IllegalArgumentException("Size chart [" + chart + "] is empty");
        }
        return rows;
    }

    /** Lines are read one by one: read together, Tablesaw no longer knows in which line of the file a cell stood. */
    private static List<ChartCell> row(String line, int number, char separator) {
        Table table = Table.read()
                .usingOptions(CsvReadOptions.builderFromString(line)
                        .header(false)
                        .separator(separator)
                        .sample(false)
                        .locale(Locale.ROOT)
                        .missingValueIndicator(NO_MISSING_MARK)
                        .maxCharsPerColumn(LONGEST_LINE)
                        .columnTypesToDetect(List.of(ColumnType.STRING)));
        List<ChartCell> row = new ArrayList<>();
        for (int column = 0; column < table.columnCount(); column++) {
            row.add(new ChartCell(table.getString(0, column).strip(), number, column + 1));
        }
        return row;
    }

    private static void requireUsualLength(String chart, String line, int number) {
        if (line.length() > LONGEST_LINE) {
            throw new IllegalArgumentException("Size chart [" + chart + "], line " + number + ": the line has "
                    + line.length() + " characters, but at most " + LONGEST_LINE + " are accepted");
        }
    }

    private static void requireSameLength(String chart, List<ChartCell> first, List<ChartCell> row) {
        if (row.size() != first.size()) {
            ChartCell odd = row.get(Math.min(row.size(), first.size() + 1) - 1);
            String hint = row.size() > first.size() ? "; a decimal comma between separators would do that" : "";
            throw odd.refused(
                    chart,
                    "the line has " + row.size() + " cells, but line "
                            + first.get(0).line() + " has " + first.size() + hint);
        }
    }

    private static String withoutMark(String text) {
        return text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
    }
}
