package org.draftingmaths.piece;

import java.util.List;

/**
 * Two edges that are sewn together.
 *
 * @param name the name of the seam, unique in its draft
 * @param first the one edge
 * @param second the other
 * @param held for each notch interval that is not sewn flat, what is declared of it; the others are flat
 */
public record Seam(String name, Mate first, Mate second, List<Held> held) {

    /** Copies the list. */
    public Seam {
        Names.require(name, "A seam");
        held = List.copyOf(held);
    }

    /**
     * A seam sewn flat.
     *
     * @param name the name of the seam
     * @param first the one edge
     * @param second the other
     * @return the seam
     */
    public static Seam flat(String name, Mate first, Mate second) {
        return new Seam(name, first, second, List.of());
    }

    /**
     * One side of a seam.
     *
     * @param piece the name of the piece
     * @param edge the name of its edge
     * @param forward whether it is sewn from the edge's own start to its end
     */
    public record Mate(String piece, String edge, boolean forward) {

        /**
         * An edge sewn from its own start to its end.
         *
         * @param piece the name of the piece
         * @param edge the name of its edge
         * @return the mate
         */
        public static Mate of(String piece, String edge) {
            return new Mate(piece, edge, true);
        }

        /**
         * An edge sewn from its own end to its start.
         *
         * @param piece the name of the piece
         * @param edge the name of its edge
         * @return the mate
         */
        public static Mate backwards(String piece, String edge) {
            return new Mate(piece, edge, false);
        }
    }

    /**
     * What is declared of one notch interval that is not sewn flat.
     *
     * @param interval the interval, counted from 1 in the direction of sewing
     * @param surplus by how many mm the first edge is longer than the second there; negative when it is stretched to it
     * @param how by what it is brought to fit
     * @param reason why, in words
     */
    public record Held(int interval, double surplus, How how, String reason) {
        /** Checks the interval. */
        public Held {
            if (interval < 1 || !Double.isFinite(surplus)) {
                throw new IllegalArgumentException("Notch intervals count from 1, surplus is finite: interval "
                        + interval + ", " + surplus + " mm.");
            }
        }
    }

    /** By what one edge is brought to the length of its mate. */
    public enum How {
        /** Held in or shrunk. */
        EASE,
        /** Gathered. */
        GATHERS,
        /** Stretched. */
        STRETCH,
        /** Held to a tape. */
        STAY
    }
}
