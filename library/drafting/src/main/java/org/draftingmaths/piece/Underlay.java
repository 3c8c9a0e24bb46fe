package org.draftingmaths.piece;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Inside;
import org.draftingmaths.curve.Meet;
import org.draftingmaths.curve.Meets;
import org.draftingmaths.curve.Nearest;

/**
 * The underlay of a folded dart: how far its peak stands out, and whether the panel it lies on is wide enough for it.
 *
 * <p>Folded, the fold line lies on the ray from the sewn tip T at half the sewn angle beyond the leg. The seam on that side must come as far;
 * where it ends before, at a corner or at another opening, the underlay reaches past it.
 */
public final class Underlay {

    /** Along the folded fold line, how many places are looked at. */
    private static final int SAMPLES = 64;

    private Underlay() {}

    /**
     * An underlay that reaches past the panel it is pressed to.
     *
     * @param dart the name of the dart
     * @param side the leg whose panel it is pressed to
     * @param past the edge, or the leg of another opening, that it reaches past
     * @param by how far in mm its fold lies outside the panel at the most, the seam taken to run on straight, but no farther from
     *     the sewn tip than its own end
     */
    public record Overrun(String dart, Leg side, Border past, double by) {}

    /**
     * Where the underlay of a dart as it is pressed reaches past its panel.
     *
     * @param piece the piece
     * @param dart the name of a dart
     * @return one for each side it is pressed to and reaches past; two at the most, when it is pressed open
     * @throws IllegalArgumentException when it is not sewn as a dart
     * @throws org.draftingmaths.ledger.DraftingException when the set-back leaves nothing of the dart to be sewn
     */
    public static List<Overrun> overruns(Piece piece, String dart) {
        return DartEnd.sewn(piece, dart).press().map(List::of).orElse(List.of(Leg.BEFORE, Leg.AFTER)).stream()
                .flatMap(side -> overrun(piece, dart, side).stream())
                .toList();
    }

    /**
     * Where the underlay of a dart would reach past its panel, were it pressed to one side.
     *
     * @param piece the piece
     * @param dart the name of a dart
     * @param side the leg whose panel it would be pressed to
     * @return what it would reach past; none when the panel is wide enough
     * @throws IllegalArgumentException when it is not sewn as a dart
     * @throws org.draftingmaths.ledger.DraftingException when the set-back leaves nothing of the dart to be sewn
     */
    public static Optional<Overrun> overrun(Piece piece, String dart, Leg side) {
        List<DartEnd.Side> away = DartEnd.awayRuns(piece, dart, side);
        CurvePath ring = ring(piece, dart, side);
        CurvePath fold = fold(piece, dart, side, away);
        CurvePath wedge = wedge(piece, dart);
        double by = IntStream.rangeClosed(1, SAMPLES)
                .mapToObj(i -> fold.pointAt(i == SAMPLES ? fold.length() : fold.length() * i / SAMPLES))
                .filter(point -> Inside.of(ring, point, Panels.TOUCH) == Inside.Where.OUTSIDE)
                .filter(point -> Inside.of(wedge, point, Panels.TOUCH) == Inside.Where.OUTSIDE)
                .mapToDouble(point -> Nearest.of(ring, point).distance())
                .max()
                .orElse(0);
        return by <= Panels.TOUCH
                ? Optional.empty()
                : Optional.of(new Overrun(dart, side, past(piece, dart, side, away, fold), by));
    }

    /**
     * How far the end of the fold stands out over the straight from leg end to leg end. For a straight seam that meets the pressed-to
     * leg {@code L} at the angle {@code p} inside the piece, and a sewn angle {@code g}: {@code L sin p / sin(p + g/2) - L cos(g/2)}.
     *
     * @param piece the piece
     * @param dart the name of a dart
     * @return the distance in mm from the middle of the mouth along the fold line; negative when the fold ends inside
     */
    public static double peak(Piece piece, String dart) {
        Vector2D middle = Measured.leg(piece, dart, Leg.BEFORE)
                .start()
                .lerp(Measured.leg(piece, dart, Leg.AFTER).start(), 0.5);
        Vector2D out = Measured.tip(piece, dart).directionTo(middle);
        return middle.vectorTo(DartEnd.foldEnd(piece, dart)).dot(out);
    }

    /**
     * How far the end of the fold would stand out, were the dart pressed to one side.
     *
     * @param piece the piece
     * @param dart the name of a dart with equal legs
     * @param side the leg whose panel it would be pressed to
     * @return the distance in mm as {@link #peak(Piece, String)}
     * @throws IllegalArgumentException when it is not sewn as a dart
     * @throws org.draftingmaths.ledger.DraftingException when the set-back leaves nothing of the dart to be sewn
     */
    public static double peak(Piece piece, String dart, Leg side) {
        Vector2D tip = DartEnd.sewnTip(piece, dart);
        Vector2D leg = Measured.leg(piece, dart, side).start();
        Vector2D other = Measured.leg(piece, dart, side.other()).start();
        Vector2D fold = DartEnd.layer(piece, dart, side, -DartEnd.angle(tip, leg, other) / 2)
                .end();
        return tip.distance(fold) - tip.distance(leg.lerp(other, 0.5));
    }

