package org.draftingmaths.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.draftingmaths.ledger.Change;
import org.draftingmaths.ledger.Entry;
import org.draftingmaths.ledger.Fact;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.piece.Step;
import org.draftingmaths.unit.Steps;

/**
 * A ledger sorted for a reader.
 *
 * @param aims what an operation is for, told before the steps that do it
 * @param figures what it works with, in one sentence; empty when there is nothing to be said
 * @param done what was done, in order
 * @param changed what came out differently
 * @param kept what stayed the same, in one sentence; empty when there is nothing to be said
 */
record Told(List<String> aims, String figures, List<String> done, List<String> changed, String kept) {

    private static final String CHECK = "Measure what has changed:";

    /** In millimetres and radians: what is less is nothing. */
    private static final double ROUNDING = 1e-9;

    static Told of(Ledger ledger, Predicate<Entry> telling, Steps steps) {
        List<Entry> deeds = ledger.entries().stream()
                .filter(telling)
                .filter(entry -> !(entry instanceof Change) && !(entry instanceof Fact))
                .filter(entry -> !entry.sentence(steps).isEmpty())
                .toList();
        List<String> aims = new ArrayList<>();
        List<String> done = new ArrayList<>();
        Set<Class<?>> leading = leading(deeds);
        for (int i = 0; i < deeds.size(); i++) {
            boolean isAim = leading.contains(deeds.get(i).getClass())
                    && deeds.stream().skip(i).anyMatch(Step.class::isInstance);
            (isAim ? aims : done).add(deeds.get(i).sentence(steps));
        }
        List<String> said = Stream.concat(aims.stream(), done.stream()).toList();
        List<Step.Redrawn> redrawn = ledger.only(Step.Redrawn.class);
        List<Change> changes = chained(ledger.only(Change.class)).stream()
                .filter(change -> redrawn.stream().noneMatch(step -> tells(step, change)))
                .toList();
        return new Told(
                Alike.grouped(aims),
                figures(ledger.only(Fact.class), steps),
                Alike.grouped(done),
                changed(changes, said, steps),
                kept(changes, steps));
    }

    String written(int number, PageText text) {
        StringBuilder page = new StringBuilder();
        aims.forEach(aim -> page.append(text.paragraph(aim)));
        return page.append(text.paragraph(figures))
                .append(text.numbered(number, done))
                .append(text.list(CHECK, changed))
                .append(text.paragraph(kept))
                .toString();
    }

    boolean isEmpty() {
        return aims.isEmpty() && figures.isEmpty() && done.isEmpty() && changed.isEmpty();
    }

    /** What comes before the first step of the mechanism says what the steps are for. */
    private static Set<Class<?>> leading(List<Entry> deeds) {
        return deeds.stream()
                .takeWhile(entry -> !(entry instanceof Step))
                .map(Entry::getClass)
                .collect(Collectors.toSet());
    }

    private static String figures(List<Fact> facts, Steps steps) {
        return facts.isEmpty()
                ? ""
                : facts.stream()
                        .map(fact -> fact.what() + " " + fact.quantity().print(fact.value(), steps))
                        .collect(Collectors.joining("; ", "Figures: ", "."));
    }

    /** A figure that was changed on from where the last change had left it has changed once. */
    private static List<Change> chained(List<Change> changes) {
        List<Change> chained = new ArrayList<>();
        for (Change change : changes) {
            int last = chained.size() - 1;
            while (last >= 0 && !goesOn(chained.get(last), change)) {
                last--;
            }
            if (last < 0) {
                chained.add(change);
            } else {
                Change first = chained.get(last);
                chained.set(last, new Change(first.what(), first.quantity(), first.before(), change.after()));
            }
        }
        return chained.stream()
                .filter(change -> chained.stream().noneMatch(other -> sums(change, other)))
                .toList();
    }

    private static boolean goesOn(Change first, Change next) {
        return first.what().equals(next.what())
                && first.quantity() == next.quantity()
                && Math.abs(first.after() - next.before()) <= ROUNDING * Math.max(1, Math.abs(next.before()));
    }

    /** An operation's own sum of what its steps did. */
    private static boolean sums(Change change, Change other) {
        return change.what().startsWith(other.what() + " by ");
    }

    private static List<String> changed(List<Change> changes, List<String> said, Steps steps) {
        return Alike.grouped(changes.stream()
                .filter(change -> isSeenOnATape(change, steps))
                .filter(change -> said.stream().noneMatch(sentence -> tells(sentence, change, steps)))
                .map(change -> change.sentence(steps))
                .toList());
    }

    private static boolean isSeenOnATape(Change change, Steps steps) {
        Quantity quantity = change.quantity();
        return !change.conserved()
                && quantity != Quantity.AREA
                && !quantity.print(change.before(), steps).equals(quantity.print(change.after(), steps));
    }

    /** An angle that came or went wholly is told already where it is named with its figure. */
    private static boolean tells(String sentence, Change change, Steps steps) {
        double whole = Math.max(Math.abs(change.before()), Math.abs(change.after()));
        double rest = Math.min(Math.abs(change.before()), Math.abs(change.after()));
        return change.quantity() == Quantity.ANGLE
                && rest < ROUNDING
                && sentence.contains(change.quantity().print(whole, steps))
                && sentence.contains(change.what().replaceFirst("^[^']*", ""));
    }

    private static boolean tells(Step.Redrawn step, Change change) {
        return step.spans().stream()
                .anyMatch(span -> change.what().startsWith("length of '" + span.edge() + "'")
                        && Math.abs(change.before() - span.length()) < ROUNDING
                        && Math.abs(change.after() - span.newLength()) < ROUNDING);
    }

    /** What was nothing and stayed nothing is not said. */
    private static String kept(List<Change> changes, Steps steps) {
        List<String> kept = changes.stream()
                .filter(Change::conserved)
                .filter(change -> Math.abs(change.after()) > ROUNDING)
                .map(change -> "the " + change.what() + ", " + change.quantity().print(change.after(), steps))
                .distinct()
                .toList();
        return kept.isEmpty() ? "" : "Unchanged: " + String.join("; ", kept) + ".";
    }
}
