package org.draftingmaths.piece;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Nearest;
import org.draftingmaths.ledger.Entry;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.unit.Steps;

/** Level lines over a gap: where both ends run on in one smooth line it goes on over the filled cloth, else it stays broken and that is said. */
final class LineGap {

    /** How far in radians either end may turn into the line across: as much as at a slash opened by 30 degrees; a figure of our own. */
    private static final double SMOOTH = Math.toRadians(15);

    /** Ends that touch run on when they do not turn by more than rounding. */
    private static final double STRAIGHT_ON = 1e-6;

    private LineGap() {}

    /** Said of a line whose ends do not run on in one. */
    record Broken(String line, String opening, double turn) implements Entry {
        @Override
        public String sentence(Steps steps) {
            return "'" + line + "' stays broken over the filled '" + opening + "': to go on it would have to turn by "
                    + Quantity.ANGLE.print(turn, steps) + "; draw it anew there.";
        }
    }

    /** A filled piece, its lines gone on. */
    record Healed(Piece piece, List<Step.LineJoint> joints, Ledger told) {}

    /**
     * The line from one end over a gap to the other, tangent to both, if it is smooth.
     *
     * @param from the one end
     * @param leaving the direction in which the line comes to it
     * @param to the other end
     * @param arriving the direction in which the line goes on from it
     */
    static Optional<CurvePath> across(Vector2D from, Vector2D leaving, Vector2D to, Vector2D arriving) {
        return turn(from, leaving, to, arriving) <= SMOOTH
                ? Optional.of(Paper.smooth(from, leaving, to, arriving))
                : Optional.empty();
    }

    /** The larger of the two angles between the ends and the straight across. */
    private static double turn(Vector2D from, Vector2D leaving, Vector2D to, Vector2D arriving) {
        Vector2D chord = from.vectorTo(to);
        return Math.max(between(leaving, chord), between(chord, arriving));
    }

    private static double between(Vector2D one, Vector2D other) {
        return Math.abs(Math.atan2(one.signedArea(other), one.dot(other)));
    }

    /** Two stretches of a line that end on the two legs of an opening that was filled. */
    private record Pair(Stretch lower, Stretch upper) {}

    /** All lines of a filled piece that ended on the legs of the opening. */
    static Healed heal(Piece filled, String opening, CurvePath one, CurvePath other) {
        Piece piece = filled;
        List<Step.LineJoint> joints = new ArrayList<>();
        Ledger told = Ledger.EMPTY;
        for (LevelLine line : filled.levels()) {
            List<Pair> pairs = pairs(piece, line.name(), one, other);
            // From the far end on, so that what is still to be joined keeps its arcs.
            for (int i = pairs.size() - 1; i >= 0; i--) {
                CurvePath lower = piece.place(pairs.get(i).lower());
                CurvePath upper = piece.place(pairs.get(i).upper());
                double turn = lower.end().distance(upper.start()) <= Panels.TOUCH
                        ? between(lower.endTangent(), upper.startTangent())
                        : turn(lower.end(), lower.endTangent(), upper.start(), upper.startTangent());
                boolean touching = lower.end().distance(upper.start()) <= Panels.TOUCH;
                if (turn > (touching ? STRAIGHT_ON : SMOOTH)) {
                    told = told.then(new Broken(line.name(), opening, turn));
                } else {
                    Step.LineJoint joint = joint(piece, pairs.get(i), lower, upper, touching);
                    joints.add(joint);
                    piece = joined(piece, joint, pairs.get(i).lower().motion());
                }
            }
        }
        return new Healed(piece, joints, told);
    }

    private static List<Pair> pairs(Piece piece, String line, CurvePath one, CurvePath other) {
        List<Pair> pairs = new ArrayList<>();
        for (Panel panel : piece.panels()) {
            List<Stretch> own = panel.lines().stream()
                    .filter(stretch -> stretch.line().equals(line))
                    .sorted(Comparator.comparingDouble(Stretch::from))
                    .toList();
            for (int i = 1; i < own.size(); i++) {
                Pair pair = new Pair(own.get(i - 1), own.get(i));
                Vector2D end = piece.place(pair.lower()).end();
                Vector2D start = piece.place(pair.upper()).start();
                boolean over = (on(one, end) && on(other, start)) || (on(other, end) && on(one, start));
                if (over && isNext(piece, pair)) {
                    pairs.add(pair);
                }
            }
        }
        return pairs;
    }

