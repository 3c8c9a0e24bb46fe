package org.draftingmaths.fullness;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Fit;
import org.draftingmaths.ledger.Change;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.ledger.Reach;
import org.draftingmaths.piece.Border;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Notch;
import org.draftingmaths.piece.Panels;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.PaperSide;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Redraw;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Slash;
import org.draftingmaths.piece.Stay;
import org.draftingmaths.piece.Use;
import org.draftingmaths.unit.Asked;
import org.draftingmaths.unit.Steps;

/**
 * Gathers between two notches: {@code flat = ratio x finished}. The ratio is that of the gathered stretch alone; what lies outside the
 * notches is sewn flat, and allowances are in neither figure.
 */
public final class Gathers {

    /** A share of a strip that is no more than rounding. */
    private static final double ROUNDING = 1e-9;

    private Gathers() {}

    /**
     * The cloth that is gathered into a length.
     *
     * @param finished the gathered length in mm, from notch to notch
     * @param ratio how many times as long the cloth is: 1 or more
     * @return {@code ratio x finished} in mm
     */
    public static double flat(double finished, double ratio) {
        if (!(finished > 0 && Double.isFinite(finished) && ratio >= 1 && Double.isFinite(ratio))) {
            throw new IllegalArgumentException("Gathers have a finished length of more than 0 mm and a ratio of 1 or"
                    + " more: " + finished + " mm, ratio " + ratio + ".");
        }
        return finished * ratio;
    }

    /**
     * The ratio at which cloth is gathered into a length: the inverse of {@link #flat}.
     *
     * @param finished the gathered length in mm
     * @param flat the cloth in mm
     * @return the ratio, or the lengths of cloth that can be gathered into it
     */
    public static Answer ratio(double finished, double flat) {
        Asked.length("A finished length", finished);
        String asked = Quantity.LENGTH.print(flat, Steps.DEFAULT) + " gathered into "
                + Quantity.LENGTH.print(finished, Steps.DEFAULT);
        return flat >= finished
                ? new Answer.Unique(asked, Quantity.RATIO, flat / finished)
                : new Answer.None(
                        asked,
                        "less cloth cannot be gathered into more",
                        new Reach(Quantity.LENGTH, flat, finished, Double.POSITIVE_INFINITY));
    }

    /**
     * How many strips of cloth must be joined for a length: {@code ceil(length / (width - allowances))}.
     *
     * @param length the length in mm that is wanted in all, flat
     * @param width the usable width of the cloth in mm
     * @param allowances what the seams take of each strip, in mm
     * @return the number of strips
     * @throws IllegalArgumentException when a figure is out of range
     */
    public static int strips(double length, double width, double allowances) {
        if (!(length > 0
                && Double.isFinite(length)
                && allowances >= 0
                && width > allowances
                && Double.isFinite(width))) {
            throw new IllegalArgumentException("A length is more than 0 mm and a strip wider than its seams: " + length
                    + " mm, strips of " + width + " mm with seams of " + allowances + " mm.");
        }
        return (int) Math.ceil(length / (width - allowances) - ROUNDING);
    }

    /**
     * Adds the fullness for gathers between two marks by slashes evenly spaced there: with a ratio {@code q} and {@code n} slashes each
     * opens by {@code (q - 1)(to - from)/n}. The openings are gathered at this edge and hang free at the other.
     *
     * @param piece the piece
     * @param from the mark nearer the edge's start, on the edge to be gathered
     * @param to the other mark, on the same edge
     * @param end the edge on which the slashes end
     * @param count how many slashes
     * @param ratio how many times as long the cloth is to be between the marks: more than 1
     * @param farShare what share of each gap opens at the other edge: 0 when it is to keep its length, 1 for an even spread
     * @param stay which part stays
     * @return the piece and what was done
     * @throws IllegalArgumentException when the marks are on two edges or in the wrong order, or a figure is out of range
     * @throws DraftingException as {@link Spread#all}
     */
    public static Reworked spread(
            Piece piece, Notch from, Notch to, String end, int count, double ratio, double farShare, Stay stay) {
        requireStretch(from, to);
        if (!(ratio > 1 && Double.isFinite(ratio) && farShare >= 0 && farShare <= 1 && count >= 1)) {
            throw new IllegalArgumentException("Gathers are added by 1 slash or more, at a ratio of more than 1, with a"
                    + " share of 0 to 1 at the other edge: " + count + ", " + ratio + ", " + farShare + ".");
        }
        double finished = to.arc() - from.arc();
        double gap = (ratio - 1) * finished / count;
        List<Spread.Opened> slashes = new ArrayList<>();
        for (Slash slash : Spread.between(piece, "gathers", from.edge(), from.arc(), to.arc(), end, count)) {
            slashes.add(new Spread.Opened(slash, gap, farShare * gap));
        }
        Reworked spread = Spread.all(piece, slashes, stay);
        Reworked gathered = spread;
        for (Spread.Opened each : slashes) {
            String name = each.slash().name();
            gathered = gathered.then(Panels.use(gathered.piece(), name, new Use.Left(Use.Kind.GATHERS)));
            if (farShare > 0) {
                gathered = gathered.then(Panels.useFar(gathered.piece(), name, new Use.Left(Use.Kind.FLARE)));
            }
        }
        return new Reworked(
                gathered.piece(),
                gathered.ledger()
                        .then(new Change(
                                "length of '" + from.edge() + "' between the notches",
                                Quantity.LENGTH,
                                finished,
                                Lengths.folded(gathered.piece(), from, to))));
    }

