package org.draftingmaths.block;

import org.draftingmaths.curve.CurvePath;

/**
 * A construction line of a draft.
 *
 * @param piece the piece it belongs to
 * @param name what it is
 * @param rule the rule by which it is found, in words and figures
 * @param line the line, on the piece's own axes
 */
public record Construction(String piece, String name, String rule, CurvePath line) {}
