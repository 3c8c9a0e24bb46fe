package org.draftingmaths.exchange;

/**
 * How much larger than on paper at full size lines and letters are drawn: 1 at full size; 2 where the print is half as large as the
 * pattern, so that they come out as on any other paper.
 *
 * @param factor by how much larger than on paper
 */
record Pen(double factor) {

    /** For paper at full size. */
    static final Pen PAPER = new Pen(1);

    double mm(double onPaper) {
        return factor * onPaper;
    }

    double size(TextKind kind) {
        return mm(kind.size());
    }

    double label() {
        return size(TextKind.PLAIN);
    }
}
