package org.draftingmaths.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.draftingmaths.dart.Darts;
import org.draftingmaths.finish.Allowances;
import org.draftingmaths.finish.Cutting;
import org.draftingmaths.finish.Facing;
import org.draftingmaths.finish.Facings;
import org.draftingmaths.finish.Give;
import org.draftingmaths.finish.Hems;
import org.draftingmaths.finish.Marking;
import org.draftingmaths.finish.TurnUp;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Instruction;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.piece.Beside;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Notch;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.piece.Unfold;
import org.draftingmaths.piece.Use;
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
                        "## Before you cut",
                        "Not told here, for the sheet does not know your cloth: how wide it is",
                        "## Cut out",
                        "- 'front', piece 1 of 2: cut 1 on the fold, self.",
                        "- 'back', piece 2 of 2: cut 1 on the fold, self.",
                        "## Sew",
                        "1. Sew 'tuck-in' of 'front' from the edge to the point, and press towards the centre.",
                        "2. Sew 'bottom' of 'front' to 'bottom' of 'back', 4 3/4 in (12.0 cm).",
                        "3. Sew 'side' of 'front' to 'side' of 'back', 6 1/4 in (16.0 cm).",
                        "4. Neaten, face or bind 'top' of 'front' and 'top' of 'back'.")
                .doesNotContain("<svg", "interfacing", "drafted");
        assertThat(style.html(Steps.DEFAULT)).contains("<h2>Cut out</h2>", "<figure>\n", "<h2>Sew</h2>");
    }

    /** What was pressed as a dart and then left unsewn is not pressed; the cutting and sewing come before the drafting. */
    @Test
    void thePressingIsToldWhereADartIsSewn() {
        Piece dart = Drawing.of("front")
                .from(0, 0)
                .edge("bottom", Role.SEAM)
                .line(120, 0)
                .edge("side", Role.SEAM)
                .line(120, 160)
                .edge("top", Role.FINISHED)
                .line(70, 160)
                .dart("dart", 60, 90, 50, 160, 0, Leg.AFTER)
                .line(0, 160)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .grain(30, 30, 30, 130)
                .piece();
        Reworked moved = Darts.rotate(dart, "dart", Spot.on("bottom", 60), "flare");
        Reworked left = Darts.leave(moved.piece(), "flare", Use.Kind.FLARE);
        StepSheet sheet = StepSheet.of("Pouch").then("Move it", moved.ledger()).then("Leave it", left.ledger());
        Draft draft = pouch(left.piece(), half("back"));
        Style style = Style.of("Pouch", "one", "version 1", draft, sheet, List.of(once("front"), once("back")));
        assertThat(sheet.markdown(Steps.DEFAULT)).contains("Press 'flare'");
        assertThat(style.markdown(Steps.DEFAULT))
                .containsSubsequence("## Sew", "## How the pattern is drafted", "### Move it", "Leave 'flare' unsewn")
                .doesNotContain("Press 'flare'", "Sew 'flare'");
    }

    private static Piece faced(String name, boolean curved) {
        Drawing drawing = Drawing.of(name)
                .from(0, 0)
                .edge("hem", Role.HEM)
                .line(120, 0)
                .edge("side", Role.SEAM)
                .line(120, 160)
                .edge("top", Role.FINISHED);
        return (curved ? drawing.curve(80, 160, 40, 130, 0, 130) : drawing.line(0, 160))
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .grain(30, 30, 30, 110)
                .piece();
    }

    private static String facedPouch(boolean curved, Role hem, Cutting.Cloth... cloths) {
        Draft draft = new Draft(
                "pouch",
                List.of(faced("front", curved), faced("back", curved)),
                List.of(Seam.flat("side", Seam.Mate.of("front", "side"), Seam.Mate.of("back", "side"))));
        Facing facing = Facings.separate(
                draft, "facing", List.of(new Facings.On("front", "top"), new Facings.On("back", "top")), 30);
        Making made = Making.of("Pouch", "Draw it", draft, Ledger.EMPTY)
                .adding(
                        "Trace it",
                        facing.pieces(),
                        Stream.concat(
                                        facing.joins().stream(),
                                        Stream.of("front", "back")
                                                .map(piece -> Seam.flat(
                                                        piece + " top",
                                                        Seam.Mate.of(piece, "top"),
                                                        Seam.Mate.of(piece + " facing", "top"))))
                                .toList(),
                        facing.ledger());
        if (hem == Role.HEM) {
            made = made.on("front", "Hem it", StyleTest::hemmed).on("back", "Hem it", StyleTest::hemmed);
        }
        Allowances plan = PLAN.on("outer edge", Length.mm(0));
        List<Cutting> cuttings = Stream.concat(Stream.of(Cutting.Cloth.SELF), Stream.of(cloths))
                .map(cloth -> new Cutting(1, false, cloth))
                .toList();
        return Style.of(
                        "Pouch",
                        "one",
                        "version 1",
                        made.draft(),
                        made.steps(),
                        List.of(
                                once("front"),
                                once("back"),
                                new ToCut("front facing", plan, Marking.DEFAULT, cuttings).small(),
                                new ToCut("back facing", plan, Marking.DEFAULT, cuttings).small()))
                .markdown(Steps.DEFAULT);
    }

    private static Reworked hemmed(Piece piece) {
        TurnUp turned = Hems.turnUp(piece, "hem", 20, new Give(0, 0));
        return new Reworked(turned.piece(), turned.ledger());
    }

    /** Joined, neatened, sewn on, finished: a facing that is on can no longer be neatened in one go. */
    @Test
    void aFacingIsNeatenedBeforeItIsSewnOnAndTurnedAfter() {
        assertThat(facedPouch(true, Role.HEM))
                .containsSubsequence(
                        "No interfacing is told either",
                        "1. Sew 'side' of 'front' to 'side' of 'back', 6 1/4 in (16.0 cm).",
                        "2. Sew 'side' of 'front facing' to 'side' of 'back facing', 1 1/8 in (3.0 cm).",
                        "3. Neaten the outer edge of 'front facing' and 'back facing'.",
                        "4. Sew 'top' of 'front' to 'top' of 'front facing'",
                        "5. Sew 'top' of 'back' to 'top' of 'back facing'",
                        "6. Finish 'front facing' and 'back facing' as one facing: trim",
                        "clip them along the curve",
                        "understitch it",
                        "turn it to the inside and press",
                        "tack it to the allowances at 'side', and nowhere else.",
                        "7. Turn the hem of 'front' and 'back' up on the line 'hem line':"
                                + " turn its raw edge in by 3/8 in (1.0 cm) first, then sew it down.")
                .doesNotContain("Neaten, face or bind");
    }

    /** A tab caught in between a pouch and its facing, and a rim of four parts that is gathered at two places. */
    @Test
    void whatAFacingCatchesInLiesThereFirstAndAChainIsToldByItsPieces() {
        Piece front = faced("front", false);
        Piece back = faced("back", false);
        Facing facing = Facings.separate(
                new Draft("pouch", List.of(front), List.of()), "facing", List.of(new Facings.On("front", "top")), 30);
        Piece tab = strip("tab", 120);
        Piece rim = strip("rim", 440)
                .notched(new Notch("long", 110, Beside.BEFORE))
                .notched(new Notch("long", 220, Beside.BEFORE))
                .notched(new Notch("long", 330, Beside.BEFORE));
        Seam.Mate half = Seam.Mate.of("front", "hem").then(Seam.Mate.backwards("back", "hem"));
        Draft draft = new Draft(
                "pouch",
                List.of(front, back, facing.only(), tab, rim),
                List.of(
                        Seam.flat("top", Seam.Mate.of("front", "top"), Seam.Mate.of("front facing", "top")),
                        Seam.flat("tab", Seam.Mate.of("tab", "long"), Seam.Mate.of("front", "top"))
                                .caughtIn(),
                        new Seam(
                                "rim",
                                half.then(half.mirrored()),
                                Seam.Mate.of("rim", "long"),
                                List.of(
                                        new Seam.Held(1, 10, Seam.How.GATHERS, ""),
                                        new Seam.Held(4, 10, Seam.How.GATHERS, "")))));
        List<ToCut> cuts =
                draft.pieces().stream().map(piece -> once(piece.name())).toList();
        assertThat(Style.of("Pouch", "one", "version 1", draft, StepSheet.of("Pouch"), cuts)
                        .markdown(Steps.DEFAULT))
                .containsSubsequence(
                        "1. Catch 'long' of 'tab' in with 'top' of 'front', 4 3/4 in (12.0 cm).",
                        "2. Turn in the outer edge of 'front facing' by 3/8 in (1.0 cm) and stitch it down.",
                        "3. Sew 'top' of 'front' to 'top' of 'front facing'",
                        "4. Finish 'front facing': trim",
                        "tack it to the allowances it crosses, and nowhere else.",
                        "5. Sew 'hem' of 'front' and 'back', all round, to 'long' of 'rim', 18 7/8 in (48.0 cm)",
                        "; in notch intervals 1 and 4 of 4 gather away 3/8 in (1.0 cm), each;"
                                + " press the allowances away from the gathers.");
    }

    private static Piece strip(String name, double length) {
        return Drawing.of(name)
                .from(0, 0)
                .edge("end", Role.SEAM)
                .line(0, -40)
                .edge("other long", Role.FINISHED)
                .line(length, -40)
                .edge("other end", Role.SEAM)
                .line(length, 0)
                .edge("long", Role.SEAM)
                .line(0, 0)
                .grain(40, -10, 40, -30)
                .piece();
    }

    @Test
    void aStraightFacingIsNotClippedAndInterfacingIsToldWhereThereIsSome() {
        assertThat(facedPouch(false, Role.SEAM, Cutting.Cloth.INTERFACING))
                .contains("Put the interfacing on 'front facing' and 'back facing' before", "understitch it")
                .doesNotContain("clip them", "No interfacing");
    }

    @Test
    void seamsCanBePutToTheEnd() {
        Making made = Making.of("Pouch", "Draw it", pouch(half("front"), half("back")), Ledger.EMPTY);
        assertThat(made.draft().seams()).extracting(Seam::name).containsExactly("bottom", "side");
        assertThat(made.sewnLast("bottom").draft().seams())
                .extracting(Seam::name)
                .containsExactly("side", "bottom");
        assertThatThrownBy(() -> made.sewnLast("hood"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("There is no seam named 'hood'; there are bottom, side.");
    }

    /** It stands where the sewing is, not among the drafting, whenever in the drafting it was said. */
    @Test
    void whatIsToBeMindedStandsBehindTheSeams() {
        Making made = Making.of(
                        "Pouch",
                        "Draw it",
                        pouch(half("front"), half("back")),
                        Ledger.of(new Instruction("Draw it by the figures.")))
                .minding(new Instruction("Turn it through the gap."));
        Style style =
                Style.of("Pouch", "one", "version 1", made.draft(), made.steps(), List.of(once("front"), once("back")));
        assertThat(style.markdown(Steps.DEFAULT))
                .containsSubsequence(
                        "## Sew", "## Mind when you sew", "- Turn it through the gap.", "## How the pattern is drafted")
                .containsOnlyOnce("Mind when you sew");
        Style silent = style("one", pouch(half("front"), half("back")), once("front"), once("back"));
        assertThat(silent.markdown(Steps.DEFAULT)).doesNotContain("Mind when you sew");
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
