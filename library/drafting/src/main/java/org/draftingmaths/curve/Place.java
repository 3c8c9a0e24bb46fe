package org.draftingmaths.curve;

/**
 * A place on a {@link CurvePath}: the parameter {@code t} on its curve number {@code index}, counted from 0.
 *
 * @param index which curve of the path, 0 or more
 * @param t the parameter on that curve, 0 to 1
 */
public record Place(int index, double t) {
    /** Checks the index and the parameter. */
    public Place {
        if (index < 0) {
            throw new IllegalArgumentException("index is " + index + "; allowed is 0 or more");
        }
        Checks.parameter(t);
    }
}
