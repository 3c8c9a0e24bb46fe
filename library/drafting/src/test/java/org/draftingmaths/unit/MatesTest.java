package org.draftingmaths.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class MatesTest {

    private static final Length HALF_MM = Length.mm(0.5);

    @Test
    void printAlike_matchingMatesEitherSideOfATie_printTheMean() {
        Length back = Length.mm(20.63);
        Length front = Length.mm(20.65);
        assertThat(Steps.DEFAULT.inches(back)).isEqualTo("3/4 in");
        assertThat(Steps.DEFAULT.inches(front)).isEqualTo("7/8 in");

        Mates.Printed printed = Mates.printAlike(back, front, HALF_MM);

        assertThat(printed).isEqualTo(new Mates.Printed(Length.mm(20.64), Length.mm(20.64), true));
        assertThat(Steps.DEFAULT.inches(printed.first())).isEqualTo("7/8 in");
    }

    @Test
    void printAlike_differenceOfExactlyTheTolerance_matches() {
        // 100.3 - 99.8 is 0.5 in decimal; in binary it is not.
        Mates.Printed printed = Mates.printAlike(Length.mm(99.8), Length.mm(100.3), HALF_MM);
        assertThat(printed.alike()).isTrue();
        assertThat(printed.first()).isEqualTo(Length.mm(100.05));
    }

    @Test
    void printAlike_matesThatDoNotMatch_keepTheirOwn() {
        Length back = Length.mm(99.7);
        Length front = Length.mm(100.3);
        assertThat(Mates.printAlike(back, front, HALF_MM)).isEqualTo(new Mates.Printed(back, front, false));
        assertThat(Mates.printAlike(front, back, HALF_MM)).isEqualTo(new Mates.Printed(front, back, false));
    }

    @Test
    void printAlike_negativeTolerance_isRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Mates.printAlike(Length.ZERO, Length.ZERO, Length.mm(-1)))
                .withMessage("A tolerance must be at least 0 mm, but was -1 mm");
    }
}
