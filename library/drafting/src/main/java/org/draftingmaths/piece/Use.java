package org.draftingmaths.piece;

/** What becomes of the surplus that an opening gives. */
public sealed interface Use {

    /** Whether the opening is stitched shut at its mouth, so that its width is not part of the folded edge. */
    boolean stitched();

    /**
     * One answer for each kind of use.
     *
     * @param cases the answers
     * @param <T> what is answered
     * @return the answer of this use's kind
     */
    <T> T of(Cases<T> cases);

    /**
     * An answer for each kind of use, so that whoever must know all kinds (as files do) no longer compiles when one is added.
     *
     * @param <T> what is answered
     */
    interface Cases<T> {
        /** The answer for a stitched dart. */
        T dart(Dart dart);

        /** The answer for what is left in the edge. */
        T left(Left left);
    }

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

        @Override
        public <T> T of(Cases<T> cases) {
            return cases.dart(this);
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

        @Override
        public <T> T of(Cases<T> cases) {
            return cases.left(this);
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
