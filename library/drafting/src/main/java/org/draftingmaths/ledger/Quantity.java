package org.draftingmaths.ledger;

import java.util.Locale;
import org.draftingmaths.unit.Angles;
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
    COUNT,
    /** One length to another, such as a gathered edge to the seam it is sewn to. */
    RATIO;

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
            case ANGLE -> Angles.degrees(value);
            case COUNT -> String.format(Locale.ROOT, "%.0f", value);
            case RATIO -> String.format(Locale.ROOT, "%.2f", value);
        };
    }

    /**
     * A small figure, such as a difference, which the steps of a tape would hide.
     *
     * @param value the figure in the library's own unit
     * @return for example {@code 0.42 mm}
     */
    public String printFinely(double value) {
        return switch (this) {
            case LENGTH -> String.format(Locale.ROOT, "%.2f mm", value);
            case AREA -> String.format(Locale.ROOT, "%.2f sq mm", value);
            case ANGLE -> Angles.degrees(value, 2);
            case COUNT -> String.format(Locale.ROOT, "%.0f", value);
            case RATIO -> String.format(Locale.ROOT, "%.4f", value);
        };
    }
}
