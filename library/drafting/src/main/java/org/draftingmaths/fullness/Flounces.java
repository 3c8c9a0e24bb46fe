package org.draftingmaths.fullness;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Arc;
import org.draftingmaths.curve.Curve;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.Entry;
import org.draftingmaths.ledger.Fact;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.ledger.Reach;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.unit.Asked;
import org.draftingmaths.unit.Steps;

/** Flounces as pieces, from rings or as a spiral, and the questions asked backwards. */
public final class Flounces {

    private static final double DOWN = -Math.PI / 2;
    private static final int MOST_RINGS = 200;

    private Flounces() {}

    /**
     * Drafts a flounce from as few rings as will do. Conserved: the inner edges together are the seam, the hems together the hem.
     *
     * <p>The rings are alike, the grain along the middle of each, so that at every join the grain lies at the same angle on either
     * side and the join hangs evenly. Notches mark the middle of every inner edge and hem.
     *
     * <pre>{@code
     * Drafted flounce = Flounces.draft("flounce", Flounce.byHem(1828.8, 304.8, 2844.8));
     * }</pre>
     *
     * @param name the name of the flounce
     * @param flounce its figures
     * @return the rings, and the seams that join them in the order of their numbers
     * @throws IllegalArgumentException when more than 200 rings would be needed
     */
    public static Drafted draft(String name, Flounce flounce) {
        int rings = flounce.rings();
        Asked.count("The rings of a flounce", rings, MOST_RINGS);
        RingSector ring = flounce.ring();
        List<Piece> pieces = new ArrayList<>();
        List<Seam> seams = new ArrayList<>();
        for (int i = 1; i <= rings; i++) {
            Piece piece = ring.piece(rings == 1 ? name : name + " " + i, DOWN - ring.angle() / 2, SIDES, DOWN);
            pieces.add(Notched.middle(Notched.middle(piece, "seam"), "hem"));
            if (i > 1) {
                seams.add(Seam.flat(
                        "join " + (i - 1),
                        Seam.Mate.backwards(name + " " + (i - 1), "other end"),
                        Seam.Mate.of(name + " " + i, "end")));
            }
        }
        Budget budget = ring.budget(rings);
        Ledger ledger = Ledger.of(
                new Fact("radius to the stitch line", Quantity.LENGTH, flounce.radius()),
                new Fact("ratio of hem to seam", Quantity.RATIO, flounce.ratio()),
                new Fact("number of rings", Quantity.COUNT, rings),
                new Fact("angle of each ring", Quantity.ANGLE, ring.angle()),
                new Fact("length of the inner edge of each ring", Quantity.LENGTH, ring.top()),
                budget);
        return new Drafted(new Draft(name, pieces, seams), budget, List.of(), ledger);
    }

    private static final RingSector.Sides SIDES =
            new RingSector.Sides("end", Role.SEAM, "hem", "other end", Role.SEAM, "seam");

    // ------------------------------------------------------------------------------------------------ spiral

    /**
     * The ratio on one stretch of a spiral flounce.
     *
     * @param interval which, counted from the tight end
     * @param from where it starts, in mm along the seam
     * @param to where it ends
     * @param ratio its ratio of hem to seam
     */
    public record IntervalRatio(int interval, double from, double to, double ratio) implements Entry {
        @Override
        public String sentence(Steps steps) {
            return String.format(
                    Locale.ROOT,
                    "Interval %d, from %s to %s along the seam, has the ratio %.2f.",
                    interval,
                    Quantity.LENGTH.print(from, steps),
                    Quantity.LENGTH.print(to, steps),
                    ratio);
        }
    }

    /**
     * Drafts a flounce as a spiral in one piece. Conserved: the inner edge is the seam, the depth is the same everywhere. Notches on
     * seam and hem mark the intervals of constant ratio; the grain lies upright near the tight end, and turns on the figure as
     * the spiral does.
     *
     * @param name the name of the flounce
     * @param flounce its figures
     * @return the piece, with the ratio of every interval in the ledger
     */
    public static Drafted draft(String name, SpiralFlounce flounce) {
        List<SpiralFlounce.Interval> intervals = flounce.intervals();
        CurvePath inner = edge(flounce, 0);
        CurvePath outer = edge(flounce, flounce.depth());
        double inside = flounce.radius() + 0.3 * flounce.depth();
        double aside =
                RingSector.aside(inside, flounce.depth(), intervals.get(0).angle());
        double under = Math.sqrt(inside * inside - aside * aside);
        Piece piece = Drawing.of(name)
                .from(inner.start().getX(), inner.start().getY())
                .edge("end", Role.SEAM)
                .line(outer.start().getX(), outer.start().getY())
                .edge("hem", Role.HEM)
                .along(outer)
                .edge("other end", Role.SEAM)
                .line(inner.end().getX(), inner.end().getY())
                .edge("seam", Role.SEAM)
                .along(inner.reversed())
                .grain(aside, -under, aside, -under - 0.5 * flounce.depth())
                .piece();
        List<Entry> ratios = new ArrayList<>();
        double alongHem = 0;
        for (int i = 0; i < intervals.size(); i++) {
            SpiralFlounce.Interval each = intervals.get(i);
            ratios.add(new IntervalRatio(i + 1, each.from(), each.from() + each.length(), each.ratio()));
            if (i > 0) {
                piece = Notched.at(Notched.at(piece, "hem", alongHem), "seam", flounce.seam() - each.from());
            }
            alongHem += each.length() * each.ratio();
        }
        Budget budget = RingSector.budget(flounce.turn(), flounce.depth());
        Ledger ledger = Ledger.of(
                        new Fact("first radius to the stitch line", Quantity.LENGTH, flounce.radius()),
                        new Fact("growth of the radius each quarter turn", Quantity.LENGTH, flounce.growth()),
                        new Fact("length of the hem", Quantity.LENGTH, flounce.hem()),
                        new Fact("ratio of hem to seam over all", Quantity.RATIO, flounce.meanRatio()))
                .then(new Ledger(ratios))
                .then(budget);
        return new Drafted(new Draft(name, List.of(piece), List.of()), budget, List.of(), ledger);
    }

