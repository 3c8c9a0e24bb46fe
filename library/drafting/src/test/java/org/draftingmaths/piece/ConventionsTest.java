package org.draftingmaths.piece;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.dart.Darts;
import org.junit.jupiter.api.Test;

/** One test for each convention. */
class ConventionsTest {

    private static Piece front() {
        return Drawing.of("front")
                .from(0, 0)
                .edge("waist", Role.SEAM)
                .line(70, 0)
                .dart("waist dart", 90, 150, 110, 0, 20, Leg.BEFORE)
                .line(210, 0)
                .edge("side seam", Role.SEAM)
                .line(230, 190)
                .edge("top", Role.SEAM)
                .line(0, 200)
                .edge("centre front", Role.FOLD)
                .line(0, 0)
                .level("level", 0, 100, 300, 100)
                .notch("waist", 65)
                .grain(20, 40, 20, 180)
                .piece();
    }

    @Test
    void outlinesRunAnticlockwise() {
        assertThat(front().area()).isPositive();
        assertThat(Paper.outline(front()).area()).isGreaterThan(front().area());
    }

    @Test
    void motionsTurnAnticlockwise() {
        Vector2D turned = Motion.turn(Vector2D.of(1, 0), Math.PI / 2).matrix().apply(Vector2D.of(2, 0));
        assertThat(turned.distance(Vector2D.of(1, 1))).isLessThan(1e-12);
    }

    @Test
    void motionTurnsFirstAndShiftsThen() {
        Motion motion = new Motion(Vector2D.ZERO, Math.PI / 2, Vector2D.of(10, 0));
        assertThat(motion.matrix().apply(Vector2D.of(1, 0)).distance(Vector2D.of(10, 1)))
                .isLessThan(1e-12);
    }

    @Test
    void cutsAndTurnsLeaveAMarkWhereItWas() {
        Reworked moved = Darts.rotate(front(), "waist dart", Spot.on("side seam", 60), "side dart");
        assertThat(moved.piece().notches()).isEqualTo(front().notches());
        assertThat(moved.piece().edge("waist").base())
                .isEqualTo(front().edge("waist").base());
    }

    /** The side with the fold stays, and so does its grain. */
    @Test
    void theFoldStays() {
        Reworked moved = Darts.rotate(front(), "waist dart", Spot.on("side seam", 60), "side dart");
        assertThat(moved.piece().grain()).isEqualTo(front().grain());
        assertThat(Paper.edge(moved.piece(), "centre front").start()).isEqualTo(Vector2D.of(0, 200));
    }

    @Test
    void mirroringKeepsDirectionMarksAndPress() {
        Piece mirrored =
                Panels.mirror(front(), Vector2D.ZERO, Vector2D.of(0, 1)).piece();
        assertThat(mirrored.area()).isCloseTo(front().area(), within(1e-9));
        assertThat(mirrored.notches()).isEqualTo(front().notches());
        assertThat(mirrored.openings()).isEqualTo(front().openings());
        assertThat(Paper.edge(mirrored, "waist").start().distance(Vector2D.ZERO))
                .isLessThan(1e-12);
        assertThat(Paper.edge(mirrored, "waist").end().distance(Vector2D.of(-210, 0)))
                .isLessThan(1e-12);
        assertThat(Measured.leg(mirrored, "waist dart", Leg.BEFORE).start().distance(Vector2D.of(-70, 0)))
                .isLessThan(1e-12);
        assertThat(Measured.angle(mirrored, "waist dart"))
                .isCloseTo(Measured.angle(front(), "waist dart"), within(1e-12));
    }

    /** Rotated in the mirror is the mirror of the rotated. */
    @Test
    void operationsCommuteWithTheMirror() {
        Piece mirrored =
                Panels.mirror(front(), Vector2D.ZERO, Vector2D.of(0, 1)).piece();
        Piece one = Darts.rotate(mirrored, "waist dart", Spot.on("side seam", 60), "side dart")
                .piece();
        Piece other = Panels.mirror(
                        Darts.rotate(front(), "waist dart", Spot.on("side seam", 60), "side dart")
                                .piece(),
                        Vector2D.ZERO,
                        Vector2D.of(0, 1))
                .piece();
        assertThat(SameCloth.differences(one, other, 1e-9)).isEmpty();
    }

    @Test
    void equalsIsExactAndSameClothIsNot() {
        Piece moved = Darts.rotate(front(), "waist dart", Spot.on("side seam", 60), "side dart")
                .piece();
        assertThat(moved.sameCloth(front(), 1)).isFalse();
        assertThat(front()).isEqualTo(front());
        assertThat(front().sameCloth(front().named("other"), 0)).isTrue();
    }

    /** A slash left as gathers stays in the folded length, as the smooth line drawn across it; a stitched dart does not. */
    @Test
    void fourLengths() {
        Piece darted = front();
        assertThat(Lengths.base(darted, "waist")).isCloseTo(170, within(1e-9));
        assertThat(Lengths.folded(darted, "waist")).isCloseTo(170, within(1e-9));
        assertThat(Lengths.drawn(darted, "waist")).isGreaterThan(210);

        Piece gathered = darted.using("waist dart", new Use.Left(Use.Kind.GATHERS));
        assertThat(Lengths.base(gathered, "waist")).isCloseTo(170, within(1e-9));
        assertThat(Lengths.folded(gathered, "waist")).isCloseTo(210, within(1e-9));
        assertThat(Lengths.drawn(gathered, "waist")).isCloseTo(210, within(1e-9));
    }

    /** A slash ends on a corner when the caller says which edge owns it. */
    @Test
    void aCornerBelongsToTheEdgeNamed() {
        Piece atSide = Darts.rotate(front(), "waist dart", Spot.on("side seam", 0), "dart")
                .piece();
        Piece atWaist = Darts.rotate(front(), "waist dart", Spot.on("waist", 170), "dart")
                .piece();
        assertThat(atSide.opening("dart").mouth().border()).isEqualTo(new Border.OfEdge("side seam"));
        assertThat(Lengths.drawn(atSide, "waist")).isCloseTo(170, within(1e-9));
        assertThat(atWaist.opening("dart").mouth().border()).isEqualTo(new Border.OfEdge("waist"));
        assertThat(Lengths.drawn(atWaist, "side seam")).isCloseTo(Math.hypot(20, 190), within(1e-9));
    }
}
