package org.draftingmaths.fullness;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.Change;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Fact;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.ledger.Reach;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Motion;
import org.draftingmaths.piece.Panels;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Redraw;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Slash;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.piece.Stay;
import org.draftingmaths.unit.Asked;

/**
 * Cowls at the neck. The piece is slashed from the centre, the part above swung away from it (darts close into the cowl first, hinges
 * give the rest) until the neck point is half the cowl's edge from the centre; the gaps become cloth; the centre is drawn on
 * straight, still a fold, and the new edge square to it through the neck point.
 *
 * <p>With {@code N} the neck point, {@code O} the foot of the centre, {@code u} its direction up and {@code n} square to it:
 *
 * <pre>
 *   half edge      l = (N' - O) n                                      N' the neck point after the swing
 *   top of centre  T = O + u ((N' - O) u),  the edge runs N' T, square to O T
 *   drop           d from l and c = (N - O) n, as a V or a catenary    {@link Hang}
 *   surplus        (N' - N) u + d                                      centre on paper less centre on the body below the drop
 * </pre>
 *
 * <p>Conserved: the base length of every edge but the centre and the new edge, so the shoulder and all seams; all below the lowest
 * slash; the grain. The edge's length decides how deep it hangs; the surplus how many folds there are below it, and how deep.
 */
public final class Cowls {

    private static final String SLASH = "cowl slash";

    private Cowls() {}

    /**
     * Drafts a cowl whose half edge has a given length, as a tape hung round the neck of the stand or the wearer says.
     *
     * @param piece the half front or back
     * @param lines where it is slashed
     * @param length half the edge, in mm, from the neck point to the centre
     * @param hang how the edge is taken to hang, when its drop is told
     * @return the piece with its cowl
     * @throws IllegalArgumentException when the length is not more than 0
     * @throws DraftingException when the hinges cannot reach so far or the neck is wider already, with what can be reached; when the darts
     *     have several points; when a slash leaves the cloth or parts would lie over one another
     */
    public static Cowl byLength(Piece piece, CowlLines lines, double length, Hang hang) {
        Asked.length("Half the edge of a cowl", length);
        String asked = "Draft a cowl of " + Words.of(length) + " on '" + piece.name() + "'";
        CowlFrame frame = CowlFrame.of(piece, lines.centre(), lines.neckline(), asked);
        double half = frame.across(frame.neckPoint(piece, lines.neckline()));
        return drafted(piece, lines, frame, length, hang.dropFor(half, length).value(), asked);
    }

    /**
     * Drafts a cowl whose edge hangs by a given drop: half the edge is as long as a V or a catenary of that drop between the neck points.
     *
     * <pre>{@code
     * CowlLines lines = CowlLines.closing(front, "centre front", "neckline", "bust dart");
     * Cowl cowl = Cowls.byDrop(front, lines, 120, Hang.CATENARY);
     * }</pre>
     *
     * @param piece the half front or back
     * @param lines where it is slashed
     * @param drop how far the lowest point hangs below the neck points, in mm
     * @param hang how the edge hangs
     * @return the piece with its cowl
     * @throws IllegalArgumentException when the drop is not more than 0
     * @throws DraftingException as {@link #byLength}
     */
    public static Cowl byDrop(Piece piece, CowlLines lines, double drop, Hang hang) {
        Asked.length("The drop of a cowl", drop);
        String asked = "Draft a cowl that hangs " + Words.of(drop) + " on '" + piece.name() + "'";
        CowlFrame frame = CowlFrame.of(piece, lines.centre(), lines.neckline(), asked);
        double half = frame.across(frame.neckPoint(piece, lines.neckline()));
        return drafted(piece, lines, frame, hang.lengthFor(half, drop), drop, asked);
    }

