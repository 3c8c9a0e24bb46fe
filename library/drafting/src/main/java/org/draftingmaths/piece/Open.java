package org.draftingmaths.piece;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Bounds2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Inside;
import org.draftingmaths.ledger.Change;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.ledger.Reach;

/** Moves panels so that openings widen and close as asked, joins what closed, and says what came of it. */
final class Open {

    /** How many shares of the asked motion are tried when looking for the largest that clears. */
    private static final int TRIALS = 64;

    private static final int HALVINGS = 40;

    /** An angle below what can be drawn, in radians. */
    private static final double ANGLE = 1e-6;

    /** How far into a part its cloth is looked for, in mm. */
    private static final double INTO = 1e-3;

    private Open() {}

    static Reworked open(Piece piece, Map<String, Motion> relative, Stay stay, String asked) {
        relative.keySet().forEach(name -> requireWholeLegs(piece, name, asked));
        Groups groups = Groups.apart(piece, relative.keySet());
        int home = groups.staying(stay, asked);
        Map<Integer, AffineTransformMatrix2D> motions = motions(groups, relative, home, asked);
        requireClear(groups, relative, home, motions, asked);
        Reworked moved =
                Panels.move(piece, groups.of().stream().map(motions::get).toList());
        Reworked joined = joinClosed(moved, relative);
        return said(piece, withGrain(joined, groups, home), relative);
    }

    private static void requireWholeLegs(Piece piece, String name, String asked) {
        for (Leg leg : Leg.values()) {
            if (Panels.onlyRun(piece, piece.opening(name).leg(leg)).isEmpty()) {
                throw new DraftingException(asked, "another slash ends on a leg of '" + name + "'; undo that first");
            }
        }
    }

    /** The motion of each group: none for the one that stays, and from there across each changing opening. */
    private static Map<Integer, AffineTransformMatrix2D> motions(
            Groups groups, Map<String, Motion> relative, int home, String asked) {
        Map<Integer, AffineTransformMatrix2D> motions = new HashMap<>();
        motions.put(home, Isometry.NONE);
        Deque<Integer> queue = new ArrayDeque<>(List.of(home));
        while (!queue.isEmpty()) {
            int here = queue.remove();
            for (String name : relative.keySet()) {
                Opening opening = groups.piece().opening(name);
                int before = groups.at(opening, Leg.BEFORE);
                int after = groups.at(opening, Leg.AFTER);
                AffineTransformMatrix2D across = relative.get(name).matrix();
                if (here == before) {
                    reach(motions, queue, after, across.premultiply(motions.get(here)));
                }
                if (here == after) {
                    reach(motions, queue, before, across.inverse().premultiply(motions.get(here)));
                }
            }
        }
        requireLoops(groups, relative, motions, asked);
        return motions;
    }

    private static void reach(
            Map<Integer, AffineTransformMatrix2D> motions,
            Deque<Integer> queue,
            int group,
            AffineTransformMatrix2D motion) {
        if (motions.putIfAbsent(group, motion) == null) {
            queue.add(group);
        }
    }

    /** Going round a loop of openings must bring every part back: what opens is what closes. */
    private static void requireLoops(
            Groups groups, Map<String, Motion> relative, Map<Integer, AffineTransformMatrix2D> motions, String asked) {
        for (Map.Entry<String, Motion> each : relative.entrySet()) {
            Opening opening = groups.piece().opening(each.getKey());
            AffineTransformMatrix2D along = motions.get(groups.at(opening, Leg.AFTER));
            AffineTransformMatrix2D across =
                    each.getValue().matrix().premultiply(motions.get(groups.at(opening, Leg.BEFORE)));
            Vector2D tip = Measured.tip(groups.piece(), each.getKey());
            Vector2D mouth =
                    Measured.leg(groups.piece(), each.getKey(), Leg.AFTER).start();
            if (Isometry.apart(along, across, tip, mouth) > Panels.TOUCH) {
                throw new DraftingException(
                        asked,
                        String.format(
                                Locale.ROOT,
                                "a flat sheet cannot open at '%s' unless as much closes at the same point; %s",
                                each.getKey(),
                                leftOver(along, across, tip, mouth)));
            }
        }
    }

    /** An angle is left over; or, when the angles cancel and the points differ, the sides miss one another by a distance. */
    private static String leftOver(
            AffineTransformMatrix2D along, AffineTransformMatrix2D across, Vector2D tip, Vector2D mouth) {
        double angle = Math.abs(Math.IEEEremainder(Isometry.angle(across) - Isometry.angle(along), 2 * Math.PI));
        return angle > ANGLE
                ? String.format(Locale.ROOT, "%.1f° are left over", Math.toDegrees(angle))
                : String.format(
                        Locale.ROOT,
                        "the angles agree but not the points they turn about, and its sides would miss one another by %.3f mm",
                        Isometry.apart(along, across, tip, mouth));
    }

