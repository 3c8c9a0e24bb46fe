package org.draftingmaths.tables;

import java.util.Arrays;
import java.util.stream.Collectors;

/** A unit in which the values of a size chart are written. */
public enum ChartUnit {
    /** Millimetres. */
    MM("mm"),
    /** Centimetres. */
    CM("cm"),
    /** Inches, decimal or with fractions. */
    INCHES("in");

    private final String symbol;

    ChartUnit(String symbol) {
        this.symbol = symbol;
    }

    /**
     * How the unit is written in a chart.
     *
     * @return {@code mm}, {@code cm} or {@code in}
     */
    public String symbol() {
        return symbol;
    }

    /**
     * The unit with the given symbol.
     *
     * @param symbol {@code mm}, {@code cm} or {@code in}
     * @return the unit
     * @throws IllegalArgumentException if there is none; the message lists all symbols
     */
    public static ChartUnit ofSymbol(String symbol) {
        return Arrays.stream(values())
                .filter(unit -> unit.symbol.equals(symbol))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("There is no unit [" + symbol + "]; there are: "
                        + Arrays.stream(values()).map(ChartUnit::symbol).collect(Collectors.joining(", "))));
    }
}
