/**
 * Plane curves and paths of them: length, point at a length, split, meeting, nearest point, winding.
 *
 * <p>Lengths are millimetres, angles are radians and run anticlockwise, y points up. Every value here is immutable.
 * An <em>accuracy</em> is a promise about a computed answer; a <em>tolerance</em> says which places count as one. Both
 * are arguments; nothing is clipped silently. Input that is not a number, is infinite or lies beyond
 * {@link org.draftingmaths.curve.Accuracy#LARGEST} is refused when the curve is made, so that no later answer can
 * overflow.
 */
package org.draftingmaths.curve;
