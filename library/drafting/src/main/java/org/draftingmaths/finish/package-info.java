/**
 * Finishing: from a checked net draft to a pattern that can be cut.
 *
 * <p>Facings, hems, straps and pieces on the bias start from the finished edges: a facing is traced after the last change of its
 * edge. {@link org.draftingmaths.finish.CutLine} adds the allowances, edge by edge, with the corners cut as
 * {@link org.draftingmaths.finish.CornerCut} says: which seam is sewn first and how it is pressed decides their shape.
 * {@link org.draftingmaths.finish.FinalPattern} is the whole of what is printed: stitch line, cut line, snips, drill points,
 * grain and texts. A fold is proved by folding it: reflect the layer, and it lies on the other to 1e-6 mm.
 */
package org.draftingmaths.finish;
