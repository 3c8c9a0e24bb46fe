package org.draftingmaths.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Arc;
import org.draftingmaths.curve.Cubic;
import org.draftingmaths.curve.CurvePath;

/**
 * A piece in the making: its outline on the stitch line, edge by edge, from one's own points and curves.
 *
 * <pre>{@code
 * Piece front = Drawing.of("front")
 *         .from(0, 0)
 *         .edge("waist", Role.SEAM).line(70, 0).dart("waist dart", 85, 150, 100, 0, 20, Leg.BEFORE).line(210, 0)
 *         .edge("side seam", Role.SEAM).line(230, 190)
 *         .edge("armhole", Role.FINISHED).curve(190, 190, 170, 260, 180, 350)
 *         .edge("shoulder", Role.SEAM).line(70, 390)
 *         .edge("neckline", Role.FINISHED).curve(70, 340, 40, 320, 0, 320)
 *         .edge("centre front", Role.FOLD).line(0, 0)
 *         .level("bust line", 0, 190, 230, 190)
 *         .grain(20, 40, 20, 280)
 *         .piece();
 * }</pre>
 *
 * <p>Coordinates are millimetres, y up, the centre line on x = 0. Either way round will do: an outline drawn clockwise is
 * turned, edges keep the direction in which they were drawn, and the ledger says so. A drawing is immutable; every call
 * returns the drawing with that much more on it.
 *
 * @param name the name of the piece
 * @param start where the outline starts
 * @param items what was drawn, in order
 * @param levels the level lines
 * @param darts the double-pointed darts
 * @param notches the match points
 * @param grain the grain line
 */
