package org.draftingmaths.dart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.dart.DartAccount.Fate;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Panels;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Slash;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.piece.Use;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every degree of every dart is accounted for. */
class DartAccountTest {

    private static final double WHOLE = 2 * Math.atan(20.0 / 150);

    static Stream<Long> seeds() {
        return LongStream.range(0, 100).boxed();
    }

    /** A waist dart of 2 atan(20/150) about (90, 150). */
    private static Drawing front() {
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
                .line(0, 0);
    }

    private static DartAccount.Line last(DartAccount account) {
        return account.lines().get(account.lines().size() - 1);
    }

    /** Rotations, divisions and leavings in any number: the six fates always come to the whole, and nothing is lost. */
    @ParameterizedTest
    @MethodSource("seeds")
    void nothingIsLostByTheLibrarysOwnOperations(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Piece start = front().piece();
        double a = random.nextDouble(0.1, 0.4);
        double b = random.nextDouble(0.1, 0.4);
        List<Reworked> done = new ArrayList<>();
        done.add(Darts.divide(
                start,
                "waist dart",
                List.of(
                        new Darts.Part(Spot.on("shoulder", random.nextDouble(10, 100)), "shoulder dart", a),
                        new Darts.Part(Spot.on("side seam", random.nextDouble(40, 150)), "side dart", b))));
        done.add(Darts.leave(done.get(0).piece(), "shoulder dart", Use.Kind.EASE));
        done.add(Darts.rotate(
                done.get(1).piece(), "side dart", Spot.on("armhole", random.nextDouble(20, 120)), "armhole dart"));
        done.add(Darts.setBack(done.get(2).piece(), "armhole dart", 15));
        done.add(Darts.leave(done.get(3).piece(), "waist dart", seed % 2 == 0 ? Use.Kind.GATHERS : Use.Kind.FLARE));
        DartAccount account = DartAccount.of(start, done);
        assertThat(account.lines()).hasSize(6);
        assertThat(account.lines()).allSatisfy(line -> {
            assertThat(line.whole()).isCloseTo(WHOLE, within(1e-12));
            assertThat(line.lost()).as("seed %d", seed).isCloseTo(0, within(1e-12));
        });
        DartAccount.Line line = last(account);
        assertThat(line.spent(Fate.EASED)).isCloseTo(a * WHOLE, within(1e-12));
        assertThat(line.spent(Fate.STITCHED)).isCloseTo(b * WHOLE, within(1e-12));
        assertThat(line.spent(seed % 2 == 0 ? Fate.GATHERED : Fate.FLARED))
                .isCloseTo((1 - a - b) * WHOLE, within(1e-12));
        assertThat(account.findings(1e-9)).isEmpty();
    }

    @Test
    void theLinesAreSentences() {
        Piece start = front().piece();
        Reworked half = Darts.rotateShare(start, "waist dart", Spot.on("side seam", 60), "side dart", 0.5);
        Reworked left = Darts.leave(half.piece(), "waist dart", Use.Kind.GATHERS);
        assertThat(DartAccount.of(start, List.of(half, left)).ledger().sentences(Steps.DEFAULT))
                .containsExactly(
                        "At first: of 15.2° at the apex of 'waist dart', 15.2° stitched; nothing is lost.",
                        "After step 1: of 15.2° at the apex of 'waist dart', 15.2° stitched; nothing is lost.",
                        "After step 2: of 15.2° at the apex of 'waist dart', 7.6° stitched, 7.6° gathered; nothing is"
                                + " lost.");
    }

