package org.draftingmaths.unit;

import java.util.Locale;

/**
 * What was asked, judged by itself: where a figure cannot be, the value and the allowed range are said.
 *
 * <p>All throw {@link IllegalArgumentException}, for what is not finite as well.
 *
 * <pre>{@code
 * Asked.length("A width", -3); // A width is more than 0 mm: -3.0 mm.
 * }</pre>
 */
public final class Asked {

    private Asked() {}

    /**
     * A length of more than nothing.
     *
     * @param what what it is, to begin a sentence with
     * @param mm the length in mm
     */
    public static void length(String what, double mm) {
        require(mm > 0 && Double.isFinite(mm), what + " is more than 0 mm: " + mm + " mm.");
    }

    /**
     * A length that may be nothing.
     *
     * @param what what it is
     * @param mm the length in mm
     */
    public static void lengthOrNone(String what, double mm) {
        require(mm >= 0 && Double.isFinite(mm), what + " is 0 mm or more: " + mm + " mm.");
    }

    /**
     * An angle of more than nothing.
     *
     * @param what what it is
     * @param rad the angle in radians
     */
    public static void angle(String what, double rad) {
        require(rad > 0 && Double.isFinite(rad), what + " is more than 0: " + rad + " rad.");
    }

    /**
     * An angle that may be nothing.
     *
     * @param what what it is
     * @param rad the angle in radians
     */
    public static void angleOrNone(String what, double rad) {
        require(rad >= 0 && Double.isFinite(rad), what + " is 0 rad or more: " + rad + " rad.");
    }

    /**
     * A share of a whole: more than nothing, at most all of it.
     *
     * @param what what it is
     * @param share the share
     */
    public static void share(String what, double share) {
        require(share > 0 && share <= 1, what + " is more than 0 and at most 1: " + share + ".");
    }

    /**
     * A count from 1 on.
     *
     * @param what what is counted, in the plural
     * @param count how many
     * @param most how many there may be
     */
    public static void count(String what, int count, int most) {
        require(count >= 1 && count <= most, what + " are from 1 to " + most + ": " + count + ".");
    }

    /**
     * A ratio of more than 1.
     *
     * @param what what it is
     * @param ratio the ratio
     */
    public static void ratio(String what, double ratio) {
        require(ratio > 1 && Double.isFinite(ratio), what + " is more than 1: " + ratio + ".");
    }

    /**
     * The larger of two lengths.
     *
     * @param what what it is
     * @param mm the length in mm
     * @param than what it is longer than
     * @param least how long that is, in mm
     */
    public static void longer(String what, double mm, String than, double least) {
        require(
                mm > least && Double.isFinite(mm),
                String.format(Locale.ROOT, "%s is more than %s of %s mm: %s mm.", what, than, least, mm));
    }

    private static void require(boolean can, String otherwise) {
        if (!can) {
            throw new IllegalArgumentException(otherwise);
        }
    }
}
