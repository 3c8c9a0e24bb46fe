/**
 * The piece and the mechanism under every operation: cut, move, join.
 *
 * <p>A tour. {@link org.draftingmaths.piece.Drawing} makes a {@link org.draftingmaths.piece.Piece} from one's own points and
 * curves. A piece is made of {@link org.draftingmaths.piece.Panel panels}, parts of the sheet that are rigid by themselves,
 * and {@link org.draftingmaths.piece.Opening openings}, where they part company. A panel's ring is a list of
 * {@link org.draftingmaths.piece.Run runs}, each a stretch of an {@link org.draftingmaths.piece.Edge edge}'s base carried to
 * where it lies. {@link org.draftingmaths.piece.Panels} cuts, opens, joins, mirrors and undoes;
 * {@link org.draftingmaths.piece.Redraw} is the one step that changes a base.
 *
 * <p>{@link org.draftingmaths.piece.Paper} is the outline as it is drawn, with the ends of darts shaped by
 * {@link org.draftingmaths.piece.DartEnd}; {@link org.draftingmaths.piece.Lengths},
 * {@link org.draftingmaths.piece.Measured} and {@link org.draftingmaths.piece.Girths} measure it. A
 * {@link org.draftingmaths.piece.Draft} is several pieces and the {@link org.draftingmaths.piece.Seam seams} between them.
 *
 * <p>Laws, each also a test: no cut, move, join or mirror changes a base, a base arc, a mark, a panel's shape or the net area;
 * what opens at a point is what closes there; undo gives the piece back to rounding, from its ledger alone.
 */
package org.draftingmaths.piece;
