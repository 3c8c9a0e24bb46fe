/**
 * Checks: what is wrong with a piece or a whole draft, as findings with place, measured, expected and tolerance.
 *
 * <p>A poor draft is data. {@link org.draftingmaths.check.Checks} never throws because a draft is bad.
 */
package org.draftingmaths.check;
