package org.draftingmaths.exchange;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** A draft from whatever kind of file holds it. */
public final class AnyDraft {

    private AnyDraft() {}

    /**
     * Reads a draft from JSON or outlines from SVG; the first character of the file, a brace or an angle bracket, tells which.
     *
     * @param file the file
     * @param options how outlines are taken from SVG
     * @param limits how much the file may ask
     * @return the draft; of JSON there are neither findings nor notes
     * @throws IOException if the file cannot be read
     * @throws FileException if it is neither, or does not hold what it should; the message gives line and column
     */
    public static Traced read(Path file, SvgOptions options, Limits limits) throws IOException {
        Source source = Source.of(file, limits);
        String begin = source.text().stripLeading();
        if (begin.startsWith("<")) {
            return SvgOutlines.read(source, options);
        }
        if (begin.startsWith("{")) {
            return new Traced(DraftFiles.read(source), List.of(), List.of());
        }
        throw source.refused(
                "", "this is neither a draft in JSON nor a drawing in SVG: it begins with neither { nor <");
    }
}
