package org.draftingmaths.check;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Finding.Kind;

/**
 * By what findings are weighed. A finding of a kind in {@code toJudge} is to judge. One of a kind in {@code lengths} that is off by
 * no more than {@code slight} is slight; that it is beyond its tolerance is why it was found. Every other is a fault.
 *
 * <pre>{@code
 * Weights strict = Weights.COMMON.slight(1.5);   // 1/16 in, as professionals true
 * List<Finding> grave = strict.only(Checks.all(draft, Checks.SEAM_TOLERANCE), Severity.FAULT);
 * }</pre>
 *
 * @param slight by how much in mm two lengths may lie apart and still be sewn by many
 * @param lengths the kinds that compare lengths which are sewn together
 * @param toJudge the kinds that can be sewn, well or badly
 */
public record Weights(double slight, Set<Kind> lengths, Set<Kind> toJudge) {

    /**
     * Lengths are slightly off up to 1/8 in, which many who sew tolerate where professionals true to 1/16 in (Threads magazine no. 200, "10 patternwork
     * skills", 2020, threadsmagazine.com/2020/08/20/10-patternwork-skills); which kinds are to judge is our own choice: what those who teach call
     * a matter of cloth, taste or hand.
     */
    public static final Weights COMMON = new Weights(
            25.4 / 8,
            EnumSet.of(Kind.SEAM_LENGTHS_DIFFER, Kind.LEGS_UNEQUAL),
            EnumSet.of(
                    Kind.DART_WIDE,
                    Kind.DART_SMALL,
                    Kind.SLIVER,
                    Kind.UNDERLAY_LONG,
                    Kind.SLASH_TOO_WIDE,
                    Kind.HINGE_NEAR_CORNER,
                    Kind.GATHERS_TOO_FEW,
                    Kind.FULLNESS_UNBOUNDED,
                    Kind.EDGE_CORNER,
                    Kind.SEAM_UNBALANCED,
                    Kind.NOTCHES_SYMMETRIC,
                    Kind.NOTCHES_TOO_MANY,
                    Kind.MEASURES_UNLIKELY,
                    Kind.LOWER_THAN_APEX,
                    Kind.UNITS_TOO_FINE));

    /** Checks the limit and copies the sets. */
    public Weights {
        if (!(slight >= 0 && Double.isFinite(slight))) {
            throw new IllegalArgumentException("What is slight is 0 mm or more: " + slight + " mm.");
        }
        lengths = copied(lengths);
        toJudge = copied(toJudge);
    }

    private static Set<Kind> copied(Set<Kind> kinds) {
        Set<Kind> copy = EnumSet.noneOf(Kind.class);
        copy.addAll(kinds);
        return Collections.unmodifiableSet(copy);
    }

    /**
     * The same with another limit for lengths.
     *
     * @param other the limit in mm
     * @return the weights
     */
    public Weights slight(double other) {
        return new Weights(other, lengths, toJudge);
    }

    /**
     * The same with one kind more to judge.
     *
     * @param kind the kind
     * @return the weights
     */
    public Weights judging(Kind kind) {
        return new Weights(
                slight,
                lengths,
                Stream.concat(toJudge.stream(), Stream.of(kind)).collect(Collectors.toSet()));
    }

    /**
     * How much a finding weighs.
     *
     * @param finding the finding
     * @return its severity
     */
    public Severity of(Finding finding) {
        if (toJudge.contains(finding.kind())) {
            return Severity.TO_JUDGE;
        }
        return lengths.contains(finding.kind()) && Math.abs(finding.excess()) <= slight
                ? Severity.SLIGHT
                : Severity.FAULT;
    }

    /**
     * The findings of one severity.
     *
     * @param findings the findings
     * @param severity the severity
     * @return those of it, in their order
     */
    public List<Finding> only(List<Finding> findings, Severity severity) {
        return findings.stream().filter(each -> of(each) == severity).toList();
    }
}
