package org.draftingmaths.measure;

import java.util.Objects;
import org.draftingmaths.unit.Length;

/**
 * The closed range of values that a body can have: {@code least <= value <= greatest}.
 *
 * <p>It is wide: it is there to catch a slip of the unit, the digit or the column, not to judge a figure.
 *
 * @param least the least accepted value
 * @param greatest the greatest accepted value, not below the least
 * @param basis where the range comes from
 */
public record PlausibleRange(Length least, Length greatest, String basis) {

    /**
     * Makes a range.
     *
     * @throws IllegalArgumentException if the least value exceeds the greatest
     */
    public PlausibleRange {
        Objects.requireNonNull(basis, "basis");
        if (least.compareTo(greatest) > 0) {
            throw new IllegalArgumentException(
                    "The least value of a range must not exceed the greatest, but was " + least + " > " + greatest);
        }
    }

    /**
     * Whether a value is plausible.
     *
     * @param value any length
     * @return true from the least to the greatest value, both included
     */
    public boolean contains(Length value) {
        return value.compareTo(least) >= 0 && value.compareTo(greatest) <= 0;
    }

    /**
     * The range in words.
     *
     * @return text such as {@code 600 mm to 1800 mm}
     */
    public String text() {
        return least + " to " + greatest;
    }
}
