package org.draftingmaths.curve;

import java.util.AbstractList;
import java.util.List;
import java.util.RandomAccess;
import java.util.function.Supplier;

/** The curves of a path, unmodifiable, with their lengths and track once somebody has asked for them. */
final class CurveList extends AbstractList<Curve> implements RandomAccess {
    private final Curve[] curves;
    private volatile double[] lengths;
    private volatile Track track;

    private CurveList(Curve[] curves) {
        this.curves = curves;
    }

    /** A copy, or the list itself if it is one of these; a missing curve is refused. */
    static CurveList copyOf(List<Curve> list) {
        if (list instanceof CurveList same) {
            return same;
        }
        Curve[] copy = list.toArray(new Curve[0]);
        for (int i = 0; i < copy.length; i++) {
            if (copy[i] == null) {
                throw new IllegalArgumentException("curve " + i + " of the path is missing");
            }
        }
        return new CurveList(copy);
    }

    @Override
    public Curve get(int index) {
        return curves[index];
    }

    @Override
    public int size() {
        return curves.length;
    }

    /** The length up to the start of each curve, each to {@link Accuracy#DEFAULT}, and last the whole. Not modified. */
    double[] lengths() {
        double[] known = lengths;
        if (known == null) {
            known = new double[curves.length + 1];
            for (int i = 0; i < curves.length; i++) {
                known[i + 1] = known[i] + curves[i].length();
            }
            lengths = known;
        }
        return known;
    }

    /** What is kept for the search of meets, made when first asked for. */
    Track track(Supplier<Track> make) {
        Track known = track;
        if (known == null) {
            known = make.get();
            track = known;
        }
        return known;
    }
}
