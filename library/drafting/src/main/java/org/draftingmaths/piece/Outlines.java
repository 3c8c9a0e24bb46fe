package org.draftingmaths.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Bounds2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Inside;
import org.draftingmaths.curve.Meet;
import org.draftingmaths.curve.Meets;
import org.draftingmaths.curve.Overlap;
import org.draftingmaths.curve.Straight;
import org.draftingmaths.ledger.DraftingException;

/** Whether lines lie inside panels, and panels beside one another. */
final class Outlines {

    private Outlines() {}

    /** Refuses to work on a piece whose rings cross themselves. */
    static void requireSimple(Piece piece, String asked) {
        simpleRings(piece, () -> asked);
    }

    /** The rings where they lie. Rings that cross themselves are refused: a check reports them, and nothing can be cut from them. */
    static List<CurvePath> simpleRings(Piece piece, Supplier<String> asked) {
        List<CurvePath> rings = new ArrayList<>();
        for (Panel panel : piece.panels()) {
            CurvePath ring = piece.place(panel.ring());
            List<Meet> crossings = Meets.selfMeets(ring).points();
            if (!crossings.isEmpty()) {
                throw new DraftingException(
                        asked.get(),
                        "the outline of '" + piece.name() + "' crosses itself at "
                                + words(crossings.get(0).point()) + "; mend the outline first");
            }
            rings.add(ring);
        }
        return rings;
    }

    /**
     * Refuses a cut that leaves the panel or runs along its border. A cut that meets the ring at its ends only lies on one
     * side of it throughout, so one place of it tells which.
     *
     * @param ring the panel's ring where it lies
     */
    static void requireInside(CurvePath ring, Piece piece, Panel panel, CurvePath cut, Supplier<String> asked) {
        requireNoLoop(cut, asked);
        Meets meets = Meets.of(cut, ring);
        for (Overlap overlap : meets.overlaps()) {
            if (overlap.toFirst() - overlap.fromFirst() > Panels.TOUCH) {
                double middle = (overlap.fromSecond() + overlap.toSecond()) / 2;
                throw new DraftingException(
                        asked.get(),
                        "it runs along " + runAt(panel, middle).border().words() + " instead of through the cloth");
            }
        }
        for (Meet meet : meets.points()) {
            if (!atAnEnd(cut, meet.point())) {
                throw new DraftingException(
                        asked.get(),
                        "it leaves the cloth where it crosses "
                                + runAt(panel, meet.onSecond()).border().words() + " at " + words(meet.point())
                                + String.format(Locale.ROOT, ", after %.1f mm", meet.onFirst()));
            }
        }
        for (Laid dart : panel.darts()) {
            for (Meet meet : Meets.of(cut, piece.place(dart)).points()) {
                if (!atAnEnd(cut, meet.point())) {
                    throw new DraftingException(
                            asked.get(),
                            "it crosses the double-pointed dart '" + dart.dart() + "' at " + words(meet.point()));
                }
            }
        }
        Vector2D middle = cut.pointAt(cut.length() / 2);
        if (Inside.of(ring, middle, Panels.TOUCH) != Inside.Where.INSIDE) {
            throw new DraftingException(asked.get(), "it runs outside the cloth, at " + words(middle));
        }
    }

    private static void requireNoLoop(CurvePath cut, Supplier<String> asked) {
        boolean straight = cut.curves().size() == 1 && cut.curves().get(0) instanceof Straight;
        if (!straight) {
            Meets.selfMeets(cut).points().stream().findFirst().ifPresent(meet -> {
                throw new DraftingException(asked.get(), "the line crosses itself at " + words(meet.point()));
            });
        }
    }

    /** The run at a length along the ring; of two at a corner, the one before it. */
    private static Run runAt(Panel panel, double along) {
        double passed = 0;
        for (Run run : panel.ring()) {
            passed += run.length();
            if (along <= passed + Panels.TOUCH) {
                return run;
            }
        }
        return panel.ring().get(panel.ring().size() - 1);
    }

    private static boolean atAnEnd(CurvePath cut, Vector2D point) {
        return point.distance(cut.start()) <= Panels.TOUCH || point.distance(cut.end()) <= Panels.TOUCH;
    }

    static boolean near(Bounds2D one, Bounds2D other) {
        return one.getMin().getX() <= other.getMax().getX() + Panels.TOUCH
                && other.getMin().getX() <= one.getMax().getX() + Panels.TOUCH
                && one.getMin().getY() <= other.getMax().getY() + Panels.TOUCH
                && other.getMin().getY() <= one.getMax().getY() + Panels.TOUCH;
    }

    static String words(Vector2D point) {
        return String.format(Locale.ROOT, "(%.1f, %.1f)", unsignedZero(point.getX()), unsignedZero(point.getY()));
    }

    /** Nothing is printed as nothing, and never as minus nothing. */
    private static double unsignedZero(double value) {
        return Math.abs(value) < 0.05 ? 0.0 : value;
    }

    /** Arcs along a line at which it crosses a cut, or begins and ends to run along it, in order. */
    static List<Double> crossings(CurvePath line, CurvePath cut) {
        Meets meets = Meets.of(line, cut);
        return Stream.concat(
                        meets.points().stream().map(Meet::onFirst),
                        meets.overlaps().stream().flatMap(both -> Stream.of(both.fromFirst(), both.toFirst())))
                .sorted()
                .toList();
    }

    /** Whether a line that does not cross a border lies within it; one that lies on the border counts as within. */
    static boolean holds(CurvePath border, CurvePath line) {
        double length = line.length();
        return Stream.of(0.5, 0.31, 0.77)
                .map(share -> Inside.of(border, line.pointAt(share * length), Panels.TOUCH))
                .filter(where -> where != Inside.Where.BOUNDARY)
                .findFirst()
                .map(where -> where == Inside.Where.INSIDE)
                .orElse(true);
    }
}
