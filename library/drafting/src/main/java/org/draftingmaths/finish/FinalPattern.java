package org.draftingmaths.finish;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;

/**
 * A piece ready to be printed and cut: stitch line, cut line, everything that is marked between them and inside, and the
 * texts.
 *
 * <p>Everything lies in the piece's own coordinates, in millimetres, y up. A drawing needs nothing but this record: the cut
 * line is {@code cut().outline()}; every line inside it is a {@link MarkedLine} of some kind; snips are strokes from
 * {@code cut()} to {@code end()}; drill points are points; texts fill their boxes. Texts lie inside the stitch line, clear
 * of darts. A poor pattern is still drawn: what is wrong with it stands in the findings.
 *
 * <pre>{@code
 * FinalPattern front = FinalPattern.of(
 *         piece,
 *         Allowances.of(Length.mm(10)).on("hem", Length.mm(40)).corner("hem", "side seam", CornerCut.TURNED_BACK),
 *         Marking.DEFAULT,
 *         new TitleBlock("Tunic", "38", 1, 4, List.of(Cutting.once()), "version 1"));
 * front.findings();   // nothing, or what a checker would object to
 * }</pre>
 *
 * @param piece the net piece
 * @param net the stitch line on paper, closed, anticlockwise
 * @param cut the cut line with its sides and corners
 * @param lines the lines drawn inside the cut line
 * @param snips the notches and other snips
 * @param drills the drill points
 * @param grain the grain line; none on a piece without one, which is a finding
 * @param labels the texts that found a place
 * @param findings what is wrong
 */
public record FinalPattern(
        Piece piece,
        CurvePath net,
        CutLine cut,
        List<MarkedLine> lines,
        List<Snip> snips,
        List<Drill> drills,
        Optional<GrainLine> grain,
        List<Label> labels,
        List<Finding> findings) {

    /** Copies the lists. */
    public FinalPattern {
        lines = List.copyOf(lines);
        snips = List.copyOf(snips);
        drills = List.copyOf(drills);
        labels = List.copyOf(labels);
        findings = List.copyOf(findings);
    }

    /**
     * Finishes a piece.
     *
     * @param piece the net piece
     * @param plan the allowances
     * @param marking how places are marked
     * @param title what is written on it
     * @return the pattern
     * @throws IllegalArgumentException when plan or marking name an edge the piece does not have
     * @throws DraftingException as {@link CutLine#of}; when notches are asked deeper than half an allowance; when a dart is too
     *     short for its drill point; or when a piece on the fold is to be cut in mirrored pairs
     */
    public static FinalPattern of(Piece piece, Allowances plan, Marking marking, TitleBlock title) {
        boolean onFold = isOnFold(piece);
        requireNoMirroredFold(piece, title, onFold);
        CutLine cut = CutLine.of(piece, plan);
        List<MarkedLine> lines = MarkedLines.of(piece);
        Snips.Cut snips = Snips.of(piece, cut, marking);
        List<Drill> drills = Drills.of(piece, marking.drill());
        Optional<GrainLine> grain = GrainLines.of(piece, marking.oneWay());
        Labelling labelling = Labelling.of(piece, lines, grain, marking, title.lines(piece));
        List<Finding> findings = new ArrayList<>(cut.findings(piece));
        findings.addAll(Folds.findings(piece, Folds.SQUARE));
        findings.addAll(snips.findings());
        if (grain.isEmpty()) {
            findings.add(GrainLines.missing(piece));
        }
        findings.addAll(labelling.findings());
        return new FinalPattern(
                piece, Paper.outline(piece), cut, lines, snips.snips(), drills, grain, labelling.labels(), findings);
    }

    /**
     * Whether the piece is laid on the fold of the cloth: whether it has a fold edge. A piece that was opened out has none, so
     * that no label can say so any more.
     *
     * @return true when it is
     */
    public boolean onFold() {
        return isOnFold(piece);
    }

    static boolean isOnFold(Piece piece) {
        return piece.edges().stream().anyMatch(edge -> edge.role() == Role.FOLD);
    }

    private static void requireNoMirroredFold(Piece piece, TitleBlock title, boolean onFold) {
        if (onFold && title.cuttings().stream().anyMatch(Cutting::mirrored)) {
            throw new DraftingException(
                    "Cut '" + piece.name() + "' in pairs",
                    "it lies on the fold, so that left and right are one; open it out, or make its fold a seam");
        }
    }
}
