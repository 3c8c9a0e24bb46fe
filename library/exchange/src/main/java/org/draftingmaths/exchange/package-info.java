/**
 * Pieces as files: true-scale pictures in SVG.
 *
 * <p>Every user unit is one millimetre and the sheet says its size in millimetres, so a picture prints at full size wherever
 * nothing scales it. Same piece, same bytes.
 */
package org.draftingmaths.exchange;
