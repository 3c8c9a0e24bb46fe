package org.draftingmaths.piece;

import java.util.Optional;
import org.draftingmaths.curve.CurvePath;

/**
 * A side of the outline on paper: a run of an edge, or what is drawn across the mouth of an opening.
 *
 * @param edge the edge it belongs to
 * @param opening the opening whose mouth it crosses, if it does
 * @param path the curve, in the direction of the outline
 * @param forward whether the outline passes the edge in the edge's own direction
 */
public record PaperSide(String edge, Optional<String> opening, CurvePath path, boolean forward) {}
