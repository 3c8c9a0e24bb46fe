package org.draftingmaths.lessons.styles;

import java.util.List;
import org.draftingmaths.contour.Armholes;
import org.draftingmaths.contour.Crossing;
import org.draftingmaths.contour.Necklines;
import org.draftingmaths.dart.Darts;
import org.draftingmaths.exchange.Making;
import org.draftingmaths.exchange.Style;
import org.draftingmaths.exchange.ToCut;
import org.draftingmaths.finish.Allowances;
import org.draftingmaths.finish.Caution;
import org.draftingmaths.finish.Combined;
import org.draftingmaths.finish.CornerCut;
import org.draftingmaths.finish.Cutting;
import org.draftingmaths.finish.Facing;
import org.draftingmaths.finish.Facings;
import org.draftingmaths.finish.Give;
import org.draftingmaths.finish.Hems;
import org.draftingmaths.finish.TurnUp;
import org.draftingmaths.fullness.Lengthen;
import org.draftingmaths.fullness.SideFlare;
import org.draftingmaths.fullness.Smooth;
import org.draftingmaths.ledger.Entry;
import org.draftingmaths.ledger.Instruction;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.piece.Use;
import org.draftingmaths.seam.Truing;
import org.draftingmaths.unit.Length;

/** A flared tunic without sleeves for the stewards of a lantern festival; it goes over the head without a fastening. */
public final class FestivalTunic {

    private static final Crossing NECK = Crossing.of("shoulder", "front", "back", "neckline");
    private static final Crossing ARM = Crossing.of("shoulder", "front", "back", "armhole");

    /** By how much either piece is spread beside its dart. */
    private static final double SPREAD = Math.toRadians(4);

    private FestivalTunic() {}

    /**
     * From measures to finished pieces.
     *
     * @param body the measures
     * @return the style
     */
    public static Style draft(Measurements body) {
        Making tunic = Moves.torso("Festival tunic", body)
                .joined(
                        "Open the neck for the head",
                        draft -> Necklines.reshape(
                                draft, NECK, Necklines.Wanted.round(Length.cm(3.8), Length.cm(9), Length.cm(3))))
                .joined(
                        "Draw the armhole for summer",
                        draft -> Armholes.reshape(
                                draft,
                                ARM,
                                Armholes.Wanted.SAME.shoulderIn(Length.cm(1)).lower(Length.cm(1.5))))
                .on("front", "Lengthen it from hip to thigh", front -> Lengthen.atHem(front, "hem", Length.cm(14)))
                .on("back", "Lengthen it from hip to thigh", back -> Lengthen.atHem(back, "hem", Length.cm(14)));
        double turn = Measured.angle(tunic.piece("back"), "shoulder dart");
        tunic = Moves.backFlared(flaredAtTheSides(tunic))
                .on(
                        "front",
                        "Turn as much of the bust dart into flare, so that both sides hang alike",
                        front -> Darts.rotateBy(
                                front,
                                "bust dart",
                                Spot.on("hem", Moves.below(front, "bust dart")),
                                "front flare",
                                turn))
                .on("front", "Let the flare hang", front -> Darts.leave(front, "front flare", Use.Kind.FLARE))
                .on("front", "Slash from the hem to the armhole and spread", piece -> Moves.spread(piece, SPREAD))
                .on("back", "Slash from the hem to the armhole and spread", piece -> Moves.spread(piece, SPREAD))
                .on(
                        "front",
                        "Move the rest of the bust dart to the side seam",
                        front -> Darts.rotate(
                                front,
                                "bust dart",
                                Spot.on("side seam", front.edge("side seam").length() - 55),
                                "side dart"))
                .on("front", "Draw the hem in one curve", FestivalTunic::hem)
                .on("back", "Draw the hem in one curve", FestivalTunic::hem);
        tunic = faced(Moves.notchedArms(tunic));
        tunic = turnedUp(turnedUp(tunic, "front"), "back").minding(minded());

        Allowances seams =
                Allowances.of(Length.mm(10)).on("neckline", Length.mm(6)).on("armhole", Length.mm(6));
        Allowances garment =
                seams.on("free edge of hem", Length.mm(0)).corner("side seam", "armhole", CornerCut.SQUARED);
        Allowances facing = seams.on("outer edge", Length.mm(0));
        return Style.of(
                "Festival tunic",
                body.name(),
                "version 1",
                tunic.draft(),
                tunic.steps(),
                List.of(
                        ToCut.of("front", garment, Cutting.once()),
                        ToCut.of("back", garment, Cutting.once())
                                .doubled("armhole")
                                .doubled("side seam"),
                        ToCut.of("front facing", facing, Cutting.once()).small(),
                        ToCut.of("back facing", facing, Cutting.once()).small().doubled("armhole")));
    }

