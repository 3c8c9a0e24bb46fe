package org.draftingmaths.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.block.TorsoBlock;
import org.draftingmaths.dart.Darts;
import org.draftingmaths.exchange.DraftFiles;
import org.draftingmaths.exchange.Limits;
import org.draftingmaths.fullness.Spread;
import org.draftingmaths.measure.Ease;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.piece.Beside;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Notch;
import org.draftingmaths.piece.Panels;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.piece.Slash;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.piece.Unfold;
import org.draftingmaths.piece.Use;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Drafts of every published size, and what each operation makes of them, as files and back: the same to the last bit. */
class DraftFilesSizesTest {

    private static final Map<String, UnaryOperator<Piece>> OPERATIONS = operations();

    static Stream<Measurements> sizes() throws IOException {
        return TorsoBlockSizesTest.sizes();
    }

    private static Map<String, UnaryOperator<Piece>> operations() {
        Map<String, UnaryOperator<Piece>> operations = new LinkedHashMap<>();
        operations.put(
                "rotation",
                front -> Darts.rotate(front, "bust dart", Spot.on("side seam", 90), "side dart")
                        .piece());
        operations.put(
                "rotation by share",
                front -> Darts.rotateShare(front, "bust dart", Spot.on("side seam", 90), "side dart", 0.4)
                        .piece());
        operations.put(
                "division",
                front -> Darts.divide(
                                front,
                                "bust dart",
                                List.of(
                                        new Darts.Part(Spot.on("side seam", 90), "side dart", 0.5),
                                        new Darts.Part(Spot.on("armhole", 80), "armhole dart", 0.5)))
                        .piece());
        operations.put(
                "gathers",
                front -> Darts.leave(front, "bust dart", Use.Kind.GATHERS).piece());
        operations.put(
                "set-back", front -> Darts.setBack(front, "bust dart", 31.7).piece());
        operations.put("cut", front -> Panels.cut(front, slash()).piece());
        operations.put(
                "hinged spread", front -> Spread.hinged(front, slash(), 33.3).piece());
        operations.put(
                "parallel spread",
                front -> Spread.parallel(front, slash(), 12.7).piece());
        operations.put("unfolding", front -> Unfold.at(front, "centre front").piece());
        operations.put(
                "mirroring",
                front -> Panels.mirror(front, Vector2D.of(3, 1), Vector2D.of(0.1, 1))
                        .piece());
        operations.put("notching", front -> front.notched(new Notch("armhole", 77.7, Beside.AFTER)));
        return operations;
    }

    private static Slash slash() {
        return Slash.straight("slash", Spot.on("side seam", 60), Spot.on("armhole", 40));
    }

    @ParameterizedTest
    @MethodSource("sizes")
    void comeBackBitForBit(Measurements body) {
        List<Draft> drafts = new ArrayList<>();
        Draft bodice = TorsoBlock.bodice(body, Ease.CLOSE_FITTING).draft();
        drafts.add(bodice);
        drafts.add(TorsoBlock.draft(body, Ease.CLOSE_FITTING).draft());
        OPERATIONS.forEach((operation, make) -> {
            Piece made = make.apply(bodice.piece("front"));
            assertThat(made).as(operation).isNotEqualTo(bodice.piece("front"));
            drafts.add(new Draft(
                    operation,
                    List.of(made, bodice.piece("back")),
                    List.of(new Seam(
                            "shoulder",
                            Seam.Mate.of("front", "shoulder"),
                            Seam.Mate.backwards("back", "shoulder"),
                            List.of(new Seam.Held(1, -body.name().length() / 3.0, Seam.How.STRETCH, "bias"))))));
        });
        for (Draft draft : drafts) {
            String text = DraftFiles.text(draft);
            Draft again = DraftFiles.parse(draft.name(), text, Limits.DEFAULT);
            assertThat(again).as(draft.name()).isEqualTo(draft);
            assertThat(DraftFiles.text(again)).as(draft.name()).isEqualTo(text);
            assertThat(firstDifference(draft, again)).isEmpty();
        }
    }

    /** {@code equals} of records tells 0.0 from -0.0; the base curves are compared once more by their bits. */
    private static Optional<String> firstDifference(Draft draft, Draft again) {
        for (Piece piece : draft.pieces()) {
            for (int i = 0; i < piece.edges().size(); i++) {
                Vector2D end = piece.edges().get(i).base().end();
                Vector2D same = again.piece(piece.name()).edges().get(i).base().end();
                if (Double.doubleToRawLongBits(end.getX()) != Double.doubleToRawLongBits(same.getX())
                        || Double.doubleToRawLongBits(end.getY()) != Double.doubleToRawLongBits(same.getY())) {
                    return Optional.of(piece.name() + " " + end + " " + same);
                }
            }
        }
        return Optional.empty();
    }
}
