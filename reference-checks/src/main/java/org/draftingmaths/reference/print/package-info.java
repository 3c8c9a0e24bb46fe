/**
 * Prints measured as paper is: rasterised by programs that are not ours, and looked at pixel by pixel.
 */
package org.draftingmaths.reference.print;
