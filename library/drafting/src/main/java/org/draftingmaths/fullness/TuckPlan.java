package org.draftingmaths.fullness;

import java.util.ArrayList;
import java.util.List;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.ledger.Reach;
import org.draftingmaths.unit.Length;
import org.draftingmaths.unit.Steps;

/**
 * The arithmetic of a row of tucks: each takes twice its depth, {@code cut = finished + 2 n t}. The fold lies midway between the two
 * stitching lines. Tucks across one another are two plans, one for the width and one for the length.
 *
 * @param count how many, 1 or more
 * @param depth the depth {@code t} in mm, from the stitching to the fold
 * @param spacing the width in mm from one stitching to the next as it is seen: the tucks are blind when it is the depth
 */
public record TuckPlan(int count, double depth, double spacing) {

    /** How tucks lie. */
    public enum Kind {
        /** So narrow that the fold is stitched as close as it can be. */
        PIN,
        /** With cloth to be seen between them. */
        SPACED,
        /** The fold of each just reaches the stitching of the next. */
        BLIND,
        /** The fold of each reaches over the stitching of the next. */
        OVERLAPPING
    }

    /** Depths and spacings nearer than this, in mm, are one. */
    private static final double SAME = 1e-6;

    /** Checks the figures. */
    public TuckPlan {
        if (count < 1 || !(depth > 0 && Double.isFinite(depth) && spacing > 0 && Double.isFinite(spacing))) {
            throw new IllegalArgumentException("Tucks are 1 or more, depth and spacing more than 0 mm: " + count
                    + ", depth " + depth + " mm, spacing " + spacing + " mm.");
        }
    }

    /**
     * What the tucks take.
     *
     * @return {@code 2 n t} in mm
     */
    public double taken() {
        return 2 * count * depth;
    }

    /**
     * The cloth to cut.
     *
     * @param finished the width as it is to be seen, in mm
     * @return {@code finished + 2 n t}
     */
    public double cut(double finished) {
        return finished + taken();
    }

    /**
     * How the tucks lie.
     *
     * @param pin the depth in mm up to which a tuck is a pin tuck
     * @return the kind
     */
    public Kind kind(double pin) {
        if (spacing < depth - SAME) {
            return Kind.OVERLAPPING;
        }
        if (depth <= pin) {
            return Kind.PIN;
        }
        return spacing <= depth + SAME ? Kind.BLIND : Kind.SPACED;
    }

    /**
     * The depth that takes up a width of cloth: {@code (cut - finished) / 2n}.
     *
     * @param count how many tucks
     * @param finished the width as it is to be seen, in mm
     * @param cut the cloth there is, in mm
     * @return the depth in mm, or the widths of cloth that can be taken up
     */
    public static Answer depth(int count, double finished, double cut) {
        String asked = count + " tucks in " + Quantity.LENGTH.print(cut, Steps.DEFAULT) + " of cloth";
        return cut > finished
                ? new Answer.Unique(asked, Quantity.LENGTH, (cut - finished) / 2 / count)
                : new Answer.None(
                        asked,
                        "tucks only take cloth",
                        new Reach(Quantity.LENGTH, cut, finished, Double.POSITIVE_INFINITY));
    }

    /**
     * What is poor in the plan: folds that reach over the next stitching, and a printed depth that misses the whole, because each
     * of the {@code 2 n} layers is off by as much as it was rounded.
     *
     * @param steps the steps to which the depth is printed
     * @param tolerance how far in mm the printed depths may miss what the tucks take
     * @return the findings
     */
    public List<Finding> findings(Steps steps, double tolerance) {
        List<Finding> findings = new ArrayList<>();
        String where = count + " tucks " + Quantity.LENGTH.print(depth, steps) + " deep";
        if (spacing < depth - SAME) {
            findings.add(new Finding(Finding.Kind.UNDERLAYS_OVERLAP, where, Quantity.LENGTH, depth, spacing, 0));
        }
        double inches = 2 * count * steps.roundedInches(Length.mm(depth)).mm();
        double metric = 2 * count * steps.roundedCm(Length.mm(depth)).mm();
        for (double printed : new double[] {inches, metric}) {
            if (Math.abs(printed - taken()) > tolerance) {
                findings.add(new Finding(
                        Finding.Kind.PRINTED_PARTS_MISS, where, Quantity.LENGTH, printed, taken(), tolerance));
            }
        }
        return findings;
    }
}
