package org.draftingmaths.lessons.kernel;

/**
 * Why a cell did not run to its end. The message is all there is to say: cell number, line, what is wrong, the source
 * line and a caret below the place. There is no stack trace, because Jupyter builds what it shows from the message.
 */
public final class CellException extends Exception {
    private static final long serialVersionUID = 1L;

    private final boolean thrown;

    /**
     * A failure to compile, to obey or to end.
     *
     * @param message what the reader of the notebook is told, several lines
     */
    public CellException(String message) {
        this(message, false);
    }

    private CellException(String message, boolean thrown) {
        super(message, null, false, false);
        this.thrown = thrown;
    }

    /** The same, said of code that compiled and threw. */
    CellException asThrown() {
        return new CellException(getMessage(), true);
    }

    /**
     * The same with words before its message.
     *
     * @param words such as the name of the lesson
     * @return the longer one
     */
    public CellException after(String words) {
        return new CellException(words + getMessage(), thrown);
    }

    /** Whether the cell's own code threw, rather than failed to compile or was interrupted. */
    public boolean isThrown() {
        return thrown;
    }
}
