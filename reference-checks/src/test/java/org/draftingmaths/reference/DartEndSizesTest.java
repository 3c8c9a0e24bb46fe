package org.draftingmaths.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.block.TorsoBlock;
import org.draftingmaths.check.Checks;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.dart.DartAccount;
import org.draftingmaths.dart.Darts;
import org.draftingmaths.measure.Ease;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.piece.DartEnd;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Opening;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.piece.Use;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every dart of the bodice in every size of two published charts, in every place it may be moved to, folded all three ways. */
class DartEndSizesTest {

    private static final String SIZES = "org.draftingmaths.reference.TorsoBlockSizesTest#sizes";

    /** The bust dart where it is drafted, and moved to shoulder, side, armhole and neck. */
    private static Map<String, Piece> fronts(Measurements body) {
        Piece front = TorsoBlock.bodice(body, Ease.CLOSE_FITTING).draft().piece("front");
        Map<String, Piece> fronts = new TreeMap<>(Map.of("drafted", front));
        for (String edge : List.of("side seam", "armhole", "neckline")) {
            for (double share : new double[] {0.3, 0.6}) {
                Spot to = Spot.on(edge, share * front.edge(edge).length());
                fronts.put(
                        edge + " " + share,
                        Darts.rotate(front, "bust dart", to, "moved dart").piece());
            }
        }
        return fronts;
    }

    @ParameterizedTest
    @MethodSource(SIZES)
    void layersCoincideWhenFolded(Measurements body) {
        Map<String, Piece> fronts = fronts(body);
        assertThat(fronts).hasSize(7);
        fronts.forEach((place, piece) -> {
            for (Opening dart : piece.openings()) {
                for (Leg press : Leg.values()) {
                    assertFolds(body.name() + ", " + place, piece, dart.name(), press);
                }
                assertOpens(body.name() + ", " + place, piece, dart.name());
            }
        });
    }

    private static double angle(Vector2D tip, Vector2D from, Vector2D to) {
        Vector2D a = tip.vectorTo(from);
        Vector2D b = tip.vectorTo(to);
        return Math.atan2(a.signedArea(b), a.dot(b));
    }

    private static Vector2D reflected(Vector2D point, Vector2D tip, Vector2D leg) {
        Vector2D way = tip.directionTo(leg);
        Vector2D off = tip.vectorTo(point);
        return tip.add(way.multiply(2 * off.dot(way)).subtract(off));
    }

    private static Piece pressed(Piece piece, String dart, Use.Dart use) {
        return piece.using(dart, use);
    }

    private static Use.Dart use(Piece piece, String dart) {
        return (Use.Dart) piece.opening(dart).mouth().use();
    }

    private static void assertFolds(String where, Piece unpressed, String dart, Leg press) {
        Piece piece = pressed(unpressed, dart, use(unpressed, dart).pressed(press));
        CurvePath shape = DartEnd.shape(piece, dart);
        CurvePath fromPressed = press == Leg.BEFORE ? shape : shape.reversed();
        Vector2D tip = DartEnd.sewnTip(piece, dart);
        Vector2D leg = Measured.leg(piece, dart, press).start();
        Vector2D other = Measured.leg(piece, dart, press.other()).start();
        AffineTransformMatrix2D close = AffineTransformMatrix2D.createRotation(tip, -angle(tip, leg, other));
        double whole = fromPressed.length();
        for (int i = 0; i <= 20; i++) {
            Vector2D under = reflected(fromPressed.pointAt(whole / 2 * i / 20), tip, leg);
            Vector2D upper = close.apply(fromPressed.pointAt(whole - whole / 2 * i / 20));
            assertThat(under.distance(upper))
                    .as("%s, %s pressed %s", where, dart, press)
                    .isLessThan(1e-6);
        }
    }

    /** Open, the half at either leg is the half of the dart pressed to that side. */
    private static void assertOpens(String where, Piece piece, String dart) {
        CurvePath open = DartEnd.shape(pressed(piece, dart, use(piece, dart).pressedOpen()), dart);
        CurvePath before = DartEnd.shape(pressed(piece, dart, use(piece, dart).pressed(Leg.BEFORE)), dart);
        CurvePath after = DartEnd.shape(pressed(piece, dart, use(piece, dart).pressed(Leg.AFTER)), dart);
        for (int i = 0; i <= 10; i++) {
            double fromBefore = before.length() / 2 * i / 10;
            double fromAfter = after.length() / 2 * i / 10;
            assertThat(open.pointAt(fromBefore).distance(before.pointAt(fromBefore)))
                    .as("%s, %s", where, dart)
                    .isLessThan(1e-6);
            assertThat(open.pointAt(open.length() - fromAfter).distance(after.pointAt(after.length() - fromAfter)))
                    .as("%s, %s", where, dart)
                    .isLessThan(1e-6);
        }
        double step = open.length() - before.length() / 2 - after.length() / 2;
        Vector2D one = before.pointAt(before.length() / 2);
        Vector2D other = after.pointAt(after.length() / 2);
        assertThat(step).as("the step along the fold").isCloseTo(one.distance(other), within(1e-6));
    }

    /** Whatever is moved and left, every degree of both apexes is accounted for, and the checks have their say without throwing. */
    @ParameterizedTest
    @MethodSource(SIZES)
    void nothingIsLost(Measurements body) {
        Draft draft = TorsoBlock.bodice(body, Ease.CLOSE_FITTING).draft();
        Piece front = draft.piece("front");
        List<Reworked> done = new ArrayList<>();
        done.add(Darts.divide(
                front,
                "bust dart",
                List.of(
                        new Darts.Part(Spot.on("side seam", 60), "side dart", 0.5),
                        new Darts.Part(Spot.on("neckline", 40), "neck dart", 0.2))));
        done.add(Darts.leave(done.get(0).piece(), "neck dart", Use.Kind.GATHERS));
        DartAccount account = DartAccount.of(front, done);
        assertThat(account.findings(1e-9)).isEmpty();
        assertThat(account.lines()).allSatisfy(line -> assertThat(line.lost()).isCloseTo(0, within(1e-12)));
        assertThatCode(() -> Checks.all(draft.with(done.get(1).piece()), 0.5)).doesNotThrowAnyException();
    }
}
