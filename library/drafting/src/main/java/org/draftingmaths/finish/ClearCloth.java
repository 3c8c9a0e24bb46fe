package org.draftingmaths.finish;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import org.apache.commons.geometry.euclidean.twod.Bounds2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Flatten;
import org.draftingmaths.piece.Laid;
import org.draftingmaths.piece.Panel;
import org.draftingmaths.piece.Piece;

/**
 * The cloth of a piece, and the lines on it that no text may cross.
 *
 * <p>How large a box of given proportions and direction can be about a centre is {@code s(c) = min max(|x|, |y|)} over all
 * points of all lines, with {@code x, y} counted from the centre in half widths and half heights of the box; it is negative
 * outside the cloth. No step of length 1 in that measure changes {@code s} by more than 1, so a square about {@code c} of half
 * side {@code r} holds no place better than {@code s(c) + r}. The best place is found by halving squares, best bound first;
 * it is the same on every machine.
 */
final class ClearCloth {

    /** Lines are replaced by straights that stray by this much, in mm; the air round a text is wider. */
    private static final double FLAT = 0.01;

    /** How near to the largest the place found is, as a share of the text. */
    private static final double NEAR = 0.01;

    private final List<List<Vector2D>> panels;
    private final List<List<Vector2D>> darts;
    private final List<Vector2D[]> lines;

    private ClearCloth(List<List<Vector2D>> panels, List<List<Vector2D>> darts, List<Vector2D[]> lines) {
        this.panels = panels;
        this.darts = darts;
        this.lines = lines;
    }

    /** A place for a box: its middle, and how many times larger it could be there. */
    record Place(Vector2D centre, double share) {}

    /** The panels of a piece without what double-pointed darts take in, their borders the only lines. */
    static ClearCloth of(Piece piece) {
        List<List<Vector2D>> panels = new ArrayList<>();
        List<List<Vector2D>> darts = new ArrayList<>();
        ClearCloth cloth = new ClearCloth(panels, darts, new ArrayList<>());
        for (Panel panel : piece.panels()) {
            CurvePath ring = piece.place(panel.ring());
            panels.add(Flatten.corners(ring, FLAT));
            cloth.add(ring);
            for (Laid laid : panel.darts()) {
                darts.add(Flatten.corners(piece.place(laid), FLAT));
                cloth.add(piece.place(laid));
            }
        }
        return cloth;
    }

    /** The cloth with one line more. */
    ClearCloth with(CurvePath line) {
        ClearCloth more = new ClearCloth(panels, darts, new ArrayList<>(lines));
        more.add(line);
        return more;
    }

    private void add(CurvePath line) {
        List<Vector2D> corners = Flatten.corners(line, FLAT);
        for (int i = 1; i < corners.size(); i++) {
            lines.add(new Vector2D[] {corners.get(i - 1), corners.get(i)});
        }
    }

    /** How many times larger a box could be about a centre; less than 1 when it does not fit there. */
    double share(Vector2D centre, Vector2D along, double width, double height) {
        double least = Double.POSITIVE_INFINITY;
        for (Vector2D[] line : lines) {
            Vector2D from = centre.vectorTo(line[0]);
            Vector2D to = centre.vectorTo(line[1]);
            least = Math.min(
                    least,
                    gauge(
                            2 * along.dot(from) / width,
                            2 * along.signedArea(from) / height,
                            2 * along.dot(to) / width,
                            2 * along.signedArea(to) / height));
        }
        return holds(centre) ? least : -least;
    }

    /** The least of max(|x|, |y|) along a straight. */
    private static double gauge(double x0, double y0, double x1, double y1) {
        double dx = x1 - x0;
        double dy = y1 - y0;
        double least = Math.min(size(x0, y0), size(x1, y1));
        // The least lies at an end, where x or y vanishes, or where both are of one size.
        double[] at = {-x0 / dx, -y0 / dy, (y0 - x0) / (dx - dy), -(y0 + x0) / (dx + dy)};
        for (double t : at) {
            if (t > 0 && t < 1) {
                least = Math.min(least, size(x0 + t * dx, y0 + t * dy));
            }
        }
        return least;
    }

    private static double size(double x, double y) {
        return Math.max(Math.abs(x), Math.abs(y));
    }

