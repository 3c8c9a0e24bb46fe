package org.draftingmaths.suppose;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.check.Checks;
import org.draftingmaths.check.Side;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.suppose.Supposition.Figure;
import org.draftingmaths.unit.Asked;

/**
 * The reverse check: what a stranger's outlines seem to be, and what is wrong if they are. Only what nobody declared is supposed.
 *
 * <p>TOLERANCE is the caller's, LENGTH is compared with darts closed, and every figure here is our own but for the half degree at a
 * fold (common practice). A rule asks for all it lists.
 *
 * <p><b>Darts</b>, in pieces that declare none.
 * <ul>
 *   <li><i>certain</i>: two lines of 20 mm or more run into the cloth and meet at a point; each strays from its chord by at most a
 *       fiftieth; they are equal within the tolerance; their angle is at most 25 degrees; with it closed the edge has a corner of at most
 *       15 degrees; the outline is not the same either way from the point (else it may be a neck opening or a slit).
 *   <li><i>likely</i>: the same with lengths in the ratio of at most 5 to 4, an angle of at most 45 degrees and a corner of at most 30
 *       degrees. Or a peak or dip on an edge, of less than a right angle and 150 mm: its two halves lie on one another when folded, and the
 *       lines that part the angle of the cloth at its two ends in two meet in one point within the piece; or one of these lines gives a
 *       dart that leaves a corner of at most 15 degrees when closed, the end running on into the edge at the other. That is the end of a
 *       dart as it is cut when folded.
 *   <li><i>possible</i>: a wedge on the axis of its piece; a peak on an edge that a dart would make smooth, but which does not fold on to
 *       it, with a finding of how far it misses.
 * </ul>
 * Darts that are certain or likely are laid in: the two parts of their edge become one, under the name of the first. Nothing is
 * said of their underlay, since an outline does not tell to which side it is pressed. An edge square to its dart's legs goes
 * straight on into the end of the dart: where the legs begin is then not to be seen, and no dart is told. A dart read from its end has its
 * angle only to some degrees, since it may be sewn to a point short of that of its legs; it is called wide, or its edge kinked, only 3
 * degrees beyond the limit.
 *
 * <p><b>Mates</b>, among edges of the role seam that stand in no seam. Each pair is laid on one another forwards and backwards, as it
 * is and turned over, and costs {@code 0.5 + share of length / 3 %} unless lengths are equal within the tolerance, {@code 0.25 + share of
 * the greatest distance / 1 %} (at most 2) unless shapes are over the length that both have, {@code miss / 20 degrees} (at most 1) for each end where the two angles of the
 * cloth miss a straight line by more than 3 degrees, 1 for notches without partner, a quarter when one piece is to be turned over, 2 within
 * one piece or between an edge and its own mirror image. Staying alone costs 4.5. The assignment of least total cost is
 * taken; nothing is taken greedily.
 * <ul>
 *   <li><i>certain</i>: assigned; length, shape and notches fit within the tolerance and the ends within 3 degrees; both are bowed
 *       by more than ten times the tolerance and a hundredth of their length, so that chance hardly makes two such; different pieces,
 *       not an edge and its image; every other pair of either costs 2 more.
 *   <li><i>likely</i>: assigned; every other pair of either costs 1 more, those of certain mates left out; neither is straight and
 *       square at both ends; and the lengths fit within the tolerance and the ends within 15 degrees, or the lengths within a fiftieth and
 *       the bowed shapes within the tolerance as far as both go, so that one seems to have been lengthened.
 *   <li><i>possible</i>: assigned otherwise, or within 1 of the best of either. An edge may have several.
 * </ul>
 * Certain and likely mates become seams of the draft, and are walked. Two edges one after the other that are together as long as an edge of
 * another piece, where one of them has no candidate, are possible mates of it. An edge that has no candidate at all, not even so, is a
 * finding, unless it is shorter than 20 mm or by its shape it is a fold, a hem or a finished edge: hollow by more than a fiftieth, or with corners
 * within 20 degrees of square at both ends.
 *
 * <p><b>Folds</b>, among edges that are not certain or likely mates.
 * <ul>
 *   <li><i>likely</i>: straight within a tenth of the tolerance; within 1 degree along the grain, or upright where none is drawn and every piece without one has a
 *       straight edge that is upright; one end
 *       square within half a degree, the other within 10 degrees; the only such edge of its piece, which declares no fold.
 *   <li><i>possible</i>: straight, and square within half a degree at both ends.
 * </ul>
 * An end of a declared or likely fold that is more than half a degree off square is a finding: a peak or a dip when opened out.
 *
 * <p><b>Pieces</b> that lie on one another within the tolerance are alike, or mirrored: certain. A piece without grain is a finding.
 *
 * <p>Same draft, same answer; the order of pieces and edges decides nothing but the order of what is told and, between equal assignments,
 * which is taken; equal ones are never more than possible.
 *
 * <pre>{@code
 * Supposed supposed = Suppose.of(draft, Checks.SEAM_TOLERANCE);
 * supposed.suppositions().forEach(each -> System.out.println(each.sentence(Steps.DEFAULT)));
 * }</pre>
 */
