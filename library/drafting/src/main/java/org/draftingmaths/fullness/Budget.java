package org.draftingmaths.fullness;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.draftingmaths.ledger.Entry;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.piece.Edge;
import org.draftingmaths.piece.Girths;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.unit.Steps;

/**
 * What fullness costs in cloth: the paper that it adds, and the width at each level line and along each edge.
 *
 * @param area the paper added, in square mm, allowances off
 * @param levels for each level line the width added, as {@link Girths#drawn}, in mm
 * @param edges for each edge the drawn length added, in mm
 */
public record Budget(double area, Map<String, Double> levels, Map<String, Double> edges) implements Entry {

    /** Less than this is rounding, in mm. */
    private static final double ROUNDING = 1e-6;

    /** Copies the maps in the order of their names. */
    public Budget {
        levels = java.util.Collections.unmodifiableMap(new TreeMap<>(levels));
        edges = java.util.Collections.unmodifiableMap(new TreeMap<>(edges));
    }

    /**
     * The budget of a piece that was made fuller.
     *
     * @param before the piece before
     * @param after the same piece after: with the same edges and level lines
     * @return what was added
     */
    public static Budget of(Piece before, Piece after) {
        Map<String, Double> levels = new TreeMap<>();
        before.levels()
                .forEach(level -> levels.put(
                        level.name(), Girths.drawn(after, level.name()) - Girths.drawn(before, level.name())));
        Map<String, Double> edges = new TreeMap<>();
        for (Edge edge : before.edges()) {
            edges.put(edge.name(), Lengths.drawn(after, edge.name()) - Lengths.drawn(before, edge.name()));
        }
        return new Budget(Paper.outline(after).area() - Paper.outline(before).area(), levels, edges);
    }

    @Override
    public String sentence(Steps steps) {
        List<String> parts = new ArrayList<>();
        parts.add("The fullness takes " + Quantity.AREA.print(area, steps) + " of cloth");
        levels.forEach((name, width) -> add(parts, width, "at '" + name + "'", steps));
        edges.forEach((name, width) -> add(parts, width, "along '" + name + "'", steps));
        return String.join(", ", parts) + ".";
    }

    /** What is taken: an edge that became shorter, because the dart in it was closed, takes none. */
    private static void add(List<String> parts, double width, String where, Steps steps) {
        if (width > ROUNDING) {
            parts.add(Quantity.LENGTH.print(width, steps) + " " + where);
        }
    }
}
