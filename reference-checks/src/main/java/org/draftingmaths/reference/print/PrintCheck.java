package org.draftingmaths.reference.print;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.exchange.Figure;
import org.draftingmaths.exchange.Page;
import org.draftingmaths.exchange.Pdf;
import org.draftingmaths.exchange.Scale;

/**
 * Measures prints in pixels at 300 dpi: the test squares on both axes, the joined crosses and the long diagonal of the tiles, the middle of the
 * stroke along a curve of 600 mm; has a PDF checker look for errors; and has two SVG engines and the PDF agree on what is drawn.
 * Poppler's pdftoppm rasterises, qpdf checks, librsvg's rsvg-convert and Apache Batik draw the SVG.
 */
public final class PrintCheck {

    private static final int DPI = 300;
    private static final double PER_MM = DPI / 25.4;

    /** Everything that is measured may be off by so many pixels. */
    private static final double PIXEL = 1;

    /** The distance of a piece from the left and lower side of its sheet, as {@link Pdf} says, in mm. */
    private static final double GAP = 2;

    private static final int SAMPLES = 240;

    private final Path folder;
    private final PrintStream out;
    private final List<String> faults = new ArrayList<>();
    private final Map<String, Double> worst = new TreeMap<>();

    private PrintCheck(Path folder, PrintStream out) {
        this.folder = folder;
        this.out = out;
    }

    /**
     * Makes prints and measures them.
     *
     * @param args a folder for the prints; then PDF files that are to be looked at for errors as well
     * @throws IOException when the folder cannot be written
     * @throws InterruptedException when it is stopped
     */
    public static void main(String[] args) throws IOException, InterruptedException {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        Path folder = Files.createDirectories(Path.of(args[0])).toAbsolutePath();
        PrintCheck check = new PrintCheck(folder, out);
        check.all(Stream.of(args).skip(1).map(Path::of).toList());
        if (!check.faults.isEmpty()) {
            check.faults.forEach(fault -> out.println("NOT TRUE: " + fault));
            System.exit(1);
        }
        out.println("The prints are true.");
    }

    private void all(List<Path> others) throws IOException, InterruptedException {
        for (Page page : List.of(Page.A4, Page.LETTER)) {
            String name = page.name().replace(' ', '-');
            Path pdf = write("tiles-" + name + ".pdf", Pdf.tiles("Print check", Scale.FULL, page, figures()));
            withoutErrors(pdf);
            squares(name, rasters(pdf, 1, 1).get(0), page);
            tellSquares();
            tiles(name, pdf, page);
        }
        for (Scale scale : Scale.values()) {
            withoutErrors(write("sheet-" + scale + ".pdf", Pdf.sheet("Print check", scale, figures())));
        }
        withoutErrors(write("half.pdf", Pdf.tiles("Print check", Scale.HALF, Page.A4, figures())));
        for (Path other : others) {
            withoutErrors(other.toAbsolutePath());
        }
        new EngineCheck(folder, out, faults).all(figures(), folder.resolve("sheet-FULL.pdf"));
    }

    private static List<Figure> figures() {
        return List.of(TestSheet.figure());
    }

    private Path write(String name, byte[] bytes) throws IOException {
        return Files.write(folder.resolve(name), bytes);
    }

    private void withoutErrors(Path pdf) throws IOException, InterruptedException {
        String said = Program.run(folder, "qpdf", "--check", pdf.toString());
        require(
                said.contains("No syntax or stream encoding errors found"),
                "qpdf on " + pdf.getFileName() + ": " + said);
        out.println("qpdf finds no errors in " + pdf.getFileName() + ".");
    }

    private List<Raster> rasters(Path pdf, int first, int last) throws IOException, InterruptedException {
        Path pages = Files.createTempDirectory(folder, "pages");
        Program.run(
                folder,
                "pdftoppm",
                "-r",
                String.valueOf(DPI),
                "-gray",
                "-png",
                "-f",
                String.valueOf(first),
                "-l",
                String.valueOf(last),
                pdf.toString(),
                pages.resolve("p").toString());
        List<Raster> rasters = new ArrayList<>();
        try (Stream<Path> files = Files.list(pages)) {
            for (Path file : files.sorted().toList()) {
                rasters.add(Raster.read(file));
                Files.delete(file);
            }
        }
        Files.delete(pages);
        return rasters;
    }

