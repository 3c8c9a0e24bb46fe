package org.draftingmaths.piece;

/** What becomes of the surplus that an opening gives. */
public sealed interface Use {

    /** Whether the opening is stitched shut at its mouth, so that its width is not part of the folded edge. */
    boolean stitched();

    /**
     * Stitched as a dart from the mouth to a point short of the tip.
     *
     * @param setBack how far in mm the sewn tip lies from the apex, on the bisector
     * @param press the leg whose panel the underlay is pressed to
     */
    record Dart(double setBack, Leg press) implements Use {
        /** Checks the set-back. */
        public Dart {
            if (!(setBack >= 0 && Double.isFinite(setBack))) {
                throw new IllegalArgumentException("Set-back must be 0 mm or more: " + setBack + " mm.");
            }
        }

        @Override
        public boolean stitched() {
            return true;
        }
    }

    /**
     * Left in the edge, which is drawn across it.
     *
     * @param kind what it is left as
     */
    record Left(Kind kind) implements Use {
        @Override
        public boolean stitched() {
            return false;
        }
    }

    /** As what a surplus can be left in the edge. */
    enum Kind {
        /** A slash whose use is not decided yet. */
        SLASH,
        /** Shrunk or held in, between two notches. */
        EASE,
        /** Gathered between two notches. */
        GATHERS,
        /** Hanging free. */
        FLARE
    }

    /** A slash whose use is not decided yet. */
    Use SLASH = new Left(Kind.SLASH);
}
