package org.draftingmaths.piece;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.check.Checks;
import org.draftingmaths.dart.Darts;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.seam.Walk;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class UnfoldTest {

    static Stream<Long> seeds() {
        return LongStream.range(0, 100).boxed();
    }

    private static Piece front() {
        return Drawing.of("front")
                .from(0, 0)
                .edge("waist", Role.SEAM)
                .line(70, 0)
                .dart("waist dart", 90, 150, 110, 0, 20, Leg.BEFORE)
                .line(210, 0)
                .edge("side seam", Role.SEAM)
                .line(230, 190)
                .edge("armhole", Role.FINISHED)
                .curve(190, 190, 170, 260, 180, 350)
                .edge("shoulder", Role.SEAM)
                .line(70, 390)
                .edge("neckline", Role.FINISHED)
                .curve(70, 340, 40, 320, 0, 320)
                .edge("centre front", Role.FOLD)
                .line(0, 0)
                .level("bust line", 0, 190, 230, 190)
                .notch("side seam", 60)
                .grain(20, 40, 20, 280)
                .piece();
    }

    /** Twice the area (JTS measures it), every length twice over, folded back by undo. */
    @Test
    void theWholeIsTwiceTheHalf() {
        Reworked whole = Unfold.at(front(), "centre front");
        Piece piece = whole.piece();
        assertThat(piece.area()).isCloseTo(2 * front().area(), within(1e-8));
        assertThat(Flat.polygon(Paper.outline(piece)).getArea())
                .isCloseTo(2 * Flat.polygon(Paper.outline(front())).getArea(), within(1e-6));
        assertThat(Checks.piece(piece, 1e-6)).isEmpty();
        for (String edge : new String[] {"waist", "side seam", "armhole", "shoulder", "neckline"}) {
            assertThat(Lengths.folded(piece, "mirrored " + edge))
                    .isCloseTo(Lengths.folded(front(), edge), within(1e-9));
        }
        Vector2D centre = Paper.edge(piece, "neckline").end();
        assertThat(Paper.edge(piece, "mirrored neckline").end().distance(centre))
                .isLessThan(1e-9);
        assertThat(piece.notches())
                .contains(new Notch("neckline", front().edge("neckline").length(), Beside.BEFORE))
                .contains(new Notch("mirrored waist", 0, Beside.BEFORE));
        assertThat(SameCloth.differences(Panels.undo(whole), front(), 1e-9)).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void anyPieceUnfoldsAndFoldsBack(long seed) {
        Piece half = RandomPieces.piece(seed);
        Reworked whole = Unfold.at(half, "edge 0");
        assertThat(whole.piece().area()).as("seed %d", seed).isCloseTo(2 * half.area(), within(1e-6));
        assertThat(SameCloth.differences(Panels.undo(whole), half, 1e-9))
                .as("seed %d", seed)
                .isEmpty();
    }

    /** Unfolded first, a dart may cross the centre: the left dart turned into the right shoulder. */
    @Test
    void aDartCrossesTheCentre() {
        Reworked whole = Unfold.at(front(), "centre front");
        double angle = Measured.angle(whole.piece(), "mirrored waist dart");
        Reworked moved = Darts.rotateBy(
                whole.piece(),
                "mirrored waist dart",
                Spot.on("shoulder", 60),
                "shoulder dart",
                angle,
                Stay.at("side seam", 30));
        assertThat(Measured.angle(moved.piece(), "shoulder dart")).isCloseTo(angle, within(1e-12));
        assertThat(moved.piece().area()).isCloseTo(whole.piece().area(), within(1e-7));
        assertThat(SameCloth.differences(Panels.undo(moved), whole.piece(), 1e-9))
                .isEmpty();
    }

    private static Piece back() {
        return Drawing.of("back")
                .from(0, 0)
                .edge("waist", Role.SEAM)
                .line(190, 0)
                .edge("side seam", Role.SEAM)
                .line(210, 190)
                .edge("top", Role.FINISHED)
                .line(0, 190)
                .edge("centre back", Role.FOLD)
                .line(0, 0)
                .notch("side seam", 60)
                .piece();
    }

    private static Piece strap() {
        return Drawing.of("strap")
                .from(0, 0)
                .edge("end", Role.SEAM)
                .line(40, 0)
                .edge("right", Role.FINISHED)
                .line(40, 300)
                .edge("top", Role.FINISHED)
                .line(0, 300)
                .edge("left", Role.FINISHED)
                .line(0, 0)
                .piece();
    }

    /** Each seam of the half has one on the other half, as long and with as many notches; a seam over both halves is one seam; twice is once. */
    @Test
    void bothHalvesAreSewn() {
        Seam side = Seam.flat("side", Seam.Mate.of("front", "side seam"), Seam.Mate.of("back", "side seam"));
        Seam strap = Seam.flat("strap", Seam.Mate.of("back", "top").between(50, 90), Seam.Mate.of("strap", "end"))
                .caughtIn();
        Seam.Mate half = Seam.Mate.of("front", "waist");
        Seam.Mate belt = Seam.Mate.backwards("back", "waist");
        Seam waist = new Seam(
                "waist",
                half.reversed().mirrored().then(half),
                belt.then(belt.reversed().mirrored()),
                List.of(new Seam.Held(1, 40, Seam.How.EASE, "to the back")));
        Draft drawn = new Draft("top", List.of(front(), back(), strap()), List.of(side, strap, waist));
        Draft opened = drawn.with(Unfold.at(front(), "centre front").piece())
                .with(Unfold.at(back(), "centre back").piece());
        Draft whole = Unfold.bothHalves(opened);
        assertThat(whole.seams())
                .extracting(Seam::name)
                .containsExactly("side", "mirrored side", "strap", "mirrored strap", "waist");
        assertThat(whole.seams().get(0)).isEqualTo(side);
        assertThat(whole.seams().get(1))
                .isEqualTo(Seam.flat(
                        "mirrored side",
                        Seam.Mate.of("front", "mirrored side seam"),
                        Seam.Mate.of("back", "mirrored side seam")));
        assertThat(whole.seams().get(3))
                .isEqualTo(Seam.flat(
                                "mirrored strap",
                                Seam.Mate.of("back", "mirrored top").between(50, 90),
                                Seam.Mate.of("strap", "end").mirrored())
                        .caughtIn());
        // What was said to be on the other half is on its own edge now.
        assertThat(whole.seams().get(4).first())
                .isEqualTo(Seam.Mate.backwards("front", "mirrored waist").then(half));
        assertThat(whole.seams().get(4).held()).isEqualTo(waist.held());
        List<Walk> walks = Walk.all(whole);
        for (int i = 0; i < 4; i += 2) {
            List<Walk.Interval> drawnHalf = walks.get(i).intervals();
            List<Walk.Interval> image = walks.get(i + 1).intervals();
            assertThat(image)
                    .extracting(Walk.Interval::first, Walk.Interval::second)
                    .containsExactlyElementsOf(drawnHalf.stream()
                            .map(each -> tuple(each.first(), each.second()))
                            .toList());
        }
        assertThat(Unfold.bothHalves(whole)).isEqualTo(whole);
        assertThat(Unfold.bothHalves(drawn)).isEqualTo(drawn);
    }

    @Test
    void onlyAStraightFoldIsUnfolded() {
        assertThatThrownBy(() -> Unfold.at(front(), "side seam"))
                .isInstanceOf(DraftingException.class)
                .hasMessage("Open 'front' out at 'side seam': 'side seam' is not a fold.");
        Piece bent = Drawing.of("bent")
                .from(0, 0)
                .edge("hem", Role.HEM)
                .line(200, 0)
                .edge("side", Role.SEAM)
                .line(200, 200)
                .line(0, 200)
                .edge("fold", Role.FOLD)
                .curve(10, 130, 10, 70, 0, 0)
                .piece();
        assertThatThrownBy(() -> Unfold.at(bent, "fold"))
                .isInstanceOf(DraftingException.class)
                .hasMessage(
                        "Open 'bent' out at 'fold': the fold is not straight, and cloth folds on a straight line only.");
    }
}
