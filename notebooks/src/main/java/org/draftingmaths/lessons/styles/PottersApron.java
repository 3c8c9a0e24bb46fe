package org.draftingmaths.lessons.styles;

import java.util.List;
import org.draftingmaths.block.Block;
import org.draftingmaths.block.TorsoBlock;
import org.draftingmaths.dart.Darts;
import org.draftingmaths.exchange.Making;
import org.draftingmaths.exchange.Style;
import org.draftingmaths.exchange.ToCut;
import org.draftingmaths.finish.Allowances;
import org.draftingmaths.finish.Combined;
import org.draftingmaths.finish.Cutting;
import org.draftingmaths.finish.Facing;
import org.draftingmaths.finish.Facings;
import org.draftingmaths.finish.Give;
import org.draftingmaths.finish.Hems;
import org.draftingmaths.finish.Strap;
import org.draftingmaths.finish.StrapLine;
import org.draftingmaths.finish.StrapMake;
import org.draftingmaths.finish.Straps;
import org.draftingmaths.finish.TurnUp;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.measure.Ease;
import org.draftingmaths.measure.Measure;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.measure.Wearer;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.unit.Length;

/**
 * An apron with a bib for the adults of a pottery workshop: its straps go over the shoulders to the back of the waist, so that nothing hangs from the
 * neck.
 */
public final class PottersApron {

    private static final double STRAP = 35;
    private static final double LONG = 520;
    private static final double BIB = 260;

    private PottersApron() {}

    /**
     * From measures to finished pieces.
     *
     * @param body the measures of an adult
     * @return the style
     */
    public static Style draft(Measurements body) {
        Block block = TorsoBlock.bodice(body, Ease.CLOSE_FITTING);
        Piece apron = apron(body);
        Making style = Making.of(
                "Potter's apron, size " + body.name(),
                "Draw the apron from hip and chest width",
                new Draft("potter's apron", List.of(apron), List.of()),
                Ledger.EMPTY);
        Strap strap = strap(block.draft());
        style = style.adding(
                "Measure the strap on the bodice block, from the bib over the shoulder to the back of the waist",
                List.of(strap.piece()),
                List.of(),
                strap.ledger());
        Facing facing =
                Facings.combined(apron, "bib facing", new Combined("bib top", "bib side", 60, 45, Combined.TRIM));
        style = style.adding(
                "Trace one facing for the top and the side of the bib",
                facing.pieces(),
                List.of(
                        trimmed("bib top", apron, facing.only()),
                        trimmed("bib side", apron, facing.only()),
                        trimmed("strap seat", apron, facing.only()),
                        caught()),
                facing.ledger());
        style = style.adding("Draw the tie and the pocket", List.of(tie(body), pocket()), List.of(), Ledger.EMPTY)
                .on("pocket", "Turn down its top", pocket -> turned(pocket, "top", 30))
                .on("apron", "Turn up the hem", each -> turned(each, "hem", 30));

        Allowances sewn = Allowances.of(Length.mm(10));
        Allowances whole = sewn.on("side", Length.mm(20)).on("free edge of hem", Length.mm(10));
        return Style.of(
                "Potter's apron",
                body.name(),
                "version 1",
                style.draft(),
                style.steps(),
                List.of(
                        ToCut.of("apron", whole, Cutting.once()),
                        ToCut.of("bib facing", sewn, Cutting.once()).small(),
                        ToCut.of("strap", sewn, new Cutting(4, true, Cutting.Cloth.SELF))
                                .small(),
                        ToCut.of("tie", sewn, Cutting.pair()).small(),
                        ToCut.of("pocket", sewn, Cutting.once())));
    }

    /** Half the apron: as wide as the front of the hip and a hand more, its bib as wide as four fifths of the chest. */
    private static Piece apron(Measurements body) {
        double wide = body.length(Measure.HIP).mm() / 4 + 60;
        double bib = 0.4 * body.length(Measure.CHEST_WIDTH).mm();
        return Drawing.of("apron")
                .from(0, 0)
                .edge("hem", Role.HEM)
                .line(wide, 0)
                .edge("side", Role.SEAM)
                .line(wide, LONG)
                .edge("bib side", Role.FINISHED)
                .curve(wide - 0.5 * (wide - bib), LONG + 10, bib, LONG + 0.45 * BIB, bib, LONG + BIB)
                .edge("strap seat", Role.SEAM)
                .line(bib - STRAP, LONG + BIB)
                .edge("bib top", Role.FINISHED)
                .line(0, LONG + BIB)
                .edge("centre front", Role.FOLD)
                .line(0, 0)
                .grain(60, 120, 60, 520)
                .notch("strap seat", STRAP)
                .piece();
    }

    /** The dart out of the way at the side, the strap runs straight from the front waist over the shoulder to the back waist. */
    private static Strap strap(Draft bodice) {
        Piece front = Darts.rotate(bodice.piece("front"), "bust dart", Spot.on("side seam", 120), "side dart")
                .piece();
        Draft draft = bodice.with(front);
        double neck = 0.85 * Lengths.base(front, "shoulder");
        return Straps.strap(
                draft,
                "strap",
                List.of(
                        StrapLine.straight(front, "waist", 40, "shoulder", neck),
                        StrapLine.straight(draft.piece("back"), "shoulder", neck, "waist", 40)),
                new StrapMake(STRAP, 0, 10, 20),
                Wearer.ADULT);
    }

    /** The facing is trimmed by 2.5 mm at the strap so that it cannot peep out: its edges differ by as much or less, and the seam says so. */
    private static Seam trimmed(String edge, Piece apron, Piece facing) {
        double surplus = Lengths.folded(apron, edge) - Lengths.folded(facing, edge);
        return new Seam(
                edge,
                Seam.Mate.of("apron", edge),
                Seam.Mate.of("bib facing", edge),
                List.of(new Seam.Held(1, surplus, Seam.How.STRETCH, "the facing is trimmed at the strap")));
    }

    /** The end of the strap lies between apron and facing. */
    private static Seam caught() {
        return Seam.flat("strap", Seam.Mate.of("strap", "first end"), Seam.Mate.of("apron", "strap seat"))
                .caughtIn();
    }

    private static Piece tie(Measurements body) {
        double length = 0.75 * body.length(Measure.WAIST).mm();
        return Drawing.of("tie")
                .from(0, 0)
                .edge("end", Role.SEAM)
                .line(60, 0)
                .edge("one side", Role.SEAM)
                .line(60, length)
                .edge("other end", Role.SEAM)
                .line(0, length)
                .edge("other side", Role.SEAM)
                .line(0, 0)
                .grain(30, 100, 30, length - 100)
                .piece();
    }

    private static Piece pocket() {
        return Drawing.of("pocket")
                .from(0, 0)
                .edge("bottom", Role.SEAM)
                .line(200, 0)
                .edge("right", Role.SEAM)
                .line(200, 180)
                .edge("top", Role.HEM)
                .line(0, 180)
                .edge("left", Role.SEAM)
                .line(0, 0)
                .grain(100, 30, 100, 150)
                .piece();
    }

    private static Reworked turned(Piece piece, String edge, double depth) {
        TurnUp hem = Hems.turnUp(piece, edge, depth, new Give(0, 0));
        return new Reworked(hem.piece(), hem.ledger());
    }
}
