package org.draftingmaths.check;

import java.util.stream.Stream;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.unit.Length;
import org.draftingmaths.unit.PairCheck;
import org.draftingmaths.unit.Steps;

/**
 * A length as it is printed in both units, for example in a table or on a label.
 *
 * <pre>{@code
 * PrintedPair waist = new PrintedPair("the waist", "2 3/8 in", "5.5 cm");
 * List<Finding> found = Checks.printed(List.of(waist), Steps.DEFAULT);   // one: 2 3/8 in is 6.0 cm
 * }</pre>
 *
 * @param where what it is the length of
 * @param inches the figure in inches, for example {@code 2 3/8 in}
 * @param metric the figure in centimetres or millimetres, for example {@code 6.0 cm}
 */
public record PrintedPair(String where, String inches, String metric) {

    /** Judged by {@link PairCheck}; a finer fraction than was promised is told by itself. */
    Stream<Finding> findings(Steps steps) {
        PairCheck pair = PairCheck.check(inches, metric, steps);
        return Stream.concat(
                contradicts(pair),
                Stream.concat(
                        tooFine(pair.inches(), steps.roundedInches(pair.inches())),
                        tooFine(pair.metric(), steps.roundedCm(pair.metric()))));
    }

    private Stream<Finding> contradicts(PairCheck pair) {
        if (pair.verdict() != PairCheck.Verdict.CONTRADICTS) {
            return Stream.of();
        }
        Steps steps = pair.steps();
        double reach = (25.4 / steps.inchFraction() + 10 * steps.cmStep()) / 2;
        return Stream.of(new Finding(
                Finding.Kind.UNITS_CONTRADICT,
                where,
                Quantity.LENGTH,
                pair.inches().mm(),
                pair.metric().mm(),
                reach,
                inches + " is " + steps.cm(pair.inches()) + ", " + metric + " is " + steps.inches(pair.metric())
                        + ": print both from the one true length."));
    }

    private Stream<Finding> tooFine(Length printed, Length rounded) {
        double off = Math.abs(printed.mm() - rounded.mm());
        return off <= 1e-9
                ? Stream.of()
                : Stream.of(new Finding(
                        Finding.Kind.UNITS_TOO_FINE,
                        where,
                        Quantity.LENGTH,
                        printed.mm(),
                        rounded.mm(),
                        0,
                        "Print it to the steps promised, or promise finer ones."));
    }
}
