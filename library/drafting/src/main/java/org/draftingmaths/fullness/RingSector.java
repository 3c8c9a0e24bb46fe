package org.draftingmaths.fullness;

import java.util.Map;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Arc;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.draftingmaths.unit.Asked;

/**
 * Part of a ring: {@code top = radius angle}, {@code bottom = (radius + depth) angle}, area
 * {@code depth (top + bottom) / 2}, fullness ratio {@code bottom / top = 1 + depth / radius}. Flounces and circle skirts are
 * ring sectors; with no radius it is the sector of a circle, a godet.
 *
 * <pre>{@code
 * RingSector flounce = RingSector.between(1828.8, 2844.8, 304.8);
 * double radius = flounce.radius();        // 548.64
 * }</pre>
 *
 * @param radius the radius of the inner arc in mm; 0 for a whole sector of a circle
 * @param depth the width of the ring in mm
 * @param angle the angle in radians: more than 0, at most a full turn
 */
public record RingSector(double radius, double depth, double angle) {

    /** A grain line lies at most so far beside the direction it shows, in mm. */
    private static final double GRAIN_ASIDE = 90;

    /** Checks the figures. */
    public RingSector {
        Asked.lengthOrNone("The radius of a ring", radius);
        Asked.length("The depth of a ring", depth);
        if (!(angle > 0 && angle <= 2 * Math.PI)) {
            throw new IllegalArgumentException(
                    "The angle of a ring is more than 0 and at most 2 pi (a full turn): " + angle + " rad.");
        }
    }

    /**
     * The ring sector between two arcs: {@code radius = top depth / (bottom - top)},
     * {@code angle = (bottom - top) / depth}.
     *
     * @param top the length of the inner arc in mm, along
     * @param bottom the length of the outer arc in mm, along
     * @param depth the width of the ring in mm
     * @return the ring sector
     * @throws IllegalArgumentException when a length is not more than 0, the bottom is no longer than the top, or the ring
     *     would go round more than once
     */
    public static RingSector between(double top, double bottom, double depth) {
        Asked.length("The top of a ring", top);
        Asked.length("The depth of a ring", depth);
        Asked.longer("The bottom of a ring", bottom, "its top", top);
        return new RingSector(top * depth / (bottom - top), depth, (bottom - top) / depth);
    }

    /**
     * The inner arc.
     *
     * @return its length in mm
     */
    public double top() {
        return radius * angle;
    }

    /**
     * The outer arc.
     *
     * @return its length in mm
     */
    public double bottom() {
        return (radius + depth) * angle;
    }

    /**
     * The net area.
     *
     * @return the area in square mm
     */
    public double area() {
        return depth * (top() + bottom()) / 2;
    }

    /**
     * The fullness ratio of bottom to top.
     *
     * @return {@code 1 + depth / radius}; infinite for a sector of a circle
     */
    public double ratio() {
        return 1 + depth / radius;
    }

    /** What the fullness of so many such rings costs, beside straight strips of the same seam and depth. */
    Budget budget(double rings) {
        return budget(rings * angle, depth);
    }

    /** What a turn costs: at {@code d} below the seam it adds {@code d turn} to the width. */
    static Budget budget(double turn, double depth) {
        return new Budget(
                turn * depth * depth / 2,
                Map.of(
                        "25 % of the depth", turn * depth / 4,
                        "50 % of the depth", turn * depth / 2,
                        "75 % of the depth", turn * depth * 3 / 4),
                Map.of("hem", turn * depth));
    }

    /**
     * What the four sides are called and what becomes of them. The outline runs along the first end outwards, the bottom, the
     * second end inwards, the top back.
     */
    record Sides(String first, Role firstRole, String bottom, String second, Role secondRole, String top) {}

    /**
     * A piece whose first end lies in the direction {@code from}; the centre of the ring is the origin. Its grain runs outwards
     * in the direction {@code grain}, that of the middle of the piece or of its first end, and lies a little to the second end's side.
     */
    Piece piece(String name, double from, Sides sides, double grain) {
        Vector2D first = polar(1, from);
        Vector2D second = polar(1, from + angle);
        double out = radius + depth;
        Drawing drawing = Drawing.of(name)
                .from(radius * first.getX(), radius * first.getY())
                .edge(sides.first(), sides.firstRole())
                .line(out * first.getX(), out * first.getY())
                .edge(sides.bottom(), Role.HEM)
                .along(CurvePath.of(new Arc(Vector2D.ZERO, out, from, angle)))
                .edge(sides.second(), sides.secondRole())
                .line(radius * second.getX(), radius * second.getY());
        Drawing closed =
                radius == 0 ? drawing : drawing.edge(sides.top(), Role.SEAM).along(inner(from));
        double inside = radius + 0.3 * depth;
        double aside = radius == 0 ? 0 : aside(inside, depth, grain == from ? angle : angle / 2);
        Vector2D start =
                polar(Math.sqrt(inside * inside - aside * aside), grain).add(polar(aside, grain + Math.PI / 2));
        Vector2D end = start.add(polar(0.5 * depth, grain));
        return closed.grain(start.getX(), start.getY(), end.getX(), end.getY()).piece();
    }

    /** How far beside a direction a grain line lies well inside a ring that goes on so far to that side. */
    static double aside(double radius, double depth, double angle) {
        return Math.min(Math.min(GRAIN_ASIDE, 0.3 * depth), radius * Math.sin(Math.min(angle, Math.PI / 2) / 2));
    }

    private CurvePath inner(double from) {
        return CurvePath.of(new Arc(Vector2D.ZERO, radius, from + angle, -angle));
    }

    private static Vector2D polar(double radius, double angle) {
        return Vector2D.of(radius * Math.cos(angle), radius * Math.sin(angle));
    }
}
