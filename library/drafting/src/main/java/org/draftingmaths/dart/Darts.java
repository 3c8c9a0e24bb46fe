package org.draftingmaths.dart;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.Change;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.ledger.Reach;
import org.draftingmaths.piece.Border;
import org.draftingmaths.piece.DartEnd;
import org.draftingmaths.piece.Edge;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.LegShape;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Motion;
import org.draftingmaths.piece.Panels;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Slash;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.piece.Stay;
import org.draftingmaths.piece.Use;
import org.draftingmaths.unit.Asked;

/** Principle one: a dart is an angle, and may be moved to wherever a slash from its apex ends. */
public final class Darts {

    /** Legs may differ by rounding alone, in mm, for one to be turned on to the other. */
    private static final double LEGS = 1e-6;

    /** Shares that come to the whole may miss it by rounding. */
    private static final double SHARES = 1e-12;

    private Darts() {}

    /**
     * Moves a dart: slash from its apex to a place on an edge, close the dart, and the slash opens.
     *
     * <p>With {@code a} the dart's angle and {@code R} the length of the slash, the new dart has the angle {@code a} and the
     * intake {@code 2 R sin(a/2)}; its width is <em>not</em> that of the old. The pivot is the apex, never the sewn point.
     *
     * <p>Conserved: the angle at the apex, the base length of every edge, the net area, the grain of the part that stays.
     * Changed: the place of the part that turns, by the dart's angle. Where the old dart's edge turns by more than half a degree once
     * it is closed, the ledger says so: it is then to be blended.
     *
     * <pre>{@code
     * Reworked moved = Darts.rotate(front, "waist dart", Spot.on("side seam", 60), "side dart");
     * Piece back = Panels.undo(moved);
     * }</pre>
     *
     * @param piece the piece
     * @param dart the name of the dart to close
     * @param to where the new dart is to open, on an edge that is not a fold
     * @param name the name of the new dart; it keeps the old one's set-back and is pressed as the trade does: upright darts to
     *     the centre, level ones down ({@code Piece.using} presses it otherwise)
     * @return the piece and what was done
     * @throws DraftingException when the legs differ (make them equal first) or are shaped (make them straight first), when the
     *     slash leaves the cloth or ends on a fold, or when the part that turns would lie over another
     */
    public static Reworked rotate(Piece piece, String dart, Spot to, String name) {
        requireNotDoublePointed(piece, dart, "Rotate '" + dart + "' to " + to.words());
        return rotateBy(piece, dart, to, name, Measured.angle(piece, dart));
    }

    /**
     * Moves part of a dart: the slash opens by {@code angle}, and the dart keeps the rest. The angles add up; the intakes do
     * not, unless all legs are equal.
     *
     * @param piece the piece
     * @param dart the name of the dart
     * @param to where the new dart is to open
     * @param name the name of the new dart
     * @param angle the angle to be moved, in radians: more than none, at most the dart's
     * @return the piece and what was done
     * @throws DraftingException as {@link #rotate}, or when more is asked than the dart has
     */
    public static Reworked rotateBy(Piece piece, String dart, Spot to, String name, double angle) {
        return rotateBy(piece, dart, to, name, angle, Stay.CENTRE);
    }

