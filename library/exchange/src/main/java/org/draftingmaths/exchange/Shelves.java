package org.draftingmaths.exchange;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * Shelves of rectangles, none turned: each stands on another of its shelf where it fits over it, or else at the end of the first shelf that has
 * room, or else on a new one. All in mm of paper.
 */
final class Shelves {

    /** How far rectangles stay off the sides, in mm of paper: so much that no line is cut at a frame. */
    static final double RIM = 2;

    /** How far they stay off one another. */
    static final double APART = 6;

    private final Page page;
    private final double widest;
    private final boolean snapped;
    private final List<Shelf> shelves = new ArrayList<>();

    /**
     * Shelves without anything on them.
     *
     * @param widest how wide a shelf may be
     * @param snapped whether a rectangle is moved to the next tile where it then needs fewer
     */
    Shelves(Page page, double widest, boolean snapped) {
        this.page = page;
        this.widest = widest;
        this.snapped = snapped;
    }

    private static final class Shelf {
        private final double low;
        private final double height;
        private final List<Stack> stacks = new ArrayList<>();
        private double right = RIM;

        Shelf(double low, double height) {
            this.low = low;
            this.height = height;
        }

        Vector2D stand(double left, double width, double tall) {
            stacks.add(new Stack(left, width, low + tall + APART));
            right = left + width + APART;
            return Vector2D.of(left, low);
        }
    }

    private static final class Stack {
        private final double left;
        private final double width;
        private double top;

        Stack(double left, double width, double top) {
            this.left = left;
            this.width = width;
            this.top = top;
        }
    }

    /** Where the lower left corner of the next rectangle stands. */
    Vector2D next(double width, double height) {
        for (Shelf shelf : shelves) {
            for (Stack stack : shelf.stacks) {
                if (width <= stack.width && stack.top + height <= shelf.low + shelf.height) {
                    Vector2D at = Vector2D.of(stack.left, stack.top);
                    stack.top += height + APART;
                    return at;
                }
            }
        }
        for (Shelf shelf : shelves) {
            double left = snap(shelf.right, width, page.frameWidth());
            if (height <= shelf.height && left + width + RIM <= widest) {
                return shelf.stand(left, width, height);
            }
        }
        Shelf last = shelves.isEmpty() ? null : shelves.get(shelves.size() - 1);
        double low = last == null ? RIM : snap(last.low + last.height + APART, height, page.frameHeight());
        Shelf shelf = new Shelf(low, height);
        shelves.add(shelf);
        return shelf.stand(RIM, width, height);
    }

    private double snap(double from, double size, double frame) {
        double step = frame - page.overlap();
        double next = Math.ceil((from - RIM) / step) * step + RIM;
        return snapped && tiles(next, size, step) < tiles(from, size, step) ? next : from;
    }

    private int tiles(double from, double size, double step) {
        return (int) (Math.ceil((from + size + RIM - page.overlap()) / step) - Math.floor((from - RIM) / step));
    }
}
