package org.draftingmaths.finish;

import org.draftingmaths.curve.CurvePath;

/**
 * A line drawn on a pattern inside the cut line.
 *
 * @param kind what it is
 * @param name the edge, dart or level line it belongs to
 * @param path where it runs
 */
public record MarkedLine(Kind kind, String name, CurvePath path) {

    /** What a line on a pattern is. */
    public enum Kind {
        /** The stitch line of an edge, dart ends included, in the direction of the outline. */
        STITCH,
        /** The line to be laid on the fold of the cloth. */
        FOLD,
        /** A leg of a dart, from its end on the edge to its sewn point. */
        DART_LEG,
        /** The fold of a dart, from the edge to its sewn point. */
        DART_CENTRE,
        /** The stitch line of a double-pointed dart, closed. */
        INSIDE_DART,
        /** A level line, or a part of one. */
        LEVEL
    }
}
