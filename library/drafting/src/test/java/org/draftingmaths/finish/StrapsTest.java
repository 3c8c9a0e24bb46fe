package org.draftingmaths.finish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Cubic;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.measure.Wearer;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Edge;
import org.draftingmaths.piece.Flat;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class StrapsTest {

    private static final StrapMake MAKE = new StrapMake(20, 0.05, 10, 15);

    static Stream<Long> seeds() {
        return LongStream.range(0, 80).boxed();
    }

    /** A piece that ends in a level top, and above it the shoulder of the body: upright walls, so that lengths can be told by hand. */
    private static Piece half(String name, double height) {
        return Drawing.of(name)
                .from(0, 0)
                .edge("top", Role.FINISHED)
                .line(150, 0)
                .edge("side", Role.SEAM)
                .line(150, height)
                .edge("shoulder", Role.SEAM)
                .line(0, height)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .piece();
    }

    private static Draft body(double front, double back) {
        return new Draft(
                "body",
                List.of(half("front", front), half("back", back)),
                List.of(Seam.flat("shoulder", Seam.Mate.of("front", "shoulder"), Seam.Mate.of("back", "shoulder"))));
    }

    private static Strap strap(Draft draft, double from, double over, double to, StrapMake make, Wearer wearer) {
        return Straps.strap(
                draft,
                "strap",
                List.of(
                        StrapLine.straight(draft.piece("front"), "top", from, "shoulder", over),
                        StrapLine.straight(draft.piece("back"), "shoulder", over, "top", to)),
                make,
                wearer);
    }

    /** The trade's own figure: a way of 38 cm at 5 % is stitched 36.2 cm long. */
    @Test
    void theStretchComesOffTheStitchedPartOnly() {
        Strap strap = strap(body(200, 180), 60, 90, 60, MAKE, Wearer.ADULT);
        assertThat(strap.path()).isCloseTo(380, within(1e-9));
        assertThat(strap.stitched()).isCloseTo(361.9, within(0.05));
        assertThat(strap.cut() - strap.stitched())
                .as("no stretch in what is caught in the seams")
                .isEqualTo(25);
        assertThat(strap.stitched() * 1.05).as("worn").isCloseTo(380, within(1e-9));
        StrapMake stayed = new StrapMake(20, 0, 10, 10);
        assertThat(strap(body(200, 180), 60, 90, 60, stayed, Wearer.ADULT).stitched())
                .isCloseTo(380, within(1e-9));
    }

    /** Slanted ways are longer than the straight through the shoulder; each part is measured on its own piece. */
    @ParameterizedTest
    @MethodSource("seeds")
    void theWayIsMeasuredPieceByPiece(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double front = random.nextDouble(120, 220);
        double back = random.nextDouble(120, 220);
        double from = random.nextDouble(30, 120);
        double over = random.nextDouble(30, 120);
        double to = random.nextDouble(30, 120);
        Draft body = body(front, back);
        Strap strap = strap(body, from, over, to, MAKE, Wearer.ADULT);
        double across = 150 - over;
        double way = Math.hypot(front, across - from) + Math.hypot(back, across - to);
        assertThat(strap.path()).as("seed %d", seed).isCloseTo(way, within(1e-9));
        // Laid shoulder to shoulder the back is turned over and lies above the front.
        double through = Math.hypot(front + back, to - from);
        assertThat(strap.path()).isGreaterThanOrEqualTo(through - 1e-9);
        assertEndsLieOnTheEdges(strap, front, across - from, back, across - to, seed);
    }

    /**
     * The strap laid on the body: its middle along the way, its end on the level top. The end's slope must be the top's: level.
     */
    private static void assertEndsLieOnTheEdges(
            Strap strap, double up, double aside, double upBack, double asideBack, long seed) {
        Vector2D first = way(Paper.edge(strap.piece(), "first end"));
        Vector2D last = way(Paper.edge(strap.piece(), "last end"));
        // On the front the strap runs (aside, up); turned upright by its own angle, the level top turns with it.
        double lean = Math.atan2(up, aside) - Math.PI / 2;
        assertThat(Math.abs(first.signedArea(Vector2D.Unit.from(Math.cos(-lean), Math.sin(-lean)))))
                .as("seed %d: first end", seed)
                .isLessThan(1e-9);
        // The back lies turned over above the front: its top is level there too, and the strap runs to it (-asideBack,
        // upBack) in that view.
        double leanBack = Math.atan2(upBack, -asideBack) - Math.PI / 2;
        assertThat(Math.abs(last.signedArea(Vector2D.Unit.from(Math.cos(-leanBack), Math.sin(-leanBack)))))
                .as("seed %d: last end", seed)
                .isLessThan(1e-9);
    }

    private static Vector2D way(CurvePath line) {
        return line.start().directionTo(line.end());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void thePieceIsAsLongAndWideAsSaid(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        StrapMake make = new StrapMake(random.nextDouble(8, 40), random.nextDouble(0, 0.1), 12, 8);
        Draft body = body(180, 200);
        Strap strap = strap(body, random.nextDouble(20, 130), 75, random.nextDouble(20, 130), make, Wearer.ADULT);
        Piece piece = strap.piece();
        assertThat(piece.area()).as("seed %d", seed).isCloseTo(make.width() * strap.stitched(), within(1e-6));
        Vector2D foot = middle(Paper.edge(piece, "first end"));
        Vector2D head = middle(Paper.edge(piece, "last end"));
        assertThat(head.distance(foot)).isCloseTo(strap.stitched(), within(1e-9));
        // The allowance stands square on the sloping end; along the strap it is the insertion.
        Edge first = piece.edge("first end");
        assertThat(first.allowance() / Math.abs(way(first.base()).getX())).isCloseTo(12, within(1e-9));
        assertThat(Flat.polygon(Paper.outline(piece)).isValid()).isTrue();
    }

    private static Vector2D middle(CurvePath line) {
        return line.start().lerp(line.end(), 0.5);
    }

    @Test
    void aCurvedWayIsMeasuredAlong() {
        Draft body = body(200, 180);
        Piece front = body.piece("front");
        CurvePath curve = CurvePath.of(
                new Cubic(Vector2D.of(60, 0), Vector2D.of(60, 70), Vector2D.of(90, 140), Vector2D.of(90, 200)));
        Strap strap = Straps.strap(
                body,
                "strap",
                List.of(
                        StrapLine.along(front, curve, "top", 60, "shoulder", 60),
                        StrapLine.straight(body.piece("back"), "shoulder", 60, "top", 90)),
                MAKE,
                Wearer.ADULT);
        assertThat(strap.path()).isCloseTo(curve.length() + 180, within(1e-9)).isGreaterThan(380);
        assertThatThrownBy(() -> StrapLine.along(front, curve, "top", 65, "shoulder", 60))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("misses its place on the edge by 5.0 mm");
    }

    @Test
    void theCautionGoesWithItUnlessTheWearerIsAnAdult() {
        Strap unknown = strap(body(200, 180), 60, 90, 60, MAKE, Wearer.NOT_DECLARED);
        assertThat(unknown.cautions()).containsExactly(Caution.STRAPS);
        assertThat(unknown.ledger().only(Caution.class)).containsExactly(Caution.STRAPS);
        assertThat(Caution.STRAPS.sentence(Steps.DEFAULT))
                .contains("EN 14682", "ASTM F1816", "local rules", "qualified");
        Strap adult = strap(body(200, 180), 60, 90, 60, MAKE, Wearer.ADULT);
        assertThat(adult.cautions()).isEmpty();
        assertThat(adult.ledger().sentences(Steps.DEFAULT))
                .containsExactly(
                        "'strap': the way over the body is 15 in (38.0 cm) along; for a stretch of 5.0 % it is stitched 14 1/4 in"
                                + " (36.2 cm) long and cut 15 1/4 in (38.7 cm); its ends slope 90.0° and 90.0° to its length.");
    }

    @Test
    void impossibleStrapsAreRefused() {
        Draft body = body(200, 180);
        for (double stretch : new double[] {-0.01, 0.6, Double.NaN}) {
            assertThatThrownBy(() -> new StrapMake(20, stretch, 10, 10))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage(
                            "A strap stretches by a share from 0 to less than 41.4 %, the most that woven cloth can: "
                                    + stretch + ".");
        }
        for (double width : new double[] {0, -2, Double.NaN}) {
            assertThatThrownBy(() -> new StrapMake(width, 0, 10, 10)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> new StrapMake(20, 0, width - 1, 10)).isInstanceOf(IllegalArgumentException.class);
        }
        assertThatThrownBy(() -> Straps.strap(body, "strap", List.of(), MAKE, Wearer.ADULT))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Straps.strap(
                        body,
                        "strap",
                        List.of(
                                StrapLine.straight(body.piece("front"), "top", 60, "shoulder", 90),
                                StrapLine.straight(body.piece("back"), "shoulder", 80, "top", 60)),
                        MAKE,
                        Wearer.ADULT))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining("its parts do not meet at the seam 'shoulder'");
        assertThatThrownBy(() -> Straps.strap(
                        body,
                        "strap",
                        List.of(
                                StrapLine.straight(body.piece("front"), "top", 60, "shoulder", 90),
                                StrapLine.straight(body.piece("back"), "side", 80, "top", 60)),
                        MAKE,
                        Wearer.ADULT))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining("no seam of the draft joins 'shoulder' of 'front' and 'side' of 'back'");
        Draft bodice = FacingsTest.bodice(new SplittableRandom(7));
        Piece back = bodice.piece("back");
        double near = back.edge("shoulder").length() * 0.7;
        assertThatThrownBy(() -> Straps.strap(
                        bodice,
                        "strap",
                        List.of(StrapLine.straight(back, "shoulder", near, "armhole", 90)),
                        MAKE,
                        Wearer.ADULT))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining("its way over 'back' crosses 'shoulder dart', which is closed on the body");
    }
}
