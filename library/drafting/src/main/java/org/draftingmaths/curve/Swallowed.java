package org.draftingmaths.curve;

/**
 * A stretch of an edge that has no parallel in the result: it lies deeper in a hollow than the distance allows.
 *
 * @param edge which curve of the path, counted from 0
 * @param from where the stretch begins, length from that curve's start, mm
 * @param to where it ends
 */
public record Swallowed(int edge, double from, double to) {}
