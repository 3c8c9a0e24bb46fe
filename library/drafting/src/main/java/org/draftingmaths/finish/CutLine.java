package org.draftingmaths.finish;

import java.util.ArrayList;
import java.util.List;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.Entry;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Piece;

/**
 * The cut line of a piece: the parallel of its stitch line as drawn on paper, at the width of each edge.
 *
 * <p>{@code O(s) = B(s) + a N(s)} with {@code N} the outward normal and {@code a} the width; along an edge that turns by
 * {@code phi} (anticlockwise positive) the cut line is {@code L + a phi} long: longer outside a bend, shorter in a hollow.
 * Every point of a {@link CutSide} lies {@code a} from the nearest point of its edge to {@link #DEVIATION}, or within the tip
 * of a corner of that edge, as at the end of a dart. The allowance across a dart end is that of the underlay, so that folded
 * all its layers end on one line.
 *
 * <p>The outline is closed, simple, anticlockwise, and made of the sides and corners in turn: side, corner, side, corner. On a
 * fold the cut line is the fold itself; its neighbours' cut lines are carried on, or cut short, to the fold's own line, so
 * that they meet when the cloth is opened out.
 *
 * <pre>{@code
 * CutLine cut = CutLine.of(front, Allowances.of(Length.mm(10)).on("hem", Length.mm(40)));
 * cut.outline();              // what the scissors follow
 * cut.side("hem").width();    // 40
 * }</pre>
 *
 * @param outline the whole cut line, starting with the first side
 * @param sides the stretches parallel to edges, in the direction of the outline
 * @param corners the corners, each after the side of the same number; none if the piece has one edge only
 * @param lost the stretches of edges that have no cut line of their own
 */
public record CutLine(CurvePath outline, List<CutSide> sides, List<CutCorner> corners, List<Lost> lost) {

    /** How far in mm a cut line may lie off the true parallel: 1e-6 mm. */
    public static final double DEVIATION = 1e-6;

    /** The farthest a tip may lie from its corner, as a multiple of the wider allowance (common practice). */
    public static final double SPIKE = 2;

    /** The angle in radians below which a corner is blunted, unless a shape is asked: 35° (common practice). */
    public static final double POINTED = Math.toRadians(35);

    /** Copies the lists. */
    public CutLine {
        sides = List.copyOf(sides);
        corners = List.copyOf(corners);
        lost = List.copyOf(lost);
    }

    /**
     * Draws the cut line of a piece.
     *
     * @param piece the piece
     * @param plan the widths and the shapes of corners
     * @return the cut line
     * @throws IllegalArgumentException when the plan names an edge the piece does not have
     * @throws org.draftingmaths.ledger.DraftingException when the plan puts an allowance on a fold; when the allowance closes a
     *     hollow or leaves nothing of an edge; when a shape is asked at a corner where it cannot be, with the angles for which
     *     it can; or when the cut line would cross itself
     */
    public static CutLine of(Piece piece, Allowances plan) {
        return CutLineDrawing.of(piece, plan);
    }

    /**
     * The cut line along one edge.
     *
     * @param edge the name of the edge
     * @return its side
     * @throws IllegalArgumentException when there is no such edge
     */
    public CutSide side(String edge) {
        return sides.stream()
                .filter(side -> side.edge().equals(edge))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("The cut line has no side along '" + edge + "'; it has "
                        + String.join(", ", sides.stream().map(CutSide::edge).toList()) + "."));
    }

    /**
     * The corner where two edges meet, in whichever order; the first, where they meet twice.
     *
     * @param one one edge
     * @param other the other
     * @return the corner
     * @throws IllegalArgumentException when they do not meet
     */
    public CutCorner corner(String one, String other) {
        return corners.stream()
                .filter(each -> (each.arriving().equals(one) && each.leaving().equals(other))
                        || (each.arriving().equals(other) && each.leaving().equals(one)))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("'" + one + "' and '" + other + "' do not meet."));
    }

    /**
     * What was added, edge by edge, for the step sheet.
     *
     * @param piece the piece whose cut line this is
     * @return an entry for each edge with an allowance
     */
    public Ledger ledger(Piece piece) {
        List<Entry> entries = new ArrayList<>();
        for (CutSide side : sides) {
            if (side.width() > 0) {
                entries.add(new AllowanceAdded(
                        side.edge(),
                        side.width(),
                        Lengths.drawn(piece, side.edge()),
                        side.path().length()));
            }
        }
        return new Ledger(entries);
    }

    /**
     * Edges of which more than twice the width at a stretch has no cut line of its own: the allowance is too wide for a
     * hollow. Beside a corner that turns inwards some is always lost, and right so.
     *
     * @param piece the piece whose cut line this is
     * @return the findings
     */
    public List<Finding> findings(Piece piece) {
        return lost.stream()
                .filter(each -> each.length() > 2 * side(each.edge()).width())
                .map(each -> new Finding(
                        Finding.Kind.ALLOWANCE_SWALLOWED,
                        "'" + each.edge() + "' of '" + piece.name() + "'",
                        Quantity.LENGTH,
                        each.length(),
                        0,
                        2 * side(each.edge()).width()))
                .toList();
    }
}
