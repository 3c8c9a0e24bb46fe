package org.draftingmaths.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.block.TorsoBlock;
import org.draftingmaths.check.Checks;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.dart.Darts;
import org.draftingmaths.fullness.Lengthen;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.measure.Ease;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.piece.ClosedEdge;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Girths;
import org.draftingmaths.piece.InsideDart;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Panels;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Redraw;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.seam.Walk;
import org.draftingmaths.unit.Length;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Blocks made longer and shorter across their waist darts, in every women's size of two published charts. */
class LengthenDartsTest {

    private static final double SAME = 1e-7;

    static Stream<Measurements> sizes() throws IOException {
        return TorsoBlockSizesTest.sizes();
    }

    /** At the waist the widest place of the dart stays, its lower half grows, its width and so the girth of the waist is kept. */
    @ParameterizedTest
    @MethodSource("sizes")
    void atTheWaist(Measurements body) {
        SplittableRandom random = new SplittableRandom(body.name().hashCode());
        Draft block = TorsoBlock.draft(body, Ease.CLOSE_FITTING).draft();
        for (int i = 0; i < 6; i++) {
            double by = random.nextDouble(4, 30) * (i % 2 == 0 ? 1 : -1);
            Draft drawn = block;
            for (Piece piece : block.pieces()) {
                Reworked done = Lengthen.at(piece, "waist line", Length.mm(by));
                Piece now = done.piece();
                for (InsideDart was : piece.insideDarts()) {
                    InsideDart is = now.insideDart(was.name());
                    assertThat(is.oneTip().distance(was.oneTip())).isLessThan(SAME);
                    assertThat(is.oneSide().distance(was.oneSide())).isLessThan(SAME);
                    assertThat(is.otherSide().distance(was.otherSide())).isLessThan(SAME);
                    assertThat(is.otherTip().distance(was.otherTip().add(Vector2D.of(0, -by))))
                            .isLessThan(SAME);
                    assertThat(is.sides().get(0).length())
                            .isCloseTo(is.sides().get(1).length(), within(SAME));
                }
                assertThat(Paper.edge(now, "hem").start().getY())
                        .isCloseTo(Paper.edge(piece, "hem").start().getY() - by, within(SAME));
                assertThat(Girths.closed(now, "bust line")).isCloseTo(Girths.closed(piece, "bust line"), within(SAME));
                assertThat(Girths.closed(now, "waist line"))
                        .as("but for the blend of the side seam")
                        .isCloseTo(Girths.closed(piece, "waist line"), within(3.0));
                assertThat(Panels.undo(done).sameCloth(piece, 1e-9)).isTrue();
                drawn = drawn.with(now);
            }
            requireSewn(drawn);
        }
    }

    /** A bodice between bust and waist: the waist comes down as it is, the points stay, the legs are longer alike. */
    @ParameterizedTest
    @MethodSource("sizes")
    void aBodiceAboveTheWaist(Measurements body) {
        SplittableRandom random = new SplittableRandom(body.name().hashCode());
        Draft block = TorsoBlock.bodice(body, Ease.CLOSE_FITTING).draft();
        for (int i = 0; i < 6; i++) {
            double by = random.nextDouble(4, 20) * (i % 2 == 0 ? 1 : -1);
            double height = random.nextDouble(30, 42);
            Draft drawn = block;
            for (Piece piece : block.pieces()) {
                String centre = "centre " + piece.name();
                double top = Paper.edge(piece, centre).start().getY();
                Reworked done = Lengthen.at(
                        piece,
                        Spot.on(centre, top - height),
                        Spot.on("side seam", arcAt(Paper.edge(piece, "side seam"), height)),
                        Length.mm(by));
                requireDart(piece, done.piece(), by);
                assertThat(Panels.undo(done).sameCloth(piece, 1e-9)).isTrue();
                drawn = drawn.with(done.piece());
            }
            requireSewn(drawn);
        }
    }

    private static void requireDart(Piece was, Piece now, double by) {
        if (was.openings().stream().noneMatch(dart -> dart.name().equals("waist dart"))) {
            return;
        }
        Vector2D tip = Measured.tip(was, "waist dart");
        assertThat(Measured.tip(now, "waist dart").distance(tip)).isLessThan(SAME);
        double least = Double.POSITIVE_INFINITY;
        for (Leg leg : Leg.values()) {
            Vector2D end = Measured.leg(was, "waist dart", leg).start();
            double reach = tip.vectorTo(end.add(Vector2D.of(0, -by))).norm();
            assertThat(Measured.leg(now, "waist dart", leg).length()).isCloseTo(reach, within(0.2));
            least = Math.min(least, reach);
        }
        assertThat(Measured.leg(now, "waist dart", Leg.BEFORE).length())
                .isCloseTo(Measured.leg(now, "waist dart", Leg.AFTER).length(), within(1e-6));
        assertThat(Measured.intake(now, "waist dart")).isCloseTo(Measured.intake(was, "waist dart"), within(0.2));
        for (int i = 0; i < 2; i++) {
            CurvePath before = i == 0 ? Redraw.first(was, "waist") : Redraw.last(was, "waist");
            CurvePath after = i == 0 ? Redraw.first(now, "waist") : Redraw.last(now, "waist");
            Vector2D far = i == 0 ? before.start() : before.end();
            assertThat((i == 0 ? after.start() : after.end()).distance(far.add(Vector2D.of(0, -by))))
                    .isLessThan(SAME);
            assertThat(after.length()).isCloseTo(before.length(), within(0.2));
        }
        // The new base is the waist with its dart closed: the dart can be folded, and moved as any other.
        assertThat(ClosedEdge.of(now, "waist").line().length())
                .isCloseTo(now.edge("waist").length(), within(SAME));
        String other = was.name().equals("front") ? "bust dart" : "shoulder dart";
        Reworked moved = Darts.rotate(now, "waist dart", Spot.on("armhole", 60), "moved dart");
        assertThat(Measured.angle(moved.piece(), "moved dart"))
                .isCloseTo(Measured.angle(now, "waist dart"), within(1e-9));
        assertThat(Measured.angle(now, other)).isCloseTo(Measured.angle(was, other), within(1e-9));
    }

    private static void requireSewn(Draft draft) {
        assertThat(Walk.all(draft))
                .allSatisfy(walk -> assertThat(walk.difference()).isCloseTo(0, within(1e-6)));
        assertThat(Checks.all(draft, Checks.SEAM_TOLERANCE).stream()
                        .filter(found -> found.kind() == Finding.Kind.OUTLINE_CROSSES
                                || found.kind() == Finding.Kind.SEAM_LENGTHS_DIFFER
                                || found.kind() == Finding.Kind.LEGS_UNEQUAL))
                .isEmpty();
    }

    private static double arcAt(CurvePath rising, double height) {
        double low = 0;
        double high = rising.length();
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            boolean under = rising.pointAt(middle).getY() < height;
            low = under ? middle : low;
            high = under ? high : middle;
        }
        return (low + high) / 2;
    }
}
