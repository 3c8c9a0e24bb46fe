package org.draftingmaths.finish;

import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * The grain line as it is printed: straight, inside the stitch line, with arrows.
 *
 * @param from its foot
 * @param to its head, always with an arrow
 * @param oneWay whether the head alone has an arrow, for cloth with a nap; else both ends have
 */
public record GrainLine(Vector2D from, Vector2D to, boolean oneWay) {}
