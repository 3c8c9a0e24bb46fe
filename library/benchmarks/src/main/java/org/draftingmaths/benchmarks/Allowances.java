package org.draftingmaths.benchmarks;

import java.util.function.ToDoubleFunction;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Curve;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Nearest;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** How far a drawn allowance lies off the true one, measured at a hundred places of every edge. */
final class Allowances {

    private Allowances() {}

    /** The largest distance from true places, those that hollows swallow left out. */
    static double error(CurvePath ring, ToDoubleFunction<Vector2D> distance) {
        double largest = 0;
        for (Curve edge : ring.curves()) {
            for (int i = 0; i <= 100; i++) {
                Vector2D way = edge.tangent(i / 100.0);
                Vector2D place = edge.at(i / 100.0).add(Vector2D.of(10 * way.getY(), -10 * way.getX()));
                if (Nearest.of(ring, place).distance() > 10 - 1e-6) {
                    largest = Math.max(largest, distance.applyAsDouble(place));
                }
            }
        }
        return largest;
    }

    /** The distance from the outline that JTS made. */
    static double distance(Geometry buffer, Vector2D place) {
        return buffer.getBoundary()
                .distance(new GeometryFactory().createPoint(new Coordinate(place.getX(), place.getY())));
    }
}
