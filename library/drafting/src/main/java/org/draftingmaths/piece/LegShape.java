package org.draftingmaths.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Cubic;
import org.draftingmaths.curve.Curve;
import org.draftingmaths.curve.CurvePath;

/**
 * The shape of a dart's stitch lines: the straight leg plus an offset {@code o(s)} square to it, {@code s} the share of the
 * way from the mouth to the sewn point, {@code o(0) = o(1) = 0}. Outwards from the fold line counts positive on both legs, so that the
 * one is the mirror image of the other and both are of one length. Between the places given the offset runs smoothly; one place
 * at the middle gives the parabola {@code 4 o s (1 - s)}.
 *
 * <p>A positive offset takes more in (the garment becomes <em>tighter</em> there, by {@code 2 o} for the dart), a negative one less.
 * Nothing turns about a curve: the legs of the opening itself stay straight, and a dart is moved with straight legs.
 *
 * <pre>{@code
 * Use.Dart use = new Use.Dart(20, Leg.BEFORE).shaped(LegShape.bowed(0.5, 3));
 * Piece shaped = front.using("waist dart", use);
 * }</pre>
 *
 * @param offs the places where the offset is given, from the mouth inwards; none for straight legs
 */
public record LegShape(List<Off> offs) {

    /** Straight legs. */
    public static final LegShape STRAIGHT = new LegShape(List.of());

    /** How many places are looked at between mouth and point; an offset is smooth between the places given. */
    private static final int SAMPLES = 1024;

    /**
     * An offset at one place.
     *
     * @param share the share of the way from the mouth to the sewn point: more than 0, less than 1
     * @param out how far in mm the stitch line lies outwards from the straight leg; negative towards the fold line
     */
    public record Off(double share, double out) {
        /** Checks the share and the offset. */
        public Off {
            if (!(share > 0 && share < 1)) {
                throw new IllegalArgumentException(
                        "A dart's leg is shaped between mouth and point, at a share of more than 0 and less than 1: "
                                + share + ".");
            }
            if (!Double.isFinite(out)) {
                throw new IllegalArgumentException("An offset of a dart's leg is finite: " + out + " mm.");
            }
        }
    }

    /** Copies the list and checks that the places follow one another. */
    public LegShape {
        offs = List.copyOf(offs);
        for (int i = 1; i < offs.size(); i++) {
            if (!(offs.get(i - 1).share() < offs.get(i).share())) {
                throw new IllegalArgumentException("The places of a dart's shape go from the mouth to the point: share "
                        + offs.get(i).share() + " follows "
                        + offs.get(i - 1).share() + ".");
            }
        }
    }

    /**
     * Legs bowed at one place.
     *
     * @param share the share of the way from the mouth to the sewn point: more than 0, less than 1
     * @param out how far in mm outwards from the fold line; negative towards it
     * @return the shape
     */
    public static LegShape bowed(double share, double out) {
        return new LegShape(List.of(new Off(share, out)));
    }

    /** Whether the legs are straight. */
    boolean isStraight() {
        return offs.stream().allMatch(off -> off.out() == 0);
    }

    /** The stitch line from a mouth to a point; {@code out} is the unit vector square to the leg, away from the fold line. */
    CurvePath line(Vector2D mouth, Vector2D point, Vector2D out) {
        if (isStraight()) {
            return CurvePath.polyline(mouth, point);
        }
        double[] slopes = slopes();
        List<Curve> curves = new ArrayList<>();
        for (int i = 0; i <= offs.size(); i++) {
            double from = share(i);
            double to = share(i + 1);
            double third = (to - from) / 3;
            curves.add(new Cubic(
                    at(mouth, point, out, from, off(i)),
                    at(mouth, point, out, from + third, off(i) + slopes[i] * third),
                    at(mouth, point, out, to - third, off(i + 1) - slopes[i + 1] * third),
                    at(mouth, point, out, to, off(i + 1))));
        }
        return new CurvePath(curves);
    }

    private static Vector2D at(Vector2D mouth, Vector2D point, Vector2D out, double share, double off) {
        return mouth.lerp(point, share).add(out.multiply(off));
    }

    private double share(int knot) {
        return knot == 0 ? 0 : knot > offs.size() ? 1 : offs.get(knot - 1).share();
    }

    private double off(int knot) {
        return knot == 0 || knot > offs.size() ? 0 : offs.get(knot - 1).out();
    }

    /** Inside, the slope between the neighbours; at the ends, that which makes the last stretch a parabola. */
    private double[] slopes() {
        int last = offs.size() + 1;
        double[] slopes = new double[last + 1];
        for (int i = 1; i < last; i++) {
            slopes[i] = (off(i + 1) - off(i - 1)) / (share(i + 1) - share(i - 1));
        }
        slopes[0] = 2 * (off(1) - off(0)) / (share(1) - share(0)) - slopes[1];
        slopes[last] = 2 * (off(last) - off(last - 1)) / (share(last) - share(last - 1)) - slopes[last - 1];
        return slopes;
    }

    /** The offset at a share. */
    private double at(double share) {
        double[] slopes = slopes();
        int i = 0;
        while (share > share(i + 1)) {
            i++;
        }
        double width = share(i + 1) - share(i);
        double t = (share - share(i)) / width;
        double u = 1 - t;
        return u * u * (1 + 2 * t) * off(i)
                + t * u * u * width * slopes[i]
                + t * t * (1 + 2 * u) * off(i + 1)
                - t * t * u * width * slopes[i + 1];
    }

    /**
     * By what factor the offsets may grow before the two legs meet on the fold line, which at the share {@code s} lies
     * {@code (1 - s) L tan(g/2)} square from the straight leg; at the point itself it is the slopes that tell.
     */
    double clear(double leg, double halfAngle) {
        double closing = offs.isEmpty() ? 0 : slopes()[offs.size() + 1];
        double least = closing > 0 ? leg * Math.tan(halfAngle) / closing : Double.POSITIVE_INFINITY;
        for (int i = 0; i < SAMPLES; i++) {
            double share = (i + 0.5) / SAMPLES;
            double inwards = -at(share);
            if (inwards > 0) {
                least = Math.min(least, (1 - share) * leg * Math.tan(halfAngle) / inwards);
            }
        }
        return least;
    }

    /** That the legs cross, and what would be possible at the place given with the largest offset inwards. */
    String crossing(double clear) {
        double asked = offs.stream().mapToDouble(Off::out).min().orElse(0);
        return String.format(
                Locale.ROOT,
                "the two would meet on the fold line (asked %.2f mm outwards, possible more than %.2f mm)",
                asked,
                asked * clear);
    }
}
