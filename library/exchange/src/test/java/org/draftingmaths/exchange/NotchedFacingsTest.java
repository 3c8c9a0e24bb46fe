package org.draftingmaths.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.draftingmaths.block.TorsoBlock;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Nearest;
import org.draftingmaths.finish.Allowances;
import org.draftingmaths.finish.Cutting;
import org.draftingmaths.finish.Facing;
import org.draftingmaths.finish.Facings;
import org.draftingmaths.finish.FinalPattern;
import org.draftingmaths.finish.Snip;
import org.draftingmaths.finish.TitleBlock;
import org.draftingmaths.measure.Ease;
import org.draftingmaths.measure.Measure;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.measure.ProportionRules;
import org.draftingmaths.measure.Wearer;
import org.draftingmaths.piece.Beside;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Notch;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.seam.Walk;
import org.draftingmaths.unit.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Armholes notched before their facings are traced: single in front, double at the back, on the facing as on the garment. */
class NotchedFacingsTest {

    private static final List<Facings.On> ARM =
            List.of(new Facings.On("front", "armhole"), new Facings.On("back", "armhole"));

    private static final double PLACE = 90;

    private static Draft notched() {
        Measurements body = Measurements.of("size", Wearer.ADULT)
                .with(Measure.BUST, Length.cm(92))
                .with(Measure.WAIST, Length.cm(76))
                .with(Measure.HIP, Length.cm(101))
                .filledBy(ProportionRules.TORSO);
        Draft draft = TorsoBlock.draft(body, Ease.CLOSE_FITTING).draft();
        for (String name : List.of("front", "back")) {
            draft = draft.with(
                    draft.piece(name).unnotched("armhole").notched(new Notch("armhole", PLACE, Beside.BEFORE)));
        }
        return draft;
    }

    private static List<Double> snips(Piece piece, ToCut cut, String edge, Snip.Kind kind) {
        FinalPattern pattern = FinalPattern.of(
                piece,
                cut.allowances(),
                cut.marking(),
                new TitleBlock("Bodice", "38", 1, 4, cut.cuttings(), "version 1"));
        CurvePath line = Paper.edge(piece, edge);
        return pattern.snips().stream()
                .filter(snip -> snip.kind() == kind)
                .filter(snip -> Nearest.of(line, snip.end()).distance() < 10)
                .map(snip -> Nearest.of(line, snip.end()).at())
                .toList();
    }

    private static ToCut once(String piece) {
        return ToCut.of(piece, Allowances.of(Length.mm(10)), Cutting.once()).small();
    }

    @ParameterizedTest
    @CsvSource({"front, false", "back, true"})
    void aSeparateFacingIsMarkedAsItsGarment(String name, boolean doubled) {
        Draft draft = notched();
        Facing facing = Facings.separate(draft, "arm facing", ARM, 45);
        Piece traced = facing.pieces().get(doubled ? 1 : 0);
        assertThat(traced.name()).isEqualTo(name + " arm facing");
        Snip.Kind kind = doubled ? Snip.Kind.DOUBLE_NOTCH : Snip.Kind.NOTCH;
        for (Piece piece : List.of(draft.piece(name), traced)) {
            ToCut cut = doubled ? once(piece.name()).doubled("armhole") : once(piece.name());
            List<Double> places = snips(piece, cut, "armhole", kind);
            assertThat(places).as(piece.name()).hasSize(doubled ? 2 : 1);
            assertThat(places.stream().mapToDouble(each -> each).average().orElseThrow())
                    .isCloseTo(PLACE, within(0.2));
            if (doubled) {
                assertThat(Math.abs(places.get(1) - places.get(0))).isCloseTo(10, within(0.5));
            }
        }
    }

    /** Walked, garment and facing meet at the notch and at both ends. */
    @Test
    void theFacingMeetsItsGarmentAtTheNotch() {
        Draft draft = notched();
        Facing facing = Facings.separate(draft, "arm facing", ARM, 45);
        List<Piece> pieces = new ArrayList<>(draft.pieces());
        pieces.addAll(facing.pieces());
        for (String name : List.of("front", "back")) {
            Seam seam = Seam.flat("arm", Seam.Mate.of(name, "armhole"), Seam.Mate.of(name + " arm facing", "armhole"));
            Walk walk = Walk.all(new Draft("bodice", pieces, List.of(seam))).get(0);
            assertThat(walk.partnered()).isTrue();
            assertThat(walk.intervals())
                    .hasSize(2)
                    .allSatisfy(each -> assertThat(each.difference()).isCloseTo(0, within(1e-6)));
        }
    }

    /** A facing in one piece has both armholes: its back is told from its front by the notches. */
    @Test
    void aFacingInOnePieceIsSingleInFrontAndDoubleAtTheBack() {
        Piece facing = Facings.inOnePiece(notched(), "arm facing", ARM, 45).only();
        ToCut cut = once("arm facing").doubled("back armhole");
        assertThat(snips(facing, cut, "front armhole", Snip.Kind.NOTCH)).hasSize(1);
        assertThat(snips(facing, cut, "front armhole", Snip.Kind.DOUBLE_NOTCH)).isEmpty();
        assertThat(snips(facing, cut, "back armhole", Snip.Kind.DOUBLE_NOTCH)).hasSize(2);
        assertThat(snips(facing, cut, "back armhole", Snip.Kind.NOTCH)).isEmpty();
    }
}
