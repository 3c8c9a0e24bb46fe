package org.draftingmaths.finish;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Curve;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Fit;
import org.draftingmaths.curve.Meet;
import org.draftingmaths.curve.Meets;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Entry;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.piece.Edge;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Redraw;
import org.draftingmaths.piece.Regrain;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Role;
import org.draftingmaths.unit.Steps;

/** Pieces cut on the bias: grain, thread angles, and a model of how they will hang. */
public final class Bias {

    /** Said of every piece on the bias. */
    private static final Caution SINGLE_LAYER = new Caution(
            "Cut it in a single layer, the paper whole and its name up: a fold along the bias creeps, and of a pair cut from doubled cloth each would lie on"
                    + " another bias, and the two hang differently. Let it hang for a day before the hem is levelled from the floor.");

    /** Said of whatever the model tells. */
    private static final Caution MODEL = new Caution(
            "This is a model: threads that keep their lengths and turn alike everywhere. It makes a forecast, and the paper is unchanged by it."
                    + " Only a toile of the same cloth, hung for a day, tells.");

    /** A hanging line whose threads close by less than this share tells nothing. */
    private static final double NO_BIAS = 1e-6;

    /** Into how many parts a curve is cut to sum what its directions become. */
    private static final int PARTS = 16;

    private Bias() {}

    // ------------------------------------------------------------------------------------------------ grain

    /**
     * Puts a piece on the true bias: its grain line turns by 45°, its outline does not change.
     *
     * <p>A whole front lies on one bias. Two halves with a seam between them may lie on one each: put the one half on {@link BiasWay#LEFT} and
     * mirror it, and its mirror image is on {@link BiasWay#RIGHT}.
     *
     * @param piece the piece, its grain line along the warp
     * @param way which bias
     * @return the piece with its new grain, and cautions in the ledger; undone by {@code Panels.undo}
     * @throws DraftingException when the piece is cut on a fold, because a fold along the bias creeps and cannot be laid true, or has no grain line
     */
    public static Reworked put(Piece piece, BiasWay way) {
        for (Edge edge : piece.edges()) {
            if (edge.role() == Role.FOLD) {
                throw new DraftingException(
                        "Put '" + piece.name() + "' on the bias",
                        "'" + edge.name()
                                + "' is a fold, and a fold along the bias creeps and cannot be laid true; open the piece out first");
            }
        }
        Reworked turned = Regrain.turned(piece, way.angle());
        return new Reworked(turned.piece(), turned.ledger().then(SINGLE_LAYER));
    }

    // ------------------------------------------------------------------------------------------------ thread angles

    /**
     * The angle between an edge and the warp at one place: 0 along the warp, 90° along the weft, 45° on the true bias.
     *
     * @param arc where, as a length in mm along the edge on paper
     * @param toWarp the angle in radians, 0 to less than pi, anticlockwise from the warp
     */
    public record ThreadAngle(double arc, double toWarp) {

        /**
         * How far the edge is off the nearer thread.
         *
         * @return the angle in radians, 0 to pi/4: pi/4 on the true bias, where it gives most
         */
        public double offThread() {
            double folded = toWarp % (Math.PI / 2);
            return Math.min(folded, Math.PI / 2 - folded);
        }
    }

    /**
     * The thread angles of an edge along its length, as it is drawn on paper.
     *
     * @param piece the piece
     * @param edge the name of the edge
     * @param places at how many places, evenly along it, its ends among them: 2 or more
     * @return the angles, in the edge's own direction
     * @throws IllegalArgumentException when there are fewer than two places
     * @throws DraftingException when no grain line is drawn
     */
    public static List<ThreadAngle> threadAngles(Piece piece, String edge, int places) {
        if (places < 2) {
            throw new IllegalArgumentException("Thread angles are told at 2 places or more: " + places + ".");
        }
        Vector2D warp = warp(piece);
        CurvePath line = Paper.edge(piece, edge);
        double length = line.length();
        return IntStream.range(0, places)
                .mapToObj(i -> {
                    double arc = length * i / (places - 1);
                    Vector2D way = i == places - 1 ? line.endTangent() : line.tangentAt(arc);
                    return new ThreadAngle(arc, toWarp(warp, way));
                })
                .toList();
    }

    private static Vector2D warp(Piece piece) {
        return piece.grain()
                .orElseThrow(() -> new DraftingException(
                        "Tell the threads of '" + piece.name() + "'", "no grain line is drawn on it; draw one first"))
                .direction();
    }