    /** The classic mistake: the dart is drawn anew at the shoulder with the width it had at the waist. */
    @Test
    void aDartMovedByItsWidthLosesAngle() {
        Piece start = front().piece();
        Vector2D apex = Vector2D.of(90, 150);
        double leg = 230;
        double kept = 2 * Math.asin(20 / leg);
        Vector2D one = apex.add(Vector2D.of(Math.sin(0.2), Math.cos(0.2)).multiply(leg));
        Vector2D other =
                apex.add(Vector2D.of(Math.sin(0.2 - kept), Math.cos(0.2 - kept)).multiply(leg));
        Piece wrong = Drawing.of("front")
                .from(0, 0)
                .edge("waist", Role.SEAM)
                .line(170, 0)
                .edge("side seam", Role.SEAM)
                .line(230, 190)
                .edge("armhole", Role.FINISHED)
                .curve(190, 190, 170, 260, 180, 350)
                .edge("shoulder", Role.SEAM)
                .line(one.getX(), one.getY())
                .dart("shoulder dart", apex.getX(), apex.getY(), other.getX(), other.getY(), 20, Leg.AFTER)
                .line(70, 390)
                .edge("neckline", Role.FINISHED)
                .curve(70, 340, 40, 320, 0, 320)
                .edge("centre front", Role.FOLD)
                .line(0, 0)
                .piece();
        DartAccount account = DartAccount.of(start, List.of(new Reworked(wrong, Ledger.EMPTY)));
        assertThat(last(account).lost()).isCloseTo(WHOLE - kept, within(1e-9));
        List<Finding> findings = account.findings(Math.toRadians(0.1));
        assertThat(findings)
                .extracting(finding -> finding.sentence(Steps.DEFAULT))
                .containsExactly(
                        "the apex of 'waist dart' after step 1 (drawn by hand): the angles at the apex no longer come to the"
                                + " whole; measured 10.0°, expected 15.2°, off by -5.21°, tolerance 0.10°.");
        assertThat(last(account).sentence(Steps.DEFAULT)).endsWith("10.0° stitched; 5.2° are LOST.");
    }

    /** A loss is found at the step that made it, once, and not again at the steps after it. */
    @Test
    void aPlantedLossIsFoundAtItsStep() {
        Piece start = front().piece();
        Reworked half = Darts.rotateShare(start, "waist dart", Spot.on("side seam", 60), "side dart", 0.5);
        Piece lost = Drawing.of("front")
                .from(0, 0)
                .edge("waist", Role.SEAM)
                .line(75, 0)
                .dart("waist dart", 90, 150, 105, 0, 20, Leg.BEFORE)
                .line(210, 0)
                .edge("rest", Role.SEAM)
                .line(230, 390)
                .line(0, 320)
                .edge("centre front", Role.FOLD)
                .line(0, 0)
                .piece();
        Reworked after = Darts.leave(lost, "waist dart", Use.Kind.EASE);
        List<Finding> findings = DartAccount.of(start, List.of(half, new Reworked(lost, Ledger.EMPTY), after))
                .findings(1e-9);
        assertThat(findings).hasSize(1);
        assertThat(findings.get(0).where()).startsWith("the apex of 'waist dart' after step 2 ");
        assertThat(findings.get(0).excess()).isCloseTo(2 * Math.atan(15.0 / 150) - WHOLE, within(1e-9));
    }

    /** An angle that is there twice is less than nothing lost. */
    @Test
    void aDartCountedTwiceIsFound() {
        Piece start = front().piece();
        Reworked moved = Darts.rotate(start, "waist dart", Spot.on("side seam", 60), "side dart");
        DartAccount account = DartAccount.of(
                moved.piece(),
                List.of(new Reworked(
                        Drawing.of("front")
                                .from(0, 0)
                                .edge("waist", Role.SEAM)
                                .line(70, 0)
                                .dart("waist dart", 90, 150, 110, 0, 20, Leg.BEFORE)
                                .line(230, 0)
                                .edge("rest", Role.SEAM)
                                .line(230, 130)
                                .dart("side dart", 90, 150, 230, 170, 20, Leg.BEFORE)
                                .line(230, 390)
                                .line(0, 320)
                                .edge("centre front", Role.FOLD)
                                .line(0, 0)
                                .piece(),
                        Ledger.EMPTY)));
        assertThat(account.findings(1e-9)).hasSize(1);
        assertThat(last(account).lost()).isCloseTo(-2 * Math.atan(20.0 / 140), within(1e-9));
        assertThat(last(account).sentence(Steps.DEFAULT)).endsWith("16.3° are COUNTED TWICE.");
    }

