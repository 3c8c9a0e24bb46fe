package org.draftingmaths.dart;

import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.piece.InsideDart;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Opening;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Use;

/** What lies open at the apexes of a piece. */
final class Apexes {

    private Apexes() {}

    /**
     * One dart's share of the angle at its apex.
     *
     * @param dart the name of the dart; of a double-pointed one, and which point
     * @param apex where its apex lies
     * @param angle its angle, in radians
     * @param fate what becomes of it
     */
    record Share(String dart, Vector2D apex, double angle, DartAccount.Fate fate) {}

    /** The darts and slashes that end at a point, and the two points of every double-pointed dart. */
    static List<Share> of(Piece piece) {
        Stream<Share> openings = piece.openings().stream()
                .filter(opening -> opening.farMouth().isEmpty())
                .map(opening -> share(piece, opening));
        Stream<Share> inside = piece.panels().stream()
                .flatMap(panel -> panel.darts().stream())
                .flatMap(laid -> shares(piece.insideDart(laid.dart()), laid.motion()));
        return Stream.concat(openings, inside).toList();
    }

    private static Share share(Piece piece, Opening opening) {
        return new Share(
                opening.name(),
                Measured.tip(piece, opening.name()),
                Measured.angle(piece, opening.name()),
                fate(opening.mouth().use()));
    }

    private static Stream<Share> shares(InsideDart dart, AffineTransformMatrix2D motion) {
        return Stream.of(
                share(dart.name() + ", one point", dart, dart.oneTip(), motion),
                share(dart.name() + ", other point", dart, dart.otherTip(), motion));
    }

    private static Share share(String name, InsideDart dart, Vector2D tip, AffineTransformMatrix2D motion) {
        double angle = 2 * Math.asin(dart.intake() / 2 / tip.distance(dart.oneSide()));
        return new Share(name, motion.apply(tip), angle, DartAccount.Fate.STITCHED);
    }

    private static DartAccount.Fate fate(Use use) {
        if (!(use instanceof Use.Left left)) {
            return DartAccount.Fate.STITCHED;
        }
        return switch (left.kind()) {
            case EASE -> DartAccount.Fate.EASED;
            case GATHERS -> DartAccount.Fate.GATHERED;
            case FLARE -> DartAccount.Fate.FLARED;
            case SLASH -> DartAccount.Fate.UNDECIDED;
        };
    }
}
