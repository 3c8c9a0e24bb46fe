package org.draftingmaths.dart;

import java.util.List;
import java.util.stream.Stream;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Nearest;
import org.draftingmaths.ledger.Change;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.piece.Detach;
import org.draftingmaths.piece.Detached;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Panels;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Slash;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.piece.Stay;

/** Darts taken into seams: through the apex, across a yoke, or beside the apex with what is left over. */
public final class StyleLines {

    /** How far in mm a line may pass from a dart's point for a seam to shape it: 25 mm (common practice). */
    public static final double FURTHEST = 25;

    private StyleLines() {}

    /**
     * Cuts a piece in two along a line from an edge to the apex of a dart and on along the dart: the dart is sewn in the seam. With
     * {@code R} the length of the line to the apex and {@code L} the dart's leg, both edges are {@code R + L} long, whatever the
     * dart's angle.
     *
     * <p>Conserved: area, base lengths and marks, as {@link Detach} says; the angle, which the ledger calls taken into the seam.
     *
     * <pre>{@code
     * Detached panels = StyleLines.through(
     *         front, "waist dart", Spot.on("shoulder", 60), "panel seam", List.of(45.0), "centre front panel", "side front panel");
     * }</pre>
     *
     * @param piece the piece
     * @param dart the name of the dart
     * @param from where the line starts, on an edge
     * @param line the name of the edge that both parts get
     * @param beside how far in mm before and after the apex match points are set, besides the one at the apex
     * @param before the name of the part met first along the edge where the line starts
     * @param after the name of the other
     * @return the two parts and what was done
     * @throws DraftingException when the line leaves the cloth, or the parts still hang together
     */
    public static Detached through(
            Piece piece, String dart, Spot from, String line, List<Double> beside, String before, String after) {
        double angle = Measured.angle(piece, dart);
        String upper = line + " to the point";
        Reworked cut = Panels.cut(piece, Slash.straight(upper, from, Spot.tip(dart)));
        double apex = Measured.at(piece, from).distance(Measured.tip(piece, dart));
        List<Double> marks = Stream.concat(
                        Stream.of(apex), beside.stream().flatMap(off -> Stream.of(apex - off, apex + off)))
                .sorted()
                .toList();
        Detached parted = Detach.through(cut.piece(), line, List.of(upper, dart), marks, before, after);
        return new Detached(
                parted.before(),
                parted.after(),
                cut.ledger()
                        .then(new IntoSeam(dart, angle))
                        .then(parted.ledger())
                        .then(Kink.at(piece, dart)));
    }

    /**
     * Closes what a line left open when it cut through a dart: the part without the dart's point has a gap from its edge to the line, and
     * its two sides are laid together.
     *
     * <p>Conserved: the area, the base length of every edge. The line's edge of this part is of one length with its mate, though curved
     * otherwise.
     *
     * <pre>{@code
     * Detached parted = Detach.across(
     *         front,
     *         StyleLine.straight("yoke line", Spot.on("armhole", 110), Spot.on("centre front", 40)).folding("shoulder dart"),
     *         "front",
     *         "yoke");
     * Reworked closed = StyleLines.closed(parted.with("neckline"), "shoulder dart");
     * }</pre>
     *
     * @param part the part with the gap
     * @param gap the name of the dart that was cut through
     * @return the part closed, and what was done
     * @throws DraftingException when the sides differ, or when parts would lie over one another
     */
    public static Reworked closed(Piece part, String gap) {
        if (part.opening(gap).farMouth().isEmpty()) {
            throw new DraftingException(
                    "Close '" + gap + "'", "it has a point on this part and is a dart; rotate it to another place");
        }
        Reworked done = Panels.open(
                part, java.util.Map.of(gap, Measured.closing(part, gap)), Stay.CENTRE, "Close '" + gap + "'");
        return new Reworked(done.piece(), done.ledger().then(Kink.at(part, gap)));
    }

    /**
     * What a line leaves over of a dart whose apex it misses.
     *
     * @param distance how far in mm the apex lies from the line
     * @param arc where on the line the apex is nearest, in mm from its start
     * @param width how wide what is left over is at the line, {@code 2 d sin(a/2)}, in mm
     * @param findings one when the apex lies farther than {@link #FURTHEST} from the line
     */
    public record LeftOver(double distance, double arc, double width, List<Finding> findings) {
        /** Copies the list. */
        public LeftOver {
            findings = List.copyOf(findings);
        }
    }

    /**
     * What would be left over at a line if a dart were closed into it: with {@code d} the distance of the apex from the line and
     * {@code a} the dart's angle, {@code 2 d sin(a/2)}.
     *
     * @param part a part that has both the line as an edge and the dart
     * @param dart the name of the dart
     * @param line the name of the line's edge
     * @return what is left over, with a finding when the line passes too far from the apex
     */
    public static LeftOver leftOver(Piece part, String dart, String line) {
        CurvePath edge = Paper.edge(part, line);
        Nearest nearest = Nearest.of(edge, Measured.tip(part, dart));
        double distance = nearest.distance();
        List<Finding> findings = distance <= FURTHEST
                ? List.of()
                : List.of(new Finding(
                        Finding.Kind.LINE_TOO_FAR,
                        "'" + line + "' and '" + dart + "' of '" + part.name() + "'",
                        Quantity.LENGTH,
                        distance,
                        FURTHEST,
                        0,
                        "Draw the line nearer to the point, or leave the dart a dart of its own."));
        return new LeftOver(distance, nearest.at(), 2 * distance * Math.sin(Measured.angle(part, dart) / 2), findings);
    }

    /**
     * Closes a dart into a line that misses its apex: a slash from the line to the apex opens, and what is left over at the line is eased
     * in or sewn as a short dart.
     *
     * @param part a part that has both the line as an edge and the dart
     * @param dart the name of the dart
     * @param line the name of the line's edge
     * @param leftOver the name of what is left over
     * @param furthest how far the apex may lie from the line, in mm, for example {@link #FURTHEST}
     * @return the part, and what was done
     * @throws DraftingException when the line misses the apex by more, or as {@link Darts#rotate}
     */
    public static Reworked beside(Piece part, String dart, String line, String leftOver, double furthest) {
        LeftOver over = leftOver(part, dart, line);
        String asked = "Close '" + dart + "' into '" + line + "'";
        if (over.distance() > furthest) {
            throw new DraftingException(
                    asked,
                    "the line passes too far from its point for a seam to shape it",
                    new org.draftingmaths.ledger.Reach(Quantity.LENGTH, over.distance(), 0, furthest));
        }
        double before = Lengths.base(part, line);
        Reworked done = Darts.rotate(part, dart, Spot.on(line, over.arc()), leftOver);
        Change told =
                new Change("base length of '" + line + "'", Quantity.LENGTH, before, Lengths.base(done.piece(), line));
        return new Reworked(done.piece(), done.ledger().then(told));
    }
}
