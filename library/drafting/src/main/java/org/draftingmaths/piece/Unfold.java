package org.draftingmaths.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.Change;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;

/**
 * A half piece opened out at its fold: the piece and its mirror image, joined along the fold, which is an edge no more.
 *
 * <p>Conserved: every edge, dart, mark and level line of the half, with its name; the grain. Gained: the mirror image of each, under
 * the name with {@code mirrored} before it. With {@code A} the area of the half: the whole has {@code 2A}. The edges that met the
 * fold stay two edges, with a notch on either where they meet at the centre.
 */
public final class Unfold {

    private static final String MIRRORED = "mirrored ";

    private Unfold() {}

    /**
     * Opens a piece out at its fold.
     *
     * @param piece a half piece
     * @param fold the name of its fold: one straight edge that no opening breaks
     * @return the whole piece and what was done
     * @throws DraftingException when the edge is no fold, is not straight, or is broken
     */
    public static Reworked at(Piece piece, String fold) {
        String asked = "Open '" + piece.name() + "' out at '" + fold + "'";
        Run run = foldRun(piece, fold, asked);
        CurvePath line = piece.place(run);
        AffineTransformMatrix2D by =
                Isometry.reflection(line.start(), line.start().vectorTo(line.end()));
        Panel whole = joined(piece, run, by);
        Panel half = panelWith(piece, run);
        List<Panel> panels = new ArrayList<>();
        for (Panel panel : piece.panels()) {
            if (panel.equals(half)) {
                panels.add(whole);
            } else {
                panels.add(panel);
                panels.add(mirrored(panel, by));
            }
        }
        List<Edge> edges = piece.edges().stream()
                .filter(edge -> !edge.name().equals(fold))
                .flatMap(edge -> Stream.of(edge, mirrored(edge)))
                .toList();
        List<Opening> openings = piece.openings().stream()
                .flatMap(opening -> Stream.of(opening, mirrored(opening)))
                .toList();
        List<Notch> notches = Stream.concat(piece.notches().stream(), centreNotches(piece, half, run))
                .flatMap(notch -> Stream.of(notch, new Notch(MIRRORED + notch.edge(), notch.arc(), notch.beside())))
                .toList();
        Piece unfolded = new Piece(
                piece.name(), edges, openings, panels, piece.levels(), piece.insideDarts(), notches, piece.grain());
        Step step = new Step.Unfolded(piece.edge(fold), run, piece.notches());
        Change area = new Change("net area", Quantity.AREA, piece.area(), unfolded.area());
        return new Reworked(unfolded, Ledger.of(step, area));
    }

    private static Run foldRun(Piece piece, String fold, String asked) {
        if (piece.edge(fold).role() != Role.FOLD) {
            throw new DraftingException(asked, "'" + fold + "' is not a fold");
        }
        Run run = Panels.onlyRun(piece, new Border.OfEdge(fold))
                .filter(only -> only.length() == piece.edge(fold).length())
                .orElseThrow(() -> new DraftingException(asked, "an opening breaks the fold"));
        CurvePath line = piece.place(run);
        if (!Centre.isStraight(line)) {
            throw new DraftingException(asked, "the fold is not straight, and cloth folds on a straight line only");
        }
        return run;
    }

    private static Panel panelWith(Piece piece, Run run) {
        return piece.panels().stream()
                .filter(panel -> panel.ring().contains(run))
                .findFirst()
                .orElseThrow();
    }

    private static Panel joined(Piece piece, Run fold, AffineTransformMatrix2D by) {
        Panel half = panelWith(piece, fold);
        List<Run> own = half.onwardsFrom(fold);
        List<Run> others = new ArrayList<>();
        for (int i = own.size() - 1; i >= 0; i--) {
            others.add(mirrored(own.get(i), by));
        }
        List<Run> ring = new ArrayList<>(own);
        ring.addAll(others);
        List<Stretch> lines = Stream.concat(
                        half.lines().stream(), half.lines().stream().map(stretch -> stretch.moved(by)))
                .toList();
        List<Laid> darts = Stream.concat(
                        half.darts().stream(), half.darts().stream().map(dart -> dart.moved(by)))
                .toList();
        return new Panel(ring, lines, darts);
    }

    private static Panel mirrored(Panel panel, AffineTransformMatrix2D by) {
        List<Run> ring = new ArrayList<>();
        for (int i = panel.ring().size() - 1; i >= 0; i--) {
            ring.add(mirrored(panel.ring().get(i), by));
        }
        return new Panel(
                ring,
                panel.lines().stream().map(stretch -> stretch.moved(by)).toList(),
                panel.darts().stream().map(dart -> dart.moved(by)).toList());
    }

