package org.draftingmaths.measure;

import java.util.Locale;

/**
 * What was declared about the wearer.
 *
 * <p>Straps, ties and cords near the neck are restricted in children's clothes (EN 14682, ASTM F1816). Who drafts them
 * says that the wearer is an adult, or gets a caution.
 */
public enum Wearer {
    /** Declared to be an adult. */
    ADULT,
    /** Nothing was declared. */
    NOT_DECLARED;

    /**
     * The declaration as it stands in a list.
     *
     * @return {@code adult} or {@code not declared}
     */
    public String label() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
