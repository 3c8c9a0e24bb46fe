package org.draftingmaths.suppose;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.check.Side;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Inside;
import org.draftingmaths.curve.Meet;
import org.draftingmaths.curve.Meets;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Edge;
import org.draftingmaths.piece.Isometry;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Notch;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.PaperSide;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Use;
import org.draftingmaths.suppose.Supposition.Figure;

/** Darts of one outline that nobody declared, and the piece with them laid in. */
final class SupposedDarts {

    private static final double BEND = Math.toRadians(1);

    private static final double WIDEST = Math.toRadians(45);
    private static final double WIDEST_CERTAIN = Math.toRadians(25);
    private static final double SMOOTH = Math.toRadians(30);
    private static final double SMOOTH_CERTAIN = Math.toRadians(15);
    private static final double SHORTEST_LEG = 20;
    private static final double LONGEST_LEG = 600;
    private static final double WIDEST_MOUTH = 150;
    private static final double LEG_RATIO = 1.25;
    private static final double BOW = 0.02;
    private static final double STRAIGHT = 0.1;
    private static final double AGREE = 0.02;

    /** A stretch of the outline without a corner. */
    private record Strand(String edge, CurvePath path) {}

    /**
     * A dart of which two strands are the legs or the two halves of its end.
     *
     * @param at the first of the two
     * @param tip its point
     */
    private record Found(int at, Vector2D tip, Supposition.Kind kind, Sureness sureness, List<Figure> figures) {}

    private final Piece piece;
    private final double tolerance;
    private final List<Strand> strands = new ArrayList<>();
    private final List<Found> found = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private final List<Supposition> suppositions = new ArrayList<>();

    private SupposedDarts(Piece piece, double tolerance) {
        this.piece = piece;
        this.tolerance = tolerance;
    }

    /** The piece with its supposed darts, what was supposed, and what is wrong with their ends. */
    record Result(
            Piece piece,
            List<String> darts,
            List<String> fromEnds,
            List<Supposition> suppositions,
            List<Finding> findings) {}

    static Result of(Piece piece, double tolerance) {
        SupposedDarts darts = new SupposedDarts(piece, tolerance);
        if (!piece.openings().isEmpty()) {
            return new Result(piece, List.of(), List.of(), List.of(), List.of());
        }
        darts.strands();
        for (int i = 0; i < darts.strands.size(); i++) {
            darts.look(i);
        }
        return darts.result();
    }

    // ------------------------------------------------------------------------------------------------ strands

    private void strands() {
        for (PaperSide side : Paper.sides(piece)) {
            int from = 0;
            int n = side.path().curves().size();
            for (int to = 1; to <= n; to++) {
                boolean ends = to == n
                        || Math.abs(Side.turn(
                                        side.path().curves().get(to - 1).tangent(1),
                                        side.path().curves().get(to).tangent(0)))
                                > BEND;
                if (ends) {
                    strands.add(new Strand(
                            side.edge(), new CurvePath(side.path().curves().subList(from, to))));
                    from = to;
                }
            }
        }
        for (int i = 0; i < strands.size(); i++) {
            partSmoothEnd(i);
        }
    }

    /**
     * Where one half of a dart's folded end runs on into its edge without a corner, only the other half is to be seen, between a peak
     * and a corner the other way. The edge is then parted as far behind the peak as that half is long. The same outline may be that of
     * a dart pressed to either side, with the one corner or the other for its peak; the outer one is then taken, so that left and right are
     * read alike.
     */
    private void partSmoothEnd(int i) {
        double half = strand(i).path().length();
        boolean alone = strands.size() >= 4
                && half <= WIDEST_MOUTH
                && peak(i, i - 1)
                && peak(i - 1, i)
                && Math.min(strand(i - 1).path().length(), strand(i + 1).path().length()) > half + SHORTEST_LEG;
        if (alone) {
            double onwards = closedOver(i, half, true);
            double back = closedOver(i, half, false);
            boolean behind = Math.max(onwards, back) <= SMOOTH_CERTAIN ? turn(i) > 0 : onwards <= back;
            if (Math.min(onwards, back) <= SMOOTH_CERTAIN) {
                part(behind ? i + 1 : i - 1, half, behind);
            }
        }
    }

