package org.draftingmaths.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.draftingmaths.ledger.DraftingException;

/** The seams of a piece that was cut in two. */
record PartedSeams(Piece was, Detached parted, String line) {

    static PartedSeams of(Piece was, Detached parted) {
        List<String> lines = names(parted.before()).stream()
                .filter(edge -> names(parted.after()).contains(edge))
                .filter(edge -> !names(was).contains(edge))
                .toList();
        if (lines.size() != 1) {
            throw new IllegalArgumentException("'" + parted.before().name() + "' and '"
                    + parted.after().name() + "' are not the two parts of '" + was.name() + "'.");
        }
        return new PartedSeams(was, parted, lines.get(0));
    }

    private static List<String> names(Piece piece) {
        return piece.edges().stream().map(Edge::name).toList();
    }

    /** The seam of the line comes before the first seam that either part has. */
    List<Seam> in(List<Seam> seams) {
        List<Seam> all = new ArrayList<>();
        boolean joined = false;
        for (Seam seam : seams) {
            if (!joined && isOfPiece(seam)) {
                all.add(parted.seam(line));
                joined = true;
            }
            all.add(new Seam(
                    seam.name(), side(seam, seam.first()), side(seam, seam.second()), seam.held(), seam.caught()));
        }
        if (!joined) {
            all.add(parted.seam(line));
        }
        return all;
    }

    private boolean isOfPiece(Seam seam) {
        return Stream.of(seam.first(), seam.second())
                .flatMap(side -> side.parts().stream())
                .anyMatch(part -> part.piece().equals(was.name()));
    }

    private Seam.Mate side(Seam seam, Seam.Mate side) {
        return new Seam.Mate(side.parts().stream()
                .flatMap(part -> part.piece().equals(was.name()) ? now(seam, part).stream() : Stream.of(part))
                .toList());
    }

    private List<Seam.Part> now(Seam seam, Seam.Part part) {
        boolean before = names(parted.before()).contains(part.edge());
        boolean after = names(parted.after()).contains(part.edge());
        if (before != after) {
            return List.of(of(before ? parted.before() : parted.after(), part));
        }
        if (part.from().isPresent() || part.to().isPresent()) {
            throw new DraftingException(
                    "Sew '" + seam.name() + "' to both parts of '" + was.name() + "'",
                    "it sews only part of '" + part.edge() + "'; cut the piece before the seam is declared");
        }
        List<Piece> order = beforeComesFirst(part.edge())
                ? List.of(parted.before(), parted.after())
                : List.of(parted.after(), parted.before());
        return Stream.of(order.get(part.forward() ? 0 : 1), order.get(part.forward() ? 1 : 0))
                .map(piece -> of(piece, part))
                .toList();
    }

    private static Seam.Part of(Piece piece, Seam.Part part) {
        return new Seam.Part(piece.name(), part.edge(), part.forward(), part.mirrored(), part.from(), part.to());
    }

    /** Whether the part named before has the stretch with the edge's own start: there the line follows on the edge by its own direction. */
    private boolean beforeComesFirst(String edge) {
        List<PaperSide> sides = Paper.sides(parted.before());
        for (int i = 0; i < sides.size(); i++) {
            PaperSide side = sides.get(i);
            PaperSide next = sides.get((i + 1) % sides.size());
            if (side.edge().equals(edge) && next.edge().equals(line)) {
                return side.forward();
            }
            if (side.edge().equals(line) && next.edge().equals(edge)) {
                return !next.forward();
            }
        }
        throw new IllegalArgumentException("'" + edge + "' does not meet '" + line + "'.");
    }
}
