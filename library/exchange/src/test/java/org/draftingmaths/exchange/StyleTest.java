package org.draftingmaths.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.draftingmaths.finish.Allowances;
import org.draftingmaths.finish.Cutting;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.piece.Unfold;
import org.draftingmaths.unit.Length;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A pouch of two halves on the fold and a flap cut whole: what is cut, how it is sewn, and what is missing. */
class StyleTest {

    private static final Allowances PLAN = Allowances.of(Length.mm(10));

    private static Piece half(String name) {
        return Drawing.of(name)
                .from(0, 0)
                .edge("bottom", Role.SEAM)
                .line(120, 0)
                .edge("side", Role.SEAM)
                .line(120, 160)
                .edge("top", Role.FINISHED)
                .line(0, 160)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .grain(30, 30, 30, 130)
                .piece();
    }

    private static Draft pouch(Piece front, Piece back) {
        return new Draft(
                "pouch",
                List.of(front, back),
                List.of(
                        Seam.flat("bottom", Seam.Mate.of("front", "bottom"), Seam.Mate.of("back", "bottom")),
                        Seam.flat("side", Seam.Mate.of("front", "side"), Seam.Mate.of("back", "side"))));
    }

    private static Style style(String size, Draft draft, ToCut... cuts) {
        return Style.of("Pouch", size, "version 1", draft, StepSheet.of("Pouch"), List.of(cuts));
    }

    private static ToCut once(String piece) {
        return ToCut.of(piece, PLAN, Cutting.once()).small();
    }

    private static List<Finding.Kind> kinds(Style style) {
        return style.findings().stream().map(Finding::kind).toList();
    }

    @Test
    void aWholeSetIsSilent() {
        assertThat(style("one", pouch(half("front"), half("back")), once("front"), once("back"))
                        .findings())
                .isEmpty();
    }

    @Test
    void aPieceThatIsNotCutIsFound() {
        Style style = style("one", pouch(half("front"), half("back")), once("front"));
        assertThat(kinds(style)).containsExactly(Finding.Kind.PIECE_UNCUT);
        assertThat(style.findings().get(0).where()).isEqualTo("'back'");
    }

    @Test
    void anEmptySizeIsFound() {
        assertThat(kinds(style(" ", pouch(half("front"), half("back")), once("front"), once("back"))))
                .containsExactly(Finding.Kind.LABEL_SILENT);
    }

    /** Two fronts on the fold have four sides, one back has two. */
    @Test
    void whatIsSewnTogetherIsCutEquallyOften() {
        ToCut twice = ToCut.of("front", PLAN, new Cutting(2, false, Cutting.Cloth.SELF))
                .small();
        Style style = style("one", pouch(half("front"), half("back")), twice, once("back"));
        assertThat(kinds(style)).containsExactly(Finding.Kind.MATES_UNCUT, Finding.Kind.MATES_UNCUT);
        assertThat(style.findings().get(1).measured()).isEqualTo(4);
        assertThat(style.findings().get(1).expected()).isEqualTo(2);
    }

    /** Opened out, the back has both sides on one piece. A lining is a garment of its own. */
    @Test
    void anOpenedPieceAndALiningAreCounted() {
        Piece whole = Unfold.at(half("back"), "centre").piece();
        ToCut lined = ToCut.of("back", PLAN, Cutting.once(), new Cutting(1, false, Cutting.Cloth.LINING))
                .small();
        assertThat(style("one", pouch(half("front"), whole), once("front"), lined)
                        .findings())
                .isEmpty();
    }

    /** What is within a piece first, then the seams in their order, what stays free last; 160 mm are 6 1/4 in to the eighth. */
    @Test
    void theOrderOfMakeFollowsTheSeams() {
        Piece darted = Drawing.of("front")
                .from(0, 0)
                .edge("bottom", Role.SEAM)
                .line(120, 0)
                .edge("side", Role.SEAM)
                .line(120, 160)
                .edge("top", Role.FINISHED)
                .line(70, 160)
                .dart("tuck-in", 60, 90, 50, 160, 0, Leg.AFTER)
                .line(0, 160)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .grain(30, 30, 30, 130)
                .piece();
        Style style = Style.of(
                "Pouch",
                "one",
                "version 1",
                pouch(darted, half("back")),
                StepSheet.of("Pouch").then("Draw it", Ledger.EMPTY),
                List.of(once("front"), once("back")));
        assertThat(style.markdown(Steps.DEFAULT))
                .containsSubsequence(
                        "## Cut out",
                        "- 'front', piece 1 of 2: cut 1 on the fold, self.",
                        "- 'back', piece 2 of 2: cut 1 on the fold, self.",
                        "## Sew",
                        "1. Sew 'tuck-in' of 'front' from the edge to its point, and press it towards the centre.",
                        "2. Sew 'bottom' of 'front' to 'bottom' of 'back', 4 3/4 in (12.0 cm).",
                        "3. Sew 'side' of 'front' to 'side' of 'back', 6 1/4 in (16.0 cm).",
                        "4. Neaten, face or bind 'top' of 'front' and 'top' of 'back'.",
                        "## Before you cut")
                .doesNotContain("<svg");
        assertThat(style.html(Steps.DEFAULT)).contains("<h2>Cut out</h2>", "<figure>\n", "<h2>Sew</h2>");
    }

    @Test
    void aPieceNamedTwiceIsRefused() {
        assertThatThrownBy(() ->
                        style("one", pouch(half("front"), half("back")), once("front"), once("back"), once("front")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(
                        "'front' is named more than once among what is cut; name it once, with all that is cut of it.");
    }

    /** Signs, spaces and capitals are lost in the names of files: what would be overwritten is refused, and no file is begun. */
    @Test
    void piecesOfOneFileNameAreRefusedBeforeAnythingIsWritten(@TempDir Path folder) throws IOException {
        Draft draft = new Draft("pouch", List.of(half("left front"), half("Left-Front")), List.of());
        Style style = style("one", draft, once("left front"), once("Left-Front"));
        Path into = folder.resolve("pouch");
        assertThatThrownBy(() -> style.writeTo(into))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining(
                        "'left front' and 'Left-Front' would both be written to 'pouch-left-front.svg'; give one of them another name");
        assertThat(into).doesNotExist();
        Draft apart = new Draft("pouch", List.of(half("left front"), half("right front")), List.of());
        assertThat(style("one", apart, once("left front"), once("right front")).writeTo(into))
                .extracting(path -> path.getFileName().toString())
                .contains("pouch-left-front.svg", "pouch-right-front.svg")
                .doesNotHaveDuplicates();
    }
}
