package org.draftingmaths.curve;

/**
 * The accuracies and limits that answers about curves are given to.
 *
 * <p>An accuracy {@code a} promises {@code |answer - truth| <= a}, in millimetres. A function that cannot keep it
 * throws {@link IllegalArgumentException} with the accuracy that can be had.
 */
public final class Accuracy {
    /** The accuracy of every answer for which none is asked: 1e-9 mm. */
    public static final double DEFAULT = 1e-9;

    /** The largest coordinate or radius a curve may have: 1e9 mm, a thousand kilometres. */
    public static final double LARGEST = 1e9;

    private Accuracy() {}
}
