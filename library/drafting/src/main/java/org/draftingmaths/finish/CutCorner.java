package org.draftingmaths.finish;

import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;

/**
 * A corner of a cut line, between the cut lines along two edges.
 *
 * @param arriving the edge at whose cut line's end it lies, in the direction of the outline
 * @param leaving the edge whose cut line follows
 * @param net the corner on the stitch line
 * @param angle the angle inside the piece there, in radians; more than pi where the outline turns inwards
 * @param asked the shape that was asked; plain where none was
 * @param made the shape that was cut: another only where a plain tip was blunted or unlike widths were stepped
 * @param path what is cut from the end of the one cut line to the start of the other; none where they simply meet
 */
public record CutCorner(
        String arriving,
        String leaving,
        Vector2D net,
        double angle,
        CornerCut asked,
        CornerCut made,
        Optional<CurvePath> path) {}
