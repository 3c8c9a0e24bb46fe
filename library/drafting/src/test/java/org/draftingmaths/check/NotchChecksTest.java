package org.draftingmaths.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.piece.Beside;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Notch;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NotchChecksTest {

    /** A panel whose one long edge bows by so many mm, more towards its top, with corners alike; 300 mm from corner to corner. */
    private static Piece panel(double bow, double... notches) {
        Piece piece = Drawing.of("panel")
                .from(0, 0)
                .edge("bottom", Role.SEAM)
                .line(150, 0)
                .edge("long", Role.SEAM)
                .curve(150 + bow, 100, 150 + 2 * bow, 220, 150, 300)
                .edge("top", Role.SEAM)
                .line(0, 300)
                .edge("other long", Role.SEAM)
                .line(0, 0)
                .piece();
        for (double notch : notches) {
            piece = piece.notched(new Notch("long", notch, Beside.BEFORE));
        }
        return piece;
    }

    private static List<Finding> found(Piece piece) {
        return Checks.all(new Draft("draft", List.of(piece), List.of()), 0.5).stream()
                .filter(finding -> finding.kind() == Finding.Kind.NOTCHES_SYMMETRIC
                        || finding.kind() == Finding.Kind.NOTCHES_TOO_MANY)
                .toList();
    }

    /** Notches at 80 mm from either end, or nearly, read the same both ways; at 80 and 100 they do not. */
    @ParameterizedTest
    @CsvSource({"0, true", "2, true", "20, false"})
    void notchesThatReadTheSameBothWaysAreFound(double moved, boolean told) {
        Piece bare = panel(4);
        double length = bare.edge("long").length();
        List<Finding> found = found(panel(4, 80, length - 80 - moved));
        if (told) {
            assertThat(found).extracting(Finding::kind).containsExactly(Finding.Kind.NOTCHES_SYMMETRIC);
            assertThat(found.get(0).where()).isEqualTo("'long' of 'panel'");
            assertThat(found.get(0).measured()).isCloseTo(moved, within(1e-9));
        } else {
            assertThat(found).isEmpty();
        }
    }

    /** A straight edge with like corners is the same both ways: nothing can be sewn the wrong way round. */
    @Test
    void anEdgeThatIsTheSameBothWaysIsSilent() {
        assertThat(found(panel(0, 80, 220))).isEmpty();
    }

    /** A bow of 30 mm shows which way the edge lies. */
    @Test
    void anEdgeThatShowsItsWayIsSilent() {
        Piece bare = panel(30);
        assertThat(found(panel(30, 80, bare.edge("long").length() - 80))).isEmpty();
    }

    /** 300 mm carry 1 + 7 notches. */
    @Test
    void moreNotchesThanCanBeToldApartAreFound() {
        assertThat(found(panel(0, 20, 50, 90, 120, 150, 200, 240, 280))).isEmpty();
        List<Finding> found = found(panel(0, 20, 50, 90, 120, 150, 200, 240, 270, 280));
        assertThat(found).extracting(Finding::kind).containsExactly(Finding.Kind.NOTCHES_TOO_MANY);
        assertThat(found.get(0).measured()).isEqualTo(9);
        assertThat(found.get(0).expected()).isEqualTo(8);
    }
}
