package org.draftingmaths.piece;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;

/**
 * A part of the sheet that is rigid by itself.
 *
 * @param ring its border: closed, simple and anticlockwise
 * @param lines the level lines on it
 * @param darts the inside darts on it
 */
public record Panel(List<Run> ring, List<Stretch> lines, List<Laid> darts) {

    /** Copies the lists. */
    public Panel {
        ring = List.copyOf(ring);
        lines = List.copyOf(lines);
        darts = List.copyOf(darts);
    }

    /** A panel with nothing on it. */
    static Panel bare(List<Run> ring) {
        return new Panel(ring, List.of(), List.of());
    }

    /** The same panel with another ring. */
    Panel with(List<Run> other) {
        return new Panel(other, lines, darts);
    }

    /** The panel carried along with all that lies on it. */
    Panel moved(AffineTransformMatrix2D by) {
        return new Panel(
                ring.stream().map(run -> run.moved(by)).toList(),
                lines.stream().map(line -> line.moved(by)).toList(),
                darts.stream().map(dart -> dart.moved(by)).toList());
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
