package org.draftingmaths.lessons.kernel;

/** The functions that every cell can call by their simple names. */
public final class Notebook {
    /** Inheritable, so that the fresh thread of each snippet, and threads that a cell starts, find their cell's output. */
    private static final InheritableThreadLocal<CellOutput> OUTPUT = new InheritableThreadLocal<>();

    private Notebook() {}

    /**
     * Text as a picture, HTML or another media type; as the last expression of a cell it is the cell's picture.
     *
     * <pre>{@code render(svg, "image/svg+xml", "text/html")}</pre>
     *
     * @param content its {@code toString} is the text
     * @param mediaTypes the types to offer it under, plain text when none is given
     * @return what the notebook shows
     */
    public static Rendering render(Object content, String... mediaTypes) {
        return Rendering.as(content, mediaTypes);
    }

    /**
     * Shows something in the middle of a cell.
     *
     * @param content a {@link Rendering}, or anything with a readable {@code toString}
     * @param mediaTypes the types to offer it under, plain text when none is given
     * @throws IllegalStateException outside a running cell
     */
    public static void display(Object content, String... mediaTypes) {
        CellOutput output = OUTPUT.get();
        if (output == null) {
            throw new IllegalStateException("display works only inside a running cell");
        }
        output.show(mediaTypes.length == 0 ? Rendering.of(content) : Rendering.as(content, mediaTypes));
    }

    static void bind(CellOutput output) {
        OUTPUT.set(output);
    }

    static void release() {
        OUTPUT.remove();
    }
}