    /**
     * Moves part of a dart, and says which part of the piece stays where it is.
     *
     * @param piece the piece
     * @param dart the name of the dart
     * @param to where the new dart is to open
     * @param name the name of the new dart
     * @param angle the angle to be moved, in radians: more than none, at most the dart's
     * @param stay which part stays
     * @return the piece and what was done
     * @throws IllegalArgumentException when the angle is not a number
     * @throws DraftingException as {@link #rotate}, or when more is asked than the dart has
     */
    public static Reworked rotateBy(Piece piece, String dart, Spot to, String name, double angle, Stay stay) {
        Asked.angle("An angle to be moved", angle);
        String asked = "Rotate '" + dart + "' to " + to.words();
        Use.Dart use = sewn(piece, dart);
        requireNoFold(piece, to, asked);
        requireEqualLegs(piece, dart, asked);
        double whole = requireAngle(piece, dart, angle, asked);
        Vector2D apex = Measured.tip(piece, dart);
        requireNoMouth(piece, apex, to, asked);
        Reworked cut = Panels.cut(piece, Slash.straight(name, to, Spot.tip(dart)));
        Map<String, Motion> motions = Map.of(
                dart, Measured.widen(cut.piece(), dart, apex, -angle),
                name, Measured.widen(cut.piece(), name, apex, angle));
        Reworked opened = Panels.open(cut.piece(), motions, stay, asked);
        Pressed pressed = Pressed.byCustom(opened.piece(), name);
        Reworked used = Panels.use(opened.piece(), name, new Use.Dart(use.setBack(), pressed.leg()));
        Piece moved = used.piece();
        DartMoved told = new DartMoved(
                dart, name, angle, left(whole, angle), Measured.intake(piece, dart), Measured.intake(moved, name));
        return new Reworked(
                moved,
                Ledger.of(told)
                        .then(cut.ledger())
                        .then(opened.ledger())
                        .then(used.ledger())
                        .then(pressed)
                        .then(closed(piece, dart, whole, angle)));
    }

    /**
     * Lays the whole of a dart into another that has the same apex: with {@code a} and {@code b} their angles, the one goes and the other
     * has the angle {@code a + b}. What becomes of the surplus at the other stays as it was: a gathered slash is gathered more.
     *
     * <p>Conserved and changed: as {@link #rotate}.
     *
     * <pre>{@code
     * Reworked one = Darts.combine(front, "side dart", "waist dart");
     * }</pre>
     *
     * @param piece the piece
     * @param dart the name of the dart to close
     * @param into the name of the dart or slash that takes its angle
     * @return the piece and what was done
     * @throws DraftingException when the two do not end at one point; or as {@link #rotate}
     */
    public static Reworked combine(Piece piece, String dart, String into) {
        requireNotDoublePointed(piece, dart, combining(dart, into));
        return combineBy(piece, dart, into, Measured.angle(piece, dart));
    }

    /**
     * Lays part of a dart into another that has the same apex.
     *
     * @param piece the piece
     * @param dart the name of the dart that closes by the angle
     * @param into the name of the dart or slash that opens by it
     * @param angle the angle to be moved, in radians: more than none, at most the dart's
     * @return the piece and what was done
     * @throws IllegalArgumentException when the angle is not a number, or both names are one
     * @throws DraftingException as {@link #combine}, or when more is asked than the dart has
     */
    public static Reworked combineBy(Piece piece, String dart, String into, double angle) {
        String asked = combining(dart, into);
        if (dart.equals(into)) {
            throw new IllegalArgumentException("'" + dart + "' cannot be combined with itself.");
        }
        requireNotDoublePointed(piece, into, asked);
        requireEqualLegs(piece, dart, asked);
        double whole = requireAngle(piece, dart, angle, asked);
        Vector2D apex = Measured.tip(piece, dart);
        double apart = apex.distance(Measured.tip(piece, into));
        if (apart > LEGS) {
            throw new DraftingException(
                    asked,
                    "they do not end at one point, and a part can turn about one point only",
                    new Reach(Quantity.LENGTH, apart, 0, 0));
        }
        Map<String, Motion> motions =
                Map.of(dart, Measured.widen(piece, dart, apex, -angle), into, Measured.widen(piece, into, apex, angle));
        Reworked opened = Panels.open(piece, motions, Stay.CENTRE, asked);
        DartMoved told = new DartMoved(
                dart,
                into,
                angle,
                left(whole, angle),
                Measured.intake(piece, dart),
                Measured.intake(opened.piece(), into));
        return new Reworked(
                opened.piece(), Ledger.of(told).then(opened.ledger()).then(closed(piece, dart, whole, angle)));
    }

