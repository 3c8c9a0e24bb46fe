package org.draftingmaths.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.draftingmaths.ledger.Entry;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.unit.Steps;

/**
 * How a style was made, as a sheet to follow: a section for every operation, its doings as numbered sentences, and under them what to check.
 * Every length stands in inches and in centimetres.
 *
 * <p>What is to be minded before cutting comes first. An operation is told, then the figures it works with; the steps that do it are numbered
 * through the whole sheet. What came out differently is a list to check by measuring: a figure that changed more than once has one line, and what a
 * tape cannot show, an area or a change smaller than its steps, has none. What stayed the same is one sentence. Sentences that differ in one name only
 * are said once, with all names. What the telling has said already, and an operation that did nothing, are left out. As HTML the sheet shows the
 * pictures of each operation, in two columns where the page is wide enough; Markdown is text alone.
 *
 * <pre>{@code
 * Reworked moved = Darts.rotate(front, "waist dart", Spot.on("side seam", 60), "side dart");
 * String page = StepSheet.of("Bodice, size 38")
 *         .then("Move the bust dart to the side seam", moved.ledger())
 *         .markdown(Steps.DEFAULT);
 * }</pre>
 *
 * @param title the name of the style
 * @param sections the operations in order
 */
public record StepSheet(String title, List<Section> sections) {

    private static final String UNITS =
            "Every length is given in inches and, in brackets, in centimetres, each rounded by itself: keep"
                    + " to one of the two from beginning to end.";
    private static final String CARE = "Before you cut";
    private static final String DRAFTING = "How the pattern is drafted";

    /** Copies the list. */
    public StepSheet {
        sections = List.copyOf(sections);
    }

    /**
     * One operation.
     *
     * @param heading what is done, as an instruction, for example {@code Move the bust dart to the side seam}
     * @param ledger what was done
     * @param pictures what it looks like afterwards
     */
    public record Section(String heading, Ledger ledger, List<Figure> pictures) {
        /** Copies the list. */
        public Section {
            pictures = List.copyOf(pictures);
        }
    }

    /**
     * A sheet on which nothing stands yet.
     *
     * @param title the name of the style
     * @return the sheet
     */
    public static StepSheet of(String title) {
        return new StepSheet(title, List.of());
    }

    /**
     * The sheet and one operation more.
     *
     * @param heading what is done, as an instruction
     * @param ledger what was done
     * @param pictures what it looks like afterwards, to be shown side by side
     * @return the sheet
     */
    public StepSheet then(String heading, Ledger ledger, Figure... pictures) {
        List<Section> all = new ArrayList<>(sections);
        all.add(new Section(heading, ledger, List.of(pictures)));
        return new StepSheet(title, all);
    }

    /**
     * The sheet as Markdown.
     *
     * @param steps the steps to which lengths are rounded
     * @return the text
     */
    public String markdown(Steps steps) {
        return write(steps, PageText.MARKDOWN, Beside.NOTHING);
    }

    /**
     * The sheet as a page of its own, which loads nothing and prints on any paper.
     *
     * @param steps the steps to which lengths are rounded
     * @return the HTML document
     */
    public String html(Steps steps) {
        return write(steps, PageText.HTML, Beside.NOTHING);
    }

    /** What a style tells beside its operations. */
    record Beside(List<String> cares, String sewing, Predicate<Entry> telling) {
        static final Beside NOTHING = new Beside(List.of(), "", entry -> true);
    }

    /** The sheet: what is to be minded first, then what a style has to say of cutting and sewing, then the operations. */
    String write(Steps steps, PageText text, Beside beside) {
        StringBuilder page = new StringBuilder(text.head(title))
                .append(text.paragraph(UNITS))
                .append(text.heading(CARE));
        beside.cares().forEach(words -> page.append(text.paragraph(words)));
        Care.ALWAYS.forEach(words -> page.append(text.paragraph(words)));
        page.append(beside.sewing());
        return page.append(text.columns(text.heading(DRAFTING), operations(steps, text, beside.telling())))
                .append(text.foot())
                .toString();
    }

    private String operations(Steps steps, PageText text, Predicate<Entry> telling) {
        StringBuilder page = new StringBuilder();
        int number = 1;
        for (Section section : sections) {
            Told told = Told.of(section.ledger(), telling, steps);
            if (!told.isEmpty()) {
                page.append(text.together(
                        text.subheading(section.heading()) + told.written(number, text) + picture(section, text)));
                number += told.done().size();
            }
        }
        return page.toString();
    }

    private static String picture(Section section, PageText text) {
        Figure[] figures = section.pictures().toArray(Figure[]::new);
        return figures.length == 0 ? "" : text.picture(Svg.sketch(figures));
    }
}
