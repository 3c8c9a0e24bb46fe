package org.draftingmaths.exchange;

/** How large a pattern is printed. */
public enum Scale {
    /** At full size, to cut by. */
    FULL(1, "Full size."),
    /** Half as large along every line, for the classroom. */
    HALF(2, "HALF SCALE, for the classroom: 1 cm on this paper is 2 cm of cloth. Do not cut a garment by it."),
    /** A quarter as large along every line, for the classroom. */
    QUARTER(4, "QUARTER SCALE, for the classroom: 1 cm on this paper is 4 cm of cloth. Do not cut a garment by it.");

    private final double times;
    private final String words;

    Scale(double times, String words) {
        this.times = times;
        this.words = words;
    }

    /**
     * How much larger the pattern is than its print.
     *
     * @return 1, 2 or 4
     */
    public double times() {
        return times;
    }

    /** What stands on the print. */
    String words() {
        return words;
    }
}
