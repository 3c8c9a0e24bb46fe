package org.draftingmaths.piece;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Curve;
import org.draftingmaths.curve.CurvePath;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** Curves as many-cornered polygons, for a judge that knows only polygons. */
public final class Flat {

    private static final int PARTS = 64;
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private Flat() {}

    public static Polygon polygon(CurvePath closed) {
        return polygon(closed, PARTS);
    }

    public static Polygon polygon(CurvePath closed, int parts) {
        List<Coordinate> corners = new ArrayList<>();
        for (Curve curve : closed.curves()) {
            for (int i = 0; i < parts; i++) {
                Vector2D point = curve.at((double) i / parts);
                corners.add(new Coordinate(point.getX(), point.getY()));
            }
        }
        corners.add(corners.get(0));
        return FACTORY.createPolygon(corners.toArray(new Coordinate[0]));
    }
}
