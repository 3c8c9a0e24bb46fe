package org.draftingmaths.fullness;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Meet;
import org.draftingmaths.curve.Meets;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.ledger.Reach;
import org.draftingmaths.piece.Beside;
import org.draftingmaths.piece.Border;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Motion;
import org.draftingmaths.piece.Mouth;
import org.draftingmaths.piece.Opening;
import org.draftingmaths.piece.Panels;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.PaperSide;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Slash;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.piece.Stay;
import org.draftingmaths.piece.Use;
import org.draftingmaths.unit.Asked;

/**
 * Slash and spread. The gap stays in the edge: its use is undecided until the opening is put to one, and its ends are joined by
 * chords until the edge is redrawn.
 *
 * <p>Every spread is one motion, made from the two ends of the slash: with gaps {@code g1, g2} and the slash {@code H} the part that
 * moves turns by {@code a = 2 asin((g1 - g2) / 2H)} and the paper gains {@code (g1 + g2)/2 H cos(a/2)}. Hinged is {@code g2 = 0},
 * parallel {@code g1 = g2}. Conserved always: the base length of every edge, the net area.
 */
public final class Spread {

    /** Below this a cut-off sliver could not be told from rounding, in mm. */
    private static final double TOUCH = 1e-6;

    private Spread() {}

    /**
     * A slash and how far it is to be spread.
     *
     * @param slash where to slash
     * @param gap the width in mm where it starts, straight, 0 for a hinge there
     * @param farGap the width where it ends, 0 for a hinge there
     */
    public record Opened(Slash slash, double gap, double farGap) {

        /** Checks the gaps. */
        public Opened {
            if (!(gap >= 0 && farGap >= 0 && gap + farGap > 0 && Double.isFinite(gap + farGap))) {
                throw new IllegalArgumentException("The gaps of '" + slash.name()
                        + "' are 0 mm or more and one of them is more: " + gap + " and " + farGap
                        + " mm. An overlap takes cloth out, and is a lap.");
            }
        }

        /**
         * A slash spread at its start and hinged at its end.
         *
         * @param slash where to slash
         * @param gap the width in mm where it starts
         * @return the slash with its gaps
         */
        public static Opened hinged(Slash slash, double gap) {
            return new Opened(slash, gap, 0);
        }
    }

    /**
     * Spreads a slash at its mouth, hinged at its other end.
     *
     * <p>With {@code R} the slash's chord and {@code g} the gap, the part that moves turns by {@code a = 2 asin(g / 2R)} about
     * the hinge. Conserved: the base length of every edge, the whole length of the hinge's edge, the net area. Gained: the
     * mouth's edge {@code g}, the paper {@code g/2 R cos(a/2)}.
     *
     * <pre>{@code
     * Reworked flared = Spread.hinged(skirt, Slash.straight("flare", Spot.on("hem", 120), Spot.on("waist", 90)), 50);
     * }</pre>
     *
     * @param piece the piece
     * @param slash where to slash: from the edge that gains to the edge that keeps its length
     * @param gap the width of the mouth in mm, straight
     * @return the piece and what was done
     * @throws IllegalArgumentException when the gap is not more than 0
     * @throws DraftingException when the gap is wider than a half turn gives, when the slash leaves the cloth, when it ends at a
     *     point inside and nothing closes there, or when parts would lie over one another
     */
    public static Reworked hinged(Piece piece, Slash slash, double gap) {
        return hinged(piece, slash, gap, Stay.CENTRE);
    }

    /**
     * Spreads a slash at its mouth, hinged at its other end, and says which part stays where it is.
     *
     * @param piece the piece
     * @param slash where to slash: from the edge that gains to the edge that keeps its length
     * @param gap the width of the mouth in mm, straight
     * @param stay which part stays
     * @return the piece and what was done
     * @throws IllegalArgumentException when the gap is not more than 0
     * @throws DraftingException as {@link #hinged(Piece, Slash, double)}
     */
    public static Reworked hinged(Piece piece, Slash slash, double gap, Stay stay) {
        requireGap(gap);
        return all(piece, List.of(new Opened(slash, gap, 0)), stay);
    }