    /**
     * By how much the upper part must be swung for a half edge: the angle of the darts that are closed, and of the hinges that are opened,
     * together.
     *
     * @param piece the half front or back
     * @param lines where it is slashed
     * @param length half the edge, in mm
     * @return the one angle of the rising branch; none when the edge is less than the neck has now, or more than can be reached
     * @throws IllegalArgumentException when the length is not more than 0
     * @throws DraftingException when the lines do not fit the piece
     */
    public static Answer turnFor(Piece piece, CowlLines lines, double length) {
        Asked.length("Half the edge of a cowl", length);
        String asked = "Swing for a cowl of " + Words.of(length) + " on '" + piece.name() + "'";
        Reachable reachable = Reachable.of(piece, lines, asked);
        if (!reachable.holds(length)) {
            return new Answer.None(asked, Reachable.REASON, reachable.reach(length));
        }
        return new Answer.Unique(asked, Quantity.ANGLE, reachable.turn(length));
    }

    /**
     * The half edge that a swing gives: the inverse of {@link #turnFor}.
     *
     * @param piece the half front or back
     * @param lines where it is slashed
     * @param turn the angle of darts and hinges together, in radians
     * @return half the edge, in mm
     * @throws DraftingException when the upper part cannot be swung so far and still come away from the centre
     */
    public static double lengthFor(Piece piece, CowlLines lines, double turn) {
        String asked = "Swing a cowl on '" + piece.name() + "'";
        Reachable reachable = Reachable.of(piece, lines, asked);
        double most = reachable.turnMost();
        if (!(turn >= 0 && turn <= most)) {
            throw new DraftingException(
                    asked, "beyond that it comes back to the centre", new Reach(Quantity.ANGLE, turn, 0, most));
        }
        return reachable.length(turn);
    }

    // ------------------------------------------------------------------------------------------------ reach

    /**
     * What a swing can reach.
     *
     * @param byDarts the piece as it is
     * @param byHinges the piece with its darts closed as far as is of use, and the hinges' slashes cut
     * @param hingesMost the angle of each hinge that reaches furthest
     */
    private record Reachable(Swing byDarts, Swing byHinges, double hingesMost) {

        static final String REASON = "the neck point swings only so far from the centre";

        static Reachable of(Piece piece, CowlLines lines, String asked) {
            Swing darts = Swing.of(piece, lines, asked);
            if (lines.hinges().isEmpty()) {
                return new Reachable(darts, darts, 0);
            }
            Piece closed =
                    closed(piece, lines, darts, darts.dartsUseful(), asked).piece();
            Piece cut = cut(closed, lines, darts.frame()).piece();
            Swing hinges = new Swing(
                    darts.frame(),
                    darts.frame().neckPoint(cut, lines.neckline()),
                    darts.point(),
                    List.of(),
                    tips(cut, lines));
            return new Reachable(darts, hinges, hinges.hingesUseful());
        }

        double least() {
            return byDarts.acrossByDarts(0);
        }

        private double betweenDartsAndHinges() {
            return byDarts.acrossByDarts(byDarts.dartsUseful());
        }

        double most() {
            return byHinges.hinges().isEmpty() ? betweenDartsAndHinges() : byHinges.acrossByHinges(hingesMost);
        }

        boolean holds(double length) {
            return length >= least() && length <= most();
        }

        Reach reach(double length) {
            return new Reach(Quantity.LENGTH, length, least(), most());
        }

        double turnMost() {
            return byDarts.dartsUseful() + hingesMost * byHinges.hinges().size();
        }

        boolean dartsWillDo(double length) {
            return length <= betweenDartsAndHinges();
        }

        /** The angle of each hinge, when the darts will not do. */
        double hinge(double length) {
            return Bisection.rising(byHinges::acrossByHinges, length, 0, hingesMost);
        }

        double dart(double length) {
            return Bisection.rising(byDarts::acrossByDarts, length, 0, byDarts.dartsUseful());
        }

        double turn(double length) {
            return dartsWillDo(length)
                    ? dart(length)
                    : byDarts.dartsUseful() + hinge(length) * byHinges.hinges().size();
        }

