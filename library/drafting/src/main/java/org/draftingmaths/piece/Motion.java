package org.draftingmaths.piece;

import java.util.Locale;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * How one part of the paper moves as seen from another: {@code x -> about + R(angle)(x - about) + shift}, a turn about a point
 * that lies on the sheet, then a shift. An unequal spread is a turn about the near end of the slash and a shift by the near
 * gap: its hinge may lie so far away that a turn about it would lose every digit.
 *
 * @param about the point turned about
 * @param angle the angle in radians, anticlockwise
 * @param shift the shift in mm, after the turn
 */
public record Motion(Vector2D about, double angle, Vector2D shift) {

    /** Checks that all figures are finite. */
    public Motion {
        if (!(about.isFinite() && Double.isFinite(angle) && shift.isFinite())) {
            throw new IllegalArgumentException(
                    "A motion needs finite figures: about " + about + ", " + angle + " rad, shift " + shift + ".");
        }
    }

    /**
     * A turn.
     *
     * @param about the point turned about
     * @param angle the angle in radians, anticlockwise
     * @return the motion
     */
    public static Motion turn(Vector2D about, double angle) {
        return new Motion(about, angle, Vector2D.ZERO);
    }

    /**
     * A shift.
     *
     * @param shift the shift in mm
     * @return the motion
     */
    public static Motion shift(Vector2D shift) {
        return new Motion(Vector2D.ZERO, 0, shift);
    }

    /**
     * The motion as a matrix.
     *
     * @return a proper isometry
     */
    public AffineTransformMatrix2D matrix() {
        return AffineTransformMatrix2D.createRotation(about, angle)
                .premultiply(AffineTransformMatrix2D.createTranslation(shift));
    }

    /**
     * A share of the motion.
     *
     * @param share 0 for none, 1 for all of it
     * @return the motion with angle and shift times the share
     */
    public Motion share(double share) {
        return new Motion(about, angle * share, shift.multiply(share));
    }

    /**
     * The motion in words.
     *
     * @return for example {@code turned by 12.8° about (90.0, 160.0)}
     */
    public String words() {
        String turn = String.format(
                Locale.ROOT, "turned by %.1f° about (%.1f, %.1f)", Math.toDegrees(angle), about.getX(), about.getY());
        String move = String.format(Locale.ROOT, "shifted by (%.1f, %.1f)", shift.getX(), shift.getY());
        if (angle == 0) {
            return move;
        }
        return shift.equals(Vector2D.ZERO) ? turn : turn + " and " + move;
    }
}
