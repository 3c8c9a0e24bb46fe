package org.draftingmaths.measure;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
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

    private static final int SHORT_FACTOR = 6;

    private static final long LARGEST_DIVISOR = 100;

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
     * @throws IllegalArgumentException if a needed measure is missing, or the result is not plausible; the
     *     message then names rule, figure, measure and range
     */
    public Measurements.Entry apply(Measurements known) {
        double mm = constant.mm();
        for (Map.Entry<Measure, Double> term : factors.entrySet()) {
            mm += term.getValue() * known.mm(term.getKey());
        }
        return new Measurements.Entry(plausible(known.name(), Length.mm(mm)), new Provenance.Proportioned(name));
    }

    /**
     * The rule as a formula, with all digits: a factor such as a sixth, that no short decimal gives, is written as a
     * division.
     *
     * @return text such as {@code back width = 0.25 bust + 124 mm} or {@code armhole depth = bust / 6 + 60 mm}
     */
    public String formula() {
        StringBuilder sum = new StringBuilder();
        factors.forEach((needed, factor) -> addTerm(sum, factor < 0, product(needed.label(), Math.abs(factor))));
        if (sum.length() == 0 || constant.mm() != 0) {
            addTerm(sum, constant.mm() < 0, constant.abs().toString());
        }
        return measure.label() + " = " + sum;
    }

    private static void addTerm(StringBuilder sum, boolean negative, String term) {
        if (sum.length() > 0) {
            sum.append(negative ? " - " : " + ");
        } else if (negative) {
            sum.append('-');
        }
        sum.append(term);
    }

    private static String product(String label, double factor) {
        BigDecimal digits = BigDecimal.valueOf(factor).stripTrailingZeros();
        long divisor = Math.round(1 / factor);
        if (digits.precision() > SHORT_FACTOR && divisor <= LARGEST_DIVISOR && 1.0 / divisor == factor) {
            return label + " / " + divisor;
        }
        return factor == 1 ? label : digits.toPlainString() + " " + label;
    }

    private Length plausible(String figure, Length value) {
        try {
            return measure.requirePlausible(value);
        } catch (IllegalArgumentException refusal) {
            throw new IllegalArgumentException(
                    "The rule [" + name + "] fails for [" + figure + "]: " + refusal.getMessage(), refusal);
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
