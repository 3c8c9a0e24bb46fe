package org.draftingmaths.exchange;

import java.util.List;

/**
 * Patterns as PDF, at true scale: on one sheet, or on as many pages of a home printer's paper as it takes.
 *
 * <p>With {@code s} the {@link Scale}'s {@code times()}, a millimetre of the pattern is {@code 72 / 25.4 / s} points. Straights and curves are
 * written as they are, arcs as cubics that stray by at most 1e-4 mm. The file asks viewers not to scale when printing, embeds its
 * typeface and holds no date: the same drawing makes the same bytes. Tints are left out to save ink. A square of 10 cm and one of 4 in
 * stand on the first page, to measure a print by on both axes.
 *
 * <pre>{@code
 * Files.write(Path.of("front.pdf"), Pdf.tiles("Bodice", Scale.FULL, Page.A4, List.of(Figure.of("Front", front))));
 * }</pre>
 */
public final class Pdf {

    /** Rows of pieces on a sheet are ended before they would be wider, in mm on paper: the width of common plotter rolls. */
    static final double WIDEST = 900;

    private Pdf() {}

    /**
     * All pieces on one sheet, as large as it needs to be, over the test squares.
     *
     * @param title the name of the pattern
     * @param scale how large it is printed
     * @param figures the pieces, in rows from the left, the distance between them 15 mm
     * @return the bytes of the file
     * @throws IllegalArgumentException when there is no piece, when the sheet would be larger than a PDF's page may be (5080 mm), or
     *     when words have letters that the typeface lacks (it has Latin, Greek and Cyrillic ones)
     */
    public static byte[] sheet(String title, Scale scale, List<Figure> figures) {
        Sheet sheet = Sheet.of(figures, new Pen(scale.times()), WIDEST * scale.times(), figure -> List.of())
                .withFoot(Care.foot(scale, figures));
        double factor = scale.times();
        PdfFile.requireLetters(title);
        PdfFile.requireLetters(sheet.marks());
        return PdfFile.of(
                title,
                file -> file.page(
                        sheet.width() / factor,
                        sheet.height() / factor,
                        painter -> painter.draw(sheet.marks(), View.of(sheet, 0, 0))));
    }

    /**
     * All pieces over as many pages as it takes. The first page has the test squares and says what to do, the second is a map of the tiles;
     * then come the tiles, row by row from the top; those on which nothing lies are left out, which the map says. A tile shows its frame, a
     * cross in the middle of each of its four corners that its neighbours show too, its name (column A, B, C, row 1, 2, 3) and the names of its
     * neighbours. Two crosses far apart have a ring, A and B, and their distance lets the joined sheet be measured along its diagonal.
     *
     * <p>The pieces are laid so that few tiles are needed, 6 mm apart and 2 mm from the first frame, none of them turned. Words stand off the joins
     * where there is room.
     *
     * @param title the name of the pattern
     * @param scale how large it is printed
     * @param page the paper
     * @param figures the pieces
     * @return the bytes of the file
     * @throws IllegalArgumentException when there is no piece, or when words have letters that the typeface lacks
     */
    public static byte[] tiles(String title, Scale scale, Page page, List<Figure> figures) {
        Sheet sheet = TileLay.of(figures, new Pen(scale.times()), page);
        PdfFile.requireLetters(title + page.name());
        PdfFile.requireLetters(sheet.marks());
        TiledPrint print = TiledPrint.of(title, scale, page, sheet, Care.words(scale, figures));
        return PdfFile.of(title, print::into);
    }
}
