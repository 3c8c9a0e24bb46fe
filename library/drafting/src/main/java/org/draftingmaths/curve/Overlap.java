package org.draftingmaths.curve;

/**
 * A stretch along which two curves or two paths lie on each other.
 *
 * @param fromFirst where it begins on the first (parameter of a curve, length along a path)
 * @param toFirst where it ends on the first, more than {@code fromFirst}
 * @param fromSecond where {@code fromFirst} lies on the second
 * @param toSecond where {@code toFirst} lies on the second: less than {@code fromSecond} if the two run opposite ways
 */
public record Overlap(double fromFirst, double toFirst, double fromSecond, double toSecond) {
    /** Whether the two run the same way along it. */
    public boolean sameWay() {
        return fromSecond < toSecond;
    }
}
