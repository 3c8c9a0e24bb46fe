package org.draftingmaths.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.check.Supposition.Figure;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Inside;
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

/** Darts of one outline that nobody declared, and the piece with them laid in. */
final class SupposedDarts {

    private static final double BEND = Math.toRadians(1);
    private static final double WIDEST = Math.toRadians(45);
    private static final double WIDEST_CERTAIN = Math.toRadians(25);
    private static final double SMOOTH = Math.toRadians(30);
    private static final double SMOOTH_CERTAIN = Math.toRadians(15);
    private static final double SHORTEST_LEG = 20;
    private static final double LONGEST_LEG = 600;
    private static final double WIDEST_MOUTH = 120;
    private static final double LEG_RATIO = 1.25;
    private static final double BOW = 0.02;
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
    record Result(Piece piece, List<String> darts, List<Supposition> suppositions, List<Finding> findings) {}

    static Result of(Piece piece, double tolerance) {
        SupposedDarts darts = new SupposedDarts(piece, tolerance);
        if (!piece.openings().isEmpty()) {
            return new Result(piece, List.of(), List.of(), List.of());
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
    }

    private Strand strand(int i) {
        return strands.get(Math.floorMod(i, strands.size()));
    }

    /** By how much the outline turns after a strand, anticlockwise. */
    private double turn(int i) {
        return Side.turn(strand(i).path().endTangent(), strand(i + 1).path().startTangent());
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
                && Math.abs(Laying.bow(in)) <= BOW * before
                && Math.abs(Laying.bow(out)) <= BOW * after;
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
        boolean peak = turn(i - 1) < -BEND && turn(i) > BEND && turn(i + 1) < -BEND && width <= WIDEST_MOUTH;
        boolean even = Math.max(in.length(), out.length()) <= 1.5 * Math.min(in.length(), out.length());
        if (!peak || !even || !inReach(i, in.length(), out.length())) {
            return Optional.empty();
        }
        double miss = halvesApart(in, out);
        double one = reach(in.start(), out.end(), legAfter(i - 1));
        double other = reach(out.end(), in.start(), legAfter(i + 1));
        boolean agree = Math.abs(one - other) <= AGREE * Math.max(one, other);
        return miss <= tolerance && agree
                ? dart(i, (one + other) / 2, Sureness.LIKELY, miss)
                : untrue(i, smoothReach(i, width), miss);
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

    /** A peak on an edge that a dart would make smooth, but not of the shape that folds on to it. */
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
        if (off > tolerance) {
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
        return org.draftingmaths.curve.Meets.of(layer, line).points().stream()
                .min(java.util.Comparator.comparingDouble(org.draftingmaths.curve.Meet::onFirst))
                .map(org.draftingmaths.curve.Meet::point);
    }

    // ------------------------------------------------------------------------------------------------ laid in

    private Result result() {
        List<Found> laid = found.stream()
                .filter(dart -> dart.sureness() != Sureness.POSSIBLE)
                .toList();
        Optional<Piece> made = laid.isEmpty() ? Optional.empty() : laidIn(laid);
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
        return new Result(made.orElse(piece), names, List.copyOf(suppositions), List.copyOf(findings));
    }

    private String name(int number) {
        return "dart " + (number + 1);
    }

    /** The piece drawn anew with the darts in its edges; nothing when they cannot all be darts. */
    private Optional<Piece> laidIn(List<Found> darts) {
        boolean onwards = Paper.sides(piece).stream().allMatch(PaperSide::forward);
        Set<Integer> within = new HashSet<>();
        for (Found dart : darts) {
            within.addAll(List.of(index(dart.at()), index(dart.at() + 1), index(dart.at() + 2)));
        }
        int start = 0;
        while (start < strands.size() && (within.contains(start) || !begins(start))) {
            start++;
        }
        if (!onwards || start == strands.size()) {
            return Optional.empty();
        }
        try {
            Piece drawn = drawn(darts, start).piece();
            for (int i = 0; i < darts.size(); i++) {
                Use.Dart use = (Use.Dart) drawn.opening(name(i)).mouth().use();
                drawn = drawn.using(name(i), use.pressedOpen());
            }
            return Optional.of(drawn);
        } catch (DraftingException | IllegalArgumentException noDarts) {
            return Optional.empty();
        }
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
