package org.draftingmaths.fullness;

import java.util.List;
import java.util.stream.DoubleStream;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.ledger.Reach;
import org.draftingmaths.unit.Steps;

/**
 * The arithmetic of a row of equal pleats: {@code n} faces of {@code b} seen side by side, {@code m} layers of underlay {@code u} to each.
 * Finished {@code n b}, flat {@code n (b + m u)} with {@code m = 2} for knife and 4 for box and inverted pleats.
 *
 * <pre>{@code
 * new PleatPlan(PleatPlan.Kind.BOX, 1, 200, 100).flat();   // 600: three times its face
 * }</pre>
 *
 * @param kind the kind
 * @param count how many, 1 or more
 * @param face the width in mm from one pleat to the next, as it is seen
 * @param underlay the width in mm from a fold that is seen to the one beneath
 */
public record PleatPlan(Kind kind, int count, double face, double underlay) {

    /** Kinds of pleats. */
    public enum Kind {
        /** All folded the same way. */
        KNIFE(2),
        /** Two folds turned away from each other, the underlay beneath the face. */
        BOX(4),
        /** Two folds turned towards each other and meeting, the underlay behind them. */
        INVERTED(4);

        private final int layers;

        Kind(int layers) {
            this.layers = layers;
        }
    }

    /** Checks the figures. */
    public PleatPlan {
        if (count < 1 || !(face > 0 && Double.isFinite(face) && underlay >= 0 && Double.isFinite(underlay))) {
            throw new IllegalArgumentException(
                    "Pleats are 1 or more, their face wider than 0 mm, their underlay 0 mm or" + " more: " + count
                            + " pleats, face " + face + " mm, underlay " + underlay + " mm.");
        }
    }

    /**
     * The width as it is seen.
     *
     * @return {@code n b} in mm
     */
    public double finished() {
        return count * face;
    }

    /**
     * The width of cloth, allowances and ease off.
     *
     * @return {@code n (b + m u)} in mm
     */
    public double flat() {
        return count * (face + kind.layers * underlay);
    }

    /**
     * The widest underlay whose neighbours do not overlap: the face for knife pleats, half of it where two lie beneath one face.
     *
     * @return the width in mm; with it the cloth is three times what is seen
     */
    public double fullCover() {
        return 2 * face / kind.layers;
    }

    /**
     * What is poor in the plan: underlays that overlap.
     *
     * @return a finding, or none
     */
    public List<Finding> findings() {
        return underlay <= fullCover() * (1 + 1e-12)
                ? List.of()
                : List.of(new Finding(
                        Finding.Kind.UNDERLAYS_OVERLAP,
                        count + " pleats with a face of " + Quantity.LENGTH.print(face, Steps.DEFAULT),
                        Quantity.LENGTH,
                        underlay,
                        fullCover(),
                        0));
    }

    /**
     * How many pleats of about a face go into a width. The face comes out a little wider or narrower when the width is no whole
     * number of them.
     *
     * @param finished the width as it is to be seen, in mm
     * @param face the face wanted, in mm
     * @return the number; of two that come near, the one whose face is nearer to what was wanted
     */
    public static Answer count(double finished, double face) {
        if (!(finished > 0 && face > 0 && Double.isFinite(finished) && Double.isFinite(face))) {
            throw new IllegalArgumentException(
                    "A width and a face are more than 0 mm: " + finished + " and " + face + " mm.");
        }
        String asked = "Pleats of " + Quantity.LENGTH.print(face, Steps.DEFAULT) + " in "
                + Quantity.LENGTH.print(finished, Steps.DEFAULT);
        double share = finished / face;
        double whole = Math.rint(share);
        if (whole >= 1 && Math.abs(share - whole) <= 1e-9) {
            return new Answer.Unique(asked, Quantity.COUNT, whole);
        }
        double fewer = Math.floor(share);
        if (fewer < 1) {
            return new Answer.Unique(asked, Quantity.COUNT, 1);
        }
        boolean takeFewer = Math.abs(finished / fewer - face) <= Math.abs(finished / (fewer + 1) - face);
        return new Answer.Several(
                asked,
                Quantity.COUNT,
                List.of(fewer, fewer + 1),
                takeFewer ? 0 : 1,
                "the one whose face is nearer to what was wanted is taken");
    }

    /**
     * The underlay that uses up a width of cloth: {@code (flat - n b) / (n m)}.
     *
     * @param kind the kind
     * @param count how many
     * @param face the face in mm
     * @param flat the cloth to be used, in mm
     * @return the underlay in mm, or the widths of cloth that can be used
     */
    public static Answer underlay(Kind kind, int count, double face, double flat) {
        PleatPlan bare = new PleatPlan(kind, count, face, 0);
        String asked = "Underlay for " + Quantity.LENGTH.print(flat, Steps.DEFAULT) + " of cloth";
        return flat >= bare.finished()
                ? new Answer.Unique(asked, Quantity.LENGTH, (flat - bare.finished()) / count / kind.layers)
                : new Answer.None(
                        asked,
                        "pleats only take cloth",
                        new Reach(Quantity.LENGTH, flat, bare.finished(), Double.POSITIVE_INFINITY));
    }

    /**
     * What each of the remaining pleats takes when some are given: {@code (flat - finished - sum of given) / (n - their number)}.
     *
     * @param flat the cloth in mm
     * @param finished the width as it is to be seen
     * @param count how many pleats in all
     * @param given what the given ones take, in mm
     * @return what each of the others takes, in mm
     * @throws IllegalArgumentException when no pleat remains or less than nothing is left for them
     */
    public static double each(double flat, double finished, int count, double... given) {
        double left = flat - finished - DoubleStream.of(given).sum();
        if (count <= given.length || !(left >= 0)) {
            throw new IllegalArgumentException("Of " + count + " pleats " + given.length + " are given, and " + left
                    + " mm are left for the others.");
        }
        return left / (count - given.length);
    }
}