public final class Suppose {

    private static final double FOLD_SQUARE = Math.toRadians(0.5);
    private static final double FOLD_NEARLY = Math.toRadians(10);
    private static final double UPRIGHT = Math.toRadians(1);
    private static final double HEM_SQUARE = Math.toRadians(20);
    private static final double HOLLOW = 0.02;
    private static final Set<Finding.Kind> OF_PRESSING =
            EnumSet.of(Finding.Kind.UNDERLAY_OVERRUNS, Finding.Kind.UNDERLAY_LONG, Finding.Kind.STITCH_LINES_CROSS);

    /** What depends on the angle of a dart, which its end tells only roughly. */
    private static final Set<Finding.Kind> OF_ANGLE = EnumSet.of(Finding.Kind.DART_WIDE, Finding.Kind.EDGE_KINKS);

    private static final double READ = Math.toRadians(3);
    private static final double SHORTEST_ALONE = 20;

    private final double tolerance;
    private final List<Supposition> suppositions = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    private Suppose(double tolerance) {
        this.tolerance = tolerance;
    }

    /**
     * A draft with its darts, mates and folds supposed, and checked.
     *
     * @param draft outlines, with as much or as little declared as there is
     * @param tolerance how far in mm lengths and shapes may lie apart, for example {@link Checks#SEAM_TOLERANCE}
     * @return the draft with what was supposed, and all findings on it, those of {@link Checks#all(Draft, double)} among them
     * @throws IllegalArgumentException when the tolerance is not more than 0 mm
     */
    public static Supposed of(Draft draft, double tolerance) {
        return new Suppose(requireTolerance(tolerance)).whole(draft);
    }

    /**
     * A draft with its supposed darts laid in, certain and likely ones, and nothing else: what a list of its seams then refers to.
     *
     * @param draft outlines
     * @param tolerance how far in mm lengths may lie apart
     * @return the draft with these darts
     * @throws IllegalArgumentException when the tolerance is not more than 0 mm
     */
    public static Draft darts(Draft draft, double tolerance) {
        requireTolerance(tolerance);
        List<Piece> pieces = draft.pieces().stream()
                .map(piece -> SupposedDarts.of(piece, tolerance).piece())
                .toList();
        return kept(draft, pieces);
    }

    private static double requireTolerance(double tolerance) {
        Asked.length("A tolerance for supposing", tolerance);
        return tolerance;
    }

    /** The seams whose edges are still there. */
    private static Draft kept(Draft draft, List<Piece> pieces) {
        Set<String> edges = new HashSet<>();
        pieces.forEach(piece -> piece.edges().forEach(edge -> edges.add(edge.name() + "\n" + piece.name())));
        return new Draft(
                draft.name(),
                pieces,
                draft.seams().stream()
                        .filter(seam -> Stream.of(seam.first(), seam.second())
                                .flatMap(mate -> mate.parts().stream())
                                .allMatch(part -> edges.contains(part.edge() + "\n" + part.piece())))
                        .toList());
    }

