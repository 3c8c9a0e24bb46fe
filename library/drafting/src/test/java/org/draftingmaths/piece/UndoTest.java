package org.draftingmaths.piece;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.dart.Darts;
import org.draftingmaths.dart.StyleLines;
import org.draftingmaths.fullness.Gathers;
import org.draftingmaths.fullness.Pleat;
import org.draftingmaths.fullness.Pleats;
import org.draftingmaths.fullness.Smooth;
import org.draftingmaths.fullness.Spread;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The way back, where an operation has put an opening to use or the piece was changed since. */
class UndoTest {

    private static Piece front() {
        return Drawing.of("front")
                .from(0, 0)
                .edge("waist", Role.SEAM)
                .line(70, 0)
                .dart("waist dart", 85, 150, 100, 0, 20, Leg.BEFORE)
                .line(210, 0)
                .edge("side seam", Role.SEAM)
                .line(230, 190)
                .edge("shoulder", Role.SEAM)
                .line(70, 390)
                .edge("centre front", Role.FOLD)
                .line(0, 390)
                .line(0, 0)
                .piece();
    }

    private static Slash flare() {
        return Slash.straight("flare", Spot.on("waist", 130), Spot.on("shoulder", 100));
    }

    static Stream<Function<Piece, Reworked>> operations() {
        return Stream.of(
                piece -> Darts.leave(piece, "waist dart", Use.Kind.GATHERS),
                piece -> Darts.setBack(piece, "waist dart", 35),
                piece -> Darts.rotate(piece, "waist dart", Spot.on("side seam", 60), "side dart"),
                piece -> Darts.divide(
                        piece, "waist dart", List.of(new Darts.Part(Spot.on("shoulder", 60), "shoulder dart", 0.5))),
                piece -> Pleats.dartTuck(piece, "waist dart", Use.Under.BEFORE, 60, Use.Stitched.LEGS),
                piece -> Pleats.fold(
                        piece, List.of(Pleat.even(flare(), 20, Use.Under.BEFORE)), Stay.at("centre front", 200)),
                piece -> Gathers.spread(
                        piece,
                        new Notch("shoulder", 40, Beside.BEFORE),
                        new Notch("shoulder", 140, Beside.BEFORE),
                        "side seam",
                        2,
                        1.3,
                        0.5,
                        Stay.at("centre front", 200)),
                piece -> Panels.use(piece, "waist dart", new Use.Left(Use.Kind.EASE)));
    }

    /** What an operation leaves an opening for comes back as well as what it moved. */
    @ParameterizedTest
    @MethodSource("operations")
    void usesComeBack(Function<Piece, Reworked> operation) {
        Reworked done = operation.apply(front());
        assertThat(SameCloth.differences(done.piece(), front(), 1e-9)).isNotEmpty();
        assertThat(SameCloth.differences(Panels.undo(done), front(), 1e-9)).isEmpty();
    }

    /** An opening that was put to another use since is not lost in silence; a notch set since stays where it is. */
    @Test
    void aUseChangedSinceIsRefusedAndANotchKept() {
        Reworked moved = Darts.rotate(front(), "waist dart", Spot.on("side seam", 60), "side dart");
        Piece gathered = moved.piece().using("side dart", new Use.Left(Use.Kind.GATHERS));
        assertThatThrownBy(() -> Panels.undo(new Reworked(gathered, moved.ledger())))
                .isInstanceOf(DraftingException.class)
                .hasMessage(
                        "Undo the use of 'side dart': the piece was changed since; undo the later operations first.");

        Reworked spread =
                Spread.all(front(), List.of(new Spread.Opened(flare(), 30, 10)), Stay.at("centre front", 200));
        Piece eased = spread.piece().usingFar("flare", new Use.Left(Use.Kind.EASE));
        assertThatThrownBy(() -> Panels.undo(new Reworked(eased, spread.ledger())))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining("'flare'")
                .hasMessageEndingWith("the piece was changed since; undo the later operations first.");

        Notch notch = new Notch("shoulder", 30, Beside.BEFORE);
        Piece notched = moved.piece().notched(notch);
        assertThat(Panels.undo(new Reworked(notched, moved.ledger())).sameCloth(front().notched(notch), 1e-9))
                .isTrue();
    }

    /** Mirrored since, the piece lies elsewhere: the reason says so, whatever the first step back would have been. */
    @Test
    void aMirroredPieceWasChangedSince() {
        Reworked spread =
                Spread.all(front(), List.of(new Spread.Opened(flare(), 30, 10)), Stay.at("centre front", 200));
        Reworked moved = Darts.rotate(front(), "waist dart", Spot.on("side seam", 60), "side dart");
        for (Reworked done : List.of(spread, moved)) {
            Piece mirrored = Panels.mirror(done.piece(), Vector2D.of(-40, 0), Vector2D.of(0.3, 1))
                    .piece();
            assertThatThrownBy(() -> Panels.undo(new Reworked(mirrored, done.ledger())))
                    .isInstanceOf(DraftingException.class)
                    .hasMessageEndingWith("the piece was changed since; undo the later operations first.");
        }
        Reworked mirrored = Panels.mirror(moved.piece(), Vector2D.of(-40, 0), Vector2D.of(0.3, 1));
        assertThat(Panels.undo(moved.then(mirrored)).sameCloth(front(), 1e-9)).isTrue();
    }

