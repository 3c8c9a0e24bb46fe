package org.draftingmaths.reference;

import java.util.Comparator;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Arc;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Meet;
import org.draftingmaths.curve.Meets;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Seam;

/**
 * A close-fitting bodice to the waist for bust 88 cm, after published instructions.
 *
 * <p>Source: a web page that gives a close-fitting bodice block for bust 88 cm with rules and results,
 * {@code http://angelfire.com/empire/radhika/Cool/Patterns.htm}. The rules are written here in our own words, one a method,
 * on the page's own axes: x from the centre back towards the centre front, y downwards from the level of the neck
 * point, in centimetres. {@link #front} and {@link #back} turn them to this library's axes.
 *
 * <p>Ours, because the page does not give it, and never to be taken as published: the side seam from the middle of the
 * armhole floor straight down, the armhole and neck curves, the front shoulder end on the level of the lowered shoulder mark, the direction of the
 * back shoulder dart, and how far the bust dart's sewn point is set back.
 *
 * @param napeToWaist nape to waist, cm
 * @param armholeDepth nape to armhole level, cm
 * @param bust bust girth, cm
 * @param neck neck girth, cm
 * @param shoulder shoulder length, cm
 * @param backWidth back width, cm
 * @param chestWidth chest width, cm
 * @param dart width of the bust dart at the shoulder, cm
 */
