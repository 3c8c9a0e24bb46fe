/**
 * Recipes: body measurements and ease in, a draft out. A recipe is a plain function; running it for another size is grading.
 *
 * <p>{@link org.draftingmaths.block.TorsoBlock} is a close-fitting block to hip length, and the bodice to the waist that comes
 * of the same construction. Every construction line can be had by name for teaching.
 */
package org.draftingmaths.block;
