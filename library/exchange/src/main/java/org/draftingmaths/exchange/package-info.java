/**
 * Drafts and pieces as files: true-scale pictures in SVG; drafts as JSON, there and back; outlines from SVG, seams from CSV.
 *
 * <p>{@code FORMAT.md} beside the sources describes the files that are read. Readers take files of strangers: within
 * {@link org.draftingmaths.exchange.Limits}, and every refusal names the place.
 *
 * <p>Every user unit is one millimetre and the sheet says its size in millimetres, so a picture prints at full size wherever
 * nothing scales it. Same piece, same bytes.
 */
package org.draftingmaths.exchange;
