package org.draftingmaths.curve;

import java.util.AbstractList;
import java.util.Arrays;
import java.util.List;
import java.util.RandomAccess;
import java.util.function.Supplier;

/** The curves of a path, unmodifiable, with their lengths and track once somebody has asked for them. */
final class CurveList extends AbstractList<Curve> implements RandomAccess {
    private final Curve[] curves;
    /** Each curve's own length, NaN if nobody asked for it yet. */
    private volatile double[] own;

    private volatile double[] lengths;
    private volatile Track track;

    private CurveList(Curve[] curves, double[] own) {
        this.curves = curves;
        this.own = own;
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
        double[] unknown = new double[copy.length];
        Arrays.fill(unknown, Double.NaN);
        return new CurveList(copy, unknown);
    }

    /** The curves of paths in order. Lengths asked for already are taken over: they are the same to the last bit. */
    static CurveList joined(List<CurvePath> paths) {
        int size = paths.stream().mapToInt(path -> path.curves().size()).sum();
        Curve[] curves = new Curve[size];
        double[] own = new double[size];
        int at = 0;
        for (CurvePath path : paths) {
            CurveList list = (CurveList) path.curves();
            System.arraycopy(list.curves, 0, curves, at, list.curves.length);
            System.arraycopy(list.own, 0, own, at, list.curves.length);
            at += list.curves.length;
        }
        return new CurveList(curves, own);
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
            double[] each = own.clone();
            known = new double[curves.length + 1];
            for (int i = 0; i < curves.length; i++) {
                each[i] = Double.isNaN(each[i]) ? curves[i].length() : each[i];
                known[i + 1] = known[i] + each[i];
            }
            own = each;
            lengths = known;
        }
        return known;
    }

    /** What is kept for the search of meets, made when first asked for. */
    Track track(Supplier<Track> make) {
        Track made = track;
        if (made == null) {
            made = make.get();
            track = made;
        }
        return made;
    }
}