    /** On a column near their left sides the last four lines are the sides of the squares; on a row the first two. */
    private void squares(String name, Raster raster, Page page) {
        int width = (int) Math.round(page.width() * PER_MM);
        require(Math.abs(raster.width() - width) <= 1, name + ": the page is " + raster.width() + " pixels wide");
        for (int mm : new int[] {8, 20, 92}) {
            int column = (int) Math.round((page.margin() + mm) * PER_MM);
            List<Double> lines = raster.linesDown(column, 0, raster.height());
            List<Double> sides = lines.subList(lines.size() - 4, lines.size());
            measured(name + ", 10 cm upright", sides.get(1) - sides.get(0), 100);
            measured(name + ", 4 in upright", sides.get(3) - sides.get(2), 4 * 25.4);
            across(name + ", 10 cm across", raster, sides.get(0), sides.get(1), 100);
            across(name + ", 4 in across", raster, sides.get(2), sides.get(3), 4 * 25.4);
        }
    }

    private void across(String what, Raster raster, double top, double foot, double mm) {
        for (double share : new double[] {0.1, 0.25, 0.9}) {
            List<Double> lines = raster.linesAcross((int) Math.round(top + share * (foot - top)), 0, raster.width());
            measured(what, lines.get(1) - lines.get(0), mm);
        }
    }

    private void measured(String what, double pixels, double mm) {
        double off = pixels - mm * PER_MM;
        worst.merge(what, off, (one, other) -> Math.abs(one) >= Math.abs(other) ? one : other);
    }

    /** The side of a square is told once, as it was measured worst. */
    private void tellSquares() {
        worst.forEach((what, off) -> {
            String said = String.format(Locale.ROOT, "%s: off by %.2f pixels at worst", what, off);
            out.println(said);
            require(Math.abs(off) <= PIXEL, said);
        });
        worst.clear();
    }

    private void tiles(String name, Path pdf, Page page) throws IOException, InterruptedException {
        List<Raster> pages = rasters(pdf, 3, Integer.MAX_VALUE);
        int columns = count(
                TestSheet.piece()
                        .place(TestSheet.piece().panels().get(0).ring())
                        .bounds()
                        .getMax()
                        .getX(),
                page.width() - 2 * page.margin(),
                page.overlap());
        Raster[][] tiles = new Raster[pages.size() / columns][columns];
        for (int i = 0; i < pages.size(); i++) {
            tiles[i / columns][i % columns] = pages.get(i);
        }
        JoinedTiles joined = new JoinedTiles(page, PER_MM, tiles);
        within(name + ": crosses of neighbours lie on one another", joined.worstCross());
        curve(name, joined);
    }

    private static int count(double piece, double frame, double overlap) {
        return (int) Math.ceil((GAP + piece - overlap) / (frame - overlap));
    }

    private void within(String what, double pixels) {
        String said = String.format(Locale.ROOT, "%s: at worst %.2f pixels", what, pixels);
        out.println(said);
        require(pixels <= PIXEL, said);
    }

    /** Across the true curve, the middle of the ink must lie on it. */
    private void curve(String name, JoinedTiles joined) {
        Vector2D home = joined.lowerLeft().add(Vector2D.of(GAP * PER_MM, -GAP * PER_MM));
        double worst = 0;
        long seenOn = 0;
        List<Integer> numbers = new ArrayList<>();
        for (int i = 1; i < SAMPLES; i++) {
            double t = (double) i / SAMPLES;
            Vector2D place = TestSheet.point(t);
            Vector2D way = TestSheet.direction(t);
            Vector2D aside = Vector2D.of(-way.getY(), -way.getX());
            JoinedTiles.Seen seen = joined.seen(
                    home.add(Vector2D.of(place.getX(), -place.getY()).multiply(PER_MM)));
            double off = middleOfStroke(seen, aside);
            worst = Double.isNaN(off) ? Double.POSITIVE_INFINITY : Math.max(worst, Math.abs(off));
            if (!numbers.contains(seen.number())) {
                numbers.add(seen.number());
                seenOn++;
            }
        }
        require(seenOn >= 3, name + ": the curve is seen on " + seenOn + " tiles only");
        within(name + ": stroke of a curve of 600 mm over " + seenOn + " joined tiles", worst);
    }

    /** How far from the place, along a direction, the middle of the ink is: of the stroke nearest to it. */
    private static double middleOfStroke(JoinedTiles.Seen seen, Vector2D aside) {
        double ink = 0;
        double moment = 0;
        for (double off = -10; off <= 10; off += 0.1) {
            Vector2D at = seen.at().add(aside.multiply(off));
            double dark = seen.tile().at(at.getX(), at.getY());
            ink += dark;
            moment += dark * off;
        }
        return ink < 1 ? Double.NaN : moment / ink;
    }

    private void require(boolean holds, String fault) {
        if (!holds) {
            faults.add(fault);
        }
    }
}
