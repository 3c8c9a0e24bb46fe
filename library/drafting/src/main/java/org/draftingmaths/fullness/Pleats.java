package org.draftingmaths.fullness;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.ledger.Reach;
import org.draftingmaths.piece.Border;
import org.draftingmaths.piece.Edge;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Mouth;
import org.draftingmaths.piece.Opening;
import org.draftingmaths.piece.Panels;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Slash;
import org.draftingmaths.piece.Stay;
import org.draftingmaths.piece.Use;

/**
 * Pleats and tucks folded into a piece. Each is a spread whose gap is folded away again: two layers of underlay for a knife pleat or a
 * tuck, four where the underlay lies to both sides. Conserved: the folded length of both edges, the net area of the panels. The edge
 * is cut with the fold made, so it is drawn across the gap as the layers above it end ({@link org.draftingmaths.piece.FoldEnd}).
 */
public final class Pleats {

    /** Widths nearer than this, in mm, are one. */
    private static final double SAME = 1e-6;

    private Pleats() {}

    /**
     * Folds pleats or tucks in, all in one move.
     *
     * <pre>{@code
     * List<Pleat> pleats = Spread.even(skirt, "pleat", "waist", "hem", 3).stream()
     *         .map(slash -> Pleat.even(slash, 35, Use.Under.AFTER))
     *         .toList();
     * Reworked pleated = Pleats.fold(skirt, pleats, Stay.CENTRE);
     * }</pre>
     *
     * @param piece the piece
     * @param pleats the pleats, in any order
     * @param stay which part stays
     * @return the piece and what was done
     * @throws IllegalArgumentException when there is no pleat
     * @throws DraftingException when a slash is not straight, or as {@link Spread#all}
     */
    public static Reworked fold(Piece piece, List<Pleat> pleats, Stay stay) {
        for (Pleat pleat : pleats) {
            if (pleat.slash()
                    .along()
                    .filter(path -> path.curves().size() > 1 || bends(path))
                    .isPresent()) {
                throw new DraftingException(
                        "Fold '" + pleat.slash().name() + "'", "cloth folds along a straight line only");
            }
        }
        Reworked spread = Spread.all(
                piece,
                pleats.stream()
                        .map(pleat -> new Spread.Opened(
                                pleat.slash(), pleat.layers() * pleat.underlay(), pleat.layers() * pleat.farUnderlay()))
                        .toList(),
                stay);
        Reworked folded = spread;
        Ledger told = Ledger.EMPTY;
        for (Pleat pleat : pleats) {
            String name = pleat.slash().name();
            Use use = new Use.Folded(pleat.under(), pleat.depth(), Use.Stitched.LEGS);
            folded = folded.then(Panels.use(folded.piece(), name, use));
            folded = folded.then(Panels.useFar(folded.piece(), name, use));
            told = told.then(new Folded(name, pleat.under(), pleat.underlay(), pleat.farUnderlay(), pleat.depth()));
        }
        return new Reworked(folded.piece(), folded.ledger().then(told));
    }

    private static boolean bends(org.draftingmaths.curve.CurvePath path) {
        return path.length() - path.start().distance(path.end()) > SAME;
    }

    /**
     * The two folds of a box pleat: turned away from each other, their underlays beneath the face between them.
     *
     * @param before the slash on the side of the edge's start
     * @param after the slash on the side of its end
     * @param underlay the width of each underlay in mm
     * @return two pleats
     */
    public static List<Pleat> box(Slash before, Slash after, double underlay) {
        return List.of(Pleat.even(before, underlay, Use.Under.AFTER), Pleat.even(after, underlay, Use.Under.BEFORE));
    }

    /**
     * An inverted pleat: two folds that meet, half of the underlay behind each.
     *
     * @param slash where the folds are to meet
     * @param underlay the width of each underlay in mm
     * @return the pleat
     */
    public static Pleat inverted(Slash slash, double underlay) {
        return Pleat.even(slash, underlay, Use.Under.BOTH);
    }

    /**
     * Makes a dart a tuck: its legs are brought together and stitched for some way from the edge, and from there on the cloth is
     * released. The surplus stays directed to the apex.
     *
     * @param piece the piece
     * @param dart the name of a dart or any opening that ends at a point
     * @param under where the underlay lies
     * @param depth how far in mm it is stitched from the edge
     * @param lines along which lines
     * @return the piece and what was done
     * @throws DraftingException when the stitching would run past the point
     */
    public static Reworked dartTuck(Piece piece, String dart, Use.Under under, double depth, Use.Stitched lines) {
        double leg = Measured.leg(piece, dart, Leg.BEFORE).length();
        if (depth > leg) {
            throw new DraftingException(
                    "Tuck '" + dart + "'",
                    "the stitching would run past its point",
                    new Reach(Quantity.LENGTH, depth, 0, leg));
        }
        Reworked tucked = Panels.use(piece, dart, new Use.Folded(under, depth, lines));
        double layers = under == Use.Under.BOTH ? 4 : 2;
        double underlay = Measured.intake(piece, dart) / layers;
        return new Reworked(tucked.piece(), tucked.ledger().then(new Folded(dart, under, underlay, 0, depth)));
    }