    /** The corner that a dart leaves whose end is a strand and as much of the strand behind it, or before it; any where they do not fold. */
    private double closedOver(int i, double half, boolean onwards) {
        CurvePath own = strand(i).path();
        CurvePath next = onwards ? strand(i + 1).path() : strand(i - 1).path().reversed();
        CurvePath hidden = next.between(0, half);
        CurvePath seen = onwards ? own : own.reversed();
        double apart = onwards ? halvesApart(seen, hidden) : halvesApart(hidden.reversed(), seen.reversed());
        if (apart > tolerance) {
            return Double.POSITIVE_INFINITY;
        }
        Vector2D corner = seen.start();
        Vector2D other = hidden.end();
        double leg = reach(corner, other, legAfter(onwards ? i - 1 : i));
        Vector2D arriving = onwards
                ? strand(i - 1).path().endTangent()
                : hidden.endTangent().negate();
        Vector2D leaving = onwards ? hidden.endTangent() : strand(i + 1).path().startTangent();
        return closed(corner.distance(other), leg, arriving, leaving);
    }

    private void part(int strand, double half, boolean atStart) {
        int at = index(strand);
        Strand whole = strands.get(at);
        double length = whole.path().length();
        double arc = atStart ? half : length - half;
        strands.set(at, new Strand(whole.edge(), whole.path().between(0, arc)));
        strands.add(at + 1, new Strand(whole.edge(), whole.path().between(arc, length)));
    }

    private Strand strand(int i) {
        return strands.get(Math.floorMod(i, strands.size()));
    }

    /** By how much the outline turns after a strand, anticlockwise. */
    private double turn(int i) {
        return Side.turn(strand(i).path().endTangent(), strand(i + 1).path().startTangent());
    }

    /** Whether the outline has a peak after a strand, or a dip, and bends the other way at a corner beside it. */
    private boolean peak(int i, int beside) {
        double way = Math.signum(turn(i));
        return Math.abs(turn(i)) > BEND && Math.abs(turn(i)) < Math.PI / 2 && way * turn(beside) < -BEND;
    }

    private void look(int i) {
        boolean free = strands.size() >= 5
                && found.stream()
                        .allMatch(dart -> Math.floorMod(i - dart.at(), strands.size()) > 1
                                && Math.floorMod(dart.at() - i, strands.size()) > 1);
        if (free) {
            Optional<Found> dart = wedge(i);
            dart.or(() -> end(i)).ifPresent(found::add);
        }
    }

    // ------------------------------------------------------------------------------------------------ wedges

    private Optional<Found> wedge(int i) {
        CurvePath in = strand(i).path();
        CurvePath out = strand(i + 1).path();
        Vector2D tip = in.end();
        double angle = Side.turn(tip.vectorTo(out.end()), tip.vectorTo(in.start()));
        double before = in.start().distance(tip);
        double after = out.end().distance(tip);
        boolean wedge = turn(i) < -Math.PI / 2
                && angle < 0
                && -angle <= WIDEST
                && Math.min(before, after) >= SHORTEST_LEG
                && Math.max(before, after) <= LEG_RATIO * Math.min(before, after)
                && Math.abs(Side.bow(in)) <= BOW * before
                && Math.abs(Side.bow(out)) <= BOW * after;
        if (!wedge) {
            return Optional.empty();
        }
        double smooth = Math.abs(Side.turn(
                strand(i - 1).path().endTangent(),
                Laying.turned(strand(i + 2).path().startTangent(), angle)));
        if (smooth > SMOOTH) {
            return Optional.empty();
        }
        boolean even = Math.abs(before - after) <= tolerance;
        boolean sure = even && -angle <= WIDEST_CERTAIN && smooth <= SMOOTH_CERTAIN;
        Sureness sureness = onAxis(i) ? Sureness.POSSIBLE : sure ? Sureness.CERTAIN : Sureness.LIKELY;
        return Optional.of(new Found(
                i,
                tip,
                Supposition.Kind.DART,
                sureness,
                List.of(
                        new Figure("length of its legs", Quantity.LENGTH, before),
                        new Figure("length of the other", Quantity.LENGTH, after),
                        new Figure("angle", Quantity.ANGLE, -angle),
                        new Figure("corner with it closed", Quantity.ANGLE, smooth))));
    }

    /** Whether the outline is the same either way from the point: it may then be a neck opening or a slit. */
    private boolean onAxis(int i) {
        for (int k = 0; k <= strands.size() / 2; k++) {
            double one = strand(i - k).path().length();
            double other = strand(i + 1 + k).path().length();
            if (Math.abs(one - other) > 2 * tolerance) {
                return false;
            }
        }
        return true;
    }

    // ------------------------------------------------------------------------------------------------ ends

