package org.draftingmaths.check;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * Within which limits a single dart is held to be good. They are starting values, never proofs: a check that finds a dart outside them says
 * so, and the patternmaker decides.
 *
 * @param widestAngle the widest angle of one dart at its apex, in radians
 * @param widestIntakes for the edges named, the widest intake of one dart in mm
 * @param widestInside the widest intake of one double-pointed dart in mm
 * @param smallestIntake the narrowest intake that is worth a dart, in mm; less is eased
 * @param smallestSector the narrowest sector of cloth between two darts of one apex, in radians
 * @param longestPeak how far the fold of an underlay may stand out over its mouth, as a share of the intake
 */
public record DartLimits(
        double widestAngle,
        Map<String, Double> widestIntakes,
        double widestInside,
        double smallestIntake,
        double smallestSector,
        double longestPeak) {

    /**
     * One dart to 22 degrees, and to 45 mm at the waist; 6 mm at least; no sector below 8 degrees (all common practice). That the
     * fold may stand out by three quarters of the intake is our own figure: a narrow dart reaches it where the seam comes within 34 degrees
     * of the leg's own line.
     */
    public static final DartLimits COMMON =
            new DartLimits(Math.toRadians(22), Map.of("waist", 45.0), 45, 6, Math.toRadians(8), 0.75);

    /** Checks that every limit is a number of 0 or more, and copies the map in the order of its names. */
    public DartLimits {
        widestIntakes = Collections.unmodifiableMap(new TreeMap<>(widestIntakes));
        require("widest angle", widestAngle, "rad");
        widestIntakes.forEach((edge, widest) -> require("widest intake at '" + edge + "'", widest, "mm"));
        require("widest intake of a double-pointed dart", widestInside, "mm");
        require("smallest intake", smallestIntake, "mm");
        require("smallest sector", smallestSector, "rad");
        require("longest peak", longestPeak, "of the intake");
    }

    private static void require(String what, double limit, String unit) {
        if (!(limit >= 0)) {
            throw new IllegalArgumentException(
                    "The " + what + " is 0 " + unit + " or more: " + limit + " " + unit + ".");
        }
    }
}
