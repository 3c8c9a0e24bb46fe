package org.draftingmaths.lessons.styles;

import java.util.ArrayList;
import java.util.List;
import org.draftingmaths.block.Block;
import org.draftingmaths.block.TorsoBlock;
import org.draftingmaths.dart.Darts;
import org.draftingmaths.exchange.Making;
import org.draftingmaths.finish.Allowances;
import org.draftingmaths.finish.BiasStrips;
import org.draftingmaths.finish.Facing;
import org.draftingmaths.finish.Facings;
import org.draftingmaths.fullness.Smooth;
import org.draftingmaths.fullness.Spread;
import org.draftingmaths.ledger.Fact;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.measure.Ease;
import org.draftingmaths.measure.Measure;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.piece.Beside;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Notch;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.piece.Slash;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.piece.Use;
import org.draftingmaths.seam.Truing;
import org.draftingmaths.seam.Walk;
import org.draftingmaths.unit.Length;

/** Moves that more than one style makes. */
final class Moves {

    private Moves() {}

    /** What a block is drafted from, and what was said while it was. */
    static Ledger drafted(Measurements body, Block block) {
        Ledger ledger = Ledger.EMPTY;
        for (Measure measure : Measure.TORSO_BLOCK) {
            if (body.has(measure)) {
                ledger = ledger.then(new Fact(
                        measure.label(), Quantity.LENGTH, body.length(measure).mm()));
            }
        }
        return ledger.then(block.ledger());
    }

    /** A style on the torso block whose waist darts are left unsewn. */
    static Making torso(String style, Measurements body) {
        Block block = TorsoBlock.draft(body, Ease.CLOSE_FITTING);
        return Making.of(
                        style + ", size " + body.name(),
                        "Draft the torso block from these measures",
                        block.draft(),
                        drafted(body, block))
                .on("front", "Leave the waist dart unsewn", front -> Darts.leave(front, "waist dart", Use.Kind.FLARE))
                .on("back", "Leave the waist dart unsewn", back -> Darts.leave(back, "waist dart", Use.Kind.FLARE));
    }

    /** The shoulder dart of the back becomes flare in the hem. */
    static Making backFlared(Making style) {
        return style.on(
                        "back",
                        "Turn the shoulder dart into flare",
                        back -> Darts.rotate(
                                back, "shoulder dart", Spot.on("hem", below(back, "shoulder dart")), "back flare"))
                .on("back", "Let the flare hang", back -> Darts.leave(back, "back flare", Use.Kind.FLARE));
    }

    /** The place on the hem straight below a dart's point. */
    static double below(Piece piece, String dart) {
        return Measured.tip(piece, dart).getX();
    }

    /** A notch in either armhole before the facing is traced, so that front and back cannot be taken for one another; the back's is cut doubly. */
    static Making notchedArms(Making style) {
        String heading = "Notch the armhole";
        return style.on("front", heading, front -> notchedArm(front, 70))
                .on("back", heading, back -> notchedArm(back, 90));
    }

    private static Reworked notchedArm(Piece piece, double above) {
        return new Reworked(
                piece.notched(new Notch("armhole", above, Beside.BEFORE)),
                Ledger.of(new Fact("place of the notch above the side seam", Quantity.LENGTH, above)));
    }

    /** Facings traced when the darts are closed and the neighbours joined, and the seams by which they are sewn on. */
    static Making faced(Making style, String name, String edge, double width) {
        Facing facing = Facings.separate(
                style.draft(),
                name + " facing",
                List.of(new Facings.On("front", edge), new Facings.On("back", edge)),
                width);
        List<Seam> seams = new ArrayList<>(facing.joins());
        for (String piece : List.of("front", "back")) {
            seams.add(Seam.flat(
                    piece + " " + name, Seam.Mate.of(piece, edge), Seam.Mate.of(piece + " " + name + " facing", edge)));
        }
        return style.adding("Trace the " + name + " facings", facing.pieces(), seams, facing.ledger());
    }

    /** A slash leaves a corner in the edge in which it is hinged; the edge is rounded there and kept as long as it was. */
    static Reworked smoothAtHinge(Piece before, Reworked spread, String edge) {
        return spread.then(Smooth.edgeTo(
                spread.piece(),
                edge,
                new Smooth.Blend.Rounded(40),
                Smooth.Ends.AS_DRAWN,
                Lengths.folded(before, edge)));
    }

