package org.draftingmaths.piece;

import java.util.Optional;
import org.draftingmaths.unit.Asked;

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

        /** The answer for a pleat or a tuck. */
        T folded(Folded folded);
    }

    /**
     * Stitched as a dart from the mouth to a point short of the tip.
     *
     * @param setBack how far in mm the sewn tip lies from the apex, on the bisector
     * @param press the leg whose panel the underlay is pressed to; none when it is pressed open, each half to its own side
     * @param shape the shape of the stitch lines
     */
    record Dart(double setBack, Optional<Leg> press, LegShape shape) implements Use {
        /** Checks the set-back. */
        public Dart {
            Asked.lengthOrNone("A set-back", setBack);
        }

        /**
         * Stitched along straight legs and pressed to one side.
         *
         * @param setBack how far in mm the sewn tip lies from the apex, on the bisector
         * @param press the leg whose panel the underlay is pressed to
         */
        public Dart(double setBack, Leg press) {
            this(setBack, Optional.of(press), LegShape.STRAIGHT);
        }

        /**
         * The same dart with its sewn tip elsewhere.
         *
         * @param other how far in mm the sewn tip lies from the apex, on the bisector
         * @return the use
         */
        public Dart withSetBack(double other) {
            return new Dart(other, press, shape);
        }

        /**
         * The same dart pressed to one side.
         *
         * @param leg the leg whose panel the underlay is pressed to
         * @return the use
         */
        public Dart pressed(Leg leg) {
            return new Dart(setBack, Optional.of(leg), shape);
        }

        /**
         * The same dart pressed open: slit along its fold, or its fold laid over the seam.
         *
         * @return the use
         */
        public Dart pressedOpen() {
            return new Dart(setBack, Optional.empty(), shape);
        }

        /**
         * The same dart with shaped legs.
         *
         * @param other the shape of the stitch lines
         * @return the use
         */
        public Dart shaped(LegShape other) {
            return new Dart(setBack, press, other);
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

    /**
     * Folded as a pleat or a tuck: the two legs are brought together and the surplus lies folded beneath. From the end of the stitching
     * on the cloth is released.
     *
     * @param under on which side the underlay lies
     * @param depth how far in mm it is stitched down from the edge; 0 when it is held in the seam alone
     * @param lines along which lines it is stitched
     */
    record Folded(Under under, double depth, Stitched lines) implements Use {
        /** Checks the depth. */
        public Folded {
            if (!(depth >= 0 && Double.isFinite(depth))) {
                throw new IllegalArgumentException(
                        "A fold is stitched down for 0 mm or more from the edge: " + depth + " mm.");
            }
        }

        @Override
        public boolean stitched() {
            return true;
        }

        @Override
        public <T> T of(Cases<T> cases) {
            return cases.folded(this);
        }
    }

    /** Where the underlay of a fold lies. */
    enum Under {
        /** Beneath the cloth before the opening: the before leg is the fold that is seen. */
        BEFORE,
        /** Beneath the cloth after it: the after leg is the fold that is seen. */
        AFTER,
        /** Half of it beneath either side: both legs are folds and meet on the centre line. */
        BOTH
    }

    /** Along which lines a fold is stitched. */
    enum Stitched {
        /** Along the two legs. */
        LEGS,
        /** From the ends of the legs on square to the mouth: a tuck that takes as much all along. */
        PARALLEL
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
