/**
 * Pieces on paper, their making in words, and drafts as files: true-scale SVG and PDF, and the step sheet; drafts as JSON, there and back;
 * outlines from SVG, seams from CSV.
 *
 * <p>{@code FORMAT.md} beside the sources describes the files that are read. Readers take files of strangers: within
 * {@link org.draftingmaths.exchange.Limits}, and every refusal names the place.
 *
 * <p>What is drawn is one list of marks, in millimetres of the pattern; SVG and PDF draw the same list in one style. In SVG a
 * user unit is one millimetre and the sheet says its size in millimetres; in PDF curves are written as Béziers in points of 1/72 inch.
 * Lines are at least 0.3 mm wide on paper and letters at least 2.6 mm in size. Same piece, same bytes.
 */
package org.draftingmaths.exchange;
