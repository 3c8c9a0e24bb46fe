package org.draftingmaths.measure;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.draftingmaths.unit.Length;

/**
 * A named rule that works one measure out of others: {@code measure = constant + sum of factor * other}.
 *
 * <pre>{@code
 * ProportionRule rule = new ProportionRule(
 *         "house rule for the back", Measure.BACK_WIDTH, Map.of(Measure.BUST, 0.25), Length.mm(124), "our own charts");
 * rule.formula();   // "back width = 0.25 bust + 124 mm"
 * }</pre>
 *
 * @param name the name that marks every value filled by the rule
 * @param measure the measure that it gives
 * @param factors the measures that it needs, each with its finite factor; may be empty, must not hold {@code measure}
 * @param constant the constant term, may be negative
 * @param basis the source of the rule, or "common practice"
 */
public record ProportionRule(
        String name, Measure measure, Map<Measure, Double> factors, Length constant, String basis) {

    /**
     * Makes a rule.
     *
     * @throws IllegalArgumentException if the name or the basis is blank, a factor is not finite, or the rule needs the
     *     measure that it gives
     */
    public ProportionRule {
        requireText(name, "name");
        requireText(basis, "basis");
        Objects.requireNonNull(measure, "measure");
        Objects.requireNonNull(constant, "constant");
        EnumMap<Measure, Double> copy = new EnumMap<>(Measure.class);
        copy.putAll(factors);
        if (copy.containsKey(measure)) {
            throw new IllegalArgumentException(
                    "The rule [" + name + "] cannot need " + measure.label() + ", the measure that it gives");
        }
        copy.forEach((needed, factor) -> requireFinite(name, needed, factor));
        factors = Collections.unmodifiableMap(copy);
    }

    /**
     * The measures that must be known.
     *
     * @return the keys of the factors
     */
    public Set<Measure> needs() {
        return factors.keySet();
    }

    /**
     * Works the rule.
     *
     * @param known measurements that hold all that the rule {@link #needs()}
     * @return the length by the formula, not rounded, with this rule's name as provenance
     * @throws IllegalArgumentException if a needed measure is missing, or the result is not plausible
     */
    public Measurements.Entry apply(Measurements known) {
        double mm = constant.mm();
        for (Map.Entry<Measure, Double> term : factors.entrySet()) {
            mm += term.getValue() * known.mm(term.getKey());
        }
        return new Measurements.Entry(plausible(Length.mm(mm)), new Provenance.Proportioned(name));
    }

    /**
     * The rule as a formula.
     *
     * @return text such as {@code back width = 0.25 bust + 124 mm}
     */
    public String formula() {
        String terms = factors.entrySet().stream()
                .map(term -> term.getValue() + " " + term.getKey().label())
                .collect(Collectors.joining(" + "));
        if (terms.isEmpty()) {
            return measure.label() + " = " + constant;
        }
        String sign = constant.mm() < 0 ? " - " : " + ";
        return measure.label() + " = " + terms + (constant.mm() == 0 ? "" : sign + constant.abs());
    }

    private Length plausible(Length value) {
        try {
            return measure.requirePlausible(value);
        } catch (IllegalArgumentException refusal) {
            throw new IllegalArgumentException("The rule [" + name + "] fails: " + refusal.getMessage(), refusal);
        }
    }

    private static void requireText(String text, String what) {
        if (text.isBlank()) {
            throw new IllegalArgumentException("A proportion rule needs a " + what + ", but it was blank");
        }
    }

    private static void requireFinite(String name, Measure needed, double factor) {
        if (!Double.isFinite(factor)) {
            throw new IllegalArgumentException("The factor of " + needed.label() + " in the rule [" + name
                    + "] must be finite, but was " + factor);
        }
    }
}
