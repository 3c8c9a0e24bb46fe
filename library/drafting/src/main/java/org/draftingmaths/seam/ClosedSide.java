package org.draftingmaths.seam;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Curve;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.SetLength;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.ledger.Reach;
import org.draftingmaths.piece.Border;
import org.draftingmaths.piece.Edge;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Mouth;
import org.draftingmaths.piece.Notch;
import org.draftingmaths.piece.Opening;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Redraw;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Seam;

/**
 * One side of a seam as it is sewn: its stretches end to end, as they lie when its darts are closed.
 *
 * <p>Notches and mouths part it. Let {@code l_j} be the lengths of the parts, {@code c_j} by how much each becomes longer. An end moved by
 * {@code x} gives {@code c = x} to the part at that end; a curve changed by {@code x} gives {@code sum c_j = x} to the parts of its notch
 * interval, all of whose handles grow by one factor {@code k}. A mouth is a joint of the closed edge and stays: so the directions there stay, no leg
 * end moves, and a notch at the arc {@code s} goes to {@code s + sum c_j} over the parts before it.
 *
 * @param piece the piece
 * @param side the side of the seam, one whole edge
 * @param stretches the edge between its openings where it lies, in the direction of sewing
 * @param notches the notches inside the edge, in the direction of sewing
 * @param asked what was asked, for refusals
 */
record ClosedSide(Piece piece, Seam.Mate side, List<CurvePath> stretches, List<Notch> notches, String asked) {

    /**
     * What lies between two notches or mouths next to one another.
     *
     * @param stretch the index of its stretch
     * @param interval its notch interval, counted from 1
     * @param was its curve before
     * @param now its curve now
     */
    private record Part(int stretch, int interval, CurvePath was, CurvePath now) {
        Part to(CurvePath line) {
            return new Part(stretch, interval, was, line);
        }

        double longer() {
            return now.equals(was) ? 0 : now.length() - was.length();
        }
    }

    static ClosedSide of(Piece piece, Seam.Mate side, String asked) {
        piece.openings().forEach(opening -> requireSewnShut(opening, piece, side, asked));
        Edge edge = piece.edge(side.edge());
        List<Notch> notches = new ArrayList<>(piece.notches().stream()
                .filter(notch -> notch.edge().equals(edge.name()))
                .filter(notch -> notch.arc() > CurvePath.JOINT && notch.arc() < edge.length() - CurvePath.JOINT)
                .sorted(Comparator.comparingDouble(Notch::arc).thenComparing(Notch::beside))
                .toList());
        if (!side.forward()) {
            Collections.reverse(notches);
        }
        return new ClosedSide(piece, side, along(Redraw.stretches(piece, edge.name()), side.forward()), notches, asked);
    }

    /** A gap that is not sewn shut belongs to the sewn edge and changes with the curve beside it. */
    private static void requireSewnShut(Opening opening, Piece piece, Seam.Mate side, String asked) {
        Border border = new Border.OfEdge(side.edge());
        for (Mouth mouth : Stream.concat(Stream.of(opening.mouth()), opening.farMouth().stream())
                .toList()) {
            if (mouth.border().equals(border) && !mouth.use().stitched()) {
                throw new DraftingException(
                        asked,
                        "'" + opening.name() + "' in '" + side.edge() + "' of '" + piece.name()
                                + "' is not sewn shut; sew it as a dart or a fold, or fill it first");
            }
            if (mouth.border().equals(border) && mouth.before() != mouth.after()) {
                throw new DraftingException(
                        asked,
                        "cloth was taken out of '" + side.edge() + "' of '" + piece.name() + "' at '" + opening.name()
                                + "'; join it first");
            }
        }
    }

    /** Curves in the edge's own direction turned into the direction of sewing, or back. */
    private static List<CurvePath> along(List<CurvePath> stretches, boolean forward) {
        List<CurvePath> turned = new ArrayList<>(stretches);
        if (!forward) {
            turned.replaceAll(CurvePath::reversed);
            Collections.reverse(turned);
        }
        return turned;
    }

    /** The piece with the moves of this side made. */
    Reworked moved(List<SeamTruing.Moved> moves) {
        List<Part> parts = parts();
        for (SeamTruing.Moved move : moves) {
            if (move.may() instanceof SeamTruing.InCurve in) {
                bend(parts, in.interval(), move.by());
            }
        }
        for (Seam.End end : Seam.End.values()) {
            lengthen(parts, end, atEnd(moves, end));
        }
        List<CurvePath> drawn = drawn(parts);
        Map<String, List<CurvePath>> lines = new TreeMap<>();
        for (Seam.End end : Seam.End.values()) {
            if (atEnd(moves, end) != 0) {
                carry(lines, end, corner(drawn, end));
            }
        }
        lines.put(side.edge(), along(drawn, side.forward()));
        return Redraw.stretches(piece, lines, Map.of(), Map.of(side.edge(), places(parts, moves)));
    }

