package org.draftingmaths.tables;

import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.draftingmaths.measure.Measure;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.measure.ProportionRule;

/**
 * A size chart: one set of measurements for each size, in the order of the chart.
 *
 * @param name the name of the chart
 * @param sizes the sets; each has the name of its size
 * @param missing the cells that had no value, in the order of the chart
 */
public record SizeChart(String name, List<Measurements> sizes, List<MissingCell> missing) {

    /**
     * A cell of a chart that had no value.
     *
     * @param size the name of the size
     * @param measure the measure that is missing
     * @param line the line in the file, counted from 1
     * @param column the cell in that line, counted from 1
     * @param text what stood there: nothing, {@code NA} or {@code *}
     */
    public record MissingCell(String size, Measure measure, int line, int column, String text) {

        /**
         * What is missing, in a sentence.
         *
         * @return a sentence such as {@code Size 38 has no bust: line 3, column 4 says [NA].}
         */
        public String sentence() {
            return "Size " + size + " has no " + measure.label() + ": line " + line + ", column " + column + " says ["
                    + text + "].";
        }
    }

    /** Makes a chart. */
    public SizeChart {
        Objects.requireNonNull(name, "name");
        sizes = List.copyOf(sizes);
        missing = List.copyOf(missing);
    }

    /**
     * The measurements of one size.
     *
     * @param size the name of the size, exactly as in the chart
     * @return its measurements
     * @throws IllegalArgumentException if there is no such size; the message lists all
     */
    public Measurements size(String size) {
        return sizes.stream()
                .filter(measurements -> measurements.name().equals(size))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("The size chart [" + name + "] has no size [" + size
                        + "]; it has: " + sizes.stream().map(Measurements::name).collect(Collectors.joining(", "))));
    }

    /**
     * The chart with missing measures filled in every size, as {@link Measurements#filledBy} does.
     *
     * <p>The list of cells that had no value stays: it says what the chart did not say.
     *
     * @param rules the rules, such as {@link org.draftingmaths.measure.ProportionRules#TORSO}
     * @return the new chart; every value filled carries the name of its rule
     * @throws IllegalArgumentException if a rule gives a length that is not plausible
     */
    public SizeChart filledBy(List<ProportionRule> rules) {
        return new SizeChart(
                name, sizes.stream().map(size -> size.filledBy(rules)).toList(), missing);
    }
}