    /** The shoulder is too narrow for two facings side by side: one is traced for neck and armhole together. */
    private static Making faced(Making tunic) {
        Combined one = new Combined("neckline", "armhole", 60, 45, Combined.TRIM);
        Facing front = Facings.combined(tunic.piece("front"), "front facing", one);
        Facing back = Facings.combined(tunic.piece("back"), "back facing", one);
        Seam shoulder = Seam.flat(
                "facing shoulder", Seam.Mate.of("front facing", "shoulder"), Seam.Mate.of("back facing", "shoulder"));
        Seam side = Seam.flat(
                "facing side", Seam.Mate.of("front facing", "side seam"), Seam.Mate.of("back facing", "side seam"));
        Making traced = tunic.adding(
                        "Trace one facing for neck and armhole, trimmed at the shoulder so that it cannot peep out",
                        List.of(front.only(), back.only()),
                        List.of(shoulder, side),
                        front.ledger().about("front facing").then(back.ledger().about("back facing")))
                .joined(
                        "Blend the neck of the facing over the shoulder",
                        draft -> Truing.blend(draft, shoulder, Seam.End.STOP, "neckline", "neckline"))
                .joined(
                        "Blend the armhole of the facing over the shoulder",
                        draft -> Truing.blend(draft, shoulder, Seam.End.START, "armhole", "armhole"))
                .joined(
                        "Blend the outer edge of the facing under the arm",
                        draft -> Truing.blend(draft, side, Seam.End.START, "outer edge", "outer edge"));
        return traced.adding(
                        "Sew it to neck and armhole",
                        List.of(),
                        List.of(
                                Moves.trimmed(traced, "front", "neckline"),
                                Moves.trimmed(traced, "back", "neckline"),
                                Moves.trimmed(traced, "front", "armhole"),
                                Moves.trimmed(traced, "back", "armhole")),
                        Ledger.EMPTY)
                .sewnLast("side", "facing side");
    }

    private static Entry[] minded() {
        return new Entry[] {
            new Instruction(
                    "The facing goes round neck and arms in one, and nothing is open at the centre: leave the sides of garment and facing open until"
                            + " both are sewn. Sew the neck first and turn it. For each armhole roll the rest of the garment up between garment and"
                            + " facing, sew the armhole round the roll, and draw the garment out through the shoulder. Then sew the sides of garment and"
                            + " facing in one."),
            new Instruction(
                    "No width was taken out of neckline and armhole beside what the darts take: they may gape. Look at it on the toile."),
            new Caution(
                    "Caution: a wide hem near lanterns with a flame, and poles that catch in it, call for care; hold to the rules of the place, and let nobody"
                            + " carry fire in cloth that burns easily.")
        };
    }

    private static Making flaredAtTheSides(Making tunic) {
        Seam side = tunic.draft().seams().get(1);
        return tunic.joined(
                "Flare both side seams alike", draft -> new SideFlare(240, 25, 80).atBoth(draft, side, "hem", "hem"));
    }

    private static Reworked hem(Piece piece) {
        return Smooth.edge(piece, "hem", new Smooth.Blend.OneCurve(), Smooth.Ends.SQUARE);
    }

    /** A narrow hem of 12 mm, for a flared hem is a curve; the cloth eases by 4 and stretches by 2 per cent. */
    private static Making turnedUp(Making tunic, String piece) {
        return tunic.on(piece, "Turn up the hem", each -> {
            TurnUp hem = Hems.turnUp(each, "hem", 12, new Give(0.04, 0.02));
            return new Reworked(hem.piece(), hem.ledger());
        });
    }
}
