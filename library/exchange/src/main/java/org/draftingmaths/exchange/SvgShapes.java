package org.draftingmaths.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** The basic shapes of SVG as strokes (Scalable Vector Graphics 1.1, chapter 9), in their own units, y down. */
final class SvgShapes {

    static final Set<String> NAMES = Set.of("path", "polygon", "polyline", "line", "rect", "circle", "ellipse");

    private final Map<String, String> attributes;
    private final Source source;
    private final String place;

    private SvgShapes(Map<String, String> attributes, Source source, String place) {
        this.attributes = attributes;
        this.source = source;
        this.place = place;
    }

    static List<Subpath> of(String name, Map<String, String> attributes, Source source, String place) {
        SvgShapes shapes = new SvgShapes(attributes, source, place);
        return switch (name) {
            case "path" -> PathReader.read(shapes.figures("d"));
            case "polygon" -> shapes.points(true);
            case "polyline" -> shapes.points(false);
            case "line" ->
                List.of(new Subpath(
                        List.of(new Stroke.Line(
                                Vector2D.of(shapes.length("x1"), shapes.length("y1")),
                                Vector2D.of(shapes.length("x2"), shapes.length("y2")))),
                        false));
            case "rect" -> shapes.rect();
            case "circle" -> shapes.ellipse(shapes.length("r"), shapes.length("r"));
            default -> shapes.ellipse(shapes.length("rx"), shapes.length("ry"));
        };
    }

    private Figures figures(String attribute) {
        return new Figures(
                attributes.getOrDefault(attribute, ""), source, at -> place + ", attribute " + attribute + ", " + at);
    }

    private double length(String attribute) {
        return attributes.containsKey(attribute)
                ? UserUnit.length(attributes.get(attribute), source, place + ", attribute " + attribute)
                : 0;
    }

    private List<Subpath> points(boolean closed) {
        Figures figures = figures("points");
        List<Stroke> strokes = new ArrayList<>();
        Vector2D pen = null;
        while (!figures.done()) {
            double x = figures.number();
            figures.separator();
            Vector2D to = Vector2D.of(x, figures.number());
            figures.separator();
            if (pen != null) {
                strokes.add(new Stroke.Line(pen, to));
            }
            pen = to;
        }
        return strokes.isEmpty() ? List.of() : List.of(new Subpath(strokes, closed));
    }

    /** A corner radius that is not given is that of the other axis; none is more than half the side. */
    private List<Subpath> rect() {
        double x = length("x");
        double y = length("y");
        double w = length("width");
        double h = length("height");
        if (!(w > 0 && h > 0)) {
            return List.of();
        }
        double rx = Math.min(w / 2, Math.abs(length(attributes.containsKey("rx") ? "rx" : "ry")));
        double ry = Math.min(h / 2, Math.abs(length(attributes.containsKey("ry") ? "ry" : "rx")));
        if (rx == 0 || ry == 0) {
            rx = 0;
            ry = 0;
        }
        List<Stroke> strokes = new ArrayList<>();
        strokes.add(new Stroke.Line(Vector2D.of(x + rx, y), Vector2D.of(x + w - rx, y)));
        round(strokes, x + w - rx, y + ry, rx, ry, 3);
        strokes.add(new Stroke.Line(Vector2D.of(x + w, y + ry), Vector2D.of(x + w, y + h - ry)));
        round(strokes, x + w - rx, y + h - ry, rx, ry, 0);
        strokes.add(new Stroke.Line(Vector2D.of(x + w - rx, y + h), Vector2D.of(x + rx, y + h)));
        round(strokes, x + rx, y + h - ry, rx, ry, 1);
        strokes.add(new Stroke.Line(Vector2D.of(x, y + h - ry), Vector2D.of(x, y + ry)));
        round(strokes, x + rx, y + ry, rx, ry, 2);
        return List.of(new Subpath(strokes, true));
    }

    private static void round(List<Stroke> strokes, double x, double y, double rx, double ry, int quarter) {
        if (rx > 0) {
            strokes.add(quarter(x, y, rx, ry, quarter));
        }
    }

    private List<Subpath> ellipse(double rx, double ry) {
        if (!(rx > 0 && ry > 0)) {
            return List.of();
        }
        List<Stroke> strokes = new ArrayList<>();
        for (int quarter = 0; quarter < 4; quarter++) {
            strokes.add(quarter(length("cx"), length("cy"), rx, ry, quarter));
        }
        return List.of(new Subpath(strokes, true));
    }

    private static Stroke quarter(double x, double y, double rx, double ry, int quarter) {
        return new Stroke.Elliptic(
                onAxis(x, y, rx, ry, quarter),
                onAxis(x, y, rx, ry, quarter + 1),
                Vector2D.of(x, y),
                Vector2D.of(rx, 0),
                Vector2D.of(0, ry),
                quarter * Math.PI / 2,
                Math.PI / 2);
    }

    private static Vector2D onAxis(double x, double y, double rx, double ry, int quarters) {
        return switch (quarters % 4) {
            case 0 -> Vector2D.of(x + rx, y);
            case 1 -> Vector2D.of(x, y + ry);
            case 2 -> Vector2D.of(x - rx, y);
            default -> Vector2D.of(x, y - ry);
        };
    }
}
