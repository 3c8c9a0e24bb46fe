package org.draftingmaths.fullness;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.unit.Asked;

/**
 * Where a cowl is slashed. The part above the slashes is swung away from the centre, first by closing darts, then about hinges.
 *
 * @param centre the name of the centre edge, a straight fold
 * @param neckline the name of the edge that becomes the cowl's edge; its one end lies on the centre
 * @param anchor where the lowest slash starts, in mm up the centre from its end away from the neckline; below it nothing changes
 * @param darts the darts to be closed, in this order, each wholly before the next is begun; all have one point
 * @param hinges further slashes, the lowest first, all opened by one angle when the darts are closed
 * @param apex the apex of the bust, below which a cowl may expose; empty where there is none, as at a back
 * @param fold how deep in mm one fold of the cowl is to hang; it takes twice as much of the centre
 */
public record CowlLines(
        String centre,
        String neckline,
        double anchor,
        List<String> darts,
        List<Hinge> hinges,
        Optional<Vector2D> apex,
        double fold) {

    private static final double FOLD = 25;

    /** Copies the lists and checks the lengths. */
    public CowlLines {
        darts = List.copyOf(darts);
        hinges = List.copyOf(hinges);
        Asked.length("The lowest slash of a cowl starts where the centre", anchor);
        Asked.length("The depth of a cowl's fold", fold);
        if (darts.isEmpty() && hinges.isEmpty()) {
            throw new IllegalArgumentException("A cowl needs a dart to close or a hinge to swing about.");
        }
    }

    /**
     * A slash to a hinge.
     *
     * @param from where it starts, in mm up the centre as the anchor
     * @param to where it ends, on an edge: the hinge
     */
    public record Hinge(double from, Spot.On to) {

        /**
         * A hinge on an edge.
         *
         * @param from where the slash starts, in mm up the centre
         * @param edge the name of the edge on which the hinge lies
         * @param arc the base arc in mm from that edge's own start
         * @return the hinge
         */
        public static Hinge on(double from, String edge, double arc) {
            return new Hinge(from, (Spot.On) Spot.on(edge, arc));
        }
    }

    /**
     * The lines of a front whose dart points to the apex: that dart is closed into the cowl, and the slash to its point starts level
     * with it.
     *
     * @param front the front
     * @param centre the name of its centre edge
     * @param neckline the name of its neckline
     * @param dart the name of the dart
     * @return the lines, without further hinges, for folds 25 mm deep
     */
    public static CowlLines closing(Piece front, String centre, String neckline, String dart) {
        Vector2D apex = Measured.tip(front, dart);
        CowlFrame frame = CowlFrame.of(front, centre, neckline, "Lay out a cowl on '" + front.name() + "'");
        return new CowlLines(centre, neckline, frame.height(apex), List.of(dart), List.of(), Optional.of(apex), FOLD);
    }

    /**
     * The same with another dart closed after those there are.
     *
     * @param dart the name of the dart
     * @return the lines
     */
    public CowlLines andClosing(String dart) {
        return new CowlLines(
                centre,
                neckline,
                anchor,
                Stream.concat(darts.stream(), Stream.of(dart)).toList(),
                hinges,
                apex,
                fold);
    }

    /**
     * The same with hinges.
     *
     * @param all the hinges, the lowest first
     * @return the lines
     */
    public CowlLines hinged(Hinge... all) {
        return new CowlLines(centre, neckline, anchor, darts, List.of(all), apex, fold);
    }
}
