package org.draftingmaths.exchange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.piece.Border;
import org.draftingmaths.piece.InsideDart;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.LevelLine;
import org.draftingmaths.piece.Notch;
import org.draftingmaths.piece.Opening;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Run;
import org.draftingmaths.piece.Stretch;

/**
 * Whether the parts of a piece that was read belong together: what is named is there, what is moved is moved rigidly, rings
 * close, no cloth lies twice on a border, and the outline on paper can be walked round. What the library makes does; what a
 * stranger wrote may not. That an outline crosses itself is for the checks to find.
 */
final class Coherent {

    private final Piece piece;
    private final At at;
    private final Map<Border, Double> lengths = new HashMap<>();

    private Coherent(Piece piece, At at) {
        this.piece = piece;
        this.at = at;
    }

    static void require(Piece piece, At at) {
        Coherent coherent = new Coherent(piece, at);
        coherent.borders();
        coherent.mouths();
        coherent.panels();
        coherent.notches();
        coherent.onceOnly();
        coherent.walk();
    }

    private void borders() {
        List<At> edges = at.member("edges").items();
        for (int i = 0; i < edges.size(); i++) {
            CurvePath base = piece.edges().get(i).base();
            lengths.put(
                    new Border.OfEdge(piece.edges().get(i).name()), edges.get(i).made(base::length));
        }
        List<At> openings = at.member("openings").items();
        for (int i = 0; i < openings.size(); i++) {
            Opening opening = piece.openings().get(i);
            for (Leg leg : Leg.values()) {
                lengths.put(
                        new Border.OfLeg(opening.name(), leg),
                        openings.get(i).made(() -> opening.base(leg).length()));
            }
        }
    }

    private void mouths() {
        List<At> openings = at.member("openings").items();
        for (int i = 0; i < openings.size(); i++) {
            Opening opening = piece.openings().get(i);
            At where = openings.get(i);
            within(opening.mouth().border(), opening.mouth().before(), where.member("mouth"));
            within(opening.mouth().border(), opening.mouth().after(), where.member("mouth"));
            opening.farMouth().ifPresent(far -> {
                within(far.border(), far.before(), where.member("farMouth"));
                within(far.border(), far.after(), where.member("farMouth"));
            });
        }
    }

    private double length(Border border, At where) {
        return Optional.ofNullable(lengths.get(border))
                .orElseThrow(() ->
                        where.refused("piece '" + piece.name() + "' has no border " + border.words() + " to lie on"));
    }

    private void within(Border border, double arc, At where) {
        double length = length(border, where);
        if (!(arc >= -CurvePath.JOINT && arc <= length + CurvePath.JOINT)) {
            throw where.refused(arc + " mm does not lie on " + border.words() + ", which is " + length + " mm long");
        }
    }

    private void panels() {
        List<At> panels = at.member("panels").items();
        if (panels.isEmpty()) {
            throw at.refused("piece '" + piece.name() + "' has no panel");
        }
        Map<String, LevelLine> levels = new HashMap<>();
        piece.levels().forEach(level -> levels.put(level.name(), level));
        Map<String, InsideDart> darts = new HashMap<>();
        piece.insideDarts().forEach(dart -> darts.put(dart.name(), dart));
        for (int i = 0; i < panels.size(); i++) {
            ring(piece.panels().get(i).ring(), panels.get(i).member("ring"));
            List<At> lines = panels.get(i).member("lines").items();
            for (int j = 0; j < lines.size(); j++) {
                stretch(piece.panels().get(i).lines().get(j), levels, lines.get(j));
            }
            List<At> laid = panels.get(i).member("darts").items();
            for (int j = 0; j < laid.size(); j++) {
                String dart = piece.panels().get(i).darts().get(j).dart();
                requireKnown(darts, dart, "double-pointed dart", laid.get(j));
                requireRigid(piece.panels().get(i).darts().get(j).motion(), laid.get(j));
            }
        }
    }

    private void ring(List<Run> ring, At where) {
        if (ring.isEmpty()) {
            throw where.refused("a ring needs at least one run");
        }
        List<At> runs = where.items();
        for (int i = 0; i < runs.size(); i++) {
            Run run = ring.get(i);
            within(run.border(), run.from(), runs.get(i));
            within(run.border(), run.to(), runs.get(i));
            requireRigid(run.motion(), runs.get(i));
        }
        CurvePath placed = where.made(() -> piece.place(ring));
        if (!placed.closes(CurvePath.JOINT)) {
            throw where.refused("the ring does not close: its end lies "
                    + placed.start().distance(placed.end()) + " mm from its start");
        }
    }

    private void stretch(Stretch stretch, Map<String, LevelLine> levels, At where) {
        requireKnown(levels, stretch.line(), "level line", where);
        requireRigid(stretch.motion(), where);
        where.made(() -> piece.place(stretch));
    }

    private void requireKnown(Map<String, ?> known, String name, String what, At where) {
        if (!known.containsKey(name)) {
            throw where.refused("piece '" + piece.name() + "' has no " + what + " named '" + name + "'");
        }
    }