        double length(double turn) {
            return turn <= byDarts.dartsUseful()
                    ? byDarts.acrossByDarts(turn)
                    : byHinges.acrossByHinges(
                            (turn - byDarts.dartsUseful()) / byHinges.hinges().size());
        }
    }

    // ------------------------------------------------------------------------------------------------ the swing

    private static Cowl drafted(
            Piece piece, CowlLines lines, CowlFrame frame, double length, double drop, String asked) {
        Reachable reachable = Reachable.of(piece, lines, asked);
        if (!reachable.holds(length)) {
            throw new DraftingException(asked, Reachable.REASON, reachable.reach(length));
        }
        Reworked swung = swung(piece, lines, reachable, length, asked);
        Reworked drawn = drawnAnew(swung, lines, frame);
        Vector2D neck = frame.neckPoint(piece, lines.neckline());
        Vector2D swungNeck = frame.neckPoint(swung.piece(), lines.neckline());
        double centre = frame.height(swungNeck);
        double onBody = frame.height(neck) - drop;
        double surplus = centre - onBody;
        int folds = (int) Math.max(0, Math.floor(surplus / (2 * lines.fold())));
        Budget budget = Budget.of(piece, drawn.piece());
        Ledger told = drawn.ledger()
                .then(new Fact("half edge of the cowl", Quantity.LENGTH, length))
                .then(new Fact("drop of the cowl below the neck points", Quantity.LENGTH, drop))
                .then(new Change(
                        "centre, on the body below the drop and then on the paper,", Quantity.LENGTH, onBody, centre))
                .then(new Fact("surplus at the centre", Quantity.LENGTH, surplus))
                .then(new Fact(
                        "number of folds " + Words.of(lines.fold()) + " deep that it makes", Quantity.COUNT, folds))
                .then(budget);
        return new Cowl(
                swung.piece(),
                new Reworked(drawn.piece(), told),
                length,
                drop,
                reachable.turn(length),
                surplus,
                folds,
                budget,
                findings(piece, lines, frame, drop, surplus));
    }

    private static Reworked swung(Piece piece, CowlLines lines, Reachable reachable, double length, String asked) {
        if (reachable.dartsWillDo(length)) {
            double angle = reachable.dart(length);
            return angle == 0
                    ? new Reworked(piece, Ledger.EMPTY)
                    : closed(piece, lines, reachable.byDarts(), angle, asked);
        }
        Reworked closed =
                closed(piece, lines, reachable.byDarts(), reachable.byDarts().dartsUseful(), asked);
        Reworked cut = cut(closed.piece(), lines, reachable.byDarts().frame());
        double angle = reachable.hinge(length);
        Map<String, Motion> motions = new HashMap<>();
        for (int i = 1; i <= lines.hinges().size(); i++) {
            String name = SLASH + " " + i;
            motions.put(
                    name,
                    Measured.widen(
                            cut.piece(),
                            name,
                            Measured.leg(cut.piece(), name, Leg.BEFORE).end(),
                            angle));
        }
        Reworked opened = Panels.open(
                cut.piece(), motions, foot(piece, lines, reachable.byDarts().frame()), asked);
        return new Reworked(opened.piece(), closed.ledger().then(cut.ledger()).then(opened.ledger()));
    }

    /** The darts closed by an angle in all, one after the other, and a slash from the centre to their point opened by as much. */
    private static Reworked closed(Piece piece, CowlLines lines, Swing swing, double angle, String asked) {
        if (lines.darts().isEmpty() || angle == 0) {
            return new Reworked(piece, Ledger.EMPTY);
        }
        Reworked cut = Panels.cut(
                piece,
                Slash.straight(
                        SLASH,
                        Spot.on(lines.centre(), swing.frame().arc(lines.anchor())),
                        Spot.tip(lines.darts().get(0))));
        Map<String, Motion> motions = new HashMap<>();
        double left = angle;
        for (int i = 0; i < lines.darts().size() && left > 0; i++) {
            double share = Math.min(left, swing.darts().get(i));
            String dart = lines.darts().get(i);
            motions.put(dart, Measured.widen(cut.piece(), dart, swing.point(), -share));
            left -= share;
        }
        motions.put(SLASH, Measured.widen(cut.piece(), SLASH, swing.point(), angle - left));
        Reworked opened = Panels.open(cut.piece(), motions, foot(piece, lines, swing.frame()), asked);
        return new Reworked(opened.piece(), cut.ledger().then(opened.ledger()));
    }

