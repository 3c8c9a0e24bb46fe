package org.draftingmaths.reference.print;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.apache.batik.transcoder.SVGAbstractTranscoder;
import org.apache.batik.transcoder.TranscoderException;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.ImageTranscoder;
import org.draftingmaths.exchange.Figure;
import org.draftingmaths.exchange.Svg;

/**
 * Whether two SVG engines, librsvg and Apache Batik, put the ink in the same places, and the PDF with them. Words are left out: every engine
 * brings a typeface of its own.
 */
final class EngineCheck {

    private static final int DPI = 150;

    /** Where one engine puts ink, the other has some no more than so many pixels away. */
    private static final int PIXELS = 1;

    /** Ink that is surely meant, and a trace of it. */
    private static final double SURE = 0.6;

    private static final double TRACE = 0.2;

    private final Path folder;
    private final PrintStream out;
    private final List<String> faults;

    EngineCheck(Path folder, PrintStream out, List<String> faults) {
        this.folder = folder;
        this.out = out;
        this.faults = faults;
    }

    void all(List<Figure> figures, Path pdf) throws IOException, InterruptedException {
        String svg = Svg.sheet(figures).replaceAll("<text.*?</text>\n", "");
        Path file = Files.writeString(folder.resolve("lines.svg"), svg);
        Path png = folder.resolve("lines.png");
        String dpi = String.valueOf(DPI);
        Program.run(folder, "rsvg-convert", "-d", dpi, "-p", dpi, "-o", png.toString(), file.toString());
        Raster rsvg = Raster.read(png);
        Raster batik = batik(svg, rsvg.width(), rsvg.height());
        agree("rsvg-convert's ink in Batik's drawing", rsvg, batik);
        agree("Batik's ink in rsvg-convert's drawing", batik, rsvg);
        Program.run(folder, "pdftoppm", "-r", dpi, "-gray", "-png", "-singlefile", pdf.toString(), "sheet");
        Raster paper = Raster.read(folder.resolve("sheet.png"));
        agree("rsvg-convert's ink in the PDF", rsvg, paper);
        agree("Batik's ink in the PDF", batik, paper);
    }

    private static Raster batik(String svg, int width, int height) {
        Drawn drawn = new Drawn();
        drawn.addTranscodingHint(SVGAbstractTranscoder.KEY_WIDTH, (float) width);
        drawn.addTranscodingHint(SVGAbstractTranscoder.KEY_HEIGHT, (float) height);
        try {
            drawn.transcode(new TranscoderInput(new StringReader(svg)), new TranscoderOutput());
        } catch (TranscoderException cannot) {
            throw new IllegalStateException("Batik cannot draw the SVG.", cannot);
        }
        return Raster.of(drawn.image);
    }

    /** Keeps the picture instead of writing it. */
    private static final class Drawn extends ImageTranscoder {
        private BufferedImage image;

        @Override
        public BufferedImage createImage(int width, int height) {
            return new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        }

        @Override
        public void writeImage(BufferedImage picture, TranscoderOutput output) {
            image = picture;
        }
    }

    private void agree(String what, Raster one, Raster other) {
        long ink = 0;
        long alone = 0;
        for (int y = 0; y < one.height(); y++) {
            for (int x = 0; x < one.width(); x++) {
                if (one.at(x, y) > SURE) {
                    ink++;
                    alone += isNear(other, x, y) ? 0 : 1;
                }
            }
        }
        String said = String.format(
                Locale.ROOT,
                "%s: of %d dark pixels %d have none within %d pixel at %d dpi",
                what,
                ink,
                alone,
                PIXELS,
                DPI);
        out.println(said);
        if (alone > 0 || ink < 10_000) {
            faults.add(said);
        }
    }

    private static boolean isNear(Raster raster, int x, int y) {
        for (int i = -PIXELS; i <= PIXELS; i++) {
            for (int j = -PIXELS; j <= PIXELS; j++) {
                if (raster.at(x + i, y + j) > TRACE) {
                    return true;
                }
            }
        }
        return false;
    }
}
