package org.draftingmaths.exchange;

/** A rule of ten centimetres over one of four inches, to measure a print by. */
final class Rule {

    static final double WIDTH = 160;
    private static final double INCH = 25.4;

    private Rule() {}

    static String at(double x, double y) {
        return ticks(x, y, 10, 10, -3)
                + ticks(x, y, INCH, 4, 3)
                + label(x, y - 5, "10 cm above, 4 in below: measure both on the print before cutting");
    }

    private static String ticks(double x, double y, double step, int count, double height) {
        StringBuilder data = new StringBuilder();
        data.append("M").append(number(x)).append(' ').append(number(y));
        data.append("H").append(number(x + step * count));
        for (int i = 0; i <= count; i++) {
            data.append("M").append(number(x + step * i)).append(' ').append(number(y));
            data.append("v").append(number(height));
        }
        return "<path class=\"rule\" d=\"" + data + "\"/>\n";
    }

    private static String label(double x, double y, String text) {
        return "<text x=\"" + number(x) + "\" y=\"" + number(y) + "\">" + text + "</text>\n";
    }

    private static String number(double value) {
        return PathData.number(value);
    }
}
