package org.draftingmaths.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Set;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Finding.Kind;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.junit.jupiter.api.Test;

class DraftLimitsTest {

    /** A front with a V at the neck and a hem that slopes by as much; both meet the fold askew. */
    private static final Piece FRONT = Drawing.of("front")
            .from(0, 0)
            .edge("hem", Role.HEM)
            .line(200, 40)
            .edge("side", Role.SEAM)
            .line(200, 500)
            .edge("neckline", Role.FINISHED)
            .line(0, 460)
            .edge("centre front", Role.FOLD)
            .line(0, 0)
            .grain(30, 100, 30, 400)
            .piece();

    private static List<String> found(DraftLimits limits) {
        return Checks.all(new Draft("top", List.of(FRONT), List.of()), 0.5, limits).stream()
                .filter(finding -> finding.kind() == Kind.FOLD_NOT_SQUARE)
                .map(Finding::where)
                .toList();
    }

    @Test
    void whatIsMeantIsNotTold() {
        assertThat(found(DraftLimits.COMMON))
                .hasSize(2)
                .anySatisfy(where -> assertThat(where).contains("'hem'"))
                .anySatisfy(where -> assertThat(where).contains("'neckline'"));
        assertThat(found(DraftLimits.COMMON.meaning(Kind.FOLD_NOT_SQUARE, "neckline")))
                .singleElement()
                .satisfies(where -> assertThat(where).contains("'hem'"));
    }

    /** Another kind at the same place, or the same kind at a place whose name only begins alike, is told. */
    @Test
    void nothingElseIsMeantWithIt() {
        assertThat(found(DraftLimits.COMMON.meaning(Kind.FOLD_NOT_STRAIGHT, "neckline")))
                .hasSize(2);
        assertThat(found(DraftLimits.COMMON.meaning(Kind.FOLD_NOT_SQUARE, "neck")))
                .hasSize(2);
    }

    @Test
    void aLimitIsAnAngle() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new DraftLimits(DartLimits.COMMON, -0.1, 0, 0, 0, Set.of()))
                .withMessageContaining("'square'");
    }
}
