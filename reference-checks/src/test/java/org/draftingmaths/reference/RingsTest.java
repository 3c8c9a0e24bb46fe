package org.draftingmaths.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.draftingmaths.fullness.Answer;
import org.draftingmaths.fullness.CircleSkirt;
import org.draftingmaths.fullness.CircleSkirts;
import org.draftingmaths.fullness.Drafted;
import org.draftingmaths.fullness.Flounce;
import org.draftingmaths.fullness.Flounces;
import org.draftingmaths.fullness.Godets;
import org.draftingmaths.fullness.Hang;
import org.draftingmaths.fullness.RingSector;
import org.draftingmaths.fullness.Tiers;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.unit.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Circle skirts, flounces, godets, tiers and cowl edges against printed figures and worked arithmetic. Each case names its source;
 * "arithmetic" is a figure worked out beside its formula to 25 digits and rounded as it stands, with no source claimed. Tolerances are half of
 * the last digit that stands there.
 *
 * <p>Read, and not compared: I. Rosenfeld, The Practical Designer (1918), lessons 73 and 106 (Wikisource), circle skirts drafted by points from half
 * the waist laid out straight (waist 25 in, A to C and D to I 12 1/2; hip depth of a child's skirt a third of the half breast, 15 / 3 =
 * 5): their waist is no arc of a circle, so there is no radius to hold ours against. Make a custom godet skirt, 2020 ({@code
 * threadsmagazine.com}): a panel of four is (hip + 3 in) / 4 wide, which is division and no geometry of ours.
 */
class RingsTest {

    private static final double INCH = 25.4;

    // ------------------------------------------------------------------------------------------------ circle skirts

    /** Arithmetic: {@code r = W / (2 pi k)}, inches. */
    @ParameterizedTest
    @CsvSource({
        "24, 609.6, 3.8197, 5.0930, 7.6394, 15.2789",
        "26, 660.4, 4.1380, 5.5174, 8.2761, 16.5521",
        "28, 711.2, 4.4563, 5.9418, 8.9127, 17.8254",
        "30, 762.0, 4.7746, 6.3662, 9.5493, 19.0986",
        "36, 914.4, 5.7296, 7.6394, 11.4592, 22.9183"
    })
    void waistRadiiInInches(double waist, double mm, double full, double threeQuarters, double half, double quarter) {
        assertThat(Length.inches(waist).mm()).isCloseTo(mm, within(0.05));
        double[] radii = {full, threeQuarters, half, quarter};
        double[] shares = {1, 0.75, 0.5, 0.25};
        for (int i = 0; i < shares.length; i++) {
            assertThat(CircleSkirt.of(mm, 600, shares[i]).radius() / INCH).isCloseTo(radii[i], within(5e-5));
        }
    }

    /** Arithmetic: radii and hems at 600 mm, in mm; the waist and the hem are measured along the drafted pieces. */
    @ParameterizedTest
    @CsvSource({
        "600, 95.49, 127.32, 190.99, 381.97, 4369.9, 3427.4, 2485.0, 1542.5",
        "640, 101.86, 135.81, 203.72, 407.44, 4409.9, 3467.4, 2525.0, 1582.5",
        "720, 114.59, 152.79, 229.18, 458.37, 4489.9, 3547.4, 2605.0, 1662.5",
        "800, 127.32, 169.77, 254.65, 509.30, 4569.9, 3627.4, 2685.0, 1742.5",
        "1000, 159.15, 212.21, 318.31, 636.62, 4769.9, 3827.4, 2885.0, 1942.5"
    })
    void radiiAndSweepsInMillimetres(
            double waist,
            double full,
            double threeQuarters,
            double half,
            double quarter,
            double fullHem,
            double threeQuartersHem,
            double halfHem,
            double quarterHem) {
        double[] radii = {full, threeQuarters, half, quarter};
        double[] hems = {fullHem, threeQuartersHem, halfHem, quarterHem};
        double[] shares = {1, 0.75, 0.5, 0.25};
        for (int i = 0; i < shares.length; i++) {
            CircleSkirt skirt = CircleSkirt.of(waist, 600, shares[i]);
            Piece piece = CircleSkirts.draft("skirt", skirt).draft().pieces().get(0);
            assertThat(skirt.radius()).isCloseTo(radii[i], within(5e-3));
            assertThat(2 * Lengths.drawn(piece, "waist")).isCloseTo(waist, within(1e-9));
            assertThat(2 * Lengths.drawn(piece, "hem")).isCloseTo(hems[i], within(0.05));
            assertThat(CircleSkirts.shareForSweep(waist, 600, hems[i]).value()).isCloseTo(shares[i], within(2e-5));
        }
    }

