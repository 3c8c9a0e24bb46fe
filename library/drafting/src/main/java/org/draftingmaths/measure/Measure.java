package org.draftingmaths.measure;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.draftingmaths.unit.Length;

/**
 * The measures of a woman's figure for torso, skirt and sleeve drafts.
 *
 * <p>Each measure says from which landmark to which the tape runs and how: round the body, along its surface, or
 * straight. "ISO 8559:1989:" gives the name in that standard's list of dimensions as quoted in the handbook
 * <em>Anthropometry, Apparel Sizing and Design</em>, p. 96.
 *
 * <p>The plausible ranges are meant for adults and grown girls. "Observed" figures are from 260 women in Heinz, Peterson,
 * Johnson and Kerk, <em>Journal of Statistics Education</em> 11(2), 2003, or from size charts named with them; every range
 * is wider than what was observed, by common practice.
 */
public enum Measure {
    /** Stature, without shoes. ISO 8559:1989: height. */
    HEIGHT(
            "height",
            Path.STRAIGHT,
            Landmark.FLOOR,
            Landmark.CROWN,
            "",
            1300,
            2200,
            "common practice; observed 1472 to 1829 mm"),
    /** Bust girth. */
    BUST(
            "bust",
            Path.ROUND,
            Landmark.BUST_LEVEL,
            Landmark.BUST_LEVEL,
            "over the apexes and level across the back, the arms hanging",
            600,
            1800,
            "common practice; size charts run from 775 to 1372 mm (US figure types 6 to 50)"),
    /** Under-bust girth. */
    UNDER_BUST(
            "under-bust",
            Path.ROUND,
            Landmark.UNDER_BUST_LEVEL,
            Landmark.UNDER_BUST_LEVEL,
            "",
            500,
            1600,
            "common practice; ASTM D5585-11e1 misses 00 to 20 run from 654 to 1006 mm"),
    /** Waist girth. */
    WAIST(
            "waist",
            Path.ROUND,
            Landmark.WAIST_LEVEL,
            Landmark.WAIST_LEVEL,
            "not drawn in",
            450,
            1700,
            "common practice; observed 579 to 1015 mm"),
    /** Hip girth at the fullest part. */
    HIP(
            "hip",
            Path.ROUND,
            Landmark.HIP_LEVEL,
            Landmark.HIP_LEVEL,
            "the feet together",
            600,
            1900,
            "common practice; observed 788 to 1283 mm"),
    /** Girth of the base of the neck. */
    NECK(
            "neck",
            Path.ROUND,
            Landmark.NECK_BASE,
            Landmark.NECK_BASE,
            "",
            260,
            650,
            "common practice; ASTM D5585-11e1 misses 00 to 20 run from 337 to 416 mm"),
    /** Nape to waist. ISO 8559:1989: cervical to waist, back. */
    BACK_WAIST_LENGTH(
            "back waist length",
            Path.ALONG,
            Landmark.NAPE,
            Landmark.WAIST_LEVEL,
            "down the middle of the back, following the spine",
            300,
            550,
            "common practice; US figure types run from 368 to 457 mm"),
    /** Neck point over the apex to the waist. ISO 8559:1989: neck shoulder to waist. */
    FRONT_WAIST_LENGTH(
            "front waist length",
            Path.ALONG,
            Landmark.NECK_POINT,
            Landmark.WAIST_LEVEL,
            "over the apex, then straight down below it",
            300,
            700,
            "common practice"),
    /** Waist to hip. ISO 8559:1989: waist to hips. */
    WAIST_TO_HIP(
            "waist to hip",
            Path.ALONG,
            Landmark.WAIST_LEVEL,
            Landmark.HIP_LEVEL,
            "down the side of the body",
            100,
            350,
            "common practice; drafting books place the hip from 127 to 229 mm below the waist"),
    /** Waist to knee. */
    WAIST_TO_KNEE(
            "waist to knee",
            Path.ALONG,
            Landmark.WAIST_LEVEL,
            Landmark.KNEE_LEVEL,
            "down the middle of the front",
            400,
            800,
            "common practice"),
    /** Nape to armhole level. ISO 8559:1989: scye depth. */
    ARMHOLE_DEPTH(
            "armhole depth",
            Path.ALONG,
            Landmark.NAPE,
            Landmark.ARMHOLE_LEVEL,
            "down the middle of the back",
            130,
            400,
            "common practice"),
    /** Neck point to shoulder point. */
    SHOULDER_LENGTH(
            "shoulder length",
            Path.ALONG,
            Landmark.NECK_POINT,
            Landmark.SHOULDER_POINT,
            "",
            80,
            200,
            "common practice"),
    /** Across the back. ISO 8559:1989: back width. */
    BACK_WIDTH(
            "back width",
            Path.ALONG,
            Landmark.LEFT_BACK_FOLD,
            Landmark.RIGHT_BACK_FOLD,
            "level, across the shoulder blades",
            240,
            620,
            "common practice"),
    /** Across the chest, above the bust. */
    CHEST_WIDTH(
            "chest width",
            Path.ALONG,
            Landmark.LEFT_FRONT_FOLD,
            Landmark.RIGHT_FRONT_FOLD,
            "level, above the breasts",
            220,
            640,
            "common practice"),
    /** Neck point to apex. ISO 8559:1989: neck-shoulder point to breast point. */
    NECK_POINT_TO_APEX(
            "neck point to apex", Path.ALONG, Landmark.NECK_POINT, Landmark.APEX, "", 150, 480, "common practice"),
    /** Bust point separation. */
    APEX_TO_APEX("apex to apex", Path.STRAIGHT, Landmark.APEX, Landmark.OTHER_APEX, "", 100, 400, "common practice"),
    /**
     * Intake of the bust dart at the shoulder, its legs ending beside the neck point and its point at the apex.
     *
     * <p>It is how much cloth the fullness of the breast needs, the cup, stated at the shoulder as size charts for drafting do. It
     * is a measure of the draft and not of the body; as a dart is an angle, it goes with the length of its leg, the
     * {@link #NECK_POINT_TO_APEX} measure.
     */
    BUST_DART(
            "bust dart",
            Path.STRAIGHT,
            Landmark.INNER_DART_LEG,
            Landmark.OUTER_DART_LEG,
            "",
            10,
            250,
            "common practice"),
    /** Girth of the armhole line. ISO 8559:1989: armscye girth. */
    ARMHOLE_GIRTH(
            "armhole girth",
            Path.ROUND,
            Landmark.ARMHOLE_LINE,
            Landmark.ARMHOLE_LINE,
            "the arm hanging",
            280,
            750,
            "common practice"),
    /** Girth of the upper arm. ISO 8559:1989: upper arm girth. */
    UPPER_ARM(
            "upper arm",
            Path.ROUND,
            Landmark.UPPER_ARM_LINE,
            Landmark.UPPER_ARM_LINE,
            "the arm hanging, not tensed",
            170,
            650,
            "common practice; observed 224 to 403 mm, tensed"),
    /** Girth of the bent elbow. */
    ELBOW(
            "elbow",
            Path.ROUND,
            Landmark.ELBOW,
            Landmark.ELBOW,
            "the arm bent at a right angle",
            170,
            550,
            "common practice"),
    /** Girth of the wrist. ISO 8559:1989: wrist girth. */
    WRIST(
            "wrist",
            Path.ROUND,
            Landmark.WRIST,
            Landmark.WRIST,
            "over the bone",
            100,
            250,
            "common practice; observed 130 to 182 mm"),
    /** Shoulder point to wrist over the bent elbow. */
    ARM_LENGTH(
            "arm length",
            Path.ALONG,
            Landmark.SHOULDER_POINT,
            Landmark.WRIST,
            "over the elbow, the arm slightly bent",
            400,
            850,
            "common practice"),
    /** Shoulder point to elbow. ISO 8559:1989: upper arm length. */
    SHOULDER_TO_ELBOW(
            "shoulder to elbow",
            Path.ALONG,
            Landmark.SHOULDER_POINT,
            Landmark.ELBOW,
            "the arm slightly bent",
            220,
            500,
            "common practice");

