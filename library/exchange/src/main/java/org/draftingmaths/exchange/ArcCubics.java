package org.draftingmaths.exchange;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Arc;
import org.draftingmaths.curve.Cubic;

/**
 * Arcs as cubics, for formats that know no arcs. A part of sweep {@code s} gets handles of {@code 4/3 tan(s/4)} times the radius; its
 * middle then lies on the arc, and it strays outwards by at most {@code 4/27 sin^6(s/4) / cos^2(s/4)} times the radius (M. Goldapp,
 * Approximation of circular arcs by cubic polynomials, Computer Aided Geometric Design 8, 1991, cited from memory; a test measures it).
 */
final class ArcCubics {

    private ArcCubics() {}

    /** As few cubics as keep within the accuracy, in mm. */
    static List<Cubic> of(Arc arc, double accuracy) {
        int parts = 1;
        while (strays(arc.radius(), arc.sweep() / parts) > accuracy) {
            parts++;
        }
        int all = Math.max(parts, (int) Math.ceil(Math.abs(arc.sweep()) / (Math.PI / 2) - 1e-9));
        return IntStream.range(0, all)
                .mapToObj(i -> cubic(all == 1 ? arc : arc.between((double) i / all, (i + 1.0) / all)))
                .toList();
    }

    private static double strays(double radius, double sweep) {
        double quarter = Math.abs(sweep) / 4;
        return quarter >= Math.PI / 2
                ? Double.POSITIVE_INFINITY
                : radius * 4 / 27 * Math.pow(Math.sin(quarter), 6) / Math.pow(Math.cos(quarter), 2);
    }

    private static Cubic cubic(Arc arc) {
        double handle = 4.0 / 3 * Math.tan(Math.abs(arc.sweep()) / 4) * arc.radius();
        Vector2D start = arc.start();
        Vector2D end = arc.end();
        return new Cubic(
                start,
                start.add(arc.tangent(0).multiply(handle)),
                end.subtract(arc.tangent(1).multiply(handle)),
                end);
    }
}
