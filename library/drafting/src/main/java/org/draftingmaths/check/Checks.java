package org.draftingmaths.check;

import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Meet;
import org.draftingmaths.curve.Meets;
import org.draftingmaths.curve.Nearest;
import org.draftingmaths.fullness.Pleats;
import org.draftingmaths.fullness.Spread;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.seam.Walk;
import org.draftingmaths.unit.Steps;

/** Checks on a whole draft. */
public final class Checks {

    /** How far in mm the sewn lengths of mates may lie apart: half a millimetre, as digital drafts are trued (common practice). */
    public static final double SEAM_TOLERANCE = 0.5;

    /** How far in mm from a dart's point the stitching of a tuck in it ends at least (common practice, as for the dart's own set-back). */
    private static final double SHORT_OF_POINT = 20;

    private Checks() {}

    /**
     * What {@link #all} looks at and what not, in words to stand after a list of findings: that nothing was found says no more than that
     * nothing was found there.
     */
    public static final String LOOKED_AT =
            "Looked at: outlines on paper; legs, points, widths, slivers and underlays of darts, and the edges they are folded in; corners in edges; folds,"
                    + " slashes and pleats; grain lines that are drawn; lengths, notches, ease and ends of seams; the balance of side seams. Not looked at:"
                    + " allowances, labels, missing grain lines and seams that nobody declared, which are of the finished style; whether a head goes"
                    + " through; and the fit.";

    /**
     * What is wrong with a draft: outlines that cross themselves; darts whose legs are unequal, whose point lies off or beyond, that are too wide or too
     * small, whose underlay has no room, that leave a sliver, that leave a corner in their edge when they are folded; corners in an edge where no dart is; slashes that open too wide and
     * underlays that lie over one another; folds that are not straight and edges not square to them; grain lines that leave their piece or run askew to its fold; side seams that run unlike to the grain; notches that
     * are too many or read the same both ways; ease that no notches bound; seams whose notch intervals do not match, and finished edges or hems with a peak or a hollow where they cross a seam.
     *
     * @param draft the draft
     * @param tolerance how far in mm lengths may lie apart, for example {@link #SEAM_TOLERANCE}
     * @return the findings: piece by piece, then seam by seam, then lines
     */
    public static List<Finding> all(Draft draft, double tolerance) {
        return all(draft, tolerance, DraftLimits.COMMON);
    }

    /**
     * What is wrong with a draft, with limits of one's own.
     *
     * @param draft the draft
     * @param tolerance how far in mm lengths may lie apart
     * @param limits within which limits a draft is held to be good, and what is meant as it is
     * @return the findings: piece by piece, then seam by seam, then lines
     */
    public static List<Finding> all(Draft draft, double tolerance, DraftLimits limits) {
        requireTolerance(tolerance);
        return limits.unmeant(Stream.of(
                        draft.pieces().stream().flatMap(piece -> piece(piece, tolerance, limits.darts()).stream()),
                        draft.pieces().stream()
                                .flatMap(piece -> Spread.findings(piece, Spread.Limits.DEFAULT).stream()),
                        draft.pieces().stream().flatMap(piece -> Pleats.findings(piece, SHORT_OF_POINT).stream()),
                        draft.pieces().stream()
                                .flatMap(piece -> NotchChecks.of(piece, tolerance, limits.joint()).stream()),
                        draft.seams().stream().flatMap(seam -> seam(draft, seam, tolerance)),
                        LineChecks.of(draft, limits).stream())
                .flatMap(each -> each)
                .toList());
    }

    /**
     * Figures printed in inches and in centimetres that cannot be one length, or are finer than the steps promised.
     *
     * @param figures the figures as they are printed
     * @param steps the steps to which they were to be rounded
     * @return the findings, figure by figure
     * @throws IllegalArgumentException when a figure cannot be read
     */
    public static List<Finding> printed(List<PrintedPair> figures, Steps steps) {
        return figures.stream().flatMap(figure -> figure.findings(steps)).toList();
    }

    /**
     * What is wrong with one piece by itself.
     *
     * @param piece the piece
     * @param tolerance how far in mm the legs of a dart may lie apart
     * @return the findings
     */
    public static List<Finding> piece(Piece piece, double tolerance) {
        return piece(piece, tolerance, DartLimits.COMMON);
    }

    /**
     * What is wrong with one piece by itself, with limits of one's own for its darts.
     *
     * @param piece the piece
     * @param tolerance how far in mm the legs of a dart may lie apart
     * @param limits within which limits darts are held to be good
     * @return the findings
     */
    public static List<Finding> piece(Piece piece, double tolerance, DartLimits limits) {
        requireTolerance(tolerance);
        return Stream.concat(outline(piece).stream(), DartChecks.of(piece, tolerance, limits).stream())
                .toList();
    }

