package org.draftingmaths.exchange;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Straight;
import org.draftingmaths.finish.Facings;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Edge;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.PaperSide;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.unit.Steps;

/**
 * Facings that are joined to each other and then sewn to the garment in one. The order is common practice: joined, neatened, sewn on, trimmed,
 * clipped, understitched, turned, tacked.
 *
 * @param pieces the facings
 * @param seams the seams by which they are sewn to the garment, in order; at least one
 * @param ends the edges by which they are joined, as they are called on the garment too
 */
record FacingSet(List<Piece> pieces, List<Seam> seams, Set<String> ends) {

    /** What turns by more, in radians, is a corner to be clipped or cut across. */
    private static final double CORNER = Math.toRadians(20);

    static List<FacingSet> of(Draft draft) {
        List<Set<String>> groups = new ArrayList<>();
        draft.pieces().stream()
                .filter(FacingSet::isFacing)
                .forEach(piece -> groups.add(new LinkedHashSet<>(List.of(piece.name()))));
        for (Seam seam : draft.seams()) {
            Set<String> joined = new LinkedHashSet<>(names(seam.first()));
            joined.addAll(names(seam.second()));
            if (groups.stream().flatMap(Set::stream).toList().containsAll(joined)) {
                List<Set<String>> one = groups.stream()
                        .filter(group -> group.stream().anyMatch(joined::contains))
                        .toList();
                one.stream().skip(1).forEach(group -> one.get(0).addAll(group));
                groups.removeAll(one.subList(1, one.size()));
            }
        }
        return groups.stream()
                .map(group -> new FacingSet(
                        group.stream().map(draft::piece).toList(),
                        draft.seams().stream()
                                .filter(seam -> side(seam, group).isPresent())
                                .toList(),
                        draft.seams().stream()
                                .filter(seam -> parts(seam).allMatch(part -> group.contains(part.piece())))
                                .flatMap(FacingSet::parts)
                                .map(Seam.Part::edge)
                                .collect(Collectors.toCollection(LinkedHashSet::new))))
                .filter(set -> !set.seams.isEmpty())
                .toList();
    }

    static boolean isFacing(Piece piece) {
        return piece.edges().stream().anyMatch(FacingSet::isOuter);
    }

    private static boolean isOuter(Edge edge) {
        return edge.role() == Role.FINISHED && Facings.isOuterEdge(edge.name());
    }

    private static List<String> names(Seam.Mate mate) {
        return mate.parts().stream().map(Seam.Part::piece).toList();
    }

    /** The side of a seam that is all of this set, where the other is of the garment. */
    private static Optional<Seam.Mate> side(Seam seam, Set<String> group) {
        boolean first = group.containsAll(names(seam.first()));
        boolean second = group.containsAll(names(seam.second()));
        return first == second ? Optional.empty() : Optional.of(first ? seam.first() : seam.second());
    }

    boolean has(String piece) {
        return pieces.stream().anyMatch(each -> each.name().equals(piece));
    }

    /** Whether a seam that is none of its own takes an edge on which it is sewn. */
    boolean catches(Seam seam) {
        return !seams.contains(seam)
                && seams.stream()
                        .flatMap(FacingSet::parts)
                        .anyMatch(own -> parts(seam)
                                .anyMatch(part -> part.piece().equals(own.piece())
                                        && part.edge().equals(own.edge())));
    }

    private static Stream<Seam.Part> parts(Seam seam) {
        return Stream.concat(seam.first().parts().stream(), seam.second().parts().stream());
    }

    boolean begins(Seam seam) {
        return seam.equals(seams.get(0));
    }

    boolean ends(Seam seam) {
        return seam.equals(seams.get(seams.size() - 1));
    }

    /** Before the facing is sewn on, as long as all of its outer edge can be reached. */
    String neatened(Style style, Steps steps) {
        double turned = pieces.stream()
                .mapToDouble(piece -> OrderOfMake.allowance(style, piece.name(), outer(piece)))
                .max()
                .orElse(0);
        String edges = "the outer edge of " + words();
        return turned > 0
                ? "Turn in " + edges + " by " + Quantity.LENGTH.print(turned, steps) + " and stitch it down."
                : "Neaten " + edges + ".";
    }

    private static String outer(Piece piece) {
        return piece.edges().stream()
                .filter(FacingSet::isOuter)
                .findFirst()
                .orElseThrow()
                .name();
    }

    String words() {
        return OrderOfMake.listed(
                pieces.stream().map(piece -> "'" + piece.name() + "'").toList());
    }

    /** What is done once the facing is sewn on. */
    String turned() {
        return "trim the allowances of its seam, the facing's to half the garment's; " + clipped()
                + "press them towards the facing and understitch it to them; turn it to the inside and press, the seam a hair to the inside";
    }

    private String clipped() {
        List<String> ways = new ArrayList<>();
        Set<String> sewn = sewn();
        if (pieces.stream()
                .anyMatch(piece -> piece.edges().stream()
                        .anyMatch(edge -> sewn.contains(edge.name()) && !isStraight(piece, edge.name())))) {
            ways.add("clip them along the curve up to the stitching");
        }
        List<Double> corners =
                pieces.stream().flatMap(piece -> corners(piece, sewn).stream()).toList();
        if (corners.stream().anyMatch(turn -> turn < -CORNER)) {
            ways.add("clip into the corner to the last stitch");
        }
        if (corners.stream().anyMatch(turn -> turn > CORNER)) {
            ways.add("cut them off across the corners");
        }
        return ways.isEmpty() ? "" : String.join(", ", ways) + "; ";
    }

    private Set<String> sewn() {
        Set<String> group = pieces.stream().map(Piece::name).collect(Collectors.toSet());
        return seams.stream()
                .flatMap(seam -> side(seam, group).orElseThrow().parts().stream())
                .map(Seam.Part::edge)
                .collect(Collectors.toSet());
    }

    private static boolean isStraight(Piece piece, String edge) {
        return Paper.edge(piece, edge).curves().stream().allMatch(Straight.class::isInstance);
    }

    /** By how much the line sewn on turns at each of its corners, in radians: positive where cloth lies inside the corner. */
    private static List<Double> corners(Piece piece, Set<String> sewn) {
        List<PaperSide> sides = Paper.sides(piece);
        List<Double> turns = new ArrayList<>();
        for (int i = 0; i < sides.size(); i++) {
            PaperSide here = sides.get(i);
            PaperSide next = sides.get((i + 1) % sides.size());
            boolean on = sewn.contains(here.edge());
            boolean goesOn = sewn.contains(next.edge());
            if (on && goesOn) {
                turns.add(turn(here, next));
            } else if ((on && isFold(piece, next)) || (goesOn && isFold(piece, here))) {
                turns.add(2 * turn(here, next) - Math.PI);
            }
        }
        return turns;
    }

    private static boolean isFold(Piece piece, PaperSide side) {
        return piece.edge(side.edge()).role() == Role.FOLD;
    }

    private static double turn(PaperSide here, PaperSide next) {
        Vector2D in = here.path().endTangent();
        Vector2D out = next.path().startTangent();
        return Math.atan2(in.signedArea(out), in.dot(out));
    }

    /** By what it is held. */
    String tacked() {
        return "tack it to the allowances "
                + (ends.isEmpty()
                        ? "it crosses"
                        : "at "
                                + OrderOfMake.listed(ends.stream()
                                        .map(edge -> "'" + edge + "'")
                                        .toList()))
                + ", and nowhere else";
    }
}
