package org.draftingmaths.exchange;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Arc;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.unit.Length;
import org.draftingmaths.unit.Steps;

/**
 * Of the crosses by which tiles are joined, two that lie far apart, one lower left and one upper right: their distance shows whether the sheet was
 * joined and scaled truly on both axes at once. All in mm of paper, from the lower left corner of the lowest, leftmost frame.
 *
 * @param a the lower left cross of a tile
 * @param b the upper right cross of a tile that is joined with it
 */
record Diagonal(Vector2D a, Vector2D b) {

    /** A ring tells them from the other crosses. */
    private static final double RING = 2.5;

    private static final double SAME = 1e-6;

    /** The longest between printed tiles that hang together. */
    static Diagonal across(Tiles tiles, List<Tiles.Tile> printed) {
        Diagonal longest = null;
        List<Tiles.Tile> left = new ArrayList<>(printed);
        while (!left.isEmpty()) {
            List<Tiles.Tile> joined = joinedWith(left.get(0), left);
            left.removeAll(joined);
            for (Tiles.Tile one : joined) {
                for (Tiles.Tile other : joined) {
                    Diagonal diagonal = new Diagonal(low(tiles, one), high(tiles, other));
                    boolean rises = diagonal.a.getX() < diagonal.b.getX() && diagonal.a.getY() < diagonal.b.getY();
                    if (rises && (longest == null || diagonal.length() > longest.length() + SAME)) {
                        longest = diagonal;
                    }
                }
            }
        }
        return longest;
    }

    private static List<Tiles.Tile> joinedWith(Tiles.Tile first, List<Tiles.Tile> all) {
        List<Tiles.Tile> joined = new ArrayList<>(List.of(first));
        Deque<Tiles.Tile> next = new ArrayDeque<>(joined);
        while (!next.isEmpty()) {
            Tiles.Tile tile = next.remove();
            all.stream()
                    .filter(other -> other.isBeside(tile) && !joined.contains(other))
                    .forEach(other -> {
                        joined.add(other);
                        next.add(other);
                    });
        }
        return joined;
    }

    private static Vector2D low(Tiles tiles, Tiles.Tile tile) {
        double half = tiles.page().overlap() / 2;
        return Vector2D.of(tiles.left(tile) + half, tiles.low(tile) + half);
    }

    private static Vector2D high(Tiles tiles, Tiles.Tile tile) {
        return low(tiles, tile).add(Vector2D.of(tiles.stepAcross(), tiles.stepDown()));
    }

    private double length() {
        return a.distance(b);
    }

    /** The distance of the crosses. */
    String words() {
        return Steps.DEFAULT.both(Length.mm(length()));
    }

    boolean startsOn(Tiles tiles, Tiles.Tile tile) {
        return low(tiles, tile).distance(a) < SAME;
    }

    boolean endsOn(Tiles tiles, Tiles.Tile tile) {
        return high(tiles, tile).distance(b) < SAME;
    }

    /** A ring and a letter at each of them that a tile shows, on its page. */
    List<Mark> on(Tiles tiles, Tiles.Tile tile) {
        Page page = tiles.page();
        Vector2D toPage = Vector2D.of(page.margin() - tiles.left(tile), page.margin() - tiles.low(tile));
        Vector2D middle = low(tiles, tile).lerp(high(tiles, tile), 0.5);
        List<Mark> marks = new ArrayList<>();
        for (boolean first : new boolean[] {true, false}) {
            Vector2D end = first ? a : b;
            boolean shown = Math.abs(Math.abs(end.getX() - middle.getX()) - tiles.stepAcross() / 2) < SAME
                    && Math.abs(Math.abs(end.getY() - middle.getY()) - tiles.stepDown() / 2) < SAME;
            if (shown) {
                marks.add(Mark.Stroke.closed(LineKind.RULE, CurvePath.of(Arc.circle(end.add(toPage), RING))));
                Vector2D inwards =
                        Vector2D.of(Math.signum(middle.getX() - end.getX()), Math.signum(middle.getY() - end.getY()));
                double size = TextKind.CAPTION.size();
                Vector2D at = end.add(inwards.multiply(RING + size / 2 + 1))
                        .add(toPage)
                        .subtract(Vector2D.of(0, Lettering.ABOVE * size / 2));
                marks.add(Mark.Words.level(
                        TextKind.CAPTION, size, Mark.Anchor.MIDDLE, at.getX(), at.getY(), first ? "A" : "B"));
            }
        }
        return marks;
    }
}
