package org.draftingmaths.measure;

import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.draftingmaths.unit.Length;
import org.draftingmaths.unit.Steps;

/**
 * The measurements of one figure: some measures, each with a plausible length and its provenance.
 *
 * <p>Immutable; what looks like a change returns a new set. Two sets are equal when name, wearer, lengths and provenances
 * are, exactly.
 *
 * @param name whose measurements they are, such as the name of a size
 * @param wearer what was declared about the wearer
 * @param entries the measures that are known, in the order of {@link Measure}
 */
public record Measurements(String name, Wearer wearer, Map<Measure, Entry> entries) {

    /**
     * A length and where it comes from.
     *
     * @param length the length
     * @param provenance measured or proportioned
     */
    public record Entry(Length length, Provenance provenance) {
        /** Makes an entry. */
        public Entry {
            Objects.requireNonNull(length, "length");
            Objects.requireNonNull(provenance, "provenance");
        }
    }

    /**
     * Makes a set.
     *
     * @throws IllegalArgumentException if a length is not plausible for its measure
     */
    public Measurements {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(wearer, "wearer");
        EnumMap<Measure, Entry> copy = new EnumMap<>(Measure.class);
        copy.putAll(entries);
        copy.forEach((measure, entry) -> measure.requirePlausible(entry.length()));
        entries = Collections.unmodifiableMap(copy);
    }

    /**
     * A set without any measure yet.
     *
     * @param name whose measurements they are
     * @param wearer what was declared about the wearer
     * @return the empty set
     */
    public static Measurements of(String name, Wearer wearer) {
        return new Measurements(name, wearer, Map.of());
    }

    /**
     * The same set with one measure given; an earlier value of that measure is replaced.
     *
     * @param measure what was measured
     * @param length the length that was found
     * @return the new set, with provenance {@link Provenance#MEASURED}
     * @throws IllegalArgumentException if the length is not plausible; the message names the measure and the range
     */
    public Measurements with(Measure measure, Length length) {
        return with(measure, new Entry(length, Provenance.MEASURED));
    }

    /**
     * The same set with every missing measure filled for which one of the rules can be worked.
     *
     * <p>The rules are tried once each, in their order. A rule whose measure is already there is passed over: a given
     * value is never replaced, and of two rules for one measure the earlier that can be worked is taken. A rule may stand
     * on values that earlier rules filled.
     *
     * @param rules the rules, such as {@link ProportionRules#TORSO}
     * @return the new set; every value filled carries {@link Provenance.Proportioned} with the rule's name
     * @throws IllegalArgumentException if a rule gives a length that is not plausible; the message names rule,
     *     set, measure and range
     */
    public Measurements filledBy(List<ProportionRule> rules) {
        Measurements filled = this;
        for (ProportionRule rule : rules) {
            if (!filled.has(rule.measure()) && filled.missing(rule.needs()).isEmpty()) {
                filled = filled.with(rule.measure(), rule.apply(filled));
            }
        }
        return filled;
    }

    /**
     * Passes this set on if it has all of the given measures.
     *
     * @param required measures that are needed, such as {@link Measure#TORSO_BLOCK}
     * @return this set
     * @throws IllegalArgumentException if any is missing; the message names all that are
     */
    public Measurements require(Set<Measure> required) {
        Set<Measure> missing = missing(required);
        if (!missing.isEmpty()) {
            throw new IllegalArgumentException("The measurements of [" + name + "] lack: "
                    + missing.stream().map(Measure::label).collect(Collectors.joining(", ")));
        }
        return this;
    }

    /**
     * Which of the given measures are not there.
     *
     * @param wanted any measures
     * @return those without a value, in the order of {@link Measure}
     */
    public Set<Measure> missing(Set<Measure> wanted) {
        EnumSet<Measure> missing = EnumSet.noneOf(Measure.class);
        missing.addAll(wanted);
        missing.removeAll(entries.keySet());
        return Collections.unmodifiableSet(missing);
    }

    /**
     * Whether a measure is there.
     *
     * @param measure the measure
     * @return true if it has a value
     */
    public boolean has(Measure measure) {
        return entries.containsKey(measure);
    }

    /**
     * The length of a measure.
     *
     * @param measure the measure
     * @return its length, as given or as proportioned, not rounded
     * @throws IllegalArgumentException if the measure is missing
     */
    public Length length(Measure measure) {
        return entry(measure).length();
    }

    /**
     * The length of a measure in millimetres.
     *
     * @param measure the measure
     * @return millimetres
     * @throws IllegalArgumentException if the measure is missing
     */
    public double mm(Measure measure) {
        return length(measure).mm();
    }

    /**
     * Where the length of a measure comes from.
     *
     * @param measure the measure
     * @return measured or proportioned
     * @throws IllegalArgumentException if the measure is missing
     */
    public Provenance provenance(Measure measure) {
        return entry(measure).provenance();
    }

    /**
     * The set as a list in columns: name and wearer, then a line for each measure with its length and provenance.
     *
     * <pre>{@code
     * System.out.print(figure.listing(Steps.DEFAULT));
     * // size 38, wearer: adult
     * // bust       34 5/8 in (88.0 cm)   measured
     * // back width 13 1/2 in (34.4 cm)   proportioned (back width from bust)
     * }</pre>
     *
     * @param steps the steps to which lengths are rounded in print; what the set holds stays as it is
     * @return lines that end in a line feed, the measures in the order of {@link Measure}
     */
    public String listing(Steps steps) {
        int labels = widest(entries.keySet().stream().map(Measure::label));
        int lengths = widest(entries.values().stream().map(entry -> steps.both(entry.length())));
        StringBuilder lines = new StringBuilder(name + ", wearer: " + wearer.label() + "\n");
        entries.forEach((measure, entry) -> lines.append(padded(measure.label(), labels + 1))
                .append(padded(steps.both(entry.length()), lengths + 3))
                .append(entry.provenance().text())
                .append('\n'));
        return lines.toString();
    }

    private static int widest(Stream<String> column) {
        return column.mapToInt(String::length).max().orElse(0);
    }

    private static String padded(String text, int width) {
        return text + " ".repeat(width - text.length());
    }

    private Entry entry(Measure measure) {
        require(EnumSet.of(measure));
        return entries.get(measure);
    }

    private Measurements with(Measure measure, Entry entry) {
        EnumMap<Measure, Entry> more = new EnumMap<>(Measure.class);
        more.putAll(entries);
        more.put(measure, entry);
        return new Measurements(name, wearer, more);
    }
}
