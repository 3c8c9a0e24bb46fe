package org.draftingmaths.unit;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import java.util.function.DoubleConsumer;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

class AskedTest {

    private static void refused(String message, ThrowingCallable asked) {
        assertThatThrownBy(asked).isInstanceOf(IllegalArgumentException.class).hasMessage(message);
    }

    @Test
    void theValueAndTheRangeAreSaid() {
        refused("A width is more than 0 mm: 0.0 mm.", () -> Asked.length("A width", 0));
        refused("A tolerance is 0 mm or more: -0.5 mm.", () -> Asked.lengthOrNone("A tolerance", -0.5));
        refused("An angle is more than 0: 0.0 rad.", () -> Asked.angle("An angle", 0));
        refused("A tolerance is 0 rad or more: -1.0 rad.", () -> Asked.angleOrNone("A tolerance", -1));
        refused("A share is more than 0 and at most 1: 1.5.", () -> Asked.share("A share", 1.5));
        refused("Slashes are from 1 to 3: 4.", () -> Asked.count("Slashes", 4, 3));
        refused("A ratio is more than 1: 1.0.", () -> Asked.ratio("A ratio", 1));
        refused("A hem is more than a seam of 5.0 mm: 5.0 mm.", () -> Asked.longer("A hem", 5, "a seam", 5));
    }

    /** The ends of each range that belong to it, and what is no number at all. */
    @Test
    void theEndsOfTheRanges() {
        assertThatCode(() -> Asked.lengthOrNone("", 0)).doesNotThrowAnyException();
        assertThatCode(() -> Asked.angleOrNone("", 0)).doesNotThrowAnyException();
        assertThatCode(() -> Asked.share("", 1)).doesNotThrowAnyException();
        assertThatCode(() -> Asked.count("", 3, 3)).doesNotThrowAnyException();
        Map<String, DoubleConsumer> all = Map.of(
                "length", figure -> Asked.length("", figure),
                "length or none", figure -> Asked.lengthOrNone("", figure),
                "angle", figure -> Asked.angle("", figure),
                "angle or none", figure -> Asked.angleOrNone("", figure),
                "share", figure -> Asked.share("", figure),
                "ratio", figure -> Asked.ratio("", figure),
                "longer", figure -> Asked.longer("", figure, "", 1));
        all.forEach((which, asked) -> {
            for (double figure : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
                assertThatThrownBy(() -> asked.accept(figure))
                        .as("%s of %s", which, figure)
                        .isInstanceOf(IllegalArgumentException.class);
            }
        });
    }
}
