package org.draftingmaths.exchange;

import java.util.List;

/** What every print says beside the pattern. */
final class Care {

    private static final String NET = "The outlines are net lines: no allowances are drawn. Add them before you cut.";

    private static final String TOILE = "Sew a toile in cheap cloth before cutting good cloth.";

    private static final String SAFETY =
            "A pattern that checks is not yet a garment that fits or is safe: on children's clothes cords,"
                    + " straps and neck loops can strangle, and nightwear can catch fire. Follow the rules of your country and the"
                    + " advice of qualified people. Keep blades, pins and irons away from children.";

    /** What is said whatever the form. */
    static final List<String> ALWAYS = List.of(TOILE, SAFETY);

    private Care() {}

    /** What is said on a print; of allowances only where net pieces are drawn to be cut by. */
    static List<String> words(Scale scale, List<Figure> figures) {
        boolean net = figures.stream().anyMatch(figure -> figure.finished().isEmpty());
        return net && scale == Scale.FULL ? List.of(NET, TOILE, SAFETY) : ALWAYS;
    }

    /** All that is said at the foot of a sheet. */
    static List<String> foot(Scale scale, List<Figure> figures) {
        return List.of(scale.words() + " " + TestSquares.INSTRUCTION, String.join(" ", words(scale, figures)));
    }
}
