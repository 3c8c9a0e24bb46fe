package org.draftingmaths.exchange;

/** The one drawing style: line widths and letter heights in mm, so that a print at full size is legible. */
final class Ink {

    static final double CAPTION = 5;
    static final double LABEL = 3.6;

    /** Sans-serif letters are on average this share of their height wide. */
    private static final double LETTER = 0.55;

    static final String STYLE = """
            <style>
            .sheet{fill:#ffffff}
            .cloth{fill:#f6f1e7;stroke:none}
            .wedge{fill:#e3d5bd;stroke:none}
            .edge{fill:none;stroke:#2b2440;stroke-width:.6;stroke-linejoin:round}
            .fold{fill:none;stroke:#2b2440;stroke-width:.6;stroke-dasharray:8 2 1 2}
            .end{fill:none;stroke:#7a3e1d;stroke-width:.6;stroke-linejoin:round}
            .leg{fill:none;stroke:#7a3e1d;stroke-width:.4}
            .bisector{fill:none;stroke:#7a3e1d;stroke-width:.3;stroke-dasharray:3 2}
            .point{fill:#7a3e1d;stroke:none}
            .level{fill:none;stroke:#3f6b5c;stroke-width:.35;stroke-dasharray:5 2}
            .grain{fill:none;stroke:#2b2440;stroke-width:.35}
            .notch{fill:none;stroke:#2b2440;stroke-width:.6}
            .ghost{fill:none;stroke:#b9b2a6;stroke-width:.4;stroke-dasharray:2 1.5}
            .construction{fill:none;stroke:#5a5fa8;stroke-width:.3}
            .constructionname{fill:#5a5fa8}
            .rule{fill:none;stroke:#2b2440;stroke-width:.3}
            text{font-family:sans-serif;fill:#2b2440;font-size:3.6px}
            .caption{font-size:5px}
            .name{font-size:7px}
            .middle{text-anchor:middle}
            .levelname{fill:#3f6b5c}
            .dartname{fill:#7a3e1d}
            </style>
            """;

    private Ink() {}

    static double textWidth(String text, double height) {
        return text.length() * LETTER * height;
    }

    static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
