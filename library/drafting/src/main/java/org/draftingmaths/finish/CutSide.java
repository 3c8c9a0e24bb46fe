package org.draftingmaths.finish;

import org.draftingmaths.curve.CurvePath;

/**
 * The stretch of a cut line that is parallel to one edge, darts in it included.
 *
 * @param edge the name of the edge
 * @param width the allowance in mm
 * @param path the cut line along it, in the direction of the outline, without what belongs to its corners
 */
public record CutSide(String edge, double width, CurvePath path) {}
