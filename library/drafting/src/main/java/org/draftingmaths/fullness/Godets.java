package org.draftingmaths.fullness;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Arc;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Meets;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Fact;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.ledger.Reach;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.PaperSide;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.piece.Seam.End;
import org.draftingmaths.unit.Asked;

/**
 * Godets: sectors of a circle set into a seam or a slit. With {@code l} the height and {@code S} what is added to the hem, the
 * radius is {@code l}, the angle {@code S / l}, the hem an arc about the point. More than half a turn is refused: such a godet would
 * not lie flat beside its seam, and two narrower ones do better.
 */
public final class Godets {

    private static final double DOWN = -Math.PI / 2;

    /** By how much in mm the two edges of a seam may differ in their straight length and still take one godet. */
    private static final double ALIKE = 0.5;

    private static final RingSector.Sides SIDES =
            new RingSector.Sides("side", Role.SEAM, "hem", "other side", Role.SEAM, "");

    private Godets() {}

    /**
     * Drafts a godet for a straight seam.
     *
     * <pre>{@code
     * Drafted godet = Godets.forSeam("godet", 220, 180);      // 46.9 degrees
     * }</pre>
     *
     * @param name its name
     * @param height the length of the seam it is set into, in mm
     * @param sweep what it adds to the hem, in mm along
     * @return the piece, its point up, the grain along its middle
     * @throws IllegalArgumentException when the angle would be more than half a turn
     */
    public static Drafted forSeam(String name, double height, double sweep) {
        return drafted(name, height, sweep, List.of());
    }

    /**
     * Drafts a godet for a straight slit. The allowance of a slit runs out to nothing at its point: that is a finding.
     *
     * @param name its name
     * @param height the length of the slit in mm
     * @param sweep what it adds to the hem, in mm along
     * @param allowance the allowance of the slit at the hem, in mm
     * @return the piece and the finding
     * @throws IllegalArgumentException when the angle would be more than half a turn
     */
    public static Drafted forSlit(String name, double height, double sweep, double allowance) {
        Asked.length("The allowance of a slit", allowance);
        return drafted(
                name,
                height,
                sweep,
                List.of(new Finding(
                        Finding.Kind.ALLOWANCE_RUNS_OUT,
                        "the point of the slit for '" + name + "'",
                        Quantity.LENGTH,
                        0,
                        allowance,
                        0)));
    }

    private static Drafted drafted(String name, double height, double sweep, List<Finding> findings) {
        double angle = angle(height, sweep);
        RingSector sector = new RingSector(0, height, angle);
        Piece piece = Notched.middle(sector.piece(name, DOWN - angle / 2, SIDES, DOWN), "hem");
        Budget budget = sector.budget(1);
        Ledger ledger = Ledger.of(
                new Fact("angle of the godet", Quantity.ANGLE, angle),
                new Fact("length of the hem", Quantity.LENGTH, sector.bottom()),
                new Fact("chord of the hem", Quantity.LENGTH, 2 * height * Math.sin(angle / 2)),
                budget);
        return new Drafted(new Draft(name, List.of(piece), List.of()), budget, findings, ledger);
    }

