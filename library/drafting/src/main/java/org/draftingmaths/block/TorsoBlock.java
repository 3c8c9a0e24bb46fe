package org.draftingmaths.block;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.Change;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.measure.Ease;
import org.draftingmaths.measure.Measure;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Seam;

/**
 * A close-fitting torso block to hip length, and the bodice to the waist, after general trade practice; the rules are our own.
 *
 * <p>Both halves have their centre line on x = 0 and the waist on y = 0, in millimetres. With body measures in words and
 * {@code B, W, H} the finished girths, body plus ease:
 *
 * <ul>
 *   <li>half widths, front and back: {@code B/4 ± 5} at the bust line, {@code H/4 ± 5} at the hip, {@code W/4 ± 5} at the
 *       waist with its dart closed, so that the front is 10 mm wider than the back at every level and the side seams are
 *       alike;
 *   <li>waist suppression of either half {@code s = (B - W)/4}: 0.4 s at the side seam, the rest in the waist dart; where
 *       the rest would be narrower than 6 mm (the smallest useful dart, common practice) there is no dart and all of it
 *       goes to the side;
 *   <li>the side seam from underarm to waist is the parabola that is upright at the waist and passes the bust line at its
 *       width; below, a cubic upright at waist and hip;
 *   <li>back: nape at the back waist length; neck point {@code neck/5 - 2} across and 15 above the nape; armhole level 5
 *       below the armhole depth; shoulder end on the level {@code armhole depth/5 - 7} below the nape, and as far along
 *       that the shoulder with its dart closed is straight and of the shoulder length; shoulder dart 10 wide and 70 deep at the middle;
 *   <li>front: apex at half the apex distance, {@code front waist length - neck point to apex} above the waist; neck point
 *       {@code neck/5 - 7} across, at its distance from the apex; neck depth {@code neck/5 - 2} below it; the bust dart has the
 *       angle {@code 2 asin(bust dart / (2 neck point to apex))} about the apex and opens at the middle of the shoulder,
 *       which with the dart closed is straight, of the shoulder length, and slopes 16°;
 *   <li>waist darts: front under the apex and up to it, down to half way to the hip; back at half the half back width, from
 *       the bust line to two thirds of the way to the hip;
 *   <li>the waist of the bodice is drawn with the dart closed, as the trade draws it: one curve without a corner at the dart, square to the
 *       centre line and to the side seam, {@code W/4 ± 5} long (see {@link #bodice});
 *   <li>the neckline so drawn comes out shorter than the neck, by some 3 per cent in middle sizes; the ledger tells both, and a style that closes at the neck
 *       widens it first (common practice: never tighter than the neck);
 *   <li>necklines and armholes leave the shoulder square and arrive square at centre line and side seam, each one cubic
 *       without inflection, so that front and back meet smoothly; the armhole is drawn as deep as the back width or the
 *       chest width (with what the open dart adds at that level) asks.
 * </ul>
 *
 * <p>From the published close-fitting block for bust 88 cm at {@code angelfire.com/empire/radhika/Cool/Patterns.htm} come the
 * neck widths and depth, the level of the back shoulder end and the armhole's 5 mm; the rest is common practice or ours.
 *
 * <pre>{@code
 * Block block = TorsoBlock.draft(body, Ease.CLOSE_FITTING);
 * List<Finding> findings = Checks.all(block.draft(), Checks.SEAM_TOLERANCE);
 * }</pre>
 */
public final class TorsoBlock {

    private TorsoBlock() {}

    /**
     * The torso block to hip length. The waist darts are double-pointed.
     *
     * @param body measurements that have all of {@link Measure#TORSO_BLOCK}
     * @param ease the ease at bust, waist and hip
     * @return pieces {@code front} and {@code back}, seams {@code shoulder} and {@code side}
     * @throws IllegalArgumentException when a measure is missing
     * @throws DraftingException when the measures do not go together; the message says which
     */
    public static Block draft(Measurements body, Ease ease) {
        FrontPoints front = new FrontPoints(new Torso(body, ease));
        BackPoints back = new BackPoints(new Torso(body, ease));
        requireRoom(front, back);
        return block("torso block", torsoFront(front), torsoBack(back), front, back);
    }

