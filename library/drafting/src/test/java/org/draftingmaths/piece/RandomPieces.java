package org.draftingmaths.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.check.Checks;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Finding;

/**
 * Seeded pieces: corners on rays from a middle at uneven distances (so that many are concave), edges straight, round or
 * curved, one to four darts of which two may share their apex, two level lines and a grain line.
 */
public final class RandomPieces {

    private final SplittableRandom random;

    private RandomPieces(long seed) {
        random = new SplittableRandom(seed);
    }

    /** A piece whose outline on paper is simple. Draws that cross themselves are thrown away and drawn again. */
    public static Piece piece(long seed) {
        RandomPieces source = new RandomPieces(seed);
        for (int i = 0; i < 200; i++) {
            Optional<Piece> piece = source.attempt("piece " + seed);
            if (piece.isPresent()) {
                return piece.get();
            }
        }
        throw new IllegalStateException("No simple outline for seed " + seed + ".");
    }

    private Optional<Piece> attempt(String name) {
        try {
            Piece piece = draw(name).piece();
            boolean simple = Checks.piece(piece, 1e-6).stream()
                    .noneMatch(finding -> finding.kind() == Finding.Kind.OUTLINE_CROSSES);
            return simple ? Optional.of(piece) : Optional.empty();
        } catch (DraftingException refused) {
            return Optional.empty();
        }
    }

    private Drawing draw(String name) {
        int n = random.nextInt(5, 10);
        Vector2D middle = Vector2D.of(between(100, 300), between(100, 300));
        List<Vector2D> corners = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double angle = 2 * Math.PI * (i + between(-0.3, 0.3)) / n;
            corners.add(middle.add(polar(between(70, 320), angle)));
        }
        Vector2D sharedApex = middle.add(polar(between(0, 15), between(0, 6)));
        int darts = random.nextInt(1, 5);
        boolean shared = random.nextBoolean();
        Drawing drawing =
                Drawing.of(name).from(corners.get(0).getX(), corners.get(0).getY());
        for (int i = 0; i < n; i++) {
            Vector2D from = corners.get(i);
            Vector2D to = corners.get((i + 1) % n);
            drawing = drawing.edge("edge " + i, i == 0 ? Role.FOLD : Role.SEAM);
            if (i > 0 && i <= darts) {
                Vector2D apex = shared && i <= 2 ? sharedApex : middle.lerp(from.lerp(to, 0.5), between(0.2, 0.7));
                drawing = withDart(drawing, "dart " + i, from, to, apex);
            } else {
                drawing = i == 0 ? drawing.line(to.getX(), to.getY()) : curved(drawing, to);
            }
        }
        return drawing.level("level 1", -400, middle.getY(), 900, middle.getY())
                .level("level 2", -400, middle.getY() + 30, 900, middle.getY() + 42)
                .notch("edge 1", 12)
                .notch("edge 2", 21)
                .grain(middle.getX() - 40, middle.getY() - 3, middle.getX() + 33, middle.getY() - 1);
    }

    private Drawing withDart(Drawing drawing, String dart, Vector2D from, Vector2D to, Vector2D apex) {
        Vector2D mouth = from.lerp(to, between(0.25, 0.6));
        Drawing half = random.nextBoolean() ? drawing.line(mouth.getX(), mouth.getY()) : curved(drawing, mouth);
        double angle = between(0.03, 0.25);
        Vector2D end = AffineTransformMatrix2D.createRotation(apex, angle).apply(mouth);
        Leg press = random.nextBoolean() ? Leg.BEFORE : Leg.AFTER;
        Drawing sewn = half.dart(
                dart, apex.getX(), apex.getY(), end.getX(), end.getY(), between(0, 0.2) * apex.distance(mouth), press);
        return random.nextBoolean() ? sewn.line(to.getX(), to.getY()) : curved(sewn, to);
    }

    /** An arc or a cubic from where the line stands, bulging a little to either side. */
    private Drawing curved(Drawing drawing, Vector2D to) {
        Vector2D from = drawing.pen();
        Vector2D way = from.vectorTo(to);
        Vector2D aside = Vector2D.of(-way.getY(), way.getX());
        if (random.nextInt(3) == 0) {
            Vector2D on = from.lerp(to, 0.5).add(aside.multiply(between(0.02, 0.2) * (random.nextBoolean() ? 1 : -1)));
            return drawing.arc(on.getX(), on.getY(), to.getX(), to.getY());
        }
        Vector2D first = from.lerp(to, between(0.2, 0.5)).add(aside.multiply(between(-0.25, 0.25)));
        Vector2D second = from.lerp(to, between(0.5, 0.8)).add(aside.multiply(between(-0.25, 0.25)));
        return drawing.curve(first.getX(), first.getY(), second.getX(), second.getY(), to.getX(), to.getY());
    }

    private double between(double low, double high) {
        return random.nextDouble(low, high);
    }

    private static Vector2D polar(double radius, double angle) {
        return Vector2D.of(radius * Math.cos(angle), radius * Math.sin(angle));
    }
}
