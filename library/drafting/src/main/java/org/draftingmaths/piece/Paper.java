package org.draftingmaths.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Cubic;
import org.draftingmaths.curve.CurvePath;

/**
 * The paper view of a piece: one outline with every wedge inside it. It is walked, not stored: along the edges, and across
 * each mouth from the end of the one leg to the end of the other.
 *
 * <p>Across a stitched dart the outline follows the underlay, so that all layers end on one line when the dart is folded.
 * So it does across a pleat or tuck.
 * Across ease, gathers and flare it is one smooth curve, tangent to the edge on either side; across a slash whose use is
 * not decided it is the straight chord.
 */
public final class Paper {

    private Paper() {}

    /**
     * The outline side by side, anticlockwise.
     *
     * @param piece the piece
     * @return the sides in order
     */
    public static List<PaperSide> sides(Piece piece) {
        List<PaperSide> sides = new ArrayList<>();
        Place first = firstEdge(piece);
        Place here = first;
        do {
            Run run = here.run(piece);
            sides.add(new PaperSide(edge(run.border()), Optional.empty(), piece.place(run), run.forward()));
            here = here.next(piece);
            while (here.run(piece).border() instanceof Border.OfLeg leg) {
                Place across = across(piece, leg, here.run(piece));
                cap(piece, leg, here.run(piece), across, Optional.of(sides.get(sides.size() - 1)))
                        .ifPresent(sides::add);
                here = across.next(piece);
            }
        } while (!here.equals(first));
        return sides;
    }

    /**
     * The outline as one closed curve, anticlockwise.
     *
     * @param piece the piece
     * @return the curve
     */
    public static CurvePath outline(Piece piece) {
        return CurvePath.joined(sides(piece).stream().map(PaperSide::path).toList());
    }

    /**
     * One edge as it is drawn on paper, in its own direction, with what is drawn across its openings.
     *
     * @param piece the piece
     * @param edge the name of the edge
     * @return the curve
     */
    public static CurvePath edge(Piece piece, String edge) {
        piece.edge(edge);
        List<PaperSide> sides = sides(piece);
        int start = firstOf(sides, edge);
        List<PaperSide> own = new ArrayList<>();
        for (int i = 0;
                i < sides.size() && sides.get((start + i) % sides.size()).edge().equals(edge);
                i++) {
            own.add(sides.get((start + i) % sides.size()));
        }
        CurvePath path = CurvePath.joined(own.stream().map(PaperSide::path).toList());
        return own.get(0).forward() ? path : path.reversed();
    }

    private static int firstOf(List<PaperSide> sides, String edge) {
        for (int i = 0; i < sides.size(); i++) {
            String before = sides.get((i + sides.size() - 1) % sides.size()).edge();
            if (sides.get(i).edge().equals(edge) && !before.equals(edge)) {
                return i;
            }
        }
        return 0;
    }

    /** A run by where it stands. */
    private record Place(int panel, int index) {
        Run run(Piece piece) {
            return piece.panels().get(panel).ring().get(index);
        }

        Place next(Piece piece) {
            return new Place(
                    panel, (index + 1) % piece.panels().get(panel).ring().size());
        }
    }

    private static Place firstEdge(Piece piece) {
        for (Edge edge : piece.edges()) {
            for (int panel = 0; panel < piece.panels().size(); panel++) {
                List<Run> ring = piece.panels().get(panel).ring();
                for (int i = 0; i < ring.size(); i++) {
                    if (ring.get(i).border().equals(new Border.OfEdge(edge.name()))
                            && ring.get(i).entry() == (ring.get(i).forward() ? 0 : edge.length())) {
                        return new Place(panel, i);
                    }
                }
            }
        }
        throw new IllegalStateException("Piece '" + piece.name() + "' has no edge on its outline.");
    }

    private static String edge(Border border) {
        return ((Border.OfEdge) border).edge();
    }

    /** The run of the opposite leg that ends at the mouth where this one begins. */
    private static Place across(Piece piece, Border.OfLeg leg, Run entering) {
        Leg other = leg.leg().other();
        Border opposite = new Border.OfLeg(leg.opening(), other);
        double mouth = entering.forward()
                ? 0
                : piece.opening(leg.opening()).base(other).length();
        for (int panel = 0; panel < piece.panels().size(); panel++) {
            List<Run> ring = piece.panels().get(panel).ring();
            for (int i = 0; i < ring.size(); i++) {
                if (ring.get(i).border().equals(opposite) && ring.get(i).exit() == mouth) {
                    return new Place(panel, i);
                }
            }
        }
        throw new IllegalStateException("Opening '" + leg.opening() + "' has only one leg on the outline.");
    }

    private static Optional<PaperSide> cap(
            Piece piece, Border.OfLeg leg, Run entering, Place across, Optional<PaperSide> before) {
        Opening opening = piece.opening(leg.opening());
        Mouth mouth = entering.forward() ? opening.mouth() : opening.farMouth().orElse(opening.mouth());
        Vector2D from = piece.place(entering).start();
        Vector2D to = piece.place(across.run(piece)).end();
        if (from.distance(to) <= Panels.TOUCH) {
            return Optional.empty();
        }
        boolean forward = before.filter(side -> side.edge().equals(edge(mouth.border())))
                .map(PaperSide::forward)
                .orElseGet(() -> across.next(piece).run(piece).forward());
        return Optional.of(new PaperSide(
                edge(mouth.border()),
                Optional.of(opening.name()),
                drawn(piece, opening, entering.forward(), leg.leg(), from, to),
                forward));
    }

    /** What is drawn across a mouth, from the end of the leg that is entered to the end of the other. */
    static CurvePath drawn(Piece piece, Opening opening, boolean atMouth, Leg entering, Vector2D from, Vector2D to) {
        Mouth mouth = atMouth ? opening.mouth() : opening.farMouth().orElse(opening.mouth());
        if (mouth.use() instanceof Use.Dart) {
            CurvePath end = DartEnd.shape(piece, opening.name());
            return entering == Leg.BEFORE ? end : end.reversed();
        }
        if (mouth.use() instanceof Use.Folded) {
            CurvePath end = FoldEnd.shape(piece, opening.name(), atMouth);
            return entering == Leg.BEFORE ? end : end.reversed();
        }
        if (((Use.Left) mouth.use()).kind() == Use.Kind.SLASH) {
            return CurvePath.polyline(from, to);
        }
        Vector2D chord = from.directionTo(to);
        return smooth(
                from,
                Beyond.edge(piece, opening, entering, atMouth, 0)
                        .map(seam -> seam.startTangent().negate())
                        .orElse(chord),
                to,
                Beyond.edge(piece, opening, entering.other(), atMouth, 0)
                        .map(CurvePath::startTangent)
                        .orElse(chord));
    }

    /** The cubic from one point and direction to another whose handles are a third of the chord. */
    static CurvePath smooth(Vector2D from, Vector2D leaving, Vector2D to, Vector2D arriving) {
        double third = from.distance(to) / 3;
        return CurvePath.of(
                new Cubic(from, from.add(leaving.multiply(third)), to.subtract(arriving.multiply(third)), to));
    }
}