    /**
     * The bodice: the same block cut at the waist line, where the waist darts have one point and can be moved.
     *
     * <p>A waist drawn straight over the open dart would have a corner of the dart's angle when the dart is folded. It is drawn on the
     * closed dart instead: the parabola from the centre line to the side seam, square to both, whose corner is where the straight waist
     * would turn. So the waist dips at the dart, both legs longer by one amount (up to 7 mm in women's sizes); and as the curve is shorter
     * than the way over its corner, the dart's angle is reckoned so that the closed waist is {@code W/4 ± 5} long (at the waist level
     * the dart is up to 1 mm narrower than the torso block's). Centre lines and side seams are those of the torso block.
     *
     * <p>The waist is smooth for the dart closed to its apex, so that it is smooth wherever the dart is moved. Sewn to its point 20 mm short of
     * the apex, the dart takes a little more angle, and the waist turns there by the difference: 1.2° to 2° in women's sizes.
     * {@link org.draftingmaths.seam.Truing#blendDart} takes that away from a dart that is to stay.
     *
     * @param body measurements that have all of {@link Measure#TORSO_BLOCK}
     * @param ease the ease at bust, waist and hip
     * @return pieces {@code front} and {@code back}, seams {@code shoulder} and {@code side}
     * @throws IllegalArgumentException when a measure is missing
     * @throws DraftingException when the measures do not go together; the message says which
     */
    public static Block bodice(Measurements body, Ease ease) {
        FrontPoints front = new FrontPoints(new Torso(body, ease));
        BackPoints back = new BackPoints(new Torso(body, ease));
        requireRoom(front, back);
        return block("bodice", bodiceFront(front), bodiceBack(back), front, back);
    }

    private static Block block(String name, Piece front, Piece back, FrontPoints frontPoints, BackPoints backPoints) {
        Draft draft = new Draft(
                name,
                List.of(front, back),
                List.of(
                        Seam.flat("shoulder", Seam.Mate.of("front", "shoulder"), Seam.Mate.of("back", "shoulder")),
                        Seam.flat("side", Seam.Mate.of("front", "side seam"), Seam.Mate.of("back", "side seam"))));
        List<Construction> lines = new ArrayList<>(frontPoints.construction());
        lines.addAll(backPoints.construction());
        Ledger widths = Ledger.of(frontPoints.chestWidth(), backPoints.backWidth(), neck(frontPoints, backPoints));
        boolean darted = frontPoints.torso().hasWaistDart();
        return new Block(draft, lines, darted ? widths : widths.then(new NoWaistDart()));
    }

    /** Its width and depth come from the neck by the rules, and its length from its curve: it is told beside the neck, for a neckline is never tighter. */
    private static Change neck(FrontPoints front, BackPoints back) {
        double drawn = 2 * (front.neckline().length() + back.neckline().length());
        return new Change(
                "closed neckline, asked and drawn,",
                Quantity.LENGTH,
                front.torso().mm(Measure.NECK),
                drawn);
    }

    private static void requireRoom(FrontPoints front, BackPoints back) {
        front.requireSense();
        back.requireSense();
    }

    private static Piece torsoFront(FrontPoints p) {
        Torso torso = p.torso();
        Drawing drawing = upper(hem(Drawing.of("front"), torso, torso.frontExtra()), p);
        drawing = drawing.level("waist line", 0, 0, 2000, 0)
                .level("hip line", 0, -torso.hipDepth(), 2000, -torso.hipDepth())
                .grain(30, -torso.hipDepth() / 2, 30, torso.bustLevel());
        if (torso.hasWaistDart()) {
            double reach = torso.hipDepth() / 2;
            drawing = drawing.insideDart(
                    "waist dart",
                    p.apex().getX(),
                    p.apex().getY(),
                    p.apex().getX(),
                    -reach,
                    p.apex().getY() / (p.apex().getY() + reach),
                    torso.waistDart());
        }
        return drawing.piece();
    }

    private static Piece torsoBack(BackPoints p) {
        Torso torso = p.torso();
        Drawing drawing = upper(hem(Drawing.of("back"), torso, -torso.frontExtra()), p);
        drawing = drawing.level("waist line", 0, 0, 2000, 0)
                .level("hip line", 0, -torso.hipDepth(), 2000, -torso.hipDepth())
                .grain(30, -torso.hipDepth() / 2, 30, torso.bustLevel());
        if (torso.hasWaistDart()) {
            double reach = torso.hipDepth() * 2 / 3;
            drawing = drawing.insideDart(
                    "waist dart",
                    p.waistDartX(),
                    torso.bustLevel(),
                    p.waistDartX(),
                    -reach,
                    torso.bustLevel() / (torso.bustLevel() + reach),
                    torso.waistDart());
        }
        return drawing.piece();
    }

