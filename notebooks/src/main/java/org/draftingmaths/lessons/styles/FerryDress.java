package org.draftingmaths.lessons.styles;

import java.util.List;
import org.draftingmaths.block.Block;
import org.draftingmaths.block.TorsoBlock;
import org.draftingmaths.check.DraftLimits;
import org.draftingmaths.contour.Armholes;
import org.draftingmaths.contour.Crossing;
import org.draftingmaths.contour.Necklines;
import org.draftingmaths.contour.SideSeams;
import org.draftingmaths.exchange.Making;
import org.draftingmaths.exchange.Style;
import org.draftingmaths.exchange.ToCut;
import org.draftingmaths.finish.Allowances;
import org.draftingmaths.finish.Cutting;
import org.draftingmaths.finish.Give;
import org.draftingmaths.finish.Hems;
import org.draftingmaths.finish.TurnUp;
import org.draftingmaths.fullness.CircleSkirt;
import org.draftingmaths.fullness.CircleSkirts;
import org.draftingmaths.fullness.Drafted;
import org.draftingmaths.fullness.Flounce;
import org.draftingmaths.fullness.Flounces;
import org.draftingmaths.fullness.Godets;
import org.draftingmaths.fullness.Smooth;
import org.draftingmaths.ledger.Entry;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Instruction;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.measure.Ease;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.piece.Beside;
import org.draftingmaths.piece.Detach;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Notch;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.seam.SeamTruing;
import org.draftingmaths.seam.Truing;
import org.draftingmaths.unit.Length;

/**
 * A dress for those who welcome the guests of an evening ferry: panels in front, a V at the neck, flounces for sleeves, and half a circle for the skirt, with a
 * godet in either side seam. It is open at the left side, where a slide fastener goes.
 */
public final class FerryDress {

    private static final Crossing NECK = Crossing.of("shoulder", "front", "back", "neckline");
    private static final Crossing ARM = Crossing.of("shoulder", "front", "back", "armhole");

    /** The neckline and its facing come to a point at the centre front; the ends of the flounce are rolled with its hem. */
    private static final DraftLimits MEANT = DraftLimits.COMMON
            .meaning(Finding.Kind.EDGE_UNSEWN, "arm flounce")
            .meaning(Finding.Kind.FOLD_NOT_SQUARE, "neckline")
            .meaning(Finding.Kind.FOLD_NOT_SQUARE, "outer edge");

    private static final double SKIRT = 620;
    private static final double GODET = 260;
    private static final double BINDING = 6;

    private FerryDress() {}

    /**
     * From measures to finished pieces.
     *
     * @param body the measures
     * @return the style
     */
    public static Style draft(Measurements body) {
        Block block = TorsoBlock.bodice(body, Ease.CLOSE_FITTING);
        Making dress = Making.of(
                        "Ferry dress, size " + body.name(),
                        "Draft the bodice block from these measures",
                        block.draft(),
                        Moves.drafted(body, block))
                .joined(
                        "Take the sides in under the arm, for there is no sleeve",
                        draft -> SideSeams.takeIn(draft, "side", Length.mm(0), Length.mm(5)))
                .joined(
                        "Cut the neck to a V",
                        draft -> Necklines.reshape(
                                draft, NECK, Necklines.Wanted.v(Length.cm(2), Length.cm(8), Length.cm(1.5))))
                .joined(
                        "Draw the armhole for summer",
                        draft -> Armholes.reshape(draft, ARM, Armholes.Wanted.SAME.shoulderIn(Length.cm(1))))
                .joined(
                        "Blend the waist over the side",
                        draft -> Truing.blend(draft, draft.seams().get(1), Seam.End.START, "waist", "waist"))
                .on(
                        "back",
                        "Draw the waist anew over the dart as it is sewn",
                        back -> Truing.blendDart(back, "waist dart"));
        dress = Moves.faced(dress, "neck", "neckline", 55)
                .parted(
                        "front",
                        "Cut it in panels through both darts",
                        front -> Detach.through(
                                front,
                                "panel seam",
                                List.of("bust dart", "waist dart"),
                                apex(front),
                                "side front",
                                "front"))
                .on("front", "Round the panel seam over the bust", FerryDress::rounded)
                .on("side front", "Round the panel seam over the bust", FerryDress::rounded)
                .joined("True the panel seam, for the rounded one is shorter", FerryDress::trued)
                .joined(
                        "Blend the waist over the panel seam",
                        draft -> Truing.blend(draft, draft.seams().get(0), Seam.End.STOP, "waist", "waist"));
        dress = bound(flounced(skirted(dress))).minding(minded());

        Allowances seams = Allowances.of(Length.mm(10));
        Allowances neck = seams.on("neckline", Length.mm(6));
        Allowances arm = seams.on("armhole", Length.mm(BINDING));
        Allowances skirt = seams.on("free edge of hem", Length.mm(0));
        Allowances flounce = seams.on("seam", Length.mm(BINDING)).on("free edge of hem", Length.mm(0));
        return Style.of(
                "Ferry dress",
                body.name(),
                "version 1",
                dress.draft(),
                dress.steps(),
                List.of(
                        ToCut.of("front", neck, Cutting.once()),
                        ToCut.of("side front", arm, Cutting.pair()),
                        ToCut.of("back", neck.on("armhole", Length.mm(BINDING)), Cutting.once())
                                .doubled("armhole"),
                        ToCut.of("front skirt", skirt, Cutting.once()),
                        ToCut.of("back skirt", skirt, Cutting.once()),
                        ToCut.of("godet", skirt, Cutting.pair()).small(),
                        ToCut.of("arm flounce", flounce, Cutting.pair()).small(),
                        ToCut.of("front neck facing", Moves.facing("neckline"), Cutting.once())
                                .small(),
                        ToCut.of("back neck facing", Moves.facing("neckline"), Cutting.once())
                                .small(),
                        ToCut.of("arm binding", Moves.binding(BINDING), Cutting.pair())
                                .small()),
                MEANT);
    }