    private static String combining(String dart, String into) {
        return "Combine '" + dart + "' with '" + into + "'";
    }

    /**
     * Moves a share of a dart: the angle is divided, {@code share} of it opens at the new place. A share of the width would be
     * another thing, and wrong.
     *
     * @param piece the piece
     * @param dart the name of the dart
     * @param to where the new dart is to open
     * @param name the name of the new dart
     * @param share the share of the dart's angle: more than 0, at most 1
     * @return the piece and what was done
     * @throws IllegalArgumentException when the share is not a share
     * @throws DraftingException as {@link #rotate}
     */
    public static Reworked rotateShare(Piece piece, String dart, Spot to, String name, double share) {
        Asked.share("A share of a dart", share);
        requireNotDoublePointed(piece, dart, "Rotate '" + dart + "' to " + to.words());
        return rotateBy(piece, dart, to, name, share * Measured.angle(piece, dart));
    }

    /**
     * Moves as much of a dart as gives the new dart a wanted intake: with {@code R} the length of the slash and {@code w} the
     * intake, the angle {@code 2 asin(w / 2R)}.
     *
     * @param piece the piece
     * @param dart the name of the dart
     * @param to where the new dart is to open
     * @param name the name of the new dart
     * @param intake the width of the new dart's mouth, in mm
     * @return the piece and what was done
     * @throws IllegalArgumentException when the intake is not more than 0
     * @throws DraftingException when that is more than the dart has, with the widest that is possible; or as {@link #rotate}
     */
    public static Reworked rotateToIntake(Piece piece, String dart, Spot to, String name, double intake) {
        Asked.length("An intake", intake);
        String asked = "Rotate '" + dart + "' to " + to.words();
        requireNotDoublePointed(piece, dart, asked);
        Piece cut = Panels.cut(piece, Slash.straight(name, to, Spot.tip(dart))).piece();
        double leg = Measured.leg(cut, name, Leg.BEFORE).length();
        double widest = 2 * leg * Math.sin(Measured.angle(piece, dart) / 2);
        if (intake > widest + LEGS) {
            throw new DraftingException(
                    asked, "the dart has not so much intake there", new Reach(Quantity.LENGTH, intake, 0, widest));
        }
        return rotateBy(
                piece,
                dart,
                to,
                name,
                Math.min(Measured.angle(piece, dart), 2 * Math.asin(Math.min(1, intake / 2 / leg))));
    }

    /**
     * One of the places to which a dart is divided.
     *
     * @param to where the new dart is to open
     * @param name the name of the new dart
     * @param share the share of the dart's angle that goes there: more than 0
     * @param point where the new dart is to point, drawn before anything moves; the apex when empty
     */
    public record Part(Spot to, String name, double share, Optional<Vector2D> point) {
        /** Checks the share. */
        public Part {
            Asked.share("A share of a dart", share);
            if (point.filter(place -> !place.isFinite()).isPresent()) {
                throw new IllegalArgumentException(
                        "Dart '" + name + "' needs a place to point to: " + point.get() + ".");
            }
        }

        /**
         * A new dart that points to the apex.
         *
         * @param to where the new dart is to open
         * @param name the name of the new dart
         * @param share the share of the dart's angle that goes there: more than 0
         */
        public Part(Spot to, String name, double share) {
            this(to, name, share, Optional.empty());
        }

        /**
         * The same dart pointing beside the apex, as the darts of a cluster do. The slash goes to this point and on to the apex.
         *
         * @param other where it is to point
         * @return the part
         */
        public Part pointing(Vector2D other) {
            return new Part(to, name, share, Optional.of(other));
        }
    }

