package org.draftingmaths.exchange;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.draftingmaths.piece.Beside;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Edge;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.suppose.Supposed;
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
 *   <li>{@code edge stretch}, {@code mate stretch}: which part of the edge is sewn, {@code 80 mm to 92 mm} by the edge's own direction,
 *       with {@code before} or {@code after} behind a length that an opening lies at; without the first length from the edge's start, without the
 *       second to its end; nothing for all of it.
 *   <li>{@code edge half}, {@code mate half}: {@code mirrored} when it lies on the other half of the body, {@code drawn} (or nothing)
 *       otherwise.
 *   <li>{@code caught}: {@code caught in} when the seam may take cloth that another sews as well; nothing otherwise.
 * </ul>
 *
 * <p>A side of several edges, one after the other in the direction of sewing, has {@code +} between them, and so have its directions,
 * stretches and halves; one word stands for all of them alike:
 *
 * <pre>
 * edge,             mate,                              mate direction,     ease
 * top of waistband, waist of back + waist of front,    forward + backward, 0
 * </pre>
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

    static final String EDGE_STRETCH = "edge stretch";
    static final String EDGE_HALF = "edge half";
    static final String MATE_STRETCH = "mate stretch";
    static final String MATE_HALF = "mate half";
    static final String CAUGHT = "caught";

    /** The columns that are always written, in their order. */
    static final List<String> COLUMNS =
            List.of(SEAM, EDGE, EDGE_DIRECTION, MATE, MATE_DIRECTION, INTERVAL, EASE, HOW, REASON);

    /** The columns that are written behind them when a seam of the draft needs one of them. */
    static final List<String> MORE_COLUMNS = List.of(EDGE_STRETCH, EDGE_HALF, MATE_STRETCH, MATE_HALF, CAUGHT);

    static final String DRAWN = "drawn";
    static final String MIRRORED = "mirrored";
    static final String CAUGHT_IN = "caught in";

    /** Between the edges of a chain. */
    static final String PLUS = " + ";

    /** Between the two places of a stretch. */
    static final String TO = "to";

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
        return text(draft, draft.seams());
    }

    private static String text(Draft draft, List<Seam> seams) {
        StringWriter text = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text)) {
            boolean more = seams.stream().anyMatch(SeamLists::needsMore);
            csv.writeRecord(Stream.concat(COLUMNS.stream(), more ? MORE_COLUMNS.stream() : Stream.of())
                    .toList());
            seams.forEach(seam -> write(draft, seam, more, csv));
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text.toString();
    }

    private static boolean needsMore(Seam seam) {
        return seam.caught()
                || Stream.concat(seam.first().parts().stream(), seam.second().parts().stream())
                        .anyMatch(part -> part.mirrored() || !part.isWhole());
    }

    /**
     * Supposed seams as a list to be corrected: first those that the draft has, then as comments those that are only possible. Take the
     * {@code #} from before a line to make a seam of it.
     *
     * <p>Law: {@code parse(name, text(supposed), supposed.draft(), limits).equals(supposed.draft())}.
     *
     * @param supposed a draft with what was supposed of it
     * @return the list, lines ended by a line feed
     * @throws IllegalArgumentException when a name cannot stand in a list, as for {@link #text(Draft)}
     */
    public static String text(Supposed supposed) {
        Draft draft = supposed.draft();
        String lines = text(draft, supposed.possible());
        String possible = lines.substring(lines.indexOf('\n') + 1);
        String supposedly = "# Supposed from the shapes of the outlines: certain or likely.\n" + text(draft);
        return possible.isEmpty()
                ? supposedly
                : supposedly
                        + "# Only possible; an edge may stand in several. Take the # from before those that are right.\n"
                        + ("# " + possible.stripTrailing()).replace("\n", "\n# ") + "\n";
    }

    private static void write(Draft draft, Seam seam, boolean more, CsvWriter csv) {
        if (seam.held().isEmpty()) {
            write(draft, seam, List.of("", "0", "", ""), more, csv);
        }
        for (Seam.Held held : seam.held()) {
            write(
                    draft,
                    seam,
                    List.of(
                            String.valueOf(held.interval()),
                            (held.surplus() < 0 ? "-" : "")
                                    + Length.mm(held.surplus()).abs(),
                            Terms.of(held.how()),
                            kept(held.reason())),
                    more,
                    csv);
        }
    }

    private static void write(Draft draft, Seam seam, List<String> held, boolean more, CsvWriter csv) {
        List<String> cells = new ArrayList<>();
        cells.add(kept(seam.name()));
        for (Seam.Mate mate : List.of(seam.first(), seam.second())) {
            cells.add(names(draft, mate));
            cells.add(each(mate, part -> part.forward() ? FORWARD : BACKWARD));
        }
        cells.addAll(held);
        if (more) {
            for (Seam.Mate mate : List.of(seam.first(), seam.second())) {
                cells.add(each(mate, SeamLists::stretch));
                cells.add(each(mate, part -> part.mirrored() ? MIRRORED : DRAWN));
            }
            cells.add(seam.caught() ? CAUGHT_IN : "");
        }
        csv.writeRecord(cells);
    }

    /** What is said of each part of a side; said once when all are alike. */
    private static String each(Seam.Mate mate, Function<Seam.Part, String> what) {
        List<String> all = mate.parts().stream().map(what).toList();
        return all.stream().distinct().count() == 1 ? all.get(0) : String.join(PLUS, all);
    }

    private static String stretch(Seam.Part part) {
        return part.isWhole()
                ? ""
                : (part.from().map(SeamLists::place).orElse("") + " " + TO + " "
                                + part.to().map(SeamLists::place).orElse(""))
                        .strip();
    }

    private static String place(Seam.Place place) {
        return Length.mm(place.arc()) + (place.beside() == Beside.AFTER ? " " + Terms.of(Beside.AFTER) : "");
    }

    private static String names(Draft draft, Seam.Mate mate) {
        List<Seam.Mate> edges = mate.parts().stream()
                .map(part -> Seam.Mate.of(part.piece(), part.edge()))
                .toList();
        String names = edges.stream().map(edge -> name(draft, edge)).collect(Collectors.joining(PLUS));
        if (!SeamRows.chain(draft, names).equals(edges.stream().map(List::of).toList())) {
            throw new IllegalArgumentException("[" + names
                    + "] would be read as other edges; a seam list cannot keep names with" + PLUS + "in them.");
        }
        return names;
    }

    /** The edge alone where that is enough. */
    private static String name(Draft draft, Seam.Mate mate) {
        List<Seam.Mate> meant = List.of(mate);
        for (String name : List.of(kept(mate.edge()), mate.edge() + OF + kept(mate.piece()))) {
            if (SeamRows.matches(draft, name).equals(meant)) {
                return name;
            }
        }
        throw new IllegalArgumentException("Another edge has the same name as '" + mate.edge() + "' of '" + mate.piece()
                + "' in full; a seam list cannot tell them apart.");
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
