package org.draftingmaths.lessons;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.twod.Bounds2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Flatten;
import org.draftingmaths.curve.Nearest;

/**
 * Lines on a page, each with what it stands for: a seam line, a cut line, a copy, a stretch that is lost, and rungs that show how far
 * one line lies from another. Lines differ in their dashes as well as in their colours.
 *
 * <pre>{@code
 * Sketch.of("Neckline").seam("seam line", neckline).cut("cut line", cut).rungs(neckline, cut, 9)
 * }</pre>
 *
 * @param caption a line of words above it
 * @param strokes the lines, in the order in which they are drawn
 */
public record Sketch(String caption, List<Stroke> strokes) {

    /** How lines look. */
    private enum Ink {
        SEAM("#2b2440", 2.2, ""),
        CUT("#b4552a", 2.2, "10 4"),
        COPY("#5a5fa8", 2.0, "2 4"),
        LOST("#c2185b", 5.0, ""),
        RUNG("#8a8478", 1.0, "");

        private final String colour;
        private final double pixels;
        private final String dashes;

        Ink(String colour, double pixels, String dashes) {
            this.colour = colour;
            this.pixels = pixels;
            this.dashes = dashes;
        }

        /** As attributes of an element. */
        String stroke() {
            return " fill=\"none\" stroke=\"" + colour + "\" stroke-width=\"" + number(pixels) + "\""
                    + (dashes.isEmpty() ? "" : " stroke-dasharray=\"" + dashes + "\"");
        }
    }

    /** A line with the words for the legend, none for a rung. */
    record Stroke(Ink ink, Optional<String> words, CurvePath path) {}

    /** The width of a sketch on the page and its letters, in pixels. */
    private static final double CELL = 380;

    private static final double LETTERS = 12.5;
    private static final double LINE = 1.4 * LETTERS;
    private static final double MARGIN = 14;

    /** How far in pixels a polyline may stray from the curve that it stands for. */
    private static final double STRAYS = 0.1;

    /** Copies the list. */
    public Sketch {
        strokes = List.copyOf(strokes);
    }

    /**
     * An empty sketch.
     *
     * @param caption a line of words above it
     * @return the sketch
     */
    public static Sketch of(String caption) {
        return new Sketch(caption, List.of());
    }

    /**
     * The sketch with a line that is sewn, drawn full.
     *
     * @param words what it is
     * @param path the line
     * @return the sketch
     */
    public Sketch seam(String words, CurvePath path) {
        return with(new Stroke(Ink.SEAM, Optional.of(words), path));
    }

    /**
     * The sketch with a line that is cut, dashed.
     *
     * @param words what it is
     * @param path the line
     * @return the sketch
     */
    public Sketch cut(String words, CurvePath path) {
        return with(new Stroke(Ink.CUT, Optional.of(words), path));
    }

    /**
     * The sketch with a line that is neither, dotted.
     *
     * @param words what it is
     * @param path the line
     * @return the sketch
     */
    public Sketch copy(String words, CurvePath path) {
        return with(new Stroke(Ink.COPY, Optional.of(words), path));
    }

    /**
     * The sketch with a stretch that is lost, drawn broad.
     *
     * @param words what it is
     * @param path the stretch
     * @return the sketch
     */
    public Sketch lost(String words, CurvePath path) {
        return with(new Stroke(Ink.LOST, Optional.of(words), path));
    }

    /**
     * The sketch with rungs from one line to the nearest places of another.
     *
     * @param from the line on which they stand, at equal steps along it
     * @param to the other line
     * @param count how many, 2 or more
     * @return the sketch
     * @throws IllegalArgumentException when there are fewer than 2
     */
    public Sketch rungs(CurvePath from, CurvePath to, int count) {
        if (count < 2) {
            throw new IllegalArgumentException("Draw 2 rungs or more: " + count + ".");
        }
        double length = from.length();
        Sketch sketch = this;
        for (int i = 0; i < count; i++) {
            Vector2D foot = from.pointAt(i == count - 1 ? length : length * i / (count - 1));
            Vector2D head = Nearest.of(to, foot).point();
            sketch = sketch.with(new Stroke(Ink.RUNG, Optional.empty(), CurvePath.polyline(foot, head)));
        }
        return sketch;
    }

