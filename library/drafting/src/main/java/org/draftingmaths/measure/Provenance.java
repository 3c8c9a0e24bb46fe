package org.draftingmaths.measure;

import java.util.Objects;

/** Where the value of a measure comes from. */
public sealed interface Provenance {

    /** The value was given: taken with the tape, or read from a size chart. */
    Provenance MEASURED = new Measured();

    /**
     * In words.
     *
     * @return {@code measured}, or {@code proportioned (name of the rule)}
     */
    String text();

    /** The value was given: taken with the tape, or read from a size chart. */
    record Measured() implements Provenance {
        @Override
        public String text() {
            return "measured";
        }
    }

    /**
     * The value was worked out from other measures.
     *
     * @param rule the name of the rule that did it
     */
    record Proportioned(String rule) implements Provenance {
        /** Makes a provenance. */
        public Proportioned {
            Objects.requireNonNull(rule, "rule");
        }

        @Override
        public String text() {
            return "proportioned (" + rule + ")";
        }
    }
}
