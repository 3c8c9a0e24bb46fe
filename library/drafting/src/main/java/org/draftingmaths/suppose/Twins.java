package org.draftingmaths.suppose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.check.Side;

/**
 * Two outlines that are one another's mirror image, or the same.
 *
 * @param mirrored whether one must be turned over
 * @param shift which side of the second lies on the first side of the first
 * @param apart how far in mm they stay apart at most
 */
record Twins(boolean mirrored, int shift, double apart) {

    private static final int PARTS = 8;

    /** The best way of laying one outline on the other, corner on corner, if it comes within the bound. */
    static Optional<Twins> of(List<Side> first, List<Side> second, boolean mirrored, double within) {
        int n = first.size();
        if (second.size() != n) {
            return Optional.empty();
        }
        Twins best = null;
        for (int shift = 0; shift < n; shift++) {
            if (lengths(first, second, mirrored, shift, within)) {
                double apart = apart(first, second, mirrored, shift);
                if (apart <= within && (best == null || apart < best.apart())) {
                    best = new Twins(mirrored, shift, apart);
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /** The side of the second piece that lies on a side of the first. */
    int partner(int side, int n) {
        return Math.floorMod(mirrored ? shift - side : shift + side, n);
    }

    private static boolean lengths(List<Side> first, List<Side> second, boolean mirrored, int shift, double within) {
        Twins trial = new Twins(mirrored, shift, 0);
        for (int i = 0; i < first.size(); i++) {
            double other = second.get(trial.partner(i, first.size())).path().length();
            if (Math.abs(first.get(i).path().length() - other) > 4 * within) {
                return false;
            }
        }
        return true;
    }

    private static double apart(List<Side> first, List<Side> second, boolean mirrored, int shift) {
        Twins trial = new Twins(mirrored, shift, 0);
        List<Vector2D> one = new ArrayList<>();
        List<Vector2D> other = new ArrayList<>();
        for (int i = 0; i < first.size(); i++) {
            Side mine = first.get(i);
            Side its = second.get(trial.partner(i, first.size()));
            for (int k = 0; k < PARTS; k++) {
                one.add(drawn(mine, (double) k / PARTS));
                other.add(drawn(its, mirrored ? 1 - (double) k / PARTS : (double) k / PARTS));
            }
        }
        return Laying.apart(one, other, mirrored);
    }

    private static Vector2D drawn(Side side, double share) {
        return side.drawn().pointAt(share * side.drawn().length());
    }
}
