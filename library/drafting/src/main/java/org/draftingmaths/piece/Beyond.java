package org.draftingmaths.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.draftingmaths.curve.CurvePath;

/**
 * The border of the cloth away from an end of an opening, as it lies when what is folded there is folded: at a pleat it goes on
 * with the cloth beyond, brought up to it.
 */
final class Beyond {

    private Beyond() {}

    /** A run by where it stands. */
    private record Place(int panel, int index) {}

    /**
     * The border away from an opening, on the one side of it.
     *
     * @param piece the piece
     * @param opening the opening
     * @param leg on which side
     * @param atMouth at its mouth or at its other end
     * @param reach as far as at least this many mm, if there is so much
     * @return the curve, away from the end of the leg; none where another opening lies just there
     */
    static Optional<CurvePath> edge(Piece piece, Opening opening, Leg leg, boolean atMouth, double reach) {
        Place start = end(piece, opening, leg, atMouth)
                .orElseThrow(() -> new IllegalStateException("Opening '" + opening.name() + "' lies on no panel."));
        boolean onwards = run(piece, start).forward() != atMouth;
        List<CurvePath> found = new ArrayList<>();
        double length = 0;
        AffineTransformMatrix2D folded = Isometry.NONE;
        Place here = step(piece, start, onwards);
        while (length <= reach || found.isEmpty()) {
            Run run = run(piece, here);
            if (run.border() instanceof Border.OfEdge) {
                CurvePath placed = piece.place(run).transformed(folded);
                found.add(onwards ? placed : placed.reversed());
                length += run.length();
                here = step(piece, here, onwards);
            } else {
                Border.OfLeg entered = (Border.OfLeg) run.border();
                Opening next = piece.opening(entered.opening());
                boolean nearEnd = (onwards ? run.entry() : run.exit()) == 0;
                Optional<Place> other = end(piece, next, entered.leg().other(), nearEnd);
                if (next.name().equals(opening.name()) || other.isEmpty() || !folds(next, nearEnd)) {
                    break;
                }
                folded = Folding.at(piece, next, nearEnd).closing(entered.leg()).premultiply(folded);
                here = step(piece, other.get(), onwards);
            }
        }
        return found.stream().reduce(CurvePath::then);
    }

    private static boolean folds(Opening opening, boolean atMouth) {
        Mouth mouth = atMouth ? opening.mouth() : opening.farMouth().orElse(opening.mouth());
        return mouth.use() instanceof Use.Folded;
    }

    /** The run of a leg that has the one or the other end of it. */
    private static Optional<Place> end(Piece piece, Opening opening, Leg leg, boolean atMouth) {
        Border border = opening.leg(leg);
        double tip = opening.base(leg).length();
        for (int panel = 0; panel < piece.panels().size(); panel++) {
            List<Run> ring = piece.panels().get(panel).ring();
            for (int i = 0; i < ring.size(); i++) {
                Run run = ring.get(i);
                if (run.border().equals(border) && (atMouth ? run.from() == 0 : run.to() == tip)) {
                    return Optional.of(new Place(panel, i));
                }
            }
        }
        return Optional.empty();
    }

    private static Run run(Piece piece, Place place) {
        return piece.panels().get(place.panel()).ring().get(place.index());
    }

    private static Place step(Piece piece, Place place, boolean onwards) {
        int size = piece.panels().get(place.panel()).ring().size();
        return new Place(place.panel(), (place.index() + (onwards ? 1 : size - 1)) % size);
    }
}