    /** A gape taken out at the apex makes the whole larger by its wedge; closed into the dart, it is stitched there. */
    @Test
    void aGapeTakenOutIsAddedToTheWhole() {
        Piece start = front().piece();
        Reworked one = Panels.cut(start, Slash.straight("gape 1", Spot.on("neckline", 40), Spot.tip("waist dart")));
        Reworked two =
                Panels.cut(one.piece(), Slash.straight("gape 2", Spot.on("neckline", 50), Spot.tip("waist dart")));
        Reworked out = Panels.takeOut(two.piece(), "gape 1", "gape 2", "gape");
        DartAccount account = DartAccount.of(start, List.of(one, two, out));
        assertThat(account.findings(1e-9)).isEmpty();
        DartAccount.Line line = last(account);
        assertThat(line.whole() - WHOLE).isBetween(Math.toRadians(1), Math.toRadians(5));
        assertThat(line.spent(Fate.UNDECIDED)).isCloseTo(line.whole() - WHOLE, within(1e-12));
    }

    /** What goes into a seam is told by the operation that makes the seam. */
    @Test
    void anAngleTakenIntoASeamIsAccountedFor() {
        Piece start = front().piece();
        Piece without = Drawing.of("front")
                .from(0, 0)
                .edge("waist", Role.SEAM)
                .line(90, 0)
                .edge("style line", Role.SEAM)
                .line(90, 390)
                .edge("neckline", Role.FINISHED)
                .line(0, 320)
                .edge("centre front", Role.FOLD)
                .line(0, 0)
                .piece();
        DartAccount account =
                DartAccount.of(start, List.of(new Reworked(without, Ledger.of(new IntoSeam("waist dart", WHOLE)))));
        assertThat(account.findings(1e-9)).isEmpty();
        assertThat(last(account).spent(Fate.SEAM)).isEqualTo(WHOLE);
        assertThat(DartAccount.of(start, List.of(new Reworked(without, Ledger.EMPTY)))
                        .findings(1e-9))
                .as("not told, it is lost")
                .hasSize(1);
        assertThat(new IntoSeam("waist dart", WHOLE).sentence(Steps.DEFAULT))
                .isEqualTo("Take 15.2° of 'waist dart' into the seam.");
        assertThatThrownBy(() -> new IntoSeam("waist dart", 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("An angle taken into a seam is more than 0: 0.0 rad.");
        assertThatThrownBy(() -> account.findings(-1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("A tolerance is 0 rad or more: -1.0 rad.");
    }

    /** Two apexes have two accounts, also when the one is carried along while a dart turns about the other. */
    @Test
    void everyApexHasItsOwnAccount() {
        Piece start = Drawing.of("front")
                .from(0, 0)
                .edge("waist", Role.SEAM)
                .line(70, 0)
                .dart("first", 80, 100, 90, 0, 10, Leg.BEFORE)
                .line(140, 0)
                .dart("second", 150, 90, 160, 0, 10, Leg.BEFORE)
                .line(240, 0)
                .edge("side seam", Role.SEAM)
                .line(240, 300)
                .edge("top", Role.SEAM)
                .line(0, 300)
                .edge("centre front", Role.FOLD)
                .line(0, 0)
                .insideDart("slit", 40, 120, 40, 220, 0.5, 12)
                .piece();
        Reworked one = Darts.rotate(start, "first", Spot.on("side seam", 200), "side dart");
        Reworked two = Darts.rotate(one.piece(), "second", Spot.on("side seam", 40), "low dart");
        DartAccount account = DartAccount.of(start, List.of(one, two));
        assertThat(account.findings(1e-9)).isEmpty();
        assertThat(account.lines().stream().filter(line -> line.step() == 2))
                .extracting(DartAccount.Line::apex)
                .containsExactly("'first'", "'second'", "'slit, one point'", "'slit, other point'");
        assertThat(two.piece().opening("low dart").mouth().before()).isEqualTo(40);
    }
}
