package org.draftingmaths.reference.print;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.exchange.Page;

/**
 * Tiles laid together as a person lays them: by the crosses that are seen on them. All places are in pixels; a tile's place is where its upper
 * left corner lies on the joined sheet.
 */
final class JoinedTiles {

    private static final double WINDOW = 3.2;

    private final Page page;
    private final double perMm;
    private final Raster[][] tiles;
    private final Vector2D[][] places;

    /** By how much two crosses that are one lie apart, at worst. */
    private double worst;

    JoinedTiles(Page page, double perMm, Raster[][] tiles) {
        this.page = page;
        this.perMm = perMm;
        this.tiles = tiles;
        this.places = new Vector2D[tiles.length][tiles[0].length];
        for (int row = 0; row < tiles.length; row++) {
            for (int column = 0; column < tiles[row].length; column++) {
                places[row][column] = place(row, column);
            }
        }
    }

    double worstCross() {
        return worst;
    }

    private Vector2D place(int row, int column) {
        List<Vector2D> said = new ArrayList<>();
        if (column > 0) {
            for (boolean top : new boolean[] {true, false}) {
                said.add(places[row][column - 1]
                        .add(cross(row, column - 1, false, top))
                        .subtract(cross(row, column, true, top)));
            }
        }
        if (row > 0) {
            for (boolean left : new boolean[] {true, false}) {
                said.add(places[row - 1][column]
                        .add(cross(row - 1, column, left, false))
                        .subtract(cross(row, column, left, true)));
            }
        }
        Vector2D mean =
                said.stream().reduce(Vector2D.ZERO, Vector2D::add).multiply(said.isEmpty() ? 1 : 1.0 / said.size());
        said.forEach(each -> worst = Math.max(worst, each.distance(mean)));
        return mean;
    }

    /** The middle of a cross, where its two lines are seen. */
    private Vector2D cross(int row, int column, boolean left, boolean top) {
        Raster tile = tiles[row][column];
        double in = page.margin() + page.overlap() / 2;
        double x = perMm * (left ? in : page.width() - in);
        double y = perMm * (top ? in : page.height() - in);
        return Vector2D.of(darkest(tile, x, y, true), darkest(tile, x, y, false));
    }

    /** The line that is darkest over the width of the cross: its middle, weighed by ink. */
    private double darkest(Raster tile, double x, double y, boolean upright) {
        int reach = (int) Math.round(WINDOW * perMm);
        double[] sums = new double[2 * reach + 1];
        for (int i = -reach; i <= reach; i++) {
            for (int j = -reach; j <= reach; j++) {
                sums[i + reach] += upright
                        ? tile.at((int) Math.round(x) + i, (int) Math.round(y) + j)
                        : tile.at((int) Math.round(x) + j, (int) Math.round(y) + i);
            }
        }
        int peak = 0;
        for (int i = 0; i < sums.length; i++) {
            peak = sums[i] > sums[peak] ? i : peak;
        }
        double ink = 0;
        double moment = 0;
        for (int i = Math.max(0, peak - 3); i <= Math.min(sums.length - 1, peak + 3); i++) {
            double over = Math.max(0, sums[i] - sums[peak] / 4);
            ink += over;
            moment += over * i;
        }
        return Math.round(upright ? x : y) - reach + moment / ink;
    }

    /** The place of a point of the joined sheet on the tile in whose frame it lies deepest. */
    Seen seen(Vector2D joined) {
        Seen best = null;
        for (int row = 0; row < tiles.length; row++) {
            for (int column = 0; column < tiles[row].length; column++) {
                Vector2D on = joined.subtract(places[row][column]);
                double margin = page.margin() * perMm;
                double deep = Math.min(
                        Math.min(on.getX(), tiles[row][column].width() - on.getX()) - margin,
                        Math.min(on.getY(), tiles[row][column].height() - on.getY()) - margin);
                if (best == null || deep > best.deep()) {
                    best = new Seen(tiles[row][column], on, deep, row * tiles[row].length + column);
                }
            }
        }
        return best;
    }

    /** A point as it is seen on one tile: how deep within its frame, and which tile it is. */
    record Seen(Raster tile, Vector2D at, double deep, int number) {}

    /** The lower left corner of the lowest, leftmost frame; a pixel's middle lies half a pixel within it. */
    Vector2D lowerLeft() {
        return places[tiles.length - 1][0].add(
                Vector2D.of(page.margin() * perMm - 0.5, (page.height() - page.margin()) * perMm - 0.5));
    }
}
