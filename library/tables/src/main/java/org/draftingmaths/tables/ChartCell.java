package org.draftingmaths.tables;

import java.util.function.Supplier;

/** What stands in a cell of a chart, and where: line of the file and cell of the line, both counted from 1. */
record ChartCell(String text, int line, int column) {

    IllegalArgumentException refused(String chart, String reason) {
        return new IllegalArgumentException(place(chart) + reason);
    }

    /** Gives a refusal the place of this cell. */
    <T> T placed(String chart, Supplier<T> reading) {
        try {
            return reading.get();
        } catch (IllegalArgumentException refusal) {
            throw new IllegalArgumentException(place(chart) + refusal.getMessage(), refusal);
        }
    }

    private String place(String chart) {
        return "Size chart [" + chart + "], line " + line + ", column " + column + ": ";
    }
}