    /**
     * Divides a dart among several places in one move: with {@code a} its angle and {@code f_i} the shares, dart {@code i} opens by
     * {@code f_i a} and the old one keeps {@code (1 - sum f_i) a}. Each sector between two openings turns about the apex by the sum
     * of what opens and closes between it and the part that stays.
     *
     * <p>A dart of a cluster (parallel, graduated, radiating) points to a place {@code T} beside the apex {@code P}: its slash goes to
     * {@code T} and on to {@code P}, and opens about {@code P}. {@code T} comes apart by {@code 2 |TP| sin(f_i a / 2)}; the dart is sewn
     * to the middle of the two, moved square on to the line on which both legs are alike, and the ledger says by how much the legs then
     * differ from the wedge.
     *
     * <pre>{@code
     * Reworked divided = Darts.divide(front, "waist dart", List.of(
     *         new Darts.Part(Spot.on("shoulder", 60), "shoulder dart", 0.5),
     *         new Darts.Part(Spot.on("side seam", 90), "side dart", 0.5)));
     * }</pre>
     *
     * @param piece the piece
     * @param dart the name of the dart
     * @param parts where it goes, in any order
     * @return the piece and what was done
     * @throws DraftingException when the shares come to more than the whole, or as {@link #rotate}
     */
    public static Reworked divide(Piece piece, String dart, List<Part> parts) {
        String asked = "Divide '" + dart + "'";
        requireNotDoublePointed(piece, dart, asked);
        Use.Dart use = sewn(piece, dart);
        requireEqualLegs(piece, dart, asked);
        double whole = Measured.angle(piece, dart);
        double sum = parts.stream().mapToDouble(Part::share).sum();
        if (parts.isEmpty() || sum > 1 + SHARES) {
            throw new DraftingException(
                    asked,
                    "the shares come to more than the dart has",
                    new Reach(Quantity.ANGLE, sum * whole, 0, whole));
        }
        Vector2D apex = Measured.tip(piece, dart);
        Reworked cut = new Reworked(piece, Ledger.EMPTY);
        for (Part part : parts) {
            requireNoFold(piece, part.to(), asked);
            Reworked next = Panels.cut(cut.piece(), slash(cut.piece(), dart, part));
            cut = new Reworked(next.piece(), cut.ledger().then(next.ledger()));
        }
        Map<String, Motion> motions = new TreeMap<>();
        motions.put(dart, Measured.widen(cut.piece(), dart, apex, -Math.min(1, sum) * whole));
        for (Part part : parts) {
            double angle = part.share() / Math.max(1, sum) * whole;
            motions.put(part.name(), Measured.widen(cut.piece(), part.name(), apex, angle));
        }
        Reworked opened = Panels.open(cut.piece(), motions, Stay.CENTRE, asked);
        return told(
                piece,
                dart,
                parts,
                use,
                new Reworked(opened.piece(), cut.ledger().then(opened.ledger())));
    }

    private static Slash slash(Piece piece, String dart, Part part) {
        return part.point()
                .map(point -> new Slash(
                        part.name(),
                        part.to(),
                        Spot.tip(dart),
                        Optional.of(
                                CurvePath.polyline(Measured.at(piece, part.to()), point, Measured.tip(piece, dart)))))
                .orElseGet(() -> Slash.straight(part.name(), part.to(), Spot.tip(dart)));
    }

    private static Reworked told(Piece before, String dart, List<Part> parts, Use.Dart use, Reworked done) {
        Piece piece = done.piece();
        double left = Measured.angle(before, dart);
        Ledger told = Ledger.EMPTY;
        Ledger uses = Ledger.EMPTY;
        Ledger pressing = Ledger.EMPTY;
        for (Part part : parts) {
            Pressed pressed = Pressed.byCustom(piece, part.name());
            Optional<ClusterPoint> point = ClusterPoint.of(piece, part);
            double setBack = point.map(ClusterPoint::setBack).orElse(use.setBack());
            Reworked used = Panels.use(piece, part.name(), new Use.Dart(setBack, pressed.leg()));
            piece = used.piece();
            uses = uses.then(used.ledger());
            if (point.isPresent()) {
                pressing = pressing.then(point.get());
            }
            double angle = Measured.angle(piece, part.name());
            left = left(left, angle);
            told = told.then(new DartMoved(
                    dart,
                    part.name(),
                    angle,
                    left,
                    Measured.intake(before, dart),
                    Measured.intake(piece, part.name())));
            pressing = pressing.then(pressed);
        }
        return new Reworked(
                piece,
                told.then(done.ledger())
                        .then(uses)
                        .then(pressing)
                        .then(left == 0 ? Kink.at(before, dart) : Ledger.EMPTY));
    }

