package org.draftingmaths.exchange;

import java.util.ArrayList;
import java.util.List;

/**
 * How a sheet is laid out on pages: columns are lettered from the left, rows numbered from the top. All lengths are on paper. Tile
 * {@code (i, j)} shows {@code i step <= x <= i step + frame}, with {@code step = frame - overlap}; so {@code n} columns reach
 * {@code n step + overlap}, and neighbours share a strip as wide as the overlap.
 *
 * @param page the paper
 * @param columns how many side by side
 * @param rows how many above one another
 */
record Tiles(Page page, int columns, int rows) {

    /** A tile by its column from the left and its row from the top, both from 0. */
    record Tile(int column, int row) {
        /** For example B3: second column, third row. */
        String name() {
            return letters(column) + (row + 1);
        }

        boolean isBeside(Tile other) {
            return Math.abs(column - other.column) + Math.abs(row - other.row) == 1;
        }

        private static String letters(int column) {
            String last = String.valueOf((char) ('A' + column % 26));
            return column < 26 ? last : letters(column / 26 - 1) + last;
        }
    }

    /** As few tiles as cover a sheet. */
    static Tiles covering(double width, double height, Page page) {
        return new Tiles(
                page,
                count(width, page.frameWidth(), page.overlap()),
                count(height, page.frameHeight(), page.overlap()));
    }

    /** Without the rows above and the columns to the right of the tiles that are needed. */
    Tiles upTo(List<Tile> needed) {
        int blank = needed.stream().mapToInt(Tile::row).min().orElseThrow();
        int last = needed.stream().mapToInt(Tile::column).max().orElseThrow();
        return new Tiles(page, last + 1, rows - blank);
    }

    private static int count(double length, double frame, double overlap) {
        return Math.max(1, (int) Math.ceil((length - overlap) / (frame - overlap)));
    }

    double stepAcross() {
        return page.frameWidth() - page.overlap();
    }

    double stepDown() {
        return page.frameHeight() - page.overlap();
    }

    double width() {
        return columns * stepAcross() + page.overlap();
    }

    double height() {
        return rows * stepDown() + page.overlap();
    }

    /** The left side of a tile's frame, from the left of all. */
    double left(Tile tile) {
        return tile.column() * stepAcross();
    }

    /** The lower side of a tile's frame, from the lowest of all. */
    double low(Tile tile) {
        return (rows - 1 - tile.row()) * stepDown();
    }

    /** Row by row from the top, each from the left. */
    List<Tile> inOrder() {
        List<Tile> tiles = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                tiles.add(new Tile(column, row));
            }
        }
        return tiles;
    }
}
