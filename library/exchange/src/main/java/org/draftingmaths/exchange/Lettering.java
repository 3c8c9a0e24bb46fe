package org.draftingmaths.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * The one typeface: Liberation Sans (SIL Open Font License 1.1), which PDFBox brings along. A PDF embeds it; an SVG asks for it and,
 * where it is missing, for one of the same widths.
 */
final class Lettering {

    /** What an SVG asks for. */
    static final String FAMILY = "'Liberation Sans',Arial,Helvetica,sans-serif";

    /** How far letters reach above the line they stand on, as a share of their size. */
    static final double ABOVE = 0.74;

    /** How far they reach below it. */
    static final double BELOW = 0.22;

    /** A picture is drawn on machines that lack the typeface: words get this much more room than they need in it. */
    static final double WIDER = 1.16;

    private static final String FONT = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    private Lettering() {}

    /** The width of words in letters of a size; a letter that the typeface lacks counts as one wide letter. */
    static double width(String text, double size) {
        return text.codePoints().mapToDouble(Widths::of).sum() * size;
    }

    /** The words broken into lines no wider than a width, between words. */
    static List<String> lines(String text, double size, double width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ", -1)) {
            if (line.length() > 0 && width(line + " " + word, size) > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    static boolean has(int letter) {
        return letter < Widths.ALL.length && Widths.ALL[letter] > 0;
    }

    static InputStream font() {
        return PDDocument.class.getResourceAsStream(FONT);
    }

    /** Read once, when the first words are measured. */
    private static final class Widths {

        private static final double WIDEST = 1;
        private static final double[] ALL = read();

        private static double of(int letter) {
            return has(letter) ? ALL[letter] : WIDEST;
        }

        private static double[] read() {
            try (TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(font()))) {
                CmapLookup glyphs = font.getUnicodeCmapLookup();
                double perEm = font.getUnitsPerEm();
                double[] widths = new double[Character.MAX_VALUE + 1];
                for (int letter : IntStream.range(' ', widths.length).toArray()) {
                    int glyph = glyphs.getGlyphId(letter);
                    widths[letter] = glyph == 0 ? 0 : font.getAdvanceWidth(glyph) / perEm;
                }
                return widths;
            } catch (IOException unreadable) {
                throw new UncheckedIOException("The typeface of the drawings cannot be read.", unreadable);
            }
        }
    }
}