    private static Run mirrored(Run run, AffineTransformMatrix2D by) {
        Border border = run.border() instanceof Border.OfLeg leg
                ? new Border.OfLeg(MIRRORED + leg.opening(), leg.leg())
                : mirrored(run.border());
        return run.moved(by).turnedRound().along(border);
    }

    private static Border mirrored(Border border) {
        return new Border.OfEdge(MIRRORED + ((Border.OfEdge) border).edge());
    }

    private static Edge mirrored(Edge edge) {
        return new Edge(MIRRORED + edge.name(), edge.role(), edge.allowance(), edge.base());
    }

    private static Opening mirrored(Opening opening) {
        return new Opening(
                MIRRORED + opening.name(),
                mirrored(opening.mouth()),
                opening.farMouth().map(Unfold::mirrored),
                opening.before(),
                opening.after());
    }

    private static Mouth mirrored(Mouth mouth) {
        return new Mouth(mirrored(mouth.border()), mouth.before(), mouth.after(), mouth.use());
    }

    /** Where the neighbours of the fold met it. */
    private static Stream<Notch> centreNotches(Piece piece, Panel half, Run fold) {
        List<Run> own = half.onwardsFrom(fold);
        Run after = own.get(0);
        Run before = own.get(own.size() - 1);
        return Stream.of(notch(after.border(), after.entry()), notch(before.border(), before.exit()))
                .flatMap(each -> each)
                .filter(notch -> !piece.notches().contains(notch));
    }

    private static Stream<Notch> notch(Border border, double arc) {
        return border instanceof Border.OfEdge edge
                ? Stream.of(new Notch(edge.edge(), arc, Beside.BEFORE))
                : Stream.of();
    }

    /**
     * Whether a piece was opened out, so that it has an edge on both halves.
     *
     * @param piece the piece
     * @param edge an edge of the half that was drawn
     * @return true when its mirror image is an edge of the piece as well
     */
    public static boolean hasOnBothHalves(Piece piece, String edge) {
        return piece.edges().stream().anyMatch(other -> other.name().equals(MIRRORED + edge));
    }

    /**
     * The edge of a piece that was opened out which is the mirror image of another.
     *
     * @param piece the piece
     * @param edge the name of an edge on either half
     * @return the name of its image; nothing where there is none
     */
    public static Optional<String> imageOf(Piece piece, String edge) {
        if (hasOnBothHalves(piece, edge)) {
            return Optional.of(MIRRORED + edge);
        }
        return isImage(piece, edge) ? Optional.of(edge.substring(MIRRORED.length())) : Optional.empty();
    }

    /**
     * Whether an edge is the mirror image of another, on a piece that was opened out.
     *
     * @param piece the piece
     * @param edge one of its edges
     * @return true when it is
     */
    public static boolean isImage(Piece piece, String edge) {
        return piece.edges().stream().anyMatch(other -> edge.equals(MIRRORED + other.name()));
    }

    /**
     * The seams of pieces that were opened out: each that sews an edge of the drawn half is sewn on the other half as well. With {@code M} the
     * mirror image of an edge where the piece was opened out, and the other half or other one of the pair elsewhere: to every seam of {@code a}
     * and {@code b} comes one of {@code M a} and {@code M b}, right behind it, with what is held in the same. A seam that goes over both halves
     * already gets no other, nor one whose image is a seam of the draft. Conserved: the pieces, the seams, their order and lengths.
     *
     * <pre>{@code
     * Draft whole = Unfold.bothHalves(draft.with(Unfold.at(draft.piece("back"), "centre back").piece()));
     * }</pre>
     *
     * @param draft a draft with pieces that were opened out
     * @return the draft with the seams of both halves
     */
    public static Draft bothHalves(Draft draft) {
        List<Seam> seams = new ArrayList<>();
        for (Seam seam : draft.seams()) {
            Seam own = mapped(seam, seam.name(), part -> asOpened(draft, part));
            Seam image = mapped(own, MIRRORED + seam.name(), part -> image(draft, part));
            seams.add(own);
            boolean opened = parts(own).anyMatch(part -> isOpened(draft, part));
            boolean whole = parts(own).anyMatch(part -> parts(image).anyMatch(other -> isSameCloth(part, other)));
            boolean there = draft.seams().stream()
                    .map(other -> mapped(other, other.name(), part -> asOpened(draft, part)))
                    .anyMatch(other -> other.first().equals(image.first())
                            && other.second().equals(image.second()));
            if (opened && !whole && !there) {
                seams.add(image);
            }
        }
        return new Draft(draft.name(), draft.pieces(), seams);
    }

