package org.draftingmaths.piece;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.piece.Redraw.Marks;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The ends of an edge that darts break are redrawn: what lies beyond the first or the last dart stays on paper to the last figure, the
 * darts with it, and only arcs are counted anew.
 */
class RedrawEndsTest {

    private static final double SAME = 1e-9;

    static Stream<Long> seeds() {
        return LongStream.range(0, 200).boxed();
    }

    /** A front with two darts in its waist and notches before, between and after them; the sides slant and bend as the seed says. */
    private static Piece front(SplittableRandom random) {
        double width = random.nextDouble(220, 300);
        return Drawing.of("front")
                .from(0, 0)
                .edge("waist", Role.SEAM)
                .line(60, random.nextDouble(-4, 4))
                .dart("inner dart", 75, 130, 90, random.nextDouble(-4, 4), 10, Leg.BEFORE)
                .line(140, random.nextDouble(-4, 4))
                .dart("outer dart", 152, 110, 164, random.nextDouble(-4, 4), 0, Leg.AFTER)
                .line(width, random.nextDouble(0, 12))
                .edge("side", Role.SEAM)
                .curve(width + 10, 70, width + 20, 150, width + 12, 220)
                .edge("top", Role.FINISHED)
                .line(0, 240)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .level("line", 0, 160, width, 160)
                .notch("waist", 25)
                .notch("waist", 85)
                .notch("waist", 125)
                .notch("side", 80)
                .piece();
    }

    private static Vector2D place(Piece piece, int notch) {
        return Notches.where(piece, piece.notches().get(notch)).point();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theFarEndMovesAndAllBeforeItStays(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Piece front = front(random);
        CurvePath last = Redraw.last(front, "waist");
        CurvePath side = Paper.edge(front, "side");
        double in = random.nextDouble(-20, 30);
        Vector2D corner = side.start().add(Vector2D.of(-in, random.nextDouble(-10, 10)));
        CurvePath drawn =
                CurvePath.polyline(last.start(), last.start().lerp(corner, 0.4).add(Vector2D.of(0, 3)), corner);
        CurvePath moved = CurvePath.polyline(corner, side.pointAt(60)).then(side.between(60, side.length()));
        Reworked done = Redraw.edges(
                front,
                Map.of("waist", drawn, "side", moved),
                Map.of("side", Marks.FROM_END, "waist", Marks.FROM_START));
        Piece now = done.piece();

        assertThat(Redraw.first(now, "waist")).isEqualTo(Redraw.first(front, "waist"));
        assertThat(Redraw.last(now, "waist").length()).isCloseTo(drawn.length(), within(SAME));
        for (String dart : new String[] {"inner dart", "outer dart"}) {
            assertThat(Measured.angle(now, dart)).isCloseTo(Measured.angle(front, dart), within(1e-12));
            assertThat(Measured.tip(now, dart).distance(Measured.tip(front, dart)))
                    .isLessThan(SAME);
            assertThat(Measured.intake(now, dart)).isCloseTo(Measured.intake(front, dart), within(SAME));
        }
        assertThat(place(now, 0).distance(place(front, 0))).isLessThan(SAME);
        assertThat(place(now, 1).distance(place(front, 1))).isLessThan(SAME);
        assertThat(place(now, 3).distance(place(front, 3))).isLessThan(SAME);
        assertThat(Lengths.base(now, "waist") - Lengths.base(front, "waist"))
                .isCloseTo(drawn.length() - last.length(), within(SAME));
        assertThat(Flat.polygon(Paper.outline(now)).isValid()).isTrue();
        assertThat(Panels.undo(done).sameCloth(front, SAME)).isTrue();
        assertThat(Panels.undo(done).edges()).isEqualTo(front.edges());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theNearEndMovesAndArcsCountOn(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Piece front = front(random);
        CurvePath first = Redraw.first(front, "waist");
        CurvePath centre = Paper.edge(front, "centre");
        Vector2D corner = Vector2D.of(0, random.nextDouble(-20, 20));
        CurvePath drawn =
                CurvePath.polyline(corner, corner.lerp(first.end(), 0.5).add(Vector2D.of(0, 2)), first.end());
        Reworked done = Redraw.edges(
                front,
                Map.of("waist", drawn, "centre", CurvePath.polyline(centre.start(), corner)),
                Map.of("waist", Marks.SHARE));
        Piece now = done.piece();
        double longer = drawn.length() - first.length();

        assertThat(Lengths.base(now, "waist") - Lengths.base(front, "waist")).isCloseTo(longer, within(SAME));
        assertThat(now.notches().get(0).arc()).isCloseTo(25 * drawn.length() / first.length(), within(SAME));
        for (int notch = 1; notch <= 3; notch++) {
            assertThat(place(now, notch).distance(place(front, notch))).isLessThan(SAME);
        }
        assertThat(now.notches().get(2).arc() - front.notches().get(2).arc()).isCloseTo(longer, within(SAME));
        // A dart that is moved afterwards moves as one in a freshly drawn piece would: its legs still lie on one
        // another.
        for (String dart : new String[] {"inner dart", "outer dart"}) {
            assertThat(Measured.angle(now, dart)).isCloseTo(Measured.angle(front, dart), within(1e-12));
        }
        assertThat(Panels.undo(done).sameCloth(front, SAME)).isTrue();
        assertThat(Panels.undo(done).notches()).isEqualTo(front.notches());
    }

    @Test
    void aLineThatJoinsNoDartIsRefused() {
        Piece front = front(new SplittableRandom(1));
        CurvePath whole =
                CurvePath.polyline(Vector2D.ZERO, Paper.edge(front, "side").start());
        assertThatThrownBy(() -> Redraw.edges(front, Map.of("waist", whole)))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining("an opening breaks it, and the new line joins the edge neither before the first")
                .hasMessageContaining("give the stretch beside it, or draw the edge over its darts");
    }

    @Test
    void whereNothingBreaksAnEdgeItsFirstStretchIsAllOfIt() {
        Piece front = front(new SplittableRandom(1));
        assertThat(Redraw.first(front, "side")).isEqualTo(Paper.edge(front, "side"));
        assertThat(Redraw.last(front, "side")).isEqualTo(Paper.edge(front, "side"));
    }
}