    /** A peak whose two halves would lie on one another and on the edge beside them when the dart is folded. */
    private Optional<Found> end(int i) {
        CurvePath in = strand(i).path();
        CurvePath out = strand(i + 1).path();
        double width = in.start().distance(out.end());
        boolean peak = peak(i, i - 1) || peak(i, i + 1);
        boolean even = Math.max(in.length(), out.length()) <= 1.5 * Math.min(in.length(), out.length());
        if (!peak || !even || width > WIDEST_MOUTH || !inReach(i, in.length(), out.length())) {
            return Optional.empty();
        }
        double miss = halvesApart(in, out);
        OptionalDouble leg = miss <= tolerance ? leg(i) : OptionalDouble.empty();
        return leg.isPresent()
                ? dart(i, leg.getAsDouble(), Sureness.LIKELY, miss)
                : untrue(i, smoothReach(i, width), miss);
    }

    /**
     * How long the legs are of a dart whose folded end stands there. Folded, the end lies on the edge beside one of its legs, so the leg
     * parts the angle of the cloth at that corner in two. At the other corner it does so where the edge meets both legs alike; where
     * the edge runs on smoothly over the closed dart the end runs on into the edge there.
     */
    private OptionalDouble leg(int i) {
        Vector2D from = strand(i).path().start();
        Vector2D to = strand(i + 1).path().end();
        double one = peak(i, i - 1) ? reach(from, to, legAfter(i - 1)) : Double.POSITIVE_INFINITY;
        double other = peak(i, i + 1) ? reach(to, from, legAfter(i + 1)) : Double.POSITIVE_INFINITY;
        if (Double.isFinite(one + other) && Math.abs(one - other) <= AGREE * Math.max(one, other)) {
            return OptionalDouble.of((one + other) / 2);
        }
        return DoubleStream.of(one, other)
                .filter(leg -> closed(i, leg) <= SMOOTH_CERTAIN)
                .boxed()
                .min(Comparator.comparingDouble(leg -> closed(i, leg)))
                .map(OptionalDouble::of)
                .orElseGet(OptionalDouble::empty);
    }

    private double closed(int i, double leg) {
        return closed(
                strand(i).path().start().distance(strand(i + 1).path().end()),
                leg,
                strand(i - 1).path().endTangent(),
                strand(i + 2).path().startTangent());
    }

    /** The corner of an edge over a dart with such legs when it is closed; legs that no dart has leave any corner. */
    private static double closed(double width, double leg, Vector2D arriving, Vector2D leaving) {
        if (leg < Math.max(SHORTEST_LEG, width / 2) || leg > LONGEST_LEG) {
            return Double.POSITIVE_INFINITY;
        }
        double angle = 2 * Math.asin(width / 2 / leg);
        return Math.abs(Side.turn(arriving, Laying.turned(leaving, -angle)));
    }

    private boolean inReach(int i, double in, double out) {
        return in <= strand(i - 1).path().length() + tolerance
                || out <= strand(i + 2).path().length() + tolerance;
    }

    /** The leg into the cloth that leaves a corner: it parts the angle of the cloth there in two, so that the fold lies on the edge. */
    private Vector2D legAfter(int i) {
        return Laying.turned(strand(i + 1).path().startTangent(), (Math.PI - turn(i)) / 2);
    }

    /** How far along a leg the line square over the middle of the mouth is met. */
    private static double reach(Vector2D end, Vector2D other, Vector2D leg) {
        double along = leg.dot(end.directionTo(other));
        return along <= 0 ? Double.POSITIVE_INFINITY : end.distance(other) / 2 / along;
    }

    /** The leg that makes the edge smooth when closed: {@code width / (2 sin(turn / 2))}. */
    private double smoothReach(int i, double width) {
        double turn = Side.turn(
                strand(i - 1).path().endTangent(), strand(i + 2).path().startTangent());
        return turn < Math.toRadians(3) || turn > WIDEST ? Double.POSITIVE_INFINITY : width / 2 / Math.sin(turn / 2);
    }

    /** How far the halves of the end lie apart at most when one is folded on to the other along the line to the dart's point. */
    private static double halvesApart(CurvePath in, CurvePath out) {
        Vector2D middle = in.start().lerp(out.end(), 0.5);
        Vector2D square = Laying.turned(in.start().directionTo(out.end()), Math.PI / 2);
        AffineTransformMatrix2D fold = Isometry.reflection(middle, square);
        List<Vector2D> one = Laying.stations(in, in.length());
        CurvePath turned = out.reversed().transformed(fold);
        List<Vector2D> other = Laying.stations(turned, turned.length());
        double apart = 0;
        for (int k = 0; k < one.size(); k++) {
            apart = Math.max(apart, one.get(k).distance(other.get(k)));
        }
        return apart;
    }

