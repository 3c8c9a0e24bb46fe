package org.draftingmaths.ledger;

import java.util.Locale;
import org.draftingmaths.unit.Length;
import org.draftingmaths.unit.Steps;

/** What kind of number a figure is, and so how it is printed. */
public enum Quantity {
    /** In millimetres; printed in inches and centimetres. */
    LENGTH,
    /** In square millimetres; printed in square inches and square centimetres. */
    AREA,
    /** In radians; printed in degrees. */
    ANGLE,
    /** A bare number. */
    COUNT;

    private static final double SQUARE_INCH = 25.4 * 25.4;

    /**
     * A figure as it is printed.
     *
     * @param value the figure in the library's own unit
     * @param steps the steps to which lengths are rounded
     * @return for example {@code 3 1/8 in (8.0 cm)} or {@code 12.8°}
     */
    public String print(double value, Steps steps) {
        return switch (this) {
            case LENGTH -> steps.both(Length.mm(value));
            case AREA -> String.format(Locale.ROOT, "%.1f sq in (%.1f sq cm)", value / SQUARE_INCH, value / 100);
            case ANGLE -> String.format(Locale.ROOT, "%.1f°", Math.toDegrees(value));
            case COUNT -> String.format(Locale.ROOT, "%.0f", value);
        };
    }
}
