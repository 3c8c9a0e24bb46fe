package org.draftingmaths.exchange;

import java.time.Duration;

/**
 * How much a file may ask of the reader. A file that asks for more is refused with the place where it does, whatever it holds:
 * a stranger's file can take neither all memory nor all day.
 *
 * <p>With the default limits a reader stays below 384 MB of heap and stops after 30 seconds.
 *
 * @param bytes how many bytes a file may have
 * @param values how many numbers, names and brackets of JSON, or points of SVG path data, it may hold
 * @param depth how deeply brackets or elements may be nested
 * @param parts how many things of one kind may stand in one list: pieces, seams, edges, runs, shapes, rows
 * @param time how long the reading may take
 */
public record Limits(long bytes, int values, int depth, int parts, Duration time) {

    /** 16 MiB, 1 000 000 values, nested 100 deep, 2000 parts of a kind, 30 seconds. */
    public static final Limits DEFAULT = new Limits(16L << 20, 1_000_000, 100, 2_000, Duration.ofSeconds(30));

    /** Checks that every limit is 1 or more, and the time more than none. */
    public Limits {
        requirePositive("bytes", bytes);
        requirePositive("values", values);
        requirePositive("depth", depth);
        requirePositive("parts", parts);
        if (time.isNegative() || time.isZero()) {
            throw new IllegalArgumentException("A time limit is more than 0 seconds: " + time + ".");
        }
    }

    private static void requirePositive(String what, long limit) {
        if (limit < 1) {
            throw new IllegalArgumentException("A limit of " + what + " is 1 or more: " + limit + ".");
        }
    }

    /**
     * The same limits with another time.
     *
     * @param other how long the reading may take
     * @return the limits
     */
    public Limits within(Duration other) {
        return new Limits(bytes, values, depth, parts, other);
    }
}