    boolean holds(Vector2D point) {
        return panels.stream().anyMatch(panel -> holds(panel, point))
                && darts.stream().noneMatch(dart -> holds(dart, point));
    }

    private static boolean holds(List<Vector2D> ring, Vector2D point) {
        boolean inside = false;
        for (int i = 1; i < ring.size(); i++) {
            Vector2D a = ring.get(i - 1);
            Vector2D b = ring.get(i);
            boolean crosses = (a.getY() > point.getY()) != (b.getY() > point.getY());
            if (crosses && a.vectorTo(b).signedArea(a.vectorTo(point)) > 0 == b.getY() > a.getY()) {
                inside = !inside;
            }
        }
        return inside;
    }

    /** A square of places, in half widths and half heights of the box, and what is the best that it may hold. */
    private record Square(double x, double y, double half, double share, double bound) {}

    /** The place where a box of these proportions could be largest. */
    Place largest(Vector2D along, double width, double height) {
        Vector2D up = Vector2D.of(-along.getY(), along.getX());
        Bounds2D.Builder all = Bounds2D.builder();
        lines.forEach(line -> {
            for (Vector2D end : line) {
                all.add(Vector2D.of(2 * along.dot(end) / width, 2 * up.dot(end) / height));
            }
        });
        Bounds2D bounds = all.build();
        double side = Math.max(bounds.getDiagonal().getX(), bounds.getDiagonal().getY());
        PriorityQueue<Square> squares = new PriorityQueue<>(Comparator.comparingDouble(Square::bound)
                .reversed()
                .thenComparing(Comparator.comparingDouble(Square::x).thenComparing(Square::y)));
        Vector2D middle = bounds.getCentroid();
        Square best = square(middle.getX(), middle.getY(), side / 2, along, width, height);
        squares.add(best);
        while (!squares.isEmpty() && squares.peek().bound() > best.share() + NEAR) {
            Square square = squares.remove();
            double quarter = square.half() / 2;
            for (int i = 0; i < 4; i++) {
                double x = square.x() + (i % 2 == 0 ? -quarter : quarter);
                double y = square.y() + (i / 2 == 0 ? -quarter : quarter);
                Square part = square(x, y, quarter, along, width, height);
                best = part.share() > best.share() ? part : best;
                if (part.bound() > best.share() + NEAR) {
                    squares.add(part);
                }
            }
        }
        Vector2D centre = along.multiply(best.x() * width / 2).add(up.multiply(best.y() * height / 2));
        return new Place(centre, best.share());
    }

    private Square square(double x, double y, double half, Vector2D along, double width, double height) {
        Vector2D up = Vector2D.of(-along.getY(), along.getX());
        Vector2D centre = along.multiply(x * width / 2).add(up.multiply(y * height / 2));
        double share = share(centre, along, width, height);
        return new Square(x, y, half, share, share + half);
    }

    /** The longest straight through the cloth in a direction, of a row of them; no length where there is none. */
    Vector2D[] longest(Vector2D direction, int rows) {
        Vector2D across = Vector2D.of(-direction.getY(), direction.getX());
        double low =
                lines.stream().mapToDouble(line -> across.dot(line[0])).min().orElseThrow();
        double high =
                lines.stream().mapToDouble(line -> across.dot(line[0])).max().orElseThrow();
        Vector2D[] best = {Vector2D.ZERO, Vector2D.ZERO};
        for (int i = 1; i < rows; i++) {
            double offset = low + (high - low) * i / rows;
            double[] at = lines.stream()
                    .filter(line -> (across.dot(line[0]) > offset) != (across.dot(line[1]) > offset))
                    .mapToDouble(line -> {
                        double a = across.dot(line[0]) - offset;
                        double b = across.dot(line[1]) - offset;
                        return direction.dot(line[0].lerp(line[1], a / (a - b)));
                    })
                    .sorted()
                    .toArray();
            for (int k = 1; k < at.length; k++) {
                Vector2D from = direction.multiply(at[k - 1]).add(across.multiply(offset));
                Vector2D to = direction.multiply(at[k]).add(across.multiply(offset));
                if (holds(from.lerp(to, 0.5)) && from.distance(to) > best[0].distance(best[1])) {
                    best = new Vector2D[] {from, to};
                }
            }
        }
        return best;
    }
}