    /**
     * Arithmetic, in cm and inches: the first value takes pi as 3.14, which makes every radius 0.05 % long; ours is beside it. Where the
     * allowances of the seams are added to the waist, they are added to the arc.
     */
    @ParameterizedTest
    @CsvSource({
        "110, 17.52, 17.5070",
        "44, 7, 7.0028",
        "114, 18.15, 18.1437",
        "46, 7.3, 7.3211",
    })
    void fullCirclesWithPiRounded(double waist, double rounded, double exact) {
        double ours = CircleSkirt.of(waist * 10, 600, 1).radius() / 10;
        assertThat(ours).isCloseTo(exact, within(5e-5));
        assertThat(ours / rounded).isCloseTo(1, within(4e-3));
    }

    /**
     * Arithmetic: a half circle is worked as a full one of twice the waist. Then the four allowances must be doubled too: 2 x (110 + 4) =
     * 228 cm and not 2 x 110 + 4 = 224 cm, which gives a radius 0.64 cm short and a waist 2 cm short.
     */
    @Test
    void aHalfCircleDoublesItsAllowancesToo() {
        double right = CircleSkirt.of(1140, 600, 0.5).radius() / 10;
        double wrong = CircleSkirt.of(2240, 600, 1).radius() / 10;
        assertThat(right).isCloseTo(36.2873, within(5e-5));
        assertThat(wrong).isCloseTo(35.6507, within(5e-5));
        assertThat(right - wrong).isCloseTo(0.64, within(5e-3));
        assertThat(CircleSkirt.of(1140, 600, 0.5).waistError(10 * (wrong - right)))
                .isCloseTo(-20, within(1e-9));
    }

    /**
     * Published: Tiered skirts, basic calculations ({@code squaredancesewing.com}): a skirt of 21 in has three tiers of 7 in or four of 5 1/4
     * in.
     */
    @Test
    void tiersShareTheLength() {
        assertThat(Tiers.even(21 * INCH, 3, 1.5))
                .allSatisfy(tier -> assertThat(tier.depth()).isCloseTo(177.8, within(0.05)));
        assertThat(Tiers.even(21 * INCH, 4, 1.5))
                .allSatisfy(tier -> assertThat(tier.depth()).isCloseTo(133.35, within(0.005)));
    }

    // ------------------------------------------------------------------------------------------------ flounces

    /**
     * Published: L. Baldt, Clothing for Women (1916), Fig. 56, Draft of Circular Flounce for Petticoat,
     * {@code https://chestofbooks.com/business/clothing/Women-Design-Construction/Draft-Of-Circular-Flounce-For-Petticoat-Fig-56.html}:
     * depth 12 in, top 72 in, bottom 112 in; radius = top x depth / (bottom - top). The printed figures are whole inches and close
     * exactly, so the tolerance is rounding alone.
     */
    @Test
    void baldtsFlounce() {
        Flounce flounce = Flounce.byHem(72 * INCH, 12 * INCH, 112 * INCH);
        assertThat(flounce.radius() / INCH)
                .as("arithmetic, by the printed rule")
                .isCloseTo(21.6, within(1e-12));
        assertThat(flounce.radius()).isCloseTo(548.64, within(1e-9));
        assertThat(Math.toDegrees(flounce.turn())).as("arithmetic").isCloseTo(190.986, within(5e-4));
        Drafted drafted = Flounces.draft("flounce", flounce);
        assertThat(drafted.draft().pieces()).hasSize(1);
        Piece piece = drafted.draft().pieces().get(0);
        assertThat(Lengths.base(piece, "seam") / INCH).as("published top").isCloseTo(72, within(1e-9));
        assertThat(Lengths.base(piece, "hem") / INCH).as("published bottom").isCloseTo(112, within(1e-9));
        assertThat(Lengths.base(piece, "end") / INCH).as("published depth").isCloseTo(12, within(1e-9));
        assertThat(Paper.edge(piece, "hem").start().norm() / INCH)
                .as("arithmetic: the outer radius")
                .isCloseTo(33.6, within(1e-9));
        // Analytic: a ring sector's area is depth times the mean of its two arcs.
        assertThat(piece.area() / INCH / INCH).isCloseTo(12 * (72 + 112) / 2.0, within(1e-6));
        RingSector back =
                RingSector.between(Lengths.base(piece, "seam"), Lengths.base(piece, "hem"), Lengths.base(piece, "end"));
        assertThat(back.radius() / INCH).as("the round trip").isCloseTo(21.6, within(1e-9));
        assertThat(Flounces.depthForHem(72 * INCH, 21.6 * INCH, 112 * INCH).value() / INCH)
                .isCloseTo(12, within(1e-12));
    }

