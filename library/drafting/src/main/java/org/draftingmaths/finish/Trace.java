package org.draftingmaths.finish;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Meet;
import org.draftingmaths.curve.Meets;
import org.draftingmaths.curve.Nearest;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.ledger.Reach;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Isometry;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.unit.Steps;

/**
 * Edges of neighbouring pieces traced as one line: darts closed, pieces laid seam to seam, and a line beside it into the cloth.
 *
 * @param laid the pieces, in the order in which the line passes them
 * @param outer for each piece the part of the line beside it, in the direction of the line
 * @param asked the request in words
 */
record Trace(List<Laid> laid, List<CurvePath> outer, String asked) {

    private static final double TOUCH = CurvePath.JOINT;

    /** How many times its distance a line beside goes on straight to find the end of the cloth: corners down to about 15 degrees. */
    static final double REACH = 4;

    /**
     * A piece as it is laid.
     *
     * @param on the piece and its edge
     * @param sheet the piece with its darts closed
     * @param by how the sheet came to lie
     * @param ahead whether the traced line passes the edge in the edge's own direction
     */
    record Laid(Facings.On on, Sheet sheet, AffineTransformMatrix2D by, boolean ahead) {

        CurvePath line() {
            CurvePath own = sheet.line().transformed(by);
            return ahead ? own : own.reversed();
        }

        Sheet.Neighbour neighbour(boolean atLineEnd, String asked) {
            Sheet.Neighbour found = sheet.neighbour(on.edge(), atLineEnd == ahead, asked);
            return new Sheet.Neighbour(
                    found.name(), found.atStart(), found.away().transformed(by));
        }

        /** 1 when the cloth lies to the left of the traced line, else -1. */
        int clothSide() {
            boolean left = (sheet.forward(on.edge()) == ahead) == (by.determinant() > 0);
            return left ? 1 : -1;
        }
    }

    /** Lays pieces along one line and draws another beside it, at a distance into the cloth. */
    static Trace beside(Draft draft, List<Facings.On> edges, double distance, String asked) {
        List<Laid> laid = laid(draft, edges, asked);
        CurvePath line = laid.get(0).line();
        for (Laid next : laid.subList(1, laid.size())) {
            line = line.then(next.line());
        }
        CurvePath whole = parallel(line, laid.get(0).clothSide() * distance, asked);
        CurvePath beyond = Lines.lengthened(whole, REACH * distance);
        List<CurvePath> outer = new ArrayList<>();
        for (Laid each : laid) {
            Meet from = end(beyond, each, false, distance, asked);
            Meet to = end(beyond, each, true, distance, asked);
            if (!(to.onFirst() - from.onFirst() > TOUCH)) {
                throw new DraftingException(
                        asked, "nothing of it is left in '" + each.on().piece() + "'; make it narrower");
            }
            outer.add(beyond.between(from.onFirst(), to.onFirst()));
        }
        Trace trace = new Trace(laid, outer, asked);
        trace.requireInside(distance);
        return trace;
    }

    static CurvePath parallel(CurvePath line, double left, String asked) {
        try {
            return Lines.parallel(line, left);
        } catch (IllegalArgumentException tight) {
            throw new DraftingException(
                    asked,
                    "the edge bends or turns too sharply for a line beside it at "
                            + Quantity.LENGTH.print(Math.abs(left), Steps.DEFAULT)
                            + "; make it narrower");
        }
    }

    /** Where the line beside meets the neighbour at one end of a piece's edge. */
    private static Meet end(CurvePath beyond, Laid laid, boolean atEnd, double distance, String asked) {
        Sheet.Neighbour neighbour = laid.neighbour(atEnd, asked);
        return Meets.of(beyond, neighbour.away()).points().stream()
                .filter(meet -> meet.onSecond() > TOUCH)
                .min((a, b) -> Double.compare(a.onSecond(), b.onSecond()))
                .orElseThrow(() -> tooDeep(
                        asked, laid.on().piece(), neighbour.name(), distance, depth(laid.line(), neighbour.away())));
    }

    /** How far an edge leads away from a line that goes straight on beyond its ends. */
    private static double depth(CurvePath line, CurvePath away) {
        return Nearest.of(Lines.lengthened(line, away.length()), away.end()).distance();
    }

    private static DraftingException tooDeep(String asked, String piece, String edge, double distance, double most) {
        return new DraftingException(
                asked,
                "it would be deeper than '" + piece + "' at '" + edge + "'",
                new Reach(Quantity.LENGTH, distance, 0, most));
    }

    private static List<Laid> laid(Draft draft, List<Facings.On> edges, String asked) {
        List<Laid> laid = new ArrayList<>();
        for (int i = 0; i < edges.size(); i++) {
            Facings.On on = edges.get(i);
            Piece piece = draft.piece(on.piece());
            Sheet sheet = Sheet.closedAt(piece, on.edge(), asked).asTheGrain();
            if (i > 0) {
                laid.add(joined(draft, laid.get(i - 1), on, sheet, asked));
            } else if (edges.size() == 1) {
                laid.add(new Laid(on, sheet, AffineTransformMatrix2D.identity(), true));
            } else {
                laid.add(first(draft, on, sheet, edges.get(1), asked));
            }
        }
        return laid;
    }