    private Optional<Found> dart(int i, double leg, Sureness sureness, double miss) {
        Vector2D from = strand(i).path().start();
        Vector2D to = strand(i + 1).path().end();
        double half = from.distance(to) / 2;
        if (!(leg >= SHORTEST_LEG && leg <= LONGEST_LEG && 2 * Math.asin(Math.min(1, half / leg)) <= WIDEST)) {
            return Optional.empty();
        }
        Vector2D inwards = Laying.turned(from.directionTo(to), Math.PI / 2);
        Vector2D tip = from.lerp(to, 0.5).add(inwards.multiply(Math.sqrt(leg * leg - half * half)));
        if (Inside.of(Paper.outline(piece), tip, CurvePath.JOINT) != Inside.Where.INSIDE) {
            return Optional.empty();
        }
        return Optional.of(new Found(
                i,
                tip,
                Supposition.Kind.DART_END,
                sureness,
                List.of(
                        new Figure("length of its legs", Quantity.LENGTH, leg),
                        new Figure("angle", Quantity.ANGLE, 2 * Math.asin(half / leg)),
                        new Figure("halves apart when folded", Quantity.LENGTH, miss))));
    }

    /**
     * A peak on an edge that a dart would make smooth, but not of the shape that folds on to it. Where its halves fold on to one another and
     * the edge is curved, it cannot be told from the end of a dart that leaves a corner, and nothing is said.
     */
    private Optional<Found> untrue(int i, double leg, double miss) {
        Optional<Found> dart = dart(i, leg, Sureness.POSSIBLE, miss);
        if (dart.isEmpty()) {
            return dart;
        }
        Vector2D tip = dart.get().tip();
        Vector2D peak = strand(i).path().end();
        double off = Math.min(
                foldEnd(
                                strand(i - 1).path().reversed(),
                                tip,
                                strand(i).path().start(),
                                strand(i + 1).path().end())
                        .map(peak::distance)
                        .orElse(Double.POSITIVE_INFINITY),
                foldEnd(
                                strand(i + 2).path(),
                                tip,
                                strand(i + 1).path().end(),
                                strand(i).path().start())
                        .map(peak::distance)
                        .orElse(Double.POSITIVE_INFINITY));
        if (off > WIDEST_MOUTH / 4) {
            return Optional.empty();
        }
        boolean told = miss > tolerance
                || (Math.abs(Side.bow(strand(i - 1).path())) <= STRAIGHT
                        && Math.abs(Side.bow(strand(i + 2).path())) <= STRAIGHT);
        if (told && off > tolerance) {
            findings.add(new Finding(
                    Finding.Kind.DART_END_UNTRUE,
                    "'" + strand(i).edge() + "' of '" + piece.name() + "'",
                    Quantity.LENGTH,
                    off,
                    0,
                    tolerance,
                    "Fold the dart in paper and cut the edge anew."));
        }
        return dart;
    }

    /** Where the edge beside a mouth, folded over in its leg, meets the line through the middle of the mouth. */
    private static Optional<Vector2D> foldEnd(CurvePath beside, Vector2D tip, Vector2D leg, Vector2D other) {
        Vector2D middle = leg.lerp(other, 0.5);
        Vector2D way = tip.directionTo(middle);
        AffineTransformMatrix2D over = Isometry.reflection(tip, tip.directionTo(leg));
        CurvePath layer = beside.transformed(over);
        CurvePath line = CurvePath.polyline(tip, middle.add(way.multiply(WIDEST_MOUTH)));
        return Meets.of(layer, line).points().stream()
                .min(Comparator.comparingDouble(Meet::onFirst))
                .map(Meet::point);
    }

    // ------------------------------------------------------------------------------------------------ laid in

    private Result result() {
        boolean clockwise = Paper.sides(piece).stream().noneMatch(PaperSide::forward);
        boolean onwards = Paper.sides(piece).stream().allMatch(PaperSide::forward);
        if (clockwise) {
            turnRound();
        }
        List<Found> laid = found.stream()
                .filter(dart -> dart.sureness() != Sureness.POSSIBLE)
                .toList();
        Optional<Piece> made = laid.isEmpty() || !(onwards || clockwise) ? Optional.empty() : laidIn(laid);
        for (Found dart : found) {
            boolean in = made.isPresent() && laid.contains(dart);
            String place = "'" + strand(dart.at() - 1).edge() + "' of '" + piece.name() + "'";
            suppositions.add(new Supposition(
                    dart.kind(),
                    dart.sureness(),
                    List.of(in ? "'" + name(laid.indexOf(dart)) + "' in " + place : "what stands in " + place),
                    dart.figures()));
        }
        List<String> names = new ArrayList<>();
        for (int i = 0; made.isPresent() && i < laid.size(); i++) {
            names.add(name(i));
        }
        List<String> fromEnds = names.stream()
                .filter(name -> laid.get(names.indexOf(name)).kind() == Supposition.Kind.DART_END)
                .toList();
        return new Result(made.orElse(piece), names, fromEnds, List.copyOf(suppositions), List.copyOf(findings));
    }

