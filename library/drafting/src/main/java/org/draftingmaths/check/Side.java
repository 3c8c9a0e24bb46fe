package org.draftingmaths.check;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.piece.Edge;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Notch;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.PaperSide;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;

/**
 * An edge as it is met going anticlockwise round its piece.
 *
 * @param piece the piece
 * @param edge the name of the edge
 * @param role what was declared of it
 * @param forward whether its own direction is anticlockwise
 * @param path its curve with darts closed, anticlockwise
 * @param drawn its curve on paper, anticlockwise
 * @param length its folded length in mm
 * @param bow how far in mm it strays from its chord; positive when it is hollow
 * @param before the angle of the cloth in radians at the corner at which it begins
 * @param after the angle of the cloth at the corner at which it ends
 * @param notches the folded lengths in mm from its beginning to its notches
 */
public record Side(
        Piece piece,
        String edge,
        Role role,
        boolean forward,
        CurvePath path,
        CurvePath drawn,
        double length,
        double bow,
        double before,
        double after,
        List<Double> notches) {

    /** Within which angle a corner is square (trade practice of half a degree holds for the check; drawing is coarser): 3 degrees. */
    public static final double SQUARE = Math.toRadians(3);

    private static final int STATIONS = 32;

    /** Copies the list. */
    public Side {
        notches = List.copyOf(notches);
    }

    /**
     * The edges of a piece.
     *
     * @param piece the piece
     * @return one side for each edge, anticlockwise
     */
    public static List<Side> of(Piece piece) {
        List<List<PaperSide>> groups = groups(Paper.sides(piece));
        List<Side> sides = new ArrayList<>();
        int n = groups.size();
        for (int i = 0; i < n; i++) {
            List<PaperSide> own = groups.get(i);
            CurvePath first = own.get(0).path();
            CurvePath last = own.get(own.size() - 1).path();
            double before = cloth(last(groups.get((i + n - 1) % n)).endTangent(), first.startTangent());
            double after = cloth(
                    last.endTangent(), groups.get((i + 1) % n).get(0).path().startTangent());
            sides.add(side(piece, own, before, after));
        }
        return sides;
    }

    private static CurvePath last(List<PaperSide> group) {
        return group.get(group.size() - 1).path();
    }

    /** The stretches of each edge together, from one that begins an edge. */
    private static List<List<PaperSide>> groups(List<PaperSide> sides) {
        int start = 0;
        int n = sides.size();
        while (start < n - 1
                && sides.get(start).edge().equals(sides.get((start + n - 1) % n).edge())) {
            start++;
        }
        List<List<PaperSide>> groups = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            PaperSide side = sides.get((start + i) % n);
            if (groups.isEmpty() || !groups.get(groups.size() - 1).get(0).edge().equals(side.edge())) {
                groups.add(new ArrayList<>());
            }
            groups.get(groups.size() - 1).add(side);
        }
        return groups;
    }

    private static double cloth(Vector2D arriving, Vector2D leaving) {
        return Math.PI - turn(arriving, leaving);
    }

    /**
     * The angle by which a direction turns into another.
     *
     * @param from the one direction
     * @param to the other
     * @return the angle in radians, anticlockwise
     */
    public static double turn(Vector2D from, Vector2D to) {
        return Math.atan2(from.signedArea(to), from.dot(to));
    }

    private static Side side(Piece piece, List<PaperSide> own, double before, double after) {
        PaperSide first = own.get(0);
        CurvePath drawn = CurvePath.joined(own.stream().map(PaperSide::path).toList());
        Edge edge = piece.edge(first.edge());
        boolean forward = first.forward();
        CurvePath path = forward ? edge.base() : edge.base().reversed();
        double length = Lengths.folded(piece, edge.name());
        List<Double> notches = new ArrayList<>();
        for (Notch notch : piece.notches()) {
            if (notch.edge().equals(edge.name())) {
                double at = Lengths.folded(piece, Lengths.start(edge.name()), notch);
                notches.add(forward ? at : length - at);
            }
        }
        Collections.sort(notches);
        return new Side(
                piece, edge.name(), edge.role(), forward, path, drawn, length, bow(path), before, after, notches);
    }

    /**
     * Whether it strays from its chord by no more than a tolerance.
     *
     * @param tolerance in mm
     * @return true when it does
     */
    public boolean straight(double tolerance) {
        return Math.abs(bow) <= tolerance;
    }

    /**
     * Whether it is straight, and square at both ends: it may then be a fold, a centre, a hem or the end of a band as well as a seam.
     *
     * @param tolerance how far in mm it may stray from its chord
     * @return true when it is
     */
    public boolean plain(double tolerance) {
        return straight(tolerance) && nearSquare(before, SQUARE) && nearSquare(after, SQUARE);
    }

    /**
     * Whether a corner is square.
     *
     * @param angle its angle in radians
     * @param within by how much it may miss a right angle
     * @return true when it is
     */
    public static boolean nearSquare(double angle, double within) {
        return Math.abs(angle - Math.PI / 2) <= within;
    }

    /**
     * The side in words.
     *
     * @return for example {@code 'side seam' of 'front'}
     */
    public String words() {
        return "'" + edge + "' of '" + piece.name() + "'";
    }

    /**
     * How far a line strays from its chord to the left, where it strays most, looked at in {@value #STATIONS} equal steps.
     *
     * @param path the line
     * @return the distance in mm; negative to the right
     */
    public static double bow(CurvePath path) {
        Vector2D chord = path.start().vectorTo(path.end());
        if (chord.norm() == 0) {
            return path.length();
        }
        Vector2D way = chord.normalize();
        double bow = 0;
        for (int i = 0; i <= STATIONS; i++) {
            double off = way.signedArea(path.start().vectorTo(path.pointAt(path.length() * i / STATIONS)));
            bow = Math.abs(off) > Math.abs(bow) ? off : bow;
        }
        return bow;
    }
}