    private static boolean on(CurvePath leg, Vector2D point) {
        return Nearest.of(leg, point).distance() <= Panels.TOUCH;
    }

    /** Whether no stretch of the line lies between the two, on whatever panel. */
    private static boolean isNext(Piece piece, Pair pair) {
        return piece.panels().stream()
                .flatMap(panel -> panel.lines().stream())
                .filter(stretch -> stretch.line().equals(pair.lower().line()))
                .noneMatch(stretch -> stretch.from() >= pair.lower().to()
                        && stretch.to() <= pair.upper().from());
    }

    private static Step.LineJoint joint(Piece piece, Pair pair, CurvePath lower, CurvePath upper, boolean touching) {
        LevelLine line = piece.level(pair.lower().line());
        double from = pair.lower().to();
        double to = pair.upper().from();
        AffineTransformMatrix2D back = pair.lower().motion().inverse();
        Optional<CurvePath> drawn = touching
                ? Optional.empty()
                : Optional.of(Paper.smooth(lower.end(), lower.endTangent(), upper.start(), upper.startTangent())
                        .transformed(back));
        AffineTransformMatrix2D turn = pair.upper().motion().premultiply(back);
        CurvePath start = line.base().between(0, from);
        CurvePath rest = line.base().between(to, line.base().length()).transformed(turn);
        CurvePath base = drawn.map(start::then).orElse(start).then(rest);
        List<Double> arcs = piece.panels().stream()
                .flatMap(panel -> panel.lines().stream())
                .filter(stretch -> stretch.line().equals(line.name()))
                .flatMap(stretch -> Stream.of(stretch.from(), stretch.to()))
                .filter(arc -> arc >= to)
                .distinct()
                .sorted()
                .toList();
        return new Step.LineJoint(
                line,
                new LevelLine(line.name(), base),
                from,
                to,
                drawn.map(CurvePath::length).orElse(0.0),
                turn,
                arcs);
    }

    private static Piece joined(Piece piece, Step.LineJoint joint, AffineTransformMatrix2D motion) {
        String name = joint.line().name();
        double beyond = joint.from() + joint.width();
        Piece longer = withLine(piece, joint.lineAfter());
        return longer.with(longer.panels().stream()
                .map(panel -> {
                    boolean here = panel.lines().stream()
                            .anyMatch(stretch -> stretch.line().equals(name)
                                    && stretch.to() == joint.from()
                                    && stretch.motion().equals(motion));
                    Stream<Stretch> gap = here && joint.width() > 0
                            ? Stream.of(new Stretch(name, joint.from(), beyond, motion))
                            : Stream.empty();
                    List<Stretch> lines = Stream.concat(panel.lines().stream().map(joint::onwards), gap)
                            .toList();
                    return new Panel(panel.ring(), Join.Heal.lines(longer, lines), panel.darts());
                })
                .toList());
    }

    /** Breaks the lines again where they were made one. */
    static Piece undo(Piece piece, List<Step.LineJoint> joints, String asked) {
        Piece broken = piece;
        for (int i = joints.size() - 1; i >= 0; i--) {
            Step.LineJoint joint = joints.get(i);
            if (!broken.levels().contains(joint.lineAfter())) {
                throw Panels.changedSince(asked);
            }
            Piece shorter = withLine(broken, joint.line());
            broken = shorter.with(shorter.panels().stream()
                    .map(panel -> new Panel(
                            panel.ring(),
                            panel.lines().stream().flatMap(joint::back).toList(),
                            panel.darts()))
                    .toList());
        }
        return broken;
    }

    private static Piece withLine(Piece piece, LevelLine line) {
        return new Piece(
                piece.name(),
                piece.edges(),
                piece.openings(),
                piece.panels(),
                piece.levels().stream()
                        .map(each -> each.name().equals(line.name()) ? line : each)
                        .toList(),
                piece.insideDarts(),
                piece.notches(),
                piece.grain());
    }
}
