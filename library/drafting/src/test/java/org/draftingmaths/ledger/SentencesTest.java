package org.draftingmaths.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.draftingmaths.dart.DartMoved;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.piece.Step;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.api.Test;

/** Entries say what was done, in both unit systems, and nothing that rounding made up. */
class SentencesTest {

    private static String moved(double left) {
        return new DartMoved("bust dart", "side dart", 0.25, left, 60, 40).sentence(Steps.DEFAULT);
    }

    @Test
    void whatRoundingLeavesOfADartIsNothing() {
        assertThat(moved(0)).contains(": nothing of it is left;");
        assertThat(moved(3e-15)).isEqualTo(moved(0));
        assertThat(moved(-3e-15)).isEqualTo(moved(0));
        assertThat(moved(Math.toRadians(0.03))).contains(": 0.03° of it are left;");
        assertThat(moved(Math.toRadians(4.2))).contains(": 4.2° of it are left;");
    }

    private static String changed(double before, double after) {
        return new Change("angle of 'dart'", Quantity.ANGLE, before, after).sentence(Steps.DEFAULT);
    }

    @Test
    void whatComesOrGoesWhollyIsSaidSo() {
        assertThat(changed(0, Math.toRadians(15)))
                .isEqualTo("The angle of 'dart' is now 15.0°; there was none before.");
        assertThat(changed(Math.toRadians(15), 1e-16))
                .isEqualTo("The angle of 'dart' was 15.0°; nothing of it is left.");
        assertThat(changed(Math.toRadians(15), Math.toRadians(9)))
                .isEqualTo("The angle of 'dart' goes from 15.0° to 9.0°.");
        assertThat(changed(0, 0)).isEqualTo("The angle of 'dart' stays 0.0°.");
    }

    /** What is less than the finest figure that is told is no change to be told. */
    @Test
    void aChangeThatATapeCannotShowIsNotSaidToGoFromAFigureToTheSame() {
        assertThat(new Change("length of 'hem'", Quantity.LENGTH, 254, 254.03).sentence(Steps.DEFAULT))
                .isEqualTo("The length of 'hem' stays near 10 in (25.4 cm), 0.03 mm more.");
        assertThat(new Change("length of 'hem'", Quantity.LENGTH, 254, 253.84).sentence(Steps.DEFAULT))
                .isEqualTo("The length of 'hem' stays near 10 in (25.4 cm), 0.16 mm less.");
        assertThat(new Change("length of 'hem'", Quantity.LENGTH, 254, 253.999).sentence(Steps.DEFAULT))
                .isEqualTo("The length of 'hem' stays 10 in (25.4 cm), as near as can be drawn.");
    }

    private static String carried(AffineTransformMatrix2D by) {
        return new Step.Moved(List.of(new Step.MovedPanel(Spot.on("hem", 10), "the part with 'hem'", by)))
                .sentence(Steps.DEFAULT);
    }

    @Test
    void movesAreToldByWayAndInBothUnits() {
        assertThat(carried(AffineTransformMatrix2D.createTranslation(50, 0)))
                .isEqualTo("Move the part with 'hem' by 2 in (5.0 cm) to the right.");
        assertThat(carried(AffineTransformMatrix2D.createTranslation(-50, 25.4)))
                .isEqualTo("Move the part with 'hem' by 2 in (5.0 cm) to the left and by 1 in (2.5 cm) up.");
        assertThat(carried(AffineTransformMatrix2D.createRotation(-Math.PI / 12)))
                .isEqualTo("Turn the part with 'hem' by 15.0° clockwise.");
    }
}