    /**
     * Spreads a slash by an equal gap all along.
     *
     * <p>The part that moves is shifted square to the slash's chord by the gap. Conserved: the base length of every edge, the
     * net area, every direction. Gained: both edges {@code g} straight, the paper {@code g} times the chord.
     *
     * @param piece the piece
     * @param slash where to slash, from edge to edge
     * @param gap the width in mm
     * @return the piece and what was done
     * @throws IllegalArgumentException when the gap is not more than 0
     * @throws DraftingException when the slash leaves the cloth or ends at a point inside, or when parts would lie over one another
     */
    public static Reworked parallel(Piece piece, Slash slash, double gap) {
        return parallel(piece, slash, gap, Stay.CENTRE);
    }

    /**
     * Spreads a slash by an equal gap all along, and says which part stays where it is.
     *
     * @param piece the piece
     * @param slash where to slash, from edge to edge
     * @param gap the width in mm
     * @param stay which part stays
     * @return the piece and what was done
     * @throws IllegalArgumentException when the gap is not more than 0
     * @throws DraftingException as {@link #parallel(Piece, Slash, double)}
     */
    public static Reworked parallel(Piece piece, Slash slash, double gap, Stay stay) {
        requireGap(gap);
        return all(piece, List.of(new Opened(slash, gap, gap)), stay);
    }

    /**
     * Spreads a slash by one gap where it starts and another where it ends, as if hinged at a point outside the piece. Nothing is
     * made from that point: gaps that are nearly equal are as exact as equal ones, and equal ones are a parallel spread.
     *
     * <pre>{@code
     * Reworked fuller = Spread.unequal(skirt, Slash.straight("flare", Spot.on("hem", 120), Spot.on("waist", 90)), 60, 20);
     * }</pre>
     *
     * @param piece the piece
     * @param slash where to slash, from edge to edge
     * @param gap the width in mm where it starts
     * @param farGap the width in mm where it ends
     * @return the piece and what was done
     * @throws IllegalArgumentException when a gap is less than 0, or none is more
     * @throws DraftingException as {@link #hinged(Piece, Slash, double)}
     */
    public static Reworked unequal(Piece piece, Slash slash, double gap, double farGap) {
        return all(piece, List.of(new Opened(slash, gap, farGap)), Stay.CENTRE);
    }

    /**
     * Spreads any number of slashes in one move: each part moves by the sum of what opens between it and the part that stays.
     *
     * @param piece the piece
     * @param slashes the slashes with their gaps, in any order
     * @param stay which part stays
     * @return the piece and what was done
     * @throws IllegalArgumentException when there is no slash
     * @throws DraftingException when two slashes cross, or as {@link #hinged(Piece, Slash, double)}
     */
    public static Reworked all(Piece piece, List<Opened> slashes, Stay stay) {
        if (slashes.isEmpty()) {
            throw new IllegalArgumentException("There is no slash to spread.");
        }
        requireApart(piece, slashes);
        Reworked cut = new Reworked(piece, Ledger.EMPTY);
        for (Opened each : slashes) {
            Reworked next = Panels.cut(cut.piece(), each.slash());
            cut = new Reworked(next.piece(), cut.ledger().then(next.ledger()));
        }
        Map<String, Motion> motions = new TreeMap<>();
        Ledger told = Ledger.EMPTY;
        for (Opened each : slashes) {
            Slash slash = each.slash();
            motions.put(slash.name(), motion(cut.piece(), each));
            told = told.then(new Spreading(slash.name(), slash.mouth(), slash.end(), each.gap(), each.farGap()));
        }
        Reworked open = Panels.open(cut.piece(), motions, stay, asked(slashes));
        return new Reworked(open.piece(), told.then(cut.ledger()).then(open.ledger()));
    }

    private static Motion motion(Piece cut, Opened each) {
        CurvePath leg = Measured.leg(cut, each.slash().name(), Leg.BEFORE);
        double chord = leg.start().distance(leg.end());
        double difference = Math.abs(each.gap() - each.farGap());
        if (difference > 2 * chord) {
            throw new DraftingException(
                    asked(List.of(each)),
                    "a slash cannot open wider at one end than at the other by more than twice its length",
                    new Reach(Quantity.LENGTH, difference, 0, 2 * chord));
        }
        return Measured.apart(cut, each.slash().name(), each.gap(), each.farGap());
    }

