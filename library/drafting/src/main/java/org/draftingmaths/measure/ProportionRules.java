package org.draftingmaths.measure;

import java.util.List;
import java.util.Map;
import org.draftingmaths.unit.Length;

/**
 * Rules that fill what a size chart for women leaves out of a torso block.
 *
 * <p>They are averages: a figure that is measured is better served. Bust, waist and hip have no rule; they must be given.
 *
 * <p>"The 88 cm figure" is the complete set printed with a close-fitting bodice block for bust 88 cm at
 * angelfire.com/empire/radhika/Cool/Patterns.htm: nape to waist 40, waist to hip 20.6, armhole depth 21, neck 37,
 * shoulder 12.25, back width 34.4, chest width 32.4, bust dart 7 cm. A rule that says "through the 88 cm figure" gives
 * its value at a bust of 880 mm exactly. Slopes said to be from memory are the steps per size of a widely used metric
 * drafting handbook, recalled and not read again; they are common practice in size and no oracle.
 */
public final class ProportionRules {

    private static final String FIGURE_88 = "through the printed 88 cm figure; ";

    /**
     * {@code neck = 0.21 bust + 185.2 mm}.
     *
     * <p>Through the 88 cm figure (370 mm). The slope is that of ASTM D5585-11e1, misses, between size 00 (bust 31.125,
     * neck base 13.25 in) and size 20 (46, 16.375 in): 3.125 / 14.875 = 0.21.
     */
    public static final ProportionRule NECK_FROM_BUST = fromBust(
            "neck from bust", Measure.NECK, 0.21, 185.2, FIGURE_88 + "slope of ASTM D5585-11e1 misses 00 to 20");

    /** {@code shoulder length = 0.0625 bust + 67.5 mm}: through the 88 cm figure (122.5 mm), slope from memory. */
    public static final ProportionRule SHOULDER_FROM_BUST = fromBust(
            "shoulder from bust",
            Measure.SHOULDER_LENGTH,
            0.0625,
            67.5,
            FIGURE_88 + "slope common practice, from memory");

    /** {@code back width = 0.25 bust + 124 mm}: through the 88 cm figure (344 mm), slope from memory. */
    public static final ProportionRule BACK_WIDTH_FROM_BUST = fromBust(
            "back width from bust", Measure.BACK_WIDTH, 0.25, 124, FIGURE_88 + "slope common practice, from memory");

    /** {@code chest width = 0.3 bust + 60 mm}: through the 88 cm figure (324 mm), slope from memory. */
    public static final ProportionRule CHEST_WIDTH_FROM_BUST = fromBust(
            "chest width from bust", Measure.CHEST_WIDTH, 0.3, 60, FIGURE_88 + "slope common practice, from memory");

    /** {@code bust dart = 0.15 bust - 62 mm}: through the 88 cm figure (70 mm), slope from memory. */
    public static final ProportionRule BUST_DART_FROM_BUST = fromBust(
            "bust dart from bust", Measure.BUST_DART, 0.15, -62, FIGURE_88 + "slope common practice, from memory");

    /**
     * {@code armhole depth = bust / 6 + 60 mm}.
     *
     * <p>As printed with a dress block at sewinglabmilano.com/lessons/dress-block-with-darts-and-ease-sleeve. At a bust of
     * 880 mm it gives 206.7 mm where the 88 cm figure has 210 mm: the two sources differ.
     */
    public static final ProportionRule ARMHOLE_DEPTH_FROM_BUST = fromBust(
            "armhole depth from bust",
            Measure.ARMHOLE_DEPTH,
            1 / 6.0,
            60,
            "dress block, sewinglabmilano.com/lessons/dress-block-with-darts-and-ease-sleeve");

    /**
     * {@code back waist length = 0.25 height - 25.4 mm}.
     *
     * <p>I. Rosenfeld, <em>The Practical Designer</em> (1918), p. 16: a quarter of the height less one inch, so 15.5 in
     * at 66 in.
     */
    public static final ProportionRule BACK_WAIST_FROM_HEIGHT = new ProportionRule(
            "back waist length from height",
            Measure.BACK_WAIST_LENGTH,
            Map.of(Measure.HEIGHT, 0.25),
            Length.inches(-1),
            "I. Rosenfeld, The Practical Designer (1918), p. 16");

