package org.draftingmaths.exchange;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Edge;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.unit.Length;

/** Reads the lines of a seam list. */
final class SeamRows {

    /** How many edges are named in a refusal. */
    private static final int NAMED = 12;

    private final Source source;
    private final Draft draft;
    private final List<String> columns = new ArrayList<>();

    /** The seams so far by their names, in the order of the list. */
    private final Map<String, Seam> seams = new LinkedHashMap<>();

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
        return new Draft(draft.name(), draft.pieces(), List.copyOf(rows.seams.values()));
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
        for (int i = 0; i < line.getFieldCount(); i++) {
            String column = line.getField(i).strip().toLowerCase(Locale.ROOT);
            if (!SeamLists.COLUMNS.contains(column)) {
                throw refused(
                        line,
                        i,
                        "there is no column '" + column + "'; there are " + String.join(", ", SeamLists.COLUMNS));
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
        Seam.Mate first = mate(line, SeamLists.EDGE, SeamLists.EDGE_DIRECTION);
        Seam.Mate second = mate(line, SeamLists.MATE, SeamLists.MATE_DIRECTION);
        String given = cell(line, SeamLists.SEAM);
        String name = given.isEmpty() ? cell(line, SeamLists.EDGE) + " on " + cell(line, SeamLists.MATE) : given;
        List<Seam.Held> held = held(line);
        Seam before = seams.get(name);
        if (before == null) {
            seams.put(name, new Seam(name, first, second, held));
            return;
        }
        if (!before.first().equals(first) || !before.second().equals(second)) {
            throw source.refused(place(line), "the seam '" + name + "' joins other edges further up");
        }
        seams.put(name, new Seam(name, first, second, both(line, before.held(), held)));
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

    private Seam.Mate mate(CsvRecord line, String column, String direction) {
        String name = cell(line, column);
        List<Seam.Mate> matches = matches(draft, name);
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
        Seam.Mate mate = matches.get(0);
        return backward(line, direction) ? Seam.Mate.backwards(mate.piece(), mate.edge()) : mate;
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

    private boolean backward(CsvRecord line, String column) {
        return switch (cell(line, column)) {
            case "", SeamLists.FORWARD -> false;
            case SeamLists.BACKWARD -> true;
            default ->
                throw refused(line, column, "'" + cell(line, column) + "' is no direction; forward and backward are");
        };
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