    /** Slashes may start or end at one point; they may not cross. */
    private static void requireApart(Piece piece, List<Opened> slashes) {
        List<CurvePath> lines =
                slashes.stream().map(each -> line(piece, each.slash())).toList();
        for (int i = 0; i < lines.size(); i++) {
            for (int k = i + 1; k < lines.size(); k++) {
                CurvePath one = lines.get(i);
                CurvePath other = lines.get(k);
                for (Meet meet : Meets.of(one, other).points()) {
                    if (inside(one, meet.onFirst()) || inside(other, meet.onSecond())) {
                        throw new DraftingException(
                                asked(slashes),
                                String.format(
                                        java.util.Locale.ROOT,
                                        "'%s' and '%s' cross at (%.1f, %.1f)",
                                        slashes.get(i).slash().name(),
                                        slashes.get(k).slash().name(),
                                        meet.point().getX(),
                                        meet.point().getY()));
                    }
                }
            }
        }
    }

    private static boolean inside(CurvePath line, double at) {
        return at > TOUCH && at < line.length() - TOUCH;
    }

    /** Where a slash would lie. */
    private static CurvePath line(Piece piece, Slash slash) {
        return Measured.leg(Panels.cut(piece, slash).piece(), slash.name(), Leg.BEFORE);
    }

    // ------------------------------------------------------------------------------------------------ laps

    /**
     * Laps a slash: a negative spread. One side loses the cloth that would lie under the other, and the two are joined.
     *
     * <p>With {@code g1, g2 <= 0} the cloth lost is what lies between the slash and the line that the same motion brings on to it.
     * Where an edge is not square to the slash, the two lines end at different distances: the step stays in the edge, is told, and
     * is blended next. Conserved: the length of the hinge's edge, and the paper but for what was lost.
     *
     * @param piece the piece
     * @param slash where to slash
     * @param gap the overlap in mm where it starts, straight, as a negative number; 0 for a hinge there
     * @param farGap the overlap where it ends, 0 or a negative number
     * @param loses which side of the slash loses cloth, by the direction of the edge on which it starts
     * @param stay which part stays
     * @return the piece and what was done
     * @throws IllegalArgumentException when a gap is more than 0, or none is less
     * @throws DraftingException when the line that would be brought to the slash does not run from edge to edge within the losing side
     */
    public static Reworked lap(Piece piece, Slash slash, double gap, double farGap, Leg loses, Stay stay) {
        if (!(gap <= 0 && farGap <= 0 && gap + farGap < 0 && Double.isFinite(gap + farGap))) {
            throw new IllegalArgumentException(
                    "The gaps of a lap are 0 mm or less and one of them is less: " + gap + " and " + farGap + " mm.");
        }
        String asked = "Lap '" + slash.name() + "'";
        Reworked cut = Panels.cut(piece, slash);
        CurvePath line = Measured.leg(cut.piece(), slash.name(), Leg.BEFORE);
        Motion closing = Measured.apart(cut.piece(), slash.name(), gap, farGap);
        AffineTransformMatrix2D over = loses == Leg.AFTER ? closing.matrix().inverse() : closing.matrix();
        Slash second = new Slash(
                slash.name() + " lapped",
                crossing(cut.piece(), slash, line.transformed(over), true, gap == 0, loses, asked),
                crossing(cut.piece(), slash, line.transformed(over), false, farGap == 0, loses, asked),
                Optional.empty());
        Reworked twice = Panels.cut(cut.piece(), second);
        String first = loses == Leg.AFTER ? slash.name() : second.name();
        String last = loses == Leg.AFTER ? second.name() : slash.name();
        String lap = slash.name() + " lap";
        Reworked out = Panels.takeOut(twice.piece(), first, last, lap);
        Reworked shut = Panels.open(out.piece(), Map.of(lap, closing), stay, asked);
        Ledger ledger = Ledger.of(new Lapped(
                        slash.name(),
                        slash.mouth().words(),
                        slash.end().words(),
                        -gap,
                        -farGap,
                        loses,
                        steps(shut, lap)))
                .then(cut.ledger())
                .then(twice.ledger())
                .then(out.ledger())
                .then(shut.ledger());
        boolean joined = shut.piece().openings().stream()
                .noneMatch(opening -> opening.name().equals(lap));
        if (joined) {
            return new Reworked(shut.piece(), ledger);
        }
        Reworked filled = Panels.fill(shut.piece(), lap);
        return new Reworked(filled.piece(), ledger.then(filled.ledger()));
    }

