package org.draftingmaths.tables;

import java.util.Objects;
import java.util.Optional;
import org.draftingmaths.measure.Wearer;

/**
 * How a size chart is written, and for whom it is.
 *
 * <pre>{@code
 * ChartOptions options = ChartOptions.DEFAULT.withSeparator(';').withDecimalComma().withUnit(ChartUnit.CM);
 * }</pre>
 *
 * @param separator what stands between two cells: a comma, a semicolon or a tab
 * @param decimalComma whether decimals are written with a comma; a decimal point is then refused
 * @param unit the unit of the whole chart, or empty if the chart states its units itself
 * @param wearer what is declared about the wearers of all sizes
 */
public record ChartOptions(char separator, boolean decimalComma, Optional<ChartUnit> unit, Wearer wearer) {

    /** Separated by commas, decimal points, units stated in the chart, nothing declared about the wearers. */
    public static final ChartOptions DEFAULT = new ChartOptions(',', false, Optional.empty(), Wearer.NOT_DECLARED);

    /**
     * Makes options.
     *
     * @throws IllegalArgumentException if the separator is not one of the three
     */
    public ChartOptions {
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(wearer, "wearer");
        if (separator != ',' && separator != ';' && separator != '\t') {
            throw new IllegalArgumentException(
                    "The separator must be a comma, a semicolon or a tab, but was [" + separator + "]");
        }
    }

    /**
     * The same options with another separator.
     *
     * @param other a comma, a semicolon or a tab
     * @return the new options
     * @throws IllegalArgumentException if it is none of these
     */
    public ChartOptions withSeparator(char other) {
        return new ChartOptions(other, decimalComma, unit, wearer);
    }

    /**
     * The same options for a chart whose decimals are written with a comma.
     *
     * @return the new options
     */
    public ChartOptions withDecimalComma() {
        return new ChartOptions(separator, true, unit, wearer);
    }

    /**
     * The same options with one unit for the whole chart.
     *
     * @param other the unit
     * @return the new options
     */
    public ChartOptions withUnit(ChartUnit other) {
        return new ChartOptions(separator, decimalComma, Optional.of(other), wearer);
    }

    /**
     * The same options with another declaration about the wearers.
     *
     * @param other what is declared
     * @return the new options
     */
    public ChartOptions withWearer(Wearer other) {
        return new ChartOptions(separator, decimalComma, unit, other);
    }
}
