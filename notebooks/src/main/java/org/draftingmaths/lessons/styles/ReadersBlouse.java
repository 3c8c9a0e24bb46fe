package org.draftingmaths.lessons.styles;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.contour.Armholes;
import org.draftingmaths.contour.Crossing;
import org.draftingmaths.contour.Necklines;
import org.draftingmaths.exchange.Making;
import org.draftingmaths.exchange.Style;
import org.draftingmaths.exchange.ToCut;
import org.draftingmaths.finish.Allowances;
import org.draftingmaths.finish.Bias;
import org.draftingmaths.finish.BiasWay;
import org.draftingmaths.finish.Cutting;
import org.draftingmaths.finish.Facing;
import org.draftingmaths.finish.Facings;
import org.draftingmaths.finish.Marking;
import org.draftingmaths.finish.StretchTest;
import org.draftingmaths.fullness.CowlLines;
import org.draftingmaths.fullness.Cowls;
import org.draftingmaths.fullness.Hang;
import org.draftingmaths.fullness.Smooth;
import org.draftingmaths.ledger.Entry;
import org.draftingmaths.ledger.Instruction;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.piece.Unfold;
import org.draftingmaths.unit.Length;
import org.draftingmaths.unit.Steps;

/** A blouse on the bias with a draped front for those who read aloud at a poetry evening; it goes over the head without a fastening. */
public final class ReadersBlouse {

    private static final Crossing NECK = Crossing.of("shoulder", "front", "back", "neckline");
    private static final Crossing ARM = Crossing.of("shoulder", "front", "back", "armhole");

    /** How deep the facing of the cowl is at the centre, in mm: 80 to 120 (common practice). */
    private static final double DEEP = 100;

    /** What is left outside seams on the bias, in mm: 25 to 40 (common practice). */
    private static final double BIAS = 25;

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
        Making torso = Moves.torso("Reader's blouse", body);
        double turn = Measured.angle(torso.piece("back"), "shoulder dart");
        Making blouse = Moves.backFlared(torso)
                .on(
                        "front",
                        "Slash and spread it by the angle of that dart, so that both sides hang alike",
                        front -> Moves.spread(front, turn))
                .on("front", "Draw the hem in one curve", ReadersBlouse::hem)
                .on("back", "Draw the hem in one curve", ReadersBlouse::hem)
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
        double wide = facing(blouse.piece("back"));
        blouse = necked(Moves.joinedUnderTheArm(Moves.faced(Moves.notchedArms(blouse), "arm", "armhole", wide)), wide);
        double shoulder = blouse.piece("back neck facing").edge("shoulder").length();
        blouse = turned(blouse, shoulder)
                .on("front", "Open it out", front -> Unfold.at(front, "centre front"))
                .on("back", "Open it out", back -> Unfold.at(back, "centre back"))
                .on("back neck facing", "Open it out", facing -> Unfold.at(facing, "centre back"));
        blouse = new Making(Unfold.bothHalves(blouse.draft()), blouse.steps())
                .on("front", "Put it on the bias", front -> hung(front, cloth))
                .on("back", "Put it on the bias", back -> hung(back, cloth))
                .minding(minded());

