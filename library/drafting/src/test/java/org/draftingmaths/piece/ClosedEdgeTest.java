package org.draftingmaths.piece;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** An edge is drawn anew over the darts in it: the proof is the folding of each dart about its point. */
class ClosedEdgeTest {

    private static final double SAME = 1e-9;
    private static final double FOLDED = 1e-6;

    static Stream<Long> seeds() {
        return LongStream.range(0, 150).boxed();
    }

    /** What follows a dart is turned about its point by its angle, and goes on from what comes before it. */
    private static AffineTransformMatrix2D fold(Piece piece, String dart) {
        Vector2D tip = Measured.tip(piece, dart);
        Vector2D to = tip.vectorTo(Measured.leg(piece, dart, Leg.BEFORE).start());
        Vector2D from = tip.vectorTo(Measured.leg(piece, dart, Leg.AFTER).start());
        return AffineTransformMatrix2D.createRotation(tip, Math.atan2(from.signedArea(to), from.dot(to)));
    }

    private static double length(Piece piece, String dart, Leg leg) {
        return Measured.leg(piece, dart, leg).length();
    }

    private static CurvePath bent(CurvePath line, Vector2D over) {
        return CurvePath.polyline(line.start(), over, line.end());
    }

    private static void requireDartKept(Piece was, Piece now, String dart) {
        assertThat(Measured.tip(now, dart).distance(Measured.tip(was, dart))).isLessThan(SAME);
        assertThat(Measured.angle(now, dart)).isCloseTo(Measured.angle(was, dart), within(1e-9));
        assertThat(length(now, dart, Leg.BEFORE)).isCloseTo(length(now, dart, Leg.AFTER), within(SAME));
        assertThat(now.opening(dart).mouth().use())
                .isEqualTo(was.opening(dart).mouth().use());
    }

    private static void requireUndone(Piece was, Reworked done) {
        Piece back = Panels.undo(done);
        assertThat(back.sameCloth(was, SAME)).isTrue();
        assertThat(back.edges()).isEqualTo(was.edges());
        assertThat(back.openings()).isEqualTo(was.openings());
        assertThat(back.notches()).isEqualTo(was.notches());
        assertThat(back.panels().stream().map(Panel::ring))
                .isEqualTo(was.panels().stream().map(Panel::ring).toList());
    }

    /** Each edge with a dart is drawn over it: from corner to corner over a place on the dart's line that the seed chooses. */
    @ParameterizedTest
    @MethodSource("seeds")
    void theLegsGoToTheNewEdgeAndFoldOnOneAnother(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Piece piece = RandomPieces.piece(seed);
        int drawn = 0;
        for (Opening opening : piece.openings()) {
            String dart = opening.name();
            String edge = dart.replace("dart", "edge");
            CurvePath leg = Measured.leg(piece, dart, Leg.BEFORE);
            double wanted = leg.length() * random.nextDouble(0.75, 1.1);
            Vector2D mouth = leg.end().add(leg.end().directionTo(leg.start()).multiply(wanted));
            ClosedEdge closed = ClosedEdge.of(piece, edge);
            CurvePath line = bent(closed.line(), mouth);
            Reworked done;
            try {
                done = closed.redrawn(line, Map.of(), Map.of());
            } catch (DraftingException crosses) {
                assertThat(crosses.reason()).as("seed %d, %s", seed, dart).containsAnyOf("cross", "lie inside", "past");
                continue;
            }
            drawn++;
            Piece now = done.piece();
            for (Opening each : piece.openings()) {
                requireDartKept(piece, now, each.name());
            }
            assertThat(length(now, dart, Leg.BEFORE)).isCloseTo(wanted, within(FOLDED));
            CurvePath first = Redraw.first(now, edge);
            CurvePath second = Redraw.last(now, edge).transformed(fold(now, dart));
            assertThat(first.end().distance(mouth)).isLessThan(FOLDED);
            assertThat(second.start().distance(mouth)).isLessThan(FOLDED);
            assertThat(second.end().distance(line.end())).isLessThan(FOLDED);
            assertThat(first.length() + second.length()).isCloseTo(line.length(), within(FOLDED));
            assertThat(Redraw.last(now, edge)
                            .end()
                            .distance(Redraw.last(piece, edge).end()))
                    .as("the corner stays on paper")
                    .isLessThan(SAME);
            for (Edge other : piece.edges()) {
                if (!other.name().equals(edge)) {
                    assertThat(now.edge(other.name())).isEqualTo(other);
                }
            }
            requireUndone(piece, done);
        }
        drawnInAll += drawn;
    }

    private static int drawnInAll;

    @AfterAll
    static void mostAreDrawn() {
        assertThat(drawnInAll).isGreaterThan(150);
    }

