package org.draftingmaths.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.draftingmaths.curve.CurvePath;

/** One ring made two, along a curve that is known to lie inside. */
final class Split {

    private Split() {}

    /**
     * Parts a panel.
     *
     * @param corners the two ends of the cut
     * @param opening the opening that the cut makes
     * @param along the cut where it lies, from the mouth inwards
     * @param before the motion from the before leg's base to the cut
     * @param after the motion from the after leg's base to the cut
     */
    static Piece split(
            Corners corners,
            Opening opening,
            CurvePath along,
            AffineTransformMatrix2D before,
            AffineTransformMatrix2D after) {
        Leg arriving = corners.legAfterArrival();
        List<Run> one = new ArrayList<>(corners.toMouth());
        one.add(leg(opening, arriving, true, arriving == Leg.BEFORE ? before : after));
        List<Run> other = new ArrayList<>(corners.fromMouth());
        other.add(leg(opening, arriving.other(), false, arriving == Leg.BEFORE ? after : before));

        Piece piece = corners.piece();
        List<Opening> openings = new ArrayList<>(piece.openings());
        openings.add(opening);
        Piece open = piece.withOpenings(openings, piece.panels());
        List<Panel> parts = dealOut(open, corners.panel(), one, other, along);
        List<Panel> panels = piece.panels().stream()
                .flatMap(panel -> panel.equals(corners.panel()) ? parts.stream() : Stream.of(panel))
                .toList();
        return open.with(panels);
    }

    private static Run leg(Opening opening, Leg leg, boolean forward, AffineTransformMatrix2D motion) {
        return new Run(opening.leg(leg), 0, opening.base(leg).length(), forward, motion);
    }

    /** Deals out the level lines to the two parts, broken where they cross the cut. */
    private static List<Panel> dealOut(Piece piece, Panel whole, List<Run> one, List<Run> other, CurvePath cut) {
        if (whole.lines().isEmpty() && whole.darts().isEmpty()) {
            return List.of(Panel.bare(one), Panel.bare(other));
        }
        CurvePath border = piece.place(one);
        List<Stretch> onOne = new ArrayList<>();
        List<Stretch> onOther = new ArrayList<>();
        for (Stretch stretch : whole.lines()) {
            for (Stretch part : broken(piece, stretch, cut)) {
                CurvePath placed = piece.place(part);
                boolean here = Outlines.holds(border, placed);
                (here ? onOne : onOther).add(part);
            }
        }
        List<Laid> dartsOnOne = whole.darts().stream()
                .filter(dart -> Outlines.holds(border, piece.place(dart)))
                .toList();
        List<Laid> dartsOnOther = whole.darts().stream()
                .filter(dart -> !dartsOnOne.contains(dart))
                .toList();
        return List.of(new Panel(one, onOne, dartsOnOne), new Panel(other, onOther, dartsOnOther));
    }

    private static List<Stretch> broken(Piece piece, Stretch stretch, CurvePath cut) {
        List<Stretch> parts = new ArrayList<>();
        double from = stretch.from();
        for (double at : Outlines.crossings(piece.place(stretch), cut)) {
            double arc = stretch.from() + at;
            if (arc - from > Panels.TOUCH && stretch.to() - arc > Panels.TOUCH) {
                parts.add(new Stretch(stretch.line(), from, arc, stretch.motion()));
                from = arc;
            }
        }
        parts.add(new Stretch(stretch.line(), from, stretch.to(), stretch.motion()));
        return parts;
    }
}
