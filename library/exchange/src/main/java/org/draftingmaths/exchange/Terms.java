package org.draftingmaths.exchange;

import java.util.stream.Stream;
import org.draftingmaths.piece.Beside;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.piece.Use;

/** The words of the files. Each switch covers its whole list, so that a new entry must be given a word to compile. */
final class Terms {

    /** The word of a stitched dart among the uses. */
    static final String DART = "dart";

    /** The word of a pleat or a tuck among the uses. */
    static final String FOLDED = "folded";

    /** The word of a dart that is pressed to neither side. */
    static final String OPEN = "open";

    private Terms() {}

    static String of(Use.Under under) {
        return switch (under) {
            case BEFORE -> "before";
            case AFTER -> "after";
            case BOTH -> "both";
        };
    }

    static String of(Use.Stitched stitched) {
        return switch (stitched) {
            case LEGS -> "legs";
            case PARALLEL -> "parallel";
        };
    }

    static String of(Role role) {
        return switch (role) {
            case SEAM -> "seam";
            case FOLD -> "fold";
            case FINISHED -> "finished";
            case HEM -> "hem";
            case STYLE_LINE -> "style line";
        };
    }

    static String of(Leg leg) {
        return switch (leg) {
            case BEFORE -> "before";
            case AFTER -> "after";
        };
    }

    static String of(Beside beside) {
        return switch (beside) {
            case BEFORE -> "before";
            case AFTER -> "after";
        };
    }

    static String of(Use.Kind kind) {
        return switch (kind) {
            case SLASH -> "slash";
            case EASE -> "ease";
            case GATHERS -> "gathers";
            case FLARE -> "flare";
        };
    }

    static String of(Seam.How how) {
        return switch (how) {
            case EASE -> "ease";
            case GATHERS -> "gathers";
            case STRETCH -> "stretch";
            case STAY -> "stay";
        };
    }

    /** All that a surplus can become. */
    static String[] uses() {
        return Stream.concat(
                        Stream.of(DART, FOLDED), Stream.of(Use.Kind.values()).map(Terms::of))
                .toArray(String[]::new);
    }

    /** All ways in which a dart can be pressed. */
    static String[] presses() {
        return Stream.concat(Stream.of(Leg.values()).map(Terms::of), Stream.of(OPEN))
                .toArray(String[]::new);
    }
}
