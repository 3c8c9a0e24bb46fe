package org.draftingmaths.exchange;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.zip.CRC32;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/** A PDF in the making. It carries no date and its identity is computed from its pages, so that the same drawing makes the same bytes. */
final class PdfFile implements AutoCloseable {

    /** The longest side of a page in mm: 14400 points of 1/72 in (PDF 1.7, ISO 32000-1, annex C). */
    static final double LARGEST = 14400 * 25.4 / 72;

    private final PDDocument document = new PDDocument();
    private final PDFont font;
    private final CRC32 content = new CRC32();

    /** What draws on a page. */
    interface Drawing {
        void on(PdfPainter painter) throws IOException;
    }

    /** Makes a file of pages. */
    interface Pages {
        void into(PdfFile file) throws IOException;
    }

    private PdfFile(String title) throws IOException {
        font = PDType0Font.load(document, Lettering.font(), true);
        document.getDocumentInformation().setTitle(title);
        document.getDocumentInformation().setCreator("Drafting Maths");
        document.getDocumentCatalog().setLanguage("en");
        PDViewerPreferences preferences =
                new PDViewerPreferences(document.getDocumentCatalog().getCOSObject());
        document.getDocumentCatalog().setViewerPreferences(preferences);
        preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
        preferences.setDisplayDocTitle(true);
    }

    static byte[] of(String title, Pages pages) {
        try (PdfFile file = new PdfFile(title)) {
            pages.into(file);
            return file.bytes();
        } catch (IOException cannot) {
            throw new UncheckedIOException("The PDF could not be put together.", cannot);
        }
    }

    void page(double width, double height, Drawing drawing) throws IOException {
        if (!(width <= LARGEST && height <= LARGEST)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "A page of %.1f mm by %.1f mm cannot be: allowed are sides of at most %.1f mm. Tile the pattern instead.",
                    width,
                    height,
                    LARGEST));
        }
        PDPage page = new PDPage(new PDRectangle(View.points(width), View.points(height)));
        document.addPage(page);
        try (PDPageContentStream stream = new PDPageContentStream(document, page)) {
            drawing.on(new PdfPainter(stream, font));
        }
        try (InputStream drawn = page.getContents()) {
            content.update(drawn.readAllBytes());
        }
    }

    private byte[] bytes() throws IOException {
        document.setDocumentId(content.getValue());
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        document.save(bytes);
        return bytes.toByteArray();
    }

    @Override
    public void close() throws IOException {
        document.close();
    }

    /** Refuses words that the embedded typeface cannot write. */
    static void requireLetters(List<Mark> marks) {
        marks.stream()
                .filter(Mark.Words.class::isInstance)
                .map(Mark.Words.class::cast)
                .forEach(words -> requireLetters(words.text()));
    }

    static void requireLetters(String words) {
        words.codePoints().filter(letter -> !Lettering.has(letter)).findFirst().ifPresent(letter -> {
            throw new IllegalArgumentException("The words '" + words + "' cannot be printed: the typeface has no "
                    + Character.getName(letter) + "; it has Latin, Greek and Cyrillic letters.");
        });
    }
}
