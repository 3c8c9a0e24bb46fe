package org.draftingmaths.lessons.styles;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.contour.Armholes;
import org.draftingmaths.contour.Crossing;
import org.draftingmaths.contour.Necklines;
import org.draftingmaths.contour.SideSeams;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Meets;
import org.draftingmaths.dart.Darts;
import org.draftingmaths.dart.StyleLines;
import org.draftingmaths.exchange.Making;
import org.draftingmaths.exchange.Style;
import org.draftingmaths.exchange.ToCut;
import org.draftingmaths.finish.Allowances;
import org.draftingmaths.finish.Cutting;
import org.draftingmaths.finish.Give;
import org.draftingmaths.finish.Hems;
import org.draftingmaths.finish.TurnUp;
import org.draftingmaths.fullness.Drafted;
import org.draftingmaths.fullness.Gathers;
import org.draftingmaths.fullness.Lengthen;
import org.draftingmaths.fullness.Pleat;
import org.draftingmaths.fullness.Pleats;
import org.draftingmaths.fullness.Smooth;
import org.draftingmaths.fullness.Tiers;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.piece.Beside;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Notch;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.piece.Slash;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.piece.Stay;
import org.draftingmaths.piece.Use;
import org.draftingmaths.unit.Length;

/** A wide smock for a choir that sings out of doors: a yoke and pleats behind, gathers at the neck in front, two gathered tiers below the hip. */
public final class ChoirSmock {

    private static final Crossing NECK = Crossing.of("shoulder", "front", "back", "neckline");
    private static final Crossing ARM = Crossing.of("shoulder", "front", "back", "armhole");
    private static final double BINDING = 6;

    private ChoirSmock() {}

    /**
     * From measures to finished pieces.
     *
     * @param body the measures
     * @return the style
     */
    public static Style draft(Measurements body) {
        Making smock = Moves.torso("Choir smock", body)
                .joined("Let the sides out", draft -> SideSeams.takeIn(draft, "side", Length.mm(-15), Length.mm(-15)))
                .on("front", "Lengthen it at the waist", front -> Lengthen.at(front, "waist line", Length.cm(2)))
                .on("back", "Lengthen it at the waist", back -> Lengthen.at(back, "waist line", Length.cm(2)))
                .joined(
                        "Widen the neck for the head",
                        draft -> Necklines.reshape(
                                draft, NECK, Necklines.Wanted.round(Length.cm(3), Length.cm(5), Length.cm(2))))
                .joined(
                        "Lower the armhole",
                        draft -> Armholes.reshape(draft, ARM, Armholes.Wanted.SAME.lower(Length.cm(2))));
        smock = Moves.joinedUnderTheArm(Moves.faced(Moves.notchedArms(smock), "arm", "armhole", 45));
        double neck = Lengths.folded(smock.piece("front"), "neckline");
        smock = bound(tiered(yoked(fronted(smock))), neck);

        Allowances seams = Allowances.of(Length.mm(10));
        Allowances arm = seams.on("armhole", Length.mm(6));
        Allowances upper = arm.on("neckline", Length.mm(BINDING));
        Allowances hem = seams.on("free edge of bottom", Length.mm(10));
        return Style.of(
                "Choir smock",
                body.name(),
                "version 1",
                smock.draft(),
                smock.steps(),
                List.of(
                        ToCut.of("front", upper, Cutting.once()),
                        ToCut.of("back yoke", upper, Cutting.once()),
                        ToCut.of("back", arm, Cutting.once()).doubled("armhole").doubled("side seam"),
                        ToCut.of("front frill 1", seams, Cutting.once()),
                        ToCut.of("front frill 2", hem, Cutting.once()),
                        ToCut.of("back frill 1", seams, Cutting.once()),
                        ToCut.of("back frill 2", hem, Cutting.once()),
                        ToCut.of("front arm facing", Moves.facing("armhole"), Cutting.pair())
                                .small(),
                        ToCut.of("back arm facing", Moves.facing("armhole"), Cutting.pair())
                                .small()
                                .doubled("armhole"),
                        ToCut.of("neck binding", Moves.binding(BINDING), Cutting.once())
                                .small()));
    }

    /** Half the bust dart goes to the side, the rest is a tuck at the shoulder; gathers at the neck. */
    private static Making fronted(Making smock) {
        return smock.on(
                        "front",
                        "Move half of the bust dart to the side seam",
                        front -> Darts.rotateShare(
                                front,
                                "bust dart",
                                Spot.on("side seam", front.edge("side seam").length() - 60),
                                "side dart",
                                0.5))
                .on(
                        "front",
                        "Fold the rest into a tuck at the shoulder",
                        front -> Pleats.dartTuck(front, "bust dart", Use.Under.AFTER, 50, Use.Stitched.LEGS))
                .on("front", "Slash and spread for gathers at the neck", front -> gathered(front));
    }

    /** Three slashes from the neck to the hem; both edges are drawn in one curve again. */
    private static Reworked gathered(Piece front) {
        double length = front.edge("neckline").length();
        Notch from = new Notch("neckline", 0.45 * length, Beside.BEFORE);
        Notch to = new Notch("neckline", 0.95 * length, Beside.BEFORE);
        Reworked spread = Gathers.spread(front.notched(from).notched(to), from, to, "hem", 3, 1.6, 1, Stay.CENTRE);
        Reworked hem = spread.then(Smooth.edge(spread.piece(), "hem", new Smooth.Blend.OneCurve(), Smooth.Ends.SQUARE));
        return hem.then(Smooth.edge(hem.piece(), "neckline", new Smooth.Blend.AlongStretches(), Smooth.Ends.AS_DRAWN));
    }

