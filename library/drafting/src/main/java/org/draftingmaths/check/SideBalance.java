package org.draftingmaths.check;

import java.util.List;
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
 * running more along the grain than across: panels are unlike on purpose, shoulders lie as the body does. Only the angles are looked at, for the lengths are walked.
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
        boolean half = Unfold.hasOnBothHalves(piece, part.edge())
                || Unfold.isImage(piece, part.edge())
                || piece.edges().stream().anyMatch(edge -> edge.role() == Role.FOLD);
        return half && piece.edge(part.edge()).role() == Role.SEAM && isAlongGrain(piece, part.edge());
    }

    private static boolean isAlongGrain(Piece piece, String edge) {
        CurvePath line = Paper.edge(piece, edge);
        Vector2D chord = line.start().vectorTo(line.end());
        return line.length() > SHORT
                && piece.grain()
                        .map(grain -> grain.from().vectorTo(grain.to()))
                        .filter(grain -> Math.abs(grain.dot(chord)) > Math.abs(grain.signedArea(chord)))
                        .isPresent();
    }
}
