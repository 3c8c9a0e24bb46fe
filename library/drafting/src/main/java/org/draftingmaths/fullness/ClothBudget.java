package org.draftingmaths.fullness;

import java.util.List;
import org.draftingmaths.ledger.Entry;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.unit.Steps;

/**
 * What fullness costs in cloth: net area, and width at some levels, beside the same without fullness. Allowances and what is
 * left over in cutting are not in it.
 *
 * @param plainArea the area without fullness, in square mm
 * @param area the area with it, in square mm
 * @param levels the widths, topmost level first
 */
public record ClothBudget(double plainArea, double area, List<Level> levels) implements Entry {

    /** Copies the list. */
    public ClothBudget {
        levels = List.copyOf(levels);
    }

    /**
     * The width at one level.
     *
     * @param depth how far in mm below the seam, along the cloth
     * @param plain the width without fullness, in mm
     * @param width the width with it, in mm, along
     */
    public record Level(double depth, double plain, double width) {

        /**
         * What the fullness adds.
         *
         * @return the width added, in mm
         */
        public double added() {
            return width - plain;
        }
    }

    /**
     * What the fullness adds.
     *
     * @return the area added, in square mm
     */
    public double addedArea() {
        return area - plainArea;
    }

    @Override
    public String sentence(Steps steps) {
        List<String> widths = levels.stream()
                .map(level -> Quantity.LENGTH.print(level.added(), steps) + " at "
                        + Quantity.LENGTH.print(level.depth(), steps) + " down")
                .toList();
        String wider = widths.isEmpty() ? "" : "; the fullness adds in width " + String.join(", ", widths);
        return "The net area is " + Quantity.AREA.print(area, steps) + ", of which the fullness is "
                + Quantity.AREA.print(addedArea(), steps) + wider + ".";
    }
}
