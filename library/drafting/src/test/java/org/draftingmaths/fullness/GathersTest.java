package org.draftingmaths.fullness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.check.Checks;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.piece.Beside;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Notch;
import org.draftingmaths.piece.Panels;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.piece.Stay;
import org.draftingmaths.piece.Use;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class GathersTest {

    static Stream<Long> seeds() {
        return LongStream.range(0, 200).boxed();
    }

    private static Piece panel(double width, double height) {
        return Drawing.of("panel")
                .from(0, 0)
                .edge("hem", Role.HEM)
                .line(width, 0)
                .edge("side", Role.SEAM)
                .line(width, height)
                .edge("top", Role.SEAM)
                .line(0, height)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .notch("top", 40)
                .notch("top", width - 60)
                .piece();
    }

    private static Notch first(Piece piece) {
        return piece.notches().get(0);
    }

    private static Notch last(Piece piece) {
        return new Notch("top", piece.notches().get(1).arc(), Beside.AFTER);
    }

    /** The ratio holds between the notches alone, the stretches outside them keep their lengths, and a mate sewn there matches. */
    @ParameterizedTest
    @MethodSource("seeds")
    void theRatioIsThatOfTheInterval(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double width = random.nextDouble(250, 350);
        Piece panel = panel(width, random.nextDouble(300, 600));
        double ratio = random.nextDouble(1.3, 3);
        int count = random.nextInt(1, 7);
        double share = random.nextBoolean() ? 1 : random.nextDouble(0.3, 1);
        Reworked done = Gathers.spread(panel, first(panel), last(panel), "hem", count, ratio, share, Stay.CENTRE);
        Piece piece = done.piece();
        double finished = width - 100;

        assertThat(piece.openings()).as("seed %d", seed).hasSize(count);
        assertThat(piece.openings())
                .allSatisfy(opening -> assertThat(opening.mouth().use()).isEqualTo(new Use.Left(Use.Kind.GATHERS)));
        if (share == 1) {
            // Straight edges, parallel gaps: what is drawn across is straight.
            assertThat(Gathers.ratio(piece, first(piece), last(piece))).isCloseTo(ratio, within(1e-9));
            assertThat(Lengths.drawn(piece, "hem")).isCloseTo(width + (ratio - 1) * finished, within(1e-9));
        }
        assertThat(Lengths.folded(piece, Lengths.start("top"), first(piece))).isCloseTo(40, within(1e-9));
        assertThat(Lengths.folded(piece, last(piece), Lengths.end(piece, "top")))
                .isCloseTo(60, within(1e-9));
        assertThat(Panels.undo(done).sameCloth(panel, 1e-9)).isTrue();
    }

    /** Sewn to a yoke with the surplus declared of that interval, the seam matches interval by interval. */
    @Test
    void sewnToItsYokeIntervalByInterval() {
        Piece panel = panel(300, 400);
        Piece gathered = Gathers.spread(panel, first(panel), last(panel), "hem", 5, 1.8, 1, Stay.CENTRE)
                .piece();
        Piece yoke = panel.named("yoke");
        Seam seam = new Seam(
                "yoke seam",
                Seam.Mate.of("panel", "top"),
                Seam.Mate.of("yoke", "top"),
                List.of(new Seam.Held(2, 0.8 * 200, Seam.How.GATHERS, "fullness below the yoke")));
        assertThat(Checks.all(new Draft("blouse", List.of(gathered, yoke), List.of(seam)), 1e-6))
                .isEmpty();
        Seam flat = Seam.flat("yoke seam", Seam.Mate.of("panel", "top"), Seam.Mate.of("yoke", "top"));
        assertThat(Checks.all(new Draft("blouse", List.of(gathered, yoke), List.of(flat)), 1e-6))
                .extracting(Finding::excess)
                .singleElement()
                .satisfies(excess -> assertThat(excess).isCloseTo(160, within(1e-9)));
    }

    @Test
    void aCrownIsRaisedOverTheGathersAlone() {
        Piece panel = panel(300, 400);
        Reworked spread = Gathers.spread(panel, first(panel), last(panel), "hem", 5, 1.8, 1, Stay.CENTRE);
        Reworked crowned = Gathers.crown(spread.piece(), first(panel), last(panel), 12);
        CurvePath top = Paper.edge(crowned.piece(), "top");
        assertThat(top.bounds().getMax().getY()).isCloseTo(412, within(1e-6));
        // The top runs from the side (x = 460) to the fold: the crown reaches from 40 mm to 40 + 360 mm along it.
        assertThat(top.pointAt(39).getY()).isEqualTo(400, within(1e-9));
        assertThat(top.end().distance(Vector2D.of(0, 400))).isLessThan(1e-9);
        assertThat(top.pointAt(top.length() - 59).getY()).isEqualTo(400, within(1e-9));
        assertThat(top.length()).isBetween(460.0, 463.0);
        assertThat(Panels.undo(crowned).sameCloth(spread.piece(), 1e-9)).isTrue();
    }

    @Test
    void tooFewGathersAreFound() {
        Piece panel = panel(300, 400);
        Piece slight = Gathers.spread(panel, first(panel), last(panel), "hem", 2, 1.2, 1, Stay.CENTRE)
                .piece();
        assertThat(Gathers.finding(slight, first(panel), last(panel), 1.3))
                .map(finding -> finding.sentence(Steps.DEFAULT))
                .contains(
                        "'top' of 'panel': the gathers are so few that they look like a mistake; measured 1.20, expected 1.30,"
                                + " off by -0.1000, tolerance 0.0000.");
        assertThat(Gathers.finding(slight, first(panel), last(panel), 1.1)).isEmpty();
    }

    @Test
    void badInputIsRefusedInPlainWords() {
        Piece panel = panel(300, 400);
        assertThatThrownBy(() -> Gathers.spread(panel, last(panel), first(panel), "hem", 2, 1.5, 1, Stay.CENTRE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(
                        "Gathers lie between two marks of one edge, the first nearer its start: 'top' at 240.0 mm and"
                                + " 'top' at 40.0 mm.");
        assertThatThrownBy(() -> Gathers.spread(panel, first(panel), last(panel), "hem", 2, 0.8, 1, Stay.CENTRE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(
                        "Gathers are added by 1 slash or more, at a ratio of more than 1, with a share of 0 to 1 at the"
                                + " other edge: 2, 0.8, 1.0.");
        assertThatThrownBy(() -> Gathers.crown(panel, first(panel), last(panel), 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("A crown is higher than 0 mm: 0.0 mm.");
    }
}
