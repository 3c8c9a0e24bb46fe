package org.draftingmaths.exchange;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Reads the list of transforms of an SVG element (Scalable Vector Graphics 1.1, section 7.6). The last one acts first. */
final class Transforms {

    private Transforms() {}

    static AffineTransformMatrix2D read(Figures figures) {
        AffineTransformMatrix2D all = AffineTransformMatrix2D.identity();
        while (!figures.done()) {
            all = all.multiply(one(figures));
            figures.comma();
        }
        return all;
    }

    private static AffineTransformMatrix2D one(Figures figures) {
        String name = figures.word();
        figures.require('(');
        List<Double> n = new ArrayList<>();
        while (figures.startsNumber()) {
            n.add(figures.number());
            figures.separator();
        }
        figures.require(')');
        return switch (name + " " + n.size()) {
            case "matrix 6" -> AffineTransformMatrix2D.of(n.get(0), n.get(2), n.get(4), n.get(1), n.get(3), n.get(5));
            case "translate 1" -> AffineTransformMatrix2D.createTranslation(n.get(0), 0);
            case "translate 2" -> AffineTransformMatrix2D.createTranslation(n.get(0), n.get(1));
            case "scale 1" -> AffineTransformMatrix2D.createScale(n.get(0));
            case "scale 2" -> AffineTransformMatrix2D.createScale(n.get(0), n.get(1));
            case "rotate 1" -> AffineTransformMatrix2D.createRotation(Math.toRadians(n.get(0)));
            case "rotate 3" ->
                AffineTransformMatrix2D.createRotation(Vector2D.of(n.get(1), n.get(2)), Math.toRadians(n.get(0)));
            case "skewX 1" -> AffineTransformMatrix2D.of(1, Math.tan(Math.toRadians(n.get(0))), 0, 0, 1, 0);
            case "skewY 1" -> AffineTransformMatrix2D.of(1, 0, 0, Math.tan(Math.toRadians(n.get(0))), 1, 0);
            default -> throw figures.refused("there is no transform '" + name + "' of " + n.size() + " numbers");
        };
    }
}