    /** The piece with the curve of this side longer all along; notches keep their share of their stretch. */
    Reworked curved(double by) {
        ClosedSide bare = new ClosedSide(piece, side, stretches, List.of(), asked);
        List<Part> parts = bare.parts();
        bare.bend(parts, 1, by);
        return Redraw.stretches(
                piece, Map.of(side.edge(), along(bare.drawn(parts), side.forward())), Map.of(), Map.of());
    }

    private static double atEnd(List<SeamTruing.Moved> moves, Seam.End end) {
        return moves.stream()
                .filter(move -> move.may() instanceof SeamTruing.AtEnd at && at.end() == end)
                .mapToDouble(SeamTruing.Moved::by)
                .sum();
    }

    private static Vector2D corner(List<CurvePath> lines, Seam.End end) {
        return end == Seam.End.START
                ? lines.get(0).start()
                : lines.get(lines.size() - 1).end();
    }

    // ------------------------------------------------------------------------------------------------ parts

    private List<Part> parts() {
        double length = piece.edge(side.edge()).length();
        List<Double> at = notches.stream()
                .map(notch -> side.forward() ? notch.arc() : length - notch.arc())
                .toList();
        List<Part> parts = new ArrayList<>();
        double start = 0;
        for (int i = 0; i < stretches.size(); i++) {
            parts.addAll(parts(i, start, at));
            start += stretches.get(i).length();
        }
        return parts;
    }

    /** The parts of the stretch that starts at an arc of the closed edge; notches at one place part it once. */
    private List<Part> parts(int stretch, double start, List<Double> at) {
        CurvePath line = stretches.get(stretch);
        List<Part> parts = new ArrayList<>();
        double from = 0;
        int passed = passed(at, start);
        for (double notch : at) {
            double to = notch - start;
            if (to > from + CurvePath.JOINT && to < line.length() - CurvePath.JOINT) {
                CurvePath own = line.between(from, to);
                parts.add(new Part(stretch, 1 + passed, own, own));
                from = to;
                passed = passed(at, notch);
            }
        }
        CurvePath rest = from == 0 ? line : line.between(from, line.length());
        parts.add(new Part(stretch, 1 + passed, rest, rest));
        return parts;
    }

    private static int passed(List<Double> notches, double arc) {
        return (int)
                notches.stream().filter(notch -> notch <= arc + CurvePath.JOINT).count();
    }

    /** The stretches of the parts; one of which nothing changed is what it was. */
    private List<CurvePath> drawn(List<Part> parts) {
        List<CurvePath> drawn = new ArrayList<>();
        for (int i = 0; i < stretches.size(); i++) {
            int index = i;
            List<Part> own =
                    parts.stream().filter(part -> part.stretch() == index).toList();
            boolean same = own.stream().allMatch(part -> part.now().equals(part.was()));
            drawn.add(
                    same
                            ? stretches.get(i)
                            : CurvePath.joined(own.stream().map(Part::now).toList()));
        }
        return drawn;
    }

    // ------------------------------------------------------------------------------------------------ moves

