package org.draftingmaths.dart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Entry;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.ledger.Reach;
import org.draftingmaths.piece.Border;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Motion;
import org.draftingmaths.piece.Panels;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Slash;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.piece.Stay;
import org.draftingmaths.piece.Use;
import org.draftingmaths.unit.Asked;
import org.draftingmaths.unit.Steps;

/**
 * A dart closed by slashes that end on its leg, at different places. The parts between the slashes are a chain: each turns about the end
 * of its slash, so the leg becomes bent and cannot lie on the other one: a sliver remains.
 *
 * <p>With {@code H_i} the ends of the slashes from the apex outwards, {@code a} the dart's angle and {@code f_i} the shares,
 * {@code sum f_i = 1}: part {@code i} moves by {@code M_i = M_(i-1) Rot(H_i, f_i a)}. The mouth end of the leg comes to lie parallel to
 * the other leg. As every stretch of the bent leg leads away from the other leg or runs beside it, the gap never shrinks towards the mouth: the
 * least sliver is always that of turning all at the slash nearest the apex, and there is nothing to be solved for; the shares are
 * the caller's.
 *
 * <p>Conserved: the angles (what opens is what the dart's mouth closes), the base length of every edge, the net area.
 */
public final class LegSlashes {

    private LegSlashes() {}

    /**
     * A slash that ends on a dart's leg.
     *
     * @param from where it starts, on an edge
     * @param name the name of the opening it becomes
     * @param arc where it ends, in mm along the leg from the dart's mouth
     * @param share its share of the dart's angle
     */
    public record OnLeg(Spot from, String name, double arc, double share) {
        /** Checks the share. */
        public OnLeg {
            Asked.share("A share of a dart", share);
            if (!(arc > 0 && Double.isFinite(arc))) {
                throw new IllegalArgumentException(
                        "Slash '" + name + "' ends on a leg more than 0 mm from the mouth: " + arc + " mm.");
            }
        }
    }

    /**
     * What remains between the legs.
     *
     * @param dart the name of the dart
     * @param widest the widest gap at an end of a slash or at the mouth, in mm
     * @param area the area between the legs, in square mm
     */
    public record Sliver(String dart, double widest, double area) implements Entry {
        @Override
        public String sentence(Steps steps) {
            return "Between the legs of '" + dart + "' a sliver of " + Quantity.AREA.print(area, steps) + " remains, "
                    + Quantity.LENGTH.printFinely(widest) + " at its widest.";
        }
    }

    /**
     * Closes a dart by opening slashes that end on one of its legs.
     *
     * @param piece the piece
     * @param dart the name of a dart with straight, equal legs
     * @param leg the leg on which the slashes end
     * @param slashes the slashes, whose shares come to 1
     * @param most how wide the sliver may be, in mm: 3 mm can be eased away (common practice)
     * @return the piece; the ledger tells the sliver
     * @throws DraftingException when the shares do not come to 1, when a wider sliver would remain, or when parts would lie over one
     *     another
     */
    public static Reworked close(Piece piece, String dart, Leg leg, List<OnLeg> slashes, double most) {
        String asked = "Close '" + dart + "' by slashes to its leg";
        double sum = slashes.stream().mapToDouble(OnLeg::share).sum();
        double angle = Measured.angle(piece, dart);
        if (Math.abs(sum - 1) > 1e-9) {
            throw new DraftingException(
                    asked, "the shares must come to the whole", new Reach(Quantity.ANGLE, sum * angle, angle, angle));
        }
        requireOnLeg(piece, dart, leg, slashes, asked);
        List<OnLeg> ordered = slashes.stream()
                .sorted(Comparator.comparingDouble(OnLeg::arc).reversed())
                .toList();
        Sliver sliver = sliver(piece, dart, leg, ordered, angle);
        if (sliver.widest() > most) {
            throw new DraftingException(
                    asked,
                    "a sliver too wide to be eased away would remain; end the slashes nearer the point",
                    new Reach(Quantity.LENGTH, sliver.widest(), 0, most));
        }
        Reworked cut = new Reworked(piece, Ledger.EMPTY);
        Map<String, Motion> motions = new TreeMap<>();
        CurvePath line = Measured.leg(piece, dart, leg);
        for (OnLeg slash : ordered) {
            Spot end = new Spot.On(new Border.OfLeg(dart, leg), slash.arc(), Optional.empty());
            Reworked next = Panels.cut(cut.piece(), Slash.straight(slash.name(), slash.from(), end));
            cut = new Reworked(next.piece(), cut.ledger().then(next.ledger()));
        }
        for (OnLeg slash : ordered) {
            motions.put(
                    slash.name(),
                    Measured.widen(cut.piece(), slash.name(), line.pointAt(slash.arc()), slash.share() * angle));
        }
        Reworked opened = Panels.open(cut.piece(), motions, Stay.CENTRE, asked);
        Reworked used = Panels.use(opened.piece(), dart, Use.SLASH);
        return new Reworked(
                used.piece(),
                cut.ledger().then(opened.ledger()).then(used.ledger()).then(sliver));
    }

    private static void requireOnLeg(Piece piece, String dart, Leg leg, List<OnLeg> slashes, String asked) {
        double length = Measured.leg(piece, dart, leg).length();
        for (OnLeg slash : slashes) {
            if (slash.arc() >= length) {
                throw new DraftingException(
                        asked,
                        "'" + slash.name() + "' would end past the point of the dart",
                        new Reach(Quantity.LENGTH, slash.arc(), 0, length));
            }
        }
    }

    /** The chain of the leg's places as they come to lie, against the other leg. */
    private static Sliver sliver(Piece piece, String dart, Leg leg, List<OnLeg> slashes, double angle) {
        CurvePath moved = Measured.leg(piece, dart, leg);
        CurvePath other = Measured.leg(piece, dart, leg.other());
        Vector2D apex = other.end();
        double closing = Math.signum(apex.vectorTo(moved.start()).signedArea(apex.vectorTo(other.start())));
        List<Vector2D> chain = new ArrayList<>(List.of(apex));
        Vector2D way = moved.end().directionTo(moved.start());
        double done = moved.length();
        Vector2D here = apex;
        double turned = 0;
        for (OnLeg slash : slashes) {
            here = here.add(AffineTransformMatrix2D.createRotation(closing * turned)
                    .applyVector(way)
                    .multiply(done - slash.arc()));
            chain.add(here);
            done = slash.arc();
            turned += slash.share() * angle;
        }
        chain.add(here.add(AffineTransformMatrix2D.createRotation(closing * turned)
                .applyVector(way)
                .multiply(done)));
        double widest = chain.stream()
                .mapToDouble(place -> Math.abs(apex.directionTo(other.start()).signedArea(apex.vectorTo(place))))
                .max()
                .orElse(0);
        chain.add(other.start());
        chain.add(apex);
        double area = CurvePath.polyline(chain.toArray(Vector2D[]::new)).area();
        return new Sliver(dart, widest, Math.abs(area));
    }
}
