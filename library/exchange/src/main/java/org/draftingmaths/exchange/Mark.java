package org.draftingmaths.exchange;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Bounds2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;

/**
 * One thing that is drawn, in millimetres of the pattern, y up. A list of marks is the one source of what stands on paper: SVG and PDF
 * both draw it, and neither adds to it.
 */
sealed interface Mark {

    /** The mark carried by a shift. */
    Mark shifted(Vector2D by);

    /** The smallest upright rectangle about it, the width of its lines left out. */
    Bounds2D bounds();

    /**
     * Lines of one kind.
     *
     * @param kind what the lines mean
     * @param paths the lines
     * @param closed whether each runs back to its start without an end
     */
    record Stroke(LineKind kind, List<CurvePath> paths, boolean closed) implements Mark {
        public Stroke {
            paths = List.copyOf(paths);
        }

        static Stroke open(LineKind kind, CurvePath... paths) {
            return new Stroke(kind, List.of(paths), false);
        }

        static Stroke closed(LineKind kind, CurvePath path) {
            return new Stroke(kind, List.of(path), true);
        }

        static Stroke line(LineKind kind, Vector2D... points) {
            return open(kind, CurvePath.polyline(points));
        }

        /** A rectangle by its lower left corner. */
        static Stroke rectangle(LineKind kind, double x, double y, double width, double height) {
            return closed(
                    kind,
                    CurvePath.polyline(
                            Vector2D.of(x, y),
                            Vector2D.of(x + width, y),
                            Vector2D.of(x + width, y + height),
                            Vector2D.of(x, y + height),
                            Vector2D.of(x, y)));
        }

        /** An upright cross. */
        static Stroke cross(LineKind kind, Vector2D at, double arm) {
            return open(
                    kind,
                    CurvePath.polyline(at.add(Vector2D.of(-arm, 0)), at.add(Vector2D.of(arm, 0))),
                    CurvePath.polyline(at.add(Vector2D.of(0, -arm)), at.add(Vector2D.of(0, arm))));
        }

        @Override
        public Stroke shifted(Vector2D by) {
            return new Stroke(
                    kind, paths.stream().map(path -> Sheet.shifted(path, by)).toList(), closed);
        }

        @Override
        public Bounds2D bounds() {
            Bounds2D.Builder all = Bounds2D.builder();
            paths.forEach(path -> all.add(path.bounds()));
            return all.build();
        }
    }

    /**
     * A filled area.
     *
     * @param tint what it is filled with
     * @param outline its closed outline
     */
    record Area(Tint tint, CurvePath outline) implements Mark {
        @Override
        public Area shifted(Vector2D by) {
            return new Area(tint, Sheet.shifted(outline, by));
        }

        @Override
        public Bounds2D bounds() {
            return outline.bounds();
        }
    }

    /** Which part of the words stands at their place. */
    enum Anchor {
        /** Their beginning. */
        START,
        /** Their middle. */
        MIDDLE
    }

    /**
     * Words on a straight line.
     *
     * @param kind what they name
     * @param size the size of the letters
     * @param anchor which part of them stands at the place
     * @param at the place, on the line that the letters stand on
     * @param way the direction in which they are read, of length 1
     * @param text the words
     */
    record Words(TextKind kind, double size, Anchor anchor, Vector2D at, Vector2D way, String text) implements Mark {
        static Words level(TextKind kind, double size, Anchor anchor, double x, double y, String text) {
            return new Words(kind, size, anchor, Vector2D.of(x, y), Vector2D.Unit.PLUS_X, text);
        }

        @Override
        public Words shifted(Vector2D by) {
            return new Words(kind, size, anchor, at.add(by), way, text);
        }

        double width() {
            return Lettering.width(text, size);
        }

        /** Where the words begin. */
        Vector2D start() {
            return anchor == Anchor.START ? at : at.subtract(way.multiply(width() / 2));
        }

        /** The corners of the letters' box: from the foot of a g to the head of an h. */
        List<Vector2D> box() {
            Vector2D up = Vector2D.of(-way.getY(), way.getX()).multiply(size);
            Vector2D low = start().add(up.multiply(-Lettering.BELOW));
            Vector2D along = way.multiply(width());
            Vector2D high = up.multiply(Lettering.ABOVE + Lettering.BELOW);
            return List.of(low, low.add(along), low.add(along).add(high), low.add(high));
        }

        @Override
        public Bounds2D bounds() {
            return Bounds2D.from(box());
        }
    }
}