    private static double toWarp(Vector2D warp, Vector2D way) {
        double angle = Math.atan2(warp.signedArea(way), warp.dot(way));
        double turned = angle < 0 ? angle + Math.PI : angle;
        return turned >= Math.PI ? 0 : turned;
    }

    // ------------------------------------------------------------------------------------------------ hanging

    /**
     * What an edge becomes when the piece hangs, by the model.
     *
     * @param edge the name of the edge
     * @param drawn its length in mm as it is drawn, and cut
     * @param hung what it becomes if it is cut so
     * @param cut what it must be cut, so that the whole piece hangs to the shape drawn
     */
    public record HungEdge(String edge, double drawn, double hung, double cut) implements Entry {

        /**
         * What is to be added to the pattern along this edge.
         *
         * @return cut less drawn, in mm: negative where the edge grows and is to be shortened, positive where it shrinks
         */
        public double correction() {
            return cut - drawn;
        }

        @Override
        public String sentence(Steps steps) {
            return String.format(
                    Locale.ROOT,
                    "By the model '%s', cut as drawn, %s, hangs to %s; to hang as drawn it would have to be cut %s, which is %.1f mm %s.",
                    edge,
                    Quantity.LENGTH.print(drawn, steps),
                    Quantity.LENGTH.print(hung, steps),
                    Quantity.LENGTH.print(cut, steps),
                    Math.abs(correction()),
                    correction() < 0 ? "shorter" : "longer");
        }
    }