    private static Stream<Seam.Part> parts(Seam seam) {
        return Stream.of(seam.first(), seam.second()).flatMap(mate -> mate.parts().stream());
    }

    private static boolean isSameCloth(Seam.Part one, Seam.Part other) {
        return one.piece().equals(other.piece())
                && one.edge().equals(other.edge())
                && one.mirrored() == other.mirrored();
    }

    private static Seam mapped(Seam seam, String name, UnaryOperator<Seam.Part> by) {
        return new Seam(
                name,
                new Seam.Mate(seam.first().parts().stream().map(by).toList()),
                new Seam.Mate(seam.second().parts().stream().map(by).toList()),
                seam.held(),
                seam.caught());
    }

    private static boolean isOpened(Draft draft, Seam.Part part) {
        Piece piece = draft.piece(part.piece());
        return hasOnBothHalves(piece, part.edge()) || isImage(piece, part.edge());
    }

    /** A part said to be on the other half is on the edge there now. */
    private static Seam.Part asOpened(Draft draft, Seam.Part part) {
        return part.mirrored() && isOpened(draft, part) ? on(part, otherEdge(draft, part), false) : part;
    }

    private static Seam.Part image(Draft draft, Seam.Part part) {
        return isOpened(draft, part)
                ? on(part, otherEdge(draft, part), false)
                : on(part, part.edge(), !part.mirrored());
    }

    private static String otherEdge(Draft draft, Seam.Part part) {
        return isImage(draft.piece(part.piece()), part.edge())
                ? part.edge().substring(MIRRORED.length())
                : MIRRORED + part.edge();
    }

    private static Seam.Part on(Seam.Part part, String edge, boolean mirrored) {
        return new Seam.Part(part.piece(), edge, part.forward(), mirrored, part.from(), part.to());
    }

    /** The half again: what is mirrored goes, and the fold is an edge once more. */
    static Piece undo(Piece piece, Step.Unfolded step) {
        List<Panel> panels = piece.panels().stream()
                .filter(panel -> panel.ring().stream().anyMatch(run -> !isMirrored(run.border())))
                .map(panel -> half(panel, step.run()))
                .toList();
        List<Edge> edges = Stream.concat(
                        piece.edges().stream().filter(edge -> !edge.name().startsWith(MIRRORED)),
                        Stream.of(step.fold()))
                .toList();
        List<Opening> openings = piece.openings().stream()
                .filter(opening -> !opening.name().startsWith(MIRRORED))
                .toList();
        return new Piece(
                piece.name(),
                edges,
                openings,
                panels,
                piece.levels(),
                piece.insideDarts(),
                step.notches(),
                piece.grain());
    }

    private static boolean isMirrored(Border border) {
        String name = border instanceof Border.OfLeg leg ? leg.opening() : ((Border.OfEdge) border).edge();
        return name.startsWith(MIRRORED);
    }

    private static Panel half(Panel panel, Run fold) {
        List<Run> own =
                panel.ring().stream().filter(run -> !isMirrored(run.border())).toList();
        if (own.size() == panel.ring().size()) {
            return panel;
        }
        List<Run> ring = new ArrayList<>(inOrder(panel.ring(), own));
        ring.add(fold);
        return new Panel(
                ring,
                panel.lines().stream()
                        .filter(line -> isProper(line.motion(), fold))
                        .toList(),
                panel.darts().stream()
                        .filter(dart -> isProper(dart.motion(), fold))
                        .toList());
    }

    /** What lies on the half is carried by motions of the same hand as the fold's own. */
    private static boolean isProper(AffineTransformMatrix2D motion, Run fold) {
        return Math.signum(motion.determinant()) == Math.signum(fold.motion().determinant());
    }

    /** The own runs as they follow one another round the ring. */
    private static List<Run> inOrder(List<Run> ring, List<Run> own) {
        for (int i = 0; i < ring.size(); i++) {
            Run before = ring.get((i + ring.size() - 1) % ring.size());
            if (own.contains(ring.get(i)) && isMirrored(before.border())) {
                List<Run> turned = new ArrayList<>(ring.subList(i, ring.size()));
                turned.addAll(ring.subList(0, i));
                return turned.stream().filter(own::contains).toList();
            }
        }
        return own;
    }
}