        Allowances garment = onBothHalves(Allowances.of(Length.mm(10)), "side seam", BIAS);
        garment = onBothHalves(garment, "armhole", 6);
        Allowances back = onBothHalves(onBothHalves(garment, "hem", BIAS), "neckline", 6);
        Allowances front = onBothHalves(onBothHalves(garment, "hem", BIAS), "outer edge of neckline", 0);
        Allowances neck = onBothHalves(onBothHalves(Allowances.of(Length.mm(10)), "neckline", 6), "outer edge", 0);
        Allowances arm = Moves.facing("armhole");
        return Style.of(
                "Reader's blouse",
                body.name(),
                "version 1",
                blouse.draft(),
                blouse.steps(),
                List.of(
                        ToCut.of("front", front, Cutting.once()),
                        ToCut.of("back", back, Cutting.once())
                                .doubled("armhole")
                                .doubled("mirrored armhole")
                                .doubled("side seam")
                                .doubled("mirrored side seam"),
                        ToCut.of("back neck facing", neck, Cutting.once()).small(),
                        narrow("front arm facing", arm),
                        narrow("back arm facing", arm).doubled("armhole")));
    }

    /** Letters small enough for a facing of little more than 3 cm. */
    private static ToCut narrow(String facing, Allowances plan) {
        Marking small = Marking.DEFAULT.letters(Length.mm(3), Length.mm(2.2));
        return new ToCut(facing, plan, small, List.of(Cutting.pair()));
    }

    private static Allowances onBothHalves(Allowances plan, String edge, double width) {
        return plan.on(edge, Length.mm(width)).on("mirrored " + edge, Length.mm(width));
    }

    /** Facings of neck and arm leave each other 10 mm of the shoulder. */
    private static double facing(Piece back) {
        return Math.min(40, Lengths.folded(back, "shoulder") / 2 - 5);
    }

    private static Reworked hem(Piece piece) {
        return Smooth.edge(piece, "hem", new Smooth.Blend.OneCurve(), Smooth.Ends.SQUARE);
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
        return Moves.smoothAtHinge(
                front, Cowls.byLength(front, more, half, Hang.CATENARY).drawn(), "armhole");
    }

    /** The back neck; the front neck has its facing in one. */
    private static Making necked(Making blouse, double wide) {
        Facing neck =
                Facings.separate(blouse.draft(), "neck facing", List.of(new Facings.On("back", "neckline")), wide);
        Seam seam =
                Seam.flat("back neck", Seam.Mate.of("back", "neckline"), Seam.Mate.of("back neck facing", "neckline"));
        return blouse.adding("Trace the facing of the back neck", neck.pieces(), List.of(seam), neck.ledger());
    }

    /**
     * The cowl falls into folds at the centre, and its facing must go deep into them; at the shoulder it is as deep as the facing of the back neck,
     * to which it is sewn from the neck point outwards.
     */
    private static Making turned(Making blouse, double shoulder) {
        Seam seam = Seam.flat(
                "neck facing at the shoulder",
                Seam.Mate.of("front", "shoulder turned"),
                Seam.Mate.backwards("back neck facing", "shoulder"));
        return blouse.on(
                        "front",
                        "Fold the facing of the cowl in one with it",
                        front -> Facings.cutInOne(front, "neckline", shoulder, DEEP))
                .adding(
                        "Join the facing of the cowl to that of the back neck at the shoulders",
                        List.of(),
                        List.of(seam),
                        Ledger.EMPTY);
    }

    /** Both halves on one bias, and what the model says of how they hang. */
    private static Reworked hung(Piece front, StretchTest cloth) {
        Reworked put = Bias.put(front, BiasWay.LEFT);
        return new Reworked(
                put.piece(),
                put.ledger()
                        .then(Bias.hang(put.piece(), cloth, Vector2D.of(0, -1)).ledger()));
    }

    private static Entry[] minded() {
        return new Entry[] {
            new Instruction(
                    "Side seams and hem have " + Quantity.LENGTH.print(BIAS, Steps.DEFAULT)
                            + ", for on the bias they shift while they hang. Baste the sides, let the blouse hang for a"
                            + " day, mark the stitch lines anew, and sew with a little stretch. Then level the hem, and hem it narrow."),
            new Instruction(
                    "The facings of the neck and the arms are cut on the straight grain, 45 degrees off the edges they are sewn to. They"
                            + " stay these edges: what the forecast says of armholes and of the back neckline does not happen there."
                            + " Stay the shoulders with tape."),
            new Instruction(
                    "Shoulders: clip the front's allowance to the corner at the neck point, where the fold line of the facing ends. Sew the"
                            + " shoulder from the arm to the neck point; pivot there, and sew the facing's shoulder to that of the back"
                            + " neck facing from the neck point outwards. The back shoulder lies between, as in an envelope. Then"
                            + " sew the back neck."),
            new Instruction(
                    "Turn the facing of the cowl without pressing a crease at its fold line; a small weight at its middle keeps the folds"
                            + " in front.")
        };
    }
}