    private static void requireClear(
            Groups groups,
            Map<String, Motion> relative,
            int home,
            Map<Integer, AffineTransformMatrix2D> motions,
            String asked) {
        Optional<String> clash = clash(groups, motions);
        if (clash.isPresent()) {
            Reach reach = reach(groups, relative, home, asked);
            throw new DraftingException(asked, clash.get(), reach);
        }
    }

    private static Optional<String> clash(Groups groups, Map<Integer, AffineTransformMatrix2D> motions) {
        Piece piece = groups.piece();
        List<CurvePath> placed = new ArrayList<>();
        for (int i = 0; i < piece.panels().size(); i++) {
            placed.add(piece.place(piece.panels().get(i).ring())
                    .transformed(motions.get(groups.of().get(i))));
        }
        for (int i = 0; i < placed.size(); i++) {
            for (int k = i + 1; k < placed.size(); k++) {
                if (!groups.of().get(i).equals(groups.of().get(k)) && overlap(placed.get(i), placed.get(k))) {
                    boolean stays = motions.get(groups.of().get(k)).equals(Isometry.NONE);
                    return Optional.of(piece.panels().get(stays ? i : k).words() + " would lie over "
                            + piece.panels().get(stays ? k : i).words());
                }
            }
        }
        return Optional.empty();
    }

    /** Two rings overlap when part of the border of the one lies inside the other, or where both have their cloth on one side. */
    private static boolean overlap(CurvePath one, CurvePath other) {
        Bounds2D a = one.bounds();
        Bounds2D b = other.bounds();
        return Outlines.near(a, b)
                && (!Within.strictly(one, other).isEmpty()
                        || !Within.strictly(other, one).isEmpty()
                        || coverAlike(one, other));
    }

    /** Whether a border that lies on the other's has its cloth on the same side of it. */
    private static boolean coverAlike(CurvePath one, CurvePath other) {
        return one.curves().stream().anyMatch(curve -> {
            Vector2D on = curve.at(0.5);
            Vector2D way = curve.tangent(0.5);
            Vector2D inwards = on.add(Vector2D.of(-way.getY(), way.getX()).multiply(INTO));
            return Inside.of(other, on, Panels.TOUCH) == Inside.Where.BOUNDARY
                    && Inside.of(other, inwards, Panels.TOUCH) == Inside.Where.INSIDE;
        });
    }

    /** The largest share of the asked motion up to which all parts clear, as an angle or a length. */
    private static Reach reach(Groups groups, Map<String, Motion> relative, int home, String asked) {
        double clear = 0;
        double blocked = 1;
        for (int i = 1; i <= TRIALS; i++) {
            double share = (double) i / TRIALS;
            if (!clears(groups, relative, home, share, asked)) {
                blocked = share;
                break;
            }
            clear = share;
        }
        for (int i = 0; i < HALVINGS; i++) {
            double share = (clear + blocked) / 2;
            if (clears(groups, relative, home, share, asked)) {
                clear = share;
            } else {
                blocked = share;
            }
        }
        double angle = relative.values().stream()
                .mapToDouble(motion -> Math.abs(motion.angle()))
                .max()
                .orElse(0);
        if (angle > 0) {
            return new Reach(Quantity.ANGLE, angle, 0, angle * clear);
        }
        double shift = relative.values().stream()
                .mapToDouble(motion -> motion.shift().norm())
                .max()
                .orElse(0);
        return new Reach(Quantity.LENGTH, shift, 0, shift * clear);
    }

    private static boolean clears(Groups groups, Map<String, Motion> relative, int home, double share, String asked) {
        Map<String, Motion> part = new HashMap<>();
        relative.forEach((name, motion) -> part.put(name, motion.share(share)));
        return clash(groups, motions(groups, part, home, asked)).isEmpty();
    }

    private static Reworked joinClosed(Reworked moved, Map<String, Motion> relative) {
        Reworked done = moved;
        for (String name : relative.keySet()) {
            if (Panels.closed(done.piece(), name)) {
                done = done.then(Panels.join(done.piece(), name));
            }
        }
        return done;
    }

    private static Reworked withGrain(Reworked done, Groups groups, int home) {
        Optional<Grain> before = done.piece().grain();
        Optional<Grain> after = before.map(grain -> Grains.onPart(groups.piece(), groups.panels(home), grain));
        return after.equals(before)
                ? done
                : done.then(done.piece().withGrain(after), new Step.GrainRedrawn(before, after));
    }

    /** What was conserved and what changed. */
    private static Reworked said(Piece before, Reworked done, Map<String, Motion> relative) {
        Ledger ledger = done.ledger();
        for (String name : relative.keySet()) {
            double then = Measured.angle(before, name);
            boolean open = done.piece().openings().stream()
                    .anyMatch(opening -> opening.name().equals(name));
            double now = open ? Measured.angle(done.piece(), name) : 0;
            ledger = ledger.then(new Change("angle of '" + name + "'", Quantity.ANGLE, then, now));
        }
        ledger = ledger.then(new Change(
                "net area", Quantity.AREA, before.area(), done.piece().area()));
        return new Reworked(done.piece(), ledger);
    }
}
