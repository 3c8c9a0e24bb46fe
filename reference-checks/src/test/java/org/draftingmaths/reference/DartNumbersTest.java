package org.draftingmaths.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Arc;
import org.draftingmaths.curve.Curve;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Meets;
import org.draftingmaths.dart.Darts;
import org.draftingmaths.piece.DartEnd;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.piece.Underlay;
import org.draftingmaths.piece.Use;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Worked figures for darts. All are [computed geometry]: they follow from plain triangles and were worked apart from this library, with
 * no source but the trade's definitions (a dart is an angle at its apex; the underlay is the seam mirrored in the leg).
 */
class DartNumbersTest {

    /** A straight seam through both leg ends of a dart, meeting either leg at an angle inside the piece, the dart's point straight above. */
    private static Piece piece(double leg, double angle, double before, double after, Use.Dart use) {
        double half = angle / 2;
        Vector2D tip = Vector2D.of(500, leg + 100);
        Vector2D one = tip.add(Vector2D.of(-Math.sin(half), -Math.cos(half)).multiply(leg));
        Vector2D other = tip.add(Vector2D.of(Math.sin(half), -Math.cos(half)).multiply(leg));
        double left = Math.PI / 2 - half + before;
        double right = Math.PI / 2 - half + after;
        Vector2D start = one.add(Vector2D.of(Math.cos(left), Math.sin(left)).multiply(300));
        Vector2D end = other.add(Vector2D.of(-Math.cos(right), Math.sin(right)).multiply(300));
        return Drawing.of("piece")
                .from(start.getX(), start.getY())
                .edge("seam", Role.SEAM)
                .line(one.getX(), one.getY())
                .dart("dart", tip.getX(), tip.getY(), other.getX(), other.getY(), 0, Leg.BEFORE)
                .line(end.getX(), end.getY())
                .edge("side", Role.SEAM)
                .line(end.getX(), leg + 220)
                .edge("top", Role.SEAM)
                .line(start.getX(), leg + 220)
                .edge("centre", Role.FOLD)
                .line(start.getX(), start.getY())
                .piece()
                .using("dart", use);
    }

    private static Piece level(double leg, double intake) {
        double angle = 2 * Math.asin(intake / 2 / leg);
        double square = Math.PI / 2;
        return piece(leg, angle, square, square, new Use.Dart(0, Leg.BEFORE));
    }

    /** [computed geometry] A dart of 14 degrees, legs of 15 cm, set back 2.5 cm, is sewn at 16.8 degrees. */
    @Test
    void theSewnAngleAfterSettingBack() {
        Piece dart = piece(150, Math.toRadians(14), Math.PI / 2, Math.PI / 2, new Use.Dart(25, Leg.BEFORE));
        assertThat(Math.toDegrees(Darts.sewnAngle(dart, "dart"))).isCloseTo(16.8, within(0.05));
        assertThat(Math.toDegrees(Measured.angle(dart, "dart"))).isCloseTo(14, within(1e-9));
        Vector2D tip = DartEnd.sewnTip(dart, "dart");
        assertThat(tip.distance(Measured.leg(dart, "dart", Leg.BEFORE).start()))
                .as("both sewn legs are of one length")
                .isCloseTo(tip.distance(Measured.leg(dart, "dart", Leg.AFTER).start()), within(1e-9));
    }

    /**
     * [computed geometry] A dart of 13 degrees: the paper's angle at the fold is 153 degrees where the seam meets the leg at 97, and 179
     * where it meets it at 84 degrees; in general 2 (180 - 13/2 - p).
     */
    @ParameterizedTest
    @CsvSource({"97, 153", "84, 179", "90, 167"})
    void theAngleAtTheFold(double degrees, double expected) {
        double seam = Math.toRadians(degrees);
        Piece dart = piece(140, Math.toRadians(13), seam, seam, new Use.Dart(0, Leg.BEFORE));
        List<Curve> curves = DartEnd.shape(dart, "dart").curves();
        assertThat(curves).hasSize(2);
        assertThat(inside(curves.get(0), curves.get(1))).isCloseTo(expected, within(1e-9));
    }

    /** [computed geometry] At the leg there is a corner unless the seam is square to it: 2 p inside the paper; at the other leg there is none. */
    @ParameterizedTest
    @CsvSource({"97", "84", "90"})
    void theCornersAtTheLegs(double degrees) {
        double seam = Math.toRadians(degrees);
        Piece dart = piece(140, Math.toRadians(13), seam, Math.PI - seam, new Use.Dart(0, Leg.BEFORE));
        CurvePath shape = DartEnd.shape(dart, "dart");
        CurvePath whole = Paper.edge(dart, "seam");
        assertThat(inside(whole.curves().get(0), shape.curves().get(0))).isCloseTo(2 * degrees, within(1e-9));
        assertThat(inside(shape.curves().get(1), whole.curves().get(3)))
                .as("folded, the seam runs on straight over the dart")
                .isCloseTo(180, within(1e-9));
    }