public record Drawing(
        String name,
        Optional<Vector2D> start,
        List<Item> items,
        List<LevelLine> levels,
        List<InsideDart> darts,
        List<Notch> notches,
        Optional<Grain> grain) {

    /** Copies the lists. */
    public Drawing {
        items = List.copyOf(items);
        levels = List.copyOf(levels);
        darts = List.copyOf(darts);
        notches = List.copyOf(notches);
    }

    /** One thing drawn. */
    sealed interface Item {

        /** An edge begins. */
        record Begin(String edge, Role role, double allowance) implements Item {}

        /** A curve of the current edge. */
        record Line(CurvePath path) implements Item {}

        /** A dart in the current edge, from where the line stands to where it goes on. */
        record DartAt(String dart, Vector2D apex, Vector2D end, Use.Dart use) implements Item {}
    }

    /**
     * A drawing with nothing on it.
     *
     * @param name the name of the piece
     * @return the drawing
     */
    public static Drawing of(String name) {
        Names.require(name, "A piece");
        return new Drawing(name, Optional.empty(), List.of(), List.of(), List.of(), List.of(), Optional.empty());
    }

    /**
     * Starts the outline at a point.
     *
     * @param x mm from the centre line
     * @param y mm upwards
     * @return the drawing
     */
    public Drawing from(double x, double y) {
        return new Drawing(name, Optional.of(point(x, y)), items, levels, darts, notches, grain);
    }

    /**
     * Begins an edge without allowance.
     *
     * @param edge its name
     * @param role what becomes of it
     * @return the drawing
     */
    public Drawing edge(String edge, Role role) {
        return edge(edge, role, 0);
    }

    /**
     * Begins an edge.
     *
     * @param edge its name
     * @param role what becomes of it
     * @param allowance the width in mm to be added outside it
     * @return the drawing
     */
    public Drawing edge(String edge, Role role, double allowance) {
        return with(new Item.Begin(edge, role, allowance));
    }

    /**
     * A straight line to a point.
     *
     * @param x mm from the centre line
     * @param y mm upwards
     * @return the drawing
     */
    public Drawing line(double x, double y) {
        return along(CurvePath.polyline(pen(), point(x, y)));
    }

    /**
     * A cubic to a point: it leaves towards its first handle and arrives from its second.
     *
     * @param x1 first handle
     * @param y1 first handle
     * @param x2 second handle
     * @param y2 second handle
     * @param x mm from the centre line
     * @param y mm upwards
     * @return the drawing
     */
    public Drawing curve(double x1, double y1, double x2, double y2, double x, double y) {
        return along(CurvePath.of(new Cubic(pen(), point(x1, y1), point(x2, y2), point(x, y))));
    }

    /**
     * A circular arc through a point to a point.
     *
     * @param onX a point on the arc
     * @param onY a point on the arc
     * @param x mm from the centre line
     * @param y mm upwards
     * @return the drawing
     */
    public Drawing arc(double onX, double onY, double x, double y) {
        return along(CurvePath.of(Arc.through(pen(), point(onX, onY), point(x, y))));
    }

    /**
     * Any curve that starts where the line stands.
     *
     * @param path the curve
     * @return the drawing
     */
    public Drawing along(CurvePath path) {
        if (path.start().distance(pen()) > CurvePath.JOINT) {
            throw new IllegalArgumentException("The line of '" + name + "' stands at " + Outlines.words(pen())
                    + "; the next curve starts at " + Outlines.words(path.start()) + ".");
        }
        return with(new Item.Line(path));
    }

    /**
     * A dart in the current edge: from where the line stands to its apex and back to a point from which the edge goes on.
     *
     * @param dart its name
     * @param apexX the apex
     * @param apexY the apex
     * @param x the end of its other leg
     * @param y the end of its other leg
     * @param setBack how far in mm the sewn point lies from the apex
     * @param press the leg to whose side it is pressed, by the direction in which the edge is drawn
     * @return the drawing
     */
    public Drawing dart(String dart, double apexX, double apexY, double x, double y, double setBack, Leg press) {
        Vector2D mouth = pen();
        Vector2D apex = point(apexX, apexY);
        Vector2D end = point(x, y);
        if (mouth.distance(end) <= Panels.TOUCH
                || apex.distance(mouth) <= Panels.TOUCH
                || apex.distance(end) <= Panels.TOUCH) {
            throw new IllegalArgumentException("Dart '" + dart + "' has no width or no length: from "
                    + Outlines.words(mouth) + " over " + Outlines.words(apex) + " to " + Outlines.words(end) + ".");
        }
        return with(new Item.DartAt(dart, apex, end, new Use.Dart(setBack, press)));
    }

    /**
     * A straight level line; what of it lies on the cloth is kept.
     *
     * @param line its name
     * @param x1 one end
     * @param y1 one end
     * @param x2 the other end
     * @param y2 the other end
     * @return the drawing
     */
    public Drawing level(String line, double x1, double y1, double x2, double y2) {
        LevelLine level = new LevelLine(line, CurvePath.polyline(point(x1, y1), point(x2, y2)));
        return new Drawing(name, start, items, append(levels, level), darts, notches, grain);
    }

    /**
     * A double-pointed dart inside the piece, its widest place across the line between its points.
     *
     * @param dart its name
     * @param x1 one point
     * @param y1 one point
     * @param x2 the other point
     * @param y2 the other point
     * @param share where it is widest, as a share of the way from the first point to the second
     * @param intake its width there, in mm
     * @return the drawing
     */
    public Drawing insideDart(String dart, double x1, double y1, double x2, double y2, double share, double intake) {
        return insideDart(dart, x1, y1, x2, y2, share, intake, LegShape.STRAIGHT);
    }

    /**
     * A double-pointed dart with shaped legs inside the piece.
     *
     * @param dart its name
     * @param x1 one point
     * @param y1 one point
     * @param x2 the other point
     * @param y2 the other point
     * @param share where it is widest, as a share of the way from the first point to the second
     * @param intake its width there, in mm
     * @param shape the shape of each of its four legs, from the widest place to a point
     * @return the drawing
     */
    public Drawing insideDart(
            String dart, double x1, double y1, double x2, double y2, double share, double intake, LegShape shape) {
        if (!(share > 0 && share < 1 && intake > 0 && Double.isFinite(intake))) {
            throw new IllegalArgumentException(
                    "Dart '" + dart + "' is widest between its points, and wider than 0 mm: share " + share
                            + ", intake " + intake + " mm.");
        }
        Vector2D one = point(x1, y1);
        Vector2D other = point(x2, y2);
        Vector2D widest = one.lerp(other, share);
        Vector2D way = one.directionTo(other);
        Vector2D aside = Vector2D.of(-way.getY(), way.getX()).multiply(intake / 2);
        InsideDart drawn = new InsideDart(dart, one, other, widest.add(aside), widest.subtract(aside), shape);
        return new Drawing(name, start, items, levels, append(darts, drawn), notches, grain);
    }

    /**
     * A notch on an edge.
     *
     * @param edge the name of the edge
     * @param arc mm along the edge from its start, darts out
     * @return the drawing
     */
    public Drawing notch(String edge, double arc) {
        return new Drawing(
                name, start, items, levels, darts, append(notches, new Notch(edge, arc, Beside.BEFORE)), grain);
    }

    /**
     * The grain line.
     *
     * @param x1 one end
     * @param y1 one end
     * @param x2 the other end
     * @param y2 the other end
     * @return the drawing
     */
    public Drawing grain(double x1, double y1, double x2, double y2) {
        return new Drawing(
                name, start, items, levels, darts, notches, Optional.of(new Grain(point(x1, y1), point(x2, y2))));
    }

    /**
     * The piece.
     *
     * @return the piece that was drawn
     * @throws IllegalArgumentException when the outline is open, or a name stands twice
     * @throws org.draftingmaths.ledger.DraftingException when a dart runs out of the piece
     */
    public Piece piece() {
        return drawn().piece();
    }

    /**
     * The piece, and what was done to make it one: a turn of a clockwise outline is said here.
     *
     * @return the piece with its ledger
     * @throws IllegalArgumentException when the outline is open, or a name stands twice
     * @throws org.draftingmaths.ledger.DraftingException when a dart runs out of the piece
     */
    public Reworked drawn() {
        return new Assembly(this).assemble();
    }

    /** Where the line stands. */
    Vector2D pen() {
        for (int i = items.size() - 1; i >= 0; i--) {
            if (items.get(i) instanceof Item.Line line) {
                return line.path().end();
            } else if (items.get(i) instanceof Item.DartAt dart) {
                return dart.end();
            }
        }
        return start.orElseThrow(() -> new IllegalArgumentException(
                "Say where the outline of '" + name + "' starts before drawing its first edge."));
    }

    private Drawing with(Item item) {
        if (!(item instanceof Item.Begin) && items.stream().noneMatch(Item.Begin.class::isInstance)) {
            throw new IllegalArgumentException("Name an edge of '" + name + "' before drawing it.");
        }
        return new Drawing(name, start, append(items, item), levels, darts, notches, grain);
    }

    private static <T> List<T> append(List<T> list, T last) {
        return Stream.concat(list.stream(), Stream.of(last)).toList();
    }

    private static Vector2D point(double x, double y) {
        if (!(Double.isFinite(x) && Double.isFinite(y))) {
            throw new IllegalArgumentException("A point needs finite coordinates: (" + x + ", " + y + ").");
        }
        return Vector2D.of(x, y);
    }

    List<Item> itemsOf(int begin) {
        List<Item> own = new ArrayList<>();
        for (int i = begin + 1; i < items.size() && !(items.get(i) instanceof Item.Begin); i++) {
            own.add(items.get(i));
        }
        return own;
    }
}