    private Supposed whole(Draft draft) {
        List<Piece> pieces = new ArrayList<>();
        Set<String> darts = new HashSet<>();
        Set<String> ends = new HashSet<>();
        for (Piece piece : draft.pieces()) {
            SupposedDarts.Result result = SupposedDarts.of(piece, tolerance);
            pieces.add(result.piece());
            suppositions.addAll(result.suppositions());
            findings.addAll(result.findings());
            result.darts().forEach(dart -> darts.add("'" + dart + "' of '" + piece.name() + "'"));
            result.fromEnds().forEach(dart -> ends.add("'" + dart + "' of '" + piece.name() + "'"));
            result.fromEnds().forEach(dart -> ends.add("of '" + piece.name() + "' at '" + dart + "'"));
        }
        Draft darted = kept(draft, pieces);
        SupposedMates search = new SupposedMates(darted, tolerance);
        List<Seam> seams = new ArrayList<>(darted.seams());
        List<Seam> possible = new ArrayList<>();
        Set<String> mated = new HashSet<>();
        mates(search, seams, possible, mated);
        Set<Integer> chained = chains(search, possible);
        Draft sewn = new Draft(darted.name(), darted.pieces(), seams);
        boolean laid = sewn.pieces().stream().allMatch(Suppose::isLaid);
        sewn.pieces().forEach(piece -> folds(piece, mated, laid));
        suppositions.addAll(search.twins());
        alone(search, chained);
        sewn.pieces().stream()
                .filter(piece -> piece.grain().isEmpty())
                .forEach(piece -> findings.add(new Finding(
                        Finding.Kind.GRAIN_MISSING, "'" + piece.name() + "'", Quantity.COUNT, 0, 1, 0, "Draw one.")));
        // That two edges have one name says nothing here: their names are mostly numbers.
        List<String> undeclared = search.sides().stream()
                .map(side -> side.words() + " and '" + side.edge() + "'")
                .toList();
        Checks.all(sewn, tolerance).stream()
                .filter(finding -> !(OF_PRESSING.contains(finding.kind()) && startsWithAny(finding, darts)))
                .filter(finding -> !(OF_ANGLE.contains(finding.kind())
                        && ends.stream().anyMatch(finding.where()::contains)
                        && Math.abs(finding.excess()) - finding.tolerance() <= READ))
                .filter(finding -> !(finding.kind() == Finding.Kind.LINE_BREAKS && startsWithAny(finding, undeclared)))
                // Where nothing is declared a corner may be meant, or be the end of a dart that was drawn folded.
                .filter(finding -> finding.kind() != Finding.Kind.EDGE_CORNER)
                .filter(finding -> findings.stream()
                        .noneMatch(own ->
                                own.kind() == finding.kind() && own.where().equals(finding.where())))
                .forEach(findings::add);
        return new Supposed(sewn, possible, suppositions, findings);
    }

    private static boolean startsWithAny(Finding finding, Collection<String> places) {
        return places.stream().anyMatch(finding.where()::startsWith);
    }

    // ------------------------------------------------------------------------------------------------ mates

    private void mates(SupposedMates search, List<Seam> seams, List<Seam> possible, Set<String> mated) {
        Set<String> names = new TreeSet<>();
        seams.forEach(seam -> names.add(seam.name()));
        for (SupposedMates.Mates mates : search.mates()) {
            Side one = search.sides().get(mates.pair().first());
            Side other = search.sides().get(mates.pair().second());
            Seam seam = seam(one, other, mates.pair().alongside(), names);
            (mates.sureness() == Sureness.POSSIBLE ? possible : seams).add(seam);
            if (mates.sureness() != Sureness.POSSIBLE) {
                mated.add(one.words());
                mated.add(other.words());
            }
            suppositions.add(new Supposition(
                    Supposition.Kind.MATES,
                    mates.sureness(),
                    List.of(one.words(), other.words()),
                    List.of(
                            new Figure("length", Quantity.LENGTH, one.length()),
                            new Figure("length of the other", Quantity.LENGTH, other.length()),
                            new Figure(
                                    "shapes apart",
                                    Quantity.LENGTH,
                                    mates.pair().shape()),
                            new Figure(
                                    "ends off a straight line",
                                    Quantity.ANGLE,
                                    mates.pair().ends()),
                            new Figure(
                                    "notches without partner",
                                    Quantity.COUNT,
                                    mates.pair().notches()))));
        }
    }

    private static Seam seam(Side one, Side other, boolean alongside, Set<String> names) {
        String wanted = one.edge() + " of " + one.piece().name() + " on " + other.edge() + " of "
                + other.piece().name();
        String name = wanted;
        for (int number = 2; !names.add(name); number++) {
            name = wanted + " " + number;
        }
        return Seam.flat(name, mate(one, one.forward()), mate(other, other.forward() == alongside));
    }

    private static Seam.Mate mate(Side side, boolean forward) {
        String piece = side.piece().name();
        return forward ? Seam.Mate.of(piece, side.edge()) : Seam.Mate.backwards(piece, side.edge());
    }

    /** Two edges one after the other that are together as long as a third; which sides they are. */
    private Set<Integer> chains(SupposedMates search, List<Seam> possible) {
        Set<String> names = new TreeSet<>();
        possible.forEach(seam -> names.add(seam.name()));
        Set<Integer> chained = new HashSet<>();
        for (SupposedMates.Chain chain : search.chains()) {
            Side one = search.sides().get(chain.first());
            Side next = search.sides().get(chain.second());
            Side mate = search.sides().get(chain.mate());
            Seam seam = seam(one, mate, false, names);
            Seam.Mate both = seam.first().then(mate(next, next.forward()));
            possible.add(Seam.flat(seam.name(), both, seam.second()));
            chained.addAll(List.of(chain.first(), chain.second()));
            suppositions.add(new Supposition(
                    Supposition.Kind.MATES,
                    Sureness.POSSIBLE,
                    List.of(Seam.Mate.words(both.parts()) + ", one after the other,", mate.words()),
                    List.of(
                            new Figure("length", Quantity.LENGTH, one.length() + next.length()),
                            new Figure("length of the other", Quantity.LENGTH, mate.length()))));
        }
        return chained;
    }

