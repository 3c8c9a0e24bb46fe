package org.draftingmaths.block;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.check.Checks;
import org.draftingmaths.dart.Darts;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.measure.Ease;
import org.draftingmaths.measure.Measure;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.measure.ProportionRules;
import org.draftingmaths.measure.Wearer;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Flat;
import org.draftingmaths.piece.Girths;
import org.draftingmaths.piece.InsideDart;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Panels;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.unit.Length;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.api.Test;

class TorsoBlockTest {

    private static Measurements body(double bust, double waist, double hip) {
        return Measurements.of("figure", Wearer.ADULT)
                .with(Measure.BUST, Length.mm(bust))
                .with(Measure.WAIST, Length.mm(waist))
                .with(Measure.HIP, Length.mm(hip))
                .filledBy(ProportionRules.TORSO);
    }

    /** A waist as wide as the bust has no dart and says so; a much wider one is refused, not drawn with a horn at the underarm. */
    @Test
    void aWaistWiderThanTheBustIsSaid() {
        Block straight = TorsoBlock.bodice(body(1100, 1140, 1180), Ease.CLOSE_FITTING);
        assertThat(straight.draft().piece("front").openings()).hasSize(1);
        assertThat(straight.ledger().sentences(Steps.DEFAULT))
                .contains(
                        "The waist is nearly as wide as the bust: no waist dart is drawn, the side seams take in all there"
                                + " is.");
        assertThatThrownBy(() -> TorsoBlock.bodice(body(800, 1200, 1000), Ease.CLOSE_FITTING))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining(
                        "the waist of 120.0 cm is so wide for the bust of 80.0 cm that the armhole would run");
    }

    /** Two thousand plausible bodies: each is drafted, valid and matching, or refused with a reason. */
    @Test
    void everyPlausibleBodyIsDraftedOrRefused() {
        SplittableRandom random = new SplittableRandom(20);
        int drafted = 0;
        int refused = 0;
        int surelyWide = 0;
        for (int i = 0; i < 2000; i++) {
            double bust = random.nextDouble(720, 1420);
            double waist = bust - random.nextDouble(20, 300);
            double hip = waist + random.nextDouble(20, 330);
            Measurements body = varied(body(bust, Math.max(470, waist), Math.max(620, hip)), random);
            try {
                for (Block block : new Block[] {
                    TorsoBlock.draft(body, Ease.CLOSE_FITTING), TorsoBlock.bodice(body, Ease.CLOSE_FITTING)
                }) {
                    double bustDart = Measured.angle(block.draft().piece("front"), "bust dart");
                    boolean wide = bustDart > Math.toRadians(22) || rule(body) + wider(block.draft()) > 45;
                    List<Finding.Kind> told = Checks.all(block.draft(), 0.1).stream()
                            .map(Finding::kind)
                            .toList();
                    assertThat(told)
                            .as("%s: only a full bust or a small waist asks for a dart that is better divided", body)
                            .isSubsetOf(
                                    wide ? List.of(Finding.Kind.DART_WIDE, Finding.Kind.UNDERLAY_OVERRUNS) : List.of());
                    if (bustDart > Math.toRadians(22) || rule(body) > 46) {
                        assertThat(told).as("%s", body).contains(Finding.Kind.DART_WIDE);
                        surelyWide++;
                    }
                    for (Piece piece : block.draft().pieces()) {
                        assertThat(Flat.polygon(Paper.outline(piece)).isValid())
                                .as("%s", body)
                                .isTrue();
                    }
                }
                drafted++;
            } catch (DraftingException reason) {
                assertThat(reason).hasMessageStartingWith("Draft ");
                refused++;
            }
        }
        assertThat(drafted + refused).isEqualTo(2000);
        assertThat(drafted).as("at least nine in ten are drafted").isGreaterThan(1800);
        assertThat(surelyWide).as("drafts with a dart that is surely too wide").isGreaterThan(100);
    }

    /**
     * By how much at most, in mm, a mouth of the bodice is wider than the rule. With {@code s = sin(θ/2)}, and {@code a, b} the ways from the centre line and the
     * side seam to the corner of the closed waist, the parabola lies {@code 2 a b s / (sqrt a + sqrt b)^2} below that corner, on the line that halves its
     * angle; by so much both legs are longer. Its length is at most half of its chord and its two tangents, as its speed is convex, so at the waist level
     * the dart is narrower by {@code a b s^2 / (a + b)} at least. The difference, {@code s^2} times {@code 4 a b / (sqrt a + sqrt b)^2 - a b / (a + b)}, is
     * largest where {@code a = b}: {@code (a + b) s^2 / 4}, and {@code a + b} is less than the waist's width with the dart open.
     */
    private static double wider(Draft draft) {
        return draft.pieces().stream()
                .filter(piece -> piece.openings().stream()
                        .anyMatch(opening -> opening.name().equals("waist dart")))
                .mapToDouble(piece ->
                        sideAtWaist(piece) / 4 * Math.pow(Math.sin(Measured.angle(piece, "waist dart") / 2), 2))
                .max()
                .orElse(0);
    }

    private static double sideAtWaist(Piece bodice) {
        return Paper.edge(bodice, "side seam").start().getX();
    }

    /** The wider of the two waist darts by the block's rule. */
    private static double rule(Measurements body) {
        return 0.6 * (body.mm(Measure.BUST) + 60 - body.mm(Measure.WAIST) - 20) / 4;
    }

