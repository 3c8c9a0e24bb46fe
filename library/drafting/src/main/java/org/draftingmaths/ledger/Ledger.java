package org.draftingmaths.ledger;

import java.util.ArrayList;
import java.util.List;
import org.draftingmaths.unit.Steps;

/**
 * What an operation did, in order.
 *
 * @param entries the entries, first things first
 */
public record Ledger(List<Entry> entries) {

    /** A ledger in which nothing stands yet. */
    public static final Ledger EMPTY = new Ledger(List.of());

    /** Copies the entries. */
    public Ledger {
        entries = List.copyOf(entries);
    }

    /**
     * A ledger of the given entries.
     *
     * @param entries the entries, first things first
     * @return the ledger
     */
    public static Ledger of(Entry... entries) {
        return new Ledger(List.of(entries));
    }

    /**
     * This ledger and then another.
     *
     * @param next what was done afterwards
     * @return both, in order
     */
    public Ledger then(Ledger next) {
        List<Entry> all = new ArrayList<>(entries);
        all.addAll(next.entries);
        return new Ledger(all);
    }

    /**
     * This ledger and then one entry more.
     *
     * @param next what was done afterwards
     * @return both, in order
     */
    public Ledger then(Entry next) {
        return then(of(next));
    }

    /**
     * The entries of one kind, in order.
     *
     * @param kind the kind wanted
     * @param <T> the kind wanted
     * @return those entries
     */
    public <T extends Entry> List<T> only(Class<T> kind) {
        return entries.stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    /**
     * Every entry as its sentence; one that only an undo needs has none.
     *
     * @param steps the steps to which lengths are rounded for print
     * @return the sentences, in order
     */
    public List<String> sentences(Steps steps) {
        return entries.stream()
                .map(entry -> entry.sentence(steps))
                .filter(sentence -> !sentence.isEmpty())
                .toList();
    }

    /**
     * The same, every figure said of a piece: for a ledger that tells of several.
     *
     * @param piece the name of the piece
     * @return the ledger
     */
    public Ledger about(String piece) {
        return new Ledger(entries.stream()
                .map(entry -> about(entry, " of '" + piece + "'"))
                .toList());
    }

    private static Entry about(Entry entry, String piece) {
        if (entry instanceof Change change) {
            return new Change(change.what() + piece, change.quantity(), change.before(), change.after());
        }
        return entry instanceof Fact fact ? new Fact(fact.what() + piece, fact.quantity(), fact.value()) : entry;
    }
}
