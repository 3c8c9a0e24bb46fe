package org.draftingmaths.lessons.styles;

import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.block.TorsoBlock;
import org.draftingmaths.check.DraftLimits;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Meets;
import org.draftingmaths.dart.Darts;
import org.draftingmaths.exchange.Making;
import org.draftingmaths.exchange.Style;
import org.draftingmaths.exchange.ToCut;
import org.draftingmaths.finish.Allowances;
import org.draftingmaths.finish.Caution;
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
import org.draftingmaths.ledger.Entry;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Instruction;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.measure.Ease;
import org.draftingmaths.measure.Measure;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.measure.Wearer;
import org.draftingmaths.piece.Detach;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Notch;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.piece.StyleLine;
import org.draftingmaths.unit.Length;
import org.draftingmaths.unit.Steps;

/**
 * An apron with a bib for the adults of a pottery workshop. Its straps go over the shoulders to a band at the back of the waist, so that nothing
 * hangs from the neck; the ties go through the band, each to the other side, and are tied in front. Untied, the apron comes off over the head.
 *
 * <p>The strap is measured on the bodice block that is worn under the bib: with the bib as high above the waist at the centre front as it is drawn,
 * from the middle of its seat on the bib's top straight to the shoulder, and from there straight to the upper edge of the band at the back waist.
 */
public final class PottersApron {

    private static final double STRAP = 35;
    private static final double LONG = 520;
    private static final double BIB = 260;

    /** How far the middle of a strap is from the neck point, and at the back waist from the centre. */
    private static final double AT_SHOULDER = 40;

    private static final double AT_BACK = 40;

    /** How high the band at the back is, which the ties go through, and how wide a tie: all folded and sewn. */
    private static final double BAND = 45;

    private static final double TIE = 30;

    /** The end of the facing at the side, and the part of the side that is left free below the bib and above the tie. */
    private static final double TIE_SEAT = 50;

    private static final double FACED = 45;

    /** Where the tie begins on its seat, from below. */
    private static final double TIE_AT = 10;

    /** The ends of the strap slant; its two layers are sewn face to face, and what would be a peak laid open lies folded. */
    private static final DraftLimits TWO_LAYERS = DraftLimits.COMMON.meaning(Finding.Kind.LINE_BREAKS, "strap");

    private static final Allowances SEWN = Allowances.of(Length.mm(10));

    private PottersApron() {}

    /**
     * From measures to finished pieces.
     *
     * @param body the measures of an adult
     * @return the style
     */
    public static Style draft(Measurements body) {
        double middle = 0.4 * body.length(Measure.CHEST_WIDTH).mm() - STRAP / 2;
        Strap strap = strap(TorsoBlock.bodice(body, Ease.CLOSE_FITTING).draft(), middle);
        Piece apron = apron(body, middle + Lengths.base(strap.piece(), "first end") / 2);
        Piece band = band(Lengths.base(strap.piece(), "last end"));
        Making style = Making.of(
                        "Potter's apron, size " + body.name(),
                        "Draw the apron from hip and chest width",
                        new Draft("potter's apron", List.of(apron), List.of()),
                        Ledger.EMPTY)
                .on("apron", "Turn up the hem", each -> turned(each, "hem", 30))
                .adding("Draw the pocket", List.of(pocket()), List.of(), Ledger.EMPTY)
                .on("pocket", "Turn down its top", pocket -> turned(pocket, "top", 30))
                .adding(
                        "Measure the strap on the bodice block, from the bib over the shoulder to the back of the waist",
                        List.of(strap.piece()),
                        List.of(lengthways("strap", "left side"), lengthways("strap", "right side")),
                        Ledger.of(way()).then(strap.ledger()))
                .adding("Draw the band at the back of the waist", List.of(band), banded(band), Ledger.EMPTY);
        style = faced(style.adding("Draw the tie", List.of(tie(body)), tied(), Ledger.EMPTY))
                .minding(minded());
        return Style.of(
                "Potter's apron",
                body.name(),
                "version 1",
                style.draft(),
                style.steps(),
                List.of(
                        ToCut.of("apron", SEWN.on("side", Length.mm(20)).on("tie seat", Length.mm(20)), Cutting.once()),
                        ToCut.of(
                                        "bib facing",
                                        SEWN.on("outer edge", Length.mm(0)).on("tie seat", Length.mm(20)),
                                        Cutting.once())
                                .small(),
                        ToCut.of("strap", SEWN, new Cutting(4, true, Cutting.Cloth.SELF))
                                .small(),
                        ToCut.of("back band", SEWN.on("end", Length.mm(20)), Cutting.once())
                                .small(),
                        ToCut.of("tie", SEWN.on("end", Length.mm(20)), new Cutting(2, false, Cutting.Cloth.SELF))
                                .small(),
                        ToCut.of("pocket", SEWN, Cutting.once())),
                TWO_LAYERS);
    }