    /** Lengths up to a tenth away from what the rules give. */
    private static Measurements varied(Measurements body, SplittableRandom random) {
        Measurements varied = body;
        for (Measure measure : new Measure[] {
            Measure.NECK,
            Measure.SHOULDER_LENGTH,
            Measure.BACK_WIDTH,
            Measure.CHEST_WIDTH,
            Measure.BUST_DART,
            Measure.ARMHOLE_DEPTH,
            Measure.BACK_WAIST_LENGTH,
            Measure.NECK_POINT_TO_APEX,
            Measure.APEX_TO_APEX,
            Measure.WAIST_TO_HIP
        }) {
            varied = varied.with(measure, body.length(measure).times(random.nextDouble(0.95, 1.05)));
        }
        return varied;
    }

    /** The bodice is the torso block cut at the waist line, its waist drawn on the closed dart. */
    @Test
    void theBodiceIsTheUpperHalf() {
        Measurements body = body(880, 720, 970);
        Block torso = TorsoBlock.draft(body, Ease.CLOSE_FITTING);
        Block bodice = TorsoBlock.bodice(body, Ease.CLOSE_FITTING);
        for (String piece : new String[] {"front", "back"}) {
            for (String edge : new String[] {"armhole", "shoulder", "neckline"}) {
                assertThat(bodice.draft().piece(piece).edge(edge))
                        .isEqualTo(torso.draft().piece(piece).edge(edge));
            }
            assertThat(Lengths.folded(bodice.draft().piece(piece), "waist"))
                    .isCloseTo(Girths.closed(torso.draft().piece(piece), "waist line"), within(1e-6));
            requireParabola(
                    bodice.draft().piece(piece), torso.draft().piece(piece).insideDart("waist dart"));
            assertThat(Measured.intake(bodice.draft().piece(piece), "waist dart"))
                    .isBetween(
                            torso.draft().piece(piece).insideDart("waist dart").intake(),
                            torso.draft().piece(piece).insideDart("waist dart").intake() + wider(bodice.draft()));
        }
    }

    /** A narrower angle than the torso's, with longer legs; both by the parabola that is drawn on the closed dart. */
    private static void requireParabola(Piece bodice, InsideDart torso) {
        Vector2D apex = Measured.tip(bodice, "waist dart");
        double half = Measured.angle(bodice, "waist dart") / 2;
        double leg = Measured.leg(bodice, "waist dart", Leg.BEFORE).length();
        assertThat(half).isLessThan(Math.atan(torso.intake() / 2 / apex.getY()));
        assertThat(leg).isGreaterThan(Math.hypot(apex.getY(), torso.intake() / 2));
        double a = apex.getX() - apex.getY() * Math.tan(half);
        double b = sideAtWaist(bodice) - apex.getX() - apex.getY() * Math.tan(half);
        double below = 2 * a * b * Math.sin(half) / Math.pow(Math.sqrt(a) + Math.sqrt(b), 2);
        assertThat(leg).isCloseTo(apex.getY() / Math.cos(half) + below, within(1e-6));
        assertThat(Measured.leg(bodice, "waist dart", Leg.AFTER).length()).isCloseTo(leg, within(1e-6));
    }

    /** Its bust and waist darts share the apex: either turns into the other's place, or both into the side. */
    @Test
    void waistDartsOfTheBodiceTurn() {
        Piece front = TorsoBlock.bodice(body(880, 720, 970), Ease.CLOSE_FITTING)
                .draft()
                .piece("front");
        double sum = Measured.angle(front, "bust dart") + Measured.angle(front, "waist dart");
        Reworked once = Darts.rotate(front, "bust dart", Spot.on("side seam", 120), "side dart");
        Reworked twice = Darts.rotate(once.piece(), "waist dart", Spot.on("armhole", 60), "armhole dart");
        assertThat(Measured.angle(twice.piece(), "side dart") + Measured.angle(twice.piece(), "armhole dart"))
                .isCloseTo(sum, within(1e-9));
        assertThat(Panels.undo(new Reworked(Panels.undo(twice), once.ledger())).sameCloth(front, 1e-9))
                .isTrue();
    }

    /** A double-pointed dart is no wedge: nothing can be turned about its points. */
    @Test
    void waistDartsOfTheTorsoDoNotTurn() {
        Piece front = TorsoBlock.draft(body(880, 720, 970), Ease.CLOSE_FITTING)
                .draft()
                .piece("front");
        assertThatThrownBy(() -> Darts.rotate(front, "waist dart", Spot.on("side seam", 100), "side dart"))
                .isInstanceOf(DraftingException.class)
                .hasMessage(
                        "Rotate 'waist dart' to 'side seam' at 100.0 mm: it is double-pointed, and no part can turn about"
                                + " its points; cut the piece through its widest place first.");
    }

    @Test
    void measuresThatDoNotGoTogetherAreRefused() {
        Measurements body = body(880, 720, 970).with(Measure.NECK_POINT_TO_APEX, Length.mm(190));
        assertThatThrownBy(() -> TorsoBlock.draft(body, Ease.CLOSE_FITTING))
                .isInstanceOf(DraftingException.class)
                .hasMessage(
                        "Draft a torso block for 'figure': front waist length less neck point to apex puts the apex 237 mm"
                                + " above the waist; it must lie between 40 mm and the armhole level at 198 mm.");
    }
}
