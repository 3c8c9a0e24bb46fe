/**
 * Principle one: dart manipulation.
 *
 * <p>A dart is an angle at its apex. {@link org.draftingmaths.dart.Darts} moves it, whole or in part, to any place that a
 * slash from the apex can reach. Every operation is cut, move and join on the mechanism of {@code piece}; every one can be
 * undone from its result and ledger.
 */
package org.draftingmaths.dart;