    // ------------------------------------------------------------------------------------------------ pieces

    /** Half the apron: as wide as the front of the hip and a hand more, its bib about four fifths of the chest; the lines of a pocket are marked on it. */
    private static Piece apron(Measurements body, double bib) {
        double wide = wide(body);
        double seat = 2 * (bib - 0.4 * body.length(Measure.CHEST_WIDTH).mm() + STRAP / 2);
        return Drawing.of("apron")
                .from(0, 0)
                .edge("hem", Role.HEM)
                .line(wide, 0)
                .edge("side", Role.HEM)
                .line(wide, LONG - TIE_SEAT)
                .edge("tie seat", Role.SEAM)
                .line(wide, LONG)
                .edge("bib side", Role.FINISHED)
                .curve(wide - 0.5 * (wide - bib), LONG + 10, bib, LONG + 0.45 * BIB, bib, LONG + BIB)
                .edge("strap seat", Role.SEAM)
                .line(bib - seat, LONG + BIB)
                .edge("bib top", Role.FINISHED)
                .line(0, LONG + BIB)
                .edge("centre front", Role.FOLD)
                .line(0, 0)
                .level("pocket top", 0, LONG - 100, 100, LONG - 100)
                .level("pocket side", 100, LONG - 100, 100, LONG - 280)
                .level("pocket bottom", 0, LONG - 280, 100, LONG - 280)
                .grain(150, 40, 150, 200)
                .notch("tie seat", TIE_AT)
                .notch("tie seat", TIE_AT + TIE)
                .notch("bib side", 140)
                .notch("bib top", 0)
                .piece();
    }

    private static double wide(Measurements body) {
        return body.length(Measure.HIP).mm() / 4 + 60;
    }

    /**
     * The dart is out of the way below. The bib's top lies level across the block, at its height above the waist: the block is cut there, and
     * the strap runs straight from that line to the shoulder and from the shoulder to the back waist.
     */
    private static Strap strap(Draft bodice, double middle) {
        Piece drafted = bodice.piece("front");
        Piece front = Darts.rotate(
                        drafted,
                        "bust dart",
                        Spot.on("waist", drafted.edge("waist").length() - 20),
                        "dart below")
                .piece();
        Piece above = aboveTheBib(front);
        Piece back = bodice.piece("back");
        List<Seam> shoulder = bodice.seams().stream()
                .filter(seam -> seam.first().edge().equals("shoulder"))
                .toList();
        Draft worn = new Draft("worn under the bib", List.of(above, back), shoulder);
        double arc = above.edge("shoulder").length() - AT_SHOULDER;
        List<StrapLine> way = List.of(
                StrapLine.straight(above, "bib line", middle, "shoulder", arc),
                StrapLine.straight(back, "shoulder", arc, "waist", AT_BACK));
        Piece even = Straps.strap(worn, "strap", way, new StrapMake(STRAP, 0, 10, 10), Wearer.ADULT)
                .piece();
        // Square to the seam 10 mm at either end, as on every other edge: along the strap that is more where the end
        // slants.
        return Straps.strap(
                worn,
                "strap",
                way,
                new StrapMake(STRAP, 0, 10 * slant(even, "first end"), 10 * slant(even, "last end")),
                Wearer.ADULT);
    }

