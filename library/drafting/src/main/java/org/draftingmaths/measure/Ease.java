package org.draftingmaths.measure;

import java.util.Locale;
import org.draftingmaths.unit.Length;

/**
 * Declared ease: {@code finished girth = body girth + ease}, on the whole girth, at each of three levels.
 *
 * <p>Negative ease is for cloth that stretches.
 *
 * <pre>{@code
 * Ease ease = new Ease(Length.cm(6), Length.cm(2), Length.cm(4));
 * ease.finishedGirth(Ease.Level.BUST, figure);   // bust + 60 mm
 * }</pre>
 *
 * @param bust ease on the bust girth, from -300 to 1000 mm
 * @param waist ease on the waist girth, likewise
 * @param hip ease on the hip girth, likewise
 */
public record Ease(Length bust, Length waist, Length hip) {

    // Stands first because the constant below is checked against it.
    private static final PlausibleRange RANGE = new PlausibleRange(Length.mm(-300), Length.mm(1000), "common practice");

    /**
     * A close fit: bust 6 cm, waist 2 cm, hip 4 cm, as in the dress draft at
     * misssmartiessewing.blogspot.com/2014/03/the-basic-dress-sloper-drafting-tutorial.html.
     */
    public static final Ease CLOSE_FITTING = new Ease(Length.cm(6), Length.cm(2), Length.cm(4));

    /** The levels at which ease is declared. */
    public enum Level {
        /** Bust level. */
        BUST(Measure.BUST),
        /** Waist level. */
        WAIST(Measure.WAIST),
        /** Hip level. */
        HIP(Measure.HIP);

        private final Measure girth;

        Level(Measure girth) {
            this.girth = girth;
        }

        /**
         * The body girth at this level.
         *
         * @return the measure
         */
        public Measure girth() {
            return girth;
        }
    }

    /**
     * Makes a declaration.
     *
     * @throws IllegalArgumentException if an ease is out of range; the message names the level
     */
    public Ease {
        requirePlausible(Level.BUST, bust);
        requirePlausible(Level.WAIST, waist);
        requirePlausible(Level.HIP, hip);
    }

    /**
     * The ease at a level.
     *
     * @param level bust, waist or hip
     * @return the ease on the whole girth
     */
    public Length at(Level level) {
        return switch (level) {
            case BUST -> bust;
            case WAIST -> waist;
            case HIP -> hip;
        };
    }

    /**
     * The girth of the closed garment at a level: {@code body girth + ease}.
     *
     * @param level bust, waist or hip
     * @param body measurements that hold the girth of that level
     * @return the finished girth
     * @throws IllegalArgumentException if the girth is missing
     */
    public Length finishedGirth(Level level, Measurements body) {
        return body.length(level.girth()).plus(at(level));
    }

    private static void requirePlausible(Level level, Length ease) {
        if (!RANGE.contains(ease)) {
            throw new IllegalArgumentException("An ease of " + ease + " at the "
                    + level.name().toLowerCase(Locale.ROOT) + " is not plausible: accepted is " + RANGE.text());
        }
    }
}