    /** A slash from the hem to the armhole, spread by an angle, so that pieces of unlike height hang alike. */
    static Reworked spread(Piece piece, double angle) {
        Slash slash = Slash.straight(
                "slash",
                Spot.on("hem", 0.68 * piece.edge("hem").length()),
                Spot.on("armhole", 0.35 * piece.edge("armhole").length()));
        double length = Measured.at(piece, slash.mouth()).distance(Measured.at(piece, slash.end()));
        return smoothAtHinge(piece, Spread.hinged(piece, slash, 2 * length * Math.sin(angle / 2)), "armhole");
    }

    /** A facing that is trimmed where it could peep out is a little shorter than its edge, and is stretched to it. */
    static Seam trimmed(Making style, String piece, String edge) {
        Seam flat = Seam.flat(piece + " " + edge, Seam.Mate.of(piece, edge), Seam.Mate.of(piece + " facing", edge));
        List<Seam.Held> held = Walk.of(style.draft(), flat).intervals().stream()
                .map(interval -> new Seam.Held(
                        interval.number(),
                        interval.difference(),
                        Seam.How.STRETCH,
                        "the facing is trimmed at the shoulder"))
                .toList();
        return new Seam(flat.name(), flat.first(), flat.second(), held);
    }

    /** Facings of the armhole are joined under the arm too, and their outer edge runs on over that seam. */
    static Making joinedUnderTheArm(Making style) {
        Seam side = Seam.flat(
                "arm facing side",
                Seam.Mate.of("front arm facing", "side seam"),
                Seam.Mate.of("back arm facing", "side seam"));
        List<Seam> seams = new ArrayList<>(style.draft().seams());
        List<String> names = seams.stream().map(Seam::name).toList();
        seams.add(names.indexOf("front arm"), side);
        Draft sewn = new Draft(style.draft().name(), style.draft().pieces(), seams);
        return new Making(sewn, style.steps())
                .joined(
                        "Blend the outer edge of the arm facings under the arm",
                        draft -> Truing.blend(draft, side, Seam.End.START, "outer edge", "outer edge"));
    }

    /**
     * A strip on the bias to bind an edge all round, doubled; {@code marks} are the match points along the edge, in mm from where the binding
     * begins.
     */
    static Making bound(Making style, Seam binding, double length, List<Double> marks, double finished) {
        String name = binding.second().parts().get(0).piece();
        double cut = BiasStrips.doubleBinding(finished, 3);
        double width = cut - finished;
        Drawing strip = Drawing.of(name)
                .from(0, 0)
                .edge("end", Role.SEAM)
                .line(0, -width)
                .edge("folded side", Role.FINISHED)
                .line(length, -width)
                .edge("other end", Role.SEAM)
                .line(length, 0)
                .edge("sewn side", Role.SEAM)
                .line(0, 0)
                .grain(100, 3 - width, 100 + width - 6, -3);
        for (double mark : marks) {
            strip = strip.notch("sewn side", length - mark);
        }
        return style.adding(
                "Cut a strip on the bias to bind it: " + name,
                List.of(strip.piece()),
                List.of(
                        Seam.flat(name + " ends", Seam.Mate.backwards(name, "end"), Seam.Mate.of(name, "other end")),
                        binding),
                Ledger.of(
                        new Fact("width of the strip as cut", Quantity.LENGTH, cut),
                        new Fact("width of the strip along the selvage", Quantity.LENGTH, BiasStrips.alongSelvage(cut)),
                        new Fact(
                                "side of the square that one strip needs at the least",
                                Quantity.LENGTH,
                                BiasStrips.square(length, cut))));
    }

    /** Narrow where a facing is sewn to the edge it is traced from, nothing at its neatened outer edge. */
    static Allowances facing(String edge) {
        return Allowances.of(Length.mm(10)).on(edge, Length.mm(6)).on("outer edge", Length.mm(0));
    }

    /** A binding has a seam at its ends, is sewn with what it binds, and folded over. */
    static Allowances binding(double finished) {
        return Allowances.of(Length.mm(10)).on("sewn side", Length.mm(finished)).on("folded side", Length.mm(0));
    }
}
