package org.draftingmaths.fullness;

import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.ledger.Reach;
import org.draftingmaths.unit.Asked;

/**
 * How an edge hangs between two points on one level: as a cord does. The cord has the half-length {@code l}, the points are
 * {@code 2 c} apart, its lowest point lies {@code d} below them.
 *
 * <pre>
 *   V          l = sqrt(c^2 + d^2)                             pulled to a point: the least edge for a drop
 *   catenary   d = k (cosh(c/k) - 1),  l = k sinh(c/k)         hanging free
 * </pre>
 *
 * <p>With {@code u = c/k} the catenary's drop is {@code d/c = (cosh u - 1)/u} and its length {@code l/c = sinh(u)/u}; both rise with
 * {@code u}, so either is solved by halving to the last bit of {@code u}. Answers are accurate to 1e-9 mm for spans and drops of 1
 * mm to 10 m.
 */
public enum Hang {
    /** Pulled down to a point by its own folds: the least half-edge that a drop can have. */
    V {
        @Override
        double length(double half, double drop) {
            return Math.hypot(half, drop);
        }

        @Override
        double drop(double half, double length) {
            return Math.sqrt((length - half) * (length + half));
        }
    },
    /** Hanging free, as a chain does. */
    CATENARY {
        @Override
        double length(double half, double drop) {
            if (drop == 0) {
                return half;
            }
            double u = Bisection.rising(Hang::dropPerHalf, drop / half, 0, MOST);
            return half * Math.sinh(u) / u;
        }

        @Override
        double drop(double half, double length) {
            if (length == half) {
                return 0;
            }
            double u = Bisection.rising(Hang::excess, (length - half) / half, 0, MOST);
            return half * dropPerHalf(u);
        }
    };

    /** Beyond this {@code cosh} has no value; a cord that steep is no garment. */
    private static final double MOST = 700;

    /** {@code (cosh u - 1)/u} as {@code 2 sinh^2(u/2)/u}, which loses no digits when {@code u} is small. */
    private static double dropPerHalf(double u) {
        double half = Math.sinh(u / 2);
        return 2 * half * half / u;
    }

    /** {@code sinh(u)/u - 1}, by its series where the difference would lose digits. */
    private static double excess(double u) {
        if (u > 0.5) {
            return Math.sinh(u) / u - 1;
        }
        double sum = 0;
        double term = 1;
        for (int i = 2; i <= 20; i += 2) {
            term *= u * u / (i * (i + 1));
            sum += term;
        }
        return sum;
    }

    abstract double length(double half, double drop);

    abstract double drop(double half, double length);

    /**
     * The half-length of the edge for a drop.
     *
     * @param half half the distance between the two points, in mm
     * @param drop how far the lowest point lies below them, in mm
     * @return the half-length in mm; there is one, and it is unique
     * @throws IllegalArgumentException when the distance is not more than 0 or the drop is less than 0
     */
    public double lengthFor(double half, double drop) {
        Asked.length("Half the distance between the two points", half);
        Asked.lengthOrNone("The drop of an edge", drop);
        return length(half, drop);
    }

    /**
     * The drop of an edge of a half-length.
     *
     * @param half half the distance between the two points, in mm
     * @param length the half-length of the edge, in mm
     * @return the one drop; none when the edge is too short to reach from point to point
     * @throws IllegalArgumentException when a figure is not more than 0
     */
    public Answer dropFor(double half, double length) {
        Asked.length("Half the distance between the two points", half);
        Asked.length("The half-length of an edge", length);
        String asked = "Drop of an edge of " + Words.of(length);
        if (length < half) {
            Reach reach = new Reach(Quantity.LENGTH, length, half, Double.POSITIVE_INFINITY);
            return new Answer.None(asked, "the edge must reach from point to point", reach);
        }
        return new Answer.Unique(asked, Quantity.LENGTH, drop(half, length));
    }
}
