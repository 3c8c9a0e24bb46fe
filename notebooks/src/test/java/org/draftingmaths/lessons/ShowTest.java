package org.draftingmaths.lessons;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.draftingmaths.check.Checks;
import org.draftingmaths.exchange.Figure;
import org.draftingmaths.ledger.Change;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.seam.Walk;
import org.junit.jupiter.api.Test;

class ShowTest {

    private static Piece panel(String name, double height) {
        return Drawing.of(name)
                .from(0, 0)
                .edge("hem", Role.HEM)
                .line(120, 0)
                .edge("side", Role.SEAM)
                .line(120, height)
                .edge("top", Role.SEAM)
                .line(0, height)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .piece();
    }

    private static Draft draft(double one, double other) {
        return new Draft(
                "skirt",
                List.of(panel("front", one), panel("back", other)),
                List.of(Seam.flat("side", Seam.Mate.of("front", "side"), Seam.Mate.of("back", "side"))));
    }

    /** 198.2 and 198.6 mm lie on either side of 7 13/16 in: apart they print 7 3/4 and 7 7/8, as mates they print alike. */
    @Test
    void matesThatMatchArePrintedAlike() {
        String table = SeamTable.of(Walk.all(draft(198.2, 198.6)), 0.5);
        assertThat(table).contains("7 3/4 in (19.8 cm)   7 3/4 in (19.8 cm)").contains("-0.40 mm  matches");
        assertThat(SeamTable.of(Walk.all(draft(198.2, 198.8)), 0.5))
                .contains("7 3/4 in (19.8 cm)   7 7/8 in (19.9 cm)")
                .contains("DOES NOT MATCH");
    }

    @Test
    void everythingIsPlainMarkup() {
        Draft draft = draft(200, 204);
        assertThat(Show.seams(draft, 0.5)).startsWith("<table>").contains("<td>-4.00 mm</td><td>does not match</td>");
        assertThat(Show.findings(Checks.all(draft, 0.5))).startsWith("<ul><li>seam 'side'");
        assertThat(Show.findings(List.of())).isEqualTo("<p>Nothing found.</p>");
        assertThat(Show.ledger(Ledger.of(new Change("a < b", Quantity.LENGTH, 10, 10))))
                .isEqualTo("<ol><li>The a &lt; b stays 3/8 in (1.0 cm).</li></ol>");
        assertThat(Show.lengths(panel("front", 200))).contains("<td>side</td><td>7 7/8 in (20.0 cm)</td>");
        assertThat(Show.pieces(Figure.of("Front", panel("front", 200))))
                .startsWith("<svg")
                .contains("viewBox");
    }
}
