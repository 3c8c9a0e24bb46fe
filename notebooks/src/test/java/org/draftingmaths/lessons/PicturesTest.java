package org.draftingmaths.lessons;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.draftingmaths.block.TorsoBlock;
import org.draftingmaths.dart.Darts;
import org.draftingmaths.exchange.Figure;
import org.draftingmaths.exchange.Svg;
import org.draftingmaths.measure.Ease;
import org.draftingmaths.measure.Measure;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.measure.ProportionRules;
import org.draftingmaths.measure.Wearer;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.unit.Length;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The README's pictures are what the library draws today. Run with {@code -Dpictures=store} to draw them anew. */
class PicturesTest {

    static Stream<Arguments> pictures() {
        return Stream.of(Arguments.of("embed.svg", embed()), Arguments.of("verify.svg", verify()));
    }

    private static String embed() {
        Measurements body = Measurements.of("38", Wearer.ADULT)
                .with(Measure.BUST, Length.cm(88))
                .with(Measure.WAIST, Length.cm(72))
                .with(Measure.HIP, Length.cm(97))
                .filledBy(ProportionRules.TORSO);
        Piece front = TorsoBlock.bodice(body, Ease.CLOSE_FITTING).draft().piece("front");
        Piece moved = Darts.rotate(front, "bust dart", Spot.on("side seam", 120), "side dart")
                .piece();
        return Svg.sketch(
                Figure.of("Bodice front", front), Figure.over("Its bust dart in the side seam", moved, front));
    }

    private static String verify() {
        Piece front = Drawing.of("front")
                .from(0, 0)
                .edge("hem", Role.HEM)
                .line(240, 0)
                .edge("side seam", Role.SEAM)
                .curve(240, 200, 222, 390, 222, 590)
                .edge("waist", Role.SEAM)
                .curve(190, 590, 150, 597, 120, 600)
                .dart("dart", 111, 490, 102, 600, 0, Leg.AFTER)
                .curve(68, 597, 34, 594, 0, 594)
                .edge("centre front", Role.FOLD)
                .line(0, 0)
                .piece();
        Piece back = Drawing.of("back")
                .from(0, 0)
                .edge("hem", Role.HEM)
                .curve(80, 0, 160, -4, 240, -4)
                .edge("side seam", Role.SEAM)
                .line(240, 0)
                .curve(240, 200, 222, 390, 222, 590)
                .edge("waist", Role.SEAM)
                .curve(150, 590, 70, 594, 0, 594)
                .edge("centre back", Role.FOLD)
                .line(0, 0)
                .piece();
        return Svg.sketch(Figure.of("Front", front), Figure.of("Back, its side seam 4 mm too long", back));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("pictures")
    void pictureIsOfToday(String file, String drawn) throws IOException {
        Path path = Path.of("pictures", file);
        if ("store".equals(System.getProperty("pictures"))) {
            Files.writeString(path, drawn);
        }
        assertThat(Files.readString(path)).isEqualTo(drawn);
    }
}
