package org.draftingmaths.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.apache.commons.math3.analysis.integration.RombergIntegrator;
import org.draftingmaths.block.TorsoBlock;
import org.draftingmaths.check.Checks;
import org.draftingmaths.contour.Armholes;
import org.draftingmaths.contour.Crossing;
import org.draftingmaths.contour.Necklines;
import org.draftingmaths.contour.Recut;
import org.draftingmaths.curve.Curve;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.dart.Darts;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.measure.Ease;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Panels;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Redraw;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.seam.Walk;
import org.draftingmaths.unit.Length;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Necklines and armholes drawn anew over the darts in them, in every women's size of two published charts. The blocks' shoulder darts are moved
 * into the edge first; the proof is the folding: turned about its point by its angle, what follows a dart goes on from what comes before it
 * without a corner, and the whole is the one curve that was drawn.
 */
class ContourDartsTest {

    private static final Crossing NECK = Crossing.of("shoulder", "front", "back", "neckline");
    private static final Crossing ARM = Crossing.of("shoulder", "front", "back", "armhole");
    private static final Map<String, String> SHOULDER_DARTS = Map.of("front", "bust dart", "back", "shoulder dart");

    static Stream<Measurements> sizes() throws IOException {
        return TorsoBlockSizesTest.sizes();
    }

    private static Length mm(double mm) {
        return Length.mm(mm);
    }

    /** Both blocks with the darts of their shoulders moved into an edge. */
    private static List<Draft> moved(Measurements body, String edge, double share) {
        return Stream.of(
                        TorsoBlock.draft(body, Ease.CLOSE_FITTING).draft(),
                        TorsoBlock.bodice(body, Ease.CLOSE_FITTING).draft())
                .map(block -> {
                    Draft draft = block;
                    for (Piece piece : block.pieces()) {
                        Spot to = Spot.on(edge, share * piece.edge(edge).length());
                        draft = draft.with(Darts.rotate(piece, SHOULDER_DARTS.get(piece.name()), to, "moved dart")
                                .piece());
                    }
                    return draft;
                })
                .toList();
    }

    private static AffineTransformMatrix2D fold(Piece piece) {
        Vector2D tip = Measured.tip(piece, "moved dart");
        Vector2D to = tip.vectorTo(Measured.leg(piece, "moved dart", Leg.BEFORE).start());
        Vector2D from =
                tip.vectorTo(Measured.leg(piece, "moved dart", Leg.AFTER).start());
        return AffineTransformMatrix2D.createRotation(tip, Math.atan2(from.signedArea(to), from.dot(to)));
    }

    private static double turn(Vector2D in, Vector2D out) {
        return Math.abs(Math.atan2(in.signedArea(out), in.dot(out)));
    }

    /** The point stays and the legs are alike; folded, the edge is one curve of one bend that leaves and arrives as it must. */
    private static void requireFolded(Piece was, Piece now, String edge) {
        assertThat(Measured.tip(now, "moved dart").distance(Measured.tip(was, "moved dart")))
                .isLessThan(1e-9);
        assertThat(Measured.angle(now, "moved dart")).isCloseTo(Measured.angle(was, "moved dart"), within(1e-9));
        assertThat(Measured.leg(now, "moved dart", Leg.BEFORE).length())
                .isCloseTo(Measured.leg(now, "moved dart", Leg.AFTER).length(), within(1e-9));
        CurvePath before = Redraw.first(now, edge);
        CurvePath after = Redraw.last(now, edge).transformed(fold(now));
        assertThat(before.end().distance(after.start())).isLessThan(1e-6);
        assertThat(turn(before.endTangent(), after.startTangent())).isLessThan(1e-6);
        assertThat(before.curves()).hasSize(1);
        assertThat(after.curves()).hasSize(1);
        double bend = Math.signum(before.curves().get(0).curvature(0.5));
        for (Curve curve : List.of(before.curves().get(0), after.curves().get(0))) {
            for (int i = 0; i <= 20; i++) {
                assertThat(curve.curvature(i / 20.0) * bend).isGreaterThanOrEqualTo(-1e-12);
            }
        }
    }

    private static double judged(CurvePath path) {
        Curve curve = path.curves().get(0);
        return new RombergIntegrator(1e-12, 1e-10, 5, 25)
                .integrate(1_000_000, t -> curve.derivative(t).norm(), 0, 1);
    }