    /** The shoulder dart is taken into the seam of a yoke, and pleats are folded in below it. */
    private static Making yoked(Making smock) {
        return smock.on(
                        "back",
                        "Turn the shoulder dart into the armhole",
                        back -> Darts.rotate(back, "shoulder dart", Spot.on("armhole", beside(back)), "yoke dart"))
                .parted(
                        "back",
                        "Cut off a yoke through the dart",
                        back -> StyleLines.through(
                                back,
                                "yoke dart",
                                Spot.on("centre back", below(back)),
                                "yoke line",
                                List.of(),
                                "back yoke",
                                "back"))
                .on("back yoke", "Round the corner that the dart left", ChoirSmock::rounded)
                .on("back", "Round the corner that the dart left", ChoirSmock::rounded)
                .on("back", "Fold in two pleats", ChoirSmock::pleated);
    }

    /** Where the armhole lies on the level of the dart's point. */
    private static double beside(Piece back) {
        double level = Measured.tip(back, "shoulder dart").getY();
        CurvePath across = CurvePath.polyline(Vector2D.of(0, level), Vector2D.of(1000, level));
        return Meets.of(Paper.edge(back, "armhole"), across).points().get(0).onFirst();
    }

    private static double below(Piece back) {
        return Paper.edge(back, "centre back").start().getY()
                - Measured.tip(back, "yoke dart").getY();
    }

    private static Reworked rounded(Piece part) {
        return Smooth.edge(part, "yoke line", new Smooth.Blend.Rounded(25), Smooth.Ends.AS_DRAWN);
    }

    private static Reworked pleated(Piece back) {
        List<Pleat> pleats = new ArrayList<>();
        for (double x : new double[] {30, 80}) {
            pleats.add(Pleat.even(
                    Slash.straight("pleat at " + (int) x, Spot.on("yoke line", x), Spot.on("hem", x)),
                    20,
                    Use.Under.AFTER));
        }
        return Pleats.fold(back, pleats, Stay.CENTRE);
    }

    /** Two tiers in front and two behind, each gathered to what is above it. */
    private static Making tiered(Making smock) {
        Making tiered = tiered(tiered(smock, "front"), "back");
        List<Seam> sides = new ArrayList<>();
        for (int tier = 1; tier <= 2; tier++) {
            String front = "front frill " + tier;
            String back = "back frill " + tier;
            sides.add(Seam.flat(
                    "left side of tier " + tier, Seam.Mate.backwards(front, "end"), Seam.Mate.of(back, "other end")));
            sides.add(Seam.flat(
                    "right side of tier " + tier, Seam.Mate.of(front, "other end"), Seam.Mate.backwards(back, "end")));
        }
        return tiered.adding("Join the tiers at the sides", List.of(), sides, Ledger.EMPTY)
                .on("front frill 2", "Turn up the hem", ChoirSmock::turnedUp)
                .on("back frill 2", "Turn up the hem", ChoirSmock::turnedUp);
    }

    private static Making tiered(Making smock, String piece) {
        Piece above = smock.piece(piece);
        double half = Lengths.folded(above, "hem");
        Notch quarter = new Notch("hem", above.edge("hem").length() / 2, Beside.BEFORE);
        Drafted tiers = Tiers.draft(piece + " frill", 2 * half, Tiers.even(320, 2, 1.5));
        double surplus = 0.5 * half / 2;
        List<Seam.Held> held = new ArrayList<>();
        for (int interval = 1; interval <= 4; interval++) {
            held.add(new Seam.Held(interval, surplus, Seam.How.GATHERS, "gathered to the smock"));
        }
        List<Seam> seams = new ArrayList<>();
        seams.add(new Seam(
                piece + " frill",
                Seam.Mate.of(piece + " frill 1", "top"),
                Seam.Mate.backwards(piece, "hem")
                        .then(Seam.Mate.of(piece, "hem").mirrored()),
                held));
        tiers.draft()
                .seams()
                .forEach(seam ->
                        seams.add(new Seam(piece + " " + seam.name(), seam.first(), seam.second(), seam.held())));
        return smock.on(piece, "Mark the middle of the hem", each -> new Reworked(each.notched(quarter), Ledger.EMPTY))
                .adding("Draft two tiers for the " + piece, tiers.draft().pieces(), seams, tiers.ledger());
    }

    private static Reworked turnedUp(Piece tier) {
        TurnUp hem = Hems.turnUp(tier, "bottom", 25, new Give(0, 0));
        return new Reworked(hem.piece(), hem.ledger());
    }

    /** The neck is bound from the centre back all round; {@code neck} is the front's half of it when it is gathered. */
    private static Making bound(Making smock, double neck) {
        double back = Lengths.folded(smock.piece("back yoke"), "neckline");
        double surplus = Lengths.folded(smock.piece("front"), "neckline") - neck;
        List<Notch> gathers = smock.piece("front").notches().stream()
                .filter(notch -> notch.edge().equals("neckline"))
                .toList();
        double from = back + gathers.get(0).arc();
        double to = back + gathers.get(1).arc() - surplus;
        double length = 2 * (back + neck);
        Seam.Mate half = Seam.Mate.backwards("back yoke", "neckline").then(Seam.Mate.of("front", "neckline"));
        Seam binding = new Seam(
                "bound neck",
                half.then(half.reversed().mirrored()),
                Seam.Mate.backwards("neck binding", "sewn side"),
                List.of(
                        new Seam.Held(3, surplus, Seam.How.GATHERS, "gathered between the notches"),
                        new Seam.Held(5, surplus, Seam.How.GATHERS, "gathered between the notches")));
        List<Double> marks = List.of(back, from, to, length - to, length - from, length - back);
        return Moves.bound(smock, binding, length, marks, BINDING);
    }
}
