package org.draftingmaths.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AnglesTest {

    /** Worked with 30 decimal digits: 12.849999 degrees, then the ties 12.85 and 0.05 degrees, then whole turns. */
    @ParameterizedTest
    @CsvSource({
        "0.22427479142797882,   12.8°",
        "0.22427480888127135,   12.9°",
        "0.2242,                12.8°",
        "0,                     0.0°",
        "-0.0001,               0.0°",
        "0.0008726646259971648, 0.1°",
        "-0.0008726646259971648, -0.1°",
        "3.141592653589793,     180.0°",
        "-6.283185307179586,    -360.0°",
        "7.853981633974483,     450.0°"
    })
    void degrees_oneDecimal(double radians, String text) {
        assertThat(Angles.degrees(radians)).isEqualTo(text);
    }

    @Test
    void degrees_otherDecimals() {
        assertThat(Angles.degrees(Math.PI / 14, 0)).isEqualTo("13°");
        assertThat(Angles.degrees(Math.PI / 14, 3)).isEqualTo("12.857°");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.NEGATIVE_INFINITY, 1e307})
    void degrees_notFinite_isRefused(double radians) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Angles.degrees(radians))
                .withMessage("An angle must be finite, but was " + radians + " rad");
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 10})
    void degrees_decimalsOutOfRange_areRefused(int decimals) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Angles.degrees(0, decimals))
                .withMessage("Decimals must be from 0 to 9, but were " + decimals);
    }
}
