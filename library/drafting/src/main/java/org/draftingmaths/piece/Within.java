package org.draftingmaths.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Inside;
import org.draftingmaths.curve.Meet;
import org.draftingmaths.curve.Meets;

/**
 * A stretch of a line that lies inside a ring.
 *
 * @param from where it enters, as a length along the line
 * @param to where it leaves
 */
record Within(double from, double to) {

    double length() {
        return to - from;
    }

    /** The stretches of a line that lie inside a closed border or on it, in order. */
    static List<Within> of(CurvePath border, CurvePath line) {
        return stretches(border, line, true);
    }

    /** The stretches of a line that lie inside a closed border, by more than rounding. */
    static List<Within> strictly(CurvePath border, CurvePath line) {
        return stretches(border, line, false);
    }

    /** Whether the whole of a line lies inside a closed border; it may touch it. */
    static boolean holds(CurvePath border, CurvePath line) {
        double inside = of(border, line).stream().mapToDouble(Within::length).sum();
        return inside >= line.length() - 2 * Panels.TOUCH;
    }

    private static List<Within> stretches(CurvePath border, CurvePath line, boolean borderCounts) {
        double length = line.length();
        Meets meets = Meets.of(line, border);
        List<Double> ends = Stream.of(
                        Stream.of(0.0, length),
                        meets.points().stream().map(Meet::onFirst),
                        meets.overlaps().stream().flatMap(both -> Stream.of(both.fromFirst(), both.toFirst())))
                .flatMap(all -> all)
                .sorted()
                .toList();
        List<Within> found = new ArrayList<>();
        for (int i = 1; i < ends.size(); i++) {
            double from = ends.get(i - 1);
            double to = ends.get(i);
            if (to - from > Panels.TOUCH && inside(border, line, (from + to) / 2, borderCounts)) {
                add(found, from, to);
            }
        }
        return found;
    }

    private static boolean inside(CurvePath border, CurvePath line, double at, boolean borderCounts) {
        Inside.Where where = Inside.of(border, line.pointAt(at), Panels.TOUCH);
        return where == Inside.Where.INSIDE || (borderCounts && where == Inside.Where.BOUNDARY);
    }

    /** A line that only touches the border from within is not broken there. */
    private static void add(List<Within> found, double from, double to) {
        int end = found.size() - 1;
        if (end >= 0 && from - found.get(end).to() <= Panels.TOUCH) {
            found.set(end, new Within(found.get(end).from(), to));
        } else {
            found.add(new Within(from, to));
        }
    }
}
