/**
 * What is made of the finished edges of a draft: facings, hems, straps, pieces on the bias, allowances, corners, marks and labels.
 *
 * <p>Everything here starts from the stitch line and comes last: a facing is traced after the last change of its edge. A fold is proved
 * by folding it: reflect the layer, and it lies on the other to 1e-6 mm.
 */
package org.draftingmaths.finish;
