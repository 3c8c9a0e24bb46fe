package org.draftingmaths.lessons.kernel;

/** A cell's number and text, and how a place in it is shown. */
record Cell(int number, String source) {
    /** The message with cell, line, source line and a caret below the character at the offset. */
    CellException error(int offset, String message) {
        int at = Math.max(0, Math.min(offset, source.length()));
        int start = source.lastIndexOf('\n', at - 1) + 1;
        int newline = source.indexOf('\n', at);
        String line = source.substring(start, newline < 0 ? source.length() : newline);
        String indent = line.substring(0, Math.min(at - start, line.length())).replaceAll("[^\t]", " ");
        return new CellException("%s: %s%n    %s%n    %s^"
                .formatted(place(at), message, line, indent)
                .replace("\r", ""));
    }

    /** Such as {@code cell 3, line 2}. */
    String place(int offset) {
        return "cell " + number + ", line "
                + (1
                        + source.substring(0, offset)
                                .chars()
                                .filter(c -> c == '\n')
                                .count());
    }

    /** The offset of the first character, not blank, of a line counted from one, starting at the line of an offset. */
    int startOfLine(int from, int line) {
        int at = source.lastIndexOf('\n', from - 1) + 1;
        for (int i = 1; i < line && source.indexOf('\n', at) >= 0; i++) {
            at = source.indexOf('\n', at) + 1;
        }
        return skipBlank(Math.max(at, line == 1 ? from : at));
    }

    /** The offset of the first character at or after the given one that is not blank. */
    int skipBlank(int from) {
        int at = from;
        while (at < source.length() && Character.isWhitespace(source.charAt(at))) {
            at++;
        }
        return at;
    }
}