    /**
     * Sets a dart's sewn point back from the apex, on the bisector. The leg ends do not move; the sewn angle grows from {@code a} to
     * {@code 2 atan((w/2) / (L cos(a/2) - s))} with {@code L} the leg, {@code w} the intake and {@code s} the set-back. Set back after
     * moving, never before: a dart turns about its apex.
     *
     * @param piece the piece
     * @param dart the name of the dart
     * @param setBack how far in mm the sewn point lies from the apex
     * @return the piece and what was done
     * @throws DraftingException when nothing would be left to sew, with the largest set-back that is possible
     */
    public static Reworked setBack(Piece piece, String dart, double setBack) {
        Use.Dart use = sewn(piece, dart);
        Reworked used = Panels.use(piece, dart, use.withSetBack(setBack));
        Piece set = used.piece();
        return new Reworked(
                set,
                used.ledger()
                        .then(new Change(
                                "sewn angle of '" + dart + "'",
                                Quantity.ANGLE,
                                sewnAngle(piece, dart),
                                sewnAngle(set, dart))));
    }

    /**
     * The angle at which a dart is sewn, at its sewn point.
     *
     * @param piece the piece
     * @param dart the name of the dart
     * @return the angle in radians
     */
    public static double sewnAngle(Piece piece, String dart) {
        Vector2D tip = DartEnd.sewnTip(piece, dart);
        double half = Measured.intake(piece, dart) / 2;
        Vector2D middle = Measured.leg(piece, dart, Leg.BEFORE)
                .start()
                .lerp(Measured.leg(piece, dart, Leg.AFTER).start(), 0.5);
        return 2 * Math.atan(half / tip.distance(middle));
    }

    /**
     * Leaves a dart unsewn: its surplus is eased, gathered or hangs free, and the edge is drawn across it as one smooth curve. The
     * angle stays where it is and is not lost; a seam must declare what is held in. A double-pointed dart is a mark: it goes, and what it took
     * in hangs free at its level.
     *
     * @param piece the piece
     * @param dart the name of the dart
     * @param kind what it is left as
     * @return the piece and what was done: the folded length of its edge grows by what was stitched out before; where the edge bends by
     *     more than 10 degrees to come across, that it is better drawn anew
     */
    public static Reworked leave(Piece piece, String dart, Use.Kind kind) {
        if (piece.insideDarts().stream().anyMatch(inside -> inside.name().equals(dart))) {
            return Panels.unmark(piece, dart);
        }
        sewn(piece, dart);
        Reworked used = Panels.use(piece, dart, new Use.Left(kind));
        Piece left = used.piece();
        String edge = ((Border.OfEdge) piece.opening(dart).mouth().border()).edge();
        return new Reworked(
                left,
                used.ledger()
                        .then(new Change(
                                "folded length of '" + edge + "'",
                                Quantity.LENGTH,
                                Lengths.folded(piece, edge),
                                Lengths.folded(left, edge)))
                        .then(Bent.across(left, dart)));
    }

    private static double requireAngle(Piece piece, String dart, double angle, String asked) {
        double whole = Measured.angle(piece, dart);
        if (!(angle > 0 && angle <= whole)) {
            throw new DraftingException(
                    asked, "the dart has no such angle", new Reach(Quantity.ANGLE, angle, 0, whole));
        }
        return whole;
    }

    /** What is to be said of the edge where nothing is left of a dart. */
    private static Ledger closed(Piece before, String dart, double whole, double angle) {
        return left(whole, angle) == 0 ? Kink.at(before, dart) : Ledger.EMPTY;
    }

