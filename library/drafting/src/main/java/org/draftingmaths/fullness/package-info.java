/**
 * Principle two: added fullness.
 *
 * <p>{@link org.draftingmaths.fullness.Spread} slashes a piece from edge to edge and spreads it, hinged at one edge or by an
 * equal gap all along, on the mechanism of {@code piece}.
 */
package org.draftingmaths.fullness;
