package org.draftingmaths.finish;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Meets;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Entry;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.ledger.Reach;
import org.draftingmaths.measure.Wearer;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Notch;
import org.draftingmaths.piece.Notches;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.unit.Steps;

/** Straps, measured on the pieces they run over. */
public final class Straps {

    /** How far in mm two parts of a strap may miss each other at a seam: half a millimetre (common practice for a digital draft). */
    public static final double TOLERANCE = 0.5;

    private Straps() {}

    /**
     * A strap from one edge over the body to another.
     *
     * <p>{@code stitched = path / (1 + stretch)}, {@code cut = stitched + insertion at each end}: the path is measured along, piece by piece,
     * and what the cloth stretches is taken from the stitched part only, because what is caught in the seams does not stretch. Each end is shaped
     * parallel to the edge it is sewn to, at the angle at which the strap pulls.
     *
     * <pre>{@code
     * Strap strap = Straps.strap(draft, "strap",
     *         List.of(StrapLine.straight(front, "top", 60, "shoulder", 45), StrapLine.straight(back, "shoulder", 45, "top", 70)),
     *         new StrapMake(20, 0.05, 10, 10), Wearer.ADULT);
     * }</pre>
     *
     * @param draft the draft it is measured on
     * @param name the name of the strap
     * @param way the parts of its way, each beginning where the one before ends, over a seam of the draft
     * @param make how it is made
     * @param wearer what was declared about the wearer; unless an adult, a caution goes with the strap
     * @return the strap
     * @throws IllegalArgumentException when no part is given
     * @throws DraftingException when a part crosses a dart, when two parts do not meet at a seam, or when the ends slant so much that they cross
     */
    public static Strap strap(Draft draft, String name, List<StrapLine> way, StrapMake make, Wearer wearer) {
        if (way.isEmpty()) {
            throw new IllegalArgumentException("A strap needs a way over the body.");
        }
        String asked = "Make '" + name + "'";
        way.forEach(line -> requireNoDart(draft.piece(line.piece()), line, asked));
        for (int i = 1; i < way.size(); i++) {
            requireMeet(draft, way.get(i - 1), way.get(i), asked);
        }
        double path = way.stream().mapToDouble(line -> line.line().length()).sum();
        double stitched = path / (1 + make.stretch());
        double cut = stitched + make.insertionAtStart() + make.insertionAtEnd();
        StrapLine first = way.get(0);
        StrapLine last = way.get(way.size() - 1);
        double startAngle =
                angle(draft.piece(first.piece()), first.from(), first.line().startTangent());
        double endAngle =
                angle(draft.piece(last.piece()), last.to(), last.line().endTangent());
        if (turnsOver(draft, way)) {
            endAngle = Math.PI - endAngle;
        }
        Piece piece = piece(name, make, stitched, startAngle, endAngle, asked);
        Ledger ledger = Ledger.of(new Made(name, path, make.stretch(), stitched, cut, startAngle, endAngle));
        List<Caution> cautions = wearer == Wearer.ADULT ? List.of() : List.of(Caution.STRAPS);
        for (Caution caution : cautions) {
            ledger = ledger.then(caution);
        }
        return new Strap(piece, path, stitched, cut, cautions, ledger);
    }

    /** What was measured and made. */
    record Made(
            String strap, double path, double stretch, double stitched, double cut, double startAngle, double endAngle)
            implements Entry {
        @Override
        public String sentence(Steps steps) {
            return "'" + strap + "': the way over the body is " + Quantity.LENGTH.print(path, steps)
                    + " along; for a stretch of " + String.format(Locale.ROOT, "%.1f", 100 * stretch)
                    + " % it is stitched " + Quantity.LENGTH.print(stitched, steps) + " long and cut "
                    + Quantity.LENGTH.print(cut, steps) + "; its ends slope " + Quantity.ANGLE.print(startAngle, steps)
                    + " and "
                    + Quantity.ANGLE.print(endAngle, steps) + " to its length.";
        }
    }

    /**
     * Whether the last piece must be turned over to be laid to the first. Two pieces join face up when, along the direction of sewing, the one lies to the
     * left of the seam and the other to the right.
     */
    private static boolean turnsOver(Draft draft, List<StrapLine> way) {
        boolean over = false;
        for (int i = 1; i < way.size(); i++) {
            Seam seam = seam(draft, way.get(i - 1), way.get(i)).orElseThrow();
            over ^= left(draft, seam.first()) == left(draft, seam.second());
        }
        return over;
    }

    private static boolean left(Draft draft, Seam.Mate mate) {
        return Paper.sides(draft.piece(mate.piece())).stream()
                .anyMatch(side -> side.edge().equals(mate.edge()) && side.forward() == mate.forward());
    }

