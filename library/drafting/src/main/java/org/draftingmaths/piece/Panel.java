package org.draftingmaths.piece;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;

/**
 * A part of the sheet that is rigid by itself.
 *
 * @param ring its border: closed, simple and anticlockwise
 * @param lines the level lines on it
 */
public record Panel(List<Run> ring, List<Stretch> lines) {

    /** Copies the lists. */
    public Panel {
        ring = List.copyOf(ring);
        lines = List.copyOf(lines);
    }

    /** The panel carried along with all that lies on it. */
    Panel moved(AffineTransformMatrix2D by) {
        return new Panel(
                ring.stream().map(run -> run.moved(by)).toList(),
                lines.stream().map(line -> line.moved(by)).toList());
    }

    /** The panel in a patternmaker's words: by the longest stretch of edge on it. */
    String words() {
        return ring.stream()
                .filter(run -> run.border() instanceof Border.OfEdge)
                .max((a, b) -> Double.compare(a.length(), b.length()))
                .map(run -> "the part at " + run.border().words())
                .orElse("the part between the openings");
    }
}
