/** Principle three, contouring: edges drawn anew over the joined pieces, seams taken in and let out, pieces lengthened and shortened. */
package org.draftingmaths.contour;
