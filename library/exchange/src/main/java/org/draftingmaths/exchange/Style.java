package org.draftingmaths.exchange;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.draftingmaths.check.Checks;
import org.draftingmaths.check.DraftLimits;
import org.draftingmaths.dart.Pressed;
import org.draftingmaths.finish.Allowances;
import org.draftingmaths.finish.FinalPattern;
import org.draftingmaths.finish.TitleBlock;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.unit.Steps;

/**
 * A whole style: the net draft with its seams, every piece finished, the step sheet, and what a check found.
 *
 * <pre>{@code
 * Style style = Style.of("Tunic", "38", "version 1", draft, steps, List.of(
 *         ToCut.of("front", Allowances.of(Length.mm(10)), Cutting.once()),
 *         ToCut.of("back", Allowances.of(Length.mm(10)), Cutting.once())));
 * style.writeTo(folder);
 * }</pre>
 *
 * @param title its name
 * @param size the size, or whose measures
 * @param draft the net pieces and how they are sewn together
 * @param cuts how each piece is finished and cut
 * @param patterns the pieces as they are printed and cut, in the same order
 * @param steps how it was made
 * @param findings what is wrong with draft or patterns
 */
public record Style(
        String title,
        String size,
        Draft draft,
        List<ToCut> cuts,
        List<FinalPattern> patterns,
        StepSheet steps,
        List<Finding> findings) {

    private static final String UNTOLD =
            "Not told here, for the sheet does not know your cloth: how wide it is, how much of it you need, how"
                    + " the pieces are laid, and how much it shrinks. Wash and press it first as you will wash the garment, and lay out all pieces on the"
                    + " width you mean to buy before you buy it.";

    private static final String NO_INTERFACING =
            "No interfacing is told either: try on a scrap whether the facings need one, and which.";

    private static final String HOW_TO_SEW =
            "Lay right sides together and match the notches. Press every seam open as soon as it is sewn, unless"
                    + " something else is said. What is told of one side is sewn alike on the other.";

    /** Over what whoever sews must mind and no figure tells. */
    static final String MIND = "Mind when you sew";

    /** Copies the lists. */
    public Style {
        cuts = List.copyOf(cuts);
        patterns = List.copyOf(patterns);
        findings = List.copyOf(findings);
    }

    /**
     * Finishes the pieces of a draft, numbers them, and checks everything.
     *
     * @param title the name of the style
     * @param size the size, or whose measures
     * @param version the version of the pattern as it is to be printed
     * @param draft the net pieces and how they are sewn together
     * @param steps how it was made
     * @param cuts how each piece is finished and cut, in the order in which they are numbered; a piece that is not named is not
     *     cut, which is a finding
     * @return the style
     * @throws IllegalArgumentException when a piece is unknown or named twice
     * @throws DraftingException as {@link FinalPattern#of}
     */
    public static Style of(String title, String size, String version, Draft draft, StepSheet steps, List<ToCut> cuts) {
        return of(title, size, version, draft, steps, cuts, DraftLimits.COMMON);
    }

    /**
     * Finishes the pieces of a draft, numbers them, and checks everything within limits of one's own.
     *
     * @param title the name of the style
     * @param size the size
     * @param version the version, to be told from earlier prints
     * @param draft the draft
     * @param steps the step sheet
     * @param cuts what is cut of it, in the order in which the pieces are numbered
     * @param limits within which limits it is held to be good, and what is meant as it is
     * @return the style
     * @throws IllegalArgumentException when a piece is unknown or named twice
     * @throws DraftingException as {@link FinalPattern#of}
     */
    public static Style of(
            String title,
            String size,
            String version,
            Draft draft,
            StepSheet steps,
            List<ToCut> cuts,
            DraftLimits limits) {
        requireOnce(cuts);
        Map<String, Allowances> plans = cuts.stream().collect(Collectors.toMap(ToCut::piece, ToCut::allowances));
        List<FinalPattern> patterns = new ArrayList<>();
        for (int i = 0; i < cuts.size(); i++) {
            ToCut cut = cuts.get(i);
            TitleBlock block = new TitleBlock(title, size, i + 1, cuts.size(), cut.cuttings(), version);
            patterns.add(FinalPattern.of(draft.piece(cut.piece()), cut.allowances(), cut.marking(), block));
        }
        List<Finding> findings = new ArrayList<>(Checks.all(draft, Checks.SEAM_TOLERANCE, limits));
        findings.addAll(PieceSet.findings(title, size, version, draft, cuts));
        patterns.forEach(pattern -> pattern.findings().stream()
                .filter(finding -> findings.stream().noneMatch(told -> isSame(told, finding)))
                .forEach(findings::add));
        findings.addAll(Allowances.mates(cutOnly(draft, plans.keySet()), plans, Set.of(), 0));
        return new Style(title, size, draft, cuts, patterns, steps, limits.unmeant(findings));
    }

    private static void requireOnce(List<ToCut> cuts) {
        Set<String> named = new HashSet<>();
        for (ToCut cut : cuts) {
            if (!named.add(cut.piece())) {
                throw new IllegalArgumentException("'" + cut.piece()
                        + "' is named more than once among what is cut; name it once, with all that is cut of it.");
            }
        }
    }

    /** A fold is looked at both as it is drafted and as it is cut. */
    private static boolean isSame(Finding one, Finding other) {
        return one.kind() == other.kind() && one.where().equals(other.where());
    }

    private static Draft cutOnly(Draft draft, Set<String> pieces) {
        List<Seam> seams = draft.seams().stream()
                .filter(seam -> Stream.of(seam.first(), seam.second())
                        .flatMap(mate -> mate.parts().stream())
                        .allMatch(part -> pieces.contains(part.piece())))
                .toList();
        return new Draft(draft.name(), draft.pieces(), seams);
    }

    /**
     * The finished pieces as figures.
     *
     * @return a figure for each, in order
     */
    public List<Figure> figures() {
        return patterns.stream()
                .map(pattern -> Figure.of(
                        title + ", size " + size + ": " + pattern.piece().name(), pattern))
                .toList();
    }

    /**
     * The step sheet of the whole style as Markdown: what is cut, in which order it is sewn, and how it was drafted.
     *
     * @param lengths the steps to which lengths are rounded
     * @return the text
     */
    public String markdown(Steps lengths) {
        return written(lengths, PageText.MARKDOWN);
    }

    /**
     * The step sheet of the whole style as a page of its own, with pictures: what is cut, in which order it is sewn, and, on new pages in print, how
     * it was drafted.
     *
     * @param lengths the steps to which lengths are rounded
     * @return the HTML document
     */
    public String html(Steps lengths) {
        return written(lengths, PageText.HTML);
    }

    /** A dart is pressed when it is sewn, and told there; one that was left unsewn later is not pressed at all. */
    private String written(Steps lengths, PageText text) {
        List<String> cares = OrderOfMake.isFaced(this) && !OrderOfMake.isInterfaced(this)
                ? List.of(UNTOLD, NO_INTERFACING)
                : List.of(UNTOLD);
        List<StepSheet.Section> drafting = steps.sections().stream()
                .filter(section -> !section.heading().equals(MIND))
                .toList();
        return new StepSheet(steps.title(), drafting)
                .write(
                        lengths,
                        text,
                        new StepSheet.Beside(cares, cutAndSewn(lengths, text), entry -> !(entry instanceof Pressed)));
    }

    private String cutAndSewn(Steps lengths, PageText text) {
        List<String> pieces = new ArrayList<>();
        for (int i = 0; i < cuts.size(); i++) {
            ToCut cut = cuts.get(i);
            Piece piece = draft.piece(cut.piece());
            String words =
                    cut.cuttings().stream().map(each -> each.words(piece)).collect(Collectors.joining("; "));
            pieces.add("'" + cut.piece() + "', piece " + (i + 1) + " of " + cuts.size() + ": " + words + ".");
        }
        return text.page(text.heading("Cut out")
                + text.list("All allowances are on the pieces. Cut:", pieces)
                + text.picture(Svg.overview(figures()))
                + text.heading("Sew")
                + text.paragraph(HOW_TO_SEW)
                + text.numbered(1, OrderOfMake.of(this, lengths))
                + minded(lengths, text));
    }

    private String minded(Steps lengths, PageText text) {
        List<String> words = steps.sections().stream()
                .filter(section -> section.heading().equals(MIND))
                .flatMap(section -> section.ledger().sentences(lengths).stream())
                .toList();
        return words.isEmpty() ? "" : text.heading(MIND) + text.list("What the seams do not tell:", words);
    }

    /**
     * Writes the style into a folder: every piece as SVG at full size, all of them as PDF on one sheet and in tiles for A4 and US Letter, the
     * step sheet as Markdown and HTML, and the draft as JSON. The same style writes the same bytes.
     *
     * @param folder the folder; it is made if it is not there, and files of the same names are replaced
     * @return the files written, in order
     * @throws IOException when one cannot be written; those before it are whole
     * @throws DraftingException when two pieces would be written to one file, because their names differ only in signs, spaces or capitals; nothing
     *     is written then
     */
    public List<Path> writeTo(Path folder) throws IOException {
        String name = file(title);
        Map<String, Figure> drawn = byFile(name);
        Files.createDirectories(folder);
        List<Path> written = new ArrayList<>();
        for (Map.Entry<String, Figure> each : drawn.entrySet()) {
            Path file = folder.resolve(each.getKey());
            Saved.text(file, Svg.sheet(each.getValue()));
            written.add(file);
        }
        String heading = title + ", size " + size;
        written.add(saved(folder.resolve(name + "-sheet.pdf"), Pdf.sheet(heading, Scale.FULL, figures())));
        for (Page page : List.of(Page.A4, Page.LETTER)) {
            Path file = folder.resolve(name + "-" + page.name().replace(' ', '-') + ".pdf");
            written.add(saved(file, Pdf.tiles(heading, Scale.FULL, page, figures())));
        }
        Path markdown = folder.resolve("step-sheet.md");
        Saved.text(markdown, markdown(Steps.DEFAULT));
        Path html = folder.resolve("step-sheet.html");
        Saved.text(html, html(Steps.DEFAULT));
        Path json = folder.resolve(name + ".json");
        DraftFiles.write(draft, json);
        written.addAll(List.of(markdown, html, json));
        return List.copyOf(written);
    }

    /** The finished pieces by the names of their files, in order. */
    private Map<String, Figure> byFile(String name) {
        Map<String, Figure> files = new LinkedHashMap<>();
        for (Figure figure : figures()) {
            String file = name + "-" + file(figure.piece().name()) + ".svg";
            Figure other = files.putIfAbsent(file, figure);
            if (other != null) {
                throw new DraftingException(
                        "Write '" + title + "'",
                        "'" + other.piece().name() + "' and '" + figure.piece().name() + "' would both be written to '"
                                + file + "'; give one of them another name");
            }
        }
        return files;
    }

    private static Path saved(Path file, byte[] bytes) throws IOException {
        Saved.bytes(file, bytes);
        return file;
    }

    private static String file(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
    }
}
