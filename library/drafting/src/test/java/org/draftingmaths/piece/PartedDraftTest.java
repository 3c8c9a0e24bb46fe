package org.draftingmaths.piece;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.seam.Walk;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A draft of which a piece is cut in two: its seams go with the edges. */
class PartedDraftTest {

    /** A square of 100 by 200, anticlockwise from the bottom left, or clockwise from the top right. */
    private static Piece square(String name, boolean anticlockwise) {
        Drawing from = Drawing.of(name).from(0, 0);
        return anticlockwise
                ? from.edge("bottom", Role.HEM)
                        .line(100, 0)
                        .edge("right", Role.SEAM)
                        .line(100, 200)
                        .edge("top", Role.SEAM)
                        .line(0, 200)
                        .edge("left", Role.SEAM)
                        .line(0, 0)
                        .grain(20, 20, 20, 180)
                        .piece()
                : from.edge("left", Role.SEAM)
                        .line(0, 200)
                        .edge("top", Role.SEAM)
                        .line(100, 200)
                        .edge("right", Role.SEAM)
                        .line(100, 0)
                        .edge("bottom", Role.HEM)
                        .line(0, 0)
                        .grain(20, 20, 20, 180)
                        .piece();
    }

    private static Draft draft(boolean anticlockwise) {
        return new Draft(
                "two squares",
                List.of(square("one", anticlockwise), square("two", true)),
                List.of(
                        Seam.flat("top", Seam.Mate.of("one", "top"), Seam.Mate.of("two", "top")),
                        Seam.flat("side", Seam.Mate.of("one", "right"), Seam.Mate.of("two", "left"))));
    }

    /** Cut from the top, 30 mm from the left, straight down; the left part is 30 mm wide. */
    private static Detached cut(Piece piece, boolean anticlockwise) {
        return Detach.across(
                piece,
                StyleLine.straight(
                        "line", Spot.on("top", anticlockwise ? 70 : 30), Spot.on("bottom", anticlockwise ? 30 : 70)),
                "before",
                "after");
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void seamsGoWithTheEdges(boolean anticlockwise) {
        Draft draft = draft(anticlockwise);
        Detached parts = cut(draft.piece("one"), anticlockwise);
        Draft parted = draft.parted("one", parts);
        String left = parts.with("left").name();
        String right = parts.with("right").name();
        assertThat(parted.pieces()).extracting(Piece::name).containsExactly("after", "before", "two");
        assertThat(parted.seams()).extracting(Seam::name).containsExactly("line", "top", "side");
        // The edge's own direction: from the right when it is drawn anticlockwise, else from the left.
        assertThat(parted.seams().get(1).first())
                .isEqualTo(
                        anticlockwise
                                ? Seam.Mate.of(right, "top").then(Seam.Mate.of(left, "top"))
                                : Seam.Mate.of(left, "top").then(Seam.Mate.of(right, "top")));
        assertThat(parted.seams().get(2).first()).isEqualTo(Seam.Mate.of(right, "right"));
        assertThat(Walk.all(parted))
                .allSatisfy(walk -> assertThat(walk.worst().difference()).isEqualTo(0));
    }

    @Test
    void backwardsTheChainIsTurned() {
        Draft draft = new Draft(
                "two squares",
                List.of(square("one", true), square("two", true)),
                List.of(Seam.flat("top", Seam.Mate.backwards("one", "top"), Seam.Mate.of("two", "top"))));
        Detached parts = cut(draft.piece("one"), true);
        assertThat(draft.parted("one", parts).seams().get(1).first())
                .isEqualTo(Seam.Mate.backwards(parts.with("left").name(), "top")
                        .then(Seam.Mate.backwards(parts.with("right").name(), "top")));
    }

    @Test
    void aSeamOfPartOfTheCutEdgeIsRefused() {
        Draft draft = new Draft(
                "two squares",
                List.of(square("one", true), square("two", true)),
                List.of(Seam.flat(
                        "top",
                        Seam.Mate.of("one", "top").between(10, 60),
                        Seam.Mate.of("two", "top").between(0, 50))));
        Detached parts = cut(draft.piece("one"), true);
        assertThatThrownBy(() -> draft.parted("one", parts))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining("Sew 'top' to both parts of 'one'");
    }

    @Test
    void partsOfAnotherPieceAreRefused() {
        Draft draft = draft(true);
        Detached parts = cut(draft.piece("one"), true);
        Draft cut = draft.parted("one", parts);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> cut.parted("after", parts))
                .withMessageContaining("are not the two parts of 'after'");
    }
}
