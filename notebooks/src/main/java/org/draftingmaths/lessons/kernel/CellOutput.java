package org.draftingmaths.lessons.kernel;

/** Takes what a cell puts out while it runs; its value comes afterwards, from {@link CellEngine#run}. */
public interface CellOutput {
    /**
     * Takes text written to {@code System.out}.
     *
     * @param text any part of what was written, in order
     */
    void print(String text);

    /**
     * Takes text written to {@code System.err}.
     *
     * @param text any part of what was written, in order
     */
    void printError(String text);

    /**
     * Takes what the cell passed to {@code display}.
     *
     * @param shown content by media type
     */
    void show(Rendering shown);
}