    /** The longest step that a lap leaves in an edge. */
    private static double steps(Reworked shut, String lap) {
        if (shut.piece().openings().stream().noneMatch(opening -> opening.name().equals(lap))) {
            return 0;
        }
        CurvePath one = Measured.leg(shut.piece(), lap, Leg.BEFORE);
        CurvePath other = Measured.leg(shut.piece(), lap, Leg.AFTER);
        return Math.max(one.start().distance(other.start()), one.end().distance(other.end()));
    }

    /** Where the line that is brought on to a slash meets the edge on which the slash starts or ends. */
    private static Spot crossing(
            Piece cut, Slash slash, CurvePath line, boolean start, boolean hinge, Leg loses, String asked) {
        Opening opening = cut.opening(slash.name());
        if (hinge) {
            Spot spot = start ? slash.mouth() : slash.end();
            return spot instanceof Spot.On on
                    ? new Spot.On(on.border(), on.arc(), side(cut, opening, start, loses))
                    : spot;
        }
        Mouth mouth = start
                ? opening.mouth()
                : opening.farMouth()
                        .orElseThrow(() -> new DraftingException(
                                asked, "it ends at a point inside the piece, and can only be hinged there"));
        String edge = ((Border.OfEdge) mouth.border()).edge();
        Vector2D way = line.start().directionTo(line.end()).multiply(line.length() * 2);
        CurvePath longer =
                CurvePath.polyline(line.start().subtract(way), line.end().add(way));
        double near = line.length() * (start ? 2 : 3);
        return cut.panels().stream()
                .flatMap(panel -> panel.ring().stream())
                .filter(run -> run.border().equals(mouth.border()))
                .flatMap(run -> {
                    CurvePath placed = cut.place(run);
                    return Meets.of(longer, placed).points().stream().map(meet -> new double[] {
                        Math.abs(meet.onFirst() - near),
                        run.forward() ? run.from() + meet.onSecond() : run.to() - meet.onSecond()
                    });
                })
                .min((one, other) -> Double.compare(one[0], other[0]))
                .map(found -> Spot.on(edge, found[1]))
                .orElseThrow(
                        () -> new DraftingException(asked, "the side that loses has not so much of '" + edge + "'"));
    }

    /** On which side of the slash a place at its hinge lies, by the direction of the edge there. */
    private static Optional<Beside> side(Piece cut, Opening opening, boolean start, Leg loses) {
        if (start) {
            return Optional.of(loses == Leg.BEFORE ? Beside.BEFORE : Beside.AFTER);
        }
        Mouth far = opening.farMouth().orElseThrow();
        Border leg = new Border.OfLeg(opening.name(), loses);
        return cut.panels().stream()
                .filter(panel ->
                        panel.ring().stream().anyMatch(run -> run.border().equals(leg)))
                .flatMap(panel -> panel.ring().stream())
                .filter(run -> run.border().equals(far.border()))
                .flatMap(run -> run.to() == far.before()
                        ? Stream.of(Beside.BEFORE)
                        : run.from() == far.before() ? Stream.of(Beside.AFTER) : Stream.<Beside>empty())
                .findFirst();
    }

    // ------------------------------------------------------------------------------------------------ even slashes

    /**
     * Slashes from one edge to another, evenly spaced on both: {@code n} slashes part either edge into {@code n + 1} equal stretches.
     *
     * @param piece the piece
     * @param name the name of the slashes, which are numbered from 1
     * @param from the edge on which they start
     * @param to the edge on which they end
     * @param count how many, 1 or more
     * @return the slashes, in the direction of the edge on which they start
     * @throws IllegalArgumentException when the count is less than 1 or an edge is unknown
     */
    public static List<Slash> even(Piece piece, String name, String from, String to, int count) {
        return between(piece, name, from, 0, piece.edge(from).length(), to, count);
    }