    private static double slant(Piece strap, String end) {
        return Lengths.base(strap, end) / STRAP;
    }

    /** What of the front lies above the top of the bib; it keeps its name, for it is sewn to the back. */
    private static Piece aboveTheBib(Piece front) {
        CurvePath level = CurvePath.polyline(Vector2D.of(0, BIB), Vector2D.of(1000, BIB));
        Spot at = Stream.of("armhole", "side seam")
                .flatMap(edge -> Meets.of(Paper.edge(front, edge), level).points().stream()
                        .map(meet -> Spot.on(edge, meet.onFirst())))
                .findFirst()
                .orElseThrow();
        StyleLine line = StyleLine.straight(
                "bib line", Spot.on("centre front", front.edge("centre front").length() - BIB), at);
        return Detach.across(front, line, "front", "under the bib").before();
    }

    /** Folded lengthways at its line, open at both ends; half of it, from the centre back to beyond the strap. */
    private static Piece band(double end) {
        double half = AT_BACK + end / 2 + 25;
        double inner = AT_BACK - end / 2;
        return Drawing.of("back band")
                .from(0, -BAND)
                .edge("inner top", Role.SEAM)
                .line(half, -BAND)
                .edge("end", Role.HEM)
                .line(half, BAND)
                .edge("top", Role.SEAM)
                .line(0, BAND)
                .edge("centre back", Role.FOLD)
                .line(0, -BAND)
                .level("fold line", 0, 0, half, 0)
                .notch("inner top", inner)
                .notch("inner top", inner + end)
                .notch("top", half - inner - end)
                .notch("top", half - inner)
                .grain(15, 20 - BAND, 15, BAND - 20)
                .piece();
    }

    /** Folded lengthways at its line; from its seat across the back and round to the centre front, and 35 cm to tie. */
    private static Piece tie(Measurements body) {
        double length = body.length(Measure.WAIST).mm() - wide(body) + 350;
        return Drawing.of("tie")
                .from(0, 0)
                .edge("end", Role.SEAM)
                .line(2 * TIE, 0)
                .edge("one side", Role.SEAM)
                .line(2 * TIE, length)
                .edge("other end", Role.SEAM)
                .line(0, length)
                .edge("other side", Role.SEAM)
                .line(0, 0)
                .level("fold line", TIE, 0, TIE, length)
                .grain(45, 100, 45, length - 100)
                .piece();
    }

    /** Its sides and bottom are turned in, and stitched down on the lines that are marked on the apron. */
    private static Piece pocket() {
        return Drawing.of("pocket")
                .from(0, 0)
                .edge("bottom", Role.HEM)
                .line(200, 0)
                .edge("right", Role.HEM)
                .line(200, 180)
                .edge("top", Role.HEM)
                .line(0, 180)
                .edge("left", Role.HEM)
                .line(0, 0)
                .notch("bottom", 100)
                .grain(100, 30, 100, 150)
                .piece();
    }

    private static Reworked turned(Piece piece, String edge, double depth) {
        TurnUp hem = Hems.turnUp(piece, edge, depth, new Give(0, 0));
        return new Reworked(hem.piece(), hem.ledger());
    }

    // ------------------------------------------------------------------------------------------------ seams

    /** Two layers, the one cut as it is drawn and the other mirrored, are sewn together along their sides. */
    private static Seam lengthways(String piece, String side) {
        Seam.Mate one = Seam.Mate.of(piece, side);
        return Seam.flat(piece + ", " + side, one, one.mirrored());
    }

    /** The straps lie between the two layers of the band. */
    private static List<Seam> banded(Piece band) {
        List<Notch> at = band.notches().stream()
                .filter(notch -> notch.edge().equals("top"))
                .toList();
        Seam strap = Seam.flat(
                "strap at the back",
                Seam.Mate.of("strap", "last end"),
                Seam.Mate.of("back band", "top").between(at.get(0), at.get(1)));
        return List.of(
                strap.caughtIn(),
                Seam.flat(
                        "back band", Seam.Mate.of("back band", "inner top"), Seam.Mate.backwards("back band", "top")));
    }

