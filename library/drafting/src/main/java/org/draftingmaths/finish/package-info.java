/**
 * Finishing: from a checked net draft to a pattern that can be cut.
 *
 * <p>{@link org.draftingmaths.finish.CutLine} adds the allowances, edge by edge, with the corners cut as
 * {@link org.draftingmaths.finish.CornerCut} says: which seam is sewn first and how it is pressed decides their shape.
 * {@link org.draftingmaths.finish.FinalPattern} is the whole of what is printed: stitch line, cut line, snips, drill points,
 * grain and texts. All geometry is on the stitch line; allowances are added last, to a draft that has been checked.
 */
package org.draftingmaths.finish;