public record PublishedBodice(
        double napeToWaist,
        double armholeDepth,
        double bust,
        double neck,
        double shoulder,
        double backWidth,
        double chestWidth,
        double dart) {

    /** The set of measurements that the page's results belong to. */
    public static final PublishedBodice BUST_88 = new PublishedBodice(40, 21, 88, 37, 12.25, 34.4, 32.4, 7);

    private static final double BACK_DART_LENGTH = 5;
    private static final double BACK_DART_WIDTH = 1;
    private static final double SET_BACK_MM = 25;

    /** Nape: 1.5 below the level of the neck point. */
    public Vector2D nape() {
        return Vector2D.of(0, 1.5);
    }

    /** Armhole level at the centre back: armhole depth + 0.5 below the nape. */
    public Vector2D armholeLevelAtBack() {
        return Vector2D.of(0, nape().getY() + armholeDepth + 0.5);
    }

    /** Armhole level at the centre front: half the bust + 5 across. */
    public Vector2D armholeLevelAtFront() {
        return Vector2D.of(bust / 2 + 5, armholeLevelAtBack().getY());
    }

    /** Top of the centre front line. */
    public Vector2D topOfCentreFront() {
        return Vector2D.of(armholeLevelAtFront().getX(), 0);
    }

    /** Waist at the centre back. */
    public Vector2D waistAtBack() {
        return Vector2D.of(0, nape().getY() + napeToWaist);
    }

    /** Waist at the centre front. */
    public Vector2D waistAtFront() {
        return Vector2D.of(armholeLevelAtFront().getX(), waistAtBack().getY());
    }

    /** Back neck point: a fifth of the neck less 0.2 across. */
    public Vector2D backNeckPoint() {
        return Vector2D.of(neck / 5 - 0.2, 0);
    }

    /** Level of the back shoulder end, at the centre back: a fifth of the armhole depth less 0.7 below the nape. */
    public Vector2D shoulderLevelAtBack() {
        return Vector2D.of(0, nape().getY() + armholeDepth / 5 - 0.7);
    }

    /** Back shoulder end: shoulder + 1 from the neck point, on the shoulder level. */
    public Vector2D backShoulderEnd() {
        CurvePath level =
                CurvePath.polyline(shoulderLevelAtBack(), shoulderLevelAtBack().add(Vector2D.of(60, 0)));
        CurvePath reach = CurvePath.of(Arc.circle(backNeckPoint(), shoulder + 1));
        return Meets.of(level, reach).points().stream()
                .map(Meet::point)
                .max(Comparator.comparingDouble(Vector2D::getX))
                .orElseThrow();
    }

    /** Back width on the armhole level: half of it + 0.5. */
    public Vector2D backWidthAtArmholeLevel() {
        return Vector2D.of(backWidth / 2 + 0.5, armholeLevelAtBack().getY());
    }

    /** Square up from the back width to the shoulder level. */
    public Vector2D backWidthAtShoulderLevel() {
        return Vector2D.of(
                backWidthAtArmholeLevel().getX(), shoulderLevelAtBack().getY());
    }

    /** Half way up the back width line. */
    public Vector2D backWidthHalfWayUp() {
        return backWidthAtArmholeLevel().lerp(backWidthAtShoulderLevel(), 0.5);
    }

    /** Middle of the back width on the armhole level. */
    public Vector2D middleOfBackWidth() {
        return armholeLevelAtBack().lerp(backWidthAtArmholeLevel(), 0.5);
    }

    /** Front neck point: a fifth of the neck less 0.7 from the centre front. */
    public Vector2D frontNeckPoint() {
        return topOfCentreFront().subtract(Vector2D.of(neck / 5 - 0.7, 0));
    }

    /** Front neck depth at the centre front: a fifth of the neck less 0.2. */
    public Vector2D frontNeckDepth() {
        return topOfCentreFront().add(Vector2D.of(0, neck / 5 - 0.2));
    }

    /** Chest width on the armhole level: half of it + half the dart. */
    public Vector2D chestWidthAtArmholeLevel() {
        return armholeLevelAtFront().subtract(Vector2D.of(chestWidth / 2 + dart / 2, 0));
    }

    /** Middle of the chest width. */
    public Vector2D middleOfChestWidth() {
        return armholeLevelAtFront().lerp(chestWidthAtArmholeLevel(), 0.5);
    }

    /** Bust point: 2.5 below the middle of the chest width. */
    public Vector2D bustPoint() {
        return middleOfChestWidth().add(Vector2D.of(0, 2.5));
    }

    /** The dart's other end: the front neck point turned about the bust point until it has moved by the dart's width. */
    public Vector2D dartEnd() {
        double leg = bustPoint().distance(frontNeckPoint());
        double angle = 2 * Math.asin(dart / 2 / leg);
        return AffineTransformMatrix2D.createRotation(bustPoint(), -angle).apply(frontNeckPoint());
    }

    /** Lowered shoulder mark: 1.5 below the back shoulder end. */
    public Vector2D loweredShoulderMark() {
        return backShoulderEnd().add(Vector2D.of(0, 1.5));
    }

    /** Front shoulder end: shoulder from the dart's end, on the level of the lowered mark (ours). */
    public Vector2D frontShoulderEnd() {
        CurvePath level =
                CurvePath.polyline(loweredShoulderMark(), loweredShoulderMark().add(Vector2D.of(60, 0)));
        CurvePath reach = CurvePath.of(Arc.circle(dartEnd(), shoulder));
        return Meets.of(level, reach).points().stream()
                .map(Meet::point)
                .min(Comparator.comparingDouble(Vector2D::getX))
                .orElseThrow();
    }

    /** Underarm: the middle of the armhole floor (ours). */
    public Vector2D underarm() {
        return backWidthAtArmholeLevel().lerp(chestWidthAtArmholeLevel(), 0.5);
    }

    /** To the library's axes: centre front on x = 0, waist on y = 0, millimetres, y up. */
    private Vector2D front(Vector2D point) {
        return Vector2D.of(
                10 * (waistAtFront().getX() - point.getX()),
                10 * (waistAtFront().getY() - point.getY()));
    }

    /** To the library's axes: centre back on x = 0, waist on y = 0, millimetres, y up. */
    private Vector2D back(Vector2D point) {
        return Vector2D.of(10 * point.getX(), 10 * (waistAtBack().getY() - point.getY()));
    }

    /**
     * The front, cut on the fold, with the bust dart at the neck end of the shoulder.
     *
     * @return the piece
     */
    public Piece front() {
        Vector2D underarm = front(underarm());
        Vector2D end = front(frontShoulderEnd());
        Vector2D chest = front(chestWidthAtArmholeLevel());
        Vector2D dartEnd = front(dartEnd());
        Vector2D bust = front(bustPoint());
        Vector2D neck = front(frontNeckPoint());
        Vector2D depth = front(frontNeckDepth());
        return Drawing.of("front")
                .from(0, 0)
                .edge("waist", Role.SEAM)
                .line(underarm.getX(), 0)
                .edge("side seam", Role.SEAM)
                .line(underarm.getX(), underarm.getY())
                .edge("armhole", Role.SEAM)
                .curve(
                        chest.getX() + 5,
                        underarm.getY(),
                        chest.getX() - 8,
                        underarm.getY() + 60,
                        end.getX(),
                        end.getY())
                .edge("shoulder", Role.SEAM)
                .line(dartEnd.getX(), dartEnd.getY())
                .dart("bust dart", bust.getX(), bust.getY(), neck.getX(), neck.getY(), SET_BACK_MM, Leg.AFTER)
                .edge("neckline", Role.FINISHED)
                .curve(neck.getX() - 4, neck.getY() - 40, neck.getX() - 27, depth.getY(), 0, depth.getY())
                .edge("centre front", Role.FOLD)
                .line(0, 0)
                .level("bust line", 0, bust.getY(), 500, bust.getY())
                .grain(30, 40, 30, 300)
                .piece();
    }

    /**
     * The back, cut on the fold, with its shoulder dart.
     *
     * @return the piece
     */
    public Piece back() {
        return back(0);
    }

    /**
     * The back with a planted fault: the waist lowered at the side seam.
     *
     * @param tooLong by how many mm the side seam is too long
     * @return the piece
     */
    public Piece back(double tooLong) {
        Vector2D underarm = back(underarm());
        Vector2D end = back(backShoulderEnd());
        Vector2D width = back(backWidthHalfWayUp());
        Vector2D neck = back(backNeckPoint());
        Vector2D nape = back(nape());
        Vector2D along = end.directionTo(neck);
        Vector2D middle = end.lerp(neck, 0.5);
        Vector2D mouth = middle.subtract(along.multiply(10 * BACK_DART_WIDTH / 2));
        Vector2D other = middle.add(along.multiply(10 * BACK_DART_WIDTH / 2));
        Vector2D tip = middle.add(Vector2D.of(-along.getY(), along.getX()).multiply(10 * BACK_DART_LENGTH));
        return Drawing.of("back")
                .from(0, 0)
                .edge("waist", Role.SEAM)
                .line(underarm.getX(), -tooLong)
                .edge("side seam", Role.SEAM)
                .line(underarm.getX(), underarm.getY())
                .edge("armhole", Role.SEAM)
                .curve(width.getX() - 2, underarm.getY(), width.getX() - 6, width.getY(), end.getX(), end.getY())
                .edge("shoulder", Role.SEAM)
                .line(mouth.getX(), mouth.getY())
                .dart("shoulder dart", tip.getX(), tip.getY(), other.getX(), other.getY(), 0, Leg.AFTER)
                .line(neck.getX(), neck.getY())
                .edge("neckline", Role.FINISHED)
                .curve(neck.getX() - 12, neck.getY() - 13, neck.getX() - 38, nape.getY(), 0, nape.getY())
                .edge("centre back", Role.FOLD)
                .line(0, 0)
                .level(
                        "bust line",
                        0,
                        front(bustPoint()).getY(),
                        500,
                        front(bustPoint()).getY())
                .grain(30, 40, 30, 320)
                .piece();
    }

    /**
     * Front and back sewn at the side and the shoulder.
     *
     * @param front the front, whatever was done to it
     * @param back the back, whatever was done to it
     * @return the draft
     */
    public static Draft draft(Piece front, Piece back) {
        return new Draft(
                "bodice",
                List.of(front, back),
                List.of(
                        Seam.flat("shoulder", Seam.Mate.of("front", "shoulder"), Seam.Mate.of("back", "shoulder")),
                        Seam.flat("side", Seam.Mate.of("front", "side seam"), Seam.Mate.of("back", "side seam"))));
    }
}
