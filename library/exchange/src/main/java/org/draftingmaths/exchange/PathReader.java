package org.draftingmaths.exchange;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * Reads SVG path data (Scalable Vector Graphics 1.1, section 8.3, and appendix F.6 for arcs): every command, absolute and
 * relative, repeated without its letter or not. Quadratics become the cubics that they are; arcs stay arcs of ellipses.
 */
final class PathReader {

    private final Figures figures;
    private final List<Subpath> subpaths = new ArrayList<>();
    private final List<Stroke> strokes = new ArrayList<>();
    private Vector2D start = Vector2D.ZERO;
    private Vector2D pen = Vector2D.ZERO;

    /** The handle that a smooth curve continues, when the stroke before was of its kind. */
    private Vector2D handle = Vector2D.ZERO;

    private char before = 'Z';
    private boolean open;

    private PathReader(Figures figures) {
        this.figures = figures;
    }

    static List<Subpath> read(Figures figures) {
        return new PathReader(figures).all();
    }

    private List<Subpath> all() {
        if (!figures.done() && figures.next() != 'M' && figures.next() != 'm') {
            throw figures.refused("path data begins with M or m, but here is " + figures.found());
        }
        while (!figures.done()) {
            char letter = figures.next();
            if ("MmLlHhVvCcSsQqTtAaZz".indexOf(letter) < 0) {
                throw figures.refused("there is no path command " + figures.found());
            }
            figures.take();
            command(letter);
        }
        end(false);
        return subpaths;
    }

    /** One command with all its repetitions; after a move they are lines. */
    private void command(char letter) {
        if (letter == 'Z' || letter == 'z') {
            end(true);
            before = 'Z';
            return;
        }
        char repeated = letter;
        do {
            once(repeated);
            before = Character.toUpperCase(repeated);
            repeated = repeated == 'M' ? 'L' : repeated == 'm' ? 'l' : repeated;
            figures.separator();
        } while (figures.startsNumber());
    }

    private void once(char letter) {
        boolean relative = Character.isLowerCase(letter);
        Vector2D base = relative ? pen : Vector2D.ZERO;
        switch (Character.toUpperCase(letter)) {
            case 'M' -> move(point(base));
            case 'L' -> line(point(base));
            case 'H' -> line(Vector2D.of(base.getX() + figures.number(), pen.getY()));
            case 'V' -> line(Vector2D.of(pen.getX(), base.getY() + figures.number()));
            case 'C' -> cubic(point(base), next(base), next(base));
            case 'S' -> cubic(mirrored('C', 'S'), point(base), next(base));
            case 'Q' -> quadratic(point(base), next(base));
            case 'T' -> quadratic(mirrored('Q', 'T'), point(base));
            default -> arc(base);
        }
    }

    private Vector2D point(Vector2D base) {
        double x = figures.number();
        figures.separator();
        return Vector2D.of(base.getX() + x, base.getY() + figures.number());
    }

    private Vector2D next(Vector2D base) {
        figures.separator();
        return point(base);
    }

    private Vector2D mirrored(char one, char other) {
        return before == one || before == other ? pen.multiply(2).subtract(handle) : pen;
    }

    private void move(Vector2D to) {
        end(false);
        start = to;
        pen = to;
        open = true;
    }

    private void draw(Stroke stroke) {
        strokes.add(stroke);
        pen = stroke.to();
        open = true;
    }

    private void line(Vector2D to) {
        draw(new Stroke.Line(pen, to));
    }

    private void cubic(Vector2D first, Vector2D second, Vector2D to) {
        draw(new Stroke.Bezier(pen, first, second, to));
        handle = second;
    }

    private void quadratic(Vector2D through, Vector2D to) {
        draw(Stroke.Bezier.quadratic(pen, through, to));
        handle = through;
    }

    private void arc(Vector2D base) {
        double rx = Math.abs(figures.number());
        figures.separator();
        double ry = Math.abs(figures.number());
        figures.separator();
        double turn = Math.toRadians(figures.number());
        figures.separator();
        boolean large = figures.flag();
        figures.separator();
        boolean sweep = figures.flag();
        Vector2D to = next(base);
        if (pen.equals(to)) {
            return;
        }
        draw(rx == 0 || ry == 0 ? new Stroke.Line(pen, to) : arc(to, rx, ry, turn, large, sweep));
    }

    /**
     * From end points to a centre, as F.6.5 has it: both ends are carried to where the ellipse is the unit circle; the centre lies on
     * the bisector of their chord. Radii too small for the chord grow until they reach (F.6.6).
     */
    private Stroke arc(Vector2D to, double rx, double ry, double turn, boolean large, boolean sweep) {
        double cos = Math.cos(turn);
        double sin = Math.sin(turn);
        Vector2D way = to.subtract(pen);
        Vector2D chord =
                Vector2D.of((way.getX() * cos + way.getY() * sin) / rx, (-way.getX() * sin + way.getY() * cos) / ry);
        double half = chord.norm() / 2;
        double grown = Math.max(1, half);
        double off = Math.sqrt(Math.max(0, grown * grown - half * half));
        boolean left = large != sweep;
        Vector2D aside = Vector2D.of(-chord.getY(), chord.getX()).multiply((left ? off : -off) / (2 * half));
        Vector2D out = chord.multiply(0.5).add(aside);
        double first = Math.atan2(-out.getY(), -out.getX());
        double last = Math.atan2(chord.getY() - out.getY(), chord.getX() - out.getX());
        double angle = last - first;
        if (sweep && angle <= 0) {
            angle += 2 * Math.PI;
        } else if (!sweep && angle >= 0) {
            angle -= 2 * Math.PI;
        }
        Vector2D u = Vector2D.of(cos, sin).multiply(grown * rx);
        Vector2D v = Vector2D.of(-sin, cos).multiply(grown * ry);
        Vector2D centre = pen.add(Vector2D.of(cos, sin).multiply(out.getX() * rx))
                .add(Vector2D.of(-sin, cos).multiply(out.getY() * ry));
        if (!centre.isFinite() || Double.isNaN(angle)) {
            throw figures.refused("the arc is too large or too small to be drawn");
        }
        return new Stroke.Elliptic(pen, to, centre, u, v, first, angle);
    }

    private void end(boolean closed) {
        if (open && !strokes.isEmpty()) {
            subpaths.add(new Subpath(strokes, closed));
        }
        strokes.clear();
        open = false;
        pen = start;
    }
}
