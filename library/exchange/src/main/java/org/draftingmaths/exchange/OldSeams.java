package org.draftingmaths.exchange;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.draftingmaths.piece.Seam;

/** Seams as version 1 of the format has them: one whole edge on one whole edge, and any number of seams on one edge. */
final class OldSeams {

    private OldSeams() {}

    static Seam seam(At at) {
        at.fields("name", "first", "second", "held");
        return at.made(() -> new Seam(
                at.member("name").text(),
                mate(at.member("first")),
                mate(at.member("second")),
                at.member("held").each(DraftReading::held)));
    }

    private static Seam.Mate mate(At at) {
        at.fields("piece", "edge", "forward");
        String piece = at.member("piece").text();
        String edge = at.member("edge").text();
        return at.member("forward").flag() ? Seam.Mate.of(piece, edge) : Seam.Mate.backwards(piece, edge);
    }

    /** The seams, each that takes an edge which one before it has taken said to be caught in with it. */
    static List<Seam> caughtWhereTheyMeet(List<Seam> seams) {
        Set<List<String>> taken = new HashSet<>();
        List<Seam> all = new ArrayList<>();
        for (Seam seam : seams) {
            List<List<String>> own = List.of(edge(seam.first()), edge(seam.second()));
            boolean meets = own.stream().anyMatch(taken::contains);
            all.add(meets ? seam.caughtIn() : seam);
            taken.addAll(own);
        }
        return all;
    }

    private static List<String> edge(Seam.Mate mate) {
        return List.of(mate.piece(), mate.edge());
    }
}