    /**
     * The angle of a godet: {@code S / l}.
     *
     * @param height its height in mm
     * @param sweep what it adds to the hem, in mm along
     * @return the angle in radians
     * @throws IllegalArgumentException when it is more than half a turn
     */
    public static double angle(double height, double sweep) {
        Asked.length("The height of a godet", height);
        Asked.length("What a godet adds to the hem", sweep);
        if (sweep > Math.PI * height) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "A godet %s mm high adds at most %.1f mm to the hem, at 180 degrees: %s mm.",
                    height,
                    Math.PI * height,
                    sweep));
        }
        return sweep / height;
    }

    /**
     * Which height gives a godet of this angle that adds so much to the hem: {@code l = S / angle}.
     *
     * @param sweep what it adds to the hem, in mm along
     * @param angle the angle in radians
     * @return the one height; none when the angle is not more than 0 or more than half a turn
     * @throws IllegalArgumentException when the sweep is not more than 0
     */
    public static Answer heightFor(double sweep, double angle) {
        Asked.length("What a godet adds to the hem", sweep);
        String asked = "Height of a godet that adds " + Words.of(sweep);
        if (!(angle > 0 && angle <= Math.PI)) {
            return new Answer.None(
                    asked, "a godet has at most half a turn", new Reach(Quantity.ANGLE, angle, 0, Math.PI));
        }
        return new Answer.Unique(asked, Quantity.LENGTH, sweep / angle);
    }

    /**
     * Which angle adds so much to the hem: {@code S / l}.
     *
     * @param height the height in mm
     * @param sweep what it adds to the hem, in mm along
     * @return the one angle; none when it would be more than half a turn
     * @throws IllegalArgumentException when a length is not more than 0
     */
    public static Answer angleFor(double height, double sweep) {
        Asked.length("The height of a godet", height);
        Asked.length("What a godet adds to the hem", sweep);
        String asked = "Angle of a godet that adds " + Words.of(sweep);
        if (sweep > Math.PI * height) {
            Reach reach = new Reach(Quantity.LENGTH, sweep, 0, Math.PI * height);
            return new Answer.None(asked, "a godet has at most half a turn", reach);
        }
        return new Answer.Unique(asked, Quantity.ANGLE, sweep / height);
    }

    // ------------------------------------------------------------------------------------------------ set in a seam

    /**
     * Drafts a godet for a seam of any shape. Each of its sides is a copy of the edge it is sewn to, from the hem up by the height
     * along; the hem is an arc {@code S} long, about the point when the two edges are alike.
     *
     * <p>The godet lies face up between its two mates, the first edge's piece on its left. A piece that was drafted for the
     * other half of the body, so that it would lie on the wrong side, is mirrored, as it is when it is cut. With {@code R} the straight
     * length of the sides, the angle is {@code S / R}. Conserved: the length of each side, along, and its shape.
     *
     * @param name the name of the godet
     * @param draft the draft
     * @param seam one of its seams
     * @param hem which end of the seam is at the hem, by the direction of sewing
     * @param height how far up the seam is left open, in mm along
     * @param sweep what the godet adds to the hem, in mm along
     * @return the godet; its ledger says where its point lies on either edge
     * @throws IllegalArgumentException when a length is not more than 0 or the angle would be more than half a turn
     * @throws DraftingException when the seam is shorter than the height, an opening breaks it, its two edges are not alike, or the
     *     sides are so curved that they cross
     */
    public static Drafted inSeam(String name, Draft draft, Seam seam, End hem, double height, double sweep) {
        Asked.length("The height of a godet", height);
        Asked.length("What a godet adds to the hem", sweep);
        String asked = "Set '" + name + "' into '" + seam.name() + "'";
        Beside first = Beside.of(draft, seam.first(), hem, height, asked);
        Beside second = Beside.of(draft, seam.second(), hem, height, asked);
        double radius = (first.straight() + second.straight()) / 2;
        double angle = angle(radius, sweep);
        CurvePath left = first.placed(DOWN - angle / 2, false);
        CurvePath right = second.placed(DOWN + angle / 2, true);
        requireAlike(first, second, left.end().distance(right.end()), sweep, asked);
        Piece piece = drawn(name, left, right, sweep);
        requireSimple(piece, asked);
        Budget budget = new Budget(piece.area(), Map.of(), Map.of("hem", Lengths.base(piece, "hem")));
        Ledger ledger = Ledger.of(
                new Fact("angle of the godet", Quantity.ANGLE, angle),
                new Fact("length of its sides", Quantity.LENGTH, height),
                new Fact("place of its point on " + first.words(), Quantity.LENGTH, first.point()),
                new Fact("place of its point on " + second.words(), Quantity.LENGTH, second.point()),
                budget);
        return new Drafted(new Draft(name, List.of(piece), List.of()), budget, List.of(), ledger);
    }

    private static void requireAlike(Beside first, Beside second, double chord, double sweep, String asked) {
        if (Math.abs(first.straight() - second.straight()) > ALIKE || chord >= sweep) {
            throw new DraftingException(
                    asked,
                    String.format(
                            Locale.ROOT,
                            "its two edges are not alike: straight from the point to the hem they are %.2f mm and %.2f mm",
                            first.straight(),
                            second.straight()));
        }
    }

    private static Piece drawn(String name, CurvePath left, CurvePath right, double sweep) {
        Drawing drawing = Drawing.of(name)
                .from(0, 0)
                .edge("side", Role.SEAM)
                .along(left)
                .edge("hem", Role.HEM)
                .along(CurvePath.of(arc(left.end(), right.end(), sweep)))
                .edge("other side", Role.SEAM)
                .along(right.reversed());
        double low = left.end().add(right.end()).getY() / 2;
        return Notched.middle(drawing.grain(0, 0.5 * low, 0, 0.9 * low).piece(), "hem");
    }

    /** The arc of a given length over a chord, anticlockwise: {@code sin(x) / x = chord / length} with {@code x} half its angle. */
    private static Arc arc(Vector2D from, Vector2D to, double length) {
        double share = from.distance(to) / length;
        double half = Bisection.falling(x -> Math.sin(x) / x, share, 0, Math.PI / 2);
        return Arc.chordAndSagitta(from, to, length / (2 * half) * (1 - Math.cos(half)));
    }

    private static void requireSimple(Piece piece, String asked) {
        if (piece.area() <= 0
                || !Meets.of(Paper.edge(piece, "side"), Paper.edge(piece, "other side")).points().stream()
                        .allMatch(meet -> meet.point().norm() <= CurvePath.JOINT)) {
            throw new DraftingException(asked, "the seam is so curved that the sides of the godet would cross");
        }
    }

    /**
     * An edge that a godet is sewn to.
     *
     * @param words which edge of which piece
     * @param line its open stretch, from the point to the hem
     * @param point where the point lies on the edge, from the edge's own start
     * @param clothLeft whether the piece lies to the left of the line
     */
    private record Beside(String words, CurvePath line, double point, boolean clothLeft) {

        static Beside of(Draft draft, Seam.Mate mate, End hem, double height, String asked) {
            Piece piece = draft.piece(mate.piece());
            List<PaperSide> sides = Paper.sides(piece).stream()
                    .filter(side -> side.edge().equals(mate.edge()))
                    .toList();
            String words = "'" + mate.edge() + "' of '" + mate.piece() + "'";
            if (sides.stream().anyMatch(side -> side.opening().isPresent())) {
                throw new DraftingException(asked, "an opening breaks " + words);
            }
            CurvePath edge = Paper.edge(piece, mate.edge());
            double length = edge.length();
            if (height > length) {
                throw new DraftingException(
                        asked, words + " is shorter than the godet", new Reach(Quantity.LENGTH, height, 0, length));
            }
            boolean towardsEnd = mate.forward() == (hem == End.STOP);
            double point = towardsEnd ? length - height : height;
            CurvePath line = towardsEnd
                    ? edge.between(point, length)
                    : edge.between(0, point).reversed();
            return new Beside(words, line, point, sides.get(0).forward() == towardsEnd);
        }

        double straight() {
            return line.start().distance(line.end());
        }

        /** The line from the origin in a direction, mirrored in itself where the piece would else lie on the wrong side. */
        CurvePath placed(double direction, boolean clothWantedLeft) {
            Vector2D way = line.start().vectorTo(line.end());
            double lies = Math.atan2(way.getY(), way.getX());
            AffineTransformMatrix2D level = AffineTransformMatrix2D.createTranslation(
                            line.start().negate())
                    .premultiply(AffineTransformMatrix2D.createRotation(Vector2D.ZERO, -lies));
            AffineTransformMatrix2D faced = clothLeft == clothWantedLeft
                    ? level
                    : level.premultiply(AffineTransformMatrix2D.createScale(1, -1));
            return line.transformed(
                    faced.premultiply(AffineTransformMatrix2D.createRotation(Vector2D.ZERO, direction)));
        }
    }
}
