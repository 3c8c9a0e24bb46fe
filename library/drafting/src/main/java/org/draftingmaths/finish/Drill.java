package org.draftingmaths.finish;

import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A point drilled or pricked through all layers inside a dart, short of its sewn point: drilled at the point itself the hole
 * would show.
 *
 * @param dart the name of the dart
 * @param point where to drill
 * @param tip the sewn point
 */
public record Drill(String dart, Vector2D point, Vector2D tip) {}
