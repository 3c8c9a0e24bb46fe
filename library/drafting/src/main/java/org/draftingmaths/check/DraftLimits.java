package org.draftingmaths.check;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.seam.Balance;

/**
 * Within which limits a draft is held to be good, beside the lengths of its seams, and what is meant as it is.
 *
 * <pre>{@code
 * DraftLimits mine = DraftLimits.COMMON.meaning(Finding.Kind.FOLD_NOT_SQUARE, "neckline");   // a V neckline
 * }</pre>
 *
 * @param darts the limits of its darts
 * @param square by how much in radians an edge may miss a right angle at a fold; a point that is meant, as in a V neckline, is declared
 * @param joint by how much in radians a line may turn where it crosses a joined seam
 * @param kink by how much in radians an edge may turn where a dart in it is folded shut
 * @param balance by how much in radians two side seams may run unlike to the grain
 * @param meant what is meant as it is, and not told
 */
public record DraftLimits(
        DartLimits darts, double square, double joint, double kink, double balance, Set<Meant> meant) {

    /**
     * Something that is meant as it is.
     *
     * @param kind of which kind a finding of it would be
     * @param name the name of the piece, edge, dart or seam
     */
    public record Meant(Finding.Kind kind, String name) {
        boolean covers(Finding finding) {
            return finding.kind() == kind && finding.where().contains("'" + name + "'");
        }
    }

    /**
     * Half a degree at a fold, one degree over a seam (common practice); that a folded dart may leave a corner of three degrees in its edge is our own
     * figure: over a dart 2 cm wide the edge is then half a millimetre off a smooth one.
     */
    public static final DraftLimits COMMON = new DraftLimits(
            DartLimits.COMMON, Math.toRadians(0.5), Math.toRadians(1), Math.toRadians(3), Balance.ANGLE, Set.of());

    /** Checks that every limit is an angle of 0 or more, and copies the set. */
    public DraftLimits {
        require("square", square);
        require("joint", joint);
        require("kink", kink);
        require("balance", balance);
        meant = Collections.unmodifiableSet(new LinkedHashSet<>(meant));
    }

    private static void require(String what, double limit) {
        if (!(limit >= 0)) {
            throw new IllegalArgumentException("The limit '" + what + "' is 0 rad or more: " + limit + " rad.");
        }
    }

    /**
     * The same with other limits for darts.
     *
     * @param other the limits
     * @return the limits
     */
    public DraftLimits with(DartLimits other) {
        return new DraftLimits(other, square, joint, kink, balance, meant);
    }

    /**
     * The same with one thing more that is meant as it is: the point of a V neckline, a corner at a seam.
     *
     * @param kind of which kind a finding of it would be
     * @param name the name of the piece, edge, dart or seam
     * @return the limits
     */
    public DraftLimits meaning(Finding.Kind kind, String name) {
        Set<Meant> all = new LinkedHashSet<>(meant);
        all.add(new Meant(kind, name));
        return new DraftLimits(darts, square, joint, kink, balance, all);
    }

    /**
     * What is not meant of some findings.
     *
     * @param findings the findings
     * @return those that are to be told, in their order
     */
    public List<Finding> unmeant(List<Finding> findings) {
        return findings.stream()
                .filter(finding -> meant.stream().noneMatch(each -> each.covers(finding)))
                .toList();
    }
}