    private static Entry[] minded() {
        return new Entry[] {
            new Instruction(
                    "Left side: leave it open from under the arm to 15 cm (6 in) below the waist, and set a slide fastener in before the godet; without"
                            + " it nobody comes in at the waist."),
            new Instruction(
                    "Flounce: roll its hem and both its ends before it is sewn to the armhole; its ends lie under the binding."),
            new Instruction(
                    "Skirt: half of it lies on the bias and grows. Let it hang for a day, and level the hem from the floor before it is rolled.")
        };
    }

    /** Match points at the dart's point and 45 mm to either side of it. */
    private static List<Double> apex(Piece front) {
        double leg = Measured.leg(front, "bust dart", Leg.BEFORE).length();
        return List.of(leg - 45, leg, leg + 45);
    }

    private static Reworked rounded(Piece panel) {
        return Smooth.edge(panel, "panel seam", new Smooth.Blend.Rounded(40), Smooth.Ends.AS_DRAWN);
    }

    /** The side panel may move its match points, and its end at the waist by up to 3 mm. */
    private static SeamTruing.Trued trued(Draft draft) {
        Seam seam = draft.seams().get(0);
        List<SeamTruing.May> may = List.of(
                new SeamTruing.AtNotch(seam.first(), 1, 1),
                new SeamTruing.AtNotch(seam.first(), 2, 1),
                new SeamTruing.AtNotch(seam.first(), 3, 1),
                new SeamTruing.AtEnd(seam.first(), Seam.End.STOP, 1));
        return SeamTruing.of(draft, seam, may, 3);
    }

    // ------------------------------------------------------------------------------------------------ skirt

