package org.draftingmaths.piece;

import java.util.Optional;

/**
 * The lengths of an edge. Base and drawn lengths are for the drafter, the folded length is what a tape finds when darts are
 * pinned shut. Only sewn lengths, the folded less declared ease, are compared with a mate; they belong to the seam.
 */
public final class Lengths {

    private Lengths() {}

    /**
     * The base length: the stretches of the original edge, all openings out. Every pivot and spread conserves it.
     *
     * @param piece the piece
     * @param edge the name of the edge
     * @return the length in mm
     */
    public static double base(Piece piece, String edge) {
        return base(piece, start(edge), end(piece, edge));
    }

    /**
     * The drawn length: along the outline on paper, dart ends and all.
     *
     * @param piece the piece
     * @param edge the name of the edge
     * @return the length in mm
     */
    public static double drawn(Piece piece, String edge) {
        return Paper.edge(piece, edge).length();
    }

    /**
     * The folded length: drawn, less stitched darts. Gathers, ease and flare stay in.
     *
     * @param piece the piece
     * @param edge the name of the edge
     * @return the length in mm
     */
    public static double folded(Piece piece, String edge) {
        return folded(piece, start(edge), end(piece, edge));
    }

    /**
     * The folded length between two marks of an edge.
     *
     * @param piece the piece
     * @param from the mark nearer the edge's start
     * @param to the other
     * @return the length in mm
     */
    public static double folded(Piece piece, Notch from, Notch to) {
        double left = Paper.sides(piece).stream()
                .filter(side -> side.edge().equals(from.edge()))
                .filter(side -> side.opening().isPresent())
                .filter(side -> stays(piece, side, from, to))
                .mapToDouble(side -> side.path().length())
                .sum();
        return base(piece, from, to) + left;
    }

    /**
     * The folded length of what a seam takes of an edge.
     *
     * @param piece the piece
     * @param part an edge of it, or part of one
     * @return the length in mm
     */
    public static double folded(Piece piece, Seam.Part part) {
        return folded(piece, part.start(), part.end(piece));
    }

    private static boolean stays(Piece piece, PaperSide side, Notch from, Notch to) {
        Opening opening = piece.opening(side.opening().orElseThrow());
        return Optional.of(opening.mouth())
                .filter(mouth -> mouth.border().equals(new Border.OfEdge(side.edge())))
                .or(opening::farMouth)
                .filter(mouth -> !mouth.use().stitched())
                .filter(mouth ->
                        from.arc() < mouth.after() || (from.arc() == mouth.after() && from.beside() == Beside.BEFORE))
                .filter(mouth ->
                        mouth.before() < to.arc() || (mouth.before() == to.arc() && to.beside() == Beside.AFTER))
                .isPresent();
    }

    private static double base(Piece piece, Notch from, Notch to) {
        return piece.panels().stream()
                .flatMap(panel -> panel.ring().stream())
                .filter(run -> run.border().equals(new Border.OfEdge(from.edge())))
                .mapToDouble(run -> Math.max(0, Math.min(run.to(), to.arc()) - Math.max(run.from(), from.arc())))
                .sum();
    }

    /**
     * The start of an edge, as a mark.
     *
     * @param edge the name of the edge
     * @return the mark at arc 0, before any opening there
     */
    public static Notch start(String edge) {
        return new Notch(edge, 0, Beside.BEFORE);
    }

    /**
     * The end of an edge, as a mark.
     *
     * @param piece the piece
     * @param edge the name of the edge
     * @return the mark at the whole base arc, after any opening there
     */
    public static Notch end(Piece piece, String edge) {
        return new Notch(edge, piece.edge(edge).length(), Beside.AFTER);
    }
}
