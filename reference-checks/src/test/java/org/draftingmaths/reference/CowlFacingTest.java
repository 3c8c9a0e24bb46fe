package org.draftingmaths.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.block.TorsoBlock;
import org.draftingmaths.check.Checks;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Inside;
import org.draftingmaths.finish.Facings;
import org.draftingmaths.fullness.Cowl;
import org.draftingmaths.fullness.CowlLines;
import org.draftingmaths.fullness.Cowls;
import org.draftingmaths.fullness.Hang;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.measure.Ease;
import org.draftingmaths.measure.Measure;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.measure.ProportionRules;
import org.draftingmaths.measure.Wearer;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Panels;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Role;
import org.draftingmaths.unit.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The facing of a cowl cut in one with it, folded and compared, on fronts of several sizes. */
class CowlFacingTest {

    private static final double WIDTH = 50;

    static Stream<Integer> busts() {
        return Stream.of(80, 84, 88, 92, 96, 100, 104, 108, 112);
    }

    private static Piece front(int bust) {
        Measurements body = Measurements.of("bust " + bust, Wearer.ADULT)
                .with(Measure.BUST, Length.cm(bust))
                .with(Measure.WAIST, Length.cm(bust - 17))
                .with(Measure.HIP, Length.cm(bust + 8))
                .filledBy(ProportionRules.TORSO);
        return TorsoBlock.bodice(body, Ease.CLOSE_FITTING).draft().piece("front");
    }

    /** The bust dart is closed into the cowl whole, so that the shoulder is straight. */
    private static Cowl cowl(Piece front) {
        CowlLines lines = CowlLines.closing(front, "centre front", "neckline", "bust dart")
                .andClosing("waist dart");
        double turn = Measured.angle(front, "bust dart") + Math.toRadians(2);
        return Cowls.byLength(front, lines, Cowls.lengthFor(front, lines, turn), Hang.CATENARY);
    }

    /**
     * Folded at the edge, the facing's shoulder lies on the shoulder and its centre on the centre, to 1e-6 mm; its free edge lies on the
     * cloth, everywhere as deep as asked; the fold goes on as one edge.
     */
    @ParameterizedTest
    @MethodSource("busts")
    void foldedItLiesOnTheFront(int bust) {
        Cowl cowl = cowl(front(bust));
        Reworked faced = Facings.cutInOne(cowl.piece(), "neckline", WIDTH);
        double level = Paper.edge(cowl.piece(), "neckline").start().getY();
        CurvePath shoulder = Paper.edge(cowl.piece(), "shoulder");
        CurvePath beyond = Paper.edge(faced.piece(), "shoulder turned");
        double along = 0;
        for (int i = 0; i <= 20; i++) {
            Vector2D folded = folded(beyond.pointAt(i * beyond.length() / 20), level);
            along = Math.max(along, folded.distance(nearest(shoulder, folded, level)));
        }
        assertThat(along).isLessThan(1e-6);
        CurvePath free = Paper.edge(faced.piece(), "outer edge of neckline");
        CurvePath outline = Paper.outline(cowl.piece());
        for (int i = 1; i < 20; i++) {
            Vector2D folded = folded(free.pointAt(i * free.length() / 20), level);
            assertThat(level - folded.getY()).isCloseTo(WIDTH, within(1e-6));
            assertThat(Inside.of(outline, folded, 1e-6)).isNotEqualTo(Inside.Where.OUTSIDE);
        }
        CurvePath fold = Paper.edge(faced.piece(), "centre front");
        assertThat(fold.start().distance(Vector2D.of(0, level + WIDTH))).isLessThan(1e-6);
        assertThat(fold.curves()).hasSize(1);
        assertThat(Checks.piece(faced.piece(), 1e-6)).isEmpty();
        assertThat(Panels.undo(faced).sameCloth(cowl.piece(), 1e-6)).isTrue();
        assertThat(faced.piece().edge("shoulder turned").role()).isEqualTo(Role.SEAM);
    }

    private static Vector2D folded(Vector2D point, double level) {
        return Vector2D.of(point.getX(), 2 * level - point.getY());
    }

    /** The shoulder is straight: the point at the same distance from the neck point. */
    private static Vector2D nearest(CurvePath shoulder, Vector2D point, double level) {
        Vector2D neck = shoulder.end();
        assertThat(neck.getY()).isCloseTo(level, within(1e-6));
        return shoulder.pointAt(shoulder.length() - neck.distance(point));
    }

    @Test
    void aCurvedEdgeIsRefused() {
        Piece curved = Drawing.of("front")
                .from(0, 0)
                .edge("waist", Role.SEAM)
                .line(230, 0)
                .edge("side seam", Role.SEAM)
                .line(190, 400)
                .edge("neckline", Role.FINISHED)
                .curve(140, 398, 60, 396, 0, 400)
                .edge("centre front", Role.FOLD)
                .line(0, 0)
                .piece();
        assertThatThrownBy(() -> Facings.cutInOne(curved, "neckline", WIDTH))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining("it is curved, and cloth folds on a straight line only");
    }
}
