package org.draftingmaths.curve;

import java.util.List;

/**
 * The parallel of a closed outline.
 *
 * @param outline the parallel, closed, anticlockwise, simple
 * @param edges for each curve of the outline, which curve of the source it is parallel to, or {@link #CORNER}
 * @param others further closed paths: anticlockwise where the parallel falls apart, clockwise around a pocket that it
 *     closes
 * @param swallowed the stretches of the source without a parallel, in order
 */
public record ParallelOutline(
        CurvePath outline, List<Integer> edges, List<CurvePath> others, List<Swallowed> swallowed) {
    /** Stands for an edge where the outline goes round a corner. */
    public static final int CORNER = -1;

    /** Keeps copies. */
    public ParallelOutline {
        edges = List.copyOf(edges);
        others = List.copyOf(others);
        swallowed = List.copyOf(swallowed);
    }
}
