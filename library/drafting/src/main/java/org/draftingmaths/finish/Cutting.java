package org.draftingmaths.finish;

import org.draftingmaths.piece.Grain;
import org.draftingmaths.piece.Piece;

/**
 * How often a piece is cut of one cloth. That it lies on a fold is not said here but follows from the piece: one with a fold
 * edge is cut on the fold, one that was opened out is not.
 *
 * @param count how many, 1 or more
 * @param mirrored whether they are mirrored pairs, a left and a right
 * @param cloth of what
 */
public record Cutting(int count, boolean mirrored, Cloth cloth) {

    /** Of what a piece is cut. */
    public enum Cloth {
        /** The cloth of the garment. */
        SELF("self"),
        /** Cloth for facings, where it is not the garment's own. */
        FACING("facing"),
        /** Lining. */
        LINING("lining"),
        /** Interfacing. */
        INTERFACING("interfacing");

        private final String words;

        Cloth(String words) {
            this.words = words;
        }

        /**
         * The cloth in words.
         *
         * @return for example {@code self}
         */
        public String words() {
            return words;
        }
    }

    /** Checks the count. */
    public Cutting {
        if (count < 1 || (mirrored && count % 2 != 0)) {
            throw new IllegalArgumentException(
                    "A piece is cut once or more, pairs an even number of times: " + count + ".");
        }
    }

    /**
     * Cut once of the garment's cloth.
     *
     * @return the instruction
     */
    public static Cutting once() {
        return new Cutting(1, false, Cloth.SELF);
    }

    /**
     * A left and a right of the garment's cloth.
     *
     * @return the instruction
     */
    public static Cutting pair() {
        return new Cutting(2, true, Cloth.SELF);
    }

    /**
     * The instruction in words.
     *
     * @param piece the piece
     * @return for example {@code cut 2, a pair, self}, {@code cut 1 on the fold, self}, or of a piece on the bias {@code cut 1, single layer,
     *     face up, self}
     */
    public String words(Piece piece) {
        boolean onFold = FinalPattern.isOnFold(piece);
        String pairs = count == 2 ? ", a pair" : ", " + count / 2 + " pairs";
        String layer = !onFold && !mirrored && isOnBias(piece) ? ", single layer, face up" : "";
        return "cut " + count + (onFold ? " on the fold" : "") + (mirrored ? pairs : "") + layer + ", " + cloth.words();
    }

    /** Pieces are drawn upright: a grain line nearer to 45° than to the upright or the level lies on the bias. */
    private static boolean isOnBias(Piece piece) {
        return piece.grain()
                .map(Grain::direction)
                .filter(way -> Math.abs(2 * way.getX() * way.getY()) > Math.sqrt(0.5) * way.normSq())
                .isPresent();
    }
}
