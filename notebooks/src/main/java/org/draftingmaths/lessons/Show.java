package org.draftingmaths.lessons;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.draftingmaths.check.Checks;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.exchange.Figure;
import org.draftingmaths.exchange.Svg;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Edge;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.seam.Walk;
import org.draftingmaths.unit.Length;
import org.draftingmaths.unit.Steps;

/**
 * What a lesson shows, as markup. A picture is a cell's last expression
 * {@code render(Show.piece(...), "image/svg+xml", "text/html")}. Sentences and tables are plain HTML,
 * {@code render(Show.ledger(...), "text/html")}: it wraps to the page, can be copied and read aloud, and an export keeps it.
 */
public final class Show {

    private Show() {}

    /**
     * One piece, reduced to a readable size, its true size said.
     *
     * @param caption a line of words above it
     * @param piece the piece
     * @return an SVG document
     */
    public static String piece(String caption, Piece piece) {
        return pieces(Figure.of(caption, piece));
    }

    /**
     * A piece as it was and, beside it, as it is over a ghost of what it was.
     *
     * @param before the piece as it was
     * @param after the piece as it is
     * @return an SVG document
     */
    public static String beforeAndAfter(Piece before, Piece after) {
        return pieces(Figure.of("Before", before), Figure.over("After, over what it was", after, before));
    }

    /**
     * Pieces side by side, reduced to the width of the page, the true size of each said.
     *
     * @param figures the pieces with their captions
     * @return an SVG document
     */
    public static String pieces(Figure... figures) {
        return Svg.sketch(figures);
    }

    /**
     * A curve and the rulers laid along it, once for each number of rulers, all to one scale.
     *
     * @param curve the curve
     * @param steps how many rulers each time, in steps of equal length along the curve, 1 or more
     * @return an SVG document
     * @throws IllegalArgumentException when there is no number or one below 1
     */
    public static String chords(CurvePath curve, int... steps) {
        return Rulers.along(curve, steps);
    }

    /**
     * A dart folded shut, once for each piece, all to one scale, as if the cloth were clear: the two panels, the underlay, and dashed
     * where a straight end would come to lie.
     *
     * @param dart the name of the dart in each of the pieces
     * @param figures the pieces with their captions
     * @return an SVG document
     * @throws IllegalArgumentException when there is no piece, or one has no such dart
     */
    public static String folded(String dart, Figure... figures) {
        return FoldedDart.of(dart, figures);
    }

    /**
     * Lines side by side, each sketch with its own legend, all to one scale.
     *
     * @param sketches the sketches
     * @return an SVG document
     * @throws IllegalArgumentException when there is none, or one without a line
     */
    public static String sketches(Sketch... sketches) {
        return Sketch.row(sketches);
    }

    /**
     * What was done, sentence by sentence, lengths in both unit systems.
     *
     * @param ledger a ledger
     * @return an ordered list in HTML
     */
    public static String ledger(Ledger ledger) {
        return list("ol", ledger.sentences(Steps.DEFAULT));
    }

    /**
     * What a check found.
     *
     * @param findings the findings
     * @return a list in HTML, or a plain sentence when there are none, with what was looked at and what not
     */
    public static String findings(List<Finding> findings) {
        return findings.isEmpty()
                ? "<p>Nothing found. " + Checks.LOOKED_AT + "</p>"
                : list(
                        "ul",
                        findings.stream()
                                .map(finding -> finding.sentence(Steps.DEFAULT))
                                .toList());
    }

    /**
     * The seams of a draft, walked by notch interval; of the first edge less what is declared to be held in.
     *
     * @param draft the draft
     * @param tolerance how far in mm the two sides may lie apart
     * @return a table in HTML
     */
    public static String seams(Draft draft, double tolerance) {
        String rows = Walk.all(draft).stream()
                .flatMap(walk -> walk.intervals().stream()
                        .map(interval -> row(
                                walk.seam().name(),
                                interval.number() + " of " + walk.intervals().size(),
                                print(SeamTable.printed(interval, tolerance)
                                        .first()
                                        .mm()),
                                print(SeamTable.printed(interval, tolerance)
                                        .second()
                                        .mm()),
                                String.format(Locale.ROOT, "%.2f mm", SeamTable.unsigned(interval.difference())),
                                Math.abs(interval.difference()) <= tolerance ? "matches" : "does not match")))
                .collect(Collectors.joining());
        return table(head("seam", "interval", "first edge", "second edge", "differ", ""), rows);
    }

    /**
     * Three of the four lengths of every edge; the fourth, the sewn length, belongs to a seam.
     *
     * @param piece the piece
     * @return a table in HTML
     */
    public static String lengths(Piece piece) {
        String rows = piece.edges().stream()
                .map(Edge::name)
                .map(edge -> row(
                        edge,
                        print(Lengths.base(piece, edge)),
                        print(Lengths.drawn(piece, edge)),
                        print(Lengths.folded(piece, edge))))
                .collect(Collectors.joining());
        return table(head("edge", "base", "drawn", "folded"), rows);
    }

    /**
     * A table of one's own.
     *
     * @param head the names of the columns
     * @param rows the rows, each as many texts as there are columns
     * @return a table in HTML
     */
    public static String table(List<String> head, List<List<String>> rows) {
        return table(
                head(head.toArray(String[]::new)),
                rows.stream().map(row -> row(row.toArray(String[]::new))).collect(Collectors.joining()));
    }

    private static String print(double mm) {
        return Steps.DEFAULT.both(Length.mm(mm));
    }

    private static String table(String head, String rows) {
        return "<table><thead>" + head + "</thead><tbody>" + rows + "</tbody></table>";
    }

    private static String head(String... cells) {
        return cells("th", cells);
    }

    private static String row(String... cells) {
        return cells("td", cells);
    }

    private static String cells(String kind, String... cells) {
        return List.of(cells).stream()
                .map(cell -> "<" + kind + ">" + escaped(cell) + "</" + kind + ">")
                .collect(Collectors.joining("", "<tr>", "</tr>"));
    }

    private static String list(String kind, List<String> items) {
        return items.stream()
                .map(item -> "<li>" + escaped(item) + "</li>")
                .collect(Collectors.joining("", "<" + kind + ">", "</" + kind + ">"));
    }

    static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
