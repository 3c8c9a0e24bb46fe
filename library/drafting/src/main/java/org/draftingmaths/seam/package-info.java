/**
 * Seams: two edges walked along one another by notch interval, on sewn lengths.
 *
 * <p>{@link org.draftingmaths.seam.Walk} is what a patternmaker does with two paper edges and a pin: it compares the lengths
 * between notches, not only the totals.
 */
package org.draftingmaths.seam;
