package org.draftingmaths.lessons;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.twod.Bounds2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;

/** A picture of rulers laid along a curve. One user unit is one millimetre; on the page it is three pixels. */
final class Rulers {

    private static final double PIXELS = 3;
    private static final double MARGIN = 8;
    private static final double HEAD = 16;

    /** Room for a caption such as "16 rulers: 203.1 of 205.0 mm". */
    private static final double LEAST_WIDTH = 78;

    /** So many short straights look like the curve itself. */
    private static final int SMOOTH = 200;

    private Rulers() {}

    static String along(CurvePath curve, int... steps) {
        if (steps.length == 0 || Arrays.stream(steps).anyMatch(count -> count < 1)) {
            throw new IllegalArgumentException("Lay 1 ruler or more along a curve: " + Arrays.toString(steps) + ".");
        }
        Bounds2D box = curve.bounds();
        double cell = Math.max(LEAST_WIDTH, box.getMax().getX() - box.getMin().getX()) + MARGIN;
        double width = steps.length * cell + MARGIN;
        double height = box.getMax().getY() - box.getMin().getY() + HEAD + 2 * MARGIN;
        String cells = IntStream.range(0, steps.length)
                .mapToObj(i -> cell(curve, steps[i], MARGIN + i * cell, box))
                .collect(Collectors.joining());
        return String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%.0f\" style=\"max-width:100%%;height:auto\""
                        + " viewBox=\"0 0 %.2f %.2f\">\n<rect width=\"%.2f\" height=\"%.2f\" fill=\"#ffffff\"/>\n%s</svg>\n",
                PIXELS * width,
                width,
                height,
                width,
                height,
                cells);
    }

    private static String cell(CurvePath curve, int steps, double x, Bounds2D box) {
        Vector2D[] marks = marks(curve, steps);
        double sum = IntStream.range(0, steps)
                .mapToDouble(i -> marks[i].distance(marks[i + 1]))
                .sum();
        String caption = String.format(
                Locale.ROOT, "%d %s: %.1f of %.1f mm", steps, steps == 1 ? "ruler" : "rulers", sum, curve.length());
        Vector2D move = Vector2D.of(
                x - box.getMin().getX(), HEAD + MARGIN + box.getMax().getY());
        return String.format(
                        Locale.ROOT,
                        "<text x=\"%.2f\" y=\"%.2f\" font-family=\"sans-serif\" font-size=\"4.6\" fill=\"#2b2440\">%s</text>\n",
                        x,
                        MARGIN + 4,
                        caption)
                + line(marks(curve, SMOOTH), move, "#2b2440", 0.9)
                + line(marks, move, "#b4552a", 0.6)
                + dots(marks, move);
    }

    private static Vector2D[] marks(CurvePath curve, int steps) {
        double length = curve.length();
        return IntStream.rangeClosed(0, steps)
                .mapToObj(i -> curve.pointAt(i == steps ? length : length * i / steps))
                .toArray(Vector2D[]::new);
    }

    private static String line(Vector2D[] points, Vector2D move, String colour, double width) {
        String all = Arrays.stream(points)
                .map(p -> String.format(Locale.ROOT, "%.3f,%.3f", move.getX() + p.getX(), move.getY() - p.getY()))
                .collect(Collectors.joining(" "));
        return String.format(
                Locale.ROOT,
                "<polyline points=\"%s\" fill=\"none\" stroke=\"%s\" stroke-width=\"%.1f\"/>\n",
                all,
                colour,
                width);
    }

    private static String dots(Vector2D[] points, Vector2D move) {
        return Arrays.stream(points)
                .map(p -> String.format(
                        Locale.ROOT,
                        "<circle cx=\"%.3f\" cy=\"%.3f\" r=\"1.1\" fill=\"#b4552a\"/>\n",
                        move.getX() + p.getX(),
                        move.getY() - p.getY()))
                .collect(Collectors.joining());
    }
}
