package org.draftingmaths.finish;

/**
 * How often a piece is cut of one cloth. That it lies on a fold is not said here but follows from the piece: one with a fold
 * edge is cut on the fold, one that was opened out is not.
 *
 * @param count how many, 1 or more
 * @param mirrored whether they are mirrored pairs, a left and a right
 * @param cloth of what
 * @param oneLayer whether the cloth must lie in a single layer with its face up, as for a piece on the bias
 */
public record Cutting(int count, boolean mirrored, Cloth cloth, boolean oneLayer) {

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
     * Cut however the cloth lies.
     *
     * @param count how many, 1 or more
     * @param mirrored whether they are mirrored pairs, a left and a right
     * @param cloth of what
     */
    public Cutting(int count, boolean mirrored, Cloth cloth) {
        this(count, mirrored, cloth, false);
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
     * The same from a single layer of cloth, face up. Of two layers face to face the lower is cut as a mirror image, and a piece on the bias lies
     * there on the other bias.
     *
     * @return the instruction
     */
    public Cutting inOneLayer() {
        return new Cutting(count, mirrored, cloth, true);
    }

    /**
     * The instruction in words.
     *
     * @param onFold whether the piece lies on a fold
     * @return for example {@code cut 2, a pair, self} or {@code cut 1 on the fold, self}
     */
    public String words(boolean onFold) {
        String pairs = count == 2 ? ", a pair" : ", " + count / 2 + " pairs";
        return "cut " + count + (onFold ? " on the fold" : "") + (mirrored ? pairs : "") + ", " + cloth.words()
                + (oneLayer ? ", single layer, face up" : "");
    }
}