    /** How the tape runs. */
    public enum Path {
        /** All the way round and back to where it began. */
        ROUND,
        /** Along the surface of the body. */
        ALONG,
        /** Straight from landmark to landmark, as a rule or calliper would. */
        STRAIGHT
    }

    /** The measures without which a close-fitting torso block to hip length cannot be drafted. */
    public static final Set<Measure> TORSO_BLOCK = Collections.unmodifiableSet(EnumSet.of(
            BUST,
            WAIST,
            HIP,
            NECK,
            BACK_WAIST_LENGTH,
            FRONT_WAIST_LENGTH,
            WAIST_TO_HIP,
            ARMHOLE_DEPTH,
            SHOULDER_LENGTH,
            BACK_WIDTH,
            CHEST_WIDTH,
            NECK_POINT_TO_APEX,
            APEX_TO_APEX,
            BUST_DART));

    private final String label;
    private final Path path;
    private final Landmark from;
    private final Landmark to;
    private final String remark;
    private final double leastMm;
    private final double greatestMm;
    private final String basis;

    Measure(
            String label,
            Path path,
            Landmark from,
            Landmark to,
            String remark,
            double leastMm,
            double greatestMm,
            String basis) {
        this.label = label;
        this.path = path;
        this.from = from;
        this.to = to;
        this.remark = remark;
        this.leastMm = leastMm;
        this.greatestMm = greatestMm;
        this.basis = basis;
    }