    private static Reworked cut(Piece piece, CowlLines lines, CowlFrame frame) {
        Reworked cut = new Reworked(piece, Ledger.EMPTY);
        for (int i = 1; i <= lines.hinges().size(); i++) {
            CowlLines.Hinge hinge = lines.hinges().get(i - 1);
            Reworked next = Panels.cut(
                    cut.piece(),
                    Slash.straight(SLASH + " " + i, Spot.on(lines.centre(), frame.arc(hinge.from())), hinge.to()));
            cut = new Reworked(next.piece(), cut.ledger().then(next.ledger()));
        }
        return cut;
    }

    private static List<Vector2D> tips(Piece cut, CowlLines lines) {
        List<Vector2D> tips = new ArrayList<>();
        for (int i = 1; i <= lines.hinges().size(); i++) {
            tips.add(Measured.leg(cut, SLASH + " " + i, Leg.BEFORE).end());
        }
        return tips;
    }

    /** What lies at the foot of the centre stays. */
    private static Stay foot(Piece piece, CowlLines lines, CowlFrame frame) {
        double length = piece.edge(lines.centre()).length();
        return Stay.at(lines.centre(), frame.footAtEnd() ? length : 0);
    }

    // ------------------------------------------------------------------------------------------------ the new lines

    /** The gaps become cloth, the centre goes straight on, and the edge is drawn square to it. */
    private static Reworked drawnAnew(Reworked swung, CowlLines lines, CowlFrame frame) {
        Reworked filled = swung;
        for (int i = 0; i <= lines.hinges().size(); i++) {
            String name = i == 0 ? SLASH : SLASH + " " + i;
            if (filled.piece().openings().stream().anyMatch(each -> each.name().equals(name))) {
                Reworked next = Panels.fill(filled.piece(), name);
                filled = new Reworked(next.piece(), filled.ledger().then(next.ledger()));
            }
        }
        Vector2D neck = frame.neckPoint(filled.piece(), lines.neckline());
        Vector2D top = frame.beside(neck);
        CurvePath edge = CurvePath.polyline(neck, top);
        CurvePath centre = CurvePath.polyline(top, frame.foot());
        Reworked redrawn = Redraw.edges(
                filled.piece(),
                Map.of(
                        lines.neckline(), frame.neckAtStart() ? edge : edge.reversed(),
                        lines.centre(), frame.footAtEnd() ? centre : centre.reversed()),
                Map.of(lines.centre(), frame.footAtEnd() ? Redraw.Marks.FROM_END : Redraw.Marks.FROM_START));
        return new Reworked(redrawn.piece(), filled.ledger().then(redrawn.ledger()));
    }

    private static List<Finding> findings(Piece piece, CowlLines lines, CowlFrame frame, double drop, double surplus) {
        List<Finding> findings = new ArrayList<>();
        if (surplus < 2 * lines.fold()) {
            findings.add(new Finding(
                    Finding.Kind.NO_SURPLUS,
                    "'" + lines.centre() + "' of '" + piece.name() + "'",
                    Quantity.LENGTH,
                    surplus,
                    2 * lines.fold(),
                    0));
        }
        double neck = frame.height(frame.neckPoint(piece, lines.neckline()));
        lines.apex()
                .map(apex -> neck - frame.height(apex))
                .filter(apex -> drop > apex)
                .ifPresent(apex -> findings.add(new Finding(
                        Finding.Kind.LOWER_THAN_APEX,
                        "'" + lines.neckline() + "' of '" + piece.name() + "'",
                        Quantity.LENGTH,
                        drop,
                        apex,
                        0)));
        return findings;
    }
}