    private static void requireDrawn(Draft block, Recut cut, String edge) {
        for (Piece was : block.pieces()) {
            Piece now = cut.draft().piece(was.name());
            requireFolded(was, now, edge);
            assertThat(judged(Redraw.first(now, edge)) + judged(Redraw.last(now, edge)))
                    .isCloseTo(now.edge(edge).length(), within(1e-6));
        }
        assertThat(Walk.all(cut.draft()))
                .allSatisfy(walk -> assertThat(walk.difference()).isCloseTo(0, within(1e-6)));
        assertThat(Checks.all(cut.draft(), Checks.SEAM_TOLERANCE).stream()
                        .filter(found -> found.kind() == Finding.Kind.OUTLINE_CROSSES
                                || found.kind() == Finding.Kind.SEAM_LENGTHS_DIFFER
                                || found.kind() == Finding.Kind.LEGS_UNEQUAL))
                .isEmpty();
        assertThat(Panels.undo(cut.front()).sameCloth(block.piece("front"), 1e-9))
                .isTrue();
        assertThat(Panels.undo(cut.back()).sameCloth(block.piece("back"), 1e-9)).isTrue();
    }

    /** Between the two pieces, both folded: the angles at the shoulder, measured through the cloth, make half a turn. */
    private static double atShoulder(Piece piece, String edge, boolean edgeStarts) {
        CurvePath shoulder = piece.edge("shoulder").base();
        Vector2D seam = edgeStarts
                ? Redraw.last(piece, "shoulder").endTangent().negate()
                : Redraw.first(piece, "shoulder").startTangent();
        Vector2D line = edgeStarts
                ? Redraw.first(piece, edge).startTangent()
                : Redraw.last(piece, edge).endTangent().negate();
        assertThat(shoulder.length()).isPositive();
        return Math.acos(seam.dot(line));
    }

    @ParameterizedTest
    @MethodSource("sizes")
    void necklinesOverNeckDarts(Measurements body) {
        SplittableRandom random = new SplittableRandom(body.name().hashCode());
        for (Draft block : moved(body, "neckline", 0.5)) {
            for (int i = 0; i < 6; i++) {
                double along = random.nextDouble(-5, 25);
                double front = random.nextDouble(-5, 50);
                double back = random.nextDouble(2, 22) + 0.35 * Math.max(0, along);
                Recut cut = Necklines.reshape(block, NECK, Necklines.Wanted.round(mm(along), mm(front), mm(back)));
                requireDrawn(block, cut, "neckline");
                assertThat(atShoulder(cut.draft().piece("front"), "neckline", true)
                                + atShoulder(cut.draft().piece("back"), "neckline", true))
                        .isCloseTo(Math.PI, within(1e-7));
                for (Piece piece : cut.draft().pieces()) {
                    String centre = "centre " + piece.name();
                    assertThat(turn(
                                    Redraw.last(piece, "neckline").endTangent(),
                                    Redraw.first(piece, centre).startTangent()))
                            .isCloseTo(Math.PI / 2, within(1e-9));
                    assertThat(block.piece(piece.name()).edge(centre).length()
                                    - piece.edge(centre).length())
                            .isCloseTo(piece.name().equals("front") ? front : back, within(1e-9));
                    assertThat(block.piece(piece.name()).edge("shoulder").length()
                                    - piece.edge("shoulder").length())
                            .isCloseTo(along, within(1e-9));
                }
            }
        }
    }

    /** The darts lie above the middle of the armhole: lower down, those of the largest backs would run along it. */
    @ParameterizedTest
    @MethodSource("sizes")
    void armholesOverDarts(Measurements body) {
        SplittableRandom random = new SplittableRandom(body.name().hashCode());
        for (Draft block : moved(body, "armhole", 0.6)) {
            for (int i = 0; i < 6; i++) {
                double shoulder = random.nextDouble(-5, 20);
                double lower = random.nextDouble(-8, 20);
                Recut cut = Armholes.reshape(
                        block,
                        ARM,
                        Armholes.Wanted.SAME.shoulderIn(mm(shoulder)).lower(mm(lower)));
                requireDrawn(block, cut, "armhole");
                for (Piece piece : cut.draft().pieces()) {
                    assertThat(atShoulder(piece, "armhole", false)).isCloseTo(Math.PI / 2, within(1e-7));
                    assertThat(block.piece(piece.name()).edge("side seam").length()
                                    - piece.edge("side seam").length())
                            .isCloseTo(lower, within(1e-6));
                }
            }
        }
    }

    /** Lowered past the point of the dart nothing of it is left: refused with its place, and drawn when the point is spared. */
    @ParameterizedTest
    @MethodSource("sizes")
    void aNecklineBeyondTheDartsPointIsRefused(Measurements body) {
        Draft block = moved(body, "neckline", 0.5).get(0);
        assertThatThrownBy(() -> Necklines.reshape(block, NECK, Necklines.Wanted.round(mm(95), mm(20), mm(180))))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining("Draw 'neckline' over 'moved dart'")
                .hasMessageContaining("move the dart");
    }
}
