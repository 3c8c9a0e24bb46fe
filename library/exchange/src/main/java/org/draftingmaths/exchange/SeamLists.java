package org.draftingmaths.exchange;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Edge;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.unit.Length;

/**
 * Which edges of a draft are sewn together, as a table in CSV (RFC 4180, UTF-8). Lines that begin with {@code #} are comments.
 *
 * <pre>
 * edge,               mate,                ease
 * side seam of front, side seam of back,   0
 * waist of front,     waistband,           1/4 in
 * cap,                armhole of front,    2.5 cm
 * </pre>
 *
 * <ul>
 *   <li>{@code edge} and {@code mate}, both needed: an edge by its name, where one piece alone has it, or {@code edge of piece}.
 *   <li>{@code ease}, needed: by how much the edge is longer than its mate, in the forms of {@link Length#parse}, with a minus sign
 *       when it is shorter; {@code 0} or nothing when sewn flat.
 *   <li>{@code seam}: the name of the seam; left out, it is {@code edge on mate} as they are written. Lines of one name are notch
 *       intervals of one seam.
 *   <li>{@code edge direction}, {@code mate direction}: {@code forward} (or nothing) when it is sewn from its own start to its end,
 *       {@code backward} otherwise. It matters to the order of notch intervals.
 *   <li>{@code interval}: the notch interval that has the ease, counted from 1 in the direction of sewing; left out, 1.
 *   <li>{@code how}: {@code ease} (or nothing), {@code gathers}, {@code stretch} or {@code stay}.
 *   <li>{@code reason}: why, in words.
 * </ul>
 */
public final class SeamLists {

    static final String SEAM = "seam";
    static final String EDGE = "edge";
    static final String EDGE_DIRECTION = "edge direction";
    static final String MATE = "mate";
    static final String MATE_DIRECTION = "mate direction";
    static final String INTERVAL = "interval";
    static final String EASE = "ease";
    static final String HOW = "how";
    static final String REASON = "reason";

    /** All columns in the order in which they are written. */
    static final List<String> COLUMNS =
            List.of(SEAM, EDGE, EDGE_DIRECTION, MATE, MATE_DIRECTION, INTERVAL, EASE, HOW, REASON);

    static final String FORWARD = "forward";
    static final String BACKWARD = "backward";

    /** Between an edge and its piece. */
    static final String OF = " of ";

    private SeamLists() {}

    /**
     * A draft with the seams of a list in place of its own.
     *
     * @param file the list
     * @param draft the draft whose edges it joins
     * @param limits how much the file may ask
     * @return the draft with these seams, in the order of the list
     * @throws IOException if the file cannot be read
     * @throws FileException if the list says something that cannot be; the message gives line and column
     */
    public static Draft read(Path file, Draft draft, Limits limits) throws IOException {
        return SeamRows.onto(draft, Source.of(file, limits));
    }

    /**
     * A draft with the seams of a list in place of its own.
     *
     * @param name the name by which refusals call the list
     * @param text the list
     * @param draft the draft whose edges it joins
     * @param limits how much the list may ask
     * @return the draft with these seams, in the order of the list
     * @throws FileException if the list says something that cannot be; the message gives line and column
     */
    public static Draft parse(String name, String text, Draft draft, Limits limits) {
        return SeamRows.onto(draft, new Source(name, text.getBytes(StandardCharsets.UTF_8), limits));
    }

    /**
     * The seams of a draft as a list.
     *
     * <p>Law: {@code parse(name, text(draft), draft, limits).equals(draft)}.
     *
     * @param draft the draft
     * @return the list, ease in mm with all digits, lines ended by a line feed
     * @throws IllegalArgumentException when a name or a reason begins or ends with a space, which a list does not keep, or when an
     *     edge is called {@code a of b} as another is in full
     */
    public static String text(Draft draft) {
        StringWriter text = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text)) {
            csv.writeRecord(COLUMNS);
            draft.seams().forEach(seam -> write(draft, seam, csv));
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text.toString();
    }

    private static void write(Draft draft, Seam seam, CsvWriter csv) {
        if (seam.held().isEmpty()) {
            write(draft, seam, List.of("", "0", "", ""), csv);
        }
        for (Seam.Held held : seam.held()) {
            Length ease = Length.mm(held.surplus());
            write(
                    draft,
                    seam,
                    List.of(
                            String.valueOf(held.interval()),
                            (held.surplus() < 0 ? "-" : "") + ease.abs(),
                            Terms.of(held.how()),
                            kept(held.reason())),
                    csv);
        }
    }

    private static void write(Draft draft, Seam seam, List<String> held, CsvWriter csv) {
        csv.writeRecord(
                kept(seam.name()),
                name(draft, seam.first()),
                direction(seam.first()),
                name(draft, seam.second()),
                direction(seam.second()),
                held.get(0),
                held.get(1),
                held.get(2),
                held.get(3));
    }

    /** The edge alone where that is enough. */
    private static String name(Draft draft, Seam.Mate mate) {
        List<Seam.Mate> meant = List.of(Seam.Mate.of(mate.piece(), mate.edge()));
        for (String name : List.of(kept(mate.edge()), mate.edge() + OF + kept(mate.piece()))) {
            if (SeamRows.matches(draft, name).equals(meant)) {
                return name;
            }
        }
        throw new IllegalArgumentException("Another edge has the same name as '" + mate.edge() + "' of '" + mate.piece()
                + "' in full; a seam list cannot tell them apart.");
    }

    private static String direction(Seam.Mate mate) {
        return mate.forward() ? FORWARD : BACKWARD;
    }

    private static String kept(String name) {
        if (!name.strip().equals(name)) {
            throw new IllegalArgumentException(
                    "[" + name + "] begins or ends with a space, which a seam list does not keep.");
        }
        return name;
    }

    /** All edges of a draft by the names that a list may call them. */
    static List<String> edges(Draft draft) {
        return draft.pieces().stream()
                .flatMap(piece -> piece.edges().stream().map(Edge::name).map(edge -> edge + OF + piece.name()))
                .toList();
    }
}
