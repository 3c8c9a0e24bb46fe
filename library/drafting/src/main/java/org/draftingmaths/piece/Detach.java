package org.draftingmaths.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Meet;
import org.draftingmaths.curve.Meets;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Entry;
import org.draftingmaths.ledger.Ledger;

/**
 * One piece made two along a line, and made one again. It is a primitive as {@link Panels} has them, with its inverse.
 *
 * <p>Conserved: with {@code A} the area, {@code A(before) + A(after) = A}; the shape of every panel; the base lengths, the two parts
 * of an edge adding up to it; every mark, dart and level line, on the part where it lies; the direction of the grain, of which both
 * parts get a line. Both parts inherit the line as an edge of one length, with one direction and the same marks, so that they can
 * be sewn together flat.
 */
public final class Detach {

    /** How far a line may miss the place where it is to end, in mm. */
    private static final double ENDS = Panels.TOUCH;

    private Detach() {}

    /**
     * Cuts a piece in two along a style line. A dart that it crosses is folded first and cut through: the part with its point keeps it
     * as a dart in the new edge, the other part has a gap with the same legs, ready to be closed.
     *
     * <pre>{@code
     * Detached parted = Detach.across(
     *         front, StyleLine.straight("yoke line", Spot.on("side seam", 150), Spot.on("centre front", 60)), "front", "yoke");
     * Piece again = Detach.attach(parted);
     * }</pre>
     *
     * @param piece the piece
     * @param line where to cut
     * @param before the name of the part met first along the edge on which the line starts
     * @param after the name of the other
     * @return the two parts and what was done
     * @throws DraftingException when the line leaves the cloth, misses a dart it is said to cross or crosses one it is not said to,
     *     or when another opening still holds the parts together
     */
    public static Detached across(Piece piece, StyleLine line, String before, String after) {
        String asked = line.words();
        requireTwoNames(before, after);
        line.folded().forEach(piece::opening);
        List<Link> links = new ArrayList<>();
        Reworked cut = new Reworked(piece, Ledger.EMPTY);
        Spot from = line.from();
        AffineTransformMatrix2D fold = Isometry.NONE;
        CurvePath whole = line.along().orElseGet(() -> straight(piece, line));
        double begun = 0;
        Optional<Fold> over = Optional.empty();
        for (int i = 0; i <= line.folded().size(); i++) {
            String name = line.folded().isEmpty() ? line.name() : line.name() + " " + (i + 1);
            CurvePath here = whole.between(begun, whole.length()).transformed(fold.inverse());
            requireNoOpenDart(cut.piece(), line, here, asked);
            if (i == line.folded().size()) {
                cut = cut.then(Panels.cut(cut.piece(), new Slash(name, from, line.to(), Optional.of(here))));
                links.add(new Link(name, true, over));
                break;
            }
            Fold next = met(piece, line.folded().get(i), here, asked);
            Spot at = onLeg(next.dart(), next.near(), next.arc());
            CurvePath stretch = here.between(0, next.after());
            cut = cut.then(Panels.cut(cut.piece(), new Slash(name, from, at, Optional.of(stretch))));
            links.add(new Link(name, true, over));
            over = Optional.of(next);
            fold = next.shut(piece).premultiply(fold);
            begun += next.after();
            from = onLeg(next.dart(), next.near().other(), next.arc());
        }
        return Parting.part(cut, line.name(), links, line.marks(), List.of(before, after), asked);
    }

    /**
     * Cuts a piece in two along openings that meet at one point: the dart is taken into the seam. With the legs of each opening
     * equal, the two edges have one length, whatever the width of the darts.
     *
     * <pre>{@code
     * Piece slashed = Panels.cut(front, Slash.straight("upper", Spot.on("shoulder", 60), Spot.tip("waist dart"))).piece();
     * Detached parted = Detach.through(slashed, "panel seam", List.of("upper", "waist dart"), List.of(), "centre", "side");
     * }</pre>
     *
     * @param piece the piece
     * @param line the name of the edge that both parts get
     * @param openings one opening from edge to edge, or two that end at one point, in the order of the line
     * @param marks where match points are set on both parts, in mm along the line from its start
     * @param before the name of the part met first along the edge where the first opening has its mouth
     * @param after the name of the other
     * @return the two parts and what was done
     * @throws IllegalArgumentException when there are not one or two openings
     * @throws DraftingException when they do not part the piece in two
     */
    public static Detached through(
            Piece piece, String line, List<String> openings, List<Double> marks, String before, String after) {
        Names.require(line, "A style line");
        requireTwoNames(before, after);
        if (openings.isEmpty() || openings.size() > 2) {
            throw new IllegalArgumentException(
                    "A line goes through one opening from edge to edge or through two that end at one point: "
                            + openings + ".");
        }
        String asked = "Cut along '" + line + "'";
        List<Link> links = new ArrayList<>();
        for (String each : openings) {
            links.add(new Link(piece.opening(each).name(), links.isEmpty(), Optional.empty()));
        }
        requireMeeting(piece, openings, asked);
        return Parting.part(new Reworked(piece, Ledger.EMPTY), line, links, marks, List.of(before, after), asked);
    }

    private static void requireTwoNames(String before, String after) {
        if (before.equals(after)) {
            throw new IllegalArgumentException("Two parts need two names; both would be '" + before + "'.");
        }
    }

