package org.draftingmaths.contour;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Cubic;
import org.draftingmaths.curve.Curve;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Straight;
import org.draftingmaths.ledger.Change;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Fact;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Girths;
import org.draftingmaths.piece.LevelLine;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.PaperSide;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Redraw;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.seam.Ends;
import org.draftingmaths.seam.Walk;
import org.draftingmaths.unit.Length;

/** Seams taken in and let out, alike on both mates. */
public final class SideSeams {

    private SideSeams() {}

    /**
     * Takes a seam in, or lets it out, alike on both mates. Each place of either edge is moved across the grain into its piece by
     * {@code a(s) = start + s (stop - start)}, with s the share of the curve's parameter along it, so that straights stay straight and curves keep
     * their character. The neighbours at both ends are carried to the new corners with their last handles; they may then want a blend
     * ({@link org.draftingmaths.seam.Truing#blend}), for the corners' angles change a little.
     *
     * <p>Conserved: darts, notches by their share of the seam, all other edges. Changed and told: the seam, its neighbours, and the closed
     * width along every level line that meets the seam. Where the two edges are alike, so is what is taken, and the seam still matches; its
     * difference is told before and after.
     *
     * <pre>{@code
     * Recut slimmer = SideSeams.takeIn(draft, "side", Length.cm(0), Length.mm(6));
     * }</pre>
     *
     * @param draft the draft
     * @param seam the name of the seam; its first edge is called the front's here
     * @param start how much to take in where the seam starts, by the direction of sewing; negative to let out
     * @param stop how much where it stops
     * @return the draft and what was done
     * @throws IllegalArgumentException when there is no such seam
     * @throws DraftingException when an opening breaks either edge or a neighbour at its end, or when the outline would cross itself
     */
    public static Recut takeIn(Draft draft, String seam, Length start, Length stop) {
        Seam sewn = draft.seams().stream()
                .filter(each -> each.name().equals(seam))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("There is no seam named '" + seam + "'; there are "
                        + String.join(
                                ", ", draft.seams().stream().map(Seam::name).toList()) + "."));
        Reworked first = taken(draft.piece(sewn.first().piece()), sewn.first(), start.mm(), stop.mm());
        Reworked second = taken(draft.piece(sewn.second().piece()), sewn.second(), start.mm(), stop.mm());
        Draft after = draft.with(first.piece()).with(second.piece());
        Ledger ledger = Ledger.of(amount(seam, "starts", start.mm()), amount(seam, "stops", stop.mm()))
                .then(first.ledger().about(first.piece().name()))
                .then(widths(draft.piece(first.piece().name()), first.piece()))
                .then(second.ledger().about(second.piece().name()))
                .then(widths(draft.piece(second.piece().name()), second.piece()))
                .then(new Change(
                        "difference of the two edges of '" + seam + "'",
                        Quantity.LENGTH,
                        Walk.of(draft, sewn).difference(),
                        Walk.of(after, sewn).difference()));
        return new Recut(after, first, second, ledger);
    }

    private static Fact amount(String seam, String end, double in) {
        String way = in < 0 ? "let out" : "taken in";
        return new Fact("amount " + way + " at '" + seam + "' where it " + end, Quantity.LENGTH, Math.abs(in));
    }

    private static Ledger widths(Piece before, Piece after) {
        Ledger ledger = Ledger.EMPTY;
        for (LevelLine level : before.levels()) {
            ledger = ledger.then(new Change(
                    "closed width of '" + before.name() + "' along '" + level.name() + "'",
                    Quantity.LENGTH,
                    Girths.closed(before, level.name()),
                    Girths.closed(after, level.name())));
        }
        return ledger;
    }

    private static Reworked taken(Piece piece, Seam.Mate mate, double start, double stop) {
        String asked = "Take in '" + mate.edge() + "' of '" + piece.name() + "'";
        requireWhole(piece, mate.edge(), asked);
        CurvePath line = Paper.edge(piece, mate.edge());
        Vector2D in = inwards(piece, mate.edge());
        CurvePath moved =
                shifted(line, in.multiply(mate.forward() ? start : stop), in.multiply(mate.forward() ? stop : start));
        Map<String, CurvePath> lines = new TreeMap<>();
        lines.put(mate.edge(), moved);
        carry(piece, mate.edge(), line.start(), moved.start(), lines, asked);
        carry(piece, mate.edge(), line.end(), moved.end(), lines, asked);
        return Redraw.edges(piece, lines);
    }

    private static void requireWhole(Piece piece, String edge, String asked) {
        if (!Redraw.isWhole(piece, edge)) {
            throw new DraftingException(asked, "an opening breaks '" + edge + "'; close it or move it elsewhere first");
        }
    }

    /** Across the grain, or across the sheet where there is none, to the side where the cloth is. */
    private static Vector2D inwards(Piece piece, String edge) {
        Vector2D grain = piece.grain()
                .<Vector2D>map(drawn -> drawn.from().directionTo(drawn.to()))
                .orElse(Vector2D.of(0, 1));
        CurvePath line = Paper.edge(piece, edge);
        boolean forward = Paper.sides(piece).stream()
                .filter(side -> side.edge().equals(edge))
                .allMatch(PaperSide::forward);
        Vector2D along = line.start().directionTo(line.end());
        Vector2D cloth = Vector2D.of(-along.getY(), along.getX()).multiply(forward ? 1 : -1);
        Vector2D across = Vector2D.of(-grain.getY(), grain.getX());
        return across.dot(cloth) > 0 ? across : across.negate();
    }

    /** The line with every place moved, the start by one vector, the end by another, and those between by their share. */
    private static CurvePath shifted(CurvePath line, Vector2D start, Vector2D end) {
        List<Curve> curves = new ArrayList<>();
        double whole = line.length();
        double along = 0;
        for (Curve curve : line.curves()) {
            double next = along + curve.length();
            curves.add(shifted(curve, start.lerp(end, along / whole), start.lerp(end, next / whole)));
            along = next;
        }
        return new CurvePath(curves);
    }

    private static Curve shifted(Curve curve, Vector2D start, Vector2D end) {
        if (curve instanceof Straight) {
            return new Straight(curve.start().add(start), curve.end().add(end));
        }
        Cubic cubic = Ends.cubic(curve);
        return new Cubic(
                cubic.start().add(start),
                cubic.startHandle().add(start.lerp(end, 1.0 / 3)),
                cubic.endHandle().add(start.lerp(end, 2.0 / 3)),
                cubic.end().add(end));
    }

    private static void carry(
            Piece piece, String seam, Vector2D corner, Vector2D to, Map<String, CurvePath> lines, String asked) {
        String next = piece.edges().stream()
                .map(each -> each.name())
                .filter(name -> !name.equals(seam))
                .filter(name -> Redraw.first(piece, name).start().distance(corner) <= CurvePath.JOINT
                        || Redraw.last(piece, name).end().distance(corner) <= CurvePath.JOINT)
                .findFirst()
                .orElseThrow(() -> new DraftingException(asked, "no other edge goes on from its end"));
        CurvePath first = Redraw.first(piece, next);
        lines.put(
                next,
                first.start().distance(corner) <= CurvePath.JOINT
                        ? Ends.carried(first.reversed(), to).reversed()
                        : Ends.carried(Redraw.last(piece, next), to));
    }
}
