package org.draftingmaths.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Test;

class PrintedSumTest {

    @Test
    void partsThatAddUp_needNoRemark() {
        PrintedSum sum = new PrintedSum(List.of(Length.inches(1.5), Length.inches(2.25)), Steps.DEFAULT);
        assertThat(sum.inches()).isEqualTo("3 3/4 in");
        assertThat(sum.cm()).isEqualTo("9.5 cm");
        assertThat(sum.missInches()).isEqualTo(Length.ZERO);
        assertThat(sum.missCm()).isEqualTo(Length.ZERO);
    }

    @Test
    void partsRoundedUp_exceedTheTotal_andItIsSaid() {
        // Each 26.9875 mm prints as 1 1/8 in and 2.7 cm; together they are 53.975 mm, 2 1/8 in and 5.4 cm.
        PrintedSum sum = new PrintedSum(List.of(Length.inches(1.0625), Length.inches(1.0625)), Steps.DEFAULT);
        assertThat(sum.inches()).isEqualTo("2 1/8 in (the printed parts add up to 2 1/4 in)");
        assertThat(sum.cm()).isEqualTo("5.4 cm");
        assertThat(sum.missInches()).isEqualTo(Length.mm(3.175));
    }

    @Test
    void partsRoundedDown_fallShortOfTheTotal_andItIsSaid() {
        PrintedSum sum = new PrintedSum(List.of(Length.mm(10.4), Length.mm(10.4), Length.mm(10.4)), Steps.DEFAULT);
        assertThat(sum.total()).isEqualTo(Length.mm(31.2));
        assertThat(sum.cm()).isEqualTo("3.1 cm (the printed parts add up to 3.0 cm)");
        assertThat(sum.missCm()).isEqualTo(Length.mm(-1));
    }

    @Test
    void total_isAddedInDecimal() {
        // 0.1 + 0.2 in binary is 0.30000000000000004.
        PrintedSum sum = new PrintedSum(List.of(Length.mm(0.1), Length.mm(0.2)), Steps.DEFAULT);
        assertThat(sum.total()).isEqualTo(Length.mm(0.3));
    }

    @Test
    void noParts_isRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PrintedSum(List.of(), Steps.DEFAULT))
                .withMessage("A printed sum needs at least one part, but there was none");
    }
}