    /** Drawn clockwise, it is drawn anew clockwise, so that its edges keep their directions. */
    private void turnRound() {
        List<Strand> turned = new ArrayList<>();
        strands.forEach(
                strand -> turned.add(0, new Strand(strand.edge(), strand.path().reversed())));
        List<Found> darts = found.stream()
                .map(dart -> new Found(
                        Math.floorMod(strands.size() - 2 - dart.at(), strands.size()),
                        dart.tip(),
                        dart.kind(),
                        dart.sureness(),
                        dart.figures()))
                .toList();
        strands.clear();
        strands.addAll(turned);
        found.clear();
        found.addAll(darts);
    }

    private String name(int number) {
        return "dart " + (number + 1);
    }

    /** The piece drawn anew with the darts in its edges; nothing when they cannot all be darts. */
    private Optional<Piece> laidIn(List<Found> darts) {
        Set<Integer> within = new HashSet<>();
        for (Found dart : darts) {
            within.addAll(List.of(index(dart.at()), index(dart.at() + 1), index(dart.at() + 2)));
        }
        int start = 0;
        while (start < strands.size() && (within.contains(start) || !begins(start))) {
            start++;
        }
        if (start == strands.size() || isTaken(darts.size())) {
            return Optional.empty();
        }
        try {
            Piece drawn = drawn(darts, start).piece();
            for (int i = 0; i < darts.size(); i++) {
                Use.Dart use = (Use.Dart) drawn.opening(name(i)).mouth().use();
                drawn = drawn.using(name(i), use.pressedOpen());
            }
            return Optional.of(drawn);
        } catch (DraftingException noDarts) {
            return Optional.empty();
        }
    }

    /** Whether one of the names to be given is that of a double-pointed dart. */
    private boolean isTaken(int darts) {
        return piece.insideDarts().stream()
                .anyMatch(dart -> IntStream.range(0, darts).mapToObj(this::name).anyMatch(dart.name()::equals));
    }

    private int index(int strand) {
        return Math.floorMod(strand, strands.size());
    }

    private boolean begins(int i) {
        return !strand(i - 1).edge().equals(strand(i).edge());
    }

    private Drawing drawn(List<Found> darts, int start) {
        Vector2D first = strand(start).path().start();
        Drawing drawing = Drawing.of(piece.name()).from(first.getX(), first.getY());
        List<Notch> notches = new ArrayList<>();
        String edge = "";
        double arc = 0;
        double ownArc = 0;
        boolean joined = false;
        for (int k = 0; k < strands.size(); k++) {
            int i = index(start + k);
            ownArc = begins(i) ? 0 : ownArc;
            Optional<Found> dart =
                    darts.stream().filter(each -> index(each.at()) == i).findFirst();
            if (dart.isPresent()) {
                Vector2D to = strand(i + 1).path().end();
                Vector2D tip = dart.get().tip();
                drawing = drawing.dart(
                        name(darts.indexOf(dart.get())), tip.getX(), tip.getY(), to.getX(), to.getY(), 0, Leg.BEFORE);
                ownArc = (begins(i + 1) ? 0 : ownArc + strand(i).path().length())
                        + strand(i + 1).path().length();
                joined = true;
                k++;
                continue;
            }
            if (begins(i) && !joined) {
                Edge own = piece.edge(strand(i).edge());
                drawing = drawing.edge(own.name(), own.role(), own.allowance());
                edge = own.name();
                arc = 0;
            }
            joined = false;
            CurvePath path = strand(i).path();
            drawing = drawing.along(path);
            for (Notch notch : piece.notches()) {
                if (notch.edge().equals(strand(i).edge())
                        && notch.arc() >= ownArc
                        && notch.arc() <= ownArc + path.length()) {
                    Notch moved = new Notch(edge, arc + notch.arc() - ownArc, notch.beside());
                    if (!notches.contains(moved)) {
                        notches.add(moved);
                    }
                }
            }
            arc += path.length();
            ownArc += path.length();
        }
        return new Drawing(
                drawing.name(),
                drawing.start(),
                drawing.items(),
                piece.levels(),
                piece.insideDarts(),
                notches,
                piece.grain());
    }
}
