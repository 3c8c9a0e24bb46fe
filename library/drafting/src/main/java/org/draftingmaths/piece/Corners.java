package org.draftingmaths.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.DraftingException;

/**
 * The two ends of a cut, as corners of one panel's ring. Where an end lies inside a run, the run is split there first, so
 * that corner k is where run k begins.
 *
 * @param piece the piece with its runs split at the two ends
 * @param panel the panel to be cut
 * @param first the corner at the mouth
 * @param last the corner at the other end
 * @param mouth the place asked for the mouth
 */
record Corners(Piece piece, Panel panel, int first, int last, Spot mouth) {

    static Corners of(Piece piece, Spot mouth, Spot end, Supplier<String> asked) {
        Spot from = snapped(piece, mouth);
        Spot to = snapped(piece, end);
        Piece split = splitAt(splitAt(piece, from), to);
        List<Corners> found = new ArrayList<>();
        for (Panel panel : split.panels()) {
            List<Integer> starts = cornersAt(split, panel, from);
            List<Integer> ends = cornersAt(split, panel, to);
            for (int start : starts) {
                for (int stop : ends) {
                    if (start != stop) {
                        found.add(new Corners(split, panel, start, stop, from));
                    }
                }
            }
        }
        return only(found, mouth, end, asked);
    }

    private static Corners only(List<Corners> found, Spot mouth, Spot end, Supplier<String> asked) {
        if (found.isEmpty()) {
            throw new DraftingException(
                    asked.get(),
                    "no part of the piece has both " + mouth.words() + " and " + end.words()
                            + " on its edge: an opening lies between");
        }
        if (found.size() > 1) {
            throw new DraftingException(
                    asked.get(),
                    "an opening lies just there; say before or after it for " + mouth.words() + " or " + end.words());
        }
        return found.get(0);
    }

    /** Where a place on an edge or a leg lies. */
    static Vector2D point(Piece piece, Spot.On spot) {
        Spot.On here = (Spot.On) snapped(piece, spot);
        List<Vector2D> found = new ArrayList<>();
        for (Panel panel : piece.panels()) {
            for (Run run : panel.ring()) {
                if (run.border().equals(here.border()) && holds(run, here)) {
                    Vector2D point = piece.point(here.border(), here.arc(), run);
                    if (found.stream().noneMatch(other -> other.distance(point) <= Panels.TOUCH)) {
                        found.add(point);
                    }
                }
            }
        }
        if (found.size() != 1) {
            throw new DraftingException(
                    "Find " + spot.words(),
                    found.isEmpty()
                            ? "the cloth there was taken out"
                            : "an opening lies just there; say before or after it");
        }
        return found.get(0);
    }

    private static boolean holds(Run run, Spot.On spot) {
        boolean starts = spot.arc() == run.from() && spot.beside().orElse(Beside.AFTER) == Beside.AFTER;
        boolean ends = spot.arc() == run.to() && spot.beside().orElse(Beside.BEFORE) == Beside.BEFORE;
        return (run.from() < spot.arc() && spot.arc() < run.to()) || starts || ends;
    }

    /** The panel's place among those of the piece. */
    int index() {
        return piece.panels().indexOf(panel);
    }

    /** Where the cut starts. */
    Vector2D start() {
        return start(panel.ring().get(first));
    }

    /** Where the cut ends. */
    Vector2D stop() {
        return start(panel.ring().get(last));
    }

    private Vector2D start(Run run) {
        return piece.point(run.border(), run.entry(), run);
    }

    double startArc() {
        return ((Spot.On) mouth).arc();
    }

    /** The curve drawn from corner to corner, which must join them; the straight when none is drawn. */
    CurvePath along(Optional<CurvePath> drawn, Supplier<String> asked) {
        Vector2D start = start();
        Vector2D stop = stop();
        if (drawn.isEmpty()) {
            return CurvePath.polyline(start, stop);
        }
        CurvePath along = drawn.get();
        if (along.start().distance(start) > Panels.TOUCH || along.end().distance(stop) > Panels.TOUCH) {
            throw new IllegalArgumentException(asked.get() + ": the curve to cut along must go from " + start + " to "
                    + stop + ", but goes from " + along.start() + " to " + along.end() + ".");
        }
        return along;
    }

    /** The runs from the mouth round to the other end. */
    List<Run> fromMouth() {
        return between(first, last);
    }

    /** The runs from the other end round to the mouth. */
    List<Run> toMouth() {
        return between(last, first);
    }

    private List<Run> between(int start, int stop) {
        List<Run> ring = panel.ring();
        List<Run> runs = new ArrayList<>();
        for (int i = start; i != stop; i = (i + 1) % ring.size()) {
            runs.add(ring.get(i));
        }
        return runs;
    }

