package org.draftingmaths.benchmarks;

import java.util.ArrayList;
import java.util.List;
import org.draftingmaths.check.Checks;
import org.draftingmaths.dart.Darts;
import org.draftingmaths.finish.Allowances;
import org.draftingmaths.finish.CutLine;
import org.draftingmaths.fullness.Spread;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.piece.Slash;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.seam.Truing;
import org.draftingmaths.unit.Length;

/** A style of six pieces with fifteen edges each: every edge measured, darts moved, slashes spread, seams trued, allowances added, all checked. */
final class WholeStyle {

    private static final int PIECES = 6;
    private static final int SIDES = 12;

    private WholeStyle() {}

    /** The six pieces; the bow of their sides differs a little, so that there is something to be trued. */
    static List<Piece> pieces() {
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < PIECES; i++) {
            pieces.add(piece("piece " + i, 5 + 0.3 * i));
        }
        return pieces;
    }

    private static Piece piece(String name, double bow) {
        Drawing drawing = Drawing.of(name).from(0, 0).edge("hem", Role.HEM).curve(80, 0, 160, 4, 240, 0);
        for (int i = 0; i < SIDES; i++) {
            double y = 45 * (i + 1);
            drawing = drawing.edge("side " + i, Role.SEAM).curve(240 + bow, y - 30, 240 - bow, y - 15, 240, y);
        }
        return drawing.edge("top", Role.SEAM)
                .line(150, 540)
                .dart("dart", 130, 380, 110, 540, 0, Leg.AFTER)
                .line(0, 540)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .piece();
    }

    /** Everything that is done to the style; the findings at its end. */
    static List<Finding> made(List<Piece> drawn) {
        List<Piece> pieces = drawn.stream().map(WholeStyle::moved).toList();
        Draft draft = trued(new Draft("style", pieces, seams()));
        List<Finding> findings = new ArrayList<>(Checks.all(draft, Checks.SEAM_TOLERANCE));
        for (Piece piece : draft.pieces()) {
            CutLine cut = CutLine.of(piece, Allowances.of(Length.mm(10)));
            findings.addAll(cut.findings(piece));
        }
        return findings;
    }

    private static Piece moved(Piece piece) {
        double measured = piece.edges().stream()
                .mapToDouble(edge -> Lengths.folded(piece, edge.name()))
                .sum();
        Piece moved = Darts.rotate(piece, "dart", Spot.on("side 6", measured / 200), "side dart")
                .piece();
        for (int i = 1; i <= 3; i++) {
            Slash slash = Slash.straight("slash " + i, Spot.on("hem", 30.0 * i), Spot.on("top", 222 - 30.0 * i));
            moved = Spread.hinged(moved, slash, 15).piece();
        }
        return moved;
    }

    private static List<Seam> seams() {
        List<Seam> seams = new ArrayList<>();
        for (int i = 0; i < PIECES; i++) {
            String edge = i % 2 == 0 ? "side 2" : "side 3";
            seams.add(Seam.flat(
                    "seam " + i, Seam.Mate.of("piece " + i, edge), Seam.Mate.of("piece " + (i + 1) % PIECES, edge)));
        }
        return seams;
    }

    private static Draft trued(Draft draft) {
        Draft trued = draft;
        for (Seam seam : draft.seams()) {
            trued = trued.with(Truing.reshape(trued, seam, seam.second(), 2).piece());
        }
        return trued;
    }
}
