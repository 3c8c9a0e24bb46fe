/**
 * What bare outlines seem to be, where nothing was declared: darts, mates, folds, left and right. A guess is a supposition with its class; what is
 * wrong if it is so, the ordinary checks find.
 */
package org.draftingmaths.suppose;