    /** A tie is folded lengthways: its sides are sewn together, and the halves of its free end. */
    private static List<Seam> tied() {
        return List.of(
                Seam.flat("tie", Seam.Mate.of("tie", "one side"), Seam.Mate.backwards("tie", "other side")),
                Seam.flat(
                        "end of the tie",
                        Seam.Mate.of("tie", "other end").between(0, TIE),
                        Seam.Mate.backwards("tie", "other end").between(TIE, 2 * TIE)));
    }

    /** The facing is traced without trim, for the seat of the strap is no shoulder but the middle of one straight line; strap and tie are caught in. */
    private static Making faced(Making style) {
        Piece apron = style.piece("apron");
        Facing facing = Facings.combined(apron, "bib facing", new Combined("bib top", "bib side", 60, FACED, 0));
        Seam.Mate seat = Seam.Mate.of("apron", "tie seat");
        Seam.Mate tie = seat.between(TIE_AT, TIE_AT + TIE);
        return style.adding(
                "Trace one facing for the top and the side of the bib",
                facing.pieces(),
                List.of(
                        Seam.flat(
                                        "strap",
                                        Seam.Mate.of("strap", "first end"),
                                        Seam.Mate.backwards("apron", "strap seat"))
                                .caughtIn(),
                        Seam.flat("tie at the side", Seam.Mate.of("tie", "end").between(0, TIE), tie)
                                .caughtIn(),
                        Seam.flat(
                                        "tie at the side, its other half",
                                        Seam.Mate.backwards("tie", "end").between(TIE, 2 * TIE),
                                        tie)
                                .caughtIn(),
                        faced("bib top"),
                        faced("strap seat"),
                        faced("bib side"),
                        Seam.flat(
                                "tie seat",
                                seat.between(TIE_SEAT - FACED, TIE_SEAT),
                                Seam.Mate.of("bib facing", "tie seat"))),
                facing.ledger());
    }

    private static Seam faced(String edge) {
        return Seam.flat(edge, Seam.Mate.of("apron", edge), Seam.Mate.of("bib facing", edge));
    }

    // ------------------------------------------------------------------------------------------------ words

    private static Instruction way() {
        return new Instruction(
                "Lay the block under the bib, waist on waist and centre front on centre front: the bib's top lies level on it, "
                        + length(BIB)
                        + " above the waist. Measure from the middle of the strap's seat straight to the shoulder, "
                        + length(AT_SHOULDER) + " from the neck point, and from there straight to the back waist, "
                        + length(AT_BACK)
                        + " from the centre back, where the upper edge of the band lies.");
    }

    private static String length(double mm) {
        return Quantity.LENGTH.print(mm, Steps.DEFAULT);
    }

    private static Entry[] minded() {
        return new Entry[] {
            new Instruction(
                    "Pocket: press in its sides and its bottom and do not hem them by themselves; lay it on the lines 'pocket top', 'pocket side' and"
                            + " 'pocket bottom' of the apron, its notch on the centre front, and topstitch sides and bottom close to"
                            + " the edge. The top stays open; sew its two corners twice."),
            new Instruction(
                    "Tie: fold it lengthways at its fold line, face inside, sew its sides together and its free end, turn it and"
                            + " press it."),
            new Instruction(
                    "Strap: sew two layers face to face along both sides, turn and press them; the ends stay open, for they are"
                            + " sewn in."),
            new Instruction(
                    "Back band: hem both ends, fold it lengthways at its fold line, face inside, with the straps between the layers"
                            + " at the notches and not twisted; sew its top from end to end and turn it. Each tie goes through it to"
                            + " the other side."),
            new Instruction(
                    "Bib: strap and tie lie between apron and facing when these are sewn together, the strap not twisted. Nothing was"
                            + " trimmed off the facing's paper: it rolls to the inside by pressing and understitching."),
            new Caution(
                    "Caution: a turning wheel or mixer draws in whatever hangs. Tie flat, tuck the ends of the ties in, and let no"
                            + " strap stand off the body; where a machine turns with force, use straps that come loose by themselves"
                            + " instead of sewn ones. The rules of the workshop come first.")
        };
    }
}