    /**
     * Published: Drafting circular flounces, 2017, {@code https://cloningcouture.com/2017/06/27/drafting-circular-flounces/}: inner diameter 1 in
     * and width 1 in, seam 3.14 and edge 9.42, three to one; inner diameter 2, outer 4, 6.28 and 12.56, two to one. Pi is rounded
     * to 3.14 there: 12.56 is 12.566.
     */
    @ParameterizedTest
    @CsvSource({"1, 1, 3.14, 9.42, 3", "2, 1, 6.28, 12.56, 2"})
    void smallRings(double diameter, double width, double seam, double edge, double ratio) {
        RingSector ring = new RingSector(diameter / 2 * INCH, width * INCH, 2 * Math.PI);
        assertThat(ring.top() / INCH / seam).isCloseTo(1, within(6e-4));
        assertThat(ring.bottom() / INCH / edge).isCloseTo(1, within(6e-4));
        assertThat(ring.ratio()).isCloseTo(ratio, within(1e-12));
    }

    // ------------------------------------------------------------------------------------------------ godets

    /** Arithmetic: a sector of radius 12 in: its arc and its chord. */
    @ParameterizedTest
    @CsvSource({"60, 12.5664, 12.0000", "90, 18.8496, 16.9706"})
    void godetsOfTwelveInches(double degrees, double arc, double chord) {
        double sweep = 12 * INCH * Math.toRadians(degrees);
        Piece godet = Godets.forSeam("godet", 12 * INCH, sweep).draft().piece("godet");
        assertThat(Lengths.drawn(godet, "hem") / INCH).isCloseTo(arc, within(5e-5));
        assertThat(Paper.edge(godet, "hem")
                                .start()
                                .distance(Paper.edge(godet, "hem").end())
                        / INCH)
                .isCloseTo(chord, within(5e-5));
        assertThat(Math.toDegrees(Godets.angleFor(12 * INCH, sweep).value())).isCloseTo(degrees, within(1e-9));
    }

    /** Arithmetic of the trade: a godet 22 cm high that adds 18 cm has 46.9 degrees. */
    @Test
    void aGodetOfTwentyTwoByEighteen() {
        Answer angle = Godets.angleFor(220, 180);
        assertThat(Math.toDegrees(angle.value())).isCloseTo(46.9, within(0.05));
        Drafted godet = Godets.forSeam("godet", 220, 180);
        assertThat(Lengths.drawn(godet.draft().piece("godet"), "hem")).isCloseTo(180, within(1e-9));
    }

    // ------------------------------------------------------------------------------------------------ cowls

    /** Arithmetic of the trade: neck points 8.5 cm from the centre, drop 12 cm: half the edge 14.7 cm as a V, 15.6 cm as a catenary. */
    @Test
    void theEdgeOfACowl() {
        assertThat(Hang.V.lengthFor(85, 120) / 10).isCloseTo(14.7, within(0.05));
        assertThat(Hang.CATENARY.lengthFor(85, 120) / 10).isCloseTo(15.6, within(0.05));
        for (Hang hang : List.of(Hang.V, Hang.CATENARY)) {
            assertThat(hang.dropFor(85, hang.lengthFor(85, 120)).value()).isCloseTo(120, within(1e-9));
        }
    }
}
