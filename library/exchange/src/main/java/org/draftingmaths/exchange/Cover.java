package org.draftingmaths.exchange;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Bounds2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Flatten;
import org.draftingmaths.curve.Inside;

/**
 * What of a sheet needs paper: its ink, and the cloth within its outlines.
 *
 * <p>Frames of neighbouring tiles overlap in strips; strips and what lies between them part the sheet into fields, each shown by one, two or four
 * tiles. A tile is needed when a field of its own has ink or cloth that no other printed tile shows.
 */
final class Cover {

    /** Lines are looked at so finely, in mm of paper; the least strip is 6 mm wide. */
    private static final double FINE = 0.5;

    /** How far ink and air reach to either side of a line, in mm of paper. */
    private static final double ROUND = 1;

    private final double factor;
    private final List<Vector2D> ink = new ArrayList<>();
    private final List<CurvePath> cloth = new ArrayList<>();

    private Cover(double factor) {
        this.factor = factor;
    }

    /**
     * The cover of marks.
     *
     * @param factor how many mm of the marks are one of paper
     */
    static Cover of(List<Mark> marks, double factor) {
        Cover cover = new Cover(factor);
        for (Mark mark : marks) {
            if (mark instanceof Mark.Stroke stroke) {
                stroke.paths().forEach(path -> cover.along(Flatten.corners(path, FINE * factor / 2)));
            } else if (mark instanceof Mark.Words words) {
                List<Vector2D> box = new ArrayList<>(words.box());
                box.add(box.get(0));
                cover.along(box);
            } else if (mark instanceof Mark.Area area) {
                cover.cloth.add(area.outline());
            }
        }
        return cover;
    }

    private void along(List<Vector2D> corners) {
        for (int i = 1; i < corners.size(); i++) {
            Vector2D from = corners.get(i - 1);
            Vector2D to = corners.get(i);
            int parts = (int) Math.ceil(from.distance(to) / (FINE * factor)) + 1;
            for (int k = 0; k <= parts; k++) {
                ink.add(from.lerp(to, (double) k / parts).multiply(1 / factor));
            }
        }
    }

    /**
     * A cover laid on the sheet.
     *
     * @param cover what it is
     * @param at where its origin lies, in mm of paper
     */
    record Laid(Cover cover, Vector2D at) {}

    /** The tiles that are needed to show it all, in order. */
    static List<Tiles.Tile> needed(Tiles tiles, List<Laid> all) {
        boolean[][] met = new boolean[2 * tiles.columns() + 1][2 * tiles.rows() + 1];
        all.forEach(laid -> laid.cover().ink(laid.at(), tiles, met));
        all.forEach(laid -> laid.cover().cloth(laid.at(), tiles, met));
        int[][] shown = new int[met.length][met[0].length];
        List<Tiles.Tile> needed = new ArrayList<>(tiles.inOrder());
        needed.forEach(tile -> count(tiles, tile, shown, 1));
        for (Tiles.Tile tile : tiles.inOrder()) {
            if (isShownByOthers(tiles, tile, met, shown)) {
                count(tiles, tile, shown, -1);
                needed.remove(tile);
            }
        }
        return needed;
    }

    private static void count(Tiles tiles, Tiles.Tile tile, int[][] shown, int by) {
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                shown[2 * tile.column() + i][2 * (tiles.rows() - 1 - tile.row()) + j] += by;
            }
        }
    }

    private static boolean isShownByOthers(Tiles tiles, Tiles.Tile tile, boolean[][] met, int[][] shown) {
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                int across = 2 * tile.column() + i;
                int up = 2 * (tiles.rows() - 1 - tile.row()) + j;
                if (met[across][up] && shown[across][up] < 2) {
                    return false;
                }
            }
        }
        return true;
    }

    private void ink(Vector2D at, Tiles tiles, boolean[][] met) {
        for (Vector2D point : ink) {
            for (int corner = 0; corner < 4; corner++) {
                double x = point.getX() + at.getX() + (corner % 2 == 0 ? -ROUND : ROUND);
                double y = point.getY() + at.getY() + (corner / 2 == 0 ? -ROUND : ROUND);
                met[field(x, tiles.stepAcross(), tiles.page().overlap(), tiles.columns())][
                        field(y, tiles.stepDown(), tiles.page().overlap(), tiles.rows())] = true;
            }
        }
    }

    /** A field without ink is all cloth or all none. */
    private void cloth(Vector2D at, Tiles tiles, boolean[][] met) {
        for (CurvePath outline : cloth) {
            Bounds2D bounds = outline.bounds();
            for (int i = 0; i < met.length; i++) {
                for (int j = 0; j < met[i].length; j++) {
                    Vector2D middle = Vector2D.of(
                                    middle(i, tiles.stepAcross(), tiles.page().overlap()),
                                    middle(j, tiles.stepDown(), tiles.page().overlap()))
                            .subtract(at)
                            .multiply(factor);
                    met[i][j] = met[i][j] || (bounds.contains(middle) && Inside.contains(outline, middle));
                }
            }
        }
    }

    /** Strips have even numbers, what lies between them odd ones. */
    private static int field(double place, double step, double overlap, int count) {
        int tile = (int) Math.max(0, Math.min(count, Math.floor(place / step)));
        return Math.min(2 * count, 2 * tile + (place - tile * step <= overlap ? 0 : 1));
    }

    private static double middle(int field, double step, double overlap) {
        int tile = field / 2;
        double from = tile * step;
        return field % 2 == 0 ? from + overlap / 2 : from + (overlap + step) / 2;
    }
}
