package org.draftingmaths.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.check.Checks;
import org.draftingmaths.dart.Darts;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.seam.Walk;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Source: {@code http://angelfire.com/empire/radhika/Cool/Patterns.htm}, a close-fitting bodice block for bust 88 cm.
 * Published points are those whose rule and result the page gives; analytic ones follow from its rules by arithmetic.
 * The page prints to a tenth of a centimetre or finer; the tolerance is a hundredth.
 */
class PublishedBodiceTest {

    private static final PublishedBodice BODICE = PublishedBodice.BUST_88;
    private static final double PRINTED_STEP = 0.01;

    static Stream<Arguments> points() {
        return Stream.of(
                Arguments.of("published", "nape", BODICE.nape(), 0.0, 1.5),
                Arguments.of("published", "armhole level at the back", BODICE.armholeLevelAtBack(), 0.0, 23.0),
                Arguments.of("published", "armhole level at the front", BODICE.armholeLevelAtFront(), 49.0, 23.0),
                Arguments.of("published", "top of centre front", BODICE.topOfCentreFront(), 49.0, 0.0),
                Arguments.of("published", "waist at the back", BODICE.waistAtBack(), 0.0, 41.5),
                Arguments.of("published", "waist at the front", BODICE.waistAtFront(), 49.0, 41.5),
                Arguments.of("published", "back neck point", BODICE.backNeckPoint(), 7.2, 0.0),
                // The page prints 3.7 below the nape; its own rule 21/5 - 0.7 gives 3.5: a misprint.
                Arguments.of("analytic", "shoulder level at the back", BODICE.shoulderLevelAtBack(), 0.0, 5.0),
                Arguments.of("analytic", "back shoulder end", BODICE.backShoulderEnd(), 19.470, 5.0),
                Arguments.of("published", "back width", BODICE.backWidthAtArmholeLevel(), 17.7, 23.0),
                Arguments.of("analytic", "back width squared up", BODICE.backWidthAtShoulderLevel(), 17.7, 5.0),
                Arguments.of("analytic", "back width half way up", BODICE.backWidthHalfWayUp(), 17.7, 14.0),
                Arguments.of("analytic", "middle of back width", BODICE.middleOfBackWidth(), 8.85, 23.0),
                Arguments.of("published", "front neck point", BODICE.frontNeckPoint(), 42.3, 0.0),
                Arguments.of("published", "front neck depth", BODICE.frontNeckDepth(), 49.0, 7.2),
                Arguments.of("published", "chest width", BODICE.chestWidthAtArmholeLevel(), 29.3, 23.0),
                Arguments.of("analytic", "middle of chest width", BODICE.middleOfChestWidth(), 39.15, 23.0),
                Arguments.of("published", "bust point", BODICE.bustPoint(), 39.15, 25.5),
                Arguments.of("analytic", "dart end", BODICE.dartEnd(), 35.301, 0.096));
    }

    @ParameterizedTest(name = "{1} ({0})")
    @MethodSource("points")
    void pointIsWhereThePageSays(String kind, String name, Vector2D point, double x, double y) {
        assertThat(point.getX()).as("%s, %s, across", name, kind).isCloseTo(x, within(PRINTED_STEP));
        assertThat(point.getY()).as("%s, %s, down", name, kind).isCloseTo(y, within(PRINTED_STEP));
    }

    /** Published: back shoulder = shoulder + 1; dart 7 wide. Analytic: leg 25.694, angle 15.66 degrees. */
    @Test
    void lengthsAreWhatThePageSays() {
        assertThat(BODICE.backNeckPoint().distance(BODICE.backShoulderEnd())).isCloseTo(13.25, within(PRINTED_STEP));
        assertThat(BODICE.frontNeckPoint().distance(BODICE.dartEnd())).isCloseTo(7, within(PRINTED_STEP));
        assertThat(BODICE.bustPoint().distance(BODICE.frontNeckPoint())).isCloseTo(25.694, within(PRINTED_STEP));
        assertThat(Math.toDegrees(Measured.angle(BODICE.front(), "bust dart"))).isCloseTo(15.66, within(0.005));
        assertThat(BODICE.chestWidthAtArmholeLevel().getX()
                        - BODICE.backWidthAtArmholeLevel().getX())
                .as("armhole floor")
                .isCloseTo(11.6, within(PRINTED_STEP));
    }

    /** Published: a back dart of 1 cm is taken from the 13.25 of the back shoulder, and the front's is 12.25. */
    @Test
    void shouldersAreEqualWhenTheDartIsFolded() {
        assertThat(Lengths.folded(BODICE.back(), "shoulder")).isCloseTo(122.5, within(0.1));
        assertThat(Lengths.folded(BODICE.front(), "shoulder")).isCloseTo(122.5, within(0.1));
    }

    @Test
    void dartTurnsToTheSideAndSeamsStillMatch() {
        Reworked moved = Darts.rotate(BODICE.front(), "bust dart", Spot.on("side seam", 135), "side dart");
        Draft draft = PublishedBodice.draft(moved.piece(), BODICE.back());

        assertThat(Math.toDegrees(Measured.angle(moved.piece(), "side dart"))).isCloseTo(15.66, within(0.005));
        // Points and lengths are published; the curves between are ours, and have peaks at the shoulder that a fitting
        // would blend.
        assertThat(Checks.all(draft, Checks.SEAM_TOLERANCE))
                .extracting(Finding::kind, Finding::where)
                .containsExactly(
                        tuple(Finding.Kind.EDGE_KINKS, "'shoulder' of 'back' at 'shoulder dart'"),
                        tuple(
                                Finding.Kind.LINE_BREAKS,
                                "'armhole' of 'front' and 'armhole' of 'back' at seam 'shoulder'"),
                        tuple(
                                Finding.Kind.LINE_BREAKS,
                                "'neckline' of 'front' and 'neckline' of 'back' at seam 'shoulder'"));
        assertThat(Walk.all(draft))
                .allSatisfy(walk -> assertThat(walk.difference()).isCloseTo(0, within(0.1)));
    }

    @Test
    void aSideSeamFourMillimetresTooLongIsFound() {
        Piece front = Darts.rotate(BODICE.front(), "bust dart", Spot.on("side seam", 135), "side dart")
                .piece();

        List<Finding> findings =
                Checks.all(PublishedBodice.draft(front, BODICE.back(4)), Checks.SEAM_TOLERANCE).stream()
                        .filter(finding -> finding.quantity() == Quantity.LENGTH)
                        .toList();

        assertThat(findings).hasSize(1);
        assertThat(findings.get(0).kind()).isEqualTo(Finding.Kind.SEAM_LENGTHS_DIFFER);
        assertThat(findings.get(0).excess()).isCloseTo(-4, within(1e-9));
        assertThat(findings.get(0).sentence(Steps.DEFAULT))
                .isEqualTo(
                        "seam 'side', 'side seam' of 'front' on 'side seam' of 'back': the seam lengths do not match; "
                                + "measured 7 1/4 in (18.5 cm), expected 7 1/2 in (18.9 cm), off by -4.00 mm, tolerance 0.50 mm.");
    }
}
