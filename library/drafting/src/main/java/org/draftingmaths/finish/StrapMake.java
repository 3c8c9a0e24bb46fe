package org.draftingmaths.finish;

/**
 * How a strap is made.
 *
 * @param width its finished width in mm
 * @param stretch by what share of its stitched length it stretches in wear, found on a strip of the cloth; 0 when it is stayed
 * @param insertionAtStart how far in mm its first end goes into the garment
 * @param insertionAtEnd how far in mm its last end goes into the garment
 */
public record StrapMake(double width, double stretch, double insertionAtStart, double insertionAtEnd) {

    /** Checks the figures. */
    public StrapMake {
        if (!(width > 0 && Double.isFinite(width))) {
            throw new IllegalArgumentException("A strap is wider than 0 mm: " + width + " mm.");
        }
        if (!(stretch >= 0 && stretch < StretchTest.MOST)) {
            throw new IllegalArgumentException("A strap stretches by a share from 0 to less than "
                    + StretchTest.mostWords() + ", the most that woven cloth can: " + stretch + ".");
        }
        if (!(insertionAtStart >= 0
                && insertionAtEnd >= 0
                && Double.isFinite(insertionAtStart)
                && Double.isFinite(insertionAtEnd))) {
            throw new IllegalArgumentException(
                    "An insertion is 0 mm or more: " + insertionAtStart + " mm and " + insertionAtEnd + " mm.");
        }
    }
}
