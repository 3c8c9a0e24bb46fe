package org.draftingmaths.finish;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Arc;
import org.draftingmaths.curve.Cubic;
import org.draftingmaths.curve.Curve;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Straight;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.ledger.Reach;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Reworked;

/**
 * Hems turned up in one with the piece.
 *
 * <p>A straight hem is a fold: the turn-up is the piece's own strip reflected, and its ends have the slope of the side seams reflected, so that
 * it neither strains nor ripples where it is caught in them. A curved hem is no fold: with {@code d} the depth and {@code phi} the angle that a stretch
 * turns, the raw edge is {@code 2 d phi} too long where the hem is convex and too short where it is hollow. Each stretch is
 * judged by itself: a surplus at the front does not help a shortage at the back.
 */
public final class Hems {

    /** A hem that turns by more than this at one point, in radians, has a corner: half a degree. */
    private static final double CORNER = Math.toRadians(0.5);

    /** A stretch that turns by less than this, in radians, is straight. */
    private static final double STRAIGHT = 1e-9;

    private Hems() {}

    /**
     * Goes on beyond a hem by the depth of its turn-up.
     *
     * <pre>{@code
     * TurnUp hemmed = Hems.turnUp(skirt, "hem", 40, new Give(0.04, 0.02));
     * }</pre>
     *
     * @param piece the finished piece
     * @param hem the name of the edge
     * @param depth how deep the hem is turned up, in mm
     * @param give how much the cloth gives
     * @return the piece and the stretches of the hem
     * @throws IllegalArgumentException when the depth is not more than 0
     * @throws DraftingException when a stretch asks more of the cloth than it gives, with the depth that is workable; when the hem has a corner;
     *     when the turn-up is deeper than the piece; or when an opening breaks the hem
     */
    public static TurnUp turnUp(Piece piece, String hem, double depth, Give give) {
        if (!(depth > 0 && Double.isFinite(depth))) {
            throw new IllegalArgumentException("A hem is turned up by more than 0 mm: " + depth + " mm.");
        }
        String asked = "Turn up '" + hem + "' of '" + piece.name() + "'";
        List<HemPart> parts = parts(piece, hem, depth);
        requireGive(parts, depth, give, asked);
        Reworked done = FoldedBack.isStraight(piece, hem)
                ? FoldedBack.straight(piece, hem, depth, FoldedBack.FREE, asked)
                : FoldedBack.curved(piece, hem, depth, asked);
        Ledger ledger = done.ledger();
        for (HemPart part : parts) {
            ledger = ledger.then(part);
        }
        return new TurnUp(done.piece(), parts, ledger);
    }

    /**
     * The stretches of a hem by the way they bend, with what a turn-up would make too long or too short in each.
     *
     * @param piece the piece
     * @param hem the name of the edge
     * @param depth how deep the hem is to be turned up, in mm
     * @return the stretches, in the hem's own direction
     * @throws DraftingException when the hem has a corner: mitre it, or face it
     */
    public static List<HemPart> parts(Piece piece, String hem, double depth) {
        CurvePath line = Paper.edge(piece, hem);
        boolean ahead = Paper.sides(piece).stream()
                .filter(side -> side.edge().equals(hem))
                .findFirst()
                .orElseThrow()
                .forward();
        requireNoCorner(line, hem, piece.name());
        List<HemPart> parts = new ArrayList<>();
        double from = 0;
        for (Curve curve : line.curves()) {
            double start = 0;
            for (double stop : bends(curve)) {
                Curve bend = start == 0 && stop == 1 ? curve : curve.between(start, stop);
                double to = from + bend.length();
                add(parts, new HemPart(from, to, (ahead ? 1 : -1) * turning(bend), depth));
                from = to;
                start = stop;
            }
        }
        return parts;
    }

    private static void requireNoCorner(CurvePath line, String hem, String piece) {
        for (int i = 1; i < line.curves().size(); i++) {
            Vector2D in = line.curves().get(i - 1).tangent(1);
            Vector2D out = line.curves().get(i).tangent(0);
            if (Math.abs(Math.atan2(in.signedArea(out), in.dot(out))) > CORNER) {
                throw new DraftingException(
                        "Turn up '" + hem + "' of '" + piece + "'",
                        "it has a corner, where a turn-up would lie double or gape; draft a shaped facing instead");
            }
        }
    }