    /**
     * {@code back waist length = 0.15 bust + 277.5 mm}.
     *
     * <p>The line through the US figure type misses 6 (bust 30.5, back waist length 15.5 in; as listed at
     * sewingscholar.blogspot.com/2011/02) with the slope to size 20 (42, 17.25 in), 1.75 / 11.5, taken as 0.15. To be used
     * when the height is not known.
     *
     * <p>Between those sizes it is at most 6 mm off the list. Above a bust of 42 in the list grows more slowly than the line: at
     * women's size 50 (54, 18 in) the rule gives 483.2 mm where the list has 457.2 mm. For a large bust give the height or
     * the back waist length.
     */
    public static final ProportionRule BACK_WAIST_FROM_BUST = fromBust(
            "back waist length from bust",
            Measure.BACK_WAIST_LENGTH,
            0.15,
            277.5,
            "US figure types, misses 6 to 20, as listed at sewingscholar.blogspot.com/2011/02");

    /** {@code waist to hip = 0.515 back waist length}: through the 88 cm figure, 206 / 400; the rest is common practice. */
    public static final ProportionRule WAIST_TO_HIP_FROM_BACK_WAIST = new ProportionRule(
            "waist to hip from back waist length",
            Measure.WAIST_TO_HIP,
            Map.of(Measure.BACK_WAIST_LENGTH, 0.515),
            Length.ZERO,
            FIGURE_88 + "proportion common practice");

    /**
     * {@code front waist length = back waist length + 0.05 bust - 27 mm}.
     *
     * <p>The block printed with the 88 cm figure runs 257 mm from the neck point to the apex and 160 mm from there to the
     * waist, so 417 mm where the back has 400 mm. That the difference grows with the bust is common practice; its slope
     * is ours.
     */
    public static final ProportionRule FRONT_WAIST_FROM_BACK_WAIST_AND_BUST = new ProportionRule(
            "front waist length from back waist length and bust",
            Measure.FRONT_WAIST_LENGTH,
            Map.of(Measure.BACK_WAIST_LENGTH, 1.0, Measure.BUST, 0.05),
            Length.mm(-27),
            FIGURE_88 + "slope our own");

    /**
     * {@code neck point to apex = 0.2 bust + 80 mm}.
     *
     * <p>Common practice. The block printed with the 88 cm figure has 256.9 mm where the rule gives 256; the figure
     * "Misses 4" of retroglam.wordpress.com/2014/05/04 (bust 33 in) has 9 1/2 in, 241.3 mm, where it gives 247.6.
     */
    public static final ProportionRule NECK_POINT_TO_APEX_FROM_BUST =
            fromBust("neck point to apex from bust", Measure.NECK_POINT_TO_APEX, 0.2, 80, "common practice");

    /**
     * {@code apex to apex = 0.2 bust + 10 mm}.
     *
     * <p>Common practice. The figure "Misses 4" of retroglam.wordpress.com/2014/05/04 (bust 33 in) has 7 in, 177.8 mm, where
     * the rule gives 177.6.
     */
    public static final ProportionRule APEX_TO_APEX_FROM_BUST =
            fromBust("apex to apex from bust", Measure.APEX_TO_APEX, 0.2, 10, "common practice");

    /**
     * All of the above, in an order in which each finds what it needs: given bust, waist and hip they complete
     * {@link Measure#TORSO_BLOCK}. The back waist length comes from the height if that is known, else from the bust.
     */
    public static final List<ProportionRule> TORSO = List.of(
            NECK_FROM_BUST,
            SHOULDER_FROM_BUST,
            BACK_WIDTH_FROM_BUST,
            CHEST_WIDTH_FROM_BUST,
            BUST_DART_FROM_BUST,
            ARMHOLE_DEPTH_FROM_BUST,
            BACK_WAIST_FROM_HEIGHT,
            BACK_WAIST_FROM_BUST,
            WAIST_TO_HIP_FROM_BACK_WAIST,
            FRONT_WAIST_FROM_BACK_WAIST_AND_BUST,
            NECK_POINT_TO_APEX_FROM_BUST,
            APEX_TO_APEX_FROM_BUST);

    private ProportionRules() {}

    private static ProportionRule fromBust(
            String name, Measure measure, double factor, double constantMm, String basis) {
        return new ProportionRule(name, measure, Map.of(Measure.BUST, factor), Length.mm(constantMm), basis);
    }
}