    /** The first piece, its edge passed so that it ends where the second begins. */
    private static Laid first(Draft draft, Facings.On on, Sheet sheet, Facings.On next, String asked) {
        Sheet other = Sheet.closedAt(draft.piece(next.piece()), next.edge(), asked);
        for (boolean ahead : new boolean[] {true, false}) {
            Laid laid = new Laid(on, sheet, AffineTransformMatrix2D.identity(), ahead);
            Sheet.Neighbour own = laid.neighbour(true, asked);
            for (boolean atEnd : new boolean[] {true, false}) {
                if (isSewn(draft, on, own, next, other.neighbour(next.edge(), atEnd, asked))) {
                    return laid;
                }
            }
        }
        throw unjoined(asked, on, next);
    }

    /** The next piece laid to the one before, seam on seam, each on its own side of the seam. */
    private static Laid joined(Draft draft, Laid before, Facings.On on, Sheet sheet, String asked) {
        Sheet.Neighbour own = before.neighbour(true, asked);
        for (boolean atEnd : new boolean[] {true, false}) {
            Sheet.Neighbour other = sheet.neighbour(on.edge(), atEnd, asked);
            if (isSewn(draft, before.on(), own, on, other)) {
                boolean ahead = !atEnd;
                Laid turned = laidTo(own.away(), other.away(), on, sheet, ahead, false);
                // The cloth of the next piece must be on the same side of the line as that of the first.
                return turned.clothSide() == before.clothSide()
                        ? turned
                        : laidTo(own.away(), other.away(), on, sheet, ahead, true);
            }
        }
        throw unjoined(asked, before.on(), on);
    }

    private static Laid laidTo(
            CurvePath seam, CurvePath other, Facings.On on, Sheet sheet, boolean ahead, boolean turnedOver) {
        AffineTransformMatrix2D by = turnedOver
                ? Isometry.reflection(other.start(), other.startTangent())
                : AffineTransformMatrix2D.identity();
        Vector2D start = by.apply(other.start());
        Vector2D way = by.applyVector(other.startTangent());
        return new Laid(on, sheet, by.premultiply(Sheet.onto(start, way, seam.start(), seam.startTangent())), ahead);
    }

    private static DraftingException unjoined(String asked, Facings.On one, Facings.On other) {
        return new DraftingException(
                asked,
                "no seam of the draft joins '" + one.edge() + "' of '" + one.piece() + "' and '" + other.edge()
                        + "' of '" + other.piece() + "' at their ends");
    }

    /** Whether two neighbours are sewn together so that their ends at the traced edges meet. */
    private static boolean isSewn(Draft draft, Facings.On one, Sheet.Neighbour a, Facings.On other, Sheet.Neighbour b) {
        return draft.seams().stream()
                .anyMatch(seam -> isSewn(seam.first(), seam.second(), one, a, other, b)
                        || isSewn(seam.second(), seam.first(), one, a, other, b));
    }

    private static boolean isSewn(
            Seam.Mate first, Seam.Mate second, Facings.On one, Sheet.Neighbour a, Facings.On other, Sheet.Neighbour b) {
        return isSewn(first, second, one, a, other, b, Seam.End.START)
                || isSewn(first, second, one, a, other, b, Seam.End.STOP);
    }

    /** Whether a seam starts, or stops, at the ends of two neighbours. */
    private static boolean isSewn(
            Seam.Mate first,
            Seam.Mate second,
            Facings.On one,
            Sheet.Neighbour a,
            Facings.On other,
            Sheet.Neighbour b,
            Seam.End end) {
        return first.atEnd(end).mirrored() == second.atEnd(end).mirrored()
                && isAt(first.atEnd(end), one, a, end)
                && isAt(second.atEnd(end), other, b, end);
    }

    private static boolean isAt(Seam.Part part, Facings.On on, Sheet.Neighbour neighbour, Seam.End end) {
        return part.piece().equals(on.piece())
                && part.edge().equals(neighbour.name())
                && part.reachesCorner(end)
                && neighbour.atStart() == (part.forward() == (end == Seam.End.START));
    }

    /** The line beside must not leave the cloth. */
    private void requireInside(double distance) {
        for (int i = 0; i < laid.size(); i++) {
            Laid each = laid.get(i);
            requireInside(each.sheet(), each.by(), outer.get(i), each.on().edge(), distance, asked);
        }
    }

    /** Refuses a line that leaves the cloth of a sheet between its two ends. */
    static void requireInside(
            Sheet sheet, AffineTransformMatrix2D by, CurvePath line, String traced, double distance, String asked) {
        double length = line.length();
        for (Sheet.Bound bound : sheet.bounds()) {
            CurvePath border = bound.line().transformed(by);
            boolean leaves = Meets.of(line, border).points().stream()
                    .anyMatch(meet -> meet.onFirst() > 1e-3 && meet.onFirst() < length - 1e-3);
            if (leaves) {
                throw new DraftingException(
                        asked,
                        "it would leave '" + sheet.piece().name() + "' at "
                                + bound.border().words() + " with '" + traced + "' "
                                + Quantity.LENGTH.print(distance, Steps.DEFAULT)
                                + " away; make it narrower");
            }
        }
    }
}