    /** The parts of one notch interval, laid end to end, change their length together; each stays where it lies. */
    private void bend(List<Part> parts, int interval, double by) {
        List<Integer> own = new ArrayList<>();
        List<Curve> laid = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            if (parts.get(i).interval() == interval) {
                own.add(i);
                CurvePath line = parts.get(i).now();
                Vector2D to = laid.isEmpty()
                        ? line.start()
                        : laid.get(laid.size() - 1).end();
                laid.addAll(shifted(line, to).curves());
            }
        }
        if (laid.isEmpty()) {
            throw new DraftingException(
                    asked, "notch interval " + interval + " of " + words() + " lies all within the mouth of a dart");
        }
        List<Curve> bent = bent(new CurvePath(laid), by, own.size() > 1 ? over(parts, own) : "");
        int next = 0;
        for (int i : own) {
            CurvePath line = parts.get(i).now();
            int end = next + line.curves().size();
            parts.set(i, parts.get(i).to(shifted(new CurvePath(bent.subList(next, end)), line.start())));
            next = end;
        }
    }

    private static CurvePath shifted(CurvePath line, Vector2D start) {
        return line.transformed(
                AffineTransformMatrix2D.createTranslation(line.start().vectorTo(start)));
    }

    private List<Curve> bent(CurvePath line, double by, String over) {
        try {
            return SetLength.of(line, line.length() + by).curves();
        } catch (IllegalArgumentException cannot) {
            throw new DraftingException(asked, cannot.getMessage().replaceAll("\\.$", "") + over);
        }
    }

    /** In whose mouths the parts of an interval meet. */
    private String over(List<Part> parts, List<Integer> own) {
        List<String> between = new ArrayList<>();
        for (int i : own.subList(0, own.size() - 1)) {
            between.add(
                    "'" + openingAt(parts.get(i).now().end()).map(Opening::name).orElse("a dart") + "'");
        }
        return ", nor the mouth of " + String.join(" and ", between) + " moved";
    }

    private void lengthen(List<Part> parts, Seam.End end, double by) {
        int index = end == Seam.End.START ? 0 : parts.size() - 1;
        CurvePath line = parts.get(index).now();
        if (by == 0) {
            return;
        }
        if (-by >= line.length() - CurvePath.JOINT) {
            Vector2D at = end == Seam.End.START ? line.end() : line.start();
            String there = openingAt(at)
                    .map(opening -> "'" + opening.name() + "' lies")
                    .orElse("a notch lies");
            throw new DraftingException(
                    asked,
                    words() + " cannot be cut back so far " + SeamTruing.where(end) + ": " + there + " there",
                    new Reach(Quantity.LENGTH, -by, 0, line.length()));
        }
        parts.set(
                index,
                parts.get(index)
                        .to(
                                end == Seam.End.STOP
                                        ? Ends.lengthened(line, by)
                                        : Ends.lengthened(line.reversed(), by).reversed()));
    }

    private String words() {
        return "'" + side.edge() + "' of '" + piece.name() + "'";
    }

    /** The opening with a leg that ends at a place. */
    private Optional<Opening> openingAt(Vector2D place) {
        return piece.openings().stream()
                .filter(opening -> Stream.of(Leg.values())
                        .anyMatch(leg ->
                                Measured.leg(piece, opening.name(), leg).start().distance(place) <= CurvePath.JOINT))
                .findFirst();
    }

    // ------------------------------------------------------------------------------------------------ notches

    /** The new arcs of the notches, by the edge's own direction. */
    private List<Double> places(List<Part> parts, List<SeamTruing.Moved> moves) {
        List<Double> places = new ArrayList<>();
        for (int i = 1; i <= notches.size(); i++) {
            int number = i;
            double longer = parts.stream()
                    .filter(part -> side.forward() == part.interval() <= number)
                    .mapToDouble(Part::longer)
                    .sum();
            double on = moves.stream()
                    .filter(move -> move.may() instanceof SeamTruing.AtNotch at && at.notch() == number)
                    .mapToDouble(SeamTruing.Moved::by)
                    .sum();
            places.add(notches.get(i - 1).arc() + longer + (side.forward() ? on : -on));
        }
        if (!side.forward()) {
            Collections.reverse(places);
        }
        requireInOrder(
                places,
                piece.edge(side.edge()).length()
                        + parts.stream().mapToDouble(Part::longer).sum());
        return places;
    }

    private void requireInOrder(List<Double> places, double length) {
        double before = CurvePath.JOINT;
        for (double arc : places) {
            if (!(arc >= before && arc < length - CurvePath.JOINT)) {
                throw new DraftingException(asked, "a notch of " + words() + " would pass its neighbour or an end");
            }
            before = arc;
        }
    }

    // ------------------------------------------------------------------------------------------------ neighbours

    /** The neighbour at an end goes on to where the end is now. */
    private void carry(Map<String, List<CurvePath>> lines, Seam.End end, Vector2D to) {
        Vector2D corner = corner(stretches, end);
        for (Edge next : piece.edges()) {
            List<CurvePath> own =
                    new ArrayList<>(lines.getOrDefault(next.name(), Redraw.stretches(piece, next.name())));
            int last = own.size() - 1;
            boolean starts = own.get(0).start().distance(corner) <= CurvePath.JOINT;
            if (next.name().equals(side.edge())
                    || !(starts || own.get(last).end().distance(corner) <= CurvePath.JOINT)) {
                continue;
            }
            CurvePath line = starts ? own.get(0).reversed() : own.get(last);
            requireOnFold(next, line, to);
            CurvePath carried = Ends.carried(line, to);
            own.set(starts ? 0 : last, starts ? carried.reversed() : carried);
            lines.put(next.name(), own);
            return;
        }
        String there = openingAt(corner)
                .map(opening -> "'" + opening.name() + "' opens")
                .orElse("an opening lies");
        throw new DraftingException(
                asked,
                words() + " cannot be moved " + SeamTruing.where(end) + ": " + there
                        + " at the corner there; close it or move it elsewhere first, or move the other end");
    }

    /** A fold may become longer or shorter, never slanted. */
    private void requireOnFold(Edge edge, CurvePath line, Vector2D to) {
        Vector2D way = line.start().directionTo(line.end());
        if (edge.role() == Role.FOLD && Math.abs(way.signedArea(line.end().vectorTo(to))) > CurvePath.JOINT) {
            throw new DraftingException(
                    asked,
                    "its end lies on the fold '" + edge.name() + "', which would be slanted; move the other end");
        }
    }
}