    /** Edges that fit none, and are nothing else by their shape. */
    private void alone(SupposedMates search, Set<Integer> chained) {
        for (int i = 0; i < search.sides().size(); i++) {
            Side side = search.sides().get(i);
            boolean ended = Side.nearSquare(side.before(), HEM_SQUARE) && Side.nearSquare(side.after(), HEM_SQUARE);
            boolean hollow = side.bow() > HOLLOW * side.length();
            if (side.length() >= SHORTEST_ALONE && !search.matches(i) && !chained.contains(i) && !ended && !hollow) {
                findings.add(new Finding(
                        Finding.Kind.MATE_MISSING,
                        side.words(),
                        Quantity.LENGTH,
                        side.length(),
                        nearest(search.sides(), side),
                        tolerance,
                        "Say to what it is sewn, or that it is hemmed, finished or a fold."));
            }
        }
    }

    private static double nearest(List<Side> sides, Side side) {
        return sides.stream()
                .filter(other -> !other.equals(side))
                .map(Side::length)
                .min(Comparator.comparingDouble(length -> Math.abs(length - side.length())))
                .orElse(0.0);
    }

    // ------------------------------------------------------------------------------------------------ folds

    /** Whether a piece has a grain line, or stands upright: one of its straight edges does. */
    private static boolean isLaid(Piece piece) {
        return piece.grain().isPresent()
                || Side.of(piece).stream().anyMatch(side -> side.straight(1e-3) && alongGrain(piece, side));
    }

    private void folds(Piece piece, Set<String> mated, boolean laid) {
        List<Side> free = Side.of(piece).stream()
                .filter(side -> side.role() == Role.FOLD || (side.role() == Role.SEAM && !mated.contains(side.words())))
                .toList();
        List<Side> declared =
                free.stream().filter(side -> side.role() == Role.FOLD).toList();
        List<Side> likely =
                free.stream().filter(side -> laid && likely(piece, side)).toList();
        for (Side side : free) {
            if (declared.isEmpty() && likely.size() == 1 && likely.contains(side)) {
                fold(side, Sureness.LIKELY);
                square(side);
            } else if (declared.isEmpty()
                    && side.straight(tolerance / 10)
                    && off(side.before()) <= FOLD_SQUARE
                    && off(side.after()) <= FOLD_SQUARE) {
                fold(side, Sureness.POSSIBLE);
            }
        }
    }

    private void fold(Side side, Sureness sureness) {
        suppositions.add(new Supposition(
                Supposition.Kind.FOLD,
                sureness,
                List.of(side.words()),
                List.of(
                        new Figure("length", Quantity.LENGTH, side.length()),
                        new Figure("corners", Quantity.ANGLE, side.before()),
                        new Figure("and", Quantity.ANGLE, side.after()))));
    }

    private boolean likely(Piece piece, Side side) {
        return side.straight(tolerance / 10)
                && alongGrain(piece, side)
                && Math.min(off(side.before()), off(side.after())) <= FOLD_SQUARE
                && Math.max(off(side.before()), off(side.after())) <= FOLD_NEARLY;
    }

    private static boolean alongGrain(Piece piece, Side side) {
        Vector2D grain = piece.grain().map(line -> line.direction()).orElse(Vector2D.of(0, 1));
        return Math.abs(side.path().startTangent().signedArea(grain)) <= Math.sin(UPRIGHT);
    }

    private static double off(double angle) {
        return Math.abs(angle - Math.PI / 2);
    }

    /** Unfolded, a corner of less than a right angle is a peak of twice as much less than a straight line, one of more a dip. */
    private void square(Side side) {
        List<Side> ring = Side.of(side.piece());
        int at = ring.indexOf(side);
        int n = ring.size();
        square(side, ring.get((at + n - 1) % n), side.before());
        square(side, ring.get((at + 1) % n), side.after());
    }

    private void square(Side fold, Side edge, double angle) {
        if (off(angle) > FOLD_SQUARE && off(angle) <= FOLD_NEARLY) {
            findings.add(new Finding(
                    Finding.Kind.FOLD_NOT_SQUARE,
                    "'" + edge.edge() + "' at '" + fold.edge() + "' of '"
                            + fold.piece().name() + "'",
                    Quantity.ANGLE,
                    angle,
                    Math.PI / 2,
                    FOLD_SQUARE,
                    (angle < Math.PI / 2 ? "Opened out it is a peak" : "Opened out it is a dip")
                            + "; square the edge (Truing.square)."));
        }
    }
}