    private static void requireMeeting(Piece piece, List<String> openings, String asked) {
        boolean whole = openings.size() == 1
                && piece.opening(openings.get(0)).farMouth().isPresent();
        boolean meeting = openings.size() == 2
                && Measured.tip(piece, openings.get(0)).distance(Measured.tip(piece, openings.get(1))) <= Panels.TOUCH;
        if (!whole && !meeting) {
            throw new DraftingException(
                    asked,
                    openings.size() == 1
                            ? "'" + openings.get(0) + "' does not reach from edge to edge"
                            : "'" + openings.get(0) + "' and '" + openings.get(1) + "' do not end at one point");
        }
    }

    /**
     * Makes one piece of the two again, from the parts and the ledger alone.
     *
     * @param parted two parts as they came apart
     * @return the piece as it was
     * @throws DraftingException when one of them was changed since
     */
    public static Piece attach(Detached parted) {
        List<Entry> entries = parted.ledger().entries();
        Step.Parted step = entries.stream()
                .filter(Step.Parted.class::isInstance)
                .map(Step.Parted.class::cast)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("The ledger tells of no parting."));
        Piece one = Parting.rejoin(parted.before(), parted.after(), step);
        Ledger cuts = new Ledger(entries.stream()
                .filter(entry -> !(entry instanceof Step.Parted))
                .toList());
        return Panels.undo(new Reworked(one, cuts));
    }

    // ------------------------------------------------------------------------------------- across folded darts

    private static Spot onLeg(String dart, Leg leg, double arc) {
        return new Spot.On(new Border.OfLeg(dart, leg), arc, Optional.empty());
    }

    /** Straight from end to end with the darts folded: the far end is turned back over each fold. */
    private static CurvePath straight(Piece piece, StyleLine line) {
        Vector2D start = Measured.at(piece, line.from());
        Vector2D end = Measured.at(piece, line.to());
        AffineTransformMatrix2D fold = Isometry.NONE;
        for (String dart : line.folded()) {
            Vector2D here = fold.inverse().apply(start);
            fold = Fold.shut(piece, dart, nearer(piece, dart, here)).premultiply(fold);
        }
        return CurvePath.polyline(start, fold.apply(end));
    }

    /** The leg that is met first on the way from a point into the wedge. */
    private static Leg nearer(Piece piece, String dart, Vector2D from) {
        CurvePath before = Measured.leg(piece, dart, Leg.BEFORE);
        CurvePath after = Measured.leg(piece, dart, Leg.AFTER);
        Vector2D within = before.pointAt(before.length() / 2).lerp(after.pointAt(after.length() / 2), 0.5);
        CurvePath way = CurvePath.polyline(from, within);
        return first(way, before) <= first(way, after) ? Leg.BEFORE : Leg.AFTER;
    }

    private static double first(CurvePath way, CurvePath leg) {
        return Meets.of(way, leg).points().stream()
                .mapToDouble(Meet::onFirst)
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    /** Where a line meets a dart that it is said to cross. */
    private static Fold met(Piece piece, String dart, CurvePath line, String asked) {
        requireEqualLegs(piece.opening(dart), asked);
        Optional<Fold> first = Optional.empty();
        for (Leg leg : Leg.values()) {
            for (Meet meet : Meets.of(line, Measured.leg(piece, dart, leg)).points()) {
                if (meet.onFirst() > ENDS
                        && first.map(fold -> meet.onFirst() < fold.after()).orElse(true)) {
                    first = Optional.of(new Fold(dart, leg, meet.onSecond(), meet.onFirst()));
                }
            }
        }
        Fold found = first.orElseThrow(() ->
                new DraftingException(asked, "it does not cross '" + dart + "'; leave that out of the darts to fold"));
        double length = piece.opening(dart).base(found.near()).length();
        if (found.arc() <= ENDS || found.arc() >= length - ENDS) {
            throw new DraftingException(
                    asked,
                    "it passes just through an end of '" + dart + "'; cut a little beside it, or through its point");
        }
        return found;
    }

    /** A dart that lies open in the way of a line must be folded first: the line is one on the folded sheet only. */
    private static void requireNoOpenDart(Piece piece, StyleLine line, CurvePath here, String asked) {
        piece.openings().stream()
                .filter(opening -> opening.mouth().use() instanceof Use.Dart)
                .map(Opening::name)
                .filter(dart -> !line.folded().contains(dart))
                .filter(dart -> crosses(here, Measured.leg(piece, dart, Leg.BEFORE))
                        && crosses(here, Measured.leg(piece, dart, Leg.AFTER)))
                .findFirst()
                .ifPresent(dart -> {
                    throw new DraftingException(
                            asked, "'" + dart + "' lies open across it; fold it first, with folding(\"" + dart + "\")");
                });
    }

    private static boolean crosses(CurvePath line, CurvePath leg) {
        return Meets.of(line, leg).points().stream()
                .anyMatch(meet -> meet.onFirst() > ENDS && meet.onFirst() < line.length() - ENDS);
    }

    private static void requireEqualLegs(Opening dart, String asked) {
        double before = dart.before().length();
        double after = dart.after().length();
        if (Math.abs(before - after) > Panels.TOUCH) {
            throw new DraftingException(
                    asked,
                    String.format(
                            Locale.ROOT,
                            "the legs of '%s' are unequal (%.3f mm and %.3f mm) and cannot be folded on one another; make"
                                    + " them equal first",
                            dart.name(),
                            before,
                            after));
        }
    }
}
