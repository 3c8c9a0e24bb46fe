package org.draftingmaths.seam;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Notch;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Seam;

/**
 * One side of a seam with its marks, in the direction of sewing.
 *
 * @param lengths the folded lengths between its marks, one more than there are marks
 * @param parts for each of these lengths the part of the side that it lies on
 * @param marks for each mark whether it is a notch; otherwise it is a joint of two parts without one
 */
record WalkedSide(List<Double> lengths, List<Seam.Part> parts, List<Boolean> marks) {

    /** Places on an edge that are one. */
    private static final double TOUCH = 1e-6;

    static WalkedSide of(Draft draft, Seam.Mate mate) {
        List<Double> lengths = new ArrayList<>();
        List<Seam.Part> parts = new ArrayList<>();
        List<Boolean> marks = new ArrayList<>();
        for (int i = 0; i < mate.parts().size(); i++) {
            Seam.Part part = mate.parts().get(i);
            Piece piece = draft.piece(part.piece());
            if (i > 0) {
                Seam.Part before = mate.parts().get(i - 1);
                marks.add(notchAt(draft.piece(before.piece()), before, true) || notchAt(piece, part, false));
            }
            List<Double> own = lengths(piece, part, inner(piece, part));
            own.forEach(each -> parts.add(part));
            lengths.addAll(own);
            marks.addAll(Collections.nCopies(own.size() - 1, true));
        }
        return new WalkedSide(List.copyOf(lengths), List.copyOf(parts), List.copyOf(marks));
    }

    private static Stream<Notch> notches(Piece piece, Seam.Part part) {
        return piece.notches().stream().filter(notch -> notch.edge().equals(part.edge()));
    }

    /** Whether a notch marks one end of a part, by the direction of sewing. */
    private static boolean notchAt(Piece piece, Seam.Part part, boolean atStop) {
        Notch end = atStop == part.forward() ? part.end(piece) : part.start();
        return notches(piece, part).anyMatch(notch -> Math.abs(notch.arc() - end.arc()) <= TOUCH);
    }

    /** The notches of a part, less those at its ends, which part nothing; by the edge's own direction. */
    private static List<Notch> inner(Piece piece, Seam.Part part) {
        double start = part.start().arc() + TOUCH;
        double end = part.end(piece).arc() - TOUCH;
        return notches(piece, part)
                .filter(notch -> notch.arc() > start && notch.arc() < end)
                .sorted(Comparator.comparingDouble(Notch::arc).thenComparing(Notch::beside))
                .toList();
    }

    /** Folded lengths between the marks of one part, in the direction of sewing. */
    private static List<Double> lengths(Piece piece, Seam.Part part, List<Notch> inner) {
        List<Notch> places = Stream.of(Stream.of(part.start()), inner.stream(), Stream.of(part.end(piece)))
                .flatMap(each -> each)
                .toList();
        List<Double> lengths = new ArrayList<>();
        for (int i = 1; i < places.size(); i++) {
            lengths.add(Lengths.folded(piece, places.get(i - 1), places.get(i)));
        }
        if (!part.forward()) {
            Collections.reverse(lengths);
        }
        return lengths;
    }

    boolean isNotch(int mark) {
        return marks.get(mark);
    }

    int notches() {
        return (int) marks.stream().filter(notch -> notch).count();
    }

    /** The length from one mark to another; -1 is the start of the side, and one past the last mark its end. */
    double length(int from, int to) {
        return lengths.subList(from + 1, to + 1).stream()
                .mapToDouble(Double::doubleValue)
                .sum();
    }

    /** The parts that lie between two marks. */
    List<Seam.Part> parts(int from, int to) {
        return parts.subList(from + 1, to + 1).stream().distinct().toList();
    }

    /** How far along the side a mark lies, as a share of its length. */
    double share(int mark) {
        return length(-1, mark) / length(-1, marks.size());
    }
}
