package org.draftingmaths.fullness;

import java.util.List;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Entry;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.ledger.Reach;
import org.draftingmaths.unit.Steps;

/**
 * The answer to a question asked backwards: which figure gives this result? There is one such figure, there is none (and then
 * the results that can be reached are told), or there are several (and then it is told which was taken and why).
 *
 * <pre>{@code
 * Answer underlay = PleatPlan.underlay(PleatPlan.Kind.KNIFE, 16, 67, 2192);
 * double u = underlay.value();
 * }</pre>
 */
public sealed interface Answer extends Entry {

    /**
     * The question in words.
     *
     * @return for example {@code Part of a circle for a sweep of 98 3/8 in (250.0 cm)}
     */
    String asked();

    /**
     * The figure to work with: the only one, or the one that was taken of several.
     *
     * @return the figure in the library's own unit
     * @throws DraftingException when there is none, with the results that can be reached
     */
    double value();

    /**
     * One figure answers, and no other.
     *
     * @param asked the question in words
     * @param quantity what kind of figure it is
     * @param value the figure in the library's own unit
     */
    record Unique(String asked, Quantity quantity, double value) implements Answer {
        @Override
        public String sentence(Steps steps) {
            return asked + ": " + quantity.print(value, steps) + ".";
        }
    }

    /**
     * No figure answers.
     *
     * @param asked the question in words
     * @param reason why not, in words
     * @param reachable the result that was asked for and those that can be reached
     */
    record None(String asked, String reason, Reach reachable) implements Answer {
        @Override
        public double value() {
            throw new DraftingException(asked, reason, reachable);
        }

        @Override
        public String sentence(Steps steps) {
            return asked + ": none, for " + reason + " (" + reachable.words(steps) + ").";
        }
    }

    /**
     * Several figures answer.
     *
     * @param asked the question in words
     * @param quantity what kind of figures they are
     * @param values the figures in the library's own unit, at least two, least first
     * @param chosen the place in the list of the one that is taken, from 0
     * @param rule by which rule it is taken, for example {@code the smallest is taken}
     */
    record Several(String asked, Quantity quantity, List<Double> values, int chosen, String rule) implements Answer {
        /** Checks that there are several and that one of them is taken. */
        public Several {
            values = List.copyOf(values);
            if (values.size() < 2 || chosen < 0 || chosen >= values.size()) {
                throw new IllegalArgumentException(
                        "Several answers are two or more, one of them taken: " + values + ", taken " + chosen + ".");
            }
        }

        @Override
        public double value() {
            return values.get(chosen);
        }

        @Override
        public String sentence(Steps steps) {
            List<String> printed =
                    values.stream().map(each -> quantity.print(each, steps)).toList();
            return asked + ": " + String.join(" or ", printed) + "; " + rule + ".";
        }
    }
}
