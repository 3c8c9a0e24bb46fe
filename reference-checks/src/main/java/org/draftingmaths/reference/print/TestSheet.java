package org.draftingmaths.reference.print;

import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.exchange.Figure;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;

/**
 * A piece with a curve of 600 mm, its points computed here from Bernstein's polynomials and not by the library. Its lower left corner is its
 * origin.
 */
final class TestSheet {

    static final double LENGTH = 600;

    private static final Vector2D[] SHAPE = {
        Vector2D.of(410, 40), Vector2D.of(310, 250), Vector2D.of(510, 430), Vector2D.of(330, 600)
    };

    private static final Vector2D[] CURVE = scaled(LENGTH / length());

    private TestSheet() {}

    /** A point of the curve, {@code sum of binomial(3, i) t^i (1 - t)^(3 - i) P_i}. */
    static Vector2D point(double t) {
        return at(CURVE, t);
    }

    /** Its direction there. */
    static Vector2D direction(double t) {
        return at(CURVE, t - 1e-6).directionTo(at(CURVE, t + 1e-6));
    }

    static Piece piece() {
        Vector2D low = CURVE[0];
        Vector2D high = CURVE[3];
        return Drawing.of("panel")
                .from(0, 0)
                .edge("hem", Role.HEM)
                .line(low.getX(), low.getY())
                .edge("side seam", Role.SEAM)
                .curve(CURVE[1].getX(), CURVE[1].getY(), CURVE[2].getX(), CURVE[2].getY(), high.getX(), high.getY())
                .edge("waist", Role.SEAM)
                .line(190, high.getY() - 10)
                .dart("dart", 175, high.getY() - 120, 160, high.getY() - 10, 15, Leg.AFTER)
                .line(60, high.getY() - 10)
                .edge("curved front", Role.SEAM)
                .arc(50, 300, 0, 0)
                .level("hip line", 0, 350, 500, 350)
                .grain(120, 120, 120, 420)
                .piece();
    }

    static Figure figure() {
        return Figure.of("Panel", piece()).labelled("panel", "piece 1 of 1", "size 38", "cut 2, a pair");
    }

    private static Vector2D at(Vector2D[] p, double t) {
        double s = 1 - t;
        return Vector2D.Sum.create()
                .addScaled(s * s * s, p[0])
                .addScaled(3 * s * s * t, p[1])
                .addScaled(3 * s * t * t, p[2])
                .addScaled(t * t * t, p[3])
                .get();
    }

    /** By a million chords. */
    private static double length() {
        int chords = 1_000_000;
        return IntStream.range(0, chords)
                .mapToDouble(i -> at(SHAPE, (double) i / chords).distance(at(SHAPE, (i + 1.0) / chords)))
                .sum();
    }

    private static Vector2D[] scaled(double factor) {
        Vector2D[] scaled = new Vector2D[SHAPE.length];
        for (int i = 0; i < scaled.length; i++) {
            scaled[i] = SHAPE[i].multiply(factor);
        }
        return scaled;
    }
}
