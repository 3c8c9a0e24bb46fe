package org.draftingmaths.lessons.styles;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.block.Block;
import org.draftingmaths.block.TorsoBlock;
import org.draftingmaths.contour.Armholes;
import org.draftingmaths.contour.Crossing;
import org.draftingmaths.contour.Necklines;
import org.draftingmaths.dart.Darts;
import org.draftingmaths.exchange.Making;
import org.draftingmaths.exchange.Style;
import org.draftingmaths.exchange.ToCut;
import org.draftingmaths.finish.Allowances;
import org.draftingmaths.finish.Bias;
import org.draftingmaths.finish.BiasWay;
import org.draftingmaths.finish.Cutting;
import org.draftingmaths.finish.Facing;
import org.draftingmaths.finish.Facings;
import org.draftingmaths.finish.StretchTest;
import org.draftingmaths.fullness.CowlLines;
import org.draftingmaths.fullness.Cowls;
import org.draftingmaths.fullness.Hang;
import org.draftingmaths.fullness.Smooth;
import org.draftingmaths.measure.Ease;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.piece.Unfold;
import org.draftingmaths.piece.Use;
import org.draftingmaths.unit.Length;

/** A blouse on the bias with a draped front for those who read aloud at a poetry evening; it goes over the head without a fastening. */
public final class ReadersBlouse {

    private static final Crossing NECK = Crossing.of("shoulder", "front", "back", "neckline");
    private static final Crossing ARM = Crossing.of("shoulder", "front", "back", "armhole");

    /** The head that must go through, and a little room. */
    private static final double HEAD = 590;

    /** A strip of a soft crepe of which this blouse was thought: invented for this example; test your own cloth. */
    public static final StretchTest CREPE = new StretchTest("soft crepe", 100, 0.5, 400, 416, 24);

    private ReadersBlouse() {}

    /**
     * From measures to finished pieces, in the cloth of the example.
     *
     * @param body the measures
     * @return the style
     */
    public static Style draft(Measurements body) {
        return draft(body, CREPE);
    }

    /**
     * From measures to finished pieces.
     *
     * @param body the measures
     * @param cloth how far a strip of the cloth stretched on the bias
     * @return the style
     */
    public static Style draft(Measurements body, StretchTest cloth) {
        Block block = TorsoBlock.draft(body, Ease.CLOSE_FITTING);
        Making blouse = Making.of(
                        "Reader's blouse, size " + body.name(),
                        "Draft the torso block from these measures",
                        block.draft(),
                        Moves.drafted(body, block))
                .on("front", "Leave the waist dart unsewn", front -> Darts.leave(front, "waist dart", Use.Kind.FLARE))
                .on("back", "Leave the waist dart unsewn", back -> Darts.leave(back, "waist dart", Use.Kind.FLARE))
                .on(
                        "back",
                        "Turn the shoulder dart into flare",
                        back -> Darts.rotate(
                                back,
                                "shoulder dart",
                                Spot.on("hem", Moves.below(back, "shoulder dart")),
                                "back flare"))
                .on("back", "Let the flare hang", back -> Darts.leave(back, "back flare", Use.Kind.FLARE))
                .on(
                        "back",
                        "Draw the hem in one curve",
                        back -> Smooth.edge(back, "hem", new Smooth.Blend.OneCurve(), Smooth.Ends.SQUARE))
                .joined(
                        "Widen the neck",
                        draft -> Necklines.reshape(
                                draft, NECK, Necklines.Wanted.round(Length.cm(4.5), Length.cm(1), Length.cm(3.5))))
                .joined(
                        "Draw the armhole for summer",
                        draft -> Armholes.reshape(draft, ARM, Armholes.Wanted.SAME.lower(Length.cm(1))));
        double half = (HEAD - 2 * Lengths.folded(blouse.piece("back"), "neckline")) / 2;
        blouse = blouse.on(
                "front", "Swing the bust dart into a cowl that lets the head through", front -> cowl(front, half));
        blouse = necked(Moves.joinedUnderTheArm(Moves.faced(blouse, "arm", "armhole", 40)))
                .on(
                        "front",
                        "Fold the facing of the cowl in one with it",
                        front -> Facings.cutInOne(front, "neckline", 28))
                .on("front", "Open it out", front -> Unfold.at(front, "centre front"))
                .on("back", "Open it out", back -> Unfold.at(back, "centre back"))
                .on("front", "Put it on the bias", front -> hung(front, cloth))
                .on("back", "Put it on the bias", back -> hung(back, cloth));

        Allowances garment = Allowances.of(Length.mm(10))
                .on("neckline", Length.mm(6))
                .on("mirrored neckline", Length.mm(6))
                .on("armhole", Length.mm(6))
                .on("mirrored armhole", Length.mm(6));
        Allowances front = Allowances.of(Length.mm(10))
                .on("armhole", Length.mm(6))
                .on("mirrored armhole", Length.mm(6))
                .on("free edge of neckline", Length.mm(0))
                .on("mirrored free edge of neckline", Length.mm(0));
        Allowances neck = Moves.facing("neckline");
        Allowances arm = Moves.facing("armhole");
        return Style.of(
                "Reader's blouse",
                body.name(),
                "version 1",
                blouse.draft(),
                blouse.steps(),
                List.of(
                        ToCut.of("front", front, Cutting.once()),
                        ToCut.of("back", garment, Cutting.once()),
                        ToCut.of("back neck facing", neck, Cutting.once()).small(),
                        ToCut.of("front arm facing", arm, Cutting.pair()).small(),
                        ToCut.of("back arm facing", arm, Cutting.pair()).small()));
    }

    /** The whole dart, and where that is not enough for the head a slash more, hinged at the armhole. */
    private static Reworked cowl(Piece front, double half) {
        CowlLines dart = CowlLines.closing(front, "centre front", "neckline", "bust dart");
        double whole = Cowls.lengthFor(front, dart, Measured.angle(front, "bust dart"));
        if (whole >= half) {
            return Cowls.byLength(front, dart, whole, Hang.CATENARY).drawn();
        }
        double hinge = 0.6 * front.edge("armhole").length();
        CowlLines more = dart.hinged(CowlLines.Hinge.on(dart.anchor() + 60, "armhole", hinge));
        return Cowls.byLength(front, more, half, Hang.CATENARY).drawn();
    }

    /** The back neck; the front neck has its facing in one. */
    private static Making necked(Making blouse) {
        Facing neck = Facings.separate(blouse.draft(), "neck facing", List.of(new Facings.On("back", "neckline")), 60);
        Seam seam =
                Seam.flat("back neck", Seam.Mate.of("back", "neckline"), Seam.Mate.of("back neck facing", "neckline"));
        return blouse.adding("Trace the facing of the back neck", neck.pieces(), List.of(seam), neck.ledger());
    }

    /** Both halves on one bias, and what the model says of how they hang. */
    private static Reworked hung(Piece front, StretchTest cloth) {
        Reworked put = Bias.put(front, BiasWay.LEFT);
        return new Reworked(
                put.piece(),
                put.ledger()
                        .then(Bias.hang(put.piece(), cloth, Vector2D.of(0, -1)).ledger()));
    }
}
