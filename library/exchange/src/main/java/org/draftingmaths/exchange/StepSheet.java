package org.draftingmaths.exchange;

import java.util.ArrayList;
import java.util.List;
import org.draftingmaths.ledger.Change;
import org.draftingmaths.ledger.Entry;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.piece.Step;
import org.draftingmaths.unit.Steps;

/**
 * How a style was made, as a sheet to follow: a section for every operation, its doings as numbered sentences, and under them what to check.
 * Every length stands in inches and in centimetres.
 *
 * <p>An operation is told first; the steps that do it are numbered through the whole sheet. What came out differently is a list to check by
 * measuring, what stayed the same is one sentence. Sentences that differ in one name only are said once, with all names. What the telling
 * has said already, and an operation that did nothing, are left out. As HTML the sheet shows the pictures of each operation; Markdown is
 * text alone.
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
    private static final String CHECK = "Measure what has changed:";

    /** In radians: what is less is nothing. */
    private static final double ROUNDING = 1e-9;

    private static final String CARE = "Before you cut";

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
        return write(steps, PageText.MARKDOWN, "");
    }

    /**
     * The sheet as a page of its own, which loads nothing and prints on any paper.
     *
     * @param steps the steps to which lengths are rounded
     * @return the HTML document
     */
    public String html(Steps steps) {
        return write(steps, PageText.HTML, "");
    }

    /** The sheet with something more between the operations and what is to be minded. */
    String write(Steps steps, PageText text, String more) {
        StringBuilder page = new StringBuilder(text.head(title)).append(text.paragraph(UNITS));
        int number = 1;
        for (Section section : sections) {
            Told told = Told.of(section.ledger(), steps);
            if (!told.isEmpty()) {
                page.append(text.heading(section.heading()));
                told.aims().forEach(aim -> page.append(text.paragraph(aim)));
                page.append(text.numbered(number, told.done()))
                        .append(text.list(CHECK, told.changed()))
                        .append(text.paragraph(told.kept()))
                        .append(picture(section, text));
                number += told.done().size();
            }
        }
        page.append(more).append(text.heading(CARE));
        Care.ALWAYS.forEach(words -> page.append(text.paragraph(words)));
        return page.append(text.foot()).toString();
    }

    private static String picture(Section section, PageText text) {
        Figure[] figures = section.pictures().toArray(Figure[]::new);
        return figures.length == 0 ? "" : text.picture(Svg.sketch(figures));
    }

    /**
     * A ledger sorted for a reader.
     *
     * @param aims what an operation is for, told before the steps that do it
     * @param done what was done, in order
     * @param changed what came out differently
     * @param kept what stayed the same, in one sentence; empty when there is nothing to be said
     */
    private record Told(List<String> aims, List<String> done, List<String> changed, String kept) {

        static Told of(Ledger ledger, Steps steps) {
            List<Entry> deeds = ledger.entries().stream()
                    .filter(entry -> !(entry instanceof Change))
                    .filter(entry -> !entry.sentence(steps).isEmpty())
                    .toList();
            List<String> aims = new ArrayList<>();
            List<String> done = new ArrayList<>();
            for (int i = 0; i < deeds.size(); i++) {
                (isAim(deeds, i) ? aims : done).add(deeds.get(i).sentence(steps));
            }
            List<Change> changes = ledger.only(Change.class);
            return new Told(
                    Alike.grouped(aims), Alike.grouped(done), changed(changes, aims, steps), kept(changes, steps));
        }

        /** An operation is told first, then the steps of the mechanism that did it. */
        private static boolean isAim(List<Entry> deeds, int i) {
            return !(deeds.get(i) instanceof Step) && i + 1 < deeds.size() && deeds.get(i + 1) instanceof Step;
        }

        private static List<String> changed(List<Change> changes, List<String> aims, Steps steps) {
            return Alike.grouped(changes.stream()
                    .filter(change -> !change.conserved())
                    .filter(change -> aims.stream().noneMatch(aim -> tells(aim, change, steps)))
                    .map(change -> change.sentence(steps))
                    .toList());
        }

        /** An angle that came or went wholly is told already where the aim names it with its figure. */
        private static boolean tells(String aim, Change change, Steps steps) {
            double whole = Math.max(Math.abs(change.before()), Math.abs(change.after()));
            double rest = Math.min(Math.abs(change.before()), Math.abs(change.after()));
            return change.quantity() == Quantity.ANGLE
                    && rest < ROUNDING
                    && aim.contains(change.quantity().print(whole, steps))
                    && aim.contains(change.what().replaceFirst("^[^']*", ""));
        }

        private static String kept(List<Change> changes, Steps steps) {
            List<String> kept = changes.stream()
                    .filter(Change::conserved)
                    .map(change ->
                            "the " + change.what() + ", " + change.quantity().print(change.after(), steps))
                    .distinct()
                    .toList();
            return kept.isEmpty() ? "" : "Unchanged: " + String.join("; ", kept) + ".";
        }

        boolean isEmpty() {
            return aims.isEmpty() && done.isEmpty() && changed.isEmpty();
        }
    }
}
