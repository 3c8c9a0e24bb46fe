package org.draftingmaths.piece;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Bounds2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;

/** Where a grain line is drawn. */
final class Grains {

    /** A new grain line keeps this share of the room there is, so that its arrow heads stay inside. */
    private static final double SHARE = 0.8;

    private static final int TRIALS = 9;

    /** Less than this share of a grain line is too short to lay a ruler to; it is drawn anew where there is more room. */
    private static final double ENOUGH = 0.5;

    /** Where most room is wanted, so many lines side by side are tried. */
    private static final int ROWS = 41;

    /** Lines of this share of the longest are long enough. */
    private static final double NEARLY = 0.9;

    private Grains() {}

    /** The grain line drawn on certain panels: as it was when it lies on them, else anew in the same direction. */
    static Grain onPart(Piece piece, List<Panel> panels, Grain grain) {
        CurvePath line = CurvePath.polyline(grain.from(), grain.to());
        double length = line.length();
        List<Within> kept = panels.stream()
                .flatMap(panel -> Within.of(piece.place(panel.ring()), line).stream())
                .toList();
        if (kept.stream().mapToDouble(Within::length).sum() >= length - Panels.TOUCH) {
            return grain;
        }
        return Stream.concat(
                        longest(kept)
                                .filter(within -> within.length() >= ENOUGH * length)
                                .map(within -> drawn(line, within))
                                .stream(),
                        panels.stream().flatMap(panel -> anew(piece, panel, grain.direction(), TRIALS)))
                .findFirst()
                .orElse(grain);
    }

    /**
     * A long grain line of a direction where there is room on both sides: of many lines side by side on the panel with most room, the middle one of those
     * nearly as long as the longest.
     */
    static Grain longest(Piece piece, Vector2D direction) {
        Vector2D across = Vector2D.of(-direction.getY(), direction.getX());
        List<Grain> roomiest = piece.panels().stream()
                .map(panel -> anew(piece, panel, direction, ROWS)
                        .sorted(Comparator.comparingDouble(grain -> grain.from().dot(across)))
                        .toList())
                .max(Comparator.comparingDouble(Grains::most))
                .orElseThrow();
        double most = most(roomiest);
        List<Grain> nearly = roomiest.stream()
                .filter(grain -> length(grain) >= NEARLY * most)
                .toList();
        return nearly.get(nearly.size() / 2);
    }

    private static double most(List<Grain> grains) {
        return grains.stream().mapToDouble(Grains::length).max().orElse(0);
    }

    private static double length(Grain grain) {
        return grain.from().distance(grain.to());
    }

    /** Lines in the grain's direction across a panel, the one through its middle first. */
    private static Stream<Grain> anew(Piece piece, Panel panel, Vector2D direction, int trials) {
        CurvePath border = piece.place(panel.ring());
        Bounds2D bounds = border.bounds();
        Vector2D middle = bounds.getCentroid();
        double reach = bounds.getDiagonal().norm();
        Vector2D across = Vector2D.of(-direction.getY(), direction.getX());
        return IntStream.range(0, trials)
                .mapToObj(i -> middle.add(across.multiply(reach * sideways(i, trials))))
                .map(point -> CurvePath.polyline(
                        point.subtract(direction.multiply(reach)), point.add(direction.multiply(reach))))
                .flatMap(line -> longest(Within.of(border, line)).map(within -> drawn(line, within)).stream());
    }

    /** 0, then steps to one side and the other, up to half the panel. */
    private static double sideways(int i, int trials) {
        return (i % 2 == 0 ? -1 : 1) * ((i + 1) / 2) / (double) trials;
    }

    private static Optional<Within> longest(List<Within> stretches) {
        return stretches.stream().max((a, b) -> Double.compare(a.length(), b.length()));
    }

    private static Grain drawn(CurvePath line, Within within) {
        double margin = within.length() * (1 - SHARE) / 2;
        return new Grain(line.pointAt(within.from() + margin), line.pointAt(within.to() - margin));
    }
}
