package org.draftingmaths.exchange;

import java.util.stream.Collectors;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Marks as SVG: one user unit is one millimetre of the pattern. The page's y runs down. */
final class SvgWriter {

    private final Sheet sheet;
    private final Vector2D home;
    private final StringBuilder svg = new StringBuilder();

    private SvgWriter(Sheet sheet) {
        this.sheet = sheet;
        this.home = Vector2D.of(0, -sheet.height());
    }

    /** The document, its root element with further attributes. */
    static String write(Sheet sheet, String attributes) {
        SvgWriter writer = new SvgWriter(sheet);
        String width = PathData.number(sheet.width());
        String height = PathData.number(sheet.height());
        writer.svg
                .append("<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"pattern " + writer.scaleClass() + "\"")
                .append(attributes)
                .append(" viewBox=\"0 0 " + width + " " + height + "\">\n");
        writer.style();
        writer.svg.append("<rect class=\"sheet\" width=\"" + width + "\" height=\"" + height + "\"/>\n");
        sheet.marks().forEach(mark -> writer.mark(mark.shifted(writer.home)));
        return writer.svg.append("</svg>\n").toString();
    }

    /** Widths and letters depend on how much a picture is reduced; so each scale has rules of its own on a page of several pictures. */
    private String scaleClass() {
        return "at" + Math.round(1000 * sheet.pen().mm(1));
    }

    /** Scoped by the classes of the sheet, so that several pictures can stand on one page. */
    private void style() {
        svg.append("<style>\n");
        for (Tint tint : Tint.values()) {
            rule("." + tint.className(), "fill:" + tint.colour() + ";stroke:none");
        }
        for (LineKind kind : LineKind.values()) {
            rule(
                    "." + kind.className(),
                    "fill:none;stroke:" + kind.colour() + ";stroke-width:" + onPaper(kind.width())
                            + ";stroke-linejoin:round" + dashes(kind));
        }
        rule("text", "font-family:" + Lettering.FAMILY);
        rule(".middle", "text-anchor:middle");
        for (TextKind kind : TextKind.values()) {
            rule("." + kind.className(), "fill:" + kind.colour() + ";font-size:" + onPaper(kind.size()) + "px");
        }
        svg.append("</style>\n");
    }

    private void rule(String selector, String what) {
        svg.append(".pattern.")
                .append(scaleClass())
                .append(' ')
                .append(selector)
                .append('{')
                .append(what)
                .append("}\n");
    }

    private String onPaper(double mm) {
        return PathData.number(sheet.pen().mm(mm));
    }

    private String dashes(LineKind kind) {
        return kind.dashes().isEmpty()
                ? ""
                : kind.dashes().stream().map(this::onPaper).collect(Collectors.joining(" ", ";stroke-dasharray:", ""));
    }

    private void mark(Mark mark) {
        if (mark instanceof Mark.Stroke stroke) {
            path(
                    stroke.kind().className(),
                    stroke.paths().stream()
                            .map(stroke.closed() ? PathData::closed : PathData::open)
                            .collect(Collectors.joining()));
        } else if (mark instanceof Mark.Area area) {
            path(area.tint().className(), PathData.closed(area.outline()));
        } else if (mark instanceof Mark.Words words) {
            words(words);
        }
    }

    private void path(String kind, String data) {
        svg.append("<path class=\"").append(kind).append("\" d=\"").append(data).append("\"/>\n");
    }

    private void words(Mark.Words words) {
        String x = PathData.number(words.at().getX());
        String y = PathData.number(-words.at().getY());
        double turn = -Math.toDegrees(Math.atan2(words.way().getY(), words.way().getX()));
        String rotation = turn == 0 ? "" : " transform=\"rotate(" + PathData.number(turn) + " " + x + " " + y + ")\"";
        svg.append("<text class=\"" + classes(words) + "\" x=\"" + x + "\" y=\"" + y + "\"" + rotation + size(words)
                        + ">")
                .append(escaped(words.text()))
                .append("</text>\n");
    }

    private static String classes(Mark.Words words) {
        return words.kind().className() + (words.anchor() == Mark.Anchor.MIDDLE ? " middle" : "");
    }

    private String size(Mark.Words words) {
        return words.size() == sheet.pen().size(words.kind())
                ? ""
                : " style=\"font-size:" + PathData.number(words.size()) + "px\"";
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