    private static void requireTolerance(double tolerance) {
        if (!(tolerance >= 0 && Double.isFinite(tolerance))) {
            throw new IllegalArgumentException("A tolerance is 0 mm or more: " + tolerance + " mm.");
        }
    }

    /** The outline on paper must not cross itself. */
    private static List<Finding> outline(Piece piece) {
        CurvePath outline = Paper.outline(piece);
        Meets meets = Meets.selfMeets(outline);
        int crossings = meets.points().size() + meets.overlaps().size();
        if (crossings == 0) {
            return List.of();
        }
        String where =
                meets.points().isEmpty() ? "" : where(piece, meets.points().get(0));
        return List.of(
                new Finding(
                        Finding.Kind.OUTLINE_CROSSES,
                        "'" + piece.name() + "'" + where,
                        Quantity.COUNT,
                        crossings,
                        0,
                        0,
                        "Follow the outline from there, and draw these edges again so that each meets the next at their ends only."));
    }

    private static String where(Piece piece, Meet meet) {
        List<String> edges = Paper.sides(piece).stream()
                .filter(side -> Nearest.of(side.path(), meet.point()).distance() <= CurvePath.JOINT)
                .map(side -> "'" + side.edge() + "'")
                .distinct()
                .toList();
        return String.format(
                Locale.ROOT,
                ", where %s %s, at (%.1f, %.1f)",
                String.join(" and ", edges),
                edges.size() > 1 ? "meet" : "meets itself",
                meet.point().getX(),
                meet.point().getY());
    }

    private static Stream<Finding> seam(Draft draft, Seam seam, double tolerance) {
        OptionalInt intervals = Walk.intervals(draft, seam);
        List<Finding> nowhere = seam.held().stream()
                .filter(held -> intervals.isPresent() && held.interval() > intervals.getAsInt())
                .map(held -> new Finding(
                        Finding.Kind.EASE_NOWHERE,
                        "seam '" + seam.name() + "'",
                        Quantity.COUNT,
                        held.interval(),
                        intervals.getAsInt(),
                        0,
                        "Notch intervals count from 1 in the direction of sewing; declare it for one that is there."))
                .toList();
        return nowhere.isEmpty()
                ? Stream.concat(seam(Walk.of(draft, seam), tolerance).stream(), unbounded(seam, intervals, tolerance))
                : nowhere.stream();
    }

    /** Ease that no notches bound and of which nothing is said may be held in anywhere; gathers along a whole edge start and stop with it. */
    private static Stream<Finding> unbounded(Seam seam, OptionalInt intervals, double tolerance) {
        double eased = seam.held().stream()
                .filter(held -> held.how() == Seam.How.EASE && held.reason().isBlank())
                .mapToDouble(Seam.Held::surplus)
                .sum();
        return intervals.equals(OptionalInt.of(1)) && Math.abs(eased) > tolerance
                ? Stream.of(
                        new Finding(
                                Finding.Kind.FULLNESS_UNBOUNDED,
                                "seam '" + seam.name() + "'",
                                Quantity.LENGTH,
                                eased,
                                0,
                                tolerance,
                                "Set notches where it starts and stops on both edges, and declare it for the interval between them; or say how it lies, for example 'evenly from end to end'."))
                : Stream.of();
    }

    private static List<Finding> seam(Walk walk, double tolerance) {
        Stream<Finding> unpartnered = walk.partnered()
                ? Stream.of()
                : Stream.of(new Finding(
                        Finding.Kind.NOTCHES_UNPARTNERED,
                        seam(walk),
                        Quantity.COUNT,
                        walk.firstNotches(),
                        walk.secondNotches(),
                        0,
                        "Give every notch its partner at the same distance, or take it away."));
        Stream<Finding> lengths = walk.intervals().stream()
                .filter(interval -> Math.abs(interval.difference()) > tolerance)
                .map(interval -> new Finding(
                        Finding.Kind.SEAM_LENGTHS_DIFFER,
                        place(walk, interval),
                        Quantity.LENGTH,
                        interval.first() - interval.surplus(),
                        interval.second(),
                        tolerance));
        return Stream.concat(unpartnered, lengths).toList();
    }

    private static String seam(Walk walk) {
        return seam(walk, walk.seam().first().parts(), walk.seam().second().parts());
    }

    private static String seam(Walk walk, List<Seam.Part> first, List<Seam.Part> second) {
        return "seam '" + walk.seam().name() + "', " + Seam.Mate.words(first) + " on " + Seam.Mate.words(second);
    }

    /** An interval by the edges that meet there, and by its number. */
    private static String place(Walk walk, Walk.Interval interval) {
        String seam = seam(walk, interval.firstParts(), interval.secondParts());
        return walk.intervals().size() == 1
                ? seam
                : seam + ", notch interval " + interval.number() + " of "
                        + walk.intervals().size();
    }
}
