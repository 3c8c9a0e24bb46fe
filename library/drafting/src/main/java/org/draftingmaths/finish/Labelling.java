package org.draftingmaths.finish;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.piece.Piece;

/** Texts on the cloth, each where it is clear of the stitch line, the darts and the other texts. */
final class Labelling {

    /** Air on every side of a text, in mm. */
    private static final double AIR = 1;

    /** Where along a line its name is tried, the middle first. */
    private static final double[] TRIALS = {0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.15, 0.85, 0.1, 0.9};

    private final String piece;
    private final double noteHeight;
    private final List<Label> labels = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    private Labelling(String piece, double noteHeight) {
        this.piece = piece;
        this.noteHeight = noteHeight;
    }

    static Labelling of(
            Piece piece, List<MarkedLine> lines, Optional<GrainLine> grain, Marking marking, List<String> title) {
        Labelling labelling = new Labelling(piece.name(), marking.noteHeight());
        ClearCloth cloth = ClearCloth.of(piece);
        if (grain.isPresent()) {
            cloth = cloth.with(
                    CurvePath.polyline(grain.get().from(), grain.get().to()));
        }
        ClearCloth all = cloth;
        for (MarkedLine line : lines) {
            if (line.kind() == MarkedLine.Kind.LEVEL) {
                all = all.with(line.path());
            }
        }
        List<Vector2D> ways = new ArrayList<>(List.of(Vector2D.of(1, 0)));
        grain.map(line -> upright(line.from().directionTo(line.to()))).ifPresent(ways::add);
        labelling.title(title, marking.titleHeight(), ways, List.of(all, cloth));
        labelling.notes(lines, all);
        return labelling;
    }

    List<Label> labels() {
        return List.copyOf(labels);
    }

    List<Finding> findings() {
        return List.copyOf(findings);
    }

    /**
     * The title at the largest clear place: clear of grain, darts and level lines, in letters down to those of a note; over level lines where there
     * is no such place. Over the grain line it never stands: nobody could tell the one from the other.
     */
    private void title(List<String> lines, double height, List<Vector2D> ways, List<ClearCloth> cloths) {
        double least = Math.min(height, noteHeight);
        double most = 0;
        double wanted = 0;
        for (ClearCloth cloth : cloths) {
            for (double letters : new double[] {height, (height + least) / 2, least}) {
                Label pattern = new Label(Label.Kind.TITLE, lines, Vector2D.ZERO, ways.get(0), letters);
                wanted = pattern.boxWidth() + 2 * AIR;
                for (Vector2D way : ways) {
                    ClearCloth.Place place = cloth.largest(way, wanted, pattern.boxHeight() + 2 * AIR);
                    if (place.share() >= 1) {
                        labels.add(new Label(Label.Kind.TITLE, lines, place.centre(), way, letters));
                        return;
                    }
                    most = Math.max(most, place.share());
                }
            }
        }
        tooLarge("title", wanted, most);
    }

    private void notes(List<MarkedLine> lines, ClearCloth all) {
        for (MarkedLine line : lines) {
            if (line.kind() == MarkedLine.Kind.FOLD) {
                note(Label.Kind.FOLD, "place on the fold", line, all);
            }
        }
        List<String> named = new ArrayList<>();
        for (MarkedLine line : lines) {
            if (line.kind() == MarkedLine.Kind.LEVEL && !named.contains(line.name())) {
                named.add(line.name());
                note(Label.Kind.LEVEL, line.name(), longest(lines, line.name()), all);
            }
        }
    }

    private static MarkedLine longest(List<MarkedLine> lines, String level) {
        return lines.stream()
                .filter(line ->
                        line.kind() == MarkedLine.Kind.LEVEL && line.name().equals(level))
                .max((a, b) -> Double.compare(a.path().length(), b.path().length()))
                .orElseThrow();
    }

    /** A name beside its line, on either side of it. */
    private void note(Label.Kind kind, String words, MarkedLine line, ClearCloth all) {
        ClearCloth cloth = all;
        for (Label label : labels) {
            List<Vector2D> box = label.corners();
            cloth = cloth.with(CurvePath.polyline(box.get(0), box.get(1), box.get(2), box.get(3), box.get(0)));
        }
        double most = 0;
        for (double share : TRIALS) {
            double at = share * line.path().length();
            Vector2D along = upright(line.path().tangentAt(at));
            Vector2D up = Vector2D.of(-along.getY(), along.getX());
            Label pattern = new Label(kind, List.of(words), Vector2D.ZERO, along, noteHeight);
            for (int side : new int[] {1, -1}) {
                double off = side * (pattern.boxHeight() / 2 + AIR + 0.1);
                Label label = new Label(
                        kind, List.of(words), line.path().pointAt(at).add(up.multiply(off)), along, noteHeight);
                double fits =
                        cloth.share(label.centre(), along, label.boxWidth() + 2 * AIR, label.boxHeight() + 2 * AIR);
                if (fits >= 1 && labels.stream().noneMatch(other -> covers(other, label.centre()))) {
                    labels.add(label);
                    return;
                }
                most = Math.max(most, fits);
            }
        }
        tooLarge("'" + words + "'", Label.width(List.of(words), noteHeight) + 2 * AIR, most);
    }

    private static boolean covers(Label label, Vector2D point) {
        Vector2D off = label.centre().vectorTo(point);
        return Math.abs(label.along().dot(off)) <= label.boxWidth() / 2
                && Math.abs(label.along().signedArea(off)) <= label.boxHeight() / 2;
    }

    private void tooLarge(String what, double width, double share) {
        findings.add(new Finding(
                Finding.Kind.TEXT_TOO_LARGE,
                what + " on '" + piece + "'",
                Quantity.LENGTH,
                width,
                width * Math.min(1, Math.max(0, share)),
                0));
    }

    /** The direction in which letters are read: to the right, and upwards on an upright line. */
    private static Vector2D upright(Vector2D way) {
        boolean left = way.getX() < -1e-9;
        boolean down = Math.abs(way.getX()) <= 1e-9 && way.getY() < 0;
        return left || down ? way.negate() : way;
    }
}