    /** The hem along the hip line and the side seam from there to the underarm. */
    private static Drawing hem(Drawing drawing, Torso torso, double extra) {
        double hip = torso.hipWidth(extra);
        double waist = torso.sideAtWaist(extra);
        double depth = torso.hipDepth();
        return drawing.from(0, -depth)
                .edge("hem", Role.HEM)
                .line(hip, -depth)
                .edge("side seam", Role.SEAM)
                .curve(hip, -0.65 * depth, waist, -0.4 * depth, waist, 0)
                .along(torso.sideAboveWaist(extra))
                .edge("armhole", Role.SEAM)
                .notch("side seam", torso.sideBelowWaistLength(extra));
    }

    private static Piece bodiceFront(FrontPoints p) {
        Torso torso = p.torso();
        return upper(waist(Drawing.of("front"), torso, torso.frontExtra(), p.apex()), p)
                .grain(30, 40, 30, torso.bustLevel() + 40)
                .piece();
    }

    private static Piece bodiceBack(BackPoints p) {
        Torso torso = p.torso();
        return upper(waist(Drawing.of("back"), torso, -torso.frontExtra(), p.waistDartPoint()), p)
                .grain(30, 40, 30, torso.bustLevel() + 40)
                .piece();
    }

    /** The waist with its dart, and the side seam from there to the underarm. */
    private static Drawing waist(Drawing drawing, Torso torso, double extra, Vector2D dartPoint) {
        Drawing begun = drawing.from(0, 0).edge("waist", Role.SEAM);
        Drawing drawn = torso.hasWaistDart()
                ? darted(begun, torso.closedWaist(extra, dartPoint))
                : begun.line(torso.sideAtWaist(extra), 0);
        return drawn.edge("side seam", Role.SEAM)
                .along(torso.sideAboveWaist(extra))
                .edge("armhole", Role.SEAM);
    }

    private static Drawing darted(Drawing begun, ClosedWaist waist) {
        CurvePath after = waist.afterDart();
        Vector2D point = waist.point();
        return begun.along(waist.beforeDart())
                .dart(
                        "waist dart",
                        point.getX(),
                        point.getY(),
                        after.start().getX(),
                        after.start().getY(),
                        Torso.SET_BACK,
                        Leg.BEFORE)
                .along(after);
    }

    /** From the underarm over armhole, shoulder and neck down the centre front. */
    private static Drawing upper(Drawing drawing, FrontPoints p) {
        Vector2D before = p.dartOuterEnd();
        Vector2D after = p.dartInnerEnd();
        Vector2D start =
                drawing.items().isEmpty() ? Vector2D.ZERO : drawing.start().orElseThrow();
        return drawing.along(p.armhole())
                .edge("shoulder", Role.SEAM)
                .line(before.getX(), before.getY())
                .dart(
                        "bust dart",
                        p.apex().getX(),
                        p.apex().getY(),
                        after.getX(),
                        after.getY(),
                        Torso.SET_BACK,
                        Leg.AFTER)
                .line(p.neckPoint().getX(), p.neckPoint().getY())
                .edge("neckline", Role.FINISHED)
                .along(p.neckline())
                .edge("centre front", Role.FOLD)
                .line(start.getX(), start.getY())
                .level("bust line", 0, p.torso().bustLevel(), 2000, p.torso().bustLevel());
    }

    /** From the underarm over armhole, shoulder and neck down the centre back. */
    private static Drawing upper(Drawing drawing, BackPoints p) {
        Vector2D before = p.dartOuterEnd();
        Vector2D after = p.dartInnerEnd();
        Vector2D tip = p.dartPoint();
        Vector2D start = drawing.start().orElseThrow();
        return drawing.along(p.armhole())
                .edge("shoulder", Role.SEAM)
                .line(before.getX(), before.getY())
                .dart("shoulder dart", tip.getX(), tip.getY(), after.getX(), after.getY(), 0, Leg.AFTER)
                .line(p.neckPoint().getX(), p.neckPoint().getY())
                .edge("neckline", Role.FINISHED)
                .along(p.neckline())
                .edge("centre back", Role.FOLD)
                .line(start.getX(), start.getY())
                .level("bust line", 0, p.torso().bustLevel(), 2000, p.torso().bustLevel());
    }
}
