package org.draftingmaths.suppose;

import java.util.List;
import java.util.stream.Collectors;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.unit.Steps;

/**
 * What an outline seems to be, where nothing was declared. It is no fault; faults are {@link org.draftingmaths.ledger.Finding findings}.
 *
 * @param kind what is supposed
 * @param sureness how sure it is
 * @param places the edges, darts or pieces it is supposed of, in words
 * @param figures what was measured
 */
public record Supposition(Kind kind, Sureness sureness, List<String> places, List<Figure> figures) {

    /** Copies the lists. */
    public Supposition {
        places = List.copyOf(places);
        figures = List.copyOf(figures);
        if (places.isEmpty()) {
            throw new IllegalArgumentException("A supposition is of 1 or more places: 0.");
        }
    }

    /** What can be supposed. */
    public enum Kind {
        /** Two edges are sewn together. */
        MATES("are sewn together", " and "),
        /** A wedge cut out of the outline is a dart. */
        DART("is a dart", ", "),
        /** A peak on an edge is the end of a dart, drawn as it is folded. */
        DART_END("is the end of a dart as it is folded", ", "),
        /** An edge lies on the fold of the cloth or on a centre line. */
        FOLD("is a fold or a centre line", ", "),
        /** Two pieces are left and right. */
        MIRRORED("are mirrored, left and right", " and "),
        /** Two pieces are the same piece. */
        ALIKE("are alike", " and ");

        private final String words;
        private final String between;

        Kind(String words, String between) {
            this.words = words;
            this.between = between;
        }
    }

    /**
     * A measured figure.
     *
     * @param name what was measured
     * @param quantity what kind of figure it is
     * @param value the figure in the library's own unit
     */
    public record Figure(String name, Quantity quantity, double value) {}

    /**
     * The supposition as a plain sentence.
     *
     * @param steps the steps to which lengths are rounded for print
     * @return for example {@code Likely: 'edge 2' of 'a' and 'edge 5' of 'b' are sewn together; length 16 1/8 in (41.0 cm).}
     */
    public String sentence(Steps steps) {
        String measured = figures.stream()
                .map(figure -> figure.name() + " "
                        + (figure.name().startsWith("length")
                                ? figure.quantity().print(figure.value(), steps)
                                : figure.quantity().printFinely(figure.value())))
                .collect(Collectors.joining(", "));
        String sure = sureness.words();
        return sure.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + sure.substring(1) + ": "
                + String.join(kind.between, places) + " " + kind.words + (measured.isEmpty() ? "" : "; " + measured)
                + ".";
    }
}
