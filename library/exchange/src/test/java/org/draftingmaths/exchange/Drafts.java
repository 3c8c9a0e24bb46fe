package org.draftingmaths.exchange;

import java.util.List;
import org.draftingmaths.dart.Darts;
import org.draftingmaths.fullness.Spread;
import org.draftingmaths.piece.Beside;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Notch;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.piece.Slash;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.piece.Use;

/** Small drafts to be written and read. */
final class Drafts {

    private Drafts() {}

    /** Every kind of thing that a file can hold: each curve, each role, both kinds of use, a far mouth, a dart inside. */
    static Draft everything() {
        Piece front = Drawing.of("front")
                .from(0, 0)
                .edge("waist", Role.SEAM, 10)
                .line(70, 0)
                .dart("waist dart", 90, 150, 110, 0, 20, Leg.BEFORE)
                .line(210, 0)
                .edge("side seam", Role.SEAM, 12.7)
                .arc(216, 95, 210, 190)
                .edge("top", Role.FINISHED)
                .curve(150, 170, 60, 230, 0, 200)
                .edge("centre front", Role.FOLD)
                .line(0, 0)
                .level("level", 0, 100, 300, 100)
                .insideDart("small dart", 170, 20, 170, 90, 0.4, 11)
                .notch("waist", 65)
                .notch("side seam", 80)
                .grain(20, 40, 20, 180)
                .piece();
        Piece spread = Spread.parallel(front, Slash.straight("pleat", Spot.on("top", 170), Spot.on("waist", 40)), 30)
                .piece()
                .using("pleat", new Use.Left(Use.Kind.GATHERS));
        Piece back = Drawing.of("back \u00e9toff\u00e9 \uD83E\uDDF5")
                .from(0, 0)
                .edge("hem", Role.HEM, 40)
                .line(200, 0)
                .edge("side seam", Role.SEAM)
                .line(200, 190)
                .edge("style", Role.STYLE_LINE)
                .line(-0.0, 190)
                .edge("centre back", Role.SEAM)
                .line(0, 0)
                .piece();
        Piece turned = Darts.rotateShare(spread, "waist dart", Spot.on("side seam", 120), "side dart", 0.3)
                .piece();
        return new Draft(
                "everything",
                List.of(turned, back),
                List.of(
                        new Seam(
                                "side",
                                Seam.Mate.of("front", "side seam"),
                                Seam.Mate.backwards(back.name(), "side seam"),
                                List.of(new Seam.Held(2, 1.0 / 3, Seam.How.EASE, "over the hip"))),
                        chain(back.name())));
    }

    /** A seam of all that a seam can be made of. */
    static Seam chain(String back) {
        return Seam.flat(
                        "chain",
                        Seam.Mate.of("front", "waist")
                                .between(1.0 / 3, 60)
                                .then(Seam.Mate.backwards("front", "waist").mirrored()),
                        Seam.Mate.of(back, "hem")
                                .from(new Notch("hem", 0.1, Beside.AFTER))
                                .then(Seam.Mate.of(back, "style").upTo(new Notch("style", 100.0 / 7, Beside.BEFORE)))
                                .mirrored())
                .caughtIn();
    }

    /** One square. */
    static Draft square() {
        Piece piece = Drawing.of("square")
                .from(0, 0)
                .edge("bottom", Role.SEAM)
                .line(100, 0)
                .edge("right", Role.SEAM)
                .line(100, 100)
                .edge("top", Role.SEAM)
                .line(0, 100)
                .edge("left", Role.SEAM)
                .line(0, 0)
                .piece();
        return new Draft("square", List.of(piece), List.of());
    }
}