    /** The angle from the strap to the edge, anticlockwise, more than 0 and less than half a turn. */
    private static double angle(Piece piece, Notch place, Vector2D inwards) {
        Vector2D square = Notches.where(piece, place).inwards();
        Vector2D edge = Vector2D.of(square.getY(), -square.getX());
        double angle = Math.atan2(inwards.signedArea(edge), inwards.dot(edge));
        return angle > 0 ? angle : angle + Math.PI;
    }

    /**
     * Upright, its middle on x = 0, its first end at y = 0, seen on the face as the pieces are. An edge at the angle {@code a} to the strap is the line
     * {@code y = -x cot a}.
     */
    private static Piece piece(
            String name, StrapMake make, double stitched, double startAngle, double endAngle, String asked) {
        double half = make.width() / 2;
        double low = -half / Math.tan(startAngle);
        double high = -half / Math.tan(endAngle);
        double left = stitched - high + low;
        double right = stitched + high - low;
        if (!(Math.min(left, right) > 0)) {
            throw new DraftingException(
                    asked,
                    "its ends slant so much that they cross; make it narrower or longer",
                    new Reach(Quantity.LENGTH, make.width(), 0, make.width() * stitched / Math.abs(low - high)));
        }
        return Drawing.of(name)
                .from(-half, -low)
                .edge("first end", Role.SEAM, make.insertionAtStart() * Math.sin(startAngle))
                .line(half, low)
                .edge("right side", Role.SEAM)
                .line(half, stitched + high)
                .edge("last end", Role.SEAM, make.insertionAtEnd() * Math.sin(endAngle))
                .line(-half, stitched - high)
                .edge("left side", Role.SEAM)
                .line(-half, -low)
                .grain(0, stitched * 0.2, 0, stitched * 0.8)
                .piece();
    }

    /** On the body a dart is closed: a line across one that lies open on paper would be measured too long. */
    private static void requireNoDart(Piece piece, StrapLine line, String asked) {
        Stream<Map.Entry<String, CurvePath>> darts = Stream.concat(
                piece.openings().stream()
                        .flatMap(opening -> Stream.of(Leg.values())
                                .map(leg -> Map.entry(opening.name(), Measured.leg(piece, opening.name(), leg)))),
                piece.panels().stream()
                        .flatMap(panel -> panel.darts().stream())
                        .map(laid -> Map.entry(laid.dart(), piece.place(laid))));
        darts.filter(dart -> !Meets.of(line.line(), dart.getValue()).isEmpty())
                .findFirst()
                .ifPresent(dart -> {
                    throw new DraftingException(
                            asked,
                            "its way over '" + piece.name() + "' crosses '" + dart.getKey()
                                    + "', which is closed on the body; measure on a piece where it was moved away");
                });
    }

    private static void requireMeet(Draft draft, StrapLine one, StrapLine other, String asked) {
        Seam seam = seam(draft, one, other)
                .orElseThrow(() -> new DraftingException(
                        asked,
                        "no seam of the draft joins '" + one.to().edge() + "' of '" + one.piece() + "' and '"
                                + other.from().edge() + "' of '" + other.piece() + "'"));
        double here = along(draft, mate(seam, one.piece(), one.to().edge()), one.to());
        double there = along(draft, mate(seam, other.piece(), other.from().edge()), other.from());
        if (Math.abs(here - there) > TOLERANCE) {
            throw new DraftingException(
                    asked,
                    "its parts do not meet at the seam '" + seam.name() + "'",
                    new Reach(Quantity.LENGTH, there, here - TOLERANCE, here + TOLERANCE));
        }
    }

    private static Optional<Seam> seam(Draft draft, StrapLine one, StrapLine other) {
        return draft.seams().stream().filter(each -> joins(each, one, other)).findFirst();
    }

    private static boolean joins(Seam seam, StrapLine one, StrapLine other) {
        return (is(seam.first(), one.piece(), one.to().edge())
                        && is(seam.second(), other.piece(), other.from().edge()))
                || (is(seam.second(), one.piece(), one.to().edge())
                        && is(seam.first(), other.piece(), other.from().edge()));
    }

    private static boolean is(Seam.Mate mate, String piece, String edge) {
        return mate.isOneEdge() && mate.piece().equals(piece) && mate.edge().equals(edge);
    }

    private static Seam.Mate mate(Seam seam, String piece, String edge) {
        return is(seam.first(), piece, edge) ? seam.first() : seam.second();
    }

    /** How far along the seam a place lies, by the direction of sewing. */
    private static double along(Draft draft, Seam.Mate mate, Notch place) {
        Piece piece = draft.piece(mate.piece());
        return mate.forward()
                ? Lengths.folded(piece, Lengths.start(mate.edge()), place)
                : Lengths.folded(piece, place, Lengths.end(piece, mate.edge()));
    }
}
