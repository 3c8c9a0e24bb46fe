package org.draftingmaths.exchange;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;

/**
 * Strokes end to end.
 *
 * @param strokes the strokes in order
 * @param closed whether the drawing says that the last end is joined to the first start
 */
record Subpath(List<Stroke> strokes, boolean closed) {

    Subpath {
        strokes = List.copyOf(strokes);
    }

    Subpath mapped(AffineTransformMatrix2D by) {
        return new Subpath(strokes.stream().map(stroke -> stroke.mapped(by)).toList(), closed);
    }
}
