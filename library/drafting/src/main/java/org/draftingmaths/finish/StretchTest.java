package org.draftingmaths.finish;

import java.util.List;
import java.util.Locale;
import org.draftingmaths.ledger.Entry;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.unit.Steps;

/**
 * A stretch test of one cloth on its true bias, and how it was made. Stretch on the bias is a property of the cloth on the table, not of bias cloth:
 * nothing here is computed without a test.
 *
 * @param cloth which cloth
 * @param stripWidth how wide the strip was, in mm
 * @param load what hung on it, in newton; a tenth of it is its weight in kg, near enough
 * @param before the length between the two marks lying flat, in mm
 * @param after the length between the same marks hanging, in mm
 * @param hours how long it hung
 */
public record StretchTest(String cloth, double stripWidth, double load, double before, double after, double hours)
        implements Entry {

    /**
     * The most that the model reaches: {@code sqrt 2 - 1}, when the threads lie on one another. Real cloth locks long before.
     */
    public static final double MOST = Math.sqrt(2) - 1;

    /** Checks that the strip grew, and by no more than threads of fixed length allow. */
    public StretchTest {
        requirePositive("strip's width", stripWidth, "mm");
        requirePositive("length before", before, "mm");
        requirePositive("length after", after, "mm");
        if (!(load >= 0 && Double.isFinite(load) && hours >= 0 && Double.isFinite(hours))) {
            throw new IllegalArgumentException(
                    "Load and time of a stretch test are 0 or more: " + load + " N, " + hours + " h.");
        }
        double stretch = after / before - 1;
        if (!(stretch >= 0 && stretch < MOST)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "A strip of %.1f mm that hangs to %.1f mm stretches by %.1f %%; allowed is 0 to less than %s, which threads of fixed"
                            + " length cannot pass. Measure again, or the cloth is no plain weave.",
                    before,
                    after,
                    100 * stretch,
                    mostWords()));
        }
    }

    private static void requirePositive(String what, double figure, String unit) {
        if (!(figure > 0 && Double.isFinite(figure))) {
            throw new IllegalArgumentException(
                    "The " + what + " of a stretch test is more than 0 " + unit + ": " + figure + " " + unit + ".");
        }
    }

    static String mostWords() {
        return String.format(Locale.ROOT, "%.1f %%", 100 * MOST);
    }

    /**
     * The stretch that was found: {@code after / before - 1}.
     *
     * @return the share by which the strip grew
     */
    public double stretch() {
        return after / before - 1;
    }

    /**
     * How to make the test.
     *
     * @return the steps, in order
     */
    public static List<String> howTo() {
        return List.of(
                "Cut a strip on the true bias of the cloth itself, single layer, about 10 cm (4 in) wide and 60 cm (24 in) long;"
                        + " if pieces will lie on both biases, one strip of each: they differ.",
                "Let it lie flat for an hour. Mark two lines across it 40 cm (16 in) apart, without pulling.",
                "Hang it by its upper end from a bar, clamped over its whole width, and put on its lower end a bar of about the weight that will"
                        + " hang from it in wear: a hand's breadth of skirt weighs little.",
                "Leave it for a day. Then measure between the marks as it hangs, and its width in the middle.",
                "Write down the cloth, the width of the strip, the load, both lengths and the time.");
    }

    @Override
    public String sentence(Steps steps) {
        return String.format(
                Locale.ROOT,
                "Tested: a strip of '%s' %s wide, under %.1f N for %.0f h, went from %s to %s: %.1f %%.",
                cloth,
                Quantity.LENGTH.print(stripWidth, steps),
                load,
                hours,
                Quantity.LENGTH.print(before, steps),
                Quantity.LENGTH.print(after, steps),
                100 * stretch());
    }
}
