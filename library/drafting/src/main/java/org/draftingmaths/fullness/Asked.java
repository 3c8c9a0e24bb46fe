package org.draftingmaths.fullness;

import java.util.Locale;

/** What was asked, judged by itself: the value and the allowed range are said. */
final class Asked {

    private Asked() {}

    static void length(String what, double mm) {
        if (!(mm > 0 && Double.isFinite(mm))) {
            throw new IllegalArgumentException(what + " is more than 0 mm: " + mm + " mm.");
        }
    }

    /** A length that may be nothing. */
    static void width(String what, double mm) {
        if (!(mm >= 0 && Double.isFinite(mm))) {
            throw new IllegalArgumentException(what + " is 0 mm or more: " + mm + " mm.");
        }
    }

    static void count(String what, int count, int most) {
        if (!(count >= 1 && count <= most)) {
            throw new IllegalArgumentException(what + " are from 1 to " + most + ": " + count + ".");
        }
    }

    static void ratio(String what, double ratio) {
        if (!(ratio > 1 && Double.isFinite(ratio))) {
            throw new IllegalArgumentException(what + " is more than 1: " + ratio + ".");
        }
    }

    /** The larger of two lengths. */
    static void longer(String what, double mm, String than, double least) {
        if (!(mm > least && Double.isFinite(mm))) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "%s is more than %s of %s mm: %s mm.", what, than, least, mm));
        }
    }
}