    /** The fold line where it comes to lie: from the sewn tip to its own seam, taken to run on straight where it ends before. */
    private static CurvePath fold(Piece piece, String dart, Leg side, List<DartEnd.Side> away) {
        Vector2D tip = DartEnd.sewnTip(piece, dart);
        Vector2D leg = Measured.leg(piece, dart, side).start();
        double half =
                DartEnd.angle(tip, leg, Measured.leg(piece, dart, side.other()).start()) / 2;
        if (away.isEmpty()) {
            return DartEnd.ray(tip, leg, -half, tip.distance(leg));
        }
        CurvePath seam = away.get(0).line();
        CurvePath ray = DartEnd.ray(tip, leg, -half, tip.distance(leg) + seam.length());
        double reach = firstMeet(seam, ray).orElseGet(() -> runOn(seam, ray));
        return DartEnd.ray(tip, leg, -half, reach);
    }

    /** How far along the ray the seam is met first, the leg's own end apart. */
    private static Optional<Double> firstMeet(CurvePath seam, CurvePath ray) {
        return Meets.of(seam, ray).points().stream()
                .filter(meet -> meet.onFirst() > Panels.TOUCH)
                .min(Comparator.comparingDouble(Meet::onFirst))
                .map(Meet::onSecond);
    }

    /** How far along the ray the seam's straight continuation meets it, but no farther from the tip than the seam's own end. */
    private static double runOn(CurvePath seam, CurvePath ray) {
        Vector2D way = ray.startTangent();
        Vector2D on = seam.endTangent();
        Vector2D to = ray.start().vectorTo(seam.end());
        double turn = way.signedArea(on);
        double along = to.signedArea(on) / turn;
        double onwards = to.signedArea(way) / turn;
        return along > 0 && onwards >= 0 ? Math.min(along, to.norm()) : to.norm();
    }

    /** The wedge of the dart itself: cloth between apex and sewn tip, where the fold begins. */
    private static CurvePath wedge(Piece piece, String dart) {
        CurvePath before = Measured.leg(piece, dart, Leg.BEFORE);
        CurvePath after = Measured.leg(piece, dart, Leg.AFTER);
        return CurvePath.polyline(before.start(), before.end(), after.start(), before.start());
    }

    private static CurvePath ring(Piece piece, String dart, Leg side) {
        Border leg = piece.opening(dart).leg(side);
        return piece.place(piece.panels().stream()
                .map(Panel::ring)
                .filter(ring -> ring.stream().anyMatch(run -> run.border().equals(leg) && run.from() == 0))
                .findFirst()
                .orElseThrow());
    }

    /** The first border that the fold crosses, its own seam and legs apart; if it crosses none, what follows its own seam. */
    private static Border past(Piece piece, String dart, Leg side, List<DartEnd.Side> away, CurvePath fold) {
        return piece.panels().stream()
                .flatMap(panel -> panel.ring().stream())
                .filter(run ->
                        away.isEmpty() || !run.border().equals(away.get(0).border()))
                .filter(run -> !(run.border() instanceof Border.OfLeg leg
                        && leg.opening().equals(dart)))
                .flatMap(run -> Meets.of(fold, piece.place(run)).points().stream()
                        .map(meet -> new Crossed(run.border(), meet.onFirst())))
                .min(Comparator.comparingDouble(Crossed::at))
                .map(Crossed::border)
                .orElseGet(() -> next(piece, dart, side, away));
    }

    private record Crossed(Border border, double at) {}

    /** What follows the seam beside a leg: the next edge, or the leg of the next opening. */
    private static Border next(Piece piece, String dart, Leg side, List<DartEnd.Side> away) {
        if (away.size() > 1) {
            return away.get(1).border();
        }
        Border leg = piece.opening(dart).leg(side);
        for (Panel panel : piece.panels()) {
            List<Run> ring = panel.ring();
            for (int i = 0; i < ring.size(); i++) {
                if (ring.get(i).border().equals(leg) && ring.get(i).from() == 0) {
                    int step = (away.size() + 1) * (ring.get(i).forward() ? -1 : 1);
                    return ring.get(Math.floorMod(i + step, ring.size())).border();
                }
            }
        }
        throw new IllegalStateException("Opening '" + dart + "' lies on no panel.");
    }
}