    /** Two quarters of a circle, each as wide at the waist as the bodice above it, and a godet in the side seam. */
    private static Making skirted(Making dress) {
        double panel = Lengths.folded(dress.piece("front"), "waist");
        Drafted front = quarter(panel + Lengths.folded(dress.piece("side front"), "waist"));
        Drafted back = quarter(Lengths.folded(dress.piece("back"), "waist"));
        Notch point = new Notch("side", GODET, Beside.BEFORE);
        Piece frontSkirt = front.draft()
                .pieces()
                .get(0)
                .named("front skirt")
                .unnotched("waist")
                .notched(point);
        double waist = frontSkirt.edge("waist").length();
        frontSkirt = frontSkirt.notched(new Notch("waist", waist - panel, Beside.BEFORE));
        Piece backSkirt = back.draft()
                .pieces()
                .get(0)
                .named("back skirt")
                .unnotched("waist")
                .notched(point);
        Seam.Mate frontSide = Seam.Mate.of("front skirt", "side");
        Seam.Mate backSide = Seam.Mate.of("back skirt", "side");
        Seam side = Seam.flat("skirt side", frontSide, backSide);
        Drafted godet = Godets.inSeam(
                "godet",
                new Draft("skirt", List.of(frontSkirt, backSkirt), List.of(side)),
                side,
                Seam.End.START,
                GODET,
                240);
        return dress.adding(
                        "Draft the skirt as half a circle, a quarter in front and a quarter behind",
                        List.of(frontSkirt, backSkirt),
                        List.of(
                                Seam.flat("skirt side", frontSide.from(point), backSide.from(point)),
                                Seam.flat(
                                        "front waist",
                                        Seam.Mate.of("front", "waist").then(Seam.Mate.of("side front", "waist")),
                                        Seam.Mate.backwards("front skirt", "waist")),
                                Seam.flat(
                                        "back waist",
                                        Seam.Mate.of("back", "waist"),
                                        Seam.Mate.backwards("back skirt", "waist"))),
                        front.ledger().about("front skirt").then(back.ledger().about("back skirt")))
                .adding(
                        "Draft a godet for the side seam",
                        List.of(godet.draft().piece("godet")),
                        List.of(
                                Seam.flat(
                                        "front of godet", frontSide.upTo(point), Seam.Mate.backwards("godet", "side")),
                                Seam.flat("back of godet", backSide.upTo(point), Seam.Mate.of("godet", "other side"))),
                        godet.ledger())
                .on("front skirt", "Turn up the hem", each -> rolled(each, 5))
                .on("back skirt", "Turn up the hem", each -> rolled(each, 5))
                .on("godet", "Turn up the hem", each -> rolled(each, 5));
    }

    /** One of the two panels of a half circle that is four times as wide at the waist. */
    private static Drafted quarter(double waist) {
        return CircleSkirts.draft("skirt", CircleSkirt.of(4 * waist, SKIRT, 0.5), 2, CircleSkirts.Lay.ON_FOLD);
    }

    // ------------------------------------------------------------------------------------------------ flounce, binding

    /** A flounce over the upper two thirds of the armhole, its middle at the shoulder. */
    private static Making flounced(Making dress) {
        double half = 0.65 * Math.min(arm(dress, "side front"), arm(dress, "back"));
        Drafted drafted = Flounces.draft("arm flounce", Flounce.byRatio(2 * half, 120, 1.6));
        Notch front = new Notch("armhole", arm(dress, "side front") - half, Beside.BEFORE);
        Notch back = new Notch("armhole", arm(dress, "back") - half, Beside.BEFORE);
        Making marked = dress.on(
                        "side front",
                        "Mark where the flounce ends",
                        each -> new Reworked(each.notched(front), Ledger.EMPTY))
                .on("back", "Mark where the flounce ends", each -> new Reworked(each.notched(back), Ledger.EMPTY));
        Seam seam = Seam.flat(
                "arm flounce",
                Seam.Mate.of("side front", "armhole")
                        .from(front)
                        .then(Seam.Mate.of("back", "armhole").from(back).reversed()),
                Seam.Mate.of("arm flounce", "seam"));
        return marked.adding(
                        "Draft the flounce of the arm",
                        List.of(drafted.draft().piece("arm flounce")),
                        List.of(seam),
                        drafted.ledger())
                .on("arm flounce", "Turn up the hem", flounce -> rolled(flounce, 6));
    }

    private static double arm(Making dress, String piece) {
        return Lengths.folded(dress.piece(piece), "armhole");
    }

    private static double flounceEnd(Making dress, String piece) {
        return dress.piece(piece).notches().stream()
                .filter(notch -> notch.edge().equals("armhole"))
                .mapToDouble(Notch::arc)
                .sum();
    }

    /** The whole armhole is bound, and the flounce is caught in. */
    private static Making bound(Making dress) {
        double front = arm(dress, "side front");
        double length = front + arm(dress, "back");
        Seam binding = Seam.flat(
                        "bound arm",
                        Seam.Mate.of("side front", "armhole").then(Seam.Mate.backwards("back", "armhole")),
                        Seam.Mate.backwards("arm binding", "sewn side"))
                .caughtIn();
        List<Double> marks = List.of(flounceEnd(dress, "side front"), front, length - flounceEnd(dress, "back"));
        return Moves.bound(dress, binding, length, marks, BINDING);
    }

    /** A rolled hem, for every hem here is a curve; the cloth eases by 4 and stretches by 2 per cent. */
    private static Reworked rolled(Piece piece, double depth) {
        TurnUp hem = Hems.turnUp(piece, "hem", depth, new Give(0.04, 0.02));
        return new Reworked(hem.piece(), hem.ledger());
    }
}
