package org.draftingmaths.suppose;

/** How sure a supposition is. What each asks of mates, darts and folds stands at {@link Suppose}. */
public enum Sureness {
    /** Nothing else is known that has this shape; it may be relied on until the maker says otherwise. */
    CERTAIN("certain"),
    /** The best reading of the shape by a clear margin; look at it before cutting. */
    LIKELY("likely"),
    /** One reading of several, or one with too little shape to tell; only the maker knows. */
    POSSIBLE("possible");

    private final String words;

    Sureness(String words) {
        this.words = words;
    }

    /**
     * The word for it.
     *
     * @return for example {@code likely}
     */
    public String words() {
        return words;
    }
}
