package org.draftingmaths.piece;

import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;

/**
 * A part of a level line that lies on one panel.
 *
 * @param line the name of the level line
 * @param from the lower base arc in mm
 * @param to the upper base arc in mm
 * @param motion the isometry from the base to its place
 */
public record Stretch(String line, double from, double to, AffineTransformMatrix2D motion) {

    Stretch moved(AffineTransformMatrix2D by) {
        return new Stretch(line, from, to, motion.premultiply(by));
    }
}