    /** The curves refuse a motion that is not rigid when they are moved; this says it at the place of the motion. */
    private static void requireRigid(AffineTransformMatrix2D motion, At where) {
        double[] m = motion.toArray();
        double xx = m[0] * m[0] + m[3] * m[3];
        double yy = m[1] * m[1] + m[4] * m[4];
        double xy = m[0] * m[1] + m[3] * m[4];
        if (!(Math.abs(xx - 1) <= 1e-9 && Math.abs(yy - 1) <= 1e-9 && Math.abs(xy) <= 1e-9)) {
            throw where.member("motion").refused("this is not a turn, a shift or a reflection");
        }
    }

    private void notches() {
        List<At> notches = at.member("notches").items();
        for (int i = 0; i < notches.size(); i++) {
            Notch notch = piece.notches().get(i);
            within(new Border.OfEdge(notch.edge()), notch.arc(), notches.get(i));
        }
    }

    /** No stretch of a border lies on two panels, and every border lies on one. */
    private void onceOnly() {
        Map<Border, List<Run>> along = new HashMap<>();
        piece.panels()
                .forEach(panel -> panel.ring()
                        .forEach(run -> along.computeIfAbsent(run.border(), border -> new ArrayList<>())
                                .add(run)));
        for (Border border : lengths.keySet()) {
            List<Run> runs = along.getOrDefault(border, List.of()).stream()
                    .sorted(Comparator.comparingDouble(Run::from))
                    .toList();
            for (int i = 1; i < runs.size(); i++) {
                if (runs.get(i).from() < runs.get(i - 1).to() - CurvePath.JOINT) {
                    throw at.member("panels")
                            .refused("two runs lie on " + border.words() + " at "
                                    + runs.get(i).from() + " mm");
                }
            }
            if (runs.isEmpty()) {
                throw at.member("panels").refused("no run lies along " + border.words());
            }
        }
    }

    /** A place of the walk round the outline: a run by panel and index. */
    private record Stop(int panel, int index) {}

    /**
     * The walk round the paper, as {@link Paper} does it, but counting its steps; then the outline itself, whose dart ends and
     * smoothed mouths have conditions of their own.
     */
    private void walk() {
        At panels = at.member("panels");
        Map<String, Stop> exits = exits();
        Stop first = first();
        Stop here = first;
        Set<Stop> seen = new HashSet<>();
        while (seen.add(here)) {
            here = next(here);
            Set<Stop> crossed = new HashSet<>();
            while (run(here).border() instanceof Border.OfLeg leg) {
                Stop across = exits.get(
                        mouth(leg.opening(), leg.leg().other(), run(here).forward()));
                if (across == null || !crossed.add(here)) {
                    throw panels.refused("the outline cannot be walked across '" + leg.opening()
                            + "': its two legs do not reach the same mouth");
                }
                here = next(across);
            }
        }
        if (!here.equals(first)) {
            throw panels.refused("the outline does not come back to "
                    + run(first).border().words() + ": two legs lead to one mouth");
        }
        for (int i = 0; i < piece.panels().size(); i++) {
            for (int j = 0; j < piece.panels().get(i).ring().size(); j++) {
                Stop stop = new Stop(i, j);
                if (run(stop).border() instanceof Border.OfEdge && !seen.contains(stop)) {
                    throw panels.refused("the outline does not reach "
                            + run(stop).border().words() + " at " + run(stop).from()
                            + " mm: the panels do not hang together by openings");
                }
            }
        }
        outline(panels);
    }

    /** Whatever the outline trips over, the piece is not one that the library made. */
    private void outline(At panels) {
        panels.made(() -> {
            try {
                return Paper.outline(piece);
            } catch (IllegalStateException | ClassCastException broken) {
                throw new IllegalArgumentException(
                        "the outline of '" + piece.name() + "' does not hold together: " + broken.getMessage(), broken);
            }
        });
    }

    private Stop first() {
        for (int i = 0; i < piece.panels().size(); i++) {
            List<Run> ring = piece.panels().get(i).ring();
            for (int j = 0; j < ring.size(); j++) {
                if (ring.get(j).border() instanceof Border.OfEdge) {
                    return new Stop(i, j);
                }
            }
        }
        throw at.member("panels").refused("no edge lies on the outline of '" + piece.name() + "'");
    }

    private Run run(Stop stop) {
        return piece.panels().get(stop.panel()).ring().get(stop.index());
    }

    private Stop next(Stop stop) {
        return new Stop(
                stop.panel(),
                (stop.index() + 1) % piece.panels().get(stop.panel()).ring().size());
    }

    /** Where the outline comes out of each mouth, by leg and end. */
    private Map<String, Stop> exits() {
        Map<String, Stop> exits = new HashMap<>();
        for (int i = 0; i < piece.panels().size(); i++) {
            List<Run> ring = piece.panels().get(i).ring();
            for (int j = 0; j < ring.size(); j++) {
                Run run = ring.get(j);
                if (run.border() instanceof Border.OfLeg leg) {
                    double exit = run.forward() ? run.to() : run.from();
                    if (exit == (run.forward() ? lengths.get(leg) : 0)) {
                        exits.putIfAbsent(mouth(leg.opening(), leg.leg(), !run.forward()), new Stop(i, j));
                    }
                }
            }
        }
        return exits;
    }

    /** The key of a leg's end: at the near mouth or at the far one. */
    private static String mouth(String opening, Leg leg, boolean near) {
        return (near ? "near " : "far ") + leg + " " + opening;
    }
}