    /** A stretch that bends as the one before is one with it. */
    private static void add(List<HemPart> parts, HemPart part) {
        HemPart next =
                Math.abs(part.turning()) < STRAIGHT ? new HemPart(part.from(), part.to(), 0, part.depth()) : part;
        if (!parts.isEmpty()) {
            HemPart last = parts.get(parts.size() - 1);
            if (Math.signum(last.turning()) == Math.signum(next.turning())) {
                parts.set(
                        parts.size() - 1,
                        new HemPart(last.from(), next.to(), last.turning() + next.turning(), next.depth()));
                return;
            }
        }
        parts.add(next);
    }

    /** The parameters up to which a curve bends one way, the last being 1. */
    private static List<Double> bends(Curve curve) {
        List<Double> stops = new ArrayList<>();
        if (curve instanceof Cubic cubic) {
            inflections(cubic).stream()
                    .filter(t -> t > 1e-9 && t < 1 - 1e-9)
                    .sorted()
                    .forEach(stops::add);
        }
        stops.add(1.0);
        return stops;
    }

    /**
     * Where {@code B' x B'' = 0}. With {@code a, b, c} the legs of the control polygon this is {@code (1-t)^2 a x b + t(1-t) a x c + t^2 b x c = 0}.
     */
    private static List<Double> inflections(Cubic cubic) {
        Vector2D a = cubic.start().vectorTo(cubic.startHandle());
        Vector2D b = cubic.startHandle().vectorTo(cubic.endHandle());
        Vector2D c = cubic.endHandle().vectorTo(cubic.end());
        double p = a.signedArea(b);
        double q = a.signedArea(c);
        double r = b.signedArea(c);
        double two = p - q + r;
        double one = q - 2 * p;
        if (Math.abs(two) <= 1e-14 * (Math.abs(p) + Math.abs(q) + Math.abs(r))) {
            return one == 0 ? List.of() : List.of(-p / one);
        }
        double under = one * one - 4 * two * p;
        if (under <= 0) {
            return List.of();
        }
        double half = -(one + Math.copySign(Math.sqrt(under), one)) / 2;
        return half == 0 ? List.of(0.0) : List.of(half / two, p / half);
    }

    /** The angle that a stretch without inflection turns; cut in four, so that none turns by half a turn. */
    private static double turning(Curve curve) {
        if (curve instanceof Arc arc) {
            return arc.sweep();
        }
        if (curve instanceof Straight) {
            return 0;
        }
        double sum = 0;
        Vector2D in = curve.tangent(0);
        for (int i = 1; i <= 4; i++) {
            Vector2D out = curve.tangent(i / 4.0);
            sum += Math.atan2(in.signedArea(out), in.dot(out));
            in = out;
        }
        return sum;
    }

    private static void requireGive(List<HemPart> parts, double depth, Give give, String asked) {
        double workable =
                parts.stream().mapToDouble(part -> part.deepest(give)).min().orElseThrow();
        if (depth <= workable) {
            return;
        }
        HemPart worst = parts.stream()
                .min((a, b) -> Double.compare(a.deepest(give), b.deepest(give)))
                .orElseThrow();
        boolean convex = worst.turning() > 0;
        String reason = String.format(
                Locale.ROOT,
                "the %s stretch from %.0f to %.0f mm along would be %.1f mm too %s, %.1f %% where the cloth gives %.1f %%;"
                        + " turn it up less, or draft a shaped facing",
                convex ? "convex" : "hollow",
                worst.from(),
                worst.to(),
                Math.abs(worst.surplus()),
                convex ? "long" : "short",
                100 * worst.share(),
                100 * (convex ? give.ease() : give.stretch()));
        throw new DraftingException(asked, reason, new Reach(Quantity.LENGTH, depth, 0, workable));
    }

    /**
     * Whether an edge is the free one of a turn-up, which is turned in and sewn down.
     *
     * @param edge its name
     * @return true when it is
     */
    public static boolean isFreeEdge(String edge) {
        return edge.contains(FoldedBack.FREE);
    }

    /**
     * Whether an edge is the end of what was folded back, which is caught in with the seam that it goes on from.
     *
     * @param edge its name
     * @return true when it is
     */
    public static boolean isTurnedEnd(String edge) {
        return edge.endsWith(FoldedBack.TURNED) || edge.contains(FoldedBack.TURNED + " ");
    }
}
