package org.draftingmaths.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Texts are the same where the decimal mark is a comma and where digits are not 0 to 9. */
class LocaleTest {

    private Locale before;

    @BeforeEach
    void remember() {
        before = Locale.getDefault();
    }

    @AfterEach
    void restore() {
        Locale.setDefault(before);
    }

    @ParameterizedTest
    @ValueSource(strings = {"de-DE", "ar", "ar-EG-u-nu-arab", "tr-TR"})
    void texts_areTheSameEverywhere(String tag) {
        Locale.setDefault(Locale.forLanguageTag(tag));

        Length length = Length.parse("2 5/8 in");
        assertThat(length).hasToString("66.675 mm");
        assertThat(Length.parse("6.7 cm")).hasToString("67 mm");
        assertThat(Steps.DEFAULT.both(length)).isEqualTo("2 5/8 in (6.7 cm)");
        assertThat(Angles.degrees(-0.2242)).isEqualTo("-12.8°");
        assertThat(new PrintedSum(List.of(length, length), Steps.DEFAULT).inches())
                .isEqualTo("5 1/4 in");
        assertThat(new PrintedSum(List.of(length, length), Steps.DEFAULT).cm())
                .isEqualTo("13.3 cm (the printed parts add up to 13.4 cm)");
        assertThat(PairCheck.check("5/8 in", "1.5 cm", Steps.DEFAULT).sentence())
                .startsWith("5/8 in is 15.875 mm and 1.5 cm is 15 mm, 0.875 mm apart");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.parse("1,5 cm"))
                .withMessageStartingWith("Cannot read [1,5 cm] as a length: it has a decimal comma");
    }
}
