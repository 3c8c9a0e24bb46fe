package org.draftingmaths.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.measure.Ease;
import org.draftingmaths.measure.Measure;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Girths;
import org.draftingmaths.piece.Piece;

/**
 * A girth of the garment with its darts closed, beside that of the body: {@code ease = garment - body}.
 *
 * @param level the level line
 * @param measure the girth of the body at that level
 * @param garment the closed girth of the garment in mm
 * @param body the girth of the body in mm
 * @param declared the ease that was declared, in mm
 */
public record ClosedGirth(String level, Measure measure, double garment, double body, double declared) {

    private static final Map<String, Measure> LEVELS =
            new TreeMap<>(Map.of("bust line", Measure.BUST, "waist line", Measure.WAIST, "hip line", Measure.HIP));

    /**
     * The closed girths of a garment of half pieces: {@code 2 * sum of closed widths}. Levels that no piece carries, and measures that are not there, are
     * left out.
     *
     * @param draft the draft: the halves of one garment, no facings
     * @param body the measures
     * @param ease the ease declared at bust, waist and hip
     * @return a girth for each level, bust first
     */
    public static List<ClosedGirth> of(Draft draft, Measurements body, Ease ease) {
        List<ClosedGirth> girths = new ArrayList<>();
        LEVELS.forEach((level, measure) -> {
            List<Piece> carrying = draft.pieces().stream()
                    .filter(piece ->
                            piece.levels().stream().anyMatch(line -> line.name().equals(level)))
                    .toList();
            if (!carrying.isEmpty() && body.has(measure)) {
                double half = carrying.stream()
                        .mapToDouble(piece -> Girths.closed(piece, level))
                        .sum();
                girths.add(new ClosedGirth(level, measure, 2 * half, body.mm(measure), declared(ease, measure)));
            }
        });
        return List.copyOf(girths);
    }

    private static double declared(Ease ease, Measure measure) {
        return switch (measure) {
            case BUST -> ease.bust().mm();
            case WAIST -> ease.waist().mm();
            default -> ease.hip().mm();
        };
    }

    /**
     * The ease that the draft has.
     *
     * @return the ease in mm
     */
    public double ease() {
        return garment - body;
    }

    /**
     * Whether the draft has the ease that was declared.
     *
     * @param tolerance how far in mm the two may lie apart
     * @return the finding when it has not
     */
    public Optional<Finding> finding(double tolerance) {
        if (Math.abs(ease() - declared) <= tolerance) {
            return Optional.empty();
        }
        return Optional.of(new Finding(
                Finding.Kind.GIRTH_OFF,
                "'" + level + "', " + measure.label() + " with ease",
                Quantity.LENGTH,
                garment,
                body + declared,
                tolerance,
                garment > body + declared ? "Take in side seams or darts." : "Let out side seams or darts."));
    }
}