    /** The spiral at a distance outside its inner edge; it starts straight below the first centre, which is the origin. */
    private static CurvePath edge(SpiralFlounce flounce, double outside) {
        List<Curve> arcs = new ArrayList<>();
        Vector2D centre = Vector2D.ZERO;
        double direction = DOWN;
        for (SpiralFlounce.Interval each : flounce.intervals()) {
            arcs.add(new Arc(centre, each.radius() + outside, direction, each.angle()));
            direction += each.angle();
            centre = centre.subtract(
                    Vector2D.of(Math.cos(direction), Math.sin(direction)).multiply(flounce.growth()));
        }
        return new CurvePath(arcs);
    }

    // ------------------------------------------------------------------------------------------------ backwards

    /**
     * Which depth gives this hem, when the radius of the rings is given: {@code h = r (hem - s) / s}.
     *
     * @param seam the seam in mm
     * @param radius the radius of the inner edge in mm
     * @param hem the hem wanted, in mm along
     * @return the one depth; none when the hem is no longer than the seam
     * @throws IllegalArgumentException when a length is not more than 0
     */
    public static Answer depthForHem(double seam, double radius, double hem) {
        Asked.length("The seam of a flounce", seam);
        Asked.length("The radius of a flounce", radius);
        Asked.length("The hem of a flounce", hem);
        String asked = "Depth of a flounce for a hem of " + Words.of(hem);
        if (hem <= seam) {
            Reach reach = new Reach(Quantity.LENGTH, hem, seam, Double.POSITIVE_INFINITY);
            return new Answer.None(asked, "the hem is longer than the seam", reach);
        }
        return new Answer.Unique(asked, Quantity.LENGTH, radius * (hem - seam) / seam);
    }

    /**
     * The fullest that so many rings can be: each goes as far round as it may, {@code r = (s / n + free) / (2 pi)}, and the ratio is
     * {@code 1 + h / r}. It shows why one ring will not do for a long seam.
     *
     * @param seam the seam in mm
     * @param depth the depth in mm
     * @param rings how many rings, from 1 to 200
     * @param free how much of its inner circle each leaves free, in mm
     * @return the greatest ratio
     * @throws IllegalArgumentException when a figure is out of its range
     */
    public static double fullest(double seam, double depth, int rings, double free) {
        Asked.length("The seam of a flounce", seam);
        Asked.length("The depth of a flounce", depth);
        Asked.count("The rings of a flounce", rings, MOST_RINGS);
        Asked.length("What a ring leaves free", free);
        return 1 + 2 * Math.PI * depth / (seam / rings + free);
    }

    /**
     * How many rings a ratio needs: the fewest {@code n} whose {@link #fullest} is no less.
     *
     * @param seam the seam in mm
     * @param depth the depth in mm
     * @param ratio the ratio of hem to seam wanted
     * @param free how much of its inner circle each leaves free, in mm
     * @return the number of rings; none when the ratio is not more than 1, or no number of rings up to 200 gives it
     * @throws IllegalArgumentException when a length is out of its range
     */
    public static Answer ringsForRatio(double seam, double depth, double ratio, double free) {
        String asked = String.format(Locale.ROOT, "Rings for a ratio of %.2f", ratio);
        double most = fullest(seam, depth, MOST_RINGS, free);
        if (!(ratio > 1 && ratio <= most)) {
            Reach reach = new Reach(Quantity.RATIO, ratio, 1, most);
            return new Answer.None(asked, "200 rings give no more, and a ring always gives more than 1", reach);
        }
        double perRing = 2 * Math.PI * depth / (ratio - 1) - free;
        return new Answer.Unique(asked, Quantity.COUNT, Math.max(1, Math.ceil(seam / perRing)));
    }
}