    private Sketch with(Stroke stroke) {
        List<Stroke> more = new ArrayList<>(strokes);
        more.add(stroke);
        return new Sketch(caption, more);
    }

    /** Sketches side by side, all to one scale, which fits the largest into its cell. */
    static String row(Sketch... sketches) {
        List<Sketch> all = List.of(sketches);
        if (all.isEmpty() || all.stream().anyMatch(sketch -> sketch.strokes.isEmpty())) {
            throw new IllegalArgumentException("Show 1 sketch or more, each with a line in it.");
        }
        double perPixel = most(all, sketch -> Math.max(sketch.wide(), sketch.high())) / (CELL - 2 * MARGIN);
        double top = MARGIN + (most(all, sketch -> sketch.legend().size()) + 1.5) * LINE;
        double width = all.size() * CELL + MARGIN;
        double height = top + most(all, Sketch::high) / perPixel + MARGIN;
        String cells = IntStream.range(0, all.size())
                .mapToObj(i -> all.get(i).cell(MARGIN + i * CELL, top, perPixel))
                .collect(Collectors.joining());
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + number(width)
                + "\" style=\"max-width:100%;height:auto\" viewBox=\"0 0 " + number(width) + " " + number(height)
                + "\">\n<rect width=\"" + number(width) + "\" height=\"" + number(height) + "\" fill=\"#ffffff\"/>\n"
                + cells + "</svg>\n";
    }

    private static double most(List<Sketch> sketches, ToDoubleFunction<Sketch> of) {
        return sketches.stream().mapToDouble(of).max().orElseThrow();
    }

    /** The lines of the legend: each stroke with words of its own, once. */
    private List<Stroke> legend() {
        Set<Optional<String>> told = new HashSet<>(Set.of(Optional.empty()));
        return strokes.stream().filter(stroke -> told.add(stroke.words)).toList();
    }

    private double wide() {
        return bounds().getMax().getX() - bounds().getMin().getX();
    }

    private double high() {
        return bounds().getMax().getY() - bounds().getMin().getY();
    }

    private Bounds2D bounds() {
        Bounds2D.Builder all = Bounds2D.builder();
        strokes.forEach(stroke -> all.add(stroke.path.bounds()));
        return all.build();
    }

    private String cell(double x, double top, double perPixel) {
        StringBuilder cell = new StringBuilder(text(caption, x, MARGIN + LETTERS, " font-weight=\"bold\""));
        double y = MARGIN + LETTERS + LINE;
        for (Stroke stroke : legend()) {
            cell.append("<line x1=\"" + number(x) + "\" y1=\"" + number(y - 4) + "\" x2=\"" + number(x + 28)
                            + "\" y2=\"" + number(y - 4) + "\"" + stroke.ink.stroke() + "/>\n")
                    .append(text(stroke.words.orElseThrow(), x + 36, y, ""));
            y += LINE;
        }
        Bounds2D box = bounds();
        for (Stroke stroke : strokes) {
            String points = Flatten.corners(stroke.path, STRAYS * perPixel).stream()
                    .map(p -> number(x + (p.getX() - box.getMin().getX()) / perPixel) + ","
                            + number(top + (box.getMax().getY() - p.getY()) / perPixel))
                    .collect(Collectors.joining(" "));
            cell.append("<polyline points=\"" + points + "\"" + stroke.ink.stroke() + "/>\n");
        }
        return cell.toString();
    }

    private static String text(String words, double x, double y, String more) {
        return "<text x=\"" + number(x) + "\" y=\"" + number(y) + "\" font-family=\"sans-serif\" font-size=\""
                + number(LETTERS) + "\" fill=\"#2b2440\"" + more + ">" + Show.escaped(words) + "</text>\n";
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }
}
