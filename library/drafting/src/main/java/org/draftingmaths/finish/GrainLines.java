package org.draftingmaths.finish;

import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Meets;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.piece.Grain;
import org.draftingmaths.piece.Panel;
import org.draftingmaths.piece.Piece;

/** The grain line where it can be printed: as drawn when it lies on the cloth, else anew in its direction. */
final class GrainLines {

    /** A new line keeps this share of the room there is, so that its arrows stay inside. */
    private static final double SHARE = 0.8;

    private static final int ROWS = 40;

    private GrainLines() {}

    static Optional<GrainLine> of(Piece piece, boolean oneWay) {
        return piece.grain().map(grain -> {
            ClearCloth cloth = ClearCloth.of(piece);
            boolean inside = cloth.holds(grain.from()) && cloth.holds(grain.to()) && crossesNothing(piece, grain);
            Vector2D[] line = inside
                    ? new Vector2D[] {grain.from(), grain.to()}
                    : shortened(cloth.longest(grain.direction(), ROWS));
            return new GrainLine(line[0], line[1], oneWay);
        });
    }

    private static Vector2D[] shortened(Vector2D[] line) {
        return new Vector2D[] {
            line[0].lerp(line[1], (1 - SHARE) / 2), line[0].lerp(line[1], (1 + SHARE) / 2),
        };
    }

    private static boolean crossesNothing(Piece piece, Grain grain) {
        CurvePath line = CurvePath.polyline(grain.from(), grain.to());
        for (Panel panel : piece.panels()) {
            if (!Meets.of(line, piece.place(panel.ring())).isEmpty()) {
                return false;
            }
        }
        return true;
    }

    static Finding missing(Piece piece) {
        return new Finding(Finding.Kind.GRAIN_MISSING, "'" + piece.name() + "'", Quantity.COUNT, 0, 1, 0);
    }
}
