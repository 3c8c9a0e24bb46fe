package org.draftingmaths.finish;

import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;

/**
 * A <em>model</em> of cloth on the bias: warp and weft keep their lengths and only the angle between them changes, by {@code g}. Everything that
 * comes of it is a forecast, to be judged by hanging the toile.
 *
 * <p>A line at the angle {@code b} to the warp, in the sense in which the threads close, becomes {@code sqrt(1 + sin 2b sin g)} as
 * long. On the true bias {@code b = 45°} length and width keep {@code l^2 + w^2 = 2}. Off the true bias there are two widths and they differ:
 * {@link #acrossLine}, the line that was drawn square to the length, and {@link #widthSquare}, the width measured square across the strip as it hangs.
 *
 * @param angle {@code g}: by how much the right angle between the threads closes, in radians, 0 to less than a quarter turn
 */
public record Shear(double angle) {

    /** Checks the angle. */
    public Shear {
        if (!(angle >= 0 && angle < Math.PI / 2)) {
            throw new IllegalArgumentException(
                    "The angle between the threads closes by 0 to less than pi/2: " + angle + " rad.");
        }
    }

    /**
     * The shear that a test on the true bias tells of: with {@code e} the stretch, {@code sin g = (1 + e)^2 - 1}.
     *
     * @param test the test
     * @return the shear
     */
    public static Shear of(StretchTest test) {
        double length = 1 + test.stretch();
        return new Shear(Math.asin(length * length - 1));
    }

    /**
     * What a line becomes: {@code sqrt(1 + sin 2b sin g)}.
     *
     * @param toWarp {@code b}: its angle to the warp in radians
     * @return its length as a multiple of what it was
     */
    public double along(double toWarp) {
        return Math.sqrt(1 + Math.sin(2 * toWarp) * Math.sin(angle));
    }

    /**
     * What the line that was square to it becomes: {@code sqrt(1 - sin 2b sin g)}. It is square to it no more, unless {@code b} is 45°.
     *
     * @param toWarp {@code b}: the angle to the warp in radians of the line along
     * @return the length of the line across as a multiple of what it was
     */
    public double acrossLine(double toWarp) {
        return Math.sqrt(1 - Math.sin(2 * toWarp) * Math.sin(angle));
    }

    /**
     * What the width of a strip becomes, measured square across it as it hangs: {@code cos g / along}. The area of any patch becomes
     * {@code cos g} of what it was.
     *
     * @param toWarp {@code b}: the angle to the warp in radians of the line along
     * @return the width as a multiple of what it was
     */
    public double widthSquare(double toWarp) {
        return Math.cos(angle) / along(toWarp);
    }

    /**
     * The shear as a map of points, the warp along x: the symmetric matrix with {@code cos(g/2)} on its diagonal and {@code sin(g/2)} beside
     * it. It stretches the one bias by {@code sqrt(1 + sin g)} and shrinks the other by {@code sqrt(1 - sin g)}.
     *
     * @return the map
     */
    public AffineTransformMatrix2D map() {
        double c = Math.cos(angle / 2);
        double s = Math.sin(angle / 2);
        return AffineTransformMatrix2D.of(c, s, 0, s, c, 0);
    }
}
