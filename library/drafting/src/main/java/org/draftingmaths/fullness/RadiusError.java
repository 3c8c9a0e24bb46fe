package org.draftingmaths.fullness;

import java.util.Locale;
import org.draftingmaths.ledger.Entry;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.unit.Steps;

/**
 * How an error of the radius grows on its way to the waist.
 *
 * @param angle the angle of the whole skirt in radians: by so much the error is multiplied
 */
public record RadiusError(double angle) implements Entry {

    private static final double INCH = 25.4;

    @Override
    public String sentence(Steps steps) {
        double rounded = INCH / steps.inchFraction() / 2;
        String mark = steps.inchFraction() == 1 ? "inch" : "1/" + steps.inchFraction() + " in";
        return String.format(
                Locale.ROOT,
                "A radius that is 1 mm wrong makes the waist %.1f mm wrong: rounded to the nearest %s it may be %s wrong, and"
                        + " the waist %s. Measure the waist along before cutting.",
                angle,
                mark,
                Quantity.LENGTH.printFinely(rounded),
                Quantity.LENGTH.printFinely(angle * rounded));
    }
}