    /**
     * What is poor in the folds of a piece: underlays that lie over one another beneath one stretch of cloth, and tucks in a dart that
     * are stitched too near to its point.
     *
     * @param piece the piece
     * @param setBack how far in mm from its point a dart's stitching should end
     * @return the findings, edge by edge and then dart by dart
     */
    public static List<Finding> findings(Piece piece, double setBack) {
        Stream<Finding> overlaps = piece.edges().stream().flatMap(edge -> overlaps(piece, edge));
        Stream<Finding> late = piece.openings().stream()
                .filter(opening -> opening.farMouth().isEmpty())
                .filter(opening -> opening.mouth().use() instanceof Use.Folded)
                .flatMap(opening -> late(piece, opening, setBack).stream());
        return Stream.concat(overlaps, late).toList();
    }

    private static Optional<Finding> late(Piece piece, Opening opening, double setBack) {
        double left = Measured.leg(piece, opening.name(), Leg.BEFORE).length()
                - ((Use.Folded) opening.mouth().use()).depth();
        return left < setBack
                ? Optional.of(new Finding(
                        Finding.Kind.RELEASED_TOO_LATE,
                        "'" + opening.name() + "' of '" + piece.name() + "'",
                        Quantity.LENGTH,
                        left,
                        setBack,
                        0))
                : Optional.empty();
    }

    /** A fold at an edge: where, how wide its underlay is, and on which sides of it that lies, by the direction of the edge. */
    private record At(String name, double arc, double underlay, boolean below, boolean above) {}

    private static Stream<Finding> overlaps(Piece piece, Edge edge) {
        Border border = new Border.OfEdge(edge.name());
        List<At> folds = new ArrayList<>();
        for (Opening opening : piece.openings()) {
            at(piece, opening, opening.mouth(), true, border).ifPresent(folds::add);
            opening.farMouth()
                    .flatMap(far -> at(piece, opening, far, false, border))
                    .ifPresent(folds::add);
        }
        folds.sort(Comparator.comparingDouble(At::arc));
        List<Finding> findings = new ArrayList<>();
        for (int i = 1; i < folds.size(); i++) {
            At one = folds.get(i - 1);
            At next = folds.get(i);
            double between = next.arc() - one.arc();
            double beneath = (one.above() ? one.underlay() : 0) + (next.below() ? next.underlay() : 0);
            if (beneath > between + SAME) {
                findings.add(new Finding(
                        Finding.Kind.UNDERLAYS_OVERLAP,
                        "'" + one.name() + "' and '" + next.name() + "' of '" + piece.name() + "' on '" + edge.name()
                                + "'",
                        Quantity.LENGTH,
                        beneath,
                        between,
                        0));
            }
        }
        return findings.stream();
    }

    private static Optional<At> at(Piece piece, Opening opening, Mouth mouth, boolean start, Border border) {
        if (!mouth.border().equals(border) || !(mouth.use() instanceof Use.Folded folded)) {
            return Optional.empty();
        }
        var before = Measured.leg(piece, opening.name(), Leg.BEFORE);
        var after = Measured.leg(piece, opening.name(), Leg.AFTER);
        double width =
                start ? before.start().distance(after.start()) : before.end().distance(after.end());
        boolean both = folded.under() == Use.Under.BOTH;
        boolean beneathBefore = folded.under() != Use.Under.AFTER;
        boolean beneathAfter = folded.under() != Use.Under.BEFORE;
        boolean lowerIsBefore = start || lowerIsBefore(piece, opening, mouth);
        return Optional.of(new At(
                opening.name(),
                mouth.before(),
                width / (both ? 4 : 2),
                lowerIsBefore ? beneathBefore : beneathAfter,
                lowerIsBefore ? beneathAfter : beneathBefore));
    }

    /** At its other end an opening may lie the other way round along the edge. */
    private static boolean lowerIsBefore(Piece piece, Opening opening, Mouth far) {
        Border leg = new Border.OfLeg(opening.name(), Leg.BEFORE);
        return piece.panels().stream()
                .filter(panel ->
                        panel.ring().stream().anyMatch(run -> run.border().equals(leg)))
                .flatMap(panel -> panel.ring().stream())
                .anyMatch(run -> run.border().equals(far.border()) && run.to() == far.before());
    }
}