    /**
     * Slashes from a stretch of one edge to the stretch opposite on another, evenly spaced on both.
     *
     * @param piece the piece
     * @param name the name of the slashes, which are numbered from 1
     * @param from the edge on which they start
     * @param start the base arc in mm where the stretch begins
     * @param stop the base arc where it ends
     * @param to the edge on which they end, in the same shares of its length
     * @param count how many, 1 or more
     * @return the slashes, in the direction of the edge on which they start
     * @throws IllegalArgumentException when the count is less than 1 or an edge is unknown
     */
    public static List<Slash> between(
            Piece piece, String name, String from, double start, double stop, String to, int count) {
        if (count < 1) {
            throw new IllegalArgumentException("There is at least 1 slash: " + count + ".");
        }
        double length = piece.edge(from).length();
        double end = piece.edge(to).length();
        boolean opposite = forward(piece, from) == forward(piece, to);
        List<Slash> slashes = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            double arc = start + i * (stop - start) / (count + 1);
            double share = arc / length;
            slashes.add(Slash.straight(
                    name + " " + i, Spot.on(from, arc), Spot.on(to, (opposite ? 1 - share : share) * end)));
        }
        return slashes;
    }

    private static boolean forward(Piece piece, String edge) {
        return Paper.sides(piece).stream()
                .filter(side -> side.edge().equals(edge))
                .anyMatch(PaperSide::forward);
    }

    // ------------------------------------------------------------------------------------------------ findings

    /**
     * What makes a spread poor.
     *
     * @param corner how near in mm a hinge may lie to a corner, where the allowance could not hinge
     * @param angle the widest angle in radians at one slash; more wants more slashes
     */
    public record Limits(double corner, double angle) {

        /** A hinge 10 mm from a corner, 15 degrees at a slash (common practice). */
        public static final Limits DEFAULT = new Limits(10, Math.toRadians(15));

        /** Checks the limits. */
        public Limits {
            if (!(corner >= 0 && Double.isFinite(corner) && angle > 0 && angle <= Math.PI)) {
                throw new IllegalArgumentException("Limits are 0 mm or more from a corner and an angle up to 180°: "
                        + corner + " mm, " + angle + " rad.");
            }
        }
    }

    /**
     * What is poor in the spreads of a piece: hinges too near a corner, too wide an angle at one slash.
     *
     * @param piece the piece
     * @param limits how near and how wide
     * @return the findings, slash by slash
     */
    public static List<Finding> findings(Piece piece, Limits limits) {
        return piece.openings().stream()
                .filter(opening -> opening.farMouth().isPresent())
                .flatMap(opening -> Stream.of(
                                corner(piece, opening, opening.mouth(), true, limits),
                                corner(piece, opening, opening.farMouth().orElseThrow(), false, limits),
                                wide(piece, opening, limits))
                        .flatMap(Optional::stream))
                .toList();
    }

    private static Optional<Finding> corner(Piece piece, Opening opening, Mouth mouth, boolean start, Limits limits) {
        CurvePath before = Measured.leg(piece, opening.name(), Leg.BEFORE);
        CurvePath after = Measured.leg(piece, opening.name(), Leg.AFTER);
        double width =
                start ? before.start().distance(after.start()) : before.end().distance(after.end());
        if (width > TOUCH || !(mouth.border() instanceof Border.OfEdge edge)) {
            return Optional.empty();
        }
        double length = piece.edge(edge.edge()).length();
        double distance = Math.min(mouth.before(), length - mouth.before());
        return distance < limits.corner()
                ? Optional.of(new Finding(
                        Finding.Kind.HINGE_NEAR_CORNER,
                        "'" + opening.name() + "' of '" + piece.name() + "' on '" + edge.edge() + "'",
                        Quantity.LENGTH,
                        distance,
                        limits.corner(),
                        0))
                : Optional.empty();
    }

    private static Optional<Finding> wide(Piece piece, Opening opening, Limits limits) {
        double angle = Math.abs(Measured.angle(piece, opening.name()));
        return angle > limits.angle() && opening.mouth().use() instanceof Use.Left
                ? Optional.of(new Finding(
                        Finding.Kind.SLASH_TOO_WIDE,
                        "'" + opening.name() + "' of '" + piece.name() + "'",
                        Quantity.ANGLE,
                        angle,
                        limits.angle(),
                        0))
                : Optional.empty();
    }

    private static void requireGap(double gap) {
        Asked.length("A gap", gap);
    }

    private static String asked(List<Opened> slashes) {
        return slashes.stream()
                .map(each -> "'" + each.slash().name() + "'")
                .collect(java.util.stream.Collectors.joining(", ", "Spread ", ""));
    }
}
