package org.draftingmaths.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.draftingmaths.finish.Cutting;
import org.draftingmaths.finish.Hems;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.piece.Unfold;

/** Whether the pieces that are cut are all that is sewn, equally often, and say what they are. */
final class PieceSet {

    /** Cloths that are sewn to a garment of their own. */
    private static final Set<Cutting.Cloth> OTHER =
            new TreeSet<>(List.of(Cutting.Cloth.LINING, Cutting.Cloth.INTERFACING));

    private PieceSet() {}

    static List<Finding> findings(String title, String size, String version, Draft draft, List<ToCut> cuts) {
        List<Finding> findings = new ArrayList<>();
        said("style", title, findings);
        said("size", size, findings);
        said("version", version, findings);
        draft.pieces().stream()
                .filter(piece -> cuts.stream().noneMatch(cut -> cut.piece().equals(piece.name())))
                .forEach(piece -> findings.add(counted(
                        Finding.Kind.PIECE_UNCUT,
                        "'" + piece.name() + "'",
                        0,
                        1,
                        "Say how often it is cut, of which cloth.")));
        // What is caught in may lie in two layers, as a strap that is turned through.
        draft.seams().stream().filter(seam -> !seam.caught()).forEach(seam -> mates(seam, draft, cuts, findings));
        draft.pieces().forEach(piece -> unsewn(draft, piece, findings));
        return findings;
    }

    /** A whole style says of every edge that is to be sewn what it is sewn to; an end that is turned in with a hem has its seam in the hem's. */
    private static void unsewn(Draft draft, Piece piece, List<Finding> findings) {
        piece.edges().stream()
                .filter(edge -> edge.role() == Role.SEAM && !isSewn(draft, piece.name(), edge.name()))
                .filter(edge -> !Hems.isTurnedEnd(edge.name()) && !Unfold.isImage(piece, edge.name()))
                .forEach(edge -> findings.add(counted(
                        Finding.Kind.EDGE_UNSEWN,
                        "'" + edge.name() + "' of '" + piece.name() + "'",
                        0,
                        1,
                        "Declare its seam; or draw it as a finished edge, if it is turned in or bound.")));
    }

    static boolean isSewn(Draft draft, String piece, String edge) {
        return draft.seams().stream()
                .flatMap(seam -> Stream.of(seam.first(), seam.second()))
                .flatMap(mate -> mate.parts().stream())
                .anyMatch(part -> part.piece().equals(piece) && part.edge().equals(edge));
    }

    private static void said(String what, String says, List<Finding> findings) {
        if (says.isBlank()) {
            findings.add(counted(Finding.Kind.LABEL_SILENT, what, 0, 1, ""));
        }
    }

    private static void mates(Seam seam, Draft draft, List<ToCut> cuts, List<Finding> findings) {
        int first = times(seam.first(), draft, cuts);
        int second = times(seam.second(), draft, cuts);
        if (first > 0 && second > 0 && first != second) {
            findings.add(counted(
                    Finding.Kind.MATES_UNCUT,
                    "seam '" + seam.name() + "', " + seam.first().words() + " on "
                            + seam.second().words(),
                    first,
                    second,
                    ""));
        }
    }

    /** How often one side of a seam is there when all is cut; nothing when part of it is not cut at all. */
    private static int times(Seam.Mate mate, Draft draft, List<ToCut> cuts) {
        int times = Integer.MAX_VALUE;
        for (Seam.Part part : mate.parts()) {
            long taken = mate.parts().stream()
                    .filter(other -> other.piece().equals(part.piece())
                            && other.edge().equals(part.edge())
                            && other.from().equals(part.from()))
                    .count();
            int there = cuts.stream()
                    .filter(cut -> cut.piece().equals(part.piece()))
                    .mapToInt(cut -> edges(draft.piece(part.piece()), part.edge(), cut))
                    .sum();
            times = (int) Math.min(times, there / taken);
        }
        return times;
    }

    /** A piece on the fold has each of its other edges twice, and so has one that was opened out. */
    private static int edges(Piece piece, String edge, ToCut cut) {
        int count = cut.cuttings().stream()
                .filter(cutting -> !OTHER.contains(cutting.cloth()))
                .mapToInt(Cutting::count)
                .sum();
        boolean twice = isOnFold(piece) || Unfold.hasOnBothHalves(piece, edge) || Unfold.isImage(piece, edge);
        return twice ? 2 * count : count;
    }

    static boolean isOnFold(Piece piece) {
        return piece.edges().stream().anyMatch(edge -> edge.role() == Role.FOLD);
    }

    private static Finding counted(Finding.Kind kind, String where, int measured, int expected, String remedy) {
        return new Finding(kind, where, Quantity.COUNT, measured, expected, 0, remedy);
    }
}