    /** The angle inside the paper, in degrees, where one curve gives way to the next along an anticlockwise outline. */
    private static double inside(Curve curve, Curve next) {
        Vector2D in = curve.tangent(1);
        Vector2D out = next.tangent(0);
        return 180 - Math.toDegrees(Math.atan2(in.signedArea(out), in.dot(out)));
    }

    /** [computed geometry] Square to the leg, the fold ends at L / cos(g/2), which is L sin(g/2) tan(g/2) outside the chord. */
    @ParameterizedTest
    @CsvSource({"140, 13", "150, 14", "250, 15.66", "90, 22"})
    void theFoldOfASquareSeam(double leg, double degrees) {
        double half = Math.toRadians(degrees) / 2;
        Piece dart = piece(leg, 2 * half, Math.PI / 2, Math.PI / 2, new Use.Dart(0, Leg.BEFORE));
        assertThat(DartEnd.foldEnd(dart, "dart").distance(Measured.tip(dart, "dart")))
                .isCloseTo(leg / Math.cos(half), within(1e-9));
        assertThat(Underlay.peak(dart, "dart")).isCloseTo(leg * Math.sin(half) * Math.tan(half), within(1e-9));
    }

    /**
     * [computed geometry] Leg 14 cm, intake 3.2 cm (13.1 degrees): the fold stands out 3.9 mm over the chord where the seam meets the leg at
     * 97 degrees, 1.8 mm at 90 degrees, nearly nothing (0.2 mm) at 84.
     */
    @ParameterizedTest
    @CsvSource({"97, 3.9", "90, 1.8", "84, 0.2"})
    void howFarTheFoldStandsOut(double degrees, double expected) {
        double angle = 2 * Math.asin(16.0 / 140);
        assertThat(Math.toDegrees(angle)).isCloseTo(13.1, within(0.05));
        double seam = Math.toRadians(degrees);
        for (Leg press : Leg.values()) {
            Piece dart = piece(140, angle, seam, seam, new Use.Dart(0, press));
            assertThat(Underlay.peak(dart, "dart")).isCloseTo(expected, within(0.05));
        }
        Piece open = piece(140, angle, seam, seam, new Use.Dart(0, Leg.BEFORE).pressedOpen());
        assertThat(Underlay.peak(open, "dart")).isCloseTo(expected, within(0.05));
    }

    /**
     * [computed geometry] A waist dart 3.8 cm wide on a leg of 17 cm has 12.83 degrees; the same on 25 cm is 5.6 cm wide, on 14.5 cm 3.2 cm, on
     * 21 cm 4.7 cm; half of it on 25 cm is 2.8 cm wide.
     */
    @ParameterizedTest
    @CsvSource({"250, 1, 5.6", "145, 1, 3.2", "210, 1, 4.7", "250, 0.5, 2.8"})
    void theWidthOnAnotherLeg(double leg, double share, double centimetres) {
        Piece dart = level(170, 38);
        assertThat(Math.toDegrees(Measured.angle(dart, "dart"))).isCloseTo(12.83, within(0.005));
        Piece moved = Darts.rotateShare(dart, "dart", Spot.on("top", topAt(dart, leg)), "new", share)
                .piece();
        assertThat(Measured.leg(moved, "new", Leg.BEFORE).length()).isCloseTo(leg, within(1e-6));
        assertThat(Measured.intake(moved, "new") / 10).isCloseTo(centimetres, within(0.05));
        assertThat(Measured.angle(moved, "new")).isCloseTo(share * Measured.angle(dart, "dart"), within(1e-12));
    }

    /** [computed geometry] Mouths are as legs: 1.5 on 7 (12.3013 degrees) becomes 2.35714 on 11; 2 on 10 (11.4783) becomes 1 on 5. */
    @ParameterizedTest
    @CsvSource({"150, 700, 12.3013, 1100, 235.714", "200, 1000, 11.4783, 500, 100.000"})
    void mouthsAreAsLegs(double mouth, double leg, double degrees, double newLeg, double newMouth) {
        double scale = 0.25;
        Piece dart = level(leg * scale, mouth * scale);
        assertThat(Math.toDegrees(Measured.angle(dart, "dart"))).isCloseTo(degrees, within(5e-5));
        double wanted = newLeg * scale;
        Piece moved = Darts.rotate(dart, "dart", Spot.on("top", topAt(dart, wanted)), "new")
                .piece();
        assertThat(Measured.intake(moved, "new") / scale).isCloseTo(newMouth, within(5e-3));
    }

    /** A place on the top, which lies 120 above the apex, as far from the apex as wanted. */
    private static double topAt(Piece piece, double distance) {
        Vector2D apex = Measured.tip(piece, "dart");
        CurvePath top = Paper.edge(piece, "top");
        CurvePath compass = CurvePath.of(Arc.circle(apex, distance));
        return Meets.of(top, compass).points().get(0).onFirst();
    }
}
