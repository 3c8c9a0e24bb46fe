package org.draftingmaths.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.draftingmaths.block.TorsoBlock;
import org.draftingmaths.dart.Darts;
import org.draftingmaths.measure.Ease;
import org.draftingmaths.measure.Measure;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Opening;
import org.draftingmaths.piece.Panels;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.seam.SeamTruing;
import org.draftingmaths.seam.Walk;
import org.draftingmaths.unit.Length;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Side seam and shoulder broken by darts, trued in every women's size of two published charts. */
class DartedSeamSizesTest {

    static Stream<Measurements> sizes() throws IOException {
        return TorsoBlockSizesTest.sizes();
    }

    /** A bodice with half the bust dart in the side seam, its back by some mm too long in the side and too short in the shoulder. */
    private static Draft bodice(Measurements body) {
        Measurements other = body.with(
                        Measure.ARMHOLE_DEPTH,
                        body.length(Measure.ARMHOLE_DEPTH).minus(Length.mm(3)))
                .with(
                        Measure.SHOULDER_LENGTH,
                        body.length(Measure.SHOULDER_LENGTH).minus(Length.mm(2)));
        Draft own = TorsoBlock.bodice(body, Ease.CLOSE_FITTING).draft();
        Piece front = own.piece("front");
        double middle = front.edge("side seam").length() / 2;
        return own.with(Darts.rotateShare(front, "bust dart", Spot.on("side seam", middle), "side dart", 0.5)
                        .piece())
                .with(TorsoBlock.bodice(other, Ease.CLOSE_FITTING).draft().piece("back"));
    }

    @ParameterizedTest
    @MethodSource("sizes")
    void dartedSeamsMatchAndTheirDartsStay(Measurements body) {
        Draft draft = bodice(body);
        for (Seam seam : draft.seams()) {
            assertThat(Math.abs(Walk.of(draft, seam).difference()))
                    .as("%s", seam.name())
                    .isGreaterThan(1);
            List<SeamTruing.May> may = Stream.of(seam.first(), seam.second())
                    .flatMap(side ->
                            Stream.of(Seam.End.values()).<SeamTruing.May>map(end -> new SeamTruing.AtEnd(side, end, 1)))
                    .toList();
            SeamTruing.Trued trued = SeamTruing.of(draft, seam, may, 6);
            assertThat(Walk.of(trued.draft(), seam).worst().difference()).isCloseTo(0, within(1e-6));
            assertThat(trued.moves()).hasSize(4);
            for (Reworked done : trued.pieces()) {
                Piece was = draft.piece(done.piece().name());
                requireDartsStay(was, done.piece());
                assertThat(Panels.undo(done).sameCloth(was, 1e-9)).isTrue();
            }
        }
    }

    private static void requireDartsStay(Piece was, Piece now) {
        for (Opening opening : was.openings()) {
            String dart = opening.name();
            for (Leg leg : Leg.values()) {
                assertThat(Measured.leg(now, dart, leg)).isEqualTo(Measured.leg(was, dart, leg));
            }
            assertThat(Measured.leg(now, dart, Leg.BEFORE).length())
                    .isCloseTo(Measured.leg(now, dart, Leg.AFTER).length(), within(1e-6));
        }
    }
}
