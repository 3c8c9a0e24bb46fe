package org.draftingmaths.piece;

import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;

/**
 * An inside dart where it lies on a panel.
 *
 * @param dart the name of the inside dart
 * @param motion the isometry from where it was drawn to its place
 */
public record Laid(String dart, AffineTransformMatrix2D motion) {

    Laid moved(AffineTransformMatrix2D by) {
        return new Laid(dart, motion.premultiply(by));
    }
}