    /** What is left of an angle; rounding is nothing. */
    private static double left(double whole, double angle) {
        return Math.abs(whole - angle) < SHARES ? 0 : whole - angle;
    }

    private static void requireNoMouth(Piece piece, Vector2D apex, Spot to, String asked) {
        piece.openings().stream()
                .filter(other -> to instanceof Spot.On on
                        && other.mouth().border().equals(on.border())
                        && Math.abs(other.mouth().before() - on.arc()) <= LEGS)
                .filter(other -> Measured.tip(piece, other.name()).distance(apex) <= LEGS)
                .findFirst()
                .ifPresent(other -> {
                    throw new DraftingException(
                            asked,
                            "'" + other.name()
                                    + "' opens just there from the same point; combine the two, or name another"
                                    + " place");
                });
    }

    private static Use.Dart sewn(Piece piece, String dart) {
        if (piece.opening(dart).mouth().use() instanceof Use.Dart use) {
            return use;
        }
        throw new IllegalArgumentException("'" + dart + "' is not sewn as a dart.");
    }

    private static void requireNotDoublePointed(Piece piece, String dart, String asked) {
        if (piece.insideDarts().stream().anyMatch(each -> each.name().equals(dart))) {
            throw new DraftingException(
                    asked,
                    "it is double-pointed, and no part can turn about its points; cut the piece through its widest place"
                            + " first");
        }
    }

    /** A corner belongs to two edges: an opening there breaks the fold whichever of them owns it. */
    private static void requireNoFold(Piece piece, Spot to, String asked) {
        if (!(to instanceof Spot.On on && on.border() instanceof Border.OfEdge edge)) {
            return;
        }
        piece.edges().stream()
                .filter(fold -> fold.role() == Role.FOLD)
                .filter(fold ->
                        fold.name().equals(edge.edge()) || atTheirCorner(piece, piece.edge(edge.edge()), on, fold))
                .findFirst()
                .ifPresent(fold -> {
                    throw new DraftingException(
                            asked,
                            "'" + fold.name()
                                    + "' is a fold, and an opening there would destroy it; make it a seam first");
                });
    }

    private static boolean atTheirCorner(Piece piece, Edge edge, Spot.On on, Edge fold) {
        if (on.arc() > LEGS && on.arc() < edge.length() - LEGS) {
            return false;
        }
        CurvePath line = Paper.edge(piece, edge.name());
        CurvePath centre = Paper.edge(piece, fold.name());
        Vector2D corner = on.arc() <= LEGS ? line.start() : line.end();
        return corner.distance(centre.start()) <= LEGS || corner.distance(centre.end()) <= LEGS;
    }

    private static void requireEqualLegs(Piece piece, String dart, String asked) {
        double before = Measured.leg(piece, dart, Leg.BEFORE).length();
        double after = Measured.leg(piece, dart, Leg.AFTER).length();
        if (Math.abs(before - after) > LEGS) {
            throw new DraftingException(
                    asked,
                    "its legs are " + finely(before, after) + " mm and " + finely(after, before)
                            + " mm long and cannot be laid on one another; make them equal first, with Legs.equalise");
        }
        if (!sewn(piece, dart).shape().equals(LegShape.STRAIGHT)) {
            throw new DraftingException(
                    asked,
                    "its legs are shaped for where they lie, and nothing turns about a curve; give it straight legs first,"
                            + " with Piece.using");
        }
    }

    /** A length with as many decimals as tell it from another. */
    private static String finely(double length, double other) {
        int decimals = 2;
        String text = String.format(Locale.ROOT, "%.2f", length);
        while (decimals < 9 && text.equals(String.format(Locale.ROOT, "%." + decimals + "f", other))) {
            decimals++;
            text = String.format(Locale.ROOT, "%." + decimals + "f", length);
        }
        return text;
    }
}
