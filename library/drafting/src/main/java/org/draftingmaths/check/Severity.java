package org.draftingmaths.check;

/** How much a finding weighs; {@link Weights} says which. */
public enum Severity {
    /** It cannot be sewn as it is drawn, or not as it is meant. */
    FAULT("fault"),
    /** A length beyond the tolerance that many who sew would still take. */
    SLIGHT("slight"),
    /** It can be sewn; whether it should be, a patternmaker judges. */
    TO_JUDGE("to judge");

    private final String words;

    Severity(String words) {
        this.words = words;
    }

    /**
     * The severity in plain words.
     *
     * @return for example {@code to judge}
     */
    public String words() {
        return words;
    }
}
