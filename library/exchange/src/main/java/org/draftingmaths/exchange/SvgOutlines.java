package org.draftingmaths.exchange;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/**
 * Outlines drawn elsewhere, taken from SVG so that they can be checked. {@code FORMAT.md} beside the sources says how a drawing is
 * read.
 *
 * <ul>
 *   <li>Read are paths with all commands, polygons, polylines, lines, rects, circles and ellipses, under nested transforms. Quadratics
 *       become the cubics that they are; an elliptic arc becomes cubics that stray from it by no more than
 *       {@link SvgOptions#arcs()}.
 *   <li>A closed shape is a piece named by its id. The open shapes of a group are joined end to end to the outline of a piece named by
 *       the group's id; each is an edge named by its own.
 *   <li>An outline is cut into edges where it turns by more than {@link SvgOptions#corner()}; edges without a name are numbered
 *       {@code edge 1}, {@code edge 2} ... round the piece, anticlockwise.
 *   <li>Gaps up to {@link SvgOptions#gap()} are closed, and a note says so. An outline with a larger one is a
 *       {@link org.draftingmaths.ledger.Finding.Kind#OUTLINE_OPEN finding}, and so is a
 *       {@link org.draftingmaths.ledger.Finding.Kind#SECOND_RING second ring}; the largest is taken.
 *   <li>The scale is what the file states by a width or height in mm, cm, in, pt or pc, or what {@link SvgOptions#unit()} says. A file
 *       that does not state it is refused, with what to say.
 *   <li>No document type, entity or reference is followed, and nothing is fetched.
 * </ul>
 *
 * <pre>{@code
 * org.draftingmaths.exchange.Traced traced = SvgOutlines.read(Path.of("skirt.svg"), SvgOptions.DEFAULT, Limits.DEFAULT);
 * }</pre>
 */
public final class SvgOutlines {

    private SvgOutlines() {}

    /**
     * Reads outlines from a file. The draft is named after it.
     *
     * @param file the file
     * @param options scale, corners and gaps
     * @param limits how much the file may ask
     * @return the pieces, what is wrong with them, and what was done to them
     * @throws IOException if the file cannot be read
     * @throws FileException if it does not hold outlines, states no scale, or asks too much; the message gives line and column
     */
    public static Traced read(Path file, SvgOptions options, Limits limits) throws IOException {
        return read(Source.of(file, limits), options);
    }

    /**
     * Reads outlines from text.
     *
     * @param name the name by which refusals call it, and from which the draft has its own
     * @param text the text
     * @param options scale, corners and gaps
     * @param limits how much it may ask
     * @return the pieces, what is wrong with them, and what was done to them
     * @throws FileException if it does not hold outlines, states no scale, or asks too much; the message gives line and column
     */
    public static Traced parse(String name, String text, SvgOptions options, Limits limits) {
        return read(new Source(name, text.getBytes(StandardCharsets.UTF_8), limits), options);
    }

    static Traced read(Source source, SvgOptions options) {
        String file = source.name();
        int dot = file.lastIndexOf('.');
        return Tracing.of(dot > 0 ? file.substring(0, dot) : file, source, options);
    }
}
