package org.draftingmaths.finish;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.ledger.Reach;
import org.draftingmaths.piece.DartEnd;
import org.draftingmaths.piece.Laid;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Opening;
import org.draftingmaths.piece.Panel;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Use;

/** Where darts are drilled. */
final class Drills {

    private Drills() {}

    static List<Drill> of(Piece piece, double before) {
        List<Drill> drills = new ArrayList<>();
        for (Opening opening : piece.openings()) {
            if (opening.mouth().use() instanceof Use.Dart) {
                Vector2D tip = DartEnd.sewnTip(piece, opening.name());
                Vector2D middle = Measured.leg(piece, opening.name(), Leg.BEFORE)
                        .start()
                        .lerp(Measured.leg(piece, opening.name(), Leg.AFTER).start(), 0.5);
                drills.add(drill(opening.name(), tip, middle, before, tip.distance(middle)));
            }
        }
        for (Panel panel : piece.panels()) {
            for (Laid laid : panel.darts()) {
                CurvePath outline = piece.place(laid);
                Vector2D one = outline.curves().get(0).start();
                Vector2D other = outline.curves().get(2).start();
                drills.add(drill(laid.dart(), one, other, before, one.distance(other) / 2));
                drills.add(drill(laid.dart(), other, one, before, one.distance(other) / 2));
            }
        }
        return List.copyOf(drills);
    }

    private static Drill drill(String dart, Vector2D tip, Vector2D towards, double before, double room) {
        if (before >= room) {
            throw new DraftingException(
                    "Drill '" + dart + "' before its point",
                    "the dart is shorter than that",
                    new Reach(Quantity.LENGTH, before, 0, room));
        }
        return new Drill(dart, tip.add(tip.directionTo(towards).multiply(before)), tip);
    }
}