    /** The line lies a straight way over both folded darts; opened again, each stretch of it is straight and none is lost. */
    @Test
    void twoDartsInOneEdge() {
        Piece piece = sameLegs();
        ClosedEdge closed = ClosedEdge.of(piece, "neckline");
        CurvePath line = CurvePath.polyline(closed.line().start(), closed.line().end());
        Reworked done = closed.redrawn(line, Map.of(), Map.of());
        Piece now = done.piece();
        requireDartKept(piece, now, "outer dart");
        requireDartKept(piece, now, "inner dart");
        assertThat(Lengths.folded(now, "neckline")).isCloseTo(line.length(), within(0.2));
        assertThat(Lengths.base(now, "neckline")).isCloseTo(line.length(), within(SAME));
        double outer = now.opening("outer dart").mouth().before();
        double inner = now.opening("inner dart").mouth().before();
        double outerWas = piece.opening("outer dart").mouth().before();
        double innerWas = piece.opening("inner dart").mouth().before();
        double length = piece.edge("neckline").length();
        assertThat(now.notches().get(0).arc()).isCloseTo(30 * outer / outerWas, within(SAME));
        assertThat(now.notches().get(1).arc())
                .isCloseTo(outer + (90 - outerWas) * (inner - outer) / (innerWas - outerWas), within(SAME));
        assertThat(now.notches().get(2).arc())
                .isCloseTo(inner + (160 - innerWas) * (line.length() - inner) / (length - innerWas), within(SAME));
        requireUndone(piece, done);
        assertThat(done.ledger().sentences(Steps.DEFAULT))
                .anySatisfy(sentence -> assertThat(sentence)
                        .startsWith("Redraw on 'back': 'neckline' to")
                        .endsWith(", with 'outer dart' and 'inner dart' folded."));
    }

    /** Two darts in one neckline, and notches before, between and behind them. */
    private static Piece sameLegs() {
        return Drawing.of("back")
                .from(0, 0)
                .edge("centre back", Role.FOLD)
                .line(200, 0)
                .edge("side", Role.SEAM)
                .line(200, 210)
                .edge("neckline", Role.SEAM)
                .line(150, 200)
                .dart("outer dart", 143, 140, 136, 200, 4, Leg.AFTER)
                .line(70, 195)
                .dart("inner dart", 64, 130, 58, 195, 0, Leg.BEFORE)
                .line(0, 190)
                .edge("centre", Role.FINISHED)
                .line(0, 0)
                .notch("neckline", 30)
                .notch("neckline", 90)
                .notch("neckline", 160)
                .piece();
    }

    private static void refused(Piece piece, Vector2D over, String words) {
        ClosedEdge closed = ClosedEdge.of(piece, "neckline");
        assertThatThrownBy(() -> closed.redrawn(bent(closed.line(), over), Map.of(), Map.of()))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining(words);
    }

    @Test
    void whatCannotBeDrawnIsRefusedWithItsPlace() {
        Piece piece = sameLegs();
        refused(
                piece,
                Vector2D.of(143, 100),
                "Draw 'neckline' over 'outer dart': the new line passes over the point of the dart at (143.0, 140.0)");
        refused(piece, Vector2D.of(143, 142), "nothing of the dart would be left to sew");
        Piece wide = piece.using("outer dart", new Use.Left(Use.Kind.GATHERS));
        assertThatThrownBy(() -> ClosedEdge.of(wide, "neckline"))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining("it is not sewn as a dart and cannot be folded shut");
        CurvePath past = CurvePath.polyline(Vector2D.of(200, 210), Vector2D.of(170, 150));
        assertThatThrownBy(() -> ClosedEdge.of(piece, "neckline").redrawn(past, Map.of(), Map.of()))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining("passes the dart by, whose point lies at (143.0, 140.0)");
    }

    @Test
    void unequalLegsAreMadeEqualFirst() {
        Piece piece = Drawing.of("back")
                .from(0, 0)
                .edge("side", Role.SEAM)
                .line(200, 0)
                .line(200, 210)
                .edge("neckline", Role.SEAM)
                .line(150, 200)
                .dart("dart", 143, 140, 136, 205, 4, Leg.AFTER)
                .line(0, 190)
                .edge("centre", Role.FINISHED)
                .line(0, 0)
                .piece();
        assertThatThrownBy(() -> ClosedEdge.of(piece, "neckline"))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining("its legs differ and do not fold on one another; make them equal first");
    }

    /** A dart that was drawn over is moved afterwards as any other, and closes. */
    @Test
    void aDartDrawnOverCloses() {
        Piece piece = sameLegs();
        ClosedEdge closed = ClosedEdge.of(piece, "neckline");
        Piece now = closed.redrawn(
                        CurvePath.polyline(closed.line().start(), closed.line().end()), Map.of(), Map.of())
                .piece();
        assertThat(Panels.coincide(
                        Measured.leg(now, "inner dart", Leg.BEFORE),
                        Measured.leg(now, "inner dart", Leg.AFTER)
                                .transformed(Measured.closing(now, "inner dart").matrix())))
                .isTrue();
    }
}