    /**
     * A piece as the model says it hangs.
     *
     * @param edges edge by edge
     * @param lengthwise what a length in the direction of hanging becomes, as a multiple
     * @param acrossLine what the line drawn square to it becomes
     * @param widthSquare what the width square across it becomes, as it hangs; the same on the true bias only
     * @param ledger the test, the edges, and that it is a model
     */
    public record Hanging(
            List<HungEdge> edges, double lengthwise, double acrossLine, double widthSquare, Ledger ledger) {
        /** Copies the list. */
        public Hanging {
            edges = List.copyOf(edges);
        }

        /**
         * One edge.
         *
         * @param name its name
         * @return what becomes of it
         */
        public HungEdge edge(String name) {
            return edges.stream()
                    .filter(edge -> edge.edge().equals(name))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException("No edge named '" + name
                            + "' hangs here; there are "
                            + String.join(
                                    ", ", edges.stream().map(HungEdge::edge).toList()) + "."));
        }
    }

    /**
     * Corrections of length and width edge by edge, by the {@linkplain Shear model}: every edge is summed by its own thread angles, never by one
     * share for all. Edges along the threads keep their lengths; the piece that hangs to the shape drawn has other directions, though, so that
     * their length to be cut differs by a little.
     *
     * @param piece the piece with its grain
     * @param test a test of the very cloth
     * @param down the direction in which the piece hangs
     * @return what becomes of it
     * @throws DraftingException when the piece hangs along its threads, where the model says nothing
     */
    public static Hanging hang(Piece piece, StretchTest test, Vector2D down) {
        Shear shear = Shear.of(test);
        Vector2D warp = warp(piece);
        double toWarp = toWarp(warp, down.normalize());
        if (Math.abs(Math.sin(2 * toWarp)) < NO_BIAS) {
            throw new DraftingException(
                    "Hang '" + piece.name() + "'",
                    "it hangs along its threads, not on the bias; there is nothing to correct");
        }
        AffineTransformMatrix2D map = map(shear, warp, Math.sin(2 * toWarp) > 0);
        AffineTransformMatrix2D back = map.inverse();
        List<HungEdge> edges = piece.edges().stream()
                .map(edge -> hung(edge.name(), Paper.edge(piece, edge.name()), map, back))
                .toList();
        double along = Math.sin(2 * toWarp) > 0 ? toWarp : -toWarp;
        Ledger ledger = Ledger.of(test);
        for (HungEdge edge : edges) {
            ledger = ledger.then(edge);
        }
        return new Hanging(
                edges, shear.along(along), shear.acrossLine(along), shear.widthSquare(along), ledger.then(MODEL));
    }

    /** The shear with the warp where it lies, closing towards the one bias or the other. */
    private static AffineTransformMatrix2D map(Shear shear, Vector2D warp, boolean left) {
        double angle = Math.atan2(warp.getY(), warp.getX());
        AffineTransformMatrix2D turn = AffineTransformMatrix2D.createRotation(angle);
        AffineTransformMatrix2D own =
                left ? shear.map() : flipped().multiply(shear.map()).multiply(flipped());
        return turn.multiply(own).multiply(turn.inverse());
    }

    private static AffineTransformMatrix2D flipped() {
        return AffineTransformMatrix2D.createScale(1, -1);
    }

    private static HungEdge hung(
            String edge, CurvePath line, AffineTransformMatrix2D map, AffineTransformMatrix2D back) {
        return new HungEdge(edge, line.length(), mapped(line, map), mapped(line, back));
    }

    /** The length of what a line becomes: Gauss's three places in each of many parts of each curve. */
    private static double mapped(CurvePath line, AffineTransformMatrix2D map) {
        double sum = 0;
        for (Curve curve : line.curves()) {
            for (int i = 0; i < PARTS; i++) {
                double middle = (i + 0.5) / PARTS;
                double off = Math.sqrt(0.6) / 2 / PARTS;
                sum += (8 * speed(curve, middle, map)
                                + 5 * speed(curve, middle - off, map)
                                + 5 * speed(curve, middle + off, map))
                        / 18
                        / PARTS;
            }
        }
        return sum;
    }

    private static double speed(Curve curve, double t, AffineTransformMatrix2D map) {
        return map.applyVector(curve.derivative(t)).norm();
    }

    // ------------------------------------------------------------------------------------------------ deduction

    /**
     * What a hem grew at one place, found by hanging.
     *
     * @param arc where, as a length in mm along the hem as it is drawn
     * @param mm by how much it hung lower than it should, 0 or more
     */
    public record Grown(double arc, double mm) {
        /** Checks the figures. */
        public Grown {
            if (!(arc >= 0 && mm >= 0 && Double.isFinite(arc) && Double.isFinite(mm))) {
                throw new IllegalArgumentException(
                        "A hem grows by 0 mm or more at 0 mm or more along it: " + mm + " mm at " + arc + " mm.");
            }
        }
    }

    /**
     * Takes off a hem what it grew while the toile hung: at each place that was measured the hem is raised by as much, square to itself, and a
     * smooth curve is drawn through these places. The two edges beside it end where it now does. The width is given back at the second
     * fitting.
     *
     * @param piece the piece
     * @param hem the name of the hem
     * @param grown what it grew, in order along the hem, both ends among the places
     * @return the piece and what was done; undone by {@code Panels.undo}
     * @throws IllegalArgumentException when the ends are missing or the places are not in order
     * @throws DraftingException when an edge beside the hem is too short, or an opening breaks the hem
     */
    public static Reworked deduct(Piece piece, String hem, List<Grown> grown) {
        String asked = "Raise '" + hem + "' of '" + piece.name() + "'";
        CurvePath line = Paper.edge(piece, hem);
        requireEnds(line, grown);
        double side = isForward(piece, hem) ? 1 : -1;
        Sheet sheet = Sheet.closedAt(piece, hem, asked);
        Sheet.Neighbour first = sheet.neighbour(hem, false, asked);
        Sheet.Neighbour last = sheet.neighbour(hem, true, asked);
        Vector2D upFirst = square(line.startTangent(), side);
        Vector2D upLast = square(line.endTangent(), side);
        double cutFirst = cut(first, upFirst, grown.get(0).mm(), asked);
        double cutLast = cut(last, upLast, grown.get(grown.size() - 1).mm(), asked);
        List<Vector2D> points = new ArrayList<>();
        points.add(first.away().pointAt(cutFirst));
        for (Grown place : grown.subList(1, grown.size() - 1)) {
            Vector2D up = square(line.tangentAt(place.arc()), side);
            points.add(line.pointAt(place.arc()).add(up.multiply(place.mm())));
        }
        points.add(last.away().pointAt(cutLast));
        Map<String, CurvePath> lines = new TreeMap<>();
        Map<String, Redraw.Marks> marks = new TreeMap<>();
        lines.put(hem, Fit.through(points, line.startTangent(), line.endTangent()));
        shorten(first, cutFirst, lines, marks);
        shorten(last, cutLast, lines, marks);
        return Redraw.edges(piece, lines, marks);
    }

    private static boolean isForward(Piece piece, String edge) {
        return Paper.sides(piece).stream().anyMatch(side -> side.edge().equals(edge) && side.forward());
    }

    /** Square to a line, to its left, or to its right when the side is -1. */
    private static Vector2D square(Vector2D way, double side) {
        return Vector2D.of(-way.getY(), way.getX()).multiply(side);
    }

    private static void requireEnds(CurvePath line, List<Grown> grown) {
        double length = line.length();
        boolean ends = grown.size() >= 2
                && grown.get(0).arc() == 0
                && Math.abs(grown.get(grown.size() - 1).arc() - length) <= 1e-6;
        boolean inOrder = IntStream.range(1, grown.size())
                .allMatch(i -> grown.get(i - 1).arc() < grown.get(i).arc());
        if (!ends || !inOrder) {
            throw new IllegalArgumentException("What a hem grew is told in order along it, from 0 to its end at "
                    + length + " mm: " + grown + ".");
        }
    }

    /** How far along an edge, from the hem, it has risen by so much. */
    private static double cut(Sheet.Neighbour edge, Vector2D up, double rise, String asked) {
        if (rise == 0) {
            return 0;
        }
        Vector2D from = edge.away().start().add(up.multiply(rise));
        Vector2D across =
                Vector2D.of(-up.getY(), up.getX()).multiply(2 * edge.away().length());
        return Meets.of(edge.away(), CurvePath.polyline(from.subtract(across), from.add(across))).points().stream()
                .map(Meet::onFirst)
                .min(Double::compare)
                .orElseThrow(() -> new DraftingException(asked, "'" + edge.name() + "' does not rise so far"));
    }

    private static void shorten(
            Sheet.Neighbour edge, double by, Map<String, CurvePath> lines, Map<String, Redraw.Marks> marks) {
        if (by > 0) {
            CurvePath left = edge.away().between(by, edge.away().length());
            lines.put(edge.name(), edge.atStart() ? left : left.reversed());
            marks.put(edge.name(), edge.atStart() ? Redraw.Marks.FROM_END : Redraw.Marks.FROM_START);
        }
    }

    // ------------------------------------------------------------------------------------------------ hem drop

    /**
     * How far a hem will drop at one place, by the model.
     *
     * @param arc where, as a length in mm along the hem
     * @param length from where it hangs down to there, in mm
     * @param toWarp the angle in radians of that line to the warp
     * @param drop by how much it will hang lower, in mm
     */
    public record Drop(double arc, double length, double toWarp, double drop) {}

    /**
     * A forecast of hem drop: {@code length x e x |sin 2b|}, with {@code e} the tested stretch and {@code b} the angle to the warp of the line that
     * hangs, square to the hem and up to the edge it hangs from. It is greatest where that line runs on the bias, and nothing along the threads.
     *
     * @param piece the piece with its grain
     * @param hem the name of the hem
     * @param from the name of the edge it hangs from
     * @param test a test of the very cloth
     * @param places at how many places, evenly along the hem, its ends among them: 2 or more
     * @return the drops, in the hem's own direction
     * @throws IllegalArgumentException when there are fewer than two places
     * @throws DraftingException when a line square to the hem does not reach the edge it hangs from
     */
    public static List<Drop> hemDrop(Piece piece, String hem, String from, StretchTest test, int places) {
        List<ThreadAngle> angles = threadAngles(piece, hem, places);
        CurvePath line = Paper.edge(piece, hem);
        CurvePath top = Paper.edge(piece, from);
        double side = isForward(piece, hem) ? 1 : -1;
        Vector2D warp = warp(piece);
        double reach = Paper.outline(piece).bounds().getDiagonal().norm();
        List<Drop> drops = new ArrayList<>();
        for (ThreadAngle at : angles) {
            boolean last = at.arc() >= line.length();
            Vector2D way = last ? line.endTangent() : line.tangentAt(at.arc());
            Vector2D up = square(way, side);
            Vector2D point = last ? line.end() : line.pointAt(at.arc());
            double length = hanging(piece, hem, from, top, point, up, reach);
            double toWarp = toWarp(warp, up);
            drops.add(new Drop(at.arc(), length, toWarp, length * test.stretch() * Math.abs(Math.sin(2 * toWarp))));
        }
        return List.copyOf(drops);
    }

    private static double hanging(
            Piece piece, String hem, String from, CurvePath top, Vector2D point, Vector2D up, double reach) {
        // A hair of play, so that the lines along the two ends of the piece are not lost to rounding.
        return Meets.of(CurvePath.polyline(point, point.add(up.multiply(reach))), top, 1e-3).points().stream()
                .map(Meet::onFirst)
                .min(Double::compare)
                .orElseThrow(() -> new DraftingException(
                        "Forecast the drop of '" + hem + "' of '" + piece.name() + "'",
                        "a line square to it does not reach '" + from + "'"));
    }
}
