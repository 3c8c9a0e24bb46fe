package org.draftingmaths.exchange;

import java.util.Locale;

/**
 * A sheet of paper in a printer. Between its margins lies the frame of a tile; neighbouring tiles show the same strip, as wide as the
 * overlap.
 *
 * @param name what the paper is called
 * @param width in mm
 * @param height in mm
 * @param margin the rim in mm that stays free of the pattern; most printers cannot print the outer 6 mm
 * @param overlap in mm
 */
public record Page(String name, double width, double height, double margin, double overlap) {

    /** ISO 216 A4, upright, with margins of 12 mm and an overlap of 10 mm. */
    public static final Page A4 = new Page("A4", 210, 297, 12, 10);

    /** US Letter, 8 1/2 in by 11 in, upright, with margins of half an inch and an overlap of 10 mm. */
    public static final Page LETTER = new Page("US Letter", 8.5 * 25.4, 11 * 25.4, 12.7, 10);

    private static final double LEAST_MARGIN = 10;
    private static final double MOST_MARGIN = 50;
    private static final double LEAST_OVERLAP = 6;
    private static final double MOST_OVERLAP = 50;

    /** The test squares and what is said beside them need as much. */
    private static final double LEAST_FRAME_WIDTH = 170;

    private static final double LEAST_FRAME_HEIGHT = 230;

    /**
     * Checks that the test squares fit between the margins.
     *
     * @throws IllegalArgumentException when a figure is not in its range, with the range
     */
    public Page {
        requireWithin(name, "margins", margin, LEAST_MARGIN, MOST_MARGIN);
        requireWithin(name, "an overlap", overlap, LEAST_OVERLAP, MOST_OVERLAP);
        requireWithin(name, "a width", width, LEAST_FRAME_WIDTH + 2 * margin, PdfFile.LARGEST);
        requireWithin(name, "a height", height, LEAST_FRAME_HEIGHT + 2 * margin, PdfFile.LARGEST);
    }

    private static void requireWithin(String page, String what, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "Page '%s' has %s of %.1f mm; allowed with the test squares and its margins is %.1f to %.1f mm.",
                    page,
                    what,
                    value,
                    least,
                    most));
        }
    }

    /** The width of the frame, in mm. */
    double frameWidth() {
        return width - 2 * margin;
    }

    /** The height of the frame, in mm. */
    double frameHeight() {
        return height - 2 * margin;
    }
}
