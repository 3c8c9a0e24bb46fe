package org.draftingmaths.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Arc;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.junit.jupiter.api.Test;

/**
 * Published: L. Baldt, Clothing for Women (1916), Fig. 56, Draft of Circular Flounce for Petticoat,
 * {@code https://chestofbooks.com/business/clothing/Women-Design-Construction/Draft-Of-Circular-Flounce-For-Petticoat-Fig-56.html}:
 * depth 12 in, top 72 in, bottom 112 in; the rule there is radius = top x depth / (bottom - top). The figures are printed
 * as whole inches and close exactly, so the tolerance is rounding alone.
 */
class CircularFlounceTest {

    private static final double INCH = 25.4;

    @Test
    void topAndBottomAreAsPrinted() {
        double radius = 72.0 * 12 / (112 - 72);
        assertThat(radius).isEqualTo(21.6);

        Piece flounce = flounce(radius * INCH, 12 * INCH, 72 / radius);

        assertThat(Lengths.base(flounce, "top") / INCH).as("published top").isCloseTo(72, within(1e-9));
        assertThat(Lengths.base(flounce, "bottom") / INCH)
                .as("published bottom")
                .isCloseTo(112, within(1e-9));
        assertThat(Lengths.base(flounce, "end") / INCH).as("published depth").isCloseTo(12, within(1e-9));
        // Analytic: a ring sector's area is depth times the mean of its two arcs.
        assertThat(flounce.area() / INCH / INCH).isCloseTo(12 * (72 + 112) / 2.0, within(1e-6));
    }

    /** A ring sector of more than half a turn, its bottom arc outermost. */
    private static Piece flounce(double radius, double depth, double angle) {
        Arc bottom = new Arc(Vector2D.ZERO, radius + depth, 0, angle);
        Arc top = new Arc(Vector2D.ZERO, radius, angle, -angle);
        return Drawing.of("flounce")
                .from(radius, 0)
                .edge("end", Role.SEAM)
                .line(bottom.start().getX(), bottom.start().getY())
                .edge("bottom", Role.HEM)
                .along(CurvePath.of(bottom))
                .edge("other end", Role.SEAM)
                .line(top.start().getX(), top.start().getY())
                .edge("top", Role.SEAM)
                .along(CurvePath.of(top))
                .piece();
    }
}
