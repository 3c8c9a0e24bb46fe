/**
 * Principle two: added fullness.
 *
 * <p>{@link org.draftingmaths.fullness.Spread} slashes a piece and spreads it, {@link org.draftingmaths.fullness.Smooth} blends an edge
 * afterwards, {@link org.draftingmaths.fullness.SideFlare} adds flare at a seam, {@link org.draftingmaths.fullness.Gathers} and {@link
 * org.draftingmaths.fullness.Pleats} put the fullness to use, and {@link org.draftingmaths.fullness.Budget} says what it costs in cloth.
 * {@link org.draftingmaths.fullness.CircleSkirts}, {@link org.draftingmaths.fullness.Flounces}, {@link
 * org.draftingmaths.fullness.Godets} and {@link org.draftingmaths.fullness.Tiers} draft pieces for their fullness, and {@link
 * org.draftingmaths.fullness.Cowls} swings a neckline into one. A question asked backwards is an {@link org.draftingmaths.fullness.Answer}. All of it on the mechanism of {@code piece}.
 */
package org.draftingmaths.fullness;