    /**
     * The leg that belongs to the part whose ring arrives at the mouth: the before leg, when the ring passes the mouth's
     * border in its own direction.
     */
    Leg legAfterArrival() {
        Border owner = ((Spot.On) mouth).border();
        List<Run> ring = panel.ring();
        Run arriving = ring.get((first + ring.size() - 1) % ring.size());
        Run leaving = ring.get(first);
        Run owned = arriving.border().equals(owner) ? arriving : leaving;
        return owned.forward() ? Leg.BEFORE : Leg.AFTER;
    }

    /** The place asked, moved on to an end of a run when it lies within rounding of it. */
    private static Spot snapped(Piece piece, Spot spot) {
        if (!(spot instanceof Spot.On on)) {
            return spot;
        }
        double length = piece.base(on.border()).length();
        if (!(on.arc() >= -Panels.TOUCH && on.arc() <= length + Panels.TOUCH)) {
            throw new IllegalArgumentException(String.format(
                    java.util.Locale.ROOT, "%s lies past the end: 0 to %.1f mm is possible.", on.words(), length));
        }
        for (Panel panel : piece.panels()) {
            for (Run run : panel.ring()) {
                for (double end : new double[] {run.from(), run.to()}) {
                    if (Math.abs(end - on.arc()) <= Panels.TOUCH && run.border().equals(on.border())) {
                        return new Spot.On(on.border(), end, on.beside());
                    }
                }
            }
        }
        return on;
    }

    private static Piece splitAt(Piece piece, Spot spot) {
        if (!(spot instanceof Spot.On on)) {
            return piece;
        }
        for (int i = 0; i < piece.panels().size(); i++) {
            List<Run> ring = piece.panels().get(i).ring();
            for (int k = 0; k < ring.size(); k++) {
                Run run = ring.get(k);
                if (on.arc() > run.from() && on.arc() < run.to() && run.border().equals(on.border())) {
                    return splitAt(piece, i, k, on.arc());
                }
            }
        }
        return piece;
    }

    private static Piece splitAt(Piece piece, int panel, int corner, double arc) {
        Panel whole = piece.panels().get(panel);
        Run run = whole.ring().get(corner);
        Run lower = run.part(run.from(), arc);
        Run upper = run.part(arc, run.to());
        List<Run> ring = new ArrayList<>(whole.ring());
        ring.set(corner, run.forward() ? lower : upper);
        ring.add(corner + 1, run.forward() ? upper : lower);
        List<Panel> panels = new ArrayList<>(piece.panels());
        panels.set(panel, whole.with(ring));
        return piece.with(panels);
    }

    /** The corners of a ring that lie at a spot. */
    private static List<Integer> cornersAt(Piece piece, Panel panel, Spot spot) {
        if (spot instanceof Spot.Tip tip) {
            return cornersAt(piece, panel, Measured.tip(piece, tip.opening()));
        }
        Spot.On on = (Spot.On) spot;
        List<Integer> beside = cornersAt(panel, on.border(), on.arc(), on.beside());
        return beside.isEmpty() ? cornersAt(panel, on.border(), on.arc(), Optional.empty()) : beside;
    }

    /** Every panel that comes to an apex may be cut from there, whatever darts lie on either side of it. */
    private static List<Integer> cornersAt(Piece piece, Panel panel, Vector2D point) {
        return IntStream.range(0, panel.ring().size())
                .filter(i -> piece.place(panel.ring().get(i)).start().distance(point) <= Panels.TOUCH)
                .boxed()
                .toList();
    }

    /** Before the opening lies the run that ends at the arc, after it the run that starts there. */
    private static List<Integer> cornersAt(Panel panel, Border border, double arc, Optional<Beside> beside) {
        List<Integer> corners = new ArrayList<>();
        if (beside.orElse(Beside.BEFORE) == Beside.BEFORE) {
            corners.addAll(cornersWhere(panel, border, arc, Run::to));
        }
        if (beside.orElse(Beside.AFTER) == Beside.AFTER) {
            corners.addAll(cornersWhere(panel, border, arc, Run::from));
        }
        return corners.stream().distinct().toList();
    }

    private static List<Integer> cornersWhere(Panel panel, Border border, double arc, ToDoubleFunction<Run> end) {
        List<Integer> corners = new ArrayList<>();
        List<Run> ring = panel.ring();
        for (int i = 0; i < ring.size(); i++) {
            Run run = ring.get(i);
            if (run.border().equals(border) && end.applyAsDouble(run) == arc) {
                corners.add(arc == run.entry() ? i : (i + 1) % ring.size());
            }
        }
        return corners;
    }
}
