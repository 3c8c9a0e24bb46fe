package org.draftingmaths.exchange;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.draftingmaths.piece.Beside;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Edge;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.unit.Length;

/** Reads the lines of a seam list. */
final class SeamRows {

    /** How many edges are named in a refusal. */
    private static final int NAMED = 12;

    /** Two places by lengths, either left out, with the side of an opening behind each; or nothing. */
    private static final Pattern STRETCH =
            Pattern.compile("(?:(?:([^+]*?)(?: (before|after))?\\s+)?to(?:\\s+([^+]*?)(?: (before|after))?)?)?");

    private final Source source;
    private final Draft draft;
    private final List<String> columns = new ArrayList<>();

    /** The seams so far by their names, in the order of the list. */
    private final Map<String, Seam> seams = new LinkedHashMap<>();

    /** Where each of them stands first. */
    private final Map<String, String> places = new HashMap<>();

    private SeamRows(Source source, Draft draft) {
        this.source = source;
        this.draft = draft;
    }

    static Draft onto(Draft draft, Source source) {
        SeamRows rows = new SeamRows(source, draft);
        List<CsvRecord> lines = rows.lines();
        if (lines.isEmpty()) {
            throw source.refused("", "the seam list is empty; its first line names the columns edge, mate, ease");
        }
        rows.header(lines.get(0));
        lines.subList(1, lines.size()).forEach(rows::row);
        return rows.together();
    }

    /** The draft with all its seams; where they cannot be together, the first that does not go with those further up is to blame. */
    private Draft together() {
        List<Seam> all = List.copyOf(seams.values());
        try {
            return with(all);
        } catch (IllegalArgumentException refusal) {
            int good = 0;
            int bad = all.size();
            while (bad - good > 1) {
                int middle = (good + bad) / 2;
                if (goTogether(all.subList(0, middle))) {
                    good = middle;
                } else {
                    bad = middle;
                }
            }
            throw new FileException(source.name(), places.get(all.get(bad - 1).name()), refusal.getMessage(), refusal);
        }
    }

    private Draft with(List<Seam> some) {
        return new Draft(draft.name(), draft.pieces(), some);
    }

    private boolean goTogether(List<Seam> some) {
        try {
            return with(some).seams().size() == some.size();
        } catch (IllegalArgumentException refused) {
            return false;
        }
    }

