package org.draftingmaths.exchange;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.draftingmaths.piece.Draft;

/**
 * Drafts as JSON files, version 2 of this library's own format; {@code FORMAT.md} beside the sources describes it, and
 * {@code draft-2.schema.json} beside this class is its JSON Schema. Version 1, whose seams join one edge with one edge, is read as well.
 *
 * <p>Law: {@code parse(name, text(draft), limits).equals(draft)}, every double bit for bit, for every draft that the library
 * makes. Same draft, same bytes.
 *
 * <pre>{@code
 * DraftFiles.write(draft, Path.of("skirt.json"));
 * Draft same = DraftFiles.read(Path.of("skirt.json"), Limits.DEFAULT);
 * }</pre>
 */
public final class DraftFiles {

    /** What stands in the field {@code format}. */
    public static final String FORMAT = "drafting-maths draft";

    /** The version that is written; it and all before it are read. */
    public static final int VERSION = 2;

    private DraftFiles() {}

    /**
     * A draft as JSON.
     *
     * @param draft the draft
     * @return the text, lines ended by a line feed
     * @throws IllegalArgumentException when a name holds half a surrogate pair, which no file can keep
     */
    public static String text(Draft draft) {
        return DraftWriting.text(draft);
    }

    /**
     * Writes a draft to a file: whole or not at all, see {@link Saved#text}.
     *
     * @param draft the draft
     * @param file the file; one that is there is replaced
     * @throws IOException if it cannot be written
     */
    public static void write(Draft draft, Path file) throws IOException {
        Saved.text(file, text(draft));
    }

    /**
     * Reads a draft from a file.
     *
     * @param file the file
     * @param limits how much the file may ask
     * @return the draft
     * @throws IOException if the file cannot be read
     * @throws FileException if it does not hold a draft, or asks too much; the message gives line, column and JSON pointer
     */
    public static Draft read(Path file, Limits limits) throws IOException {
        return read(Source.of(file, limits));
    }

    /**
     * Reads a draft from text.
     *
     * @param name the name by which refusals call it
     * @param text the text
     * @param limits how much it may ask
     * @return the draft
     * @throws FileException if it does not hold a draft, or asks too much; the message gives line, column and JSON pointer
     */
    public static Draft parse(String name, String text, Limits limits) {
        return read(new Source(name, text.getBytes(StandardCharsets.UTF_8), limits));
    }

    static Draft read(Source source) {
        return DraftReading.draft(JsonText.read(source));
    }
}
