package org.draftingmaths.exchange;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;

/**
 * How long a user unit of an SVG file is on paper. A file states it by a width or height in mm, cm, in, pt, pc or Q; a view box then
 * says how many user units that is, and without one a user unit is a px of 1/96 in (CSS Values and Units 3, section 6). A size in px
 * or none states nothing: programs have counted 72, 90 and 96 to the inch.
 */
final class UserUnit {

    private static final double PX = 25.4 / 96;
    private static final Pattern LENGTH =
            Pattern.compile("\\s*([-+]?(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)(?:[eE][-+]?[0-9]+)?)\\s*([a-zA-Z%]*)\\s*");

    /** Text longer than this is no length: a pattern must not be let loose on it. */
    private static final int LONGEST = 100;

    private UserUnit() {}

    /** A length with its unit in mm; empty for a bare number or px. */
    private record Size(double value, String unit) {
        OptionalDouble mm() {
            return switch (unit) {
                case "mm" -> OptionalDouble.of(value);
                case "cm" -> OptionalDouble.of(value * 10);
                case "Q" -> OptionalDouble.of(value / 4);
                case "in" -> OptionalDouble.of(value * 25.4);
                case "pt" -> OptionalDouble.of(value * 25.4 / 72);
                case "pc" -> OptionalDouble.of(value * 25.4 / 6);
                default -> OptionalDouble.empty();
            };
        }
    }

    private static Optional<Size> size(String text) {
        if (text.length() > LONGEST) {
            return Optional.empty();
        }
        Matcher match = LENGTH.matcher(text);
        return match.matches()
                ? Optional.of(new Size(Double.parseDouble(match.group(1)), match.group(2)))
                : Optional.empty();
    }

    /** A length inside the drawing, in user units. */
    static double length(String text, Source source, String place) {
        Size size = size(text).orElseThrow(() -> source.refused(place, "[" + shown(text) + "] is not a length"));
        double value = size.unit().isEmpty() || size.unit().equals("px")
                ? size.value()
                : size.mm()
                                .orElseThrow(() -> source.refused(
                                        place,
                                        "the unit of [" + text
                                                + "] is not read here; read are mm, cm, Q, in, pt, pc, px"))
                        / PX;
        if (!Double.isFinite(value)) {
            throw source.refused(place, "[" + shown(text) + "] is too large for a length");
        }
        return value;
    }

    private static String shown(String text) {
        return text.length() > 40 ? text.substring(0, 40) + "..." : text;
    }

    /** The map from user units to mm on paper, y still down. */
    static AffineTransformMatrix2D toPaper(Map<String, String> root, OptionalDouble unit, Source source, String place) {
        double[] box = box(root, source, place);
        if (unit.isPresent()) {
            return AffineTransformMatrix2D.createScale(unit.getAsDouble());
        }
        OptionalDouble width = stated(root, "width");
        OptionalDouble height = stated(root, "height");
        if (width.isEmpty() && height.isEmpty()) {
            throw source.refused(
                    place,
                    "the file does not state its scale: its width and height are not in mm, cm, in, pt or pc; say how"
                            + " many mm one user unit is (25.4/96 = 0.264583 where 96 of them make an inch, 25.4/72 ="
                            + " 0.352778 where 72 do)");
        }
        if (box.length == 0) {
            return AffineTransformMatrix2D.createScale(PX);
        }
        double across = width.isPresent() ? width.getAsDouble() / box[2] : height.getAsDouble() / box[3];
        double down = height.isPresent() ? height.getAsDouble() / box[3] : across;
        String fit = root.getOrDefault("preserveAspectRatio", "");
        double even = fit.contains("slice") ? Math.max(across, down) : Math.min(across, down);
        return fit.strip().startsWith("none")
                ? AffineTransformMatrix2D.createScale(across, down)
                : AffineTransformMatrix2D.createScale(even);
    }

    private static OptionalDouble stated(Map<String, String> root, String name) {
        return size(root.getOrDefault(name, "")).map(Size::mm).orElse(OptionalDouble.empty()).stream()
                .filter(mm -> mm > 0 && Double.isFinite(mm))
                .findFirst();
    }

    /** Left, top, width and height of the view box; nothing when there is none. */
    private static double[] box(Map<String, String> root, Source source, String place) {
        if (!root.containsKey("viewBox")) {
            return new double[0];
        }
        Figures figures = new Figures(root.get("viewBox"), source, at -> place + ", viewBox, " + at);
        double[] box = new double[4];
        for (int i = 0; i < 4; i++) {
            box[i] = figures.number();
            figures.comma();
        }
        if (!figures.done() || box[2] <= 0 || box[3] <= 0) {
            throw figures.refused("a view box has four numbers, the last two of them more than 0");
        }
        return box;
    }
}
