package org.draftingmaths.lessons.kernel;

/**
 * Why a cell did not run to its end. The message is all there is to say: cell number, line, what is wrong, the source
 * line and a caret below the place. There is no stack trace, because Jupyter builds what it shows from the message.
 */
public final class CellException extends Exception {
    private static final long serialVersionUID = 1L;

    /**
     * @param message what the reader of the notebook is told, several lines
     */
    public CellException(String message) {
        super(message, null, false, false);
    }
}
