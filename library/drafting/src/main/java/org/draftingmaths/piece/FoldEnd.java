package org.draftingmaths.piece;

import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Meet;
import org.draftingmaths.curve.Meets;
import org.draftingmaths.ledger.DraftingException;

/**
 * The shape of the edge across a folded mouth, and the lines along which it is folded.
 *
 * <p>The edge is cut with the fold made, so every layer ends where the cloth above it ends. The first layer of the underlay, from the
 * fold that is seen to the one that is not, is the edge beside it reflected in the fold; the second is the same stretch moved by
 * what parts the two legs. A pleat with half of its underlay on either side is two of these, each to the centre line. This is the
 * shape of a dart's end with legs that need not meet.
 */
public final class FoldEnd {

    private FoldEnd() {}

    /**
     * The edge of the paper across a folded mouth, from the end of the before leg to the end of the after leg.
     *
     * <p>Where the legs do not lie evenly no fold can make the layers meet, and the chord is drawn.
     *
     * @param piece the piece
     * @param opening the name of an opening that is folded there
     * @param atMouth at its mouth, or at its other end
     * @return the curve
     */
    public static CurvePath shape(Piece piece, String opening, boolean atMouth) {
        Opening fold = piece.opening(opening);
        Use.Folded use = use(fold, atMouth);
        Folding folding = Folding.at(piece, fold, atMouth);
        return (folding.even() ? folded(piece, fold, use.under(), folding, atMouth) : Optional.<CurvePath>empty())
                .orElseGet(() -> CurvePath.polyline(folding.before(), folding.after()));
    }

    private static Optional<CurvePath> folded(
            Piece piece, Opening fold, Use.Under under, Folding folding, boolean atMouth) {
        Vector2D a = folding.before();
        Vector2D b = folding.after();
        return switch (under) {
            case BEFORE -> underlay(piece, fold, Leg.BEFORE, atMouth, a, folding.beforeWay(), b, folding.afterWay());
            case AFTER ->
                underlay(piece, fold, Leg.AFTER, atMouth, b, folding.afterWay(), a, folding.beforeWay())
                        .map(CurvePath::reversed);
            case BOTH -> {
                Vector2D middle = folding.middle();
                Vector2D way = folding.middleWay();
                yield underlay(piece, fold, Leg.BEFORE, atMouth, a, folding.beforeWay(), middle, way)
                        .flatMap(one -> underlay(piece, fold, Leg.AFTER, atMouth, b, folding.afterWay(), middle, way)
                                .map(other -> one.then(other.reversed())));
            }
        };
    }

    /** Two layers beneath one side: from the fold that is seen over the one that is not, to the line that is brought up to it. */
    private static Optional<CurvePath> underlay(
            Piece piece,
            Opening fold,
            Leg leg,
            boolean atMouth,
            Vector2D seen,
            Vector2D seenWay,
            Vector2D other,
            Vector2D otherWay) {
        AffineTransformMatrix2D mirror = Isometry.reflection(seen, seenWay);
        double width = seen.distance(other);
        Optional<CurvePath> beyond = Beyond.edge(piece, piece.opening(fold.name()), leg, atMouth, 4 * width);
        if (beyond.isEmpty()) {
            return Optional.empty();
        }
        CurvePath edge = beyond.get();
        double reach = edge.length() + 2 * width;
        Vector2D at = mirror.apply(seen.lerp(other, 0.5));
        Vector2D way = mirror.applyVector(seenWay.add(otherWay).normalize()).multiply(reach);
        CurvePath turn = CurvePath.polyline(at.subtract(way), at.add(way));
        return Meets.of(edge, turn).points().stream()
                .map(Meet::onFirst)
                .filter(arc -> arc > Panels.TOUCH)
                .min(Double::compare)
                .map(arc -> edge.between(0, arc))
                .map(layer -> layer.transformed(mirror)
                        .then(layer.transformed(Folding.frame(seen, seenWay, other, otherWay))
                                .reversed()));
    }

    /**
     * The lines of a fold on the paper, each from its mouth inwards.
     *
     * @param seen the folds that are seen when it is worn: one, or two that meet on the centre line
     * @param hidden the folds beneath
     * @param placement the line to which the folds are brought
     */
    public record Lines(List<CurvePath> seen, List<CurvePath> hidden, CurvePath placement) {
        /** Copies the lists. */
        public Lines {
            seen = List.copyOf(seen);
            hidden = List.copyOf(hidden);
        }
    }

    /**
     * The lines of a fold on the paper: fold lines, return lines and placement line.
     *
     * @param piece the piece
     * @param opening the name of an opening that is folded at its mouth
     * @return the lines
     */
    public static Lines lines(Piece piece, String opening) {
        Opening fold = piece.opening(opening);
        Use.Folded use = use(fold, true);
        CurvePath before = Measured.leg(piece, opening, Leg.BEFORE);
        CurvePath after = Measured.leg(piece, opening, Leg.AFTER);
        CurvePath shape = shape(piece, opening, true);
        Folding folding = Folding.at(piece, fold, true);
        Vector2D near = folding.middle();
        Vector2D far = farMiddle(piece, fold, before, after);
        return switch (use.under()) {
            case BEFORE -> new Lines(List.of(before), List.of(upTo(shape, near, far)), after);
            case AFTER -> new Lines(List.of(after), List.of(upTo(shape, near, far)), before);
            case BOTH ->
                new Lines(
                        List.of(before, after),
                        List.of(
                                upTo(
                                        shape,
                                        before.start().lerp(near, 0.5),
                                        before.end().lerp(far, 0.5)),
                                upTo(
                                        shape,
                                        after.start().lerp(near, 0.5),
                                        after.end().lerp(far, 0.5))),
                        upTo(shape, near, far));
        };
    }

    private static Vector2D farMiddle(Piece piece, Opening fold, CurvePath before, CurvePath after) {
        return fold.farMouth().isPresent() && before.end().distance(after.end()) > Panels.TOUCH
                ? Folding.at(piece, fold, false).middle()
                : before.end();
    }

    /** A straight line inwards that starts where it meets the edge of the paper. */
    private static CurvePath upTo(CurvePath shape, Vector2D near, Vector2D far) {
        Vector2D outside = near.add(far.directionTo(near).multiply(shape.length()));
        return Meets.of(CurvePath.polyline(far, outside), shape).points().stream()
                .map(Meet::point)
                .findFirst()
                .map(point -> CurvePath.polyline(point, far))
                .orElseGet(() -> CurvePath.polyline(near, far));
    }

    private static Use.Folded use(Opening opening, boolean atMouth) {
        Mouth mouth = atMouth
                ? opening.mouth()
                : opening.farMouth()
                        .orElseThrow(() -> new DraftingException(
                                "Fold '" + opening.name() + "' at its other end",
                                "it ends at a point inside the piece"));
        if (mouth.use() instanceof Use.Folded folded) {
            return folded;
        }
        throw new IllegalArgumentException("'" + opening.name() + "' is not folded there.");
    }
}
