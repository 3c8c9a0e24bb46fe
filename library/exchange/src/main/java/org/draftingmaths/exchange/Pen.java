package org.draftingmaths.exchange;

/**
 * The one drawing style: line widths and letter heights. At full size they are millimetres on paper; on a reduced picture
 * everything is drawn larger by a factor, so that it comes out legible.
 *
 * @param factor by how much larger than on paper
 */
record Pen(double factor) {

    /** For paper at full size. */
    static final Pen PAPER = new Pen(1);

    /** Sans-serif letters are on average this share of their height wide. */
    private static final double LETTER = 0.55;

    double mm(double onPaper) {
        return factor * onPaper;
    }

    double label() {
        return mm(3.6);
    }

    double caption() {
        return mm(5);
    }

    static double textWidth(String text, double height) {
        return text.length() * LETTER * height;
    }

    static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }

    /** Scoped by the class of the sheet, so that several pictures can stand on one page. */
    String style() {
        return "<style>\n"
                + ".pattern .sheet{fill:#ffffff}\n"
                + ".pattern .cloth{fill:#f6f1e7;stroke:none}\n"
                + ".pattern .wedge{fill:#e3d5bd;stroke:none}\n"
                + line("edge", "#2b2440", 0.6, "stroke-linejoin:round")
                + line("fold", "#2b2440", 0.6, dashes(8, 2, 1, 2))
                + line("end", "#7a3e1d", 0.6, "stroke-linejoin:round")
                + line("leg", "#7a3e1d", 0.4, "")
                + line("bisector", "#7a3e1d", 0.3, dashes(3, 2))
                + ".pattern .point{fill:#7a3e1d;stroke:none}\n"
                + line("level", "#3f6b5c", 0.35, dashes(5, 2))
                + line("grain", "#2b2440", 0.35, "")
                + line("notch", "#2b2440", 0.6, "")
                + line("ghost", "#b9b2a6", 0.4, dashes(2, 1.5))
                + line("construction", "#5a5fa8", 0.3, "")
                + line("rule", "#2b2440", 0.3, "")
                + ".pattern text{font-family:sans-serif;fill:#2b2440;font-size:" + PathData.number(label()) + "px}\n"
                + ".pattern .caption{font-size:" + PathData.number(caption()) + "px}\n"
                + ".pattern .middle{text-anchor:middle}\n"
                + ".pattern .levelname{fill:#3f6b5c}\n"
                + ".pattern .dartname{fill:#7a3e1d}\n"
                + ".pattern .constructionname{fill:#5a5fa8}\n"
                + "</style>\n";
    }

    private String line(String kind, String colour, double width, String more) {
        return ".pattern ." + kind + "{fill:none;stroke:" + colour + ";stroke-width:" + PathData.number(mm(width))
                + (more.isEmpty() ? "" : ";" + more) + "}\n";
    }

    private String dashes(double... lengths) {
        StringBuilder dashes = new StringBuilder("stroke-dasharray:");
        for (double length : lengths) {
            dashes.append(PathData.number(mm(length))).append(' ');
        }
        return dashes.toString().strip();
    }
}
