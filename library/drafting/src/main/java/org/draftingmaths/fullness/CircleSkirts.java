package org.draftingmaths.fullness;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.draftingmaths.ledger.Fact;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.ledger.Reach;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.unit.Asked;

/** Circle skirts as pieces, and the questions asked backwards: which part of a circle, which length? */
public final class CircleSkirts {

    private static final double DOWN = -Math.PI / 2;
    private static final int MOST_PANELS = 24;

    /** A whole turn may be missed by rounding. */
    private static final double ROUNDING = 1e-12;

    private CircleSkirts() {}

    /** How a panel is drawn and laid on the cloth. */
    public enum Lay {
        /** A quarter of the skirt on two folds that lie square to one another: for the full circle, cut through four layers. */
        TWO_FOLDS,
        /** Half of each panel, its centre on a fold along the grain. */
        ON_FOLD,
        /** Each panel whole, its centre along the grain. */
        OPEN,
        /** Each panel whole, one straight end along the grain, as along a selvage. */
        END_ON_GRAIN
    }

    /**
     * Drafts a circle skirt in the fewest panels, each of at most a full turn, half drawn on a fold. A full circle is slit at the
     * centre back; more than a circle comes in several pieces.
     *
     * @param name the name of the skirt
     * @param skirt its figures
     * @return the pieces
     */
    public static Drafted draft(String name, CircleSkirt skirt) {
        return draft(name, skirt, (int) Math.ceil(skirt.share() - ROUNDING), Lay.ON_FOLD);
    }

    /**
     * Drafts a circle skirt: the waist edges of all panels together, as cut, are the waist.
     *
     * <pre>{@code
     * Drafted skirt = CircleSkirts.draft("skirt", CircleSkirt.of(720, 600, 0.5), 1, CircleSkirts.Lay.END_ON_GRAIN);
     * }</pre>
     *
     * <p>The waist lies about the origin, the skirt hangs down. Notches mark the middle of every waist and hem edge. Panels are sewn
     * to one another in the order of their numbers; where the skirt is one panel its ends meet at the centre back.
     *
     * @param name the name of the skirt
     * @param skirt its figures
     * @param panels how many alike panels, from 1 to 24
     * @param lay how each is drawn
     * @return the pieces
     * @throws IllegalArgumentException when the panels cannot be drawn so: two folds are for one panel of a full circle, a panel on a
     *     fold has at most a full turn, a whole panel less than one
     */
    public static Drafted draft(String name, CircleSkirt skirt, int panels, Lay lay) {
        Asked.count("The panels of a circle skirt", panels, MOST_PANELS);
        double turn = skirt.angle() / panels;
        requireRoom(lay, turn, panels);
        RingSector ring = new RingSector(skirt.radius(), skirt.length(), drawn(lay, Math.min(turn, 2 * Math.PI)));
        List<Piece> pieces = new ArrayList<>();
        for (int i = 1; i <= panels; i++) {
            pieces.add(marked(panel(panels == 1 ? name : name + " " + i, ring, lay, panels)));
        }
        Ledger ledger = Ledger.of(
                new Fact("radius to the stitch line", Quantity.LENGTH, skirt.radius()),
                new Fact("length of the waist as cut", Quantity.LENGTH, skirt.cutWaist()),
                new Fact("length of the hem", Quantity.LENGTH, skirt.sweep()),
                new RadiusError(skirt.angle()));
        Budget budget = RingSector.budget(skirt.angle(), skirt.length());
        return new Drafted(new Draft(name, pieces, seams(pieces, lay)), budget, List.of(), ledger.then(budget));
    }

