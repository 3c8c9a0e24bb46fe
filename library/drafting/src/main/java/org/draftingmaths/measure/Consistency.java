package org.draftingmaths.measure;

import java.util.List;
import java.util.stream.Stream;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Quantity;

/**
 * Whether the measures of a set can belong to one body: {@code other + least <= measure <= other + greatest}.
 *
 * <p>Each measure by itself is checked when it enters a {@link Measurements} set, and refused if no body has it. Two
 * plausible measures may still not belong together, as when two columns were exchanged or half a width was written for
 * the whole. That is no error, for bodies differ; it is a finding, a reason to take the tape again.
 *
 * <p>The limits, in mm, are common practice and wide:
 *
 * <table>
 * <caption>Pairs that are compared</caption>
 * <tr><th>measure</th><th>other</th><th>least</th><th>greatest</th></tr>
 * <tr><td>waist</td><td>bust</td><td>-500</td><td>200</td></tr>
 * <tr><td>hip</td><td>waist</td><td>-200</td><td>600</td></tr>
 * <tr><td>hip</td><td>bust</td><td>-350</td><td>450</td></tr>
 * <tr><td>under-bust</td><td>bust</td><td>-450</td><td>0</td></tr>
 * <tr><td>back width</td><td>chest width</td><td>-120</td><td>120</td></tr>
 * <tr><td>apex to apex</td><td>chest width</td><td>-300</td><td>-20</td></tr>
 * <tr><td>neck point to apex</td><td>front waist length</td><td>-350</td><td>-60</td></tr>
 * <tr><td>armhole depth</td><td>back waist length</td><td>-330</td><td>-60</td></tr>
 * <tr><td>front waist length</td><td>back waist length</td><td>-40</td><td>120</td></tr>
 * <tr><td>shoulder to elbow</td><td>arm length</td><td>-420</td><td>-120</td></tr>
 * <tr><td>wrist</td><td>elbow</td><td>-350</td><td>-10</td></tr>
 * </table>
 */
public final class Consistency {

    private static final List<Pair> PAIRS = List.of(
            new Pair(Measure.WAIST, Measure.BUST, -500, 200),
            new Pair(Measure.HIP, Measure.WAIST, -200, 600),
            new Pair(Measure.HIP, Measure.BUST, -350, 450),
            new Pair(Measure.UNDER_BUST, Measure.BUST, -450, 0),
            new Pair(Measure.BACK_WIDTH, Measure.CHEST_WIDTH, -120, 120),
            new Pair(Measure.APEX_TO_APEX, Measure.CHEST_WIDTH, -300, -20),
            new Pair(Measure.NECK_POINT_TO_APEX, Measure.FRONT_WAIST_LENGTH, -350, -60),
            new Pair(Measure.ARMHOLE_DEPTH, Measure.BACK_WAIST_LENGTH, -330, -60),
            new Pair(Measure.FRONT_WAIST_LENGTH, Measure.BACK_WAIST_LENGTH, -40, 120),
            new Pair(Measure.SHOULDER_TO_ELBOW, Measure.ARM_LENGTH, -420, -120),
            new Pair(Measure.WRIST, Measure.ELBOW, -350, -10));

    private Consistency() {}

    /**
     * Compares the pairs that the set has.
     *
     * @param measurements the set; a pair of which a measure is missing is passed over
     * @return one finding for each pair outside its limits, in the order above; its measured value is the measure, its
     *     expected value the nearest one within the limits
     */
    public static List<Finding> check(Measurements measurements) {
        return PAIRS.stream().flatMap(pair -> pair.check(measurements)).toList();
    }

    private record Pair(Measure measure, Measure other, double least, double greatest) {

        Stream<Finding> check(Measurements set) {
            if (!set.has(measure) || !set.has(other)) {
                return Stream.empty();
            }
            double value = set.mm(measure);
            double nearest = Math.min(Math.max(value, set.mm(other) + least), set.mm(other) + greatest);
            if (value == nearest) {
                return Stream.empty();
            }
            String where = "measurements '" + set.name() + "', " + measure.label() + " beside " + other.label();
            return Stream.of(new Finding(Finding.Kind.MEASURES_UNLIKELY, where, Quantity.LENGTH, value, nearest, 0));
        }
    }
}