    /** A straight waist is no straight one once its dart is closed: by the dart's angle, and the blend takes it away. */
    @Test
    void aKinkLeftWhereADartWasClosedIsSaidAndBlended() {
        double angle = 2 * Math.asin(15 / Math.hypot(15, 150));
        Reworked moved = Darts.rotate(front(), "waist dart", Spot.on("side seam", 60), "side dart");
        String said = "'waist' turns by " + Quantity.ANGLE.print(angle, Steps.DEFAULT)
                + " where 'waist dart' is closed; blend it there (Smooth.edge), and walk its seam again.";
        assertThat(moved.ledger().sentences(Steps.DEFAULT)).endsWith(said);
        assertThat(Darts.rotateShare(front(), "waist dart", Spot.on("side seam", 60), "side dart", 0.5)
                        .ledger()
                        .sentences(Steps.DEFAULT))
                .as("what is not closed has no kink yet")
                .doesNotContain(said);
        assertThat(StyleLines.through(
                                front(),
                                "waist dart",
                                Spot.on("shoulder", 100),
                                "panel seam",
                                List.of(),
                                "side",
                                "centre")
                        .ledger()
                        .sentences(Steps.DEFAULT))
                .endsWith(said);

        Reworked blended = Smooth.edge(moved.piece(), "waist", new Smooth.Blend.Rounded(50), Smooth.Ends.AS_DRAWN);
        CurvePath waist = Paper.edge(blended.piece(), "waist");
        for (int i = 1; i < waist.curves().size(); i++) {
            Vector2D in = waist.curves().get(i - 1).tangent(1);
            assertThat(in.signedArea(waist.curves().get(i).tangent(0))).isCloseTo(0, within(1e-9));
        }
        // Analytic: rounded from t on either side a corner turned by a loses 2 t - t a / tan(a/2).
        assertThat(front().edge("waist").length() - waist.length())
                .isCloseTo(100 - 50 * angle / Math.tan(angle / 2), within(1e-6));
    }

    /** Gathers in the hollow of an armhole leave a hump, and one curve from end to end takes it away. */
    @Test
    void aHumpAcrossGathersIsSaidAndBlended() {
        Piece piece = Drawing.of("front")
                .from(0, 0)
                .edge("waist", Role.SEAM)
                .line(70, 0)
                .dart("waist dart", 85, 150, 100, 0, 20, Leg.BEFORE)
                .line(210, 0)
                .edge("side seam", Role.SEAM)
                .line(230, 190)
                .edge("armhole", Role.SEAM)
                .curve(190, 190, 170, 260, 180, 350)
                .edge("shoulder", Role.SEAM)
                .line(0, 390)
                .edge("centre front", Role.FOLD)
                .line(0, 0)
                .piece();
        Piece moved = Darts.rotate(piece, "waist dart", Spot.on("armhole", 70), "armhole dart")
                .piece();
        Reworked left = Darts.leave(moved, "armhole dart", Use.Kind.GATHERS);
        assertThat(left.ledger().sentences(Steps.DEFAULT))
                .last()
                .asString()
                .startsWith("Across 'armhole dart' the 'armhole' bends by ")
                .endsWith("out of its run; draw it anew as one line (Smooth.edge), and walk its seam again.");
        assertThat(bendsBothWays(Paper.edge(left.piece(), "armhole"))).isTrue();
        Piece drawn = Smooth.edge(left.piece(), "armhole", new Smooth.Blend.OneCurve(), Smooth.Ends.AS_DRAWN)
                .piece();
        assertThat(bendsBothWays(Paper.edge(drawn, "armhole"))).isFalse();
        assertThat(Darts.leave(piece, "waist dart", Use.Kind.EASE).ledger().sentences(Steps.DEFAULT))
                .as("a straight edge comes straight across")
                .noneMatch(sentence -> sentence.startsWith("Across"));
    }

    private static boolean bendsBothWays(CurvePath path) {
        DoubleSummaryStatistics bends = path.curves().stream()
                .flatMapToDouble(curve -> IntStream.rangeClosed(0, 20).mapToDouble(i -> curve.curvature(i / 20.0)))
                .summaryStatistics();
        return bends.getMin() < -1e-6 && bends.getMax() > 1e-6;
    }

    /** A line over a dart that lies open is told of the dart, not of a part that cannot be found. */
    @Test
    void aLineOverAnOpenDartIsToldToFoldIt() {
        StyleLine line = StyleLine.straight("yoke line", Spot.on("side seam", 60), Spot.on("centre front", 390));
        assertThatThrownBy(() -> Detach.across(front(), line, "front", "yoke"))
                .isInstanceOf(DraftingException.class)
                .hasMessage(
                        "Cut along 'yoke line' from 'side seam' at 60.0 mm to 'centre front' at 390.0 mm: 'waist dart'"
                                + " lies open across it; fold it first, with folding(\"waist dart\").");
        assertThat(Detach.across(front(), line.folding("waist dart"), "front", "yoke")
                        .with("waist")
                        .openings())
                .hasSize(1);
    }
}
