package org.draftingmaths.suppose;

import java.util.Arrays;

/**
 * The assignment of least total cost: {@code min sum cost[i][to[i]]} over all permutations {@code to}.
 *
 * <p>By shortest augmenting paths with potentials (H. W. Kuhn, The Hungarian method for the assignment problem, Naval Research
 * Logistics Quarterly 2, 1955; J. Munkres, Algorithms for the assignment and transportation problems, 1957), in {@code n^3} steps.
 */
final class Assignment {

    private Assignment() {}

    /** The column of each row. Of equal assignments always the same one is given. */
    static int[] of(double[][] cost) {
        int n = cost.length;
        double[] rows = new double[n + 1];
        double[] columns = new double[n + 1];
        int[] rowOf = new int[n + 1];
        for (int row = 1; row <= n; row++) {
            rowOf[0] = row;
            augment(cost, rows, columns, rowOf);
        }
        int[] to = new int[n];
        for (int column = 1; column <= n; column++) {
            to[rowOf[column] - 1] = column - 1;
        }
        return to;
    }

    /** Finds the row in {@code rowOf[0]} a column, moving others on along the cheapest path. */
    private static void augment(double[][] cost, double[] rows, double[] columns, int[] rowOf) {
        int n = cost.length;
        double[] least = new double[n + 1];
        int[] before = new int[n + 1];
        boolean[] used = new boolean[n + 1];
        Arrays.fill(least, Double.POSITIVE_INFINITY);
        int column = 0;
        do {
            used[column] = true;
            int next = 0;
            double step = Double.POSITIVE_INFINITY;
            for (int j = 1; j <= n; j++) {
                if (!used[j]) {
                    double reduced = cost[rowOf[column] - 1][j - 1] - rows[rowOf[column]] - columns[j];
                    if (reduced < least[j]) {
                        least[j] = reduced;
                        before[j] = column;
                    }
                    if (least[j] < step) {
                        step = least[j];
                        next = j;
                    }
                }
            }
            for (int j = 0; j <= n; j++) {
                if (used[j]) {
                    rows[rowOf[j]] += step;
                    columns[j] -= step;
                } else {
                    least[j] -= step;
                }
            }
            column = next;
        } while (rowOf[column] != 0);
        while (column != 0) {
            rowOf[column] = rowOf[before[column]];
            column = before[column];
        }
    }
}
