package org.draftingmaths.reference.print;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;

/**
 * A page as pixels: how dark each is, from 0 for white paper to 1 for black ink. Columns count from the left, rows from the top, and a whole
 * number is the middle of a pixel.
 */
final class Raster {

    private final int width;
    private final int height;
    private final float[] dark;

    private Raster(int width, int height, float[] dark) {
        this.width = width;
        this.height = height;
        this.dark = dark;
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }

    static Raster read(Path file) throws IOException {
        return of(ImageIO.read(file.toFile()));
    }

    static Raster of(BufferedImage image) {
        int width = image.getWidth();
        int height = image.getHeight();
        float[] dark = new float[width * height];
        int[] row = new int[width];
        for (int y = 0; y < height; y++) {
            image.getRGB(0, y, width, 1, row, 0, width);
            for (int x = 0; x < width; x++) {
                int sum = (row[x] >> 16 & 255) + (row[x] >> 8 & 255) + (row[x] & 255);
                dark[y * width + x] = 1 - sum / 765f;
            }
        }
        return new Raster(width, height, dark);
    }

    double at(int x, int y) {
        return x < 0 || y < 0 || x >= width || y >= height ? 0 : dark[y * width + x];
    }

    /** Between the middles of four pixels. */
    double at(double x, double y) {
        int left = (int) Math.floor(x);
        int top = (int) Math.floor(y);
        double across = x - left;
        double down = y - top;
        return (1 - down) * ((1 - across) * at(left, top) + across * at(left + 1, top))
                + down * ((1 - across) * at(left, top + 1) + across * at(left + 1, top + 1));
    }

    /** The middles of the lines that a row crosses, in columns. */
    List<Double> linesAcross(int y, int from, int to) {
        double[] row = new double[to - from];
        for (int x = from; x < to; x++) {
            row[x - from] = at(x, y);
        }
        return middles(row, from);
    }

    /** The middles of the lines that a column crosses, in rows. */
    List<Double> linesDown(int x, int from, int to) {
        double[] column = new double[to - from];
        for (int y = from; y < to; y++) {
            column[y - from] = at(x, y);
        }
        return middles(column, from);
    }

    private static List<Double> middles(double[] row, int from) {
        List<Double> middles = new ArrayList<>();
        int i = 0;
        while (i < row.length) {
            int first = i;
            double sum = 0;
            double moment = 0;
            double most = 0;
            while (i < row.length && row[i] > 0.05) {
                sum += row[i];
                moment += row[i] * i;
                most = Math.max(most, row[i]);
                i++;
            }
            if (i > first && most > 0.3) {
                middles.add(from + moment / sum);
            }
            i++;
        }
        return middles;
    }
}