    private List<CsvRecord> lines() {
        List<CsvRecord> lines = new ArrayList<>();
        try (CsvReader<CsvRecord> csv = CsvReader.builder()
                .commentStrategy(CommentStrategy.SKIP)
                .allowExtraFields(true)
                .allowMissingFields(true)
                .trimWhitespacesAroundQuotes(true)
                .ofCsvRecord(source.text())) {
            for (CsvRecord line : csv) {
                source.count(() -> place(line));
                if (line.getFields().stream().anyMatch(field -> !field.isBlank())) {
                    lines.add(line);
                    source.requireParts(place(line), lines);
                }
            }
        } catch (CsvParseException broken) {
            throw new FileException(source.name(), "", reason(broken), broken);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return lines;
    }

    private static String reason(CsvParseException broken) {
        String cause = broken.getCause() == null ? "" : ": " + broken.getCause().getMessage();
        return "it is not CSV: " + broken.getMessage() + cause;
    }

    private static String place(CsvRecord line) {
        return "line " + line.getStartingLineNumber();
    }

    private FileException refused(CsvRecord line, int column, String reason) {
        return source.refused(place(line) + ", column " + (column + 1), reason);
    }

    private FileException refused(CsvRecord line, String column, String reason) {
        return source.refused(place(line) + ", column " + (columns.indexOf(column) + 1) + " (" + column + ")", reason);
    }

    private void header(CsvRecord line) {
        List<String> known = Stream.concat(SeamLists.COLUMNS.stream(), SeamLists.MORE_COLUMNS.stream())
                .toList();
        for (int i = 0; i < line.getFieldCount(); i++) {
            String column = line.getField(i).strip().toLowerCase(Locale.ROOT);
            if (!known.contains(column)) {
                throw refused(line, i, "there is no column '" + column + "'; there are " + String.join(", ", known));
            }
            if (columns.contains(column)) {
                throw refused(line, i, "the column '" + column + "' stands twice");
            }
            columns.add(column);
        }
        for (String needed : List.of(SeamLists.EDGE, SeamLists.MATE, SeamLists.EASE)) {
            if (!columns.contains(needed)) {
                throw source.refused(place(line), "the column '" + needed + "' is missing");
            }
        }
    }

    private void row(CsvRecord line) {
        source.requireTime(place(line));
        if (line.getFieldCount() != columns.size()) {
            throw source.refused(
                    place(line),
                    "the line has " + line.getFieldCount() + " cells, but there are " + columns.size()
                            + " columns; a decimal comma would do that");
        }
        Seam.Mate first =
                mate(line, SeamLists.EDGE, SeamLists.EDGE_DIRECTION, SeamLists.EDGE_STRETCH, SeamLists.EDGE_HALF);
        Seam.Mate second =
                mate(line, SeamLists.MATE, SeamLists.MATE_DIRECTION, SeamLists.MATE_STRETCH, SeamLists.MATE_HALF);
        String given = cell(line, SeamLists.SEAM);
        String name = given.isEmpty() ? cell(line, SeamLists.EDGE) + " on " + cell(line, SeamLists.MATE) : given;
        List<Seam.Held> held = held(line);
        boolean caught = oneOf(line, SeamLists.CAUGHT, cell(line, SeamLists.CAUGHT), "", SeamLists.CAUGHT_IN) == 1;
        Seam before = seams.get(name);
        if (before == null) {
            put(line, new Seam(name, first, second, held, caught));
            return;
        }
        if (!before.first().equals(first) || !before.second().equals(second) || before.caught() != caught) {
            throw source.refused(place(line), "the seam '" + name + "' joins other edges further up");
        }
        put(line, new Seam(name, first, second, both(line, before.held(), held), caught));
    }

    /** A seam is judged on its line, where its fault can be told. */
    private void put(CsvRecord line, Seam seam) {
        seams.put(seam.name(), seam);
        places.putIfAbsent(seam.name(), place(line));
        try {
            with(List.of(seam));
        } catch (IllegalArgumentException refusal) {
            throw new FileException(source.name(), place(line), refusal.getMessage(), refusal);
        }
    }

    private List<Seam.Held> both(CsvRecord line, List<Seam.Held> before, List<Seam.Held> held) {
        if (before.isEmpty()
                || held.isEmpty()
                || before.stream()
                        .anyMatch(each -> each.interval() == held.get(0).interval())) {
            throw source.refused(place(line), "the seam stands twice; lines of one seam have different intervals");
        }
        List<Seam.Held> both = new ArrayList<>(before);
        both.addAll(held);
        return both;
    }

    private String cell(CsvRecord line, String column) {
        int index = columns.indexOf(column);
        return index < 0 ? "" : line.getField(index).strip();
    }

    // ------------------------------------------------------------------------------------------------ edges

    private Seam.Mate mate(CsvRecord line, String column, String direction, String stretch, String half) {
        String name = cell(line, column);
        List<List<Seam.Mate>> edges = chain(draft, name);
        String[] names = edges.size() == 1 ? new String[] {name} : name.split(Pattern.quote(SeamLists.PLUS), -1);
        List<String> directions = each(line, direction, edges.size());
        List<String> stretches = each(line, stretch, edges.size());
        List<String> halves = each(line, half, edges.size());
        List<Seam.Part> parts = new ArrayList<>();
        for (int i = 0; i < edges.size(); i++) {
            Seam.Mate edge = only(line, column, names[i].strip(), edges.get(i));
            boolean backward = oneOf(line, direction, directions.get(i), SeamLists.FORWARD, SeamLists.BACKWARD) == 1;
            boolean mirrored = oneOf(line, half, halves.get(i), SeamLists.DRAWN, SeamLists.MIRRORED) == 1;
            parts.add(part(line, stretch, stretches.get(i), edge, !backward, mirrored));
        }
        return new Seam.Mate(parts);
    }

    private Seam.Mate only(CsvRecord line, String column, String name, List<Seam.Mate> matches) {
        if (matches.size() != 1) {
            throw refused(
                    line,
                    column,
                    name.isEmpty()
                            ? "an edge is needed here"
                            : matches.isEmpty()
                                    ? "there is no edge '" + name + "'; there are " + some(SeamLists.edges(draft))
                                    : "more than one piece has an edge '" + name + "'; write 'edge of piece'");
        }
        return matches.get(0);
    }

    /** What a column says of each part of a side: one word for all alike, or one for each. */
    private List<String> each(CsvRecord line, String column, int count) {
        String text = cell(line, column);
        if (!text.contains("+")) {
            return Collections.nCopies(count, text);
        }
        List<String> all = Stream.of(text.split("\\+", -1)).map(String::strip).toList();
        if (all.size() != count) {
            throw refused(
                    line, column, "there are " + all.size() + " here, but " + count + " edges one after the other");
        }
        return all;
    }

    /** The number of a word among those known; nothing is the first. */
    private int oneOf(CsvRecord line, String column, String word, String... known) {
        int found = word.isEmpty() ? 0 : List.of(known).indexOf(word);
        if (found < 0) {
            throw refused(
                    line,
                    column,
                    column.equals(SeamLists.EDGE_DIRECTION) || column.equals(SeamLists.MATE_DIRECTION)
                            ? "'" + word + "' is no direction; forward and backward are"
                            : "'" + word + "' is not known here; known are "
                                    + Stream.of(known)
                                            .filter(each -> !each.isEmpty())
                                            .collect(Collectors.joining(", ")));
        }
        return found;
    }

    private Seam.Part part(
            CsvRecord line, String column, String stretch, Seam.Mate edge, boolean forward, boolean mirrored) {
        Matcher places = STRETCH.matcher(stretch);
        if (!places.matches()) {
            throw refused(
                    line, column, "'" + stretch + "' is no stretch; '80 mm to 92 mm' is, or '80 mm to', or 'to 92 mm'");
        }
        return placed(
                line,
                column,
                () -> new Seam.Part(
                        edge.piece(),
                        edge.edge(),
                        forward,
                        mirrored,
                        place(places.group(1), places.group(2)),
                        place(places.group(3), places.group(4))));
    }

    private static Optional<Seam.Place> place(String length, String beside) {
        return length == null || length.isBlank()
                ? Optional.empty()
                : Optional.of(new Seam.Place(
                        Length.parse(length).mm(),
                        Terms.of(Beside.AFTER).equals(beside) ? Beside.AFTER : Beside.BEFORE));
    }

    /** The edges that each name of a chain may mean; a name that is an edge's in full is one name, whatever is in it. */
    static List<List<Seam.Mate>> chain(Draft draft, String names) {
        List<Seam.Mate> one = matches(draft, names);
        if (!one.isEmpty() || !names.contains(SeamLists.PLUS)) {
            return List.of(one);
        }
        return Stream.of(names.split(Pattern.quote(SeamLists.PLUS), -1))
                .map(name -> matches(draft, name.strip()))
                .toList();
    }

    private static String some(List<String> names) {
        return String.join(", ", names.subList(0, Math.min(NAMED, names.size())))
                + (names.size() > NAMED ? " and " + (names.size() - NAMED) + " more" : "");
    }

    /** The edges of this name; else, at each "of", the edge of the piece. */
    static List<Seam.Mate> matches(Draft draft, String name) {
        List<Seam.Mate> alone = draft.pieces().stream()
                .filter(piece -> has(piece, name))
                .map(piece -> Seam.Mate.of(piece.name(), name))
                .toList();
        if (!alone.isEmpty()) {
            return alone;
        }
        Map<String, Piece> pieces = new HashMap<>();
        draft.pieces().forEach(piece -> pieces.put(piece.name(), piece));
        List<Seam.Mate> full = new ArrayList<>();
        for (int at = name.indexOf(SeamLists.OF); at >= 0; at = name.indexOf(SeamLists.OF, at + 1)) {
            String edge = name.substring(0, at).strip();
            Piece piece = pieces.get(name.substring(at + SeamLists.OF.length()).strip());
            if (piece != null && has(piece, edge)) {
                full.add(Seam.Mate.of(piece.name(), edge));
            }
        }
        return full;
    }

    private static boolean has(Piece piece, String edge) {
        return piece.edges().stream().map(Edge::name).anyMatch(edge::equals);
    }

    // ------------------------------------------------------------------------------------------------ ease

    /** What the line declares of an interval; nothing when the seam is flat there and nothing is said about it. */
    private List<Seam.Held> held(CsvRecord line) {
        double ease = ease(line);
        String reason = cell(line, SeamLists.REASON);
        String how = cell(line, SeamLists.HOW);
        String interval = cell(line, SeamLists.INTERVAL);
        if (ease == 0 && (how + reason + interval).isEmpty()) {
            return List.of();
        }
        return List.of(placed(
                line, SeamLists.INTERVAL, () -> new Seam.Held(number(line, interval), ease, how(line, how), reason)));
    }

    private double ease(CsvRecord line) {
        String text = cell(line, SeamLists.EASE);
        if (text.isEmpty() || text.equals("0")) {
            return 0;
        }
        boolean shorter = text.startsWith("-");
        double mm = placed(
                line,
                SeamLists.EASE,
                () -> Length.parse(shorter ? text.substring(1) : text).mm());
        return shorter ? -mm : mm;
    }

    private int number(CsvRecord line, String text) {
        if (text.isEmpty()) {
            return 1;
        }
        try {
            return Integer.parseInt(text);
        } catch (NumberFormatException notOne) {
            throw refused(line, SeamLists.INTERVAL, "'" + text + "' is no whole number");
        }
    }

    private Seam.How how(CsvRecord line, String text) {
        if (text.isEmpty()) {
            return Seam.How.EASE;
        }
        for (Seam.How how : Seam.How.values()) {
            if (Terms.of(how).equals(text)) {
                return how;
            }
        }
        throw refused(line, SeamLists.HOW, "'" + text + "' is not known here; known are ease, gathers, stretch, stay");
    }

    private <T> T placed(CsvRecord line, String column, Supplier<T> making) {
        try {
            return making.get();
        } catch (FileException placed) {
            throw placed;
        } catch (IllegalArgumentException refusal) {
            throw new FileException(source.name(), refused(line, column, "").place(), refusal.getMessage(), refusal);
        }
    }
}