    /**
     * The ratio between two marks of a piece: what lies there on paper to what it is gathered into.
     *
     * @param piece the piece
     * @param from the mark nearer the edge's start
     * @param to the other mark
     * @return the ratio; 1 where nothing opens between the marks
     */
    public static double ratio(Piece piece, Notch from, Notch to) {
        requireStretch(from, to);
        return Lengths.folded(piece, from, to) / (to.arc() - from.arc());
    }

    /**
     * Raises a crown over a gathered stretch, so that the gathers are not pulled short: the edge is drawn as one fair curve from mark to
     * mark that passes so much outside the middle of its chord. The openings there are filled first.
     *
     * @param piece the piece
     * @param from the mark nearer the edge's start
     * @param to the other mark
     * @param height how far in mm outside the chord; 6 to 25 mm is usual (common practice)
     * @return the piece and what was done
     * @throws IllegalArgumentException when the height is not more than 0
     * @throws DraftingException when an opening of the edge is stitched or folded, or the new line would cross the outline
     */
    public static Reworked crown(Piece piece, Notch from, Notch to, double height) {
        requireStretch(from, to);
        if (!(height > 0 && Double.isFinite(height))) {
            throw new IllegalArgumentException("A crown is higher than 0 mm: " + height + " mm.");
        }
        String edge = from.edge();
        double start = Lengths.folded(piece, Lengths.start(edge), from);
        double stop = start + Lengths.folded(piece, from, to);
        Reworked filled = Smooth.filled(piece, edge);
        CurvePath line = Paper.edge(filled.piece(), edge);
        Vector2D a = line.pointAt(start);
        Vector2D b = line.pointAt(Math.min(stop, line.length()));
        Vector2D chord = a.directionTo(b);
        Vector2D right = Vector2D.of(chord.getY(), -chord.getX());
        Vector2D outside = forward(filled.piece(), edge) ? right : right.negate();
        CurvePath crown = Fit.through(
                List.of(a, a.lerp(b, 0.5).add(outside.multiply(height)), b),
                line.tangentAt(start),
                line.tangentBefore(Math.min(stop, line.length())));
        CurvePath drawn = joined(line, start, crown, stop);
        Reworked redrawn = Redraw.edges(filled.piece(), Map.of(edge, drawn));
        return new Reworked(redrawn.piece(), filled.ledger().then(redrawn.ledger()));
    }

    private static CurvePath joined(CurvePath line, double start, CurvePath crown, double stop) {
        CurvePath path = start > CurvePath.JOINT ? line.between(0, start).then(crown) : crown;
        return stop < line.length() - CurvePath.JOINT ? path.then(line.between(stop, line.length())) : path;
    }

    private static boolean forward(Piece piece, String edge) {
        return Paper.sides(piece).stream()
                .filter(side -> side.edge().equals(edge))
                .anyMatch(PaperSide::forward);
    }

    /**
     * What is poor: a gathered stretch with so little fullness that it looks like a mistake.
     *
     * @param piece the piece
     * @param from the mark nearer the edge's start
     * @param to the other mark
     * @param least the least ratio that looks meant; 1.3 is usual (common practice)
     * @return a finding, or none
     */
    public static Optional<Finding> finding(Piece piece, Notch from, Notch to, double least) {
        double ratio = ratio(piece, from, to);
        return ratio < least
                ? Optional.of(new Finding(
                        Finding.Kind.GATHERS_TOO_FEW,
                        "'" + from.edge() + "' of '" + piece.name() + "'",
                        Quantity.RATIO,
                        ratio,
                        least,
                        0))
                : Optional.empty();
    }

    private static void requireStretch(Notch from, Notch to) {
        if (!from.edge().equals(to.edge()) || !(from.arc() < to.arc())) {
            throw new IllegalArgumentException("Gathers lie between two marks of one edge, the first nearer its start: "
                    + new Border.OfEdge(from.edge()).words() + " at " + from.arc() + " mm and "
                    + new Border.OfEdge(to.edge()).words() + " at " + to.arc() + " mm.");
        }
    }
}
