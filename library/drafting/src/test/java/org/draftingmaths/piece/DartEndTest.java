package org.draftingmaths.piece;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Nearest;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The shape of a dart's end, proved by folding it. */
class DartEndTest {

    static Stream<Long> seeds() {
        return LongStream.range(0, 200).boxed();
    }

    /**
     * Folds every dart of a random piece: the layer next to the leg is reflected in the leg, the layer beyond the fold is turned about
     * the sewn point until the legs meet. The two layers must lie on one another point by point, and on the edge as it was drawn, as
     * far as that reaches.
     */
    @ParameterizedTest
    @MethodSource("seeds")
    void layersCoincideWhenFolded(long seed) {
        Piece piece = RandomPieces.piece(seed);
        for (Opening dart : piece.openings()) {
            Leg press = ((Use.Dart) dart.mouth().use()).press().orElseThrow();
            CurvePath shape = DartEnd.shape(piece, dart.name());
            assertThat(shape.start().distance(dart.before().start())).isLessThan(1e-9);
            assertThat(shape.end().distance(dart.after().start())).isLessThan(1e-9);
            CurvePath fromPressed = press == Leg.BEFORE ? shape : shape.reversed();
            Vector2D tip = DartEnd.sewnTip(piece, dart.name());
            Vector2D leg = dart.base(press).start();
            Vector2D a = tip.vectorTo(leg);
            Vector2D b = tip.vectorTo(dart.base(press.other()).start());
            double angle = Math.atan2(a.signedArea(b), a.dot(b));
            AffineTransformMatrix2D close = AffineTransformMatrix2D.createRotation(tip, -angle);
            CurvePath seam = drawnAway(piece, dart, press);
            double whole = fromPressed.length();
            for (int i = 0; i <= 20; i++) {
                Vector2D under = reflected(fromPressed.pointAt(whole / 2 * i / 20), tip, leg);
                Vector2D upper = close.apply(fromPressed.pointAt(whole - whole / 2 * i / 20));
                assertThat(under.distance(upper))
                        .as("seed %d, %s", seed, dart.name())
                        .isLessThan(1e-6);
                if (whole / 2 * i / 20 <= seam.length()) {
                    assertThat(Nearest.of(seam, under).distance())
                            .as("seed %d, %s", seed, dart.name())
                            .isLessThan(1e-6);
                }
            }
        }
    }

    /** The dart's own edge on the side it is pressed to, as it was drawn, from the leg away. */
    private static CurvePath drawnAway(Piece piece, Opening dart, Leg press) {
        double arc = dart.mouth().before();
        Run run = piece.panels().stream()
                .flatMap(panel -> panel.ring().stream())
                .filter(each -> each.border().equals(dart.mouth().border()))
                .filter(each -> press == Leg.BEFORE ? each.to() == arc : each.from() == arc)
                .findFirst()
                .orElseThrow();
        CurvePath placed =
                piece.base(run.border()).between(run.from(), run.to()).transformed(run.motion());
        return press == Leg.BEFORE ? placed.reversed() : placed;
    }

    private static Vector2D reflected(Vector2D point, Vector2D tip, Vector2D leg) {
        Vector2D way = tip.directionTo(leg);
        Vector2D off = tip.vectorTo(point);
        return tip.add(way.multiply(2 * off.dot(way)).subtract(off));
    }

    /**
     * Straight seam meeting the leg at an angle: how far the fold lies outside the chord. Plain geometry for leg 140 mm,
     * intake 32 mm: {@code r(a) = L sin(psi) / sin(psi + a)}, so the fold lies {@code r(g/2) - L cos(g/2)} beyond the chord.
     * Worked by hand for 97, 90 and 84 degrees: 3.86, 1.84 and 0.16 mm.
     */
    @ParameterizedTest
    @CsvSource({"97, 3.86", "90, 1.84", "84, 0.16"})
    void foldLiesBeyondTheChord(double degrees, double expected) {
        double leg = 140;
        double half = Math.asin(16 / leg);
        Vector2D tip = Vector2D.of(200, 150);
        Vector2D before = tip.add(Vector2D.of(-Math.sin(half), -Math.cos(half)).multiply(leg));
        Vector2D after = tip.add(Vector2D.of(Math.sin(half), -Math.cos(half)).multiply(leg));
        Vector2D left = before.subtract(seamAway(half, degrees).multiply(120));
        Piece piece = Drawing.of("piece")
                .from(left.getX(), left.getY())
                .edge("seam", Role.SEAM)
                .line(before.getX(), before.getY())
                .dart("dart", tip.getX(), tip.getY(), after.getX(), after.getY(), 0, Leg.BEFORE)
                .line(400, after.getY())
                .edge("side", Role.SEAM)
                .line(400, 300)
                .edge("top", Role.SEAM)
                .line(left.getX(), 300)
                .edge("centre", Role.FOLD)
                .line(left.getX(), left.getY())
                .piece();
        double beyond = before.getY() - DartEnd.foldEnd(piece, "dart").getY();
        assertThat(beyond).isCloseTo(expected, within(0.005));
    }

    /** The direction in which the seam arrives at the before leg, when it meets the leg at an angle inside the piece. */
    private static Vector2D seamAway(double half, double degrees) {
        double leg = Math.PI / 2 - half;
        double away = leg + Math.toRadians(degrees);
        return Vector2D.of(-Math.cos(away), -Math.sin(away));
    }
}