    private static void requireRoom(Lay lay, double turn, int panels) {
        double whole = 2 * Math.PI;
        boolean room = switch (lay) {
            case TWO_FOLDS -> panels == 1 && Math.abs(turn - whole) <= ROUNDING * whole;
            case ON_FOLD -> turn <= whole * (1 + ROUNDING);
            case OPEN, END_ON_GRAIN -> turn < whole * (1 - ROUNDING);
        };
        if (!room) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "%s, but it was asked for %d panel(s) of %.1f degrees.",
                    allowed(lay),
                    panels,
                    Math.toDegrees(turn)));
        }
    }

    private static String allowed(Lay lay) {
        return switch (lay) {
            case TWO_FOLDS ->
                "A quarter on two folds, which lie square to one another, is for one panel of 360 degrees";
            case ON_FOLD -> "A panel on a fold has at most 360 degrees";
            case OPEN, END_ON_GRAIN -> "A panel drawn whole has less than 360 degrees, or it would touch itself";
        };
    }

    private static double drawn(Lay lay, double turn) {
        return switch (lay) {
            case TWO_FOLDS -> turn / 4;
            case ON_FOLD -> turn / 2;
            case OPEN, END_ON_GRAIN -> turn;
        };
    }

    private static Piece panel(String name, RingSector ring, Lay lay, int panels) {
        String end = panels == 1 ? "centre back" : "side";
        return switch (lay) {
            case TWO_FOLDS -> ring.piece(name, DOWN, sides("centre front", Role.FOLD, "side", Role.FOLD), DOWN);
            case ON_FOLD -> ring.piece(name, DOWN, sides("centre", Role.FOLD, end, Role.SEAM), DOWN);
            case OPEN ->
                ring.piece(name, DOWN - ring.angle() / 2, sides(end, Role.SEAM, "other " + end, Role.SEAM), DOWN);
            case END_ON_GRAIN -> ring.piece(name, DOWN, sides(end, Role.SEAM, "other " + end, Role.SEAM), DOWN);
        };
    }

    private static RingSector.Sides sides(String first, Role firstRole, String second, Role secondRole) {
        return new RingSector.Sides(first, firstRole, "hem", second, secondRole, "waist");
    }

    private static Piece marked(Piece piece) {
        return Notched.middle(Notched.middle(piece, "waist"), "hem");
    }

    /** A panel on a fold is drawn as a half: the side of its other half is sewn to the next panel. */
    private static List<Seam> seams(List<Piece> pieces, Lay lay) {
        List<Seam> seams = new ArrayList<>();
        for (int i = 0; i + 1 < pieces.size(); i++) {
            String one = pieces.get(i).name();
            String next = pieces.get(i + 1).name();
            seams.add(
                    lay == Lay.ON_FOLD
                            ? Seam.flat(
                                    one + " to " + next,
                                    Seam.Mate.of(one, "side").mirrored(),
                                    Seam.Mate.of(next, "side"))
                            : Seam.flat(
                                    one + " to " + next,
                                    Seam.Mate.backwards(one, "other side"),
                                    Seam.Mate.of(next, "side")));
        }
        return seams;
    }

    // ------------------------------------------------------------------------------------------------ backwards

    /**
     * Which part of a circle gives this hem: {@code k = (hem - W) / (2 pi l)}.
     *
     * @param waist the waist as cut, in mm
     * @param length from waist to hem in mm
     * @param sweep the hem wanted, in mm along
     * @return the one part of a circle; none when the hem is no longer than the waist, or asks for more than 8 circles
     * @throws IllegalArgumentException when a length is not more than 0
     */
    public static Answer shareForSweep(double waist, double length, double sweep) {
        Asked.length("The waist of a circle skirt", waist);
        Asked.length("The length of a circle skirt", length);
        Asked.length("The hem of a circle skirt", sweep);
        String asked = "Part of a circle for a hem of " + Words.of(sweep);
        double most = waist + 2 * Math.PI * CircleSkirt.MOST_SHARE * length;
        if (sweep <= waist || sweep > most) {
            Reach reach = new Reach(Quantity.LENGTH, sweep, waist, most);
            return new Answer.None(
                    asked, "the hem is longer than the waist, and that of 8 circles is the longest", reach);
        }
        return new Answer.Unique(asked, Quantity.RATIO, (sweep - waist) / (2 * Math.PI * length));
    }

    /**
     * Which length gives this hem: {@code l = (hem - W) / (2 pi k)}.
     *
     * @param waist the waist as cut, in mm
     * @param share the part of a circle
     * @param sweep the hem wanted, in mm along
     * @return the one length; none when the hem is no longer than the waist
     * @throws IllegalArgumentException when a figure is not more than 0
     */
    public static Answer lengthForSweep(double waist, double share, double sweep) {
        Asked.length("The waist of a circle skirt", waist);
        CircleSkirt.requireShare(share);
        Asked.length("The hem of a circle skirt", sweep);
        String asked = "Length for a hem of " + Words.of(sweep);
        if (sweep <= waist) {
            Reach reach = new Reach(Quantity.LENGTH, sweep, waist, Double.POSITIVE_INFINITY);
            return new Answer.None(asked, "the hem is longer than the waist", reach);
        }
        return new Answer.Unique(asked, Quantity.LENGTH, (sweep - waist) / (2 * Math.PI * share));
    }

    /**
     * How wide the cloth must be for one panel, across the grain: with {@code R = r + l} and {@code a} the panel's angle,
     * {@code 2 R sin(min(a, pi)/2)} when its centre lies along the grain, {@code R} times the width of the unit sector when one end
     * does. Allowances are not in it.
     *
     * @param skirt the skirt
     * @param panels how many panels it is cut in
     * @param lay how each lies
     * @return the width in mm
     * @throws IllegalArgumentException when the panels cannot lie so
     */
    public static double clothWidth(CircleSkirt skirt, int panels, Lay lay) {
        Asked.count("The panels of a circle skirt", panels, MOST_PANELS);
        requireRoom(lay, skirt.angle() / panels, panels);
        return (skirt.radius() + skirt.length()) * unitWidth(skirt.angle() / panels, lay);
    }

    /** The width across the grain of a sector of radius 1. */
    private static double unitWidth(double turn, Lay lay) {
        if (lay == Lay.END_ON_GRAIN) {
            double most = turn <= Math.PI / 2 ? Math.sin(turn) : 1;
            double least = turn <= Math.PI ? 0 : turn >= 1.5 * Math.PI ? -1 : Math.sin(turn);
            return most - least;
        }
        return 2 * Math.sin(Math.min(turn, Math.PI) / 2);
    }

    /**
     * The longest skirt that fits a width of cloth, net: the width needed is {@link #clothWidth}, which grows with the length.
     *
     * @param waist the waist as cut, in mm
     * @param share the part of a circle
     * @param panels how many panels it is cut in
     * @param lay how each lies
     * @param width the usable width of the cloth in mm, allowances taken off
     * @return the one length; none when the waist alone takes the whole width
     * @throws IllegalArgumentException when a figure is not more than 0 or the panels cannot lie so
     */
    public static Answer lengthForCloth(double waist, double share, int panels, Lay lay, double width) {
        Asked.length("The waist of a circle skirt", waist);
        CircleSkirt.requireShare(share);
        Asked.count("The panels of a circle skirt", panels, MOST_PANELS);
        Asked.length("The width of the cloth", width);
        double angle = 2 * Math.PI * share;
        requireRoom(lay, angle / panels, panels);
        String asked = "Length for cloth " + Words.of(width) + " wide";
        double perRadius = unitWidth(angle / panels, lay);
        double length = width / perRadius - waist / angle;
        if (length <= 0) {
            Reach reach = new Reach(Quantity.LENGTH, width, perRadius * waist / angle, Double.POSITIVE_INFINITY);
            return new Answer.None(asked, "the waist alone takes that width", reach);
        }
        return new Answer.Unique(asked, Quantity.LENGTH, length);
    }
}