    /**
     * The measure with the given name.
     *
     * @param name a {@link #label()}; capitals and spaces around it do not count
     * @return the measure
     * @throws IllegalArgumentException if there is none of that name; the message lists all names
     */
    public static Measure named(String name) {
        String wanted = name.strip().toLowerCase(Locale.ROOT);
        return Arrays.stream(values())
                .filter(measure -> measure.label.equals(wanted))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("There is no measure [" + name + "]; there are: "
                        + Arrays.stream(values()).map(Measure::label).collect(Collectors.joining(", "))));
    }

    /**
     * The name as it stands in a chart and in a sentence.
     *
     * @return the name in small letters, such as {@code back waist length}
     */
    public String label() {
        return label;
    }

    /**
     * How the tape runs.
     *
     * @return round, along or straight
     */
    public Path path() {
        return path;
    }

    /**
     * Where the tape begins.
     *
     * @return the landmark; for a girth the line that the tape follows
     */
    public Landmark from() {
        return from;
    }

    /**
     * Where the tape ends.
     *
     * @return the landmark; for a girth the same as {@link #from()}
     */
    public Landmark to() {
        return to;
    }

    /**
     * The values that are plausible.
     *
     * @return a closed range
     */
    public PlausibleRange range() {
        return new PlausibleRange(Length.mm(leastMm), Length.mm(greatestMm), basis);
    }

    /**
     * What is measured, in one sentence.
     *
     * @return a sentence such as {@code Back waist length: along the body from nape to waist level, down the middle of the
     *     back, following the spine.}
     */
    public String definition() {
        String run = switch (path) {
            case ROUND -> "round the figure at the " + from.label();
            case ALONG -> "along the body from " + from.label() + " to " + to.label();
            case STRAIGHT -> "straight from " + from.label() + " to " + to.label();
        };
        String name = label.substring(0, 1).toUpperCase(Locale.ROOT) + label.substring(1);
        return name + ": " + run + (remark.isEmpty() ? "" : ", " + remark) + ".";
    }

    /**
     * Passes a plausible value on.
     *
     * @param value the value to judge
     * @return the same value
     * @throws IllegalArgumentException if the value is outside the plausible range; the message names the measure, the
     *     value and the range
     */
    public Length requirePlausible(Length value) {
        if (!range().contains(value)) {
            throw new IllegalArgumentException(
                    "A " + label + " of " + value + " is not plausible: accepted is " + range().text());
        }
        return value;
    }
}
