package org.draftingmaths.check;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.piece.Unfold;
import org.draftingmaths.seam.Balance;

/**
 * Side seams that would hang askew. A seam is a side seam where it sews one whole edge of a piece on a fold, or opened out from one, to one of another such piece, both
 * running more along its centre line than across: panels are unlike on purpose, shoulders lie as the body does. Only the angles are looked at, for the lengths are walked.
 */
final class SideBalance {

    /** What is shorter, in mm, is no side seam but the side of a facing or a band, which lies as it was traced; our own figure. */
    private static final double SHORT = 100;

    private SideBalance() {}

    static List<Finding> of(Draft draft, Seam seam, DraftLimits limits) {
        boolean sides = Stream.of(seam.first(), seam.second()).allMatch(mate -> isSide(draft, mate));
        return sides ? Balance.of(draft, seam).findings(limits.balance(), Double.POSITIVE_INFINITY) : List.of();
    }

    private static boolean isSide(Draft draft, Seam.Mate mate) {
        Seam.Part part = mate.parts().get(0);
        if (mate.parts().size() > 1
                || part.mirrored()
                || part.from().isPresent()
                || part.to().isPresent()) {
            return false;
        }
        Piece piece = draft.piece(part.piece());
        CurvePath line = Paper.edge(piece, part.edge());
        return piece.grain().isPresent()
                && piece.edge(part.edge()).role() == Role.SEAM
                && line.length() > SHORT
                && centre(piece, part.edge())
                        .filter(centre -> isAlong(centre, line.start().vectorTo(line.end())))
                        .isPresent();
    }

    private static boolean isAlong(Vector2D centre, Vector2D chord) {
        return Math.abs(centre.dot(chord)) > Math.abs(centre.signedArea(chord));
    }

    /** The direction of the fold; of a piece that was opened out the line from which an edge and its image lie equally far. */
    private static Optional<Vector2D> centre(Piece piece, String edge) {
        Optional<Vector2D> fold = Paper.sides(piece).stream()
                .filter(side -> piece.edge(side.edge()).role() == Role.FOLD)
                .map(side -> side.path().start().vectorTo(side.path().end()))
                .findFirst();
        return fold.or(() -> Unfold.imageOf(piece, edge)
                .map(image -> middle(piece, edge).vectorTo(middle(piece, image)))
                .map(across -> Vector2D.of(-across.getY(), across.getX())));
    }

    private static Vector2D middle(Piece piece, String edge) {
        CurvePath line = Paper.edge(piece, edge);
        return line.pointAt(line.length() / 2);
    }
}
